//! What is recorded, and how well.

mod check;
mod script;

pub use check::{CheckRequest, ClipChecked, ClipsChecked, Outcome, check_clips};
pub use script::{RecordingScript, ScriptRequest, script};
