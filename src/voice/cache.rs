//! Clips prepared once and kept: decoded, at the common rate, their edges measured.
//!
//! A kept clip is known by what it was made from: the bytes of its file and
//! [`VERSION`]. A file that has changed has another name and is prepared anew.
//! What is read back counts only if its length and its check sum are right.

use sha2::{Digest, Sha256};

use super::edge::Edges;

/// Raised whenever a clip would be prepared differently.
const VERSION: u32 = 1;
const MAGIC: &[u8; 8] = b"kablclip";
/// Magic, check sum, number of samples.
const HEADER: usize = 8 + 8 + 8;

/// A clip ready to be chosen and joined.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Prepared {
    /// Mono at [`SAMPLE_RATE`](super::SAMPLE_RATE).
    pub(super) samples: Vec<f32>,
    pub(super) edges: Edges,
}

/// The name under which the prepared form of a file is kept.
pub(super) fn name(file: &[u8]) -> String {
    let mut hash = Sha256::new();
    hash.update(VERSION.to_le_bytes());
    hash.update(file);
    let hex: String = hash.finalize().iter().map(|byte| format!("{byte:02x}")).collect();
    format!("{hex}.clip")
}

/// A prepared clip as bytes.
pub(super) fn pack(clip: &Prepared) -> Vec<u8> {
    let numbers = clip.edges.to_numbers();
    let mut body = Vec::with_capacity(HEADER + 4 * (numbers.len() + clip.samples.len()));
    body.extend_from_slice(MAGIC);
    body.extend_from_slice(&[0; 8]);
    body.extend_from_slice(&(clip.samples.len() as u64).to_le_bytes());
    for number in numbers.iter().chain(&clip.samples) {
        body.extend_from_slice(&number.to_le_bytes());
    }
    let sum = check_sum(body.get(16..).unwrap_or_default());
    if let Some(place) = body.get_mut(8..16) {
        place.copy_from_slice(&sum.to_le_bytes());
    }
    body
}

/// Back from bytes; `None` where they are not whole.
pub(super) fn unpack(bytes: &[u8]) -> Option<Prepared> {
    let (magic, rest) = bytes.split_first_chunk::<8>()?;
    let (sum, checked) = rest.split_first_chunk::<8>()?;
    let (count, body) = checked.split_first_chunk::<8>()?;
    let count = usize::try_from(u64::from_le_bytes(*count)).ok()?;
    let whole = magic == MAGIC
        && count.checked_add(Edges::NUMBERS)?.checked_mul(4)? == body.len()
        && u64::from_le_bytes(*sum) == check_sum(checked);
    let (edges, samples) = whole.then(|| body.split_at_checked(4 * Edges::NUMBERS)).flatten()?;
    Some(Prepared { samples: floats(samples), edges: Edges::from_numbers(&floats(edges))? })
}

fn floats(bytes: &[u8]) -> Vec<f32> {
    let (words, _) = bytes.as_chunks::<4>();
    words.iter().map(|word| f32::from_le_bytes(*word)).collect()
}

/// A sum over 64-bit words in four lanes, which finds damage, not malice, and
/// runs as fast as memory is read.
fn check_sum(bytes: &[u8]) -> u64 {
    const MIX: u64 = 0x9E37_79B9_7F4A_7C15;
    let mut lanes = [1u64, 2, 3, 4];
    let (blocks, rest) = bytes.as_chunks::<32>();
    for block in blocks {
        let (words, _) = block.as_chunks::<8>();
        for (lane, word) in lanes.iter_mut().zip(words) {
            *lane = (*lane ^ u64::from_le_bytes(*word)).wrapping_mul(MIX).rotate_left(23);
        }
    }
    let rest = rest.iter().fold(bytes.len() as u64, |sum, byte| (sum ^ u64::from(*byte)).wrapping_mul(MIX));
    lanes.into_iter().fold(rest, |sum, lane| (sum.rotate_left(17) ^ lane).wrapping_mul(MIX))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn any_damage_is_found() {
        let samples: Vec<f32> = (0..700).map(|n| (n as f32 * 0.1).sin()).collect();
        let clip = Prepared { edges: Edges::of(&samples, -20.0), samples };
        let bytes = pack(&clip);
        assert_eq!(unpack(&bytes), Some(clip));
        for length in [0, 7, 15, 23, 24, 100, bytes.len() - 1] {
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
