//! WAV: 16 bits, mono, 48 kHz.

use fearless_simd::{Level, Simd, dispatch};

use super::WriteError;
use super::riff::{Wave, format};
use crate::voice::SAMPLE_RATE;
use crate::voice::noise::triangular;
use crate::voice::sound::{PIECE, Sound, pieces};

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

/// A WAV file of a sound. What passes full scale is cut off.
///
/// # Errors
/// The samples are too many for the format.
pub fn wav(sound: &(impl Sound + ?Sized), options: &WavOptions) -> Result<Vec<u8>, WriteError> {
    let mut file = Wave::new(sound.frames() * 2);
    add_sound(&mut file, sound, options, |_| {})?;
    file.finish()
}

/// Samples that are rounded at once.
const BLOCK: usize = 64;

/// Adds the chunks that hold the sound; `shown` gets the bytes of its steps, piece by piece.
pub(super) fn add_sound(
    file: &mut Wave,
    sound: &(impl Sound + ?Sized),
    options: &WavOptions,
    mut shown: impl FnMut(&[u8]),
) -> Result<(), WriteError> {
    file.chunk(*b"fmt ", &format(1, SAMPLE_RATE, 2))?;
    let dither = if options.dither { 1.0 } else { 0.0 };
    let data = |write: &mut dyn FnMut(&[u8])| {
        let mut bytes = [0u8; 2 * PIECE];
        let mut first = 0u32;
        pieces(sound, &mut |piece| {
            let bytes = bytes.get_mut(..2 * piece.len()).unwrap_or_default();
            dispatch!(Level::new(), simd => steps(simd, piece, dither, first, bytes));
            first = first.wrapping_add(piece.len() as u32);
            shown(bytes);
            write(bytes);
        });
    };
    let frames = sound.frames();
    file.chunk_of(*b"data", frames * 2, data).map_err(|_| WriteError::TooLong { frames })
}

/// Rounds samples, from the one with the number `first` on, to steps, after adding so much noise.
#[inline(always)]
fn steps<S: Simd>(simd: S, samples: &[f32], dither: f32, mut first: u32, data: &mut [u8]) {
    let (blocks, rest) = samples.as_chunks::<BLOCK>();
    let (whole, end) = data.split_at_mut((2 * BLOCK * blocks.len()).min(data.len()));
    for (block, bytes) in blocks.iter().zip(whole.as_chunks_mut::<{ 2 * BLOCK }>().0) {
        *bytes = block_of(simd, block, dither, first);
        first = first.wrapping_add(BLOCK as u32);
    }
    let mut block = [0f32; BLOCK];
    block.iter_mut().zip(rest).for_each(|(place, sample)| *place = *sample);
    end.iter_mut().zip(block_of(simd, &block, dither, first)).for_each(|(place, byte)| *place = byte);
}

#[inline(always)]
#[allow(clippy::indexing_slicing)] // Arrays of one length, in plain loops, which surely become vector code.
fn block_of<S: Simd>(_: S, block: &[f32; BLOCK], dither: f32, first: u32) -> [u8; 2 * BLOCK] {
    let mut steps = [0i16; BLOCK];
    for at in 0..BLOCK {
        let noise = triangular(0xD17E, first.wrapping_add(at as u32));
        steps[at] = nearest(block[at] * STEPS + dither * noise);
    }
    let mut bytes = [0u8; 2 * BLOCK];
    for at in 0..BLOCK {
        let [low, high] = steps[at].to_le_bytes();
        bytes[2 * at] = low;
        bytes[2 * at + 1] = high;
    }
    bytes
}

/// The nearest step. Without `round`, or a conversion that minds what is no number, which no vectors do.
#[inline(always)]
pub(super) fn nearest(value: f32) -> i16 {
    // So far up no fractions are left, and the lowest bits count the steps.
    const FAR: f32 = 12_582_912.0;
    (value.clamp(-STEPS, STEPS - 1.0) + FAR).to_bits() as i16
}
