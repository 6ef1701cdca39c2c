//! One function for each thing a user asks for.

mod clips;
mod delivery;
mod demo;
mod language;
mod message;
mod outline;
mod output;
mod plan_json;
mod rains;
mod remarks;
mod segment;
mod sheets;
mod speaking;
mod starting;
mod translating;

use std::fs;
use std::io;
use std::path::{Path, PathBuf};

use chrono::NaiveDate;

pub use crate::case::Starter;
pub use crate::data::{CacheFolder, Cached, Data, Embedded, Folder, Templates};
pub use crate::error::Error;
pub use crate::finding::{Code, Finding, Severity};
pub use crate::plan::season::Risk;
pub use crate::plan::{Plan, PlanBy, Quantity, StepKind};
pub use crate::sheet::{Paper, SheetError};
pub use crate::voice::VoiceError;
pub use crate::voice::record::import::Consent;
pub use crate::voice::record::quality::{Fault, Found, Verdict};
pub use crate::voice::write::Law;
pub use clips::{
    CheckRequest, ClipChecked, ClipsChecked, ImportRequest, Imported, Outcome, RecordingScript,
    ScriptRequest, check_clips, import, script,
};
pub use delivery::Channel;
pub use demo::demo;
pub use language::{SaidNumber, say};
pub use outline::{Band, BandPart, Block, Line, Noticed, Outline, Table, outline};
pub use output::write_files;
pub use rains::{
    Between, Chances, DateLayout, EndRule, MonthDay, OnsetRule, Outlook, PlantingDelay, Rains, RainsRequest,
    Season, Slope, Window, rains,
};
pub use segment::{MusicFiles, Segment, SegmentRequest, SegmentTime, season, segment};
pub use sheets::{BookletRequest, SheetFormat, SheetRequest, booklet, sheet};
pub use speaking::{ChosenClip, JointMeasures, MessageClips, SpeakRequest, explain, speak};
pub use starting::begin_case;
pub use translating::{
    Coverage, DayInWords, Doubt, PackState, check_packs, day_in_words, keep_sources, new_pack, review,
};

use crate::guidance::shapes::Shapes;
use crate::guidance::{self, Statement, Subject};
use crate::language::{ACCENTED, Pack, Pseudo, Status, WordingError};
use crate::plan::season::Rains as CaseRains;
use crate::plan::{Case, plan_of_farm};

/// How far a long piece of work has come: done, all, and what it is at.
pub type Progress<'a> = &'a mut dyn FnMut(usize, usize, &str);

/// A file that was made.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct Made {
    /// Where it is.
    pub path: PathBuf,
    /// What it is.
    pub what: String,
    /// Who it is for.
    pub audience: &'static str,
    /// How long it is.
    pub length: Length,
    /// What its user must know.
    pub remarks: Vec<String>,
}

/// How long a file is to read or to hear.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub enum Length {
    /// Not measured.
    Unmeasured,
    /// Printed pages.
    Pages(usize),
    /// Seconds of sound.
    Seconds(f64),
}

/// What is asked for on the spot and goes before what the case says.
#[derive(Debug, Clone, Copy, Default)]
pub struct Overrides {
    /// The day it is.
    pub today: Option<NaiveDate>,
    /// The last step that is done.
    pub done: Option<StepKind>,
    /// Which part of the onsets times the plan.
    pub risk: Option<Risk>,
    /// How sure, in percent, the cuttings are to suffice.
    pub confidence_percent: Option<f64>,
    /// By whose figures cuttings are counted.
    pub plan_by: Option<PlanBy>,
}

/// The plan of a case.
///
/// # Errors
/// All problems of the case and of the records it names.
pub fn plan(case: &Path, overrides: Overrides) -> Result<Plan, Error> {
    ReadCase::from_disk(case)?.with(overrides)?.plan()
}

/// The plan of a case, or of one farm of a group, as JSON in the layout `kabla-plan/2`.
///
/// # Errors
/// As [`plan`]; no farm of that name.
pub fn plan_json(case: &Path, overrides: Overrides, farm: Option<&str>) -> Result<serde_json::Value, Error> {
    ReadCase::from_disk(case)?.with(overrides)?.plan_json(farm)
}

/// A case as it was read.
struct ReadCase {
    name: String,
    text: String,
    case: Case,
    remarks: Vec<Finding>,
}

impl ReadCase {
    fn from_disk(path: &Path) -> Result<ReadCase, Error> {
        let name = path.display().to_string();
        let text = fs::read_to_string(path).map_err(|error| {
            let hint = match error.kind() {
                io::ErrorKind::NotFound => "check the name and the folder",
                io::ErrorKind::InvalidData => "save the case as text in UTF-8",
                _ => "a case is a text file that you may read",
            };
            Error::Input(vec![
                Finding::error(Code::CANNOT_READ, format!("cannot be read: {error}")).file(&name).hint(hint),
            ])
        })?;
        let folder = path.parent().unwrap_or(Path::new(""));
        ReadCase::from_text(name, &text, &|file| fs::read(folder.join(file)))
    }

    fn from_data(data: &dyn Data, path: &str) -> Result<ReadCase, Error> {
        let folder = path.rsplit_once('/').map_or("", |(folder, _)| folder);
        let read = |path: &str| data.read(path).ok_or_else(|| io::Error::from(io::ErrorKind::NotFound));
        let bytes = read(path).map_err(|error| {
            Error::Input(vec![
                Finding::error(Code::CANNOT_READ, format!("cannot be read: {error}"))
                    .file(path)
                    .hint("check the data folder"),
            ])
        })?;
        let text = String::from_utf8_lossy(&bytes);
        ReadCase::from_text(path.to_owned(), &text, &|file| {
            read(&format!("{folder}/{file}")).map(|bytes| bytes.into_owned())
        })
    }

    fn from_text(name: String, text: &str, open: crate::case::Open<'_>) -> Result<ReadCase, Error> {
        let (case, remarks) = crate::case::read(&name, text, open).map_err(Error::Input)?;
        Ok(ReadCase { name, text: text.to_owned(), case, remarks })
    }

    fn with(mut self, overrides: Overrides) -> Result<ReadCase, Error> {
        let case = &mut self.case;
        case.today = overrides.today.or(case.today);
        case.done = overrides.done.or(case.done);
        case.risk = overrides.risk.unwrap_or(case.risk);
        case.confidence_percent = overrides.confidence_percent.or(case.confidence_percent);
        case.plan_by = overrides.plan_by.unwrap_or(case.plan_by);
        let refused = |code, message: &str, argument, hint: &str| {
            let finding = Finding::error(code, message).file(&self.name).argument(argument);
            Err(Error::Input(vec![finding.hint(hint)]))
        };
        if overrides.risk.is_some() && !matches!(case.rains, CaseRains::Observed(_)) {
            return refused(
                Code::NO_USE,
                "a risk needs a rainfall record, and the case has none",
                "risk",
                "name a rainfall_record in [season], or choose no risk",
            );
        }
        if case.done.is_some() && case.today.is_none() {
            return refused(
                Code::MISSING_FIELD,
                "the step that is done needs a day beside it",
                "today",
                "give the day as well, such as 2027-11-08",
            );
        }
        Ok(self)
    }

    fn plan(&self) -> Result<Plan, Error> {
        crate::plan::make(&self.case).map_err(|refusal| remarks::refused(&self.name, &self.text, &refusal))
    }

    /// The case and its plan, or those of one farm of a group.
    fn planned(&self, farm: Option<&str>) -> Result<(Case, Plan), Error> {
        let plan = self.plan()?;
        let Some(name) = farm else { return Ok((self.case.clone(), plan)) };
        plan_of_farm(&self.case, &plan, name).ok_or_else(|| {
            let names: Vec<&str> = self.case.farms.iter().map(|farm| farm.name.as_str()).collect();
            let finding = Finding::error(Code::UNKNOWN_NAME, format!("no farm is called {name}"));
            let hint = match names.as_slice() {
                [] => "only a group whose [[farm]] tables name its farms has a plan for each".to_owned(),
                names => format!("the case names {}", names.join(", ")),
            };
            Error::Input(vec![finding.file(&self.name).argument("farm").hint(hint)])
        })
    }

    /// What is told to each farm of a group, and what is drawn for it.
    fn told_to_farms(&self) -> Result<Vec<(Vec<Statement>, Shapes)>, Error> {
        let plan = self.plan()?;
        let farms = self.case.farms.iter().filter_map(|farm| plan_of_farm(&self.case, &plan, &farm.name));
        Ok(farms.map(|(case, plan)| (guidance::tell(&case, &plan), Shapes::of(&case, &plan))).collect())
    }

    fn plan_json(&self, farm: Option<&str>) -> Result<serde_json::Value, Error> {
        let (_, plan) = self.planned(farm)?;
        Ok(plan_json::json(&self.remarks, &plan, &remarks::english()?)?)
    }

    /// A plan that a farmer can be told. One that leaves no root for the bed would tell of a bed of nothing.
    fn tellable(&self, farm: Option<&str>) -> Result<(Case, Plan), Error> {
        let (case, plan) = self.planned(farm)?;
        if plan.now.bed.roots > 0 {
            return Ok((case, plan));
        }
        let message =
            "by this plan no root is left for the bed, so there is nothing to tell a farmer to plant";
        let hint = "the plan itself says what can still be done, such as bedding the sound roots at once or vines from somebody else";
        let finding = Finding::error(Code::NOTHING_TO_PLANT, message).file(&self.name).hint(hint);
        Err(Error::Input(vec![finding]))
    }

    fn statements(&self) -> Result<Vec<Statement>, Error> {
        let (case, plan) = self.tellable(None)?;
        Ok(guidance::tell(&case, &plan))
    }

    /// What is told of the case, or to one farm of a group, and what is drawn of it.
    fn told(&self, farm: Option<&str>) -> Result<(Vec<Statement>, Shapes), Error> {
        let (case, plan) = self.tellable(farm)?;
        Ok((guidance::tell(&case, &plan), Shapes::of(&case, &plan)))
    }

    /// The pack of the language asked for, or else of the case's own.
    fn pack(&self, data: &dyn Data, language: Option<&str>) -> Result<Pack, Error> {
        let Some(tag) = language.or(self.case.language.as_deref()) else {
            let finding =
                Finding::error(Code::NO_LANGUAGE, "no language is named").file(&self.name).field("language");
            return Err(Error::Input(vec![finding.hint("write language = \"…\" in the case")]));
        };
        load_pack(data, tag)
    }
}

/// The pack of a language, or the accented one.
fn load_pack(data: &dyn Data, tag: &str) -> Result<Pack, Error> {
    // Made from English on the spot: to look for text that no pack has.
    let pseudo = Pseudo::new(data);
    let data: &dyn Data = if tag == ACCENTED { &pseudo } else { data };
    Pack::load(data, tag).map_err(Error::Input)
}

/// What a plan leads to, in the words in which it is told to farmers.
fn led_to(pack: &Pack, statements: &[Statement]) -> Result<Vec<String>, WordingError> {
    let consequences = statements.iter().filter(|of| matches!(of.subject, Subject::Consequence(_)));
    consequences.map(|consequence| pack.write_title(consequence)).collect()
}

/// What the users of anything in the pack's words must know.
fn remarks_on(pack: &Pack) -> Vec<String> {
    let draft = (pack.status() == Status::Draft)
        .then(|| format!("{}: draft wording, no fluent speaker has read it", pack.name()));
    draft.into_iter().collect()
}
