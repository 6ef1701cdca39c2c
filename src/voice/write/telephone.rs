//! Telephone WAV: 8 kHz, by a companding law of ITU-T G.711 or in 16 bits.

use audio_codec_algorithms::{encode_alaw, encode_ulaw};

use super::WriteError;
use super::riff::{Wave, fits, format, in_memory};
use crate::voice::channel::PHONE_RATE;

/// A companding law of ITU-T G.711.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Law {
    /// As telephones in Africa and Europe use it.
    A,
    /// As in North America and Japan.
    Mu,
}

impl Law {
    /// The format's number in WAV files.
    fn tag(self) -> u16 {
        match self {
            Law::A => 6,
            Law::Mu => 7,
        }
    }

    fn encode(self, step: i16) -> u8 {
        match self {
            Law::A => encode_alaw(step),
            Law::Mu => encode_ulaw(step),
        }
    }
}

/// Mono samples at [`PHONE_RATE`] in 8 bits each. What passes full scale is cut off.
///
/// # Errors
/// The samples are too many for the format.
pub fn telephone_wav(samples: &[f32], law: Law) -> Result<Vec<u8>, WriteError> {
    let data: Vec<u8> = samples.iter().map(|sample| law.encode(step(*sample))).collect();
    let mut fmt = format(law.tag(), PHONE_RATE, 1);
    // Formats other than PCM say how many bytes more they have: none.
    fmt.extend(0u16.to_le_bytes());
    let count = (samples.len() as u32).to_le_bytes();
    file_of(samples.len(), &[(*b"fmt ", &fmt), (*b"fact", &count), (*b"data", &data)])
}

/// Mono samples at [`PHONE_RATE`] in 16 bits each, for systems that compand themselves.
///
/// # Errors
/// The samples are too many for the format.
pub fn telephone_pcm(samples: &[f32]) -> Result<Vec<u8>, WriteError> {
    let data: Vec<u8> = samples.iter().flat_map(|sample| step(*sample).to_le_bytes()).collect();
    file_of(samples.len(), &[(*b"fmt ", &format(1, PHONE_RATE, 2)), (*b"data", &data)])
}

fn file_of(frames: usize, chunks: &[([u8; 4], &[u8])]) -> Result<Vec<u8>, WriteError> {
    fits(frames, 2, 0)?;
    in_memory(|out| {
        let mut file = Wave::begin(out)?;
        chunks.iter().try_for_each(|(name, bytes)| file.chunk(*name, bytes))?;
        file.finish().map(|_| ())
    })
}

fn step(sample: f32) -> i16 {
    (sample * 32_768.0).round().clamp(-32_768.0, 32_767.0) as i16
}
