//! How long the rains last, and what ripens before they end.

use chrono::{Days, NaiveDate};
use kabla::plan::multiply::Sizing;
use kabla::plan::season::{
    Chances, End, EndRule, ExpectedRains, MonthDay, ObservedRains, OnsetRule, Planting, RainRecord, Rains,
    RainsEnd, Ripening, SeasonRule, Window,
};
use kabla::plan::{Case, DateSpan, Plan, PlanBy, Quantity, Remark, StepKind, Worded, make};
use proptest::prelude::*;

use crate::plan::{amount, date, farm};

fn day(text: &str) -> MonthDay {
    text.parse().unwrap()
}

/// A record from 1 July 2001 on: 10 mm on each day of the rains, all other days dry. A season a year, each
/// by its first day and its length; `None` is a year without rains.
fn record(seasons: &[Option<(&str, u64)>], missing: &[&str]) -> RainRecord {
    let missing: Vec<NaiveDate> = missing.iter().map(|day| date(day)).collect();
    let mut wet = std::collections::BTreeSet::new();
    for (year, season) in (2001..).zip(seasons) {
        let Some((onset, days)) = season else { continue };
        let onset = day(onset).in_year(year).unwrap();
        wet.extend(onset.iter_days().take(*days as usize));
    }
    // It ends before the next window opens.
    let days = date("2001-07-01").iter_days().take(seasons.len() * 365 + 60);
    let days = days.filter(|day| !missing.contains(day));
    RainRecord::from_days(days.map(|day| (day, if wet.contains(&day) { 10.0 } else { 0.0 })))
}

/// The onset is looked for from 20 September to 31 December, the end from 10 December on.
fn rule() -> SeasonRule {
    let window = Window { from: day("09-20"), until: day("12-31") };
    SeasonRule { onset: OnsetRule::THREE_DAY, window, end: EndRule::RAINLESS, end_from: day("12-10") }
}

fn observed(seasons: &[Option<(&str, u64)>], missing: &[&str]) -> ObservedRains {
    let observed = ObservedRains::find(&record(seasons, missing), rule(), None);
    assert_eq!(observed.years.len(), seasons.len());
    observed
}

/// Five seasons: their onsets have 11 October, 31 October and 5 November as 20, 50 and 80 % percentiles, their
/// ends 28 December in the middle, their lengths 60 days.
pub(crate) const SHORT_RAINS: [Option<(&str, u64)>; 5] = [
    Some(("10-11", 70)),
    Some(("10-11", 110)),
    Some(("10-31", 58)),
    Some(("11-05", 45)),
    Some(("11-05", 60)),
];

fn ripening(rains: &ObservedRains, begun: bool, first: &str, later: f64, growing: f64) -> Option<Ripening> {
    let rains = Rains::Observed(rains.clone());
    let end = End::known(&rains, None, ExpectedRains::on(date("2027-10-11")), begun).unwrap();
    end.ripening(Planting { first: date(first), later_days: later, growing_days: growing })
}

/// The days run: 11 Oct + 70 = 20 Dec, + 110 = 29 Jan; 31 Oct + 58 = 28 Dec; 5 Nov + 45 = 20 Dec, + 60 = 4 Jan.
/// Sorted lengths 45, 58, 60, 70, 110: the 20 % point lies 0.8 of the way from the first to the second,
/// 45 + 0.8 × 13 = 55.4; the 80 % point 0.2 of the way from the fourth to the last, 70 + 0.2 × 40 = 78.
/// Ends after 20 September: 91, 91, 99, 106, 131; 20 % is 91 (20 Dec), 80 % 106 + 0.2 × 25 = 111 (9 Jan).
#[test]
fn the_length_in_short_usual_and_long_seasons() {
    let rains = Rains::Observed(observed(&SHORT_RAINS, &[]));
    let end = End::known(&rains, None, ExpectedRains::on(date("2027-10-11")), false).unwrap();
    let length = end.length().unwrap();
    let close = |is: f64, wanted: f64| assert!((is - wanted).abs() < 1e-9, "{is}, not {wanted}");
    close(length.short_days, 55.4);
    close(length.usual_days, 60.0);
    close(length.long_days, 78.0);
    assert_eq!(length.early_end, date("2027-12-20"));
    assert_eq!(length.usual_end, date("2027-12-28"));
    assert_eq!(length.late_end, date("2028-01-09"));
    assert_eq!(length.years, Some(5));
}

/// In each year the crop is planted on that year's onset, though not before 11 October, the plan's first day.
#[test]
fn each_year_is_asked_with_its_own_onset_and_end() {
    let rains = observed(&SHORT_RAINS, &[]);
    let share = |later, growing| ripening(&rains, false, "2027-10-11", later, growing).unwrap().share;
    // Lengths 45, 58, 60, 70, 110: 60 days are reached in three years of five, 61 in two.
    assert_eq!(share(0.0, 60.0), 0.6);
    assert_eq!(share(0.0, 61.0), 0.4);
    assert_eq!(share(0.0, 110.0), 0.2);
    assert_eq!(share(0.0, 111.0), 0.0);
    // The cut 28 days later has 28 days less.
    assert_eq!(share(28.0, 32.0), 0.6);
    assert_eq!(share(28.0, 33.0), 0.4);
    // A bed that gives no cuttings before 25 October leaves the rains of 11 October 14 days less:
    // 56, 96, 58, 45, 60.
    let late = |growing| ripening(&rains, false, "2027-10-25", 0.0, growing).unwrap().share;
    assert_eq!(late(58.0), 0.6);
    assert_eq!(late(59.0), 0.4);
}

/// Once the rains have begun, the day of planting is known: 31 October is 41 days after 20 September, and to
/// the ends, 91, 91, 99, 106 and 131 days after it, there are 50, 50, 58, 65 and 90 days.
#[test]
fn rains_that_have_begun_are_no_year_without_rains() {
    let mut seasons = SHORT_RAINS.to_vec();
    seasons.push(None);
    let rains = observed(&seasons, &[]);
    let share = |begun, growing| ripening(&rains, begun, "2027-10-31", 0.0, growing).unwrap();
    assert_eq!(share(true, 58.0), Ripening { share: 0.6, years: Some(5) });
    assert_eq!(share(true, 59.0), Ripening { share: 0.4, years: Some(5) });
    // Before, the year without rains counts, and ripens nothing: here 11 Oct is 31 Oct, 5 Nov stays.
    // 50, 90, 58, 45, 60 days and none.
    assert_eq!(share(false, 50.0), Ripening { share: 4.0 / 6.0, years: Some(6) });
}

/// 1 November + 100 days is 9 February, the first dry day. Where 9 to 20 February are missing, the rains may
/// have lasted until the 21st: 112 days.
#[test]
fn a_missing_day_is_no_dry_day() {
    let seasons = [Some(("11-01", 100)), Some(("11-01", 120)), Some(("11-01", 90))];
    let missing: Vec<String> = (9..=20).map(|day| format!("2002-02-{day:02}")).collect();
    let missing: Vec<&str> = missing.iter().map(String::as_str).collect();
    let gaps = observed(&seasons, &missing);
    let of = |growing| ripening(&gaps, false, "2027-10-11", 0.0, growing).unwrap();
    // 100 days are there whatever fell, 113 are not; 105 may be, and the year is not judged.
    assert_eq!(of(100.0), Ripening { share: 2.0 / 3.0, years: Some(3) });
    assert_eq!(of(101.0), Ripening { share: 0.5, years: Some(2) });
    assert_eq!(of(112.0), Ripening { share: 0.5, years: Some(2) });
    assert_eq!(of(113.0), Ripening { share: 1.0 / 3.0, years: Some(3) });
    assert_eq!((gaps.lengths.certain, gaps.lengths.open), (2, 1));
    // 90 and 120 days: 96, 105, 114.
    let days = gaps.lengths.days.unwrap();
    assert_eq!((days.p20, days.p50, days.p80), (96.0, 105.0, 114.0));
    // Where no year is left that tells, nothing is told.
    let only = observed(&seasons[..1], &missing);
    assert_eq!(ripening(&only, false, "2027-10-11", 0.0, 105.0), None);
    assert!(only.lengths.days.is_none());
}

/// A record that stops in the middle of the rains does not tell their end: it is open, not dry.
#[test]
fn the_end_of_the_record_is_not_the_end_of_the_rains() {
    let days = date("2001-07-01").iter_days().take_while(|day| *day < date("2001-12-31"));
    let wet = |day: NaiveDate| day >= date("2001-11-01");
    let record = RainRecord::from_days(days.map(|day| (day, if wet(day) { 10.0 } else { 0.0 })));
    let rains = ObservedRains::find(&record, rule(), None);
    assert_eq!((rains.lengths.certain, rains.lengths.open), (0, 1));
    // 60 days of rain are on record, from 1 November to 30 December.
    let of = |growing| ripening(&rains, false, "2027-10-11", 0.0, growing);
    assert_eq!(of(60.0), Some(Ripening { share: 1.0, years: Some(1) }));
    assert_eq!(of(61.0), None);
}

/// An outlook of early rains only: of five years ranked by onset the first two share all weight (thirds of
/// two, one and two years), with 70 and 110 days.
#[test]
fn a_seasonal_outlook_weighs_the_years() {
    let early = Some(Chances::OfOnset([100.0, 0.0, 0.0]));
    let rains = ObservedRains::find(&record(&SHORT_RAINS, &[]), rule(), early);
    let of = |growing| ripening(&rains, false, "2027-10-11", 0.0, growing).unwrap().share;
    assert_eq!((of(70.0), of(71.0), of(110.0), of(111.0)), (1.0, 0.5, 0.5, 0.0));
    assert_eq!(rains.lengths.days.map(|days| (days.p20, days.p80)), Some((70.0, 110.0)));
}

/// From 25 November to 20 April there are 6 + 31 + 31 + 29 + 31 + 19 = 147 days in a leap year.
#[test]
fn a_stated_end_says_yes_or_no() {
    let rains = Rains::Usual(day("11-25"));
    let onset = ExpectedRains::on(date("2027-11-25"));
    let end = End::known(&rains, Some(RainsEnd::Usual(day("04-20"))), onset, false).unwrap();
    let of = |later_days, growing_days| {
        end.ripening(Planting { first: date("2027-11-25"), later_days, growing_days }).unwrap()
    };
    assert_eq!(of(27.0, 120.0), Ripening { share: 1.0, years: None });
    assert_eq!(of(28.0, 120.0), Ripening { share: 0.0, years: None });
    let length = end.length().unwrap();
    assert_eq!((length.usual_days, length.usual_end), (147.0, date("2028-04-20")));
    assert_eq!(End::known(&rains, None, onset, false), None);
}

/// A farm that counts by print: a root that is stored gives 10 × 0.88 × 0.9 = 7.92 cuttings at the first cut, after
/// 56 days in the bed, and 6 × 0.792 = 4.752 at each of two later ones. Its field takes 1,500.
fn printed(rains: Rains, rains_end: Option<&str>) -> Case {
    Case {
        rains,
        rains_end: rains_end.map(|end| RainsEnd::Usual(day(end))),
        sizing: Sizing::InTime,
        plan_by: PlanBy::Print,
        ..farm(450.0)
    }
}

fn from_25_november(rains_end: Option<&str>) -> Case {
    printed(Rains::On(date("2027-11-25")), rains_end)
}

fn days(from: &str, to: &str) -> DateSpan {
    DateSpan::new(date(from), date(to))
}

fn told<'a>(plan: &'a Plan, code: &str) -> Vec<&'a Remark> {
    plan.remarks.iter().filter(|remark| remark.code() == code).collect()
}

/// Rains usually begin on 11 October (early), 31 October and 5 November, end on 28 December in the middle year and
/// last 60 days there; roots are ripe after 90 to 120 days. The cuts are 28 to 42 days apart: 11 October to
/// 19 November (14 days after the late onset), 8 November to 31 December, 6 December to 11 February.
/// The longest rains are 110 days: no planting is ripe in time in any year, and an early variety (105 days) is
/// in one of five. 120 days after 8 November: 22 + 31 + 31 + 29 = 113 to the end of February, so 7 March.
#[test]
fn a_third_cut_in_december_where_the_rains_end_in_december() {
    let plan = make(&printed(Rains::Observed(observed(&SHORT_RAINS, &[])), None)).unwrap();
    let ripe_never = Some(Ripening { share: 0.0, years: Some(5) });
    let cuts: Vec<_> = plan.now.cuts.iter().map(|cut| (cut.when, cut.ripening)).collect();
    assert_eq!(cuts, [(days("2027-10-11", "2027-11-19"), ripe_never)]);
    let late: Vec<_> = plan.now.late_cuts.iter().map(|cut| (cut.when, Some(cut.ripening))).collect();
    let second = (days("2027-11-08", "2027-12-31"), ripe_never);
    let third = (days("2027-12-06", "2028-02-11"), ripe_never);
    assert_eq!(late, [second, third]);
    let too_short = Remark::RainsTooShort {
        planted: date("2027-10-11"),
        most_days: 120.0,
        of_100: 0.0,
        known: "record",
        usual_days: 60.0,
        end: date("2027-12-28"),
        helps: "quicker",
        early_days: 105.0,
        early_of_100: 20.0,
    };
    let too_late = Remark::CutsTooLate {
        cut: 2,
        more: 1,
        from: date("2027-11-08"),
        to: date("2027-12-31"),
        ripe: date("2028-03-07"),
        of_100: 0.0,
        known: "record",
        end: date("2027-12-28"),
        counted: "no",
    };
    assert_eq!(told(&plan, "remark-rains-too-short"), [&too_short]);
    assert_eq!(told(&plan, "remark-cuts-too-late"), [&too_late]);
    // The first cut alone plants the field: 1,500 / 7.92 = 189.4.
    assert_eq!(amount(&plan, Quantity::RootsToStore), 190.0);
    assert_eq!(amount(&plan, Quantity::CuttingsOverSeason), amount(&plan, Quantity::CuttingsAtFirstCut));
    assert_eq!(told(&plan, "remark-field-waits"), [] as [&Remark; 0]);
    assert_eq!(told(&plan, "remark-end-unknown"), [] as [&Remark; 0]);
}

/// 25 November to 22 April are 149 days. The second cut, 28 days later, has 121 days left, the third 93: of 120
/// days to maturity the first two are in time. Two cuts give 7.92 + 4.752 = 12.672 cuttings a root:
/// 1,500 / 12.672 = 118.4, so 119 roots, which give 942 at the first cut and 1,507 in all.
#[test]
fn roots_are_sized_by_the_cuts_that_ripen_in_time() {
    let case = from_25_november(Some("04-22"));
    let plan = make(&case).unwrap();
    assert_eq!(amount(&plan, Quantity::RootsToStore), 119.0);
    assert_eq!(amount(&plan, Quantity::CuttingsAtFirstCut), 942.0);
    assert_eq!(amount(&plan, Quantity::CuttingsOverSeason), 1507.0);
    let cuts: Vec<_> = plan.now.cuts.iter().map(|cut| cut.cuttings.middle).collect();
    assert_eq!(cuts, [942, 565]);
    let in_time = Some(Ripening { share: 1.0, years: None });
    assert!(plan.now.cuts.iter().all(|cut| cut.ripening == in_time));
    // 25 November and 9 December with 56 and 84 days.
    assert_eq!(plan.now.late_cuts.len(), 1);
    assert_eq!(plan.now.late_cuts[0].when, days("2028-01-20", "2028-03-02"));
    let [Remark::CutsTooLate { cut: 3, more: 0, counted: "no", known: "case", .. }] =
        told(&plan, "remark-cuts-too-late")[..]
    else {
        panic!("{:?}", plan.remarks)
    };
    let [Remark::FieldWaits { roots: 190, .. }] = told(&plan, "remark-field-waits")[..] else {
        panic!("{:?}", plan.remarks)
    };
    // A week less, and the first cut plants all: 1,500 / 7.92 = 189.4.
    let shorter = make(&from_25_november(Some("04-15"))).unwrap();
    assert_eq!(amount(&shorter, Quantity::RootsToStore), 190.0);
    // Two months more, and all three do: 1,500 / 17.424 = 86.1.
    let longer = make(&from_25_november(Some("06-20"))).unwrap();
    assert_eq!(amount(&longer, Quantity::RootsToStore), 87.0);
    assert!(longer.now.late_cuts.is_empty() && told(&longer, "remark-cuts-too-late").is_empty());
    // Soil that carries the crop for 27 days more makes 93 days enough.
    let mut moist = from_25_november(Some("04-22"));
    moist.assumptions.dry_ripening_days = 27.0;
    assert_eq!(amount(&make(&moist).unwrap(), Quantity::RootsToStore), 87.0);
}

#[test]
fn the_case_can_have_it_otherwise() {
    let case = from_25_november(Some("04-22"));
    let season = make(&Case { sizing: Sizing::BedSeason, ..case.clone() }).unwrap();
    assert_eq!(amount(&season, Quantity::RootsToStore), 87.0);
    assert_eq!(season.now.cuts.len(), 3);
    let [Remark::CutsTooLate { counted: "yes", .. }] = told(&season, "remark-cuts-too-late")[..] else {
        panic!("{:?}", season.remarks)
    };
    let first = make(&Case { sizing: Sizing::FirstPlanting, ..case }).unwrap();
    assert_eq!(amount(&first, Quantity::RootsToStore), 190.0);
    // 190 × 12.672: the later cut that is in time is there all the same.
    assert_eq!(amount(&first, Quantity::CuttingsOverSeason), 2407.0);
}

/// Nothing is known of the end: all cuts count, as ever, and a note asks for it. The third cut is planted 56 days
/// after 25 November; 120 days after 20 January: 11 + 29 + 31 + 30 = 101 to the end of April, so 19 May.
#[test]
fn an_end_that_is_not_known_is_asked_for() {
    let plan = make(&from_25_november(None)).unwrap();
    assert_eq!(amount(&plan, Quantity::RootsToStore), 87.0);
    let asked =
        Remark::EndUnknown { planted: date("2028-01-20"), ripe: date("2028-05-19"), known: "nothing" };
    assert_eq!(told(&plan, "remark-end-unknown"), [&asked]);
    assert!(plan.now.cuts.iter().all(|cut| cut.ripening.is_none()));
    // Where the first cut plants all, nothing hangs on it.
    let first = make(&Case { sizing: Sizing::FirstPlanting, ..from_25_november(None) }).unwrap();
    assert!(told(&first, "remark-end-unknown").is_empty());
}

/// Dug on 10 November, the roots are bedded a day later and give cuttings after 30 days, on 11 December. From 25
/// November to 29 March there are 125 days, enough for 120; from 11 December 109.
#[test]
fn a_late_bed_makes_the_rains_too_short() {
    let case = Case { harvest: date("2027-11-10"), ..from_25_november(Some("03-29")) };
    let plan = make(&case).unwrap();
    let [Remark::RainsTooShort { planted, helps: "on-time", usual_days, .. }] =
        told(&plan, "remark-rains-too-short")[..]
    else {
        panic!("{:?}", plan.remarks)
    };
    assert_eq!((*planted, *usual_days), (date("2027-12-11"), 125.0));
    // The gap is too short to store anything: 10 to 25 November.
    let [Remark::StoringNotNeeded { days: 15, two_seasons: "no", .. }] =
        told(&plan, "remark-storing-not-needed")[..]
    else {
        panic!("{:?}", plan.remarks)
    };
}

/// Two seasons a year, 15 March to 31 May and 25 August to 30 November, 10 mm a day: 176 wet days, 4.8 mm a day
/// in the mean. Smoothed over 31 days that takes 15 wet days, so the first season ends a day after its last
/// rain, on 1 June.
fn two_seasons() -> ObservedRains {
    let wet = |day: NaiveDate| {
        let day = MonthDay::of(day).to_string();
        ("03-15".to_owned()..="05-31".to_owned()).contains(&day)
            || ("08-25".to_owned()..="11-30".to_owned()).contains(&day)
    };
    let days = date("2001-01-01").iter_days().take(3 * 365);
    let record = RainRecord::from_days(days.map(|day| (day, if wet(day) { 10.0 } else { 0.0 })));
    let window = Window { from: day("08-01"), until: day("10-15") };
    let rule =
        SeasonRule { onset: OnsetRule::THREE_DAY, window, end: EndRule::RAINLESS, end_from: day("10-15") };
    ObservedRains::find(&record, rule, None)
}

#[test]
fn where_the_rains_come_twice_a_year_roots_need_not_be_stored() {
    let rains = Rains::Observed(two_seasons());
    let not_needed = |harvest: &str, kept: f64| {
        let mut case = Case { harvest: date(harvest), ..printed(rains.clone(), None) };
        case.assumptions.vines_kept_days = kept;
        let plan = make(&case).unwrap();
        let remarks = told(&plan, "remark-storing-not-needed");
        remarks.first().map(|remark| {
            let Remark::StoringNotNeeded { days, from, rains, kept_days, two_seasons } = remark else {
                panic!("{remark:?}")
            };
            assert_eq!((*rains, *kept_days, *two_seasons), (date("2027-08-25"), kept, "yes"));
            (*days, *from)
        })
    };
    // Dug on 10 June: 20 days to the end of June, 31 and 25.
    assert_eq!(not_needed("2027-06-10", 90.0), Some((76, date("2027-06-10"))));
    assert_eq!(not_needed("2027-06-10", 75.0), None);
    // Dug before the long rains: vines grow in these until 1 June, then 29 + 31 + 25 days are dry.
    assert_eq!(not_needed("2027-02-20", 90.0), Some((85, date("2027-06-01"))));
    // One season a year, and five dry months.
    let one = make(&printed(Rains::Observed(observed(&SHORT_RAINS, &[])), None)).unwrap();
    assert!(told(&one, "remark-storing-not-needed").is_empty());
}

#[test]
fn nothing_is_said_of_storing_once_it_is_done() {
    let case = Case { harvest: date("2027-09-10"), ..from_25_november(None) };
    assert_eq!(told(&make(&case).unwrap(), "remark-storing-not-needed").len(), 1);
    let stored =
        Case { today: Some(date("2027-09-20")), done: Some(StepKind::FillContainer), ..case.clone() };
    assert!(told(&make(&stored).unwrap(), "remark-storing-not-needed").is_empty());
    let begun = Case { rains_began: Some(date("2027-11-20")), ..case };
    assert!(told(&make(&begun).unwrap(), "remark-storing-not-needed").is_empty());
}

fn seasons() -> impl Strategy<Value = Vec<(u64, u64)>> {
    prop::collection::vec((0_u64..60, 40_u64..200), 1..12)
}

proptest! {
    /// A longer season never ripens in fewer years, a longer maturity or a later cut never in more.
    #[test]
    fn more_rain_never_ripens_less(
        seasons in seasons(),
        longer in 0_u64..50,
        later in 0.0..100.0,
        growing in 30.0..220.0,
        more in 0.0..60.0,
        begun: bool,
    ) {
        let of = |longer: u64| {
            let texts: Vec<(String, u64)> = seasons
                .iter()
                .map(|(after, days)| {
                    let onset = date("2001-10-01") + Days::new(*after);
                    (MonthDay::of(onset).to_string(), days + longer)
                })
                .collect();
            let texts: Vec<_> = texts.iter().map(|(onset, days)| Some((onset.as_str(), *days))).collect();
            observed(&texts, &[])
        };
        let (short, long) = (of(0), of(longer));
        let share = |rains, later, growing| ripening(rains, begun, "2027-10-11", later, growing).unwrap().share;
        let base = share(&short, later, growing);
        prop_assert!(share(&long, later, growing) >= base);
        prop_assert!(share(&short, later, growing + more) <= base);
        prop_assert!(share(&short, later + more, growing) <= base);
    }

    /// A plan never counts on fewer cuts for longer rains, nor on more for a longer maturity; and never takes more
    /// roots for the field where more cuts count.
    #[test]
    fn longer_rains_never_make_fewer_cuts_count(
        length in 60_u64..300,
        longer in 0_u64..60,
        ripe in 60.0..200.0,
        more in 0.0..60.0,
        dry in 0.0..40.0,
    ) {
        let of = |length: u64, ripe: f64| {
            let end = RainsEnd::On(date("2027-11-25") + Days::new(length));
            let mut case = Case { rains_end: Some(end), ..from_25_november(None) };
            case.assumptions.first_harvest_days_last = ripe;
            case.assumptions.dry_ripening_days = dry;
            let plan = make(&case).unwrap();
            (plan.now.cuts.len(), plan.now.cuts.len() + plan.now.late_cuts.len(), amount(&plan, Quantity::RootsToStore))
        };
        let (cuts, all, roots) = of(length, ripe);
        let (longer_cuts, _, longer_roots) = of(length + longer, ripe);
        let (slower_cuts, _, slower_roots) = of(length, ripe + more);
        prop_assert_eq!(all, 3);
        prop_assert!(longer_cuts >= cuts && longer_roots <= roots);
        prop_assert!(slower_cuts <= cuts && slower_roots >= roots);
    }
}
