//! What the planner has noticed or refused, in English: for JSON, and beside findings about files.

use super::{Code, Embedded, Error, Finding, Severity};
use crate::case::line_of_field;
use crate::language::{Pack, SOURCE};
use crate::plan::{self, Refusal, Remark, Worded as _};

/// The pack in which everything can be said.
pub(super) fn english() -> Result<Pack, Error> {
    Pack::load(&Embedded, SOURCE).map_err(Error::Input)
}

/// Why the case `name`, which stands in `text`, has no plan.
pub(super) fn refused(name: &str, text: &str, refusal: &Refusal) -> Error {
    let worded = english().and_then(|english| Ok(english.write_remark(refusal)?));
    match worded {
        Ok((message, hint)) => {
            let finding = Finding::error(Code::new(refusal.code()), message)
                .file(name)
                .field(refusal.field())
                .hint(hint);
            Error::Input(vec![match line_of_field(text, refusal.field()) {
                Some(line) => finding.line(line),
                None => finding,
            }])
        }
        Err(error) => error,
    }
}

/// How much a remark matters among findings.
pub(super) fn severity(remark: &Remark) -> Severity {
    match remark.severity() {
        plan::Severity::Warning => Severity::Warning,
        plan::Severity::Note => Severity::Note,
    }
}
