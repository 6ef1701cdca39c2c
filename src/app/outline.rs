//! A plan in a pack's words: everything that the terminal shows of it.

use std::collections::BTreeMap;
use std::path::Path;

use chrono::NaiveDate;

use super::{Data, Error, Finding, Overrides, Plan, ReadCase, Severity, StepKind, remarks};
use crate::guidance::shapes::{SeasonBand, Shapes};
use crate::guidance::{Column, Subject, Variable, tell};
use crate::language::{Label, Pack, PlanLabel, WordingError};
use crate::plan::multiply::Cuttings;
use crate::plan::season::{OnsetOutlook, Ripening};
use crate::plan::store::{Filled, Shape};
use crate::plan::ways::{Way, WayKind};
use crate::plan::{Advice, Amount, DateReason, DateSpan, Step, Value};

/// A plan in words, in the order in which it is shown.
#[derive(Debug, Clone, PartialEq)]
pub struct Outline {
    /// Whose plan it is, and where.
    pub title: String,
    /// When the rains are expected, and why then.
    pub rains: Line,
    /// The season at a glance.
    pub band: Band,
    /// The calendar, the amounts, and what else there is to tell.
    pub blocks: Vec<Block>,
    /// Findings about the case and the records it names, in English.
    pub findings: Vec<Finding>,
    /// Remarks on the plan.
    pub remarks: Vec<Noticed>,
    /// The sign between a label and its text.
    pub colon: String,
    /// The language's name, where its pack lacks the words of plans and these stand in English.
    pub lacking: Option<String>,
}

/// The season at a glance.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Band {
    /// The first day that is shown.
    pub from: NaiveDate,
    /// The last day that is shown.
    pub to: NaiveDate,
    /// What lies where: in sand, in the bed, in the field.
    pub parts: Vec<BandPart>,
    /// Days to know, each with its name and sign.
    pub days: Vec<(String, char, NaiveDate)>,
}

/// A part of the season.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct BandPart {
    /// Its name.
    pub name: String,
    /// The sign that draws it.
    pub sign: char,
    /// Its days.
    pub when: DateSpan,
}

/// Lines and a table below a heading; each may be missing.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Block {
    /// The heading.
    pub heading: String,
    /// The lines.
    pub lines: Vec<Line>,
    /// The table.
    pub table: Table,
}

/// A label and its text.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Line {
    /// The label.
    pub label: String,
    /// The text.
    pub text: String,
}

/// Rows below the heads of their columns. The last column may run over several lines.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Table {
    /// The head of each column, and whether it holds numbers.
    pub columns: Vec<(String, bool)>,
    /// The rows.
    pub rows: Vec<Vec<String>>,
}

/// A remark in words.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Noticed {
    /// How much it matters, in a word.
    pub severity: String,
    /// The field of the case that it hangs on.
    pub field: Option<&'static str>,
    /// What is the case.
    pub message: String,
    /// A word for what to do, and what to do.
    pub advice: Line,
}

/// The plan of a case, or of one farm of a group, in the words of a language.
///
/// # Errors
/// All problems of the case, of the records it names, or of the pack.
pub fn outline(
    data: &dyn Data,
    case: &Path,
    language: &str,
    overrides: Overrides,
    farm: Option<&str>,
) -> Result<Outline, Error> {
    let read = ReadCase::from_disk(case)?.with(overrides)?;
    let (case, plan) = read.planned(farm)?;
    let pack = read.pack(data, Some(language))?;
    let english = if pack.words_plan() { None } else { Some(remarks::english()?) };
    let mut titles = BTreeMap::new();
    for statement in tell(&case, &plan) {
        if let Subject::Step(kind) = statement.subject {
            titles.insert(kind, pack.write_title(&statement)?);
        }
    }
    let words = Words { pack: english.as_ref().unwrap_or(&pack), plan: &plan };
    let noticed = plan.remarks.iter().map(|remark| words.noticed(remark));
    Ok(Outline {
        title: format!("{}, {}", plan.name, plan.place),
        rains: words.rains(case.rains_began.is_some())?,
        band: band(&pack, Shapes::of(&case, &plan).season, &titles)?,
        blocks: words.blocks(&titles)?,
        remarks: noticed.collect::<Result<_, _>>()?,
        findings: read.remarks,
        colon: words.pack.label(Label::Colon, &[])?,
        lacking: english.is_some().then(|| pack.name().to_owned()),
    })
}

fn band(pack: &Pack, season: SeasonBand, titles: &BTreeMap<StepKind, String>) -> Result<Band, WordingError> {
    let label = |id| pack.label(id, &[]);
    let SeasonBand { from, to, store, checks, bed, field, harvest, rains, food, .. } = season;
    let mut parts = Vec::new();
    for (id, sign, when) in [
        (Label::SeasonStore, '·', store),
        (Label::SeasonBed, '~', bed),
        (Label::SeasonField, '#', Some(field)),
    ] {
        if let Some(when) = when {
            parts.push(BandPart { name: label(id)?, sign, when });
        }
    }
    let mut days = Vec::new();
    for day in checks {
        days.push((titles.get(&StepKind::MonthlyCheck).cloned().unwrap_or_default(), '+', day));
    }
    for (id, sign, day) in [
        (Label::SeasonOnHarvest, 'H', harvest),
        (Label::SeasonOnRains, 'R', rains),
        (Label::SeasonOnFood, 'F', food),
    ] {
        days.push((label(id)?, sign, day));
    }
    Ok(Band { from, to, parts, days })
}

type Worded<T> = Result<T, WordingError>;

/// A plan beside the pack that words it.
struct Words<'a> {
    pack: &'a Pack,
    plan: &'a Plan,
}

impl Words<'_> {
    fn label(&self, label: PlanLabel, values: &[(&str, Value)]) -> Worded<String> {
        self.pack.plan_label(label, values)
    }

    fn number(&self, value: impl Into<Value>) -> String {
        match value.into() {
            Value::Number(value, decimals) => self.pack.write_number(value, decimals),
            _ => String::new(),
        }
    }

    fn decimals(&self, value: f64, decimals: u8) -> String {
        self.pack.write_number(value, decimals)
    }

    fn columns<const N: usize>(&self, columns: [(PlanLabel, bool); N]) -> Worded<Vec<(String, bool)>> {
        columns.into_iter().map(|(label, numbers)| Ok((self.label(label, &[])?, numbers))).collect()
    }

    fn rains(&self, began: bool) -> Worded<Line> {
        let label = if began { PlanLabel::RainsBegun } else { PlanLabel::Rains };
        Ok(Line {
            label: match self.plan.onset_outlook {
                None => self.label(label, &[("rains", Value::Date(self.plan.rains))])?,
                Some(OnsetOutlook { days, .. }) => self.label(
                    PlanLabel::RainsObserved,
                    &[
                        ("early", Value::Date(days.early)),
                        ("usual", Value::Date(days.usual)),
                        ("late", Value::Date(days.late)),
                    ],
                )?,
            },
            text: self.pack.write_reason(&self.plan.rains_why)?,
        })
    }

    fn blocks(&self, titles: &BTreeMap<StepKind, String>) -> Worded<Vec<Block>> {
        let blocks = [
            self.calendar(titles)?,
            self.late()?,
            self.amounts()?,
            self.containers()?,
            self.water()?,
            self.cuts()?,
            self.ways()?,
            self.harvest()?,
            self.farms()?,
            self.by_field()?,
            self.planting_delays()?,
            self.advice(titles)?,
            self.changed()?,
        ];
        let told = |block: &Block| !block.lines.is_empty() || !block.table.rows.is_empty();
        Ok(blocks.into_iter().filter(told).collect())
    }

    /// The steps by date; the checks that come month by month share a row.
    fn calendar(&self, titles: &BTreeMap<StepKind, String>) -> Worded<Block> {
        let is_monthly = |step: &&Step| matches!(step.why, DateReason::MonthlyCheck { .. });
        let checks: Vec<&Step> = self.plan.now.steps.iter().filter(is_monthly).collect();
        let mut rows = Vec::new();
        let mut checks_told = false;
        for step in &self.plan.now.steps {
            let one_of_many = checks.len() > 1 && is_monthly(&step);
            if one_of_many && std::mem::replace(&mut checks_told, true) {
                continue;
            }
            let (last, why) = if one_of_many {
                let dates: Vec<String> = checks.iter().map(|check| check.when.from.to_string()).collect();
                let why = self.label(PlanLabel::Checks, &[("dates", Value::Text(dates.join(", ")))])?;
                (checks.last().map_or(step.when.to, |check| check.when.to), why)
            } else {
                (step.when.to, self.pack.write_reason(&step.why)?)
            };
            let mark = match self.plan.today {
                _ if step.done => self.label(PlanLabel::Done, &[])? + " ",
                Some(today) if last < today => self.label(PlanLabel::Past, &[])? + " ",
                Some(today) if step.when.from <= today => self.label(PlanLabel::Now, &[])? + " ",
                _ => String::new(),
            };
            let title = titles.get(&step.kind).map(String::as_str).unwrap_or_default();
            rows.push(vec![
                days(DateSpan::new(step.when.from, last)),
                self.weeks_to_rains(step.when.from)?,
                step.kind.name().to_owned(),
                format!("{mark}{title}\n{why}"),
            ]);
        }
        let columns = self.columns([
            (PlanLabel::ColumnWhen, false),
            (PlanLabel::ColumnWeeks, true),
            (PlanLabel::ColumnStep, false),
            (PlanLabel::ColumnWhat, false),
        ])?;
        Ok(Block { table: Table { columns, rows }, ..Block::default() })
    }

    fn weeks_to_rains(&self, day: NaiveDate) -> Worded<String> {
        let days = (self.plan.rains - day).num_days();
        let weeks = Value::Number((days.abs() / 7) as f64, 0);
        if days >= 0 {
            Ok(self.number(weeks))
        } else {
            self.label(PlanLabel::WeeksAfter, &[("weeks", weeks)])
        }
    }

    /// What should be done by now.
    fn late(&self) -> Worded<Block> {
        let Some(today) = self.plan.today else { return Ok(Block::default()) };
        let certain = self.plan.overdue.iter().all(|late| late.certain);
        let today = ("today", Value::Date(today));
        let heading = if certain {
            self.label(PlanLabel::LateCertain, &[today])?
        } else {
            let option = format!("--done {}", StepKind::FillContainer.name());
            self.label(PlanLabel::LateMaybe, &[today, ("option", Value::Text(option))])?
        };
        let row = |late: &crate::plan::overdue::Overdue| {
            // What is known to be missing costs the same together as each step; it stands with the remarks.
            let cost = if certain { String::new() } else { self.pack.write_reason(&late.cost())? };
            Ok(vec![
                late.kind.name().to_owned(),
                late.due.to.to_string(),
                format!("{}\n{cost}", self.pack.write_reason(late)?),
            ])
        };
        let rows = self.plan.overdue.iter().map(row).collect::<Worded<_>>()?;
        let columns = self.columns([
            (PlanLabel::ColumnStep, false),
            (PlanLabel::ColumnDue, false),
            (PlanLabel::ColumnStill, false),
        ])?;
        Ok(Block { heading, table: Table { columns, rows }, ..Block::default() })
    }

    fn amounts(&self) -> Worded<Block> {
        let row = |amount: &Amount| {
            let mut much = self.number(amount.told());
            if let Some((low, high)) = amount.told_range() {
                much = format!("{much} ({}–{})", self.number(low), self.number(high));
            }
            let planned = self.plan.planned().amounts.told(amount.quantity);
            if let Some(planned) = planned.filter(|planned| *planned != amount.told()) {
                let planned = ("planned", Value::Text(self.number(planned)));
                much = self.label(PlanLabel::BesidePlanned, &[("much", Value::Text(much)), planned])?;
            }
            Ok(vec![self.pack.plan_amount(amount.quantity)?, much, self.pack.write_reason(&amount.why)?])
        };
        let rows = self.plan.now.amounts.0.iter().map(row).collect::<Worded<_>>()?;
        let columns = self.columns([
            (PlanLabel::ColumnAmount, false),
            (PlanLabel::ColumnMuch, false),
            (PlanLabel::ColumnWhy, false),
        ])?;
        Ok(Block { table: Table { columns, rows }, ..Block::default() })
    }

    fn containers(&self) -> Worded<Block> {
        let lines = self.plan.now.containers.iter().map(|filled| self.container(filled));
        Ok(Block {
            heading: self.label(PlanLabel::Containers, &[])?,
            lines: lines.collect::<Worded<_>>()?,
            table: Table::default(),
        })
    }

    fn container(&self, filled: &Filled) -> Worded<Line> {
        let mut sizes =
            vec![("count", Value::from(filled.count)), ("depth_cm", Value::from(filled.container.depth))];
        match &filled.container.shape {
            Shape::Round { top, bottom } => {
                let shape = if top == bottom { "round" } else { "tapered" };
                sizes.extend([
                    ("shape", shape.into()),
                    ("width_cm", (*top).into()),
                    ("bottom_cm", (*bottom).into()),
                ]);
            }
            Shape::Pot { bands } => {
                let widths: Vec<String> = bands.iter().map(|band| self.number(band.width)).collect();
                sizes.extend([("shape", "pot".into()), ("widths", widths.join(", ").into())]);
            }
            Shape::Box { length, width } => {
                sizes.extend([
                    ("shape", "box".into()),
                    ("length_cm", (*length).into()),
                    ("width_cm", (*width).into()),
                ]);
            }
        }
        let layers: Vec<String> = filled.roots_by_layer().map(|(_, roots)| self.number(roots)).collect();
        let rest = if filled.roots > filled.roots_in_fullest { "yes" } else { "no" };
        let roots = [
            ("roots", Value::from(filled.roots)),
            ("each_layer", layers.join(", ").into()),
            ("rest", rest.into()),
        ];
        Ok(Line {
            label: self.label(PlanLabel::Container, &sizes)?,
            text: self.label(PlanLabel::ContainerRoots, &roots)?,
        })
    }

    fn water(&self) -> Worded<Block> {
        let rows = self.plan.now.water.iter().map(|period| {
            vec![
                days(period.when),
                self.decimals(period.et0.0, 1),
                self.decimals(period.kc, 2),
                self.decimals(period.rain.0, 1),
                self.number(period.daily),
                self.number(period.every_days),
                self.number(period.each_time),
            ]
        });
        let columns = self.columns([
            (PlanLabel::ColumnWater, false),
            (PlanLabel::ColumnEt0, true),
            (PlanLabel::ColumnKc, true),
            (PlanLabel::ColumnRain, true),
            (PlanLabel::ColumnLitres, true),
            (PlanLabel::ColumnEveryDays, true),
            (PlanLabel::ColumnEachTime, true),
        ])?;
        Ok(Block { table: Table { columns, rows: rows.collect() }, ..Block::default() })
    }

    fn cuts(&self) -> Worded<Block> {
        let now = &self.plan.now;
        let counted = now.cuts.iter().map(|cut| {
            let Cuttings { low, middle, high } = cut.cuttings.told();
            let cuttings = format!("{} ({}–{})", self.number(middle), self.number(low), self.number(high));
            let ripe = cut.ripening.map(|ripening| self.ripe(ripening, "yes")).transpose()?;
            Ok(vec![days(cut.when), cuttings, self.number(cut.told_area()), ripe.unwrap_or_default()])
        });
        let late = now.late_cuts.iter().map(|cut| {
            let none = || "–".to_owned();
            Ok(vec![days(cut.when), none(), none(), self.ripe(cut.ripening, "no")?])
        });
        let mut rows = counted.chain(late).collect::<Worded<Vec<_>>>()?;
        let mut columns = self.columns([
            (PlanLabel::ColumnCuts, false),
            (PlanLabel::ColumnCuttings, true),
            (PlanLabel::ColumnField, true),
            (PlanLabel::ColumnRipe, false),
        ])?;
        if rows.iter().all(|row| row.last().is_none_or(String::is_empty)) {
            columns.pop();
            rows.iter_mut().for_each(|row| row.truncate(columns.len()));
        }
        let length = now.rains_length.as_ref().map(|length| self.pack.write_reason(&length.told()));
        Ok(Block {
            heading: length.transpose()?.unwrap_or_default(),
            table: Table { columns, rows },
            ..Block::default()
        })
    }

    /// How often what a cut plants is ripe before the rains end.
    fn ripe(&self, ripening: Ripening, counted: &'static str) -> Worded<String> {
        let known = if ripening.years.is_some() { "record" } else { "case" };
        let of_100 = Value::Number((ripening.share * 100.0 + 1e-9).floor(), 0);
        let values = [("known", known.into()), ("of_100", of_100), ("counted", counted.into())];
        self.label(PlanLabel::Ripe, &values)
    }

    /// What is good to know, each beside the title of its step.
    fn advice(&self, titles: &BTreeMap<StepKind, String>) -> Worded<Block> {
        let line = |advice: &Advice| {
            let label = titles.get(&advice.step()).cloned().unwrap_or_default();
            Ok(Line { label, text: self.pack.write_reason(advice)? })
        };
        Ok(Block {
            heading: self.label(PlanLabel::Advice, &[])?,
            lines: self.plan.advice.iter().map(line).collect::<Worded<_>>()?,
            table: Table::default(),
        })
    }

    /// Ways to have cuttings when the rains come, with what they take and give.
    fn ways(&self) -> Worded<Block> {
        let ways = &self.plan.ways;
        let row = |way: &Way| {
            let Cuttings { low, middle, high } = way.told();
            let cuttings = match low == high {
                true => self.number(middle),
                false => format!("{} ({}–{})", self.number(middle), self.number(low), self.number(high)),
            };
            let begins = [way.from, way.second].into_iter().flatten().map(|day| day.to_string());
            Ok(vec![
                begins.collect::<Vec<_>>().join(", "),
                self.number(way.roots),
                cuttings,
                self.number(way.area),
                self.decimals(way.water.0, 0),
                self.number(way.days),
                self.number(way.trips),
                self.pack.cell(Column::Way, &[Variable::Way.with(Value::Name(way.kind.name()))])?,
            ])
        };
        let Some(first) = ways.first() else { return Ok(Block::default()) };
        let heading = match first.kind {
            WayKind::AsPlanned => self.label(PlanLabel::WaysLeft, &[])?,
            _ => self.label(PlanLabel::Ways, &[])?,
        };
        let rows = ways.iter().map(row).collect::<Worded<_>>()?;
        let columns = self.columns([
            (PlanLabel::ColumnBegins, false),
            (PlanLabel::ColumnRoots, true),
            (PlanLabel::ColumnAtRains, true),
            (PlanLabel::ColumnBed, true),
            (PlanLabel::ColumnAllLitres, true),
            (PlanLabel::ColumnDays, true),
            (PlanLabel::ColumnTrips, true),
            (PlanLabel::ColumnWay, false),
        ])?;
        Ok(Block { heading, table: Table { columns, rows }, ..Block::default() })
    }

    /// The harvest to come, and what it may give.
    fn harvest(&self) -> Worded<Block> {
        let harvest = &self.plan.now.harvest;
        let days = [("first", Value::Date(harvest.first)), ("last", Value::Date(harvest.last))];
        let mut lines = vec![Line {
            label: self.label(PlanLabel::Harvest, &days)?,
            text: self.pack.write_reason(&harvest.why)?,
        }];
        if let (Some(low), Some(high), Some(why)) =
            (harvest.yield_low, harvest.yield_high, &harvest.yield_why)
        {
            let range = [("low", Value::from(low)), ("high", Value::from(high))];
            lines.push(Line {
                label: self.label(PlanLabel::Yield, &range)?,
                text: self.pack.write_reason(why)?,
            });
        }
        if let Some(vitamin) = &self.plan.vitamin_a {
            let values = [
                ("serving_g", Value::Number(vitamin.serving_g.round(), 0)),
                ("vitamin_ug", Value::Number(vitamin.rae_ug_per_serving_boiled.round(), 0)),
            ];
            lines.push(Line {
                label: self.label(PlanLabel::Vitamin, &[])?,
                text: self.label(PlanLabel::VitaminWhy, &values)?,
            });
        }
        Ok(Block { lines, ..Block::default() })
    }

    fn farms(&self) -> Worded<Block> {
        let rows = self.plan.now.farms.iter().map(|farm| {
            let amounts = [farm.cuttings, farm.plants, farm.roots].map(|count| self.number(count));
            [vec![farm.name.clone(), self.number(farm.area)], amounts.to_vec()].concat()
        });
        let columns = self.columns([
            (PlanLabel::ColumnFarm, false),
            (PlanLabel::ColumnField, true),
            (PlanLabel::ColumnCuttings, true),
            (PlanLabel::ColumnPlants, true),
            (PlanLabel::ColumnBring, true),
        ])?;
        Ok(Block { table: Table { columns, rows: rows.collect() }, ..Block::default() })
    }

    fn by_field(&self) -> Worded<Block> {
        let rows = self.plan.now.by_field.iter().map(|row| {
            vec![
                self.number(row.area),
                self.number(row.cuttings),
                self.number(row.roots),
                self.number(row.plants),
                self.number(row.bed),
                self.number(row.jerrycans_per_day),
            ]
        });
        let columns = self.columns([
            (PlanLabel::ColumnField, true),
            (PlanLabel::ColumnCuttings, true),
            (PlanLabel::ColumnStore, true),
            (PlanLabel::ColumnPlants, true),
            (PlanLabel::ColumnBed, true),
            (PlanLabel::ColumnJerrycans, true),
        ])?;
        Ok(Block { table: Table { columns, rows: rows.collect() }, ..Block::default() })
    }

    /// What waiting with the planting costs and saves, with bars.
    fn planting_delays(&self) -> Worded<Block> {
        const BAR: f64 = 20.0;
        let delays = &self.plan.planting_delays;
        let most = delays.iter().filter_map(|row| row.median_days_left).fold(1.0, f64::max);
        let bar = |share: f64| "█".repeat((share * BAR).round() as usize);
        let beside = |number: Option<String>, share: f64| {
            format!("{:>5} {}", number.unwrap_or_else(|| "–".to_owned()), bar(share))
        };
        let row = |row: &crate::plan::season::PlantingDelay| {
            let planted = [
                ("planted", Value::Number(row.planted_years as f64, 0)),
                ("years", Value::Number(row.years as f64, 0)),
            ];
            let failed = row.false_start_share;
            let left = row.median_days_left;
            Ok(vec![
                row.from.to_string(),
                self.label(PlanLabel::Planted, &planted)?,
                beside(
                    failed.map(|share| format!("{} %", self.decimals(share * 100.0, 0))),
                    failed.unwrap_or(0.0),
                ),
                beside(left.map(|days| self.decimals(days.floor(), 0)), left.unwrap_or(0.0) / most),
            ])
        };
        let columns = self.columns([
            (PlanLabel::ColumnFrom, false),
            (PlanLabel::ColumnPlanted, true),
            (PlanLabel::ColumnFalseStarts, false),
            (PlanLabel::ColumnRainLeft, false),
        ])?;
        let rows = delays.iter().map(row).collect::<Worded<_>>()?;
        Ok(Block {
            heading: self.label(PlanLabel::Delays, &[])?,
            lines: Vec::new(),
            table: Table { columns, rows },
        })
    }

    /// What the case says instead of the defaults, by the names that cases use.
    fn changed(&self) -> Worded<Block> {
        let changed: Vec<String> = self
            .plan
            .defaults()
            .into_iter()
            .filter(|used| used.basis.is_none())
            .map(|used| format!("{} = {}", used.name, used.value))
            .collect();
        if changed.is_empty() {
            return Ok(Block::default());
        }
        let line = Line { label: self.label(PlanLabel::Changed, &[])?, text: changed.join(", ") };
        Ok(Block { lines: vec![line], ..Block::default() })
    }

    fn noticed(&self, remark: &crate::plan::Remark) -> Worded<Noticed> {
        let (message, advice) = self.pack.write_remark(remark)?;
        let severity = match remarks::severity(remark) {
            Severity::Note => PlanLabel::Note,
            Severity::Warning | Severity::Error => PlanLabel::Warning,
        };
        Ok(Noticed {
            severity: self.label(severity, &[])?,
            field: remark.field(),
            message,
            advice: Line { label: self.label(PlanLabel::Do, &[])?, text: advice },
        })
    }
}

/// Days by their dates, which every language reads.
fn days(span: DateSpan) -> String {
    if span.is_day() { span.from.to_string() } else { format!("{} – {}", span.from, span.to) }
}
