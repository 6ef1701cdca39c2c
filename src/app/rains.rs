//! The rainy seasons of a record.

use std::fs;
use std::path::Path;

use serde::Serialize;

use super::{Error, Finding};
use crate::case::read_rain;
use crate::plan::season::SeasonRule;

pub use crate::case::DateLayout;
pub use crate::plan::season::{EndRule, MonthDay, OnsetRule, Window};
use crate::plan::season::{Outlook, Season, TradeRow};

/// What is asked of a record.
#[derive(Debug, Clone, Copy)]
pub struct RainsRequest<'a> {
    /// The record's file.
    pub record: &'a Path,
    /// Day or month first, where the rows do not tell.
    pub layout: Option<DateLayout>,
    /// When the rains have begun.
    pub onset: OnsetRule,
    /// Where that is looked for.
    pub window: Window,
    /// When they have ended.
    pub end: EndRule,
    /// From when on that is looked for; the last day of the window where nothing is said.
    pub end_from: Option<MonthDay>,
    /// Chances of an early, a usual and a late onset by a seasonal outlook.
    pub terciles: Option<[f64; 3]>,
}

/// The seasons of a record.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Rains {
    /// Name and version of this layout.
    pub schema: &'static str,
    /// The rules in words.
    pub rule: RuleInWords,
    /// One entry a year.
    pub years: Vec<Season>,
    /// What they say together.
    pub onset: Outlook,
    /// What waiting costs and saves.
    pub trade: Vec<TradeRow>,
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
        let finding = Finding::error(format!("cannot be read: {error}")).file(&name);
        Error::Input(vec![finding.hint("check the name and the folder")])
    })?;
    let (record, findings) = read_rain(&name, &bytes, request.layout);
    if findings.iter().any(Finding::is_error) {
        return Err(Error::Input(findings));
    }
    let rule = SeasonRule {
        onset: request.onset,
        window: request.window,
        end: request.end,
        end_from: request.end_from.unwrap_or(request.window.until),
    };
    let years = rule.seasons(&record);
    Ok(Rains {
        schema: "kabla-rains/1",
        rule: RuleInWords {
            onset: rule.onset.name(),
            asks: rule.onset.to_string(),
            from: rule.window.from.to_string(),
            until: rule.window.until.to_string(),
            end: rule.end.name(),
            end_from: rule.end_from.to_string(),
        },
        onset: rule.outlook(&years, request.terciles),
        trade: rule.trade(&record),
        years,
        findings,
    })
}
