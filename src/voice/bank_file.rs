//! The file `bank.toml` of a voice.
//!
//! A bank is the folder `audio/<language>/<voice>` with `bank.toml` and the
//! clips it names:
//!
//! ```toml
//! language = "en"
//! voice = "stand-in"
//! status = "stand-in"     # or "draft", "approved"
//! speaker = "who speaks"
//! rights = "what one may do with the recordings"
//! made_by = "how they were made"
//! consent = "how and when the speaker agreed"  # where a person speaks
//! room_tone = "room-tone.wav"  # may be left out
//! note = "anything else"  # may be left out
//!
//! [[clip]]
//! file = "choose-your-mother-plants.flac"
//! words = "Choose your mother plants"
//! intonation = "medial"   # or "final"
//! id = "mark-plants#1"    # where the words stood when recorded; may be left out
//! take = 2                # tells recordings of the same words apart; 1 where left out
//! ```
//!
//! `room_tone = "room.wav"`, beside `note`, names a recording of the room
//! without a voice, to be heard in pauses; without it a synthetic one is.

use std::collections::{BTreeMap, BTreeSet};

use super::spelling::key;
use crate::catalogue::catalogue;
use crate::data::Data;
use crate::finding::{Code, Finding};
use crate::language::{Intonation, Label};
use crate::toml_reader::{self, TomlTable};

catalogue! {
    /// How far a voice may be trusted, in one word as in `bank.toml`.
    pub enum Status: StatusEntry {
        /// The label that says it.
        label: Label,
    }
    /// Made by a machine, to be replaced by a person.
    StandIn = "stand-in" { label: Label::VoiceStandIn };
    /// Recorded, and not yet approved.
    Draft = "draft" { label: Label::VoiceDraft };
    /// It may go on air.
    Approved = "approved" { label: Label::VoiceApproved };
}

/// Who speaks.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct VoiceInfo {
    /// The language's tag.
    pub language: String,
    /// The voice's name.
    pub voice: String,
    /// How far it may be trusted.
    pub status: Status,
    /// The speaker.
    pub speaker: String,
    /// What one may do with the recordings.
    pub rights: String,
    /// How the recordings were made.
    pub made_by: String,
    /// How and when the speaker agreed, where a person speaks.
    pub consent: Option<String>,
    /// The file with the room's own sound, where there is one.
    pub room_tone: Option<String>,
    /// Anything else, where there is something.
    pub note: Option<String>,
}

/// A recorded clip.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Clip {
    /// Its file, relative to the bank's folder.
    pub file: String,
    /// The words it says.
    pub words: String,
    /// How the voice ends.
    pub intonation: Intonation,
    /// Where the words stood in the language pack when they were recorded.
    pub id: Option<String>,
    /// Tells recordings of the same words apart, from 1.
    pub take: u32,
}

/// Reads the file of a voice; the clips themselves are not read.
///
/// # Errors
/// All its problems, each with its line.
pub(super) fn read(
    data: &dyn Data,
    text: &str,
    (language, voice): (&str, &str),
) -> Result<(VoiceInfo, Vec<Clip>), Vec<Finding>> {
    let folder = format!("audio/{language}/{voice}");
    let (made, findings) = toml_reader::read(&format!("{folder}/bank.toml"), text, |_, root| {
        let info = header(root, language, voice);
        let mut shelf = Shelf::new(data, &folder);
        if let Some(file) = info.as_ref().and_then(|info| info.room_tone.as_ref()) {
            shelf.check_file(root, "room_tone", file);
        }
        let clips = shelf.read(root);
        info.map(|info| (info, clips))
    });
    made.filter(|_| findings.is_empty()).ok_or(findings)
}

/// What recordings of the same words may be numbered.
const TAKES: std::ops::RangeInclusive<u32> = 1..=99;
const INTONATIONS: &[(&str, Intonation)] = &[("medial", Intonation::Medial), ("final", Intonation::Final)];

fn needed<T>(
    table: &TomlTable<'_>,
    key: &'static str,
    read: impl FnOnce() -> Option<T>,
    hint: &str,
) -> Option<T> {
    if !table.has(key) {
        table.missing(key, hint);
        return None;
    }
    read()
}

fn header(root: &TomlTable<'_>, language: &str, voice: &str) -> Option<VoiceInfo> {
    let text = |key, hint: &str| needed(root, key, || root.text(key), hint);
    let named = |key, folder: &str| {
        let hint = format!("write {key} = \"{folder}\"");
        let written = text(key, &hint)?;
        if written != folder {
            root.problem(Code::MISMATCH, key, "differs from the folder's name", hint);
        }
        Some(written)
    };
    let language = named("language", language);
    let voice = named("voice", voice);
    let statuses = Status::ALL.map(|status| (status.name(), status));
    let status = needed(
        root,
        "status",
        || root.choice("status", &statuses),
        "write status = \"draft\" until the voice is approved",
    );
    let speaker = text("speaker", "write who speaks");
    let rights = text("rights", "write what one may do with the recordings");
    let made_by = text("made_by", "write how the recordings were made");
    let (consent, room_tone) = (root.text("consent"), root.text("room_tone"));
    let note = root.text("note");
    Some(VoiceInfo {
        language: language?,
        voice: voice?,
        status: status?,
        speaker: speaker?,
        rights: rights?,
        made_by: made_by?,
        consent,
        room_tone,
        note,
    })
}

/// The clips read so far, and the files there are.
struct Shelf<'a> {
    data: &'a dyn Data,
    folder: &'a str,
    /// Names in each folder asked for.
    names: BTreeMap<String, BTreeSet<String>>,
    by_words: BTreeMap<(String, Intonation, u32), String>,
    by_file: BTreeMap<String, String>,
}

impl<'a> Shelf<'a> {
    fn new(data: &'a dyn Data, folder: &'a str) -> Self {
        Shelf { data, folder, names: BTreeMap::new(), by_words: BTreeMap::new(), by_file: BTreeMap::new() }
    }

    fn read(&mut self, root: &TomlTable<'_>) -> Vec<Clip> {
        let tables = root.tables("clip");
        tables.into_iter().filter_map(|table| self.clip(table)).collect()
    }

    fn clip(&mut self, table: TomlTable<'_>) -> Option<Clip> {
        let file = needed(&table, "file", || table.text("file"), "write the clip's file name");
        let words = needed(&table, "words", || table.text("words"), "write the words that the clip says");
        let intonation = needed(
            &table,
            "intonation",
            || table.choice("intonation", INTONATIONS),
            "write \"medial\" or \"final\"",
        );
        let id = table.text("id");
        let take = if table.has("take") { table.whole("take", TAKES) } else { Some(1) };
        if let Some(file) = &file {
            self.check_file(&table, "file", file);
        }
        if let Some(words) = &words {
            self.check_words(&table, words, intonation.zip(take), file.as_deref());
        }
        table.finish();
        Some(Clip { file: file?, words: words?, intonation: intonation?, id, take: take? })
    }

    fn check_file(&mut self, table: &TomlTable<'_>, field: &'static str, file: &str) {
        let plain = |part: &str| !matches!(part, "" | "." | "..") && !part.contains(['\\', ':']);
        if !file.split('/').all(plain) {
            table.problem(
                Code::BAD_NAME,
                field,
                format!("{file} lies outside the bank's folder"),
                "name a file in the bank's folder, with / between folders",
            );
            return;
        }
        let extension = file.rsplit_once('.').map(|(_, extension)| extension.to_ascii_lowercase());
        if !matches!(extension.as_deref(), Some("flac" | "wav" | "opus")) {
            table.problem(
                Code::BAD_NAME,
                field,
                format!("{file} is not .flac, .wav or .opus"),
                "export the clip as FLAC, WAV or Ogg Opus",
            );
        }
        let path = format!("{}/{file}", self.folder);
        let (folder, name) = path.rsplit_once('/').unwrap_or(("", &path));
        let names = self
            .names
            .entry(folder.to_owned())
            .or_insert_with(|| self.data.list(folder).into_iter().collect());
        if !names.contains(name) {
            table.problem(
                Code::CANNOT_READ,
                field,
                format!("there is no file {file}"),
                "record the clip, or take the entry out",
            );
        }
    }

    fn check_words(
        &mut self,
        table: &TomlTable<'_>,
        words: &str,
        spoken: Option<(Intonation, u32)>,
        file: Option<&str>,
    ) {
        let key = key(words);
        if key.is_empty() {
            table.problem(Code::EMPTY, "words", "has no words", "write the words that the clip says");
            return;
        }
        let file = file.unwrap_or("another clip");
        if let Some((intonation, take)) = spoken {
            match self.by_words.get(&(key.clone(), intonation, take)) {
                Some(first) => {
                    let message = format!("{first} says the same words with the same intonation");
                    table.problem(
                        Code::DUPLICATE,
                        "words",
                        message,
                        "keep the better of the two, or number them: take = 2",
                    );
                }
                None => {
                    self.by_words.insert((key.clone(), intonation, take), file.to_owned());
                }
            }
        }
        let other = self.by_file.entry(file.to_owned()).or_insert_with(|| key.clone());
        if *other != key {
            table.problem(
                Code::CONFLICT,
                "file",
                format!("{file} says \"{other}\" in another entry"),
                "give each phrase its own clip",
            );
        }
    }
}
