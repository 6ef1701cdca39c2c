//! From planting to the harvest: when roots are ripe, what the field may give.
//! None of it is a promise.

use chrono::{Days, NaiveDate};
use serde::Serialize;

use super::{Assumptions, DateSpan, Kilograms, SquareMetres};

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

/// The harvest to come.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Harvest {
    /// The maturity class, where the case names one.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub maturity: Option<&'static str>,
    /// First sensible day.
    pub first: NaiveDate,
    /// Last sensible day.
    pub last: NaiveDate,
    /// Why these days.
    pub why: String,
    /// What the whole field gives at farmers' usual yields.
    #[serde(rename = "yield_low_kg", skip_serializing_if = "Option::is_none")]
    pub yield_low: Option<Kilograms>,
    /// What it gives at the lower end of good practice.
    #[serde(rename = "yield_high_kg", skip_serializing_if = "Option::is_none")]
    pub yield_high: Option<Kilograms>,
    /// Where these come from.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub yield_why: String,
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
    let of_class =
        variety.maturity.map_or("orange-fleshed".to_owned(), |class| format!("{}-maturing", class.name()));
    Harvest {
        maturity: variety.maturity.map(Maturity::name),
        first: after(planting.from, ripe),
        last: after(planting.to, ripe_last + a.harvest_within_days),
        why: format!(
            "{of_class} varieties are ripe {ripe} to {ripe_last} days after planting; within {} days after that, as weevil damage grows with age",
            a.harvest_within_days
        ),
        yield_low: kilograms(a.yield_low_t_per_ha),
        yield_high: kilograms(a.yield_high_t_per_ha.max(a.yield_low_t_per_ha)),
        yield_why: area.map_or_else(String::new, |area| {
            format!(
                "{area} at {} to {} t/ha, from farmers' usual yields to good practice; a dry or sick season gives less, or nothing",
                a.yield_low_t_per_ha, a.yield_high_t_per_ha
            )
        }),
    }
}

/// What a serving holds of vitamin A, where the variety's carotene is known.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
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
