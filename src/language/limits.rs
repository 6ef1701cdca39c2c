//! How large a pack's files may be, so that no file keeps the program busy without end.

use crate::finding::{Code, Finding};

/// Bytes of one file. The packs of the program have a tenth of it.
const MOST_BYTES: usize = 1_000_000;
/// How deep braces, and parentheses within them, may stand in each other. Parsing goes down with them.
const DEEPEST_BRACES: usize = 50;

/// The text, or what keeps it from being read.
///
/// # Errors
/// A finding with `file` and, where it has one, its line.
pub(super) fn within_limits(file: &str, text: String) -> Result<String, Finding> {
    if text.len() > MOST_BYTES {
        let finding =
            Finding::error(Code::TOO_LARGE, format!("has {} bytes, more than {MOST_BYTES}", text.len()));
        return Err(finding
            .file(file)
            .hint("a pack's file is far smaller; take out what does not belong in it"));
    }
    match file.ends_with(".ftl").then(|| too_deep(&text)).flatten() {
        Some(line) => {
            let finding = Finding::error(
                Code::TOO_LARGE,
                format!("braces stand deeper than {DEEPEST_BRACES} in each other"),
            );
            Err(finding.file(file).line(line).hint("take some of them out"))
        }
        None => Ok(text),
    }
}

/// The first line on which braces stand too deep. They are counted anew in each message.
fn too_deep(text: &str) -> Option<u32> {
    let mut depth = 0usize;
    for (number, line) in (1..).zip(text.lines()) {
        if line.starts_with(|c: char| c.is_ascii_alphabetic() || c == '-') {
            depth = 0;
        }
        for c in line.chars() {
            match c {
                '{' => depth += 1,
                '(' if depth > 0 => depth += 1,
                '}' | ')' => depth = depth.saturating_sub(1),
                _ => {}
            }
            if depth > DEEPEST_BRACES {
                return Some(number);
            }
        }
    }
    None
}
