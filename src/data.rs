//! The one way to packs, templates, fonts, pictures and recorded clips.
//!
//! Paths are relative, with forward slashes: `locales/sw/pack.toml`.

use std::borrow::Cow;
use std::path::{Component, Path, PathBuf};

use include_dir::{Dir, include_dir};

/// A read-only tree of named files.
pub trait Data: Send + Sync {
    /// The bytes of a file, or `None` where there is no such file.
    fn read(&self, path: &str) -> Option<Cow<'_, [u8]>>;

    /// The names (files and folders, without path) directly in a folder,
    /// sorted; empty where there is no such folder.
    fn list(&self, folder: &str) -> Vec<String>;
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
            .map(|dir| dir.entries().iter().filter_map(|entry| entry.path().file_name()?.to_str().map(str::to_owned)).collect())
            .unwrap_or_default();
        names.sort();
        names
    }
}

/// Files of a folder on disk, laid out as the embedded ones.
#[derive(Debug, Clone)]
pub struct Folder {
    root: PathBuf,
}

impl Folder {
    /// The tree below `root`.
    pub fn new(root: impl Into<PathBuf>) -> Self {
        Folder { root: root.into() }
    }

    fn resolve(&self, path: &str) -> Option<PathBuf> {
        let path = Path::new(path);
        path.components().all(|part| matches!(part, Component::Normal(_))).then(|| self.root.join(path))
    }
}

impl Data for Folder {
    fn read(&self, path: &str) -> Option<Cow<'_, [u8]>> {
        std::fs::read(self.resolve(path)?).ok().map(Cow::Owned)
    }

    fn list(&self, folder: &str) -> Vec<String> {
        let entries = self.resolve(folder).and_then(|path| std::fs::read_dir(path).ok());
        let mut names: Vec<String> =
            entries.into_iter().flatten().flatten().filter_map(|entry| entry.file_name().into_string().ok()).collect();
        names.sort();
        names
    }
}
