//! The rules by which rains are found, each with its source.

use super::analysis::EndRule;
use super::onset::OnsetRule;
use super::trend::Slope;

/// Rules for the onset of the rains, each with its source.
impl OnsetRule {
    /// A rain day has at least 1 mm (common in climate services; one guide has 0.85 mm).
    pub const RAIN_DAY_MM: f64 = 1.0;
    /// 20 mm in 3 days, then no dry spell over 7 days in 30 (Sivakumar 1988, Agric. For. Meteorol. 42:295, second-hand).
    pub const THREE_DAY: OnsetRule = OnsetRule::Total {
        name: "three-day",
        total_mm: 20.0,
        days: 3,
        rain_days: 1,
        look_ahead: 30,
        dry_spell: 7,
        rain_day_mm: 1.0,
    };
    /// 20 mm in 3 days, no look-ahead (R-Instat Climatic Guide ch. 7).
    pub const FIRST_TOTAL: OnsetRule = OnsetRule::Total {
        name: "first-total",
        total_mm: 20.0,
        days: 3,
        rain_days: 1,
        look_ahead: 0,
        dry_spell: 0,
        rain_day_mm: 1.0,
    };
    /// 20 mm in 3 days, then no dry spell over 9 days in 21 (R-Instat Climatic Guide ch. 7).
    pub const THREE_DAY_21: OnsetRule = OnsetRule::Total {
        name: "three-day-21",
        total_mm: 20.0,
        days: 3,
        rain_days: 1,
        look_ahead: 21,
        dry_spell: 9,
        rain_day_mm: 1.0,
    };
    /// 25 mm in 5 days, at least 3 of them rain days (R-Instat Climatic Guide ch. 7).
    pub const FIVE_DAY: OnsetRule = OnsetRule::Total {
        name: "five-day",
        total_mm: 25.0,
        days: 5,
        rain_days: 3,
        look_ahead: 0,
        dry_spell: 0,
        rain_day_mm: 1.0,
    };
    /// 25 mm in a dekad, then 20 mm over the next two (attributed to FAO, found on a wiki).
    pub const DEKAD: OnsetRule = OnsetRule::Dekad { total_mm: 25.0, next_two_mm: 20.0 };
}

/// Rules for the end of the rains (R-Instat Climatic Guide ch. 7; Sivakumar 1988, second-hand).
impl EndRule {
    /// 20 rainless days.
    pub const RAINLESS: EndRule = EndRule::Rainless { days: 20 };
    /// A soil store of 100 mm that loses 5 mm a day.
    pub const SOIL_STORE: EndRule = EndRule::SoilStore { capacity_mm: 100.0, loss_mm: 5.0 };
}

/// When a trend is told.
impl Slope {
    /// From 20 years with an onset on (practice, no source: Kendall's statistic is nearly normal from about 10 values on, and
    /// climate services describe a climate by 30 years, both from memory).
    pub const LEAST_YEARS: usize = 20;
}
