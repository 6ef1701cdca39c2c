//! Building a rule set from its rules.

use std::collections::HashMap;

use super::body::{Body, Bracket, Mark, Token, token};
use super::parse::{Fault, fault};
use super::rules::{Part, Rule, RuleSet, Target};
use super::start::{Start, divisor, start_of};

pub(super) const PLURAL: &str = "a choice by plural category";
pub(super) const FRACTIONS: &str = "a rule set of fractions";

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

pub(super) struct Builder<'a> {
    pub(super) set: RuleSet,
    pub(super) own: usize,
    pub(super) places: &'a HashMap<&'a str, usize>,
    /// Base value of the rule before, and whether it has text in brackets that made it two rules.
    pub(super) previous: Option<(u64, bool)>,
    pub(super) comma: Option<Rule>,
}

impl Builder<'_> {
    /// Adds a rule; gives what is wrong with it.
    pub(super) fn rule(&mut self, text: &str) -> Vec<Fault> {
        let (start, text) = match start_of(text.trim_start()) {
            Ok(start) => start,
            Err(fault) => return vec![fault],
        };
        let mut faults = Vec::new();
        let kind = match start {
            Start::Ignored => return faults,
            Start::Base { .. } | Start::Following => {
                Kind::Counting { before: self.set.rules.len().checked_sub(1) }
            }
            Start::Negative => Kind::Negative,
            Start::Decimal { .. } | Start::BelowOne | Start::ZeroDecimals => Kind::Decimal,
        };
        let text = text.trim_start();
        let text = text.strip_prefix('\'').unwrap_or(text);
        let body = self.body(text, kind, &mut faults);
        match start {
            Start::Base { base, divisor } => self.counting(base, divisor, body, &mut faults),
            Start::Following => self.following(body, &mut faults),
            Start::Negative => self.special(|set| &mut set.negative, body.kept, &mut faults),
            Start::BelowOne => self.special(|set| &mut set.below_one, body.kept, &mut faults),
            Start::Decimal { comma } => {
                if body.optional && self.set.below_one.is_none() {
                    self.set.below_one = Some(Rule { base: 0, divisor: 1, parts: body.left_out });
                }
                if comma {
                    self.comma = Some(Rule { base: 0, divisor: 1, parts: body.kept });
                } else {
                    self.special(|set| &mut set.decimal, body.kept, &mut faults);
                }
            }
            Start::ZeroDecimals => {
                let parts = if body.optional { body.left_out } else { body.kept };
                self.special(|set| &mut set.zero_decimals, parts, &mut faults);
            }
            Start::Ignored => {}
        }
        faults
    }

    pub(super) fn special(
        &mut self,
        slot: impl Fn(&mut RuleSet) -> &mut Option<Rule>,
        parts: Vec<Part>,
        faults: &mut Vec<Fault>,
    ) {
        let rule = Rule { base: 0, divisor: 1, parts };
        if slot(&mut self.set).replace(rule).is_some() {
            faults.push(fault("this set has such a rule already", "keep one of the two"));
        }
    }

    pub(super) fn following(&mut self, body: Body, faults: &mut Vec<Fault>) {
        let base = match self.previous {
            None => Some(0),
            Some((base, _)) => base.checked_add(1),
        };
        // ICU counts a rule with brackets as two and drops no text in brackets here; refused, so that a file means the
        // same in both.
        let doubled = self.previous.is_some_and(|(_, optional)| optional);
        match base {
            Some(base) if !doubled && !body.optional => {
                let divisor = divisor(base, 10, 0).unwrap_or(1);
                self.counting(base, divisor, body, faults);
            }
            _ => faults.push(fault(
                "this rule needs a base value, as it or the rule before it has text in brackets",
                "write the number from which it holds and `:` before it",
            )),
        }
    }

    pub(super) fn counting(&mut self, base: u64, divisor: u64, body: Body, faults: &mut Vec<Fault>) {
        if let Some((previous, optional)) = self.previous {
            if base <= previous {
                faults.push(fault(
                    format!("the base value {base} does not exceed {previous}, that of the rule before"),
                    "order the rules of a set by rising base value",
                ));
            } else if optional && base == previous + 1 {
                faults.push(fault(
                    format!("the rule before, from {previous}, has text in brackets that can never be said"),
                    "take the brackets out of that rule",
                ));
            }
        }
        let split = body.optional && base > 0 && base.is_multiple_of(divisor);
        self.previous = Some((base, split));
        if split {
            self.set.rules.push(Rule { base, divisor, parts: body.left_out });
        }
        let base = if split { base.checked_add(1) } else { Some(base) };
        self.set.rules.extend(base.map(|base| Rule { base, divisor, parts: body.kept }));
    }

    pub(super) fn finish(mut self) -> RuleSet {
        self.set.decimal = self.set.decimal.or(self.comma);
        self.set
    }

    pub(super) fn body(&self, text: &str, kind: Kind, faults: &mut Vec<Fault>) -> Body {
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
                    Some((_, behind)) => {
                        chars = behind.chars();
                        Ok(Part::Unsupported(PLURAL))
                    }
                    None => Err(fault("this `$(` has no end", "write `$(cardinal,one{…}other{…})$`")),
                },
                _ => match Mark::of(c) {
                    Some(mark) => token(c, mark, &mut chars).and_then(|token| self.part(mark, token, kind)),
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

    pub(super) fn part(&self, mark: Mark, token: Token, kind: Kind) -> Result<Part, Fault> {
        let set = match &token {
            Token::Digits => return Ok(Part::Digits),
            Token::Own | Token::RuleBefore => self.own,
            Token::Set(name) => *self.places.get(name.as_str()).ok_or_else(|| {
                fault(format!("there is no rule set `{name}`"), "name one of this file, with its `%` or `%%`")
            })?,
        };
        let part = match (mark, kind, token) {
            (Mark::Equal, ..) => Part::Same(set),
            (Mark::Left, Kind::Counting { .. }, _) => Part::Quotient(set),
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
            (Mark::Right, Kind::Decimal, _) => Part::Unsupported(FRACTIONS),
        };
        Ok(part)
    }
}
