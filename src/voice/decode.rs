//! A clip's file becomes mono samples at the common rate.

use std::collections::BTreeMap;
use std::io::Cursor;

use rubato::audioadapter_buffers::direct::InterleavedSlice;
use rubato::{Fft, FixedSync, Resampler};
use symphonia::core::codecs::audio::AudioDecoderOptions;
use symphonia::core::errors::Error;
use symphonia::core::formats::probe::Hint;
use symphonia::core::formats::{FormatOptions, TrackType};
use symphonia::core::io::{MediaSourceStream, MediaSourceStreamOptions};
use symphonia::core::meta::MetadataOptions;

use super::SAMPLE_RATE;

/// A minute of stereo at 192 kHz and 24 bits.
const MOST_BYTES: usize = 70_000_000;
/// The longest phrase that anybody speaks in one breath is far shorter.
const MOST_SECONDS: u64 = 60;
const RATES: std::ops::RangeInclusive<u32> = 8_000..=192_000;
/// Below the noise of a 16-bit file.
const SILENCE: f32 = 1.0 / 16_384.0;
/// Frames to a block of the resampler: long enough that its filter passes
/// nearly all of the source's band, and short clips still go fast.
const BLOCK: usize = 1024;

/// Why a clip cannot be used.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub(super) enum Problem {
    #[error("is empty")]
    Empty,
    #[error("is larger than {} MB", MOST_BYTES / 1_000_000)]
    TooLarge,
    #[error("cannot be decoded ({0})")]
    Broken(String),
    #[error("has {0} channels")]
    Channels(usize),
    #[error("has {0} samples a second")]
    Rate(u32),
    #[error("is longer than {0} seconds")]
    TooLong(u64),
    #[error("has samples that are no numbers")]
    NotFinite,
    #[error("is silent")]
    Silent,
}

impl Problem {
    pub(super) fn hint(&self) -> &'static str {
        match self {
            Problem::Empty | Problem::Silent => "record it again",
            Problem::TooLarge | Problem::TooLong(_) => "cut the recording to the phrase",
            Problem::Broken(_) | Problem::NotFinite => "export it again as FLAC or 16-bit WAV",
            Problem::Channels(_) => "export it in mono",
            Problem::Rate(_) => "export it at 48000 samples a second",
        }
    }
}

/// Decodes clips; keeps what can serve the next one.
#[derive(Default)]
pub(super) struct Decoder {
    resamplers: BTreeMap<u32, Fft<f32>>,
}

impl Decoder {
    /// The clip in mono at [`SAMPLE_RATE`].
    pub(super) fn decode(&mut self, bytes: &[u8]) -> Result<Vec<f32>, Problem> {
        self.decode_up_to(bytes, MOST_SECONDS)
    }

    /// The same for a sound of at most so many seconds.
    pub(super) fn decode_up_to(&mut self, bytes: &[u8], most_seconds: u64) -> Result<Vec<f32>, Problem> {
        let (rate, samples) = stored_up_to(bytes, most_seconds)?;
        if rate == SAMPLE_RATE { Ok(samples) } else { self.resample(rate, &samples) }
    }

    fn resample(&mut self, rate: u32, samples: &[f32]) -> Result<Vec<f32>, Problem> {
        let broken = |error: &dyn std::error::Error| Problem::Broken(error.to_string());
        let resampler = match self.resamplers.entry(rate) {
            std::collections::btree_map::Entry::Occupied(entry) => entry.into_mut(),
            std::collections::btree_map::Entry::Vacant(entry) => entry.insert(
                Fft::new(rate as usize, SAMPLE_RATE as usize, BLOCK, 1, FixedSync::Both)
                    .map_err(|error| broken(&error))?,
            ),
        };
        let input = InterleavedSlice::new(samples, 1, samples.len()).map_err(|error| broken(&error))?;
        let output = resampler.process_all(&input, samples.len(), None).map_err(|error| broken(&error))?;
        Ok(output.take_data())
    }
}

/// The clip in mono as it is stored, at its own rate; two channels are averaged.
pub(super) fn stored(bytes: &[u8]) -> Result<(u32, Vec<f32>), Problem> {
    stored_up_to(bytes, MOST_SECONDS)
}

fn stored_up_to(bytes: &[u8], most_seconds: u64) -> Result<(u32, Vec<f32>), Problem> {
    if bytes.is_empty() {
        return Err(Problem::Empty);
    }
    if bytes.len() > MOST_BYTES {
        return Err(Problem::TooLarge);
    }
    let (rate, samples) = unpack(bytes, most_seconds)?;
    if !samples.iter().all(|sample| sample.is_finite()) {
        return Err(Problem::NotFinite);
    }
    if samples.iter().all(|sample| sample.abs() < SILENCE) {
        return Err(if samples.is_empty() { Problem::Empty } else { Problem::Silent });
    }
    Ok((rate, samples))
}

fn unpack(bytes: &[u8], most_seconds: u64) -> Result<(u32, Vec<f32>), Problem> {
    let broken = |error: Error| Problem::Broken(error.to_string());
    let stream = MediaSourceStream::new(Box::new(Cursor::new(bytes)), MediaSourceStreamOptions::default());
    let probe = symphonia::default::get_probe();
    let mut format = probe
        .probe(&Hint::new(), stream, FormatOptions::default(), MetadataOptions::default())
        .map_err(|_| Problem::Broken("no kind of sound file that is known".to_owned()))?;
    let track = format.default_track(TrackType::Audio).ok_or(Problem::Empty)?;
    let (id, promised) = (track.id, track.num_frames);
    let parameters = track.codec_params.as_ref().and_then(|parameters| parameters.audio());
    let parameters =
        parameters.ok_or_else(|| Problem::Broken("it does not say how it is coded".to_owned()))?;
    let rate = parameters.sample_rate.unwrap_or(0);
    if !RATES.contains(&rate) {
        return Err(Problem::Rate(rate));
    }
    let most = most_seconds * u64::from(rate);
    let options = AudioDecoderOptions::default().verify(true);
    let mut decoder =
        symphonia::default::get_codecs().make_audio_decoder(parameters, &options).map_err(broken)?;
    let mut samples: Vec<f32> = Vec::with_capacity(promised.unwrap_or(0).min(most) as usize);
    let mut interleaved: Vec<f32> = Vec::new();
    while let Some(packet) = format.next_packet().map_err(broken)? {
        if packet.track_id != id {
            continue;
        }
        let buffer = decoder.decode(&packet).map_err(broken)?;
        match buffer.num_planes() {
            1 | 2 => {
                buffer.copy_to_vec_interleaved(&mut interleaved);
                if buffer.num_planes() == 1 {
                    samples.extend_from_slice(&interleaved);
                } else {
                    samples.extend(interleaved.chunks_exact(2).map(|pair| 0.5 * pair.iter().sum::<f32>()));
                }
            }
            channels => return Err(Problem::Channels(channels)),
        }
        if samples.len() as u64 > most {
            return Err(Problem::TooLong(most_seconds));
        }
    }
    if promised.is_some_and(|promised| (samples.len() as u64) < promised) {
        return Err(Problem::Broken("its end is missing".to_owned()));
    }
    if decoder.finalize().verify_ok == Some(false) {
        return Err(Problem::Broken("its check sum does not match".to_owned()));
    }
    Ok((rate, samples))
}
