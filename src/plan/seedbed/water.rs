//! The bed's water from planting to the rains, dekad by dekad.

use std::borrow::Borrow;

use chrono::{Datelike, Days, NaiveDate};

use super::super::units::whole_up;
use super::super::{Assumptions, DateSpan, Litres, Millimetres, Place, SquareMetres};
use super::{Climate, Soil, kc};

/// What the bed needs in a part of a month: to the 10th, to the 20th, to its end; and to the day before shoots show.
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
    /// Days from one watering to the next.
    pub every_days: f64,
    /// Water to give a day on a square metre; what runs off is counted.
    pub depth: Millimetres,
    /// Water to give a day, rounded up to whole litres; where it is not given every day, on the average.
    pub daily: Litres,
    /// Water to give at a time, rounded up to whole litres.
    pub each_time: Litres,
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

    /// The same days for a bed of another area.
    pub(in crate::plan) fn on(&self, area: SquareMetres) -> Period {
        let litres = |days: f64| Litres(f64::from(whole_up(self.depth.0 * area.0 * days)));
        Period { daily: litres(1.0), each_time: litres(self.every_days), ..*self }
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

/// The day on which shoots show in a bed.
pub(in crate::plan) fn shoots_on(planted: NaiveDate, assumptions: &Assumptions) -> NaiveDate {
    let days = Days::new(assumptions.shoots_days.max(0.0).round() as u64);
    planted.checked_add_days(days).unwrap_or(planted)
}

/// The water of a bed of `area` that is planted on `planted`, in the days of `span`.
///
/// Of a bed of roots `soil` tells how often it is watered until shoots show: roots without shoots drink little, and
/// rot where it is wet. Where cuttings are planted it is `None`. Each period has the values of its middle day.
pub fn schedule(
    area: SquareMetres,
    place: &Place,
    climate: &Climate,
    (planted, span): (NaiveDate, DateSpan),
    soil: Option<Soil>,
    assumptions: &Assumptions,
) -> impl Iterator<Item = Period> {
    let shoots = shoots_on(planted, assumptions);
    let mut next = Some(span.from);
    std::iter::from_fn(move || {
        let from = next.filter(|day| *day <= span.to)?;
        let until_shoots = soil.filter(|_| from < shoots);
        let bare = until_shoots.is_some();
        let last = shoots.pred_opt().filter(|_| bare).unwrap_or(span.to);
        let every_days =
            until_shoots.map_or(assumptions.water_every_days, |soil| soil.every_days(assumptions));
        let to = dekad_end(from).min(span.to).min(last);
        next = to.succ_opt();
        // Both are days of one month.
        let middle = from + Days::new(u64::from(to.day() - from.day()) / 2);
        let et0 = climate.et0_on(middle, place);
        let day = (middle - planted).num_days() as f64;
        let kc =
            if bare { kc::wet_soil(et0, every_days, assumptions) } else { kc::of_bed(day, et0, assumptions) };
        let rain = climate.rain_on(middle);
        let depth = Millimetres((kc * et0.0 - rain.0).max(0.0) / assumptions.watering_efficiency);
        let nothing = Litres(0.0);
        let when = DateSpan::new(from, to);
        let period = Period { when, et0, kc, rain, every_days, depth, daily: nothing, each_time: nothing };
        Some(period.on(area))
    })
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
    /// What it gives then: a day, or in all where what it holds is short.
    pub gives: Litres,
    /// What the bed needs then.
    pub needs: Litres,
    /// Whether what it holds is short, rather than what it gives a day.
    pub of_all: bool,
}

impl Source {
    /// Whether the source can give what the periods need. A bed that is not watered every day is watered in turns, a
    /// part of it each day, so that every day takes as much.
    pub fn shortage(&self, periods: impl IntoIterator<Item = impl Borrow<Period>>) -> Option<Shortage> {
        self.shortages(periods).reduce(|worst, short| {
            let first = worst.first;
            if short.share < worst.share { Shortage { first, ..short } } else { worst }
        })
    }

    /// Whether it can give all of it.
    pub(in crate::plan) fn suffices(&self, periods: impl IntoIterator<Item = impl Borrow<Period>>) -> bool {
        self.shortages(periods).next().is_none()
    }

    /// The periods in which it cannot, by themselves.
    fn shortages(
        &self,
        periods: impl IntoIterator<Item = impl Borrow<Period>>,
    ) -> impl Iterator<Item = Shortage> {
        let mut used = 0.0;
        periods.into_iter().flat_map(move |period| {
            let period = period.borrow();
            let month = period.when.from.month0() as usize;
            let of_day = self.daily.as_ref().and_then(|daily| daily.get(month));
            let of_day = of_day.map(|gives| (*gives, period.daily, false));
            let of_all = self.stored.map(|stored| {
                used += period.total().0;
                (stored, Litres(used), true)
            });
            let first = period.when;
            let short = move |(gives, needs, of_all): (Litres, Litres, bool)| {
                let share = gives.0 / needs.0;
                (share < 1.0).then_some(Shortage { first, share, gives, needs, of_all })
            };
            [of_day, of_all].into_iter().flatten().filter_map(short)
        })
    }
}
