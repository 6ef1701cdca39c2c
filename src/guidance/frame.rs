//! How a message is framed: by the day on which it is heard, and never in the same words every time.

use chrono::{Datelike, NaiveDate};

use super::{DateSpan, Statement, Value, ValueKind, Variable};

/// Days before and after those on which the rains may begin that count as near them.
const NEAR_DAYS: i64 = 14;
/// Ways to say an opening or a closing.
const VARIANTS: u32 = 3;

/// How a day stands to the rains, which may begin in `rains`, or began on its day where they `came`.
pub(super) fn season_on(day: NaiveDate, came: &str, rains: DateSpan) -> &'static str {
    if came == "yes" && day >= rains.from {
        "after"
    } else if (rains.from - day).num_days() > NEAR_DAYS {
        "before"
    } else if (day - rains.to).num_days() <= NEAR_DAYS {
        "near"
    } else {
        "later"
    }
}

/// Statements as they are heard on a day: opening and closing know how it stands to the rains, and change their
/// words from week to week.
pub fn heard_on(mut statements: Vec<Statement>, day: NaiveDate) -> Vec<Statement> {
    let week = day.iso_week().week();
    for statement in statements.iter_mut().filter(|statement| statement.subject.is_framing()) {
        let rains = match statement.value(Variable::RainsSpan.name()) {
            Some(Value::Span(span)) => *span,
            _ => DateSpan::day(day),
        };
        let came = matches!(statement.value(Variable::Came.name()), Some(Value::Name("yes")));
        let season = season_on(day, if came { "yes" } else { "no" }, rains);
        statement.set(Variable::Season, Value::Name(season));
        statement.set(Variable::Variant, Value::Number(f64::from(week % VARIANTS + 1), 0));
    }
    statements
}

/// Opening and closing in every season and all their words, for who records them.
pub fn every_framing(statements: &[Statement]) -> Vec<Statement> {
    let ValueKind::Choice(seasons) = Variable::Season.kind() else { return Vec::new() };
    let framing = statements.iter().filter(|statement| statement.subject.is_framing());
    let seasoned = framing.flat_map(|statement| seasons.iter().map(move |season| (statement, *season)));
    let varied = seasoned.flat_map(|of| (1..=VARIANTS).map(move |variant| (of, variant)));
    varied
        .map(|((statement, season), variant)| {
            let mut statement = statement.clone();
            statement.set(Variable::Season, Value::Name(season));
            statement.set(Variable::Variant, Value::Number(f64::from(variant), 0));
            statement
        })
        .collect()
}
