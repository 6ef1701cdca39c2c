//! Enough: from the field to roots and plants, from roots and beds to the field, and the harvest to come.

use kabla::plan::after::{HarvestReason, Maturity, Variety};
use kabla::plan::field::{Field, Spacing};
use kabla::plan::multiply::{Rate, Sizing, beta_of, surviving};
use kabla::plan::{
    AmountReason, Assumptions, AtHand, Case, Metres, Plan, PlanBy, Quantity, Remark, SquareMetres, make,
};
use proptest::prelude::*;

use crate::expected::rows;
use crate::plan::{NO_GAPS, amount, date, farm};

const RIDGES: Spacing = Spacing::Ridges { between: Metres(1.0), along: Metres(0.3) };

fn at_hand(roots: Option<u32>, plants: Option<u32>, bed: Option<f64>) -> Option<AtHand> {
    Some(AtHand { roots, plants, bed: bed.map(SquareMetres), sand: None, spacing: RIDGES })
}

fn why(plan: &Plan, quantity: Quantity) -> &AmountReason {
    &plan.now.amounts.0.iter().find(|amount| amount.quantity == quantity).unwrap().why
}

/// By hand: 1,500 cuttings and 10 in 100 once more for gaps are 1,650; 1,650 / 37.5 = 44 roots; a
/// fifth of the plants found sick leaves 1.28 roots a plant marked, 44 / 1.28 = 34.4.
#[test]
fn gaps_sick_plants_and_bundles_are_counted() {
    let mut case = farm(450.0);
    case.assumptions.gap_share = 0.1;
    case.assumptions.sick_share = 0.2;
    let plan = make(&case).unwrap();
    assert_eq!(amount(&plan, Quantity::CuttingsNeeded), 1650.0);
    assert_eq!(amount(&plan, Quantity::RootsToStore), 44.0);
    assert_eq!(amount(&plan, Quantity::PlantsToMark), 35.0);
    assert_eq!(amount(&plan, Quantity::Bundles), 6.0, "1,650 / 300 = 5.5");
}

/// By hand: the round figures count roots of which 90 in 100 sprout. Where half as many do, a stored root
/// gives 18.75 cuttings, and 80 are stored.
#[test]
fn roots_that_do_not_sprout_give_nothing() {
    let mut case = farm(450.0);
    case.assumptions.sprout_share = 0.45;
    let plan = make(&case).unwrap();
    assert_eq!(amount(&plan, Quantity::RootsToStore), 80.0);
    assert_eq!(amount(&plan, Quantity::CuttingsAtFirstCut), 1056.0, "80 × 0.88 × 0.5 × 30");
}

/// Rows by hand: 30 m × 15 m on ridges 1 m and 0.3 m are 15 × 100; mounds 1 m apart with 3 cuttings 15 × 90.
#[test]
fn rows_of_the_field() {
    let sides = Some((Metres(15.0), Metres(30.0)));
    let on = |spacing| Field { area: SquareMetres(450.0), sides, spacing };
    let ridges = on(RIDGES).rows().unwrap();
    assert_eq!((ridges.count, ridges.cuttings, on(RIDGES).cuttings()), (15, 100, 1500));
    let mounds = on(Spacing::Mounds { between: Metres(1.0), cuttings: 3.0 });
    assert_eq!((mounds.rows().unwrap().cuttings, mounds.cuttings()), (90, 1350));
    let edge = Field { sides: Some((Metres(10.1), Metres(2.5))), ..on(RIDGES) }.rows().unwrap();
    assert_eq!((edge.count, edge.cuttings), (3, 34), "what is left at an edge counts as one");
    // 15 m / 0.6 m are 25 ridges of 30 m / 0.2 m = 150; 2 m apart 8 rows (7.5) of 15 mounds with 3 cuttings.
    let close = on(Spacing::Ridges { between: Metres(0.6), along: Metres(0.2) }).rows().unwrap();
    assert_eq!((close.count, close.cuttings), (25, 150));
    let wide = on(Spacing::Mounds { between: Metres(2.0), cuttings: 3.0 }).rows().unwrap();
    assert_eq!((wide.count, wide.cuttings), (8, 45));
}

/// By hand: 60 roots × 37.5 = 2,250 cuttings, 675 m²; 25 plants × 1.6 × 0.9 = 36 roots, 1,350 cuttings,
/// 405 m²; 9 m² of bed / 0.375 = 24 roots, 270 m².
#[test]
fn backwards_from_what_is_at_hand() {
    for (stock, roots, area) in [
        (at_hand(Some(60), None, None), 60.0, 675.0),
        (at_hand(None, Some(25), None), 36.0, 405.0),
        (at_hand(None, None, Some(9.0)), 24.0, 270.0),
        (at_hand(Some(60), Some(25), Some(9.0)), 24.0, 270.0),
        (at_hand(Some(0), None, None), 0.0, 0.0),
    ] {
        let plan = make(&Case { field: None, at_hand: stock, ..farm(1.0) }).unwrap();
        assert_eq!(amount(&plan, Quantity::RootsToStore), roots, "{stock:?}");
        assert_eq!(amount(&plan, Quantity::FieldArea), area, "{stock:?}");
        let nothing = plan.remarks.iter().any(|remark| matches!(remark, Remark::NothingAtHand { .. }));
        assert_eq!(nothing, roots == 0.0, "{stock:?}");
    }
    let first = Case {
        sizing: Sizing::FirstPlanting,
        at_hand: at_hand(Some(60), None, None),
        field: None,
        ..farm(1.0)
    };
    // 60 × 0.88 × 30 = 1,584 cuttings at the first cut, 475 m².
    assert_eq!(amount(&make(&first).unwrap(), Quantity::FieldArea), 475.0);
}

#[test]
fn a_field_larger_than_what_is_at_hand_is_said() {
    let plan = make(&Case { at_hand: at_hand(Some(20), None, None), ..farm(450.0) }).unwrap();
    assert_eq!(amount(&plan, Quantity::RootsToStore), 20.0);
    // The first cut: 20 × 0.88 × 30 = 528 cuttings of 1,500, for 158.4 m² of 450.
    let said = Remark::LimitedAtHand {
        limit: "roots",
        roots: 20,
        wanted: 40,
        lacking: 20.0,
        first_m2: 150.0,
        area_m2: 220.0,
        field_m2: 450.0,
    };
    assert!(plan.remarks.contains(&said), "{:?}", plan.remarks);
    let enough = make(&Case { at_hand: at_hand(Some(500), None, None), ..farm(450.0) }).unwrap();
    assert_eq!(amount(&enough, Quantity::RootsToStore), 40.0, "more than enough changes nothing");
}

proptest! {
    /// Forward and back meet: the field that some roots plant never wants more roots than these.
    #[test]
    fn forward_and_back_meet(roots in 1u32..5000, first in any::<bool>()) {
        let sizing = if first { Sizing::FirstPlanting } else { Sizing::BedSeason };
        let forward = make(&Case { field: None, sizing, at_hand: at_hand(Some(roots), None, None), ..farm(1.0) }).unwrap();
        let area = amount(&forward, Quantity::FieldArea);
        let back = make(&Case { sizing, ..farm(area) }).unwrap();
        let wanted = amount(&back, Quantity::RootsToStore);
        prop_assert!(wanted <= f64::from(roots) && wanted >= f64::from(roots) - 1.0, "{roots} roots, {area} m², {wanted} roots");
    }

    /// The cuts add up to the season, in order, and no more field is planted than cuttings allow.
    #[test]
    fn cuts_add_to_the_season(area in 10.0..5000.0f64, cuts in 1u32..6) {
        let mut case = farm(area);
        case.assumptions.cuts = f64::from(cuts);
        let plan = make(&case).unwrap();
        let sum: u32 = plan.now.cuts.iter().map(|cut| cut.cuttings.middle).sum();
        let season = amount(&plan, Quantity::CuttingsOverSeason);
        let first = amount(&plan, Quantity::CuttingsAtFirstCut);
        prop_assert_eq!(f64::from(sum), if cuts == 1 { first } else { season });
        prop_assert!(plan.now.cuts.windows(2).all(|pair| pair[0].when.from < pair[1].when.from));
        prop_assert!(plan.now.cuts.iter().all(|cut| cut.area.0 <= f64::from(cut.cuttings.middle) * 0.3 + 1e-9));
    }
}

/// Dates on a calendar by hand: 28 to 42 days after the first cut, twice.
#[test]
fn later_cuts_have_their_dates() {
    let plan = make(&farm(450.0)).unwrap();
    let cuts: Vec<_> = plan
        .now
        .cuts
        .iter()
        .map(|cut| (cut.when.from.to_string(), cut.when.to.to_string(), cut.cuttings.middle, cut.area.0))
        .collect();
    let cut = |from: &str, to: &str, cuttings, area| (from.to_owned(), to.to_owned(), cuttings, area);
    assert_eq!(
        cuts,
        [
            cut("2027-11-25", "2027-12-09", 1056, 316.8),
            cut("2027-12-23", "2028-01-20", 222, 66.6),
            cut("2028-01-20", "2028-03-02", 222, 66.6)
        ]
    );
}

/// 0.88 over 4 months is 0.88^(8/4) = 0.7744 over 8: 1,500 / (37.5 × 0.88) = 45.5 roots. Storage
/// shorter than the evidence counts as long as the evidence: most losses come early.
#[test]
fn longer_storage_takes_more_roots() {
    let stored = |harvest: &str| make(&Case { harvest: date(harvest), ..farm(450.0) }).unwrap();
    // Harvest on 2 February, the bed on 30 September: 240 days, 7.9 months, as whole months 8.
    let long = stored("2027-02-02");
    assert_eq!(amount(&long, Quantity::RootsToStore), 46.0);
    let said = Remark::LongInSand { days: 240, evidence_days: 150.0 };
    assert!(long.remarks.contains(&said), "{:?}", long.remarks);
    assert_eq!(amount(&stored("2027-08-24"), Quantity::RootsToStore), 40.0);
}

#[test]
fn survival_over_months_is_a_power() {
    let a = Assumptions::default();
    assert!((surviving(0.88, 4.0, &a) - 0.88).abs() < 1e-12);
    assert!((surviving(0.81, 2.0, &a) - 0.9).abs() < 1e-12, "0.9 × 0.9 = 0.81");
    assert_eq!(surviving(0.88, 0.0, &a), 1.0);
}

/// Ranges by hand: 1,056 at 88 % are 972 at 81 % and 1,140 at 95 %.
#[test]
fn uncertain_amounts_carry_a_range() {
    let plan = make(&farm(450.0)).unwrap();
    let first =
        plan.now.amounts.0.iter().find(|amount| amount.quantity == Quantity::CuttingsAtFirstCut).unwrap();
    assert_eq!((first.value, first.range), (1056.0, Some((972.0, 1140.0))));
}

#[test]
fn beta_distributions_as_scipy_fits_them() {
    for row in rows("beta-moments", "cases.csv") {
        let number = |name: &str| row[name].parse::<f64>().unwrap();
        let (alpha, beta) = beta_of(number("mean"), number("deviation")).unwrap();
        assert!((alpha / number("alpha") - 1.0).abs() < 1e-6, "{row:?}: {alpha}");
        assert!((beta / number("beta") - 1.0).abs() < 1e-6, "{row:?}: {beta}");
    }
}

/// The smallest store by scipy's beta-binomial: one cutting a root, so that cuttings are survivors.
#[test]
fn sure_stores_as_scipy_finds_them() {
    let cases = rows("probability", "sure.csv");
    assert_eq!(cases.len(), 40);
    for row in cases {
        let number = |name: &str| row[name].parse::<f64>().unwrap();
        let a = Assumptions {
            survival_share: number("mean"),
            survival_spread: number("deviation"),
            cuttings_per_root_first_cut: 1.0,
            ..Assumptions::default()
        };
        let survivors = number("survivors_needed") as u32;
        let rate = Rate::of(PlanBy::Practice, 4.0, 56.0, &a);
        let sure = number("sure_percent") / 100.0;
        let roots = rate.roots_for_confidence(f64::from(survivors), NO_GAPS, sure, Sizing::FirstPlanting);
        assert_eq!(roots, Some(number("roots") as u32), "{row:?}");
    }
}

/// The same stores, their share the work of eight months and of sprouts. By hand: a share L after four
/// months is L² after eight, whose slope is 2 L; where 98 in 100 sprout, both times 0.98. So a mean m
/// comes from L = √(m / 0.98), and a deviation d from one of d / (2 L × 0.98) after four months. The figures
/// of practice count roots of which 90 in 100 sprout, so that 88.2 are 98 in 100 of that.
#[test]
fn sure_stores_over_months_and_sprouts() {
    for row in rows("probability", "sure.csv") {
        let number = |name: &str| row[name].parse::<f64>().unwrap();
        let share = (number("mean") / 0.98).sqrt();
        let a = Assumptions {
            survival_share: share,
            survival_spread: number("deviation") / (2.0 * share * 0.98),
            sprout_share: 0.882,
            cuttings_per_root_first_cut: 1.0,
            ..Assumptions::default()
        };
        let rate = Rate::of(PlanBy::Practice, 8.0, 56.0, &a);
        let (survivors, sure) = (number("survivors_needed"), number("sure_percent") / 100.0);
        let roots = rate.roots_for_confidence(survivors, NO_GAPS, sure, Sizing::FirstPlanting);
        assert_eq!(roots, Some(number("roots") as u32), "{row:?}");
    }
}

/// Classes and days of the handbook: planted from 25 November to 9 December; late varieties are ripe after 150 to 180 days, and 30 days later comes the last sensible one.
#[test]
fn harvest_by_maturity_class() {
    let of = |maturity| {
        let variety = Variety { maturity, carotene_ug: None };
        let plan = make(&Case { variety, ..farm(450.0) }).unwrap();
        (plan.now.harvest.first.to_string(), plan.now.harvest.last.to_string(), plan.now.harvest.maturity)
    };
    assert_eq!(of(Some(Maturity::Late)), ("2028-04-23".to_owned(), "2028-07-06".to_owned(), Some("late")));
    assert_eq!(of(Some(Maturity::Early)).0, "2028-02-23");
    assert_eq!(of(Some(Maturity::Medium)).0, "2028-03-24");
    assert_eq!(of(None), ("2028-02-23".to_owned(), "2028-05-07".to_owned(), None));
}

/// 450 m² at 4.5 and 9 t/ha: 202.5 and 405 kg, rounded down.
#[test]
fn yields_are_a_range_and_no_promise() {
    let plan = make(&farm(450.0)).unwrap();
    assert_eq!(plan.now.harvest.yield_low.map(|mass| mass.0), Some(202.0));
    assert_eq!(plan.now.harvest.yield_high.map(|mass| mass.0), Some(405.0));
    let why = HarvestReason::Yield { area_m2: SquareMetres(450.0), low: 4.5, high: 9.0 };
    assert_eq!(plan.now.harvest.yield_why, Some(why));
}

/// Check values of the handbook: 9,180 µg are 765 RAE; 125 g boiled are 877.5 RAE at 10,800 µg, 100.75 at 1,240.
#[test]
fn vitamin_a_only_where_the_carotene_is_known() {
    let of = |carotene_ug| {
        let plan = make(&Case { variety: Variety { maturity: None, carotene_ug }, ..farm(450.0) }).unwrap();
        plan.vitamin_a
    };
    assert_eq!(of(None), None);
    assert!((of(Some(9180.0)).unwrap().rae_ug_per_100g_fresh - 765.0).abs() < 1e-9);
    let (rich, pale) = (of(Some(10_800.0)).unwrap(), of(Some(1240.0)).unwrap());
    assert!((rich.rae_ug_per_serving_boiled - 877.5).abs() < 1e-9);
    assert!((pale.rae_ug_per_serving_boiled - 100.75).abs() < 1e-9);
    assert!(rich.share_of_need_age_1_to_3 > 1.0 && pale.share_of_need_age_1_to_3 < 0.4);
}

/// A source that cannot give the bed's water is a warning with what it could carry.
/// Paper for lining is told in tenths of a square metre, without binary noise behind them.
#[test]
fn tenths_are_told_as_tenths() {
    for area in (1..40).map(|times| f64::from(times) * 100.0) {
        let lining = amount(&make(&farm(area)).unwrap(), Quantity::Lining);
        assert_eq!(format!("{lining:.1}").parse::<f64>().unwrap(), lining, "{area} m²");
    }
}

/// The reason for the most water a day names the period it falls into, as exact as the weather is known.
#[test]
fn the_reason_for_the_water_has_its_period() {
    let plan = make(&farm(450.0)).unwrap();
    let most = amount(&plan, Quantity::WaterPerDay);
    let period = plan.now.water.iter().find(|period| period.daily.0 == most).unwrap();
    let AmountReason::WaterPerDay { from, bed_m2, kc, et0_mm, rain_mm, reaching, .. } =
        why(&plan, Quantity::WaterPerDay)
    else {
        panic!("another reason");
    };
    assert_eq!((*from, bed_m2.0, *reaching), (period.when.from, 15.0, 80.0));
    for (rounded, exact, half) in
        [(*kc, period.kc, 0.005), (*et0_mm, period.et0.0, 0.05), (*rain_mm, period.rain.0, 0.05)]
    {
        assert!((rounded - exact).abs() <= half + 1e-9, "{rounded} for {exact}");
        let places = rounded / (2.0 * half);
        assert!((places - places.round()).abs() < 1e-6, "{rounded} has more places than asked for");
    }
}

#[test]
fn a_poor_source_is_warned_of() {
    use kabla::plan::Litres;
    use kabla::plan::seedbed::Source;
    let with = |daily: f64| {
        let source =
            Source { name: "the dug well".to_owned(), daily: Some([Litres(daily); 12]), stored: None };
        make(&Case { source: Some(source), ..farm(450.0) }).unwrap()
    };
    let most = amount(&with(1e6), Quantity::WaterPerDay);
    let said = |plan: &Plan| {
        plan.remarks.iter().find(|remark| matches!(remark, Remark::WaterLimits { .. })).cloned()
    };
    assert_eq!(said(&with(most)), None);
    let poor = with(most / 2.0);
    let Some(Remark::WaterLimits { source, bed_m2, fit, .. }) = said(&poor) else { panic!("{poor:?}") };
    assert_eq!((source.as_str(), bed_m2, fit), ("the dug well", SquareMetres(7.5), 20));
    assert_eq!(amount(&poor, Quantity::WaterPerDay), most / 2.0);
    let total: f64 = poor.now.water.iter().map(|period| period.total().0).sum();
    assert_eq!(amount(&poor, Quantity::WaterTotal), total);
    assert_eq!(amount(&poor, Quantity::TripsPerDay), (most / 2.0 / 15.0).ceil());
}

/// The layers tell the places of as many roots as are stored.
#[test]
fn amounts_of_the_store_follow_from_its_layers() {
    let plan = make(&farm(450.0)).unwrap();
    let roots: u32 = plan.now.containers.iter().map(|filled| filled.roots).sum();
    assert_eq!(f64::from(roots), amount(&plan, Quantity::RootsToStore));
    assert_eq!(
        f64::from(plan.now.containers[0].layers[0].capacity()),
        amount(&plan, Quantity::RootsPerLayer)
    );
    assert_eq!(why(&plan, Quantity::Containers), &AmountReason::Containers { roots });
    let small = plan.remarks.iter().any(|remark| matches!(remark, Remark::ContainersTooSmall { .. }));
    assert!(!small, "every root has its place: {:?}", plan.remarks);
    // 15 kg a load.
    let mass = amount(&plan, Quantity::SandKilograms);
    assert!(mass > 30.0);
    // A litre of dry, loose sand weighs 1.442 kg; both amounts are told in whole numbers, rounded up.
    let litres = amount(&plan, Quantity::SandLitres);
    assert!(mass > (litres - 1.0) * 1.442 && mass < litres * 1.442 + 1.0, "{litres} L, {mass} kg");
    assert_eq!(amount(&plan, Quantity::SandLoads), (mass / 15.0).ceil());
}
