//! `kabla plan`

use std::fmt::Write as _;
use std::path::Path;

use chrono::NaiveDate;

use crate::app::{self, Data, Error, Outline, Overrides, Plan, Step, StepKind};

pub(super) fn run(
    data: &dyn Data,
    case: &Path,
    language: &str,
    overrides: Overrides,
    json: bool,
) -> Result<(), Error> {
    if json {
        return super::print_json(&serde_json::json!(app::plan(case, overrides)?));
    }
    let (plan, outline) = app::outline(data, case, language, overrides)?;
    super::print(&in_words(&plan, &outline))
}

/// How wide a line is where the terminal does not say.
const WIDTH: usize = 110;
/// The least room for a reason beside its row.
const LEAST_REASON: usize = 30;

/// The plan as a short calendar, the amounts with their reasons, the remarks last.
fn in_words(plan: &Plan, outline: &Outline) -> String {
    let width = std::env::var("COLUMNS").ok().and_then(|columns| columns.parse().ok()).unwrap_or(WIDTH);
    let mut page = Page { text: String::new(), width };
    let title = format!("{}, {}", plan.name, plan.place);
    page.line(&title);
    page.reason(&format!("Rains expected on {}: ", plan.rains), &plan.rains_why);
    page.heading("");
    let (band, signs) = super::band::season(outline);
    page.text.push_str(&band);
    page.reason("", &signs);
    calendar(plan, outline, &mut page);
    overdue(plan, &mut page);
    page.heading("AMOUNT                    HOW MUCH                    WHY");
    for amount in &plan.amounts.0 {
        let mut much = amount.value.to_string();
        if let Some((low, high)) = amount.range {
            let _ = write!(much, " ({low}–{high})");
        }
        let unit = amount.quantity.unit();
        let one = if amount.value == 1.0 { unit.strip_suffix('s') } else { None };
        let _ = write!(much, " {}", one.unwrap_or(unit));
        page.reason(&format!("{:<25} {much:<27} ", amount.quantity.name()), &amount.why);
    }
    containers(plan, &mut page);
    water(plan, &mut page);
    after(plan, &mut page);
    many(plan, &mut page);
    planting_delays(plan, &mut page);
    let changed: Vec<String> = plan
        .defaults
        .iter()
        .filter(|used| used.basis.is_none())
        .map(|used| format!("{} = {} {}", used.name, used.value, used.unit).trim_end().to_owned())
        .collect();
    if !changed.is_empty() {
        page.heading("");
        page.reason("From the case instead of the default: ", &changed.join(", "));
    }
    if !plan.findings.is_empty() {
        page.heading("");
        for finding in &plan.findings {
            page.line(&finding.to_string());
        }
    }
    page.text
}

/// The text so far.
struct Page {
    text: String,
    width: usize,
}

impl Page {
    fn line(&mut self, line: &str) {
        self.text.push_str(line.trim_end());
        self.text.push('\n');
    }

    /// An empty line and, where it has words, a heading.
    fn heading(&mut self, heading: &str) {
        self.text.push('\n');
        if !heading.is_empty() {
            self.line(heading);
        }
    }

    /// A row with its reason, which goes on under itself.
    fn reason(&mut self, row: &str, why: &str) {
        let indent = row.chars().count();
        let (indent, room) = match self.width.checked_sub(indent).filter(|room| *room >= LEAST_REASON) {
            Some(room) => (indent, room),
            None => (4, self.width.saturating_sub(4).max(LEAST_REASON)),
        };
        let mut left = row.to_owned();
        if indent < row.chars().count() {
            self.line(row);
            left = " ".repeat(indent);
        }
        // Dates have hyphens, and stay whole.
        let options = textwrap::Options::new(room).word_splitter(textwrap::WordSplitter::NoHyphenation);
        for line in textwrap::wrap(why, options) {
            self.line(&format!("{left}{line}"));
            left = " ".repeat(indent);
        }
    }
}

fn calendar(plan: &Plan, outline: &Outline, page: &mut Page) {
    page.heading("WHEN                      WEEKS TO RAINS  STEP              WHAT TO DO, AND WHY THEN");
    for step in steps(plan) {
        let when = match step.last {
            Some(last) if last != step.first.when.from => format!("{} to {last}", step.first.when.from),
            _ => step.first.when.from.to_string(),
        };
        let days = (plan.rains - step.first.when.from).num_days();
        let weeks = if days >= 0 { (days / 7).to_string() } else { format!("{} after", -days / 7) };
        let mark = plan.today.map_or("", |today| match step.last {
            Some(last) if last < today => "(past) ",
            _ if step.first.when.from <= today => "(NOW) ",
            _ => "",
        });
        let row = format!("{when:<25} {weeks:>14}  {:<17} ", step.first.kind.name());
        let title =
            outline.titles.get(&step.first.kind).map(|title| format!("{title}: ")).unwrap_or_default();
        page.reason(&row, &format!("{mark}{title}{}", step.why));
    }
}

/// What should be done by now.
fn overdue(plan: &Plan, page: &mut Page) {
    let Some(today) = plan.today.filter(|_| !plan.overdue.is_empty()) else { return };
    let certain = plan.overdue.iter().all(|step| step.certain);
    let heading = if certain {
        format!("NOT DONE WHEN DUE, counted anew from {today}")
    } else {
        format!("IF NOT DONE BY {today}     (say what is done: --done {})", StepKind::FillContainer.name())
    };
    page.heading(&heading);
    for step in &plan.overdue {
        let row = format!("{:<17} due to {}  ", step.kind.name(), step.due.to);
        // What is known to be missing costs the same together as each step; it stands with the remarks.
        let cost = if certain { String::new() } else { format!(". Cost: {}", step.cost()) };
        page.reason(&row, &format!("{}{cost}.", step.still_possible));
    }
}

fn containers(plan: &Plan, page: &mut Page) {
    page.heading("CONTAINERS, from the bottom up");
    for filled in &plan.containers {
        let layers: Vec<String> = filled.roots_by_layer().map(|(_, roots)| roots.to_string()).collect();
        let rest = if filled.roots > filled.roots_in_fullest { ", the last one with the rest" } else { "" };
        let row = format!("{} × {}: ", filled.count, filled.container);
        page.reason(&row, &format!("{} roots, in layers of {}{rest}", filled.roots, layers.join(", ")));
    }
}

fn water(plan: &Plan, page: &mut Page) {
    page.heading("WATER FOR THE BED         ET₀ MM/DAY    KC  RAIN MM/DAY  L/DAY");
    for period in &plan.water {
        page.line(&format!(
            "{} to {}  {:>10.1}  {:>4.2}  {:>11.1}  {:>5}",
            period.when.from, period.when.to, period.et0.0, period.kc, period.rain.0, period.daily.0
        ));
    }
}

fn after(plan: &Plan, page: &mut Page) {
    page.heading("CUTS FROM THE BED         CUTTINGS  FIELD M²");
    for cut in &plan.cuts {
        page.line(&format!("{} to {}  {:>8}  {:>8}", cut.when.from, cut.when.to, cut.cuttings, cut.area.0));
    }
    let harvest = &plan.harvest;
    page.heading("");
    page.reason(&format!("Harvest from {} to {}: ", harvest.first, harvest.last), &harvest.why);
    if let Some((low, high)) = harvest.yield_low.zip(harvest.yield_high) {
        page.reason(&format!("It may give {} to {}: ", low, high), &harvest.yield_why);
    }
    if let Some(vitamin) = &plan.vitamin_a {
        let text = format!(
            "{:.0} g, boiled, hold about {:.0} µg of vitamin A (retinol activity equivalents); a child of 1 to 3 years should have 300 a day, of 4 to 8 years 400. Roots of one variety differ: this is no promise.",
            vitamin.serving_g, vitamin.rae_ug_per_serving_boiled
        );
        page.reason("Vitamin A: ", &text);
    }
}

/// Tables for groups and zones.
fn many(plan: &Plan, page: &mut Page) {
    if !plan.farms.is_empty() {
        page.heading("FARM                        FIELD M²  CUTTINGS  PLANTS TO MARK  ROOTS TO BRING");
        for farm in &plan.farms {
            page.line(&format!(
                "{:<26}  {:>8}  {:>8}  {:>14}  {:>14}",
                farm.name, farm.area.0, farm.cuttings, farm.plants, farm.roots
            ));
        }
    }
    if !plan.by_field.is_empty() {
        page.heading("FIELD M²  CUTTINGS  ROOTS TO STORE  PLANTS TO MARK  BED M²  JERRYCANS/DAY");
        for row in &plan.by_field {
            page.line(&format!(
                "{:>8}  {:>8}  {:>14}  {:>14}  {:>6}  {:>13}",
                row.area.0, row.cuttings, row.roots, row.plants, row.bed.0, row.jerrycans_per_day
            ));
        }
    }
}

fn planting_delays(plan: &Plan, page: &mut Page) {
    if plan.planting_delays.is_empty() {
        return;
    }
    page.heading("");
    super::rains::planting_delay_table(&plan.planting_delays, &mut page.text);
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
        let times = plan.steps_of(StepKind::MonthlyCheck).count();
        if step.kind == StepKind::MonthlyCheck && times > 1 {
            if lines.iter().any(|line| line.first.kind == StepKind::MonthlyCheck) {
                continue;
            }
            let last = plan.steps_of(StepKind::MonthlyCheck).last().map(|step| step.when.to);
            let days: Vec<String> =
                plan.steps_of(StepKind::MonthlyCheck).map(|step| step.when.from.to_string()).collect();
            lines.push(Line { first: step, last, why: format!("once a month: {}", days.join(", ")) });
        } else {
            lines.push(Line { first: step, last: Some(step.when.to), why: step.why.clone() });
        }
    }
    lines
}
