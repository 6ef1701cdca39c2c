//! Reading a file: its rule sets and their rules.

use std::collections::HashMap;

use super::builder::Builder;
use super::rules::RuleSet;
use super::{RuleProblem, public_name};

#[derive(Default)]
pub(super) struct Reader {
    pub(super) sets: Vec<WrittenSet>,
    pub(super) problems: Vec<RuleProblem>,
    /// Inside a set of collation rules, which are of use only for reading numbers back from words.
    pub(super) skipping: bool,
}

pub(super) struct WrittenSet {
    pub(super) line: u32,
    pub(super) name: String,
    /// Line and text, without the `;`.
    pub(super) rules: Vec<(u32, String)>,
}

/// A problem before its line is known: message and hint.
pub(super) type Fault = (String, String);

impl Reader {
    pub(super) fn problem(&mut self, line: u32, (message, hint): Fault) {
        self.problems.push(RuleProblem { line, message, hint });
    }

    pub(super) fn line(&mut self, line: u32, text: &str) {
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
    pub(super) fn header<'t>(&mut self, line: u32, text: &'t str) -> &'t str {
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

    pub(super) fn finish(mut self) -> (Vec<RuleSet>, Vec<RuleProblem>) {
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

pub(super) fn fault(message: impl Into<String>, hint: impl Into<String>) -> Fault {
    (message.into(), hint.into())
}
