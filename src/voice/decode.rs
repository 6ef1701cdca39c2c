//! A sound file becomes mono samples.
//!
//! What a file is, its first bytes decide, never its name. It is decoded as a
//! stream of blocks, so that hours of sound take no more memory than seconds.

mod opus;

use std::collections::BTreeMap;
use std::io::{Cursor, Read, Seek, SeekFrom};

use rubato::audioadapter_buffers::direct::InterleavedSlice;
use rubato::{Fft, FixedSync, Resampler};
use symphonia::core::codecs::audio::AudioDecoderOptions;
use symphonia::core::errors::Error;
use symphonia::core::formats::probe::Hint;
use symphonia::core::formats::{FormatOptions, TrackType};
use symphonia::core::io::{MediaSource, MediaSourceStream, MediaSourceStreamOptions};
use symphonia::core::meta::MetadataOptions;

use super::SAMPLE_RATE;

/// A minute of stereo at 192 kHz and 24 bits.
const MOST_BYTES: usize = 70_000_000;
/// The longest phrase that anybody speaks in one breath is far shorter.
const MOST_SECONDS: u64 = 60;
const RATES: std::ops::RangeInclusive<u32> = 8_000..=192_000;
/// Below the noise of a 16-bit file.
const SILENCE: f32 = 1.0 / 16_384.0;
/// Some programs write a little beyond full scale; nothing that was recorded lies 60 dB beyond it.
const LOUDEST: f32 = 1000.0;
/// Frames to a block of the resampler: long enough that its filter passes
/// nearly all of the source's band, and short clips still go fast.
const BLOCK: usize = 1024;
/// The length a WAV claims when it was written into a pipe, whose end nobody knew.
const UNKNOWN_BYTES: u64 = 0xFFFF_FF00;

/// Why a sound file cannot be used.
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
    #[error("has samples a thousand times beyond full scale")]
    TooLoud,
    #[error("is silent")]
    Silent,
}

impl Problem {
    pub(super) fn hint(&self) -> &'static str {
        match self {
            Problem::Empty | Problem::Silent => "record it again",
            Problem::TooLong(seconds) if *seconds > MOST_SECONDS => "cut it into several recordings",
            Problem::TooLarge | Problem::TooLong(_) => "cut the recording to the phrase",
            Problem::Broken(_) | Problem::NotFinite | Problem::TooLoud => {
                "export it again as FLAC or 16-bit WAV"
            }
            Problem::Channels(_) => "export it in mono",
            Problem::Rate(_) => "export it at 48000 samples a second",
        }
    }
}

/// The kinds of file that can be read.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Kind {
    Wav,
    Flac,
    Mp3,
    /// In MP4, or bare (ADTS).
    Aac,
    Vorbis,
    Opus,
    OggFlac,
}

impl Kind {
    /// By the first bytes of a file; `None` where they are of no known kind.
    fn of(head: &[u8]) -> Option<Kind> {
        let at = |place: usize, mark: &[u8]| head.get(place..place + mark.len()) == Some(mark);
        match head {
            _ if at(0, b"RIFF") || at(0, b"RF64") => Some(Kind::Wav),
            _ if at(0, b"fLaC") => Some(Kind::Flac),
            _ if at(0, b"OggS") && at(28, b"OpusHead") => Some(Kind::Opus),
            _ if at(0, b"OggS") && at(28, b"\x7fFLAC") => Some(Kind::OggFlac),
            _ if at(0, b"OggS") && at(28, b"\x01vorbis") => Some(Kind::Vorbis),
            _ if at(4, b"ftyp") => Some(Kind::Aac),
            _ if at(0, b"ID3") => Some(Kind::Mp3),
            [0xFF, second, ..] if second & 0xF6 == 0xF0 => Some(Kind::Aac),
            [0xFF, second, ..] if second & 0xE0 == 0xE0 => Some(Kind::Mp3),
            _ => None,
        }
    }

    /// What users call it.
    pub(super) fn name(self) -> &'static str {
        match self {
            Kind::Wav => "WAV",
            Kind::Flac => "FLAC",
            Kind::Mp3 => "MP3",
            Kind::Aac => "AAC",
            Kind::Vorbis => "Ogg Vorbis",
            Kind::Opus => "Ogg Opus",
            Kind::OggFlac => "Ogg FLAC",
        }
    }

    /// Whether a file's ending belongs to it.
    pub(super) fn goes_by(self, ending: &str) -> bool {
        let endings: &[&str] = match self {
            Kind::Wav => &["wav", "wave", "bwf"],
            Kind::Flac => &["flac"],
            Kind::Mp3 => &["mp3"],
            Kind::Aac => &["m4a", "mp4", "aac", "m4b"],
            Kind::Vorbis => &["ogg", "oga"],
            Kind::Opus => &["opus", "ogg", "oga"],
            Kind::OggFlac => &["oga", "ogg", "flac"],
        };
        endings.contains(&ending)
    }

    /// Whether a length that differs from the promised one means that sound is missing.
    fn is_exact(self) -> bool {
        matches!(self, Kind::Wav | Kind::Flac | Kind::OggFlac)
    }
}

/// What a decoded file was.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Sound {
    pub(super) kind: Kind,
    /// Frames a second, as they were handed over.
    pub(super) rate: u32,
    /// 1 or 2; two are averaged.
    pub(super) channels: usize,
    /// Bits of a sample, where the file says.
    pub(super) bits: Option<u32>,
    /// Frames handed over.
    pub(super) frames: u64,
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
        _ => stream_with_symphonia(source, kind, &mut mixer),
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

/// Averages channels and keeps to the limits.
struct Mixer<'t> {
    most_seconds: u64,
    take: &'t mut dyn FnMut(u32, &[f32]),
    mono: Vec<f32>,
    frames: u64,
}

impl Mixer<'_> {
    fn add(&mut self, rate: u32, channels: usize, interleaved: &[f32]) -> Result<(), Problem> {
        let mono = match channels {
            1 => interleaved,
            2 => {
                self.mono.clear();
                self.mono.extend(interleaved.chunks_exact(2).map(|pair| 0.5 * pair.iter().sum::<f32>()));
                &self.mono
            }
            channels => return Err(Problem::Channels(channels)),
        };
        // Floating point reaches so far that a filter would leave the numbers. What is no number lies within nothing.
        if !mono.iter().fold(true, |within, sample| within & (sample.abs() <= LOUDEST)) {
            let finite = mono.iter().all(|sample| sample.is_finite());
            return Err(if finite { Problem::TooLoud } else { Problem::NotFinite });
        }
        self.frames += mono.len() as u64;
        if self.frames > self.most_seconds * u64::from(rate) {
            return Err(Problem::TooLong(self.most_seconds));
        }
        (self.take)(rate, mono);
        Ok(())
    }
}

fn stream_with_symphonia(
    source: Source<impl Read + Seek + Send + Sync>,
    kind: Kind,
    mixer: &mut Mixer<'_>,
) -> Result<Sound, Problem> {
    let broken = |error: Error| match error {
        Error::IoError(error) if error.kind() == std::io::ErrorKind::UnexpectedEof => {
            Problem::Broken("its end is missing".to_owned())
        }
        error => Problem::Broken(error.to_string()),
    };
    let stream = MediaSourceStream::new(Box::new(source), MediaSourceStreamOptions::default());
    let mut format = symphonia::default::get_probe()
        .probe(&Hint::new(), stream, FormatOptions::default(), MetadataOptions::default())
        .map_err(|_| {
            Problem::Broken(format!("it begins like {}, and goes on like nothing known", kind.name()))
        })?;
    let track = format.default_track(TrackType::Audio).ok_or(Problem::Empty)?;
    let (id, promised) = (track.id, track.num_frames);
    let parameters = track.codec_params.as_ref().and_then(|parameters| parameters.audio());
    let parameters =
        parameters.ok_or_else(|| Problem::Broken("it does not say how it is coded".to_owned()))?;
    let stated = parameters.sample_rate.unwrap_or(0);
    if !RATES.contains(&stated) {
        return Err(Problem::Rate(stated));
    }
    let bits = parameters.bits_per_sample;
    let options = AudioDecoderOptions::default().verify(true);
    let mut decoder =
        symphonia::default::get_codecs().make_audio_decoder(parameters, &options).map_err(broken)?;
    let mut interleaved: Vec<f32> = Vec::new();
    let (mut rate, mut channels) = (stated, 1);
    while let Some(packet) = format.next_packet().map_err(broken)? {
        if packet.track_id != id {
            continue;
        }
        let buffer = decoder.decode(&packet).map_err(broken)?;
        let now = (buffer.spec().rate(), buffer.num_planes());
        if mixer.frames > 0 && now != (rate, channels) {
            return Err(Problem::Broken("its rate or channels change on the way".to_owned()));
        }
        (rate, channels) = now;
        if !RATES.contains(&rate) {
            return Err(Problem::Rate(rate));
        }
        buffer.copy_to_vec_interleaved(&mut interleaved);
        mixer.add(rate, channels, &interleaved)?;
    }
    let frame_bytes = u64::from(bits.unwrap_or(8)) / 8 * channels as u64;
    let promised = promised.filter(|frames| frames.saturating_mul(frame_bytes) < UNKNOWN_BYTES);
    if promised.is_some_and(|promised| falls_short(kind, mixer.frames, promised, rate)) {
        return Err(Problem::Broken("its end is missing".to_owned()));
    }
    if decoder.finalize().verify_ok == Some(false) {
        return Err(Problem::Broken("its check sum does not match".to_owned()));
    }
    Ok(Sound { kind, rate, channels, bits, frames: mixer.frames })
}

/// Lossy files state their length roughly: some count the coder's padding, some estimate.
fn falls_short(kind: Kind, frames: u64, promised: u64, rate: u32) -> bool {
    let slack = if kind.is_exact() { 0 } else { u64::from(rate) / 5 + promised / 50 };
    frames + slack < promised
}
