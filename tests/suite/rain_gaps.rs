//! What a record tells although days are missing in it.

use std::cell::RefCell;
use std::collections::{BTreeMap, BTreeSet};

use chrono::{Days, NaiveDate};
use kabla::plan::season::{
    Between, EndRule, MonthDay, Onset, OnsetRule, RainRecord, Season, SeasonRule, Window,
};
use proptest::prelude::*;
use proptest::test_runner::{Config, TestRunner};

fn day(text: &str) -> MonthDay {
    text.parse().unwrap()
}

fn date(text: &str) -> NaiveDate {
    format!("2021-{text}").parse().unwrap()
}

fn between(from: &str, to: Option<&str>) -> Between<NaiveDate> {
    Between { from: date(from), to: to.map(date) }
}

/// The record from 30 September 2021 to 20 January: these days of rain, the others dry but for the missing ones.
fn record(rain: &[(&str, f64)], missing: &[&str]) -> RainRecord {
    let rain: BTreeMap<NaiveDate, f64> = rain.iter().map(|(day, mm)| (date(day), *mm)).collect();
    let missing: BTreeSet<NaiveDate> = missing.iter().map(|day| date(day)).collect();
    let days = date("09-30").iter_days().take(113).filter(|day| !missing.contains(day));
    RainRecord::from_days(days.map(|day| (day, rain.get(&day).copied().unwrap_or(0.0))))
}

/// 22 mm on 20 and 21 October, then 2 mm every fifth day until 4 December: four dry days each time.
const RAINS: [(&str, f64); 11] = [
    ("10-20", 12.0),
    ("10-21", 10.0),
    ("10-25", 2.0),
    ("10-30", 2.0),
    ("11-04", 2.0),
    ("11-09", 2.0),
    ("11-14", 2.0),
    ("11-19", 2.0),
    ("11-24", 2.0),
    ("11-29", 2.0),
    ("12-04", 2.0),
];

fn with<'a>(more: &[(&'a str, f64)]) -> Vec<(&'a str, f64)> {
    RAINS.into_iter().chain(more.iter().copied()).collect()
}

fn rule(end: EndRule) -> SeasonRule {
    let window = Window { from: day("10-01"), until: day("11-30") };
    SeasonRule { onset: OnsetRule::THREE_DAY, window, end, end_from: day("11-15") }
}

fn season(rain: &[(&str, f64)], missing: &[&str]) -> Season {
    let seasons = rule(EndRule::RAINLESS).seasons(&record(rain, missing));
    assert_eq!(seasons.len(), 1);
    seasons[0].clone()
}

/// 20 mm in 3 days, then no dry spell over 7 days in 30, looked for from 1 October to 30 November.
#[test]
fn an_onset_is_told_where_missing_days_cannot_change_it() {
    let onset = |missing: &[&str]| season(&RAINS, missing).onset.map(|day| day.to_string());
    let certain = Some("2021-10-20".to_owned());
    assert_eq!(onset(&[]), certain);
    // Rain on the 5th would be followed by 14 dry days, from the 6th to the 19th.
    assert_eq!(onset(&["10-05"]), certain);
    // After the onset, on a day of a spell of four: it is too short by itself.
    assert_eq!(onset(&["11-02"]), certain);
    // The sum of the 20th and the 21st is 22 mm with whatever falls on the 22nd.
    assert_eq!(onset(&["10-22"]), certain);
    // A week before the onset: eight dry days would follow, from the 12th to the 19th.
    assert_eq!(onset(&["10-11"]), certain);
    // After the 30 days of the look-ahead, which end on 19 November.
    assert_eq!(onset(&["11-20", "11-21", "11-22", "11-23", "11-24", "11-25", "11-26"]), certain);
    let told = season(&RAINS, &["10-05", "10-11", "11-02"]);
    assert_eq!((told.onset_unknown, told.onset_between), (false, None));
}

#[test]
fn an_onset_that_missing_days_can_change_has_bounds() {
    let open = |rain: &[(&str, f64)], missing: &[&str]| {
        let season = season(rain, missing);
        assert_eq!((season.onset, season.onset_unknown), (None, true), "{missing:?}");
        season.onset_between.unwrap()
    };
    // Rain on the 12th is followed by seven dry days, which are allowed.
    assert_eq!(open(&RAINS, &["10-12"]), between("10-12", Some("10-20")));
    assert_eq!(open(&RAINS, &["10-12", "10-15"]), between("10-12", Some("10-20")));
    // Without the 21st the 20th has 12 mm, and no later three days have 20.
    assert_eq!(open(&RAINS, &["10-21"]), between("10-20", None));
    // Nor has the 21st with the two days after it, if it is the 20th that is missing.
    assert_eq!(open(&RAINS, &["10-20"]), between("10-20", None));
    // 25 mm on the 5th are an onset if rain on the 12th parts 14 dry days into six and seven.
    let early = with(&[("10-05", 25.0)]);
    assert_eq!(open(&early, &["10-12"]), between("10-05", Some("10-20")));
    // The look-ahead of the 20th has 14 dry days without the 4th and the 9th of November, unless it rained on both, or
    // on one of the days between; then no later three days have 20 mm.
    let less: Vec<_> = RAINS.into_iter().filter(|(day, _)| !["11-04", "11-09"].contains(day)).collect();
    assert_eq!(
        season(&less, &["11-04"]).onset_between,
        None,
        "nine dry days are left, from the 5th to the 13th"
    );
    assert_eq!(season(&less, &["11-04"]).onset, None);
    assert!(!season(&less, &["11-04"]).onset_unknown, "certainly none");
    assert_eq!(open(&less, &["11-04", "11-09"]), between("10-20", None));
    assert_eq!(open(&less, &["11-06"]), between("10-20", None), "six and seven dry days");
    // No day known: everything is possible from the first.
    let all: Vec<String> = (1..=31).map(|day| format!("10-{day:02}")).collect();
    let all: Vec<&str> = all.iter().map(String::as_str).collect();
    assert_eq!(open(&RAINS, &all), between("10-01", None));
}

#[test]
fn a_false_start_is_told_where_it_is_certain() {
    let starts = |rain: &[(&str, f64)], missing: &[&str]| season(rain, missing).false_starts;
    let early = with(&[("10-05", 25.0)]);
    assert_eq!(starts(&early, &[]), [date("10-05")]);
    // Ten dry days are left, from the 10th to the 19th.
    assert_eq!(starts(&early, &["10-09"]), [date("10-05")]);
    assert_eq!(season(&early, &["10-09"]).onset, Some(date("10-20")));
    // It may be the onset itself.
    assert_eq!(starts(&early, &["10-12"]), []);
    // With 12 mm it needs the missing day.
    let weak = with(&[("10-05", 12.0)]);
    assert_eq!((starts(&weak, &["10-06"]), season(&weak, &["10-06"]).onset), (vec![], Some(date("10-20"))));
    // Whatever fell on the 5th, the 6th begins three days of 21 mm; that it is the second in a row does not make two.
    let two = with(&[("10-06", 15.0), ("10-07", 6.0)]);
    assert_eq!(starts(&two, &["10-05"]), [date("10-06")]);
    // The 4th and the 6th are starts; so is the 5th if it rained then. Two are not certain.
    let apart = with(&[("10-04", 25.0), ("10-06", 25.0)]);
    assert_eq!(starts(&apart, &[]), [date("10-04"), date("10-06")]);
    assert_eq!(starts(&apart, &["10-05"]), [date("10-04")]);
}

/// The first of 20 rainless days, looked for from 15 November: 5 December, the day after the last rain.
#[test]
fn ends_and_dry_spells_have_bounds() {
    let whole = season(&RAINS, &[]);
    assert_eq!((whole.end, whole.length_days), (Some(date("12-05")), Some(46)));
    assert_eq!((whole.end_between, whole.length_days_between), (None, None));
    // 5 to 24 December decide; the 25th does not.
    assert_eq!(season(&RAINS, &["12-25"]).end, Some(date("12-05")));
    let open = season(&RAINS, &["12-10"]);
    assert_eq!((open.end, open.end_between), (None, Some(between("12-05", Some("12-11")))));
    assert_eq!(
        (open.length_days, open.length_days_between),
        (None, Some(Between { from: 46, to: Some(52) }))
    );
    assert_eq!((open.longest_dry_spell_days, open.longest_dry_spell_days_between), (None, None));
    // The onset is open, but the end does not hang on it: 46 days from the 20th, 54 from the 12th.
    let open = season(&RAINS, &["10-12"]);
    assert_eq!((open.onset, open.end), (None, Some(date("12-05"))));
    assert_eq!(
        (open.length_days, open.length_days_between),
        (None, Some(Between { from: 46, to: Some(54) }))
    );
    // Where the rains may never have begun there may be no end either.
    let never = season(&RAINS, &["10-21"]);
    assert_eq!((never.end, never.end_between, never.length_days_between), (None, None, None));

    // Spells of four, and of nine from 25 November to 3 December: parted by rain on the 28th, three and five.
    let longer: Vec<_> = RAINS.into_iter().filter(|(day, _)| *day != "11-29").collect();
    assert_eq!(season(&longer, &[]).longest_dry_spell_days, Some(9));
    let open = season(&longer, &["11-28"]);
    assert_eq!(open.longest_dry_spell_days, None);
    assert_eq!(open.longest_dry_spell_days_between, Some(Between { from: 5, to: Some(9) }));
    assert_eq!(season(&longer, &["11-20"]).longest_dry_spell_days, Some(9), "another spell");

    // 40 mm on 14 November fill the empty store to 35: it is empty seven days later. On the 17th it may have been
    // filled to 100, which lasts 20 days.
    let wet: Vec<_> = with(&[("11-14", 40.0)])
        .into_iter()
        .filter(|(day, mm)| *day <= "11-14" && (*day, *mm) != ("11-14", 2.0))
        .collect();
    let store = |missing: &[&str]| rule(EndRule::SOIL_STORE).seasons(&record(&wet, missing))[0].clone();
    assert_eq!(store(&[]).end, Some(date("11-21")));
    assert_eq!(store(&["11-17"]).end_between, Some(between("11-21", Some("12-07"))));
    // 100 mm on 28 October leave 61 on 14 November: 17 losses of 5, and 46 mm of rain. They last 13 days.
    assert_eq!(store(&["10-28"]).end_between, Some(between("11-21", Some("11-27"))));
    // 100 mm on the 22nd leave nothing by 13 November: 22 losses of 5, and 8 mm of rain.
    assert_eq!(store(&["10-22"]).end, Some(date("11-21")));
}

fn judged(year: i32, offset: u64) -> Season {
    let onset = NaiveDate::from_ymd_opt(year, 10, 1).unwrap() + Days::new(offset);
    Season {
        year,
        onset_unknown: false,
        onset: Some(onset),
        onset_between: None,
        end: None,
        end_between: None,
        length_days: None,
        length_days_between: None,
        longest_dry_spell_days: None,
        longest_dry_spell_days_between: None,
        false_starts: Vec::new(),
    }
}

fn open(year: i32, from: u64, to: Option<u64>) -> Season {
    let on = |offset| NaiveDate::from_ymd_opt(year, 10, 1).unwrap() + Days::new(offset);
    let onset_between = Some(Between { from: on(from), to: to.map(on) });
    Season { onset: None, onset_unknown: true, onset_between, ..judged(year, from) }
}

/// The middle of 10, 20 and 30 days after 1 October, beside a year that is open; the window closes after 60 days.
#[test]
fn open_years_bound_the_percentiles() {
    let middle = |year: Season| {
        let seasons = [judged(2001, 10), judged(2002, 20), judged(2003, 30), year];
        let outlook = rule(EndRule::RAINLESS).outlook(&seasons, None);
        assert_eq!((outlook.judged_years, outlook.open_years, outlook.p50), (3, 1, Some(day("10-21"))));
        outlook.between.unwrap().p50
    };
    let between = |from: &str, to: &str| Between { from: day(from), to: Some(day(to)) };
    // 10, 15, 20, 30: 17.5; 10, 20, 25, 30: 22.5; halves are rounded up.
    assert_eq!(middle(open(2004, 15, Some(25))), between("10-19", "10-24"));
    // Left out, as rains that never began, 20; at the end of the window 25.
    assert_eq!(middle(open(2004, 25, None)), between("10-21", "10-26"));
    // 10, 12, 20, 30: 16.
    assert_eq!(middle(open(2004, 12, None)), between("10-17", "10-26"));
    let whole = rule(EndRule::RAINLESS).outlook(&[judged(2001, 10)], None);
    assert_eq!((whole.open_years, whole.between), (0, None));
}

/// What a filling gives: onset, end, dry spell, and the days that are false starts.
struct Outcome {
    season: Season,
    false_start_days: BTreeSet<NaiveDate>,
}

fn outcome(rule: &SeasonRule, days: &[Option<f64>], filling: &[f64]) -> Outcome {
    let mut filling = filling.iter();
    let whole = days.iter().map(|mm| mm.unwrap_or_else(|| *filling.next().unwrap()));
    let record = RainRecord::from_days(date("10-01").iter_days().zip(whole));
    let season = rule.seasons(&record).remove(0);
    let (from, until) = rule.window.in_year(2021).unwrap();
    let before = season.onset.unwrap_or(until + Days::new(1));
    let unchecked = rule.onset.without_look_ahead();
    let starts = |day: &NaiveDate| unchecked.onset(&record, *day, *day) == Onset::On(*day);
    let false_start_days = from.iter_days().take_while(|day| *day < before).filter(starts).collect();
    Outcome { season, false_start_days }
}

/// The least and the greatest of some values, of which an absent one is greater than all others.
fn bounds<T: Ord + Copy>(values: impl Iterator<Item = Option<T>>) -> (Option<T>, Option<Between<T>>) {
    let values: BTreeSet<(bool, Option<T>)> = values.map(|value| (value.is_none(), value)).collect();
    let (least, greatest) = (values.first().unwrap().1, values.last().unwrap().1);
    match least {
        Some(from) if least != greatest => (None, Some(Between { from, to: greatest })),
        _ => (least, None),
    }
}

/// Against every filling of the missing days with no rain or much, and some with amounts between.
#[test]
fn bounds_are_those_of_all_fillings() {
    let mm = prop_oneof![6 => Just(0.0), 1 => Just(0.6), 3 => Just(4.0), 2 => Just(9.0), 1 => Just(24.0)];
    let cases = (
        prop::collection::vec(mm, 95),
        prop::collection::btree_set(0usize..75, 0..6),
        0..=OnsetRule::ALL.len(),
        any::<bool>(),
        prop::sample::select(vec!["10-08", "10-25", "11-10"]),
        prop::collection::vec(0.0..30.0f64, 40),
    );
    let seen = RefCell::new(BTreeMap::<&str, u32>::new());
    let saw = |what: &'static str, it: bool| *seen.borrow_mut().entry(what).or_default() += u32::from(it);
    let run =
        TestRunner::new(Config::with_cases(1500)).run(&cases, |(mm, missing, which, soil, from, amounts)| {
            let small = OnsetRule::Total {
                name: "small",
                total_mm: 20.0,
                days: 3,
                rain_days: 2,
                look_ahead: 10,
                dry_spell: 3,
                rain_day_mm: 1.0,
            };
            let rule = SeasonRule {
                onset: OnsetRule::ALL.get(which).copied().unwrap_or(small),
                window: Window { from: day("10-01"), until: day("10-18") },
                end: if soil { EndRule::SOIL_STORE } else { EndRule::RAINLESS },
                end_from: day(from),
            };
            // Dry and whole at its end, so that every season ends within the record.
            let days: Vec<Option<f64>> = mm
                .iter()
                .enumerate()
                .map(|(at, mm)| (!missing.contains(&at)).then_some(*mm))
                .chain(std::iter::repeat_n(Some(0.0), 60))
                .collect();
            let known = date("10-01").iter_days().zip(&days).filter_map(|(day, mm)| Some((day, (*mm)?)));
            let record = RainRecord::from_days(known.chain([(date("10-01") - Days::new(1), 0.0)]));
            let told = rule.seasons(&record).remove(0);

            let fillings = (0..1u32 << missing.len()).map(|bits| -> Vec<f64> {
                (0..missing.len()).map(|at| if bits >> at & 1 == 1 { 5000.0 } else { 0.0 }).collect()
            });
            let all: Vec<Outcome> = fillings.map(|filling| outcome(&rule, &days, &filling)).collect();

            let onset = bounds(all.iter().map(|of| of.season.onset));
            prop_assert_eq!((told.onset, told.onset_between), onset);
            prop_assert_eq!(told.onset_unknown, onset.1.is_some());
            saw("gaps that change nothing", !missing.is_empty() && onset.0.is_some());
            saw("certainly none", !missing.is_empty() && onset == (None, None));
            saw("open", onset.1.is_some_and(|open| open.to.is_some()));
            saw("perhaps none", onset.1.is_some_and(|open| open.to.is_none()));

            let latest = onset.0.or(onset.1.and_then(|open| open.to));
            let search = rule.end_from.in_year(2021).unwrap();
            if onset.0.is_some() || latest.is_some_and(|latest| latest < search) {
                prop_assert_eq!((told.end, told.end_between), bounds(all.iter().map(|of| of.season.end)));
                let lengths = bounds(all.iter().map(|of| of.season.length_days));
                prop_assert_eq!((told.length_days, told.length_days_between), lengths);
                saw("end told", !missing.is_empty() && told.end.is_some());
                saw("end open", told.end_between.is_some());
                saw("end told of an open onset", told.onset.is_none());
            } else {
                prop_assert_eq!((told.end, told.end_between, told.length_days), (None, None, None));
            }
            let spells = (told.longest_dry_spell_days, told.longest_dry_spell_days_between);
            if told.onset.is_some() && told.end.is_some() {
                prop_assert_eq!(spells, bounds(all.iter().map(|of| of.season.longest_dry_spell_days)));
                saw("dry spell open", spells.1.is_some());
            } else {
                prop_assert_eq!(spells, (None, None));
            }

            let mut certain = all[0].false_start_days.clone();
            certain.retain(|day| all.iter().all(|of| of.false_start_days.contains(day)));
            prop_assert!(
                told.false_starts.iter().all(|day| certain.contains(day)),
                "{:?}",
                told.false_starts
            );
            prop_assert!(all.iter().all(|of| told.false_starts.len() <= of.season.false_starts.len()));
            prop_assert_eq!(told.false_starts.is_empty(), certain.is_empty());
            saw("false start", !missing.is_empty() && !certain.is_empty());

            // No amount between leaves the bounds.
            for amounts in amounts.chunks_exact(missing.len().max(1)).filter(|_| !missing.is_empty()) {
                let of = outcome(&rule, &days, amounts).season;
                let within = match onset {
                    (None, Some(open)) => of.onset.map_or(open.to.is_none(), |day| {
                        day >= open.from && open.to.is_none_or(|to| day <= to)
                    }),
                    (certain, _) => of.onset == certain,
                };
                prop_assert!(within, "{:?} {onset:?}", of.onset);
                if let Some(open) = told.end_between {
                    prop_assert!(
                        of.end.is_none_or(|end| end >= open.from && open.to.is_none_or(|to| end <= to))
                    );
                } else if told.end.is_some() {
                    prop_assert_eq!(of.end, told.end);
                }
            }
            Ok(())
        });
    run.unwrap();
    let seen = seen.into_inner();
    assert!(seen.values().all(|count| *count >= 10), "too few to prove anything: {seen:?}");
}
