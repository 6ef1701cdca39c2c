//! A recording session: what a speaker reads, and how good the clips are.
//!
//! ```text
//! phrases, clips there are, messages   -> script    what a speaker reads, in which order
//! recordings, script                   -> import    clips cut from a session, doubts put up
//! clips                                -> quality   what is wrong with each, and its verdict
//! ```

mod carrier;
pub mod import;
mod pace;
pub mod picture;
pub mod quality;
pub mod script;
pub mod words;

pub use carrier::{Carrier, Carriers};
pub use pace::Pace;
pub use script::{Group, Line, Material, Needed, Script, WantedMessage, script};
