//! The words of the trade in a pack, one word for one thing, for those who translate and those who read it over.

use super::limits::within_limits;
use super::texts::SOURCE;
use crate::data::{Data, Embedded};
use crate::finding::{Code, Finding};
use crate::toml_reader;

/// A pack's file of them.
pub(super) const FILE: &str = "glossary.toml";

/// A word of the trade.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Term {
    /// The word in English.
    pub(super) english: String,
    /// The word in the pack's language.
    pub(super) term: String,
    /// What it is, in English.
    pub(super) meaning: String,
    /// Words that would mislead.
    pub(super) avoid: Vec<String>,
}

/// The terms of a pack, of the source language the program's own where `data` has none, and what is wrong with the
/// file. A pack without one has no terms.
pub(super) fn load(data: &dyn Data, tag: &str) -> (Vec<Term>, Vec<Finding>) {
    let path = format!("locales/{tag}/{FILE}");
    let own = data.read(&path).or_else(|| (tag == SOURCE).then(|| Embedded.read(&path)).flatten());
    let Some(bytes) = own else { return (Vec::new(), Vec::new()) };
    let Ok(text) = String::from_utf8(bytes.into_owned()) else {
        let finding = Finding::error(Code::NOT_UTF8, "is not UTF-8 text").file(&path);
        return (Vec::new(), vec![finding.hint("save it in UTF-8")]);
    };
    let text = match within_limits(&path, text) {
        Ok(text) => text,
        Err(finding) => return (Vec::new(), vec![finding]),
    };
    let (terms, findings) = toml_reader::read(&path, &text, |_, root| {
        let terms = root.tables("term").into_iter().filter_map(|table| {
            let text = |key| {
                let text = table.text(key);
                if text.is_none() && !table.has(key) {
                    table.missing(key, "each term has english, term, meaning and avoid");
                }
                text
            };
            let (english, term, meaning) = (text("english"), text("term"), text("meaning"));
            let avoid = table.texts("avoid").unwrap_or_default();
            table.finish();
            Some(Term { english: english?, term: term?, meaning: meaning?, avoid })
        });
        let terms: Vec<Term> = terms.collect();
        Some(terms)
    });
    (terms.unwrap_or_default(), findings)
}

/// The file of a new pack: the terms of the source language, to be named.
pub(super) fn new_file(source: &[Term]) -> String {
    let quoted = |text: &str| toml::Value::String(text.to_owned()).to_string();
    let terms = source.iter().map(|of| {
        let (english, meaning) = (quoted(&of.english), quoted(&of.meaning));
        format!("\n[[term]]\nenglish = {english}\nterm = {english} # write your word over it\nmeaning = {meaning}\navoid = []\n")
    });
    let head = "# The words of the trade: one word for one thing, the same everywhere. Words that would mislead go to avoid.\n";
    head.to_owned() + &terms.collect::<String>()
}

/// What somebody who translates a text must know of the words in it.
pub(super) fn help(source: &[Term], text: &str) -> String {
    let text = text.to_lowercase();
    let lines = source.iter().filter(|term| text.contains(&term.english.to_lowercase())).map(|term| {
        let avoid =
            if term.avoid.is_empty() { String::new() } else { format!(" (not {})", term.avoid.join(", ")) };
        format!("#     “{}”{avoid}: {}\n", term.english, term.meaning)
    });
    lines.collect()
}
