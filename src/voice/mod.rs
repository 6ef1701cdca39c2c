//! Spoken pieces become sound.
//!
//! ```text
//! pieces   words and pauses of a message, from `language`
//!   -> choose   which recorded clips say the words: the fewest, best matching ones
//!   -> join     clips one after the other, trimmed, evened, cross-faded, with pauses
//!   -> level    loudness and true peak as broadcasters want them
//!   -> channel  what phones, voice notes and meetings want otherwise
//!   -> write    WAV, Opus, cue sheet, captions, …
//! ```
//!
//! Sound is mono at [`SAMPLE_RATE`], in samples from -1 to 1 (full scale).
//! Nothing here depends on clock, disk or chance: the same pieces and the same
//! bank make the same bytes.

pub mod active;
pub mod bank;
mod bank_file;
mod cache;
pub mod channel;
pub mod choose;
mod clip_loudness;
mod crossfade;
mod decode;
mod edge;
mod filter;
mod frames;
mod hum;
pub mod join;
pub mod level;
mod loudness;
mod meter;
mod noise;
mod pcm16;
pub mod record;
pub mod repair;
mod room_tone;
pub mod segment;
mod shape;
mod simd;
mod sound;
mod speak;
mod spectrum;
mod spelling;
pub mod write;

pub use bank::{Bank, ClipState};
pub use bank_file::{Clip, Status, VoiceInfo};
pub use edge::Joint;
pub use frames::{Frames, SAMPLE_RATE};
pub use hum::Hum;
pub use join::JoinOptions;
pub use level::{LevelError, LevelOptions};
pub use loudness::Loudness;
pub use sound::Sound;
pub use speak::{
    Composed, MissingPhrase, SpeakOptions, Spoken, Timed, VoiceError, Why, choose_clips, compose, speak,
};
