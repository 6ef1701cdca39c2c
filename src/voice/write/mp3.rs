//! MP3, for stations that take nothing else. Built only with the feature `mp3`:
//! its encoder is under the LGPL.

use super::WriteError;

/// Whether this program can write MP3.
pub const MP3_BUILT_IN: bool = cfg!(feature = "mp3");

/// Thousands of bits a second: ample for one channel of speech.
#[cfg(feature = "mp3")]
const KBIT: u32 = 96;

/// What the encoder makes every tone louder by, in dB: between 1.009 and 1.022 at 100 Hz to 7 kHz, at 96 and
/// 128 kbit/s and at two levels, as ffmpeg plays them.
#[cfg(feature = "mp3")]
const TOO_LOUD_DB: f64 = 1.015;

/// An MP3 file of mono samples at [`SAMPLE_RATE`](crate::voice::SAMPLE_RATE).
///
/// # Errors
/// This program was built without MP3, or the encoder fails.
#[cfg(feature = "mp3")]
pub fn mp3(samples: &[f32]) -> Result<Vec<u8>, WriteError> {
    use shine_rs::{Mp3EncoderConfig, StereoMode, encode_pcm_to_mp3};
    let config = Mp3EncoderConfig::new().sample_rate(crate::voice::SAMPLE_RATE).bitrate(KBIT);
    let config = config.channels(1).stereo_mode(StereoMode::Mono);
    let full = (32_768.0 / crate::voice::loudness::to_gain(TOO_LOUD_DB)) as f32;
    let steps: Vec<i16> = samples.iter().map(|sample| crate::voice::simd::nearest(sample * full)).collect();
    encode_pcm_to_mp3(config, &steps).map_err(|error| WriteError::Mp3(error.to_string()))
}

/// No MP3: the program was built without it.
///
/// # Errors
/// Always.
#[cfg(not(feature = "mp3"))]
pub fn mp3(_samples: &[f32]) -> Result<Vec<u8>, WriteError> {
    Err(WriteError::WithoutMp3)
}
