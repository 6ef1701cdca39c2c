//! The texts that a pack must have.

use std::collections::BTreeSet;

use super::plan_texts::may_lack;
use crate::finding::{Code, Finding};
use crate::guidance::{Fact, Subject};
use crate::language::labels::{Attribute, MessageId};
use crate::language::names;
use crate::language::wording::Messages;

pub(super) type Wanted = (&'static str, Option<&'static str>);

pub(super) fn written_wanted() -> Vec<Wanted> {
    let mut wanted: Vec<Wanted> = MessageId::written().map(|id| (id.name(), None)).collect();
    wanted.extend(Fact::ALL.into_iter().flat_map(Fact::terms).map(|term| (*term, None)));
    for subject in Subject::all() {
        // The message itself words the remark for who plans; the pack may lack that.
        wanted.push((
            subject.name(),
            matches!(subject, Subject::Consequence(_)).then_some(Attribute::Text.name()),
        ));
        let attributes = Attribute::ALL.into_iter().filter(|attribute| attribute.is_of(subject));
        wanted.extend(attributes.map(|attribute| (subject.name(), Some(attribute.name()))));
    }
    wanted
}

pub(super) fn spoken_wanted() -> Vec<Wanted> {
    let subjects = Subject::all().filter(|subject| subject.is_spoken()).map(MessageId::from);
    let terms = Fact::ALL.into_iter().filter_map(|fact| fact.terms().first().copied());
    subjects.chain(MessageId::spoken()).map(|id| id.name()).chain(terms).map(|id| (id, None)).collect()
}

/// A text's name, such as `mark-plants` and `mark-plants.text`.
pub(super) fn name((id, attribute): Wanted) -> String {
    attribute.map_or(id.to_owned(), |attribute| format!("{id}.{attribute}"))
}

/// The texts that a file should have; those of plans may still be lacking.
pub(in crate::language) fn wanted(file: &str) -> Vec<String> {
    let wanted = if file == "spoken.ftl" { spoken_wanted() } else { written_wanted() };
    wanted.into_iter().chain(may_lack(file)).map(name).collect()
}

pub(super) fn missing(messages: &Messages, file: &str, wanted: Vec<Wanted>) -> Vec<Finding> {
    let absent: BTreeSet<Wanted> =
        wanted.into_iter().filter(|(id, attribute)| !messages.has(id, *attribute)).collect();
    let finding = |wanted: Wanted| {
        let hint = match names::is_name(wanted.0) {
            true => "write the names: Unicode CLDR has none in this language",
            false => "translate it",
        };
        Finding::error(Code::MISSING_MESSAGE, "the message is missing")
            .file(file)
            .field(name(wanted))
            .hint(hint)
    };
    absent.into_iter().map(finding).collect()
}

/// Their names, such as `why-harvest` and `remark-enough.do`.
pub(in crate::language) fn of_plans(file: &str) -> Vec<String> {
    may_lack(file).into_iter().map(name).collect()
}
