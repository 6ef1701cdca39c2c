//! The list of cuts, which a person can mend in a spreadsheet and give back.

use std::collections::{BTreeMap, BTreeSet};

use super::script::Line;
use crate::finding::{Code, Finding};
use crate::language::Intonation;

/// Whether a cut becomes a clip.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum CutVerdict {
    /// It does.
    Sure,
    /// A person must say.
    Confirm,
    /// It does: a person says so.
    Keep,
    /// It does not.
    Skip,
}

impl CutVerdict {
    const ALL: [CutVerdict; 4] = [CutVerdict::Sure, CutVerdict::Confirm, CutVerdict::Keep, CutVerdict::Skip];

    /// As the list has it.
    pub fn name(self) -> &'static str {
        match self {
            CutVerdict::Sure => "sure",
            CutVerdict::Confirm => "confirm",
            CutVerdict::Keep => "keep",
            CutVerdict::Skip => "skip",
        }
    }
}

/// A row of the list.
#[derive(Debug, Clone, PartialEq)]
pub struct Cut {
    /// Recording, from and to in seconds; none for a line that was not heard.
    pub place: Option<(String, f64, f64)>,
    /// The number of its line; none for what belongs to no line.
    pub line: Option<u32>,
    /// The line's words.
    pub words: String,
    /// How the voice ends.
    pub intonation: Option<Intonation>,
    /// Whether it becomes a clip.
    pub verdict: CutVerdict,
    /// Why, in plain words; empty where nothing is to be said.
    pub remark: String,
}

impl Cut {
    pub(super) fn new(line: &Line, place: (String, f64, f64), verdict: CutVerdict, remark: String) -> Cut {
        Cut {
            place: Some(place),
            line: Some(line.number),
            words: line.words.clone(),
            intonation: Some(line.intonation),
            verdict,
            remark,
        }
    }

    pub(super) fn missing(line: &Line) -> Cut {
        let remark = "was not heard: write skip, or where it is and keep";
        Cut {
            place: None,
            ..Cut::new(line, (String::new(), 0.0, 0.0), CutVerdict::Confirm, remark.to_owned())
        }
    }

    pub(super) fn stray(place: (String, f64, f64), verdict: CutVerdict, remark: &str) -> Cut {
        let (words, remark) = (String::new(), remark.to_owned());
        Cut { place: Some(place), line: None, words, intonation: None, verdict, remark }
    }

    /// Whether it becomes a clip.
    pub fn is_taken(&self) -> bool {
        matches!(self.verdict, CutVerdict::Sure | CutVerdict::Keep)
    }
}

/// As long as a clip may be.
const LONGEST_CUT_S: f64 = 60.0;
const COLUMNS: [&str; 8] = ["recording", "from", "to", "line", "words", "intonation", "verdict", "remark"];

/// The list as CSV.
pub fn write(cuts: &[Cut]) -> String {
    let mut writer = csv::Writer::from_writer(Vec::new());
    // Writing into memory does not fail.
    let _ = writer.write_record(COLUMNS);
    for cut in cuts {
        let time = |seconds: f64| format!("{seconds:.3}");
        let (recording, from, to) = cut.place.as_ref().map_or_else(
            || (String::new(), String::new(), String::new()),
            |(recording, from, to)| (recording.clone(), time(*from), time(*to)),
        );
        let line = cut.line.map(|line| line.to_string()).unwrap_or_default();
        let intonation = cut.intonation.map(Intonation::name).unwrap_or_default();
        let row = [&recording, &from, &to, &line, &cut.words, intonation, cut.verdict.name(), &cut.remark];
        let _ = writer.write_record(row);
    }
    writer.into_inner().map(|bytes| String::from_utf8_lossy(&bytes).into_owned()).unwrap_or_default()
}

/// Reads a list back. `recordings` are the names there are, with their lengths in seconds.
///
/// # Errors
/// All its mistakes, each with its row: rows still to be confirmed among them.
pub fn read(
    path: &str,
    bytes: &[u8],
    script: &[Line],
    recordings: &BTreeMap<String, f64>,
) -> Result<Vec<Cut>, Vec<Finding>> {
    let bytes = bytes.strip_prefix(b"\xEF\xBB\xBF").unwrap_or(bytes);
    let separator = separator(bytes);
    let mut reader = csv::ReaderBuilder::new().delimiter(separator).flexible(true).from_reader(bytes);
    let whole = |message: String| {
        vec![Finding::error(Code::SYNTAX, message).file(path).hint("export it as CSV in UTF-8")]
    };
    let header = reader.headers().map_err(|error| whole(error.to_string()))?.clone();
    let mut places = BTreeMap::new();
    for column in COLUMNS {
        if let Some(place) = header.iter().position(|name| name.trim().eq_ignore_ascii_case(column)) {
            places.insert(column, place);
        }
    }
    let absent: Vec<Finding> = ["recording", "from", "to", "line", "verdict"]
        .into_iter()
        .filter(|column| !places.contains_key(column))
        .map(|column| {
            Finding::error(Code::MISSING_COLUMN, "the column is missing").file(path).line(1).field(column)
        })
        .collect();
    if !absent.is_empty() {
        return Err(absent);
    }
    let mut rows = Rows { path, script, recordings, row: 1, wrong: Vec::new() };
    let (mut cuts, mut taken) = (Vec::new(), BTreeSet::new());
    for record in reader.records() {
        rows.row += 1;
        let record = match record {
            Ok(record) => record,
            Err(error) => {
                rows.problem(Code::BROKEN_ROW, "row", error.to_string(), "export it as CSV in UTF-8");
                continue;
            }
        };
        rows.row = record.position().map_or(rows.row, |position| position.line() as u32);
        let cell =
            |column: &str| places.get(column).and_then(|place| record.get(*place)).unwrap_or("").trim();
        if let Some(cut) = rows.cut(&cell) {
            if cut.is_taken() && cut.line.is_some_and(|line| !taken.insert(line)) {
                rows.problem(Code::DUPLICATE, "line", "is taken twice", "write skip in one of the rows");
            }
            cuts.push(cut);
        }
    }
    if rows.wrong.is_empty() && taken.is_empty() {
        rows.problem(Code::EMPTY, "verdict", "no row is kept", "write keep in the rows to take");
    }
    if rows.wrong.is_empty() { Ok(cuts) } else { Err(rows.wrong) }
}

/// Spreadsheets of many countries write semicolons.
fn separator(bytes: &[u8]) -> u8 {
    let first = bytes.split(|byte| *byte == b'\n').next().unwrap_or_default();
    let count = |mark: u8| first.iter().filter(|byte| **byte == mark).count();
    [b',', b';', b'\t'].into_iter().max_by_key(|mark| (count(*mark), *mark == b',')).unwrap_or(b',')
}

struct Rows<'a> {
    path: &'a str,
    script: &'a [Line],
    recordings: &'a BTreeMap<String, f64>,
    row: u32,
    wrong: Vec<Finding>,
}

impl Rows<'_> {
    fn problem(&mut self, code: Code, field: &str, message: impl Into<String>, hint: &str) {
        self.wrong.push(Finding::error(code, message).file(self.path).line(self.row).field(field).hint(hint));
    }

    fn cut<'c>(&mut self, cell: &dyn Fn(&str) -> &'c str) -> Option<Cut> {
        let written = cell("verdict");
        let verdict =
            CutVerdict::ALL.into_iter().find(|verdict| written.eq_ignore_ascii_case(verdict.name()));
        let Some(verdict) = verdict else {
            self.problem(
                Code::UNKNOWN_NAME,
                "verdict",
                format!("\"{written}\" is not known"),
                "write sure, keep or skip",
            );
            return None;
        };
        if verdict == CutVerdict::Skip {
            let (words, remark) = (cell("words").to_owned(), cell("remark").to_owned());
            return Some(Cut { place: None, line: None, words, intonation: None, verdict, remark });
        }
        if verdict == CutVerdict::Confirm {
            let remark = cell("remark");
            let line = cell("line");
            let of = if line.is_empty() { String::new() } else { format!("line {line} ") };
            let message =
                format!("{of}is still to be confirmed{}{remark}", if remark.is_empty() { "" } else { ": " });
            self.problem(Code::CONFIRM_CUT, "verdict", message, "listen, then write keep or skip");
            return None;
        }
        let number = cell("line");
        let script = self.script;
        let line =
            number.parse().ok().and_then(|number: u32| script.iter().find(|line| line.number == number));
        if line.is_none() {
            self.problem(
                Code::UNKNOWN_NAME,
                "line",
                format!("\"{number}\" is no line of the script"),
                "write the number of its line",
            );
        }
        let place = self.place(cell);
        Some(Cut::new(line?, place?, verdict, cell("remark").to_owned()))
    }

    fn place<'c>(&mut self, cell: &dyn Fn(&str) -> &'c str) -> Option<(String, f64, f64)> {
        let recording = cell("recording");
        let length = self.recordings.get(recording).copied();
        if length.is_none() {
            let names: Vec<&str> = self.recordings.keys().map(String::as_str).collect();
            let hint = format!("recordings given: {}", names.join(", "));
            self.problem(
                Code::UNKNOWN_NAME,
                "recording",
                format!("\"{recording}\" is not one of the recordings"),
                &hint,
            );
        }
        let (from, to) = (self.time("from", cell("from")), self.time("to", cell("to")));
        let (from, to, length) = (from?, to?, length?);
        if from >= to {
            self.problem(
                Code::BROKEN_CUT,
                "to",
                format!("{to} s is not after {from} s"),
                "write times in seconds, from before to",
            );
        } else if to > length + 0.01 {
            self.problem(
                Code::BROKEN_CUT,
                "to",
                format!("{to} s lies beyond the end"),
                &format!("it is {length:.3} s long"),
            );
        } else if to - from > LONGEST_CUT_S {
            self.problem(
                Code::BROKEN_CUT,
                "to",
                format!("{:.0} s are more than a phrase", to - from),
                "cut it to the phrase",
            );
        } else {
            return Some((recording.to_owned(), from, to));
        }
        None
    }

    fn time(&mut self, field: &str, written: &str) -> Option<f64> {
        let time =
            written.replace(',', ".").parse().ok().filter(|time: &f64| time.is_finite() && *time >= 0.0);
        if time.is_none() {
            self.problem(
                Code::NOT_A_NUMBER,
                field,
                format!("\"{written}\" is not a time"),
                "write seconds, e.g. 12.345",
            );
        }
        time
    }
}
