//! Guidance in the words of a language.
//!
//! A language pack is a folder `locales/<tag>/` with `pack.toml`,
//! `written.ftl`, `spoken.ftl` and `numbers.rbnf`. [`Pack::write`] gives
//! sentences for paper, [`Pack::say`] the pieces of a spoken message, and
//! [`Pack::phrases`] every phrase that speech can ever need: no message can be
//! said with words that are not on that list.
//!
//! Nothing ever falls back to another language: what a pack lacks is an error
//! that names it.

mod check;
pub mod dates;
mod glossary;
mod labels;
mod limits;
mod names;
pub mod numerals;
mod pack;
mod piece;
mod pseudo;
mod review_log;
mod template;
mod texts;
mod wording;

pub use check::{Coverage, Doubt, PLANS, Report, check};
pub use labels::{Label, MessageId};
pub use pack::{Direction, Filled, Pack, PlanLabel, Status, WordingError, Written};
pub use piece::{Intonation, Pause, Piece, Role, Words};
pub use pseudo::{ACCENTED, MIRRORED, Pseudo};
pub use review_log::{FILE as REVIEW_LOG_FILE, ReviewLog};
pub use template::new_pack;
pub use texts::{SOURCE, TEXT_FILES};
pub use wording::Phrase;
