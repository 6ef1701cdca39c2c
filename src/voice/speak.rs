//! A message in words becomes a message in sound.

use std::collections::BTreeSet;
use std::fmt;

use super::bank::Bank;
use super::bank_file::VoiceInfo;
use super::choose::{Choice, Gap, choose};
use super::frames::Frames;
use super::join::{JoinOptions, Mix};
use super::level::{AtGain, LevelError, LevelOptions, mix_to_target};
use super::loudness::Loudness;
use super::sound::Sound;
use super::write::WriteError;
use crate::finding::Finding;
use crate::language::{Intonation, Pause, Phrase, Piece};

/// How a message is spoken.
#[derive(Debug, Clone, Default)]
pub struct SpeakOptions {
    /// How clips are joined.
    pub join: JoinOptions,
    /// How loud the message becomes.
    pub level: LevelOptions,
    /// The phrases that the language pack asks to be recorded. They tell a
    /// stale phrase from one never recorded; where they are left out, both
    /// count as missing.
    pub phrases: Vec<Phrase>,
}

/// A message as sound.
#[derive(Debug, Clone, PartialEq)]
pub struct Spoken<S = Vec<f32>> {
    /// Mono samples at [`SAMPLE_RATE`](super::SAMPLE_RATE), at their final level.
    pub samples: S,
    /// The clips, in the order in which they are heard.
    pub lines: Vec<Timed>,
    /// Loudness and true peak of `samples`.
    pub loudness: Loudness,
    /// Whether peaks had to be held down to reach the loudness.
    pub limited: bool,
    /// Who speaks.
    pub voice: VoiceInfo,
}

/// A message whose clips lie in their places, at their final level; its samples are made when they are asked for.
pub type Composed<'a> = Spoken<AtGain<Mix<'a>>>;

impl<S: Sound> Spoken<S> {
    /// How long the message is.
    pub fn length(&self) -> Frames {
        Frames::of(self.samples.frames())
    }

    /// The same with all its samples made.
    pub fn made(&self) -> Spoken {
        self.with_samples(self.samples.samples())
    }

    /// The same words with another sound.
    pub(super) fn with_samples<T>(&self, samples: T) -> Spoken<T> {
        Spoken {
            samples,
            lines: self.lines.clone(),
            loudness: self.loudness,
            limited: self.limited,
            voice: self.voice.clone(),
        }
    }
}

/// One clip of a message.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Timed {
    /// Where it begins; within a crossfade, in its middle.
    pub from: Frames,
    /// Where it ends; within a crossfade, in its middle.
    pub to: Frames,
    /// The words it says, as the message writes them.
    pub words: String,
    /// Its file, relative to the bank's folder.
    pub clip: String,
    /// The pause that follows; none where the next clip joins on.
    pub pause: Option<Pause>,
}

/// Why a phrase cannot be spoken.
#[derive(Debug, Clone, PartialEq, Eq)]
#[non_exhaustive]
pub enum Why {
    /// No recording says it.
    Missing,
    /// What was recorded for it says something else by now.
    Stale {
        /// The words of the recording.
        recorded: String,
    },
}

/// A phrase without a fresh recording.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct MissingPhrase {
    /// The words to record.
    pub words: String,
    /// How the voice is to end.
    pub intonation: Intonation,
    /// Why they cannot be spoken.
    pub why: Why,
}

impl fmt::Display for MissingPhrase {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "\"{}\" ({})", self.words, self.intonation.name())?;
        match &self.why {
            Why::Missing => Ok(()),
            Why::Stale { recorded } => write!(f, ", recorded before as \"{recorded}\""),
        }
    }
}

/// Why a message cannot be voiced.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum VoiceError {
    /// Phrases without a fresh recording, each once, in the order of the message.
    #[error(
        "no sound was written; the voice {voice} of {language} has no fresh recording of:\n{}",
        list(phrases)
    )]
    Missing {
        /// The language's tag.
        language: String,
        /// The voice's name.
        voice: String,
        /// The phrases.
        phrases: Vec<MissingPhrase>,
    },
    /// The bank, or clips of it, cannot be used: all problems.
    #[error("{}", list(.0))]
    Bank(Vec<Finding>),
    /// The message has no words.
    #[error("there is nothing to say")]
    NothingToSay,
    /// The message cannot be brought to its loudness.
    #[error(transparent)]
    Level(#[from] LevelError),
    /// A file format cannot hold the message.
    #[error(transparent)]
    Write(#[from] WriteError),
}

fn list<T: ToString>(items: &[T]) -> String {
    items.iter().map(ToString::to_string).collect::<Vec<_>>().join("\n")
}

/// Speaks a message with the clips of a bank.
///
/// ```
/// use kabla::voice::{self, Bank, SpeakOptions};
/// # use kabla::{case, data::Embedded, guidance, language::Pack, plan};
/// # let no_files = |_: &str| Err(std::io::Error::from(std::io::ErrorKind::NotFound));
/// # let (case, _) = case::read("farm.toml", case::Starter::Farm.text(), &no_files).unwrap();
/// # let statements = guidance::tell(&case, &plan::make(&case).unwrap());
/// # let pack = Pack::load(&Embedded, "en").unwrap();
/// let bank = Bank::load(&Embedded, "en", pack.voice()).map_err(voice::VoiceError::Bank)?;
/// let pieces = pack.say(&statements[1]).unwrap();
/// let spoken = voice::speak(&pieces, &bank, &SpeakOptions::default())?;
/// assert!((spoken.loudness.integrated_lufs + 23.0).abs() < 0.2);
/// # Ok::<(), voice::VoiceError>(())
/// ```
///
/// # Errors
/// Every phrase without a fresh recording, every needed clip that cannot be
/// decoded, or a level that cannot be reached.
pub fn speak(pieces: &[Piece], bank: &Bank<'_>, options: &SpeakOptions) -> Result<Spoken, VoiceError> {
    Ok(compose(choose_clips(pieces, bank, options)?, bank, options)?.made())
}

/// Chooses the clips of a message.
///
/// # Errors
/// Every phrase without a fresh recording.
pub fn choose_clips(
    pieces: &[Piece],
    bank: &Bank<'_>,
    options: &SpeakOptions,
) -> Result<Vec<Choice>, VoiceError> {
    choose(pieces, bank).map_err(|gaps| missing(bank, gaps, &options.phrases))
}

/// Puts clips that were chosen from a bank in their places, and finds their level.
///
/// # Errors
/// Every clip that cannot be decoded, or a level that cannot be reached.
pub fn compose<'a>(
    chosen: Vec<Choice>,
    bank: &'a Bank<'_>,
    options: &SpeakOptions,
) -> Result<Composed<'a>, VoiceError> {
    if chosen.is_empty() {
        return Err(VoiceError::NothingToSay);
    }
    let mut parts = Vec::with_capacity(chosen.len());
    let mut broken = Vec::new();
    let mut seen = BTreeSet::new();
    for choice in &chosen {
        match bank.part(choice.clip, choice.pause) {
            Ok(part) => parts.push(part),
            Err(finding) if seen.insert(choice.clip) => broken.push(finding),
            Err(_) => {}
        }
    }
    let room_tone = bank.room_tone().unwrap_or_else(|finding| {
        broken.push(finding);
        None
    });
    if !broken.is_empty() {
        return Err(VoiceError::Bank(broken));
    }
    let mix = Mix::new(parts, &options.join, room_tone);
    let spans = mix.spans().to_vec();
    let levelled = mix_to_target(mix, &options.level)?;
    let lines = spans.into_iter().zip(chosen).map(|(span, choice)| Timed {
        from: span.from,
        to: span.to,
        words: choice.words,
        clip: bank.clips().get(choice.clip).map(|clip| clip.file.clone()).unwrap_or_default(),
        pause: choice.pause,
    });
    Ok(Spoken {
        lines: lines.collect(),
        samples: levelled.sound,
        loudness: levelled.loudness,
        limited: levelled.limited,
        voice: bank.voice().clone(),
    })
}

fn missing(bank: &Bank<'_>, gaps: Vec<Gap>, phrases: &[Phrase]) -> VoiceError {
    let stale = bank.stale(phrases);
    let phrases = gaps.into_iter().map(|gap| MissingPhrase {
        why: stale
            .recorded(&gap.words)
            .map_or(Why::Missing, |recorded| Why::Stale { recorded: recorded.to_owned() }),
        words: gap.words,
        intonation: gap.intonation,
    });
    let phrases = phrases.collect();
    let VoiceInfo { language, voice, .. } = bank.voice().clone();
    VoiceError::Missing { language, voice, phrases }
}
