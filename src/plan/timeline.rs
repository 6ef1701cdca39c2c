//! Dates of the steps, counted back from the rains and the harvest.

use chrono::{Days, Months, NaiveDate};

use super::Assumptions;
use super::progress::Judged;
use super::remarks::Remark;
use super::season::ExpectedRains;
use super::span::DateSpan;
use super::steps::StepKind;
use super::worded::{Value, coded};

impl From<StepKind> for Value {
    fn from(kind: StepKind) -> Value {
        Value::Name(kind.name())
    }
}

coded! {
    /// Why a step has its dates.
    pub enum DateReason {
        /// A month before the harvest.
        MarkPlants = "why-mark-plants" {
            /// Days before the harvest.
            days: f64,
            /// The day the old field is dug.
            harvest: NaiveDate,
        },
        /// Sand must dry and cool.
        GatherSand = "why-gather-sand",
        /// Sickness may have shown since the marking.
        CheckPlants = "why-check-plants" {
            /// Days before the harvest, at least.
            least_days: f64,
            /// Days before the harvest, at most.
            most_days: f64,
        },
        /// The skin must toughen.
        CutVines = "why-cut-vines" {
            /// Days before the harvest, at least.
            least_days: f64,
            /// Days before the harvest, at most.
            most_days: f64,
        },
        /// Nobody has done it in its days.
        BeforeHarvestLate = "why-before-harvest-late" {
            /// Days before the harvest; 0 on its day.
            days: f64,
        },
        /// As the case says.
        Harvest = "why-harvest",
        /// As the case says, of many farms.
        HarvestOfMany = "why-harvest-of-many" {
            /// The day the first farms dig.
            first: NaiveDate,
            /// The day the last ones do.
            last: NaiveDate,
        },
        /// Before the roots dry out.
        FillContainer = "why-fill-container",
        /// Most losses come early.
        EarlyCheck = "why-early-check" {
            /// Days since the containers were filled, at least.
            least_days: f64,
            /// Days since the containers were filled, at most.
            most_days: f64,
            /// The day they were filled.
            filled: NaiveDate,
        },
        /// Some months after filling.
        MonthlyCheck = "why-monthly-check" {
            /// Months since the containers were filled.
            months: u32,
            /// The day they were filled.
            filled: NaiveDate,
        },
        /// One check stands for all that are overdue.
        OverdueCheck = "why-overdue-check",
        /// Not sooner after the one before.
        CheckAgain = "why-check-again" {
            /// Days since that check.
            days: f64,
        },
        /// The store was looked through on that day.
        Checked = "why-checked" {
            /// Healthy roots that were packed again.
            healthy: u32,
        },
        /// The store loses roots faster than any on record.
        CheckSoon = "why-check-soon" {
            /// Days since the check that found it.
            days: f64,
            /// The day of that check.
            checked: NaiveDate,
        },
        /// Before the roots go in.
        PrepareBed = "why-prepare-bed" {
            /// Days before the roots go to the bed.
            days: f64,
        },
        /// The day the first roots go to the bed.
        LastCheck = "why-last-check",
        /// Counted back from the rains.
        PlantBed = "why-plant-bed" {
            /// The day of the rains that the plan is timed by.
            rains: NaiveDate,
            /// Weeks that vines have to grow, at least.
            least_weeks: f64,
            /// Weeks that vines have to grow, at most.
            most_weeks: f64,
        },
        /// As soon as it still can be.
        PlantBedLate = "why-plant-bed-late" {
            /// The day of the rains that the plan is timed by.
            rains: NaiveDate,
            /// The day the bed was due.
            due: NaiveDate,
        },
        /// Until rain does the work.
        WaterBed = "why-water-bed",
        /// The rains are there.
        CutAsRainsCame = "why-cut-as-rains-came" {
            /// The day they came.
            began: NaiveDate,
        },
        /// When the rains are there.
        CutWhenRainsCome = "why-cut-when-rains-come" {
            /// The day of the rains that the plan is timed by.
            rains: NaiveDate,
        },
        /// When the rains are there, which differs from year to year.
        CutFromEarlyToLate = "why-cut-from-early-to-late" {
            /// The day of the rains that the plan is timed by.
            rains: NaiveDate,
            /// The day by which they come in late years.
            late: NaiveDate,
        },
        /// Soon after the onset.
        PlantField = "why-plant-field" {
            /// Days after the onset, at most.
            days: f64,
        },
        /// When the roots are ripe.
        FirstHarvest = "why-first-harvest" {
            /// Days from planting to the first ripe roots.
            least_days: f64,
            /// Days from planting to the last ripe roots.
            most_days: f64,
        },
    }
}

/// A step with its dates and the reason for them.
#[derive(Debug, Clone, PartialEq)]
pub struct Step {
    /// What to do.
    pub kind: StepKind,
    /// When.
    pub when: DateSpan,
    /// Why then.
    pub why: DateReason,
    /// Whether it is known to be done.
    pub done: bool,
}

/// All steps of a season in order of their first day.
#[derive(Debug, Clone, PartialEq)]
pub struct Timeline {
    /// The steps.
    pub steps: Vec<Step>,
    /// What must be noticed about the dates.
    pub remarks: Vec<Remark>,
}

/// Moves a date; dates beyond the calendar stay at its end.
fn shift(date: NaiveDate, days: f64) -> NaiveDate {
    let count = Days::new(days.abs().round() as u64);
    if days < 0.0 {
        date.checked_sub_days(count).unwrap_or(NaiveDate::MIN)
    } else {
        date.checked_add_days(count).unwrap_or(NaiveDate::MAX)
    }
}

/// What the dates of a season hang on.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SeasonInputs<'a> {
    /// When the old field is dug: a day, or in a zone from the first of its farms to the last.
    pub harvest: DateSpan,
    /// When the rains are expected.
    pub rains: ExpectedRains,
    /// When they began, where they have.
    pub began: Option<NaiveDate>,
    /// Days from planting to the first ripe roots and to the last.
    pub maturity: (f64, f64),
    /// Whether many farms follow the same dates: then no step is one day.
    pub spread: bool,
    /// How far the work has come, where somebody says.
    pub work_done: Option<WorkDone>,
    /// The checks of the store that were made, by date.
    pub checks: &'a [Judged],
}

/// How far the work has come.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct WorkDone {
    /// The day it is.
    pub today: NaiveDate,
    /// The last step that is done; `None` where none is.
    pub done: Option<StepKind>,
}

impl SeasonInputs<'_> {
    /// Whether a step in these days is known to be done. Of a step that comes again, only what lies behind is.
    fn is_done(&self, kind: StepKind, when: DateSpan) -> bool {
        self.work_done.is_some_and(|work| match work.done {
            Some(StepKind::MonthlyCheck) if kind == StepKind::MonthlyCheck => when.to < work.today,
            Some(done) => kind <= done,
            None => false,
        })
    }

    /// A step that is not done cannot lie in the past.
    fn open(&self, kind: StepKind) -> Option<NaiveDate> {
        self.work_done.filter(|work| work.done.is_none_or(|done| kind > done)).map(|work| work.today)
    }

    fn no_earlier(&self, kind: StepKind, when: DateSpan) -> DateSpan {
        match self.open(kind) {
            Some(today) => DateSpan::new(when.from.max(today), when.to.max(today)),
            None => when,
        }
    }
}

/// Lays out the season between the harvest and the rains.
///
/// However short the dry season, and however late the work, no step comes before one
/// it depends on: where the usual dates would, they are moved and a remark says so.
pub fn lay_out(inputs: &SeasonInputs<'_>, assumptions: &Assumptions) -> Timeline {
    let a = assumptions;
    let mut remarks = Vec::new();
    let mut steps = Vec::with_capacity(20);
    let mut step = |kind, when, why: DateReason| {
        let done = inputs.is_done(kind, when) || matches!(why, DateReason::Checked { .. });
        steps.push(Step { kind, when, why, done });
    };

    let harvest = inputs.no_earlier(StepKind::Harvest, inputs.harvest);
    // In a zone these are the days of the farms that dig first; who digs later counts from a later harvest. Days
    // right for all would let a farmer cut the vines before anybody has looked at them.
    let before_harvest = |kind, first: f64, last: f64| {
        let usual = DateSpan::new(shift(harvest.from, -first), shift(harvest.from, -last));
        let when = inputs.no_earlier(kind, usual);
        DateSpan::new(when.from.min(harvest.from), when.to.min(harvest.from))
    };
    let fill = inputs.no_earlier(
        StepKind::FillContainer,
        DateSpan::new(harvest.from, shift(harvest.to, a.fill_within_days)),
    );
    let expected = inputs.rains.onset;
    let onset = inputs.began.unwrap_or(expected);
    let late = inputs.began.unwrap_or(inputs.rains.late);
    // Once the rains are there, nothing is gained by waiting with the bed.
    let before_rains = |weeks: f64| shift(expected, -7.0 * weeks).min(onset);
    let bed_wanted = before_rains(a.bed_weeks_before_rains_first);
    let bed_usual = bed_wanted.max(fill.to);
    let bed_from = inputs.open(StepKind::PlantBed).map_or(bed_usual, |today| bed_usual.max(today));
    let bed_to = before_rains(a.bed_weeks_before_rains_last).max(bed_from);
    let bed = DateSpan::new(bed_from, bed_to);
    let first_cut = shift(bed_from, a.first_cut_days_after_bed);
    let cut_from = onset.max(first_cut);
    let cut_from = inputs.open(StepKind::CutForPlanting).map_or(cut_from, |today| cut_from.max(today));
    let cut = DateSpan::new(cut_from, shift(late.max(cut_from), a.planting_window_days));

    for (kind, when, why) in on_the_plants(inputs, harvest.from, a) {
        step(kind, when, why);
    }
    step(
        StepKind::GatherSand,
        before_harvest(StepKind::GatherSand, a.gather_sand_days_before_harvest, 1.0),
        DateReason::GatherSand,
    );
    let why = match harvest {
        DateSpan { from: first, to: last } if first < last => DateReason::HarvestOfMany { first, last },
        _ => DateReason::Harvest,
    };
    step(StepKind::Harvest, harvest, why);
    step(StepKind::FillContainer, fill, DateReason::FillContainer);

    // Once the last check is made, no later day of the bed brings more of them.
    let until = if inputs.is_done(StepKind::LastCheck, bed) { bed_usual.min(bed_from) } else { bed_from };
    for (when, why) in checks(inputs, fill.from, until, a) {
        step(StepKind::MonthlyCheck, when, why);
    }

    let prepare = inputs.no_earlier(
        StepKind::PrepareBed,
        DateSpan::new(shift(bed_from, -a.prepare_bed_days), shift(bed_from, -1.0)),
    );
    step(
        StepKind::PrepareBed,
        DateSpan::new(prepare.from.min(bed_from), prepare.to.min(bed_from)),
        DateReason::PrepareBed { days: a.prepare_bed_days },
    );
    let last_check = inputs.open(StepKind::LastCheck).map_or(bed_usual.min(bed_from), |_| bed_from);
    let last_checked = shift(last_check, if inputs.spread { a.zone_span_days - 1.0 } else { 0.0 });
    match inputs.checks.last().filter(|check| check.is_last) {
        Some(check) => step(
            StepKind::LastCheck,
            DateSpan::day(check.date),
            DateReason::Checked { healthy: check.healthy },
        ),
        None => step(
            StepKind::LastCheck,
            DateSpan::new(last_check, last_checked.min(bed_to).max(last_check)),
            DateReason::LastCheck,
        ),
    }
    step(
        StepKind::PlantBed,
        bed,
        if bed_from > bed_usual {
            DateReason::PlantBedLate { rains: expected, due: bed_usual }
        } else {
            DateReason::PlantBed {
                rains: expected,
                least_weeks: a.bed_weeks_before_rains_last,
                most_weeks: a.bed_weeks_before_rains_first,
            }
        },
    );
    step(StepKind::WaterBed, DateSpan::new(bed_from, cut.from.max(late)), DateReason::WaterBed);
    step(
        StepKind::CutForPlanting,
        cut,
        match inputs.began {
            Some(began) => DateReason::CutAsRainsCame { began },
            None if late > onset => DateReason::CutFromEarlyToLate { rains: onset, late },
            None => DateReason::CutWhenRainsCome { rains: onset },
        },
    );
    let field = inputs.no_earlier(StepKind::PlantField, cut);
    step(StepKind::PlantField, field, DateReason::PlantField { days: a.planting_window_days });
    let (ripe_first, ripe_last) = inputs.maturity;
    let ripe = DateSpan::new(shift(field.from, ripe_first), shift(field.to, ripe_last));
    step(
        StepKind::FirstHarvest,
        inputs.no_earlier(StepKind::FirstHarvest, ripe),
        DateReason::FirstHarvest { least_days: ripe_first, most_days: ripe_last },
    );

    if bed_usual > bed_wanted {
        remarks.push(Remark::RainsTooSoon { rains: expected, bed: bed_from });
    }
    if first_cut > onset {
        let came = if inputs.began.is_some() { "yes" } else { "no" };
        remarks.push(Remark::BedLate { cut: first_cut, came, onset });
    }
    let stored = u32::try_from((bed_from - fill.from).num_days()).unwrap_or(0);
    if f64::from(stored) > a.storage_evidence_days {
        remarks.push(Remark::LongInSand { days: stored, evidence_days: a.storage_evidence_days });
    }
    steps.sort_by_key(|step: &Step| (step.when.from, step.kind));
    Timeline { steps, remarks }
}

/// The steps on the plants of the old field, on a farm that digs on `day`: each ends before the next begins.
///
/// Cut leaves cannot be looked at, and plants that were cut too late wound easily. Where the usual days cross, the
/// earlier step goes first. Late work loses days of its windows, and only where a step is left no day of its own it
/// shares that of the one before.
fn on_the_plants(
    inputs: &SeasonInputs<'_>,
    day: NaiveDate,
    assumptions: &Assumptions,
) -> [(StepKind, DateSpan, DateReason); 3] {
    let a = assumptions;
    let mut steps = [
        (StepKind::MarkPlants, a.mark_days_before_harvest, a.mark_days_before_harvest - a.mark_within_days),
        (StepKind::CheckPlants, a.check_days_before_harvest_first, a.check_days_before_harvest_last),
        (StepKind::CutVines, a.cut_vines_days_before_harvest_first, a.cut_vines_days_before_harvest_last),
    ];
    // From the harvest back: the days before it from which on the next step has its own.
    let mut taken: f64 = 0.0;
    for (_, most, least) in steps.iter_mut().rev() {
        *least = least.round().max(taken + 1.0);
        *most = most.round().max(*least);
        taken = *most;
    }
    // And from today on: a step that is not done waits for the one before.
    let mut free = NaiveDate::MIN;
    let mut following = steps.len() as f64;
    steps.map(|(kind, most_days, least_days)| {
        let usual = DateSpan::new(shift(day, -most_days), shift(day, -least_days));
        let from = match inputs.open(kind) {
            // As late as leaves a day for each of those that follow.
            Some(today) => usual.from.max(free).min(shift(day, -following)).max(today),
            None => usual.from,
        };
        let when = DateSpan::new(from, usual.to.max(from));
        let why = match kind {
            _ if from > usual.to => {
                DateReason::BeforeHarvestLate { days: (day - from).num_days().max(0) as f64 }
            }
            StepKind::MarkPlants => DateReason::MarkPlants { days: most_days, harvest: day },
            StepKind::CheckPlants => DateReason::CheckPlants { least_days, most_days },
            _ => DateReason::CutVines { least_days, most_days },
        };
        free = shift(when.to, 1.0);
        following -= 1.0;
        (kind, when, why)
    })
}

/// The checks of a store: an early one, then one every so many months; one that stands for all that are overdue.
/// Those that were made stand on their days, and those to come follow them.
fn checks(
    inputs: &SeasonInputs<'_>,
    filled: NaiveDate,
    bed: NaiveDate,
    assumptions: &Assumptions,
) -> Vec<(DateSpan, DateReason)> {
    let a = assumptions;
    // In a zone the last farms fill, and check, so much later than the first.
    let spread = (inputs.harvest.to - inputs.harvest.from).num_days() as f64;
    let every = a.check_every_months.round().max(1.0) as u32;
    // A check so close to the next work only disturbs the roots.
    let before = |work: NaiveDate| shift(work, -a.least_days_between_checks);
    let monthly = (1..=24).map_while(|times| {
        let months = times * every;
        let date = filled.checked_add_months(Months::new(months)).filter(|date| *date <= before(bed))?;
        Some((DateSpan::day(date), DateReason::MonthlyCheck { months, filled }))
    });
    let mut checks: Vec<(DateSpan, DateReason)> = monthly.collect();
    let next = checks.first().map_or(bed, |(when, _)| when.from);
    let (least_days, most_days) = (a.early_check_days_first, a.early_check_days_last);
    let (from, to) = (shift(filled, least_days), shift(filled, most_days).min(before(next)));
    if from <= to {
        let why = DateReason::EarlyCheck { least_days, most_days: (to - filled).num_days() as f64, filled };
        checks.insert(0, (DateSpan::new(from, to), why));
    }
    let spread_out = |from, to| DateSpan::new(from, shift(to, spread).min(before(bed)).max(from));
    for (when, _) in &mut checks {
        *when = spread_out(when.from, when.to);
    }
    one_by_one(&mut checks);
    if let Some(last) = inputs.checks.last() {
        // A check that was made stands for those due within the days after it.
        let next = shift(last.date, a.least_days_between_checks);
        checks.retain(|(when, _)| when.to > next);
        for (when, _) in &mut checks {
            when.from = when.from.max(next);
        }
        let days = a.check_soon_days;
        let soon = shift(last.date, days);
        if last.is_last {
            checks.clear();
        } else if last.fast_loss && soon <= before(bed) {
            let after = shift(soon, a.least_days_between_checks);
            checks.retain(|(when, _)| when.from >= after);
            let why = DateReason::CheckSoon { days, checked: last.date };
            checks.insert(0, (DateSpan::day(soon), why));
        }
    }
    if let Some(today) = inputs.open(StepKind::MonthlyCheck) {
        let planned = checks.len();
        checks.retain(|(when, _)| when.to >= today);
        for (when, _) in &mut checks {
            when.from = when.from.max(today);
        }
        if checks.len() < planned && today <= before(bed) {
            let again = shift(today, a.least_days_between_checks);
            if checks.first().is_some_and(|(when, _)| when.from < again) {
                checks.remove(0);
                checks.retain(|(when, _)| before(when.from) >= again);
                if again <= before(bed) {
                    let why = DateReason::CheckAgain { days: a.least_days_between_checks };
                    checks.insert(0, (spread_out(again, again), why));
                }
            }
            checks.insert(0, (spread_out(today, today), DateReason::OverdueCheck));
        }
    }
    one_by_one(&mut checks);
    let made = inputs
        .checks
        .iter()
        .filter(|check| !check.is_last)
        .map(|check| (DateSpan::day(check.date), DateReason::Checked { healthy: check.healthy }));
    made.chain(checks).collect()
}

/// Ends each check before the next begins, where farms dig so far apart that they would cross.
fn one_by_one(checks: &mut [(DateSpan, DateReason)]) {
    let mut next = NaiveDate::MAX;
    for (when, _) in checks.iter_mut().rev() {
        when.to = when.to.min(shift(next, -1.0)).max(when.from);
        next = when.from;
    }
}

/// The step before one in the usual order.
pub(super) fn before(kind: StepKind) -> Option<StepKind> {
    StepKind::ALL.into_iter().take_while(|other| *other != kind).last()
}
