//! A case on paper.

use std::path::{Path, PathBuf};

use super::output::Output;
use super::{Data, Error, Length, Made, Overrides, ReadCase};
use crate::sheet::{self, Facts, Printer};

/// How a sheet is made.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum SheetFormat {
    /// A4 pages to print.
    Pdf,
    /// One page for a phone or a browser, which prints as well.
    Html,
    /// Plain text.
    Text,
}

impl SheetFormat {
    /// The ending of its files.
    pub fn extension(self) -> &'static str {
        match self {
            SheetFormat::Pdf => "pdf",
            SheetFormat::Html => "html",
            SheetFormat::Text => "txt",
        }
    }
}

/// What sheet is asked for.
#[derive(Debug, Clone, Copy)]
pub struct SheetRequest<'a> {
    /// The case's file.
    pub case: &'a Path,
    /// What goes before the case's own.
    pub overrides: Overrides,
    /// Its language; the case's own where none is named.
    pub language: Option<&'a str>,
    /// Its format.
    pub format: SheetFormat,
    /// Where it goes; beside where the command runs where nothing is said.
    pub out: Option<&'a Path>,
}

/// Makes a sheet and writes it.
///
/// # Errors
/// Problems of the case, the pack or the templates; nothing is written then.
pub fn sheet(data: &dyn Data, request: SheetRequest<'_>) -> Result<Made, Error> {
    let read = ReadCase::from_disk(request.case)?.with(request.overrides)?;
    let stem = request.case.file_stem().unwrap_or_default().to_string_lossy().into_owned();
    let mut output = Output::default();
    let made = make(data, &read, request.language, request.format, &mut output, |tag| {
        let name = format!("{stem}-{tag}.{}", request.format.extension());
        request.out.map_or_else(|| PathBuf::from(name), Path::to_owned)
    })?;
    output.commit()?;
    Ok(made)
}

/// Makes a sheet ready to be written at the path that `place` gives for its language.
pub(super) fn make(
    data: &dyn Data,
    read: &ReadCase,
    language: Option<&str>,
    format: SheetFormat,
    output: &mut Output,
    place: impl FnOnce(&str) -> PathBuf,
) -> Result<Made, Error> {
    let pack = read.pack(data, language)?;
    let facts = Facts::of(&pack, &read.statements()?).map_err(sheet::SheetError::from)?;
    let (bytes, length) = match format {
        SheetFormat::Pdf => {
            let pdf = Printer::new(data)?.print(&facts)?;
            if let Some(overflow) = pdf.overflows.first() {
                let message = format!("the sheet does not fit on its paper: {overflow}");
                return Err(
                    sheet::SheetError::Template { file: "templates/sheet.typ".to_owned(), message }.into()
                );
            }
            (pdf.bytes, Length::Pages(pdf.pages))
        }
        SheetFormat::Html => (sheet::html(&facts, data)?, Length::Unmeasured),
        SheetFormat::Text => (sheet::text(&facts, data)?, Length::Unmeasured),
    };
    let path = place(&pack.tag());
    output.add(&path, &bytes)?;
    let what = match format {
        SheetFormat::Pdf => "step sheet to print",
        SheetFormat::Html => "step sheet for a phone or a browser",
        SheetFormat::Text => "step sheet as plain text",
    };
    Ok(Made {
        path,
        what: format!("{what}, {}", pack.name()),
        audience: "extension worker",
        length,
        remarks: super::remarks_on(&pack),
    })
}
