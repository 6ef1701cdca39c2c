//! A case spoken.

use std::collections::BTreeSet;
use std::path::Path;

use serde::Serialize;

use super::delivery::{Channel, Delivery};
use super::message::{Message, agenda, apart};
use super::output::Output;
use super::{Code, Data, Error, Finding, Made, Overrides, Progress, ReadCase, StepKind, led_to};
use crate::guidance::{Statement, Subject};
use crate::language::Pack;
use crate::voice::choose::{Choice, Explained, choose, explain as explain_choice};
use crate::voice::write::MP3_BUILT_IN;
use crate::voice::{self, Bank, JoinOptions, MissingPhrase, SpeakOptions, VoiceError, VoiceInfo};

/// What messages are asked for.
#[derive(Debug, Clone, Copy)]
pub struct SpeakRequest<'a> {
    /// The case's file.
    pub case: &'a Path,
    /// What goes before the case's own.
    pub overrides: Overrides,
    /// Their language; the case's own where none is named.
    pub language: Option<&'a str>,
    /// The recorded voice; the pack's own where none is named.
    pub voice: Option<&'a str>,
    /// Their topics; every topic of the plan where none is named.
    pub topics: &'a [StepKind],
    /// What they are for.
    pub channel: Channel,
    /// The folder they go to.
    pub out: &'a Path,
}

/// Makes messages for a channel, each with cue sheet and captions, and writes them.
///
/// # Errors
/// Problems of the case, the pack or the bank, and every phrase without a
/// fresh recording; nothing is written then.
pub fn speak(data: &dyn Data, request: SpeakRequest<'_>, progress: Progress<'_>) -> Result<Vec<Made>, Error> {
    request.channel.check().map_err(|finding| Error::Input(vec![finding]))?;
    if matches!(request.channel, Channel::Radio { mp3: true }) && !MP3_BUILT_IN {
        let finding = Finding::error(
            Code::NOT_BUILT_IN,
            "this program was built without MP3, whose encoder is under the LGPL",
        );
        return Err(Error::Input(vec![finding.argument("mp3")]));
    }
    let read = ReadCase::from_disk(request.case)?.with(request.overrides)?;
    let mut output = Output::default();
    let made = make(data, &read, &request, &mut output, progress)?;
    output.commit()?;
    Ok(made)
}

/// Makes messages ready to be written.
pub(super) fn make(
    data: &dyn Data,
    read: &ReadCase,
    request: &SpeakRequest<'_>,
    output: &mut Output,
    progress: Progress<'_>,
) -> Result<Vec<Made>, Error> {
    let pack = read.pack(data, request.language)?;
    let bank = bank(data, &pack, request)?;
    let messages = messages(&pack, read, request)?;
    let options = SpeakOptions::default();
    let chosen = chosen(&pack, &bank, messages)?;
    let count = chosen.len();
    let voiced = chosen.into_iter().enumerate().map(|(done, (message, clips))| {
        progress(done, count, &message.title);
        Ok((message, voice::compose(clips, &bank, &options)?))
    });
    let delivery = Delivery { pack: &pack, read, bank: &bank, out: request.out, output };
    let mut made = delivery.deliver(request.channel, voiced)?;
    let remarks = led_to(&pack, &read.statements()?)?;
    made.iter_mut().take(1).for_each(|made| made.remarks.extend(remarks.iter().cloned()));
    Ok(made)
}

fn bank<'d>(data: &'d dyn Data, pack: &Pack, request: &SpeakRequest<'_>) -> Result<Bank<'d>, Error> {
    Bank::load(data, &pack.tag(), request.voice.unwrap_or(pack.voice())).map_err(Error::Input)
}

/// The messages that are asked for.
fn messages(pack: &Pack, read: &ReadCase, request: &SpeakRequest<'_>) -> Result<Vec<Message>, Error> {
    let statements = read.statements()?;
    let topics = topics(read, request, &statements)?;
    Ok(match request.channel {
        Channel::Meeting { .. } => agenda(pack, &statements, &topics)?,
        _ => apart(pack, &statements, &topics)?,
    })
}

/// Which clips say a message, and what each was chosen among.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct MessageClips {
    /// Its topic; `opening` or `closing` for what frames a meeting.
    pub message: &'static str,
    /// Its clips, in the order in which they are heard.
    pub clips: Vec<ChosenClip>,
}

/// A clip of a message.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct ChosenClip {
    /// Its file, relative to the voice's folder.
    pub clip: String,
    /// The words, as the message writes them.
    pub words: String,
    /// How the message wants the voice to end: `medial` or `final`.
    pub wanted: &'static str,
    /// How it ends.
    pub intonation: &'static str,
    /// The seconds of silence that follow; none where the next clip joins on.
    pub pause_s: Option<f64>,
    /// The other clips with the same words.
    pub others: Vec<String>,
    /// How it meets the next; none after the last.
    pub meets: Option<JointMeasures>,
}

/// What is measured where two clips meet.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct JointMeasures {
    /// Difference of level, in dB.
    pub level_db: f64,
    /// Difference of pitch, in semitones; 0 unless both edges are voiced.
    pub pitch_semitones: f64,
    /// Difference of the spectra's shapes, in dB.
    pub spectrum_db: f64,
    /// What of it counted in the choice, in units of a small step heard; behind a pause a tenth does.
    pub roughness: f64,
}

/// Tells which clips would say what is asked for. Nothing is written.
///
/// # Errors
/// As [`speak`].
pub fn explain(data: &dyn Data, request: SpeakRequest<'_>) -> Result<Vec<MessageClips>, Error> {
    request.channel.check().map_err(|finding| Error::Input(vec![finding]))?;
    let read = ReadCase::from_disk(request.case)?.with(request.overrides)?;
    let pack = read.pack(data, request.language)?;
    let bank = bank(data, &pack, &request)?;
    let messages = messages(&pack, &read, &request)?;
    let named: Vec<_> = messages.iter().map(|message| (message.name, message.pieces.clone())).collect();
    // What cannot be said is reported as when it is to be spoken.
    chosen(&pack, &bank, messages)?;
    let told = named.into_iter().map(|(message, pieces)| {
        let links = explain_choice(&pieces, &bank).unwrap_or_default();
        MessageClips { message, clips: links.into_iter().map(|link| told(&bank, link)).collect() }
    });
    Ok(told.collect())
}

fn told(bank: &Bank<'_>, link: Explained) -> ChosenClip {
    let clip = |place: usize| bank.clips().get(place);
    let file = |place: usize| clip(place).map(|clip| clip.file.clone()).unwrap_or_default();
    let hundredths = |value: f64| (value * 100.0).round() / 100.0;
    ChosenClip {
        clip: file(link.choice.clip),
        words: link.choice.words,
        wanted: link.wanted.name(),
        intonation: clip(link.choice.clip).map_or("", |clip| clip.intonation.name()),
        pause_s: link.choice.pause.map(|pause| JoinOptions::default().pause(pause).seconds()),
        others: link.others.into_iter().map(file).collect(),
        meets: link.meets.map(|meets| JointMeasures {
            level_db: hundredths(meets.level_db.into()),
            pitch_semitones: hundredths(meets.pitch_semitones.into()),
            spectrum_db: hundredths(meets.spectrum_db.into()),
            roughness: hundredths(link.roughness as f64 / 1000.0),
        }),
    }
}

/// The topics asked for that the plan has, or all it has.
fn topics(
    read: &ReadCase,
    request: &SpeakRequest<'_>,
    statements: &[Statement],
) -> Result<Vec<StepKind>, Error> {
    let has =
        |topic: &StepKind| statements.iter().any(|statement| statement.subject == Subject::Step(*topic));
    if let Some(absent) = request.topics.iter().find(|topic| !has(topic)) {
        let finding = Finding::error(Code::NOT_IN_PLAN, format!("the plan has no step {}", absent.name()))
            .file(&read.name)
            .argument("topic");
        return Err(Error::Input(vec![
            finding.hint("the dry season of this case is too short for it; choose another topic"),
        ]));
    }
    let wanted = if request.topics.is_empty() { &StepKind::ALL[..] } else { request.topics };
    let mut seen = BTreeSet::new();
    Ok(wanted.iter().copied().filter(|topic| has(topic) && seen.insert(*topic)).collect())
}

/// The clips of each message, or one list of every phrase that any of them lacks.
fn chosen(
    pack: &Pack,
    bank: &Bank<'_>,
    messages: Vec<Message>,
) -> Result<Vec<(Message, Vec<Choice>)>, Error> {
    let quick = messages.iter().map(|message| choose(&message.pieces, bank));
    if let Ok(chosen) = quick.collect::<Result<Vec<_>, _>>() {
        return Ok(messages.into_iter().zip(chosen).collect());
    }
    // Only where something is missing does it matter what was once recorded in its place.
    let options = SpeakOptions { phrases: pack.phrases().map_err(Error::Input)?, ..SpeakOptions::default() };
    let mut missing: Vec<MissingPhrase> = Vec::new();
    for message in &messages {
        match voice::choose_clips(&message.pieces, bank, &options) {
            Err(VoiceError::Missing { phrases, .. }) => missing.extend(phrases),
            Err(error) => return Err(error.into()),
            Ok(_) => {}
        }
    }
    let mut seen = BTreeSet::new();
    missing.retain(|phrase| seen.insert(phrase.to_string()));
    let VoiceInfo { language, voice, .. } = bank.voice().clone();
    Err(VoiceError::Missing { language, voice, phrases: missing }.into())
}
