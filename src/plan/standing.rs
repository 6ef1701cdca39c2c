//! How far the season is, by what a case tells of it.

use super::case::Case;
use super::progress::Check;
use super::steps::StepKind;
use super::timeline::WorkDone;

/// How far the work has come: as somebody says, and as the checks of the store show. Of a day alone nothing is
/// known to be done, nor left undone.
pub(super) fn work_done(case: &Case) -> Option<WorkDone> {
    let checked = case.store_checks.last();
    let shown = checked.map(shown_by);
    match (case.today, case.done) {
        (Some(today), Some(done)) => {
            Some(WorkDone { today, done: Some(shown.map_or(done, |shown| shown.max(done))) })
        }
        _ => checked.map(|check| WorkDone { today: check.date, done: shown }),
    }
}

/// The last step that is done where a store was checked.
pub(super) fn shown_by(check: &Check) -> StepKind {
    if check.sprouted.is_some() { StepKind::LastCheck } else { StepKind::FillContainer }
}
