//! RIFF: chunks with a name and a length, in a file that is one chunk itself.

use std::io::{self, Cursor, Seek, SeekFrom, Write};

use super::WriteError;

/// A WAVE file in the making.
pub(super) struct Wave<W>(W);

impl<W: Write + Seek> Wave<W> {
    pub(super) fn begin(mut out: W) -> io::Result<Wave<W>> {
        out.write_all(b"RIFF\0\0\0\0WAVE")?;
        Ok(Wave(out))
    }

    /// Adds a chunk.
    pub(super) fn chunk(&mut self, name: [u8; 4], bytes: &[u8]) -> io::Result<()> {
        self.chunk_of(name, bytes.len(), |out| out.write_all(bytes))
    }

    /// Adds a chunk of a length that is known, piece by piece.
    pub(super) fn chunk_of(
        &mut self,
        name: [u8; 4],
        length: usize,
        write: impl FnOnce(&mut W) -> io::Result<()>,
    ) -> io::Result<()> {
        self.0.write_all(&name)?;
        self.0.write_all(&bytes_of(length as u64)?)?;
        write(&mut self.0)?;
        // A byte more where the length is odd.
        let rest: &[u8] = if length.is_multiple_of(2) { &[] } else { &[0] };
        self.0.write_all(rest)
    }

    /// Writes over what has been written, from a byte on.
    pub(super) fn mend(&mut self, at: u64, bytes: &[u8]) -> io::Result<()> {
        self.0.seek(SeekFrom::Start(at))?;
        self.0.write_all(bytes)?;
        self.0.seek(SeekFrom::End(0)).map(|_| ())
    }

    /// Ends the file.
    pub(super) fn finish(mut self) -> io::Result<W> {
        let length = bytes_of(self.0.stream_position()? - 8)?;
        self.mend(4, &length)?;
        Ok(self.0)
    }
}

fn bytes_of(length: u64) -> io::Result<[u8; 4]> {
    u32::try_from(length).map(u32::to_le_bytes).map_err(io::Error::other)
}

/// A file in memory.
pub(super) fn in_memory(
    write: impl FnOnce(&mut Cursor<Vec<u8>>) -> io::Result<()>,
) -> Result<Vec<u8>, WriteError> {
    let mut file = Cursor::new(Vec::new());
    write(&mut file).map_err(|problem| WriteError::Wav(problem.to_string()))?;
    Ok(file.into_inner())
}

/// Checks that a file can hold so many frames, and so many bytes beside them.
pub(super) fn fits(frames: usize, bytes_each: usize, beside: usize) -> Result<(), WriteError> {
    // What chunks are called, how long they are, and what every file says of its sound.
    const HEADS: usize = 1024;
    let bytes = frames.saturating_mul(bytes_each).saturating_add(beside + HEADS);
    u32::try_from(bytes).map(|_| ()).map_err(|_| WriteError::TooLong { frames })
}

/// What a format chunk says of one channel of samples that are not packed together.
pub(super) fn format(tag: u16, rate: u32, bytes: u16) -> Vec<u8> {
    let mut chunk = Vec::new();
    chunk.extend(tag.to_le_bytes());
    chunk.extend(1u16.to_le_bytes());
    chunk.extend(rate.to_le_bytes());
    chunk.extend((rate * u32::from(bytes)).to_le_bytes());
    chunk.extend(bytes.to_le_bytes());
    chunk.extend((bytes * 8).to_le_bytes());
    chunk
}
