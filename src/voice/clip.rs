//! Recorded files as samples: one channel at [`SAMPLE_RATE`](super::SAMPLE_RATE).

use std::collections::BTreeMap;
use std::io::Cursor;

use rubato::audioadapter_buffers::direct::InterleavedSlice;
use rubato::{Fft, FixedSync, Resampler};
use symphonia::core::codecs::audio::AudioDecoderOptions;
use symphonia::core::errors::Error;
use symphonia::core::formats::probe::Hint;
use symphonia::core::formats::{FormatOptions, TrackType};
use symphonia::core::io::MediaSourceStream;
use symphonia::core::meta::MetadataOptions;

use super::SAMPLE_RATE;

/// A phrase takes seconds; a file this long is something else.
const LONGEST_SECONDS: usize = 120;
/// Phones record at 8 kHz, studios at up to 192 kHz.
const RATES: std::ops::RangeInclusive<u32> = 8_000..=192_000;

/// A recording as it came: one channel at its own rate.
#[derive(Debug, Clone, PartialEq)]
pub struct Recorded {
    /// Samples from −1 to 1; several channels are averaged.
    pub samples: Vec<f32>,
    /// Samples a second.
    pub rate: u32,
}

/// What is wrong with a recording.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum ClipError {
    /// Not a sound file that is known here.
    #[error("the file is not FLAC or WAV ({0})")]
    Unknown(String),
    /// The sound breaks off or is damaged.
    #[error("the sound is damaged ({0})")]
    Damaged(String),
    /// No samples, or none but zero.
    #[error("the recording is empty or silent")]
    Silent,
    /// A rate no recorder has.
    #[error("the sample rate {0} Hz is not possible")]
    Rate(u32),
    /// Too long for a phrase.
    #[error("the recording is longer than {LONGEST_SECONDS} s")]
    TooLong,
    /// The rate could not be changed: a fault of ours.
    #[error("the sample rate cannot be changed ({0})")]
    Rates(String),
}

/// Decodes a FLAC or WAV file.
///
/// # Errors
/// Files that are damaged, silent, too long, or no sound at all.
pub fn decode(bytes: &[u8]) -> Result<Recorded, ClipError> {
    let unknown = |error: Error| ClipError::Unknown(error.to_string());
    let stream = MediaSourceStream::new(Box::new(Cursor::new(bytes.to_vec())), Default::default());
    let mut format = symphonia::default::get_probe()
        .probe(&Hint::new(), stream, FormatOptions::default(), MetadataOptions::default())
        .map_err(unknown)?;
    let track = format.default_track(TrackType::Audio).ok_or_else(|| ClipError::Unknown("no sound in it".to_owned()))?;
    let track_id = track.id;
    let parameters = track.codec_params.as_ref().and_then(|parameters| parameters.audio());
    let parameters = parameters.ok_or_else(|| ClipError::Unknown("no sound in it".to_owned()))?;
    let mut decoder =
        symphonia::default::get_codecs().make_audio_decoder(parameters, &AudioDecoderOptions::default()).map_err(unknown)?;
    let mut samples = Vec::new();
    let mut rate = 0;
    let mut interleaved: Vec<f32> = Vec::new();
    while let Some(packet) = format.next_packet().map_err(|error| ClipError::Damaged(error.to_string()))? {
        if packet.track_id != track_id {
            continue;
        }
        let buffer = decoder.decode(&packet).map_err(|error| ClipError::Damaged(error.to_string()))?;
        rate = buffer.spec().rate();
        if !RATES.contains(&rate) {
            return Err(ClipError::Rate(rate));
        }
        let channels = buffer.spec().channels().count().max(1);
        buffer.copy_to_vec_interleaved(&mut interleaved);
        samples.extend(interleaved.chunks_exact(channels).map(|frame| frame.iter().sum::<f32>() / channels as f32));
        if samples.len() > LONGEST_SECONDS * rate as usize {
            return Err(ClipError::TooLong);
        }
    }
    if samples.iter().any(|sample| !sample.is_finite()) {
        return Err(ClipError::Damaged("a sample is not a number".to_owned()));
    }
    if samples.iter().all(|sample| *sample == 0.0) {
        return Err(ClipError::Silent);
    }
    Ok(Recorded { samples, rate })
}

/// Brings recordings to [`SAMPLE_RATE`]; keeps its filters between them.
#[derive(Default)]
pub struct Converter {
    by_rate: BTreeMap<u32, Fft<f32>>,
}

impl std::fmt::Debug for Converter {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("Converter").field("rates", &self.by_rate.keys()).finish()
    }
}

impl Converter {
    /// The recording's samples at [`SAMPLE_RATE`].
    ///
    /// # Errors
    /// A rate that cannot be changed.
    pub fn convert(&mut self, recorded: Recorded) -> Result<Vec<f32>, ClipError> {
        if recorded.rate == SAMPLE_RATE {
            return Ok(recorded.samples);
        }
        let failed = |error: &dyn std::fmt::Display| ClipError::Rates(error.to_string());
        let resampler = match self.by_rate.entry(recorded.rate) {
            std::collections::btree_map::Entry::Occupied(entry) => entry.into_mut(),
            std::collections::btree_map::Entry::Vacant(entry) => {
                let chunk = 1024;
                let made = Fft::new(recorded.rate as usize, SAMPLE_RATE as usize, chunk, 1, FixedSync::Input);
                entry.insert(made.map_err(|error| failed(&error))?)
            }
        };
        let input = InterleavedSlice::new(&recorded.samples, 1, recorded.samples.len()).map_err(|error| failed(&error))?;
        let output = resampler.process_all(&input, recorded.samples.len(), None).map_err(|error| failed(&error))?;
        Ok(output.take_data())
    }
}
