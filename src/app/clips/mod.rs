//! What is recorded, and how well.

mod script;

pub use script::{PhraseToRecord, script};
