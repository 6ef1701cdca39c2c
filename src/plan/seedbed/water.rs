//! The bed's water from planting to the rains, dekad by dekad.

use chrono::{Datelike, Days, NaiveDate};

use super::super::units::whole_up;
use super::super::{Assumptions, DateSpan, Litres, Millimetres, Place};
use super::{Bed, Climate, kc};

/// What the bed needs in a part of a month: to the 10th, to the 20th, to its end.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Period {
    /// When.
    pub when: DateSpan,
    /// Reference evapotranspiration a day.
    pub et0: Millimetres,
    /// Crop coefficient.
    pub kc: f64,
    /// Rain that can be counted on, a day.
    pub rain: Millimetres,
    /// Water to give a day, rounded up to whole litres.
    pub daily: Litres,
}

impl Period {
    /// Days in it.
    pub fn days(&self) -> i64 {
        (self.when.to - self.when.from).num_days() + 1
    }

    /// Water to give in all of it.
    pub fn total(&self) -> Litres {
        Litres(self.daily.0 * self.days() as f64)
    }
}

/// The last day of the dekad that holds `day`.
fn dekad_end(day: NaiveDate) -> NaiveDate {
    let end = match day.day() {
        1..=10 => day.with_day(10),
        11..=20 => day.with_day(20),
        _ => day.with_day(28).and_then(|late| {
            let next = late.checked_add_days(Days::new(4))?.with_day(1)?;
            next.pred_opt()
        }),
    };
    end.unwrap_or(day)
}

/// The water of a bed planted on `planted`, in the days of `span`.
/// Each dekad has the values of its middle day.
pub fn schedule(
    bed: &Bed,
    place: &Place,
    climate: &Climate,
    (planted, span): (NaiveDate, DateSpan),
    assumptions: &Assumptions,
) -> Vec<Period> {
    let mut periods = Vec::new();
    let mut from = span.from;
    while from <= span.to {
        let to = dekad_end(from).min(span.to);
        let middle = from + Days::new((to - from).num_days().max(0) as u64 / 2);
        let et0 = climate.et0_on(middle, place);
        let kc = kc::of_bed((middle - planted).num_days() as f64, et0, assumptions);
        let rain = climate.rain_on(middle);
        let depth = (kc * et0.0 - rain.0).max(0.0) / assumptions.watering_efficiency;
        let daily = Litres(f64::from(whole_up(depth * bed.area.0)));
        periods.push(Period { when: DateSpan::new(from, to), et0, kc, rain, daily });
        let Some(next) = to.succ_opt() else { break };
        from = next;
    }
    periods
}

/// Where the bed's water comes from.
#[derive(Debug, Clone, PartialEq)]
pub struct Source {
    /// Its name.
    pub name: String,
    /// What it can give a day, one value a month from January.
    pub daily: Option<[Litres; 12]>,
    /// What it holds in all, where nothing refills it.
    pub stored: Option<Litres>,
}

/// Where a source falls short.
#[derive(Debug, Clone, PartialEq)]
pub struct Shortage {
    /// The first dekad that lacks water.
    pub first: DateSpan,
    /// The part of the need that the source can give at the worst, 0 to 1.
    pub share: f64,
}

impl Source {
    /// Whether the source can give what the periods need.
    pub fn shortage(&self, periods: &[Period]) -> Option<Shortage> {
        let mut worst: Option<Shortage> = None;
        let mut used = 0.0;
        for period in periods.iter().filter(|period| period.daily.0 > 0.0) {
            let month = period.when.from.month0() as usize;
            let gives = self.daily.and_then(|daily| daily.get(month).copied());
            let of_day = gives.map_or(1.0, |gives| gives.0 / period.daily.0);
            used += period.total().0;
            let of_all = self.stored.map_or(1.0, |stored| stored.0 / used);
            let share = of_day.min(of_all);
            if share < 1.0 {
                match &mut worst {
                    Some(worst) => worst.share = worst.share.min(share),
                    None => worst = Some(Shortage { first: period.when, share }),
                }
            }
        }
        worst
    }
}
