//! What a sheet says: all of it in the pack's words, ready to be set.

use std::collections::BTreeMap;

use serde::Serialize;

use super::{Drawing, SheetError, drawings};
use crate::data::Data;
use crate::guidance::shapes::Shapes;
use crate::guidance::{
    Choice, Measured, Priority, Quantity, Standing, Statement, StepKind, Subject, Table, Value, Values,
    Variable,
};
use crate::language::{Direction, Filled, Label, MessageId, Pack, WordingError, Written};

/// The facts of one sheet.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Facts {
    /// Language tag.
    pub language: String,
    /// `ltr` or `rtl`.
    pub direction: &'static str,
    /// The sheet's title.
    pub title: String,
    /// The farm's, group's or zone's name.
    pub name: String,
    /// Words that belong to no statement.
    pub labels: Labels,
    /// For whom, where, and the two dates everything hangs on.
    pub head: Vec<Row>,
    /// The opening sentence.
    pub opening: String,
    /// The day it was made; empty where nobody told the day.
    pub made: String,
    /// What the plan leads to: limits, and what has come otherwise.
    pub consequences: Vec<String>,
    /// The amounts.
    pub amounts: Vec<Row>,
    /// The steps by date.
    pub steps: Vec<Entry>,
    /// The steps month by month, one entry for each time.
    pub months: Vec<Month>,
    /// The tables.
    pub tables: Vec<TableFacts>,
    /// The cautions.
    pub cautions: Vec<Entry>,
    /// Drawings computed from the plan.
    pub drawings: Vec<Drawing>,
    /// Local advice comes first.
    pub closing: String,
    /// How far the wording may be trusted.
    pub status: String,
    /// The status in one word: `draft`, `read` or `approved`.
    pub status_name: &'static str,
}

/// Words that belong to no statement, by the names that templates have for them.
pub type Labels = BTreeMap<&'static str, String>;

/// The messages of these words.
const LABELS: &[(&str, Label)] = &[
    ("consequences", Label::SheetConsequences),
    ("tip", Label::SheetTip),
    ("amounts", Label::SheetAmounts),
    ("steps", Label::SheetSteps),
    ("cautions", Label::SheetCautions),
    ("when", Label::SheetWhen),
    ("page", Label::SheetPage),
    ("colon", Label::Colon),
    ("semicolon", Label::Semicolon),
    ("calendar", Label::CalendarTitle),
    ("guide", Label::GuideTitle),
    ("show", Label::GuideShow),
    ("ask", Label::GuideAsk),
    ("fold", Label::CardFold),
    ("record", Label::RecordTitle),
    ("record_how", Label::RecordHow),
    ("planned", Label::RecordPlanned),
    ("done", Label::RecordDone),
    ("healthy", Label::RecordHealthy),
    ("thrown_away", Label::RecordThrownAway),
    ("sprouted", Label::RecordSprouted),
    ("remark", Label::RecordRemark),
    ("stored", Label::RecordStored),
    ("index", Label::BookletIndex),
];

/// A label with its value.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Row {
    /// What it is: its message in packs.
    pub name: &'static str,
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
    /// The same without years and weekdays.
    pub brief: Vec<String>,
    /// Its sentences.
    pub text: String,
    /// The same in a few words.
    pub short: String,
    /// Its picture in words.
    pub alt: String,
    /// What a meeting is shown; empty for cautions.
    pub show: String,
    /// What a meeting is asked; empty for cautions.
    pub ask: String,
    /// What of it is measured by the body or by vessels.
    pub measures: Vec<Measure>,
    /// What is good to know beside it.
    pub tips: Vec<TipFacts>,
    /// How it stands today: `done`, `now`, `next`, or nothing.
    pub standing: &'static str,
    /// The same in words.
    pub standing_text: String,
}

/// What is good to know beside a step.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct TipFacts {
    /// Its sentences.
    pub text: String,
    /// Whether it stands where there is little room as well.
    pub is_important: bool,
}

/// A measure that needs no rule: hands, thumb joints, jerrycans, bundles.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Measure {
    /// Its picture's name.
    pub picture: &'static str,
    /// How many, e.g. `2 hands`.
    pub text: String,
}

/// The work that begins in a month.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Month {
    /// The month and its year.
    pub label: String,
    /// Steps by date: the step's number on the sheet, and when.
    pub times: Vec<(usize, String)>,
}

/// A table.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct TableFacts {
    /// Its subject's name.
    pub subject: &'static str,
    /// Its title.
    pub title: String,
    /// What it tells.
    pub text: String,
    /// The heads of its columns.
    pub columns: Vec<String>,
    /// Its rows, a cell for each column.
    pub rows: Vec<Vec<String>>,
    /// The same with days without years.
    pub brief: Vec<Vec<String>>,
    /// Its picture; empty where it has none.
    pub bars: Vec<Bars>,
    /// Its picture in words.
    pub alt: String,
}

/// A row of a picture: two bars, each with its number.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Bars {
    /// What the row is about.
    pub label: String,
    /// Length of the first bar, 0 to 1.
    pub first: f64,
    /// Its number.
    pub first_text: String,
    /// Length of the second bar, 0 to 1.
    pub second: f64,
    /// Its number.
    pub second_text: String,
}

impl Facts {
    /// Words the statements of a plan for a sheet.
    ///
    /// # Errors
    /// The first wording that is missing or cannot be resolved.
    pub fn of(pack: &Pack, statements: &[Statement]) -> Result<Facts, WordingError> {
        let opening = statements.iter().find(|statement| statement.subject == Subject::Opening);
        let values = opening.map(|statement| statement.values.clone()).unwrap_or_default();
        let words = pack.with(&values);
        let label = |id| words.label(id);
        let group = opening.and_then(|opening| opening.together.as_deref());
        let mut facts = Facts {
            language: pack.tag(),
            direction: match pack.direction() {
                Direction::LeftToRight => "ltr",
                Direction::RightToLeft => "rtl",
            },
            title: label(Label::SheetTitle)?,
            name: text_of(&values, Variable::Name),
            labels: LABELS.iter().map(|(name, id)| Ok((*name, label(*id)?))).collect::<Result<_, _>>()?,
            head: head(pack, &words, group, &values)?,
            opening: String::new(),
            made: match value(&values, Variable::Today.name()) {
                Some(_) => label(Label::SheetMade)?,
                None => String::new(),
            },
            consequences: Vec::new(),
            amounts: amounts(pack, &words, group.is_some(), &values)?,
            steps: Vec::new(),
            months: Vec::new(),
            tables: Vec::new(),
            cautions: Vec::new(),
            drawings: Vec::new(),
            closing: String::new(),
            status: label(pack.status().label())?,
            status_name: pack.status().name(),
        };
        for statement in statements {
            match statement.subject {
                Subject::Opening => facts.opening = pack.write_title(statement)?,
                Subject::Closing => facts.closing = pack.write_title(statement)?,
                Subject::Step(kind) => {
                    let measures = measures(pack, kind, &statement.values)?;
                    let mut written = pack.write(statement)?;
                    if statement.together.is_some() {
                        written.title = together(&words, &written.title)?;
                    }
                    let (standing, in_words) = match statement.standing {
                        None => ("", None),
                        Some(Standing::Done) => ("done", Some(Label::StepDone)),
                        Some(Standing::Now) => ("now", Some(Label::StepNow)),
                        Some(Standing::Next) => ("next", Some(Label::StepNext)),
                    };
                    let standing_text = in_words.map_or(Ok(String::new()), |id| words.label(id))?;
                    let number = facts.steps.len() + 1;
                    facts.steps.push(Entry { measures, standing, standing_text, ..entry(number, written) });
                }
                Subject::Consequence(_) => {
                    let text = pack.write_title(statement)?;
                    let shared = statement.together.is_some();
                    facts.consequences.push(if shared { together(&words, &text)? } else { text });
                }
                Subject::Tip(tip) => {
                    let of_step = |entry: &&mut Entry| entry.subject == tip.step().name();
                    if let Some(step) = facts.steps.iter_mut().find(of_step) {
                        let is_important = statement.priority <= Priority::Important;
                        step.tips.push(TipFacts { text: pack.write_title(statement)?, is_important });
                    }
                }
                Subject::Table(table) => facts.tables.push(table_of(pack, table, statement)?),
                Subject::Caution(_) => {
                    facts.cautions.push(entry(facts.cautions.len() + 1, pack.write(statement)?));
                }
                // Asked aloud at a meeting.
                Subject::Question(_) => {}
            }
        }
        facts.months = months(pack, statements)?;
        Ok(facts)
    }

    /// These facts, with the drawings of the plan.
    ///
    /// # Errors
    /// A wording or a template that is missing or broken.
    pub fn drawn(mut self, pack: &Pack, shapes: &Shapes, data: &dyn Data) -> Result<Facts, SheetError> {
        self.drawings = drawings(pack, shapes, data)?;
        Ok(self)
    }
}

/// What a group does together, or has together, on a sheet of one of its farms.
fn together(words: &Filled<'_>, what: &str) -> Result<String, WordingError> {
    Ok(format!("{}{} {what}", words.label(Label::SheetTogether)?, words.label(Label::Colon)?))
}

fn entry(number: usize, written: Written) -> Entry {
    Entry {
        number,
        subject: written.subject.name(),
        title: written.title,
        when: written.when,
        brief: written.brief,
        text: written.text,
        short: written.short,
        alt: written.alt,
        show: written.show,
        ask: written.ask,
        measures: Vec::new(),
        tips: Vec::new(),
        standing: "",
        standing_text: String::new(),
    }
}

fn measures(pack: &Pack, kind: StepKind, values: &Values) -> Result<Vec<Measure>, WordingError> {
    let of_step = Measured::ALL.into_iter().filter(|measured| measured.step() == kind);
    of_step
        .filter_map(|measured| {
            let count = value(values, measured.name())?.clone();
            let measure = measured.measure();
            let text = pack.label(measure, &[Variable::N.with(count)]);
            Some(text.map(|text| Measure { picture: measure.name(), text }))
        })
        .collect()
}

/// The steps by the months of the pack's own calendar.
fn months(pack: &Pack, statements: &[Statement]) -> Result<Vec<Month>, WordingError> {
    let steps = statements.iter().filter(|statement| matches!(statement.subject, Subject::Step(_)));
    let times = (1..).zip(steps).flat_map(|(number, step)| step.when.iter().map(move |span| (*span, number)));
    let mut times: Vec<_> = times.collect();
    times.sort();
    let mut months: Vec<Month> = Vec::new();
    for (span, number) in times {
        let label = pack.write_day(span.from, "MONTH")?;
        let time = (number, pack.write_briefly(span)?);
        match months.last_mut() {
            Some(month) if month.label == label => month.times.push(time),
            _ => months.push(Month { label, times: vec![time] }),
        }
    }
    Ok(months)
}

/// The value of a name.
fn value<'v>(values: &'v Values, name: &str) -> Option<&'v Value> {
    values.iter().find(|(of, _)| *of == name).map(|(_, value)| value)
}

/// A value as it is written; nothing for a name, which only chooses words.
fn written(pack: &Pack, value: &Value) -> Result<Option<String>, WordingError> {
    Ok(Some(match value {
        Value::Text(text) => text.clone(),
        Value::Date(date) => pack.write_date(*date)?,
        Value::Span(span) => pack.write_span(*span)?,
        Value::Number(value, decimals) => pack.write_number(*value, *decimals),
        Value::Name(_) => return Ok(None),
    }))
}

fn text_of(values: &Values, variable: Variable) -> String {
    match value(values, variable.name()) {
        Some(Value::Text(text)) => text.clone(),
        _ => String::new(),
    }
}

fn number_of(values: &Values, variable: Variable) -> Option<f64> {
    match value(values, variable.name())? {
        Value::Number(number, _) => Some(*number),
        _ => None,
    }
}

/// What stands where a value is not known.
const UNKNOWN: &str = "–";

fn table_of(pack: &Pack, table: Table, statement: &Statement) -> Result<TableFacts, WordingError> {
    let wording = pack.write(statement)?;
    let columns = table.columns();
    let words = pack.with(&statement.values);
    let row = |values: &Values, brief: bool| -> Result<Vec<String>, WordingError> {
        let cells =
            columns.iter().map(|column| match (MessageId::cell_of(*column), value(values, column.value())) {
                (Some(message), Some(_)) if !is_one_number(values) => pack.label(message, values),
                (_, Some(Value::Span(span))) if brief => pack.write_briefly(*span),
                (_, Some(Value::Date(day))) if brief => pack.write_day(*day, "BRIEF"),
                (_, Some(value)) => Ok(written(pack, value)?.unwrap_or_default()),
                (_, None) => Ok(UNKNOWN.to_owned()),
            });
        cells.collect()
    };
    let laid = |brief| statement.rows.iter().map(|values| row(values, brief)).collect::<Result<Vec<_>, _>>();
    let (rows, brief) = (laid(false)?, laid(true)?);
    let bars = if table.is_pictured() { bars_of(pack, &statement.rows, &rows)? } else { Vec::new() };
    Ok(TableFacts {
        subject: wording.subject.name(),
        title: wording.title,
        text: wording.text,
        columns: columns.iter().map(|column| words.label(*column)).collect::<Result<_, _>>()?,
        rows,
        brief,
        bars,
        alt: wording.alt,
    })
}

/// Whether few and many are as many: no range, but a number.
fn is_one_number(values: &Values) -> bool {
    number_of(values, Variable::Low).is_some_and(|low| number_of(values, Variable::High) == Some(low))
}

/// False starts as a part of the years, days left as a part of the most there are.
fn bars_of(pack: &Pack, values: &[Values], cells: &[Vec<String>]) -> Result<Vec<Bars>, WordingError> {
    let days = |row: &Values| number_of(row, Variable::DaysLeft).unwrap_or_default();
    let most = values.iter().map(days).fold(1.0, f64::max);
    let row = |(values, cells): (&Values, &Vec<String>)| {
        let [_, first_text, second_text] = cells.as_slice() else { return None };
        let Some(Value::Date(day)) = value(values, Variable::From.name()) else { return None };
        let years = number_of(values, Variable::Years).unwrap_or_default().max(1.0);
        // Beside a bar there is little room for a date.
        Some(pack.write_day(*day, "BRIEF").map(|label| Bars {
            label,
            first: number_of(values, Variable::FalseStarts).unwrap_or_default() / years,
            first_text: first_text.clone(),
            second: days(values) / most,
            second_text: second_text.clone(),
        }))
    };
    values.iter().zip(cells).filter_map(row).collect()
}

fn head(
    pack: &Pack,
    words: &Filled<'_>,
    group: Option<&str>,
    values: &Values,
) -> Result<Vec<Row>, WordingError> {
    let mut rows = Vec::new();
    for (label, variable) in [
        (Label::SheetFor, Variable::Name),
        (Label::SheetPlace, Variable::Place),
        (Label::SheetHarvest, Variable::Harvest),
        (Label::SheetRains, Variable::Rains),
    ] {
        let span = value(values, Variable::RainsSpan.name()).filter(|_| variable == Variable::Rains);
        let span = span.filter(|span| matches!(span, Value::Span(span) if !span.is_day()));
        let Some(value) = span.or_else(|| value(values, variable.name())) else { continue };
        if let Some(value) = written(pack, value)? {
            rows.push(Row { name: label.name(), label: words.label(label)?, value });
        }
        if let (Label::SheetFor, Some(group)) = (label, group) {
            let label = Label::SheetGroup;
            rows.push(Row { name: label.name(), label: words.label(label)?, value: group.to_owned() });
        }
    }
    Ok(rows)
}

/// The rows of the quantities that the plan has, in the order of their declaration.
/// Of a farm of a group, those of the store and the bed are the group's.
fn amounts(
    pack: &Pack,
    words: &Filled<'_>,
    of_group: bool,
    values: &Values,
) -> Result<Vec<Row>, WordingError> {
    let holds = |choice: Option<Choice>| {
        choice.is_none_or(|(name, chosen)| value(values, name) == Some(&Value::Name(chosen)))
    };
    let mut rows = Vec::new();
    for (quantity, message) in
        Quantity::ALL.into_iter().filter_map(|quantity| Some((quantity, quantity.in_messages()?)))
    {
        let Some((row, value)) = message.row.zip(value(values, message.name)) else { continue };
        if !holds(row.only) {
            continue;
        }
        let value = match MessageId::value_of(row) {
            Some(message) if holds(row.message.and_then(|(_, only)| only)) => words.label(message)?,
            _ => written(pack, value)?.unwrap_or_default(),
        };
        let label = words.label(row)?;
        let label = if of_group && !quantity.is_shared_out() { together(words, &label)? } else { label };
        rows.push(Row { name: row.label, label, value });
    }
    Ok(rows)
}
