//! The statements of a plan.

use chrono::NaiveDate;

use super::tables::rows_of;
use super::variables::facts;
use super::{
    Audience, Caution, DateSpan, Priority, Statement, StepKind, Subject, Table, Value, Values, Variable,
};
use crate::plan::{Case, Event, Plan, State, Step};

/// All statements of a plan: the opening, the steps by date, the cautions, the closing.
///
/// ```
/// use kabla::guidance::{self, Subject};
///
/// # let no_files = |_: &str| Err(std::io::Error::from(std::io::ErrorKind::NotFound));
/// # let (case, _) = kabla::case::read("farm.toml", kabla::case::Starter::Farm.text(), &no_files).unwrap();
/// let statements = guidance::tell(&case, &kabla::plan::make(&case)?);
/// let subjects: Vec<Subject> = statements.iter().map(|statement| statement.subject).collect();
/// assert_eq!(subjects.first(), Some(&Subject::Opening));
/// assert_eq!(subjects.last(), Some(&Subject::Closing));
/// # Ok::<(), kabla::plan::Refusal>(())
/// ```
pub fn tell(case: &Case, plan: &Plan) -> Vec<Statement> {
    let own = Told::of(case, plan, &plan.now, plan.planned.as_ref());
    let group = plan.together.as_ref();
    let together = group.map(|group| Told::of(case, plan, &group.now, group.planned.as_ref()));
    let now = own.now.clone();
    let mut statements = vec![Statement {
        subject: Subject::Opening,
        values: opening_values(case, plan, &now),
        rows: Vec::new(),
        near: None,
        when: Vec::new(),
        audience: Audience::Everyone,
        priority: Priority::Important,
        together: group.map(|group| group.name.clone()),
    }];
    let mut kinds: Vec<StepKind> = Vec::new();
    for step in &plan.now.steps {
        if !kinds.contains(&step.kind) {
            kinds.push(step.kind);
        }
    }
    statements.extend(kinds.into_iter().map(|kind| {
        let (done, open): (Vec<&Step>, Vec<&Step>) = plan.now.steps_of(kind).partition(|step| step.done);
        let shared = together.as_ref().filter(|_| kind.together());
        let told = shared.unwrap_or(&own);
        let (steps, facts) = if open.is_empty() { (done, told.done()) } else { (open, &told.now) };
        Statement {
            together: group.filter(|_| kind.together()).map(|group| group.name.clone()),
            ..tell_step(kind, &steps, facts, case)
        }
    }));
    for table in Table::ALL {
        let rows = rows_of(table, plan);
        if !rows.is_empty() {
            statements.push(Statement {
                subject: Subject::Table(table),
                values: now.clone(),
                rows,
                near: None,
                when: Vec::new(),
                audience: Audience::Farmers,
                priority: Priority::Helpful,
                together: None,
            });
        }
    }
    statements.extend(Caution::ALL.into_iter().map(|caution| Statement {
        subject: Subject::Caution(caution),
        values: now.clone(),
        rows: Vec::new(),
        near: None,
        when: Vec::new(),
        audience: caution.audience(),
        priority: Priority::Essential,
        together: None,
    }));
    statements.push(Statement {
        subject: Subject::Closing,
        values: now,
        rows: Vec::new(),
        near: None,
        when: Vec::new(),
        audience: Audience::Everyone,
        priority: Priority::Essential,
        together: None,
    });
    statements
}

/// The values of a season's messages.
struct Told {
    now: Values,
    /// As it was planned, where it stands otherwise.
    planned: Option<Values>,
}

impl Told {
    fn of(case: &Case, plan: &Plan, now: &State, planned: Option<&State>) -> Told {
        Told { now: facts(case, plan, now), planned: planned.map(|planned| facts(case, plan, planned)) }
    }

    /// What is done is told as it was planned.
    fn done(&self) -> &Values {
        self.planned.as_ref().unwrap_or(&self.now)
    }
}

fn opening_values(case: &Case, plan: &Plan, facts: &Values) -> Values {
    let own = [
        Variable::Rains.with(Value::Date(plan.usual_rains())),
        Variable::RainsSpan.with(Value::Span(plan.rains_span())),
        Variable::Harvest.with(Value::Date(case.harvest)),
        Variable::Name.with(Value::Text(plan.name.clone())),
        Variable::Place.with(Value::Text(plan.place.clone())),
    ];
    facts.iter().cloned().chain(own).collect()
}

fn tell_step(kind: StepKind, steps: &[&Step], facts: &Values, case: &Case) -> Statement {
    let when: Vec<DateSpan> = steps.iter().map(|step| step.when).collect();
    let mut values = facts.clone();
    if let (Some(first), Some(last)) = (when.first(), when.last()) {
        values.extend([
            Variable::When.with(Value::Span(DateSpan::new(first.from, last.to))),
            Variable::First.with(Value::Date(first.from)),
            Variable::Turn.with(Value::Name("first")),
            Variable::Last.with(Value::Date(last.to)),
            Variable::Times.number(when.len() as f64),
        ]);
    }
    let near = when.first().and_then(|span| nearest_event(&case.events, span.from));
    Statement {
        subject: Subject::Step(kind),
        values,
        rows: Vec::new(),
        near,
        when,
        audience: Audience::Farmers,
        priority: kind.priority(),
        together: None,
    }
}

/// Events further away than this help nobody to reckon.
const FARTHEST_EVENT: i64 = 45;

fn nearest_event(events: &[Event], day: NaiveDate) -> Option<(String, i64)> {
    let near = events.iter().map(|event| (event.name.clone(), (day - event.date).num_days()));
    near.filter(|(_, days)| days.abs() <= FARTHEST_EVENT).min_by_key(|(_, days)| days.abs())
}
