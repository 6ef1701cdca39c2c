//! Which statements a channel takes.

use chrono::{Days, NaiveDate};

use super::frame::heard_on;
use super::{DateSpan, Priority, Statement, StepKind, Subject, Value, Variable};

/// The statements of a message about one step: opening, the step, the consequences and
/// cautions that belong to it, closing; empty where the plan has no such step.
///
/// They are as they are heard on the step's first day.
pub fn for_step(statements: &[Statement], kind: StepKind) -> Vec<Statement> {
    let belongs = |statement: &&Statement| match statement.subject {
        Subject::Opening | Subject::Closing => true,
        Subject::Step(of) => of == kind,
        subject => subject.is_spoken() && subject.is_beside(kind),
    };
    let Some(step) = statements.iter().find(|statement| statement.subject == Subject::Step(kind)) else {
        return Vec::new();
    };
    let chosen: Vec<Statement> = statements.iter().filter(belongs).cloned().collect();
    match step.when.first() {
        Some(span) => heard_on(chosen, span.from),
        None => chosen,
    }
}

/// How something to tell stands to a week. What comes first here goes first when not all fits.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Timing {
    /// It is done in the week.
    Due,
    /// It begins in the two weeks after it.
    Soon,
    /// A caution of work that lies up to two weeks back: it still holds.
    Past,
    /// It begins up to six weeks later, or is a caution that holds for all work: told where there is time to fill.
    Ahead,
}

/// Days before a step on which it is told as coming soon, or just as a view ahead.
const SOON_DAYS: u64 = 14;
const AHEAD_DAYS: u64 = 42;
/// Days for which the cautions of finished work are told again.
const PAST_DAYS: u64 = 14;
/// More cannot be weighed against each other one by one, and no week has so many that matter.
const MOST_ITEMS: usize = 16;

/// Something to tell in a week: a step with what is never left out beside it, or a caution alone.
#[derive(Debug, Clone, PartialEq)]
pub struct Item<'s> {
    /// The step, or the caution.
    pub statement: &'s Statement,
    /// The consequences and cautions that belong to the step.
    pub beside: Vec<&'s Statement>,
    /// How it stands to the week.
    pub timing: Timing,
    /// The first day of the step's time that counts here.
    pub day: NaiveDate,
}

impl Item<'_> {
    /// How much it matters in the week; less is more. Of the same class none goes before another.
    pub fn class(&self) -> (Timing, Priority) {
        (self.timing, self.statement.priority)
    }
}

/// The Monday to Sunday around a day.
pub fn week_of(day: NaiveDate) -> DateSpan {
    let week = day.week(chrono::Weekday::Mon);
    let first = week.checked_first_day().unwrap_or(day);
    DateSpan::new(first, week.checked_last_day().unwrap_or(day))
}

/// The statements as they are told in a week: opening and closing know how it stands to the rains. Of a step that comes
/// several times, the first day that is still to come counts, and its turn is `next` where an earlier one is over.
pub fn told_in(statements: &[Statement], week: DateSpan) -> Vec<Statement> {
    let told = |statement: &Statement| {
        let mut told = statement.clone();
        let over = statement.when.iter().take_while(|span| span.to < week.from).count();
        if let (1.., Some(span)) = (over, statement.when.get(over)) {
            told.set(Variable::First, Value::Date(span.from));
            told.set(Variable::Turn, Value::Name("next"));
        }
        told
    };
    heard_on(statements.iter().map(told).collect(), week.from)
}

/// What matters in a week, the most important first, of the same class the earlier.
pub fn for_week(statements: &[Statement], week: DateSpan) -> Vec<Item<'_>> {
    let mut items: Vec<Item<'_>> = Vec::new();
    let mut past: Vec<(NaiveDate, StepKind)> = Vec::new();
    for statement in statements {
        let Subject::Step(kind) = statement.subject else { continue };
        let timed = statement.when.iter().filter_map(|span| Some((timing(*span, week)?, span.from)));
        match timed.min() {
            Some((Timing::Past, day)) => past.push((day, kind)),
            Some((timing, day)) => {
                items.push(Item { statement, beside: beside(statements, kind).collect(), timing, day });
            }
            None => {}
        }
    }
    let told = |items: &[Item<'_>], caution: &Statement| {
        items.iter().any(|item| {
            item.statement == caution || item.timing != Timing::Ahead && item.beside.contains(&caution)
        })
    };
    for (day, kind) in past {
        let cautions = beside(statements, kind).filter(|of| matches!(of.subject, Subject::Caution(_)));
        for caution in cautions {
            if !told(&items, caution) {
                items.push(Item { statement: caution, beside: Vec::new(), timing: Timing::Past, day });
            }
        }
    }
    let end = week.to.checked_add_days(Days::new(AHEAD_DAYS)).unwrap_or(week.to);
    for statement in statements {
        let always = matches!(statement.subject, Subject::Caution(caution) if caution.always());
        if always && !told(&items, statement) {
            items.push(Item { statement, beside: Vec::new(), timing: Timing::Ahead, day: end });
        }
    }
    items.sort_by_key(|item| (item.class(), item.day, item.statement.subject));
    items.truncate(MOST_ITEMS);
    items
}

/// The spoken statements that belong beside a step.
fn beside(statements: &[Statement], kind: StepKind) -> impl Iterator<Item = &Statement> {
    statements.iter().filter(move |of| of.subject.is_spoken() && of.subject.is_beside(kind))
}

fn timing(span: DateSpan, week: DateSpan) -> Option<Timing> {
    let within = |day: NaiveDate, days: u64, of: NaiveDate| {
        day.checked_add_days(Days::new(days)).is_none_or(|last| of <= last)
    };
    if span.to < week.from {
        within(span.to, PAST_DAYS, week.from).then_some(Timing::Past)
    } else if span.from <= week.to {
        Some(Timing::Due)
    } else if within(week.to, SOON_DAYS, span.from) {
        Some(Timing::Soon)
    } else {
        within(week.to, AHEAD_DAYS, span.from).then_some(Timing::Ahead)
    }
}

/// The statements of a week's segment in the order in which they are heard: the opening, this week's work, what
/// still holds of the last weeks', what comes next, the closing. Each step has what belongs beside it behind it, each heard once.
pub fn in_order<'s>(statements: &'s [Statement], chosen: &[&Item<'s>]) -> Vec<&'s Statement> {
    let mut items = chosen.to_vec();
    let turn =
        |timing| [Timing::Due, Timing::Past, Timing::Soon, Timing::Ahead].iter().position(|at| *at == timing);
    items.sort_by_key(|item| (turn(item.timing), item.day, item.statement.subject));
    let only = |subject| statements.iter().filter(move |statement| statement.subject == subject);
    let mut ordered: Vec<&Statement> = only(Subject::Opening).collect();
    for item in items {
        for statement in [item.statement].into_iter().chain(item.beside.iter().copied()) {
            if !ordered.contains(&statement) {
                ordered.push(statement);
            }
        }
    }
    ordered.extend(only(Subject::Closing));
    ordered
}

/// The statements of a meeting's chapter about one step: the step, what belongs beside it and its question; empty where
/// the plan has no such step. Opening and closing frame the whole meeting.
pub fn chapter(statements: &[Statement], kind: StepKind) -> Vec<Statement> {
    let mut chosen = for_step(statements, kind);
    chosen.retain(|statement| !statement.subject.is_framing());
    let step = chosen.iter().find(|statement| statement.subject == Subject::Step(kind)).cloned();
    chosen.extend(step.map(|step| Statement { subject: Subject::Question(kind), ..step }));
    chosen
}
