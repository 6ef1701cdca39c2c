//! Finding all words that rules can say.

use std::collections::{BTreeSet, HashMap};
use std::rc::Rc;

use super::apply::DEEPEST;
use super::number::MOST_PLACES;
use super::rules::{Part, Rule, RuleSet, Target};
use super::{Number, NumeralError, Numerals, parts_words};

/// How many different word pieces [`Numerals::words`] keeps for one rule set.
pub(super) const MOST_PIECES: usize = 20_000;

/// How deep ranges are followed. A range may pass through more rules than any one number in it.
pub(super) const DEEPEST_RANGE: u32 = 4 * DEEPEST;

/// Numbers of one kind whose whole part lies in `low..=high`.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub(super) struct Range {
    pub(super) low: u64,
    pub(super) high: u64,
    pub(super) negative: bool,
    pub(super) decimal: bool,
}

impl Range {
    pub(super) fn whole(low: u64, high: u64) -> Range {
        Range { low, high, negative: false, decimal: false }
    }

    /// The numbers from `low` to `high` in this range, if there are any.
    pub(super) fn within(self, low: u64, high: u64) -> Option<Range> {
        let (low, high) = (self.low.max(low), self.high.min(high));
        (low <= high).then_some(Range { low, high, ..self })
    }

    /// What dividing by `divisor` can leave, as one or two ranges.
    pub(super) fn remainders(self, divisor: u64, never_zero: bool) -> [Option<Range>; 2] {
        let last = divisor.saturating_sub(1);
        let all = Range::whole(u64::from(never_zero), last);
        if self.high - self.low >= last {
            return [all.within(0, last), None];
        }
        let (from, to) = (self.low % divisor, self.high % divisor);
        if from <= to { [all.within(from, to), None] } else { [all.within(from, last), all.within(0, to)] }
    }
}

/// What a rule or set can say for a range: words, and parts of words at the edges, which the neighbours may complete.
#[derive(Debug, Clone, Default)]
pub(super) struct Pieces {
    /// Texts without a break between words, the empty text among them.
    pub(super) unbroken: BTreeSet<String>,
    /// The text before the first break.
    pub(super) first: BTreeSet<String>,
    /// The text behind the last break.
    pub(super) last: BTreeSet<String>,
    /// The words between two breaks.
    pub(super) inner: BTreeSet<String>,
}

pub(super) enum SearchTrouble {
    Endless(Range),
    TooMany,
}

impl SearchTrouble {
    pub(super) fn about(self, form: &str) -> NumeralError {
        let form = form.to_owned();
        match self {
            SearchTrouble::Endless(range) => {
                let number = Number { negative: range.negative, ..Number::from(range.low) };
                NumeralError::Endless { number, form }
            }
            SearchTrouble::TooMany => NumeralError::TooManyWords { form },
        }
    }
}

impl Pieces {
    pub(super) fn of_text(text: &str) -> Pieces {
        let mut pieces = Pieces::default();
        let mut parts: Vec<&str> = text.split(parts_words).collect();
        let last = parts.pop().unwrap_or("");
        if parts.is_empty() {
            pieces.unbroken.insert(last.to_owned());
        } else {
            pieces.last.insert(last.to_owned());
            let mut parts = parts.into_iter().map(str::to_owned);
            pieces.first.extend(parts.next());
            pieces.inner.extend(parts);
        }
        pieces
    }

    /// Whether nothing can be said at all.
    pub(super) fn is_nothing(&self) -> bool {
        self.unbroken.is_empty() && self.first.is_empty()
    }

    pub(super) fn add(&mut self, other: &Pieces) {
        self.unbroken.extend(other.unbroken.iter().cloned());
        self.first.extend(other.first.iter().cloned());
        self.last.extend(other.last.iter().cloned());
        self.inner.extend(other.inner.iter().cloned());
    }

    /// `self` and then `next`.
    pub(super) fn then(&self, next: &Pieces) -> Result<Pieces, SearchTrouble> {
        if self.is_nothing() || next.is_nothing() {
            return Ok(Pieces::default());
        }
        let mut joined = Pieces {
            unbroken: glued(&self.unbroken, &next.unbroken)?,
            first: glued(&self.unbroken, &next.first)?,
            last: glued(&self.last, &next.unbroken)?,
            inner: glued(&self.last, &next.first)?,
        };
        joined.first.extend(self.first.iter().cloned());
        joined.last.extend(next.last.iter().cloned());
        joined.inner.extend(self.inner.iter().chain(&next.inner).cloned());
        Ok(joined)
    }

    pub(super) fn collect_into(&self, words: &mut BTreeSet<String>) {
        let all = [&self.unbroken, &self.first, &self.last, &self.inner];
        words.extend(all.into_iter().flatten().filter(|word| !word.is_empty()).cloned());
    }
}

pub(super) fn glued(
    front: &BTreeSet<String>,
    back: &BTreeSet<String>,
) -> Result<BTreeSet<String>, SearchTrouble> {
    if front.len().saturating_mul(back.len()) > MOST_PIECES {
        return Err(SearchTrouble::TooMany);
    }
    let pairs = front.iter().flat_map(|front| back.iter().map(move |back| format!("{front}{back}")));
    Ok(pairs.collect())
}

pub(super) struct Search<'a> {
    pub(super) numerals: &'a Numerals,
    /// `None` while it is being found.
    pub(super) known: HashMap<(Target, Range), Option<Rc<Pieces>>>,
}

impl Search<'_> {
    pub(super) fn set(&mut self, set: usize, range: Range, depth: u32) -> Result<Rc<Pieces>, SearchTrouble> {
        self.target(Target::Set(set), range, depth)
    }

    pub(super) fn target(
        &mut self,
        target: Target,
        range: Range,
        depth: u32,
    ) -> Result<Rc<Pieces>, SearchTrouble> {
        if let Some(known) = self.known.get(&(target, range)) {
            // A range that comes back whole while it is being followed does so for each of its numbers.
            return known.clone().ok_or(SearchTrouble::Endless(range));
        }
        if depth >= DEEPEST_RANGE {
            return Err(SearchTrouble::Endless(range));
        }
        if self.known.len() > MOST_PIECES {
            return Err(SearchTrouble::TooMany);
        }
        self.known.insert((target, range), None);
        let numerals = self.numerals;
        let found = match target {
            Target::Set(set) => match numerals.sets.get(set) {
                Some(rules) => self.rules(rules, range, depth)?,
                None => Pieces::default(),
            },
            Target::Rule(set, place) => match numerals.sets.get(set).and_then(|rules| rules.rules.get(place))
            {
                Some(rule) => self.rule(rule, range, false, depth)?,
                None => Pieces::default(),
            },
        };
        let found = Rc::new(found);
        self.known.insert((target, range), Some(Rc::clone(&found)));
        Ok(found)
    }

    pub(super) fn rules(&mut self, set: &RuleSet, range: Range, depth: u32) -> Result<Pieces, SearchTrouble> {
        if let (true, Some(rule)) = (range.negative, &set.negative) {
            return self.rule(rule, range, false, depth);
        }
        if !range.decimal {
            return self.counting(set, range, depth);
        }
        let mut found = Pieces::default();
        let mut special = |rule: &Rule, range: Range| {
            if range.negative && !rule.hands_on() {
                return Ok(());
            }
            found.add(&self.rule(rule, range, false, depth)?);
            Ok(())
        };
        if let Some(rule) = &set.zero_decimals {
            special(rule, range)?;
        }
        let mut rest = Some(range);
        if let Some(rule) = &set.below_one {
            range.within(0, 0).map_or(Ok(()), |below_one| special(rule, below_one))?;
            rest = range.within(1, u64::MAX);
        }
        match (rest, &set.decimal) {
            (Some(rest), Some(rule)) => special(rule, rest)?,
            (Some(rest), None) => found.add(&self.counting(set, rest, depth)?),
            (None, _) => {}
        }
        Ok(found)
    }

    pub(super) fn counting(
        &mut self,
        set: &RuleSet,
        range: Range,
        depth: u32,
    ) -> Result<Pieces, SearchTrouble> {
        let mut found = Pieces::default();
        let mut before: Option<&Rule> = None;
        let mut rules = set.rules.iter().peekable();
        while let Some(rule) = rules.next() {
            let end = rules.peek().map_or(u64::MAX, |next| next.base.saturating_sub(1));
            if let Some(range) = range.within(rule.base, end) {
                let steps_back = rule.steps_back();
                if steps_back {
                    let (low, high) = (range.low.div_ceil(rule.divisor), range.high / rule.divisor);
                    let multiples =
                        range.within(low.saturating_mul(rule.divisor), high.saturating_mul(rule.divisor));
                    if let (Some(multiples), Some(before)) = (multiples.filter(|_| low <= high), before) {
                        found.add(&self.one(before, multiples, false, depth)?);
                    }
                }
                found.add(&self.one(rule, range, steps_back, depth)?);
            }
            before = Some(rule);
        }
        Ok(found)
    }

    pub(super) fn one(
        &mut self,
        rule: &Rule,
        range: Range,
        never_zero: bool,
        depth: u32,
    ) -> Result<Pieces, SearchTrouble> {
        if (range.negative || range.decimal) && !rule.hands_on() {
            return Ok(Pieces::default());
        }
        self.rule(rule, range, never_zero, depth)
    }

    pub(super) fn rule(
        &mut self,
        rule: &Rule,
        range: Range,
        never_zero: bool,
        depth: u32,
    ) -> Result<Pieces, SearchTrouble> {
        let deeper = depth + 1;
        let mut said = Pieces::of_text("");
        for part in &rule.parts {
            if said.is_nothing() {
                break;
            }
            said = match part {
                Part::Text(text) => said.then(&Pieces::of_text(text))?,
                Part::Quotient(set) => {
                    let times = Range::whole(range.low / rule.divisor, range.high / rule.divisor);
                    said.then(&*self.set(*set, times, deeper)?)?
                }
                Part::Remainder(target) => {
                    let mut rests = Pieces::default();
                    for rest in range.remainders(rule.divisor, never_zero).into_iter().flatten() {
                        rests.add(&*self.target(*target, rest, deeper)?);
                    }
                    said.then(&rests)?
                }
                Part::Same(set) => said.then(&*self.set(*set, range, deeper)?)?,
                Part::WithoutSign(set) => {
                    said.then(&*self.set(*set, Range { negative: false, ..range }, deeper)?)?
                }
                Part::Whole(set) => {
                    said.then(&*self.set(*set, Range::whole(range.low, range.high), deeper)?)?
                }
                Part::Decimals { set, spaced } => {
                    let digit = self.set(*set, Range::whole(0, 9), deeper)?;
                    said.then(&digits(&digit, *spaced)?)?
                }
                Part::Digits | Part::Unsupported(_) => Pieces::default(),
            };
        }
        Ok(said)
    }
}

/// One to [`MOST_PLACES`] digits.
pub(super) fn digits(digit: &Pieces, spaced: bool) -> Result<Pieces, SearchTrouble> {
    let gap = Pieces::of_text(if spaced { " " } else { "" });
    let mut run = digit.clone();
    let mut all = run.clone();
    for _ in 1..MOST_PLACES {
        run = run.then(&gap)?.then(digit)?;
        all.add(&run);
    }
    Ok(all)
}
