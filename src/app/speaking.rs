//! A case spoken.

use std::collections::BTreeSet;
use std::path::Path;

use super::delivery::{Channel, Desk};
use super::output::Output;
use super::{Data, Error, Finding, Made, Overrides, Progress, ReadCase, Topic};
use crate::guidance::{Statement, Subject, chapter, for_topic};
use crate::language::{Pack, Piece, WordingError};
use crate::voice::write::MP3_BUILT_IN;
use crate::voice::{self, Bank, MissingPhrase, SpeakOptions, Spoken, VoiceError};

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
        let finding = Finding::error("this program was built without MP3, whose encoder is under the LGPL");
        let hint = "build it with cargo build --release --features mp3, or leave --mp3 out";
        return Err(Error::Input(vec![finding.field("--mp3").hint(hint)]));
    }
    let read = ReadCase::from_disk(request.case)?.with(request.overrides)?;
    let mut output = Output::default();
    let made = make(data, &read, &request, &mut output, progress)?;
    output.commit()?;
    Ok(made)
}

/// A message put into pieces, before it is voiced.
pub(super) struct Message {
    /// What tells it from others in file names: its topic.
    pub(super) name: &'static str,
    pub(super) title: String,
    pieces: Vec<Piece>,
}

impl Message {
    fn of(
        pack: &Pack,
        name: &'static str,
        statements: &[&Statement],
    ) -> Result<Option<Message>, WordingError> {
        let mut message = Message { name, title: String::new(), pieces: Vec::new() };
        for statement in statements {
            message.pieces.extend(pack.say(statement)?);
            if statement.subject.name() == name {
                message.title = pack.write(statement)?.title;
            }
        }
        Ok((!statements.is_empty()).then_some(message))
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
    let topics = topics(read, request, &statements)?;
    let messages = match request.channel {
        Channel::Meeting { .. } => agenda(&pack, &statements, &topics)?,
        _ => apart(&pack, &statements, &topics)?,
    };
    let spoken = voiced(&pack, &bank, messages, progress)?;
    Desk { pack: &pack, read, bank: &bank, out: request.out, output }.deliver(request.channel, &spoken)
}

/// The topics asked for that the plan has, or all it has.
fn topics(
    read: &ReadCase,
    request: &SpeakRequest<'_>,
    statements: &[Statement],
) -> Result<Vec<Topic>, Error> {
    let has = |topic: &Topic| statements.iter().any(|statement| statement.subject == Subject::Step(*topic));
    if let Some(absent) = request.topics.iter().find(|topic| !has(topic)) {
        let finding =
            Finding::error(format!("the plan has no step {}", absent.name())).file(&read.name).field("topic");
        return Err(Error::Input(vec![
            finding.hint("the dry season of this case is too short for it; choose another topic"),
        ]));
    }
    let wanted = if request.topics.is_empty() { &Topic::ALL[..] } else { request.topics };
    let mut seen = BTreeSet::new();
    Ok(wanted.iter().copied().filter(|topic| has(topic) && seen.insert(*topic)).collect())
}

/// A message for each topic, each with opening and closing.
fn apart(pack: &Pack, statements: &[Statement], topics: &[Topic]) -> Result<Vec<Message>, WordingError> {
    let mut messages = Vec::new();
    for topic in topics {
        messages.extend(Message::of(pack, topic.name(), &for_topic(statements, *topic))?);
    }
    Ok(messages)
}

/// A meeting's parts: the opening, a chapter for each topic, the closing.
fn agenda(pack: &Pack, statements: &[Statement], topics: &[Topic]) -> Result<Vec<Message>, WordingError> {
    let framing = |subject: Subject| -> Vec<&Statement> {
        statements.iter().filter(|statement| statement.subject == subject).collect()
    };
    let mut messages = Vec::new();
    let opening = Message::of(pack, Subject::Opening.name(), &framing(Subject::Opening))?;
    let title = pack.label("sheet-title", &[])?;
    messages.extend(opening.map(|opening| Message { title, ..opening }));
    for topic in topics {
        let statements = chapter(statements, *topic);
        messages.extend(Message::of(pack, topic.name(), &statements.iter().collect::<Vec<_>>())?);
    }
    // It goes on with the last chapter.
    let closing = Message::of(pack, Subject::Closing.name(), &framing(Subject::Closing))?;
    messages.extend(closing.map(|closing| Message { title: String::new(), ..closing }));
    Ok(messages)
}

/// The messages as sound, or one list of every phrase that any of them lacks.
fn voiced(
    pack: &Pack,
    bank: &Bank<'_>,
    messages: Vec<Message>,
    progress: Progress<'_>,
) -> Result<Vec<(Message, Spoken)>, Error> {
    let options = SpeakOptions { phrases: pack.phrases().map_err(Error::Input)?, ..SpeakOptions::default() };
    let mut missing: Vec<MissingPhrase> = Vec::new();
    let mut spoken = Vec::new();
    let count = messages.len();
    for (done, message) in messages.into_iter().enumerate() {
        progress(done, count, &message.title);
        match voice::speak(&message.pieces, bank, &options) {
            Ok(sound) => spoken.push((message, sound)),
            Err(VoiceError::Missing { phrases, .. }) => missing.extend(phrases),
            Err(error) => return Err(error.into()),
        }
    }
    if missing.is_empty() {
        return Ok(spoken);
    }
    let mut seen = BTreeSet::new();
    missing.retain(|phrase| seen.insert(phrase.to_string()));
    let voice = bank.voice().voice.clone();
    Err(VoiceError::Missing { language: pack.tag(), voice, phrases: missing }.into())
}
