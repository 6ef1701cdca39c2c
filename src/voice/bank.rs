//! A voice's recorded clips, and what each says.
//!
//! A clip is bound to its exact words: only case, spaces and the marks at the
//! end may differ from what a message says.

use std::cell::{OnceCell, RefCell};
use std::collections::{BTreeMap, BTreeSet, HashMap};
use std::fmt;

use super::bank_file::{self, Clip, VoiceInfo};
use super::cache::{self, Prepared};
use super::decode::Decoder;
use super::edge::Joint;
use super::join::Part;
use super::repair::repaired;
use super::room_tone::RoomTone;
use super::spelling::{key, tokens};
use crate::data::Data;
use crate::finding::{Code, Finding};
use crate::language::{Intonation, Pause, Phrase};

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
        let (voice, clips) = bank_file::read(data, text, (language, voice))?;
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
