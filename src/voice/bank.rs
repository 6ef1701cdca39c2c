//! A voice's recorded clips, and what each says.
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
//!
//! A clip is bound to its exact words: only case, spaces and the marks at the
//! end may differ from what a message says.

use std::cell::{OnceCell, RefCell};
use std::collections::{BTreeMap, BTreeSet, HashMap};
use std::fmt;

use super::cache::{self, Prepared};
use super::decode::Decoder;
use super::edge::Joint;
use super::join::Part;
use super::repair::repaired;
use super::room_tone::RoomTone;
use super::spelling::{key, tokens};
use crate::catalogue::catalogue;
use crate::data::Data;
use crate::finding::{Code, Finding};
use crate::language::{Intonation, Label, Pause, Phrase};
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

/// Whether a phrase can be spoken.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum ClipState {
    /// It is recorded.
    Recorded,
    /// It is recorded, but with the other intonation only.
    OtherIntonation,
    /// What was recorded for it says something else by now.
    Stale {
        /// The words of the recording.
        recorded: String,
    },
    /// No clip says it.
    Missing,
}

/// The clips of one voice. Files are read and decoded when they are first heard.
pub struct Bank<'d> {
    data: &'d dyn Data,
    folder: String,
    voice: VoiceInfo,
    clips: Vec<Clip>,
    by_words: HashMap<String, Vec<usize>>,
    longest: usize,
    sounds: Vec<OnceCell<Result<Prepared, Finding>>>,
    room_tone: OnceCell<Result<Option<RoomTone>, Finding>>,
    decoder: RefCell<Decoder>,
}

impl fmt::Debug for Bank<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Bank").field("voice", &self.voice).field("clips", &self.clips).finish_non_exhaustive()
    }
}

impl<'d> Bank<'d> {
    /// The voices of a language.
    pub fn voices(data: &dyn Data, language: &str) -> Vec<String> {
        let names = data.list(&format!("audio/{language}")).into_iter();
        names.filter(|voice| data.read(&format!("audio/{language}/{voice}/bank.toml")).is_some()).collect()
    }

    /// Reads the bank of a voice; the clips themselves are not yet read.
    ///
    /// # Errors
    /// All problems of `bank.toml`, each with its line, files that it names
    /// and that are not there among them.
    pub fn load(data: &'d dyn Data, language: &str, voice: &str) -> Result<Bank<'d>, Vec<Finding>> {
        let folder = format!("audio/{language}/{voice}");
        let path = format!("{folder}/bank.toml");
        let Some(bytes) = data.read(&path) else {
            let voices = Bank::voices(data, language);
            let (code, message, hint) = match voices.as_slice() {
                [] => (
                    Code::NO_VOICE,
                    format!("no voice speaks {language} yet"),
                    format!("record its phrases, and write {path}"),
                ),
                voices => (
                    Code::UNKNOWN_VOICE,
                    format!("there is no voice {voice} in {language}"),
                    format!("voices at hand: {}", voices.join(", ")),
                ),
            };
            return Err(vec![
                Finding::error(code, message).file(path).value("language", language).hint(hint),
            ]);
        };
        let Ok(text) = std::str::from_utf8(&bytes) else {
            return Err(vec![
                Finding::error(Code::NOT_UTF8, "is not UTF-8 text").file(path).hint("save it in UTF-8"),
            ]);
        };
        let (made, findings) = toml_reader::read(&path, text, |_, root| {
            let info = header(root, language, voice);
            let mut shelf = Shelf::new(data, &folder);
            if let Some(file) = info.as_ref().and_then(|info| info.room_tone.as_ref()) {
                shelf.check_file(root, "room_tone", file);
            }
            let clips = shelf.read(root);
            info.map(|info| (info, clips))
        });
        let (voice, clips) = made.filter(|_| findings.is_empty()).ok_or(findings)?;
        let mut by_words: HashMap<String, Vec<usize>> = HashMap::new();
        let mut longest = 0;
        for (index, clip) in clips.iter().enumerate() {
            by_words.entry(key(&clip.words)).or_default().push(index);
            longest = longest.max(tokens(&clip.words).len());
        }
        let sounds = clips.iter().map(|_| OnceCell::new()).collect();
        let decoder = RefCell::default();
        let room_tone = OnceCell::new();
        Ok(Bank { data, folder, voice, clips, by_words, longest, sounds, room_tone, decoder })
    }

    /// Who speaks.
    pub fn voice(&self) -> &VoiceInfo {
        &self.voice
    }

    /// All clips, in the order of `bank.toml`.
    pub fn clips(&self) -> &[Clip] {
        &self.clips
    }

    /// Whether each phrase of a language pack can be spoken, in their order.
    pub fn statuses(&self, phrases: &[Phrase]) -> Vec<ClipState> {
        let stale = self.stale(phrases);
        let state = |phrase: &Phrase| match (self.saying(&key(&phrase.words)), stale.recorded(&phrase.words))
        {
            (None, Some(recorded)) => ClipState::Stale { recorded: recorded.to_owned() },
            (None, None) => ClipState::Missing,
            (Some(clips), _) if self.with_intonation(clips, phrase.intonation).is_some() => {
                ClipState::Recorded
            }
            (Some(_), _) => ClipState::OtherIntonation,
        };
        phrases.iter().map(state).collect()
    }

    /// A clip's samples, mono at [`SAMPLE_RATE`](super::SAMPLE_RATE), by its
    /// place in [`clips`](Bank::clips).
    ///
    /// # Errors
    /// What is wrong with the file.
    pub fn sound(&self, clip: usize) -> Result<Vec<f32>, Finding> {
        self.known(clip).map(|clip| clip.sound.samples())
    }

    /// A clip ready to be joined, with the pause that follows it.
    pub(super) fn part(&self, clip: usize, pause: Option<Pause>) -> Result<Part<'_>, Finding> {
        self.known(clip).map(|clip| Part::prepared(clip, pause))
    }

    fn known(&self, clip: usize) -> Result<&Prepared, Finding> {
        let unknown = || Finding::error(Code::UNKNOWN_NAME, format!("the voice has no clip number {clip}"));
        self.prepared(clip).ok_or_else(unknown)?.map_err(Clone::clone)
    }

    /// The room as recorded without a voice, where the bank has a recording of it.
    pub(super) fn room_tone(&self) -> Result<Option<&RoomTone>, Finding> {
        let recorded = |file| self.prepare(file).map(|tone| RoomTone::recorded(&tone.sound.samples()));
        let room_tone =
            self.room_tone.get_or_init(|| self.voice.room_tone.as_deref().map(recorded).transpose());
        room_tone.as_ref().map(Option::as_ref).map_err(Clone::clone)
    }

    /// How the end of one clip meets the start of another, by their places in
    /// [`clips`](Bank::clips); none where one of them cannot be decoded.
    pub fn joint(&self, before: usize, after: usize) -> Option<Joint> {
        let (before, after) = (self.prepared(before)?.ok()?, self.prepared(after)?.ok()?);
        Some(Joint::of(&before.edges, &after.edges))
    }

    fn prepared(&self, clip: usize) -> Option<Result<&Prepared, &Finding>> {
        let (cell, clip) = self.sounds.get(clip).zip(self.clips.get(clip))?;
        Some(cell.get_or_init(|| self.prepare(&clip.file)).as_ref())
    }

    /// A file decoded and measured, or read from the cache.
    fn prepare(&self, file: &str) -> Result<Prepared, Finding> {
        let path = format!("{}/{file}", self.folder);
        let Some(bytes) = self.data.read(&path) else {
            return Err(Finding::error(Code::CANNOT_READ, "cannot be read")
                .file(path)
                .hint("check the file and its rights"));
        };
        let kept = self.data.clip_cache().map(|clip_cache| (clip_cache, cache::name(&bytes)));
        let found = kept.as_ref().and_then(|(clip_cache, name)| cache::unpack(&clip_cache.get(name)?));
        if let Some(found) = found {
            return Ok(found);
        }
        let samples = self.decoder.borrow_mut().decode(&bytes).map(repaired).map_err(|problem| {
            Finding::error(Code::BROKEN_SOUND, problem.to_string()).file(path).hint(problem.hint())
        })?;
        let prepared = Prepared::of(&samples);
        if let Some((clip_cache, name)) = kept {
            clip_cache.put(&name, &cache::pack(&prepared));
        }
        Ok(prepared)
    }

    /// The clips that say just these words, by [`key`].
    pub(super) fn saying(&self, key: &str) -> Option<&[usize]> {
        self.by_words.get(key).map(Vec::as_slice)
    }

    pub(super) fn with_intonation(&self, clips: &[usize], wanted: Intonation) -> Option<usize> {
        let fits = |clip: &&usize| self.clips.get(**clip).is_some_and(|clip| clip.intonation == wanted);
        clips.iter().find(fits).copied()
    }

    /// The most words that a clip says.
    pub(super) fn longest(&self) -> usize {
        self.longest
    }

    /// What was recorded for phrases that have changed since. A clip is out of
    /// use when no phrase has its words; it belongs to a phrase by their id.
    /// Many numbers share an id: there, nothing tells which was which, and a
    /// phrase counts as missing.
    pub(super) fn stale(&self, phrases: &[Phrase]) -> Stale {
        let wanted: BTreeSet<String> = phrases.iter().map(|phrase| key(&phrase.words)).collect();
        let mut unused: BTreeMap<&str, BTreeMap<String, &str>> = BTreeMap::new();
        for clip in &self.clips {
            if let (Some(id), false) = (&clip.id, wanted.contains(&key(&clip.words))) {
                unused.entry(id).or_default().insert(key(&clip.words), &clip.words);
            }
        }
        let mut unspoken: BTreeMap<&str, BTreeSet<String>> = BTreeMap::new();
        for phrase in phrases.iter().filter(|phrase| self.saying(&key(&phrase.words)).is_none()) {
            unspoken.entry(&phrase.id).or_default().insert(key(&phrase.words));
        }
        let mut recorded = BTreeMap::new();
        for (id, phrases) in unspoken {
            let clips = unused.get(id).into_iter().flatten();
            if let (1, [(_, words)]) = (phrases.len(), clips.collect::<Vec<_>>().as_slice()) {
                recorded.extend(phrases.into_iter().map(|phrase| (phrase, (**words).to_owned())));
            }
        }
        Stale(recorded)
    }
}

/// By the words wanted, the words recorded.
pub(super) struct Stale(BTreeMap<String, String>);

impl Stale {
    pub(super) fn recorded(&self, words: &str) -> Option<&str> {
        self.0.get(&key(words)).map(String::as_str)
    }
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
