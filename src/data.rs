//! The one way to packs, templates, fonts, pictures and recorded clips.
//!
//! Paths are relative, with forward slashes: `locales/sw/pack.toml`.

use std::borrow::Cow;
use std::fs::Metadata;
use std::io::{Read as _, Write as _};
use std::path::{Component, Path, PathBuf};
use std::time::{Duration, SystemTime};

use include_dir::{Dir, DirEntry, include_dir};

use crate::finding::{Code, Finding};

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

    /// Where what was made of these files may be kept, where there is such a place.
    fn clip_cache(&self) -> Option<&dyn ClipCache> {
        None
    }
}

/// A place for what can be made anew at any time. Nothing tells whether it was
/// kept: what cannot be written or read is just made again.
pub trait ClipCache: Send + Sync {
    /// What was put under a name, where it is still there.
    fn get(&self, name: &str) -> Option<Vec<u8>>;

    /// Keeps bytes under a name, whole or not at all.
    fn put(&self, name: &str, bytes: &[u8]);
}

/// A [`ClipCache`] in a folder on disk; made when it is first written to.
#[derive(Debug, Clone)]
pub struct CacheFolder(pub PathBuf);

impl ClipCache for CacheFolder {
    fn get(&self, name: &str) -> Option<Vec<u8>> {
        let mut file = std::fs::File::open(self.0.join(name)).ok()?;
        let known = file.metadata().ok()?;
        // So that it is known to be in use; once a day is enough.
        if age(&known).is_some_and(|age| age > DAY) {
            let _ = file.set_modified(SystemTime::now());
        }
        let mut bytes = Vec::with_capacity(usize::try_from(known.len()).ok()?);
        file.read_to_end(&mut bytes).ok()?;
        Some(bytes)
    }

    fn put(&self, name: &str, bytes: &[u8]) {
        // Another process may write the same: the last one to rename wins, and both are whole.
        let written = std::fs::create_dir_all(&self.0).and_then(|()| {
            let mut file = tempfile::NamedTempFile::new_in(&self.0)?;
            file.write_all(bytes)?;
            file.persist(self.0.join(name)).map_err(std::io::Error::from)
        });
        drop(written);
    }
}

const DAY: Duration = Duration::from_secs(24 * 60 * 60);
/// What has not been used for so long goes.
const KEPT: Duration = Duration::from_secs(60 * 24 * 60 * 60);

fn age(known: &Metadata) -> Option<Duration> {
    known.modified().ok()?.elapsed().ok()
}

impl CacheFolder {
    /// Takes out the clips that nobody has used for sixty days; looks once a day at most.
    pub fn tidy(&self) {
        let stamp = self.0.join("tidied");
        let looked = std::fs::metadata(&stamp).is_ok_and(|known| age(&known).is_none_or(|age| age < DAY));
        let Ok(entries) = std::fs::read_dir(&self.0) else { return };
        if looked || std::fs::write(&stamp, "").is_err() {
            return;
        }
        for entry in entries.flatten() {
            // The folder may be anyone's: only what was made here goes.
            let ours = entry.path().extension().is_some_and(|ending| ending == "clip");
            let old = entry.metadata().is_ok_and(|known| known.is_file() && age(&known) > Some(KEPT));
            if ours && old {
                let _ = std::fs::remove_file(entry.path());
            }
        }
    }

    /// The user's own (XDG): below `KABLA_CACHE` or `XDG_CACHE_HOME` or
    /// `HOME`, whose values `variable` tells; none where all are empty.
    pub fn of_user(variable: impl Fn(&str) -> Option<PathBuf>) -> Option<CacheFolder> {
        let given = |name| variable(name).filter(|path| !path.as_os_str().is_empty());
        // A relative XDG path is to be ignored.
        let shared = given("XDG_CACHE_HOME").filter(|path| path.is_absolute());
        let shared = shared.or_else(|| Some(given("HOME")?.join(".cache")));
        given("KABLA_CACHE").or_else(|| Some(shared?.join("kabla"))).map(CacheFolder)
    }
}

/// Data with a place to keep what is made of them.
pub struct Cached<'d> {
    /// The files.
    pub data: &'d dyn Data,
    /// The place.
    pub folder: CacheFolder,
}

impl Data for Cached<'_> {
    fn read(&self, path: &str) -> Option<Cow<'_, [u8]>> {
        self.data.read(path)
    }

    fn list(&self, folder: &str) -> Vec<String> {
        self.data.list(folder)
    }

    fn shown(&self, path: &str) -> String {
        self.data.shown(path)
    }

    fn clip_cache(&self) -> Option<&dyn ClipCache> {
        Some(&self.folder)
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

/// A file or folder by its path below a root. The tree's own search looks into every folder, part by part.
fn find<'d>(root: &'d Dir<'d>, path: &str) -> Option<&'d DirEntry<'d>> {
    let mut dir = root;
    for end in path.match_indices('/').map(|(place, _)| place) {
        dir = child(dir, path.get(..end)?)?.as_dir()?;
    }
    child(dir, path)
}

fn child<'d>(dir: &'d Dir<'d>, path: &str) -> Option<&'d DirEntry<'d>> {
    // Comparing part by part takes its time; most differ in length.
    let path = Path::new(path);
    dir.entries()
        .iter()
        .find(|entry| entry.path().as_os_str().len() == path.as_os_str().len() && entry.path() == path)
}

impl Data for Embedded {
    fn read(&self, path: &str) -> Option<Cow<'_, [u8]>> {
        let (dir, rest) = Embedded::root(path)?;
        Some(Cow::Borrowed(find(dir, rest)?.as_file()?.contents()))
    }

    fn list(&self, folder: &str) -> Vec<String> {
        let Some((root, rest)) = Embedded::root(folder) else { return Vec::new() };
        let dir = if rest.is_empty() { Some(root) } else { find(root, rest).and_then(DirEntry::as_dir) };
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
            let finding = Finding::error(Code::NO_DATA, "has no data in it").file(root.display().to_string());
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
        let finding = Finding::error(Code::CANNOT_READ, "is no folder").file(folder.display().to_string());
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
