//! Which statements a channel takes.

use super::{Statement, Subject, Topic};

/// The statements of a message about one topic: opening, the step, the
/// cautions that belong to it, closing; empty where the plan has no such step.
pub fn for_topic(statements: &[Statement], topic: Topic) -> Vec<&Statement> {
    let belongs = |statement: &&Statement| match statement.subject {
        Subject::Opening | Subject::Closing => true,
        Subject::Table(_) => false,
        Subject::Step(of) => of == topic,
        Subject::Caution(caution) => caution.topics().contains(&topic),
    };
    if !statements.iter().any(|statement| statement.subject == Subject::Step(topic)) {
        return Vec::new();
    }
    statements.iter().filter(belongs).collect()
}
