//! The season as a band of days.

use std::collections::BTreeMap;

use chrono::{Datelike, Months, NaiveDate};
use serde::Serialize;

use super::parts::{BAND, FONT_SIZE, Frame, LINE, Line, tenth};
use super::words::{Caption, Words};
use crate::guidance::shapes::SeasonBand;
use crate::language::{Direction, Label, WordingError};

#[derive(Serialize)]
pub(super) struct Band {
    width: f64,
    height: f64,
    #[serde(rename = "letters")]
    font_size: f64,
    /// The band's parts by what fills them: `store`, `bed`, `field`.
    parts: BTreeMap<&'static str, Frame>,
    /// First days of months.
    months: Vec<f64>,
    /// Monthly checks.
    checks: Vec<f64>,
    /// The day the sheet is made, where it is known.
    today: Option<f64>,
    /// From a day of the band down to its date.
    stems: Vec<Line>,
    /// Behind the dates, so that no stem runs through one.
    blanks: Vec<Frame>,
    top: f64,
    foot: f64,
}

/// The season from one harvest to the next, days to scale.
pub(super) fn draw(season: &SeasonBand, words: &Words<'_>) -> Result<(Band, Vec<Caption>), WordingError> {
    const HIGH: f64 = 26.0;
    let days = (season.to - season.from).num_days().max(1) as f64;
    let backwards = words.pack.direction() == Direction::RightToLeft;
    let x = |day: NaiveDate| {
        let share = ((day - season.from).num_days() as f64 / days).clamp(0.0, 1.0);
        let share = if backwards { 1.0 - share } else { share };
        tenth(2.0 + share * (BAND - 4.0))
    };
    let (top, foot) = (LINE + 4.0, LINE + 4.0 + HIGH);
    let mut parts = BTreeMap::new();
    // The parts' names over their middles, and the dates.
    let mut labels = Vec::new();
    for (name, label, span) in [
        ("store", Label::SeasonStore, season.store),
        ("bed", Label::SeasonBed, season.bed),
        ("field", Label::SeasonField, Some(season.field)),
    ] {
        let Some(span) = span else { continue };
        let (one, other) = (x(span.from), x(span.to));
        let (left, right) = (one.min(other), one.max(other));
        parts.insert(name, Frame { x: left, y: top, width: tenth(right - left), height: HIGH });
        let text = words.label(label)?;
        labels.push(Caption { x: tenth((left + right) / 2.0), y: LINE - 2.0, anchor: "middle", text });
    }
    let mut months = Vec::new();
    let mut day = season.from.with_day(1);
    while let Some(first) = day.filter(|first| *first <= season.to) {
        if first > season.from {
            months.push(x(first));
        }
        day = first.checked_add_months(Months::new(1));
    }
    let mut stems = Vec::new();
    let mut blanks = Vec::new();
    let mut told = vec![
        (Label::SeasonOnHarvest, season.harvest),
        (Label::SeasonOnRains, season.rains),
        (Label::SeasonOnFood, season.food),
    ];
    told.extend(season.bed.map(|bed| (Label::SeasonOnSprout, bed.from)));
    let today = season.today.filter(|day| (season.from..=season.to).contains(day));
    told.extend(today.map(|day| (Label::StepNow, day)));
    told.sort_by_key(|(_, day)| *day);
    let mut levels: Vec<(f64, f64)> = Vec::new();
    for (label, day) in told {
        let text = format!("{} {}", words.label(label)?, words.day(day)?);
        // As wide as its letters usually are; no font is asked.
        let half = text.chars().count() as f64 * FONT_SIZE * 0.3;
        let at = x(day).clamp(half, BAND - half);
        let level = levels.iter().position(|(from, to)| at - half > *to + 6.0 || at + half < *from - 6.0);
        let level = level.unwrap_or(levels.len());
        match levels.get_mut(level) {
            Some((from, to)) => (*from, *to) = (from.min(at - half), to.max(at + half)),
            None => levels.push((at - half, at + half)),
        }
        let y = tenth(foot + 8.0 + LINE * (level + 1) as f64);
        stems.push(Line { x1: x(day), y1: foot, x2: x(day), y2: tenth(y - FONT_SIZE) });
        blanks.push(Frame {
            x: tenth(at - half),
            y: tenth(y - FONT_SIZE * 0.9),
            width: tenth(2.0 * half),
            height: tenth(FONT_SIZE * 1.2),
        });
        labels.push(Caption { x: tenth(at), y, anchor: "middle", text });
    }
    let band = Band {
        width: BAND,
        height: tenth(foot + 14.0 + LINE * levels.len() as f64),
        font_size: FONT_SIZE,
        parts,
        months,
        checks: season.checks.iter().map(|day| x(*day)).collect(),
        today: today.map(x),
        stems,
        blanks,
        top,
        foot,
    };
    Ok((band, labels))
}
