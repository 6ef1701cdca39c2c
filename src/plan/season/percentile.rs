//! Percentiles of the years' onsets.

/// The `percent` percentile by linear interpolation between the sorted
/// values, as numpy does by default; `None` for no values or a value that is
/// not finite.
pub fn percentile(values: &[f64], percent: f64) -> Option<f64> {
    if !percent.is_finite() || values.iter().any(|value| !value.is_finite()) {
        return None;
    }
    let mut sorted = values.to_vec();
    sorted.sort_by(f64::total_cmp);
    let rank = (percent.clamp(0.0, 100.0) / 100.0) * sorted.len().checked_sub(1)? as f64;
    let below = *sorted.get(rank.floor() as usize)?;
    let above = *sorted.get(rank.ceil() as usize)?;
    Some(below + (above - below) * rank.fract())
}

/// The least of the values below or at which lie `percent` of all weight
/// (numpy's method "inverted_cdf" with weights).
pub fn weighted_percentile(values: &[f64], weights: &[f64], percent: f64) -> Option<f64> {
    let mut sorted: Vec<(f64, f64)> = values.iter().copied().zip(weights.iter().copied()).collect();
    sorted.sort_by(|(one, _), (other, _)| one.total_cmp(other));
    let all: f64 = sorted.iter().map(|(_, weight)| weight).sum();
    let mut below = 0.0;
    for (value, weight) in &sorted {
        below += weight;
        if below >= percent / 100.0 * all - 1e-12 {
            return Some(*value);
        }
    }
    sorted.last().map(|(value, _)| *value)
}

/// A value that missing days leave open.
#[derive(Debug, Clone, Copy)]
pub(super) struct OpenValue {
    pub(super) least: f64,
    pub(super) greatest: f64,
    /// There may be no value at all.
    pub(super) perhaps_none: bool,
}

/// The bounds of a percentile of values of which some are open. A value that may be none is left out
/// of the least percentile where that makes it less; in the greatest it counts, as no percentile
/// falls by one more value at its end.
pub(super) fn percentile_bounds(certain: &[f64], open: &[OpenValue], percent: f64) -> Option<(f64, f64)> {
    let with = |more: &mut dyn Iterator<Item = f64>| {
        let values: Vec<f64> = certain.iter().copied().chain(more).collect();
        percentile(&values, percent)
    };
    let least = |perhaps_none| {
        let these = open.iter().filter(move |value| value.perhaps_none == perhaps_none);
        these.map(|value| value.least).collect::<Vec<f64>>()
    };
    let (values, mut perhaps) = (least(false), least(true));
    perhaps.sort_by(f64::total_cmp);
    // Of as many of them, the least make the percentile least.
    let least = (0..=perhaps.len())
        .filter_map(|count| with(&mut values.iter().chain(perhaps.iter().take(count)).copied()))
        .min_by(f64::total_cmp)?;
    let greatest = with(&mut open.iter().map(|value| value.greatest))?;
    Some((least, greatest))
}
