//! Plans as a whole.

use std::collections::BTreeMap;

use chrono::{Days, NaiveDate};
use kabla::plan::Value as Worth;
use kabla::plan::Worded;
use kabla::plan::after::Variety;
use kabla::plan::field::{Field, Spacing};
use kabla::plan::growth::Points;
use kabla::plan::multiply::{Rate, Sizing, at_least};
use kabla::plan::progress::Check;
use kabla::plan::season::{MonthDay, Rains, Risk};
use kabla::plan::{
    AmountReason, Assumptions, Case, DateReason, Kind, Metres, Place, Plan, PlanBy, Quantity, Remark,
    SquareMetres, StepKind, make,
};
use proptest::prelude::*;

use crate::expected::rows;

pub(crate) fn date(text: &str) -> NaiveDate {
    text.parse().unwrap()
}

/// No cutting fails, and that is certain.
pub(crate) const NO_GAPS: Points = Points { low: 0.0, middle: 0.0, high: 0.0 };

/// A farm with a field that takes `area` × 3.33 cuttings, planned by the round figures of common practice:
/// 25 plants, 40 roots and 1,500 cuttings for 450 m². No cutting is counted as failing.
pub(crate) fn farm(area: f64) -> Case {
    Case {
        name: "a farm".to_owned(),
        kind: Kind::Farm,
        place: Place {
            name: "a place".to_owned(),
            latitude: -6.0,
            longitude: 36.0,
            elevation: Metres(1000.0),
        },
        rains: Rains::On(date("2027-11-25")),
        risk: Risk::Early,
        rains_end: None,
        rains_began: None,
        harvest: date("2027-05-24"),
        harvest_until: None,
        field: Some(Field::of(
            SquareMetres(area),
            Spacing::Ridges { between: Metres(1.0), along: Metres(0.3) },
        )),
        farms: Vec::new(),
        at_hand: None,
        field_sizes: Vec::new(),
        sizing: Sizing::BedSeason,
        plan_by: PlanBy::Practice,
        confidence_percent: None,
        store_checks: Vec::new(),
        done: None,
        containers: Vec::new(),
        climate: None,
        soil: None,
        hands: None,
        source: None,
        variety: Variety::default(),
        events: Vec::new(),
        language: None,
        today: None,
        assumptions: Assumptions { gap_share: 0.0, ..Assumptions::default() },
    }
}

pub(crate) fn amount(plan: &Plan, quantity: Quantity) -> f64 {
    plan.now.amounts.get(quantity).unwrap()
}

/// A case whose roots may lie in sand for as long as its dates make them.
pub(crate) fn stored_for_any_time(case: Case) -> Case {
    let assumptions = Assumptions { storage_most_days: 730.0, ..case.assumptions };
    Case { assumptions, ..case }
}

/// Common practice: 25 plants give 40 roots, with 3 more to spare where 1 in 10 is given up; about 1,500 cuttings, 15 m²
/// of bed.
#[test]
fn the_round_figures_of_common_practice() {
    let zone = Case { kind: Kind::Zone, field: None, ..farm(1.0) };
    for case in [farm(450.0), zone] {
        let plan = make(&case).unwrap();
        assert_eq!(amount(&plan, Quantity::PlantsToMark), 28.0);
        assert_eq!(amount(&plan, Quantity::RootsToStore), 40.0);
        assert_eq!(amount(&plan, Quantity::CuttingsOverSeason), 1500.0);
        assert_eq!(amount(&plan, Quantity::BedArea), 15.0);
        // 15 m² in strips 1.2 m wide are 12.5 m of strip: two of 6.5 m, with a path of 0.5 m between them.
        assert_eq!(amount(&plan, Quantity::BedStrips), 2.0);
        assert_eq!(amount(&plan, Quantity::BedLength), 6.5);
        assert_eq!(amount(&plan, Quantity::BedWidth), 2.9);
    }
}

#[test]
fn densities_of_the_handbook() {
    for row in rows("plant-density", "cases.csv") {
        let number = |name: &str| row[name].parse::<f64>().unwrap();
        let between = Metres(number("between_m"));
        let spacing = match row["layout"].as_str() {
            "ridges" => Spacing::Ridges { between, along: Metres(number("along_m")) },
            _ => Spacing::Mounds { between, cuttings: number("cuttings_per_mound") },
        };
        assert!((spacing.density() * 10_000.0 - number("per_hectare")).abs() < 1.0, "{row:?}");
    }
}

/// Dates of the farm above, counted on a calendar by hand.
#[test]
fn dates_are_counted_back_from_rains_and_harvest() {
    let plan = make(&farm(450.0)).unwrap();
    let expected = rows("season-dates", "cases.csv");
    for kind in StepKind::ALL {
        let of_step = expected.iter().filter(|row| row["step"] == kind.name());
        let by_hand: Vec<_> = of_step.map(|row| (row["from"].clone(), row["to"].clone())).collect();
        let name = kind.name();
        assert!(!by_hand.is_empty(), "tests/expected/season-dates/cases.csv lacks {name}");
        let planned: Vec<_> = plan
            .now
            .steps_of(kind)
            .map(|step| (step.when.from.to_string(), step.when.to.to_string()))
            .collect();
        assert_eq!(planned, by_hand, "{name}: the rule in src/plan/timeline.rs, or the expected dates");
    }
    let bed = plan.now.steps_of(StepKind::PlantBed).next().unwrap();
    assert!(matches!(bed.why, DateReason::PlantBed { .. }), "nothing is late: {:?}", bed.why);
}

#[test]
fn rains_too_soon_are_answered_not_refused() {
    let case = Case { rains: Rains::On(date("2027-06-10")), ..farm(450.0) };
    let plan = make(&case).unwrap();
    assert_eq!(plan.now.steps_of(StepKind::MonthlyCheck).count(), 0);
    let bed = plan.now.steps_of(StepKind::PlantBed).next().unwrap().when;
    assert!(bed.from > case.harvest);
    assert!(
        plan.now.steps_of(StepKind::CutForPlanting).next().unwrap().when.from >= bed.from + Days::new(30)
    );
    let too_soon = Remark::RainsTooSoon { rains: date("2027-06-10"), bed: bed.from };
    assert!(plan.remarks.contains(&too_soon), "{:?}", plan.remarks);
    let cut = bed.from + Days::new(30);
    let late = Remark::BedLate { cut, came: "no", onset: date("2027-06-10") };
    assert!(plan.remarks.contains(&late), "{:?}", plan.remarks);
}

#[test]
fn usual_rains_are_the_first_after_the_harvest() {
    for (harvest, rains) in
        [("2027-05-24", "2027-11-25"), ("2027-11-25", "2028-11-25"), ("2027-12-31", "2028-11-25")]
    {
        let case = Case {
            harvest: date(harvest),
            rains: Rains::Usual(MonthDay::new(11, 25).unwrap()),
            ..farm(450.0)
        };
        assert_eq!(make(&stored_for_any_time(case)).unwrap().rains, date(rains));
    }
}

#[test]
fn first_planting_stores_more() {
    let season = make(&farm(450.0)).unwrap();
    let first = make(&Case { sizing: Sizing::FirstPlanting, ..farm(450.0) }).unwrap();
    assert!(
        season.remarks.iter().any(|remark| matches!(remark, Remark::FieldWaits { roots: 57, .. })),
        "1500 / (30 × 0.88) = 56.8"
    );
    assert_eq!(amount(&first, Quantity::RootsToStore), 57.0);
    assert!(amount(&first, Quantity::CuttingsAtFirstCut) >= 1500.0);
}

#[test]
fn overridden_defaults_are_told_apart() {
    let mut case = farm(450.0);
    case.assumptions.roots_per_plant = 2.0;
    let plan = make(&case).unwrap();
    // 40 / (2 × 0.9) = 22.2
    assert_eq!(amount(&plan, Quantity::PlantsToMark), 23.0);
    let changed: Vec<_> =
        plan.defaults().into_iter().filter(|used| used.basis.is_none()).map(|used| used.name).collect();
    // The farm itself says that no cutting fails.
    assert_eq!(changed, ["roots_per_plant", "gap_share"]);
}

/// Each step with one that must have begun before it.
pub(crate) fn dependencies() -> Vec<(StepKind, StepKind)> {
    let kind = |name: &str| StepKind::from_name(name).unwrap_or_else(|| panic!("no step {name}"));
    let of_row = |row: BTreeMap<String, String>| {
        let later = kind(&row["step"]);
        row["after"].split_whitespace().map(|name| (later, kind(name))).collect::<Vec<_>>()
    };
    let pairs: Vec<_> = rows("season-dates", "cases.csv").into_iter().flat_map(of_row).collect();
    for kind in StepKind::ALL {
        let named = pairs.iter().any(|(later, earlier)| [*later, *earlier].contains(&kind));
        assert!(
            named,
            "tests/expected/season-dates/cases.csv: {} follows nothing, and nothing it",
            kind.name()
        );
    }
    pairs
}

fn any_case() -> impl Strategy<Value = Case> {
    let day = (0u64..40_000).prop_map(|days| date("1950-01-01") + Days::new(days));
    (day, 1u64..366, 0.1..20_000.0f64, -66.0..66.0f64, any::<bool>()).prop_map(
        |(harvest, dry, area, latitude, first)| Case {
            harvest,
            rains: Rains::On(harvest + Days::new(dry)),
            sizing: if first { Sizing::FirstPlanting } else { Sizing::BedSeason },
            place: Place { latitude, ..farm(1.0).place },
            ..stored_for_any_time(farm(area))
        },
    )
}

proptest! {
    #[test]
    fn no_step_precedes_one_it_depends_on(case in any_case()) {
        let plan = make(&case).unwrap();
        let begins = |kind| plan.now.steps_of(kind).map(|step| step.when.from).min();
        for kind in StepKind::ALL {
            // A short season has no time for checks between the first and the last.
            prop_assert!(begins(kind).is_some() || kind == StepKind::MonthlyCheck, "{kind:?} is missing");
        }
        for (later, earlier) in dependencies() {
            if let Some(later_day) = begins(later) {
                let earlier_day = begins(earlier).unwrap();
                prop_assert!(later_day >= earlier_day, "{later:?} on {later_day} before {earlier:?} on {earlier_day}");
            }
        }
        for pair in plan.now.steps.windows(2) {
            prop_assert!(pair[0].when.from <= pair[1].when.from);
        }
    }

    #[test]
    fn more_field_never_needs_fewer(case in any_case(), more in 1.0..4.0f64) {
        let larger = Case { field: Some(Field { area: SquareMetres(case.field.unwrap().area.0 * more), ..case.field.unwrap() }), ..case.clone() };
        let (small, large) = (make(&case).unwrap(), make(&larger).unwrap());
        for quantity in [Quantity::CuttingsNeeded, Quantity::RootsToStore, Quantity::PlantsToMark, Quantity::BedArea, Quantity::Containers] {
            prop_assert!(amount(&large, quantity) >= amount(&small, quantity), "{quantity:?}");
        }
    }

    #[test]
    fn later_rains_never_give_an_earlier_bed(case in any_case(), later in 1u64..60) {
        let Rains::On(rains) = case.rains else { unreachable!() };
        let postponed = Case { rains: Rains::On(rains + Days::new(later)), ..case.clone() };
        let bed = |case: &Case| make(case).unwrap().now.steps_of(StepKind::PlantBed).next().unwrap().when;
        prop_assert!(bed(&postponed).from >= bed(&case).from && bed(&postponed).to >= bed(&case).to);
    }

    #[test]
    fn every_amount_is_a_number_that_can_be_told(case in any_case()) {
        let plan = make(&case).unwrap();
        for amount in &plan.now.amounts.0 {
            prop_assert!(amount.value.is_finite() && amount.value >= 0.0, "{amount:?}");
            let numbers = amount.why.values().into_iter().filter_map(|(_, value)| match value {
                Worth::Number(number, _) => Some(number),
                _ => None,
            });
            prop_assert!(numbers.into_iter().all(f64::is_finite), "{amount:?}");
        }
    }
}

#[test]
fn chances_of_survivors_as_scipy_has_them() {
    for row in rows("beta-binomial", "cases.csv") {
        let number = |name: &str| row[name].parse::<f64>().unwrap();
        let found = at_least(number("n") as u32, number("k") as u32, number("alpha"), number("beta"));
        assert!((found - number("at_least_k")).abs() < 1e-9, "{row:?}: {found}");
    }
}

proptest! {
    /// The store for a chance is the smallest one: one root fewer is not sure enough.
    #[test]
    fn sure_stores_are_enough_and_no_larger(cuttings in 1u32..20_000, sure in 5u32..99, first in any::<bool>()) {
        let a = Assumptions::default();
        let sizing = if first { Sizing::FirstPlanting } else { Sizing::BedSeason };
        let rate = Rate::of(PlanBy::Practice, 4.0, 56.0, &a);
        let fewest = |sure: f64| rate.roots_for_confidence(f64::from(cuttings), NO_GAPS, sure / 100.0, sizing).unwrap();
        let roots = fewest(f64::from(sure));
        let per_root = if first { 30.0 } else { 37.5 / 0.88 };
        let survivors = (f64::from(cuttings) / per_root - 1e-9).ceil() as u32;
        // The beta distribution with mean 0.88 and deviation 0.055.
        let size = 0.88 * 0.12 / (0.055 * 0.055) - 1.0;
        let chance = |roots| at_least(roots, survivors, 0.88 * size, 0.12 * size);
        prop_assert!(chance(roots) >= f64::from(sure) / 100.0);
        prop_assert!(roots == survivors || chance(roots - 1) < f64::from(sure) / 100.0);
        let surer = fewest(f64::from(sure + 1).min(99.0));
        prop_assert!(surer >= roots);
    }
}

#[test]
fn being_sure_takes_more_roots_and_says_why() {
    let usual = amount(&make(&farm(450.0)).unwrap(), Quantity::RootsToStore);
    let plan = make(&Case { confidence_percent: Some(90.0), ..farm(450.0) }).unwrap();
    let sure = amount(&plan, Quantity::RootsToStore);
    assert!(sure > usual, "{sure} against {usual}");
    let why =
        &plan.now.amounts.0.iter().find(|amount| amount.quantity == Quantity::RootsToStore).unwrap().why;
    assert!(
        matches!(why, AmountReason::RootsToBeSure { cuttings: 1500, percent: 90.0, usual: 40, .. }),
        "{why:?}"
    );
}

fn check(day: &str, healthy: u32, thrown_away: Option<u32>, sprouted: Option<u32>) -> Check {
    Check { date: date(day), healthy, thrown_away, sprouted }
}

fn with_checks(checks: &[Check]) -> Plan {
    make(&Case { store_checks: checks.to_vec(), ..farm(450.0) }).unwrap()
}

/// By hand: 0.88 over 4 months is 0.88^(31/121.75) = 0.968 after 31 days, so 38 of 40; the worst on record,
/// 0.81^(31/121.75) = 0.948, leaves 37. From 38 on 24 June to the bed on 30 September are 98 days:
/// 38 × 0.88^(98/121.75) = 34.3.
#[test]
fn usual_losses_go_on_as_usual() {
    let plan = with_checks(&[check("2027-06-24", 38, Some(2), None)]);
    assert_eq!((plan.store_checks[0].expected, plan.store_checks[0].fast_loss), (38, false));
    assert_eq!(amount(&plan, Quantity::RootsLeft), 38.0);
    assert_eq!(amount(&plan, Quantity::RootsAtBed), 34.0);
    assert_eq!(amount(&plan, Quantity::CuttingsExpected), 34.0 * 30.0);
    assert_eq!(amount(&plan, Quantity::CuttingsShort), 1500.0 - 34.0 * 30.0);
    assert_eq!(amount(&plan, Quantity::BedArea), 34.0 * 0.375, "the bed is made for the roots there are");
    let short = |remark: &Remark| matches!(remark, Remark::CuttingsShort { short: 480, area_m2: 300.0, .. });
    assert!(plan.remarks.iter().any(short), "{:?}", plan.remarks);
    // 34 × 37.5 / 0.88 = 1,448.9 in the season, 428 of them at two later cuts.
    let cuts: Vec<u32> = plan.now.cuts.iter().map(|cut| cut.cuttings.middle).collect();
    assert_eq!(cuts, [1020, 214, 214]);
}

/// By hand: 34 of 40 after 31 days are fewer than the 37 at the worst on record, and 34 × 0.85^(98/31) = 20.3.
#[test]
fn fast_losses_are_flagged_where_they_show_and_go_on() {
    let plan = with_checks(&[check("2027-06-24", 34, Some(6), None)]);
    assert!(plan.store_checks[0].fast_loss);
    assert_eq!(amount(&plan, Quantity::RootsAtBed), 20.0);
    let later = with_checks(&[check("2027-06-24", 38, Some(2), None), check("2027-07-24", 30, None, None)]);
    assert_eq!(later.store_checks.iter().map(|check| check.fast_loss).collect::<Vec<_>>(), [false, true]);
    let flagged = |remark: &Remark| matches!(remark, Remark::FastLoss { day, healthy: 30, roots: 38, .. } if *day == date("2027-07-24"));
    assert!(later.remarks.iter().any(flagged), "{:?}", later.remarks);
}

#[test]
fn the_last_check_counts_sprouts_and_may_be_enough() {
    let last = |sprouted| {
        with_checks(&[check("2027-06-24", 55, Some(2), None), check("2027-09-30", 53, None, Some(sprouted))])
    };
    assert_eq!(amount(&last(40), Quantity::CuttingsExpected), 1200.0, "roots without sprouts give none");
    let enough = last(52);
    assert_eq!(amount(&enough, Quantity::CuttingsShort), 0.0);
    // 52 × 30 cuttings are 60 more than 1,500.
    assert!(enough.remarks.contains(&Remark::Enough { spare: 60 }), "{:?}", enough.remarks);
}

#[test]
fn a_store_that_is_lost_has_a_plan_all_the_same() {
    let plan = with_checks(&[check("2027-06-24", 0, Some(40), None)]);
    assert_eq!(amount(&plan, Quantity::RootsAtBed), 0.0);
    assert_eq!(amount(&plan, Quantity::CuttingsShort), 1500.0);
    assert!(plan.now.amounts.0.iter().all(|amount| amount.value.is_finite()));
}

proptest! {
    #[test]
    fn more_healthy_roots_never_give_fewer_cuttings(first in 0u32..60, lost in 0u32..60, days in 20u64..120) {
        let second = first.saturating_sub(lost);
        let plan = |second| with_checks(&[
            check("2027-06-01", first, None, None),
            Check { date: date("2027-06-01") + Days::new(days), healthy: second, thrown_away: None, sprouted: None },
        ]);
        let fewer = plan(second);
        let more = plan((second + 1).min(first));
        prop_assert!(amount(&more, Quantity::CuttingsExpected) >= amount(&fewer, Quantity::CuttingsExpected));
        prop_assert!(amount(&fewer, Quantity::RootsAtBed) <= f64::from(second));
    }
}
