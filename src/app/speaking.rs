//! A case spoken.

use std::collections::BTreeSet;
use std::path::{Path, PathBuf};

use super::output::Output;
use super::{Data, Error, Finding, Length, Made, Overrides, Progress, ReadCase, Topic};
use crate::guidance::{Statement, for_topic};
use crate::language::{Pack, Piece, WordingError};
use crate::voice::write::{CueLabels, CueOptions, VttOptions, WavOptions, cue_sheet, wav, webvtt};
use crate::voice::{self, Bank, MissingPhrase, SpeakOptions, Spoken, Status, Timed, VoiceError};

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
    pub topics: &'a [Topic],
    /// The folder they go to.
    pub out: &'a Path,
}

/// Makes radio messages, each with cue sheet and captions, and writes them.
///
/// # Errors
/// Problems of the case, the pack or the bank, and every phrase without a
/// fresh recording; nothing is written then.
pub fn speak(data: &dyn Data, request: SpeakRequest<'_>, progress: Progress<'_>) -> Result<Vec<Made>, Error> {
    let read = ReadCase::from_disk(request.case)?.with(request.overrides)?;
    let mut output = Output::default();
    let made = make(data, &read, &request, &mut output, progress)?;
    output.commit()?;
    Ok(made)
}

/// A message put into pieces, before it is voiced.
struct Message {
    topic: Topic,
    title: String,
    pieces: Vec<Piece>,
}

impl Message {
    fn of(pack: &Pack, statements: &[Statement], topic: Topic) -> Result<Option<Message>, WordingError> {
        let mut message = Message { topic, title: String::new(), pieces: Vec::new() };
        let chosen = for_topic(statements, topic);
        for statement in &chosen {
            message.pieces.extend(pack.say(statement)?);
            if statement.subject.name() == topic.name() {
                message.title = pack.write(statement)?.title;
            }
        }
        Ok((!chosen.is_empty()).then_some(message))
    }
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
    let voice = request.voice.unwrap_or(pack.voice());
    let bank = Bank::load(data, &pack.tag(), voice).map_err(Error::Input)?;
    let statements = read.statements()?;
    let topics = if request.topics.is_empty() { &Topic::ALL[..] } else { request.topics };
    let mut messages = Vec::new();
    for topic in topics {
        messages.extend(Message::of(&pack, &statements, *topic)?);
    }
    if let Some(absent) =
        request.topics.iter().find(|topic| !messages.iter().any(|message| message.topic == **topic))
    {
        let finding =
            Finding::error(format!("the plan has no step {}", absent.name())).file(&read.name).field("topic");
        return Err(Error::Input(vec![
            finding.hint("the dry season of this case is too short for it; choose another topic"),
        ]));
    }
    let mut remarks = super::remarks_on(&pack);
    if bank.voice().status == Status::StandIn {
        remarks
            .push(format!("{}: a stand-in voice made by a machine, to be replaced by a person", pack.name()));
    }
    let options = SpeakOptions { phrases: pack.phrases().map_err(Error::Input)?, ..SpeakOptions::default() };
    let mut missing: Vec<MissingPhrase> = Vec::new();
    let mut made = Vec::new();
    for (done, message) in messages.iter().enumerate() {
        progress(done, messages.len(), &message.title);
        let spoken = match voice::speak(&message.pieces, &bank, &options) {
            Ok(spoken) => spoken,
            // A speaker gets one list for all messages.
            Err(VoiceError::Missing { phrases, .. }) => {
                missing.extend(phrases);
                continue;
            }
            Err(error) => return Err(error.into()),
        };
        if !missing.is_empty() {
            continue;
        }
        let paths = Paths { out: request.out, stem: format!("{}-{}", pack.tag(), message.topic.name()) };
        let length = Length::Seconds(spoken.length().seconds());
        let title = format!("{} ({})", message.title, read.case.name);
        write(&pack, &title, spoken, Vec::new(), &paths, output)?;
        made.push(Made {
            path: paths.with("wav"),
            what: format!("radio message, with cue sheet (.cue.txt) and captions (.vtt), {}", pack.name()),
            audience: "radio producer",
            length,
            remarks: remarks.clone(),
        });
    }
    if missing.is_empty() {
        return Ok(made);
    }
    let mut seen = BTreeSet::new();
    missing.retain(|phrase| seen.insert(phrase.to_string()));
    Err(VoiceError::Missing { language: pack.tag(), voice: voice.to_owned(), phrases: missing }.into())
}

/// Where the files of a message go.
pub(super) struct Paths<'a> {
    pub(super) out: &'a Path,
    pub(super) stem: String,
}

impl Paths<'_> {
    pub(super) fn with(&self, ending: &str) -> PathBuf {
        self.out.join(format!("{}.{ending}", self.stem))
    }
}

/// Writes a message as sound for radio, with cue sheet and captions. `music` is heard beside the words: in the cue sheet alone.
pub(super) fn write(
    pack: &Pack,
    title: &str,
    mut spoken: Spoken,
    music: Vec<Timed>,
    paths: &Paths<'_>,
    output: &mut Output,
) -> Result<(), Error> {
    let label = |id: &str| pack.label(id, &[]);
    let labels = CueLabels {
        title: label("cue-title")?,
        language: label("cue-language")?,
        voice: label("cue-voice")?,
        rights: label("cue-rights")?,
        status: label("cue-status")?,
        status_stand_in: label("voice-stand-in")?,
        status_draft: label("voice-draft")?,
        status_approved: label("voice-approved")?,
        stand_in_remark: label("voice-stand-in-remark")?,
        length: label("cue-length")?,
        loudness: label("cue-loudness")?,
        true_peak: label("cue-true-peak")?,
        from: label("cue-from")?,
        to: label("cue-to")?,
        words: label("cue-words")?,
        clip: label("cue-clip")?,
    };
    let captions = VttOptions { stand_in_remark: labels.stand_in_remark.clone(), ..VttOptions::default() };
    let cues = CueOptions {
        title: title.to_owned(),
        language: format!("{}. {}", pack.name(), label(pack.status().label())?),
        labels,
    };
    output
        .add(&paths.with("wav"), &wav(&spoken.samples, &WavOptions::default()).map_err(VoiceError::from)?)?;
    output.add(&paths.with("vtt"), webvtt(&spoken, &captions).as_bytes())?;
    spoken.lines.extend(music);
    spoken.lines.sort_by_key(|line| line.from);
    output.add(&paths.with("cue.txt"), cue_sheet(&spoken, &cues).as_bytes())
}
