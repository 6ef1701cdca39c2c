//! Groups that sum their farms, and zones.

use kabla::plan::field::{Field, Spacing};
use kabla::plan::group::{Member, divide};
use kabla::plan::multiply::Sizing;
use kabla::plan::{Case, Kind, Metres, Quantity, SquareMetres, StepKind, make};
use proptest::prelude::*;

use crate::plan::{amount, date, farm};

const RIDGES: Spacing = Spacing::Ridges { between: Metres(1.0), along: Metres(0.3) };

fn member(name: &str, area: f64) -> Member {
    Member { name: name.to_owned(), field: Field::of(SquareMetres(area), RIDGES) }
}

fn group(farms: Vec<Member>) -> Case {
    let members = farms.len() as u32;
    Case { kind: Kind::Group { members }, field: None, farms, ..farm(1.0) }
}

/// Farms that plant differently are not told each other's spacing.
#[test]
fn farms_that_differ_keep_their_own_spacing() {
    let layout = |case: &Case| {
        let told = kabla::guidance::tell(case, &make(case).unwrap());
        told[0].value("layout").cloned().unwrap()
    };
    let mut case = group(vec![member("one", 300.0), member("two", 150.0)]);
    assert_eq!(layout(&case), kabla::guidance::Value::Name("ridges"));
    case.farms[1].field.spacing = Spacing::Mounds { between: Metres(1.0), cuttings: 3.0 };
    assert_eq!(layout(&case), kabla::guidance::Value::Name("own"));
}

/// By hand: 300, 150 and 90 m² take 1,000 + 500 + 300 = 1,800 cuttings, 1,800 / 37.5 = 48 roots,
/// 48 / (1.6 × 0.9) = 33.3 plants, so 34;
/// 48 roots by thirds of 10 : 5 : 3 are 26.7, 13.3 and 8.
#[test]
fn a_group_sums_its_farms() {
    let plan = make(&group(vec![member("one", 300.0), member("two", 150.0), member("three", 90.0)])).unwrap();
    assert_eq!(amount(&plan, Quantity::CuttingsNeeded), 1800.0);
    assert_eq!(amount(&plan, Quantity::RootsToStore), 48.0);
    assert_eq!(amount(&plan, Quantity::PlantsToMark), 34.0);
    let shares: Vec<_> = plan.now.farms.iter().map(|farm| (farm.cuttings, farm.roots)).collect();
    assert_eq!(shares, [(1000, 27), (500, 13), (300, 8)]);
    assert_eq!(plan.now.farms.iter().map(|farm| farm.plants).sum::<u32>(), 34);
    assert_eq!(plan.now.bed.area.0, 48.0 * 0.375, "one bed for all");
    assert_eq!(plan.now.amounts.get(Quantity::PlantsPerMember), None, "each farm has its own share");
}

proptest! {
    #[test]
    fn parts_add_to_the_whole(whole in 0u32..100_000, weights in prop::collection::vec(0u32..5000, 1..40)) {
        prop_assume!(weights.iter().any(|weight| *weight > 0));
        let parts = divide(whole, &weights);
        prop_assert_eq!(parts.iter().sum::<u32>(), whole);
        for (part, weight) in parts.iter().zip(&weights) {
            let exact = f64::from(whole) * f64::from(*weight) / weights.iter().map(|weight| f64::from(*weight)).sum::<f64>();
            prop_assert!((f64::from(*part) - exact).abs() < 1.0, "{part} for {exact}");
        }
    }

    #[test]
    fn shares_add_to_the_groups_totals(areas in prop::collection::vec(5.0..3000.0f64, 1..30)) {
        let farms = areas.iter().enumerate().map(|(index, area)| member(&index.to_string(), *area)).collect();
        let plan = make(&group(farms)).unwrap();
        let sum = |of: fn(&kabla::plan::group::Share) -> u32| f64::from(plan.now.farms.iter().map(of).sum::<u32>());
        prop_assert_eq!(sum(|farm| farm.cuttings), amount(&plan, Quantity::CuttingsNeeded));
        prop_assert_eq!(sum(|farm| farm.roots), amount(&plan, Quantity::RootsToStore));
        prop_assert_eq!(sum(|farm| farm.plants), amount(&plan, Quantity::PlantsToMark));
    }
}

fn zone() -> Case {
    Case {
        kind: Kind::Zone,
        field: None,
        field_sizes: [100.0, 450.0].map(SquareMetres).to_vec(),
        ..farm(1.0)
    }
}

/// By hand for 450 m²: 1,500 cuttings, 40 roots, 40 / 1.44 = 27.8 plants, 15 m²; for 100 m² 334, 8.9, 9 / 1.44 = 6.25
/// and 3.4 (9 × 0.375).
#[test]
fn a_zone_has_a_table_by_field_size() {
    let plan = make(&zone()).unwrap();
    assert_eq!(amount(&plan, Quantity::RootsToStore), 40.0);
    let rows: Vec<_> =
        plan.now.by_field.iter().map(|row| (row.cuttings, row.roots, row.plants, row.bed.0)).collect();
    assert_eq!(rows, [(334, 9, 7, 3.4), (1500, 40, 28, 15.0)]);
    assert_eq!(f64::from(plan.now.by_field[1].jerrycans_per_day), amount(&plan, Quantity::JerrycansPerDay));
    let first = make(&Case { sizing: Sizing::FirstPlanting, ..zone() }).unwrap();
    assert_eq!(first.now.by_field[1].roots, 57);
    assert!(make(&farm(450.0)).unwrap().now.by_field.is_empty(), "a farm knows its field");
}

/// In a zone nobody works on the same day: every step is a span.
#[test]
fn a_zones_dates_are_spans() {
    let plan = make(&zone()).unwrap();
    assert!(plan.now.steps.iter().all(|step| !step.when.is_day()), "{:?}", plan.now.steps);
    let harvest = |plan: &kabla::plan::Plan| plan.now.steps_of(StepKind::Harvest).next().unwrap().when;
    assert_eq!(harvest(&plan).to, date("2027-05-30"));
    let longer = make(&Case { harvest_until: Some(date("2027-06-20")), ..zone() }).unwrap();
    assert_eq!(harvest(&longer).to, date("2027-06-20"));
    let mark = longer.now.steps_of(StepKind::MarkPlants).next().unwrap().when;
    let (from, to) = (date("2027-04-24"), date("2027-05-01"));
    assert_eq!((mark.from, mark.to), (from, to), "30 to 23 days before the first digging");
    let fill = longer.now.steps_of(StepKind::FillContainer).next().unwrap().when;
    assert_eq!(fill.to, date("2027-06-21"));
}
