//! Messages of a language pack: the only place that names Fluent.
//!
//! `written.ftl` and `spoken.ftl` go through the same steps. Fluent resolves
//! selectors, plurals and references; the functions `SAY`, `MEASURE`, `DAY`
//! and `SPAN`, and plain numbers, come back as marks in private-use
//! characters, which are then expanded by messages of the same file (`date`,
//! `span`, `span-day`, `unit-…`) until only text and numbers are left.

mod mark;
mod phrases;
mod pseudo;
mod units;

use std::collections::BTreeSet;

use chrono::{Datelike, NaiveDate};
use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::types::{FluentNumber, FluentNumberOptions};
use fluent_bundle::{FluentArgs, FluentError, FluentResource, FluentValue};
use fluent_syntax::ast::{Entry, Expression, InlineExpression, Pattern, PatternElement, Resource};
use fluent_syntax::{parser, serializer};
use unic_langid::LanguageIdentifier;

use super::dates;
use super::labels::Part;
use super::piece::Role;
use crate::finding::{Code, Finding, line_of};
use crate::guidance::{Value, Variable};

pub(super) use mark::Mark;
pub use phrases::Phrase;
pub(super) use phrases::collect as collect_phrases;
pub(super) use pseudo::rewrite;
pub(super) use units::{Unit, units};

/// What a message comes to: text and numbers, in order.
#[derive(Debug, Clone, PartialEq)]
pub(super) enum Run {
    Text(String, Role),
    /// A number to be said in a form.
    Said(f64, u8, String),
    /// A number to be written in digits.
    Plain(f64, u8),
}

/// Values as messages take them.
#[derive(Debug)]
pub(super) struct Arguments<'a>(FluentArgs<'a>);

impl<'a> Arguments<'a> {
    pub(super) fn of(values: &[(&'a str, Value)]) -> Arguments<'a> {
        // Fluent keeps them by name: in that order, none has to make room for the next.
        let mut sorted: Vec<&(&str, Value)> = values.iter().collect();
        sorted.sort_by_key(|(name, _)| *name);
        let mut arguments = FluentArgs::with_capacity(sorted.len());
        sorted.into_iter().for_each(|(name, value)| arguments.set(*name, argument(value)));
        Arguments(arguments)
    }
}

/// Why a message could not be formatted.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub(super) enum Problem {
    #[error("there is no such message")]
    Missing,
    #[error("{0}")]
    Unresolved(String),
    #[error("dates, spans and measures refer to each other without end")]
    Endless,
}

/// Dates hold days, spans hold dates: nothing sensible nests deeper.
const DEEPEST: u8 = 4;

/// Findings of one kind in a file; where there are more, something else is wrong with it.
const MOST_FINDINGS: usize = 100;

/// The messages of one file.
pub(super) struct Messages {
    bundle: FluentBundle<FluentResource>,
    /// The file as resolved: each literal text in one line.
    normalized: String,
    /// Its terms, each with the `-` that begins its name.
    terms: BTreeSet<String>,
}

impl std::fmt::Debug for Messages {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("Messages").finish_non_exhaustive()
    }
}

impl Messages {
    /// Reads a file; every syntax error and double message is a finding.
    pub(super) fn read(language: &LanguageIdentifier, file: &str, text: &str) -> (Messages, Vec<Finding>) {
        let mut findings = Vec::new();
        let (mut resource, errors) = match parser::parse(text.to_owned()) {
            Ok(resource) => (resource, Vec::new()),
            Err((resource, errors)) => (resource, errors),
        };
        let more = errors.len().saturating_sub(MOST_FINDINGS);
        for error in errors.into_iter().take(MOST_FINDINGS) {
            let finding =
                Finding::error(Code::BROKEN_MESSAGE, format!("the message cannot be read: {}", error.kind));
            let finding = finding.hint(
                "a message is written id = text, its further lines are indented; { and } come in pairs",
            );
            findings.push(finding.file(file).line(line_of(text, error.pos.start)));
        }
        if more > 0 {
            let finding =
                Finding::error(Code::BROKEN_MESSAGE, format!("{more} more messages cannot be read"));
            findings.push(finding.file(file).hint("correct the first ones, then check again"));
        }
        join_lines(&mut resource);
        let normalized = serializer::serialize(&resource);
        let terms = resource.body.iter().filter_map(|entry| match entry {
            Entry::Term(term) => Some(format!("-{}", term.id.name)),
            _ => None,
        });
        let terms = terms.collect();
        let mut bundle = FluentBundle::new_concurrent(vec![plural_locale(language)]);
        bundle.set_use_isolating(false);
        bundle.set_transform(Some(mark::literal));
        bundle.set_formatter(Some(|value, _| match value {
            FluentValue::Number(number) => Some(Mark::Plain(number.value, decimals(number)).encode()),
            _ => None,
        }));
        for (name, function) in FUNCTIONS {
            // Adding fails only where a name is taken, and these are ours.
            let _ = bundle.add_function(name, *function);
        }
        // What the parser found was reported above; the rest of the file still serves.
        let (Ok(resource) | Err((resource, _))) = FluentResource::try_new(normalized.clone());
        for error in bundle.add_resource(resource).err().unwrap_or_default().into_iter().take(MOST_FINDINGS) {
            if let FluentError::Overriding { id, .. } = error {
                let finding = Finding::error(Code::DUPLICATE, "the message stands here twice")
                    .field(&id)
                    .hint("keep one of them");
                findings.push(finding.file(file).line(line_of_message(text, &id)));
            }
        }
        (Messages { bundle, normalized, terms }, findings)
    }

    /// Whether the file has a message, an attribute of it, or a term.
    pub(super) fn has(&self, id: &str, attribute: Option<&str>) -> bool {
        self.terms.contains(id) || self.pattern(id, attribute).is_some()
    }

    fn pattern(&self, id: &str, attribute: Option<&str>) -> Option<&Pattern<&str>> {
        let message = self.bundle.get_message(id)?;
        match attribute {
            Some(name) => message.get_attribute(name).map(|attribute| attribute.value()),
            None => message.value(),
        }
    }

    /// The file's text, each literal in one line.
    pub(super) fn normalized(&self) -> &str {
        &self.normalized
    }

    /// Formats a message or an attribute of it.
    pub(super) fn format(
        &self,
        id: &str,
        attribute: Option<&str>,
        values: &Arguments<'_>,
    ) -> Result<Vec<Run>, Problem> {
        let mut runs = Vec::new();
        self.format_into(&mut runs, (id, attribute), &values.0, Role::Phrase, 0)?;
        Ok(runs)
    }

    /// Formats a day by the message of a function: `DAY`, `BRIEF`, `WEEKDAY` or `WEEK`.
    pub(super) fn format_day(&self, date: NaiveDate, function: &str) -> Result<Vec<Run>, Problem> {
        let message = day_message(function).ok_or(Problem::Missing)?;
        let mut runs = Vec::new();
        self.format_into(&mut runs, (message, None), &day_arguments(date), Role::Date, 0)?;
        Ok(runs)
    }

    fn format_into(
        &self,
        runs: &mut Vec<Run>,
        (id, attribute): (&str, Option<&str>),
        args: &FluentArgs<'_>,
        role: Role,
        depth: u8,
    ) -> Result<(), Problem> {
        if depth > DEEPEST {
            return Err(Problem::Endless);
        }
        let pattern = self.pattern(id, attribute).ok_or(Problem::Missing)?;
        let mut errors = Vec::new();
        let formatted = self.bundle.format_pattern(pattern, Some(args), &mut errors);
        if !errors.is_empty() {
            let all = errors.iter().map(ToString::to_string).collect::<Vec<_>>().join("; ");
            return Err(Problem::Unresolved(format!("{id}: {all}")));
        }
        for mark in mark::decode(&formatted) {
            match mark {
                Mark::Text(text) => runs.push(Run::Text(text.to_owned(), role)),
                Mark::Plain(value, decimals) => runs.push(Run::Plain(value, decimals)),
                Mark::Said { value, decimals, form } => {
                    runs.push(Run::Said(value, decimals, form.to_owned()))
                }
                Mark::Measure { value, decimals, unit } => {
                    let number = argument(&Value::Number(value, decimals));
                    let (whole, half) = in_halves(value, decimals);
                    let args = FluentArgs::from_iter([
                        (Variable::N.name(), number),
                        (Variable::Whole.name(), argument(&whole)),
                        (Variable::Half.name(), argument(&Value::Name(half))),
                    ]);
                    self.format_into(runs, (&unit_message(unit), None), &args, Role::Unit, depth + 1)?;
                }
                Mark::Day(date, message) => {
                    self.format_into(runs, (message, None), &day_arguments(date), Role::Date, depth + 1)?
                }
                Mark::Span(span) => {
                    let args = FluentArgs::from_iter([
                        (Variable::From.name(), argument(&Value::Date(span.from))),
                        (Variable::To.name(), argument(&Value::Date(span.to))),
                    ]);
                    self.format_into(
                        runs,
                        (Part::of_span(&span).name(), None),
                        &args,
                        Role::Date,
                        depth + 1,
                    )?;
                }
                Mark::Wrong(problem) => return Err(Problem::Unresolved(format!("{id}: {problem}"))),
            }
        }
        Ok(())
    }
}

/// A measure as people say it: halves as halves, and from two on to the next half. What is smaller keeps its tenths.
fn in_halves(value: f64, decimals: u8) -> (Value, &'static str) {
    let halves = (value * 2.0).ceil() / 2.0;
    let (whole, is_half) = (halves.trunc(), halves.fract() != 0.0);
    match is_half {
        _ if value < 2.0 && halves != value => (Value::Number(value, decimals), "no"),
        true => (Value::Number(whole, 0), "yes"),
        false => (Value::Number(whole, 0), "no"),
    }
}

/// The locale whose plural rules hold. Portuguese outside Brazil and the countries without an entry of their
/// own follows Portugal (CLDR's parent locales); Fluent would take Brazil's.
fn plural_locale(language: &LanguageIdentifier) -> LanguageIdentifier {
    const OF_PORTUGAL: [&str; 11] = ["AO", "CH", "CV", "FR", "GQ", "GW", "LU", "MO", "MZ", "ST", "TL"];
    let region = language.region.as_ref().map(unic_langid::subtags::Region::as_str);
    let follows =
        language.language.as_str() == "pt" && region.is_some_and(|region| OF_PORTUGAL.contains(&region));
    if follows { "pt-PT".parse().unwrap_or_else(|_| language.clone()) } else { language.clone() }
}

/// The message that says a measure in `unit`.
fn unit_message(unit: &str) -> String {
    format!("unit-{unit}")
}

fn day_arguments(date: NaiveDate) -> FluentArgs<'static> {
    // Years are texts, so that they are not grouped as an amount would be.
    let mut arguments = FluentArgs::from_iter([
        (Variable::Day.name(), FluentValue::from(date.day())),
        (Variable::Month.name(), FluentValue::from(date.month())),
        (Variable::Year.name(), FluentValue::from(date.year().to_string())),
        (Variable::Weekday.name(), FluentValue::from(date.weekday().number_from_monday())),
        (Variable::Week.name(), FluentValue::from(dates::week_of_month(date))),
    ]);
    if let Some(day) = dates::ethiopic(date) {
        arguments.set(Variable::EthiopicDay.name(), day.day);
        arguments.set(Variable::EthiopicMonth.name(), day.month);
        arguments.set(Variable::EthiopicYear.name(), day.year.to_string());
    }
    arguments
}

fn argument(value: &Value) -> FluentValue<'static> {
    match value {
        Value::Number(value, decimals) => FluentValue::Number(FluentNumber::new(
            *value,
            FluentNumberOptions {
                // A whole number has none, and so equals the number of a variant such as [1].
                minimum_fraction_digits: (*decimals > 0).then_some(usize::from(*decimals)),
                ..Default::default()
            },
        )),
        Value::Date(date) => FluentValue::from(mark::date_text(*date)),
        Value::Span(span) => FluentValue::from(mark::span_text(*span)),
        Value::Name(name) => FluentValue::from(*name),
        Value::Text(text) => FluentValue::from(text.clone()),
    }
}

fn decimals(number: &FluentNumber) -> u8 {
    number.options.minimum_fraction_digits.and_then(|digits| u8::try_from(digits).ok()).unwrap_or(0)
}

type Function = for<'a> fn(&[FluentValue<'a>], &FluentArgs<'_>) -> FluentValue<'a>;

/// The functions messages may call.
const FUNCTIONS: &[(&str, Function)] = &[
    ("SAY", say),
    ("MEASURE", measure),
    ("DAY", |of, named| day(of, named, "DAY")),
    ("BRIEF", |of, named| day(of, named, "BRIEF")),
    ("WEEKDAY", |of, named| day(of, named, "WEEKDAY")),
    ("WEEK", |of, named| day(of, named, "WEEK")),
    ("SPAN", span),
];

/// The argument that names a form of a number, or of how a day is told.
const FORM: &str = "form";

/// The message that tells a day in a form of the pack's own, such as `date-from` for days that "from" is bound to.
fn in_form(message: &str, form: Option<&str>) -> String {
    form.map_or(message.to_owned(), |form| format!("{message}-{form}"))
}

/// The message by which a function tells a day.
fn day_message(function: &str) -> Option<&'static str> {
    match function {
        "DAY" => Some(Part::Date.name()),
        "BRIEF" => Some(Part::DateShort.name()),
        "WEEKDAY" => Some(Part::Weekday.name()),
        "WEEK" => Some(Part::Week.name()),
        "MONTH" => Some(Part::MonthYear.name()),
        _ => None,
    }
}

fn say<'a>(positional: &[FluentValue<'a>], named: &FluentArgs<'_>) -> FluentValue<'a> {
    match (positional, named.get(FORM)) {
        ([FluentValue::Number(number)], Some(FluentValue::String(form))) => {
            Mark::Said { value: number.value, decimals: decimals(number), form }.encode().into()
        }
        _ => wrong("SAY takes a number and form: \"…\""),
    }
}

fn measure<'a>(positional: &[FluentValue<'a>], named: &FluentArgs<'_>) -> FluentValue<'a> {
    match (positional, named.get("unit")) {
        ([FluentValue::Number(number)], Some(FluentValue::String(unit))) => {
            Mark::Measure { value: number.value, decimals: decimals(number), unit }.encode().into()
        }
        _ => wrong("MEASURE takes a number and unit: \"…\""),
    }
}

fn day<'a>(positional: &[FluentValue<'a>], named: &FluentArgs<'_>, function: &str) -> FluentValue<'a> {
    let date = match positional {
        [FluentValue::String(text)] => mark::read_date(text),
        _ => None,
    };
    let form = match named.get(FORM) {
        Some(FluentValue::String(form)) => Some(form.as_ref()),
        _ => None,
    };
    match date.zip(day_message(function)) {
        Some((date, message)) => Mark::Day(date, &in_form(message, form)).encode().into(),
        None => wrong("DAY, BRIEF, WEEKDAY and WEEK take a day"),
    }
}

fn span<'a>(positional: &[FluentValue<'a>], _: &FluentArgs<'_>) -> FluentValue<'a> {
    match positional {
        [FluentValue::String(text)] => {
            mark::read_span(text).map_or(wrong("SPAN takes a span"), |span| Mark::Span(span).encode().into())
        }
        _ => wrong("SPAN takes a span"),
    }
}

fn wrong(problem: &'static str) -> FluentValue<'static> {
    Mark::Wrong(problem).encode().into()
}

/// Puts every literal text into one line, so that it is one element of its
/// pattern and one phrase to record, however its file breaks lines.
fn join_lines(resource: &mut Resource<String>) {
    for entry in &mut resource.body {
        match entry {
            Entry::Message(message) => {
                message.value.iter_mut().for_each(join_pattern);
                message.attributes.iter_mut().for_each(|attribute| join_pattern(&mut attribute.value));
            }
            Entry::Term(term) => join_pattern(&mut term.value),
            _ => {}
        }
    }
}

fn join_pattern(pattern: &mut Pattern<String>) {
    let mut joined: Vec<PatternElement<String>> = Vec::with_capacity(pattern.elements.len());
    for mut element in std::mem::take(&mut pattern.elements) {
        match (&mut element, joined.last_mut()) {
            (PatternElement::TextElement { value }, Some(PatternElement::TextElement { value: before })) => {
                before.push_str(value);
                continue;
            }
            (PatternElement::Placeable { expression }, _) => join_expression(expression),
            _ => {}
        }
        joined.push(element);
    }
    for element in &mut joined {
        if let PatternElement::TextElement { value } = element {
            *value = in_one_line(value);
        }
    }
    pattern.elements = joined;
}

fn join_expression(expression: &mut Expression<String>) {
    match expression {
        Expression::Select { variants, .. } => {
            variants.iter_mut().for_each(|variant| join_pattern(&mut variant.value))
        }
        Expression::Inline(InlineExpression::Placeable { expression }) => join_expression(expression),
        Expression::Inline(_) => {}
    }
}

/// Line breaks and runs of spaces become one space; spaces at the ends stay
/// as one, since they part the text from its neighbours.
fn in_one_line(text: &str) -> String {
    let mut line = String::with_capacity(text.len());
    for c in text.chars() {
        let space = matches!(c, ' ' | '\n' | '\r' | '\t');
        if !(space && line.ends_with(' ')) {
            line.push(if space { ' ' } else { c });
        }
    }
    line
}

/// The line of the second place where a message stands.
fn line_of_message(text: &str, id: &str) -> u32 {
    let starts = |line: &str| line.strip_prefix(id).is_some_and(|rest| rest.trim_start().starts_with('='));
    text.lines().zip(1u32..).filter(|(line, _)| starts(line)).map(|(_, line)| line).last().unwrap_or(1)
}

/// Writes runs as one text, numbers in digits by `digits`.
pub(super) fn write_runs(runs: &[Run], digits: impl Fn(f64, u8) -> String) -> String {
    let mut text = String::new();
    for run in runs {
        match run {
            Run::Text(literal, _) => text.push_str(literal),
            Run::Plain(value, decimals) | Run::Said(value, decimals, _) => {
                text.push_str(&digits(*value, *decimals));
            }
        }
    }
    // Other spaces are there on purpose: some languages want one before a colon.
    text.trim_matches([' ', '\t', '\n', '\r']).to_owned()
}
