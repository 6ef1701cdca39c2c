//! What the monthly checks found, and what it means for the rest of the season.

use chrono::NaiveDate;

use super::defaults::Assumptions;
use super::multiply::{days_in, months_between, surviving};
use super::remarks::Remark;
use super::units::whole_down;

/// What was found when the roots were taken out and packed again.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Check {
    /// When.
    pub date: NaiveDate,
    /// Healthy roots that were kept.
    pub healthy: u32,
    /// Roots that were thrown away, where somebody counted them.
    pub thrown_away: Option<u32>,
    /// Kept roots with sprouts, where somebody counted them: at the last check.
    pub sprouted: Option<u32>,
}

/// A check beside what was to be expected.
#[derive(Debug, Clone, PartialEq)]
pub struct Judged {
    /// When.
    pub date: NaiveDate,
    /// Healthy roots.
    pub healthy: u32,
    /// Healthy roots to be expected from the check before, usual losses taken off.
    pub expected: u32,
    /// Whether more were lost than the evidence knows of.
    pub fast_loss: bool,
    /// Whether it counted sprouts, and so was the last one.
    pub is_last: bool,
}

/// Where the store stands.
#[derive(Debug, Clone, Copy)]
pub(super) struct Progress {
    /// Healthy roots at the last check.
    pub(super) left: u32,
    /// Roots to be expected in the bed.
    pub(super) at_bed: u32,
    /// Those of them with sprouts, where they were counted.
    pub(super) sprouted: Option<u32>,
}

/// The share that survives from one day to another when `share` survives a season.
fn left(share: f64, from: NaiveDate, to: NaiveDate, assumptions: &Assumptions) -> f64 {
    surviving(share, months_between(from, to), assumptions)
}

/// The share that survives from the filling to a day. Most losses come early: the first weeks count as a whole month.
fn left_since_filling(share: f64, filled: NaiveDate, to: NaiveDate, assumptions: &Assumptions) -> f64 {
    surviving(share, months_between(filled, to).max(assumptions.early_loss_months), assumptions)
}

/// Roots that were stored: who counted what was thrown away at the first check knows better than the plan.
fn really_stored(checks: &[Check], planned: u32) -> u32 {
    let thrown_away = checks.first().and_then(|first| Some(first.healthy + first.thrown_away?));
    thrown_away.unwrap_or(planned)
}

/// Judges each check of a store that was to be filled with `planned` roots on `filled` by the one before, and
/// what must be noticed of them.
pub(super) fn judge(
    checks: &[Check],
    (filled, planned): (NaiveDate, u32),
    assumptions: &Assumptions,
) -> (Vec<Judged>, Vec<Remark>) {
    let mut remarks = Vec::new();
    let mut judged = Vec::new();
    let (mut before, mut roots) = (None, really_stored(checks, planned));
    for check in checks {
        let after = |share: f64| {
            let left = match before {
                Some(before) => left(share, before, check.date, assumptions),
                None => left_since_filling(share, filled, check.date, assumptions),
            };
            whole_down(f64::from(roots) * left)
        };
        let (expected, worst) = (after(assumptions.survival_share), after(assumptions.survival_low));
        let fast_loss = check.healthy < worst;
        if fast_loss {
            let (day, healthy) = (check.date, check.healthy);
            let next = if check.sprouted.is_some() { "bed" } else { "check" };
            remarks.push(Remark::FastLoss { day, healthy, roots, expected, worst, next });
        }
        judged.push(Judged {
            date: check.date,
            healthy: check.healthy,
            expected,
            fast_loss,
            is_last: check.sprouted.is_some(),
        });
        (before, roots) = (Some(check.date), check.healthy);
    }
    (judged, remarks)
}

/// Looks ahead from the last check of such a store to the bed. `None` where nothing was checked yet.
///
/// From that check on the roots are taken to be lost at the usual rate, or at the rate so far where that is
/// worse.
pub(super) fn ahead(
    checks: &[Check],
    (filled, planned): (NaiveDate, u32),
    bed: NaiveDate,
    assumptions: &Assumptions,
) -> Option<Progress> {
    let last = checks.last()?;
    let stored = really_stored(checks, planned);
    let so_far = if stored > 0 { f64::from(last.healthy) / f64::from(stored) } else { 0.0 };
    let usual_so_far = left_since_filling(assumptions.survival_share, filled, last.date, assumptions);
    let usual_ahead = left(assumptions.survival_share, last.date, bed, assumptions);
    let days_so_far = (last.date - filled).num_days().max(1) as f64;
    let days_so_far = days_so_far.max(days_in(assumptions.early_loss_months));
    let days_ahead = (bed - last.date).num_days().max(0) as f64;
    // Of few roots one more or less is chance: as many as whole roots can be expected is as usual.
    let as_usual = last.healthy >= whole_down(f64::from(stored) * usual_so_far);
    let ahead = if as_usual { usual_ahead } else { so_far.powf(days_ahead / days_so_far) };
    let at_bed = last.sprouted.unwrap_or_else(|| whole_down(f64::from(last.healthy) * ahead));
    Some(Progress { left: last.healthy, at_bed, sprouted: last.sprouted })
}
