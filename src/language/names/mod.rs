//! Names of months and weekdays from Unicode CLDR, as messages of a pack.
//!
//! What a file of texts does not name itself is put behind it as a message like any other. So names are written,
//! said, listed to record, checked and reviewed in the same way, wherever they come from.

use std::fmt::Write as _;

/// Lists of names made by `remake.py`: language, message, names parted by bars.
const CLDR: &str = include_str!("cldr.tsv");

/// The messages that CLDR can give, each with the value that chooses a name.
const MESSAGES: [(&str, &str); 4] = [
    ("month", "month"),
    ("month-short", "month"),
    ("weekday", "weekday"),
    ("ethiopic-month", "ethiopic_month"),
];

/// Whether a message is one of names that CLDR can give.
pub(super) fn is_name(id: &str) -> bool {
    MESSAGES.iter().any(|(of, _)| *of == id)
}

/// The names of a message in a language, in their order; of a country that has none of its own, those of the
/// language. `None` where CLDR has none in this language and script.
pub(super) fn cldr(tag: &str, id: &str) -> Option<Vec<&'static str>> {
    let mut tag = Some(tag).filter(|_| is_name(id))?;
    loop {
        if let Some(names) = listed(tag, id) {
            return Some(names.split('|').collect());
        }
        let (shorter, last) = tag.rsplit_once('-')?;
        // A script is never dropped: its names would be in other letters.
        if last.len() == 4 && last.chars().all(|c| c.is_ascii_alphabetic()) {
            return None;
        }
        tag = shorter;
    }
}

fn listed(tag: &str, id: &str) -> Option<&'static str> {
    let names =
        |line: &'static str| line.strip_prefix(tag)?.strip_prefix('\t')?.strip_prefix(id)?.strip_prefix('\t');
    CLDR.lines().find_map(names)
}

/// The message that CLDR has for a language, as it would stand in a file.
pub(super) fn message(tag: &str, id: &str) -> Option<String> {
    let (_, value) = MESSAGES.iter().find(|(of, _)| *of == id)?;
    let names = cldr(tag, id)?;
    let mut text = format!("{id} = {{ ${value} ->\n");
    for (number, name) in (1..).zip(&names) {
        let default = if number == names.len() { "   *" } else { "    " };
        let _ = writeln!(text, "{default}[{number}] {name}");
    }
    text.push_str(" }\n");
    Some(text)
}

/// The messages that CLDR has for a file of a language. Short names are for paper alone.
pub(super) fn messages(tag: &str, file: &str) -> Vec<(&'static str, String)> {
    let here = MESSAGES.iter().map(|(id, _)| *id).filter(|id| *id != "month-short" || file == "written.ftl");
    here.filter_map(|id| Some((id, message(tag, id)?))).collect()
}

/// A file's text and, behind it, the names of CLDR that it does not give itself.
pub(super) fn with_names(tag: &str, file: &str, mut text: String) -> String {
    for (id, message) in messages(tag, file) {
        let starts =
            |line: &str| line.strip_prefix(id).is_some_and(|rest| rest.trim_start().starts_with('='));
        if !text.lines().any(starts) {
            text.push('\n');
            text.push_str(&message);
        }
    }
    text
}
