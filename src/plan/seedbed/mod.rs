//! The watered bed in which the stored roots sprout.

pub mod et0;

use chrono::{Datelike, Days, NaiveDate};

use super::units::{round_up, whole_up};
use super::{Assumptions, Celsius, Litres, Metres, MetresPerSecond, Millimetres, Place, SquareMetres};

/// The usual weather of a place.
#[derive(Debug, Clone, PartialEq)]
pub struct Climate {
    /// Mean daily greatest temperature, one a month from January.
    pub tmax: [Celsius; 12],
    /// Mean daily least temperature, one a month from January.
    pub tmin: [Celsius; 12],
    /// Humidity, wind and sunshine, where they are known.
    pub air: Option<Air>,
}

/// What Penman–Monteith needs besides temperatures, one value a month from January.
#[derive(Debug, Clone, PartialEq)]
pub struct Air {
    /// Mean relative humidity, %.
    pub humidity: [f64; 12],
    /// Mean wind 2 m above ground.
    pub wind: [MetresPerSecond; 12],
    /// Mean hours of bright sunshine a day.
    pub sunshine_hours: [f64; 12],
}

impl Climate {
    /// The same temperatures all year.
    pub fn constant(tmax: Celsius, tmin: Celsius) -> Climate {
        Climate { tmax: [tmax; 12], tmin: [tmin; 12], air: None }
    }

    /// How reference evapotranspiration is computed with what is known.
    pub fn method(&self) -> &'static str {
        if self.air.is_some() { "Penman–Monteith" } else { "Hargreaves" }
    }

    /// Reference evapotranspiration of a day: by Penman–Monteith where
    /// humidity, wind and sunshine are known, by Hargreaves elsewhere.
    pub fn et0_on(&self, day: NaiveDate, place: &Place) -> Millimetres {
        fn pick<T: Copy + Default>(of: &[T; 12], month: usize) -> T {
            of.get(month).copied().unwrap_or_default()
        }
        let month = day.month0() as usize;
        let before = (month + 11) % 12;
        let (tmax, tmin) = (pick(&self.tmax, month), pick(&self.tmin, month));
        let extraterrestrial = et0::extraterrestrial_radiation(place.latitude, day.ordinal());
        let Some(air) = &self.air else { return et0::hargreaves(tmax, tmin, extraterrestrial) };
        let mean = |month: usize| Celsius((pick(&self.tmax, month).0 + pick(&self.tmin, month).0) / 2.0);
        let daylight = et0::daylight_hours(place.latitude, day.ordinal());
        let weather = et0::Weather {
            tmax,
            tmin,
            vapour_pressure: et0::vapour_pressure_of_mean(tmax, tmin, pick(&air.humidity, month)),
            wind: pick(&air.wind, month),
            extraterrestrial,
            solar: et0::solar_radiation(pick(&air.sunshine_hours, month), daylight, extraterrestrial),
            soil_heat: et0::soil_heat_of_month(mean(month), mean(before)),
            elevation: place.elevation,
        };
        weather.penman_monteith()
    }
}

/// A bed for some roots.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Bed {
    /// Its area.
    pub area: SquareMetres,
    /// Its longer side.
    pub length: Metres,
    /// Its shorter side.
    pub width: Metres,
}

impl Bed {
    /// The bed that `roots` need; sides in steps of half a metre, which a farmer can pace, rounded up.
    pub fn for_roots(roots: u32, assumptions: &Assumptions) -> Bed {
        let needed = f64::from(roots) * assumptions.bed_area_per_root_m2;
        let width = round_up(assumptions.bed_width_m.min(needed.sqrt()), 0.5);
        let length = if width > 0.0 { round_up(needed / width, 0.5) } else { 0.0 };
        Bed {
            area: SquareMetres(needed),
            length: Metres(length.max(width)),
            width: Metres(length.min(width)),
        }
    }
}

/// Water for one day in the thirstiest stretch of the bed season.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Watering {
    /// Mean reference evapotranspiration over the watering.
    pub et0: Millimetres,
    /// Litres a day, rounded up to whole ones.
    pub daily: Litres,
    /// Jerrycans a day.
    pub jerrycans: u32,
}

/// Water the bed needs a day between `from` and `to`, no rain counted on.
pub fn watering(
    bed: &Bed,
    place: &Place,
    climate: &Climate,
    (from, to): (NaiveDate, NaiveDate),
    assumptions: &Assumptions,
) -> Watering {
    let days = (to - from).num_days().max(0) as u64;
    let sum: f64 = (0..=days)
        .filter_map(|day| from.checked_add_days(Days::new(day)))
        .map(|day| climate.et0_on(day, place).0)
        .sum();
    let et0 = Millimetres(sum / (days + 1) as f64);
    let daily = bed.area.0 * assumptions.bed_kc * et0.0 / assumptions.watering_efficiency;
    Watering {
        et0,
        daily: Litres(f64::from(whole_up(daily))),
        jerrycans: whole_up(daily / assumptions.jerrycan_l),
    }
}
