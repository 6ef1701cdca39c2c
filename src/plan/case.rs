//! What a plan is made from.

use std::borrow::Cow;

use chrono::NaiveDate;

use super::after::Variety;
use super::defaults::Assumptions;
use super::field::{Field, Spacing};
use super::group::Member;
use super::growth::PlanBy;
use super::multiply::Sizing;
use super::place::Place;
use super::progress::Check;
use super::season::{Rains, RainsEnd, Risk};
use super::seedbed::{Climate, Soil, Source};
use super::steps::StepKind;
use super::store::Container;
use super::units::{Celsius, Litres, Metres, SquareMetres, whole_down};

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
    /// Room for the bed, paths left out.
    pub bed: Option<SquareMetres>,
    /// Dry sand.
    pub sand: Option<Litres>,
    /// How cuttings will stand in the field.
    pub spacing: Spacing,
}

/// Who carries water.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Hands {
    /// How many.
    pub people: u32,
    /// Hours a day that each has for it.
    pub hours_per_day: f64,
}

impl Hands {
    /// Trips to the water that they make in a day.
    pub fn trips(&self, assumptions: &Assumptions) -> u32 {
        whole_down(f64::from(self.people) * self.hours_per_day * 60.0 / assumptions.minutes_per_trip)
    }
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
    /// When the rains end, where the case says it; a record tells it itself.
    pub rains_end: Option<RainsEnd>,
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
    pub farms: Vec<Member>,
    /// What there is, where the plan is counted forward or limited by it.
    pub at_hand: Option<AtHand>,
    /// The fields of a zone's table.
    pub field_sizes: Vec<SquareMetres>,
    /// What the roots are sized for.
    pub sizing: Sizing,
    /// By whose figures cuttings are counted.
    pub plan_by: PlanBy,
    /// How sure, in percent, the cuttings are to suffice; the usual losses count where nothing is said.
    pub confidence_percent: Option<f64>,
    /// What the checks of the store have found, by date.
    pub store_checks: Vec<Check>,
    /// The last step that is done, where somebody says.
    pub done: Option<StepKind>,
    /// Containers at hand; empty where the case names none.
    pub containers: Vec<Container>,
    /// Temperatures, where the case gives them.
    pub climate: Option<Climate>,
    /// The soil of the bed, where the case says.
    pub soil: Option<Soil>,
    /// Who carries the bed's water, where the case says.
    pub hands: Option<Hands>,
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

    /// The climate, or the usual temperatures of a dry season where the case gives none.
    pub fn climate_or_usual(&self) -> Cow<'_, Climate> {
        let a = &self.assumptions;
        let usual = || Climate::constant(Celsius(a.dry_season_tmax_c), Celsius(a.dry_season_tmin_c));
        self.climate.as_ref().map_or_else(|| Cow::Owned(usual()), Cow::Borrowed)
    }

    /// How cuttings stand, in the first field where there are more.
    pub fn spacing(&self) -> Spacing {
        let a = &self.assumptions;
        let usual = Spacing::Ridges { between: Metres(a.ridge_spacing_m), along: Metres(a.plant_spacing_m) };
        let field = self.fields().next().map(|field| field.spacing);
        field.or(self.at_hand.map(|at_hand| at_hand.spacing)).unwrap_or(usual)
    }
}
