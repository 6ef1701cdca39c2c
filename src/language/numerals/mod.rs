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
//! The spell-out files of Unicode CLDR are read as they are. Rules that choose a word by plural category, as in
//! `$(cardinal,one{milhão}other{milhões})$`, need the language they are written in: [`Numerals::parse_in`].
//!
//! Differences from ICU, which reads the same syntax:
//! - a rule ends with `;` on the line where it starts, and `#` starts a comment, on a line of its own or behind a `;`;
//! - any number of substitutions, choices and brackets in one rule;
//! - what ICU would round, drop or print as digits is an error here; `Inf` and `NaN` rules are passed over, as a
//!   [`Number`] is always finite;
//! - digits behind the point are said as they are written: 5.50 has two, 5.0 has one.

mod apply;
mod body;
mod builder;
mod error;
mod fault;
mod number;
mod parse;
mod plural;
mod read_number;
mod rules;
mod start;
mod vocabulary;

use std::collections::BTreeSet;
use std::ops::RangeInclusive;
use std::sync::OnceLock;

pub use error::NumeralError;
pub use number::Number;
pub use parse::{Language, RuleProblem};
pub use vocabulary::words_in;

use apply::Speech;
use rules::{RuleSet, public_name};
use vocabulary::Search;

/// Numbers of a form that are recorded whole, so that nothing joins within them.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct WholeNumbers {
    /// The form, as in `SAY($n, form: "cardinal")`.
    pub form: String,
    /// The numbers.
    pub numbers: RangeInclusive<u32>,
}

/// Rules that say the numbers of one language.
#[derive(Debug, Clone)]
pub struct Numerals {
    sets: Vec<RuleSet>,
    /// The words of each set, once they have been asked for.
    words: Vec<OnceLock<Result<BTreeSet<String>, NumeralError>>>,
}

impl Numerals {
    /// The rules in `text`, which leave nothing to a language: they have no `$(cardinal,…)$`, and of `x.x` and `x,x` in
    /// one set the former holds.
    ///
    /// # Errors
    /// All problems of the text, in the order of their lines; see [`RuleProblem`].
    pub fn parse(text: &str) -> Result<Numerals, Vec<RuleProblem>> {
        parse::read(text, None).map(Numerals::of)
    }

    /// The rules in `text`, written in `language`.
    ///
    /// # Errors
    /// As of [`parse`](Numerals::parse); also where a rule names a plural category that the language does not have, or
    /// none of its plurals is known.
    pub fn parse_in(text: &str, language: Language<'_>) -> Result<Numerals, Vec<RuleProblem>> {
        parse::read(text, Some(language)).map(Numerals::of)
    }

    fn of(sets: Vec<RuleSet>) -> Numerals {
        let words = sets.iter().map(|_| OnceLock::new()).collect();
        Numerals { sets, words }
    }

    /// Names of the public rule sets without their `%`, such as `cardinal` or `class-4`, in the order of the file.
    pub fn forms(&self) -> Vec<&str> {
        self.sets.iter().filter_map(|set| public_name(&set.name)).collect()
    }

    /// The words of `number` in `form`.
    ///
    /// # Errors
    /// [`NumeralError::UnknownForm`]; [`NumeralError::BeyondRules`] where the rules have no words for the number;
    /// [`NumeralError::Endless`] where the rules are at fault.
    pub fn say(&self, number: Number, form: &str) -> Result<String, NumeralError> {
        let set = self.form(form)?;
        Speech::of(&self.sets, number, form, set)
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
        let search = || Search::of(&self.sets, form, set);
        self.words.get(set).map_or_else(search, |known| known.get_or_init(search).clone())
    }

    fn form(&self, form: &str) -> Result<usize, NumeralError> {
        let found = self.sets.iter().position(|set| public_name(&set.name) == Some(form));
        found.ok_or_else(|| NumeralError::UnknownForm {
            form: form.to_owned(),
            known: self.forms().into_iter().map(str::to_owned).collect(),
        })
    }
}
