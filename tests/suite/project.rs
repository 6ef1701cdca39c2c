//! A user's folder, and the program at work in it.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

/// A temporary folder in which the built program runs. Prepared clips are shared by all projects of a build, as
/// `KABLA_CACHE` says, so that each is prepared once.
pub(crate) struct Project(tempfile::TempDir);

/// How the program ended, and what it said.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct Run {
    pub(crate) code: i32,
    pub(crate) out: String,
    pub(crate) err: String,
}

impl Project {
    pub(crate) fn new() -> Self {
        Self(tempfile::tempdir().unwrap())
    }

    /// The program in this folder, for a test that sets more than arguments.
    pub(crate) fn command(&self) -> Command {
        let mut command = Command::new(env!("CARGO_BIN_EXE_kabla"));
        command.current_dir(self.folder());
        command
    }

    pub(crate) fn kabla(&self, arguments: &[&str]) -> Run {
        Run::of(self.command().args(arguments))
    }

    pub(crate) fn folder(&self) -> &Path {
        self.0.path()
    }

    pub(crate) fn path(&self, name: &str) -> PathBuf {
        self.folder().join(name)
    }

    pub(crate) fn has(&self, name: &str) -> bool {
        self.path(name).exists()
    }

    pub(crate) fn bytes(&self, name: &str) -> Vec<u8> {
        fs::read(self.path(name)).unwrap_or_else(|error| panic!("{name}: {error}"))
    }

    pub(crate) fn read(&self, name: &str) -> String {
        String::from_utf8(self.bytes(name)).unwrap()
    }

    /// Writes a file, with the folders it lies in, and says where it is.
    pub(crate) fn write(&self, name: &str, contents: impl AsRef<[u8]>) -> String {
        let path = self.path(name);
        fs::create_dir_all(path.parent().unwrap()).unwrap();
        fs::write(&path, contents).unwrap();
        text(&path)
    }

    /// Puts other words into a file that has the old ones.
    pub(crate) fn change(&self, name: &str, from: &str, to: &str) {
        let text = self.read(name);
        assert!(text.contains(from), "{name} has no {from}");
        self.write(name, text.replacen(from, to, 1));
    }

    /// Copies a file or a folder of the repository, under the same name.
    pub(crate) fn copy(&self, name: &str) {
        self.copy_to(name, name);
    }

    pub(crate) fn copy_to(&self, from: &str, to: &str) {
        let source = repository().join(from);
        if !source.is_dir() {
            self.write(to, fs::read(source).unwrap());
            return;
        }
        for name in names(&source) {
            self.copy_to(&format!("{from}/{name}"), &format!("{to}/{name}"));
        }
    }

    /// The names in this folder, in order.
    pub(crate) fn files(&self) -> Vec<String> {
        names(self.folder())
    }

    /// The names in a folder below, in order; none where there is no such folder.
    pub(crate) fn files_in(&self, folder: &str) -> Vec<String> {
        if self.has(folder) { names(&self.path(folder)) } else { Vec::new() }
    }
}

impl Run {
    pub(crate) fn of(command: &mut Command) -> Self {
        let output = command.output().unwrap();
        Self {
            code: output.status.code().unwrap(),
            out: String::from_utf8(output.stdout).unwrap(),
            err: String::from_utf8(output.stderr).unwrap(),
        }
    }

    /// The same, of a program that must have succeeded.
    #[track_caller]
    pub(crate) fn done(self) -> Self {
        self.ended(0)
    }

    /// The same, of a program that must have ended with this code.
    #[track_caller]
    pub(crate) fn ended(self, code: i32) -> Self {
        assert_eq!(self.code, code, "{}{}", self.out, self.err);
        self
    }

    /// What a program that must have succeeded printed as JSON.
    #[track_caller]
    pub(crate) fn json(self) -> serde_json::Value {
        serde_json::from_str(&self.done().out).unwrap()
    }
}

pub(crate) fn repository() -> &'static Path {
    Path::new(env!("CARGO_MANIFEST_DIR"))
}

/// Where an example case or record lies.
pub(crate) fn example(name: &str) -> String {
    text(&repository().join("examples").join(name))
}

/// A path as an argument.
pub(crate) fn text(path: &Path) -> String {
    path.to_str().unwrap().to_owned()
}

/// The names in a folder, in order.
fn names(folder: &Path) -> Vec<String> {
    let mut names: Vec<String> = fs::read_dir(folder)
        .unwrap()
        .map(|entry| entry.unwrap().file_name().into_string().unwrap())
        .collect();
    names.sort();
    names
}
