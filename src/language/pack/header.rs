//! What `pack.toml` says.

use crate::catalogue::catalogue;
use crate::finding::Code;
use crate::language::labels::Label;
use crate::language::numerals::WholeNumbers;
use crate::toml_reader::TomlTable;

catalogue! {
    /// How far a pack may be trusted, in one word as in `pack.toml`.
    pub enum Status: StatusEntry {
        /// The label that says it on a sheet.
        label: Label,
    }
    /// No fluent speaker has read it.
    Draft = "draft" { label: Label::StatusDraft };
    /// A fluent speaker has read it.
    Read = "read" { label: Label::StatusRead };
    /// It may go out.
    Approved = "approved" { label: Label::StatusApproved };
}

/// Which way the script runs.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Direction {
    /// From left to right.
    LeftToRight,
    /// From right to left.
    RightToLeft,
}

/// Nobody records more numbers than these one by one.
const MOST_WHOLE: u32 = 999;

/// What `pack.toml` says.
#[derive(Debug)]
pub(super) struct Header {
    pub(super) name: String,
    pub(super) direction: Direction,
    pub(super) status: Status,
    pub(super) voice: String,
    pub(super) group: String,
    pub(super) decimal: String,
    /// Digits that must stand before a group sign for numbers to have any.
    pub(super) least_before_group: usize,
    /// Letters that text messages may replace, each with the one in its place.
    pub(super) replace: Vec<(char, char)>,
    /// Numbers that are recorded whole, besides their words one by one.
    pub(super) whole: Vec<WholeNumbers>,
}

impl Header {
    pub(super) fn read(root: &TomlTable<'_>, tag: &str) -> Option<Header> {
        let text = |key, hint: &str| {
            let text = root.text(key);
            if text.is_none() && !root.has(key) {
                root.missing(key, hint);
            }
            text
        };
        if text("tag", "write the language tag: tag = \"sw\"").is_some_and(|written| written != tag) {
            root.problem(
                Code::MISMATCH,
                "tag",
                "differs from the folder's name",
                format!("write tag = \"{tag}\""),
            );
        }
        let name = text("name", "write the language's name in itself: name = \"Kiswahili\"");
        text("script", "write the script's code: script = \"Latn\"");
        root.choice("calendar", &[("gregorian", ()), ("ethiopic", ()), ("both", ())]);
        let direction =
            root.choice("direction", &[("ltr", Direction::LeftToRight), ("rtl", Direction::RightToLeft)]);
        let status = root.choice("status", &Status::ALL.map(|status| (status.name(), status)));
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
        let whole = read_whole(root.table("record"));
        Some(Header {
            name: name?,
            direction: direction.unwrap_or(Direction::LeftToRight),
            status: status?,
            voice,
            group: group?,
            decimal: decimal?,
            least_before_group,
            replace,
            whole,
        })
    }
}

/// Numbers such as "cardinal 1-99"; what names none is reported.
fn read_whole(record: TomlTable<'_>) -> Vec<WholeNumbers> {
    let mut whole = Vec::new();
    for text in record.texts("whole").unwrap_or_default() {
        let parsed = text.split_once(' ').and_then(|(form, numbers)| {
            let (first, last) = numbers.split_once('-')?;
            Some((form.to_owned(), first.parse::<u32>().ok()?, last.parse::<u32>().ok()?))
        });
        match parsed.filter(|(_, first, last)| first <= last && *last <= MOST_WHOLE) {
            Some((form, first, last)) => whole.push(WholeNumbers { form, numbers: first..=last }),
            None => {
                let hint = format!(
                    "write the form and its numbers, up to {MOST_WHOLE}: whole = [\"cardinal 1-99\", \"day 1-31\"]"
                );
                record.problem(Code::SYNTAX, "whole", format!("\"{text}\" names no numbers"), hint);
            }
        }
    }
    record.finish();
    whole
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
                sms.problem(Code::SYNTAX, "replace", format!("\"{text}\" is no pair of letters"), hint);
            }
        }
    }
    pairs
}
