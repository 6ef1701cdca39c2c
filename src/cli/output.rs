//! What is printed, and the table of what was made.

use std::collections::BTreeSet;
use std::io::{self, Write as _};
use std::path::PathBuf;

use crate::app::{Error, Length, Made};

/// Prints a text. Whoever closes the other end has seen enough; that is no failure.
pub(super) fn print(text: &str) -> Result<(), Error> {
    match io::stdout().lock().write_all(text.as_bytes()) {
        Err(error) if error.kind() != io::ErrorKind::BrokenPipe => {
            Err(Error::Write { path: PathBuf::from("standard output"), source: error })
        }
        _ => Ok(()),
    }
}

/// Rows with their columns under each other, a line each.
pub(super) fn columns<const N: usize>(rows: &[[String; N]]) -> String {
    let widths: [usize; N] = std::array::from_fn(|column| {
        let cells = rows.iter().filter_map(|row| row.get(column));
        cells.map(|cell| cell.chars().count()).max().unwrap_or(0)
    });
    let line = |row: &[String; N]| {
        let cells = row.iter().zip(widths).map(|(cell, width)| format!("{cell:<width$}"));
        cells.collect::<Vec<_>>().join("  ").trim_end().to_owned() + "\n"
    };
    rows.iter().map(line).collect()
}

/// Prints JSON.
pub(super) fn print_json(value: &serde_json::Value) -> Result<(), Error> {
    print(&format!("{value:#}\n"))
}

/// Prints files with what they are, who they are for and how long they are.
pub(super) fn table(made: &[Made]) -> Result<(), Error> {
    let row = |made: &Made| {
        let length = match made.length {
            Length::Unmeasured => String::new(),
            Length::Pages(1) => "1 page".to_owned(),
            Length::Pages(pages) => format!("{pages} pages"),
            Length::Seconds(seconds) => format!("{seconds:.1} s"),
        };
        [made.path.display().to_string(), made.what.clone(), made.audience.to_owned(), length]
    };
    let header = ["FILE", "WHAT IT IS", "FOR", "LENGTH"].map(str::to_owned);
    let rows: Vec<[String; 4]> = [header].into_iter().chain(made.iter().map(row)).collect();
    let mut text = columns(&rows);
    let remarks = made.iter().flat_map(|made| made.remarks.iter().map(String::as_str));
    let mut seen = BTreeSet::new();
    for remark in remarks.filter(|remark| seen.insert(*remark)) {
        text.push_str(&format!("! {remark}\n"));
    }
    print(&text)
}
