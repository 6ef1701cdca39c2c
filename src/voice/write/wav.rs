//! WAV: 16 bits, mono, 48 kHz.

use std::io::Cursor;

use hound::{SampleFormat, WavSpec, WavWriter};

use super::WriteError;
use crate::voice::SAMPLE_RATE;
use crate::voice::noise::Noise;

/// How a WAV file is written.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct WavOptions {
    /// Whether rounding to 16 bits is hidden in triangular noise of one step.
    pub dither: bool,
}

impl Default for WavOptions {
    fn default() -> Self {
        WavOptions { dither: true }
    }
}

/// Steps from zero to full scale.
const STEPS: f32 = 32_768.0;

/// A WAV file of mono samples at [`SAMPLE_RATE`]. What passes full scale is cut off.
///
/// # Errors
/// The samples are too many for the format.
pub fn wav(samples: &[f32], options: &WavOptions) -> Result<Vec<u8>, WriteError> {
    let spec = WavSpec {
        channels: 1,
        sample_rate: SAMPLE_RATE,
        bits_per_sample: 16,
        sample_format: SampleFormat::Int,
    };
    let failed = |error: hound::Error| WriteError::Wav(error.to_string());
    // The header's 32-bit sizes count everything after their own field.
    let frames = u32::try_from(samples.len()).ok().filter(|frames| *frames < u32::MAX / 2 - 64);
    let frames = frames.ok_or(WriteError::TooLong { frames: samples.len() })?;
    let mut file = Cursor::new(Vec::with_capacity(samples.len() * 2 + 64));
    let mut writer = WavWriter::new(&mut file, spec).map_err(failed)?;
    let mut block = writer.get_i16_writer(frames);
    let mut noise = Noise::new(0xD17E);
    for sample in samples {
        let dither = if options.dither { noise.triangular() } else { 0.0 };
        block.write_sample(nearest(sample * STEPS + dither));
    }
    block.flush().map_err(failed)?;
    writer.finalize().map_err(failed)?;
    Ok(file.into_inner())
}

/// The nearest step; ties go up. Without `round`, which is a slow call where
/// the processor's own rounding may not be used.
pub(super) fn nearest(value: f32) -> i16 {
    // Above zero, cutting off the fraction of a half more is rounding.
    ((value.clamp(-STEPS, STEPS - 1.0) + (STEPS + 0.5)) as i32 - STEPS as i32) as i16
}
