//! The text of a rule.

use std::collections::HashMap;

use super::fault::{Fault, fault};
use super::plural::{Choice, Plurals};
use super::rules::{Part, Target};

/// The parts of a rule, with and without its text in brackets.
#[derive(Default)]
pub(super) struct Body {
    pub(super) kept: Vec<Part>,
    pub(super) left_out: Vec<Part>,
    /// Whether there is text in brackets.
    pub(super) optional: bool,
}

/// Where a rule stands, which decides what `<<` and `>>` mean in it.
#[derive(Clone, Copy)]
pub(super) enum Kind {
    /// With the place of the rule before it.
    Counting {
        before: Option<usize>,
    },
    Negative,
    Decimal,
}

/// Where a rule stands and what it may name.
pub(super) struct Place<'a> {
    pub(super) own: usize,
    pub(super) sets: &'a HashMap<&'a str, usize>,
    pub(super) plurals: Option<Plurals>,
    pub(super) kind: Kind,
}

/// Whether text stands in brackets.
#[derive(Clone, Copy)]
enum Bracket {
    None,
    Kept,
    /// Behind the `|`: said where the text before it is left out.
    LeftOut,
}

impl Place<'_> {
    /// The parts of the text of a rule.
    pub(super) fn read(&self, text: &str, faults: &mut Vec<Fault>) -> Body {
        let mut body = Body::default();
        let mut bracket = Bracket::None;
        let mut literal = String::new();
        let mut chars = text.chars();
        while let Some(c) = chars.next() {
            let part = match c {
                // Soft hyphens only show where a printed word may break.
                '\u{ad}' => continue,
                '[' | ']' => {
                    body.push_text(&mut literal, bracket);
                    bracket = match (c, bracket) {
                        ('[', Bracket::None) => {
                            body.optional = true;
                            Bracket::Kept
                        }
                        (']', Bracket::Kept | Bracket::LeftOut) => Bracket::None,
                        _ => {
                            faults.push(fault(
                                format!("this `{c}` has no partner"),
                                "close each `[` before the next one",
                            ));
                            bracket
                        }
                    };
                    continue;
                }
                '|' if matches!(bracket, Bracket::Kept) => {
                    body.push_text(&mut literal, bracket);
                    bracket = Bracket::LeftOut;
                    continue;
                }
                '$' if chars.as_str().starts_with('(') => match chars.as_str().split_once(")$") {
                    Some((choice, behind)) => {
                        chars = behind.chars();
                        self.choice(choice.trim_start_matches('('))
                    }
                    None => Err(fault("this `$(` has no end", "write `$(cardinal,one{…}other{…})$`")),
                },
                _ => match Mark::of(c) {
                    Some(mark) => token(c, mark, &mut chars).and_then(|token| self.part(mark, token)),
                    None => {
                        literal.push(c);
                        continue;
                    }
                },
            };
            body.push_text(&mut literal, bracket);
            match part {
                Ok(part) => body.push(part, bracket),
                Err(fault) => faults.push(fault),
            }
        }
        body.push_text(&mut literal, bracket);
        if !matches!(bracket, Bracket::None) {
            faults.push(fault("this rule has a `[` without `]`", "close the text in brackets"));
        }
        body
    }

    fn part(&self, mark: Mark, token: Token) -> Result<Part, Fault> {
        let set = match &token {
            Token::Digits => return Ok(Part::Digits),
            Token::Own | Token::RuleBefore => self.own,
            Token::Set { name, .. } => *self.sets.get(name.as_str()).ok_or_else(|| {
                fault(format!("there is no rule set `{name}`"), "name one of this file, with its `%` or `%%`")
            })?,
        };
        let part = match (mark, self.kind, token) {
            (Mark::Equal, ..) => Part::Same(set),
            (Mark::Left, Kind::Counting { .. }, token) => {
                Part::Quotient { set, zeros: matches!(token, Token::Set { doubled: true, .. }) }
            }
            (Mark::Left, Kind::Decimal, _) => Part::Whole(set),
            (Mark::Left, Kind::Negative, _) => {
                return Err(fault(
                    "`<` means nothing in a rule for negative numbers",
                    "use `>>`, the number without its sign",
                ));
            }
            (Mark::Right, Kind::Counting { before }, Token::RuleBefore) => match before {
                Some(place) => Part::Remainder(Target::Rule(set, place)),
                None => return Err(fault("`>>>` needs a rule before this one", "use `>>`")),
            },
            (Mark::Right, Kind::Counting { .. }, _) => Part::Remainder(Target::Set(set)),
            (Mark::Right, Kind::Negative, _) => Part::WithoutSign(set),
            (Mark::Right, Kind::Decimal, Token::RuleBefore) => Part::Decimals { set, spaced: false },
            (Mark::Right, Kind::Decimal, _) if set == self.own => Part::Decimals { set, spaced: true },
            (Mark::Right, Kind::Decimal, _) => Part::Fraction(set),
        };
        Ok(part)
    }

    fn choice(&self, text: &str) -> Result<Part, Fault> {
        let plurals = self.plurals.ok_or_else(|| {
            fault(
                "this choice by plural category is in no known language",
                "read the rules as those of a language",
            )
        })?;
        Choice::read(text, plurals).map(Part::Choice)
    }
}

impl Body {
    fn push(&mut self, part: Part, bracket: Bracket) {
        match bracket {
            Bracket::None => {
                self.left_out.push(part.clone());
                self.kept.push(part);
            }
            Bracket::Kept => self.kept.push(part),
            Bracket::LeftOut => self.left_out.push(part),
        }
    }

    fn push_text(&mut self, literal: &mut String, bracket: Bracket) {
        if !literal.is_empty() {
            self.push(Part::Text(std::mem::take(literal)), bracket);
        }
    }
}

/// The signs that stand around a substitution; CLDR writes them as arrows in XML.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Mark {
    Left,
    Right,
    Equal,
}

impl Mark {
    fn of(c: char) -> Option<Mark> {
        match c {
            '<' | '←' => Some(Mark::Left),
            '>' | '→' => Some(Mark::Right),
            '=' => Some(Mark::Equal),
            _ => None,
        }
    }
}

/// What stands between two marks.
enum Token {
    /// Nothing: the set of the rule.
    Own,
    /// The third `>` of `>>>`.
    RuleBefore,
    Set {
        name: String,
        /// Closed by two signs, as in `<%name<<`.
        doubled: bool,
    },
    /// A decimal format.
    Digits,
}

/// Reads a substitution, whose first sign has been read.
fn token(first: char, mark: Mark, chars: &mut std::str::Chars<'_>) -> Result<Token, Fault> {
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
        Some(start @ ('%' | '#' | '0')) => {
            let mut ahead = chars.clone();
            let doubled = mark == Mark::Left
                && ahead.next().and_then(Mark::of) == Some(mark)
                && !ahead.as_str().starts_with(['<', '←', '%', '#', '0']);
            if doubled {
                *chars = ahead;
            }
            Ok(if start == '%' { Token::Set { name: inside, doubled } } else { Token::Digits })
        }
        Some(_) => Err(fault(
            format!("`{inside}` is neither a rule set nor a digit format"),
            "write `%` or `%%` and the name of a rule set",
        )),
    }
}
