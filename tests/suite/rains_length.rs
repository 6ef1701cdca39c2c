//! How long the rains last, and what ripens before they end.

use chrono::{Days, NaiveDate};
use kabla::plan::season::{
    Chances, End, EndRule, ExpectedRains, MonthDay, ObservedRains, OnsetRule, Planting, RainRecord, Rains,
    RainsEnd, Ripening, SeasonRule, Window,
};
use proptest::prelude::*;

use crate::plan::date;

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
}
