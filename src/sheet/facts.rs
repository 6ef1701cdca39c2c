//! What a sheet says: all of it in the pack's words, ready to be set.

use serde::Serialize;

use crate::guidance::{Statement, Subject, Value, Values};
use crate::language::{Direction, Pack, WordingError, Written};

/// The facts of one sheet.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Facts {
    /// Language tag.
    pub language: String,
    /// `ltr` or `rtl`.
    pub direction: &'static str,
    /// The sheet's title.
    pub title: String,
    /// The farm's, group's or zone's name.
    pub name: String,
    /// Headings of the sheet's parts.
    pub labels: Labels,
    /// For whom, where, and the two dates everything hangs on.
    pub head: Vec<Row>,
    /// The opening sentence.
    pub opening: String,
    /// The amounts.
    pub amounts: Vec<Row>,
    /// The steps by date.
    pub steps: Vec<Entry>,
    /// The cautions.
    pub cautions: Vec<Entry>,
    /// Local advice comes first.
    pub closing: String,
    /// How far the wording may be trusted.
    pub status: String,
    /// The status in one word: `draft`, `read` or `approved`.
    pub status_name: &'static str,
}

/// Headings of the sheet's parts.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Labels {
    /// Of the amounts.
    pub amounts: String,
    /// Of the steps.
    pub steps: String,
    /// Of the cautions.
    pub cautions: String,
    /// Before a date.
    pub when: String,
    /// Before a page number.
    pub page: String,
}

/// A label with its value.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Row {
    /// The label.
    pub label: String,
    /// The value.
    pub value: String,
}

/// A step or a caution.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Entry {
    /// Its number on the sheet, from 1.
    pub number: usize,
    /// Its subject's name, which is also its picture's.
    pub subject: &'static str,
    /// Its title.
    pub title: String,
    /// When, one text for each time.
    pub when: Vec<String>,
    /// Its sentences.
    pub text: String,
    /// Its picture in words.
    pub alt: String,
}

impl Facts {
    /// Words the statements of a plan for a sheet.
    ///
    /// # Errors
    /// The first wording that is missing or cannot be resolved.
    pub fn of(pack: &Pack, statements: &[Statement]) -> Result<Facts, WordingError> {
        let opening = statements.iter().find(|statement| statement.subject == Subject::Opening);
        let values = opening.map(|statement| statement.values.clone()).unwrap_or_default();
        let label = |id| pack.label(id, &values);
        let mut facts = Facts {
            language: pack.tag(),
            direction: match pack.direction() {
                Direction::LeftToRight => "ltr",
                Direction::RightToLeft => "rtl",
            },
            title: label("sheet-title")?,
            name: text_of(&values, "name"),
            labels: Labels {
                amounts: label("sheet-amounts")?,
                steps: label("sheet-steps")?,
                cautions: label("sheet-cautions")?,
                when: label("sheet-when")?,
                page: label("sheet-page")?,
            },
            head: head(pack, &values)?,
            opening: String::new(),
            amounts: amounts(pack, &values)?,
            steps: Vec::new(),
            cautions: Vec::new(),
            closing: String::new(),
            status: label(pack.status().label())?,
            status_name: pack.status().name(),
        };
        for statement in statements {
            let written = pack.write(statement)?;
            match statement.subject {
                Subject::Opening => facts.opening = written.title,
                Subject::Closing => facts.closing = written.title,
                Subject::Step(_) => facts.steps.push(entry(facts.steps.len() + 1, written)),
                Subject::Caution(_) => facts.cautions.push(entry(facts.cautions.len() + 1, written)),
            }
        }
        Ok(facts)
    }
}

fn entry(number: usize, written: Written) -> Entry {
    Entry {
        number,
        subject: written.subject.name(),
        title: written.title,
        when: written.when,
        text: written.text,
        alt: written.alt,
    }
}

fn text_of(values: &Values, name: &str) -> String {
    values
        .iter()
        .find(|(of, _)| *of == name)
        .and_then(|(_, value)| match value {
            Value::Text(text) => Some(text.clone()),
            _ => None,
        })
        .unwrap_or_default()
}

fn head(pack: &Pack, values: &Values) -> Result<Vec<Row>, WordingError> {
    let mut rows = Vec::new();
    for (id, name) in [
        ("sheet-for", "name"),
        ("sheet-place", "place"),
        ("sheet-harvest", "harvest"),
        ("sheet-rains", "rains"),
    ] {
        let value = match values.iter().find(|(of, _)| *of == name).map(|(_, value)| value) {
            Some(Value::Text(text)) => text.clone(),
            Some(Value::Date(date)) => pack.write_date(*date)?,
            _ => continue,
        };
        rows.push(Row { label: pack.label(id, values)?, value });
    }
    Ok(rows)
}

/// How the value of an amount is written.
enum Cell {
    /// The number of this name.
    Number(&'static str),
    /// A message of its own.
    Message(&'static str),
}

fn amounts(pack: &Pack, values: &Values) -> Result<Vec<Row>, WordingError> {
    let is_kind = |kind| values.contains(&("kind", Value::Name(kind)));
    let roots = if is_kind("zone") { Cell::Message("roots-for-zone") } else { Cell::Number("roots") };
    let mut wanted = vec![
        ("amount-cuttings", Cell::Number("cuttings")),
        ("amount-roots", roots),
        ("amount-plants", Cell::Number("plants")),
    ];
    if is_kind("group") {
        wanted.push(("amount-plants-each", Cell::Number("plants_each")));
    }
    wanted.extend([
        ("amount-containers", Cell::Number("containers")),
        ("amount-layers", Cell::Number("layers")),
        ("amount-roots-per-layer", Cell::Number("roots_per_layer")),
        ("amount-sand", Cell::Message("sand-value")),
        ("amount-loads", Cell::Number("loads")),
        ("amount-bed", Cell::Message("bed-value")),
        ("amount-water", Cell::Message("water-value")),
        ("amount-jerrycans", Cell::Number("jerrycans")),
        ("amount-first-cuttings", Cell::Number("first_cuttings")),
    ]);
    let mut rows = Vec::new();
    for (id, cell) in wanted {
        let value = match cell {
            Cell::Message(message) => pack.label(message, values)?,
            Cell::Number(name) => match values.iter().find(|(of, _)| *of == name) {
                Some((_, Value::Number(value, decimals))) => pack.write_number(*value, *decimals),
                _ => continue,
            },
        };
        rows.push(Row { label: pack.label(id, values)?, value });
    }
    Ok(rows)
}
