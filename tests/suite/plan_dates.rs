//! Windows of dates: what comes first ends first, an early look into the store, and roots that would lie too long.

use chrono::{Days, NaiveDate};
use kabla::plan::progress::Check;
use kabla::plan::season::{ExpectedRains, MonthDay, Rains};
use kabla::plan::{
    AmountReason, Assumptions, AtHand, Case, DateReason, DateSpan, Kind, Metres, Plan, Quantity, Refusal,
    Remark, SeasonInputs, StepKind, Timeline, WorkDone, lay_out, make,
};
use proptest::prelude::*;

use crate::plan::{amount, date, farm};

/// The steps on the plants of the old field: nobody can inspect cut leaves, and nobody cuts vines of plants in a basket.
const ON_THE_PLANTS: [StepKind; 3] = [StepKind::MarkPlants, StepKind::CheckPlants, StepKind::CutVines];

/// Work that ends before other work begins.
const ONE_AFTER_THE_OTHER: [(StepKind, StepKind); 4] = [
    (StepKind::GatherSand, StepKind::Harvest),
    (StepKind::PrepareBed, StepKind::PlantBed),
    (StepKind::MonthlyCheck, StepKind::LastCheck),
    (StepKind::PlantBed, StepKind::CutForPlanting),
];

/// Work on the same days, which nobody can do the wrong way round: there is no root to lay in sand before it is dug,
/// none goes to the bed before it was taken out and looked at, and no vine is planted before it is cut.
///
/// The other steps go on beside these. The bed is watered while vines are cut. In a zone some farms check their
/// stores, or dig their first ripe roots, while others still fill or plant: there is nothing yet that they could check
/// or dig.
const HAND_IN_HAND: [(StepKind, StepKind); 3] = [
    (StepKind::Harvest, StepKind::FillContainer),
    (StepKind::LastCheck, StepKind::PlantBed),
    (StepKind::CutForPlanting, StepKind::PlantField),
];

fn window(timeline: &Timeline, kind: StepKind) -> DateSpan {
    timeline.steps.iter().find(|step| step.kind == kind).unwrap().when
}

fn checks(plan: &Plan) -> Vec<DateSpan> {
    plan.now.steps_of(StepKind::MonthlyCheck).map(|step| step.when).collect()
}

fn span(from: &str, to: &str) -> DateSpan {
    DateSpan::new(date(from), date(to))
}

fn spans(days: &[(&str, &str)]) -> Vec<DateSpan> {
    days.iter().map(|(from, to)| span(from, to)).collect()
}

fn day(day: &str) -> DateSpan {
    span(day, day)
}

/// A farm that digs on 24 May 2027, on a day of its work.
fn at_work(today: &str, done: Option<StepKind>) -> Timeline {
    let inputs = SeasonInputs {
        harvest: DateSpan::day(date("2027-05-24")),
        work_done: Some(WorkDone { today: date(today), done }),
        ..season(date("2027-05-24"), 185)
    };
    lay_out(&inputs, &Assumptions::default())
}

fn season(harvest: NaiveDate, dry: u64) -> SeasonInputs<'static> {
    let rains = harvest + Days::new(dry);
    SeasonInputs {
        harvest: DateSpan::day(harvest),
        rains: ExpectedRains::on(rains),
        began: None,
        maturity: (90.0, 120.0),
        spread: false,
        work_done: None,
        checks: &[],
    }
}

/// Counted by hand. On 20 May four days are left: one to look, two that are usual for cutting. On 22 May one
/// for each; on 23 May both share the day before the harvest, and on its day all three share that.
#[test]
fn who_is_late_looks_first_and_cuts_then() {
    for (today, check, cut) in [
        ("2027-05-12", ("2027-05-17", "2027-05-19"), ("2027-05-20", "2027-05-21")),
        ("2027-05-18", ("2027-05-18", "2027-05-19"), ("2027-05-20", "2027-05-21")),
        ("2027-05-20", ("2027-05-20", "2027-05-20"), ("2027-05-21", "2027-05-21")),
        ("2027-05-21", ("2027-05-21", "2027-05-21"), ("2027-05-22", "2027-05-22")),
        ("2027-05-22", ("2027-05-22", "2027-05-22"), ("2027-05-23", "2027-05-23")),
        ("2027-05-23", ("2027-05-23", "2027-05-23"), ("2027-05-23", "2027-05-23")),
        ("2027-05-24", ("2027-05-24", "2027-05-24"), ("2027-05-24", "2027-05-24")),
        ("2027-05-30", ("2027-05-30", "2027-05-30"), ("2027-05-30", "2027-05-30")),
    ] {
        let timeline = at_work(today, Some(StepKind::GatherSand));
        assert_eq!(window(&timeline, StepKind::CheckPlants), span(check.0, check.1), "{today}");
        assert_eq!(window(&timeline, StepKind::CutVines), span(cut.0, cut.1), "{today}");
        assert!(window(&timeline, StepKind::CutVines).to <= window(&timeline, StepKind::Harvest).from);
    }
    // Two days are left for three steps: who chooses so late looks at once, and cuts on the day after.
    let timeline = at_work("2027-05-22", None);
    let days = ON_THE_PLANTS.map(|kind| window(&timeline, kind));
    assert_eq!(days, ["2027-05-22", "2027-05-22", "2027-05-23"].map(day));
    let late = timeline.steps.iter().filter(|step| matches!(step.why, DateReason::BeforeHarvestLate { .. }));
    let why: Vec<_> = late.map(|step| (step.kind, step.why.clone())).collect();
    let days = |days| DateReason::BeforeHarvestLate { days };
    assert_eq!(
        why,
        [
            (StepKind::MarkPlants, days(2.0)),
            (StepKind::CheckPlants, days(2.0)),
            (StepKind::CutVines, days(1.0))
        ]
    );
}

/// The days of a case that would cross are moved: the vines are cut as the case says, and looked at before.
#[test]
fn the_days_of_a_case_cannot_cross() {
    let mut case = farm(450.0);
    case.assumptions.check_days_before_harvest_first = 5.0;
    case.assumptions.check_days_before_harvest_last = 3.0;
    case.assumptions.cut_vines_days_before_harvest_last = 0.0;
    let plan = make(&case).unwrap();
    let when = |kind| plan.now.steps_of(kind).next().unwrap().when;
    assert_eq!(when(StepKind::CheckPlants), day("2027-05-19"));
    assert_eq!(when(StepKind::CutVines), span("2027-05-20", "2027-05-23"));
    let why = plan.now.steps_of(StepKind::CheckPlants).next().unwrap().why.clone();
    assert_eq!(why, DateReason::CheckPlants { least_days: 5.0, most_days: 5.0 });
}

fn any_assumptions() -> impl Strategy<Value = Assumptions> {
    // Each within its limits.
    let whole = |from: u32, to: u32| (from..=to).prop_map(f64::from);
    let mark = (whole(7, 120), whole(1, 30));
    (mark, whole(1, 30), whole(0, 30), whole(1, 30), whole(0, 30), whole(1, 90)).prop_map(
        |(mark, check_first, check_last, cut_first, cut_last, sand)| Assumptions {
            mark_days_before_harvest: mark.0,
            mark_within_days: mark.1,
            check_days_before_harvest_first: check_first.max(check_last),
            check_days_before_harvest_last: check_last,
            cut_vines_days_before_harvest_first: cut_first.max(cut_last),
            cut_vines_days_before_harvest_last: cut_last,
            gather_sand_days_before_harvest: sand,
            ..Assumptions::default()
        },
    )
}

/// How the work of a season may stand: the day, and the last step that is done.
fn any_work() -> impl Strategy<Value = Option<(i64, Option<StepKind>)>> {
    let done = prop::option::of(prop::sample::select(StepKind::ALL.to_vec()));
    prop::option::of((-60i64..300, done))
}

fn days(from: NaiveDate, to: NaiveDate) -> i64 {
    (to - from).num_days()
}

proptest! {
    /// On a farm and in a zone, with any days that a case may ask for, any day and any work done: a step on the plants
    /// begins after the one before has ended. Only where fewer days than steps are left do two share a day, the
    /// earlier one first. The harvest comes after all of them, where it does not come at once.
    #[test]
    fn no_window_crosses_the_one_it_depends_on(
        a in any_assumptions(),
        dry in 1u64..366,
        late_years in 0u64..90,
        zone in prop::option::of(0u64..60),
        work in any_work(),
    ) {
        let harvest = date("2027-05-24");
        let work_done =
            work.map(|(after, done)| WorkDone { today: harvest + chrono::Duration::days(after), done });
        let usual = season(harvest, dry);
        let inputs = SeasonInputs {
            harvest: DateSpan::new(harvest, harvest + Days::new(zone.unwrap_or(0))),
            rains: ExpectedRains { late: usual.rains.onset + Days::new(late_years), ..usual.rains },
            spread: zone.is_some(),
            work_done,
            ..usual
        };
        let timeline = lay_out(&inputs, &a);
        let is_open = |kind: StepKind| {
            work_done.filter(|work| work.done.is_none_or(|done| kind > done)).map(|work| work.today)
        };
        let dug = window(&timeline, StepKind::Harvest).from;
        let open = ON_THE_PLANTS.into_iter().filter(|kind| is_open(*kind).is_some()).count() as i64;
        let chain = ON_THE_PLANTS.into_iter().chain([StepKind::Harvest]);
        for (before, after) in ON_THE_PLANTS.into_iter().zip(chain.skip(1)) {
            let (first, then) = (window(&timeline, before), window(&timeline, after));
            if first.to < then.from {
                continue;
            }
            let Some(today) = is_open(after) else {
                return Err(TestCaseError::fail(format!("{before:?} {first:?}, {after:?} {then:?}")));
            };
            prop_assert!(days(today, dug) < open, "{before:?} {first:?}, {after:?} {then:?}: {today} leaves room");
            prop_assert!(first.is_day() && first.from == then.from, "{before:?} {first:?}, {after:?} {then:?}");
        }
        for kind in StepKind::ALL.into_iter().filter(|kind| *kind <= StepKind::FillContainer) {
            if let Some(today) = is_open(kind) {
                prop_assert!(window(&timeline, kind).from >= today, "{kind:?} lies in the past");
            }
        }
        // The sand is there the day before, the bed is made the day before; where no day is left, on the same.
        let all = |kind| timeline.steps.iter().filter(move |of| of.kind == kind).map(|of| of.when);
        for (before, after) in ONE_AFTER_THE_OTHER {
            for (first, then) in all(before).zip(std::iter::repeat(window(&timeline, after))) {
                let at_once = is_open(before).is_some_and(|today| today >= then.from) && first.to == then.from;
                prop_assert!(first.to < then.from || at_once, "{before:?} {first:?}, {after:?} {then:?}");
            }
        }
        for (before, after) in HAND_IN_HAND {
            let (first, then) = (window(&timeline, before), window(&timeline, after));
            let in_order = first.from <= then.from && first.to <= then.to;
            prop_assert!(in_order || is_open(after).is_none(), "{before:?} {first:?}, {after:?} {then:?}");
        }
        let (bed, filled) = (window(&timeline, StepKind::PlantBed), window(&timeline, StepKind::FillContainer));
        // Where rains come so soon that nothing need be stored, roots go to the bed on the day of the sand.
        prop_assert!(filled.to <= bed.from, "{filled:?} and the bed {bed:?}");
        prop_assert!(days(bed.from, window(&timeline, StepKind::CutForPlanting).from) >= 30);
        prop_assert!(window(&timeline, StepKind::WaterBed).from == bed.from);
        // Every check ends 14 days before the roots go to the bed, and none comes sooner than that after another; in a
        // zone after another has begun.
        let found: Vec<DateSpan> =
            timeline.steps.iter().filter(|of| of.kind == StepKind::MonthlyCheck).map(|of| of.when).collect();
        for check in &found {
            prop_assert!(days(check.to, bed.from) >= 14 && days(filled.from, check.from) >= 10 || is_open(StepKind::MonthlyCheck).is_some_and(|today| check.from == today), "{check:?} and the bed {bed:?}");
        }
        for pair in found.windows(2) {
            let (ended, begun) = (days(pair[0].to, pair[1].from), days(pair[0].from, pair[1].from));
            prop_assert!(if zone.is_some() { ended >= 1 && begun >= 14 } else { ended >= 14 }, "{pair:?}");
        }
    }

    /// Before the harvest a zone has the windows of the farm that digs first. Windows for all farms would cross, and
    /// a listener cannot know which part of them is meant.
    #[test]
    fn a_zone_has_the_windows_of_the_farm_that_digs_first(a in any_assumptions(), dry in 80u64..296, late in 0u64..60, work in any_work()) {
        let first = date("2027-05-24");
        let last = first + Days::new(late);
        let work_done =
            work.map(|(after, done)| WorkDone { today: first + chrono::Duration::days(after), done });
        let of = |harvest: DateSpan, spread| {
            lay_out(&SeasonInputs { harvest, spread, work_done, ..season(first, dry) }, &a)
        };
        let (farm, zone) = (of(DateSpan::day(first), false), of(DateSpan::new(first, last), true));
        for kind in ON_THE_PLANTS.into_iter().chain([StepKind::GatherSand]) {
            prop_assert_eq!(window(&zone, kind), window(&farm, kind), "{:?}", kind);
        }
        prop_assert_eq!(window(&zone, StepKind::Harvest).from, window(&farm, StepKind::Harvest).from);
    }
}

/// Counted by hand from 24 May, the day the first farms dig: 30 to 23 days before are 24 April to 1 May, 14 days before
/// 10 May, 7 to 5 days 17 to 19 May, 4 to 3 days 20 and 21 May. Those who dig last, on 30 May, fill until 31 May.
#[test]
fn a_zone_reads_in_order() {
    let zone = Case { kind: Kind::Zone, field: None, ..farm(1.0) };
    let plan = make(&zone).unwrap();
    let when = |kind| plan.now.steps_of(kind).next().unwrap().when;
    for (kind, from, to) in [
        (StepKind::MarkPlants, "2027-04-24", "2027-05-01"),
        (StepKind::GatherSand, "2027-05-10", "2027-05-23"),
        (StepKind::CheckPlants, "2027-05-17", "2027-05-19"),
        (StepKind::CutVines, "2027-05-20", "2027-05-21"),
        (StepKind::Harvest, "2027-05-24", "2027-05-30"),
        (StepKind::FillContainer, "2027-05-24", "2027-05-31"),
    ] {
        assert_eq!(when(kind), span(from, to), "{kind:?}");
    }
    let why = |plan: &Plan| plan.now.steps_of(StepKind::Harvest).next().unwrap().why.clone();
    let (first, last) = (date("2027-05-24"), date("2027-05-30"));
    assert_eq!(why(&plan), DateReason::HarvestOfMany { first, last });
    let one_day = Case { harvest_until: Some(first), ..zone.clone() };
    assert_eq!(why(&make(&one_day).unwrap()), DateReason::Harvest);

    // Where the last farms dig on 10 July, 47 days after the first, each check ends on the day before the next one:
    // 24 June, 24 July and 24 August; the last of them 14 days before the bed of 30 September.
    let wide = make(&Case { harvest_until: Some(date("2027-07-10")), ..zone }).unwrap();
    let expected = [
        ("2027-06-03", "2027-06-23"),
        ("2027-06-24", "2027-07-23"),
        ("2027-07-24", "2027-08-23"),
        ("2027-08-24", "2027-09-16"),
    ];
    assert_eq!(checks(&wide), spans(&expected));
}

/// Counted by hand from the filling on 24 May: days 10 to 14 are 3 to 7 June, a month is 24 June.
#[test]
fn the_store_is_looked_at_early() {
    let plan = make(&farm(450.0)).unwrap();
    let monthly = [("2027-06-24", "2027-06-24"), ("2027-07-24", "2027-07-24"), ("2027-08-24", "2027-08-24")];
    assert_eq!(checks(&plan), [spans(&[("2027-06-03", "2027-06-07")]), spans(&monthly)].concat());
    let why = plan.now.steps_of(StepKind::MonthlyCheck).next().unwrap().why.clone();
    let filled = date("2027-05-24");
    assert_eq!(why, DateReason::EarlyCheck { least_days: 10.0, most_days: 14.0, filled });

    // Rains on 20, 14 and 10 August put the bed on 25, 19 and 15 June; 14 days before are 11, 5 and 1 June.
    for (rains, expected) in [
        ("2027-08-20", vec![("2027-06-03", "2027-06-07")]),
        ("2027-08-14", vec![("2027-06-03", "2027-06-05")]),
        ("2027-08-10", vec![]),
    ] {
        let plan = make(&Case { rains: Rains::On(date(rains)), ..farm(450.0) }).unwrap();
        assert_eq!(checks(&plan), spans(&expected), "{rains}");
    }

    // 14 days before the check of 24 June are 10 June: days 14 to 17 after the filling, of 14 to 20.
    let mut case = farm(450.0);
    case.assumptions.early_check_days_first = 14.0;
    case.assumptions.early_check_days_last = 20.0;
    assert_eq!(checks(&make(&case).unwrap())[0], spans(&[("2027-06-07", "2027-06-10")])[0]);

    // In a zone that digs for a week the last farms look a week later: until 13 June.
    let zone = make(&Case { kind: Kind::Zone, field: None, ..farm(1.0) }).unwrap();
    assert_eq!(checks(&zone)[..2], spans(&[("2027-06-03", "2027-06-13"), ("2027-06-24", "2027-06-30")]));
}

/// A check that was missed is made today; the next one leaves the roots alone for 14 days, and no longer than
/// the month goes on.
#[test]
fn a_missed_early_check_is_made_up_for() {
    let on = |today: &str| {
        let case = Case { today: Some(date(today)), done: Some(StepKind::FillContainer), ..farm(450.0) };
        checks(&make(&case).unwrap())
    };
    let after_june = ["2027-07-24", "2027-08-24"].map(day);
    let planned = |first: &[DateSpan]| [first, after_june.as_slice()].concat();
    assert_eq!(on("2027-06-05"), planned(&[span("2027-06-05", "2027-06-07"), day("2027-06-24")]));
    assert_eq!(on("2027-06-08"), planned(&[day("2027-06-08"), day("2027-06-24")]));
    assert_eq!(on("2027-06-15"), planned(&[day("2027-06-15"), day("2027-06-29")]));
    assert_eq!(on("2027-06-30"), planned(&[day("2027-06-30")]));
    assert_eq!(on("2027-07-20"), ["2027-07-20", "2027-08-03", "2027-08-24"].map(day));
    // 14 days before the bed of 30 September are 16 September.
    assert_eq!(on("2027-09-10"), [day("2027-09-10")]);
    assert_eq!(on("2027-09-16"), [day("2027-09-16")]);
    assert_eq!(on("2027-09-17"), []);
    let case = Case { today: Some(date("2027-06-15")), done: Some(StepKind::FillContainer), ..farm(450.0) };
    let why: Vec<_> =
        make(&case).unwrap().now.steps_of(StepKind::MonthlyCheck).map(|step| step.why.clone()).collect();
    assert_eq!(why[..2], [DateReason::OverdueCheck, DateReason::CheckAgain { days: 14.0 }]);
}

/// By hand: 5 June is day 12, and counts as a month: 40 × 0.88^(1/4) = 38.7 and, at the worst on record,
/// 40 × 0.81^(1/4) = 37.9. The 37 of 40 that are left lost 0.925 in that month; 117 days to the bed are 3.844 more:
/// 37 × 0.925^3.844 = 27.4.
#[test]
fn what_an_early_check_finds_counts_as_a_month() {
    let found = |healthy| {
        let check =
            Check { date: date("2027-06-05"), healthy, thrown_away: Some(40 - healthy), sprouted: None };
        make(&Case { store_checks: vec![check], ..farm(450.0) }).unwrap()
    };
    let some = found(37);
    assert_eq!((some.store_checks[0].expected, some.store_checks[0].fast_loss), (38, false));
    assert_eq!(amount(&some, Quantity::RootsAtBed), 27.0);
    assert!(found(36).store_checks[0].fast_loss);
    // 38 are as usual: 38 × 0.88^(117/121.75) = 33.6.
    assert_eq!(amount(&found(38), Quantity::RootsAtBed), 33.0);
}

/// 20 December 2027 to 30 September 2028: 11 + 31 + 29 + 31 + 30 + 31 + 30 + 31 + 31 + 30 = 285 days.
#[test]
fn roots_are_not_stored_for_most_of_a_year() {
    let typo = Case {
        harvest: date("2027-12-20"),
        rains: Rains::Usual(MonthDay::new(11, 25).unwrap()),
        ..farm(450.0)
    };
    let refusal = make(&typo).unwrap_err();
    let expected = Refusal::StoredTooLong {
        days: 285,
        most_days: 240.0,
        harvest: date("2027-12-20"),
        bed: date("2028-09-30"),
        rains: date("2028-11-25"),
    };
    assert_eq!((refusal.field(), &refusal), ("harvest", &expected));
    // 240 days before 30 September 2027 are 2 February 2027: that is warned of, one day more is refused.
    let on = |harvest| make(&Case { harvest: date(harvest), ..farm(450.0) });
    let long = Remark::LongInSand { days: 240, evidence_days: 150.0 };
    assert!(on("2027-02-02").unwrap().remarks.contains(&long));
    assert!(matches!(on("2027-02-01"), Err(Refusal::StoredTooLong { days: 241, .. })));
    // Who knows better says so.
    let mut known = typo;
    known.assumptions.storage_most_days = 300.0;
    assert!(make(&known).is_ok());
    // Late work does not make a slip of the harvest.
    let late = Case {
        harvest: date("2027-02-02"),
        today: Some(date("2027-11-01")),
        done: Some(StepKind::LastCheck),
        ..farm(450.0)
    };
    assert!(make(&late).is_ok());
}

/// By hand: 40 / 1.6 = 25 plants; where 1 in 10 is given up, 40 / (1.6 × 0.9) = 27.8, so 28: 3 to spare.
#[test]
fn plants_are_marked_to_spare_and_the_usual_number_is_told() {
    let plan = make(&farm(450.0)).unwrap();
    assert_eq!(amount(&plan, Quantity::PlantsToMark), 28.0);
    let why = plan.now.amounts.0.iter().find(|of| of.quantity == Quantity::PlantsToMark).unwrap().why.clone();
    let expected =
        AmountReason::PlantsToMark { per_plant: 1.6, roots: 40, without_spare: 25, spare: 3, sick: 10.0 };
    assert_eq!(why, expected);
    let mut none_sick = farm(450.0);
    none_sick.assumptions.sick_share = 0.0;
    assert_eq!(amount(&make(&none_sick).unwrap(), Quantity::PlantsToMark), 25.0);
    // Forward: of 28 plants 25.2 are left, with 40.3 roots; of 25 only 22.5, with 36.
    for (plants, roots) in [(28, 40.0), (25, 36.0)] {
        let at_hand = AtHand {
            roots: None,
            plants: Some(plants),
            bed: None,
            sand: None,
            spacing: kabla::plan::field::Spacing::Ridges { between: Metres(1.0), along: Metres(0.3) },
        };
        let plan = make(&Case { field: None, at_hand: Some(at_hand), ..farm(1.0) }).unwrap();
        assert_eq!(amount(&plan, Quantity::RootsToStore), roots);
        assert_eq!(amount(&plan, Quantity::PlantsToMark), f64::from(plants));
    }
}
