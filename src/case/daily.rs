//! Daily records as people keep them: a table with a date and what was measured.
//!
//! What a table says in its own way is read where it can mean one thing only,
//! and reported where it could mean two: nothing is guessed.

use std::ops::RangeInclusive;

use chrono::NaiveDate;
use csv::StringRecord;

use crate::finding::{Code, Finding};
use crate::toml_reader::hint_for_comma;

/// Gaps that are listed one by one.
const MOST_GAPS: usize = 5;

/// Codes that stand for "not measured".
const MISSING: [&str; 12] =
    ["", "-", "na", "n/a", "nan", "null", "m", "-99", "-99.9", "-999", "-9999", "-9999.0"];
/// Codes that stand for too little to be measured.
const TRACE: [&str; 3] = ["t", "tr", "trace"];

const DATE_COLUMNS: [&str; 2] = ["date", "day_date"];

/// How dates with the year last are read.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum DateLayout {
    /// 30/4/2019
    DayFirst,
    /// 4/30/2019
    MonthFirst,
}

/// Something that is measured every day.
pub(super) struct Measure {
    /// Names of its column.
    pub(super) columns: &'static [&'static str],
    /// Its name in findings.
    pub(super) field: &'static str,
    /// What it is in words, with its article.
    pub(super) noun: &'static str,
    /// How it is to be written.
    pub(super) hint: &'static str,
    /// What is possible.
    pub(super) possible: RangeInclusive<f64>,
    /// More than this is worth a look.
    pub(super) unusual: f64,
    /// Whether a trace of it counts as 0.
    pub(super) trace: bool,
}

/// A day with what was measured on it: `None` where it was not.
pub(super) type Day<const N: usize> = (NaiveDate, [Option<f64>; N]);

/// Reads a daily record.
///
/// The first row names the columns: `date`, or `year`, `month` and `day`; and those of the
/// measures. Cells are parted by commas, semicolons or tabs; with the latter two, decimals may have a comma.
/// Dates are year-month-day, or have the year last: then the rows themselves must
/// tell day from month, or `layout` does. Missing-value codes and days without a row leave the day unknown.
///
/// All problems come back, each with its row; notes say how much was missing. The days are in order.
pub(super) fn read<const N: usize>(
    name: &str,
    bytes: &[u8],
    layout: Option<DateLayout>,
    measures: &[Measure; N],
) -> (Vec<Day<N>>, Vec<Finding>) {
    let fail = |finding: Finding| (Vec::new(), vec![finding.file(name)]);
    let Ok(text) = std::str::from_utf8(bytes) else {
        return fail(
            Finding::error(Code::NOT_UTF8, "is not UTF-8 text").hint("save the table as CSV in UTF-8"),
        );
    };
    let text = text.trim_start_matches('\u{feff}');
    let delimiter = delimiter_of(text);
    let mut reader = csv::ReaderBuilder::new()
        .delimiter(delimiter)
        .flexible(true)
        .trim(csv::Trim::All)
        .from_reader(text.as_bytes());
    let header = reader.headers().cloned().unwrap_or_default();
    let Some(columns) = Columns::of(&header, measures) else {
        let fields: Vec<_> = measures.iter().map(|measure| measure.field).collect();
        let fields = fields.join(",");
        let what: Vec<_> = measures.iter().map(|measure| measure.noun).collect();
        let message = format!("the first row does not name a date and {}", what.join(" and "));
        let hint = format!("write the header row: date,{fields} (or year,month,day,{fields})");
        return fail(Finding::error(Code::MISSING_COLUMN, message).line(1).hint(hint));
    };
    let mut table = DailyTable {
        name,
        measures,
        decimal_comma: delimiter != b',',
        findings: Vec::new(),
        rows: Vec::new(),
        traces: Vec::new(),
    };
    let mut record = StringRecord::new();
    loop {
        match reader.read_record(&mut record) {
            Ok(true) => match table.parted_number(&record, header.len(), &columns) {
                Some((number, hint)) => {
                    let line = record.position().map_or(1, csv::Position::line);
                    let message =
                        format!("{number} is parted by its comma, so that the row has a cell too many");
                    table.report(Code::BROKEN_ROW, line, table.field(), message, &hint);
                }
                None => table.row(&record, &columns),
            },
            Ok(false) => break,
            Err(error) => {
                let line = error.position().map_or(1, csv::Position::line);
                table.report(Code::BROKEN_ROW, line, "date", error.to_string(), "correct the row");
            }
        }
    }
    table.finish(layout)
}

/// What parts the cells: the first of tab and semicolon that the header has, or a comma.
fn delimiter_of(text: &str) -> u8 {
    let header = text.lines().next().unwrap_or_default();
    if header.contains('\t') {
        b'\t'
    } else if header.contains(';') {
        b';'
    } else {
        b','
    }
}

/// Where the cells stand in a row.
struct Columns<const N: usize> {
    date: Dates,
    measures: [usize; N],
}

enum Dates {
    One(usize),
    Three(usize, usize, usize),
}

impl<const N: usize> Columns<N> {
    fn of(header: &StringRecord, measures: &[Measure; N]) -> Option<Columns<N>> {
        let names: Vec<String> = header.iter().map(str::to_lowercase).collect();
        let find = |wanted: &[&str]| names.iter().position(|name| wanted.contains(&name.as_str()));
        let date = find(&DATE_COLUMNS)
            .map(Dates::One)
            .or_else(|| Some(Dates::Three(find(&["year"])?, find(&["month"])?, find(&["day"])?)))?;
        let found = measures.each_ref().map(|measure| find(measure.columns));
        if found.iter().any(Option::is_none) {
            return None;
        }
        Some(Columns { date, measures: found.map(Option::unwrap_or_default) })
    }
}

/// A date as it stands in a row.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Written {
    Known(NaiveDate),
    /// Two numbers and a year: day and month in one order or the other.
    YearLast(u32, u32, i32),
}

impl Written {
    fn read(text: &str) -> Option<Written> {
        let mut parts = text.split(['-', '/', '.']);
        let (first, second, third) = (parts.next()?, parts.next()?, parts.next()?);
        parts.next().is_none().then_some(())?;
        Written::of(first, second, third)
    }

    fn of(first: &str, second: &str, third: &str) -> Option<Written> {
        let digits =
            |part: &str| part.bytes().all(|byte| byte.is_ascii_digit()).then(|| part.parse().ok()).flatten();
        let (a, b, c): (u32, u32, u32) = (digits(first)?, digits(second)?, digits(third)?);
        match (first.len(), third.len()) {
            (4, 1..=2) => day_of(i32::try_from(a).ok()?, b, c).map(Written::Known),
            (1..=2, 4) => {
                let written = Written::YearLast(a, b, i32::try_from(c).ok()?);
                let possible =
                    [DateLayout::DayFirst, DateLayout::MonthFirst].map(|layout| written.date(Some(layout)));
                possible.iter().any(Option::is_some).then_some(written)
            }
            _ => None,
        }
    }

    fn date(self, layout: Option<DateLayout>) -> Option<NaiveDate> {
        match (self, layout) {
            (Written::Known(date), _) => Some(date),
            (Written::YearLast(day, month, year), Some(DateLayout::DayFirst))
            | (Written::YearLast(month, day, year), Some(DateLayout::MonthFirst)) => day_of(year, month, day),
            (Written::YearLast(..), None) => None,
        }
    }
}

/// Years that a record may be of. Others are slips: one row of 8010 would make six thousand empty years.
const YEARS: RangeInclusive<i32> = 1800..=2200;

fn day_of(year: i32, month: u32, day: u32) -> Option<NaiveDate> {
    NaiveDate::from_ymd_opt(year, month, day).filter(|_| YEARS.contains(&year))
}

/// The rows read so far.
struct DailyTable<'n, const N: usize> {
    name: &'n str,
    measures: &'n [Measure; N],
    decimal_comma: bool,
    findings: Vec<Finding>,
    /// Line, date as written, and what was measured.
    rows: Vec<(u64, Written, [Option<f64>; N])>,
    /// Lines with a trace.
    traces: Vec<u64>,
}

/// A day with its line in the table.
type Found<const N: usize> = (NaiveDate, u64, [Option<f64>; N]);

impl<const N: usize> DailyTable<'_, N> {
    fn add(&mut self, line: u64, finding: Finding) {
        self.findings.push(finding.file(self.name).line(u32::try_from(line).unwrap_or(u32::MAX)));
    }

    fn report(&mut self, code: Code, line: u64, field: &str, message: impl Into<String>, hint: &str) {
        self.add(line, Finding::error(code, message).field(field).hint(hint));
    }

    fn field(&self) -> &'static str {
        self.measures.first().map_or("", |measure| measure.field)
    }

    fn row(&mut self, record: &StringRecord, columns: &Columns<N>) {
        let line = record.position().map_or(1, csv::Position::line);
        let cell = |column: usize| record.get(column);
        let date = match columns.date {
            Dates::One(column) => cell(column).map(Written::read),
            Dates::Three(year, month, day) => {
                let parts = cell(year).zip(cell(month)).zip(cell(day));
                parts.map(|((year, month), day)| Written::of(year, month, day))
            }
        };
        let cells = columns.measures.map(cell);
        let (Some(date), true) = (date, cells.iter().all(Option::is_some)) else {
            let hint = format!(
                "give every row a date and {}",
                self.measures.each_ref().map(|m| m.noun).join(" and ")
            );
            return self.report(Code::BROKEN_ROW, line, "date", "the row has too few cells", &hint);
        };
        let mut values = [None; N];
        let mut sound = true;
        for ((measure, text), value) in self.measures.iter().zip(cells).zip(&mut values) {
            match self.measured(line, measure, text.unwrap_or_default()) {
                Some(measured) => *value = measured,
                None => sound = false,
            }
        }
        match date {
            Some(date) if sound => self.rows.push((line, date, values)),
            Some(_) => {}
            None => {
                let text = match columns.date {
                    Dates::One(column) => cell(column).unwrap_or_default().to_owned(),
                    Dates::Three(year, month, day) => {
                        [year, month, day].map(|column| cell(column).unwrap_or_default()).join("-")
                    }
                };
                let message = format!("{text} is not a date of the calendar");
                self.report(Code::NOT_A_DATE, line, "date", message, "write dates as 2019-04-30");
            }
        }
    }

    /// A number that its decimal comma has parted, so that the row is longer than the header; and how to write it.
    fn parted_number(
        &self,
        record: &StringRecord,
        header: usize,
        columns: &Columns<N>,
    ) -> Option<(String, String)> {
        let longer = record.iter().skip(header).filter(|cell| !cell.is_empty()).count();
        if longer == 0 || self.decimal_comma {
            return None;
        }
        let mut parted = columns.measures.iter().filter_map(|column| {
            let number = format!("{},{}", record.get(*column)?, record.get(column + 1)?);
            let hint = hint_for_comma(&number)?;
            Some((number, hint))
        });
        let (number, hint) = parted.next()?;
        // Of more numbers nobody can tell which is parted.
        Some(match (N, longer) {
            (1, 1) => (number, hint),
            _ => ("a number".to_owned(), "write decimals with a point, such as 31.5".to_owned()),
        })
    }

    /// The value of a cell; the inner `None` where it was not measured.
    fn measured(&mut self, line: u64, measure: &Measure, text: &str) -> Option<Option<f64>> {
        let number = |text: &str| text.parse::<f64>().ok().filter(|value| measure.possible.contains(value));
        let found =
            number(text).or_else(|| self.decimal_comma.then(|| number(&text.replace(',', "."))).flatten());
        // Codes first: a measure may know −99 as a number.
        if found.is_none_or(|value| value < 0.0) {
            let plain = text.to_lowercase();
            if MISSING.contains(&plain.as_str()) {
                return Some(None);
            }
            if measure.trace && TRACE.contains(&plain.as_str()) {
                self.traces.push(line);
                return Some(Some(0.0));
            }
        }
        match found {
            Some(value) => {
                if value > measure.unusual {
                    let finding = Finding::warning(
                        Code::UNUSUAL,
                        format!("{value} {} in a day is very much", measure.field),
                    );
                    self.add(line, finding.field(measure.field).hint("check the decimal point"));
                }
                Some(Some(value))
            }
            None => {
                let message = format!("{text} is not {}", measure.noun);
                let comma = hint_for_comma(text).filter(|_| !self.decimal_comma);
                let hint = comma.unwrap_or_else(|| measure.hint.to_owned());
                self.report(Code::NOT_A_NUMBER, line, measure.field, message, &hint);
                None
            }
        }
    }

    fn finish(mut self, layout: Option<DateLayout>) -> (Vec<Day<N>>, Vec<Finding>) {
        let layout = layout.or_else(|| self.find_layout());
        let mut rows: Vec<Found<N>> = Vec::with_capacity(self.rows.len());
        for (line, written, values) in std::mem::take(&mut self.rows) {
            match written.date(layout) {
                Some(date) => rows.push((date, line, values)),
                None if layout.is_some() => self.report(
                    Code::DAY_OR_MONTH,
                    line,
                    "date",
                    "day and month stand the other way round here",
                    "write all dates in one way",
                ),
                None => {}
            }
        }
        rows.sort_by_key(|(date, line, _)| (*date, *line));
        let mut days: Vec<Found<N>> = Vec::with_capacity(rows.len());
        for row in rows {
            match days.last() {
                Some((date, first, before)) if *date == row.0 => {
                    let already = format!("{date} stands in row {first} already");
                    if *before == row.2 {
                        let message = format!("{already}, with the same amount");
                        let finding = Finding::warning(Code::DUPLICATE, message)
                            .field("date")
                            .hint("take one of the rows out");
                        self.add(row.1, finding);
                    } else {
                        let message = format!("{already}, with another amount");
                        self.report(Code::DUPLICATE, row.1, "date", message, "keep the row that is right");
                    }
                }
                _ => days.push(row),
            }
        }
        self.note_missing(&days);
        let measured = days.iter().any(|(_, _, values)| values.iter().all(Option::is_some));
        if !measured && !self.findings.iter().any(Finding::is_error) {
            let noun = self.measures.first().map_or("", |measure| measure.noun);
            self.report(
                Code::SHORT_RECORD,
                1,
                "date",
                format!("has no day with {noun}"),
                "give a row for each day",
            );
        }
        self.findings.sort_by_key(|finding| finding.place.line);
        (days.into_iter().map(|(date, _, values)| (date, values)).collect(), self.findings)
    }

    /// Day or month first, where the rows tell; a finding where they do not.
    fn find_layout(&mut self) -> Option<DateLayout> {
        let rows = self.rows.iter().filter(|(_, written, _)| matches!(written, Written::YearLast(..)));
        let only = |layout: DateLayout, other: DateLayout| {
            let rows = rows.clone().map(|(line, written, _)| (*line, *written));
            rows.into_iter()
                .find(|(_, written)| {
                    written.date(Some(layout)).is_some() && written.date(Some(other)).is_none()
                })
                .map(|(line, _)| line)
        };
        let day_first = only(DateLayout::DayFirst, DateLayout::MonthFirst);
        let month_first = only(DateLayout::MonthFirst, DateLayout::DayFirst);
        let first = rows.clone().map(|(line, ..)| *line).next()?;
        match (day_first, month_first) {
            (Some(_), None) => Some(DateLayout::DayFirst),
            (None, Some(_)) => Some(DateLayout::MonthFirst),
            (Some(day), Some(month)) => {
                let message = format!("the day comes first in row {day}, the month in row {month}");
                self.report(
                    Code::DAY_OR_MONTH,
                    day.min(month),
                    "date",
                    message,
                    "write all dates in one way, best as 2019-04-30",
                );
                None
            }
            (None, None) => {
                let message = "no row tells whether the day or the month comes first";
                self.report(
                    Code::DAY_OR_MONTH,
                    first,
                    "date",
                    message,
                    "write dates as 2019-04-30, or say which it is (dates: day-first or month-first)",
                );
                None
            }
        }
    }

    /// Notes the days that were not measured, traces, and days that have no row.
    fn note_missing(&mut self, days: &[Found<N>]) {
        let unmeasured = days.iter().filter(|(_, _, values)| values.iter().any(Option::is_none));
        let lines: Vec<u64> = unmeasured.map(|(_, line, _)| *line).collect();
        if let Some(first) = lines.iter().min() {
            let message = format!("{} days have no amount, the first of them in this row", lines.len());
            let hint = "they stay unknown; a dry day is written 0";
            let field = self.field();
            self.add(*first, Finding::note(Code::UNMEASURED, message).field(field).hint(hint));
        }
        if let Some(first) = self.traces.first().copied() {
            let message =
                format!("{} traces of rain count as 0 mm, the first of them in this row", self.traces.len());
            let field = self.field();
            self.add(first, Finding::note(Code::TRACES, message).field(field));
        }
        let gaps: Vec<(NaiveDate, &Found<N>, i64)> = days
            .iter()
            .zip(days.iter().skip(1))
            .map(|(before, day)| (before.0, day, (day.0 - before.0).num_days() - 1))
            .filter(|(_, _, missing)| *missing > 0)
            .collect();
        for (before, (date, line, _), missing) in gaps.iter().take(MOST_GAPS) {
            let message = format!("{missing} days have no row between {before} and {date}");
            self.add(*line, Finding::note(Code::GAP, message).field("date").hint("they stay unknown"));
        }
        if let Some(more) = gaps.len().checked_sub(MOST_GAPS).filter(|more| *more > 0) {
            self.add(1, Finding::note(Code::GAP, format!("{more} more gaps without rows")).field("date"));
        }
    }
}
