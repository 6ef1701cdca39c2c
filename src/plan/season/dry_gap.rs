//! The dry time between the harvest and the rains that follow.

use chrono::NaiveDate;

use super::{ExpectedRains, Rains};

/// The days for which vines would have to be kept alive without rain.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct DryGap {
    /// The harvest, or the end of the last rainy season before the rains where that is later.
    pub from: NaiveDate,
    /// Days from there to the day by which the rains have begun in most years.
    pub days: i64,
    /// Whether the record has two rainy seasons a year.
    pub two_seasons: bool,
}

impl DryGap {
    /// Between `harvest` and the rains that are `expected`.
    pub fn of(rains: &Rains, expected: ExpectedRains, harvest: NaiveDate) -> DryGap {
        let seasons = match rains {
            Rains::Observed(observed) => observed.wet_seasons.as_slice(),
            Rains::Usual(_) | Rains::On(_) => &[],
        };
        let ends = seasons.iter().filter_map(|season| season.until.last_before(expected.early));
        let from = ends.max().map_or(harvest, |end| end.max(harvest));
        DryGap { from, days: (expected.late - from).num_days(), two_seasons: seasons.len() > 1 }
    }
}
