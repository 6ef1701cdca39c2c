//! Number words, by rules in the Unicode RBNF syntax (UTS #35 part 3, "Rule-Based Number Formatting").
//!
//! A rule file holds *rule sets*, each of which says numbers in one form. A rule starts at a base value and holds up to
//! the next one; `<<` says how many times the rule's divisor goes into the number, `>>` says what is left over, text in
//! brackets is left out where nothing is left over:
//!
//! ```
//! use kabla::language::numerals::{Numerals, NumeralError};
//!
//! let rules = "
//! %count:            # a public set: a form one can ask for
//! 0: none; one; two; three; four; five; six; seven; eight; nine;
//! 10: ten[ and >>];
//! 20: << tens[ and >>];
//! 100: =#,##0=;      # digits are not words: numbers end here
//! ";
//! let numerals = Numerals::parse(rules).map_err(|problems| format!("{problems:?}"))?;
//! assert_eq!(numerals.say(34.into(), "count")?, "three tens and four");
//! assert!(matches!(numerals.say(100.into(), "count"), Err(NumeralError::BeyondRules { .. })));
//! # Ok::<(), Box<dyn std::error::Error>>(())
//! ```
//!
//! A number that the rules have no words for is an error that names the number and the form. Nothing is ever said in
//! digits, in another language's words, or rounded to a number that does have words.
//!
//! Differences from ICU, which reads the same syntax:
//! - a rule ends with `;` on the line where it starts, and `#` starts a comment, on a line of its own or behind a `;`;
//! - any number of substitutions and brackets in one rule, and `[a|b]`, which says `b` where nothing is left over;
//! - what ICU would round, drop or print as digits is an error here, and so is a `$(cardinal,…)$` choice, as it needs the
//!   language's plural rules, and a rule set of fractions (tenths, hundredths) behind the decimal point;
//! - where a set has both an `x.x` and an `x,x` rule, the `x.x` rule holds.

use std::collections::{BTreeSet, HashMap};
use std::fmt;
use std::rc::Rc;
use std::str::FromStr;

/// How deep rules may call each other; ICU stops at the same depth.
const DEEPEST: u32 = 64;
/// How many rules one number may use, so that rules which double at each step end as well.
const MOST_STEPS: u32 = 10_000;
/// How many different word pieces [`Numerals::words`] keeps for one rule set.
const MOST_PIECES: usize = 20_000;
/// How many digits a [`Number`] may have behind the point.
const MOST_PLACES: u8 = 18;

const PLURAL: &str = "a choice by plural category";
const FRACTIONS: &str = "a rule set of fractions";

/// Rules that say the numbers of one language.
#[derive(Debug, Clone)]
pub struct Numerals {
    sets: Vec<RuleSet>,
}

/// A number to be said: a sign, a whole part up to `u64::MAX`, and up to 18 decimal digits as they are written.
///
/// `5.5` and `5.50` are different numbers here, since they are said differently.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Number {
    negative: bool,
    whole: u64,
    decimals: u64,
    places: u8,
}

/// One thing wrong in a rule file.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct RuleProblem {
    /// Line in the file, from 1.
    pub line: u32,
    /// What is wrong.
    pub message: String,
    /// What to do about it.
    pub hint: String,
}

/// Why a number has no words.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum NumeralError {
    /// The rules have no public set of this name.
    #[error("there are no rules for the form `{form}`; there are {}", .known.join(", "))]
    UnknownForm {
        /// The form asked for.
        form: String,
        /// The forms there are.
        known: Vec<String>,
    },
    /// The rules of this form do not reach this number.
    #[error("the rules of the form `{form}` have no words for {number}")]
    BeyondRules {
        /// The number asked for.
        number: Number,
        /// The form asked for.
        form: String,
    },
    /// The rule for this number uses a part of the syntax that cannot be said.
    #[error("the rules of the form `{form}` need {construct} for {number}, which cannot be said")]
    Unsupported {
        /// The number asked for.
        number: Number,
        /// The form asked for.
        form: String,
        /// The part of the syntax.
        construct: &'static str,
    },
    /// The rules send this number round in a circle, or through more rules than any number needs.
    #[error("the rules of the form `{form}` come to no end for {number}")]
    Endless {
        /// A number for which this happens.
        number: Number,
        /// The form asked for.
        form: String,
    },
    /// The form has too many different words to list, as in a language that writes a number as one word.
    #[error("the rules of the form `{form}` make too many different words to list")]
    TooManyWords {
        /// The form asked for.
        form: String,
    },
    /// The text is no number in plain digits.
    #[error(
        "`{text}` is not a number such as 12, -3 or 5.25 (at most {MOST_PLACES} digits behind the point)"
    )]
    NotANumber {
        /// The text.
        text: String,
    },
}

/// The words of a text, as a speaker would record them: split at white space, hyphens and commas.
///
/// [`Numerals::words`] splits in the same way.
pub fn words_in(text: &str) -> impl Iterator<Item = &str> {
    text.split(parts_words).filter(|word| !word.is_empty())
}

fn parts_words(c: char) -> bool {
    c.is_whitespace() || matches!(c, '-' | '\u{2010}' | '\u{2011}' | ',' | '،' | '、' | '፡' | '፣')
}

impl From<u64> for Number {
    fn from(whole: u64) -> Number {
        Number { negative: false, whole, decimals: 0, places: 0 }
    }
}

impl Number {
    /// `value` with at most `decimals` (and at most 18) digits behind the point, without zeros at the end.
    ///
    /// The shortest decimal number that stands for `value` is rounded, halves away from zero: 2.5 becomes 3, and 0.15
    /// becomes 0.2. `None` when the value is not finite or its whole part exceeds `u64::MAX`.
    pub fn rounded(value: f64, decimals: u8) -> Option<Number> {
        if !value.is_finite() {
            return None;
        }
        let text = value.abs().to_string();
        let (whole, digits) = text.split_once('.').unwrap_or((text.as_str(), ""));
        let mut whole: u64 = whole.parse().ok()?;
        let mut places = decimals.min(MOST_PLACES);
        let mut digits = digits.chars().map(|digit| digit.to_digit(10).unwrap_or(0));
        let mut fraction: u64 = 0;
        let mut one: u64 = 1;
        for _ in 0..places {
            fraction = fraction * 10 + u64::from(digits.next().unwrap_or(0));
            one *= 10;
        }
        if digits.next().unwrap_or(0) >= 5 {
            fraction += 1;
        }
        if fraction == one {
            fraction = 0;
            whole = whole.checked_add(1)?;
        }
        while places > 0 && fraction.is_multiple_of(10) {
            fraction /= 10;
            places -= 1;
        }
        Some(Number {
            negative: value < 0.0 && (whole, fraction) != (0, 0),
            whole,
            decimals: fraction,
            places,
        })
    }

    /// The part before the point, without its sign.
    pub fn whole(&self) -> u64 {
        self.whole
    }

    /// The digits behind the point as they are written, `""` for a whole number.
    pub fn decimals(&self) -> String {
        if self.places == 0 {
            return String::new();
        }
        format!("{:0places$}", self.decimals, places = usize::from(self.places))
    }

    /// Whether the number is below zero.
    pub fn is_negative(&self) -> bool {
        self.negative
    }

    fn without_sign(self) -> Number {
        Number { negative: false, ..self }
    }
}

impl FromStr for Number {
    type Err = NumeralError;

    /// Plain digits with an optional `-` and one optional point; the digits behind the point are kept as written.
    fn from_str(text: &str) -> Result<Number, NumeralError> {
        let wrong = || NumeralError::NotANumber { text: text.to_owned() };
        let number = |digits: &str| -> Option<u64> {
            let plain = !digits.is_empty() && digits.chars().all(|c| c.is_ascii_digit());
            digits.parse().ok().filter(|_| plain)
        };
        let (negative, digits) = match text.strip_prefix('-') {
            Some(rest) => (true, rest),
            None => (false, text),
        };
        let (whole, decimals) = match digits.split_once('.') {
            Some((whole, decimals)) => (whole, Some(decimals)),
            None => (digits, None),
        };
        let whole = number(whole).ok_or_else(wrong)?;
        let (decimals, places) = match decimals {
            Some(digits) => {
                let places = u8::try_from(digits.len()).ok().filter(|places| *places <= MOST_PLACES);
                (number(digits).ok_or_else(wrong)?, places.ok_or_else(wrong)?)
            }
            None => (0, 0),
        };
        Ok(Number { negative: negative && (whole, decimals) != (0, 0), whole, decimals, places })
    }
}

impl fmt::Display for Number {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let sign = if self.negative { "-" } else { "" };
        write!(f, "{sign}{}", self.whole)?;
        if self.places > 0 {
            write!(f, ".{}", self.decimals())?;
        }
        Ok(())
    }
}

impl fmt::Display for RuleProblem {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "line {}: {} ({})", self.line, self.message, self.hint)
    }
}

impl Numerals {
    /// The rules in `text`.
    ///
    /// # Errors
    /// All problems of the text, in the order of their lines; see [`RuleProblem`].
    pub fn parse(text: &str) -> Result<Numerals, Vec<RuleProblem>> {
        let mut reader = Reader::default();
        for (line, text) in (1..).zip(text.trim_start_matches('\u{feff}').lines()) {
            reader.line(line, text);
        }
        let (sets, mut problems) = reader.finish();
        if problems.is_empty() {
            return Ok(Numerals { sets });
        }
        problems.sort_by_key(|problem| problem.line);
        Err(problems)
    }

    /// Names of the public rule sets without their `%`, such as `cardinal` or `class-4`, in the order of the file.
    pub fn forms(&self) -> Vec<&str> {
        self.sets.iter().filter_map(|set| public_name(&set.name)).collect()
    }

    /// The words of `number` in `form`.
    ///
    /// # Errors
    /// [`NumeralError::UnknownForm`]; [`NumeralError::BeyondRules`] where the rules have no words for the number;
    /// [`NumeralError::Unsupported`] and [`NumeralError::Endless`] where the rules are at fault.
    pub fn say(&self, number: Number, form: &str) -> Result<String, NumeralError> {
        let set = self.form(form)?;
        let mut speech = Speech { numerals: self, text: String::new(), steps: 0 };
        match speech.set(set, number, 0) {
            Ok(()) => Ok(speech.text),
            Err(trouble) => Err(trouble.about(number, form)),
        }
    }

    /// Every word that [`say`](Numerals::say) can produce in `form`, each once.
    ///
    /// The words are found by following the rules with ranges of numbers, not by saying them all, so that the list holds
    /// at any size of number. It may hold a word too many where parts of one word depend on each other in ways that
    /// ranges do not show; it lacks none.
    ///
    /// # Errors
    /// [`NumeralError::UnknownForm`]; [`NumeralError::Endless`] where some number comes to no end;
    /// [`NumeralError::TooManyWords`] above 20,000 words or parts of words.
    pub fn words(&self, form: &str) -> Result<BTreeSet<String>, NumeralError> {
        let set = self.form(form)?;
        let mut search = Search { numerals: self, known: HashMap::new() };
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

    fn form(&self, form: &str) -> Result<usize, NumeralError> {
        let found = self.sets.iter().position(|set| public_name(&set.name) == Some(form));
        found.ok_or_else(|| NumeralError::UnknownForm {
            form: form.to_owned(),
            known: self.forms().into_iter().map(str::to_owned).collect(),
        })
    }
}

fn public_name(name: &str) -> Option<&str> {
    name.strip_prefix('%').filter(|name| !name.starts_with('%'))
}

// ---- The rules -----------------------------------------------------------------------------------------------------

#[derive(Debug, Clone, Default)]
struct RuleSet {
    /// With its `%` or `%%`.
    name: String,
    /// By rising base value.
    rules: Vec<Rule>,
    /// `-x`
    negative: Option<Rule>,
    /// `x.x`
    decimal: Option<Rule>,
    /// `0.x`
    below_one: Option<Rule>,
    /// `x.0`
    zero_decimals: Option<Rule>,
}

#[derive(Debug, Clone)]
struct Rule {
    base: u64,
    divisor: u64,
    parts: Vec<Part>,
}

#[derive(Debug, Clone, PartialEq, Eq)]
enum Part {
    Text(String),
    /// How many times the divisor goes into the number.
    Quotient(usize),
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
    Digits,
    Unsupported(&'static str),
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
enum Target {
    Set(usize),
    /// One rule of one set, whatever its base value.
    Rule(usize, usize),
}

impl RuleSet {
    /// The place of the rule that says the whole number `n`.
    fn place_of(&self, n: u64) -> Option<usize> {
        let place = self.rules.partition_point(|rule| rule.base <= n).checked_sub(1)?;
        match self.rules.get(place) {
            Some(rule) if rule.steps_back() && n.is_multiple_of(rule.divisor) => place.checked_sub(1),
            Some(_) => Some(place),
            None => None,
        }
    }
}

impl Rule {
    /// Whether the rule, as it says a remainder, leaves the numbers without one to the rule before it.
    fn steps_back(&self) -> bool {
        !self.base.is_multiple_of(self.divisor)
            && self.parts.iter().any(|part| matches!(part, Part::Remainder(_)))
    }

    /// Whether the rule hands a sign or decimals on to another set, so that none is lost.
    fn hands_on(&self) -> bool {
        let loses = |part: &Part| {
            matches!(part, Part::Quotient(_) | Part::Remainder(_) | Part::Whole(_) | Part::Decimals { .. })
        };
        self.parts.iter().any(|part| matches!(part, Part::Same(_))) && !self.parts.iter().any(loses)
    }
}

// ---- Saying a number -----------------------------------------------------------------------------------------------

struct Speech<'a> {
    numerals: &'a Numerals,
    text: String,
    steps: u32,
}

enum Trouble {
    Beyond,
    Endless,
    Unsupported(&'static str),
}

impl Trouble {
    fn about(self, number: Number, form: &str) -> NumeralError {
        let form = form.to_owned();
        match self {
            Trouble::Beyond => NumeralError::BeyondRules { number, form },
            Trouble::Endless => NumeralError::Endless { number, form },
            Trouble::Unsupported(construct) => NumeralError::Unsupported { number, form, construct },
        }
    }
}

impl Speech<'_> {
    fn set(&mut self, set: usize, number: Number, depth: u32) -> Result<(), Trouble> {
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

    fn rule(&mut self, rule: &Rule, number: Number, depth: u32) -> Result<(), Trouble> {
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

// ---- Finding all words ---------------------------------------------------------------------------------------------

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
    if front.len().saturating_mul(back.len()) > MOST_PIECES {
        return Err(SearchTrouble::TooMany);
    }
    let pairs = front.iter().flat_map(|front| back.iter().map(move |back| format!("{front}{back}")));
    Ok(pairs.collect())
}

struct Search<'a> {
    numerals: &'a Numerals,
    /// `None` while it is being found.
    known: HashMap<(Target, Range), Option<Rc<Pieces>>>,
}

impl Search<'_> {
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

// ---- Reading rules -------------------------------------------------------------------------------------------------

#[derive(Default)]
struct Reader {
    sets: Vec<WrittenSet>,
    problems: Vec<RuleProblem>,
    /// Inside a set of collation rules, which are of use only for reading numbers back from words.
    skipping: bool,
}

struct WrittenSet {
    line: u32,
    name: String,
    /// Line and text, without the `;`.
    rules: Vec<(u32, String)>,
}

/// A problem before its line is known: message and hint.
type Fault = (String, String);

/// How a rule starts.
enum Start {
    Base { base: u64, divisor: u64 },
    Following,
    Negative,
    Decimal { comma: bool },
    BelowOne,
    ZeroDecimals,
    Ignored,
}

/// Where a rule stands, which decides what `<<` and `>>` mean in it.
#[derive(Clone, Copy)]
enum Kind {
    /// With the place of the rule before it.
    Counting {
        before: Option<usize>,
    },
    Negative,
    Decimal,
}

/// The parts of a rule, with and without its text in brackets.
#[derive(Default)]
struct Body {
    kept: Vec<Part>,
    left_out: Vec<Part>,
    optional: bool,
}

impl Reader {
    fn problem(&mut self, line: u32, (message, hint): Fault) {
        self.problems.push(RuleProblem { line, message, hint });
    }

    fn line(&mut self, line: u32, text: &str) {
        let mut rest = text.trim();
        while !rest.is_empty() && !rest.starts_with('#') {
            if rest.starts_with('%') {
                rest = self.header(line, rest);
            } else if self.skipping {
                return;
            } else {
                let (rule, behind) = match rest.split_once(';') {
                    Some(split) => split,
                    None => {
                        self.problem(line, fault("this rule has no end", "end it with `;` on the same line"));
                        (rest, "")
                    }
                };
                match self.sets.last_mut() {
                    Some(set) => set.rules.push((line, rule.to_owned())),
                    None => self.problem(
                        line,
                        fault(
                            "this rule stands before any rule set",
                            "start a rule set first, such as `%cardinal:`",
                        ),
                    ),
                }
                rest = behind.trim_start();
            }
        }
    }

    /// Starts a set; gives the text behind its name.
    fn header<'t>(&mut self, line: u32, text: &'t str) -> &'t str {
        let Some((name, behind)) = text.split_once(':') else {
            self.problem(
                line,
                fault("this name of a rule set has no end", "put `:` behind the name, such as `%cardinal:`"),
            );
            return "";
        };
        let name = name.trim_end();
        let name = name.strip_suffix("@noparse").unwrap_or(name);
        let bare = name.strip_prefix("%%").or_else(|| name.strip_prefix('%')).unwrap_or(name);
        if bare.is_empty() || !bare.chars().all(|c| c.is_alphanumeric() || matches!(c, '-' | '_')) {
            self.problem(
                line,
                fault(
                    format!("`{name}` is no name for a rule set"),
                    "use letters, digits, `-` and `_` behind `%` or `%%`",
                ),
            );
        }
        self.skipping = name == "%%lenient-parse";
        if !self.skipping {
            self.sets.push(WrittenSet { line, name: name.to_owned(), rules: Vec::new() });
        }
        behind.trim_start()
    }

    fn finish(mut self) -> (Vec<RuleSet>, Vec<RuleProblem>) {
        let written = std::mem::take(&mut self.sets);
        if !written.iter().any(|set| public_name(&set.name).is_some()) {
            self.problem(
                1,
                fault("there is no public rule set", "name one with a single `%`, such as `%cardinal:`"),
            );
        }
        let mut places: HashMap<&str, usize> = HashMap::new();
        for (place, set) in written.iter().enumerate() {
            if places.insert(&set.name, place).is_some() {
                self.problem(
                    set.line,
                    fault(
                        format!("the rule set `{}` is there twice", set.name),
                        "give each set its own name",
                    ),
                );
            }
            if set.rules.is_empty() {
                self.problem(
                    set.line,
                    fault(
                        format!("the rule set `{}` has no rules", set.name),
                        "write its rules, or take it out",
                    ),
                );
            }
        }
        let mut sets = Vec::new();
        for (own, set) in written.iter().enumerate() {
            let mut builder = Builder {
                set: RuleSet { name: set.name.clone(), ..RuleSet::default() },
                own,
                places: &places,
                previous: None,
                comma: None,
            };
            for (line, text) in &set.rules {
                for fault in builder.rule(text) {
                    self.problem(*line, fault);
                }
            }
            sets.push(builder.finish());
        }
        (sets, self.problems)
    }
}

fn fault(message: impl Into<String>, hint: impl Into<String>) -> Fault {
    (message.into(), hint.into())
}

struct Builder<'a> {
    set: RuleSet,
    own: usize,
    places: &'a HashMap<&'a str, usize>,
    /// Base value of the rule before, and whether it has text in brackets that made it two rules.
    previous: Option<(u64, bool)>,
    comma: Option<Rule>,
}

impl Builder<'_> {
    /// Adds a rule; gives what is wrong with it.
    fn rule(&mut self, text: &str) -> Vec<Fault> {
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

    fn special(
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

    fn following(&mut self, body: Body, faults: &mut Vec<Fault>) {
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

    fn counting(&mut self, base: u64, divisor: u64, body: Body, faults: &mut Vec<Fault>) {
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

    fn finish(mut self) -> RuleSet {
        self.set.decimal = self.set.decimal.or(self.comma);
        self.set
    }

    fn body(&self, text: &str, kind: Kind, faults: &mut Vec<Fault>) -> Body {
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

    fn part(&self, mark: Mark, token: Token, kind: Kind) -> Result<Part, Fault> {
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

/// Whether text stands in brackets.
#[derive(Clone, Copy)]
enum Bracket {
    None,
    Kept,
    /// Behind the `|`: said where the text before it is left out.
    LeftOut,
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
    Set(String),
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
        Some('%') => Ok(Token::Set(inside)),
        Some('#' | '0') => Ok(Token::Digits),
        Some(_) => Err(fault(
            format!("`{inside}` is neither a rule set nor a digit format"),
            "write `%` or `%%` and the name of a rule set",
        )),
    }
}

/// How the rule starts, and its text.
fn start_of(rule: &str) -> Result<(Start, &str), Fault> {
    let Some((start, text)) = rule.split_once(':') else {
        return Ok((Start::Following, rule));
    };
    let start = start.trim();
    let found = match start {
        "-x" => Start::Negative,
        "x.x" => Start::Decimal { comma: false },
        "x,x" => Start::Decimal { comma: true },
        "0.x" | "0,x" => Start::BelowOne,
        "x.0" | "x,0" => Start::ZeroDecimals,
        "Inf" | "NaN" => Start::Ignored,
        _ if start.starts_with(|c: char| c.is_ascii_digit()) => base_value(start)?,
        _ if start.contains(|c: char| c.is_whitespace() || "<>=←→[]'$".contains(c)) => {
            return Ok((Start::Following, rule));
        }
        _ => {
            return Err(fault(
                format!("`{start}:` is no start of a rule"),
                "start it with a base value such as `20:`, or with `'` if the colon belongs to the words",
            ));
        }
    };
    Ok((found, text))
}

/// `1000`, `1,000/20` or `1000>>`.
fn base_value(start: &str) -> Result<Start, Fault> {
    let number = |digits: &str| -> Option<u64> {
        let digits: String = digits.chars().filter(|c| !matches!(c, ',' | '.' | ' ')).collect();
        let plain = !digits.is_empty() && digits.chars().all(|c| c.is_ascii_digit());
        digits.parse().ok().filter(|_| plain)
    };
    let unlowered = start.trim_end_matches(['>', '→']);
    let lowered = start.chars().count() - unlowered.chars().count();
    let (base, radix) = match unlowered.split_once('/') {
        Some((base, radix)) => (number(base), number(radix)),
        None => (number(unlowered), Some(10)),
    };
    let (Some(base), Some(radix)) = (base, radix) else {
        return Err(fault(
            format!("`{start}` is no base value"),
            "write a whole number, and `/` and a radix if it is not 10, such as `80/20:`",
        ));
    };
    match divisor(base, radix, lowered) {
        Some(divisor) => Ok(Start::Base { base, divisor }),
        None => Err(fault(
            format!("`{start}` gives no divisor"),
            "use a radix of 2 or more, and fewer `>` than the base value has powers of the radix",
        )),
    }
}

/// The highest power of `radix` up to `base`, lowered by some powers.
fn divisor(base: u64, radix: u64, lowered: usize) -> Option<u64> {
    if radix < 2 {
        return None;
    }
    let exponent = base.checked_ilog(radix).unwrap_or(0);
    radix.checked_pow(exponent.checked_sub(u32::try_from(lowered).ok()?)?)
}
