//! What a case says of the rains.

use chrono::NaiveDate;

use super::given::{Open, open_named, required};
use super::headings::DateLayout;
use super::records::read_rain;
use crate::finding::{Code, Finding};
use crate::plan::season::{
    Chances, EndRule, MonthDay, ObservedRains, OnsetRule, RainRecord, Rains, RainsEnd, Risk, SeasonRule,
    WetSeason, Window, end_search_from, wet_seasons,
};
use crate::toml_reader::{Source, TomlTable};

/// The rains of a case.
pub(super) struct ReadRains {
    pub(super) rains: Rains,
    pub(super) end: Option<RainsEnd>,
    pub(super) risk: Risk,
    pub(super) began: Option<NaiveDate>,
}

pub(super) fn read(
    source: &Source<'_>,
    season: &TomlTable<'_>,
    harvest: Option<NaiveDate>,
    open: Open<'_>,
) -> Option<ReadRains> {
    let risk = read_risk(season);
    let began = season.date("rains_began");
    if let Some((began, harvest)) = began.zip(harvest)
        && (began <= harvest || (began - harvest).num_days() > 366)
    {
        season.problem(
            Code::OUT_OF_RANGE,
            "rains_began",
            format!("{began} does not lie in the year after the harvest ({harvest})"),
            "write the day on which this season's rains began, or take the line out",
        );
    }
    let end = read_rains_end(season);
    let rains = read_rains(source, season, harvest, open)?;
    check_end(season, &rains, end, harvest);
    Some(ReadRains { rains, end, risk, began })
}

fn read_risk(season: &TomlTable<'_>) -> Risk {
    let named = [("early", Risk::Early), ("middle", Risk::Middle), ("late", Risk::Late)];
    let percentile = season.number("risk_percent", 1.0..=99.0).map(Risk::Percentile);
    let risk = season.choice("risk", &named);
    if season.has("risk") && season.has("risk_percent") {
        season.problem(
            Code::CONFLICT,
            "risk_percent",
            "risk and risk_percent both stand here",
            "keep one of them",
        );
    }
    percentile.or(risk).unwrap_or(Risk::Early)
}

/// Fields that only a rainfall record has a use for.
const OF_RECORDS: [&str; 9] = [
    "rule",
    "dates",
    "window_from",
    "window_until",
    "season",
    "end",
    "end_from",
    "outlook_onset",
    "outlook_rain",
];

fn read_rains(
    source: &Source<'_>,
    season: &TomlTable<'_>,
    harvest: Option<NaiveDate>,
    open: Open<'_>,
) -> Option<Rains> {
    let path = season.text("rainfall_record");
    let rules = OnsetRule::ALL.map(|rule| (rule.name(), rule));
    let rule = season.choice("rule", &rules).unwrap_or(OnsetRule::THREE_DAY);
    let layout = season
        .choice("dates", &[("day-first", DateLayout::DayFirst), ("month-first", DateLayout::MonthFirst)]);
    let from = month_day(season, "window_from");
    let until = month_day(season, "window_until");
    let which = season.whole("season", 1..=2);
    let ends = [("rainless", EndRule::RAINLESS), ("soil-store", EndRule::SOIL_STORE)];
    let end = season.choice("end", &ends).unwrap_or(EndRule::RAINLESS);
    let end_from = month_day(season, "end_from");
    let outlook = read_outlook(season);
    let given = season.has("rains_begin");
    if given && season.has("rainfall_record") {
        season.problem(
            Code::CONFLICT,
            "rainfall_record",
            "rains_begin and rainfall_record both stand here",
            "keep one of them",
        );
        return None;
    }
    if given {
        for key in OF_RECORDS.into_iter().filter(|key| season.has(key)) {
            season.problem(Code::NO_USE, key, "is for a rainfall_record only", "take the line out");
        }
        return read_rains_begin(season, harvest);
    }
    let Some(path) = path else {
        if !season.has("rainfall_record") {
            season.missing(
                "rains_begin",
                "add [season] with rains_begin = \"10-15\" (month-day), or rainfall_record = \"file.csv\"",
            );
        }
        return None;
    };
    let named = season.has("window_from") || season.has("window_until");
    if named {
        let hint = "write the first and last day of the year on which the rains may begin: window_from = \"09-15\", window_until = \"12-31\"";
        required(season, "window_from", hint, from);
        required(season, "window_until", hint, until);
        if season.has("season") {
            season.problem(
                Code::CONFLICT,
                "season",
                "the window is named already",
                "keep the window, or season",
            );
        }
    }
    let bytes = open_named(season, "rainfall_record", &path, open)?;
    let (record, findings) = read_rain(&path, &bytes, layout);
    let failed = findings.iter().any(Finding::is_error);
    for finding in findings {
        source.add_foreign(finding);
    }
    if failed {
        return None;
    }
    let observe = |window: Window| {
        let end_from = end_from.unwrap_or_else(|| end_search_from(&record, &window));
        let rule = SeasonRule { onset: rule, window, end, end_from };
        ObservedRains::find(&record, rule, outlook)
    };
    if named {
        return Some(Rains::Observed(observe(Window { from: from?, until: until? })));
    }
    find_season(season, &record, which, harvest, observe)
}

/// The season that the record itself has: the one asked for, or the first after the harvest.
fn find_season(
    season: &TomlTable<'_>,
    record: &RainRecord,
    which: Option<u32>,
    harvest: Option<NaiveDate>,
    observe: impl Fn(Window) -> ObservedRains,
) -> Option<Rains> {
    let found = wet_seasons(record);
    let name_it =
        "name the first and last day of the year on which the rains may begin: window_from, window_until";
    let chosen: Option<(&WetSeason, ObservedRains)> = match which {
        Some(which) => found.get(which as usize - 1).map(|wet| (wet, observe(wet.window))),
        None => {
            let seen = found.iter().map(|wet| (wet, observe(wet.window)));
            seen.min_by_key(|(_, observed)| {
                harvest.map_or(i64::MAX, |harvest| observed.days_to_onset(harvest))
            })
        }
    };
    let Some((wet, observed)) = chosen else {
        let message = match which {
            Some(which) if !found.is_empty() => {
                format!("the record has only {} rainy season a year, not {which}", found.len())
            }
            _ => "the record is too short or too dry to tell the rainy seasons".to_owned(),
        };
        let key = if which.is_some() { "season" } else { "rainfall_record" };
        season.problem(Code::SHORT_RECORD, key, message, name_it);
        return None;
    };
    season.note(Code::SEASON_TAKEN, "rainfall_record", found_in_words(wet, &found), name_it);
    Some(Rains::Observed(observed))
}

/// How a rainy season was found, in words; `all` are the seasons of the record.
pub fn found_in_words(chosen: &WetSeason, all: &[WetSeason]) -> String {
    let seasons: Vec<String> =
        all.iter().map(|wet| format!("{} to {} ({:.0} mm)", wet.from, wet.until, wet.mm)).collect();
    format!(
        "by its mean year the record has {} (month-day): {}; the onset is looked for from {} to {}",
        if all.len() == 1 { "one rainy season" } else { "two rainy seasons" },
        seasons.join(" and "),
        chosen.window.from,
        chosen.window.until
    )
}

fn read_outlook(season: &TomlTable<'_>) -> Option<Chances> {
    let chances = |key: &'static str| -> Option<[f64; 3]> {
        let chances: [f64; 3] = match season.numbers(key, 0.0..=100.0)?.try_into() {
            Ok(chances) => chances,
            Err(_) => {
                season.problem(
                    Code::MISMATCH,
                    key,
                    "has not three chances",
                    "write three, e.g. [30, 40, 30]",
                );
                return None;
            }
        };
        if !(99.0..=101.0).contains(&chances.iter().sum::<f64>()) {
            season.problem(
                Code::MISMATCH,
                key,
                "the chances do not add up to 100",
                "write per cents, e.g. [30, 40, 30]",
            );
            return None;
        }
        Some(chances)
    };
    let (onset, rain) = (chances("outlook_onset"), chances("outlook_rain"));
    if season.has("outlook_onset") && season.has("outlook_rain") {
        season.problem(Code::CONFLICT, "outlook_rain", "two outlooks stand here", "keep one of them");
    }
    onset.map(Chances::OfOnset).or(rain.map(Chances::OfTotal))
}

fn month_day(season: &TomlTable<'_>, key: &'static str) -> Option<MonthDay> {
    let text = season.text(key)?;
    let day = text.parse().ok();
    if day.is_none() {
        season.problem(
            Code::NOT_A_DATE,
            key,
            format!("{text} is not a day of the year"),
            "write month-day, e.g. \"10-15\"",
        );
    }
    day
}

/// A day of the year ("10-15"), or a date (2027-10-15).
enum Day {
    OfYear(MonthDay),
    On(NaiveDate),
}

fn read_day(season: &TomlTable<'_>, key: &'static str) -> Option<Day> {
    if season.is_text(key) {
        let text = season.text(key)?;
        if text.len() <= 5 {
            return month_day(season, key).map(Day::OfYear);
        }
    }
    season.date(key).map(Day::On)
}

fn read_rains_begin(season: &TomlTable<'_>, harvest: Option<NaiveDate>) -> Option<Rains> {
    let date = match read_day(season, "rains_begin")? {
        Day::OfYear(day) => return Some(Rains::Usual(day)),
        Day::On(date) => date,
    };
    if let Some(harvest) = harvest {
        if date <= harvest {
            season.problem(Code::WRONG_ORDER,
                "rains_begin",
                format!("the rains ({date}) begin before the harvest ({harvest}) is over"),
                "write the rains that follow the harvest, or only their day of the year: rains_begin = \"10-15\"",
            );
            return None;
        }
        if (date - harvest).num_days() > 366 {
            season.problem(
                Code::OUT_OF_RANGE,
                "rains_begin",
                format!("the rains ({date}) begin more than a year after the harvest ({harvest})"),
                "check the years",
            );
            return None;
        }
    }
    Some(Rains::On(date))
}

fn read_rains_end(season: &TomlTable<'_>) -> Option<RainsEnd> {
    if season.has("rains_end") && season.has("rainfall_record") {
        season.problem(
            Code::CONFLICT,
            "rains_end",
            "rains_end and rainfall_record both stand here",
            "take rains_end out: the record tells when the rains end",
        );
        return None;
    }
    Some(match read_day(season, "rains_end")? {
        Day::OfYear(day) => RainsEnd::Usual(day),
        Day::On(date) => RainsEnd::On(date),
    })
}

/// Rains that last longer leave no dry season to store roots over.
const LONGEST_RAINS: i64 = 300;

/// The rains end after they begin, and leave a dry season.
fn check_end(season: &TomlTable<'_>, rains: &Rains, end: Option<RainsEnd>, harvest: Option<NaiveDate>) {
    let onset = match rains {
        Rains::Usual(day) => harvest.and_then(|harvest| day.next_after(harvest)),
        Rains::On(date) => Some(*date),
        Rains::Observed(_) => None,
    };
    let last = end.zip(onset).and_then(|(end, onset)| end.after(onset));
    let Some((onset, last)) = onset.zip(last) else { return };
    if last <= onset {
        season.problem(
            Code::WRONG_ORDER,
            "rains_end",
            format!("the rains end ({last}) no later than they begin ({onset})"),
            "write the first dry day after the rains, or only its day of the year: rains_end = \"04-20\"",
        );
    } else if (last - onset).num_days() > LONGEST_RAINS {
        season.problem(
            Code::OUT_OF_RANGE,
            "rains_end",
            format!(
                "the rains would end on {last}, more than {LONGEST_RAINS} days after they begin ({onset})"
            ),
            "check both days; the end may stand before the beginning",
        );
    }
}
