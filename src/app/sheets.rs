//! A case on paper.

use std::path::{Path, PathBuf};

use super::output::Output;
use super::{Code, Data, Error, Finding, Length, Made, Overrides, ReadCase};
use crate::guidance::{Statement, Subject};
use crate::language::Pack;
use crate::sheet::{self, Alphabet, Cost, Facts, Paper, Pdf, Printer, SmsOptions, TextMessage, Work};

/// How a sheet is made.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum SheetFormat {
    /// Paper to print.
    Pdf(Paper),
    /// One page for a phone or a browser, which prints as well.
    Html,
    /// Plain text.
    Text,
    /// Text messages for phones, as a table, none in more parts than this.
    Sms {
        /// The most parts of one message.
        most_parts: usize,
    },
    /// A calendar file.
    Calendar,
}

impl SheetFormat {
    /// The ending of its files.
    pub fn extension(self) -> &'static str {
        match self {
            SheetFormat::Pdf(_) => "pdf",
            SheetFormat::Html => "html",
            SheetFormat::Text => "txt",
            SheetFormat::Sms { .. } => "csv",
            SheetFormat::Calendar => "ics",
        }
    }

    /// What the names of its files end with, before the extension.
    fn ending(self) -> &'static str {
        match self {
            SheetFormat::Pdf(Paper::Guide) => "-guide",
            SheetFormat::Pdf(Paper::Calendar) => "-calendar",
            SheetFormat::Pdf(Paper::Card) => "-card",
            SheetFormat::Pdf(Paper::Record) => "-record",
            _ => "",
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
    /// One farm of a group, where it is for that alone.
    pub farm: Option<&'a str>,
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
    let mut stem = request.case.file_stem().unwrap_or_default().to_string_lossy().into_owned();
    let farms = (1..).zip(&read.case.farms);
    if let Some((number, _)) = farms.into_iter().find(|(_, farm)| Some(farm.name.as_str()) == request.farm) {
        stem = format!("{stem}-farm-{number}");
    }
    let mut output = Output::default();
    let (language, format) = (request.language, request.format);
    let made = make(data, (&read, request.farm), language, format, &mut output, |tag| {
        let name = format!("{stem}-{tag}{}.{}", request.format.ending(), request.format.extension());
        request.out.map_or_else(|| PathBuf::from(name), Path::to_owned)
    })?;
    output.commit()?;
    Ok(made)
}

/// Makes a sheet ready to be written at the path that `place` gives for its language.
pub(super) fn make(
    data: &dyn Data,
    (read, farm): (&ReadCase, Option<&str>),
    language: Option<&str>,
    format: SheetFormat,
    output: &mut Output,
    place: impl FnOnce(&str) -> PathBuf,
) -> Result<Made, Error> {
    let pack = read.pack(data, language)?;
    let (statements, shapes) = read.told(farm)?;
    let facts = || Facts::of(&pack, &statements).map_err(sheet::SheetError::from);
    let drawn = || facts()?.drawn(&pack, &shapes, data);
    let mut remarks = super::remarks_on(&pack);
    remarks.extend(super::led_to(&pack, &statements).map_err(sheet::SheetError::from)?);
    let (bytes, length) = match format {
        SheetFormat::Pdf(paper) => {
            let pdf = fitting(Printer::new(data)?.print(paper, &drawn()?)?, paper.template(), data)?;
            (pdf.bytes, Length::Pages(pdf.pages))
        }
        SheetFormat::Html => (sheet::html(&drawn()?, data)?, Length::Unmeasured),
        SheetFormat::Text => (sheet::text(&facts()?, data)?, Length::Unmeasured),
        SheetFormat::Sms { most_parts } => {
            let messages = messages(&pack, read, farm, &statements)?;
            let texts: Vec<TextMessage> = messages.iter().map(|(_, message)| message.clone()).collect();
            let file = format!("locales/{}/written.ftl", pack.tag());
            refuse_long(&texts, most_parts, &file)?;
            remarks.extend(remarks_on_messages(&texts));
            remarks.extend(remark_on_left_out(&sheet::sms_left_out(&statements, &texts)));
            (sheet::sms_table(&messages), Length::Unmeasured)
        }
        SheetFormat::Calendar => (sheet::ics(&pack, &statements)?, Length::Unmeasured),
    };
    let path = place(&pack.tag());
    output.add(&path, &bytes)?;
    let what = match format {
        SheetFormat::Pdf(Paper::Farm) => "step sheet to print",
        SheetFormat::Pdf(Paper::Guide) => "guide for a meeting, to print",
        SheetFormat::Pdf(Paper::Calendar) => "wall calendar to print on A3",
        SheetFormat::Pdf(Paper::Card) => "pocket card to print, fold and cut",
        SheetFormat::Pdf(Paper::Record) => "record card of the checks, to print",
        SheetFormat::Html => "step sheet for a phone or a browser",
        SheetFormat::Text => "step sheet as plain text",
        SheetFormat::Sms { .. } => "text messages by date",
        SheetFormat::Calendar => "calendar of the steps",
    };
    Ok(Made { path, what: format!("{what}, {}", pack.name()), audience: "extension worker", length, remarks })
}

/// The messages of a case, each with the name of whom it is for. Of a group that names its farms, each farm is told
/// what it does by itself, and all are told what they do together.
fn messages<'r>(
    pack: &Pack,
    read: &'r ReadCase,
    farm: Option<&'r str>,
    statements: &[Statement],
) -> Result<Vec<(&'r str, TextMessage)>, Error> {
    let told = |name: &'r str, statements: &[Statement], work: Work| -> Result<Vec<_>, Error> {
        let messages = sheet::sms(pack, statements, SmsOptions { work, ..SmsOptions::default() })?;
        Ok(messages.into_iter().map(|message| (name, message)).collect())
    };
    let group = read.case.name.as_str();
    if farm.is_some() || read.case.farms.is_empty() {
        return told(farm.unwrap_or(group), statements, Work::All);
    }
    let mut messages = told(group, statements, Work::Together)?;
    for (farm, (statements, _)) in read.case.farms.iter().zip(read.told_to_farms()?) {
        messages.extend(told(&farm.name, &statements, Work::ByItself)?);
    }
    messages.sort_by_key(|(_, message)| (message.date, message.subject));
    Ok(messages)
}

/// Refuses what reaches beyond its paper.
fn fitting(pdf: Pdf, template: &str, data: &dyn Data) -> Result<Pdf, Error> {
    let Some(what) = pdf.overflows.first().cloned() else { return Ok(pdf) };
    Err(sheet::SheetError::TooFull { file: data.shown(&format!("templates/{template}")), what }.into())
}

/// Sheets of many farms in one file.
#[derive(Debug, Clone, Copy)]
pub struct BookletRequest<'a> {
    /// The cases' files, in the order of their pages.
    pub cases: &'a [PathBuf],
    /// What goes before the cases' own.
    pub overrides: Overrides,
    /// Their language; the first case's own where none is named.
    pub language: Option<&'a str>,
    /// Where it goes; beside where the command runs where nothing is said.
    pub out: Option<&'a Path>,
}

/// Makes a booklet of many farms' sheets, with an index by name. A group that names its farms has a sheet of its own
/// and one for each of them.
///
/// # Errors
/// All problems of all cases, or of the pack or the templates; nothing is written then.
pub fn booklet(data: &dyn Data, request: BookletRequest<'_>) -> Result<Made, Error> {
    let mut reads = Vec::new();
    let mut findings = Vec::new();
    for case in request.cases {
        match ReadCase::from_disk(case).and_then(|read| read.with(request.overrides)) {
            Ok(read) => reads.push(read),
            Err(Error::Input(problems)) => findings.extend(problems),
            Err(error) => return Err(error),
        }
    }
    let Some(first) = reads.first().filter(|_| findings.is_empty()) else {
        return Err(Error::Input(findings));
    };
    let pack = first.pack(data, request.language)?;
    let mut farms = Vec::new();
    let mut remarks = super::remarks_on(&pack);
    for read in &reads {
        match read.told(None).and_then(|told| Ok((told, read.told_to_farms()?))) {
            Ok((told, to_farms)) => {
                for (statements, shapes) in [told].into_iter().chain(to_farms) {
                    let facts = Facts::of(&pack, &statements).map_err(sheet::SheetError::from)?;
                    remarks.extend(facts.consequences.iter().map(|text| format!("{}: {text}", facts.name)));
                    farms.push(facts.drawn(&pack, &shapes, data)?);
                }
            }
            Err(Error::Input(problems)) => findings.extend(problems),
            Err(error) => return Err(error),
        }
    }
    if !findings.is_empty() {
        return Err(Error::Input(findings));
    }
    let count = farms.len();
    let pdf = fitting(Printer::new(data)?.booklet(farms)?, "booklet.typ", data)?;
    let path =
        request.out.map_or_else(|| PathBuf::from(format!("booklet-{}.pdf", pack.tag())), Path::to_owned);
    let mut output = Output::default();
    output.add(&path, &pdf.bytes)?;
    output.commit()?;
    Ok(Made {
        path,
        what: match count {
            1 => format!("booklet of one sheet to print, {}", pack.name()),
            _ => format!("booklet of {count} sheets to print, {}", pack.name()),
        },
        audience: "extension worker",
        length: Length::Pages(pdf.pages),
        remarks,
    })
}

/// No message is cut: one that is too long is refused.
fn refuse_long(messages: &[TextMessage], most_parts: usize, file: &str) -> Result<(), Error> {
    let long = messages.iter().filter(|message| message.cost.parts > most_parts);
    let finding = |message: &TextMessage| {
        let Cost { units, parts, .. } = message.cost;
        Finding::error(
            Code::LONG_MESSAGE,
            format!("the message of {} takes {parts} parts ({units} letters)", message.date),
        )
        .file(file)
        .field(format!("{}.sms", message.subject.name()))
        .hint("make it shorter, or allow more parts")
    };
    let findings: Vec<Finding> = long.map(finding).collect();
    if findings.is_empty() { Ok(()) } else { Err(Error::Input(findings)) }
}

/// How many parts are paid for, and which letters make them expensive.
fn remarks_on_messages(messages: &[TextMessage]) -> Vec<String> {
    let parts: usize = messages.iter().map(|message| message.cost.parts).sum();
    let mut remarks = vec![format!("{} messages, {parts} parts to pay for", messages.len())];
    let mut forced = 0;
    let mut letters: Vec<char> = Vec::new();
    for message in messages {
        if let Alphabet::Ucs2 { forced_by } = &message.cost.alphabet {
            forced += 1;
            letters.extend(forced_by);
        }
    }
    letters.sort_unstable();
    letters.dedup();
    if forced > 0 {
        let shown: String = letters.iter().take(MOST_LETTERS).collect();
        let more = if letters.len() > MOST_LETTERS { " and others" } else { "" };
        remarks.push(format!(
            "{forced} messages are sent in 16 bits a letter, 70 to a message instead of 160, for {shown}{more}; a pack may name letters to send in their place ([sms] replace)"
        ));
    }
    remarks
}

/// What has no message must be told in another way.
fn remark_on_left_out(subjects: &[Subject]) -> Option<String> {
    let names: Vec<&str> = subjects.iter().map(|subject| subject.name()).collect();
    let names = names.join(", ");
    (!names.is_empty())
        .then(|| format!("without a text message of their own: {names}; give them on a sheet or by voice"))
}

/// Letters that a remark still lists.
const MOST_LETTERS: usize = 12;
