//! What is recorded, and how well.

mod script;

pub use script::{RecordingScript, ScriptRequest, script};
