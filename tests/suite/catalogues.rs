//! What is declared once has all that belongs to it; where something lacks, the file to open is named.

use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};

use kabla::data::{Data, Embedded};
use kabla::guidance::{
    Caution, Column, Measured, Quantity, Scope, Statement, StepKind, Subject, Table, Tip, Value, ValueInfo,
    ValueKind, Variable, tell,
};
use kabla::language::{Label, Pack};
use kabla::plan::field::Spacing;
use kabla::plan::progress::Check;
use kabla::plan::season::ExpectedRains;
use kabla::plan::wordings;
use kabla::plan::{Assumptions, AtHand, Case, DateSpan, Metres, SeasonInputs, Timeline, lay_out, make};
use kabla::sheet::{DrawingKind, Facts};

use crate::examples;
use crate::plan::{date, farm};

fn has(file: &str) -> bool {
    Embedded.read(file).is_some()
}

#[test]
fn every_pack_has_every_message() {
    for tag in Pack::tags(&Embedded) {
        let lacking: Vec<String> = Pack::load(&Embedded, &tag)
            .err()
            .unwrap_or_default()
            .into_iter()
            .map(|finding| {
                let (file, field) = (finding.place.file.unwrap_or_default(), finding.place.field);
                format!("{file}: {}: {}", field.unwrap_or_default(), finding.message)
            })
            .collect();
        assert!(lacking.is_empty(), "{}", lacking.join("\n"));
    }
}

#[test]
fn every_step_and_caution_and_measure_has_its_picture() {
    let subjects = StepKind::ALL.map(StepKind::name).into_iter().chain(Caution::ALL.map(Caution::name));
    let measures = Measured::ALL.map(|measured| measured.measure().name());
    for name in subjects.chain(measures) {
        let file = format!("templates/pictures/{name}.svg");
        assert!(has(&file), "{file} is missing: draw it in templates/pictures/draw.py");
    }
}

#[test]
fn every_drawing_has_its_template_and_none_is_left_over() {
    let declared: BTreeSet<String> =
        DrawingKind::ALL.map(|kind| kind.template().trim_start_matches("drawings/").to_owned()).into();
    let there: BTreeSet<String> = Embedded.list("templates/drawings").into_iter().collect();
    assert_eq!(there, declared, "templates/drawings, and DrawingKind in src/sheet/drawing/draw.rs");
}

fn season(assumptions: &Assumptions) -> Timeline {
    let rains = date("2027-11-25");
    let inputs = SeasonInputs {
        harvest: DateSpan::day(date("2027-05-24")),
        rains: ExpectedRains::on(rains),
        began: None,
        maturity: (assumptions.first_harvest_days_first, assumptions.first_harvest_days_last),
        spread: false,
        work_done: None,
        checks: &[],
    };
    lay_out(&inputs, assumptions)
}

/// The case says when the old field is dug; all other dates rest on values that a case can change.
#[test]
fn every_step_has_its_dates_and_the_values_they_rest_on() {
    let usual = Assumptions::default();
    let dates = |assumptions: &Assumptions, kind: StepKind| -> Vec<DateSpan> {
        season(assumptions).steps.iter().filter(|step| step.kind == kind).map(|step| step.when).collect()
    };
    for kind in StepKind::ALL {
        let (name, planned) = (kind.name(), dates(&usual, kind));
        assert!(!planned.is_empty(), "src/plan/timeline.rs has no dates for {name}");
        let moved = Assumptions::TABLE.iter().any(|default| {
            let mut other = usual.clone();
            other.set(default.name, default.value + 7.0).unwrap();
            dates(&other, kind) != planned
        });
        assert!(moved || kind == StepKind::Harvest, "no value of src/plan/defaults.rs moves {name}");
    }
}

/// Nothing about a season may be told of a step that no plan has. What plans lead to, `told.rs` looks for in more
/// cases, and the advice on children belongs to a variety whose carotene is known.
#[test]
fn every_step_caution_and_table_is_told_of_some_example() {
    let told: BTreeSet<Subject> = examples()
        .iter()
        .flat_map(|(_, case)| tell(case, &make(case).unwrap()))
        .map(|statement| statement.subject)
        .collect();
    let elsewhere = |subject: &Subject| {
        matches!(subject, Subject::Question(_) | Subject::Consequence(_) | Subject::Tip(Tip::Children))
            || *subject == Subject::Table(Table::Ways)
    };
    for subject in Subject::all().filter(|subject| !elsewhere(subject)) {
        assert!(told.contains(&subject), "{}: src/guidance/tell.rs never tells of it", subject.name());
    }
}

#[test]
fn names_are_given_once() {
    let mut values = BTreeSet::new();
    for value in ValueInfo::all() {
        assert!(values.insert(value.name), "${} is declared twice", value.name);
        assert!(!value.meaning.is_empty() && !value.example.is_empty(), "${}", value.name);
    }
    let mut messages = BTreeSet::new();
    let subjects = Subject::all().map(Subject::name);
    for id in Label::ALL.map(Label::name).into_iter().chain(Column::ALL.map(Column::name)).chain(subjects) {
        assert!(messages.insert(id), "two messages are called {id}");
    }
}

/// Whether a value is what its declaration says.
fn fits(kind: ValueKind, value: &Value) -> bool {
    match (kind, value) {
        (ValueKind::Number(most), Value::Number(value, decimals)) => {
            *decimals <= most && value.is_finite() && (*decimals > 0 || value.fract() == 0.0)
        }
        (ValueKind::Choice(names), Value::Name(name)) => names.contains(name),
        (ValueKind::Day, Value::Date(_))
        | (ValueKind::Span, Value::Span(_))
        | (ValueKind::Text, Value::Text(_)) => true,
        _ => false,
    }
}

#[test]
fn values_are_what_their_declarations_say() {
    let mut met = BTreeSet::new();
    for (example, case) in examples() {
        // Those of remarks and advice are declared with their codes.
        let of_codes = |of: &Statement| matches!(of.subject, Subject::Consequence(_) | Subject::Tip(_));
        for statement in tell(&case, &make(&case).unwrap()).into_iter().filter(|of| !of_codes(of)) {
            for (name, value) in statement.values.iter().chain(statement.rows.iter().flatten()) {
                let info = ValueInfo::of(name).unwrap_or_else(|| {
                    panic!("${name} is declared neither in src/guidance/variables.rs nor in src/plan/quantities.rs")
                });
                assert!(fits(info.kind, value), "{example}: ${name} is {value:?}");
                met.insert(info.name);
            }
        }
    }
    let quantities = Quantity::ALL.into_iter().filter_map(|of| Some(of.in_messages()?.name));
    let of_plans = Variable::ALL
        .into_iter()
        .filter(|of| matches!(of.scope(), Scope::Plan(_) | Scope::Opening | Scope::Step | Scope::Row));
    for name in quantities.chain(of_plans.map(Variable::name)) {
        assert!(met.contains(name), "${name} is declared, and no statement has it");
    }
}

/// Of the examples, of a farm that counts forward from what is at hand, and of one that has checked its store.
#[test]
fn every_quantity_is_an_amount_of_some_plan() {
    let spacing = Spacing::Ridges { between: Metres(1.0), along: Metres(0.3) };
    let at_hand = AtHand { roots: Some(20), plants: None, bed: None, sand: None, spacing };
    let check = Check { date: date("2027-06-24"), healthy: 38, thrown_away: Some(2), sprouted: None };
    let forward = Case { field: None, at_hand: Some(at_hand), ..farm(450.0) };
    let checked = Case { store_checks: vec![check], ..farm(450.0) };
    let cases = examples().into_iter().map(|(_, case)| case).chain([forward, checked]);
    let plans: Vec<_> = cases.map(|case| make(&case).unwrap()).collect();
    for quantity in Quantity::ALL {
        let known = plans.iter().any(|plan| plan.now.amounts.get(quantity).is_some());
        assert!(known, "{}: nothing in src/plan counts it", quantity.name());
    }
}

#[test]
fn every_column_has_its_value_in_some_row() {
    let statements: Vec<_> =
        examples().iter().flat_map(|(_, case)| tell(case, &make(case).unwrap())).collect();
    for table in Table::ALL {
        let rows = statements.iter().filter(|of| of.subject == Subject::Table(table)).flat_map(|of| &of.rows);
        let names: BTreeSet<&str> = rows.flatten().map(|(name, _)| *name).collect();
        for column in table.columns() {
            let what = format!("src/guidance/tables.rs gives {} no {}", table.name(), column.value());
            assert!(names.contains(column.value()), "{what}");
        }
    }
}

#[test]
fn what_is_measured_by_the_body_is_a_value_of_its_step() {
    let (_, case) = examples().remove(0);
    let statements = tell(&case, &make(&case).unwrap());
    for measured in Measured::ALL {
        let step = statements.iter().find(|of| of.subject == Subject::Step(measured.step())).unwrap();
        let value = step.value(measured.name());
        assert!(
            matches!(value, Some(Value::Number(..))),
            "src/guidance/measures.rs: {measured:?} is {value:?}"
        );
    }
}

/// The values that a file's messages use.
fn used(text: &str) -> BTreeSet<String> {
    let name = |rest: &str| rest.chars().take_while(|c| c.is_ascii_alphanumeric() || *c == '_').collect();
    let code = text.lines().filter(|line| !line.trim_start().starts_with('#'));
    code.flat_map(|line| line.split('$').skip(1).map(name).collect::<Vec<String>>()).collect()
}

#[test]
fn every_value_that_english_uses_is_declared() {
    for file in ["written.ftl", "spoken.ftl"] {
        let path = format!("locales/en/{file}");
        let text = String::from_utf8(Embedded.read(&path).unwrap().into_owned()).unwrap();
        let used = used(&text);
        assert!(used.len() > 10, "{path}: {used:?}");
        for name in used {
            // Reasons and remarks declare values of their own.
            if wordings().any(|wording| wording.values.iter().any(|(of, _)| *of == name)) {
                continue;
            }
            let info = ValueInfo::of(&name);
            assert!(info.is_some(), "{path} uses ${name}: declare it in src/guidance/variables.rs");
            let spoken = info.is_some_and(|info| info.is_spoken);
            assert!(spoken || file == "written.ftl", "{path} uses ${name}, which nobody can say");
        }
    }
}

fn sources(folder: &Path) -> Vec<PathBuf> {
    let mut found = Vec::new();
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() { found.extend(sources(&path)) } else { found.push(path) }
    }
    found
}

/// A label that no code names would be translated for nothing.
#[test]
fn every_label_is_named_by_code() {
    let root = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("src");
    let code: String = sources(&root)
        .iter()
        .filter(|path| !path.ends_with("language/labels.rs"))
        .map(|path| fs::read_to_string(path).unwrap_or_default())
        .collect();
    let named: BTreeSet<&str> = code
        .split("Label::")
        .skip(1)
        .map(|rest| rest.split(|c: char| !c.is_ascii_alphanumeric()).next().unwrap())
        .collect();
    for label in Label::ALL {
        let variant = format!("{label:?}");
        assert!(named.contains(variant.as_str()), "src/language/labels.rs: nothing names {}", label.name());
    }
}

/// The order in which people read them: the field, what it takes, the store, the bed, what comes of it. A row
/// that is added stands where its declaration does.
#[test]
fn the_amounts_of_a_sheet_keep_their_order() {
    const ORDER: [&str; 18] = [
        "amount-cuttings",
        "amount-bundles",
        "amount-roots",
        "amount-plants",
        "amount-plants-each",
        "amount-containers",
        "amount-layers",
        "amount-roots-per-layer",
        "amount-roots-top-layer",
        "amount-lining",
        "amount-sand",
        "amount-loads",
        "amount-bed",
        "amount-strips",
        "amount-water",
        "amount-jerrycans",
        "amount-water-total",
        "amount-first-cuttings",
    ];
    let pack = Pack::load(&Embedded, "en").unwrap();
    for (example, case) in examples() {
        let facts = Facts::of(&pack, &tell(&case, &make(&case).unwrap())).unwrap();
        let rows = facts.amounts.iter().map(|row| row.name).filter(|name| ORDER.contains(name));
        let rows: Vec<&str> = rows.collect();
        let mut expected = ORDER.to_vec();
        // A group shares its plants; not every field is told in bundles, not every store widens, and not
        // every bed has more strips than one.
        expected.retain(|name| match *name {
            "amount-plants-each" => example == "group",
            "amount-bundles" | "amount-roots-top-layer" | "amount-strips" => rows.contains(name),
            _ => true,
        });
        assert_eq!(rows, expected, "{example}: the order of src/plan/quantities.rs");
    }
}
