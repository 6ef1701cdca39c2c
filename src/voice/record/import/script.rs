//! The lines that were read.

use serde::Deserialize;

use super::super::super::spelling::key;
use crate::finding::{Code, Finding};
use crate::language::Intonation;

/// A line of a recording script.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Line {
    /// Its number in the script.
    pub number: u32,
    /// Where its words stand in the language pack.
    pub id: String,
    /// The words.
    pub words: String,
    /// How the voice ends.
    pub intonation: Intonation,
}

/// What a line of JSON must have; what else it has is for readers.
#[derive(Deserialize)]
struct Written {
    number: Option<u32>,
    id: String,
    words: String,
    intonation: String,
}

/// Reads a script of one JSON object a line. Lines without a number get their place.
///
/// # Errors
/// All lines that cannot be used.
pub fn read(path: &str, text: &str) -> Result<Vec<Line>, Vec<Finding>> {
    let (mut lines, mut wrong): (Vec<Line>, Vec<Finding>) = (Vec::new(), Vec::new());
    let hint = "each line is an object of JSON with id, words and intonation";
    for (at, text) in text.lines().enumerate().filter(|(_, text)| !text.trim().is_empty()) {
        let row = at as u32 + 1;
        let problem =
            |message: String| Finding::error(Code::NOT_A_SCRIPT, message).file(path).line(row).hint(hint);
        match parse(text, lines.len() as u32 + 1) {
            Ok(line) if lines.iter().any(|other| other.number == line.number) => {
                wrong.push(problem(format!("the number {} stands in two lines", line.number)));
            }
            Ok(line) => lines.push(line),
            Err(message) => wrong.push(problem(message)),
        }
    }
    if wrong.is_empty() && lines.is_empty() {
        wrong.push(Finding::error(Code::NOT_A_SCRIPT, "has no lines").file(path).hint(hint));
    }
    if wrong.is_empty() { Ok(lines) } else { Err(wrong) }
}

fn parse(text: &str, place: u32) -> Result<Line, String> {
    let written: Written =
        serde_json::from_str(text).map_err(|error| format!("is not a line of a script: {error}"))?;
    let intonation = match written.intonation.as_str() {
        "medial" => Intonation::Medial,
        "final" => Intonation::Final,
        other => return Err(format!("the intonation {other} is neither medial nor final")),
    };
    if key(&written.words).is_empty() {
        return Err("has no words".to_owned());
    }
    Ok(Line { number: written.number.unwrap_or(place), id: written.id, words: written.words, intonation })
}
