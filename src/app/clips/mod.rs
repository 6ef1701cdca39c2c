//! What is recorded, and how well.

mod check;
mod import;
mod script;

pub use check::{CheckRequest, ClipChecked, ClipsChecked, Outcome, check_clips};
pub use import::{ImportRequest, Imported, import};
pub use script::{RecordingScript, ScriptRequest, script};
