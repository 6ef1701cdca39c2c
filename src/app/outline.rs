//! A plan in a pack's words, as short as can be.

use std::collections::BTreeMap;
use std::path::Path;

use chrono::NaiveDate;

use super::{Data, Error, Overrides, Plan, ReadCase, StepKind};
use crate::guidance::shapes::{SeasonBand, Shapes};
use crate::guidance::{Subject, tell};
use crate::language::Label;
use crate::plan::DateSpan;
use crate::sheet::SheetError;

/// The season at a glance, in a pack's words.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Outline {
    /// Each step's title, as on a sheet.
    pub titles: BTreeMap<StepKind, String>,
    /// The first day that is shown.
    pub from: NaiveDate,
    /// The last day that is shown.
    pub to: NaiveDate,
    /// What lies where: in sand, in the bed, in the field.
    pub parts: Vec<OutlinePart>,
    /// Days to know, each with its name and sign.
    pub days: Vec<(String, char, NaiveDate)>,
}

/// A part of the season.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct OutlinePart {
    /// Its name.
    pub name: String,
    /// The sign that draws it.
    pub sign: char,
    /// Its days.
    pub when: DateSpan,
}

/// The plan of a case, with the outline of its season in a language.
///
/// # Errors
/// All problems of the case, of the records it names, or of the pack.
pub fn outline(
    data: &dyn Data,
    case: &Path,
    language: &str,
    overrides: Overrides,
) -> Result<(Plan, Outline), Error> {
    let read = ReadCase::from_disk(case)?.with(overrides)?;
    let plan = read.plan()?;
    let pack = read.pack(data, Some(language))?;
    let label = |id| pack.label(id, &[]).map_err(SheetError::from);
    let mut titles = BTreeMap::new();
    for statement in tell(&read.case, &plan) {
        if let Subject::Step(topic) = statement.subject {
            titles.insert(topic, pack.write_title(&statement).map_err(SheetError::from)?);
        }
    }
    let SeasonBand { from, to, store, checks, bed, field, harvest, rains, food } =
        Shapes::of(&read.case, &plan).season;
    let mut parts = Vec::new();
    for (id, sign, when) in [
        (Label::SeasonStore, '·', store),
        (Label::SeasonBed, '~', bed),
        (Label::SeasonField, '#', Some(field)),
    ] {
        if let Some(when) = when {
            parts.push(OutlinePart { name: label(id)?, sign, when });
        }
    }
    let mut days = Vec::new();
    for day in checks {
        days.push((titles.get(&StepKind::MonthlyCheck).cloned().unwrap_or_default(), '+', day));
    }
    for (id, sign, day) in [
        (Label::SeasonOnHarvest, 'H', harvest),
        (Label::SeasonOnRains, 'R', rains),
        (Label::SeasonOnFood, 'F', food),
    ] {
        days.push((label(id)?, sign, day));
    }
    Ok((plan, Outline { titles, from, to, parts, days }))
}
