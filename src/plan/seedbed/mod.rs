//! The watered bed in which the stored roots sprout.

pub mod et0;

use chrono::{Datelike, Days, NaiveDate};

use super::units::{round_up, whole_up};
use super::{Assumptions, Celsius, Litres, Metres, Millimetres, SquareMetres};

/// Temperatures of a place.
#[derive(Debug, Clone, PartialEq)]
pub struct Climate {
    /// Mean daily greatest temperature, one a month from January.
    pub tmax: [Celsius; 12],
    /// Mean daily least temperature, one a month from January.
    pub tmin: [Celsius; 12],
}

impl Climate {
    /// The same temperatures all year.
    pub fn constant(tmax: Celsius, tmin: Celsius) -> Climate {
        Climate { tmax: [tmax; 12], tmin: [tmin; 12] }
    }

    /// Reference evapotranspiration of a day by Hargreaves.
    fn et0_on(&self, day: NaiveDate, latitude: f64) -> Millimetres {
        let month = day.month0() as usize;
        let pick = |of: &[Celsius; 12]| of.get(month).copied().unwrap_or_default();
        et0::hargreaves(
            pick(&self.tmax),
            pick(&self.tmin),
            et0::extraterrestrial_radiation(latitude, day.ordinal()),
        )
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
    latitude: f64,
    climate: &Climate,
    (from, to): (NaiveDate, NaiveDate),
    assumptions: &Assumptions,
) -> Watering {
    let days = (to - from).num_days().max(0) as u64;
    let sum: f64 = (0..=days)
        .filter_map(|day| from.checked_add_days(Days::new(day)))
        .map(|day| climate.et0_on(day, latitude).0)
        .sum();
    let et0 = Millimetres(sum / (days + 1) as f64);
    let daily = bed.area.0 * assumptions.bed_kc * et0.0 / assumptions.watering_efficiency;
    Watering {
        et0,
        daily: Litres(f64::from(whole_up(daily))),
        jerrycans: whole_up(daily / assumptions.jerrycan_l),
    }
}
