//! What is still to be done on a pack, and what looks wrong in it, all at once.

use std::collections::{BTreeMap, BTreeSet};

use super::glossary;
use super::labels::Attribute;
use super::names;
use super::numerals::{Number, Numerals};
use super::pack::{Pack, of_plans, wanted};
use super::review_log::{ReviewLog, fingerprint};
use super::texts::{SOURCE, TEXT_FILES, text_of};
use super::wording::{Unit, units};
use crate::data::Data;
use crate::finding::{Code, Finding};
use crate::guidance::{Fact, ValueInfo, ValueKind};
use crate::plan::wordings;

/// How far a file of a pack has come, or the texts of plans in both files, which a pack may lack.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[non_exhaustive]
pub struct Coverage {
    /// The file, or [`PLANS`].
    pub file: &'static str,
    /// Texts that are translated, and still from the source as it is now.
    pub done: usize,
    /// Texts that are wanted.
    pub all: usize,
    /// Texts whose review holds.
    pub reviewed: usize,
}

/// A place that a reviewer should look at.
#[derive(Debug, Clone, PartialEq, Eq)]
#[non_exhaustive]
pub struct Doubt {
    /// The file, with its line.
    pub place: String,
    /// What the translator doubts.
    pub text: String,
}

/// The state of a pack.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct Report {
    /// Mistakes, and what should be looked at.
    pub findings: Vec<Finding>,
    /// How far each file has come.
    pub coverage: Vec<Coverage>,
    /// What the translator doubts.
    pub doubts: Vec<Doubt>,
    /// Who has reviewed, and when last: roles with a date.
    pub reviews: BTreeMap<String, String>,
}

/// The texts of plans, which a pack may lack, in place of a file.
pub const PLANS: &str = "plans";
/// More words between two pauses than one breath carries.
const LONGEST_BREATH: usize = 30;
/// Forms whose numbers are all tried.
const MOST_FORMS: usize = 100;
/// Numbers that messages may hold.
const GREATEST_NUMBER: u32 = 999_999;

/// Checks a pack. `covered` says whether a font has a letter.
pub fn check(data: &dyn Data, tag: &str, covered: &dyn Fn(char) -> bool) -> Report {
    let mut report =
        Report { findings: Vec::new(), coverage: Vec::new(), doubts: Vec::new(), reviews: BTreeMap::new() };
    let pack = Pack::load(data, tag);
    if let Err(findings) = &pack {
        report.findings.extend(findings.iter().cloned());
    }
    let log = ReviewLog::load(data, tag);
    report.findings.extend(log.findings.iter().cloned());
    report.reviews = log.reviews();
    let mut plans = Coverage { file: PLANS, done: 0, all: 0, reviewed: 0 };
    for file in TEXT_FILES {
        let (Some(source), Some(text)) = (text_of(data, SOURCE, file), text_of(data, tag, file)) else {
            continue;
        };
        let path = format!("locales/{tag}/{file}");
        let (source, own) = (units(&source), units(&text));
        let mut look = Look { path: &path, file, tag, log: &log, findings: &mut report.findings };
        let of_plans: BTreeSet<String> = of_plans(file).into_iter().collect();
        let needed = wanted(file).into_iter().filter(|id| !of_plans.contains(id)).collect();
        report.coverage.push(look.compare(file, &needed, &source, &own));
        let more = look.compare(PLANS, &of_plans, &source, &own);
        plans.done += more.done;
        plans.all += more.all;
        plans.reviewed += more.reviewed;
        look.extra(&source, &own);
        for unit in &own {
            look.facts(unit);
            look.values(unit, &source);
            look.selectors(unit);
            look.letters(unit, covered);
            look.names(unit);
            if file == "spoken.ftl" {
                look.breath(unit);
                look.abbreviations(unit);
            }
        }
        report.doubts.extend(doubts(&path, &text));
    }
    report.coverage.push(plans);
    if let Some(text) = text_of(data, tag, "numbers.rbnf") {
        let path = format!("locales/{tag}/numbers.rbnf");
        report.doubts.extend(doubts(&path, &text));
    }
    report.findings.extend(glossary::load(data, tag).1);
    if let Ok(pack) = &pack {
        report.findings.extend(pack.lacks_of_plan());
        report.findings.extend(pack.phrases().err().unwrap_or_default());
        report.findings.extend(gaps(pack.numerals(), &format!("locales/{tag}/numbers.rbnf")));
    }
    report
}

/// One file of a pack beside its source.
struct Look<'a> {
    path: &'a str,
    file: &'static str,
    tag: &'a str,
    log: &'a ReviewLog,
    findings: &'a mut Vec<Finding>,
}

impl Look<'_> {
    fn add(&mut self, unit: &Unit, finding: Finding) {
        self.findings.push(finding.file(self.path).line(unit.line).field(&unit.id));
    }

    /// Counts which of the texts `ids` are translated; what is missing is reported by the pack's reader.
    fn compare(
        &mut self,
        of: &'static str,
        ids: &BTreeSet<String>,
        source: &[Unit],
        own: &[Unit],
    ) -> Coverage {
        let find = |units: &'_ [Unit], id: &str| units.iter().find(|unit| unit.id == id).cloned();
        let mut coverage = Coverage { file: of, done: 0, all: 0, reviewed: 0 };
        for unit in source.iter().filter(|unit| ids.contains(&unit.id)) {
            coverage.all += 1;
            let Some(translated) = find(own, &unit.id) else { continue };
            if self.tag == SOURCE {
                coverage.done += 1;
                coverage.reviewed +=
                    usize::from(self.log.is_reviewed(self.file, &translated.id, &translated.text));
                continue;
            }
            if translated.is_untranslated(unit) {
                let finding = Finding::warning(Code::UNTRANSLATED, "is still the English text");
                self.add(&translated, finding.hint("translate it, or put the comment \"# same\" above it"));
                continue;
            }
            let entry = self.log.entry(self.file, &unit.id);
            match entry {
                Some(entry) if entry.source != fingerprint(&unit.text) => {
                    let finding = Finding::warning(
                        Code::OUTDATED,
                        "the English text has changed since this was translated",
                    );
                    self.add(&translated, finding.hint(format!("it now reads: {}", unit.text)));
                    continue;
                }
                Some(entry) if entry.by.is_some() && entry.text != fingerprint(&translated.text) => {
                    let finding = Finding::note(
                        Code::REVIEW_DROPPED,
                        "the text has changed since it was reviewed: the review is dropped",
                    );
                    self.add(&translated, finding.hint("have it read again"));
                }
                _ => {}
            }
            coverage.done += 1;
            coverage.reviewed +=
                usize::from(self.log.is_reviewed(self.file, &translated.id, &translated.text));
        }
        coverage
    }

    /// Messages that nothing uses.
    fn extra(&mut self, source: &[Unit], own: &[Unit]) {
        let ids: BTreeSet<String> = wanted(self.file).into_iter().collect();
        let referred: BTreeSet<&str> = own.iter().flat_map(|unit| &unit.refers).map(String::as_str).collect();
        let in_source = |id: &str| source.iter().any(|unit| unit.id == id);
        for unit in own {
            let id = unit.id.as_str();
            let used = ids.contains(id) || referred.contains(id) || in_source(id) || names::is_name(id);
            if !used {
                self.add(
                    unit,
                    Finding::warning(Code::UNUSED_MESSAGE, "nothing uses this message")
                        .hint("take it out, or check its name"),
                );
            }
        }
    }

    /// Facts that a message must carry at every length, and does not refer to.
    fn facts(&mut self, unit: &Unit) {
        let (message, attribute) = match unit.id.split_once('.') {
            Some((message, attribute)) => (message, Attribute::from_name(attribute)),
            None => (unit.id.as_str(), None),
        };
        let carries = match attribute {
            Some(attribute) => attribute.is_told(),
            None => self.file == "spoken.ftl",
        };
        for fact in Fact::ALL.into_iter().filter(|_| carries) {
            let is_of = fact.subjects().iter().any(|subject| subject.name() == message);
            let term = format!("-{}", fact.name());
            let of_term = |name: &String| name == &term || name.starts_with(&format!("{term}-"));
            // Aloud a step never goes without its cautions: one that carries the fact says it.
            let is_said = attribute.is_none() && fact.is_beside(message);
            if is_of && !is_said && !unit.refers.iter().any(of_term) {
                let finding = Finding::error(Code::FACT_LOST, format!("does not say what {term} tells"));
                let hint = format!("put {{ {term} }} into it, or a shorter form such as {{ {term}-short }}");
                self.add(unit, finding.hint(hint));
            }
        }
    }

    /// Values that do not exist here, and those that nobody can say.
    fn values(&mut self, unit: &Unit, source: &[Unit]) {
        let here = source.iter().find(|of| of.id == unit.id).map(|of| &of.variables);
        for variable in &unit.variables {
            let value = ValueInfo::of(variable);
            let in_source = here.is_some_and(|here| here.contains(variable));
            if !in_source && !value.is_some_and(|value| value.is_common) {
                let finding = Finding::error(
                    Code::UNKNOWN_VALUE,
                    format!("${variable} is not a value that messages may use"),
                );
                self.add(unit, finding.hint("docs/translate.md tells the values there are"));
            } else if self.file == "spoken.ftl"
                && !value.is_some_and(|value| value.is_spoken)
                && !is_of_plan(&unit.id, variable)
            {
                let finding = Finding::error(Code::UNKNOWN_VALUE, format!("${variable} cannot be said"));
                self.add(unit, finding.hint("take it out: texts of the case are printed, never spoken"));
            }
        }
    }

    /// Selectors that can never choose.
    fn selectors(&mut self, unit: &Unit) {
        const PLURALS: [&str; 6] = ["zero", "one", "two", "few", "many", "other"];
        for (variable, keys) in &unit.selectors {
            let names = match ValueInfo::of(variable).map(|value| value.kind) {
                Some(ValueKind::Choice(names)) => Some([names, &["other"]].concat()),
                _ => None,
            };
            let possible = |key: &str| match &names {
                Some(names) => names.contains(&key),
                None => PLURALS.contains(&key) || key.parse::<f64>().is_ok(),
            };
            for key in keys.iter().filter(|key| !possible(key)) {
                let finding = Finding::error(
                    Code::DEAD_VARIANT,
                    format!("the variant [{key}] of ${variable} is never chosen"),
                );
                let hint = names.as_ref().map_or("write a plural category or a number".to_owned(), |names| {
                    format!("variants are {}", names.join(", "))
                });
                self.add(unit, finding.hint(hint));
            }
        }
    }

    /// Names of months and weekdays that are not CLDR's.
    fn names(&mut self, unit: &Unit) {
        let Some(cldr) = names::cldr(self.tag, &unit.id) else { return };
        if unit.literals.len() != cldr.len() {
            let finding =
                Finding::note(Code::OWN_NAMES, format!("the pack's own names; CLDR has {}", cldr.join(", ")));
            return self.add(unit, finding.hint("take the message out to have CLDR's"));
        }
        let pairs = unit.literals.iter().zip(&cldr).filter(|(own, cldr)| own.trim() != **cldr);
        let other: Vec<String> = pairs.map(|(own, cldr)| format!("{} (CLDR: {cldr})", own.trim())).collect();
        if !other.is_empty() {
            let finding =
                Finding::note(Code::OWN_NAMES, format!("the pack's own names: {}", other.join(", ")));
            self.add(unit, finding.hint("take the message out to have CLDR's"));
        }
    }

    fn letters(&mut self, unit: &Unit, covered: &dyn Fn(char) -> bool) {
        let lacking: BTreeSet<char> = unit
            .literals
            .iter()
            .flat_map(|text| text.chars())
            .filter(|c| !c.is_whitespace() && !covered(*c))
            .collect();
        if !lacking.is_empty() {
            let letters: String = lacking.into_iter().collect();
            let finding = Finding::warning(Code::NO_FONT, format!("no font has {letters}"));
            self.add(
                unit,
                finding.hint("put a font that has them into fonts/, or write it in other letters"),
            );
        }
    }

    /// Sentences longer than a breath. A number counts as two words.
    fn breath(&mut self, unit: &Unit) {
        let marked = unit.literals.join(" … … ");
        let longest = marked
            .split(['.', '!', '?', '።', ':', ';'])
            .map(|sentence| sentence.split_whitespace().count())
            .max()
            .unwrap_or(0);
        // A selector's variants stand side by side here; only one of them is said.
        let variants = unit.selectors.iter().map(|(_, keys)| keys.len()).max().unwrap_or(1).max(1);
        if longest / variants > LONGEST_BREATH {
            let finding = Finding::warning(
                Code::LONG_SENTENCE,
                format!("a sentence has about {} words", longest / variants),
            );
            self.add(unit, finding.hint("part it, so that it can be said in one breath"));
        }
    }

    /// Words without a vowel in Latin letters are abbreviations that nobody can read aloud.
    fn abbreviations(&mut self, unit: &Unit) {
        let vowel = |c: char| "aeiouyáàâãäéèêëíìîïóòôõöúùûü".contains(c.to_ascii_lowercase());
        let words = unit
            .literals
            .iter()
            .flat_map(|text| text.split(|c: char| !c.is_alphanumeric() && c != '\'' && c != '’'));
        let short: BTreeSet<&str> = words
            .filter(|word| word.chars().count() > 1 && word.chars().all(|c| c.is_ascii_alphabetic()))
            .filter(|word| !word.chars().any(vowel))
            .collect();
        for word in short {
            let finding = Finding::warning(
                Code::ABBREVIATION,
                format!("\"{word}\" looks like an abbreviation, which nobody can read aloud"),
            );
            self.add(unit, finding.hint("write it out"));
        }
    }
}

/// Whether a value is one of a reason's or a remark's own.
fn is_of_plan(id: &str, variable: &str) -> bool {
    let wording = wordings().find(|wording| wording.code == id);
    wording.is_some_and(|wording| wording.values.iter().any(|(name, _)| *name == variable))
}

/// Lines `# doubt: …`.
fn doubts(path: &str, text: &str) -> Vec<Doubt> {
    let doubt = |(line, number): (&str, u32)| {
        let comment = line.trim_start().strip_prefix('#')?.trim_start_matches('#').trim_start();
        let text = comment.strip_prefix("doubt:")?.trim().to_owned();
        Some(Doubt { place: format!("{path}:{number}"), text })
    };
    text.lines().zip(1..).filter_map(doubt).collect()
}

/// Numbers that the rules have no words for, the first of each form.
fn gaps(numerals: &Numerals, path: &str) -> Vec<Finding> {
    let mut findings = Vec::new();
    for form in numerals.forms().into_iter().take(MOST_FORMS) {
        let of_days = ["day", "date"].contains(&form) || form.starts_with("ordinal");
        let last = if of_days { 31 } else { GREATEST_NUMBER };
        let step = if of_days { 1 } else { 997 };
        let numbers = (u32::from(of_days)..=last.min(1200)).chain((1200..=last).step_by(step));
        let gap = numbers.into_iter().find(|number| {
            Number::rounded(f64::from(*number), 0).is_none_or(|number| numerals.say(number, form).is_err())
        });
        if let Some(number) = gap {
            let finding =
                Finding::warning(Code::NO_NUMBER_WORDS, format!("the form {form} has no words for {number}"));
            findings
                .push(finding.file(path).field(form).hint(format!("messages may need numbers up to {last}")));
        }
    }
    findings
}
