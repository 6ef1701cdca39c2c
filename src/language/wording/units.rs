//! The texts of a file one by one, as a translator works through them.

use std::collections::BTreeSet;

use fluent_syntax::ast::{
    Comment, Entry, Expression, InlineExpression, Message, Pattern, PatternElement, Resource, VariantKey,
};
use fluent_syntax::{parser, serializer};

use crate::language::labels::Part;

/// One text: a message, an attribute of one, or a term.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(in crate::language) struct Unit {
    /// Its name, such as `mark-plants`, `mark-plants.text` or `-bad-roots`.
    pub(in crate::language) id: String,
    /// Its text as it is written, each literal in one line.
    pub(in crate::language) text: String,
    /// The values that it uses.
    pub(in crate::language) variables: BTreeSet<String>,
    /// What it chooses by, and between which variants.
    pub(in crate::language) selectors: Vec<(String, Vec<String>)>,
    /// Messages and terms that it refers to, by reference or through a function.
    pub(in crate::language) refers: BTreeSet<String>,
    /// Its literal texts.
    pub(in crate::language) literals: Vec<String>,
    /// Where it stands.
    pub(in crate::language) line: u32,
    /// Whether the translator says that it is the same as in the source: a comment `# same`.
    pub(in crate::language) same: bool,
}

impl Unit {
    /// Whether it still is the text that it is to be made from. One without words is the same in many languages.
    pub(in crate::language) fn is_untranslated(&self, source: &Unit) -> bool {
        let is_word = |literal: &String| literal.chars().filter(|c| c.is_alphabetic()).count() > 2;
        self.text == source.text && !self.same && source.literals.iter().any(is_word)
    }
}

/// All texts of a file in its order; what cannot be parsed is left out, as its reader reports it.
pub(in crate::language) fn units(text: &str) -> Vec<Unit> {
    let (Ok(mut resource) | Err((mut resource, _))) = parser::parse(text.to_owned());
    super::join_lines(&mut resource);
    let mut lines = Lines { rest: text.lines(), line: 0 };
    let mut units = Vec::new();
    for entry in &resource.body {
        if let Entry::Term(term) = entry {
            let id = format!("-{}", term.id.name);
            let line = lines.find(&id);
            units.push(unit(id, &term.value, line, term.comment.as_ref().is_some_and(is_same)));
            continue;
        }
        let Entry::Message(message) = entry else { continue };
        let same = message.comment.as_ref().is_some_and(is_same);
        let line = lines.find(&message.id.name);
        if let Some(pattern) = &message.value {
            units.push(unit(message.id.name.clone(), pattern, line, same));
        }
        for attribute in &message.attributes {
            let id = format!("{}.{}", message.id.name, attribute.id.name);
            let line = lines.find(&format!(".{}", attribute.id.name));
            units.push(unit(id, &attribute.value, line, same));
        }
    }
    units
}

fn is_same(comment: &Comment<String>) -> bool {
    comment.content.iter().any(|line| line.trim() == "same")
}

/// The lines of a file, from which each message is found behind the one before.
struct Lines<'t> {
    rest: std::str::Lines<'t>,
    /// The last line that was looked at, from 1.
    line: u32,
}

impl Lines<'_> {
    /// The next line on which a message or attribute begins; the last one where none does.
    fn find(&mut self, name: &str) -> u32 {
        let mut ahead = (self.rest.clone(), self.line);
        while let Some(line) = ahead.0.next() {
            ahead.1 += 1;
            let begins =
                |line: &str| line.strip_prefix(name).is_some_and(|rest| rest.trim_start().starts_with('='));
            if begins(line.trim_start()) {
                (self.rest, self.line) = ahead;
                break;
            }
        }
        self.line
    }
}

fn unit(id: String, pattern: &Pattern<String>, line: u32, same: bool) -> Unit {
    let mut unit = Unit {
        id,
        text: written(pattern),
        variables: BTreeSet::new(),
        selectors: Vec::new(),
        refers: BTreeSet::new(),
        literals: Vec::new(),
        line,
        same,
    };
    walk(pattern, &mut unit);
    unit
}

/// A pattern as it stands in a file.
fn written(pattern: &Pattern<String>) -> String {
    let message = Message {
        id: fluent_syntax::ast::Identifier { name: "m".to_owned() },
        value: Some(pattern.clone()),
        attributes: Vec::new(),
        comment: None,
    };
    let text = serializer::serialize(&Resource { body: vec![Entry::Message(message)] });
    text.trim_start_matches("m =").trim().to_owned()
}

fn walk(pattern: &Pattern<String>, unit: &mut Unit) {
    for element in &pattern.elements {
        match element {
            PatternElement::TextElement { value } => unit.literals.push(value.clone()),
            PatternElement::Placeable { expression } => walk_expression(expression, unit),
        }
    }
}

fn walk_expression(expression: &Expression<String>, unit: &mut Unit) {
    match expression {
        Expression::Inline(inline) => walk_inline(inline, unit),
        Expression::Select { selector, variants } => {
            walk_inline(selector, unit);
            if let InlineExpression::VariableReference { id } = selector {
                let key = |variant: &fluent_syntax::ast::Variant<String>| match &variant.key {
                    VariantKey::Identifier { name } => name.clone(),
                    VariantKey::NumberLiteral { value } => value.clone(),
                };
                unit.selectors.push((id.name.clone(), variants.iter().map(key).collect()));
            }
            variants.iter().for_each(|variant| walk(&variant.value, unit));
        }
    }
}

fn walk_inline(inline: &InlineExpression<String>, unit: &mut Unit) {
    match inline {
        InlineExpression::VariableReference { id } => {
            unit.variables.insert(id.name.clone());
        }
        InlineExpression::FunctionReference { id, arguments } => {
            arguments.positional.iter().for_each(|argument| walk_inline(argument, unit));
            let named = |name: &str| {
                let argument = arguments.named.iter().find(|argument| argument.name.name == name)?;
                match &argument.value {
                    InlineExpression::StringLiteral { value } => Some(value.as_str()),
                    _ => None,
                }
            };
            if let Some(message) = super::day_message(&id.name) {
                unit.refers.insert(super::in_form(message, named(super::FORM)));
            } else if id.name == "SPAN" {
                let parts = [Part::Span, Part::SpanTwoDays, Part::SpanDay];
                unit.refers.extend(parts.map(|part| part.name().to_owned()));
            } else if let Some(unit_name) = named("unit") {
                unit.refers.insert(super::unit_message(unit_name));
            }
        }
        InlineExpression::MessageReference { id, .. } => {
            unit.refers.insert(id.name.clone());
        }
        InlineExpression::TermReference { id, .. } => {
            unit.refers.insert(format!("-{}", id.name));
        }
        InlineExpression::Placeable { expression } => walk_expression(expression, unit),
        _ => {}
    }
}
