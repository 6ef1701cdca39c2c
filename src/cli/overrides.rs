//! Options that go before what the case says.

use chrono::NaiveDate;
use clap::Args;

use crate::app::{Overrides, PlanBy, Risk, StepKind};

/// What goes before the case's own.
#[derive(Debug, Clone, Args)]
pub(super) struct OverrideArguments {
    /// Count from this day (year-month-day), not from the case's own.
    #[arg(long, value_name = "DATE")]
    today: Option<NaiveDate>,
    /// The last step that is done: what is overdue after it is planned anew from today.
    #[arg(long, value_name = "STEP", value_parser = topic)]
    done: Option<StepKind>,
    /// Time the plan by this part of the years' onsets: early, middle, late, or a percentage.
    #[arg(long, value_name = "RISK", value_parser = risk)]
    risk: Option<Risk>,
    /// Store so many roots that the cuttings suffice in this many of 100 seasons.
    #[arg(long = "sure", value_name = "PERCENT", value_parser = percent)]
    confidence: Option<f64>,
    /// Count cuttings by this side: print (a growth curve held against print) or practice (round figures that promise more).
    #[arg(long, value_name = "SIDE", value_parser = plan_by)]
    plan_by: Option<PlanBy>,
}

impl From<OverrideArguments> for Overrides {
    fn from(of: OverrideArguments) -> Overrides {
        Overrides {
            today: of.today,
            done: of.done,
            risk: of.risk,
            confidence_percent: of.confidence,
            plan_by: of.plan_by,
        }
    }
}

pub(super) fn topic(name: &str) -> Result<StepKind, String> {
    let known = || StepKind::ALL.map(StepKind::name).join(", ");
    StepKind::from_name(name).ok_or_else(|| format!("topics are {}", known()))
}

fn risk(text: &str) -> Result<Risk, String> {
    match text {
        "early" => Ok(Risk::Early),
        "middle" => Ok(Risk::Middle),
        "late" => Ok(Risk::Late),
        other => percent(other)
            .map(Risk::Percentile)
            .map_err(|_| "write early, middle, late, or per cents from 1 to 99".to_owned()),
    }
}

fn plan_by(name: &str) -> Result<PlanBy, String> {
    let side = PlanBy::NAMED.into_iter().find(|(known, _)| *known == name);
    side.map(|(_, side)| side).ok_or_else(|| "write print or practice".to_owned())
}

fn percent(text: &str) -> Result<f64, String> {
    text.parse()
        .ok()
        .filter(|percent| (1.0..=99.0).contains(percent))
        .ok_or_else(|| "write a percentage from 1 to 99".to_owned())
}
