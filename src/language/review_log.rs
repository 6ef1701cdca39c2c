//! What a pack remembers of each of its texts: the source it was made from, and who has reviewed it.
//!
//! The file `review.toml` in the pack's folder is kept by the program. A text that was changed after its
//! review has none; a text whose source has changed since is to be translated anew.

use std::collections::BTreeMap;

use chrono::NaiveDate;
use uuid::Uuid;

use super::texts::{SOURCE, TEXT_FILES, text_of};
use super::wording::{Unit, units};
use crate::data::Data;
use crate::finding::{Code, Finding};
use crate::toml_reader;

/// The file in the pack's folder.
pub const FILE: &str = "review.toml";

/// A text of a pack.
struct Text {
    file: &'static str,
    unit: Unit,
    /// What it is made from, where there is such a text.
    source: Option<Unit>,
    untranslated: bool,
}

fn texts(data: &dyn Data, tag: &str) -> Vec<Text> {
    let mut texts = Vec::new();
    for file in TEXT_FILES {
        let sources = units(&text_of(data, SOURCE, file).unwrap_or_default());
        for unit in units(&text_of(data, tag, file).unwrap_or_default()) {
            let source = sources.iter().find(|source| source.id == unit.id).cloned();
            let untranslated =
                tag != SOURCE && source.as_ref().is_some_and(|source| unit.is_untranslated(source));
            texts.push(Text { file, unit, source, untranslated });
        }
    }
    texts
}

/// A short fingerprint of a text, by which it is known again.
pub(super) fn fingerprint(text: &str) -> String {
    Uuid::new_v5(&Uuid::NAMESPACE_OID, text.as_bytes()).simple().to_string().chars().take(12).collect()
}

/// What is remembered of one text.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct ReviewEntry {
    file: String,
    id: String,
    /// Fingerprint of the source it was made from.
    pub(super) source: String,
    /// Fingerprint of the text itself.
    pub(super) text: String,
    /// The role of who has reviewed it.
    pub(super) by: Option<String>,
    on: Option<NaiveDate>,
}

/// All that a pack remembers.
#[derive(Debug, Clone, Default)]
pub struct ReviewLog {
    entries: Vec<ReviewEntry>,
    /// What is wrong with the file.
    pub findings: Vec<Finding>,
}

impl ReviewLog {
    /// Reads a pack's log; none where there is no file.
    pub fn load(data: &dyn Data, tag: &str) -> ReviewLog {
        let path = format!("locales/{tag}/{FILE}");
        let Some(bytes) = data.read(&path) else { return ReviewLog::default() };
        let text = String::from_utf8_lossy(&bytes).into_owned();
        let (entries, findings) = toml_reader::read(&path, &text, |_, root| {
            let entries = root.tables("text").into_iter().filter_map(|table| {
                let fields = (table.text("file"), table.text("id"), table.text("source"), table.text("text"));
                let (by, on) = (table.text("by"), table.date("on"));
                table.finish();
                let (Some(file), Some(id), Some(source), Some(text)) = fields else { return None };
                Some(ReviewEntry { file, id, source, text, by, on })
            });
            Some(entries.collect::<Vec<_>>())
        });
        ReviewLog { entries: entries.unwrap_or_default(), findings }
    }

    pub(super) fn entry(&self, file: &str, id: &str) -> Option<&ReviewEntry> {
        self.entries.iter().find(|entry| entry.file == file && entry.id == id)
    }

    pub(super) fn is_reviewed(&self, file: &str, id: &str, text: &str) -> bool {
        self.entry(file, id).is_some_and(|entry| entry.by.is_some() && entry.text == fingerprint(text))
    }

    /// Who has reviewed, each with the last date.
    pub fn reviews(&self) -> BTreeMap<String, String> {
        let mut reviews: BTreeMap<String, String> = BTreeMap::new();
        for entry in &self.entries {
            if let (Some(by), Some(on)) = (&entry.by, entry.on) {
                let last = reviews.entry(by.clone()).or_default();
                *last = last.clone().max(on.to_string());
            }
        }
        reviews
    }

    /// Remembers the source that each text is now made from. Texts that are as before keep what is remembered of them.
    pub fn keep(&mut self, data: &dyn Data, tag: &str) {
        self.update(data, tag, &[], None);
    }

    /// Notes a review of the texts named, or of all that are translated. Returns how many.
    ///
    /// # Errors
    /// Names that are no texts of the pack, or of texts that are not translated.
    pub fn review(
        &mut self,
        data: &dyn Data,
        tag: &str,
        ids: &[String],
        (role, on): (&str, NaiveDate),
    ) -> Result<usize, Vec<Finding>> {
        // A name may stand in both files: translated in one is enough.
        let mut translated: BTreeMap<String, bool> = BTreeMap::new();
        for Text { unit, untranslated, .. } in texts(data, tag) {
            *translated.entry(unit.id).or_default() |= !untranslated;
        }
        let wrong = |id: &String| match translated.get(id) {
            None => {
                let finding = Finding::error(Code::UNKNOWN_NAME, format!("{id} is not a text of {tag}"));
                Some(finding.hint("names are such as mark-plants or mark-plants.text"))
            }
            Some(false) => {
                let finding = Finding::error(Code::UNTRANSLATED, format!("{id} is still the English text"));
                Some(finding.hint("translate it, or put the comment \"# same\" above it"))
            }
            Some(true) => None,
        };
        let findings: Vec<Finding> = ids.iter().filter_map(wrong).collect();
        if !findings.is_empty() {
            return Err(findings);
        }
        Ok(self.update(data, tag, ids, Some((role, on))))
    }

    fn update(
        &mut self,
        data: &dyn Data,
        tag: &str,
        ids: &[String],
        review: Option<(&str, NaiveDate)>,
    ) -> usize {
        let mut entries = Vec::new();
        let mut reviewed = 0;
        for Text { file, unit, source, untranslated } in texts(data, tag) {
            let Some(source) = source else { continue };
            let now = fingerprint(&unit.text);
            let before = self.entry(file, &unit.id).cloned();
            if untranslated && before.is_none() {
                continue;
            }
            let named = ids.is_empty() || ids.contains(&unit.id);
            let asked = review.filter(|_| named && !untranslated);
            let same_text = before.as_ref().is_some_and(|before| before.text == now);
            reviewed += usize::from(asked.is_some());
            entries.push(match (before, asked) {
                (Some(before), None) if same_text && review.is_some() => before,
                (before, asked) => ReviewEntry {
                    file: file.to_owned(),
                    id: unit.id,
                    source: fingerprint(&source.text),
                    text: now,
                    by: asked
                        .map(|(role, _)| role.to_owned())
                        .or(before.as_ref().filter(|_| same_text).and_then(|before| before.by.clone())),
                    on: asked.map(|(_, on)| on).or(before.filter(|_| same_text).and_then(|before| before.on)),
                },
            });
        }
        self.entries = entries;
        reviewed
    }

    /// The file's text.
    pub fn to_toml(&self) -> String {
        let mut text = "# Kept by kabla: what each text was made from, and who has reviewed it.\n".to_owned();
        for entry in &self.entries {
            text.push_str(&format!(
                "\n[[text]]\nfile = \"{}\"\nid = \"{}\"\nsource = \"{}\"\ntext = \"{}\"\n",
                entry.file, entry.id, entry.source, entry.text
            ));
            if let (Some(by), Some(on)) = (&entry.by, entry.on) {
                text.push_str(&format!("by = \"{by}\"\non = {on}\n"));
            }
        }
        text
    }
}
