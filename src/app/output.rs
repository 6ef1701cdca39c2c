//! Files that appear together or not at all.

use std::fs::File;
use std::io::{self, BufWriter, Write};
use std::path::{Path, PathBuf};

use tempfile::NamedTempFile;

use crate::error::Error;

/// Bytes that are handed to the system at once: enough that it has little to do for each.
const BUFFER: usize = 1 << 18;

/// Writes files, all or none.
///
/// # Errors
/// A file that cannot be written.
pub fn write_files(files: &[(PathBuf, Vec<u8>)]) -> Result<(), Error> {
    let mut output = Output::default();
    files.iter().try_for_each(|(path, bytes)| output.add(path, bytes))?;
    output.commit()
}

/// Files to be written; nothing appears before [`Output::commit`].
#[derive(Debug, Default)]
pub(super) struct Output {
    ready: Vec<(NamedTempFile, PathBuf)>,
}

impl Output {
    /// Writes a file under a temporary name beside its place.
    pub(super) fn add(&mut self, path: &Path, bytes: &[u8]) -> Result<(), Error> {
        self.add_with(path, |file| file.write_all(bytes))
    }

    /// The same piece by piece.
    pub(super) fn add_with(
        &mut self,
        path: &Path,
        write: impl FnOnce(&mut BufWriter<&mut File>) -> io::Result<()>,
    ) -> Result<(), Error> {
        let failed = |source| Error::Write { path: path.to_owned(), source };
        let folder = path.parent().filter(|folder| !folder.as_os_str().is_empty()).unwrap_or(Path::new("."));
        std::fs::create_dir_all(folder).map_err(failed)?;
        let mut builder = tempfile::Builder::new();
        builder.prefix(".kabla-");
        // Temporary files are private by default; sheets are for everyone.
        #[cfg(unix)]
        builder.permissions(std::os::unix::fs::PermissionsExt::from_mode(0o644));
        let mut file = builder.tempfile_in(folder).map_err(failed)?;
        let mut buffer = BufWriter::with_capacity(BUFFER, file.as_file_mut());
        write(&mut buffer).and_then(|()| buffer.flush()).map_err(failed)?;
        drop(buffer);
        self.ready.push((file, path.to_owned()));
        Ok(())
    }

    /// Gives all files their names.
    pub(super) fn commit(self) -> Result<(), Error> {
        for (file, path) in self.ready {
            file.persist(&path).map_err(|error| Error::Write { path, source: error.error })?;
        }
        Ok(())
    }
}
