//! Rules as they were read.

use super::number::Number;
use super::plural::Choice;

#[derive(Debug, Clone, Default)]
pub(super) struct RuleSet {
    /// With its `%` or `%%`.
    pub(super) name: String,
    /// By rising base value.
    pub(super) rules: Vec<Rule>,
    /// `-x`
    pub(super) negative: Option<Rule>,
    pub(super) decimal: DecimalRules,
}

/// Rules for numbers with decimals.
#[derive(Debug, Clone, Default)]
pub(super) struct DecimalRules {
    /// `x.x`
    pub(super) any: Option<Rule>,
    /// `0.x`
    pub(super) below_one: Option<Rule>,
    /// `x.0`
    pub(super) zero_decimals: Option<Rule>,
}

#[derive(Debug, Clone)]
pub(super) struct Rule {
    pub(super) base: u64,
    pub(super) divisor: u64,
    pub(super) parts: Vec<Part>,
}

#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) enum Part {
    Text(String),
    /// How many times the divisor goes into the number; in a set of fractions, the numerator.
    Quotient {
        set: usize,
        /// Whether the zeros that a numerator has in decimal writing are said before it.
        zeros: bool,
    },
    Remainder(Target),
    /// The number as it is, sign and decimals included.
    Same(usize),
    WithoutSign(usize),
    /// The part before the point.
    Whole(usize),
    /// The digits behind the point, one by one.
    Decimals {
        set: usize,
        spaced: bool,
    },
    /// What is behind the point, by a set whose base values are denominators.
    Fraction(usize),
    /// A text by the plural category of the quotient.
    Choice(Choice),
    Digits,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub(super) enum Target {
    Set(usize),
    /// One rule of one set, whatever its base value.
    Rule(usize, usize),
}

impl RuleSet {
    /// The place of the rule that says the whole number `n`.
    pub(super) fn place_of(&self, n: u64) -> Option<usize> {
        let place = self.rules.partition_point(|rule| rule.base <= n).checked_sub(1)?;
        match self.rules.get(place) {
            Some(rule) if rule.steps_back() && n.is_multiple_of(rule.divisor) => place.checked_sub(1),
            Some(_) => Some(place),
            None => None,
        }
    }

    /// In a set of fractions: the first rule whose base value is a denominator of the number's decimals, and the
    /// numerator.
    pub(super) fn fraction(&self, number: Number) -> Option<(&Rule, u64)> {
        self.rules.iter().find_map(|rule| Some((rule, number.numerator(rule.base)?)))
    }
}

impl DecimalRules {
    pub(super) fn of(&self, number: Number) -> Option<&Rule> {
        if number.places == 0 {
            return None;
        }
        let zero_decimals = self.zero_decimals.as_ref().filter(|_| number.decimals == 0);
        let below_one = self.below_one.as_ref().filter(|_| number.whole == 0);
        zero_decimals.or(below_one).or(self.any.as_ref())
    }

    pub(super) fn parts(&self) -> impl Iterator<Item = &Part> {
        [&self.any, &self.below_one, &self.zero_decimals].into_iter().flatten().flat_map(|rule| &rule.parts)
    }

    pub(super) fn or(self, other: DecimalRules) -> DecimalRules {
        DecimalRules {
            any: self.any.or(other.any),
            below_one: self.below_one.or(other.below_one),
            zero_decimals: self.zero_decimals.or(other.zero_decimals),
        }
    }
}

impl Rule {
    /// A rule without a base value.
    pub(super) fn special(parts: Vec<Part>) -> Rule {
        Rule { base: 0, divisor: 1, parts }
    }

    /// Whether the rule, as it says a remainder, leaves the numbers without one to the rule before it.
    pub(super) fn steps_back(&self) -> bool {
        !self.base.is_multiple_of(self.divisor)
            && self.parts.iter().any(|part| matches!(part, Part::Remainder(_)))
    }

    /// Whether the rule hands a sign or decimals on to another set, so that none is lost.
    pub(super) fn hands_on(&self) -> bool {
        let keeps =
            |part: &Part| matches!(part, Part::Text(_) | Part::Same(_) | Part::WithoutSign(_) | Part::Digits);
        self.parts.iter().any(|part| matches!(part, Part::Same(_))) && self.parts.iter().all(keeps)
    }
}

/// The name of a set that one may ask for, without its `%`.
pub(super) fn public_name(name: &str) -> Option<&str> {
    name.strip_prefix('%').filter(|name| !name.starts_with('%'))
}
