//! New clips in a bank's `bank.toml`, with all that a person wrote there kept.

use toml_edit::{ArrayOfTables, DocumentMut, Item, Table, value};

use super::super::super::spelling::key;
use crate::finding::{Code, Finding};
use crate::language::Intonation;

/// What the speaker agreed to, and how the recordings were made. What is not given stays as it is.
#[derive(Debug, Clone, Default)]
pub struct Consent {
    /// A code that stands for the speaker, not a name.
    pub speaker: Option<String>,
    /// What one may do with the recordings.
    pub rights: Option<String>,
    /// How and when the speaker agreed.
    pub consent: Option<String>,
    /// How the recordings were made.
    pub made_by: Option<String>,
}

/// A clip to enter.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct NewClip {
    /// Its file in the bank's folder.
    pub file: String,
    /// The words it says.
    pub words: String,
    /// How the voice ends.
    pub intonation: Intonation,
    /// Where the words stand in the language pack.
    pub id: String,
}

const CODE: &str = "a code such as S01: letters, digits and - without spaces, and not the speaker's name";

/// `bank.toml` with the clips in it; `before` is what it was, if there is one.
///
/// # Errors
/// All that is missing for a first import, or stands in the way of a later one.
pub fn update_bank(
    (language, voice): (&str, &str),
    before: Option<&str>,
    consent: &Consent,
    clips: &[NewClip],
    room_tone: Option<&str>,
) -> Result<String, Vec<Finding>> {
    let path = format!("audio/{language}/{voice}/bank.toml");
    let broken = |error: toml_edit::TomlError| {
        vec![
            Finding::error(Code::SYNTAX, error.message().to_owned())
                .file(&path)
                .hint("correct it, then import again"),
        ]
    };
    let mut bank: DocumentMut = before.unwrap_or_default().parse().map_err(broken)?;
    let mut wrong = fill_header(&mut bank, (language, voice), consent);
    if bank.get("status").and_then(Item::as_str) == Some("stand-in") {
        wrong.push(
            Finding::error(Code::STAND_IN_VOICE, "the voice is a stand-in made by a machine")
                .hint("import a person's recordings under another name"),
        );
    }
    if !wrong.is_empty() {
        return Err(wrong.into_iter().map(|finding| finding.file(&path)).collect());
    }
    if let Some(room_tone) = room_tone {
        bank.insert("room_tone", value(room_tone));
    }
    let entries = bank.entry("clip").or_insert(Item::ArrayOfTables(ArrayOfTables::new()));
    let Some(entries) = entries.as_array_of_tables_mut() else {
        return Err(vec![
            Finding::error(Code::WRONG_TYPE, "is not a list of tables [[clip]]").file(&path).field("clip"),
        ]);
    };
    clips.iter().for_each(|clip| enter(entries, clip));
    Ok(bank.to_string())
}

fn fill_header(bank: &mut DocumentMut, names: (&str, &str), consent: &Consent) -> Vec<Finding> {
    let mut wrong = Vec::new();
    for (field, name) in [("language", names.0), ("voice", names.1), ("status", "draft")] {
        if !bank.contains_key(field) {
            bank.insert(field, value(name));
        }
    }
    let asked = [
        ("speaker", &consent.speaker, CODE),
        ("rights", &consent.rights, "what one may do with the recordings"),
        ("consent", &consent.consent, "how and when the speaker agreed"),
        ("made_by", &consent.made_by, "how and where the recordings were made"),
    ];
    for (field, given, what) in asked {
        let given = given.as_deref().map(str::trim).filter(|text| !text.is_empty());
        match given {
            Some(text) if text.chars().any(char::is_control) || text.chars().count() > 400 => {
                let hint = "write one line of at most 400 letters";
                wrong.push(Finding::error(Code::TOO_LONG, "cannot be kept").argument(field).hint(hint));
            }
            Some(text) if field == "speaker" && !is_code(text) => {
                wrong.push(
                    Finding::error(Code::BAD_NAME, format!("\"{text}\" is not a code"))
                        .argument(field)
                        .hint(CODE),
                );
            }
            Some(text) if bank.get(field).and_then(Item::as_str) == Some(text) => {}
            Some(text) => {
                bank.insert(field, value(text));
            }
            None if !bank.contains_key(field) => {
                wrong.push(
                    Finding::error(Code::MISSING_FIELD, "is needed for a voice's first import")
                        .argument(field)
                        .hint(what),
                );
            }
            None => {}
        }
    }
    wrong
}

fn is_code(text: &str) -> bool {
    text.len() <= 24 && text.chars().all(|c| c.is_ascii_alphanumeric() || matches!(c, '-' | '_'))
}

/// In the place of the entry with the same words and intonation, or at the end.
fn enter(entries: &mut ArrayOfTables, clip: &NewClip) {
    let is_same = |table: &Table| {
        let text = |field: &str| table.get(field).and_then(Item::as_str);
        text("words").is_some_and(|words| key(words) == key(&clip.words))
            && text("intonation") == Some(clip.intonation.name())
    };
    let fields = [
        ("file", clip.file.as_str()),
        ("words", clip.words.as_str()),
        ("intonation", clip.intonation.name()),
        ("id", clip.id.as_str()),
    ];
    let set = |table: &mut Table| {
        for (field, text) in fields {
            match table.get_mut(field) {
                Some(item) if item.as_str() == Some(text) => {}
                Some(item) => *item = value(text),
                None => drop(table.insert(field, value(text))),
            }
        }
    };
    if let Some(table) = entries.iter_mut().find(|table| is_same(table)) {
        return set(table);
    }
    let mut table = Table::new();
    set(&mut table);
    entries.push(table);
}
