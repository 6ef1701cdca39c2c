//! `kabla demo`, and the table of what was made.

use std::path::Path;

use super::progress::Bar;
use crate::app::{self, Data, Error, Length, Made};

pub(super) fn run(data: &dyn Data, out: &Path) -> Result<(), Error> {
    let mut bar = Bar::new();
    let made = app::demo(data, out, &mut bar.callback())?;
    drop(bar);
    table(&made)
}

/// Prints files with what they are, who they are for and how long they are.
pub(super) fn table(made: &[Made]) -> Result<(), Error> {
    let mut text = String::new();
    let rows: Vec<[String; 4]> = made
        .iter()
        .map(|made| {
            let length = match made.length {
                Length::Unmeasured => String::new(),
                Length::Pages(1) => "1 page".to_owned(),
                Length::Pages(pages) => format!("{pages} pages"),
                Length::Seconds(seconds) => format!("{seconds:.1} s"),
            };
            [made.path.display().to_string(), made.what.clone(), made.audience.to_owned(), length]
        })
        .collect();
    let header = ["FILE", "WHAT IT IS", "FOR", "LENGTH"].map(str::to_owned);
    let width = |column: usize| {
        let cells = rows.iter().chain([&header]).filter_map(|row| row.get(column));
        cells.map(|cell| cell.chars().count()).max().unwrap_or(0)
    };
    let widths = [width(0), width(1), width(2)];
    for [file, what, audience, length] in [&header].into_iter().chain(&rows) {
        let line =
            format!("{file:<0$}  {what:<1$}  {audience:<2$}  {length}", widths[0], widths[1], widths[2]);
        text.push_str(line.trim_end());
        text.push('\n');
    }
    let remarks = made.iter().flat_map(|made| made.remarks.iter().map(String::as_str));
    let mut seen = std::collections::BTreeSet::new();
    for remark in remarks.filter(|remark| seen.insert(*remark)) {
        text.push_str(&format!("! {remark}\n"));
    }
    super::print(&text)
}
