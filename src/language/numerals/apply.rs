//! Saying a number.

use super::rules::{Part, Rule, Target};
use super::{Number, NumeralError, Numerals};

/// How deep rules may call each other; ICU stops at the same depth.
pub(super) const DEEPEST: u32 = 64;
/// How many rules one number may use, so that rules which double at each step end as well.
pub(super) const MOST_STEPS: u32 = 10_000;

pub(super) struct Speech<'a> {
    pub(super) numerals: &'a Numerals,
    pub(super) text: String,
    pub(super) steps: u32,
}

pub(super) enum Trouble {
    Beyond,
    Endless,
    Unsupported(&'static str),
}

impl Trouble {
    pub(super) fn about(self, number: Number, form: &str) -> NumeralError {
        let form = form.to_owned();
        match self {
            Trouble::Beyond => NumeralError::BeyondRules { number, form },
            Trouble::Endless => NumeralError::Endless { number, form },
            Trouble::Unsupported(construct) => NumeralError::Unsupported { number, form, construct },
        }
    }
}

impl Speech<'_> {
    pub(super) fn set(&mut self, set: usize, number: Number, depth: u32) -> Result<(), Trouble> {
        let rules = self.numerals.sets.get(set).ok_or(Trouble::Beyond)?;
        if let (true, Some(rule)) = (number.negative, &rules.negative) {
            return self.rule(rule, number, depth);
        }
        let special = if number.places > 0 {
            let zero_decimals = rules.zero_decimals.as_ref().filter(|_| number.decimals == 0);
            let below_one = rules.below_one.as_ref().filter(|_| number.whole == 0);
            zero_decimals.or(below_one).or(rules.decimal.as_ref())
        } else {
            None
        };
        let counting = || rules.place_of(number.whole).and_then(|place| rules.rules.get(place));
        let rule = special.or_else(counting).ok_or(Trouble::Beyond)?;
        let unheard = number.negative || (number.places > 0 && special.is_none());
        if unheard && !rule.hands_on() {
            return Err(Trouble::Beyond);
        }
        self.rule(rule, number, depth)
    }

    pub(super) fn rule(&mut self, rule: &Rule, number: Number, depth: u32) -> Result<(), Trouble> {
        self.steps += 1;
        if depth >= DEEPEST || self.steps > MOST_STEPS {
            return Err(Trouble::Endless);
        }
        let deeper = depth + 1;
        for part in &rule.parts {
            match part {
                Part::Text(text) => self.text.push_str(text),
                Part::Quotient(set) => self.set(*set, (number.whole / rule.divisor).into(), deeper)?,
                Part::Remainder(target) => {
                    let rest = Number::from(number.whole % rule.divisor);
                    match target {
                        Target::Set(set) => self.set(*set, rest, deeper)?,
                        Target::Rule(set, place) => {
                            let numerals = self.numerals;
                            let set = numerals.sets.get(*set).map(|rules| &rules.rules);
                            let rule = set.and_then(|rules| rules.get(*place)).ok_or(Trouble::Beyond)?;
                            self.rule(rule, rest, deeper)?;
                        }
                    }
                }
                Part::Same(set) => self.set(*set, number, deeper)?,
                Part::WithoutSign(set) => self.set(*set, number.without_sign(), deeper)?,
                Part::Whole(set) => self.set(*set, number.whole.into(), deeper)?,
                Part::Decimals { set, spaced } => {
                    for (place, digit) in number.decimals().bytes().enumerate() {
                        if *spaced && place > 0 {
                            self.text.push(' ');
                        }
                        self.set(*set, u64::from(digit.wrapping_sub(b'0')).into(), deeper)?;
                    }
                }
                Part::Digits => return Err(Trouble::Beyond),
                Part::Unsupported(construct) => return Err(Trouble::Unsupported(construct)),
            }
        }
        Ok(())
    }
}
