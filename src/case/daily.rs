//! Daily records as people keep them: a table with a date and what was measured.
//!
//! What a table says in its own way is read where it can mean one thing only,
//! and reported where it could mean two: nothing is guessed.

use std::ops::RangeInclusive;

use chrono::NaiveDate;
use csv::StringRecord;

use super::headings::{self, DateLayout, Headings};
use crate::finding::{Code, Finding};
use crate::toml_reader::hint_for_comma;

/// Rows that may stand above the one that names the columns.
const MOST_TITLE_ROWS: usize = 30;
/// Gaps that are listed one by one.
const MOST_GAPS: usize = 5;

/// Codes that stand for "not measured".
const MISSING: [&str; 12] =
    ["", "-", "na", "n/a", "nan", "null", "m", "-99", "-99.9", "-999", "-9999", "-9999.0"];
/// Codes that stand for too little to be measured.
const TRACE: [&str; 3] = ["t", "tr", "trace"];

/// Something that is measured every day.
pub(super) struct Measure {
    /// How its column is headed.
    pub(super) headings: Headings,
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
/// A row names the columns: `date`, or `year`, `month` and `day`; and those of the
/// measures. Rows above it are a title. Cells are parted by commas, semicolons or tabs; with the latter two, decimals may have a comma.
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
    let header = match find_header(text, measures) {
        Ok(header) => header,
        Err(finding) => return fail(*finding),
    };
    let columns = header.columns;
    let mut table = DailyTable {
        name,
        measures,
        decimal_comma: header.delimiter != b',',
        findings: Vec::new(),
        rows: Vec::new(),
        traces: Vec::new(),
    };
    table.title(header.title, header.delimiter, &columns);
    let mut reader = csv_reader(header.table, header.delimiter, true);
    let above = header.title.lines().count() as u64;
    let line_of = |position: Option<&csv::Position>| {
        // Of empty lines before a row, the reader gives the first.
        let empty = |position: &csv::Position| {
            let start = usize::try_from(position.byte()).unwrap_or(usize::MAX);
            let bytes = header.table.as_bytes().get(start..).unwrap_or_default();
            let empty = bytes.iter().take_while(|byte| matches!(byte, b'\n' | b'\r'));
            empty.filter(|byte| **byte == b'\n').count() as u64
        };
        above + position.map_or(1, |position| position.line() + empty(position))
    };
    let width = reader.headers().map_or(usize::MAX, StringRecord::len);
    let mut record = StringRecord::new();
    loop {
        match reader.read_record(&mut record) {
            Ok(true) => {
                let line = line_of(record.position());
                match table.parted_number(&record, width, &columns) {
                    Some((number, hint)) => {
                        let message =
                            format!("{number} is parted by its comma, so that the row has a cell too many");
                        table.report(Code::BROKEN_ROW, line, table.field(), message, &hint);
                    }
                    None => table.row(line, &record, &columns),
                }
            }
            Ok(false) => break,
            Err(error) => {
                let line = line_of(error.position());
                table.report(Code::BROKEN_ROW, line, "date", error.to_string(), "correct the row");
            }
        }
    }
    table.finish(layout.or(columns.layout))
}

fn csv_reader(text: &str, delimiter: u8, headed: bool) -> csv::Reader<&[u8]> {
    csv::ReaderBuilder::new()
        .delimiter(delimiter)
        .flexible(true)
        .has_headers(headed)
        .from_reader(text.as_bytes())
}

/// A cell without the blanks around it.
fn cell(record: &StringRecord, column: usize) -> Option<&str> {
    record.get(column).map(str::trim)
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

/// The row that names the columns.
struct Header<'t, const N: usize> {
    /// What stands above it.
    title: &'t str,
    /// The table from it on.
    table: &'t str,
    delimiter: u8,
    columns: Columns<N>,
}

/// Finds the row that names the columns, or tells what the row lacks that comes nearest.
fn find_header<'t, const N: usize>(
    text: &'t str,
    measures: &[Measure; N],
) -> Result<Header<'t, N>, Box<Finding>> {
    let mut nearest: Option<(usize, Lack)> = None;
    let mut start = 0;
    for (above, line) in text.split_inclusive('\n').take(MOST_TITLE_ROWS + 1).enumerate() {
        let (title, table) = text.split_at(start);
        start += line.len();
        let delimiter = delimiter_of(table);
        let mut names = StringRecord::new();
        if !csv_reader(table, delimiter, false).read_record(&mut names).unwrap_or(false) {
            continue;
        }
        names.trim();
        match Columns::of(&names, measures) {
            Ok(columns) => return Ok(Header { title, table, delimiter, columns }),
            Err(lack) if nearest.as_ref().is_none_or(|(_, nearest)| nearest.named < lack.named) => {
                nearest = Some((above, lack));
            }
            Err(_) => {}
        }
    }
    let fields: Vec<_> = measures.iter().map(|measure| measure.field).collect();
    let fields = fields.join(",");
    let (above, message) = match nearest {
        Some((above, lack)) if lack.named > 0 => (above, lack.message),
        _ => {
            let what: Vec<_> = measures.iter().map(|measure| measure.noun).collect();
            (0, format!("no row names a date and {}", what.join(" and ")))
        }
    };
    let line = u32::try_from(above + 1).unwrap_or(u32::MAX);
    let hint = format!("write the header row: date,{fields} (or year,month,day,{fields})");
    Err(Box::new(Finding::error(Code::MISSING_COLUMN, message).line(line).hint(hint)))
}

/// Where the cells stand in a row.
struct Columns<const N: usize> {
    date: Dates,
    /// Day or month first, where the heading tells.
    layout: Option<DateLayout>,
    measures: [usize; N],
}

enum Dates {
    One(usize),
    Three(usize, usize, usize),
}

/// What a row lacks to be the header.
struct Lack {
    /// How much of it the row names.
    named: usize,
    message: String,
}

impl<const N: usize> Columns<N> {
    fn of(header: &StringRecord, measures: &[Measure; N]) -> Result<Columns<N>, Lack> {
        let one = || {
            let mut columns = header.iter().enumerate();
            columns.find_map(|(at, heading)| Some((Dates::One(at), headings::date(heading)?)))
        };
        let three = || {
            let find = |word| header.iter().position(|heading| headings::is(heading, word));
            Some((Dates::Three(find("year")?, find("month")?, find("day")?), None))
        };
        let date = one().or_else(three);
        let columns = |measure: &Measure| -> Vec<usize> {
            let named = header.iter().enumerate().filter(|(_, heading)| measure.headings.name(heading));
            named.map(|(at, _)| at).collect()
        };
        let found = measures.each_ref().map(columns);
        let named = usize::from(date.is_some()) + found.iter().filter(|found| !found.is_empty()).count();
        let quoted = |at: &usize| format!("“{}”", header.get(*at).unwrap_or_default());
        let lack = |message| Lack { named, message };
        for (measure, found) in measures.iter().zip(&found) {
            if found.len() > 1 {
                let columns: Vec<String> = found.iter().map(quoted).collect();
                let columns = columns.join(" and ");
                return Err(lack(format!(
                    "{columns} may each be {}: one of them only can be read",
                    measure.noun
                )));
            }
        }
        let lacking: Vec<&str> = std::iter::once("a date")
            .filter(|_| date.is_none())
            .chain(measures.iter().zip(&found).filter(|(_, found)| found.is_empty()).map(|(m, _)| m.noun))
            .collect();
        match date {
            Some((date, layout)) if lacking.is_empty() => {
                let measures = found.map(|found| found.first().copied().unwrap_or_default());
                Ok(Columns { date, layout, measures })
            }
            _ => {
                let columns: Vec<String> = (0..header.len()).map(|at| quoted(&at)).collect();
                let columns = columns.join(", ");
                Err(lack(format!("no column is headed as {}: there are {columns}", lacking.join(" and "))))
            }
        }
    }
}

impl<const N: usize> Columns<N> {
    /// The date of a row; the inner `None` where it is none.
    fn date_in(&self, record: &StringRecord) -> Option<Option<Written>> {
        match self.date {
            Dates::One(column) => cell(record, column).map(Written::read),
            Dates::Three(year, month, day) => {
                let parts = cell(record, year).zip(cell(record, month)).zip(cell(record, day));
                parts.map(|((year, month), day)| Written::of(year, month, day))
            }
        }
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

    /// A row above the header is part of a title, unless it is a day.
    fn title(&mut self, title: &str, delimiter: u8, columns: &Columns<N>) {
        for (line, text) in (1..).zip(title.lines()) {
            let mut record = StringRecord::new();
            if !csv_reader(text, delimiter, false).read_record(&mut record).unwrap_or(false) {
                continue;
            }
            let measured = |at: &usize| cell(&record, *at).is_some_and(|cell| cell.parse::<f64>().is_ok());
            let dated = matches!(columns.date_in(&record), Some(Some(_)));
            if dated && columns.measures.iter().all(measured) {
                let hint = "let the row that names the columns come before the days";
                self.report(
                    Code::BROKEN_ROW,
                    line,
                    "date",
                    "a day stands above the row that names the columns",
                    hint,
                );
            }
        }
    }

    fn row(&mut self, line: u64, record: &StringRecord, columns: &Columns<N>) {
        let date = columns.date_in(record);
        let cells = columns.measures.map(|column| cell(record, column));
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
                    Dates::One(column) => cell(record, column).unwrap_or_default().to_owned(),
                    Dates::Three(year, month, day) => {
                        [year, month, day].map(|column| cell(record, column).unwrap_or_default()).join("-")
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
        let longer = record.iter().skip(header).filter(|cell| !cell.trim().is_empty()).count();
        if longer == 0 || self.decimal_comma {
            return None;
        }
        let mut parted = columns.measures.iter().filter_map(|column| {
            let number = format!("{},{}", cell(record, *column)?, cell(record, column + 1)?);
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
