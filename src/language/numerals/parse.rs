//! Reading a file: its rule sets and their rules.

use std::collections::HashMap;
use std::fmt;

use super::builder::Builder;
use super::fault::{Fault, fault};
use super::plural::Plurals;
use super::rules::{Part, RuleSet, public_name};
use super::start::Point;

/// Problems that are told at once.
const MOST_PROBLEMS: usize = 100;
/// Rule sets in a file; CLDR's largest has a tenth.
const MOST_SETS: usize = 500;

/// What rules leave to the language they are written in.
#[derive(Debug, Clone, Copy)]
pub struct Language<'a> {
    /// Its tag. By its plural rules (Unicode CLDR) a text is chosen in `$(cardinal,one{…}other{…})$`.
    pub tag: &'a str,
    /// Whether it writes decimals behind a comma. Where a set has both, `x,x` holds then, and else `x.x`.
    pub decimal_comma: bool,
}

/// One thing wrong in a rule file.
#[derive(Debug, Clone, PartialEq, Eq)]
#[non_exhaustive]
pub struct RuleProblem {
    /// Line in the file, from 1.
    pub line: u32,
    /// What is wrong.
    pub message: String,
    /// What to do about it.
    pub hint: String,
}

impl fmt::Display for RuleProblem {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "line {}: {} ({})", self.line, self.message, self.hint)
    }
}

/// Reads the rules of a language, or rules that need none.
pub(super) fn read(text: &str, language: Option<Language<'_>>) -> Result<Vec<RuleSet>, Vec<RuleProblem>> {
    let mut reader = Reader::default();
    for (line, text) in (1..).zip(text.trim_start_matches('\u{feff}').lines()) {
        reader.line(line, text);
    }
    let (sets, mut problems) = reader.finish(language);
    if problems.is_empty() {
        return Ok(sets);
    }
    problems.sort_by_key(|problem| problem.line);
    problems.truncate(MOST_PROBLEMS);
    Err(problems)
}

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

    fn finish(mut self, language: Option<Language<'_>>) -> (Vec<RuleSet>, Vec<RuleProblem>) {
        let written = std::mem::take(&mut self.sets);
        if !written.iter().any(|set| public_name(&set.name).is_some()) {
            self.problem(
                1,
                fault("there is no public rule set", "name one with a single `%`, such as `%cardinal:`"),
            );
        }
        if written.len() > MOST_SETS {
            self.problem(
                1,
                fault(
                    format!("there are {} rule sets, more than {MOST_SETS}", written.len()),
                    "keep those that sentences ask for",
                ),
            );
            return (Vec::new(), self.problems);
        }
        let plurals = language.and_then(|language| Plurals::of(language.tag));
        let comma = language.is_some_and(|language| language.decimal_comma);
        let point = if comma { Point::Comma } else { Point::Point };
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
        let mut lines = Vec::new();
        for (own, set) in written.iter().enumerate() {
            let mut builder = Builder::new(own, &set.name, &places, plurals, point);
            for (line, text) in &set.rules {
                for fault in builder.rule(*line, text) {
                    self.problem(*line, fault);
                }
            }
            let (set, its_lines) = builder.finish();
            sets.push(set);
            lines.push(its_lines);
        }
        for (set, lines) in lines.into_iter().enumerate() {
            let (misplaced, message) = if says_fractions(&sets, set) {
                (lines.never_in_fractions, "`>` and brackets mean nothing in a rule set of fractions")
            } else {
                (
                    lines.only_in_fractions,
                    "`<<` behind a name means something in a rule set of fractions only",
                )
            };
            for line in misplaced {
                self.problem(
                    line,
                    fault(message, "say the numerator by `<%name<`, and its zeros by `<%name<<`"),
                );
            }
        }
        (sets, self.problems)
    }
}

fn says_fractions(sets: &[RuleSet], set: usize) -> bool {
    sets.iter().any(|other| other.decimal.parts().any(|part| *part == Part::Fraction(set)))
}
