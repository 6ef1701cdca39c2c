//! A radio segment of exact length.
//!
//! ```text
//! choose   which items: the most important ones that can be said in the time
//!   -> fit   pauses, within natural bounds, so that the length is exact to a frame
//!   -> mix   signature before and after, music under the voice
//! ```
//!
//! Speech itself is never stretched or cut.

mod choose;
mod estimate;
mod fit;
mod mix;
mod music;

pub use choose::{Choice, Set, choose};
pub use estimate::estimate;
pub use fit::{Measure, PauseRanges, Range, fit};
pub use mix::{MixOptions, Mixed, Music, mix};
pub use music::{Use, read};
