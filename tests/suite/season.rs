//! Onset of the rains.

use std::cell::Cell;

use chrono::NaiveDate;
use kabla::plan::season::{
    Between, Chances, EndRule, MonthDay, ObservedRains, Onset, OnsetRule, RainRecord, SeasonRule, Slope,
    Window, end_search_from, longest_dry_spell, median_slope, percentile, weighted_percentile,
    weights_of_thirds, wet_seasons,
};

use proptest::prelude::*;
use proptest::test_runner::TestRunner;

use crate::expected::rows;

fn seattle() -> RainRecord {
    let days = rows("seattle-onset", "seattle-weather.csv").into_iter().map(|row| {
        let date = NaiveDate::parse_from_str(&row["date"], "%Y/%m/%d").unwrap();
        (date, row["precipitation"].parse().unwrap())
    });
    RainRecord::from_days(days)
}

fn day(text: &str) -> MonthDay {
    text.parse().unwrap()
}

#[test]
fn onsets_and_totals_of_an_open_record() {
    let record = seattle();
    let window = Window { from: day("08-01"), until: day("12-31") };
    for (column, total_mm) in [("onset_20mm", 20.0), ("onset_25mm", 25.0)] {
        let rule = OnsetRule::Total {
            name: "handbook",
            total_mm,
            days: 3,
            rain_days: 1,
            look_ahead: 30,
            dry_spell: 6,
            rain_day_mm: 1.0,
        };
        let onsets = record.onsets(&rule, &window);
        let expected = rows("seattle-onset", "cases.csv");
        assert_eq!(onsets.len(), expected.len());
        for (onset, row) in onsets.iter().zip(expected) {
            let found = match onset.onset {
                Onset::On(date) => date.to_string(),
                Onset::None => "none".to_owned(),
                Onset::Between(open) => panic!("a whole record leaves nothing open: {open:?}"),
            };
            assert_eq!(
                (onset.year.to_string(), found),
                (row["year"].clone(), row[column].clone()),
                "{column}"
            );
            let total: f64 = row["total_mm"].parse().unwrap();
            assert!((record.total(onset.year) - total).abs() < 0.05);
        }
    }
}

#[test]
fn percentiles_as_numpy_has_them() {
    for row in rows("percentiles", "cases.csv") {
        let values: Vec<f64> = row["values"].split(';').map(|value| value.parse().unwrap()).collect();
        let expected: f64 = row["expected"].parse().unwrap();
        let found = percentile(&values, row["percent"].parse().unwrap()).unwrap();
        assert!((found - expected).abs() < 1e-9, "{row:?}: {found}");
    }
    assert_eq!(percentile(&[], 50.0), None);
    assert_eq!(percentile(&[1.0, f64::NAN], 50.0), None);
}

#[test]
fn missing_days_leave_a_year_open_not_dry() {
    let date = |month, day| NaiveDate::from_ymd_opt(2020, month, day).unwrap();
    let window = Window { from: day("10-01"), until: day("10-31") };
    // Dry but for one wet spell; day 20 is missing, before any onset.
    let days = (1..=31).filter(|d| *d != 20).map(|d| (date(10, d), if d == 25 { 40.0 } else { 0.0 }));
    let record = RainRecord::from_days(days);
    let onsets = record.onsets(&OnsetRule::FIRST_TOTAL, &window);
    assert_eq!(onsets.len(), 1);
    // With rain on the 20th that day is the onset; without, the 25th. The days before the 20th were dry.
    assert_eq!(onsets[0].onset, Onset::Between(Between { from: date(10, 20), to: Some(date(10, 25)) }));
}

#[test]
fn each_rule_sees_what_it_is_for() {
    let date = |month, day| NaiveDate::from_ymd_opt(2021, month, day).unwrap();
    let window = Window { from: day("10-01"), until: day("12-31") };
    // 22 mm on 5 October, then nothing until steady rain from 11 November.
    let start = date(9, 1);
    let record = RainRecord::from_days((0..180).map(|offset| {
        let day = start + chrono::Days::new(offset);
        let rain = if day == date(10, 5) {
            22.0
        } else if day >= date(11, 11) {
            6.0
        } else {
            0.0
        };
        (day, rain)
    }));
    let onset = |rule: OnsetRule| record.onsets(&rule, &window)[0].onset;
    assert_eq!(onset(OnsetRule::FIRST_TOTAL), Onset::On(date(10, 5)), "the false start");
    assert_eq!(onset(OnsetRule::THREE_DAY), Onset::None, "6 mm a day are 18 mm in three days");
    assert_eq!(onset(OnsetRule::FIVE_DAY), Onset::On(date(11, 11)));
    assert_eq!(onset(OnsetRule::DEKAD), Onset::On(date(11, 11)));
}

#[test]
fn windows_may_cross_the_year() {
    let window = Window { from: day("11-15"), until: day("02-28") };
    let (from, until) = window.in_year(2023).unwrap();
    assert_eq!((from.to_string(), until.to_string()), ("2023-11-15".to_owned(), "2024-02-28".to_owned()));
    assert_eq!(day("02-29").in_year(2023).unwrap().to_string(), "2023-02-28");
    assert!("02-30".parse::<MonthDay>().is_err());
}

fn seasons_of_seattle(end: EndRule) -> SeasonRule {
    let window = Window { from: day("08-01"), until: day("12-31") };
    SeasonRule { onset: OnsetRule::THREE_DAY, window, end, end_from: day("05-01") }
}

/// Ends, dry spells and false starts, against an independent reading in numpy.
#[test]
fn seasons_of_an_open_record() {
    let record = seattle();
    let rainless = seasons_of_seattle(EndRule::RAINLESS).seasons(&record);
    let store = seasons_of_seattle(EndRule::SOIL_STORE).seasons(&record);
    let text = |date: Option<NaiveDate>| date.map_or("none".to_owned(), |date| date.to_string());
    let expected = rows("rain-season", "seasons.csv");
    // The table leaves out the last year, whose season the record does not end.
    assert_eq!((rainless.len(), store.len()), (expected.len() + 1, expected.len() + 1));
    for (row, (rainless, store)) in expected.iter().zip(rainless.iter().zip(&store)) {
        assert_eq!(rainless.year.to_string(), row["year"]);
        assert_eq!(text(rainless.onset), row["onset"]);
        assert_eq!(
            rainless.false_starts.len().to_string(),
            row["false_starts"],
            "{:?}",
            rainless.false_starts
        );
        let spell = rainless.longest_dry_spell_days.map_or("none".to_owned(), |days| days.to_string());
        assert_eq!(spell, row["longest_dry_spell_days"]);
        // A season that never began has no end; the table gives one all the same.
        if let Some(onset) = rainless.onset {
            assert_eq!(text(rainless.end), row["end_rainless"]);
            assert_eq!(text(store.end), row["end_soil_store"]);
            assert_eq!(rainless.length_days, Some((rainless.end.unwrap() - onset).num_days()));
        }
    }
    let last = rainless.last().unwrap();
    assert_eq!(
        (last.year, last.onset.is_some(), last.end),
        (2015, true, None),
        "the record ends before the season"
    );
}

/// Longest runs of days below 1 mm in each year, by xclim.
#[test]
fn dry_runs_of_an_open_record() {
    let record = seattle();
    for row in rows("rain-season", "dry_runs.csv") {
        let first = NaiveDate::from_ymd_opt(row["year"].parse().unwrap(), 1, 1).unwrap();
        let days = if first.leap_year() { 366 } else { 365 };
        let longest = longest_dry_spell(&record, first, days, 1.0).unwrap();
        assert_eq!(longest.to_string(), row["longest_dry_run_days"], "{}", row["year"]);
    }
}

/// Median slopes, by scipy.
#[test]
fn trends_as_scipy_has_them() {
    let mut checked = 0;
    for row in rows("rain-season", "trend.csv") {
        let numbers = |name: &str| row[name].split(' ').map(str::to_owned).collect::<Vec<_>>();
        let points: Vec<(f64, f64)> = numbers("years")
            .iter()
            .zip(numbers("onset_days"))
            .filter_map(|(year, days)| Some((year.parse().unwrap(), days.parse().ok()?)))
            .collect();
        let expected: f64 = row["slope_per_year"].parse().unwrap();
        assert!((median_slope(&points).unwrap() - expected).abs() < 1e-6, "{}", row["series"]);
        checked += 1;
    }
    assert!(checked >= 8);
    assert_eq!(median_slope(&[(2001.0, 3.0)]), None);
}

/// Slopes and their 95 % intervals, by scipy.
#[test]
fn intervals_of_trends_as_scipy_has_them() {
    let cases = rows("sen-slope", "cases.csv");
    assert_eq!(cases.len(), 10);
    for row in &cases {
        let numbers = |name: &str| row[name].split(' ').map(|number| number.parse::<f64>().unwrap());
        let points: Vec<(f64, f64)> = numbers("years").zip(numbers("onset_days")).collect();
        let found = Slope::of(&points).unwrap();
        for (found, name) in [(found.median, "slope"), (found.low, "low"), (found.high, "high")] {
            let expected: f64 = row[name].parse().unwrap();
            assert!((found - expected).abs() < 1e-8, "{} {name}: {found}", row["series"]);
        }
        let holds_zero =
            row["low"].parse::<f64>().unwrap() <= 0.0 && row["high"].parse::<f64>().unwrap() >= 0.0;
        assert_eq!(found.is_clear(), !holds_zero, "{}", row["series"]);
    }
    assert_eq!(Slope::of(&[(2001.0, 3.0)]), None);
}

/// The season of a record of so many years, one day of rain each, each year's two days later than the last one's.
fn ever_later(years: i32) -> Vec<kabla::plan::season::Season> {
    let window = Window { from: day("10-01"), until: day("12-31") };
    let rule =
        SeasonRule { onset: OnsetRule::FIRST_TOTAL, window, end: EndRule::RAINLESS, end_from: day("12-31") };
    let first = NaiveDate::from_ymd_opt(1990, 10, 1).unwrap();
    let wet: Vec<NaiveDate> = (0..years)
        .map(|year| {
            NaiveDate::from_ymd_opt(1990 + year, 10, 1).unwrap()
                + chrono::Days::new(2 * u64::try_from(year).unwrap())
        })
        .collect();
    let last = NaiveDate::from_ymd_opt(1990 + years - 1, 12, 31).unwrap() + chrono::Days::new(60);
    let days = first.iter_days().take_while(|day| *day <= last);
    let record = RainRecord::from_days(days.map(|day| (day, if wet.contains(&day) { 30.0 } else { 0.0 })));
    rule.seasons(&record)
}

/// Nineteen years make no trend; of twenty, each two days later than the one before, it is 20 days in ten years.
#[test]
fn few_years_make_no_trend() {
    let rule = seasons_of_seattle(EndRule::RAINLESS);
    let few = rule.outlook(&ever_later(19), None);
    assert_eq!((few.judged_years, few.trend_days_per_decade, few.trend_clear), (19, None, None));
    let enough = rule.outlook(&ever_later(20), None);
    assert_eq!(enough.trend_between, Some(Between { from: 20.0, to: Some(20.0) }));
    assert_eq!((enough.trend_days_per_decade, enough.trend_clear), (Some(20.0), Some(true)));
}

/// The end is looked for from the middle of the rainy season on, however late the window of the onset closes: 22
/// November here, the middle of 16 October to 28 December.
#[test]
fn a_late_window_does_not_hide_the_end() {
    let record = lowlands();
    for until in ["11-22", "11-30", "12-31", "01-31"] {
        let window = Window { from: day("09-20"), until: day(until) };
        assert_eq!(end_search_from(&record, &window), day("11-22"), "{until}");
    }
    // The other season: 15 March to 9 May, 56 days.
    let first = Window { from: day("02-15"), until: day("06-30") };
    assert_eq!(end_search_from(&record, &first), day("04-12"));
    // A window in which no rain falls, and one that opens when the season's middle is over: their own middles.
    let dry = Window { from: day("07-01"), until: day("07-31") };
    assert_eq!(end_search_from(&record, &dry), day("07-16"));
    let over = Window { from: day("12-01"), until: day("12-21") };
    assert_eq!(end_search_from(&record, &over), day("12-11"));
    let ends = |end_from| {
        let window = Window { from: day("09-20"), until: day("12-31") };
        let rule = SeasonRule { onset: OnsetRule::THREE_DAY, window, end: EndRule::RAINLESS, end_from };
        let seasons = rule.seasons(&record).into_iter();
        seasons.map(|season| MonthDay::of(season.end.unwrap())).collect::<Vec<_>>()
    };
    let by_xclim: Vec<MonthDay> = rows("xclim-onset", "cases.csv")
        .iter()
        .filter(|row| row["record"] == "eastern-lowlands" && row["rule"] == "end-20-dry")
        .map(|row| MonthDay::of(row["expected_first_day"].parse().unwrap()))
        .collect();
    assert_eq!(ends(day("11-22")), by_xclim);
    // Looked for from the window's last day, 11 of the 19 would be that day or later.
    let missed = ends(day("12-31")).iter().zip(&by_xclim).filter(|(late, right)| late != right).count();
    assert_eq!(missed, 11);
}

/// "No dry spell over 7 days" allows 7 and forbids 8; the open record tells the two apart nowhere.
#[test]
fn a_dry_spell_may_be_as_long_as_the_rule_says() {
    let first = NaiveDate::from_ymd_opt(2021, 10, 1).unwrap();
    let window = Window { from: day("10-01"), until: day("10-01") };
    for (dry, begins) in [(7, true), (8, false)] {
        let rain = |offset: u64| {
            if offset < 3 {
                10.0
            } else if offset < 3 + dry {
                0.9
            } else {
                5.0
            }
        };
        let record =
            RainRecord::from_days((0..60).map(|offset| (first + chrono::Days::new(offset), rain(offset))));
        let found = record.onsets(&OnsetRule::THREE_DAY, &window)[0].onset;
        assert_eq!(found, if begins { Onset::On(first) } else { Onset::None }, "{dry} dry days");
    }
}

#[test]
fn outlooks_count_years_without_onset_and_leave_unknown_ones_out() {
    let rule = seasons_of_seattle(EndRule::RAINLESS);
    let mut seasons = rule.seasons(&seattle());
    let outlook = rule.outlook(&seasons, None);
    assert_eq!((outlook.judged_years, outlook.none_share), (4, Some(0.25)));
    // Days 72, 73 and 70 after 1 August: 70.8, 72 and 72.6 by linear interpolation.
    assert_eq!(
        [outlook.p20, outlook.p50, outlook.p80].map(Option::unwrap),
        ["10-11", "10-12", "10-13"].map(day)
    );
    assert_eq!(outlook.trend_days_per_decade, None, "three onsets make no trend");
    seasons[1].onset_unknown = true;
    let outlook = rule.outlook(&seasons, None);
    assert_eq!((outlook.judged_years, outlook.none_share), (3, Some(0.0)));
    assert_eq!(rule.outlook(&[], None).none_share, None);
}

/// Dry and wet spells one after the other, with days missing here and there.
fn any_spells() -> impl Strategy<Value = Vec<Option<f64>>> {
    let day = |most: f64| prop::option::weighted(0.998, 0.0..most);
    let spell = (prop::collection::vec(day(0.9), 1..60), prop::collection::vec(day(30.0), 1..40));
    let spells = prop::collection::vec(spell, 1..20);
    spells.prop_map(|spells| spells.into_iter().flat_map(|(dry, wet)| [dry, wet]).flatten().collect())
}

/// Any record has an answer: no panic, ends after onsets, spells within lengths.
#[test]
fn any_record_has_seasons() {
    let cases = (any_spells(), 0u64..400, 0..OnsetRule::ALL.len(), any::<bool>());
    let (ended, false_starts) = (Cell::new(0), Cell::new(0));
    let run = TestRunner::default().run(&cases, |(rain, start, which, soil)| {
        let first = NaiveDate::from_ymd_opt(2019, 6, 1).unwrap() + chrono::Days::new(start);
        let days = (0..).zip(rain).filter_map(|(offset, mm)| Some((first + chrono::Days::new(offset), mm?)));
        let record = RainRecord::from_days(days);
        let rule = SeasonRule {
            onset: OnsetRule::ALL[which],
            window: Window { from: day("10-15"), until: day("02-10") },
            end: if soil { EndRule::SOIL_STORE } else { EndRule::RAINLESS },
            end_from: day("03-01"),
        };
        let seasons = rule.seasons(&record);
        for season in &seasons {
            if let (Some(onset), Some(end)) = (season.onset, season.end) {
                prop_assert!(end > onset);
                // Unknown where a day is missing.
                let spell = season.longest_dry_spell_days.map(i64::from);
                prop_assert!(spell.is_none_or(|spell| spell < (end - onset).num_days()));
                ended.set(ended.get() + usize::from(spell.is_some()));
            }
            prop_assert!(
                season.false_starts.iter().all(|start| season.onset.is_none_or(|onset| *start < onset))
            );
            false_starts.set(false_starts.get() + season.false_starts.len());
        }
        let outlook = rule.outlook(&seasons, None);
        prop_assert!(outlook.none_share.is_none_or(|share| (0.0..=1.0).contains(&share)));
        Ok(())
    });
    run.unwrap();
    let seen = (ended.get(), false_starts.get());
    assert!(seen.0 > 50 && seen.1 > 50, "too few seasons and false starts to prove anything: {seen:?}");
}

/// False starts and days left by the day one begins to plant, against numpy.
#[test]
fn waiting_trades_false_starts_for_length() {
    let csv = include_bytes!("../../examples/rain-eastern-lowlands.csv");
    let (record, findings) = kabla::case::read_rain("rain.csv", csv, None);
    assert_eq!(findings, []);
    let window = Window { from: day("09-20"), until: day("12-31") };
    let rule =
        SeasonRule { onset: OnsetRule::THREE_DAY, window, end: EndRule::RAINLESS, end_from: day("12-01") };
    let delays = rule.planting_delays(&record);
    let expected = rows("rain-season", "trade.csv");
    assert_eq!(delays.len(), expected.len());
    for (row, expected) in delays.iter().zip(expected) {
        assert_eq!((row.from.to_string(), row.years), (expected["from"].clone(), 19));
        assert_eq!(row.planted_years.to_string(), expected["planted_years"], "{}", row.from);
        let failed = row.false_start_share.unwrap() * row.planted_years as f64;
        assert!(
            (failed - expected["false_starts"].parse::<f64>().unwrap()).abs() < 1e-9,
            "{}: {failed}",
            row.from
        );
        let left: f64 = expected["median_days_left"].parse().unwrap();
        assert!((row.median_days_left.unwrap() - left).abs() < 1e-9, "{}", row.from);
    }
}

/// Percentiles under the chances of a seasonal outlook, by numpy.
#[test]
fn outlooks_weigh_the_thirds_of_the_years() {
    let numbers = |text: &str| text.split(';').map(|number| number.parse().unwrap()).collect::<Vec<f64>>();
    let expected = rows("rain-season", "outlook.csv");
    assert_eq!(expected.len(), 17);
    for row in expected {
        let chances: [f64; 3] = numbers(&row["chances"]).try_into().unwrap();
        let values = numbers(&row["values"]);
        let weights = weights_of_thirds(&values, chances);
        let found = weighted_percentile(&values, &weights, row["percent"].parse().unwrap());
        assert_eq!(found, Some(row["expected"].parse().unwrap()), "{row:?}");
    }
    assert_eq!(weighted_percentile(&[], &[], 50.0), None);
}

fn lowlands() -> RainRecord {
    let csv = include_bytes!("../../examples/rain-eastern-lowlands.csv");
    let (record, findings) = kabla::case::read_rain("rain.csv", csv, None);
    assert_eq!(findings, []);
    record
}

/// Onsets and ends by xclim; its dates are last days of wet windows, the table holds the first days.
#[test]
fn onsets_and_ends_by_xclim() {
    let with = |look_ahead, dry_spell| OnsetRule::Total {
        name: "as in the table",
        total_mm: 20.0,
        days: 3,
        rain_days: 1,
        look_ahead,
        dry_spell,
        rain_day_mm: 1.0,
    };
    let records = [
        ("seattle", seattle(), Window { from: day("08-01"), until: day("12-31") }, day("05-01")),
        ("eastern-lowlands", lowlands(), Window { from: day("09-20"), until: day("12-31") }, day("12-01")),
    ];
    let mut checked = 0;
    for row in rows("xclim-onset", "cases.csv").iter().filter(|row| row["why_differs"].is_empty()) {
        let (_, record, window, end_from) = records.iter().find(|record| record.0 == row["record"]).unwrap();
        let year: i32 = row["year"].parse().unwrap();
        let (from, until) = window.in_year(year).unwrap();
        let onset = |rule: OnsetRule| match rule.onset(record, from, until) {
            Onset::On(day) => day.to_string(),
            Onset::None => "none".to_owned(),
            Onset::Between(open) => panic!("a whole record leaves nothing open: {open:?}"),
        };
        let found = match row["rule"].as_str() {
            rule if rule.starts_with("onset-8-dry-in-30") => onset(with(30, 7)),
            rule if rule.starts_with("onset-10-dry-in-21") => onset(with(21, 9)),
            "end-20-dry" | "end-20-dry-season" => {
                let rule = SeasonRule {
                    onset: with(30, 7),
                    window: *window,
                    end: EndRule::RAINLESS,
                    end_from: *end_from,
                };
                let search = end_from.next_after(from).unwrap();
                // A season without an onset has an end all the same; any day before the search will do.
                rule.end_after(record, from, search).map_or("none".to_owned(), |day| day.to_string())
            }
            other => panic!("{other}"),
        };
        assert_eq!(found, row["expected_first_day"], "{row:?}");
        checked += 1;
    }
    assert!(checked > 150, "{checked}");
}

/// One rainy season or two, and from when to when, by numpy.
#[test]
fn rainy_seasons_of_the_mean_year() {
    let mut records = vec![("seattle".to_owned(), seattle()), ("eastern-lowlands".to_owned(), lowlands())];
    let made = rows("mean-year", "records.csv");
    let first = NaiveDate::from_ymd_opt(2013, 1, 1).unwrap();
    for name in made.iter().map(|row| row["record"].clone()).collect::<std::collections::BTreeSet<_>>() {
        let wet: std::collections::BTreeMap<NaiveDate, f64> = made
            .iter()
            .filter(|row| row["record"] == name)
            .map(|row| (row["date"].parse().unwrap(), row["mm"].parse().unwrap()))
            .collect();
        let days = (0..2191).map(|offset| first + chrono::Days::new(offset));
        records.push((
            name,
            RainRecord::from_days(days.map(|day| (day, wet.get(&day).copied().unwrap_or(0.0)))),
        ));
    }
    let expected = rows("mean-year", "seasons.csv");
    let mut checked = 0;
    for (name, record) in &records {
        let found: Vec<_> = wet_seasons(record)
            .iter()
            .map(|wet| (wet.from.to_string(), wet.until.to_string(), wet.mm))
            .collect();
        let expected: Vec<_> = expected.iter().filter(|row| row["record"] == *name).collect();
        assert_eq!(found.len(), expected.len(), "{name}: {found:?}");
        for (found, row) in found.iter().zip(expected) {
            assert_eq!((&found.0, &found.1), (&row["from"], &row["until"]), "{name}");
            assert!((found.2 - row["mm"].parse::<f64>().unwrap()).abs() <= 0.1 + 1e-9, "{name}: {found:?}");
            checked += 1;
        }
    }
    assert_eq!(checked, 8);
    let thin = RainRecord::from_days((0..300).map(|offset| (first + chrono::Days::new(offset), 3.0)));
    assert_eq!(wet_seasons(&thin), [], "a day of the year without a value");
    let dry = RainRecord::from_days((0..800).map(|offset| (first + chrono::Days::new(offset), 0.0)));
    assert_eq!(wet_seasons(&dry), []);
}

/// The window of a season found opens before its mean first day and not within the season before.
#[test]
fn windows_of_seasons_found() {
    let wet = wet_seasons(&lowlands());
    let windows: Vec<_> =
        wet.iter().map(|wet| (wet.window.from.to_string(), wet.window.until.to_string())).collect();
    // 30 days before 15 March and 16 October; the middles of 56 and 74 days.
    assert_eq!(windows, [("02-13".to_owned(), "04-12".to_owned()), ("09-16".to_owned(), "11-22".to_owned())]);
}

/// An outlook of the rain total ranks the years by their rain; one of the onset by their onset, never last.
#[test]
fn outlooks_rank_the_years() {
    let record = lowlands();
    let window = Window { from: day("09-20"), until: day("12-31") };
    let rule =
        SeasonRule { onset: OnsetRule::THREE_DAY, window, end: EndRule::RAINLESS, end_from: day("12-01") };
    let years = record.onsets(&rule.onset, &window);
    let weights = rule.weights(&record, &years, Chances::OfTotal([60.0, 30.0, 10.0]));
    let total = |year: i32| -> f64 {
        let from = NaiveDate::from_ymd_opt(year, 9, 20).unwrap();
        record.days(from, 91).map(Option::unwrap).sum()
    };
    // 19 years: 6 dry ones share 60, 7 share 30, 6 wet ones 10.
    let mut order: Vec<usize> = (0..years.len()).collect();
    order.sort_by(|one, other| total(years[*one].year).total_cmp(&total(years[*other].year)));
    for (rank, index) in order.into_iter().enumerate() {
        let expected = match rank {
            0..=5 => 10.0,
            6..=12 => 30.0 / 7.0,
            _ => 10.0 / 6.0,
        };
        assert!((weights[index] - expected).abs() < 1e-9, "{} of {}", weights[index], years[index].year);
    }
    let late = ObservedRains::find(&record, rule, Some(Chances::OfOnset([0.0, 0.0, 100.0])));
    let early = ObservedRains::find(&record, rule, Some(Chances::OfOnset([100.0, 0.0, 0.0])));
    let plain = ObservedRains::find(&record, rule, None);
    let middle = |rains: &ObservedRains| rains.onset_percentile(50.0).unwrap();
    assert!(middle(&early) < middle(&plain) && middle(&plain) < middle(&late));
}
