//! Crop coefficients of the bed by FAO Irrigation and Drainage Paper 56.

use super::super::{Assumptions, Millimetres};

/// The coefficient `day` days after planting by the stages of Table 11 and the
/// values of Table 12: level in the initial and middle stages, straight lines
/// between and after. After the late stage it stays at its end.
pub fn by_stage(day: f64, assumptions: &Assumptions) -> f64 {
    staged(day, assumptions.kc_initial, assumptions)
}

fn staged(day: f64, initial: f64, a: &Assumptions) -> f64 {
    let line = |from: f64, to: f64, share: f64| from + (to - from) * share.clamp(0.0, 1.0);
    let developed = a.kc_initial_days + a.kc_development_days;
    let ageing = developed + a.kc_middle_days;
    if day <= developed {
        line(initial, a.kc_middle, (day - a.kc_initial_days) / a.kc_development_days)
    } else {
        line(a.kc_middle, a.kc_end, (day - ageing) / a.kc_late_days)
    }
}

/// Water that light wettings leave within reach of the air, mm (annex 7).
const REACHED_BY_AIR: f64 = 10.0;

/// The coefficient of bare soil that is wetted lightly every `interval` days
/// (annex 7, which figure 29 is drawn from).
pub fn wet_soil(et0: Millimetres, interval: f64, assumptions: &Assumptions) -> f64 {
    if et0.0 <= 0.0 || interval <= 0.0 {
        return assumptions.wet_soil_kc;
    }
    let readily = (6.0 / et0.0.sqrt()).clamp(2.5, 7.0);
    let at_most = assumptions.wet_soil_kc * et0.0;
    let first = readily / at_most;
    if interval <= first {
        return assumptions.wet_soil_kc;
    }
    let slow = REACHED_BY_AIR - readily;
    let fallen = (-(interval - first) * at_most * (1.0 + readily / slow) / REACHED_BY_AIR).exp();
    (REACHED_BY_AIR - slow * fallen) / (interval * et0.0)
}

/// The coefficient of a bed in which vines are kept growing and cut: that of the crop up to its
/// middle stage, where the initial stage has at least that of the soil which the watering keeps wet.
pub fn of_bed(day: f64, et0: Millimetres, assumptions: &Assumptions) -> f64 {
    let grown = assumptions.kc_initial_days + assumptions.kc_development_days;
    let wet = wet_soil(et0, assumptions.water_every_days, assumptions);
    staged(day.min(grown), assumptions.kc_initial.max(wet), assumptions)
}
