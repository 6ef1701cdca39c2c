//! Building a rule set from its rules.

use std::collections::HashMap;

use super::body::{Body, Kind, Place};
use super::fault::{Fault, fault};
use super::plural::Plurals;
use super::rules::{DecimalRules, Part, Rule, RuleSet};
use super::start::{Decimals, Point, Start, divisor, start_of};

pub(super) struct Builder<'a> {
    own: usize,
    sets: &'a HashMap<&'a str, usize>,
    plurals: Option<Plurals>,
    /// The point that the language writes.
    point: Point,
    set: RuleSet,
    /// Base value of the rule before, and whether it has text in brackets that made it two rules.
    previous: Option<(u64, bool)>,
    /// The decimal rules with the other point.
    other: DecimalRules,
    /// What `x.x` says below one by leaving out its text in brackets.
    short: Option<Rule>,
    /// Lines that mean something only in a set of fractions, or only outside one.
    lines: Lines,
}

#[derive(Default)]
pub(super) struct Lines {
    pub(super) only_in_fractions: Vec<u32>,
    pub(super) never_in_fractions: Vec<u32>,
}

impl<'a> Builder<'a> {
    /// For the set at the place `own` among `sets`.
    pub(super) fn new(
        own: usize,
        name: &str,
        sets: &'a HashMap<&'a str, usize>,
        plurals: Option<Plurals>,
        point: Point,
    ) -> Builder<'a> {
        Builder {
            own,
            sets,
            plurals,
            point,
            set: RuleSet { name: name.to_owned(), ..RuleSet::default() },
            previous: None,
            other: DecimalRules::default(),
            short: None,
            lines: Lines::default(),
        }
    }

    /// Adds a rule; gives what is wrong with it.
    pub(super) fn rule(&mut self, line: u32, text: &str) -> Vec<Fault> {
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
            Start::Decimal(..) => Kind::Decimal,
        };
        let place = Place { own: self.own, sets: self.sets, plurals: self.plurals, kind };
        let text = text.trim_start();
        let text = text.strip_prefix('\'').unwrap_or(text);
        let body = place.read(text, &mut faults);
        match start {
            Start::Base { base, divisor } => self.counting((base, divisor), body, line, &mut faults),
            Start::Following => self.following(body, line, &mut faults),
            Start::Negative => fill(&mut self.set.negative, body.kept, &mut faults),
            Start::Decimal(decimals, point) => self.decimal(decimals, point, body, &mut faults),
            Start::Ignored => {}
        }
        faults
    }

    fn decimal(&mut self, decimals: Decimals, point: Point, body: Body, faults: &mut Vec<Fault>) {
        let rules = if point == self.point { &mut self.set.decimal } else { &mut self.other };
        match decimals {
            Decimals::Any => {
                if body.optional && self.short.is_none() {
                    self.short = Some(Rule::special(body.left_out));
                }
                fill(&mut rules.any, body.kept, faults);
            }
            Decimals::BelowOne => fill(&mut rules.below_one, body.kept, faults),
            Decimals::Zero => fill(&mut rules.zero_decimals, body.left_out, faults),
        }
    }

    fn following(&mut self, body: Body, line: u32, faults: &mut Vec<Fault>) {
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
                self.counting((base, divisor), body, line, faults);
            }
            _ => faults.push(fault(
                "this rule needs a base value, as it or the rule before it has text in brackets",
                "write the number from which it holds and `:` before it",
            )),
        }
    }

    fn counting(&mut self, (base, divisor): (u64, u64), body: Body, line: u32, faults: &mut Vec<Fault>) {
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
        if body.optional || body.kept.iter().any(|part| matches!(part, Part::Remainder(_))) {
            self.lines.never_in_fractions.push(line);
        }
        if body.kept.iter().any(|part| matches!(part, Part::Quotient { zeros: true, .. })) {
            self.lines.only_in_fractions.push(line);
        }
        let split = body.optional && base > 0 && base.is_multiple_of(divisor);
        self.previous = Some((base, split));
        if split {
            self.set.rules.push(Rule { base, divisor, parts: body.left_out });
        }
        let base = if split { base.checked_add(1) } else { Some(base) };
        self.set.rules.extend(base.map(|base| Rule { base, divisor, parts: body.kept }));
    }

    pub(super) fn finish(mut self) -> (RuleSet, Lines) {
        let short = DecimalRules { below_one: self.short, ..DecimalRules::default() };
        self.set.decimal = self.set.decimal.or(self.other).or(short);
        (self.set, self.lines)
    }
}

fn fill(slot: &mut Option<Rule>, parts: Vec<Part>, faults: &mut Vec<Fault>) {
    if slot.replace(Rule::special(parts)).is_some() {
        faults.push(fault("this set has such a rule already", "keep one of the two"));
    }
}
