//! RIFF: chunks with a name and a length, in a file that is one chunk itself.

use super::WriteError;

/// A WAVE file in the making.
pub(super) struct Wave(Vec<u8>);

impl Wave {
    /// A file whose chunks will take about so many bytes.
    pub(super) fn new(bytes: usize) -> Wave {
        let mut file = Vec::with_capacity(bytes + 64);
        file.extend(b"RIFF\0\0\0\0WAVE");
        Wave(file)
    }

    /// Adds a chunk.
    pub(super) fn chunk(&mut self, name: [u8; 4], bytes: &[u8]) -> Result<(), WriteError> {
        self.begin(name, bytes.len())?;
        self.0.extend(bytes);
        self.end(bytes.len());
        Ok(())
    }

    /// Adds a chunk of a length that is known, piece by piece.
    pub(super) fn chunk_of(
        &mut self,
        name: [u8; 4],
        length: usize,
        write: impl FnOnce(&mut dyn FnMut(&[u8])),
    ) -> Result<(), WriteError> {
        self.begin(name, length)?;
        write(&mut |piece| self.0.extend_from_slice(piece));
        self.end(length);
        Ok(())
    }

    /// What has been written so far, to be changed.
    pub(super) fn bytes(&mut self) -> &mut [u8] {
        &mut self.0
    }

    /// The whole file.
    pub(super) fn finish(mut self) -> Result<Vec<u8>, WriteError> {
        let length = length_of(self.0.len() - 8)?;
        if let Some(place) = self.0.get_mut(4..8) {
            place.copy_from_slice(&length.to_le_bytes());
        }
        Ok(self.0)
    }

    fn begin(&mut self, name: [u8; 4], length: usize) -> Result<(), WriteError> {
        let length = length_of(length)?;
        self.0.extend(name);
        self.0.extend(length.to_le_bytes());
        Ok(())
    }

    /// A byte more where the length is odd.
    fn end(&mut self, length: usize) {
        self.0.extend(std::iter::repeat_n(0, length % 2));
    }
}

fn length_of(bytes: usize) -> Result<u32, WriteError> {
    u32::try_from(bytes).map_err(|_| WriteError::TooLong { frames: bytes })
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
