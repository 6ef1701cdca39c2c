//! What a plan tells people: ordered statements without a word of any language.
//!
//! A statement names its subject, its typed values, when it applies, for whom
//! and how much it matters. Wordings are chosen for it by its subject's name;
//! channels choose among statements.

mod examples;
mod facts;
mod frame;
mod measures;
mod select;
pub mod shapes;
mod statement;
mod subjects;
mod tables;
mod tell;
mod variables;

pub use crate::plan::{Choice, DateSpan, Priority, Quantity, StepKind, Value, Values};
pub use examples::consequence_examples;
pub use facts::Fact;
pub use frame::{every_framing, heard_on};
pub use measures::{Measure, Measured};
pub use select::{Item, Timing, chapter, for_step, for_week, in_order, told_in, week_of};
pub use statement::{Standing, Statement};
pub use subjects::{Audience, Caution, Column, Consequence, Subject, Table, Tip};
pub use tell::tell;
pub use variables::{Scope, ValueInfo, ValueKind, Variable};
