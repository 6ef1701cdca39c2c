//! What a plan tells people: ordered statements without a word of any language.
//!
//! A statement names its subject, its typed values, when it applies, for whom
//! and how much it matters. Wordings are chosen for it by its subject's name;
//! channels choose among statements.

mod select;
pub mod shapes;

pub use select::{Item, Timing, chapter, for_step, for_week, in_order, told_in, week_of};

use chrono::NaiveDate;

use crate::plan::field::Spacing;
use crate::plan::{Assumptions, Case, Event, Kind, Plan, Quantity, SquareMetres, Step};

pub use crate::plan::{DateSpan, StepKind, Value, Values};

/// What must be known so that nobody gets hurt and no harvest is lost.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Caution {
    /// Rotten and bored roots: not for people, animals or planting.
    Rot,
    /// Signs of virus: nothing is taken from the plant.
    Virus,
    /// Cracks in the ridge let weevils in.
    Cracks,
    /// Sand is heavy.
    HeavySand,
    /// Riverbeds and their banks.
    Riverbed,
    /// Children and animals near water and bed.
    WaterChildren,
    /// No water in the store.
    StoreDry,
    /// Averages are not a forecast.
    Forecast,
    /// Try a few roots first, keep spares.
    TryFirst,
}

impl Caution {
    /// All cautions in the order in which they are printed.
    pub const ALL: [Caution; 9] = [
        Caution::Rot,
        Caution::HeavySand,
        Caution::Riverbed,
        Caution::WaterChildren,
        Caution::StoreDry,
        Caution::Virus,
        Caution::Cracks,
        Caution::Forecast,
        Caution::TryFirst,
    ];

    /// The caution's name in packs and pictures.
    pub fn name(self) -> &'static str {
        match self {
            Caution::Rot => "caution-rot",
            Caution::Virus => "caution-virus",
            Caution::Cracks => "caution-cracks",
            Caution::HeavySand => "caution-heavy-sand",
            Caution::Riverbed => "caution-riverbed",
            Caution::WaterChildren => "caution-water-children",
            Caution::StoreDry => "caution-store-dry",
            Caution::Forecast => "caution-forecast",
            Caution::TryFirst => "caution-try-first",
        }
    }

    /// Whom it concerns.
    pub fn audience(self) -> Audience {
        match self {
            Caution::Rot | Caution::Riverbed | Caution::WaterChildren => Audience::Everyone,
            _ => Audience::Farmers,
        }
    }

    /// The steps beside which it must be heard.
    pub fn steps(self) -> &'static [StepKind] {
        match self {
            Caution::Rot => &[StepKind::Harvest, StepKind::MonthlyCheck, StepKind::LastCheck],
            Caution::Virus => &[StepKind::MarkPlants, StepKind::CheckPlants, StepKind::CutForPlanting],
            Caution::Cracks => &[StepKind::PlantField, StepKind::FirstHarvest],
            Caution::HeavySand => &[StepKind::GatherSand, StepKind::FillContainer],
            Caution::Riverbed => &[StepKind::GatherSand],
            Caution::WaterChildren => &[StepKind::PrepareBed, StepKind::WaterBed],
            Caution::StoreDry => &[StepKind::FillContainer, StepKind::MonthlyCheck],
            Caution::Forecast => &[StepKind::PlantBed, StepKind::CutForPlanting, StepKind::PlantField],
            Caution::TryFirst => &[StepKind::MarkPlants, StepKind::FillContainer],
        }
    }
}

/// A table of a sheet. It is read, never spoken.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Table {
    /// The cuts of vines from the bed.
    Cuts,
    /// The shares of a group's farms.
    Shares,
    /// Amounts by size of field, in a zone.
    FieldSizes,
    /// What waiting with the planting costs and saves.
    PlantLater,
}

impl Table {
    /// All tables in the order in which they are printed.
    pub const ALL: [Table; 4] = [Table::Cuts, Table::Shares, Table::FieldSizes, Table::PlantLater];

    /// The table's name in packs.
    pub fn name(self) -> &'static str {
        match self {
            Table::Cuts => "table-cuts",
            Table::Shares => "table-shares",
            Table::FieldSizes => "table-fields",
            Table::PlantLater => "table-planting-later",
        }
    }

    /// Its columns: the message that heads each, and the value in its rows.
    pub fn columns(self) -> &'static [(&'static str, &'static str)] {
        match self {
            Table::Cuts => {
                &[("column-when", "when"), ("column-cuttings", "cuttings"), ("column-area", "area_m2")]
            }
            Table::Shares => &[
                ("column-farm", "farm"),
                ("column-area", "area_m2"),
                ("column-cuttings", "cuttings"),
                ("column-plants", "plants"),
                ("column-roots", "roots"),
            ],
            Table::FieldSizes => &[
                ("column-area", "area_m2"),
                ("column-cuttings", "cuttings"),
                ("column-roots", "roots"),
                ("column-plants", "plants"),
                ("column-bed", "bed_m2"),
                ("column-jerrycans", "jerrycans"),
            ],
            Table::PlantLater => &[
                ("column-from", "from"),
                ("column-false-starts", "false_starts"),
                ("column-days-left", "days_left"),
            ],
        }
    }
}

/// What a statement is about.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Subject {
    /// Whose plan it is, what for and when the rains are expected.
    Opening,
    /// A step of the season.
    Step(StepKind),
    /// A table.
    Table(Table),
    /// A caution.
    Caution(Caution),
    /// An open question about a step, for a meeting.
    Question(StepKind),
    /// Local advice comes first.
    Closing,
}

impl Subject {
    /// All subjects in order.
    pub fn all() -> impl Iterator<Item = Subject> {
        let steps = StepKind::ALL.into_iter().map(Subject::Step);
        let tables = Table::ALL.into_iter().map(Subject::Table);
        let cautions = Caution::ALL.into_iter().map(Subject::Caution);
        let questions = StepKind::ALL.into_iter().map(Subject::Question);
        let opening = [Subject::Opening].into_iter();
        opening.chain(steps).chain(tables).chain(cautions).chain(questions).chain([Subject::Closing])
    }

    /// Whether it is spoken; tables are only read.
    pub fn is_spoken(self) -> bool {
        !matches!(self, Subject::Table(_))
    }

    /// The subject's name: the id of its messages in language packs.
    pub fn name(self) -> &'static str {
        match self {
            Subject::Opening => "opening",
            Subject::Step(kind) => kind.name(),
            Subject::Table(table) => table.name(),
            Subject::Caution(caution) => caution.name(),
            Subject::Question(kind) => question_name(kind),
            Subject::Closing => "closing",
        }
    }
}

fn question_name(kind: StepKind) -> &'static str {
    match kind {
        StepKind::MarkPlants => "ask-mark-plants",
        StepKind::GatherSand => "ask-gather-sand",
        StepKind::CheckPlants => "ask-check-plants",
        StepKind::CutVines => "ask-cut-vines",
        StepKind::Harvest => "ask-harvest",
        StepKind::FillContainer => "ask-fill-container",
        StepKind::MonthlyCheck => "ask-monthly-check",
        StepKind::PrepareBed => "ask-prepare-bed",
        StepKind::LastCheck => "ask-last-check",
        StepKind::PlantBed => "ask-plant-bed",
        StepKind::WaterBed => "ask-water-bed",
        StepKind::CutForPlanting => "ask-cut-for-planting",
        StepKind::PlantField => "ask-plant-field",
        StepKind::FirstHarvest => "ask-first-harvest",
    }
}

/// Whom a statement is for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Audience {
    /// Those who do the work.
    Farmers,
    /// Also those who only live beside it: who cooks, who plays, who keeps animals.
    Everyone,
}

/// How much a statement matters when not all fit.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Priority {
    /// Never left out: somebody may get hurt, or all is lost without it.
    Essential,
    /// The work itself.
    Important,
    /// Good to know.
    Helpful,
}

/// One thing to tell.
#[derive(Debug, Clone, PartialEq)]
pub struct Statement {
    /// What about.
    pub subject: Subject,
    /// Typed values by name.
    pub values: Values,
    /// The rows of a table; a value that is not known is absent.
    pub rows: Vec<Values>,
    /// The local event nearest to its first day, and the days from the event to that day.
    pub near: Option<(String, i64)>,
    /// When it applies; one span for each time. Empty for what always holds.
    pub when: Vec<DateSpan>,
    /// For whom.
    pub audience: Audience,
    /// How much it matters.
    pub priority: Priority,
}

impl Statement {
    /// The value of a name.
    pub fn value(&self, name: &str) -> Option<&Value> {
        self.values.iter().find(|(of, _)| *of == name).map(|(_, value)| value)
    }
}

/// All statements of a plan: the opening, the steps by date, the cautions, the closing.
pub fn tell(case: &Case, plan: &Plan) -> Vec<Statement> {
    let facts = facts(case, plan);
    let mut statements = vec![Statement {
        subject: Subject::Opening,
        values: with(
            &facts,
            &[
                ("rains", Value::Date(plan.rains)),
                ("harvest", Value::Date(case.harvest)),
                ("name", Value::Text(plan.name.clone())),
                ("place", Value::Text(plan.place.clone())),
            ],
        ),
        rows: Vec::new(),
        near: None,
        when: Vec::new(),
        audience: Audience::Everyone,
        priority: Priority::Important,
    }];
    let mut kinds: Vec<StepKind> = Vec::new();
    for step in &plan.steps {
        if !kinds.contains(&step.kind) {
            kinds.push(step.kind);
        }
    }
    statements.extend(kinds.into_iter().map(|kind| tell_step(kind, plan.steps_of(kind), &facts, case)));
    for table in Table::ALL {
        let rows = rows_of(table, plan);
        if !rows.is_empty() {
            statements.push(Statement {
                subject: Subject::Table(table),
                values: facts.clone(),
                rows,
                near: None,
                when: Vec::new(),
                audience: Audience::Farmers,
                priority: Priority::Helpful,
            });
        }
    }
    statements.extend(Caution::ALL.into_iter().map(|caution| Statement {
        subject: Subject::Caution(caution),
        values: facts.clone(),
        rows: Vec::new(),
        near: None,
        when: Vec::new(),
        audience: caution.audience(),
        priority: Priority::Essential,
    }));
    statements.push(Statement {
        subject: Subject::Closing,
        values: facts,
        rows: Vec::new(),
        near: None,
        when: Vec::new(),
        audience: Audience::Everyone,
        priority: Priority::Essential,
    });
    statements
}

fn tell_step<'a>(
    kind: StepKind,
    steps: impl Iterator<Item = &'a Step>,
    facts: &Values,
    case: &Case,
) -> Statement {
    let when: Vec<DateSpan> = steps.map(|step| step.when).collect();
    let mut values = facts.clone();
    if let (Some(first), Some(last)) = (when.first(), when.last()) {
        values.push(("when", Value::Span(DateSpan::new(first.from, last.to))));
        values.push(("first", Value::Date(first.from)));
        values.push(("turn", Value::Name("first")));
        values.push(("last", Value::Date(last.to)));
        values.push(("times", Value::Number(when.len() as f64, 0)));
    }
    let near = when.first().and_then(|span| nearest_event(&case.events, span.from));
    let priority = match kind {
        StepKind::CheckPlants | StepKind::CutVines | StepKind::FirstHarvest => Priority::Helpful,
        _ => Priority::Important,
    };
    Statement {
        subject: Subject::Step(kind),
        values,
        rows: Vec::new(),
        near,
        when,
        audience: Audience::Farmers,
        priority,
    }
}

/// Events further away than this help nobody to reckon.
const FARTHEST_EVENT: i64 = 45;

fn nearest_event(events: &[Event], day: NaiveDate) -> Option<(String, i64)> {
    let near = events.iter().map(|event| (event.name.clone(), (day - event.date).num_days()));
    near.filter(|(_, days)| days.abs() <= FARTHEST_EVENT).min_by_key(|(_, days)| days.abs())
}

/// The rows that a plan gives a table.
fn rows_of(table: Table, plan: &Plan) -> Vec<Values> {
    let count = |value: u32| number(f64::from(value), 0);
    let area = |area: SquareMetres| number(area.0, 1);
    match table {
        Table::Cuts => plan
            .cuts
            .iter()
            .map(|cut| {
                vec![
                    ("when", Value::Span(cut.when)),
                    ("cuttings", count(cut.cuttings)),
                    ("area_m2", number(cut.area.0.floor(), 0)),
                ]
            })
            .collect(),
        Table::Shares => plan
            .farms
            .iter()
            .map(|farm| {
                vec![
                    ("farm", Value::Text(farm.name.clone())),
                    ("area_m2", area(farm.area)),
                    ("cuttings", count(farm.cuttings)),
                    ("plants", count(farm.plants)),
                    ("roots", count(farm.roots)),
                ]
            })
            .collect(),
        Table::FieldSizes => plan
            .by_field
            .iter()
            .map(|row| {
                vec![
                    ("area_m2", area(row.area)),
                    ("cuttings", count(row.cuttings)),
                    ("roots", count(row.roots)),
                    ("plants", count(row.plants)),
                    ("bed_m2", area(row.bed)),
                    ("jerrycans", count(row.jerrycans_per_day)),
                ]
            })
            .collect(),
        Table::PlantLater => plan
            .planting_delays
            .iter()
            .map(|row| {
                let mut values = vec![("years", number(row.planted_years as f64, 0))];
                let failed = row.false_start_share.map(|share| share * row.planted_years as f64);
                values.extend(row.from.nearest(plan.rains).map(|day| ("from", Value::Date(day))));
                values.extend(failed.map(|failed| ("false_starts", number(failed, 0))));
                values.extend(row.median_days_left.map(|days| ("days_left", number(days, 0))));
                values
            })
            .collect(),
    }
}

fn with(facts: &Values, more: &[(&'static str, Value)]) -> Values {
    facts.iter().cloned().chain(more.iter().cloned()).collect()
}

/// The values every message of a plan may use.
fn facts(case: &Case, plan: &Plan) -> Values {
    let a = &plan.assumptions;
    let mut facts: Values = vec![("kind", Value::Name(kind_name(plan)))];
    let counts = [
        ("cuttings", Quantity::CuttingsNeeded, 0),
        ("first_cuttings", Quantity::CuttingsAtFirstCut, 0),
        ("roots", Quantity::RootsToStore, 0),
        ("plants", Quantity::PlantsToMark, 0),
        ("bundles", Quantity::Bundles, 0),
        ("roots_per_layer", Quantity::RootsPerLayer, 0),
        ("lining_m2", Quantity::Lining, 1),
        ("bed_rows", Quantity::BedRows, 0),
        ("row_roots", Quantity::RootsPerBedRow, 0),
        ("water_total_l", Quantity::WaterTotal, 0),
        ("layers", Quantity::Layers, 0),
        ("containers", Quantity::Containers, 0),
        ("sand_l", Quantity::SandLitres, 0),
        ("sand_kg", Quantity::SandKilograms, 0),
        ("loads", Quantity::SandLoads, 0),
        ("bed_length_m", Quantity::BedLength, 1),
        ("bed_width_m", Quantity::BedWidth, 1),
        ("water_l", Quantity::WaterPerDay, 0),
        ("jerrycans", Quantity::JerrycansPerDay, 0),
    ];
    for (name, quantity, decimals) in counts {
        if let Some(value) = plan.amounts.get(quantity) {
            facts.push((name, number(value, decimals)));
        }
    }
    let lowest = plan.amounts.get(Quantity::RootsPerLayer);
    let topmost = plan.amounts.get(Quantity::RootsInTopLayer);
    facts.push(("layer_widths", Value::Name(if topmost.is_some() { "uneven" } else { "even" })));
    facts.push(("roots_top", number(topmost.or(lowest).unwrap_or_default(), 0)));
    facts.push(("last_harvest", Value::Date(plan.harvest.last)));
    // Only a group has members; a message that names these asks for the kind first.
    let per_member = plan.amounts.get(Quantity::PlantsPerMember).or(plan.amounts.get(Quantity::PlantsToMark));
    facts.push(("plants_each", number(per_member.unwrap_or_default(), 0)));
    for (name, value) in assumed(a) {
        facts.push((name, number(value, 1)));
    }
    for (name, centimetres, measure) in [
        ("stem_hands", a.stem_left_cm, HAND_CM),
        ("cutting_hands", a.cutting_length_cm, HAND_CM),
        ("base_joints", a.base_sand_cm, THUMB_JOINT_CM),
        ("layer_joints", a.layer_sand_cm, THUMB_JOINT_CM),
    ] {
        // Bodies measure in halves at best.
        facts.push((name, number((centimetres / measure * 2.0).round().max(1.0) / 2.0, 1)));
    }
    let (layout, between, along, on_mound) = match case.spacing() {
        Spacing::Ridges { between, along } => ("ridges", between.0, along.0, a.cuttings_per_mound),
        Spacing::Mounds { between, cuttings } => ("mounds", between.0, a.plant_spacing_m, cuttings),
    };
    let alike = case.fields().all(|field| field.spacing == case.spacing());
    let layout = if alike { layout } else { "own" };
    facts.push(("layout", Value::Name(layout)));
    facts.push(("between_cm", number(between * 100.0, 0)));
    facts.push(("along_cm", number(along * 100.0, 0)));
    facts.push(("on_mound", number(on_mound, 0)));
    facts
}

/// A hand from the wrist to the fingertips, as a measure, and the upper joint of a thumb: common practice, no source.
const HAND_CM: f64 = 15.0;
const THUMB_JOINT_CM: f64 = 2.5;

fn assumed(a: &Assumptions) -> [(&'static str, f64); 10] {
    [
        ("bundle_size", a.cuttings_per_bundle),
        ("stem_cm", a.stem_left_cm),
        ("gap_cm", a.root_gap_cm),
        ("base_cm", a.base_sand_cm),
        ("layer_cm", a.layer_sand_cm),
        ("top_cm", a.top_sand_cm),
        ("load_kg", a.load_limit_kg),
        ("spacing_cm", a.bed_root_spacing_cm),
        ("cutting_cm", a.cutting_length_cm),
        ("nodes", a.cutting_nodes),
    ]
}

/// At most `decimals` decimals, and none where the number is whole.
fn number(value: f64, decimals: u8) -> Value {
    let scale = 10f64.powi(i32::from(decimals));
    let rounded = (value * scale).round() / scale;
    Value::Number(rounded, if rounded.fract() == 0.0 { 0 } else { decimals })
}

fn kind_name(plan: &Plan) -> &'static str {
    match plan.kind {
        // Farms with fields of their own do not all bring the same: their table says what each does.
        Kind::Group { .. } if !plan.farms.is_empty() => "farm",
        Kind::Farm => "farm",
        Kind::Group { .. } => "group",
        Kind::Zone => "zone",
    }
}
