//! Finding all words that rules can say.
//!
//! Numbers are not said one by one: the rules are followed with ranges of numbers.

use std::collections::{BTreeSet, HashMap};
use std::rc::Rc;

use super::apply::DEEPEST;
use super::error::NumeralError;
use super::number::MOST_PLACES;
use super::number::Number;
use super::rules::{Part, Rule, RuleSet, Target};

/// How many different word pieces [`Numerals::words`](super::Numerals::words) keeps for one rule set.
const MOST_PIECES: usize = 20_000;

/// How many bytes they may have together.
const MOST_BYTES: usize = 2_000_000;

/// How deep ranges are followed. A range may pass through more rules than any one number in it.
const DEEPEST_RANGE: u32 = 4 * DEEPEST;

/// Numbers of one kind whose whole part lies in `low..=high`.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
struct Range {
    low: u64,
    high: u64,
    negative: bool,
    decimal: bool,
}

impl Range {
    fn whole(low: u64, high: u64) -> Range {
        Range { low, high, negative: false, decimal: false }
    }

    /// The numbers from `low` to `high` in this range, if there are any.
    fn within(self, low: u64, high: u64) -> Option<Range> {
        let (low, high) = (self.low.max(low), self.high.min(high));
        (low <= high).then_some(Range { low, high, ..self })
    }

    /// What dividing by `divisor` can leave, as one or two ranges.
    fn remainders(self, divisor: u64, never_zero: bool) -> [Option<Range>; 2] {
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
struct Pieces {
    /// Texts without a break between words, the empty text among them.
    unbroken: BTreeSet<String>,
    /// The text before the first break.
    first: BTreeSet<String>,
    /// The text behind the last break.
    last: BTreeSet<String>,
    /// The words between two breaks.
    inner: BTreeSet<String>,
}

enum SearchTrouble {
    Endless(Range),
    TooMany,
}

impl SearchTrouble {
    fn about(self, form: &str) -> NumeralError {
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
    fn of_text(text: &str) -> Pieces {
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
    fn is_nothing(&self) -> bool {
        self.unbroken.is_empty() && self.first.is_empty()
    }

    fn add(&mut self, other: &Pieces) {
        self.unbroken.extend(other.unbroken.iter().cloned());
        self.first.extend(other.first.iter().cloned());
        self.last.extend(other.last.iter().cloned());
        self.inner.extend(other.inner.iter().cloned());
    }

    /// `self` and then `next`.
    fn then(&self, next: &Pieces) -> Result<Pieces, SearchTrouble> {
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

    fn collect_into(&self, words: &mut BTreeSet<String>) {
        let all = [&self.unbroken, &self.first, &self.last, &self.inner];
        words.extend(all.into_iter().flatten().filter(|word| !word.is_empty()).cloned());
    }
}

fn glued(front: &BTreeSet<String>, back: &BTreeSet<String>) -> Result<BTreeSet<String>, SearchTrouble> {
    let bytes = |texts: &BTreeSet<String>| texts.iter().map(String::len).sum::<usize>();
    let (pairs, bytes) = (
        front.len().saturating_mul(back.len()),
        bytes(front).saturating_mul(back.len()).saturating_add(bytes(back).saturating_mul(front.len())),
    );
    if pairs > MOST_PIECES || bytes > MOST_BYTES {
        return Err(SearchTrouble::TooMany);
    }
    let pairs = front.iter().flat_map(|front| back.iter().map(move |back| format!("{front}{back}")));
    Ok(pairs.collect())
}

/// Follows the rules with ranges of numbers.
pub(super) struct Search<'a> {
    sets: &'a [RuleSet],
    /// `None` while it is being found.
    known: HashMap<(Target, Range), Option<Rc<Pieces>>>,
}

impl<'a> Search<'a> {
    /// All words of the form `form`, whose rule set is at the place `set`.
    pub(super) fn of(sets: &'a [RuleSet], form: &str, set: usize) -> Result<BTreeSet<String>, NumeralError> {
        let mut search = Search { sets, known: HashMap::new() };
        let mut words = BTreeSet::new();
        for negative in [false, true] {
            for decimal in [false, true] {
                let range = Range { low: 0, high: u64::MAX, negative, decimal };
                let found = search.set(set, range, 0).map_err(|trouble| trouble.about(form))?;
                found.collect_into(&mut words);
            }
        }
        Ok(words)
    }

    fn set(&mut self, set: usize, range: Range, depth: u32) -> Result<Rc<Pieces>, SearchTrouble> {
        self.target(Target::Set(set), range, depth)
    }

    fn target(&mut self, target: Target, range: Range, depth: u32) -> Result<Rc<Pieces>, SearchTrouble> {
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
        let sets = self.sets;
        let found = match target {
            Target::Set(set) => match sets.get(set) {
                Some(rules) => self.rules(rules, range, depth)?,
                None => Pieces::default(),
            },
            Target::Rule(set, place) => match sets.get(set).and_then(|rules| rules.rules.get(place)) {
                Some(rule) => self.rule(rule, range, false, depth)?,
                None => Pieces::default(),
            },
        };
        let found = Rc::new(found);
        self.known.insert((target, range), Some(Rc::clone(&found)));
        Ok(found)
    }

    fn rules(&mut self, set: &RuleSet, range: Range, depth: u32) -> Result<Pieces, SearchTrouble> {
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
        if let Some(rule) = &set.decimal.zero_decimals {
            special(rule, range)?;
        }
        let mut rest = Some(range);
        if let Some(rule) = &set.decimal.below_one {
            range.within(0, 0).map_or(Ok(()), |below_one| special(rule, below_one))?;
            rest = range.within(1, u64::MAX);
        }
        match (rest, &set.decimal.any) {
            (Some(rest), Some(rule)) => special(rule, rest)?,
            (Some(rest), None) => found.add(&self.counting(set, rest, depth)?),
            (None, _) => {}
        }
        Ok(found)
    }

    fn counting(&mut self, set: &RuleSet, range: Range, depth: u32) -> Result<Pieces, SearchTrouble> {
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

    fn one(
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

    fn rule(
        &mut self,
        rule: &Rule,
        range: Range,
        never_zero: bool,
        depth: u32,
    ) -> Result<Pieces, SearchTrouble> {
        let values = Ranges {
            number: range,
            quotient: Range::whole(range.low / rule.divisor, range.high / rule.divisor),
            remainders: range.remainders(rule.divisor, never_zero),
        };
        self.parts(rule, values, depth)
    }

    fn fraction(&mut self, set: usize, depth: u32) -> Result<Pieces, SearchTrouble> {
        let number = Range { decimal: true, ..Range::whole(0, 0) };
        let mut found = Pieces::default();
        for rule in self.sets.get(set).iter().flat_map(|set| &set.rules) {
            let quotient = Range::whole(0, rule.base.saturating_sub(1));
            found.add(&self.parts(rule, Ranges { number, quotient, remainders: [None, None] }, depth)?);
        }
        Ok(found)
    }

    fn parts(&mut self, rule: &Rule, values: Ranges, depth: u32) -> Result<Pieces, SearchTrouble> {
        if depth >= DEEPEST_RANGE {
            return Err(SearchTrouble::Endless(values.number));
        }
        let deeper = depth + 1;
        let Ranges { number, quotient, remainders } = values;
        let mut said = Pieces::of_text("");
        for part in &rule.parts {
            if said.is_nothing() {
                break;
            }
            let next = match part {
                Part::Text(text) => Rc::new(Pieces::of_text(text)),
                Part::Quotient { set, zeros: false } => self.set(*set, quotient, deeper)?,
                Part::Quotient { set, zeros: true } => {
                    let zero = self.set(*set, Range::whole(0, 0), deeper)?;
                    let numerator = self.set(*set, quotient, deeper)?;
                    Rc::new(zeros_and(&zero, &numerator)?)
                }
                Part::Remainder(target) => {
                    let mut rests = Pieces::default();
                    for rest in remainders.into_iter().flatten() {
                        rests.add(&*self.target(*target, rest, deeper)?);
                    }
                    Rc::new(rests)
                }
                Part::Same(set) => self.set(*set, number, deeper)?,
                Part::WithoutSign(set) => self.set(*set, Range { negative: false, ..number }, deeper)?,
                Part::Whole(set) => self.set(*set, Range::whole(number.low, number.high), deeper)?,
                Part::Decimals { set, spaced } => {
                    let digit = self.set(*set, Range::whole(0, 9), deeper)?;
                    Rc::new(digits(&digit, *spaced)?)
                }
                Part::Fraction(set) => Rc::new(self.fraction(*set, deeper)?),
                Part::Choice(choice) => {
                    let mut texts = Pieces::default();
                    choice.texts().for_each(|text| texts.add(&Pieces::of_text(text)));
                    Rc::new(texts)
                }
                Part::Digits => Rc::default(),
            };
            said = said.then(&next)?;
        }
        Ok(said)
    }
}

/// What the parts of a rule speak of.
#[derive(Clone, Copy)]
struct Ranges {
    number: Range,
    quotient: Range,
    remainders: [Option<Range>; 2],
}

/// No zero or some, and then the numerator.
fn zeros_and(zero: &Pieces, numerator: &Pieces) -> Result<Pieces, SearchTrouble> {
    let zero = zero.then(&Pieces::of_text(" "))?;
    let mut run = numerator.clone();
    let mut all = run.clone();
    for _ in 1..MOST_PLACES {
        run = zero.then(&run)?;
        all.add(&run);
    }
    Ok(all)
}

/// One to [`MOST_PLACES`] digits.
fn digits(digit: &Pieces, spaced: bool) -> Result<Pieces, SearchTrouble> {
    let gap = Pieces::of_text(if spaced { " " } else { "" });
    let mut run = digit.clone();
    let mut all = run.clone();
    for _ in 1..MOST_PLACES {
        run = run.then(&gap)?.then(digit)?;
        all.add(&run);
    }
    Ok(all)
}

/// The words of a text, as a speaker would record them: split at white space, hyphens and commas.
///
/// [`Numerals::words`](super::Numerals::words) splits in the same way.
pub fn words_in(text: &str) -> impl Iterator<Item = &str> {
    text.split(parts_words).filter(|word| !word.is_empty())
}

fn parts_words(c: char) -> bool {
    c.is_whitespace() || matches!(c, '-' | '\u{2010}' | '\u{2011}' | ',' | '،' | '、' | '፡' | '፣')
}
