//! What each way of hearing asks of the sound.
//!
//! A message comes as radio wants it. [`phone`] makes it narrow, and as loud as
//! telephones expect; [`chat`] makes it loud for small loudspeakers; [`meeting`] does so
//! too, and puts chapters one after the other, with time to talk.

mod compress;
mod meeting;
mod phone;

pub use meeting::{Chapter, Meeting, Section, meeting};
pub use phone::{PHONE_RATE, PhoneSound, narrow, phone, phone_clips, room_tone};

use super::level::{LevelError, LevelOptions, Levelled, to_target};
use super::{Sound, Spoken};

/// The loudness of what small loudspeakers play, in LUFS.
pub const LOUD_LUFS: f64 = -16.0;

/// A message for small loudspeakers: louder, as players of voice notes ignore gains in tags.
///
/// # Errors
/// Loudness and true peak cannot both be had.
pub fn chat<S: Sound>(spoken: &Spoken<S>) -> Result<Spoken, LevelError> {
    louder(spoken, &spoken.samples.samples())
}

/// The highest true peak before coding, in dBTP.
const CEILING_DBTP: f64 = -1.5;

/// A message with other samples, at the loudness of small loudspeakers.
fn louder<S: Sound>(spoken: &Spoken<S>, samples: &[f32]) -> Result<Spoken, LevelError> {
    let even = compress::compressed(samples);
    let at =
        |target_lufs| to_target(even.as_slice(), &LevelOptions { target_lufs, ceiling_dbtp: CEILING_DBTP });
    // A voice with very high peaks stays a little quieter, rather than being refused.
    let quieter = (1..=4).map(|step| LOUD_LUFS - f64::from(step));
    let levelled = quieter.fold(at(LOUD_LUFS), |found, target| match found {
        Err(LevelError::OutOfReach { .. }) => at(target),
        found => found,
    })?;
    let Levelled { sound, loudness, limited } = levelled;
    Ok(Spoken { loudness, limited, ..spoken.with_samples(sound.samples()) })
}
