//! A station's own sounds, as files.

use crate::finding::{Code, Finding};
use crate::voice::Sound as _;
use crate::voice::decode::{Decoder, Problem};
use crate::voice::level::{LevelOptions, to_target};

/// What a sound is for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Use {
    /// Heard before or after the voice.
    Signature,
    /// Heard under it.
    Bed,
}

impl Use {
    /// The longest such sound, in seconds.
    fn longest(self) -> u64 {
        match self {
            Use::Signature => 60,
            Use::Bed => 900,
        }
    }

    /// The shortest, in seconds: a signature must have a loudness, and a bed that comes again at once is heard as a pattern.
    fn shortest(self) -> f64 {
        match self {
            Use::Signature => 0.4,
            Use::Bed => 2.0,
        }
    }
}

/// Reads a sound: mono at [`SAMPLE_RATE`](crate::voice::SAMPLE_RATE) and at -23 LUFS, two channels averaged.
///
/// # Errors
/// What is wrong with it, under its `name`.
pub fn read(bytes: &[u8], name: &str, of: Use) -> Result<Vec<f32>, Finding> {
    let wrong =
        |message: String, hint: &str| Finding::error(Code::BROKEN_SOUND, message).file(name).hint(hint);
    let samples = Decoder::default().decode_up_to(bytes, of.longest()).map_err(|problem| {
        let hint = match &problem {
            Problem::Empty | Problem::Silent => "choose a file with sound in it",
            Problem::TooLarge | Problem::TooLong(_) => "cut it shorter",
            Problem::Broken(_) | Problem::NotFinite | Problem::TooLoud => {
                "export it again as WAV, FLAC, MP3 or Ogg Vorbis"
            }
            Problem::Channels(_) => "export it in stereo or mono",
            Problem::Rate(_) => "export it at 48000 samples a second",
        };
        wrong(problem.to_string(), hint)
    })?;
    let seconds = samples.len() as f64 / f64::from(crate::voice::SAMPLE_RATE);
    if seconds < of.shortest() {
        let message = format!("is {seconds:.2} s long");
        return Err(wrong(message, &format!("it takes at least {} s", of.shortest())));
    }
    let levelled = to_target(samples, &LevelOptions::default());
    levelled
        .map(|levelled| levelled.sound.samples())
        .map_err(|error| wrong(error.to_string(), "choose another sound"))
}
