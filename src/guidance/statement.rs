//! What is told: a subject with its values.

use super::{Audience, DateSpan, Priority, Subject, Value, Values, Variable};

/// How a step stands on the day a plan is asked for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Standing {
    /// It is done.
    Done,
    /// It is to be done now.
    Now,
    /// It is the next that is to be done.
    Next,
}

/// One thing to tell.
#[derive(Debug, Clone, PartialEq)]
pub struct Statement {
    /// What about.
    pub subject: Subject,
    /// Typed values by name.
    pub values: Values,
    /// The rows of a table; a value that is not known is absent.
    pub rows: Vec<Values>,
    /// The local event nearest to its first day, and the days from the event to that day.
    pub near: Option<(String, i64)>,
    /// When it applies; one span for each time. Empty for what always holds.
    pub when: Vec<DateSpan>,
    /// For whom.
    pub audience: Audience,
    /// How much it matters.
    pub priority: Priority,
    /// How a step stands, where the day is known and it is done, due or next.
    pub standing: Option<Standing>,
    /// The group that does it together, where the plan is that of one of its farms.
    pub together: Option<String>,
}

impl Statement {
    /// A statement that always holds.
    pub(super) fn new(
        subject: Subject,
        values: Values,
        (audience, priority): (Audience, Priority),
    ) -> Statement {
        Statement {
            subject,
            values,
            rows: Vec::new(),
            near: None,
            when: Vec::new(),
            audience,
            priority,
            standing: None,
            together: None,
        }
    }

    /// The value of a name.
    pub fn value(&self, name: &str) -> Option<&Value> {
        self.values.iter().find(|(of, _)| *of == name).map(|(_, value)| value)
    }

    /// Puts another value in the place of one that the statement has.
    pub(crate) fn set(&mut self, variable: Variable, value: Value) {
        if let Some((_, slot)) = self.values.iter_mut().find(|(of, _)| *of == variable.name()) {
            *slot = value;
        }
    }
}
