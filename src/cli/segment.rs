//! `kabla segment`

use std::path::PathBuf;

use chrono::NaiveDate;
use clap::Args;

use super::overrides::OverrideArguments;
use super::progress::Bar;
use crate::app::{self, Data, Error, MusicFiles, SegmentRequest, SegmentTime};

#[derive(Debug, Args)]
pub(super) struct Arguments {
    /// The case, a TOML file: for radio, mostly a zone.
    case: PathBuf,
    /// Language tag, e.g. sw; the case's own where none is given.
    #[arg(long, value_name = "TAG")]
    language: Option<String>,
    #[command(flatten)]
    overrides: OverrideArguments,
    /// The week on air: any day from its Monday to its Sunday (year-month-day).
    #[arg(long, value_name = "DATE", requires = "fit", required_unless_present = "season")]
    week: Option<NaiveDate>,
    /// The length of the whole, with opening and closing: 180, 180s, 3m, 2m30s or 3:00.
    #[arg(long, value_name = "LENGTH", value_parser = length, requires = "week")]
    fit: Option<f64>,
    /// Instead of one segment, the plan of which segment airs in which week of the season.
    #[arg(long, conflicts_with_all = ["week", "opening", "closing", "music", "live"])]
    season: bool,
    /// The station's signature before the voice, a sound file.
    #[arg(long, value_name = "FILE")]
    opening: Option<PathBuf>,
    /// The station's signature after the voice.
    #[arg(long, value_name = "FILE")]
    closing: Option<PathBuf>,
    /// Music under the voice; it is cut, or comes again, as long as the voice needs.
    #[arg(long, value_name = "FILE")]
    music: Option<PathBuf>,
    /// How far the music lies below the voice, in dB.
    #[arg(long, value_name = "DB", value_parser = decibels, default_value = "20dB", requires = "music")]
    music_below: f64,
    /// Make no sound, but a script for a presenter who reads it live.
    #[arg(long)]
    live: bool,
    /// The recorded voice; the pack's own where none is given.
    #[arg(long, value_name = "NAME")]
    voice: Option<String>,
    /// Folder for what is made.
    #[arg(long, value_name = "DIR")]
    out: PathBuf,
}

/// From the shortest that has room for a sentence to an hour.
const SECONDS: std::ops::RangeInclusive<f64> = 5.0..=3_600.0;

/// Seconds of a length such as 180, 180s, 3m, 2m30s or 3:00.
fn length(text: &str) -> Result<f64, String> {
    let number = |text: &str| {
        text.parse::<f64>()
            .ok()
            .filter(|number| text.starts_with(|c: char| c.is_ascii_digit()) && *number >= 0.0)
    };
    let both = |minutes: &str, seconds: &str| {
        number(minutes).zip(number(seconds).filter(|seconds| *seconds < 60.0)).map(|(m, s)| m * 60.0 + s)
    };
    let bare = text.strip_suffix('s').unwrap_or(text);
    let seconds = match (text.split_once(':'), bare.split_once('m')) {
        (Some((minutes, seconds)), _) => both(minutes, seconds),
        (None, Some((minutes, ""))) if bare.len() == text.len() => {
            number(minutes).map(|minutes| minutes * 60.0)
        }
        (None, Some((minutes, seconds))) => both(minutes, seconds),
        (None, None) => number(bare),
    };
    seconds
        .filter(|seconds| SECONDS.contains(seconds))
        .ok_or_else(|| "write 180s, 3m, 2m30s or 3:00, from 5 seconds to an hour".to_owned())
}

/// Decibels such as 18, 18dB or 18 dB.
fn decibels(text: &str) -> Result<f64, String> {
    let bare = text.strip_suffix("dB").unwrap_or(text).trim_end();
    let number = bare.parse::<f64>().ok().filter(|number| (6.0..=60.0).contains(number));
    number.ok_or_else(|| "write 18dB, from 6 to 60 dB".to_owned())
}

pub(super) fn run(data: &dyn Data, arguments: Arguments) -> Result<(), Error> {
    let Arguments {
        case,
        language,
        overrides,
        week,
        fit,
        opening,
        closing,
        music,
        music_below,
        live,
        voice,
        out,
        ..
    } = arguments;
    let time = week.zip(fit).map(|(week, seconds)| SegmentTime { week, seconds });
    let request = SegmentRequest {
        case: &case,
        overrides: overrides.into(),
        language: language.as_deref(),
        voice: voice.as_deref(),
        music: MusicFiles {
            opening: opening.as_deref(),
            closing: closing.as_deref(),
            bed: music.as_deref(),
            bed_below: music_below,
        },
        live,
        out: &out,
    };
    let Some(time) = time else { return super::table(&app::season(data, request)?) };
    let mut bar = Bar::new();
    let segment = app::segment(data, request, time, &mut bar.callback())?;
    drop(bar);
    super::table(&segment.made)?;
    match segment.missing {
        Some(missing) if !live => Err(missing),
        _ => Ok(()),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn lengths_are_read_as_people_write_them() {
        for (text, seconds) in [
            ("180", 180.0),
            ("180s", 180.0),
            ("3m", 180.0),
            ("3:00", 180.0),
            ("2m30s", 150.0),
            ("2m30", 150.0),
            ("52.3s", 52.3),
            ("0:52.3", 52.3),
        ] {
            assert_eq!(length(text), Ok(seconds), "{text}");
        }
        for text in [
            "", "s", "m", "3ms", "-5", "4", "nan", "inf", "2:60", "1:2:3", "3m:20", "90m", "1e3x", "+9",
            "3 m",
        ] {
            assert!(length(text).is_err(), "{text}");
        }
        assert_eq!((decibels("18dB"), decibels("18"), decibels("12.5 dB")), (Ok(18.0), Ok(18.0), Ok(12.5)));
        assert!(["", "dB", "3", "nan", "-18dB", "18LU"].into_iter().all(|text| decibels(text).is_err()));
    }
}
