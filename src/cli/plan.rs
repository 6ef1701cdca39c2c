//! `kabla plan`

use std::path::Path;

use chrono::NaiveDate;

use crate::app::{self, Error, Plan, Step, Topic};

pub(super) fn run(case: &Path, today: Option<NaiveDate>, sure: Option<f64>, json: bool) -> Result<(), Error> {
    let plan = app::plan(case, today, sure)?;
    if json {
        println!("{:#}", serde_json::json!(plan));
    } else {
        print!("{}", in_words(&plan));
    }
    Ok(())
}

/// The plan as a short calendar, the amounts with their reasons, the remarks last.
pub(crate) fn in_words(plan: &Plan) -> String {
    let mut text =
        format!("{}, {}\nRains expected on {}: {}\n\n", plan.name, plan.place, plan.rains, plan.rains_why);
    text.push_str("WHEN                      WEEKS TO RAINS  WHAT TO DO        WHY\n");
    for step in steps(plan) {
        let when = match step.last {
            Some(last) if last != step.first.when.from => format!("{} to {last}", step.first.when.from),
            _ => step.first.when.from.to_string(),
        };
        let days = (plan.rains - step.first.when.from).num_days();
        let weeks = if days >= 0 { (days / 7).to_string() } else { format!("{} after", -days / 7) };
        let mark = plan.today.map_or("", |today| match step.last {
            Some(last) if last < today => "  (past)",
            _ if step.first.when.from <= today => "  (NOW)",
            _ => "",
        });
        text.push_str(&format!(
            "{when:<25} {weeks:>14}  {:<17} {}{mark}\n",
            step.first.topic.name(),
            step.why
        ));
    }
    text.push_str("\nAMOUNT                    HOW MUCH         WHY\n");
    for amount in &plan.amounts.0 {
        let much = format!("{} {}", amount.value, amount.quantity.unit());
        text.push_str(&format!("{:<25} {much:<16} {}\n", amount.quantity.name(), amount.why));
    }
    let changed: Vec<String> = plan
        .defaults
        .iter()
        .filter(|used| used.basis.is_none())
        .map(|used| format!("{} = {} {}", used.name, used.value, used.unit).trim_end().to_owned())
        .collect();
    if !changed.is_empty() {
        text.push_str(&format!("\nFrom the case instead of the default: {}\n", changed.join(", ")));
    }
    if !plan.findings.is_empty() {
        text.push('\n');
        for finding in &plan.findings {
            text.push_str(&format!("{finding}\n"));
        }
    }
    text
}

/// A line of the calendar: the monthly checks share one.
struct Line<'a> {
    first: &'a Step,
    last: Option<NaiveDate>,
    why: String,
}

fn steps(plan: &Plan) -> Vec<Line<'_>> {
    let mut lines: Vec<Line<'_>> = Vec::new();
    for step in &plan.steps {
        let times = plan.steps_of(Topic::MonthlyCheck).count();
        if step.topic == Topic::MonthlyCheck && times > 1 {
            if lines.iter().any(|line| line.first.topic == Topic::MonthlyCheck) {
                continue;
            }
            let last = plan.steps_of(Topic::MonthlyCheck).last().map(|step| step.when.to);
            let days: Vec<String> =
                plan.steps_of(Topic::MonthlyCheck).map(|step| step.when.from.to_string()).collect();
            lines.push(Line { first: step, last, why: format!("once a month: {}", days.join(", ")) });
        } else {
            lines.push(Line { first: step, last: Some(step.when.to), why: step.why.clone() });
        }
    }
    lines
}
