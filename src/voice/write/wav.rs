//! WAV: 16 bits, mono, 48 kHz.

use fearless_simd::{Level, Simd, dispatch};

use super::WriteError;
use super::riff::{Wave, format};
use crate::voice::SAMPLE_RATE;
use crate::voice::noise::triangular;

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
    let mut file = Wave::new(samples.len() * 2);
    sound(&mut file, samples, options)?;
    file.finish()
}

/// Adds the chunks that hold the sound; the bytes of its steps are given back.
pub(super) fn sound<'w>(
    file: &'w mut Wave,
    samples: &[f32],
    options: &WavOptions,
) -> Result<&'w mut [u8], WriteError> {
    file.chunk(*b"fmt ", &format(1, SAMPLE_RATE, 2))?;
    let data =
        file.room(*b"data", samples.len() * 2).map_err(|_| WriteError::TooLong { frames: samples.len() })?;
    let dither = if options.dither { 1.0 } else { 0.0 };
    dispatch!(Level::new(), simd => steps(simd, samples, dither, data));
    Ok(data)
}

/// Samples that are rounded at once.
const BLOCK: usize = 256;

/// Rounds samples to steps, after adding so much noise.
#[inline(always)]
fn steps<S: Simd>(_: S, samples: &[f32], dither: f32, data: &mut [u8]) {
    let mut rounded = [0i16; BLOCK];
    for ((block, bytes), first) in
        samples.chunks(BLOCK).zip(data.chunks_mut(2 * BLOCK)).zip((0u32..).step_by(BLOCK))
    {
        for ((sample, step), place) in block.iter().zip(&mut rounded).zip(first..) {
            *step = nearest(sample * STEPS + dither * triangular(0xD17E, place));
        }
        let (pairs, _) = bytes.as_chunks_mut::<2>();
        pairs.iter_mut().zip(rounded).for_each(|(pair, step)| *pair = step.to_le_bytes());
    }
}

/// The nearest step. Without `round`, or a conversion that minds what is no number, which no vectors do.
#[inline(always)]
pub(super) fn nearest(value: f32) -> i16 {
    // So far up no fractions are left, and the lowest bits count the steps.
    const FAR: f32 = 12_582_912.0;
    (value.clamp(-STEPS, STEPS - 1.0) + FAR).to_bits() as i16
}
