//! Dates and amounts, each with its reason. Pure computation: the same case
//! gives the same plan, on any machine and at any time.
//!
//! Nothing here is a sentence: reasons, remarks and what is late are codes with typed values, which
//! language packs word.

mod advice;
pub mod after;
mod amounts;
mod bed;
mod case;
mod defaults;
pub mod field;
mod fill;
pub mod group;
pub mod growth;
mod in_time;
mod limits;
mod make;
pub mod multiply;
mod of_farm;
pub mod overdue;
mod place;
mod planned;
pub mod progress;
mod quantities;
mod remarks;
pub mod season;
pub mod seedbed;
mod size;
mod span;
mod standing;
mod state;
mod steps;
pub mod store;
mod timeline;
pub(crate) mod units;
pub mod ways;
mod worded;
mod work;

pub use advice::Advice;
pub use amounts::{Amount, Amounts};
pub use case::{AtHand, Case, Event, Hands, Kind};
pub use defaults::{Assumptions, Basis, Default};
pub use growth::PlanBy;
pub use in_time::LateCut;
pub use make::{Planner, make};
pub use of_farm::plan_of_farm;
pub use place::Place;
pub use planned::{Plan, Together, UsedDefault};
pub use quantities::{AmountReason, AmountRow, Choice, MessageValue, Quantity};
pub use remarks::{Refusal, Remark, Severity, Years};
pub use span::DateSpan;
pub use state::State;
pub use steps::{Priority, StepKind};
pub use timeline::{DateReason, SeasonInputs, Step, Timeline, WorkDone, lay_out};
pub use units::{
    Celsius, Centimetres, Kilograms, Kilopascals, Litres, Megajoules, Metres, MetresPerSecond, Millimetres,
    SquareMetres,
};
pub use worded::{Value, Values, Worded, Wording};

/// Everything that a plan may say and that is to be worded, in order.
pub fn wordings() -> impl Iterator<Item = Wording> {
    let reasons = [
        season::OnsetAsks::WORDINGS,
        season::RainsReason::WORDINGS,
        season::LengthReason::WORDINGS,
        DateReason::WORDINGS,
        AmountReason::WORDINGS,
        after::HarvestReason::WORDINGS,
        Advice::WORDINGS,
    ];
    let remarks = [Remark::WORDINGS, Refusal::WORDINGS];
    let reasons = reasons.into_iter().flatten().copied();
    reasons.chain(overdue::wordings()).chain(remarks.into_iter().flatten().copied())
}
