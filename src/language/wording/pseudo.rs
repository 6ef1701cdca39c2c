//! English in other letters, to find text that no pack has and places that are too narrow or run the wrong way.

use fluent_syntax::ast::{Entry, Expression, InlineExpression, Pattern, PatternElement};
use fluent_syntax::{parser, serializer};

/// Rewrites every literal text of a file.
pub(in crate::language) fn rewrite(text: &str, letters: fn(&str) -> String) -> String {
    let (Ok(mut resource) | Err((mut resource, _))) = parser::parse(text.to_owned());
    super::join_lines(&mut resource);
    for entry in &mut resource.body {
        match entry {
            Entry::Message(message) => {
                message.value.iter_mut().for_each(|pattern| rewrite_pattern(pattern, letters));
                message
                    .attributes
                    .iter_mut()
                    .for_each(|attribute| rewrite_pattern(&mut attribute.value, letters));
            }
            Entry::Term(term) => rewrite_pattern(&mut term.value, letters),
            _ => {}
        }
    }
    serializer::serialize(&resource)
}

fn rewrite_pattern(pattern: &mut Pattern<String>, letters: fn(&str) -> String) {
    for element in &mut pattern.elements {
        match element {
            PatternElement::TextElement { value } => *value = letters(value),
            PatternElement::Placeable { expression } => rewrite_expression(expression, letters),
        }
    }
}

fn rewrite_expression(expression: &mut Expression<String>, letters: fn(&str) -> String) {
    match expression {
        Expression::Select { variants, .. } => {
            variants.iter_mut().for_each(|variant| rewrite_pattern(&mut variant.value, letters));
        }
        Expression::Inline(InlineExpression::Placeable { expression }) => {
            rewrite_expression(expression, letters)
        }
        Expression::Inline(_) => {}
    }
}
