//! When things went otherwise: overdue steps, rains that came, and the edges of the calendar.

use kabla::plan::progress::Check;
use kabla::plan::season::{MonthDay, Rains, RainsReason};
use kabla::plan::{Case, Place, Plan, Quantity, Remark, StepKind, make};
use proptest::prelude::*;

use crate::plan::{amount, date, farm, stored_for_any_time};

fn on(today: &str, done: Option<StepKind>) -> Plan {
    make(&Case { today: Some(date(today)), done, ..farm(450.0) }).unwrap()
}

fn first_day(plan: &Plan, topic: StepKind) -> String {
    plan.now.steps_of(topic).next().unwrap().when.from.to_string()
}

#[test]
fn nothing_is_overdue_before_its_last_day() {
    assert_eq!(on("2027-05-01", None).overdue, []);
    let late: Vec<_> = on("2027-05-02", None).overdue.iter().map(|step| step.kind).collect();
    assert_eq!(late, [StepKind::MarkPlants]);
}

/// By hand: the bed due from 30 September to 14 October is planted on 8 November, first vines 30 days later
/// on 8 December, 13 days after the rains of 25 November. 39 days longer in sand leave
/// 0.88^(39/121.75) = 0.9599 of the 1,056 cuttings: 1,013. Common practice counts on a bed of six weeks; by the
/// curve one of 30 days gives a fifth of what that gives (1 cutting against 5): 202, and 854 fewer.
#[test]
fn a_missed_bed_costs_days_and_cuttings() {
    let plan = on("2027-11-08", Some(StepKind::LastCheck));
    assert_eq!(first_day(&plan, StepKind::PlantBed), "2027-11-08");
    assert_eq!(first_day(&plan, StepKind::PlantField), "2027-12-08");
    let late = plan.overdue.iter().find(|step| step.kind == StepKind::PlantBed).unwrap();
    assert_eq!((late.days_later, late.cuttings_at_first_cut, late.cuttings_fewer), (13, 202, 854));
    assert!(late.certain);
    assert_eq!(plan.now.cuts[0].cuttings.middle, 202);
    // Of 1,500 − 1,056 = 444 later ones, what 0.9599 of the roots give: 426 in two cuts.
    assert_eq!(plan.now.cuts[1].cuttings.middle, 213);
    let said = Remark::LateWork {
        steps: 1,
        today: date("2027-11-08"),
        field_from: date("2027-12-08"),
        days_later: 13,
        fewer: 860,
    };
    assert!(plan.remarks.contains(&said), "{:?}", plan.remarks);
}

/// Nobody said what is done: the dates stand, and each step that may be missing tells its cost.
#[test]
fn what_may_be_missing_is_told_without_moving_dates() {
    let plan = on("2027-11-08", None);
    assert_eq!(first_day(&plan, StepKind::PlantBed), "2027-09-30");
    let bed = plan.overdue.iter().find(|step| step.kind == StepKind::PlantBed).unwrap();
    assert!(!bed.certain);
    assert_eq!((bed.days_later, bed.cuttings_at_first_cut), (13, 202));
    // Even if only the harvest is missing: dug today, filled today, the bed the day after.
    let harvest = plan.overdue.iter().find(|step| step.kind == StepKind::Harvest).unwrap();
    assert_eq!(harvest.field_from, date("2027-12-09"));
    // Roots that stayed in the ground lost nothing in the sand; the bed of 30 days gives 1,056 / 5 = 211.
    assert_eq!(harvest.cuttings_fewer, 845);
}

#[test]
fn checks_show_that_the_store_was_filled() {
    let store_checks =
        vec![Check { date: date("2027-06-24"), healthy: 38, thrown_away: Some(2), sprouted: None }];
    let late = |store_checks: &[Check]| {
        let today = Some(date("2027-10-20"));
        let plan = make(&Case { today, store_checks: store_checks.to_vec(), ..farm(450.0) }).unwrap();
        plan.overdue.iter().map(|step| step.kind).collect::<Vec<_>>()
    };
    let all = late(&[]);
    assert!(all.contains(&StepKind::Harvest) && all.contains(&StepKind::FillContainer), "{all:?}");
    // The last monthly check was due on 24 August, the bed until 14 October.
    let since = [StepKind::MonthlyCheck, StepKind::PrepareBed, StepKind::LastCheck, StepKind::PlantBed];
    assert_eq!(late(&store_checks), since);
}

/// A missed check is made today, and only once; those to come stay.
#[test]
fn missed_checks_are_made_today() {
    let plan = on("2027-08-01", Some(StepKind::FillContainer));
    let checks: Vec<_> =
        plan.now.steps_of(StepKind::MonthlyCheck).map(|step| step.when.from.to_string()).collect();
    assert_eq!(checks, ["2027-08-01", "2027-08-24"]);
}

/// Rains that come before the bed is ready: the bed at once, its vines 30 days later, and said so.
#[test]
fn rains_that_come_early_have_an_answer() {
    let began = |day: &str| Case { rains_began: Some(date(day)), ..farm(450.0) };
    let early = make(&began("2027-09-10")).unwrap();
    assert_eq!(early.rains, date("2027-09-10"));
    assert_eq!(first_day(&early, StepKind::PlantBed), "2027-09-10");
    assert_eq!(first_day(&early, StepKind::PlantField), "2027-10-10");
    let late = Remark::BedLate { cut: date("2027-10-10"), came: "yes", onset: date("2027-09-10") };
    assert!(early.remarks.contains(&late), "{:?}", early.remarks);
    // The bed stands already: what was planned for it stays, and the field begins with the rain.
    let ready = make(&began("2027-11-10")).unwrap();
    assert_eq!(first_day(&ready, StepKind::PlantBed), "2027-09-30");
    assert_eq!(first_day(&ready, StepKind::PlantField), "2027-11-10");
    assert_eq!(ready.rains_why, RainsReason::Begun { expected: date("2027-11-25") });
}

/// Hand-counted dates over a year's end and a leap day.
#[test]
fn years_end_and_leap_days() {
    let case = Case {
        harvest: date("2027-10-31"),
        rains: Rains::Usual(MonthDay::new(2, 29).unwrap()),
        ..farm(450.0)
    };
    let plan = make(&case).unwrap();
    assert_eq!(plan.rains, date("2028-02-29"));
    assert_eq!(first_day(&plan, StepKind::PlantBed), "2028-01-04", "56 days back from 29 February");
    let checks: Vec<_> =
        plan.now.steps_of(StepKind::MonthlyCheck).map(|step| step.when.from.to_string()).collect();
    assert_eq!(
        checks,
        ["2027-11-10", "2027-11-30"],
        "10 days on, the early check; October has 31 days, November 30; 31 December is too near the bed"
    );
    let other_year = make(&Case { harvest: date("2026-10-31"), ..case }).unwrap();
    assert_eq!(other_year.rains, date("2027-02-28"), "no leap year: the last day of February");
}

/// The same latitude north and south: the hemispheres trade their seasons half a year apart.
#[test]
fn hemispheres_mirror_each_other() {
    let at = |latitude: f64, harvest: &str, rains: &str| {
        let place = Place { latitude, ..farm(1.0).place };
        make(&Case { place, harvest: date(harvest), rains: Rains::On(date(rains)), ..farm(450.0) }).unwrap()
    };
    let south = at(-12.0, "2027-05-24", "2027-11-25");
    let north = at(12.0, "2026-11-22", "2027-05-26");
    let water = |plan: &Plan| amount(plan, Quantity::WaterPerDay);
    assert!((water(&south) / water(&north) - 1.0).abs() < 0.08, "{} and {}", water(&south), water(&north));
    let winter = at(-12.0, "2026-11-22", "2027-05-26");
    assert!(water(&winter) < water(&south) * 0.9, "the southern winter has less sun");
}

proptest! {
    /// However late the work: no step lies before one it depends on, none that is not done
    /// lies in the past, and nothing is planted earlier than planned.
    #[test]
    fn late_work_keeps_its_order(late in 0u64..500, done in prop::sample::select(StepKind::ALL.to_vec()), rains in 30u64..360) {
        let harvest = date("2027-05-24");
        let today = date("2027-04-01") + chrono::Days::new(late);
        let rains = Rains::On(harvest + chrono::Days::new(rains));
        let case = stored_for_any_time(farm(450.0));
        let planned = make(&Case { rains: rains.clone(), ..case.clone() }).unwrap();
        let case = Case { today: Some(today), done: Some(done), rains, ..case };
        let plan = make(&case).unwrap();
        let begins = |topic| plan.now.steps_of(topic).map(|step| step.when.from).min();
        for pair in [
            (StepKind::MarkPlants, StepKind::Harvest), (StepKind::CheckPlants, StepKind::Harvest), (StepKind::CutVines, StepKind::Harvest),
            (StepKind::GatherSand, StepKind::FillContainer), (StepKind::Harvest, StepKind::FillContainer), (StepKind::FillContainer, StepKind::PlantBed),
            (StepKind::LastCheck, StepKind::PlantBed), (StepKind::PrepareBed, StepKind::PlantBed), (StepKind::PlantBed, StepKind::CutForPlanting),
            (StepKind::CutForPlanting, StepKind::PlantField), (StepKind::PlantField, StepKind::FirstHarvest),
        ] {
            let [Some(first), Some(then)] = [pair.0, pair.1].map(begins) else {
                return Err(TestCaseError::fail(format!("a step of {pair:?} is missing")));
            };
            prop_assert!(first <= then, "{:?} on {first}, {:?} on {then}", pair.0, pair.1);
        }
        for step in plan.now.steps.iter().filter(|step| step.kind > done && step.kind <= StepKind::PlantBed) {
            prop_assert!(step.when.to >= today, "{:?}", step);
        }
        let field = |plan: &Plan| plan.now.steps_of(StepKind::PlantField).next().unwrap().when.from;
        prop_assert!(field(&plan) >= field(&planned));
    }
}
