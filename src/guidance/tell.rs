//! The statements of a plan.

use chrono::NaiveDate;

use super::frame::season_on;
use super::tables::rows_of;
use super::variables::facts;
use super::{
    Audience, Caution, Consequence, DateSpan, Priority, Standing, Statement, StepKind, Subject, Table, Tip,
    Value, Values, Variable,
};
use crate::plan::{Case, Event, Plan, Remark, State, Step, Worded};

/// All statements of a plan: the opening, the steps by date, what the plan leads to, tables, tips, the cautions,
/// the closing.
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
    let framing = opening_values(case, plan, &now);
    let mut statements = vec![Statement {
        together: group.map(|group| group.name.clone()),
        ..Statement::new(Subject::Opening, framing.clone(), (Audience::Everyone, Priority::Important))
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
    statements.extend(consequences(&plan.remarks, None));
    statements.extend(group.iter().flat_map(|group| consequences(&group.remarks, Some(&group.name))));
    for table in Table::ALL {
        let rows = rows_of(table, plan);
        if !rows.is_empty() {
            let of_table = Subject::Table(table);
            let statement = Statement::new(of_table, now.clone(), (Audience::Farmers, Priority::Helpful));
            statements.push(Statement { rows, ..statement });
        }
    }
    statements.extend(plan.advice.iter().filter_map(|advice| {
        let tip = Tip::from_name(advice.code())?;
        Some(Statement::new(Subject::Tip(tip), advice.values(), (Audience::Farmers, tip.priority())))
    }));
    statements.extend(Caution::ALL.into_iter().map(|caution| {
        let whom = (caution.audience(), Priority::Essential);
        Statement::new(Subject::Caution(caution), now.clone(), whom)
    }));
    statements.push(Statement::new(Subject::Closing, framing, (Audience::Everyone, Priority::Essential)));
    mark_standing(&mut statements, plan);
    statements
}

/// Marks what is done, what is to be done now and what comes next, where the day is known.
fn mark_standing(statements: &mut [Statement], plan: &Plan) {
    let Some(today) = plan.today else { return };
    let mut next = None;
    for (index, statement) in statements.iter_mut().enumerate() {
        let Subject::Step(kind) = statement.subject else { continue };
        let due = |span: &DateSpan| span.from <= today && today <= span.to;
        if plan.now.steps_of(kind).all(|step| step.done) {
            statement.standing = Some(Standing::Done);
        } else if statement.when.iter().any(due) {
            statement.standing = Some(Standing::Now);
        } else if let Some(first) =
            statement.when.iter().map(|span| span.from).filter(|from| *from > today).min()
            && next.is_none_or(|(day, _)| first < day)
        {
            next = Some((first, index));
        }
    }
    if let Some(statement) = next.and_then(|(_, index)| statements.get_mut(index)) {
        statement.standing = Some(Standing::Next);
    }
}

/// The remarks that change what is done, the last of each code, in the order of the catalogue.
pub(super) fn consequences<'p>(
    remarks: &'p [Remark],
    together: Option<&'p str>,
) -> impl Iterator<Item = Statement> + use<'p> {
    Consequence::ALL.into_iter().filter_map(move |consequence| {
        let remark = remarks.iter().rfind(|remark| remark.code() == consequence.name())?;
        let whom = (Audience::Farmers, consequence.priority());
        Some(Statement {
            together: together.map(str::to_owned),
            ..Statement::new(Subject::Consequence(consequence), remark.values(), whom)
        })
    })
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
    let came = if case.rains_began.is_some() { "yes" } else { "no" };
    let begins = plan.now.steps.iter().map(|step| step.when.from).min();
    let first = plan.today.or(begins).unwrap_or(case.harvest);
    let own = [
        Variable::Rains.with(Value::Date(plan.usual_rains())),
        Variable::RainsSpan.with(Value::Span(plan.rains_span())),
        Variable::Harvest.with(Value::Date(case.harvest)),
        Variable::Name.with(Value::Text(plan.name.clone())),
        Variable::Place.with(Value::Text(plan.place.clone())),
        Variable::Came.with(Value::Name(came)),
        Variable::Season.with(Value::Name(season_on(first, came, plan.rains_span()))),
        Variable::Variant.number(1.0),
    ];
    let today = plan.today.map(|today| Variable::Today.with(Value::Date(today)));
    facts.iter().cloned().chain(own).chain(today).collect()
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
    let statement = Statement::new(Subject::Step(kind), values, (Audience::Farmers, kind.priority()));
    Statement { near, when, ..statement }
}

/// Events further away than this help nobody to reckon.
const FARTHEST_EVENT: i64 = 45;

fn nearest_event(events: &[Event], day: NaiveDate) -> Option<(String, i64)> {
    let near = events.iter().map(|event| (event.name.clone(), (day - event.date).num_days()));
    near.filter(|(_, days)| days.abs() <= FARTHEST_EVENT).min_by_key(|(_, days)| days.abs())
}
