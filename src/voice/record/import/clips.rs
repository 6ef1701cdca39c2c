//! Recordings cut into clips, in a second hearing.

use std::io::Cursor;

use sha2::{Digest, Sha256};

use super::Recording;
use crate::finding::{Code, Finding};
use crate::language::Intonation;

/// A finished clip: which of the cuts it is, and a WAV file.
#[derive(Debug)]
pub struct CutClip {
    /// Its place in the list of cuts.
    pub cut: usize,
    /// A mono WAV at the recording's own rate; 16 bits where that was all there was, else 24.
    pub wav: Vec<u8>,
}

/// One cut being taken: from and to in frames, and its samples so far.
struct Open {
    cut: usize,
    from: u64,
    to: u64,
    samples: Vec<f32>,
}

/// Cuts a recording at places in seconds, which may overlap, and hands each clip over as it is done.
/// Of the sound no more is held than the clips that are open.
///
/// # Errors
/// The recording cannot be decoded, or a cut holds no sound.
pub fn cut_out(
    recording: &Recording<'_>,
    cuts: &[(usize, f64, f64)],
    done: &mut dyn FnMut(CutClip) -> Result<(), Finding>,
) -> Result<(), Finding> {
    let mut ahead: Vec<(usize, f64, f64)> = cuts.to_vec();
    ahead.sort_by(|a, b| b.1.total_cmp(&a.1));
    let (mut open, mut at, mut rate): (Vec<Open>, u64, u32) = (Vec::new(), 0, 0);
    let mut finished: Result<(), Finding> = Ok(());
    let bits = bits(recording)?;
    recording.stream(&mut |now, samples| {
        rate = now;
        let frames = |seconds: f64| (seconds * f64::from(now)).round() as u64;
        let end = at + samples.len() as u64;
        while let Some((cut, from, to)) = ahead.pop_if(|(_, from, _)| frames(*from) < end) {
            open.push(Open { cut, from: frames(from), to: frames(to), samples: Vec::new() });
        }
        for one in &mut open {
            let start = one.from.max(at).min(end) - at;
            let stop = one.to.min(end).max(at) - at;
            one.samples.extend_from_slice(samples.get(start as usize..stop as usize).unwrap_or_default());
        }
        at = end;
        for one in open.extract_if(.., |one| one.to <= end) {
            if finished.is_ok() {
                finished = finish(recording, one, now, bits, done);
            }
        }
    })?;
    finished?;
    open.into_iter().try_for_each(|one| finish(recording, one, rate, bits, done))
}

/// 16 where the file has no finer samples and they are kept as they are.
fn bits(recording: &Recording<'_>) -> Result<u16, Finding> {
    let mut source = (recording.open)().map_err(|error| {
        Finding::error(Code::CANNOT_READ, format!("cannot be read: {error}")).file(&recording.path)
    })?;
    let mut head = [0u8; 44];
    let exact = source.read_exact(&mut head).is_ok() && is_mono_16_bit_wav(&head);
    Ok(if exact { 16 } else { 24 })
}

fn is_mono_16_bit_wav(head: &[u8; 44]) -> bool {
    head.starts_with(b"RIFF")
        && head.get(12..16) == Some(b"fmt ")
        && head.get(20..24) == Some(&[1, 0, 1, 0])
        && head.get(34..36) == Some(&[16, 0])
}

fn finish(
    recording: &Recording<'_>,
    one: Open,
    rate: u32,
    bits: u16,
    done: &mut dyn FnMut(CutClip) -> Result<(), Finding>,
) -> Result<(), Finding> {
    let failed = |message: String| Finding::error(Code::BROKEN_CUT, message).file(&recording.path);
    if one.samples.is_empty() {
        return Err(failed("a cut holds no sound".to_owned()).hint("correct its times in the list of cuts"));
    }
    let wav = encode(&one.samples, rate, bits).map_err(|error| failed(format!("cannot be cut: {error}")))?;
    done(CutClip { cut: one.cut, wav })
}

fn encode(samples: &[f32], rate: u32, bits: u16) -> Result<Vec<u8>, hound::Error> {
    let sample_format = hound::SampleFormat::Int;
    let spec = hound::WavSpec { channels: 1, sample_rate: rate, bits_per_sample: bits, sample_format };
    let full = f64::from(1u32 << (bits - 1));
    let mut file = Cursor::new(Vec::new());
    let mut writer = hound::WavWriter::new(&mut file, spec)?;
    for sample in samples {
        writer.write_sample((f64::from(*sample) * full).round().clamp(-full, full - 1.0) as i32)?;
    }
    writer.finalize()?;
    Ok(file.into_inner())
}

/// A clip's file name: the words as far as letters of any file system go, and a mark of all of them.
pub fn file_name(words: &str, intonation: Intonation) -> String {
    let plain = words.to_lowercase().replace(|c: char| !c.is_ascii_alphanumeric(), " ");
    let slug = plain.split_whitespace().collect::<Vec<_>>().join("-");
    let slug: String = slug.chars().take(32).collect();
    let slug = slug.trim_matches('-');
    let mark: String = Sha256::digest(words).iter().take(3).map(|byte| format!("{byte:02x}")).collect();
    let ending = intonation.name().get(..1).unwrap_or_default();
    format!("{}-{mark}-{ending}.wav", if slug.is_empty() { "phrase" } else { slug })
}
