//! The presenter's script in the pack's words.

use crate::guidance::{Statement, Subject, Value, Values, Variable};
use crate::language::{Direction, Label, Pack, Pause, Piece, WordingError};
use crate::plan::DateSpan;
use crate::sheet::{Listed, Passage, Row, Script, ScriptLabels};
use crate::voice::{Frames, MissingPhrase, Status, VoiceInfo};

/// A passage of a segment: its words, or a label for music.
pub(super) struct Heard<'s> {
    pub(super) from: Frames,
    pub(super) to: Frames,
    pub(super) what: What<'s>,
}

pub(super) enum What<'s> {
    Music(String),
    Words(&'s Statement, String),
}

/// What a script tells.
pub(super) struct Facts<'a> {
    pub(super) heard: &'a [Heard<'a>],
    pub(super) length: Frames,
    /// Who speaks; nobody where a presenter reads.
    pub(super) voice: Option<&'a VoiceInfo>,
    /// How far below the voice music lies, in dB.
    pub(super) bed_below: Option<f64>,
    /// Titles of what there was no time for.
    pub(super) left_out: &'a [String],
    pub(super) missing: &'a [MissingPhrase],
    pub(super) live: Option<Live>,
}

/// Read by a presenter.
#[derive(Clone, Copy)]
pub(super) struct Live {
    /// Syllables a second.
    pub(super) rate: f64,
    /// The language has no recorded voice at all.
    pub(super) without_voice: bool,
}

/// The words of pieces, as they are read; with their pauses marked where asked for.
pub(super) fn text(pieces: &[Piece], marked: bool) -> String {
    let mut text = String::new();
    let inner = pieces.len().saturating_sub(1);
    for (index, piece) in pieces.iter().enumerate() {
        let part = match piece {
            Piece::Words(words) => words.text.as_str(),
            Piece::Pause(_) if !marked || index >= inner => continue,
            Piece::Pause(Pause::Comma) => "/",
            Piece::Pause(_) => "//",
        };
        if !text.is_empty() {
            text.push(' ');
        }
        text.push_str(part);
    }
    text
}

pub(super) fn of(
    pack: &Pack,
    statements: &[Statement],
    week: DateSpan,
    facts: &Facts<'_>,
) -> Result<Script, WordingError> {
    let opening = statements.iter().find(|statement| statement.subject == Subject::Opening);
    let mut values: Values = opening.map(|statement| statement.values.clone()).unwrap_or_default();
    values.push(Variable::First.with(Value::Date(week.from)));
    values.push(Variable::Last.with(Value::Date(week.to)));
    values.extend(facts.bed_below.map(|decibels| Variable::Decibels.number(decibels)));
    values.extend(facts.live.map(|live| Variable::Rate.number(live.rate)));
    let label = |id| pack.label(id, &values);
    Ok(Script {
        language: pack.tag(),
        direction: match pack.direction() {
            Direction::LeftToRight => "ltr",
            Direction::RightToLeft => "rtl",
        },
        title: label(Label::SegmentTitle)?,
        name: text_of(&values, Variable::Name),
        labels: ScriptLabels {
            said: label(Label::SegmentSaid)?,
            intro: label(Label::SegmentReadBefore)?,
            outro: label(Label::SegmentReadAfter)?,
            caution: label(Label::SheetCautions)?,
            page: label(Label::SheetPage)?,
            colon: label(Label::Colon)?,
        },
        head: head(pack, &values, week, facts)?,
        notices: notices(facts, &label)?,
        intro: label(Label::SegmentIntro)?,
        outro: label(Label::SegmentOutro)?,
        passages: facts.heard.iter().map(|heard| passage(pack, heard)).collect::<Result<_, _>>()?,
        lists: lists(facts, &label)?,
        status: label(pack.status().label())?,
    })
}

fn head(pack: &Pack, values: &Values, week: DateSpan, facts: &Facts<'_>) -> Result<Vec<Row>, WordingError> {
    let label = |id| pack.label(id, values);
    let mut rows = vec![
        (Label::SheetFor, text_of(values, Variable::Name)),
        (Label::SheetPlace, text_of(values, Variable::Place)),
        (Label::SegmentWeek, pack.write_span(week)?),
        (
            if facts.live.is_some() { Label::SegmentReadingTime } else { Label::CueLength },
            clock(facts.length),
        ),
    ];
    if let Some(voice) = facts.voice {
        rows.push((Label::CueVoice, format!("{} ({})", voice.voice, voice.speaker)));
        rows.push((Label::CueStatus, label(voice.status.label())?));
    }
    if facts.bed_below.is_some() {
        rows.push((Label::SegmentBed, label(Label::SegmentBedValue)?));
    }
    rows.into_iter().map(|(id, value)| Ok(Row { name: id.name(), label: label(id)?, value })).collect()
}

fn notices(
    facts: &Facts<'_>,
    label: &impl Fn(Label) -> Result<String, WordingError>,
) -> Result<Vec<String>, WordingError> {
    let mut notices = Vec::new();
    if facts.voice.is_some_and(|voice| voice.status == Status::StandIn) {
        notices.push(label(Label::VoiceStandInRemark)?);
    }
    if let Some(live) = facts.live {
        let no_sound = match (live.without_voice, facts.missing.is_empty()) {
            (true, _) => format!("{} ", label(Label::SegmentNoVoice)?),
            (false, false) => format!("{} ", label(Label::SegmentNoSound)?),
            (false, true) => String::new(),
        };
        notices.push(format!("{no_sound}{}", label(Label::SegmentReadLive)?));
        notices.push(label(Label::SegmentPauses)?);
    }
    Ok(notices)
}

fn passage(pack: &Pack, heard: &Heard<'_>) -> Result<Passage, WordingError> {
    let (title, text, caution) = match &heard.what {
        What::Music(label) => (label.clone(), String::new(), false),
        What::Words(statement, text) => {
            let title = match statement.subject {
                Subject::Step(_) | Subject::Caution(_) => pack.write(statement)?.title,
                _ => String::new(),
            };
            (title, text.clone(), matches!(statement.subject, Subject::Caution(_)))
        }
    };
    Ok(Passage { from: clock(heard.from), to: clock(heard.to), title, text, caution })
}

fn lists(
    facts: &Facts<'_>,
    label: &impl Fn(Label) -> Result<String, WordingError>,
) -> Result<Vec<Listed>, WordingError> {
    // Where the language has no voice at all, the whole script is missing.
    let named = facts.live.is_none_or(|live| !live.without_voice);
    let missing = facts.missing.iter().filter(|_| named).map(|phrase| phrase.words.clone()).collect();
    let lists = [(Label::SegmentLeftOut, facts.left_out.to_vec()), (Label::SegmentMissing, missing)];
    let filled = lists.into_iter().filter(|(_, items)| !items.is_empty());
    filled.map(|(id, items)| Ok(Listed { title: label(id)?, items })).collect()
}

pub(super) fn text_of(values: &Values, variable: Variable) -> String {
    match values.iter().find(|(of, _)| *of == variable.name()) {
        Some((_, Value::Text(text))) => text.clone(),
        _ => String::new(),
    }
}

/// Minutes and seconds.
fn clock(at: Frames) -> String {
    let seconds = (at.millis() + 500) / 1000;
    format!("{}:{:02}", seconds / 60, seconds % 60)
}
