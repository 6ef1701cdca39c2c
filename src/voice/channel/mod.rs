//! What each way of hearing asks of the sound.
//!
//! A message comes as radio wants it. [`phone`] makes it narrow, and as loud as
//! telephones expect; [`meeting`] puts chapters one after the other, with time to
//! talk, and makes them carry outdoors; [`chat`] only makes it louder.

mod meeting;
mod phone;

pub use meeting::{Chapter, Meeting, Section, meeting};
pub use phone::{PHONE_RATE, PhoneSound, narrow, phone, phone_clips, room_tone};

use super::level::{LevelError, LevelOptions, to_target};
use super::{Loudness, Spoken};

/// The loudness of what small loudspeakers play, in LUFS.
pub const LOUD_LUFS: f64 = -16.0;

/// A message for small loudspeakers: louder, as players of voice notes ignore gains in tags.
///
/// # Errors
/// Loudness and true peak cannot both be had.
pub fn chat(spoken: &Spoken) -> Result<Spoken, LevelError> {
    louder(spoken, spoken.samples.clone())
}

/// A message with other samples, at the loudness of small loudspeakers.
fn louder(spoken: &Spoken, samples: Vec<f32>) -> Result<Spoken, LevelError> {
    // A lossy coder raises peaks a little: half a decibel more is kept free.
    let options = LevelOptions { target_lufs: LOUD_LUFS, ceiling_dbtp: -1.5 };
    let levelled = to_target(samples, &options)?;
    let loudness: Loudness = levelled.loudness;
    Ok(Spoken { samples: levelled.samples, loudness, limited: levelled.limited, ..spoken.clone() })
}
