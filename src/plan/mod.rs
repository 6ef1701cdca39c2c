//! Dates and amounts, each with its reason. Pure computation: the same case
//! gives the same plan, on any machine and at any time.

pub mod after;
mod amounts;
mod defaults;
pub mod field;
pub mod group;
mod make;
pub mod multiply;
pub mod overdue;
mod place;
pub mod progress;
mod quantities;
pub mod season;
pub mod seedbed;
mod steps;
pub mod store;
mod timeline;
mod units;

pub use amounts::{Amount, Amounts};
pub use defaults::{Assumptions, Basis, Default};
pub use make::{Planner, make};
pub use place::Place;
pub use quantities::{AmountRow, Choice, MessageValue, Quantity};
pub use steps::{Priority, StepKind};
pub use timeline::{DateSpan, SeasonInputs, Step, Timeline, WorkDone, lay_out};
pub use units::{
    Celsius, Centimetres, Kilograms, Kilopascals, Litres, Megajoules, Metres, MetresPerSecond, Millimetres,
    SquareMetres,
};

use chrono::NaiveDate;
use serde::Serialize;

use crate::finding::Finding;
use after::Variety;
use amounts::{plain_if_known, plain_number};
use field::{Field, Spacing};
use multiply::Sizing;
use season::{Rains, Risk};
use seedbed::{Bed, Climate, Source};
use store::{Container, Filled};

/// Whom a case is about.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Kind {
    /// One farm.
    Farm,
    /// A group with one store and one bed.
    Group {
        /// Its members.
        members: u32,
    },
    /// An area with the same rains; amounts are for a round number of roots.
    Zone,
}

/// What there is of roots, plants or bed, from which the plan is counted forward.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct AtHand {
    /// Roots fit to store.
    pub roots: Option<u32>,
    /// Healthy plants.
    pub plants: Option<u32>,
    /// Room for the bed.
    pub bed: Option<SquareMetres>,
    /// How cuttings will stand in the field.
    pub spacing: Spacing,
}

/// A local day by which people reckon.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Event {
    /// Its name, as people say it: printed, never spoken.
    pub name: String,
    /// When it is.
    pub date: NaiveDate,
}

/// What is known of a farm, a group or a rain zone.
#[derive(Debug, Clone, PartialEq)]
pub struct Case {
    /// Its name.
    pub name: String,
    /// Whom it is about.
    pub kind: Kind,
    /// Where.
    pub place: Place,
    /// What is known of the rains.
    pub rains: Rains,
    /// Which part of the onsets times the plan.
    pub risk: Risk,
    /// When this season's rains began, where they have.
    pub rains_began: Option<NaiveDate>,
    /// The day the old field is dug; in a zone, by the first farms.
    pub harvest: NaiveDate,
    /// In a zone, the day the last farms dig.
    pub harvest_until: Option<NaiveDate>,
    /// The field to plant; none for a zone, for a group with farms, and where the plan is counted forward.
    pub field: Option<Field>,
    /// The farms of a group.
    pub farms: Vec<group::Member>,
    /// What there is, where the plan is counted forward or limited by it.
    pub at_hand: Option<AtHand>,
    /// The fields of a zone's table.
    pub field_sizes: Vec<SquareMetres>,
    /// What the roots are sized for.
    pub sizing: Sizing,
    /// How sure, in percent, the cuttings are to suffice; the usual losses count where nothing is said.
    pub confidence_percent: Option<f64>,
    /// What the checks of the store have found, by date.
    pub store_checks: Vec<progress::Check>,
    /// The last step that is done, where somebody says.
    pub done: Option<StepKind>,
    /// Containers at hand; empty where the case names none.
    pub containers: Vec<Container>,
    /// Temperatures, where the case gives them.
    pub climate: Option<Climate>,
    /// Where the bed's water comes from, where the case says.
    pub source: Option<Source>,
    /// What is known of the variety.
    pub variety: Variety,
    /// Local days by which people reckon, such as a feast or a market.
    pub events: Vec<Event>,
    /// Language tag, where the case names one.
    pub language: Option<String>,
    /// The day it is, where the case says.
    pub today: Option<NaiveDate>,
    /// Defaults, and what the case puts in their place.
    pub assumptions: Assumptions,
}

impl Case {
    /// The fields to plant: a farm's one, or those of a group's farms.
    pub fn fields(&self) -> impl Iterator<Item = &Field> {
        self.field.iter().chain(self.farms.iter().map(|farm| &farm.field))
    }

    /// How cuttings stand, in the first field where there are more.
    pub fn spacing(&self) -> Spacing {
        let a = &self.assumptions;
        let usual = Spacing::Ridges { between: Metres(a.ridge_spacing_m), along: Metres(a.plant_spacing_m) };
        let field = self.fields().next().map(|field| field.spacing);
        field.or(self.at_hand.map(|at_hand| at_hand.spacing)).unwrap_or(usual)
    }
}

/// A value a plan rests on.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct UsedDefault {
    /// Name, as in a case's `[assumptions]`.
    pub name: &'static str,
    /// The value used.
    #[serde(serialize_with = "plain_number")]
    pub value: f64,
    /// The least that is found in practice or print, where that is known to differ.
    #[serde(skip_serializing_if = "Option::is_none", serialize_with = "plain_if_known")]
    pub low: Option<f64>,
    /// The most.
    #[serde(skip_serializing_if = "Option::is_none", serialize_with = "plain_if_known")]
    pub high: Option<f64>,
    /// Its unit.
    pub unit: &'static str,
    /// How well it is founded.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub basis: Option<Basis>,
    /// Where it comes from.
    pub source: &'static str,
}

/// A season's plan.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Plan {
    /// Name and version of this layout.
    pub schema: &'static str,
    /// The case's name.
    pub name: String,
    /// The place's name.
    pub place: String,
    /// The day the plan was asked for, where it was said.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub today: Option<NaiveDate>,
    /// The day the rains are expected, or the day they began.
    pub rains: NaiveDate,
    /// Why then.
    pub rains_why: String,
    /// The steps in order.
    pub steps: Vec<Step>,
    /// Steps whose days have passed.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub overdue: Vec<overdue::Overdue>,
    /// The amounts.
    pub amounts: Amounts,
    /// The filled containers, layer by layer.
    pub containers: Vec<Filled>,
    /// The bed.
    pub bed: Bed,
    /// The bed's water, dekad by dekad.
    pub water: Vec<seedbed::Period>,
    /// The cuts of vines from the bed.
    pub cuts: Vec<multiply::Cut>,
    /// The harvest to come.
    pub harvest: after::Harvest,
    /// What a serving holds, where the variety's carotene is known. Never a promise.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub vitamin_a: Option<after::VitaminA>,
    /// The shares of a group's farms.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub farms: Vec<group::Share>,
    /// A zone's table by field size.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub by_field: Vec<group::FieldSize>,
    /// What waiting with the planting costs and saves, where a rainfall record is known.
    #[serde(rename = "trade", skip_serializing_if = "Vec::is_empty")]
    pub planting_delays: Vec<season::PlantingDelay>,
    /// The checks of the store beside what was to be expected.
    #[serde(rename = "kept", skip_serializing_if = "Vec::is_empty")]
    pub store_checks: Vec<progress::Judged>,
    /// What somebody should know or look at.
    pub findings: Vec<Finding>,
    /// The values it rests on.
    pub defaults: Vec<UsedDefault>,
    /// The assumptions, for wordings.
    #[serde(skip)]
    pub assumptions: Assumptions,
    /// Whom it is for.
    #[serde(skip)]
    pub kind: Kind,
}

impl Plan {
    /// The layout's name and version.
    pub const SCHEMA: &'static str = "kabla-plan/1";

    /// The steps of one kind, in order of date.
    pub fn steps_of(&self, kind: StepKind) -> impl Iterator<Item = &Step> {
        self.steps.iter().filter(move |step| step.kind == kind)
    }
}
