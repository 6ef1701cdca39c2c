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
    let mut text = super::columns(&rows);
    let remarks = made.iter().flat_map(|made| made.remarks.iter().map(String::as_str));
    let mut seen = std::collections::BTreeSet::new();
    for remark in remarks.filter(|remark| seen.insert(*remark)) {
        text.push_str(&format!("! {remark}\n"));
    }
    super::print(&text)
}
