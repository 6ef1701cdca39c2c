//! The one way to packs, templates, fonts, pictures and recorded clips.
//!
//! Paths are relative, with forward slashes: `locales/sw/pack.toml`.

use std::borrow::Cow;
use std::path::{Component, Path, PathBuf};

use include_dir::{Dir, include_dir};

use crate::finding::Finding;

/// A read-only tree of named files.
pub trait Data: Send + Sync {
    /// The bytes of a file, or `None` where there is no such file.
    fn read(&self, path: &str) -> Option<Cow<'_, [u8]>>;

    /// The names (files and folders, without path) directly in a folder,
    /// sorted; empty where there is no such folder.
    fn list(&self, folder: &str) -> Vec<String>;

    /// How a path is told to people: where the file lies, if it lies on disk.
    fn shown(&self, path: &str) -> String {
        path.to_owned()
    }
}

static LOCALES: Dir<'static> = include_dir!("$CARGO_MANIFEST_DIR/locales");
static TEMPLATES: Dir<'static> = include_dir!("$CARGO_MANIFEST_DIR/templates");
static FONTS: Dir<'static> = include_dir!("$CARGO_MANIFEST_DIR/fonts");
static AUDIO: Dir<'static> = include_dir!("$CARGO_MANIFEST_DIR/audio");
static EXAMPLES: Dir<'static> = include_dir!("$CARGO_MANIFEST_DIR/examples");

/// The files compiled into the program.
#[derive(Debug, Clone, Copy, Default)]
pub struct Embedded;

impl Embedded {
    fn root(path: &str) -> Option<(&'static Dir<'static>, &str)> {
        let (first, rest) = path.split_once('/').unwrap_or((path, ""));
        let dir = match first {
            "locales" => &LOCALES,
            "templates" => &TEMPLATES,
            "fonts" => &FONTS,
            "audio" => &AUDIO,
            "examples" => &EXAMPLES,
            _ => return None,
        };
        Some((dir, rest))
    }
}

impl Data for Embedded {
    fn read(&self, path: &str) -> Option<Cow<'_, [u8]>> {
        let (dir, rest) = Embedded::root(path)?;
        dir.get_file(rest).map(|file| Cow::Borrowed(file.contents()))
    }

    fn list(&self, folder: &str) -> Vec<String> {
        let Some((root, rest)) = Embedded::root(folder) else { return Vec::new() };
        let dir = if rest.is_empty() { Some(root) } else { root.get_dir(rest) };
        let mut names: Vec<String> = dir
            .map(|dir| {
                dir.entries()
                    .iter()
                    .filter_map(|entry| entry.path().file_name()?.to_str().map(str::to_owned))
                    .collect()
            })
            .unwrap_or_default();
        names.sort();
        names
    }
}

/// The files of the program, with those of a folder on disk in their place: a
/// part (`locales`, `templates`, `fonts`, `audio`, `examples`) that the folder
/// has is read from there alone, the rest from the program.
#[derive(Debug, Clone)]
pub struct Folder {
    root: PathBuf,
    parts: Vec<&'static str>,
}

static EMBEDDED: Embedded = Embedded;

/// What a data folder may hold.
pub const PARTS: [&str; 5] = ["locales", "templates", "fonts", "audio", "examples"];

impl Folder {
    /// The tree below `root`.
    ///
    /// # Errors
    /// A finding, where `root` has none of the parts.
    pub fn open(root: impl Into<PathBuf>) -> Result<Folder, Finding> {
        let root = root.into();
        let parts: Vec<&str> = PARTS.into_iter().filter(|part| root.join(part).is_dir()).collect();
        if parts.is_empty() {
            let finding = Finding::error("has no data in it").file(root.display().to_string());
            return Err(
                finding.hint(format!("a data folder has one or more of the folders {}", PARTS.join(", ")))
            );
        }
        Ok(Folder { root, parts })
    }

    /// Where a path lies on disk; `None` where it is the program's.
    fn on_disk(&self, path: &str) -> Option<PathBuf> {
        let part = path.split('/').next().unwrap_or_default();
        self.parts.contains(&part).then(|| self.root.join(path))
    }
}

/// Other data, with templates and pictures of a folder in the place of those of the same name.
pub struct Templates<'d> {
    data: &'d dyn Data,
    folder: PathBuf,
}

impl<'d> Templates<'d> {
    /// The templates of `folder` before those of `data`.
    ///
    /// # Errors
    /// A finding, where there is no such folder.
    pub fn over(data: &'d dyn Data, folder: impl Into<PathBuf>) -> Result<Templates<'d>, Finding> {
        let folder = folder.into();
        if folder.is_dir() {
            return Ok(Templates { data, folder });
        }
        let finding = Finding::error("is no folder").file(folder.display().to_string());
        Err(finding.hint("name a folder with templates, such as header.typ, or with pictures/"))
    }

    fn own(&self, path: &str) -> Option<PathBuf> {
        let name = path.strip_prefix("templates/").filter(|name| is_inside(name))?;
        let file = self.folder.join(name);
        file.is_file().then_some(file)
    }
}

impl Data for Templates<'_> {
    fn read(&self, path: &str) -> Option<Cow<'_, [u8]>> {
        match self.own(path) {
            Some(file) => std::fs::read(file).ok().map(Cow::Owned),
            None => self.data.read(path),
        }
    }

    fn list(&self, folder: &str) -> Vec<String> {
        self.data.list(folder)
    }

    fn shown(&self, path: &str) -> String {
        self.own(path).map_or_else(|| self.data.shown(path), |file| file.display().to_string())
    }
}

/// Whether a path stays below its root.
fn is_inside(path: &str) -> bool {
    Path::new(path).components().all(|part| matches!(part, Component::Normal(_)))
}

impl Data for Folder {
    fn shown(&self, path: &str) -> String {
        self.on_disk(path).map_or_else(|| path.to_owned(), |file| file.display().to_string())
    }

    fn read(&self, path: &str) -> Option<Cow<'_, [u8]>> {
        match self.on_disk(path) {
            Some(file) => is_inside(path).then(|| std::fs::read(file).ok().map(Cow::Owned)).flatten(),
            None => EMBEDDED.read(path),
        }
    }

    fn list(&self, folder: &str) -> Vec<String> {
        let Some(path) = self.on_disk(folder) else { return Embedded.list(folder) };
        let entries = is_inside(folder).then(|| std::fs::read_dir(path).ok()).flatten();
        let mut names: Vec<String> = entries
            .into_iter()
            .flatten()
            .flatten()
            .filter_map(|entry| entry.file_name().into_string().ok())
            .collect();
        names.sort();
        names
    }
}
