//! Kabla counts a sweet potato farmer's work back from the rains, and says it
//! in the farmer's own language, on paper and aloud.
//!
//! ```text
//! case (TOML)          what is known of a farm, a group or a rain zone
//!   -> plan            dates and amounts, each with its reason; pure computation
//!   -> guidance        ordered statements: a subject, typed values, when, for whom; no language in it
//!   -> language        guidance + language pack -> sentences, or spoken pieces
//!   -> sheet           sentences -> PDF, HTML, plain text
//!   -> voice           spoken pieces -> clips -> samples -> WAV, with cue sheet and captions
//! ```
//!
//! One direction, no way back. The same guidance feeds paper and sound, so
//! that they cannot disagree.
//!
//! ```
//! use kabla::{case, guidance, language::Pack, plan, data::Embedded};
//!
//! let text = r#"
//!     name = "A farm"
//!     harvest = 2027-05-24
//!     [place]
//!     name = "Somewhere"
//!     latitude = -6.2
//!     longitude = 36.1
//!     elevation_m = 1080
//!     [season]
//!     rains_begin = "11-25"
//!     [field]
//!     area_m2 = 450
//! "#;
//! let no_files = |_: &str| Err(std::io::Error::from(std::io::ErrorKind::NotFound));
//! let (case, _) = case::read("farm.toml", text, &no_files).expect("a case without mistakes");
//! let plan = plan::make(&case).expect("a plan");
//! assert_eq!(plan.now.amounts.get(plan::Quantity::RootsToStore), Some(95.0));
//!
//! let pack = Pack::load(&Embedded, "en").expect("the English pack");
//! let statements = guidance::tell(&case, &plan);
//! let first = pack.write(&statements[1]).expect("words for it");
//! assert_eq!(first.title, "Mark 66 healthy plants");
//! assert_eq!(first.when, ["24 April 2027 – 1 May 2027"]);
//! ```

pub mod app;
pub mod case;
mod catalogue;
pub mod cli;
pub mod data;
pub mod error;
pub mod finding;
pub mod guidance;
pub mod language;
pub mod plan;
pub mod sheet;
mod toml_reader;
pub mod voice;
