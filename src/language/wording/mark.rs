//! Marks in private-use characters that carry typed values through Fluent.
//!
//! Texts from cases cannot hold these characters: the case reader refuses them.

use std::borrow::Cow;

use chrono::NaiveDate;

use crate::plan::DateSpan;

const OPEN: char = '\u{E000}';
const PART: char = '\u{E001}';
const CLOSE: char = '\u{E002}';

/// One part of a formatted message.
#[derive(Debug, Clone, PartialEq)]
pub(in crate::language) enum Mark<'t> {
    /// A literal text, one whole element of a pattern.
    Text(&'t str),
    /// A number without a form.
    Plain(f64, u8),
    /// A number to be said in a form.
    Said { value: f64, decimals: u8, form: &'t str },
    /// A number with a unit.
    Measure { value: f64, decimals: u8, unit: &'t str },
    /// A day, by the message of this name.
    Day(NaiveDate, &'t str),
    /// Days from one to another.
    Span(DateSpan),
    /// A function was called in a wrong way.
    Wrong(&'t str),
}

/// Marks a literal text, so that it stays apart from its neighbours.
pub(super) fn literal(text: &str) -> Cow<'_, str> {
    Cow::Owned(Mark::Text(text).encode())
}

pub(super) fn date_text(date: NaiveDate) -> String {
    date.to_string()
}

pub(super) fn read_date(text: &str) -> Option<NaiveDate> {
    text.parse().ok()
}

pub(super) fn span_text(span: DateSpan) -> String {
    format!("{}/{}", date_text(span.from), date_text(span.to))
}

pub(super) fn read_span(text: &str) -> Option<DateSpan> {
    let (from, to) = text.split_once('/')?;
    Some(DateSpan::new(read_date(from)?, read_date(to)?))
}

impl Mark<'_> {
    pub(super) fn encode(&self) -> String {
        match self {
            Mark::Text(text) => mark('t', [text]),
            Mark::Plain(value, decimals) => mark('p', [&value.to_string(), &decimals.to_string()]),
            Mark::Said { value, decimals, form } => {
                mark('s', [&value.to_string(), &decimals.to_string(), form])
            }
            Mark::Measure { value, decimals, unit } => {
                mark('m', [&value.to_string(), &decimals.to_string(), unit])
            }
            Mark::Day(date, message) => mark('d', [&date_text(*date), message]),
            Mark::Span(span) => mark('r', [&span_text(*span)]),
            Mark::Wrong(problem) => mark('w', [problem]),
        }
    }

    fn read(body: &str) -> Option<Mark<'_>> {
        let kind = body.chars().next()?;
        let mut parts = body.get(kind.len_utf8()..)?.split(PART);
        let mut part = || parts.next();
        let mark = match kind {
            't' => Mark::Text(part()?),
            'p' => Mark::Plain(part()?.parse().ok()?, part()?.parse().ok()?),
            's' => {
                Mark::Said { value: part()?.parse().ok()?, decimals: part()?.parse().ok()?, form: part()? }
            }
            'm' => {
                Mark::Measure { value: part()?.parse().ok()?, decimals: part()?.parse().ok()?, unit: part()? }
            }
            'd' => Mark::Day(read_date(part()?)?, part()?),
            'r' => Mark::Span(read_span(part()?)?),
            'w' => Mark::Wrong(part()?),
            _ => return None,
        };
        parts.next().is_none().then_some(mark)
    }
}

fn mark<const PARTS: usize>(kind: char, parts: [&str; PARTS]) -> String {
    let sign = OPEN.len_utf8();
    let length = parts.iter().map(|part| sign + part.len()).sum::<usize>() + 2 * sign;
    let mut mark = String::with_capacity(length);
    mark.extend([OPEN, kind]);
    for (number, part) in parts.into_iter().enumerate() {
        if number > 0 {
            mark.push(PART);
        }
        mark.push_str(part);
    }
    mark.push(CLOSE);
    mark
}

/// Reads a formatted message back. Text outside any mark comes from string
/// literals and from texts of the case; it counts as literal text.
pub(super) fn decode(formatted: &str) -> Vec<Mark<'_>> {
    let mut marks = Vec::new();
    let mut rest = formatted;
    while !rest.is_empty() {
        let (outside, marked) = rest.split_once(OPEN).unwrap_or((rest, ""));
        if !outside.is_empty() {
            marks.push(Mark::Text(outside));
        }
        let (body, after) = marked.split_once(CLOSE).unwrap_or((marked, ""));
        if !body.is_empty() {
            marks.push(Mark::read(body).unwrap_or(Mark::Wrong("a text holds private-use characters")));
        }
        rest = after;
    }
    marks
}
