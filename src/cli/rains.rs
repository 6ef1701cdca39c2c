//! `kabla rains`

use std::fmt::Write as _;
use std::path::PathBuf;

use clap::{Args, ValueEnum};

use crate::app::{
    self, Chances, DateLayout, EndRule, Error, MonthDay, OnsetRule, PlantingDelay, Rains, RainsRequest,
    Window,
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
    /// From when on the end is looked for; the last day of the window if not given.
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
        let date = |date: Option<chrono::NaiveDate>, none: &str| {
            date.map_or(none.to_owned(), |date| date.to_string())
        };
        let onset = date(season.onset, if season.onset_unknown { "unknown" } else { "none" });
        let number = |number: Option<i64>| number.map_or("–".to_owned(), |number| number.to_string());
        let starts: Vec<String> = season.false_starts.iter().map(ToString::to_string).collect();
        let line = format!(
            "{:<5} {onset:<11} {:<11} {:>4}  {:>9}  {}  {}",
            season.year,
            date(season.end, "–"),
            number(season.length_days),
            number(season.longest_dry_spell_days.map(i64::from)),
            format!("{}-{}", season.year, rule.from)
                .parse()
                .map_or(String::new(), |from| { super::band::rains(from, season.onset, season.end, DEKADS) }),
            starts.join(", ")
        );
        let _ = writeln!(text, "{}", line.trim_end());
    }
    let onset = &rains.onset;
    let day = |day: &Option<MonthDay>| day.map_or("–".to_owned(), |day| day.to_string());
    let _ = writeln!(
        text,
        "\nThe rains had begun by {} in 20 %, by {} in 50 % and by {} in 80 % of the years with an onset.",
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
    if let Some(trend) = onset.trend_days_per_decade {
        let way = if trend < 0.0 { "earlier" } else { "later" };
        let _ = writeln!(text, "Trend: {:.1} days {way} in ten years.", trend.abs());
    }
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

/// What waiting costs and saves, as a table with bars.
pub(super) fn planting_delay_table(delays: &[PlantingDelay], text: &mut String) {
    const BAR: f64 = 20.0;
    let _ = writeln!(text, "Planting on the first wet window from a day on, whatever comes after it:\n");
    let _ = writeln!(text, "FROM   YEARS PLANTED  FALSE STARTS                  DAYS OF RAIN LEFT (MEDIAN)");
    let most = delays.iter().filter_map(|row| row.median_days_left).fold(1.0, f64::max);
    let bar = |share: f64| "█".repeat((share * BAR).round() as usize);
    for row in delays {
        let share = row.false_start_share.map_or("–".to_owned(), |share| format!("{:.0} %", share * 100.0));
        let left = row.median_days_left.map_or("–".to_owned(), |days| format!("{days:.0}"));
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
