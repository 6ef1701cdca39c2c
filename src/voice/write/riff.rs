//! RIFF: chunks with a name and a length, in a file that is one chunk itself.

use super::WriteError;

/// A chunk's name and what is in it.
pub(super) type Chunk = ([u8; 4], Vec<u8>);

/// A WAVE file of chunks.
pub(super) fn wave(chunks: &[Chunk]) -> Result<Vec<u8>, WriteError> {
    let mut body = b"WAVE".to_vec();
    for (name, bytes) in chunks {
        append(&mut body, *name, bytes)?;
    }
    let mut file = Vec::with_capacity(body.len() + 8);
    append(&mut file, *b"RIFF", &body)?;
    Ok(file)
}

/// The chunks of a WAVE file as written here or by hound.
pub(super) fn chunks(file: &[u8]) -> Vec<Chunk> {
    let mut rest = file.get(12..).unwrap_or_default();
    let mut chunks = Vec::new();
    while let Some(([a, b, c, d, size @ ..], after)) = rest.split_first_chunk::<8>() {
        let length = (u32::from_le_bytes(*size) as usize).min(after.len());
        let (bytes, next) = after.split_at(length);
        chunks.push(([*a, *b, *c, *d], bytes.to_vec()));
        rest = next.get(length % 2..).unwrap_or_default();
    }
    chunks
}

/// Adds a chunk, with a byte after it where its length is odd.
fn append(to: &mut Vec<u8>, name: [u8; 4], bytes: &[u8]) -> Result<(), WriteError> {
    let length = u32::try_from(bytes.len()).map_err(|_| WriteError::TooLong { frames: bytes.len() })?;
    to.extend(name);
    to.extend(length.to_le_bytes());
    to.extend(bytes);
    to.extend(std::iter::repeat_n(0, bytes.len() % 2));
    Ok(())
}
