//! What a message must say at every length, so that nobody gets hurt and no harvest is lost.

use super::{Caution, Subject};
use crate::catalogue::catalogue;
use crate::plan::StepKind;

catalogue! {
    /// A fact that no length of a message may lose. Packs hold it in terms of its name, such as `-bad-roots`, for the full
    /// text and `-bad-roots-sms` for another length; the messages refer to them.
    pub enum Fact: FactEntry {
        /// The subjects that carry it: in their text, in few words, in their text message and aloud.
        subjects: &'static [Subject],
        /// Its terms in written texts, the full one first. Spoken texts have that one.
        terms: &'static [&'static str],
    }
    /// Rotten, mouldy and holed roots: never eaten, fed to animals or planted; buried deep or burnt.
    BadRoots = "bad-roots" {
        subjects: &[
            Subject::Step(StepKind::Harvest),
            Subject::Step(StepKind::MonthlyCheck),
            Subject::Step(StepKind::LastCheck),
            Subject::Caution(Caution::Rot),
        ],
        terms: &["-bad-roots", "-bad-roots-short", "-bad-roots-sms"],
    };
    /// Nothing is taken from a sick or doubtful plant.
    TakeNothing = "take-nothing" {
        subjects: &[Subject::Step(StepKind::CheckPlants), Subject::Caution(Caution::Virus)],
        terms: &["-take-nothing", "-take-nothing-short"],
    };
    /// Sand comes from where rules allow it, never from a wet river or from near a steep bank.
    DryRiverbed = "dry-riverbed" {
        subjects: &[Subject::Step(StepKind::GatherSand), Subject::Caution(Caution::Riverbed)],
        terms: &["-dry-riverbed", "-dry-riverbed-short"],
    };
    /// Stored water is covered, and children are kept away from it.
    ChildrenWater = "children-water" {
        subjects: &[
            Subject::Step(StepKind::PrepareBed),
            Subject::Step(StepKind::WaterBed),
            Subject::Caution(Caution::WaterChildren),
        ],
        terms: &["-children-water", "-children-water-short"],
    };
    /// No water comes into the sand.
    KeepDry = "keep-dry" {
        subjects: &[Subject::Step(StepKind::FillContainer), Subject::Caution(Caution::StoreDry)],
        terms: &["-keep-dry", "-keep-dry-short"],
    };
    /// The field is planted in moist soil only.
    MoistSoil = "moist-soil" {
        subjects: &[Subject::Step(StepKind::PlantField), Subject::Caution(Caution::Forecast)],
        terms: &["-moist-soil", "-moist-soil-short"],
    };
}

impl Fact {
    /// Whether a caution that carries it is heard beside the step of this name.
    pub fn is_beside(self, step: &str) -> bool {
        let beside = |subject: &Subject, kind: StepKind| {
            matches!(subject, Subject::Caution(_)) && subject.is_beside(kind)
        };
        StepKind::from_name(step)
            .is_some_and(|kind| self.subjects().iter().any(|subject| beside(subject, kind)))
    }
}
