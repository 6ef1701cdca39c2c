//! A case to begin from.

use std::path::Path;

use super::output::Output;
use super::{Code, Error, Finding, Starter};

/// Writes a case to begin from.
///
/// # Errors
/// A file that is there already, or that cannot be written.
pub fn begin_case(starter: Starter, out: &Path) -> Result<(), Error> {
    if out.symlink_metadata().is_ok() {
        let finding = Finding::error(Code::IN_THE_WAY, "already exists, and was left as it is");
        let hint = "name another file, or move it away";
        return Err(Error::Input(vec![finding.file(out.display().to_string()).hint(hint)]));
    }
    let mut output = Output::default();
    output.add(out, starter.text().as_bytes())?;
    output.commit()
}
