//! Telephones: 8 kHz, 300 to 3400 Hz, a level of active speech.

use std::sync::LazyLock;

use crate::finding::{Code, Finding};
use crate::voice::active::{ActiveLevel, active_level};
use crate::voice::filter::{filtered, high_pass, low_pass};
use crate::voice::join::{self, JoinOptions};
use crate::voice::level::limit;
use crate::voice::loudness::to_gain;
use crate::voice::{Bank, Frames, LevelError, SAMPLE_RATE, Sound, Spoken};

/// Samples a second on the telephone.
pub const PHONE_RATE: u32 = 8_000;
/// The level of active speech, in dBov.
const TARGET_DBOV: f64 = -26.0;
/// The highest sample, in dBov.
const HIGHEST_DBOV: f64 = -1.0;
/// How near to the target the level must come, in dB.
const NEAR_DB: f64 = 0.05;
const ROUNDS: usize = 4;
/// What the filters leave beyond the band, in dB.
const ATTENUATION_DB: f64 = 60.0;

/// Passes 3400 Hz, and nothing that would fold back into the band.
static LOW: LazyLock<Vec<f64>> =
    LazyLock::new(|| low_pass(f64::from(SAMPLE_RATE), 3_725.0, 600.0, ATTENUATION_DB));
/// Passes 300 Hz, and stops what lies an octave lower.
static HIGH: LazyLock<Vec<f64>> =
    LazyLock::new(|| high_pass(f64::from(PHONE_RATE), 225.0, 150.0, ATTENUATION_DB));

/// Sound for telephones.
#[derive(Debug, Clone, PartialEq)]
pub struct PhoneSound {
    /// Mono samples at [`PHONE_RATE`].
    pub samples: Vec<f32>,
    /// Their level while somebody speaks.
    pub level: ActiveLevel,
    /// Whether peaks had to be held down.
    pub limited: bool,
}

/// A message as a telephone carries it.
///
/// # Errors
/// It is too quiet, or too short, to have a level.
pub fn phone<S: Sound>(spoken: &Spoken<S>) -> Result<PhoneSound, LevelError> {
    at_level(&narrow(&spoken.samples.samples()))
}

/// Mono samples at [`SAMPLE_RATE`] in the telephone's band, at [`PHONE_RATE`] and at their own level.
pub fn narrow(samples: &[f32]) -> Vec<f32> {
    let step = (SAMPLE_RATE / PHONE_RATE) as usize;
    filtered(&filtered(samples, &LOW, step), &HIGH, 1)
}

fn at_level(samples: &[f32]) -> Result<PhoneSound, LevelError> {
    let measured = |samples: &[f32]| active_level(samples, PHONE_RATE).ok_or(LevelError::TooQuiet);
    let mut gain_db = TARGET_DBOV - measured(samples)?.dbov;
    let mut made =
        PhoneSound { samples: Vec::new(), level: ActiveLevel { dbov: 0.0, activity: 0.0 }, limited: false };
    for _ in 0..ROUNDS {
        made = with_gain(samples, gain_db, measured)?;
        let off = TARGET_DBOV - made.level.dbov;
        if off.abs() <= NEAR_DB {
            break;
        }
        gain_db += off;
    }
    Ok(made)
}

fn with_gain(
    samples: &[f32],
    gain_db: f64,
    measured: impl Fn(&[f32]) -> Result<ActiveLevel, LevelError>,
) -> Result<PhoneSound, LevelError> {
    let (gain, highest) = (to_gain(gain_db), to_gain(HIGHEST_DBOV));
    let limited = samples.iter().any(|sample| f64::from(sample.abs()) * gain > highest);
    let samples = limit(samples, gain, highest).samples();
    Ok(PhoneSound { level: measured(&samples)?, samples, limited })
}

/// The clips of messages for a phone system that stitches them itself: each trimmed as in a message, all
/// brought to the level with one gain, so that they match. `clips` are places in [`Bank::clips`].
///
/// # Errors
/// The clips that cannot be decoded, or are too quiet.
pub fn phone_clips(bank: &Bank<'_>, clips: &[usize]) -> Result<Vec<Vec<f32>>, Vec<Finding>> {
    let options = JoinOptions { lead: Frames(0), tail: Frames(0), ..JoinOptions::default() };
    let mut broken = Vec::new();
    let mut narrowed: Vec<Vec<f32>> = Vec::new();
    for clip in clips {
        match bank.part(*clip, None) {
            Ok(part) => narrowed.push(narrow(&join::join(vec![part], &options).samples)),
            Err(finding) => broken.push(finding),
        }
    }
    if !broken.is_empty() {
        return Err(broken);
    }
    let all = narrowed.concat();
    let levelled = at_level(&all).map_err(|error| {
        vec![Finding::error(Code::BROKEN_SOUND, format!("the clips cannot be levelled: {error}"))]
    })?;
    let mut rest = levelled.samples.as_slice();
    let cut = narrowed.iter().map(|clip| {
        let (head, tail) = rest.split_at(clip.len().min(rest.len()));
        rest = tail;
        head.to_vec()
    });
    Ok(cut.collect())
}

/// A pause as a telephone carries it: the room tone of messages, never dead.
pub fn room_tone(length: Frames) -> Vec<f32> {
    let options = JoinOptions { lead: length, tail: Frames(0), ..JoinOptions::default() };
    let gain = to_gain(TARGET_DBOV - options.speech_dbfs) as f32;
    narrow(&join::join(Vec::new(), &options).samples).into_iter().map(|sample| sample * gain).collect()
}
