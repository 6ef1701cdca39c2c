//! Every phrase a speaker records, found by walking the syntax tree.
//!
//! Walks a message as formatting would, but takes every variant of every
//! selector, and notes with each phrase how its voice may end: that depends
//! on what may follow it.

use std::collections::{BTreeMap, BTreeSet, HashSet};

use fluent_syntax::ast::{
    CallArguments, Entry, Expression, InlineExpression, Pattern, PatternElement, Resource,
};
use fluent_syntax::parser;

use super::super::labels::Part;
use super::super::numerals::{Number, Numerals, WholeNumbers};
use super::super::piece::{Bit, Intonation, Pause, Role, bits};
use super::{DEEPEST, FORM, day_message, in_form, unit_message};
use crate::finding::{Code, Finding};

/// A phrase to record.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub struct Phrase {
    /// Where it stands: message and place in it, or the number form.
    pub id: String,
    /// The words, without the mark that ends them.
    pub words: String,
    /// How the voice ends.
    pub intonation: Intonation,
    /// What kind of words they are.
    pub role: Role,
}

/// What may follow a place in a message.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
struct Follow {
    /// The sentence may go on.
    on: bool,
    /// The sentence may end.
    end: bool,
    /// Nothing may come at all: what follows the enclosing pattern decides.
    open: bool,
}

impl Follow {
    const ON: Follow = Follow { on: true, end: false, open: false };
    const END: Follow = Follow { on: false, end: true, open: false };
    const OPEN: Follow = Follow { on: false, end: false, open: true };

    fn or(self, other: Follow) -> Follow {
        Follow { on: self.on || other.on, end: self.end || other.end, open: self.open || other.open }
    }

    /// This, where anything comes; `after` in place of nothing.
    fn then(self, after: Follow) -> Follow {
        if self.open { Follow { open: false, ..self }.or(after) } else { self }
    }

    fn endings(self) -> impl Iterator<Item = Intonation> {
        let medial = self.on.then_some(Intonation::Medial);
        medial.into_iter().chain(self.end.then_some(Intonation::Final))
    }
}

struct Walk<'a> {
    messages: BTreeMap<&'a str, &'a Pattern<&'a str>>,
    terms: BTreeMap<&'a str, &'a Pattern<&'a str>>,
    numerals: &'a Numerals,
    /// Numbers that are recorded whole as well.
    whole: &'a [WholeNumbers],
    file: &'a str,
    phrases: BTreeSet<Phrase>,
    findings: Vec<Finding>,
    /// What has been walked, how, and how deep: once is enough.
    walked: HashSet<(*const Pattern<&'a str>, Role, Follow, u8)>,
    /// The message walked now, and how many phrases it has had.
    message: &'a str,
    count: usize,
}

/// All phrases of the messages `roots` of a normalized file, and what stands
/// in them that nobody can record.
pub(in crate::language) fn collect(
    file: &str,
    normalized: &str,
    (numerals, whole): (&Numerals, &[WholeNumbers]),
    roots: &[&str],
) -> (Vec<Phrase>, Vec<Finding>) {
    let (Ok(resource) | Err((resource, _))) = parser::parse(normalized);
    let mut walk = Walk {
        messages: BTreeMap::new(),
        terms: BTreeMap::new(),
        numerals,
        whole,
        file,
        phrases: BTreeSet::new(),
        findings: Vec::new(),
        walked: HashSet::new(),
        message: "",
        count: 0,
    };
    index(&resource, &mut walk);
    for root in roots {
        if let Some((id, pattern)) = walk.messages.get_key_value(root).map(|(id, pattern)| (*id, *pattern)) {
            walk.enter(id, pattern, Role::Phrase, Follow::END, 0);
        }
    }
    let mut phrases: Vec<Phrase> = walk.phrases.into_iter().collect();
    let mut seen = BTreeSet::new();
    phrases.retain(|phrase| seen.insert((phrase.words.clone(), phrase.intonation)));
    let mut findings = walk.findings;
    findings.dedup();
    (phrases, findings)
}

fn index<'a>(resource: &'a Resource<&'a str>, walk: &mut Walk<'a>) {
    for entry in &resource.body {
        match entry {
            Entry::Message(message) => {
                if let Some(pattern) = &message.value {
                    walk.messages.insert(message.id.name, pattern);
                }
            }
            Entry::Term(term) => {
                walk.terms.insert(term.id.name, &term.value);
            }
            _ => {}
        }
    }
}

impl<'a> Walk<'a> {
    /// Walks a message under its own name, then goes on with the one before.
    fn enter(&mut self, id: &'a str, pattern: &'a Pattern<&'a str>, role: Role, follow: Follow, depth: u8) {
        if !self.walked.insert((std::ptr::from_ref(pattern), role, follow, depth)) {
            return;
        }
        let before = (self.message, self.count);
        (self.message, self.count) = (id, 0);
        self.pattern(pattern, role, follow, depth);
        (self.message, self.count) = before;
    }

    fn pattern(&mut self, pattern: &'a Pattern<&'a str>, role: Role, follow: Follow, depth: u8) {
        let mut after = follow;
        // From the back, since what follows decides how the voice ends.
        let mut follows: Vec<Follow> = Vec::with_capacity(pattern.elements.len());
        for element in pattern.elements.iter().rev() {
            follows.push(after);
            after = self.start_of(element).then(after);
        }
        for (element, follow) in pattern.elements.iter().zip(follows.into_iter().rev()) {
            match element {
                PatternElement::TextElement { value } => self.text(value, role, follow),
                PatternElement::Placeable { expression } => self.expression(expression, role, follow, depth),
            }
        }
    }

    /// How what comes at the start of an element ends the words before it.
    fn start_of(&self, element: &PatternElement<&'a str>) -> Follow {
        match element {
            PatternElement::TextElement { value } => match bits(value).first() {
                Some(Bit::Mark(_, Pause::Comma) | Bit::Words(_)) => Follow::ON,
                Some(Bit::Mark(..)) => Follow::END,
                None => Follow::OPEN,
            },
            PatternElement::Placeable { expression: Expression::Select { variants, .. } } => {
                let start = |pattern: &Pattern<&'a str>| self.start_of_pattern(pattern);
                let none = Follow { on: false, end: false, open: false };
                variants.iter().map(|variant| start(&variant.value)).fold(none, Follow::or)
            }
            PatternElement::Placeable { expression: Expression::Inline(inline) } if is_empty(inline) => {
                Follow::OPEN
            }
            PatternElement::Placeable { .. } => Follow::ON,
        }
    }

    fn start_of_pattern(&self, pattern: &Pattern<&'a str>) -> Follow {
        let starts = pattern.elements.iter().rev().map(|element| self.start_of(element));
        starts.fold(Follow::OPEN, |after, start| start.then(after))
    }

    fn text(&mut self, text: &str, role: Role, follow: Follow) {
        let bits = bits(text);
        for (index, bit) in bits.iter().enumerate() {
            let Bit::Words(words) = bit else { continue };
            self.count += 1;
            let id = format!("{}#{}", self.message, self.count);
            let follow = match bits.get(index + 1) {
                Some(Bit::Mark(_, Pause::Comma) | Bit::Words(_)) => Follow::ON,
                Some(Bit::Mark(..)) => Follow::END,
                None => follow,
            };
            if let Some(bad) = words.chars().find(|c| c.is_numeric()) {
                self.report(
                    format!("\"{words}\" has the digit {bad}, which nobody can record"),
                    "write the number in words, or use SAY",
                );
            }
            for intonation in follow.endings() {
                self.phrases.insert(Phrase { id: id.clone(), words: (*words).to_owned(), intonation, role });
            }
        }
    }

    fn expression(&mut self, expression: &'a Expression<&'a str>, role: Role, follow: Follow, depth: u8) {
        match expression {
            Expression::Select { variants, .. } => {
                for variant in variants {
                    self.pattern(&variant.value, role, follow, depth);
                }
            }
            Expression::Inline(inline) => self.inline(inline, role, follow, depth),
        }
    }

    fn inline(&mut self, inline: &'a InlineExpression<&'a str>, role: Role, follow: Follow, depth: u8) {
        if depth > DEEPEST {
            self.report("refers to itself without end".to_owned(), "take the circle out");
            return;
        }
        match inline {
            empty if is_empty(empty) => {}
            InlineExpression::FunctionReference { id, arguments } => match id.name {
                "SAY" => self.number(arguments, follow),
                day if day_message(day).is_some() => {
                    let message = in_form(day_message(day).unwrap_or_default(), named(arguments, FORM));
                    self.refer(&message, Role::Date, follow, depth);
                }
                "SPAN" => {
                    self.refer(Part::Span.name(), Role::Date, follow, depth);
                    self.refer(Part::SpanTwoDays.name(), Role::Date, follow, depth);
                    self.refer(Part::SpanDay.name(), Role::Date, follow, depth);
                }
                "MEASURE" => match named(arguments, "unit") {
                    Some(unit) => self.refer(&unit_message(unit), Role::Unit, follow, depth),
                    None => {
                        self.report("MEASURE has no unit".to_owned(), "write MEASURE($n, unit: \"litre\")")
                    }
                },
                other => self.report(
                    format!("{other} is not a function of spoken messages"),
                    "use SAY, MEASURE, DAY, WEEK or SPAN",
                ),
            },
            InlineExpression::MessageReference { id, attribute: None } => {
                self.refer(id.name, role, follow, depth)
            }
            InlineExpression::TermReference { id, attribute: None, .. } => {
                match self.terms.get_key_value(id.name) {
                    Some((name, pattern)) => {
                        let (name, pattern) = (*name, *pattern);
                        self.enter(name, pattern, role, follow, depth + 1);
                    }
                    None => self.report(format!("the term -{} is missing", id.name), "add it"),
                }
            }
            InlineExpression::Placeable { expression } => {
                self.expression(expression, role, follow, depth + 1)
            }
            InlineExpression::VariableReference { id } => self.report(
                format!("${} stands in spoken text as it is", id.name),
                "use SAY, MEASURE, DAY or SPAN, so that it can be said in words",
            ),
            _ => self.report(
                "has a literal or an attribute that nobody can record".to_owned(),
                "write plain text",
            ),
        }
    }

    fn refer(&mut self, id: &str, role: Role, follow: Follow, depth: u8) {
        match self.messages.get_key_value(id).map(|(id, pattern)| (*id, *pattern)) {
            Some((id, pattern)) => self.enter(id, pattern, role, follow, depth + 1),
            None => self.report(format!("needs the message {id}, which is missing"), "add it"),
        }
    }

    fn number(&mut self, arguments: &CallArguments<&'a str>, follow: Follow) {
        let Some(form) = named(arguments, "form") else {
            return self.report("SAY has no form".to_owned(), "write SAY($n, form: \"cardinal\")");
        };
        match self.numerals.words(form) {
            Ok(words) => {
                for number in
                    self.whole.iter().filter(|whole| whole.form == form).flat_map(|of| of.numbers.clone())
                {
                    let said =
                        Number::rounded(f64::from(number), 0).map(|number| self.numerals.say(number, form));
                    let Some(Ok(said)) = said else { continue };
                    for intonation in follow.endings() {
                        let (id, words) = (format!("number/{form}"), said.clone());
                        self.phrases.insert(Phrase { id, words, intonation, role: Role::Number });
                    }
                }
                // Any word of a number may be followed by another one.
                for intonation in follow.or(Follow::ON).endings() {
                    self.phrases.extend(words.iter().map(|word| Phrase {
                        id: format!("number/{form}"),
                        words: word.clone(),
                        intonation,
                        role: Role::Number,
                    }));
                }
            }
            Err(error) => self.report(error.to_string(), "name a form of numbers.rbnf"),
        }
    }

    fn report(&mut self, message: String, hint: &str) {
        self.findings
            .push(Finding::error(Code::UNRECORDABLE, message).file(self.file).field(self.message).hint(hint));
    }
}

/// Whether it stands for no words, as `{""}` does where a variant has none.
fn is_empty(inline: &InlineExpression<&str>) -> bool {
    matches!(inline, InlineExpression::StringLiteral { value } if value.trim().is_empty())
}

fn named<'a>(arguments: &CallArguments<&'a str>, name: &str) -> Option<&'a str> {
    arguments.named.iter().find(|argument| argument.name.name == name).and_then(|argument| {
        match &argument.value {
            InlineExpression::StringLiteral { value } => Some(*value),
            _ => None,
        }
    })
}
