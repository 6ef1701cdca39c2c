//! What a root gives by its days in the bed, how sure that is, and how it is told.

use std::path::Path;

use kabla::app::{Overrides, plan_json};
use kabla::data::Embedded;
use kabla::guidance::{self, Value};
use kabla::language::Pack;
use kabla::plan::growth::{Growth, Points};
use kabla::plan::multiply::{Cuttings, Part, Rate, Sizing};
use kabla::plan::{
    Assumptions, AtHand, Case, Kind, Metres, Plan, PlanBy, Quantity, Remark, SquareMetres, StepKind, field,
    group, make,
};
use kabla::sheet::{self, SmsOptions};
use proptest::prelude::*;

use crate::expected::rows;
use crate::plan::{amount, date, farm};
use crate::project::example;

const RIDGES: field::Spacing = field::Spacing::Ridges { between: Metres(1.0), along: Metres(0.3) };
/// From the middle to the 10 and 90 % points of a normal distribution, as tables have it.
const TENTH: f64 = 1.281_551_565_544_6;

/// A farm that is planned by print, with every default.
fn printed(area: f64) -> Case {
    Case { plan_by: PlanBy::Print, assumptions: Assumptions::default(), ..farm(area) }
}

/// The same with so many roots, and the field that they plant.
fn with_roots(roots: u32) -> Case {
    let at_hand = Some(AtHand { roots: Some(roots), plants: None, bed: None, sand: None, spacing: RIDGES });
    Case { field: None, at_hand, ..printed(1.0) }
}

fn growth(days: f64) -> Growth {
    Growth::of(PlanBy::Print, days, &Assumptions::default())
}

/// Low, middle and high.
fn first(days: f64) -> [f64; 3] {
    [-TENTH, 0.0, TENTH].map(|deviations| growth(days).first(deviations))
}

fn season(days: f64) -> [f64; 3] {
    [-TENTH, 0.0, TENTH].map(|deviations| growth(days).season(deviations))
}

fn near(found: [f64; 3], expected: [f64; 3]) {
    let close = found.iter().zip(expected).all(|(found, expected)| (found - expected).abs() < 1e-9);
    assert!(close, "{found:?}, not {expected:?}");
}

/// The curve of the table, straight between its points: half way from 42 to 56 days, and 5 of 14 days on.
#[test]
fn the_curve_goes_through_its_points() {
    near(first(29.0), [0.0, 0.0, 0.0]);
    near(first(30.0), [0.0, 1.0, 4.0]);
    near(first(42.0), [2.0, 5.0, 12.0]);
    near(first(49.0), [3.0, 7.5, 18.0]);
    near(first(75.0), [6.0 + 5.0 / 14.0, 14.0 + 20.0 / 14.0, 31.0 + 40.0 / 14.0]);
    near(first(84.0), [7.0, 18.0, 39.0]);
    near(first(300.0), [7.0, 18.0, 39.0]);
    // Two later cuts of 2, 6 and 12.
    near(season(56.0), [8.0, 22.0, 48.0]);
}

/// What is found in print, beside the curve: see docs/methods.md, "What a root gives".
#[test]
fn published_figures_lie_within_the_curve_or_are_told_as_not() {
    // Browning 2020: 4 to 5 slips a root after about six weeks.
    let [low, middle, high] = first(42.0);
    assert!(low <= 4.0 && high >= 5.0 && (4.0..=5.0).contains(&middle));
    // FAO Better Farming 16: the first cutting after 30 to 56 days. Before, there is none.
    assert_eq!(first(29.0)[2], 0.0);
    assert!(first(30.0)[1] > 0.0 && first(56.0)[0] > 0.0);
    // 30 to 40 cuttings a root over three harvests: between the middle and a good season.
    let [low, middle, high] = season(56.0);
    assert!(low < 30.0 && high > 40.0);
    // 40 roots for about 1,500 cuttings, 37.5 from each: more than the middle, within a good season.
    assert!(middle < 1500.0 / 40.0 && high >= 1500.0 / 40.0);
    // CIP vol. 3: about 40 a root, bedded 6 to 8 weeks ahead: more than even a good first cut.
    assert!(first(42.0)[2] < 40.0 && first(56.0)[2] < 40.0);
    // Namanda and others 2013: watering for 10 weeks gives more than for 5.
    assert!(first(70.0).iter().zip(first(35.0)).all(|(ten, five)| *ten > five));
    // USDA Circular 502: all pulls together give up to twice the first. Three cuts give a little more.
    assert!(middle / first(56.0)[1] > 2.0 && middle / first(56.0)[1] < 2.5);
}

/// What a case gives is taken as certain, and a longer time never gives fewer: 13 after 56 days are at
/// least 13 after 70, where the low end alone would have 6.
#[test]
fn a_value_of_the_case_has_no_range() {
    let a = Assumptions { cuttings_per_root_day_56: 13.0, ..Assumptions::default() };
    let at = |days, deviations| Growth::of(PlanBy::Print, days, &a).first(deviations);
    near([-TENTH, 0.0, TENTH].map(|deviations| at(56.0, deviations)), [13.0; 3]);
    near([-TENTH, 0.0, TENTH].map(|deviations| at(70.0, deviations)), [13.0, 14.0, 31.0]);
}

/// Vines that are cut again after 14 days have grown half of what 28 days give.
#[test]
fn later_cuts_give_by_their_regrowth() {
    let with = |days| {
        let a = Assumptions { next_cut_days_first: days, ..Assumptions::default() };
        Growth::of(PlanBy::Print, 56.0, &a).season(0.0)
    };
    assert_eq!((with(14.0), with(28.0), with(42.0)), (16.0, 22.0, 22.0));
}

/// The round figures hold for a bed of six weeks or more; after 30 days the curve has 1 cutting for its 5.
#[test]
fn common_practice_has_its_round_figures() {
    let of = |days| Growth::of(PlanBy::Practice, days, &Assumptions::default());
    assert_eq!([42.0, 56.0, 100.0].map(|days| of(days).first(0.0)), [30.0; 3]);
    assert!((of(30.0).first(0.0) - 6.0).abs() < 1e-9);
    assert!((of(56.0).season(0.0) - 37.5 / 0.88).abs() < 1e-9);
    assert_eq!(of(56.0).first(-TENTH), 30.0, "round figures have no range");
}

#[test]
fn sure_stores_by_print_as_scipy_finds_them() {
    let failing = Points { low: 0.02, middle: 0.1, high: 0.15 };
    let cases = rows("growth", "sure.csv");
    assert_eq!(cases.len(), 24);
    for row in cases {
        let number = |name: &str| row[name].parse::<f64>().unwrap();
        let a = Assumptions { cuts: number("cuts"), ..Assumptions::default() };
        let rate = Rate::of(PlanBy::Print, number("months"), number("days"), &a);
        let sure = number("sure_percent") / 100.0;
        let roots = rate.roots_for_confidence(number("places"), failing, sure, Sizing::BedSeason);
        assert_eq!(roots, Some(number("roots") as u32), "{row:?}");
    }
}

/// A million roots, so that whole cuttings hide nothing.
#[test]
fn ranges_of_cuttings_as_scipy_finds_them() {
    for row in rows("growth", "ranges.csv") {
        let number = |name: &str| row[name].parse::<f64>().unwrap();
        let a = Assumptions { cuts: number("cuts"), ..Assumptions::default() };
        let rate = Rate::of(PlanBy::Print, number("months"), number("days"), &a);
        let Cuttings { low, high, .. } = rate.cuttings_of(1_000_000, Part::Season);
        for (found, expected) in [(low, "low"), (high, "high")] {
            let ratio = f64::from(found) / 1e6 / number(expected);
            assert!((ratio - 1.0).abs() < 0.015, "{row:?}: {expected} is {found}");
        }
    }
}

/// By hand. 450 m² have 1,500 places; 10 in 100 once more are 1,650 cuttings (1,530 to 1,725 at 2 and 15 in
/// 100). After 56 days a sprouted root gives 10 cuttings, and 22 over the season; 0.88 × 0.9 of the roots
/// survive and sprout, so 17.424 a root stored: 1,650 / 17.424 = 94.7. From 95 roots 0.792 × 95 × 10 = 752.4
/// at the first cut, 1,655.3 over the season, and 903 for two later cuts. One plant in ten is given up:
/// 95 / (1.6 × 0.9) = 65.97 plants.
#[test]
fn a_plan_by_print_by_hand() {
    let plan = make(&printed(450.0)).unwrap();
    let of = |quantity| amount(&plan, quantity);
    assert_eq!((of(Quantity::CuttingsNeeded), of(Quantity::RootsToStore)), (1650.0, 95.0));
    assert_eq!((of(Quantity::CuttingsAtFirstCut), of(Quantity::CuttingsOverSeason)), (752.0, 1655.0));
    assert_eq!((of(Quantity::PlantsToMark), of(Quantity::BedArea)), (66.0, 95.0 * 0.375));
    let cuts: Vec<u32> = plan.now.cuts.iter().map(|cut| cut.cuttings.middle).collect();
    assert_eq!(cuts, [752, 452, 451]);
    let range =
        |quantity| plan.now.amounts.0.iter().find(|amount| amount.quantity == quantity).unwrap().range;
    assert_eq!(range(Quantity::CuttingsNeeded), Some((1530.0, 1725.0)));
    // √(ln² 10/4 + ln² 90/70 + ln² 88/81) = 0.9537, and e^−0.9537 = 0.3853: 289 of 752.4.
    // √(ln² 24/10 + ln² 98/90 + ln² 95/88) = 0.8829, and e^0.8829 = 2.418: 1,819.
    assert_eq!(range(Quantity::CuttingsAtFirstCut), Some((289.0, 1819.0)));
    // The same with 22/8 and 48/22: 0.3515 and 2.2001 times 1,655.28.
    assert_eq!(range(Quantity::CuttingsOverSeason), Some((581.0, 3641.0)));
    // 752 of 1,650 cuttings plant 205.09 of 450 m², told as 200; 1,650 / (0.792 × 10) = 208.3 roots plant all.
    let waits = Remark::FieldWaits {
        cuttings: 750,
        low: 280,
        high: 1800,
        area_m2: 200.0,
        field_m2: 450.0,
        least_days: 28.0,
        most_days: 42.0,
        roots: 209,
    };
    assert!(plan.remarks.contains(&waits), "{:?}", plan.remarks);
    // By common practice 95 × 0.88 × 30 = 2,508 and 95 × 37.5 = 3,562.5.
    let by = Remark::ByPrint { roots: 95, first: 750, season: 1600, other_first: 2500, other_season: 3500 };
    assert!(plan.remarks.contains(&by), "{:?}", plan.remarks);
}

/// 40 roots give 1,500 cuttings by common practice; by print 40 × 0.792 × 10 = 316.8 and × 22 = 696.96.
#[test]
fn a_plan_by_practice_says_what_print_counts_on() {
    let plan = make(&farm(450.0)).unwrap();
    assert_eq!(amount(&plan, Quantity::CuttingsOverSeason), 1500.0);
    let by = Remark::ByPractice { roots: 40, first: 1000, season: 1500, other_first: 310, other_season: 690 };
    assert!(plan.remarks.contains(&by), "{:?}", plan.remarks);
}

/// By hand: bedded on 8 November and cut on 8 December, a root gives 1 cutting and not 10; 39 days longer in
/// sand leave 0.9599 of the roots: 752 × 0.09599 = 72.
#[test]
fn a_late_bed_costs_what_has_not_grown() {
    let case = Case { today: Some(date("2027-11-08")), done: Some(StepKind::LastCheck), ..printed(450.0) };
    let plan = make(&case).unwrap();
    let late = plan.overdue.iter().find(|step| step.kind == StepKind::PlantBed).unwrap();
    assert_eq!((late.cuttings_at_first_cut, late.cuttings_fewer), (72, 680));
    assert_eq!(plan.now.cuts[0].cuttings.middle, 72);
    // The later cuts lose only the roots that the sand takes: 903 × 0.9599 = 866.
    assert_eq!((plan.now.cuts[1].cuttings.middle, plan.now.cuts[2].cuttings.middle), (433, 433));
}

/// By hand: bedded ten weeks before the rains, 70 days, a root gives 14: 95 × 0.792 × 14 = 1,053.
#[test]
fn an_early_bed_gains_cuttings_and_costs_water() {
    let usual = make(&with_roots(95)).unwrap();
    let mut case = with_roots(95);
    case.assumptions.bed_weeks_before_rains_first = 10.0;
    let early = make(&case).unwrap();
    assert_eq!(amount(&usual, Quantity::CuttingsAtFirstCut), 752.0);
    assert_eq!(amount(&early, Quantity::CuttingsAtFirstCut), 1053.0);
    assert!(amount(&early, Quantity::WaterTotal) > amount(&usual, Quantity::WaterTotal));
}

/// By hand: 800 m² take 2,667 × 1.1 = 2,934 cuttings and 169 roots, whose first cut gives 1,338.
#[test]
fn a_text_message_tells_what_the_first_cut_allows() {
    let pack = Pack::load(&Embedded, "en").unwrap();
    let told = |case: &Case| {
        let statements = guidance::tell(case, &make(case).unwrap());
        let messages = sheet::sms(&pack, &statements, SmsOptions::default()).unwrap();
        messages.into_iter().map(|message| message.text).find(|text| text.contains("plant about 1")).unwrap()
    };
    assert!(
        told(&printed(800.0)).contains("plant about 1,300 sweet potato cuttings"),
        "{}",
        told(&printed(800.0))
    );
    // Where the first cut gives more than the field takes, the field tells: 330 m² take 1,100 × 1.1 = 1,210.
    let ample = Case { sizing: Sizing::FirstPlanting, ..printed(330.0) };
    assert!(told(&ample).contains("plant about 1,200 sweet potato cuttings"), "{}", told(&ample));
    let mut more = printed(300.0);
    more.assumptions.cuttings_per_root_later_cut = 0.0;
    more.store_checks = vec![kabla::plan::progress::Check {
        date: date("2027-09-30"),
        healthy: 300,
        thrown_away: None,
        sprouted: Some(290),
    }];
    assert!(told(&more).contains("plant about 1,100 sweet potato cuttings"), "{}", told(&more));
}

/// The sheet tells a range, and by whose figures it is counted: with the amounts, and over the table of cuts, which
/// paper has. In every language.
#[test]
fn sheets_tell_the_range_and_the_choice() {
    for (tag, print, practice) in [
        ("en", "by days of growth", "by common practice"),
        ("sw", "kwa siku za ukuaji", "kwa mazoea ya kawaida"),
        ("am", "በእድገት ቀናት ብዛት", "በተለመደው አሠራር"),
        ("fr", "selon les jours de croissance", "selon l’usage courant"),
        ("ha", "bisa ga kwanakin girma", "bisa ga yadda aka saba"),
        ("ny", "malinga ndi masiku okula", "malinga ndi chizolowezi"),
        ("pt-MZ", "por dias de crescimento", "segundo a prática comum"),
    ] {
        let pack = Pack::load(&Embedded, tag).unwrap();
        let told = |case: &Case| {
            let statements = guidance::tell(case, &make(case).unwrap());
            let facts = sheet::Facts::of(&pack, &statements).unwrap();
            let first = facts.amounts.into_iter().find(|row| row.name == "amount-first-cuttings").unwrap();
            let cuts = facts.tables.into_iter().find(|table| table.subject == "table-cuts").unwrap();
            (first.value, cuts.title)
        };
        let (by_print, by_practice) = (told(&printed(450.0)), told(&farm(450.0)));
        let number = |count: f64| pack.write_number(count, 0);
        assert!(by_print.0.contains(&number(280.0)) && by_print.0.contains(&number(1800.0)), "{by_print:?}");
        assert!(
            by_practice.0.contains(&number(970.0)) && by_practice.0.contains(&number(1100.0)),
            "{by_practice:?}"
        );
        for text in [&by_print.0, &by_print.1] {
            assert!(text.contains(print) && !text.contains(practice), "{tag}: {text}");
        }
        for text in [&by_practice.0, &by_practice.1] {
            assert!(text.contains(practice) && !text.contains(print), "{tag}: {text}");
        }
    }
}

#[test]
fn the_choice_stands_in_the_case_and_goes_before_it() {
    let path = example("farm.toml");
    let by = |plan_by| {
        plan_json(Path::new(&path), Overrides { plan_by, ..Overrides::default() }, None).unwrap()["plan_by"]
            .clone()
    };
    assert_eq!((by(None), by(Some(PlanBy::Practice))), ("print".into(), "practice".into()));
    let text = std::fs::read_to_string(&path).unwrap();
    let none = |_: &str| Err(std::io::Error::from(std::io::ErrorKind::NotFound));
    let with = |line: &str| kabla::case::read("farm.toml", &format!("{line}\n{text}"), &none);
    assert_eq!(with("plan_by = \"practice\"").unwrap().0.plan_by, PlanBy::Practice);
    assert_eq!(with("plan_by = \"hope\"").unwrap_err()[0].place.line, Some(1));
    let falling = format!("{text}\n[assumptions]\ncuttings_per_root_day_56 = 20\n");
    let found = kabla::case::read("farm.toml", &falling, &none).unwrap_err();
    assert_eq!(found[0].place.field.as_deref(), Some("assumptions.cuttings_per_root_day_56"));
}

/// The whole number with its first two digits, and zeros for the others.
fn two_figures(count: f64) -> f64 {
    let digits = format!("{}", count.floor());
    let kept: String =
        digits.chars().enumerate().map(|(at, digit)| if at < 2 { digit } else { '0' }).collect();
    kept.parse().unwrap()
}

fn of_plan(plan: &Plan, quantity: Quantity) -> (f64, f64, f64) {
    let amount = plan.now.amounts.0.iter().find(|amount| amount.quantity == quantity).unwrap();
    let (low, high) = amount.range.unwrap();
    (low, amount.value, high)
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    /// Bedded earlier, roots never give fewer cuttings at the rains, neither in poor seasons nor in good ones.
    #[test]
    fn an_earlier_bed_never_gives_fewer(roots in 1u32..3000, weeks in 6.0..14.0f64, earlier in 0.0..8.0f64) {
        let bedded = |weeks: f64| {
            let mut case = with_roots(roots);
            case.assumptions.bed_weeks_before_rains_first = weeks;
            // What more months in sand take is another matter.
            case.assumptions.survival_months = 12.0;
            of_plan(&make(&case).unwrap(), Quantity::CuttingsAtFirstCut)
        };
        let (early, usual) = (bedded(weeks + earlier), bedded(weeks));
        prop_assert!(early.0 >= usual.0 && early.1 >= usual.1 && early.2 >= usual.2, "{early:?}, {usual:?}");
    }

    /// A bed that is later never gives more, by print or by practice.
    #[test]
    fn a_later_bed_never_gives_more(late in 0u64..90, later in 0u64..40, practice in any::<bool>()) {
        let on = |days: u64| {
            let today = Some(date("2027-10-15") + chrono::Days::new(days));
            let plan_by = if practice { PlanBy::Practice } else { PlanBy::Print };
            let case = Case { plan_by, today, done: Some(StepKind::LastCheck), ..printed(450.0) };
            make(&case).unwrap().now.cuts.first().map_or(0, |cut| cut.cuttings.middle)
        };
        prop_assert!(on(late + later) <= on(late));
    }

    /// More roots never give fewer cuttings nor a smaller field.
    #[test]
    fn more_roots_never_give_fewer(roots in 1u32..5000, more in 0u32..500) {
        let (few, many) = (make(&with_roots(roots)).unwrap(), make(&with_roots(roots + more)).unwrap());
        for quantity in [Quantity::CuttingsAtFirstCut, Quantity::CuttingsOverSeason] {
            let (few, many) = (of_plan(&few, quantity), of_plan(&many, quantity));
            prop_assert!(many.0 >= few.0 && many.1 >= few.1 && many.2 >= few.2, "{few:?}, {many:?}");
        }
        prop_assert!(amount(&many, Quantity::FieldArea) >= amount(&few, Quantity::FieldArea));
    }

    /// What is told of cuttings is what was computed, to two figures, and never more.
    #[test]
    fn cuttings_are_told_to_two_figures_down(area in 5.0..20_000.0f64) {
        let case = printed(area);
        let plan = make(&case).unwrap();
        let (low, middle, high) = of_plan(&plan, Quantity::CuttingsAtFirstCut);
        let told = guidance::tell(&case, &plan);
        for (name, computed) in [("first_cuttings_low", low), ("first_cuttings", middle), ("first_cuttings_high", high)] {
            let Some(Value::Number(told, 0)) = told[0].value(name) else { panic!("{name}") };
            prop_assert_eq!(*told, two_figures(computed));
            prop_assert!(*told <= computed);
        }
        prop_assert!(low <= middle && middle <= high);
    }

    /// Surer never takes fewer roots, and from 50 of 100 seasons on never fewer than by the middle.
    #[test]
    fn surer_never_takes_fewer_roots(area in 20.0..3000.0f64, sure in 5u32..93, more in 0u32..5, first in any::<bool>()) {
        let sizing = if first { Sizing::FirstPlanting } else { Sizing::BedSeason };
        let stored = |confidence_percent| {
            amount(&make(&Case { sizing, confidence_percent, ..printed(area) }).unwrap(), Quantity::RootsToStore)
        };
        let roots = stored(Some(f64::from(sure)));
        prop_assert!(stored(Some(f64::from(sure + more))) >= roots);
        prop_assert!(sure < 50 || roots >= stored(None));
    }

    /// The parts of a group add up, with cuttings for gaps in them.
    #[test]
    fn a_groups_parts_add_up_by_print(areas in prop::collection::vec(5.0..2000.0f64, 1..12)) {
        let farms: Vec<group::Member> = areas
            .iter()
            .enumerate()
            .map(|(index, area)| group::Member {
                name: index.to_string(),
                field: field::Field::of(SquareMetres(*area), RIDGES),
            })
            .collect();
        let kind = Kind::Group { members: farms.len() as u32 };
        let plan = make(&Case { kind, field: None, farms, ..printed(1.0) }).unwrap();
        let sum = |of: fn(&group::Share) -> u32| f64::from(plan.now.farms.iter().map(of).sum::<u32>());
        prop_assert_eq!(sum(|farm| farm.cuttings), amount(&plan, Quantity::CuttingsNeeded));
        prop_assert_eq!(sum(|farm| farm.roots), amount(&plan, Quantity::RootsToStore));
        prop_assert_eq!(sum(|farm| farm.plants), amount(&plan, Quantity::PlantsToMark));
    }
}
