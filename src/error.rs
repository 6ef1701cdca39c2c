//! Everything that can stop a use case.

use std::io;
use std::path::PathBuf;

use crate::finding::Finding;
use crate::language::WordingError;
use crate::sheet::SheetError;
use crate::voice::VoiceError;

/// Why a use case ended without its result. Nothing has been written then.
#[derive(Debug, thiserror::Error)]
#[non_exhaustive]
pub enum Error {
    /// An input is wrong: all its problems.
    #[error("{}", list(.0))]
    Input(Vec<Finding>),
    /// A sentence cannot be worded.
    #[error(transparent)]
    Wording(#[from] WordingError),
    /// A sheet cannot be made.
    #[error(transparent)]
    Sheet(#[from] SheetError),
    /// A message cannot be voiced.
    #[error(transparent)]
    Voice(#[from] VoiceError),
    /// A file cannot be written.
    #[error("{} cannot be written: {source}", path.display())]
    Write {
        /// The file.
        path: PathBuf,
        /// What the system says.
        source: io::Error,
    },
}

fn list(findings: &[Finding]) -> String {
    findings.iter().map(ToString::to_string).collect::<Vec<_>>().join("\n")
}
