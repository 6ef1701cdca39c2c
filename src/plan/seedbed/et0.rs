//! Reference evapotranspiration by FAO Irrigation and Drainage Paper 56.

use std::f64::consts::PI;

use crate::plan::{Celsius, Megajoules, Millimetres};

/// Solar constant, MJ/m²/min (FAO-56 eq. 21).
const SOLAR_CONSTANT: f64 = 0.0820;
/// Millimetres of water that one MJ/m² evaporates (FAO-56 eq. 20).
const MM_PER_MEGAJOULE: f64 = 0.408;

/// Inverse relative distance Earth–Sun on day `ordinal` of the year (eq. 23).
pub fn inverse_distance(ordinal: u32) -> f64 {
    1.0 + 0.033 * (2.0 * PI / 365.0 * f64::from(ordinal)).cos()
}

/// Solar declination in radians (eq. 24).
pub fn declination(ordinal: u32) -> f64 {
    0.409 * (2.0 * PI / 365.0 * f64::from(ordinal) - 1.39).sin()
}

/// Sunset hour angle in radians (eq. 25); 0 in polar night, π in polar day.
pub fn sunset_hour_angle(latitude_degrees: f64, ordinal: u32) -> f64 {
    let x = -latitude_degrees.to_radians().tan() * declination(ordinal).tan();
    x.clamp(-1.0, 1.0).acos()
}

/// Extraterrestrial radiation of a day (eq. 21). South is negative.
pub fn extraterrestrial_radiation(latitude_degrees: f64, ordinal: u32) -> Megajoules {
    let latitude = latitude_degrees.to_radians();
    let declination = declination(ordinal);
    let sunset = sunset_hour_angle(latitude_degrees, ordinal);
    let height =
        sunset * latitude.sin() * declination.sin() + latitude.cos() * declination.cos() * sunset.sin();
    Megajoules((24.0 * 60.0 / PI * SOLAR_CONSTANT * inverse_distance(ordinal) * height).max(0.0))
}

/// Daylight hours (eq. 34).
pub fn daylight_hours(latitude_degrees: f64, ordinal: u32) -> f64 {
    24.0 / PI * sunset_hour_angle(latitude_degrees, ordinal)
}

/// Reference evapotranspiration of a day by Hargreaves (eq. 52).
pub fn hargreaves(tmax: Celsius, tmin: Celsius, radiation: Megajoules) -> Millimetres {
    let mean = (tmax.0 + tmin.0) / 2.0;
    let range = (tmax.0 - tmin.0).max(0.0);
    Millimetres((0.0023 * (mean + 17.8) * range.sqrt() * MM_PER_MEGAJOULE * radiation.0).max(0.0))
}
