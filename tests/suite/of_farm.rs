//! One farm of a group: its plan, its sheet and its messages, beside what the group does together.

use kabla::data::Embedded;
use kabla::guidance::shapes::Shapes;
use kabla::guidance::{Subject, tell};
use kabla::language::Pack;
use kabla::plan::field::{Field, Spacing};
use kabla::plan::group::Member;
use kabla::plan::progress::Check;
use kabla::plan::{AmountReason, Case, Kind, Metres, Quantity, SquareMetres, StepKind, make, plan_of_farm};
use kabla::sheet::Facts;
use proptest::prelude::*;

use crate::plan::{date, farm};
use crate::project::Project;

const RIDGES: Spacing = Spacing::Ridges { between: Metres(1.0), along: Metres(0.3) };

fn group(areas: &[f64]) -> Case {
    let member = |(number, area): (usize, &f64)| Member {
        name: format!("farm {number}"),
        field: Field::of(SquareMetres(*area), RIDGES),
    };
    let farms: Vec<Member> = areas.iter().enumerate().map(member).collect();
    Case {
        name: "The group".to_owned(),
        kind: Kind::Group { members: farms.len() as u32 },
        field: None,
        farms,
        ..farm(1.0)
    }
}

/// By hand: 300, 150 and 90 m² take 1,000, 500 and 300 of 1,800 cuttings. Of 48 roots the second farm brings 13; of
/// 48 × 0.88 × 30 = 1,267 cuttings at the first cut its part is 352, of 1,800 over the season 500, which plant its
/// 150 m²: 67 to 135 kg at 4.5 to 9 t/ha. Store and bed are the group's.
#[test]
fn a_farm_of_a_group_has_its_own_plan() {
    let case = group(&[300.0, 150.0, 90.0]);
    let whole = make(&case).unwrap();
    let (own, plan) = plan_of_farm(&case, &whole, "farm 1").unwrap();
    assert_eq!((plan.name.as_str(), plan.kind, own.kind), ("farm 1", Kind::Farm, Kind::Farm));
    let of = |quantity| plan.now.amounts.get(quantity).unwrap();
    assert_eq!((of(Quantity::CuttingsNeeded), of(Quantity::Bundles)), (500.0, 2.0));
    assert_eq!((of(Quantity::RootsToStore), of(Quantity::CuttingsAtFirstCut)), (13.0, 352.0));
    assert_eq!(of(Quantity::CuttingsOverSeason), 500.0);
    let why = |quantity| plan.now.amounts.amount(quantity).unwrap().why.clone();
    assert_eq!(why(Quantity::RootsToStore), AmountReason::PartOfGroup { whole: 48.0 });
    let harvest = &plan.now.harvest;
    assert_eq!(
        harvest.yield_low.zip(harvest.yield_high).map(|(low, high)| (low.0, high.0)),
        Some((67.0, 135.0))
    );
    let shared = |quantity| (of(quantity), whole.now.amounts.get(quantity).unwrap());
    for quantity in [Quantity::SandLitres, Quantity::BedArea, Quantity::WaterPerDay, Quantity::Containers] {
        let (own, all) = shared(quantity);
        assert_eq!(own, all, "{}", quantity.name());
    }
    assert_eq!(plan.now.steps, whole.now.steps);
    assert!(plan_of_farm(&case, &whole, "nobody's").is_none());
}

/// What the farm does by itself is told with its own amounts, what the group does with the group's, and marked.
#[test]
fn a_farms_sheet_says_what_is_done_together() {
    let case = group(&[300.0, 150.0, 90.0]);
    let (own, plan) = plan_of_farm(&case, &make(&case).unwrap(), "farm 1").unwrap();
    let statements = tell(&own, &plan);
    let of = |kind| statements.iter().find(|statement| statement.subject == Subject::Step(kind)).unwrap();
    let roots = |kind| of(kind).value("roots").cloned().unwrap();
    assert_eq!(roots(StepKind::MarkPlants), kabla::guidance::Value::Number(13.0, 0));
    assert_eq!(roots(StepKind::FillContainer), kabla::guidance::Value::Number(48.0, 0));
    assert_eq!(of(StepKind::MarkPlants).together, None);
    assert_eq!(of(StepKind::WaterBed).together.as_deref(), Some("The group"));
    let pack = Pack::load(&Embedded, "en").unwrap();
    let facts = Facts::of(&pack, &statements).unwrap();
    let title =
        |kind: StepKind| facts.steps.iter().find(|step| step.subject == kind.name()).unwrap().title.clone();
    assert!(title(StepKind::FillContainer).starts_with("Together: "), "{}", title(StepKind::FillContainer));
    assert!(!title(StepKind::PlantField).contains("Together"));
    assert!(
        facts.head.iter().any(|row| row.label == "Group" && row.value == "The group"),
        "{:?}",
        facts.head
    );
    let row = |name: &str| facts.amounts.iter().find(|row| row.name == name).unwrap();
    assert_eq!(row("amount-roots").value, "13");
    assert!(row("amount-sand").label.starts_with("Together: "), "{}", row("amount-sand").label);
    // The bed that is drawn is the one that all have.
    assert_eq!(Shapes::of(&own, &plan).bed.roots, 48);
}

/// Every farm in a booklet and in the messages, each with what it does itself; what is done together is sent once.
#[test]
fn booklet_and_messages_by_farm() {
    let project = Project::new();
    for name in ["village.toml", "rain-eastern-lowlands.csv"] {
        project.copy_to(&format!("examples/{name}"), name);
    }
    let run = project.kabla(&[
        "sheet",
        "village.toml",
        "--format",
        "booklet",
        "--language",
        "en",
        "--out",
        "all.pdf",
    ]);
    assert!(run.out.contains("4 sheets"), "the group's and three farms': {}", run.out);
    project.kabla(&["sheet", "village.toml", "--as", "sms", "--language", "en", "--out", "all.csv"]).done();
    let table = project.read("all.csv");
    let mut rows = csv::Reader::from_reader(table.as_bytes());
    let rows: Vec<Vec<String>> =
        rows.records().map(|row| row.unwrap().iter().map(str::to_owned).collect()).collect();
    let of = |name: &str, about: &str| rows.iter().filter(|row| row[1] == name && row[2] == about).count();
    for farm in ["Asha", "Baraka", "Chiku"] {
        assert_eq!((of(farm, "mark-plants"), of(farm, "plant-field")), (1, 1), "{farm}");
        assert_eq!((of(farm, "fill-container"), of(farm, "water-bed")), (0, 0), "{farm}");
    }
    let all = "Tumaini village store";
    assert_eq!((of(all, "mark-plants"), of(all, "fill-container"), of(all, "caution-rot")), (0, 1, 1));
    assert!(rows.windows(2).all(|pair| pair[0][0] <= pair[1][0]), "by date");
    let one = project.kabla(&["sheet", "village.toml", "--farm", "Baraka", "--language", "en"]).done();
    assert!(project.has("village-farm-2-en.pdf"), "{}", one.out);
    let none = project.kabla(&["plan", "village.toml", "--farm", "Zuri"]).ended(2);
    assert!(none.err.contains("Asha, Baraka, Chiku"), "{}", none.err);
    let own = project.kabla(&["plan", "village.toml", "--farm", "Chiku", "--json"]).done().json();
    assert_eq!(own["name"], "Chiku");
}

proptest! {
    /// Whatever the fields, and whatever a check left: the parts of all farms add up to the group's.
    #[test]
    fn the_parts_of_a_group_add_up(areas in prop::collection::vec(5.0..900.0f64, 1..8), healthy in prop::option::of(0u32..40)) {
        let mut case = group(&areas);
        let checks = healthy.map(|healthy| Check {
            date: date("2027-06-24"), healthy, thrown_away: None, sprouted: None,
        });
        case.store_checks = checks.into_iter().collect();
        let whole = make(&case).unwrap();
        let farms: Vec<_> = case.farms.iter().map(|farm| plan_of_farm(&case, &whole, &farm.name).unwrap().1).collect();
        for quantity in [
            Quantity::CuttingsNeeded, Quantity::RootsToStore, Quantity::PlantsToMark,
            Quantity::CuttingsAtFirstCut, Quantity::CuttingsOverSeason, Quantity::RootsAtBed,
        ] {
            let sum: f64 = farms.iter().filter_map(|plan| plan.now.amounts.get(quantity)).sum();
            prop_assert_eq!(sum, whole.now.amounts.get(quantity).unwrap_or_default(), "{}", quantity.name());
        }
        for (index, cut) in whole.now.cuts.iter().enumerate() {
            let sum: u32 = farms.iter().map(|plan| plan.now.cuts[index].cuttings.middle).sum();
            prop_assert_eq!(sum, cut.cuttings.middle);
        }
    }
}
