//! From planting to the harvest: when roots are ripe, what the field may give.
//! None of it is a promise.

use chrono::{Days, NaiveDate};

use super::defaults::Assumptions;
use super::span::DateSpan;
use super::units::{Kilograms, SquareMetres};
use super::worded::coded;

/// How long a variety grows.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Maturity {
    /// 90 to 105 days by default.
    Early,
    /// 120 to 135 days by default.
    Medium,
    /// 150 to 180 days by default.
    Late,
}

impl Maturity {
    /// Name, as in cases and plans.
    pub fn name(self) -> &'static str {
        match self {
            Maturity::Early => "early",
            Maturity::Medium => "medium",
            Maturity::Late => "late",
        }
    }
}

/// What is known of the variety.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Variety {
    /// How long it grows.
    pub maturity: Option<Maturity>,
    /// β-carotene, µg in 100 g of fresh root.
    pub carotene_ug: Option<f64>,
}

impl Variety {
    /// Days from planting to the first ripe roots and to the last; where the
    /// class is not known, those of orange-fleshed varieties at large.
    pub fn days(&self, assumptions: &Assumptions) -> (f64, f64) {
        let a = assumptions;
        match self.maturity {
            None => (a.first_harvest_days_first, a.first_harvest_days_last),
            Some(Maturity::Early) => (a.early_maturity_days_first, a.early_maturity_days_last),
            Some(Maturity::Medium) => (a.medium_maturity_days_first, a.medium_maturity_days_last),
            Some(Maturity::Late) => (a.late_maturity_days_first, a.late_maturity_days_last),
        }
    }
}

coded! {
    /// Why the harvest is when it is, and so large.
    pub enum HarvestReason {
        /// When roots are ripe, and how long they may wait.
        Ripe = "why-harvest-ripe" {
            /// How long the variety grows, early, medium, late or unknown: chooses words.
            maturity: &'static str,
            /// Days from planting to the first ripe roots.
            least_days: f64,
            /// Days from planting to the last ripe roots.
            most_days: f64,
            /// Days that ripe roots may stay in the ground.
            within_days: f64,
        },
        /// The field by what others bring home.
        Yield = "why-yield" {
            /// The field, square metres.
            area_m2: SquareMetres,
            /// Farmers' usual yield, tonnes on a hectare.
            low: f64,
            /// The yield of good practice, tonnes on a hectare.
            high: f64,
        },
    }
}

/// The harvest to come.
#[derive(Debug, Clone, PartialEq)]
pub struct Harvest {
    /// The maturity class, where the case names one.
    pub maturity: Option<&'static str>,
    /// First sensible day.
    pub first: NaiveDate,
    /// Last sensible day.
    pub last: NaiveDate,
    /// Why these days.
    pub why: HarvestReason,
    /// What the whole field gives at farmers' usual yields.
    pub yield_low: Option<Kilograms>,
    /// What it gives at the lower end of good practice.
    pub yield_high: Option<Kilograms>,
    /// Where these come from.
    pub yield_why: Option<HarvestReason>,
}

/// The harvest of what is planted in `planting`.
pub fn harvest(
    planting: DateSpan,
    area: Option<SquareMetres>,
    variety: &Variety,
    assumptions: &Assumptions,
) -> Harvest {
    let a = assumptions;
    let (ripe, ripe_last) = variety.days(a);
    let after = |day: NaiveDate, days: f64| {
        day.checked_add_days(Days::new(days.max(0.0).round() as u64)).unwrap_or(day)
    };
    // A tonne on a hectare is 0.1 kg on a square metre; told in whole kilograms, rounded down.
    let kilograms = |tonnes: f64| area.map(|area| Kilograms((area.0 * tonnes / 10.0 + 1e-9).floor()));
    Harvest {
        maturity: variety.maturity.map(Maturity::name),
        first: after(planting.from, ripe),
        last: after(planting.to, ripe_last + a.harvest_within_days),
        why: HarvestReason::Ripe {
            maturity: variety.maturity.map_or("unknown", Maturity::name),
            least_days: ripe,
            most_days: ripe_last,
            within_days: a.harvest_within_days,
        },
        yield_low: kilograms(a.yield_low_t_per_ha),
        yield_high: kilograms(a.yield_high_t_per_ha.max(a.yield_low_t_per_ha)),
        yield_why: area.map(|area_m2| HarvestReason::Yield {
            area_m2,
            low: a.yield_low_t_per_ha,
            high: a.yield_high_t_per_ha,
        }),
    }
}

/// What a serving holds of vitamin A, where the variety's carotene is known.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct VitaminA {
    /// Retinol activity equivalents in 100 g of fresh root, µg.
    pub rae_ug_per_100g_fresh: f64,
    /// The serving, g.
    pub serving_g: f64,
    /// Retinol activity equivalents in a boiled serving, µg.
    pub rae_ug_per_serving_boiled: f64,
    /// The part of what a child of 1 to 3 years should eat a day (300 µg).
    pub share_of_need_age_1_to_3: f64,
    /// The part of what a child of 4 to 8 years should eat a day (400 µg).
    pub share_of_need_age_4_to_8: f64,
}

/// Recommended intakes a day, µg of retinol activity equivalents (IOM).
const NEED_AGE_1_TO_3: f64 = 300.0;
const NEED_AGE_4_TO_8: f64 = 400.0;

/// Vitamin A from a variety's carotene; `None` where it is not known.
pub fn vitamin_a(variety: &Variety, assumptions: &Assumptions) -> Option<VitaminA> {
    let a = assumptions;
    let fresh = variety.carotene_ug? / a.carotene_per_rae_ug;
    let boiled = fresh * a.carotene_kept_share * a.serving_g / 100.0;
    Some(VitaminA {
        rae_ug_per_100g_fresh: fresh,
        serving_g: a.serving_g,
        rae_ug_per_serving_boiled: boiled,
        share_of_need_age_1_to_3: boiled / NEED_AGE_1_TO_3,
        share_of_need_age_4_to_8: boiled / NEED_AGE_4_TO_8,
    })
}
