//! The rainy seasons of a record.

use std::fs;
use std::path::Path;

use serde::Serialize;

use super::{Code, Error, Finding, remarks};
pub use crate::case::DateLayout;
use crate::case::{found_in_words, read_rain};
pub use crate::plan::season::PlantingDelay;
pub use crate::plan::season::{Between, Outlook, Season, Slope};
pub use crate::plan::season::{Chances, EndRule, MonthDay, OnsetRule, Window};
use crate::plan::season::{SeasonRule, WetSeason, end_search_from, wet_seasons};

/// What is asked of a record.
#[derive(Debug, Clone, Copy)]
pub struct RainsRequest<'a> {
    /// The record's file.
    pub record: &'a Path,
    /// Day or month first, where the rows do not tell.
    pub layout: Option<DateLayout>,
    /// When the rains have begun.
    pub onset: OnsetRule,
    /// Where that is looked for; found from the record's mean year where nothing is said.
    pub window: Option<Window>,
    /// Which of the seasons found, from 1 in order of the calendar; the one with most rain where nothing is said.
    pub season: Option<u32>,
    /// When they have ended.
    pub end: EndRule,
    /// From when on that is looked for; the middle of the rainy season where nothing is said.
    pub end_from: Option<MonthDay>,
    /// Chances by a seasonal outlook.
    pub outlook: Option<Chances>,
}

/// The seasons of a record.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Rains {
    /// Name and version of this layout.
    pub schema: &'static str,
    /// The rules in words.
    pub rule: RuleInWords,
    /// The rainy seasons of the mean year, where the window was not named.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub seasons_found: Vec<WetSeason>,
    /// One entry a year.
    pub years: Vec<Season>,
    /// What they say together.
    pub onset: Outlook,
    /// What waiting costs and saves.
    #[serde(rename = "trade")]
    pub planting_delays: Vec<PlantingDelay>,
    /// Remarks on the record.
    pub findings: Vec<Finding>,
}

/// The rules in words.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct RuleInWords {
    /// The onset rule's name.
    pub onset: &'static str,
    /// What it asks for.
    pub asks: String,
    /// First day of the window, month-day.
    pub from: String,
    /// Last day of the window, month-day.
    pub until: String,
    /// The end rule's name.
    pub end: &'static str,
    /// From when on the end is looked for, month-day.
    pub end_from: String,
}

/// Tells the seasons of a record.
///
/// # Errors
/// All problems of the record, each with its row.
pub fn rains(request: &RainsRequest<'_>) -> Result<Rains, Error> {
    let name = request.record.display().to_string();
    let bytes = fs::read(request.record).map_err(|error| {
        let finding = Finding::error(Code::CANNOT_READ, format!("cannot be read: {error}")).file(&name);
        Error::Input(vec![finding.hint("check the name and the folder")])
    })?;
    let (record, mut findings) = read_rain(&name, &bytes, request.layout);
    if findings.iter().any(Finding::is_error) {
        return Err(Error::Input(findings));
    }
    let mut seasons_found = Vec::new();
    let window = match request.window {
        Some(window) => window,
        None => {
            seasons_found = wet_seasons(&record);
            let chosen = match request.season {
                Some(season) => seasons_found.get((season as usize).saturating_sub(1)),
                None => seasons_found.iter().max_by(|one, other| one.mm.total_cmp(&other.mm)),
            };
            let hint = "name the first and last day of the year on which the rains may begin";
            let Some(chosen) = chosen else {
                let message = match seasons_found.len() {
                    0 => "the record is too short or too dry to tell its rainy seasons".to_owned(),
                    found => format!("the record has only {found} rainy season a year"),
                };
                return Err(Error::Input(vec![
                    Finding::error(Code::SHORT_RECORD, message).file(&name).hint(hint),
                ]));
            };
            let other = if seasons_found.len() > 1 { "choose another season, or " } else { "" };
            let note = Finding::note(Code::SEASON_TAKEN, found_in_words(chosen, &seasons_found)).file(&name);
            findings.push(note.hint(format!("{other}{hint}")));
            chosen.window
        }
    };
    let rule = SeasonRule {
        onset: request.onset,
        window,
        end: request.end,
        end_from: request.end_from.unwrap_or_else(|| end_search_from(&record, &window)),
    };
    let years = rule.seasons(&record);
    let weights = request
        .outlook
        .map(|outlook| rule.weights(&record, &record.onsets(&rule.onset, &rule.window), outlook));
    Ok(Rains {
        schema: "kabla-rains/1",
        rule: RuleInWords {
            onset: rule.onset.name(),
            asks: remarks::english()?.write_reason(&rule.onset.asks())?,
            from: rule.window.from.to_string(),
            until: rule.window.until.to_string(),
            end: rule.end.name(),
            end_from: rule.end_from.to_string(),
        },
        onset: rule.outlook(&years, weights.as_deref()),
        planting_delays: rule.planting_delays(&record),
        seasons_found,
        years,
        findings,
    })
}
