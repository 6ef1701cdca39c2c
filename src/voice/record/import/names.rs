//! Files of one phrase each, whose names say which.

use super::HeardRecording;
use super::script::Line;
use crate::finding::{Code, Finding};

/// A session is longer than this, a phrase shorter.
const LONGEST_PHRASE_S: f64 = 60.0;

/// What a file's name says.
pub(super) enum Named {
    /// The line at this place of the script.
    Line(usize),
    /// Several lines.
    Several(Vec<u32>),
    Nothing,
}

impl Named {
    pub(super) fn line(&self) -> Option<usize> {
        if let Named::Line(line) = self { Some(*line) } else { None }
    }

    pub(super) fn finding(&self, name: &str) -> Option<Finding> {
        let hint = "name it by the number of its line, e.g. 012.wav";
        let message = match self {
            Named::Line(_) => return None,
            Named::Nothing => "its name says no line of the script".to_owned(),
            Named::Several(lines) => {
                let lines: Vec<String> = lines.iter().map(u32::to_string).collect();
                format!("its name goes with the lines {}", lines.join(", "))
            }
        };
        Some(Finding::error(Code::UNCLEAR_FILE_NAME, message).file(name).hint(hint))
    }
}

/// Whether these are files of one phrase each: all are short, and most are named by a line.
pub fn are_phrases(script: &[Line], recordings: &[HeardRecording]) -> bool {
    let named =
        recordings.iter().filter(|recording| !matches!(find(&recording.name, script), Named::Nothing));
    recordings.iter().all(|recording| recording.seconds <= LONGEST_PHRASE_S)
        && 2 * named.count() > recordings.len()
}

/// By the words or the id, else by the number at its beginning.
pub(super) fn find(name: &str, script: &[Line]) -> Named {
    let stem = name.rsplit_once('.').map_or(name, |(stem, _)| stem);
    let own = plain(stem);
    let by = |text: fn(&Line) -> &str| -> Vec<usize> {
        let lines = script.iter().enumerate().filter(|(_, line)| plain(text(line)) == own);
        lines.map(|(at, _)| at).collect()
    };
    let digits: String = stem.chars().take_while(char::is_ascii_digit).collect();
    let numbered = || {
        let number: u32 = digits.parse().ok()?;
        script.iter().position(|line| line.number == number)
    };
    for found in [by(|line| &line.words), by(|line| &line.id), numbered().into_iter().collect()] {
        match found.as_slice() {
            [] => {}
            [line] => return Named::Line(*line),
            several => {
                let numbers = several.iter().filter_map(|line| script.get(*line)).map(|line| line.number);
                return Named::Several(numbers.collect());
            }
        }
    }
    Named::Nothing
}

/// Letters and digits alone, since a file's name cannot have all signs.
fn plain(text: &str) -> String {
    text.chars().flat_map(char::to_lowercase).filter(|c| c.is_alphanumeric()).collect()
}
