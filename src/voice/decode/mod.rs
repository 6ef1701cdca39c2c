//! A sound file becomes mono samples.
//!
//! What a file is, its first bytes decide, never its name. It is decoded as a
//! stream of blocks, so that hours of sound take no more memory than seconds.

mod file;
mod mixer;
mod opus;
mod packets;

use std::collections::BTreeMap;
use std::io::{Cursor, Read, Seek, SeekFrom};

use rubato::audioadapter_buffers::direct::InterleavedSlice;
use rubato::{Fft, FixedSync, Resampler};
use symphonia::core::io::MediaSource;

pub(super) use file::{Kind, Problem, Sound};

use super::SAMPLE_RATE;
use file::{MOST_BYTES, MOST_SECONDS};
use mixer::Mixer;

/// Below the noise of a 16-bit file.
const SILENCE: f32 = 1.0 / 16_384.0;
/// Frames to a block of the resampler: long enough that its filter passes
/// nearly all of the source's band, and short clips still go fast.
const BLOCK: usize = 1024;

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
    if bytes.len() > MOST_BYTES {
        return Err(Problem::TooLarge);
    }
    let mut samples: Vec<f32> = Vec::new();
    let sound = stream(Cursor::new(bytes), most_seconds, &mut |_, block| samples.extend_from_slice(block))?;
    if samples.iter().all(|sample| sample.abs() < SILENCE) {
        return Err(if samples.is_empty() { Problem::Empty } else { Problem::Silent });
    }
    Ok((sound.rate, samples))
}

/// Hands a file's mono samples over block by block, each with the rate, and says what the file was.
///
/// # Errors
/// The first problem of the file. Blocks may have been handed over by then.
pub(super) fn stream(
    source: impl Read + Seek + Send + Sync,
    most_seconds: u64,
    take: &mut dyn FnMut(u32, &[f32]),
) -> Result<Sound, Problem> {
    let mut source = Source::new(source).map_err(|error| Problem::Broken(error.to_string()))?;
    let kind = match source.head().as_slice() {
        [] => return Err(Problem::Empty),
        head => Kind::of(head).ok_or_else(|| {
            Problem::Broken("neither WAV, FLAC, MP3, AAC, Ogg Vorbis nor Ogg Opus".to_owned())
        })?,
    };
    let mut mixer = Mixer { most_seconds, take, mono: Vec::new(), frames: 0 };
    match kind {
        Kind::Opus => opus::stream(source, &mut mixer),
        _ => packets::stream(source, kind, &mut mixer),
    }
}

/// A source of bytes that knows its length.
struct Source<R> {
    inner: R,
    length: u64,
}

impl<R: Read + Seek> Source<R> {
    fn new(mut inner: R) -> std::io::Result<Self> {
        let length = inner.seek(SeekFrom::End(0))?;
        inner.rewind()?;
        Ok(Source { inner, length })
    }

    /// The first bytes, without moving on.
    fn head(&mut self) -> Vec<u8> {
        let mut head = Vec::new();
        let read = self.inner.by_ref().take(64).read_to_end(&mut head);
        if read.and_then(|_| self.inner.rewind()).is_err() {
            head.clear();
        }
        head
    }
}

impl<R: Read> Read for Source<R> {
    fn read(&mut self, buffer: &mut [u8]) -> std::io::Result<usize> {
        self.inner.read(buffer)
    }
}

impl<R: Seek> Seek for Source<R> {
    fn seek(&mut self, to: SeekFrom) -> std::io::Result<u64> {
        self.inner.seek(to)
    }
}

impl<R: Read + Seek + Send + Sync> MediaSource for Source<R> {
    fn is_seekable(&self) -> bool {
        true
    }

    fn byte_len(&self) -> Option<u64> {
        Some(self.length)
    }
}
