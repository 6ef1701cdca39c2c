//! The text of a rule.

use super::parse::{Fault, fault};
use super::rules::Part;

/// The parts of a rule, with and without its text in brackets.
#[derive(Default)]
pub(super) struct Body {
    pub(super) kept: Vec<Part>,
    pub(super) left_out: Vec<Part>,
    pub(super) optional: bool,
}

/// Whether text stands in brackets.
#[derive(Clone, Copy)]
pub(super) enum Bracket {
    None,
    Kept,
    /// Behind the `|`: said where the text before it is left out.
    LeftOut,
}

impl Body {
    pub(super) fn push(&mut self, part: Part, bracket: Bracket) {
        match bracket {
            Bracket::None => {
                self.left_out.push(part.clone());
                self.kept.push(part);
            }
            Bracket::Kept => self.kept.push(part),
            Bracket::LeftOut => self.left_out.push(part),
        }
    }

    pub(super) fn push_text(&mut self, literal: &mut String, bracket: Bracket) {
        if !literal.is_empty() {
            self.push(Part::Text(std::mem::take(literal)), bracket);
        }
    }
}

/// The signs that stand around a substitution; CLDR writes them as arrows in XML.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Mark {
    Left,
    Right,
    Equal,
}

impl Mark {
    pub(super) fn of(c: char) -> Option<Mark> {
        match c {
            '<' | '←' => Some(Mark::Left),
            '>' | '→' => Some(Mark::Right),
            '=' => Some(Mark::Equal),
            _ => None,
        }
    }
}

/// What stands between two marks.
pub(super) enum Token {
    /// Nothing: the set of the rule.
    Own,
    /// The third `>` of `>>>`.
    RuleBefore,
    Set(String),
    /// A decimal format.
    Digits,
}

/// Reads a substitution, whose first sign has been read.
pub(super) fn token(first: char, mark: Mark, chars: &mut std::str::Chars<'_>) -> Result<Token, Fault> {
    let mut inside = String::new();
    loop {
        match chars.next() {
            None => {
                return Err(fault(
                    format!("`{first}{inside}` opens a substitution that has no end"),
                    "close it with the sign that opens it, such as `<<`, `>%name>` or `=%name=`",
                ));
            }
            Some(c) if Mark::of(c) == Some(mark) => break,
            Some(c) => inside.push(c),
        }
    }
    match inside.chars().next() {
        None if mark == Mark::Equal => {
            Err(fault("`==` would say the number by the same rule for ever", "name a rule set: `=%name=`"))
        }
        None => {
            let mut ahead = chars.clone();
            if mark == Mark::Right && ahead.next().and_then(Mark::of) == Some(mark) {
                *chars = ahead;
                return Ok(Token::RuleBefore);
            }
            Ok(Token::Own)
        }
        Some('%') => Ok(Token::Set(inside)),
        Some('#' | '0') => Ok(Token::Digits),
        Some(_) => Err(fault(
            format!("`{inside}` is neither a rule set nor a digit format"),
            "write `%` or `%%` and the name of a rule set",
        )),
    }
}
