//! Reference evapotranspiration by FAO Irrigation and Drainage Paper 56.

use std::f64::consts::PI;

use crate::plan::{Celsius, Kilopascals, Megajoules, Metres, MetresPerSecond, Millimetres};

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

/// Stefan–Boltzmann constant, MJ/K⁴/m²/day (below FAO-56 eq. 39).
const STEFAN_BOLTZMANN: f64 = 4.903e-9;
/// Albedo of the reference crop (eq. 38).
const ALBEDO: f64 = 0.23;
/// Degrees Celsius to kelvin, as FAO-56 rounds it.
const KELVIN: f64 = 273.16;

/// Vapour pressure of saturated air (eq. 11).
pub fn saturation_vapour_pressure(temperature: Celsius) -> Kilopascals {
    Kilopascals(0.6108 * (17.27 * temperature.0 / (temperature.0 + 237.3)).exp())
}

/// Actual vapour pressure from the relative humidities of a day's coldest and warmest hour, % (eq. 17).
pub fn vapour_pressure(tmax: Celsius, tmin: Celsius, humidity_max: f64, humidity_min: f64) -> Kilopascals {
    let cold = saturation_vapour_pressure(tmin).0 * humidity_max / 100.0;
    let warm = saturation_vapour_pressure(tmax).0 * humidity_min / 100.0;
    Kilopascals((cold + warm) / 2.0)
}

/// Actual vapour pressure from the mean relative humidity, % (eq. 19).
pub fn vapour_pressure_of_mean(tmax: Celsius, tmin: Celsius, humidity: f64) -> Kilopascals {
    let saturated = (saturation_vapour_pressure(tmax).0 + saturation_vapour_pressure(tmin).0) / 2.0;
    Kilopascals(humidity / 100.0 * saturated)
}

/// Wind 2 m above ground from wind at another height (eq. 47).
pub fn wind_at_two_metres(wind: MetresPerSecond, height: Metres) -> MetresPerSecond {
    MetresPerSecond(wind.0 * 4.87 / (67.8 * height.0 - 5.42).ln())
}

/// Solar radiation from hours of bright sunshine (eq. 35, with its standard coefficients).
pub fn solar_radiation(sunshine_hours: f64, daylight_hours: f64, extraterrestrial: Megajoules) -> Megajoules {
    let share = if daylight_hours > 0.0 { (sunshine_hours / daylight_hours).clamp(0.0, 1.0) } else { 0.0 };
    Megajoules((0.25 + 0.50 * share) * extraterrestrial.0)
}

/// Heat that a month stores in the soil, from its and the month before's mean temperature (eq. 44).
pub fn soil_heat_of_month(month: Celsius, before: Celsius) -> Megajoules {
    Megajoules(0.14 * (month.0 - before.0))
}

/// The weather of a day, as Penman–Monteith needs it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Weather {
    /// Greatest temperature.
    pub tmax: Celsius,
    /// Least temperature.
    pub tmin: Celsius,
    /// Actual vapour pressure.
    pub vapour_pressure: Kilopascals,
    /// Wind 2 m above ground.
    pub wind: MetresPerSecond,
    /// Radiation above the air.
    pub extraterrestrial: Megajoules,
    /// Radiation at the ground.
    pub solar: Megajoules,
    /// Heat that goes into the soil; 0 for a single day.
    pub soil_heat: Megajoules,
    /// Height above the sea.
    pub elevation: Metres,
}

impl Weather {
    /// Net radiation at the crop (eq. 37 to 40).
    pub fn net_radiation(&self) -> Megajoules {
        let clear = (0.75 + 2e-5 * self.elevation.0) * self.extraterrestrial.0;
        let cloudiness = if clear > 0.0 { (self.solar.0 / clear).min(1.0) } else { 1.0 };
        let fourth = |temperature: Celsius| (temperature.0 + KELVIN).powi(4);
        let emitted = STEFAN_BOLTZMANN * (fourth(self.tmax) + fourth(self.tmin)) / 2.0;
        let lost =
            emitted * (0.34 - 0.14 * self.vapour_pressure.0.max(0.0).sqrt()) * (1.35 * cloudiness - 0.35);
        Megajoules((1.0 - ALBEDO) * self.solar.0 - lost)
    }

    /// Reference evapotranspiration of a day by Penman–Monteith (eq. 6, with eq. 7, 8, 12 and 13).
    pub fn penman_monteith(&self) -> Millimetres {
        let mean = (self.tmax.0 + self.tmin.0) / 2.0;
        let pressure = 101.3 * ((293.0 - 0.0065 * self.elevation.0) / 293.0).powf(5.26);
        let psychrometric = 0.665e-3 * pressure;
        let slope = 4098.0 * saturation_vapour_pressure(Celsius(mean)).0 / (mean + 237.3).powi(2);
        let saturated =
            (saturation_vapour_pressure(self.tmax).0 + saturation_vapour_pressure(self.tmin).0) / 2.0;
        let deficit = (saturated - self.vapour_pressure.0).max(0.0);
        let energy = MM_PER_MEGAJOULE * slope * (self.net_radiation().0 - self.soil_heat.0);
        let air = psychrometric * 900.0 / (mean + 273.0) * self.wind.0 * deficit;
        let et0 = (energy + air) / (slope + psychrometric * (1.0 + 0.34 * self.wind.0));
        Millimetres(et0.max(0.0))
    }
}
