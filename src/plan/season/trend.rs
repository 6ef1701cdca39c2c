//! Whether the rains come earlier or later than they used to.

use super::percentile::percentile;

/// A slope by the median of all pairs (Theil and Sen), with its 95 % interval from the
/// variance of Kendall's statistic (Sen 1968, as in `scipy.stats.theilslopes`).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Slope {
    /// The median slope.
    pub median: f64,
    /// The interval's lower end.
    pub low: f64,
    /// The interval's upper end.
    pub high: f64,
}

/// Standard deviations on either side of the middle that hold 95 % of a normal distribution.
const SIDES_OF_95_PERCENT: f64 = 1.959_963_984_540_054;

impl Slope {
    /// The slope of points whose first coordinates differ.
    pub fn of(points: &[(f64, f64)]) -> Option<Slope> {
        let slopes = slopes(points);
        let median = percentile(&slopes, 50.0)?;
        let pairs = |count: f64| count * (count - 1.0) * (2.0 * count + 5.0);
        let tied: f64 = repeats(points.iter().map(|(_, y)| *y)).map(pairs).sum();
        let deviation = ((pairs(points.len() as f64) - tied) / 18.0).max(0.0).sqrt() * SIDES_OF_95_PERCENT;
        let count = slopes.len() as f64;
        let low = ((count - deviation) / 2.0).round_ties_even() - 1.0;
        let high = ((count + deviation) / 2.0).round_ties_even();
        let at = |rank: f64| slopes.get(rank.clamp(0.0, count - 1.0) as usize).copied();
        Some(Slope { median, low: at(low)?, high: at(high)? })
    }

    /// Whether the interval leaves no doubt which way it goes.
    pub fn is_clear(self) -> bool {
        self.low > 0.0 || self.high < 0.0
    }
}

/// The slopes between all pairs of points, sorted.
fn slopes(points: &[(f64, f64)]) -> Vec<f64> {
    let mut slopes = Vec::new();
    for (index, (x, y)) in points.iter().enumerate() {
        let later = points.iter().skip(index + 1).filter(|(other, _)| other != x);
        slopes.extend(later.map(|(other_x, other_y)| (other_y - y) / (other_x - x)));
    }
    slopes.sort_by(f64::total_cmp);
    slopes
}

/// How often each value comes.
fn repeats(values: impl Iterator<Item = f64>) -> impl Iterator<Item = f64> {
    let mut values: Vec<f64> = values.collect();
    values.sort_by(f64::total_cmp);
    let counts: Vec<f64> = values.chunk_by(|one, other| one == other).map(|same| same.len() as f64).collect();
    counts.into_iter()
}

/// The median of the slopes between all pairs of points (Theil and Sen).
pub fn median_slope(points: &[(f64, f64)]) -> Option<f64> {
    percentile(&slopes(points), 50.0)
}
