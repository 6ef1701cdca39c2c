//! A recording session.
//!
//! ```text
//! phrases, clips there are, messages   -> script   what a speaker reads, in which order
//! ```

mod carrier;
mod pace;
pub mod script;

pub use carrier::{Carrier, Carriers};
pub use pace::Pace;
pub use script::{Group, Line, Material, Message, Needed, Script, script};
