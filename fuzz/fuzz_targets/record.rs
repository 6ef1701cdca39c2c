//! A daily rainfall record, after ten bytes that say how it is looked at.
#![no_main]

use kabla::case::{DateLayout, read_rain};
use kabla::finding::Finding;
use kabla::plan::season::{
    Between, Chances, EndRule, MonthDay, ObservedRains, OnsetRule, Outlook, Season, SeasonRule, Window, end_search_from,
    wet_seasons,
};
use libfuzzer_sys::fuzz_target;

fuzz_target!(|data: &[u8]| {
    let [layout, a, b, c, d, e, f, early, usual, late, bytes @ ..] = data else { return };
    let layout = match layout % 3 {
        0 => None,
        1 => Some(DateLayout::DayFirst),
        _ => Some(DateLayout::MonthFirst),
    };
    let window = Window { from: day(*a, *b), until: day(*c, *d) };
    let end_from = day(*e, *f);
    let (record, findings) = read_rain("rain.csv", bytes, layout);
    if findings.iter().any(Finding::is_error) {
        return;
    }
    assert!(record.span().is_some(), "no day was read, and nothing says so");
    // A case's chances add up to 100; any three with some weight will do here.
    let chances = [early, usual, late].map(|chance| f64::from(*chance) + 1.0);
    let _ = end_search_from(&record, &window);
    for wet in wet_seasons(&record) {
        assert!(wet.mm.is_finite() && wet.mm >= 0.0, "{wet:?}");
    }
    for onset in OnsetRule::ALL {
        for end in [EndRule::RAINLESS, EndRule::SOIL_STORE] {
            let rule = SeasonRule { onset, window, end, end_from };
            let seasons = rule.seasons(&record);
            seasons.iter().for_each(check_season);
            check_outlook(&rule.outlook(&seasons, None));
            for row in rule.planting_delays(&record) {
                assert!(row.planted_years <= row.years, "{row:?}");
                assert!(row.false_start_share.is_none_or(is_share), "{row:?}");
                assert!(row.median_days_left.is_none_or(|days| days.is_finite() && days >= 0.0), "{row:?}");
            }
            serde_json::to_string(&seasons).expect("seasons become JSON");
        }
        let rule = SeasonRule { onset, window, end: EndRule::RAINLESS, end_from };
        for outlook in [None, Some(Chances::OfOnset(chances)), Some(Chances::OfTotal(chances))] {
            let observed = ObservedRains::find(&record, rule, outlook);
            check_outlook(&rule.outlook(&rule.seasons(&record), observed.weights.as_deref()));
            assert!(observed.none_share().is_none_or(is_share));
            for percent in [1.0, 20.0, 50.0, 80.0, 99.0] {
                let days = observed.onset_percentile(percent);
                assert!(days.is_none_or(|days| (0.0..=366.0).contains(&days)), "{percent} %: {days:?}");
            }
        }
    }
});

/// A month from `a` on and a day from `A` on, so that seeds can be written by hand.
fn day(month: u8, day: u8) -> MonthDay {
    let month = 1 + u32::from(month.wrapping_sub(b'a') % 12);
    let day = 1 + u32::from(day.wrapping_sub(b'A') % 31);
    // The 31st of a shorter month falls back to a day that every month has.
    MonthDay::new(month, day).or(MonthDay::new(month, 28)).expect("a day of the year")
}

fn is_share(share: f64) -> bool {
    (0.0..=1.0).contains(&share)
}

fn check_season(season: &Season) {
    assert!(!(season.onset_unknown && season.onset.is_some()), "{season:?}");
    assert_eq!(season.onset_unknown, season.onset_between.is_some(), "{season:?}");
    assert!(season.onset.is_some() || season.onset_unknown || season.end.is_none(), "{season:?}");
    assert!(season.onset.zip(season.end).is_none_or(|(onset, end)| onset < end), "{season:?}");
    assert!(season.length_days.is_none() || season.end.is_some() && season.onset.is_some(), "{season:?}");
    let spell = season.longest_dry_spell_days.zip(season.length_days);
    assert!(spell.is_none_or(|(spell, length)| i64::from(spell) < length), "{season:?}");
    assert!(season.onset_between.is_none_or(is_ordered), "{season:?}");
    assert!(season.end_between.is_none_or(is_ordered), "{season:?}");
    assert!(season.length_days_between.is_none_or(is_ordered), "{season:?}");
    assert!(season.longest_dry_spell_days_between.is_none_or(is_ordered), "{season:?}");
    assert!(season.false_starts.is_sorted(), "{season:?}");
    let earliest = season.onset.or(season.onset_between.map(|open| open.from));
    assert!(season.false_starts.iter().all(|day| earliest.is_none_or(|onset| *day < onset)), "{season:?}");
}

fn is_ordered<T: PartialOrd>(open: Between<T>) -> bool {
    open.to.is_none_or(|to| open.from < to)
}

fn check_outlook(outlook: &Outlook) {
    assert_eq!(outlook.p20.is_some(), outlook.p80.is_some(), "{outlook:?}");
    assert!(outlook.none_share.is_none_or(is_share), "{outlook:?}");
    assert!(outlook.trend_days_per_decade.is_none_or(f64::is_finite), "{outlook:?}");
    let ordered = |open: Between<f64>| open.to.is_none_or(|to| open.from <= to);
    assert!(outlook.trend_between.is_none_or(ordered), "{outlook:?}");
}
