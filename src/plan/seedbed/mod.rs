//! The watered bed in which the stored roots sprout.

pub mod et0;
pub mod kc;
mod water;

use chrono::{Datelike, NaiveDate};

pub use water::{Period, Shortage, Source, schedule};

use super::units::{round_up, whole_down};
use super::{Assumptions, Celsius, Centimetres, Metres, MetresPerSecond, Millimetres, Place, SquareMetres};

/// The mean length of a month.
const DAYS_A_MONTH: f64 = 365.25 / 12.0;

/// Fewer days of a month make no mean.
pub const FEWEST_DAYS: u32 = 10;

/// The usual weather of a place.
#[derive(Debug, Clone, PartialEq)]
pub struct Climate {
    /// Mean daily greatest temperature, one a month from January.
    pub tmax: [Celsius; 12],
    /// Mean daily least temperature, one a month from January.
    pub tmin: [Celsius; 12],
    /// Humidity, wind and sunshine, where they are known.
    pub air: Option<Air>,
    /// Mean rain of a month, one value a month from January, where it is known.
    pub rain: Option<[Millimetres; 12]>,
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
        Climate { tmax: [tmax; 12], tmin: [tmin; 12], air: None, rain: None }
    }

    /// The mean temperatures of a record's days, month by month.
    ///
    /// # Errors
    /// The months, from 1 to 12, of which fewer than `FEWEST_DAYS` days are known.
    pub fn of_days(days: &[(NaiveDate, Celsius, Celsius)]) -> Result<Climate, Vec<u32>> {
        let mut sums = [(0.0, 0.0, 0u32); 12];
        for (day, tmax, tmin) in days {
            if let Some((most, least, count)) = sums.get_mut(day.month0() as usize) {
                *most += tmax.0;
                *least += tmin.0;
                *count += 1;
            }
        }
        let months = (1..).zip(&sums);
        let few: Vec<u32> =
            months.filter(|(_, (.., count))| *count < FEWEST_DAYS).map(|(month, _)| month).collect();
        if !few.is_empty() {
            return Err(few);
        }
        let mean = |sum: f64, count: u32| Celsius(sum / f64::from(count));
        Ok(Climate {
            tmax: sums.map(|(most, _, count)| mean(most, count)),
            tmin: sums.map(|(_, least, count)| mean(least, count)),
            air: None,
            rain: None,
        })
    }

    /// Rain of a day that can be counted on: of the month's mean what FAO
    /// takes as effective (Brouwer and Heibloem 1986, FAO training manual 3, from memory), 0 where no rain is known.
    pub fn rain_on(&self, day: NaiveDate) -> Millimetres {
        let rain = self.rain.and_then(|rain| rain.get(day.month0() as usize).copied());
        let month = rain.unwrap_or_default().0;
        let effective = if month > 75.0 { 0.8 * month - 25.0 } else { (0.6 * month - 10.0).max(0.0) };
        Millimetres(effective / DAYS_A_MONTH)
    }

    /// How reference evapotranspiration is computed with what is known: `penman-monteith` or `hargreaves`.
    pub fn method(&self) -> &'static str {
        if self.air.is_some() { "penman-monteith" } else { "hargreaves" }
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
    /// Roots in it.
    pub roots: u32,
    /// Its area.
    pub area: SquareMetres,
    /// Its longer side.
    pub length: Metres,
    /// Its shorter side.
    pub width: Metres,
    /// Rows of roots, along the longer side.
    pub rows: u32,
    /// Roots in the fullest row.
    pub roots_per_row: u32,
    /// From row to row; the outermost rows are half of it from the edge.
    pub between_rows: Centimetres,
    /// From root to root in a row.
    pub along_row: Centimetres,
}

impl Bed {
    /// The bed that `roots` need; sides in steps of half a metre, which a farmer can pace, rounded up.
    pub fn for_roots(roots: u32, assumptions: &Assumptions) -> Bed {
        let needed = f64::from(roots) * assumptions.bed_area_per_root_m2;
        let width = round_up(assumptions.bed_width_m.min(needed.sqrt()), 0.5);
        let length = if width > 0.0 { round_up(needed / width, 0.5) } else { 0.0 };
        let (length, width) = (length.max(width), length.min(width));
        let rows = whole_down(width * 100.0 / assumptions.bed_root_spacing_cm).clamp(1, roots.max(1));
        let roots_per_row = roots.div_ceil(rows);
        let apart = |side: f64, count: u32| Centimetres((side * 100.0 / f64::from(count.max(1))).floor());
        Bed {
            roots,
            area: SquareMetres(needed),
            length: Metres(length),
            width: Metres(width),
            rows,
            roots_per_row,
            between_rows: apart(width, rows),
            along_row: apart(length, roots_per_row),
        }
    }
}
