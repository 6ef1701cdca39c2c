//! `kabla rains`

use std::fmt::Write as _;
use std::path::PathBuf;

use chrono::NaiveDate;
use clap::{Args, ValueEnum};

use crate::app::{
    self, Between, Chances, DateLayout, EndRule, Error, MonthDay, OnsetRule, Outlook, PlantingDelay, Rains,
    RainsRequest, Season, Slope, Window,
};

#[derive(Debug, Args)]
pub(super) struct Arguments {
    /// Daily rainfall, a table with the columns date and mm.
    record: PathBuf,
    /// When the rains have begun.
    #[arg(long, value_name = "NAME", default_value = "three-day", value_parser = rule)]
    rule: OnsetRule,
    /// First day of the year on which the rains may begin (month-day); found from the record if not given.
    #[arg(long, value_name = "MM-DD", value_parser = month_day, requires = "until")]
    from: Option<MonthDay>,
    /// Last day of the year on which they may begin.
    #[arg(long, value_name = "MM-DD", value_parser = month_day, requires = "from")]
    until: Option<MonthDay>,
    /// Which of the seasons found, in order of the calendar; the one with most rain if not given.
    #[arg(long, value_name = "N", conflicts_with = "from", value_parser = clap::value_parser!(u32).range(1..=2))]
    season: Option<u32>,
    /// Another total of the wet window, mm.
    #[arg(long, value_name = "MM", value_parser = millimetres)]
    total: Option<f64>,
    /// Another length of the wet window, days.
    #[arg(long, value_name = "N", value_parser = clap::value_parser!(u32).range(1..=60))]
    days: Option<u32>,
    /// Another least number of rain days in the wet window.
    #[arg(long, value_name = "N", value_parser = clap::value_parser!(u32).range(1..=60))]
    rain_days: Option<u32>,
    /// Other days to look ahead.
    #[arg(long, value_name = "N", value_parser = clap::value_parser!(u32).range(0..=120))]
    look_ahead: Option<u32>,
    /// Another longest dry spell allowed in them, days.
    #[arg(long, value_name = "N", value_parser = clap::value_parser!(u32).range(0..=120))]
    dry_spell: Option<u32>,
    /// Other least rain of a rain day, mm.
    #[arg(long, value_name = "MM", value_parser = millimetres)]
    rain_day: Option<f64>,
    /// When the rains have ended.
    #[arg(long, value_enum, default_value_t = End::Rainless)]
    end: End,
    /// From when on the end is looked for; the middle of the rainy season if not given.
    #[arg(long, value_name = "MM-DD", value_parser = month_day)]
    end_from: Option<MonthDay>,
    /// A seasonal outlook: the chances in percent of an early, a usual and a late onset, e.g. 20/30/50.
    #[arg(long, value_name = "E/U/L", value_parser = terciles)]
    outlook: Option<[f64; 3]>,
    /// A seasonal outlook: the chances of little, usual and much rain in the three months from the window's opening, e.g. 40/35/25.
    #[arg(long, value_name = "B/N/A", value_parser = terciles, conflicts_with = "outlook")]
    outlook_rain: Option<[f64; 3]>,
    /// How dates with the year last are read, where the rows do not tell.
    #[arg(long, value_enum)]
    dates: Option<Dates>,
    /// Print JSON.
    #[arg(long)]
    json: bool,
}

#[derive(Debug, Clone, Copy, ValueEnum)]
enum End {
    /// The first of 20 rainless days.
    Rainless,
    /// The first day on which a soil store of 100 mm that loses 5 mm a day is empty.
    SoilStore,
}

#[derive(Debug, Clone, Copy, ValueEnum)]
enum Dates {
    /// 30/4/2019
    DayFirst,
    /// 4/30/2019
    MonthFirst,
}

fn rule(name: &str) -> Result<OnsetRule, String> {
    let known = OnsetRule::ALL.map(|rule| rule.name()).join(", ");
    name.parse().map_err(|()| format!("rules are {known}"))
}

fn month_day(text: &str) -> Result<MonthDay, String> {
    text.parse().map_err(|()| "write month-day, e.g. 10-15".to_owned())
}

fn millimetres(text: &str) -> Result<f64, String> {
    text.parse()
        .ok()
        .filter(|mm| (0.0..=1000.0).contains(mm))
        .ok_or_else(|| "write millimetres from 0 to 1000".to_owned())
}

fn terciles(text: &str) -> Result<[f64; 3], String> {
    let chances: Vec<f64> = text.split('/').filter_map(|part| part.trim().parse().ok()).collect();
    let sum: f64 = chances.iter().sum();
    match chances.try_into() {
        Ok(chances)
            if (99.0..=101.0).contains(&sum) && text.split('/').count() == 3 && !text.contains('-') =>
        {
            Ok(chances)
        }
        _ => Err("write three chances that add up to 100, e.g. 20/30/50".to_owned()),
    }
}

impl Arguments {
    /// The rule with what is asked for in place of its own parameters; what it
    /// has no place for is an error.
    fn onset(&self) -> Result<OnsetRule, String> {
        match self.rule {
            OnsetRule::Total { name, total_mm, days, rain_days, look_ahead, dry_spell, rain_day_mm } => {
                Ok(OnsetRule::Total {
                    name,
                    total_mm: self.total.unwrap_or(total_mm),
                    days: self.days.unwrap_or(days),
                    rain_days: self.rain_days.unwrap_or(rain_days),
                    look_ahead: self.look_ahead.unwrap_or(look_ahead),
                    dry_spell: self.dry_spell.unwrap_or(dry_spell),
                    rain_day_mm: self.rain_day.unwrap_or(rain_day_mm),
                })
            }
            OnsetRule::Dekad { total_mm, next_two_mm } => {
                let other = self.days.is_some()
                    || self.rain_days.is_some()
                    || self.look_ahead.is_some()
                    || self.dry_spell.is_some()
                    || self.rain_day.is_some();
                if other {
                    return Err("the rule dekad has a total only: take --days, --rain-days, --look-ahead, --dry-spell and --rain-day out".to_owned());
                }
                Ok(OnsetRule::Dekad { total_mm: self.total.unwrap_or(total_mm), next_two_mm })
            }
        }
    }
}

pub(super) fn run(arguments: &Arguments) -> Result<(), Error> {
    let onset = arguments.onset().map_err(|message| {
        Error::Input(vec![app::Finding::error(app::Code::UNKNOWN_NAME, message).field("--rule")])
    })?;
    let rains = app::rains(&RainsRequest {
        record: &arguments.record,
        layout: arguments.dates.map(|dates| match dates {
            Dates::DayFirst => DateLayout::DayFirst,
            Dates::MonthFirst => DateLayout::MonthFirst,
        }),
        onset,
        window: arguments.from.zip(arguments.until).map(|(from, until)| Window { from, until }),
        season: arguments.season,
        end: match arguments.end {
            End::Rainless => EndRule::RAINLESS,
            End::SoilStore => EndRule::SOIL_STORE,
        },
        end_from: arguments.end_from,
        outlook: arguments.outlook.map(Chances::OfOnset).or(arguments.outlook_rain.map(Chances::OfTotal)),
    })?;
    if arguments.json {
        super::print_json(&serde_json::json!(rains))
    } else {
        super::print(&in_words(&rains))
    }
}

/// Dekads that the drawing of a season shows: ten months.
const DEKADS: usize = 30;

/// The seasons as a table, what they say together, the remarks last.
fn in_words(rains: &Rains) -> String {
    let rule = &rains.rule;
    let mut text =
        format!("Onset ({}): {}, looked for from {} to {}\n", rule.onset, rule.asks, rule.from, rule.until);
    let _ = writeln!(text, "End ({}): looked for from {}\n", rule.end, rule.end_from);
    let _ = writeln!(
        text,
        "YEAR  ONSET       END         DAYS  DRY SPELL  {:<DEKADS$}  FALSE STARTS",
        format!("DEKADS FROM {}", rule.from)
    );
    for season in &rains.years {
        let date = |date: Option<NaiveDate>, open: bool, none: &str| match date {
            Some(date) => date.to_string(),
            None => if open { "open" } else { none }.to_owned(),
        };
        let number = |number: Option<i64>| number.map_or("–".to_owned(), |number| number.to_string());
        let starts: Vec<String> = season.false_starts.iter().map(ToString::to_string).collect();
        let from = format!("{}-{}", season.year, rule.from).parse();
        let drawn = match from {
            Ok(from) if !season.onset_unknown => super::band::rains(from, season.onset, season.end, DEKADS),
            _ => String::new(),
        };
        let line = format!(
            "{:<5} {:<11} {:<11} {:>4}  {:>9}  {drawn:<DEKADS$}  {}",
            season.year,
            date(season.onset, season.onset_unknown, "none"),
            date(season.end, season.end_between.is_some(), "–"),
            number(season.length_days),
            number(season.longest_dry_spell_days.map(i64::from)),
            starts.join(", ")
        );
        let _ = writeln!(text, "{}", line.trim_end());
    }
    open_years(&rains.years, &mut text);
    onset_in_words(&rains.onset, &mut text);
    text.push('\n');
    planting_delay_table(&rains.planting_delays, &mut text);
    let _ = writeln!(text, "\nAverages of past years are no forecast.");
    if !rains.findings.is_empty() {
        text.push('\n');
        for finding in &rains.findings {
            let _ = writeln!(text, "{}", super::hints::in_words(finding));
        }
    }
    text
}

/// What missing days leave open, year by year.
fn open_years(years: &[Season], text: &mut String) {
    let mut lines = Vec::new();
    for season in years {
        let mut open = Vec::new();
        let days = |of: Between<NaiveDate>, beyond: &str| match of.to {
            Some(to) => format!("between {} and {to}", of.from),
            None => format!("{} or later{beyond}", of.from),
        };
        open.extend(season.onset_between.map(|of| format!("onset {}", days(of, ", or never"))));
        open.extend(season.end_between.map(|of| format!("end {}", days(of, ""))));
        open.extend(season.longest_dry_spell_days_between.map(|of| {
            let to = of.to.map_or(String::new(), |to| format!(" to {to}"));
            format!("longest dry spell {}{to} days", of.from)
        }));
        if !open.is_empty() {
            lines.push(format!("{:<5} {}", season.year, open.join("; ")));
        }
    }
    if !lines.is_empty() {
        let _ =
            writeln!(text, "\nLeft open by missing days, or by where the record ends:\n{}", lines.join("\n"));
    }
}

/// What the seasons say together.
fn onset_in_words(onset: &Outlook, text: &mut String) {
    let day = |day: &Option<MonthDay>| day.map_or("–".to_owned(), |day| day.to_string());
    let _ = writeln!(
        text,
        "\nThe rains may begin from {}, usually about {}, in most years by {}: in 20, 50 and 80 % of the years with an onset they had begun by then.",
        day(&onset.p20),
        day(&onset.p50),
        day(&onset.p80)
    );
    if let Some(share) = onset.none_share {
        let _ = writeln!(
            text,
            "They never began in {:.0} % of the {} years that could be judged.",
            share * 100.0,
            onset.judged_years
        );
    }
    if onset.open_years > 0 {
        let years = if onset.open_years == 1 { "year" } else { "years" };
        let _ = write!(text, "Missing days leave {} more {years} open.", onset.open_years);
        if let Some(bounds) = onset.between {
            let days = |of: Between<MonthDay>| format!("{} to {}", of.from, day(&of.to));
            let _ = write!(
                text,
                " Whatever fell on them, the three days lie within {}, {} and {}.",
                days(bounds.p20),
                days(bounds.p50),
                days(bounds.p80)
            );
        }
        text.push('\n');
    }
    let way = |days: f64| format!("{:.1} days {}", days.abs(), if days < 0.0 { "earlier" } else { "later" });
    match (onset.trend_days_per_decade, onset.trend_between) {
        (Some(trend), Some(Between { from, to: Some(to) })) => {
            let clear = if onset.trend_clear == Some(true) { "" } else { "no clear trend; " };
            let (from, to) = (way(from), way(to));
            let _ = writeln!(
                text,
                "Trend: {clear}{} in ten years, with 95 % between {from} and {to}.",
                way(trend)
            );
        }
        _ => {
            let least = Slope::LEAST_YEARS;
            let _ = writeln!(text, "Trend: not told from fewer than {least} years with an onset.");
        }
    }
}

/// What waiting costs and saves, as a table with bars.
pub(super) fn planting_delay_table(delays: &[PlantingDelay], text: &mut String) {
    const BAR: f64 = 20.0;
    let _ = writeln!(text, "Planting on the first wet window from a day on, whatever comes after it:\n");
    let _ = writeln!(text, "FROM   YEARS PLANTED  FALSE STARTS                  DAYS OF RAIN LEFT (MEDIAN)");
    let most = delays.iter().filter_map(|row| row.median_days_left).fold(1.0, f64::max);
    let bar = |share: f64| "█".repeat((share * BAR).round() as usize);
    for row in delays {
        let share = row.false_start_share.map_or("–".to_owned(), |share| format!("{:.0} %", share * 100.0));
        let left = row.median_days_left.map_or("–".to_owned(), |days| format!("{:.0}", days.floor()));
        let planted = format!("{} of {}", row.planted_years, row.years);
        let line = format!(
            "{:<6} {planted:>13}  {share:>6} {:<20}  {left:>4} {}",
            row.from.to_string(),
            bar(row.false_start_share.unwrap_or(0.0)),
            bar(row.median_days_left.unwrap_or(0.0) / most)
        );
        let _ = writeln!(text, "{}", line.trim_end());
    }
}
