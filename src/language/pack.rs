//! A language pack: its files read, checked and put to use.

use std::collections::BTreeSet;

use chrono::NaiveDate;
use unic_langid::LanguageIdentifier;

use super::limits::within_limits;
use super::names::{self, with_names};
use super::numerals::{Language, Number, NumeralError, Numerals, words_in};
use super::piece::{Assembly, Piece, Role};
use super::wording::{Arguments, Messages, Phrase, Problem, Run, collect_phrases, write_runs};
use crate::data::Data;
use crate::finding::Finding;
use crate::guidance::{Caution, Statement, Subject, Table as SheetTable, Value};
use crate::plan::DateSpan;
use crate::toml_reader::{self, TomlTable};

/// How far a pack may be trusted.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Status {
    /// No fluent speaker has read it.
    Draft,
    /// A fluent speaker has read it.
    Read,
    /// It may go out.
    Approved,
}

impl Status {
    /// The label that says it on a sheet.
    pub fn label(self) -> &'static str {
        match self {
            Status::Draft => "status-draft",
            Status::Read => "status-read",
            Status::Approved => "status-approved",
        }
    }

    /// The status in one word, as in `pack.toml`.
    pub fn name(self) -> &'static str {
        match self {
            Status::Draft => "draft",
            Status::Read => "read",
            Status::Approved => "approved",
        }
    }
}

/// Which way the script runs.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Direction {
    /// From left to right.
    LeftToRight,
    /// From right to left.
    RightToLeft,
}

/// The wordings of sheets that belong to no statement.
pub const LABELS: &[&str] = &[
    "sheet-title",
    "sheet-for",
    "sheet-place",
    "sheet-rains",
    "sheet-harvest",
    "sheet-amounts",
    "sheet-steps",
    "sheet-cautions",
    "sheet-when",
    "colon",
    "semicolon",
    "sheet-page",
    "status-draft",
    "status-read",
    "status-approved",
    "cue-title",
    "cue-language",
    "cue-voice",
    "cue-rights",
    "cue-status",
    "cue-length",
    "cue-loudness",
    "cue-true-peak",
    "cue-from",
    "cue-to",
    "cue-words",
    "cue-clip",
    "voice-stand-in",
    "voice-draft",
    "voice-approved",
    "voice-stand-in-remark",
    "amount-plants",
    "amount-plants-each",
    "amount-roots",
    "amount-cuttings",
    "amount-first-cuttings",
    "amount-containers",
    "amount-layers",
    "amount-roots-per-layer",
    "amount-roots-top-layer",
    "amount-bundles",
    "amount-lining",
    "amount-water-total",
    "bundles-value",
    "lining-value",
    "water-total-value",
    "false-starts-value",
    "column-when",
    "column-farm",
    "column-area",
    "column-cuttings",
    "column-plants",
    "column-roots",
    "column-bed",
    "column-jerrycans",
    "column-from",
    "column-false-starts",
    "column-days-left",
    "amount-sand",
    "amount-loads",
    "amount-bed",
    "amount-water",
    "amount-jerrycans",
    "sand-value",
    "bed-value",
    "water-value",
    "roots-for-zone",
    "span-brief",
    "month-year",
    // Of formats.
    "calendar-title",
    "guide-title",
    "guide-show",
    "guide-ask",
    "card-fold",
    "record-title",
    "record-how",
    "record-planned",
    "record-done",
    "record-healthy",
    "record-thrown-away",
    "record-sprouted",
    "record-remark",
    "record-stored",
    "booklet-index",
    // Of drawings.
    "size-cm",
    "size-m",
    "drawing-season",
    "drawing-season-alt",
    "season-store",
    "season-bed",
    "season-field",
    "season-on-harvest",
    "season-on-sprout",
    "season-on-rains",
    "season-on-food",
    "drawing-store",
    "drawing-store-alt",
    "drawing-layers",
    "drawing-layers-alt",
    "drawing-bed",
    "drawing-bed-alt",
    "drawing-rows",
    "drawing-rows-alt",
    "script-title",
    "script-new-voice",
    "script-lines",
    "script-time",
    "script-time-measured",
    "script-minutes",
    "script-ready",
    "script-how",
    "script-how-room",
    "script-how-distance",
    "script-how-tone",
    "script-how-pause",
    "script-how-order",
    "script-how-slip",
    "script-how-grey",
    "script-how-brackets",
    "script-how-medial",
    "script-how-final",
    "script-medial",
    "script-final",
    "script-part",
    "script-part-lines",
    "script-rest",
    "script-opening",
    "script-closing",
    "script-sentences",
    "script-parts",
    "script-numbers",
    "script-dates",
    "script-months",
    "script-units",
    "script-unlocks",
    "script-complete",
    "script-stale",
    "script-other-ending",
    "script-recorded",
    "script-unsaid",
    "script-nothing",
    "clips-title",
    "clips-intro",
    "clips-again",
    "clips-usable",
    "clips-good",
    "clips-unused",
    "clips-missing",
    "clips-picture",
    "clips-length",
    "clips-level",
    "clips-noise",
    "clips-hum",
    "clips-pace",
    "clip-clipped",
    "clip-cut-start",
    "clip-cut-end",
    "clip-noise",
    "clip-hum",
    "clip-room",
    "clip-quiet",
    "clip-loud",
    "clip-fast",
    "clip-slow",
    "clip-offset",
    "clip-broken",
    "clip-stale",
    "clip-unused",
    "segment-title",
    "segment-season",
    "segment-week",
    "segment-topics",
    "segment-nothing",
    "segment-due",
    "segment-past",
    "segment-soon",
    "segment-opening",
    "segment-closing",
    "segment-bed",
    "segment-bed-value",
    "segment-said",
    "segment-read-before",
    "segment-read-after",
    "segment-intro",
    "segment-outro",
    "segment-reading-time",
    "segment-read-live",
    "segment-pauses",
    "segment-no-sound",
    "segment-no-voice",
    "segment-left-out",
    "segment-missing",
    "cue-active-level",
    "cue-chapter",
    "cue-talk",
];

/// Messages of both files through which dates, spans and measures are said.
const PARTS: &[&str] = &[
    "month",
    "date",
    "week",
    "span",
    "span-day",
    "unit-kilogram",
    "unit-litre",
    "unit-metre",
    "unit-centimetre",
    "unit-hand",
    "unit-thumb-joint",
    "unit-jerrycan",
    "unit-bundle",
];

/// What only written messages are put together from.
const WRITTEN_PARTS: &[&str] =
    &["date-short", "month-short", "weekday", "event-before", "event-on", "event-after"];

/// A statement in writing.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Written {
    /// What it is about.
    pub subject: Subject,
    /// Its title; of opening and closing, the whole text.
    pub title: String,
    /// The sentences below the title.
    pub text: String,
    /// The same in a few words, for a sheet with little room; empty for tables, opening and closing.
    pub short: String,
    /// Its picture in words.
    pub alt: String,
    /// What a meeting is shown; empty but for steps.
    pub show: String,
    /// What a meeting is asked; empty but for steps.
    pub ask: String,
    /// When it applies, one entry for each time.
    pub when: Vec<String>,
    /// The same without years and weekdays.
    pub brief: Vec<String>,
}

/// Why something could not be worded. Nothing is ever put in its place.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error(
    "{language}: {id}: {problem}\n    hint: kabla language check {language} tells all that its pack lacks"
)]
pub struct WordingError {
    /// The pack's language tag.
    pub language: String,
    /// The message.
    pub id: String,
    /// What is wrong with it.
    pub problem: String,
}

/// A language pack.
#[derive(Debug)]
pub struct Pack {
    tag: LanguageIdentifier,
    header: Header,
    written: Messages,
    spoken: Messages,
    numerals: Numerals,
}

impl Pack {
    /// The tags of all packs.
    pub fn tags(data: &dyn Data) -> Vec<String> {
        data.list("locales")
            .into_iter()
            .filter(|tag| data.read(&format!("locales/{tag}/pack.toml")).is_some())
            .collect()
    }

    /// Reads the pack of a language.
    ///
    /// # Errors
    /// All problems of its four files, each with file and line: what cannot
    /// be read and what is missing.
    pub fn load(data: &dyn Data, tag: &str) -> Result<Pack, Vec<Finding>> {
        let mut findings = Vec::new();
        let known = Pack::tags(data);
        let Some(language) =
            tag.parse::<LanguageIdentifier>().ok().filter(|_| known.iter().any(|known| known == tag))
        else {
            let finding = Finding::error(format!("there is no language pack {tag}")).field("language");
            return Err(vec![finding.hint(format!("packs at hand: {}", known.join(", ")))]);
        };
        let mut read = |file: &str| {
            let path = format!("locales/{tag}/{file}");
            let text = match data.read(&path).map(|bytes| String::from_utf8(bytes.into_owned())) {
                Some(Ok(text)) => within_limits(&path, text).unwrap_or_else(|finding| {
                    findings.push(finding);
                    String::new()
                }),
                Some(Err(_)) => {
                    findings.push(Finding::error("is not UTF-8 text").file(&path).hint("save it in UTF-8"));
                    String::new()
                }
                None => {
                    findings.push(
                        Finding::error("is missing")
                            .file(&path)
                            .hint("a pack has pack.toml, written.ftl, spoken.ftl and numbers.rbnf"),
                    );
                    String::new()
                }
            };
            (path, text)
        };
        let (pack_file, pack_text) = read("pack.toml");
        let (written_file, written_text) = read("written.ftl");
        let (spoken_file, spoken_text) = read("spoken.ftl");
        let (numbers_file, numbers_text) = read("numbers.rbnf");
        let (header, problems) = toml_reader::read(&pack_file, &pack_text, |_, root| Header::read(root, tag));
        findings.extend(problems);
        let (has_written, has_spoken) = (!written_text.is_empty(), !spoken_text.is_empty());
        let (written, problems) =
            Messages::read(&language, &written_file, &with_names(tag, "written.ftl", written_text));
        findings.extend(problems);
        let (spoken, problems) =
            Messages::read(&language, &spoken_file, &with_names(tag, "spoken.ftl", spoken_text));
        findings.extend(problems);
        let decimal_comma = header.as_ref().is_some_and(|header| header.decimal == ",");
        let numerals =
            Numerals::parse_in(&numbers_text, Language { tag, decimal_comma }).map_err(|problems| {
                findings.extend(problems.into_iter().map(|problem| {
                    Finding::error(problem.message).file(&numbers_file).line(problem.line).hint(problem.hint)
                }));
            });
        // Of a file that could not be read, that is all there is to say.
        if has_written {
            findings.extend(missing(&written, &written_file, written_wanted()));
        }
        if has_spoken {
            findings.extend(missing(&spoken, &spoken_file, spoken_wanted()));
        }
        match (header, numerals) {
            (Some(header), Ok(numerals)) if findings.is_empty() => {
                Ok(Pack { tag: language, header, written, spoken, numerals })
            }
            _ => Err(findings),
        }
    }

    /// The language tag.
    pub fn tag(&self) -> String {
        self.tag.to_string()
    }

    /// The language's name in itself.
    pub fn name(&self) -> &str {
        &self.header.name
    }

    /// Which way the script runs.
    pub fn direction(&self) -> Direction {
        self.header.direction
    }

    /// How far the pack may be trusted.
    pub fn status(&self) -> Status {
        self.header.status
    }

    /// The voice that speaks the language when none is named.
    pub fn voice(&self) -> &str {
        &self.header.voice
    }

    /// The number rules.
    pub fn numerals(&self) -> &Numerals {
        &self.numerals
    }

    /// A wording of the sheet, by its id.
    pub fn label(&self, id: &str, values: &[(&str, Value)]) -> Result<String, WordingError> {
        self.with(values).label(id)
    }

    /// The wordings of a sheet with their values; for many of them.
    pub fn with<'a>(&'a self, values: &[(&'a str, Value)]) -> Filled<'a> {
        Filled { pack: self, arguments: Arguments::of(values) }
    }

    /// A text for a phone: with the letters replaced that the pack lets go, and plain spaces for those that
    /// only keep words together on paper.
    pub fn for_sms(&self, text: &str) -> String {
        let replaced = |c: char| match self.header.replace.iter().find(|(from, _)| *from == c) {
            Some((_, to)) => *to,
            None if matches!(c, '\u{a0}' | '\u{202f}' | '\u{2009}') => ' ',
            None => c,
        };
        text.chars().map(replaced).collect()
    }

    /// A date in writing.
    pub fn write_date(&self, date: NaiveDate) -> Result<String, WordingError> {
        self.write_day(date, "DAY")
    }

    /// A day in writing by one of the functions of messages: `DAY`, `BRIEF`, `WEEKDAY` or `WEEK`.
    pub fn write_day(&self, date: NaiveDate, function: &str) -> Result<String, WordingError> {
        let runs =
            self.written.format_day(date, function).map_err(|problem| self.error(function, &problem))?;
        Ok(write_runs(&runs, |value, decimals| self.write_number(value, decimals)))
    }

    /// A span in writing; of one day, its date.
    pub fn write_span(&self, span: DateSpan) -> Result<String, WordingError> {
        let values = [("from", Value::Date(span.from)), ("to", Value::Date(span.to))];
        self.label(if span.is_day() { "span-day" } else { "span" }, &values)
    }

    /// A number in digits, as the language writes it.
    pub fn write_number(&self, value: f64, decimals: u8) -> String {
        let plain = format!("{value:.*}", usize::from(decimals));
        let (whole, fraction) = plain.split_once('.').unwrap_or((&plain, ""));
        let (sign, digits) = whole.strip_prefix('-').map_or(("", whole), |digits| ("-", digits));
        let mut grouped = String::with_capacity(plain.len() + 4);
        let long_enough = digits.len() >= 3 + self.header.least_before_group;
        for (index, digit) in digits.chars().enumerate() {
            if index > 0 && long_enough && (digits.len() - index).is_multiple_of(3) {
                grouped.push_str(&self.header.group);
            }
            grouped.push(digit);
        }
        let point = if fraction.is_empty() { "" } else { &self.header.decimal };
        format!("{sign}{grouped}{point}{fraction}")
    }

    /// A number as people write it: with a minus sign, and with a decimal point or comma.
    ///
    /// # Errors
    /// [`NumeralError::NotANumber`]; [`NumeralError::Doubtful`] where the language groups digits by the sign that may be
    /// meant as decimal point.
    pub fn read_number(&self, text: &str) -> Result<Number, NumeralError> {
        let plain = text.replace('\u{2212}', "-").replace(',', ".");
        let number: Number = plain.parse().map_err(|_| NumeralError::NotANumber { text: text.to_owned() })?;
        let group = &self.header.group;
        let grouped = !group.is_empty() && text.contains(group.as_str());
        if grouped && number.decimals().len() == 3 && (1..1_000).contains(&number.whole()) {
            return Err(NumeralError::Doubtful { text: text.to_owned() });
        }
        Ok(number)
    }

    /// A statement in writing.
    ///
    /// # Errors
    /// The message that is missing or cannot be resolved.
    pub fn write(&self, statement: &Statement) -> Result<Written, WordingError> {
        let id = statement.subject.name();
        let values = self.with(&statement.values);
        let (mut text, mut alt, mut short) = (String::new(), String::new(), String::new());
        if matches!(statement.subject, Subject::Step(_) | Subject::Caution(_)) {
            text = values.attribute(id, "text")?;
            alt = values.attribute(id, "alt")?;
            short = values.attribute(id, "short")?;
        }
        let (mut show, mut ask) = (String::new(), String::new());
        if matches!(statement.subject, Subject::Step(_)) {
            show = values.attribute(id, "show")?;
            ask = values.attribute(id, "ask")?;
        }
        let spans = statement.when.iter();
        let mut when: Vec<String> =
            spans.clone().map(|span| self.write_span(*span)).collect::<Result<_, _>>()?;
        let mut brief: Vec<String> = spans.map(|span| self.write_briefly(*span)).collect::<Result<_, _>>()?;
        if let Some((event, days)) = &statement.near {
            let near = self.write_event(event, *days)?;
            for first in [when.first_mut(), brief.first_mut()].into_iter().flatten() {
                *first = format!("{first} ({near})");
            }
        }
        if let Subject::Table(table) = statement.subject {
            text = values.attribute(id, "text")?;
            if table == SheetTable::PlantLater {
                alt = values.attribute(id, "alt")?;
            }
        }
        Ok(Written {
            subject: statement.subject,
            title: values.label(id)?,
            text,
            short,
            alt,
            show,
            ask,
            when,
            brief,
        })
    }

    /// The title alone of a statement in writing.
    ///
    /// # Errors
    /// As [`Pack::write`].
    pub fn write_title(&self, statement: &Statement) -> Result<String, WordingError> {
        self.label(statement.subject.name(), &statement.values)
    }

    /// A statement as a text message for phones; nothing where none is sent of its subject.
    ///
    /// # Errors
    /// As [`Pack::write`].
    pub fn write_sms(&self, statement: &Statement) -> Result<Option<String>, WordingError> {
        if !has_sms(statement.subject) {
            return Ok(None);
        }
        self.with(&statement.values).attribute(statement.subject.name(), "sms").map(Some)
    }

    /// A span in writing, without years and weekdays.
    ///
    /// # Errors
    /// The message that is missing or cannot be resolved.
    pub fn write_briefly(&self, span: DateSpan) -> Result<String, WordingError> {
        match span.is_day() {
            true => self.write_day(span.from, "BRIEF"),
            false => {
                self.label("span-brief", &[("from", Value::Date(span.from)), ("to", Value::Date(span.to))])
            }
        }
    }

    /// How far a day lies from an event, in writing: after it where `days` is positive.
    fn write_event(&self, event: &str, days: i64) -> Result<String, WordingError> {
        let id = match days {
            0 => "event-on",
            days if days < 0 => "event-before",
            _ => "event-after",
        };
        let days = Value::Number(days.unsigned_abs() as f64, 0);
        self.label(id, &[("event", Value::Text(event.to_owned())), ("days", days)])
    }

    /// A statement as pieces to speak.
    ///
    /// # Errors
    /// The message that is missing or cannot be resolved, or the number that
    /// the rules have no words for.
    pub fn say(&self, statement: &Statement) -> Result<Vec<Piece>, WordingError> {
        let id = statement.subject.name();
        let runs = self
            .spoken
            .format(id, None, &Arguments::of(&statement.values))
            .map_err(|problem| self.error(id, &problem))?;
        let mut assembly = Assembly::default();
        for run in runs {
            match run {
                Run::Text(text, role) => assembly.text(&text, role),
                Run::Said(value, decimals, form) => {
                    let words = self.say_number(value, decimals, &form).map_err(|problem| WordingError {
                        language: self.tag(),
                        id: id.to_owned(),
                        problem,
                    })?;
                    words_in(&words).for_each(|word| assembly.words(word, Role::Number));
                }
                Run::Plain(value, _) => {
                    let problem =
                        Problem::Unresolved(format!("the number {value} stands in spoken text without SAY"));
                    return Err(self.error(id, &problem));
                }
            }
        }
        Ok(assembly.finish())
    }

    /// A day in spoken words by one of the functions of spoken messages: `DAY` or `WEEK`.
    ///
    /// # Errors
    /// The message that is missing, or the number without words.
    pub fn say_day(&self, date: NaiveDate, function: &str) -> Result<String, WordingError> {
        let runs =
            self.spoken.format_day(date, function).map_err(|problem| self.error(function, &problem))?;
        let mut words = String::new();
        for run in runs {
            match run {
                Run::Text(text, _) => words.push_str(&text),
                Run::Said(value, decimals, form) => {
                    let said = self.say_number(value, decimals, &form);
                    words.push_str(
                        &said.map_err(|problem| self.error(function, &Problem::Unresolved(problem)))?,
                    );
                }
                Run::Plain(value, _) => {
                    let problem =
                        Problem::Unresolved(format!("the number {value} stands in spoken text without SAY"));
                    return Err(self.error(function, &problem));
                }
            }
        }
        Ok(words.trim().to_owned())
    }

    fn say_number(&self, value: f64, decimals: u8, form: &str) -> Result<String, String> {
        let number = Number::rounded(value, decimals)
            .ok_or_else(|| format!("{value} is not a number that can be said"))?;
        self.numerals.say(number, form).map_err(|error| error.to_string())
    }

    /// Every phrase that speech may need, each with its endings.
    ///
    /// # Errors
    /// Findings about spoken text that nobody can record.
    pub fn phrases(&self) -> Result<Vec<Phrase>, Vec<Finding>> {
        let file = format!("locales/{}/spoken.ftl", self.tag());
        let roots: Vec<&str> =
            Subject::all().filter(|subject| subject.is_spoken()).map(Subject::name).collect();
        let (phrases, findings) = collect_phrases(&file, self.spoken.normalized(), &self.numerals, &roots);
        if findings.is_empty() { Ok(phrases) } else { Err(findings) }
    }

    fn error(&self, id: &str, problem: &Problem) -> WordingError {
        WordingError { language: self.tag(), id: id.to_owned(), problem: problem.to_string() }
    }
}

/// Wordings of a pack with the values they may use.
#[derive(Debug)]
pub struct Filled<'a> {
    pack: &'a Pack,
    arguments: Arguments<'a>,
}

impl Filled<'_> {
    /// A wording, by its id.
    ///
    /// # Errors
    /// The message is missing or cannot be resolved.
    pub fn label(&self, id: &str) -> Result<String, WordingError> {
        self.message(id, None)
    }

    fn attribute(&self, id: &str, attribute: &str) -> Result<String, WordingError> {
        self.message(id, Some(attribute))
    }

    fn message(&self, id: &str, attribute: Option<&str>) -> Result<String, WordingError> {
        let pack = self.pack;
        let runs = pack.written.format(id, attribute, &self.arguments);
        let runs = runs.map_err(|problem| pack.error(id, &problem))?;
        Ok(write_runs(&runs, |value, decimals| pack.write_number(value, decimals)))
    }
}

/// What `pack.toml` says.
#[derive(Debug)]
struct Header {
    name: String,
    direction: Direction,
    status: Status,
    voice: String,
    group: String,
    decimal: String,
    /// Digits that must stand before a group sign for numbers to have any.
    least_before_group: usize,
    /// Letters that text messages may replace, each with the one in its place.
    replace: Vec<(char, char)>,
}

impl Header {
    fn read(root: &TomlTable<'_>, tag: &str) -> Option<Header> {
        let text = |key, hint: &str| {
            let text = root.text(key);
            if text.is_none() && !root.has(key) {
                root.missing(key, hint);
            }
            text
        };
        if text("tag", "write the language tag: tag = \"sw\"").is_some_and(|written| written != tag) {
            root.problem("tag", "differs from the folder's name", format!("write tag = \"{tag}\""));
        }
        let name = text("name", "write the language's name in itself: name = \"Kiswahili\"");
        text("script", "write the script's code: script = \"Latn\"");
        root.choice("calendar", &[("gregorian", ()), ("ethiopic", ()), ("both", ())]);
        let direction =
            root.choice("direction", &[("ltr", Direction::LeftToRight), ("rtl", Direction::RightToLeft)]);
        let status = root.choice(
            "status",
            &[("draft", Status::Draft), ("read", Status::Read), ("approved", Status::Approved)],
        );
        if !root.has("status") {
            root.missing("status", "write status = \"draft\" until a fluent speaker has read the pack");
        }
        let voice = root.text("voice").unwrap_or_else(|| "stand-in".to_owned());
        let numbers = root.table("numbers");
        let mark = |key| {
            let mark = numbers.mark(key);
            if mark.is_none() && !numbers.has(key) {
                numbers.missing(key, "write the sign, e.g. group = \",\" and decimal = \".\"");
            }
            mark
        };
        let (group, decimal) = (mark("group"), mark("decimal"));
        let least_before_group = numbers.whole("least_before_group", 1..=3).unwrap_or(1) as usize;
        numbers.finish();
        let replace = read_replace(&root.table("sms"));
        Some(Header {
            name: name?,
            direction: direction.unwrap_or(Direction::LeftToRight),
            status: status?,
            voice,
            group: group?,
            decimal: decimal?,
            least_before_group,
            replace,
        })
    }
}

/// Whether a subject has a text message for phones.
pub(super) fn has_sms(subject: Subject) -> bool {
    matches!(subject, Subject::Step(_) | Subject::Caution(Caution::Rot) | Subject::Closing)
}

/// Pairs of letters such as "ŵ w"; letters that are no pair are reported.
fn read_replace(sms: &TomlTable<'_>) -> Vec<(char, char)> {
    let mut pairs = Vec::new();
    for text in sms.texts("replace").unwrap_or_default() {
        let letters: Vec<char> = text.chars().collect();
        match letters.as_slice() {
            [from, ' ', to] => pairs.push((*from, *to)),
            _ => {
                let hint =
                    "write each as the letter, a space, and the letter in its place: replace = [\"ŵ w\"]";
                sms.problem("replace", format!("\"{text}\" is no pair of letters"), hint);
            }
        }
    }
    pairs
}

type Wanted = (&'static str, Option<&'static str>);

fn written_wanted() -> Vec<Wanted> {
    let mut wanted: Vec<Wanted> =
        LABELS.iter().chain(PARTS).chain(WRITTEN_PARTS).map(|id| (*id, None)).collect();
    for subject in Subject::all() {
        wanted.push((subject.name(), None));
        if matches!(subject, Subject::Step(_) | Subject::Caution(_)) {
            wanted.extend(["short", "text", "alt"].map(|part| (subject.name(), Some(part))));
        }
        if matches!(subject, Subject::Step(_)) {
            wanted.extend(["show", "ask"].map(|part| (subject.name(), Some(part))));
        }
        if has_sms(subject) {
            wanted.push((subject.name(), Some("sms")));
        }
        if let Subject::Table(table) = subject {
            wanted.push((subject.name(), Some("text")));
            if table == SheetTable::PlantLater {
                wanted.push((subject.name(), Some("alt")));
            }
        }
    }
    wanted
}

fn spoken_wanted() -> Vec<Wanted> {
    let subjects = Subject::all().filter(|subject| subject.is_spoken()).map(Subject::name);
    subjects.chain(PARTS.iter().copied()).map(|id| (id, None)).collect()
}

/// The texts that a file must have, such as `mark-plants` and `mark-plants.text`.
pub(super) fn wanted(file: &str) -> Vec<String> {
    let wanted = if file == "spoken.ftl" { spoken_wanted() } else { written_wanted() };
    let name =
        |(id, attribute): Wanted| attribute.map_or(id.to_owned(), |attribute| format!("{id}.{attribute}"));
    wanted.into_iter().map(name).collect()
}

fn missing(messages: &Messages, file: &str, wanted: Vec<Wanted>) -> Vec<Finding> {
    let absent: BTreeSet<Wanted> =
        wanted.into_iter().filter(|(id, attribute)| !messages.has(id, *attribute)).collect();
    let name =
        |(id, attribute): Wanted| attribute.map_or(id.to_owned(), |attribute| format!("{id}.{attribute}"));
    let finding = |wanted: Wanted| {
        let hint = match names::is_name(wanted.0) {
            true => "write the names: Unicode CLDR has none in this language",
            false => "translate it",
        };
        Finding::error("the message is missing").file(file).field(name(wanted)).hint(hint)
    };
    absent.into_iter().map(finding).collect()
}
