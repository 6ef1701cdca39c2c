//! What is told of a case, as messages to be spoken.

use super::StepKind;
use crate::guidance::{Statement, Subject, chapter, for_step};
use crate::language::{Label, Pack, Piece, WordingError};

/// A message put into pieces, before it is voiced.
pub(super) struct Message {
    /// What tells it from others in file names: its topic.
    pub(super) name: &'static str,
    pub(super) title: String,
    pub(super) pieces: Vec<Piece>,
}

impl Message {
    fn of(
        pack: &Pack,
        name: &'static str,
        statements: &[Statement],
    ) -> Result<Option<Message>, WordingError> {
        let mut message = Message { name, title: String::new(), pieces: Vec::new() };
        for statement in statements {
            message.pieces.extend(pack.say(statement)?);
            if statement.subject.name() == name {
                message.title = pack.write_title(statement)?;
            }
        }
        Ok((!statements.is_empty()).then_some(message))
    }
}

/// A message for each topic, each with opening and closing.
pub(super) fn apart(
    pack: &Pack,
    statements: &[Statement],
    topics: &[StepKind],
) -> Result<Vec<Message>, WordingError> {
    let mut messages = Vec::new();
    for topic in topics {
        messages.extend(Message::of(pack, topic.name(), &for_step(statements, *topic))?);
    }
    Ok(messages)
}

/// A meeting's parts: the opening, a chapter for each topic, the closing.
pub(super) fn agenda(
    pack: &Pack,
    statements: &[Statement],
    topics: &[StepKind],
) -> Result<Vec<Message>, WordingError> {
    let framing = |subject: Subject| -> Vec<Statement> {
        statements.iter().filter(|statement| statement.subject == subject).cloned().collect()
    };
    let mut messages = Vec::new();
    let opening = Message::of(pack, Subject::Opening.name(), &framing(Subject::Opening))?;
    let title = pack.label(Label::SheetTitle, &[])?;
    messages.extend(opening.map(|opening| Message { title, ..opening }));
    for topic in topics {
        messages.extend(Message::of(pack, topic.name(), &chapter(statements, *topic))?);
    }
    // It goes on with the last chapter.
    let closing = Message::of(pack, Subject::Closing.name(), &framing(Subject::Closing))?;
    messages.extend(closing.map(|closing| Message { title: String::new(), ..closing }));
    Ok(messages)
}
