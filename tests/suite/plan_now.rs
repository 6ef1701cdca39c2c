//! The season as it stands: counted from what is done, from what the checks left and from the rains that came.

use kabla::plan::after::HarvestReason;
use kabla::plan::progress::Check;
use kabla::plan::ways::WayKind;
use kabla::plan::{AmountReason, Case, DateReason, Plan, PlanBy, Quantity, SquareMetres, StepKind, make};
use proptest::prelude::*;

use crate::plan::{amount, date, farm, stored_for_any_time};

fn check(day: &str, healthy: u32, thrown_away: u32) -> Check {
    Check { date: date(day), healthy, thrown_away: Some(thrown_away), sprouted: None }
}

/// The store of season.md: 40 roots on 24 May, 30 at the first check, 19 at the second.
fn rotting() -> Case {
    let store_checks = vec![check("2027-06-24", 30, 10), check("2027-07-24", 19, 11)];
    Case { store_checks, ..farm(450.0) }
}

fn planned(plan: &Plan, quantity: Quantity) -> f64 {
    plan.planned().amounts.get(quantity).unwrap()
}

/// By hand, of common practice: 19 of 40 are left after 61 days, and 68 more until the bed of 30 September. At
/// that rate (19/40)^(68/61) = 0.4361 of the 19 are left for the bed: 8. Each gives 30 at the first cut: 240
/// cuttings, which plant 240/1,500 of 450 m² = 72 m². Over the season 8 × 37.5/0.88 = 340.9: 340, 102 m².
/// 4.5 t/ha on 102 m² are 45 kg, 9 t/ha 91 kg. One bundle of 300 holds the first cut, 340 take two.
#[test]
fn everything_is_counted_from_the_roots_that_are_left() {
    let plan = make(&rotting()).unwrap();
    let now = |quantity| amount(&plan, quantity);
    assert_eq!((now(Quantity::RootsToStore), planned(&plan, Quantity::RootsToStore)), (19.0, 40.0));
    assert_eq!(now(Quantity::RootsAtBed), 8.0);
    let first = (now(Quantity::CuttingsAtFirstCut), planned(&plan, Quantity::CuttingsAtFirstCut));
    assert_eq!(first, (240.0, 1056.0));
    let season = (now(Quantity::CuttingsOverSeason), planned(&plan, Quantity::CuttingsOverSeason));
    assert_eq!(season, (340.0, 1500.0));
    assert_eq!((now(Quantity::Bundles), planned(&plan, Quantity::Bundles)), (2.0, 5.0));
    assert_eq!(now(Quantity::CuttingsShort), 1260.0, "1,500 − 240");
    let cuts: Vec<u32> = plan.now.cuts.iter().map(|cut| cut.cuttings.middle).collect();
    assert_eq!(cuts, [240, 50, 50], "what is left of 340, in two cuts");
    // The bed, its water and the drawings are for 8 roots, the containers for 19.
    assert_eq!((plan.now.bed.roots, now(Quantity::BedArea)), (8, 3.0));
    assert!(now(Quantity::WaterPerDay) < planned(&plan, Quantity::WaterPerDay) / 4.0);
    let stored: u32 = plan.now.containers.iter().map(|filled| filled.roots).sum();
    assert_eq!(stored, 19);
    assert!(now(Quantity::SandLitres) < planned(&plan, Quantity::SandLitres));
    let harvest = &plan.now.harvest;
    assert_eq!(harvest.yield_low.map(|mass| mass.0), Some(45.0));
    assert_eq!(harvest.yield_high.map(|mass| mass.0), Some(91.0));
    let area = SquareMetres(102.0);
    assert_eq!(harvest.yield_why, Some(HarvestReason::Yield { area_m2: area, low: 4.5, high: 9.0 }));
    // What was marked and planned stays as it was.
    assert_eq!(now(Quantity::PlantsToMark), planned(&plan, Quantity::PlantsToMark));
    assert!(plan.planned.is_some() && make(&farm(450.0)).unwrap().planned.is_none());
}

/// 24 July is the second check: the next one two weeks on, on 7 August, as the store rots faster than any on
/// record. The monthly one of 24 August comes more than 14 days after that and stays.
#[test]
fn a_store_that_rots_is_checked_again_in_two_weeks() {
    let plan = make(&rotting()).unwrap();
    let checks: Vec<_> =
        plan.now.steps_of(StepKind::MonthlyCheck).map(|step| (step.when, step.done)).collect();
    let days: Vec<_> = checks.iter().map(|(when, done)| (when.from.to_string(), *done)).collect();
    let expected = [("2027-06-24", true), ("2027-07-24", true), ("2027-08-07", false), ("2027-08-24", false)];
    assert_eq!(days, expected.map(|(day, done)| (day.to_owned(), done)));
    let why: Vec<_> = plan.now.steps_of(StepKind::MonthlyCheck).map(|step| step.why.clone()).collect();
    assert_eq!(why[0], DateReason::Checked { healthy: 30 });
    assert_eq!(why[2], DateReason::CheckSoon { days: 14.0, checked: date("2027-07-24") });
    // A store that keeps is checked month by month, as planned.
    let sound = Case { store_checks: vec![check("2027-06-24", 38, 2)], ..farm(450.0) };
    let plan = make(&sound).unwrap();
    let days: Vec<_> =
        plan.now.steps_of(StepKind::MonthlyCheck).map(|step| step.when.from.to_string()).collect();
    assert_eq!(days, ["2027-06-24", "2027-07-24", "2027-08-24"]);
}

/// A check on 2 June stands for the early one of 3 to 7 June; what the store was filled for is done.
#[test]
fn a_check_that_was_made_is_not_asked_for_again() {
    let plan = make(&Case { store_checks: vec![check("2027-06-02", 39, 1)], ..farm(450.0) }).unwrap();
    let days: Vec<_> =
        plan.now.steps_of(StepKind::MonthlyCheck).map(|step| step.when.from.to_string()).collect();
    assert_eq!(days, ["2027-06-02", "2027-06-24", "2027-07-24", "2027-08-24"]);
    let open: Vec<_> = plan.now.steps.iter().filter(|step| !step.done).map(|step| step.kind).collect();
    assert!(!open.contains(&StepKind::FillContainer) && !open.contains(&StepKind::Harvest), "{open:?}");
    assert!(open.contains(&StepKind::PlantBed));
}

/// The last check counts the roots with sprouts: 25 of them give 25 × 30, and the survival is no longer open.
#[test]
fn roots_with_sprouts_are_counted_as_they_are() {
    let mut case = rotting();
    case.store_checks.push(Check { sprouted: Some(15), ..check("2027-09-30", 17, 2) });
    let plan = make(&case).unwrap();
    assert_eq!(amount(&plan, Quantity::CuttingsAtFirstCut), 450.0);
    let first = plan.now.amounts.amount(Quantity::CuttingsAtFirstCut).unwrap();
    assert_eq!(first.range, Some((450.0, 450.0)), "the figure of practice has no range of its own here");
    assert_eq!(first.why, AmountReason::CuttingsExpected { sprouting: 15, per_root: 30.0, days: 56.0 });
    let last = plan.now.steps_of(StepKind::LastCheck).next().unwrap();
    assert!(last.done);
}

/// The bed stands since 30 September, today is 25 October: water is counted from today on, by leaves that are 25
/// days old. What is left is less than what was planned, and each of its dekads is one of the plan.
#[test]
fn water_is_counted_from_today_once_the_bed_is_planted() {
    let today = Some(date("2027-10-25"));
    let plan = make(&Case { today, done: Some(StepKind::PlantBed), ..farm(450.0) }).unwrap();
    let (now, before) = (&plan.now.water, &plan.planned().water);
    assert_eq!(now.first().unwrap().when.from, date("2027-10-25"));
    let total = |periods: &[kabla::plan::seedbed::Period]| -> f64 {
        periods.iter().map(|period| period.total().0).sum()
    };
    assert!(total(now) < total(before));
    let same = before.iter().find(|period| period.when == now[1].when).unwrap();
    assert_eq!(&now[1], same);
}

/// By print, 95 roots on 24 May, of which 40 are sound on 24 July: far fewer than the field wants. The rains are
/// expected on 25 November, so a bed of 25 July grows 123 days, longer than the curve goes on: 18 cuttings a
/// sprouted root. 90 of 100 sprout: 36 roots, 648 cuttings. With a plot for the last 49 days the bed is cut after
/// 74: 14 + (74 − 70)/14 × 4 = 15.14 cuttings, of which 90 of 100 establish and give 5: 68.1; the bed's second cut
/// gives 6 more: 74.1 × 36 = 2,669. The field takes 1,650, so the plot is made for no more.
#[test]
fn ways_that_are_left_stand_beside_each_other() {
    let mut case = Case { plan_by: PlanBy::Print, ..farm(450.0) };
    case.assumptions = kabla::plan::Assumptions::default();
    case.store_checks = vec![check("2027-07-24", 40, 55)];
    let plan = make(&case).unwrap();
    let way = |source| plan.ways.iter().find(|way| way.kind == source).unwrap();
    let sources: Vec<_> = plan.ways.iter().map(|way| way.kind).collect();
    assert_eq!(sources, [WayKind::AsPlanned, WayKind::BedNow, WayKind::BedNowSecondBed, WayKind::Buy]);
    assert_eq!(
        f64::from(way(WayKind::AsPlanned).cuttings.middle),
        amount(&plan, Quantity::CuttingsAtFirstCut)
    );
    assert_eq!(
        (way(WayKind::BedNow).from, way(WayKind::BedNow).cuttings.middle),
        (Some(date("2027-07-25")), 648)
    );
    let second = way(WayKind::BedNowSecondBed);
    assert_eq!((second.second, second.cuttings.middle), (Some(date("2027-10-07")), 1650));
    // 40 × 0.375 = 15 m² of bed, and a plot of 1,650 / 100 = 16.5 m².
    assert_eq!(second.area, SquareMetres(31.5));
    assert!(second.water.0 > way(WayKind::BedNow).water.0 && second.cuttings.low < second.cuttings.middle);
    let short = 1650 - way(WayKind::AsPlanned).cuttings.middle;
    assert_eq!(way(WayKind::Buy).cuttings.middle, short);
    // A store that keeps needs no rescue.
    let sound = Case { store_checks: vec![check("2027-07-24", 94, 1)], ..case };
    assert!(make(&sound).unwrap().ways.is_empty());
}

/// By hand, by print, for 3,000 m² (11,000 cuttings): in one bed a root stored gives 0.792 × 10 = 7.92 at the first
/// cut: 1,389 roots, 520.9 m² of bed. In two beds, the first 105 days before the rains, 10 cuttings, of which 90 of
/// 100 establish and give 5, and 6 of the bed's second cut: 51 × 0.792 = 40.39: 273 roots, 102.4 m² of bed and
/// 110.3 m² of plot for the 11,027 cuttings of whole roots.
#[test]
fn a_large_field_is_planted_from_a_small_early_bed() {
    let mut case = Case { plan_by: PlanBy::Print, ..farm(3000.0) };
    case.assumptions = kabla::plan::Assumptions::default();
    let plan = make(&case).unwrap();
    let found: Vec<_> = plan.ways.iter().map(|way| (way.kind, way.roots, way.area.0)).collect();
    assert_eq!(found, [(WayKind::OneBed, 1389, 520.9), (WayKind::SecondBed, 273, 212.7)]);
    let [one, two] = &plan.ways[..] else { panic!("two ways") };
    assert_eq!((one.from, one.days), (Some(date("2027-09-30")), 56));
    assert_eq!((two.from, two.second, two.days), (Some(date("2027-08-12")), Some(date("2027-10-07")), 105));
    assert!(two.water.0 < one.water.0, "{} and {}", two.water, one.water);
    // A small field has no need of it, and a gap of 185 days is too long to keep vines on water.
    assert!(make(&farm(450.0)).unwrap().ways.is_empty());
    let short = Case { harvest: date("2027-09-10"), ..case };
    let ways: Vec<_> = make(&short).unwrap().ways.iter().map(|way| way.kind).collect();
    assert_eq!(
        ways,
        [WayKind::OneBed, WayKind::VinePlot],
        "76 days: no time for two beds, but for kept vines"
    );
}

fn any_checks() -> impl Strategy<Value = Vec<(u64, f64)>> {
    prop::collection::vec((1u64..60, 0.0..1.0f64), 0..4)
}

proptest! {
    /// Whatever is told of the season, in whatever order: nothing that is still to be done lies before the day it
    /// is told on, what is left is never more than what was planned, and the cuts add up to the season.
    #[test]
    fn nothing_to_be_done_lies_in_the_past(
        checks in any_checks(),
        today in prop::option::of(0u64..400),
        done in prop::option::of(prop::sample::select(StepKind::ALL.to_vec())),
        rains in 100u64..230,
        began in prop::option::of(60u64..260),
        print in any::<bool>(),
    ) {
        let harvest = date("2027-05-24");
        let on = |days: u64| harvest + chrono::Days::new(days);
        let (mut day, mut healthy) = (0, 40.0);
        let store_checks: Vec<Check> = checks.into_iter().map(|(days, kept)| {
            day += days;
            healthy = (healthy * kept).floor();
            Check { date: on(day), healthy: healthy as u32, thrown_away: None, sprouted: None }
        }).collect();
        let today = today.map(on);
        let case = Case {
            rains: kabla::plan::season::Rains::On(on(rains)),
            rains_began: began.map(on),
            plan_by: if print { PlanBy::Print } else { PlanBy::Practice },
            done: done.filter(|_| today.is_some()),
            today,
            store_checks: store_checks.clone(),
            ..stored_for_any_time(farm(450.0))
        };
        let plan = make(&case).unwrap();
        let told_on = match (case.today, case.done, store_checks.last()) {
            (Some(today), Some(_), _) => Some(today),
            (_, _, Some(check)) => Some(check.date),
            _ => None,
        };
        if let Some(told_on) = told_on {
            for step in plan.now.steps.iter().filter(|step| !step.done) {
                prop_assert!(step.when.to >= told_on, "{step:?} on {told_on}");
            }
        }
        let value = |quantity| plan.now.amounts.get(quantity).unwrap_or_default();
        let before = |quantity| plan.planned().amounts.get(quantity).unwrap_or_default();
        prop_assert!(value(Quantity::RootsToStore) <= before(Quantity::RootsToStore));
        prop_assert_eq!(value(Quantity::PlantsToMark), before(Quantity::PlantsToMark));
        let cuts: u32 = plan.now.cuts.iter().map(|cut| cut.cuttings.middle).sum();
        let season = value(Quantity::CuttingsOverSeason);
        prop_assert!(f64::from(cuts) == season || plan.now.cuts.is_empty(), "{cuts} {season}");
        prop_assert!(plan.now.bed.roots <= plan.planned().bed.roots);
    }
}

/// A check that counts sprouts is the last one: it is no monthly check as well, and none follows.
#[test]
fn the_last_check_is_told_once() {
    let mut case = rotting();
    case.store_checks.push(Check { sprouted: Some(15), ..check("2027-09-30", 17, 2) });
    let plan = make(&case).unwrap();
    let on = |kind| plan.now.steps_of(kind).map(|step| step.when.from.to_string()).collect::<Vec<_>>();
    assert_eq!(on(StepKind::MonthlyCheck), ["2027-06-24", "2027-07-24"]);
    assert_eq!(on(StepKind::LastCheck), ["2027-09-30"]);
    // Nor do days that a late bed adds bring one that nobody planned: the bed was due on 30 September.
    let late = Case { today: Some(date("2027-10-20")), done: Some(StepKind::LastCheck), ..farm(450.0) };
    let plan = make(&late).unwrap();
    let last = plan.now.steps_of(StepKind::MonthlyCheck).last().unwrap().when.to;
    assert!(last < date("2027-09-17"), "{last}");
}

/// No sheet tells of a bed of 0 m.
#[test]
fn no_sheet_is_made_of_nothing() {
    let project = crate::project::Project::new();
    let farm = std::fs::read_to_string(crate::project::example("farm.toml")).unwrap();
    project.write("farm.toml", farm + "\n[[kept]]\ndate = 2027-06-24\nhealthy = 0\n");
    let run = project.kabla(&["sheet", "farm.toml", "--language", "en"]).ended(2);
    assert!(run.err.contains("no root is left for the bed"), "{}", run.err);
    assert_eq!(project.files(), ["farm.toml"]);
    project.kabla(&["plan", "farm.toml"]).done();
}
