//! Statements of a plan, before any language.

use kabla::guidance::{
    Audience, Caution, DateSpan, Priority, StepKind, Subject, Timing, Value, for_step, for_week, tell,
    week_of,
};
use kabla::plan::{Quantity, make};

use crate::examples;

#[test]
fn statements_come_in_order_and_hold_the_plan() {
    for (name, case) in examples() {
        let plan = make(&case).unwrap();
        let statements = tell(&case, &plan);
        assert_eq!(statements.first().unwrap().subject, Subject::Opening);
        assert_eq!(statements.last().unwrap().subject, Subject::Closing);
        let steps: Vec<_> =
            statements.iter().filter(|statement| matches!(statement.subject, Subject::Step(_))).collect();
        assert!(steps.windows(2).all(|pair| pair[0].when[0].from <= pair[1].when[0].from), "{name}");
        for statement in steps {
            let Subject::Step(topic) = statement.subject else { unreachable!() };
            let planned: Vec<_> = plan.now.steps_of(topic).map(|step| step.when).collect();
            assert_eq!(statement.when, planned, "{name} {}", topic.name());
        }
        let roots = plan.now.amounts.get(Quantity::RootsToStore).unwrap();
        assert!(
            statements
                .iter()
                .filter(|of| !matches!(of.subject, Subject::Consequence(_) | Subject::Tip(_)))
                .all(|statement| statement.value("roots") == Some(&Value::Number(roots, 0))),
            "{name}"
        );
    }
}

/// Nothing that keeps people from harm may ever be left out for length.
#[test]
fn cautions_are_essential_and_reach_those_they_concern() {
    let (_, case) = examples().remove(0);
    let statements = tell(&case, &make(&case).unwrap());
    for caution in Caution::ALL {
        let told: Vec<_> =
            statements.iter().filter(|statement| statement.subject == Subject::Caution(caution)).collect();
        assert_eq!(told.len(), 1, "{}", caution.name());
        assert_eq!(told[0].priority, Priority::Essential);
        assert!(!caution.steps().is_empty(), "{} would never be heard", caution.name());
    }
    let everyone = [Caution::Rot, Caution::WaterChildren, Caution::Riverbed];
    assert!(everyone.iter().all(|caution| caution.audience() == Audience::Everyone));
}

#[test]
fn a_message_on_a_topic_has_its_cautions_and_no_others() {
    let (_, case) = examples().remove(0);
    let statements = tell(&case, &make(&case).unwrap());
    let names = |topic| {
        for_step(&statements, topic).iter().map(|statement| statement.subject.name()).collect::<Vec<_>>()
    };
    assert_eq!(
        names(StepKind::GatherSand),
        ["opening", "gather-sand", "caution-heavy-sand", "caution-riverbed", "closing"]
    );
    assert_eq!(
        names(StepKind::MonthlyCheck),
        ["opening", "monthly-check", "caution-rot", "caution-store-dry", "closing"]
    );
    let none: Vec<_> = statements
        .iter()
        .filter(|statement| statement.subject != Subject::Step(StepKind::Harvest))
        .cloned()
        .collect();
    assert!(for_step(&none, StepKind::Harvest).is_empty(), "no opening and closing around nothing");
}

/// The cautions of finished work are told for two weeks: of work done on a Monday, still in the week that begins
/// 14 days later, and no more of work done the day before.
#[test]
fn cautions_of_finished_work_are_told_for_two_weeks() {
    let day = |text: &str| text.parse::<chrono::NaiveDate>().unwrap();
    let (_, case) = examples().remove(0);
    let mut statements = tell(&case, &make(&case).unwrap());
    statements.retain(|statement| match statement.subject {
        Subject::Step(step) => step == StepKind::GatherSand,
        _ => true,
    });
    let told = |last: &str| {
        let mut statements = statements.clone();
        for statement in &mut statements {
            if statement.subject == Subject::Step(StepKind::GatherSand) {
                statement.when = vec![DateSpan::new(day("2027-05-03"), day(last))];
            }
        }
        let items = for_week(&statements, week_of(day("2027-06-07")));
        let past = items.iter().filter(|item| item.timing == Timing::Past);
        past.map(|item| item.statement.subject).collect::<Vec<_>>()
    };
    assert_eq!(
        told("2027-05-24"),
        [Subject::Caution(Caution::HeavySand), Subject::Caution(Caution::Riverbed)]
    );
    assert_eq!(told("2027-05-23"), []);
}
