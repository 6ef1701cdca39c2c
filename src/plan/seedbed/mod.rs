//! The watered bed in which the stored roots sprout.

pub mod et0;
pub mod kc;
mod water;

use chrono::{Datelike, NaiveDate};

pub(super) use water::shoots_on;
pub use water::{Period, Shortage, Source, schedule};

use super::units::{round_up, whole_down, whole_up};
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

/// The soil of a bed: how much water its top holds.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Soil {
    /// Holds little, and lets it go soon.
    Sand,
    /// Holds more.
    #[default]
    Loam,
    /// Holds most, and is soon too wet.
    Clay,
}

impl Soil {
    /// All, by the names that cases use.
    pub const NAMED: [(&'static str, Soil); 3] =
        [("sand", Soil::Sand), ("loam", Soil::Loam), ("clay", Soil::Clay)];

    /// Its name in cases.
    pub fn name(self) -> &'static str {
        match self {
            Soil::Sand => "sand",
            Soil::Loam => "loam",
            Soil::Clay => "clay",
        }
    }

    /// Days from one watering to the next until shoots show.
    pub fn every_days(self, assumptions: &Assumptions) -> f64 {
        match self {
            Soil::Sand => assumptions.sand_water_every_days,
            Soil::Loam => assumptions.loam_water_every_days,
            Soil::Clay => assumptions.clay_water_every_days,
        }
    }
}

/// A bed for some roots: strips that arms reach across, side by side, with paths between them.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Bed {
    /// Roots in it.
    pub roots: u32,
    /// What they take, paths left out.
    pub area: SquareMetres,
    /// Strips, all alike.
    pub strips: u32,
    /// Length of a strip.
    pub strip_length: Metres,
    /// Width of a strip.
    pub strip_width: Metres,
    /// Width of a path between two strips.
    pub path: Metres,
    /// Rows of roots along each strip.
    pub rows_per_strip: u32,
    /// Roots in the fullest row.
    pub roots_per_row: u32,
    /// From row to row; the outermost rows are half of it from the edge.
    pub between_rows: Centimetres,
    /// From root to root in a row.
    pub along_row: Centimetres,
}

impl Bed {
    /// The bed that `roots` need. Strips are as wide as arms reach, or narrower where there are few roots; their
    /// lengths are in steps of half a metre, which a farmer can pace, rounded up.
    pub fn for_roots(roots: u32, assumptions: &Assumptions) -> Bed {
        let a = assumptions;
        let needed = f64::from(roots) * a.bed_area_per_root_m2;
        let width = a.bed_width_m.min(round_up(needed.sqrt(), 0.1));
        let in_line = if width > 0.0 { needed / width } else { 0.0 };
        let strips = whole_up(in_line / a.bed_strip_length_m).max(1);
        let length = round_up(in_line / f64::from(strips), 0.5);
        let (length, width) =
            if strips == 1 { (length.max(width), length.min(width)) } else { (length, width) };
        let most_rows = roots.div_ceil(strips).max(1);
        let rows_per_strip = whole_down(width * 100.0 / a.bed_root_spacing_cm).clamp(1, most_rows);
        let roots_per_row = roots.div_ceil(rows_per_strip.saturating_mul(strips));
        let apart =
            |side: f64, count: u32| Centimetres((side * 100.0 / f64::from(count.max(1)) + 1e-9).floor());
        Bed {
            roots,
            area: SquareMetres(needed),
            strips,
            strip_length: Metres(length),
            strip_width: Metres(width),
            path: Metres(a.bed_path_m),
            rows_per_strip,
            roots_per_row,
            between_rows: apart(width, rows_per_strip),
            along_row: apart(length, roots_per_row),
        }
    }

    /// Rows of roots in all strips.
    pub fn rows(&self) -> u32 {
        self.rows_per_strip.saturating_mul(self.strips)
    }

    /// Along the strips.
    pub fn length(&self) -> Metres {
        self.strip_length
    }

    /// Across all strips and the paths between them.
    pub fn width(&self) -> Metres {
        let paths = f64::from(self.strips.saturating_sub(1));
        Metres(round_up(f64::from(self.strips) * self.strip_width.0 + paths * self.path.0, 0.1))
    }
}
