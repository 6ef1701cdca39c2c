//! Broadcast Wave: what a station's system reads beside the sound (EBU Tech
//! 3285, version 2 of `bext`), and markers with labels (`cue `, `LIST adtl`).

use std::io::{self, Seek, Write};

use chrono::NaiveDate;
use twox_hash::XxHash3_128;

use super::riff::{Wave, fits};
use super::wav::add_sound;
use super::{WavOptions, WriteError};
use crate::voice::{Frames, Loudness, SAMPLE_RATE, Sound};

/// What goes with the sound.
#[derive(Debug, Clone, PartialEq)]
pub struct BroadcastOptions {
    /// What it is; letters beyond ASCII become `?`, as the chunk knows no others.
    pub description: String,
    /// The day it was made for; zeros where it is not known.
    pub date: Option<NaiveDate>,
    /// Its loudness.
    pub loudness: Loudness,
    /// How it was made, for the last line of the coding history.
    pub tool: String,
    /// Places in the sound, with a label each.
    pub markers: Vec<(Frames, String)>,
    /// How samples become 16 bits.
    pub wav: WavOptions,
}

/// A 16-bit WAVE file with `bext`, cue points and their labels, ready to be written. Its reference is a
/// print of the sound: files with the same sound, and no others, share it.
#[derive(Debug)]
pub struct BroadcastWav<'a, S: ?Sized> {
    sound: &'a S,
    bext: Vec<u8>,
    markers: Vec<([u8; 4], Vec<u8>)>,
    wav: WavOptions,
}

impl<'a, S: Sound + ?Sized> BroadcastWav<'a, S> {
    /// That of a sound.
    ///
    /// # Errors
    /// The samples are too many for the format.
    pub fn new(sound: &'a S, options: &BroadcastOptions) -> Result<BroadcastWav<'a, S>, WriteError> {
        let (bext, markers) = (bext(options), markers(&options.markers));
        let beside = bext.len() + markers.iter().map(|(_, bytes)| bytes.len()).sum::<usize>();
        fits(sound.frames(), 2, beside)?;
        Ok(BroadcastWav { sound, bext, markers, wav: options.wav.clone() })
    }

    /// Writes the file, from where `out` begins. The sound is made piece by piece.
    ///
    /// # Errors
    /// Those of `out`.
    pub fn write(&self, out: impl Write + Seek) -> io::Result<()> {
        let mut file = Wave::begin(out)?;
        file.chunk(*b"bext", &self.bext)?;
        let mut print = XxHash3_128::new();
        add_sound(&mut file, self.sound, &self.wav, |bytes| print.write(bytes))?;
        for (name, bytes) in &self.markers {
            file.chunk(*name, bytes)?;
        }
        file.mend(REFERENCE, format!("{:032x}", print.finish_128()).as_bytes())?;
        file.finish().map(|_| ())
    }
}

/// Where the reference lies in a file that begins with `bext`.
const REFERENCE: u64 = 12 + 8 + 256 + 32;
/// A value of the chunk that is not known.
const UNKNOWN: i16 = 0x7FFF;

fn bext(options: &BroadcastOptions) -> Vec<u8> {
    let BroadcastOptions { loudness, tool, .. } = options;
    let mut chunk = text(&options.description, 256);
    chunk.extend(text("Kabla", 32));
    chunk.extend([0; 32]);
    chunk.extend(text(&options.date.map(|day| day.format("%Y-%m-%d").to_string()).unwrap_or_default(), 10));
    chunk.extend(text(options.date.map_or("", |_| "00:00:00"), 8));
    // The sound starts at midnight, for want of a place on a tape.
    chunk.extend(0u64.to_le_bytes());
    chunk.extend(2u16.to_le_bytes());
    chunk.extend([0; 64]);
    let hundredths = |value: Option<f64>| value.map_or(UNKNOWN, |value| (value * 100.0).round() as i16);
    for value in [
        Some(loudness.integrated_lufs),
        loudness.range_lu,
        Some(loudness.true_peak_dbtp),
        loudness.momentary_lufs,
        loudness.short_term_lufs,
    ] {
        chunk.extend(hundredths(value).to_le_bytes());
    }
    chunk.extend([0; 180]);
    chunk.extend(ascii(&format!("A=PCM,F={SAMPLE_RATE},W=16,M=mono,T={tool}")));
    chunk.extend(b"\r\n");
    // Some readers forget the byte that follows a chunk of odd length.
    chunk.extend(std::iter::repeat_n(0, chunk.len() % 2));
    chunk
}

/// A text in a field of fixed length, filled up with zeros.
fn text(text: &str, length: usize) -> Vec<u8> {
    let mut field = ascii(text);
    field.resize(length, 0);
    field
}

fn ascii(text: &str) -> Vec<u8> {
    text.chars().map(|c| if c.is_ascii() && !c.is_ascii_control() { c as u8 } else { b'?' }).collect()
}

/// Cue points, and a label for each in UTF-8.
fn markers(markers: &[(Frames, String)]) -> Vec<([u8; 4], Vec<u8>)> {
    if markers.is_empty() {
        return Vec::new();
    }
    let mut cue = (markers.len() as u32).to_le_bytes().to_vec();
    let mut labels = b"adtl".to_vec();
    for (id, (at, label)) in (1u32..).zip(markers) {
        let at = u32::try_from(at.0).unwrap_or(u32::MAX).to_le_bytes();
        cue.extend(id.to_le_bytes());
        cue.extend(at);
        cue.extend(b"data");
        cue.extend([0; 8]);
        cue.extend(at);
        labels.extend(b"labl");
        labels.extend((label.len() as u32 + 5).to_le_bytes());
        labels.extend(id.to_le_bytes());
        labels.extend(label.as_bytes());
        // An end, and a byte more where the length with it is odd.
        labels.extend(std::iter::repeat_n(0, 1 + (label.len() + 5) % 2));
    }
    vec![(*b"cue ", cue), (*b"LIST", labels)]
}
