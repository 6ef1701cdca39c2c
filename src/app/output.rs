//! Files that appear together or not at all.

use std::io::Write as _;
use std::path::{Path, PathBuf};

use tempfile::NamedTempFile;

use crate::error::Error;

/// Files to be written; nothing appears before [`Output::commit`].
#[derive(Debug, Default)]
pub(super) struct Output {
    ready: Vec<(NamedTempFile, PathBuf)>,
}

impl Output {
    /// Writes a file under a temporary name beside its place.
    pub(super) fn add(&mut self, path: &Path, bytes: &[u8]) -> Result<(), Error> {
        let failed = |source| Error::Write { path: path.to_owned(), source };
        let folder = path.parent().filter(|folder| !folder.as_os_str().is_empty()).unwrap_or(Path::new("."));
        std::fs::create_dir_all(folder).map_err(failed)?;
        let mut builder = tempfile::Builder::new();
        builder.prefix(".kabla-");
        // Temporary files are private by default; sheets are for everyone.
        #[cfg(unix)]
        builder.permissions(std::os::unix::fs::PermissionsExt::from_mode(0o644));
        let mut file = builder.tempfile_in(folder).map_err(failed)?;
        file.write_all(bytes).and_then(|()| file.flush()).map_err(failed)?;
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
