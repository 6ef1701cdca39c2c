//! Ogg Opus (RFC 7845): small files for phones and chat, with tags.

use ogg::PacketWriter;
use ogg::writing::PacketWriteEndInfo;
use opus_rs::{Application, OpusDecoder, OpusEncoder};

use std::sync::LazyLock;

use super::WriteError;
use super::captions::clock;
use crate::voice::channel::Chapter;
use crate::voice::filter::{filtered, low_pass};
use crate::voice::level::measure;
use crate::voice::{Loudness, SAMPLE_RATE};

/// How a file is coded, and what it says of itself.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct OpusOptions {
    /// Thousands of bits a second.
    pub kbit: u32,
    /// Tags, such as `TITLE` with its text; R128_TRACK_GAIN is added.
    pub tags: Vec<(&'static str, String)>,
    /// Chapters, as tags.
    pub chapters: Vec<Chapter>,
}

/// A coded sound.
#[derive(Debug, Clone, PartialEq)]
pub struct OpusFile {
    /// The file.
    pub bytes: Vec<u8>,
    /// What it measures when it is played.
    pub loudness: Loudness,
}

/// Frames to a packet: 20 ms.
const PACKET: usize = SAMPLE_RATE as usize / 50;
/// The encoder gets every third sample: up to 8 kHz its speech coder works alone, which sounds nearer to the
/// original than with bands above, and keeps to the rate asked for.
const STEP: usize = 3;
static LOW: LazyLock<Vec<f64>> = LazyLock::new(|| low_pass(f64::from(SAMPLE_RATE), 7_600.0, 800.0, 60.0));
/// Frames by which the decoder's sound comes late, to be skipped: what the encoder looks ahead (6.5 ms).
const PRE_SKIP: usize = 312;
/// Packets to a page: a second.
const PAGE: usize = 50;
/// No packet is larger.
const MOST_BYTES: usize = 1275;
/// Reference loudness of gain tags, in LUFS.
const REFERENCE_LUFS: f64 = -23.0;
/// The highest true peak when it is played, in dBTP.
const HIGHEST_DBTP: f64 = -1.0;
/// Who coded it.
const VENDOR: &str = "opus-rs";
/// The stream's number: files have one stream each.
const SERIAL: u32 = 0x6B61_626C;

/// An Ogg Opus file of mono samples at [`SAMPLE_RATE`]. Where coding raises its true peak above -1 dBTP, the header's
/// gain takes it back; else that is 0. The tag tells players that level how far it then lies from -23 LUFS.
///
/// # Errors
/// The encoder fails, or the sound has no loudness.
pub fn opus(samples: &[f32], options: &OpusOptions) -> Result<OpusFile, WriteError> {
    let packets = encode(samples, options.kbit)?;
    let played = decode(&packets, samples.len())?;
    let coded = measure(&played).map_err(|error| WriteError::Opus(error.to_string()))?;
    let gain = Gain::of((HIGHEST_DBTP - coded.true_peak_dbtp).min(0.0));
    let loudness = coded.with_gain(gain.db());
    let failed = |error: std::io::Error| WriteError::Opus(error.to_string());
    let mut writer = PacketWriter::new(Vec::new());
    writer.write_packet(head(gain), SERIAL, PacketWriteEndInfo::EndPage, 0).map_err(failed)?;
    let tags = tags(options, loudness);
    writer.write_packet(tags, SERIAL, PacketWriteEndInfo::EndPage, 0).map_err(failed)?;
    let (last, end) = (packets.len().saturating_sub(1), samples.len() + PRE_SKIP);
    for (index, packet) in packets.into_iter().enumerate() {
        let info = match index {
            index if index == last => PacketWriteEndInfo::EndStream,
            index if (index + 1) % PAGE == 0 => PacketWriteEndInfo::EndPage,
            _ => PacketWriteEndInfo::NormalPacket,
        };
        let granule = ((index + 1) * PACKET).min(end);
        writer.write_packet(packet, SERIAL, info, granule as u64).map_err(failed)?;
    }
    Ok(OpusFile { bytes: writer.into_inner(), loudness })
}

fn encode(samples: &[f32], kbit: u32) -> Result<Vec<Vec<u8>>, WriteError> {
    let failed = |error: &str| WriteError::Opus(error.to_owned());
    let mut encoder =
        OpusEncoder::new(SAMPLE_RATE as i32 / STEP as i32, 1, Application::Voip).map_err(failed)?;
    encoder.bitrate_bps = i32::try_from(kbit.saturating_mul(1000)).unwrap_or(i32::MAX);
    encoder.complexity = 10;
    let count = (samples.len() + PRE_SKIP).div_ceil(PACKET);
    let mut wideband = filtered(samples, &LOW, STEP);
    wideband.resize(count * PACKET / STEP, 0.0);
    let mut buffer = [0; MOST_BYTES];
    let packet = |frames: &[f32]| {
        let length = encoder.encode(frames, PACKET / STEP, &mut buffer).map_err(failed)?;
        Ok(buffer.get(..length).unwrap_or_default().to_vec())
    };
    wideband.chunks_exact(PACKET / STEP).map(packet).collect()
}

/// The sound as a player gives it back.
fn decode(packets: &[Vec<u8>], length: usize) -> Result<Vec<f32>, WriteError> {
    let failed = |error: &str| WriteError::Opus(error.to_owned());
    let mut decoder = OpusDecoder::new(SAMPLE_RATE as i32, 1).map_err(failed)?;
    let mut sound = Vec::with_capacity(packets.len() * PACKET);
    let mut frames = [0f32; PACKET];
    for packet in packets {
        let count = decoder.decode(packet, PACKET, &mut frames).map_err(failed)?;
        sound.extend(frames.get(..count).unwrap_or_default());
    }
    Ok(sound.into_iter().skip(PRE_SKIP).take(length).collect())
}

/// A gain as Opus files write it, in steps of 1/256 dB.
#[derive(Debug, Clone, Copy)]
struct Gain(i16);

impl Gain {
    /// The step below a gain in dB.
    fn of(db: f64) -> Gain {
        Gain((db * 256.0).floor() as i16)
    }

    fn db(self) -> f64 {
        f64::from(self.0) / 256.0
    }
}

/// Version 1, one channel.
fn head(gain: Gain) -> Vec<u8> {
    let mut head = b"OpusHead\x01\x01".to_vec();
    head.extend((PRE_SKIP as u16).to_le_bytes());
    head.extend(SAMPLE_RATE.to_le_bytes());
    head.extend(gain.0.to_le_bytes());
    head.push(0);
    head
}

fn tags(options: &OpusOptions, loudness: Loudness) -> Vec<u8> {
    let Gain(gain) = Gain::of(REFERENCE_LUFS - loudness.integrated_lufs);
    let one_line = |text: &str| text.split_whitespace().collect::<Vec<_>>().join(" ");
    let mut tags: Vec<String> =
        options.tags.iter().map(|(name, text)| format!("{name}={}", one_line(text))).collect();
    tags.push(format!("R128_TRACK_GAIN={gain}"));
    for (index, chapter) in options.chapters.iter().enumerate() {
        tags.push(format!("CHAPTER{index:03}={}", clock(chapter.from, '.')));
        tags.push(format!("CHAPTER{index:03}NAME={}", one_line(&chapter.title)));
    }
    let mut packet = b"OpusTags".to_vec();
    append(&mut packet, VENDOR);
    packet.extend((tags.len() as u32).to_le_bytes());
    tags.iter().for_each(|tag| append(&mut packet, tag));
    packet
}

/// Adds a text after its length.
fn append(packet: &mut Vec<u8>, text: &str) {
    packet.extend((text.len() as u32).to_le_bytes());
    packet.extend(text.as_bytes());
}
