//! Clips prepared once and kept: decoded, at the common rate, their sounding part and its edges measured.
//!
//! A kept clip is known by what it was made from: the bytes of its file and
//! [`VERSION`]. A file that has changed has another name and is prepared anew.
//! What is read back counts only if its length and its check sum are right.

use twox_hash::{XxHash3_64, XxHash3_128};

use super::clip_loudness::{ClipLoudness, GRAIN};
use super::edge::Edges;
use super::pcm16::Pcm16;
use super::shape::Shape;

/// Raised whenever a clip would be prepared differently.
const VERSION: u64 = 6;
const MAGIC: &[u8; 8] = b"kablclip";
/// Magic, check sum, number of samples, first and last of the sounding part, where its peak lies, its level,
/// the size of a step, its peak.
const HEADER: usize = 9 * 8;

/// A clip ready to be chosen and joined.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Prepared {
    pub(super) sound: Pcm16,
    pub(super) shape: Shape,
    pub(super) edges: Edges,
    pub(super) loudness: ClipLoudness,
}

impl Prepared {
    pub(super) fn of(samples: &[f32]) -> Prepared {
        let shape = Shape::of(samples);
        let sounding = samples.get(shape.range.clone()).unwrap_or_default();
        Prepared {
            edges: Edges::of(sounding, shape.level_db),
            loudness: ClipLoudness::of(sounding),
            sound: Pcm16::of(samples),
            shape,
        }
    }
}

/// The name under which the prepared form of a file is kept.
pub(super) fn name(file: &[u8]) -> String {
    // A program that takes noise out prepares clips in another way.
    let seed = VERSION << 1 | u64::from(cfg!(feature = "denoise"));
    format!("{:032x}.clip", XxHash3_128::oneshot_with_seed(seed, file))
}

/// A prepared clip as bytes.
pub(super) fn pack(clip: &Prepared) -> Vec<u8> {
    let numbers = clip.edges.to_numbers();
    let Pcm16 { steps, unit } = &clip.sound;
    let loudness = &clip.loudness;
    let floats = numbers.iter().chain(&loudness.sums);
    let mut body = Vec::with_capacity(HEADER + 4 * (numbers.len() + loudness.sums.len()) + 2 * steps.len());
    body.extend_from_slice(MAGIC);
    body.extend_from_slice(&[0; 8]);
    for count in [steps.len(), clip.shape.range.start, clip.shape.range.end, loudness.peak_at] {
        body.extend_from_slice(&(count as u64).to_le_bytes());
    }
    for number in [clip.shape.level_db, f64::from(*unit), f64::from(loudness.peak)] {
        body.extend_from_slice(&number.to_le_bytes());
    }
    for number in floats {
        body.extend_from_slice(&number.to_le_bytes());
    }
    for step in steps {
        body.extend_from_slice(&step.to_le_bytes());
    }
    let sum = XxHash3_64::oneshot(body.get(16..).unwrap_or_default());
    if let Some(place) = body.get_mut(8..16) {
        place.copy_from_slice(&sum.to_le_bytes());
    }
    body
}

/// Back from bytes; `None` where they are not whole.
pub(super) fn unpack(bytes: &[u8]) -> Option<Prepared> {
    let (magic, rest) = bytes.split_first_chunk::<8>()?;
    let (sum, checked) = rest.split_first_chunk::<8>()?;
    let (&[count, start, end, peak_at, level, unit, peak], body) = checked
        .as_chunks::<8>()
        .0
        .split_first_chunk::<7>()
        .and_then(|(numbers, _)| Some((numbers, checked.get(56..)?)))?;
    let whole = |number| usize::try_from(u64::from_le_bytes(number)).ok();
    let float = |number| f64::from_le_bytes(number) as f32;
    let (count, range) = (whole(count)?, whole(start)?..whole(end)?);
    let grains = range.len().div_ceil(GRAIN);
    let right = magic == MAGIC
        && count.checked_mul(2)?.checked_add(grains.checked_mul(4)?)?.checked_add(4 * Edges::NUMBERS)?
            == body.len()
        && u64::from_le_bytes(*sum) == XxHash3_64::oneshot(checked);
    let (edges, rest) = right.then(|| body.split_at_checked(4 * Edges::NUMBERS)).flatten()?;
    let (sums, steps) = rest.split_at_checked(4 * grains)?;
    Some(Prepared {
        sound: Pcm16 { steps: whole_numbers(steps), unit: float(unit) },
        shape: Shape { range, level_db: f64::from_le_bytes(level) },
        edges: Edges::from_numbers(&floats(edges))?,
        loudness: ClipLoudness { sums: floats(sums), peak: float(peak), peak_at: whole(peak_at)? },
    })
}

fn floats(bytes: &[u8]) -> Vec<f32> {
    let (words, _) = bytes.as_chunks::<4>();
    let mut floats = vec![0f32; words.len()];
    for (float, word) in floats.iter_mut().zip(words) {
        *float = f32::from_le_bytes(*word);
    }
    floats
}

fn whole_numbers(bytes: &[u8]) -> Vec<i16> {
    let (words, _) = bytes.as_chunks::<2>();
    let mut numbers = vec![0i16; words.len()];
    for (number, word) in numbers.iter_mut().zip(words) {
        *number = i16::from_le_bytes(*word);
    }
    numbers
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn any_damage_is_found() {
        let samples: Vec<f32> = (0..700).map(|n| (n as f32 * 0.1).sin()).collect();
        let clip = Prepared::of(&samples);
        let bytes = pack(&clip);
        assert_eq!(unpack(&bytes), Some(clip));
        for length in [0, 7, 15, 23, 24, 47, 48, 100, bytes.len() - 1] {
            assert_eq!(unpack(&bytes[..length]), None);
        }
        for place in 0..bytes.len() {
            let mut damaged = bytes.clone();
            damaged[place] ^= 1 << (place % 8);
            assert_eq!(unpack(&damaged), None, "byte {place}");
        }
        let longer = [bytes.as_slice(), &[0]].concat();
        assert_eq!(unpack(&longer), None);
    }

    #[test]
    fn another_file_has_another_name() {
        assert_eq!(name(b"a"), name(b"a"));
        assert_ne!(name(b"a"), name(b"b"));
    }
}
