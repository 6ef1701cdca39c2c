//! TOML read field by field, collecting every problem with its line.

use std::cell::RefCell;
use std::collections::BTreeSet;
use std::ops::RangeInclusive;

use chrono::NaiveDate;
use toml::Spanned;
use toml::de::{DeTable, DeValue};

use crate::finding::{Code, Finding, line_of};

/// A TOML text and what is wrong with it so far.
pub(crate) struct Source<'t> {
    name: &'t str,
    text: &'t str,
    findings: RefCell<Vec<Finding>>,
}

/// Reads a TOML text by `read`, which sees the root table; returns what it
/// made, with all findings in the order of their lines.
pub(crate) fn read<T>(
    name: &str,
    text: &str,
    read: impl FnOnce(&Source<'_>, &TomlTable<'_>) -> T,
) -> (T, Vec<Finding>) {
    let (document, problems) = DeTable::parse_recoverable(text);
    let source = Source { name, text, findings: RefCell::default() };
    let root = TomlTable::root(&source, document.get_ref());
    let made = read(&source, &root);
    root.finish();
    let mut findings = source.findings.into_inner();
    for problem in problems.into_iter().take(MOST_PROBLEMS) {
        let line = line_of(text, problem.span().map_or(0, |span| span.start));
        let message = problem.message().trim();
        let written = value_in_line(text, line);
        let comma = written.and_then(|written| Some((written, hint_for_comma(written)?)));
        // What cannot be parsed comes to its field as an empty value: one mistake, one finding.
        // A note, or a finding of another file, says something else: it stays beside the mistake.
        match findings.iter_mut().find(|finding| {
            finding.is_error()
                && finding.place.file.as_deref() == Some(name)
                && finding.place.line == Some(line)
                && finding.place.field.is_some()
        }) {
            Some(finding) => match comma {
                Some((written, hint)) => {
                    finding.code = Code::NOT_A_NUMBER;
                    finding.message = with_comma(written);
                    finding.hint = hint;
                }
                None => message.clone_into(&mut finding.message),
            },
            None => {
                let finding = match comma {
                    Some((written, hint)) => {
                        Finding::error(Code::NOT_A_NUMBER, with_comma(written)).hint(hint)
                    }
                    None => Finding::error(Code::SYNTAX, message)
                        .hint("correct the line; texts stand in quotes, lists in [ ]"),
                };
                let finding = finding.file(name).line(line);
                findings.push(match field_in_line(text, line) {
                    Some(field) => finding.field(field),
                    None => finding,
                });
            }
        }
    }
    findings.sort_by_key(|finding| {
        finding.place.file.as_deref().filter(|file| *file == name).and(finding.place.line)
    });
    (made, findings)
}

/// The most mistakes in the writing that are told at once: one missing quote can make thousands of them.
const MOST_PROBLEMS: usize = 100;

/// What stands before and after the equals sign of a line.
fn parts_of_line(text: &str, line: u32) -> Option<(&str, &str)> {
    text.lines().nth(line.checked_sub(1)? as usize)?.split_once('=')
}

/// The value in a line, without the comment behind it.
fn value_in_line(text: &str, line: u32) -> Option<&str> {
    let (_, value) = parts_of_line(text, line)?;
    Some(value.split('#').next().unwrap_or_default().trim())
}

/// The dotted name of the field in a line, by the heading of its table.
fn field_in_line(text: &str, line: u32) -> Option<String> {
    let is_name = |c: char| c.is_alphanumeric() || matches!(c, '_' | '-' | '.');
    let (key, _) = parts_of_line(text, line)?;
    let key = key.trim();
    if key.is_empty() || !key.chars().all(is_name) {
        return None;
    }
    let mut table = String::new();
    let mut counted: Vec<(&str, usize)> = Vec::new();
    for heading in text.lines().take(line as usize - 1).filter_map(|line| line.trim().strip_prefix('[')) {
        let name = heading.trim_start_matches('[').split(']').next().unwrap_or_default().trim();
        if heading.starts_with('[') {
            // Those within begin anew.
            counted.retain(|(of, _)| !of.strip_prefix(name).is_some_and(|rest| rest.starts_with('.')));
            match counted.iter_mut().find(|(of, _)| *of == name) {
                Some((_, count)) => *count += 1,
                None => counted.push((name, 1)),
            }
        }
        table.clear();
        for (end, _) in name.match_indices('.').chain([(name.len(), "")]) {
            let path = name.get(..end).unwrap_or_default();
            table.push_str(path.rsplit('.').next().unwrap_or_default());
            if let Some((_, count)) = counted.iter().find(|(of, _)| *of == path) {
                table.push_str(&format!("[{count}]"));
            }
            table.push('.');
        }
    }
    Some(table + key)
}

fn with_comma(written: &str) -> String {
    format!("{written} is written with a comma")
}

/// How a number is to be written that has commas among its digits; `None` for anything else.
pub(crate) fn hint_for_comma(written: &str) -> Option<String> {
    let unsigned = written.strip_prefix(['-', '+']).unwrap_or(written);
    let groups: Vec<&str> = unsigned.split(',').collect();
    let all_digits = |group: &&str| !group.is_empty() && group.bytes().all(|byte| byte.is_ascii_digit());
    if groups.len() < 2 || !groups.iter().all(all_digits) {
        return None;
    }
    let thousands = groups.iter().skip(1).all(|group| group.len() == 3)
        && groups.first().is_some_and(|first| first.len() <= 3 && !first.starts_with('0'));
    let (whole, decimal) = (written.replace(',', ""), written.replace(',', "."));
    match (groups.len(), thousands) {
        (2, false) => Some(format!("write the decimal with a point: {decimal}")),
        (2, true) => {
            Some(format!("write the decimal with a point: {decimal}; or thousands without a mark: {whole}"))
        }
        (_, true) => Some(format!("write thousands without a mark: {whole}")),
        (_, false) => None,
    }
}

/// The line of a field in a text that can be read, by the field's dotted name.
pub(crate) fn line_of_field(text: &str, field: &str) -> Option<u32> {
    let (document, _) = DeTable::parse_recoverable(text);
    let mut table = document.get_ref();
    let mut line = None;
    for part in field.split('.') {
        let (key, value) = table.iter().find(|(key, _)| key.get_ref() == part)?;
        line = Some(line_of(text, key.span().start));
        match value.get_ref() {
            DeValue::Table(inner) => table = inner,
            _ => break,
        }
    }
    line
}

impl Source<'_> {
    pub(crate) fn add(&self, finding: Finding) {
        self.findings.borrow_mut().push(finding.file(self.name));
    }

    /// Adds a finding about another file that this one names.
    pub(crate) fn add_foreign(&self, finding: Finding) {
        self.findings.borrow_mut().push(finding);
    }

    pub(crate) fn add_at(&self, offset: usize, finding: Finding) {
        self.add(finding.line(line_of(self.text, offset)));
    }
}

/// One table of the text.
pub(crate) struct TomlTable<'t> {
    source: &'t Source<'t>,
    /// Dotted name with a trailing dot; empty for the root.
    prefix: String,
    offset: usize,
    table: Option<&'t DeTable<'t>>,
    asked: RefCell<BTreeSet<&'static str>>,
}

impl<'t> TomlTable<'t> {
    fn root(source: &'t Source<'t>, table: &'t DeTable<'t>) -> TomlTable<'t> {
        TomlTable { source, prefix: String::new(), offset: 0, table: Some(table), asked: RefCell::default() }
    }

    fn entry(&self, key: &'static str) -> Option<&'t Spanned<DeValue<'t>>> {
        self.asked.borrow_mut().insert(key);
        self.table?.iter().find(|(name, _)| name.get_ref() == key).map(|(_, value)| value)
    }

    /// Whether the table stands in the text.
    pub(crate) fn is_given(&self) -> bool {
        self.table.is_some()
    }

    pub(crate) fn has(&self, key: &'static str) -> bool {
        self.entry(key).is_some()
    }

    fn field(&self, key: &str) -> String {
        format!("{}{key}", self.prefix)
    }

    /// Reports a problem of a field, at its value or, where it is absent, at its table.
    pub(crate) fn problem(
        &self,
        code: Code,
        key: &'static str,
        message: impl Into<String>,
        hint: impl Into<String>,
    ) {
        self.point(Finding::error(code, message).hint(hint), key);
    }

    /// Points at a field that somebody should look at.
    pub(crate) fn warn(
        &self,
        code: Code,
        key: &'static str,
        message: impl Into<String>,
        hint: impl Into<String>,
    ) {
        self.point(Finding::warning(code, message).hint(hint), key);
    }

    /// Notes something about a field that is no mistake.
    pub(crate) fn note(
        &self,
        code: Code,
        key: &'static str,
        message: impl Into<String>,
        hint: impl Into<String>,
    ) {
        self.point(Finding::note(code, message).hint(hint), key);
    }

    fn point(&self, finding: Finding, key: &'static str) {
        let offset = self.entry(key).map_or(self.offset, |value| value.span().start);
        self.source.add_at(offset, finding.field(self.field(key)));
    }

    fn wrong_type(&self, key: &'static str, wanted: &str, found: &DeValue<'_>) {
        self.problem(
            Code::WRONG_TYPE,
            key,
            format!("{wanted} is wanted here, not {}", kind_of(found)),
            format!("write {wanted}"),
        );
    }

    pub(crate) fn missing(&self, key: &'static str, hint: &str) {
        self.problem(Code::MISSING_FIELD, key, "is missing", hint);
    }

    pub(crate) fn text(&self, key: &'static str) -> Option<String> {
        let value = self.entry(key)?;
        match value.get_ref() {
            DeValue::String(text) => {
                let text = text.trim();
                if text.is_empty() {
                    self.problem(Code::EMPTY, key, "is empty", "write a text, or take the line out");
                    None
                } else if text.chars().count() > LONGEST_TEXT {
                    self.problem(
                        Code::TOO_LONG,
                        key,
                        "is very long",
                        format!("write at most {LONGEST_TEXT} letters"),
                    );
                    None
                } else if let Some(bad) = text.chars().find(|c| c.is_control() || is_private_use(*c)) {
                    self.problem(
                        Code::UNPRINTABLE,
                        key,
                        format!("has a character that cannot be printed ({})", bad.escape_unicode()),
                        "retype the text",
                    );
                    None
                } else {
                    Some(text.to_owned())
                }
            }
            other => {
                self.wrong_type(key, "a text in quotes", other);
                None
            }
        }
    }

    /// A sign between digits: at most one character, which may be a space, or nothing.
    pub(crate) fn mark(&self, key: &'static str) -> Option<String> {
        let value = self.entry(key)?;
        match value.get_ref() {
            DeValue::String(mark)
                if mark.chars().count() <= 1
                    && !mark.chars().any(|c| c.is_control() || is_private_use(c)) =>
            {
                Some(mark.clone().into_owned())
            }
            other => {
                self.wrong_type(key, "one character in quotes", other);
                None
            }
        }
    }

    /// Whether the field is there and is a text.
    pub(crate) fn is_text(&self, key: &'static str) -> bool {
        self.entry(key).is_some_and(|value| matches!(value.get_ref(), DeValue::String(_)))
    }

    /// One of some words.
    pub(crate) fn choice<T: Copy>(&self, key: &'static str, choices: &[(&str, T)]) -> Option<T> {
        let text = self.text(key)?;
        let found = choices.iter().find(|(name, _)| *name == text).map(|(_, value)| *value);
        if found.is_none() {
            let names: Vec<_> = choices.iter().map(|(name, _)| format!("\"{name}\"")).collect();
            self.problem(
                Code::UNKNOWN_NAME,
                key,
                format!("\"{text}\" is not known"),
                format!("write one of {}", names.join(", ")),
            );
        }
        found
    }

    pub(crate) fn number(&self, key: &'static str, range: RangeInclusive<f64>) -> Option<f64> {
        self.number_or_unit(key, range, &[])
    }

    /// A number; where it lies outside the range, but within it by another unit, the hint asks for that. Each unit
    /// has how much of the field's own it is.
    pub(crate) fn number_or_unit(
        &self,
        key: &'static str,
        range: RangeInclusive<f64>,
        others: &[(&str, f64)],
    ) -> Option<f64> {
        let value = self.entry(key)?;
        self.number_of(key, value, &range, others)
    }

    /// A number, whatever it is.
    pub(crate) fn any_number(&self, key: &'static str) -> Option<f64> {
        let value = self.entry(key)?;
        self.written_number(key, value)
    }

    fn number_of(
        &self,
        key: &'static str,
        value: &'t Spanned<DeValue<'t>>,
        range: &RangeInclusive<f64>,
        others: &[(&str, f64)],
    ) -> Option<f64> {
        let number = self.written_number(key, value)?;
        if range.contains(&number) {
            return Some(number);
        }
        let mut hint = format!("write a number from {} to {}", range.start(), range.end());
        for (unit, of_own) in others {
            let meant = (number * of_own * 1e6).round() / 1e6;
            if range.contains(&meant) {
                hint.push_str(&format!("; was it measured in {unit}? then write {key} = {meant}"));
            }
        }
        self.problem(Code::OUT_OF_RANGE, key, format!("{number} is not possible"), hint);
        None
    }

    fn written_number(&self, key: &'static str, value: &'t Spanned<DeValue<'t>>) -> Option<f64> {
        let number = match value.get_ref() {
            DeValue::Integer(number) => {
                i64::from_str_radix(number.as_str(), number.radix()).ok().map(|n| n as f64)
            }
            DeValue::Float(number) => number.as_str().parse::<f64>().ok(),
            DeValue::String(text) if hint_for_comma(text.trim()).is_some() => {
                let hint = hint_for_comma(text.trim()).unwrap_or_default();
                self.problem(
                    Code::WRONG_TYPE,
                    key,
                    with_comma(text.trim()),
                    format!("{hint}, and take the quotes away"),
                );
                return None;
            }
            other => {
                self.wrong_type(key, "a number", other);
                return None;
            }
        };
        if number.is_none() {
            self.problem(
                Code::NOT_A_NUMBER,
                key,
                "is not a number that can be read",
                "write it in digits with a decimal point",
            );
        }
        number
    }

    pub(crate) fn whole(&self, key: &'static str, range: RangeInclusive<u32>) -> Option<u32> {
        let number = self.number(key, f64::from(*range.start())..=f64::from(*range.end()))?;
        if number.fract() != 0.0 {
            self.problem(
                Code::WRONG_TYPE,
                key,
                format!("{number} is not a whole number"),
                "write a whole number",
            );
            return None;
        }
        Some(number as u32)
    }

    /// One number, or twelve of them from January to December.
    pub(crate) fn monthly(&self, key: &'static str, range: RangeInclusive<f64>) -> Option<[f64; 12]> {
        let value = self.entry(key)?;
        let DeValue::Array(values) = value.get_ref() else {
            return self.number_of(key, value, &range, &[]).map(|number| [number; 12]);
        };
        if values.len() != 12 {
            let mut hint = "write one number, or twelve from January to December".to_owned();
            if values.len() == 24 {
                hint.push_str("; if commas stand for decimal points, write points");
            }
            self.problem(Code::MISMATCH, key, format!("has {} values", values.len()), hint);
            return None;
        }
        let numbers: Vec<_> =
            values.iter().filter_map(|value| self.number_of(key, value, &range, &[])).collect();
        numbers.try_into().ok()
    }

    /// A list of texts.
    pub(crate) fn texts(&self, key: &'static str) -> Option<Vec<String>> {
        let value = self.entry(key)?;
        let DeValue::Array(values) = value.get_ref() else {
            self.wrong_type(key, "a list of texts in [ ]", value.get_ref());
            return None;
        };
        let mut texts = Vec::with_capacity(values.len());
        for value in values {
            match value.get_ref() {
                DeValue::String(text) => texts.push(text.clone().into_owned()),
                other => self.wrong_type(key, "a text in quotes", other),
            }
        }
        Some(texts)
    }

    /// A list of numbers.
    pub(crate) fn numbers(&self, key: &'static str, range: RangeInclusive<f64>) -> Option<Vec<f64>> {
        self.list_of(key, |value| self.number_of(key, value, &range, &[]))
    }

    /// A list of numbers, whatever they are.
    pub(crate) fn any_numbers(&self, key: &'static str) -> Option<Vec<f64>> {
        self.list_of(key, |value| self.written_number(key, value))
    }

    fn list_of(
        &self,
        key: &'static str,
        read: impl Fn(&'t Spanned<DeValue<'t>>) -> Option<f64>,
    ) -> Option<Vec<f64>> {
        let value = self.entry(key)?;
        let DeValue::Array(values) = value.get_ref() else {
            self.wrong_type(key, "a list of numbers in [ ]", value.get_ref());
            return None;
        };
        let numbers: Vec<_> = values.iter().filter_map(read).collect();
        (numbers.len() == values.len()).then_some(numbers)
    }

    pub(crate) fn date(&self, key: &'static str) -> Option<NaiveDate> {
        let value = self.entry(key)?;
        let written = match value.get_ref() {
            DeValue::String(text) => text.trim().to_owned(),
            DeValue::Datetime(date) => date.to_string(),
            other => {
                self.wrong_type(key, "a date such as 2027-04-30", other);
                return None;
            }
        };
        let date = NaiveDate::parse_from_str(&written, "%Y-%m-%d").ok().filter(|_| written.len() == 10);
        match date {
            Some(date) if (1900..=2200).contains(&chrono::Datelike::year(&date)) => Some(date),
            Some(date) => {
                self.problem(
                    Code::OUT_OF_RANGE,
                    key,
                    format!("{date} is far from any season"),
                    "check the year",
                );
                None
            }
            None => {
                self.problem(
                    Code::NOT_A_DATE,
                    key,
                    format!("{written} is not a date of the calendar"),
                    "write it as year-month-day, e.g. 2027-04-30",
                );
                None
            }
        }
    }

    /// A table within this one; where it is absent, every field of it is.
    pub(crate) fn table(&self, key: &'static str) -> TomlTable<'t> {
        let entry = self.entry(key);
        let table = entry.and_then(|value| match value.get_ref() {
            DeValue::Table(table) => Some(table),
            other => {
                self.wrong_type(key, &format!("a table [{key}]"), other);
                None
            }
        });
        TomlTable {
            source: self.source,
            prefix: format!("{}{key}.", self.prefix),
            offset: entry.map_or(self.offset, |value| value.span().start),
            table,
            asked: RefCell::default(),
        }
    }

    /// The tables of an array such as `[[container]]`.
    pub(crate) fn tables(&self, key: &'static str) -> Vec<TomlTable<'t>> {
        let Some(entry) = self.entry(key) else { return Vec::new() };
        let DeValue::Array(values) = entry.get_ref() else {
            self.wrong_type(key, &format!("a list of tables [[{key}]]"), entry.get_ref());
            return Vec::new();
        };
        let mut tables = Vec::new();
        for (index, value) in values.iter().enumerate() {
            match value.get_ref() {
                DeValue::Table(table) => tables.push(TomlTable {
                    source: self.source,
                    prefix: format!("{}{key}[{}].", self.prefix, index + 1),
                    offset: value.span().start,
                    table: Some(table),
                    asked: RefCell::default(),
                }),
                other => self.wrong_type(key, &format!("a list of tables [[{key}]]"), other),
            }
        }
        tables
    }

    /// Reports fields that nobody asked for.
    pub(crate) fn finish(self) {
        let asked = self.asked.borrow();
        for name in self.table.into_iter().flat_map(|table| table.keys()) {
            let key = name.get_ref().as_ref();
            if !asked.contains(key) {
                let hint = hint_for_unknown(key, &asked);
                let finding = Finding::error(Code::UNKNOWN_FIELD, "is not a known field")
                    .field(self.field(key))
                    .hint(hint);
                self.source.add_at(name.span().start, finding);
            }
        }
    }
}

/// The longest text that any field needs, in letters: a clip's words are the longest.
const LONGEST_TEXT: usize = 400;

/// The most fields that a hint still lists.
const MOST_LISTED: usize = 16;

fn hint_for_unknown(key: &str, known: &BTreeSet<&'static str>) -> String {
    let likeness = |name: &&str| (strsim::jaro_winkler(key, name) * 1000.0) as u32;
    let nearest = known.iter().copied().max_by_key(likeness).filter(|name| likeness(name) > 850);
    let listed = || known.iter().copied().collect::<Vec<_>>().join(", ");
    match nearest {
        Some(nearest) => format!("did you mean {nearest}?"),
        None if known.len() <= MOST_LISTED => format!("known here: {}", listed()),
        None => "docs/case-file.md tells the fields known here".to_owned(),
    }
}

fn kind_of(value: &DeValue<'_>) -> &'static str {
    match value {
        DeValue::String(_) => "a text",
        DeValue::Integer(_) | DeValue::Float(_) => "a number",
        DeValue::Boolean(_) => "true or false",
        DeValue::Datetime(_) => "a date",
        DeValue::Array(_) => "a list",
        DeValue::Table(_) => "a table",
    }
}

fn is_private_use(c: char) -> bool {
    matches!(c, '\u{E000}'..='\u{F8FF}' | '\u{F0000}'..='\u{10FFFF}')
}
