//! `kabla sheet`

use std::path::Path;

use super::Format;
use crate::app::{self, Data, Error, Overrides, SheetFormat, SheetRequest};

pub(super) fn run(
    data: &dyn Data,
    (case, overrides): (&Path, Overrides),
    language: Option<&str>,
    (format, parts): (Format, u8),
    out: Option<&Path>,
) -> Result<(), Error> {
    let format = match format {
        Format::Pdf => SheetFormat::Pdf,
        Format::Html => SheetFormat::Html,
        Format::Text => SheetFormat::Text,
        Format::Sms => SheetFormat::Sms { most_parts: usize::from(parts) },
        Format::Ics => SheetFormat::Calendar,
    };
    let made = app::sheet(data, SheetRequest { case, overrides, language, format, out })?;
    super::demo::table(&[made])
}
