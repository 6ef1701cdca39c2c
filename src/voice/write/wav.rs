//! WAV: 16 bits, mono, 48 kHz.

use std::io::{self, Seek, Write};

use fearless_simd::{Level, Simd, dispatch};

use super::WriteError;
use super::riff::{Wave, fits, format, in_memory};
use crate::voice::SAMPLE_RATE;
use crate::voice::noise::{STRETCH, dither};
use crate::voice::simd::nearest;
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
    fits(sound.frames(), 2, 0)?;
    in_memory(|out| {
        let mut file = Wave::begin(out)?;
        add_sound(&mut file, sound, options, |_| {})?;
        file.finish().map(|_| ())
    })
}

/// Adds the chunks that hold the sound; `shown` gets the bytes of its steps, piece by piece.
pub(super) fn add_sound(
    file: &mut Wave<impl Write + Seek>,
    sound: &(impl Sound + ?Sized),
    options: &WavOptions,
    mut shown: impl FnMut(&[u8]),
) -> io::Result<()> {
    file.chunk(*b"fmt ", &format(1, SAMPLE_RATE, 2))?;
    let noise = if options.dither { 1.0 } else { 0.0 };
    file.chunk_of(*b"data", sound.frames() * 2, |out| {
        let mut bytes = [0u8; 2 * PIECE];
        let mut stretch = 0u32;
        let mut written = Ok(());
        pieces(sound, &mut |piece| {
            let bytes = bytes.get_mut(..2 * piece.len()).unwrap_or_default();
            dispatch!(Level::new(), simd => steps(simd, piece, noise, stretch, bytes));
            stretch = stretch.wrapping_add((PIECE / STRETCH) as u32);
            shown(bytes);
            if written.is_ok() {
                written = out.write_all(bytes);
            }
        });
        written
    })
}

/// Rounds samples to steps after adding so much noise, from that of a stretch on.
#[inline(always)]
fn steps<S: Simd>(simd: S, samples: &[f32], noise: f32, mut stretch: u32, data: &mut [u8]) {
    let (blocks, rest) = samples.as_chunks::<STRETCH>();
    let (whole, end) = data.split_at_mut((2 * STRETCH * blocks.len()).min(data.len()));
    for (block, bytes) in blocks.iter().zip(whole.as_chunks_mut::<{ 2 * STRETCH }>().0) {
        *bytes = block_of(simd, block, noise, stretch);
        stretch = stretch.wrapping_add(1);
    }
    let mut block = [0f32; STRETCH];
    block.iter_mut().zip(rest).for_each(|(place, sample)| *place = *sample);
    end.iter_mut().zip(block_of(simd, &block, noise, stretch)).for_each(|(place, byte)| *place = byte);
}

#[inline(always)]
#[allow(clippy::indexing_slicing)] // Arrays of one length, in plain loops, which surely become vector code.
fn block_of<S: Simd>(_: S, block: &[f32; STRETCH], noise: f32, stretch: u32) -> [u8; 2 * STRETCH] {
    let [one, other] = dither(stretch);
    let mut steps = [0i16; STRETCH];
    for at in 0..STRETCH {
        steps[at] = nearest(block[at] * STEPS + noise * (one[at] + other[at]));
    }
    let mut bytes = [0u8; 2 * STRETCH];
    for at in 0..STRETCH {
        let [low, high] = steps[at].to_le_bytes();
        bytes[2 * at] = low;
        bytes[2 * at + 1] = high;
    }
    bytes
}
