//! Saying a number.

use super::error::NumeralError;
use super::number::Number;
use super::rules::{Part, Rule, RuleSet, Target};

/// How deep rules may call each other; ICU stops at the same depth.
pub(super) const DEEPEST: u32 = 64;
/// How many rules one number may use, so that rules which double at each step end as well.
const MOST_STEPS: u32 = 1_000;

pub(super) struct Speech<'a> {
    sets: &'a [RuleSet],
    text: String,
    steps: u32,
}

enum Trouble {
    Beyond,
    Endless,
}

/// What the parts of a rule speak of.
#[derive(Clone, Copy)]
struct Values {
    number: Number,
    quotient: u64,
    remainder: u64,
}

impl<'a> Speech<'a> {
    /// The words of `number` in the form `form`, by the rule set at the place `set`.
    pub(super) fn of(
        sets: &'a [RuleSet],
        number: Number,
        form: &str,
        set: usize,
    ) -> Result<String, NumeralError> {
        let mut speech = Speech { sets, text: String::new(), steps: 0 };
        match speech.set(set, number, 0) {
            Ok(()) => Ok(speech.text),
            Err(Trouble::Beyond) => Err(NumeralError::BeyondRules { number, form: form.to_owned() }),
            Err(Trouble::Endless) => Err(NumeralError::Endless { number, form: form.to_owned() }),
        }
    }

    fn rules(&self, set: usize) -> Result<&'a RuleSet, Trouble> {
        self.sets.get(set).ok_or(Trouble::Beyond)
    }

    fn set(&mut self, set: usize, number: Number, depth: u32) -> Result<(), Trouble> {
        let rules = self.rules(set)?;
        if let (true, Some(rule)) = (number.negative, &rules.negative) {
            return self.rule(rule, number, depth);
        }
        let special = rules.decimal.of(number);
        let counting = || rules.place_of(number.whole).and_then(|place| rules.rules.get(place));
        let rule = special.or_else(counting).ok_or(Trouble::Beyond)?;
        let unheard = number.negative || (number.places > 0 && special.is_none());
        if unheard && !rule.hands_on() {
            return Err(Trouble::Beyond);
        }
        self.rule(rule, number, depth)
    }

    fn rule(&mut self, rule: &Rule, number: Number, depth: u32) -> Result<(), Trouble> {
        let (quotient, remainder) = (number.whole / rule.divisor, number.whole % rule.divisor);
        self.parts(rule, Values { number, quotient, remainder }, depth)
    }

    fn fraction(&mut self, set: usize, number: Number, depth: u32) -> Result<(), Trouble> {
        let (rule, numerator) = self.rules(set)?.fraction(number).ok_or(Trouble::Beyond)?;
        let number = Number { negative: false, whole: 0, ..number };
        self.parts(rule, Values { number, quotient: numerator, remainder: 0 }, depth)
    }

    fn parts(&mut self, rule: &Rule, values: Values, depth: u32) -> Result<(), Trouble> {
        self.steps += 1;
        if depth >= DEEPEST || self.steps > MOST_STEPS {
            return Err(Trouble::Endless);
        }
        let deeper = depth + 1;
        let Values { number, quotient, remainder } = values;
        for part in &rule.parts {
            match part {
                Part::Text(text) => self.text.push_str(text),
                Part::Quotient { set, zeros } => {
                    let zeros = if *zeros { leading_zeros(quotient, rule.base) } else { 0 };
                    for _ in 0..zeros {
                        self.set(*set, 0.into(), deeper)?;
                        self.text.push(' ');
                    }
                    self.set(*set, quotient.into(), deeper)?;
                }
                Part::Remainder(Target::Set(set)) => self.set(*set, remainder.into(), deeper)?,
                Part::Remainder(Target::Rule(set, place)) => {
                    let rule = self.rules(*set)?.rules.get(*place).ok_or(Trouble::Beyond)?;
                    self.rule(rule, remainder.into(), deeper)?;
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
                Part::Fraction(set) => self.fraction(*set, number, deeper)?,
                Part::Choice(choice) => self.text.push_str(choice.text_for(quotient)),
                Part::Digits => return Err(Trouble::Beyond),
            }
        }
        Ok(())
    }
}

/// How many zeros stand behind the point before `numerator` in so many of `denominator`: two in 5 of 1000.
fn leading_zeros(numerator: u64, denominator: u64) -> u32 {
    let digits = |n: u64| n.checked_ilog10().unwrap_or(0) + 1;
    digits(denominator.saturating_sub(1)).saturating_sub(digits(numerator))
}
