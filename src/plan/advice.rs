//! What is good to know beside the steps, where a case calls for it; each with its source.

use super::case::Case;
use super::season::{PlantingDelay, Rains};
use super::state::State;
use super::steps::StepKind;
use super::worded::coded;

coded! {
    /// Advice beside a step.
    pub enum Advice {
        /// What to do with roots that are not stored.
        RootsNotChosen = "advice-roots-not-chosen",
        /// Where the containers stand.
        StoragePlace = "advice-storage-place",
        /// Tips of vines carry fewer weevils.
        CleanVines = "advice-clean-vines",
        /// Away from old fields and their residues.
        CleanField = "advice-clean-field" {
            /// Metres within which weevils come from other fields.
            metres: f64,
            /// One season of so many years on the same ground.
            years: f64,
        },
        /// Cuttings set deep.
        DeepPlanting = "advice-deep-planting" {
            /// Depth that did better, centimetres.
            deep_cm: f64,
            /// Depth that did worse, centimetres.
            shallow_cm: f64,
        },
        /// When no rain follows the planting.
        DryAfterPlanting = "advice-dry-after-planting" {
            /// Cuttings of 100 that establish where a dry week follows, at least.
            week_least: f64,
            /// At most.
            week_most: f64,
            /// The same of a dry fortnight, at least.
            fortnight_least: f64,
            /// At most.
            fortnight_most: f64,
        },
        /// Manure and weeding.
        FeedAndWeed = "advice-feed-and-weed",
        /// Children and orange-fleshed roots.
        Children = "advice-children" {
            /// What the children of a trial ate a day, grams.
            serving_g: f64,
            /// For so many days.
            days: f64,
        },
    }
}

impl Advice {
    /// The step that it belongs to.
    pub fn step(&self) -> StepKind {
        match self {
            Advice::RootsNotChosen => StepKind::Harvest,
            Advice::StoragePlace => StepKind::FillContainer,
            Advice::CleanVines => StepKind::CutForPlanting,
            Advice::CleanField { .. }
            | Advice::DeepPlanting { .. }
            | Advice::DryAfterPlanting { .. }
            | Advice::FeedAndWeed => StepKind::PlantField,
            Advice::Children { .. } => StepKind::FirstHarvest,
        }
    }

    /// Where it comes from.
    pub fn source(&self) -> &'static str {
        match self {
            Advice::RootsNotChosen => "common practice, no source",
            Advice::StoragePlace => {
                "common practice, no source; weevils of heap and box found: Atuna, Carey and Amagloh, 2017"
            }
            Advice::CleanVines => "found: Smit, 1997; Odongo and others, 2003; Wilson, 1988",
            Advice::CleanField { .. } => {
                "distance found: Smit, 1997; one season in three years is advice only, no evidence found"
            }
            Advice::DeepPlanting { .. } => {
                "found: Thompson and others, HortTechnology 2017, cuttings of 16 cm and more; against weevils advice only, no evidence found"
            }
            Advice::DryAfterPlanting { .. } => "from memory",
            Advice::FeedAndWeed => "common practice, no source",
            Advice::Children { .. } => {
                "found: van Jaarsveld and others, AJCN 2005, children of 5 to 10 years"
            }
        }
    }
}

/// The advice that a case calls for, in the order of the steps; none beside what is done.
pub(super) fn advice(case: &Case, now: &State) -> Vec<Advice> {
    let dry = Advice::DryAfterPlanting {
        week_least: 50.0,
        week_most: 85.0,
        fortnight_least: 15.0,
        fortnight_most: 60.0,
    };
    let children = Advice::Children { serving_g: 125.0, days: 53.0 };
    let all = [
        Some(Advice::RootsNotChosen),
        Some(Advice::StoragePlace),
        Some(Advice::CleanVines),
        Some(Advice::CleanField { metres: 200.0, years: 3.0 }),
        Some(Advice::DeepPlanting { deep_cm: 15.0, shallow_cm: 5.0 }),
        may_dry_out(&case.rains).then_some(dry),
        Some(Advice::FeedAndWeed),
        case.variety.carotene_ug.map(|_| children),
    ];
    let open = |advice: &Advice| now.steps_of(advice.step()).any(|step| !step.done);
    all.into_iter().flatten().filter(open).collect()
}

/// Whether a dry spell may follow the planting: a record may tell that none ever did.
fn may_dry_out(rains: &Rains) -> bool {
    let Rains::Observed(observed) = rains else { return true };
    let false_start = |delay: &PlantingDelay| delay.false_start_share.is_none_or(|share| share > 0.0);
    observed.planting_delays.is_empty() || observed.planting_delays.iter().any(false_start)
}
