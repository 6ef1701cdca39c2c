//! A language pack: its files read, checked and put to use.

mod header;
mod plan;
mod plan_texts;
mod say;
mod wanted;
mod write;

use unic_langid::LanguageIdentifier;

use super::limits::within_limits;
use super::names::with_names;
use super::numerals::{Language, Numerals};
use super::wording::{Messages, Problem};
use crate::data::Data;
use crate::finding::{Code, Finding};
use crate::toml_reader;
use header::Header;
use wanted::{missing, spoken_wanted, written_wanted};

pub use header::{Direction, Status};
pub use plan_texts::PlanLabel;
pub(super) use wanted::{of_plans, wanted};
pub use write::{Filled, Written};

/// Why something could not be worded. Nothing is ever put in its place.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("{language}: {id}: {problem}")]
#[non_exhaustive]
pub struct WordingError {
    /// The pack's language tag.
    pub language: String,
    /// The message.
    pub id: String,
    /// What is wrong with it.
    pub problem: String,
}

/// A language pack.
#[derive(Debug)]
pub struct Pack {
    tag: LanguageIdentifier,
    header: Header,
    written: Messages,
    spoken: Messages,
    numerals: Numerals,
}

impl Pack {
    /// The tags of all packs.
    pub fn tags(data: &dyn Data) -> Vec<String> {
        data.list("locales")
            .into_iter()
            .filter(|tag| data.read(&format!("locales/{tag}/pack.toml")).is_some())
            .collect()
    }

    /// Reads the pack of a language.
    ///
    /// ```
    /// use kabla::{data::Embedded, language::Pack};
    ///
    /// let pack = Pack::load(&Embedded, "sw")?;
    /// assert_eq!(pack.name(), "Kiswahili");
    /// # Ok::<(), Vec<kabla::finding::Finding>>(())
    /// ```
    ///
    /// # Errors
    /// All problems of its four files, each with file and line: what cannot
    /// be read and what is missing.
    pub fn load(data: &dyn Data, tag: &str) -> Result<Pack, Vec<Finding>> {
        let mut findings = Vec::new();
        let known = Pack::tags(data);
        let Some(language) =
            tag.parse::<LanguageIdentifier>().ok().filter(|_| known.iter().any(|known| known == tag))
        else {
            let finding = Finding::error(Code::UNKNOWN_PACK, format!("there is no language pack {tag}"))
                .field("language");
            return Err(vec![finding.hint(format!("packs at hand: {}", known.join(", ")))]);
        };
        let mut read = |file: &str| {
            let path = format!("locales/{tag}/{file}");
            let text = match data.read(&path).map(|bytes| String::from_utf8(bytes.into_owned())) {
                Some(Ok(text)) => within_limits(&path, text).unwrap_or_else(|finding| {
                    findings.push(finding);
                    String::new()
                }),
                Some(Err(_)) => {
                    findings.push(
                        Finding::error(Code::NOT_UTF8, "is not UTF-8 text")
                            .file(&path)
                            .hint("save it in UTF-8"),
                    );
                    String::new()
                }
                None => {
                    findings.push(
                        Finding::error(Code::CANNOT_READ, "is missing")
                            .file(&path)
                            .hint("a pack has pack.toml, written.ftl, spoken.ftl and numbers.rbnf"),
                    );
                    String::new()
                }
            };
            (path, text)
        };
        let (pack_file, pack_text) = read("pack.toml");
        let (written_file, written_text) = read("written.ftl");
        let (spoken_file, spoken_text) = read("spoken.ftl");
        let (numbers_file, numbers_text) = read("numbers.rbnf");
        let (header, problems) = toml_reader::read(&pack_file, &pack_text, |_, root| Header::read(root, tag));
        findings.extend(problems);
        let (has_written, has_spoken) = (!written_text.is_empty(), !spoken_text.is_empty());
        let (written, problems) =
            Messages::read(&language, &written_file, &with_names(tag, "written.ftl", written_text));
        findings.extend(problems);
        let (spoken, problems) =
            Messages::read(&language, &spoken_file, &with_names(tag, "spoken.ftl", spoken_text));
        findings.extend(problems);
        let decimal_comma = header.as_ref().is_some_and(|header| header.decimal == ",");
        let numerals =
            Numerals::parse_in(&numbers_text, Language { tag, decimal_comma }).map_err(|problems| {
                findings.extend(problems.into_iter().map(|problem| {
                    Finding::error(Code::BROKEN_MESSAGE, problem.message)
                        .file(&numbers_file)
                        .line(problem.line)
                        .hint(problem.hint)
                }));
            });
        // Of a file that could not be read, that is all there is to say.
        if has_written {
            findings.extend(missing(&written, &written_file, written_wanted()));
        }
        if has_spoken {
            findings.extend(missing(&spoken, &spoken_file, spoken_wanted()));
        }
        match (header, numerals) {
            (Some(header), Ok(numerals)) if findings.is_empty() => {
                Ok(Pack { tag: language, header, written, spoken, numerals })
            }
            _ => Err(findings),
        }
    }

    /// The language tag.
    pub fn tag(&self) -> String {
        self.tag.to_string()
    }

    /// The language's name in itself.
    pub fn name(&self) -> &str {
        &self.header.name
    }

    /// Which way the script runs.
    pub fn direction(&self) -> Direction {
        self.header.direction
    }

    /// How far the pack may be trusted.
    pub fn status(&self) -> Status {
        self.header.status
    }

    /// The voice that speaks the language when none is named.
    pub fn voice(&self) -> &str {
        &self.header.voice
    }

    /// The number rules.
    pub fn numerals(&self) -> &Numerals {
        &self.numerals
    }

    fn error(&self, id: &str, problem: &Problem) -> WordingError {
        WordingError { language: self.tag(), id: id.to_owned(), problem: problem.to_string() }
    }
}
