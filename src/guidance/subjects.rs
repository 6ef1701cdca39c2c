//! What a plan tells of: steps, tables, cautions and questions.

use crate::catalogue::catalogue;
use crate::plan::StepKind;

/// Whom a statement is for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Audience {
    /// Those who do the work.
    Farmers,
    /// Also those who only live beside it: who cooks, who plays, who keeps animals.
    Everyone,
}

catalogue! {
    /// What must be known so that nobody gets hurt and no harvest is lost; printed in this order.
    pub enum Caution: CautionEntry {
        /// Whom it concerns.
        audience: Audience,
        /// The steps beside which it must be heard.
        steps: &'static [StepKind],
        /// Whether it holds for all work, and is told where no step that it belongs to is.
        always: bool,
        /// The step on whose first day it goes out as a text message; nothing where none does.
        sms_with: Option<StepKind>,
    }
    /// Rotten and bored roots: not for people, animals or planting.
    Rot = "caution-rot" {
        audience: Audience::Everyone,
        steps: &[StepKind::Harvest, StepKind::MonthlyCheck, StepKind::LastCheck],
        always: false,
        sms_with: Some(StepKind::Harvest),
    };
    /// Sand is heavy.
    HeavySand = "caution-heavy-sand" {
        audience: Audience::Farmers,
        steps: &[StepKind::GatherSand, StepKind::FillContainer],
        always: false,
        sms_with: None,
    };
    /// Riverbeds and their banks.
    Riverbed = "caution-riverbed" {
        audience: Audience::Everyone,
        steps: &[StepKind::GatherSand],
        always: false,
        sms_with: None,
    };
    /// Children and animals near water and bed.
    WaterChildren = "caution-water-children" {
        audience: Audience::Everyone,
        steps: &[StepKind::PrepareBed, StepKind::WaterBed],
        always: false,
        sms_with: None,
    };
    /// No water in the store.
    StoreDry = "caution-store-dry" {
        audience: Audience::Farmers,
        steps: &[StepKind::FillContainer, StepKind::MonthlyCheck],
        always: false,
        sms_with: None,
    };
    /// Signs of virus: nothing is taken from the plant.
    Virus = "caution-virus" {
        audience: Audience::Farmers,
        steps: &[StepKind::MarkPlants, StepKind::CheckPlants, StepKind::CutForPlanting],
        always: false,
        sms_with: None,
    };
    /// Cracks in the ridge let weevils in.
    Cracks = "caution-cracks" {
        audience: Audience::Farmers,
        steps: &[StepKind::PlantField, StepKind::FirstHarvest],
        always: false,
        sms_with: None,
    };
    /// Averages are not a forecast.
    Forecast = "caution-forecast" {
        audience: Audience::Farmers,
        steps: &[StepKind::PlantBed, StepKind::CutForPlanting, StepKind::PlantField],
        always: true,
        sms_with: None,
    };
    /// Try a few roots first, keep spares.
    TryFirst = "caution-try-first" {
        audience: Audience::Farmers,
        steps: &[StepKind::MarkPlants, StepKind::FillContainer],
        always: true,
        sms_with: None,
    };
}

catalogue! {
    /// A table of a sheet, read and never spoken; printed in this order.
    pub enum Table: TableEntry {
        /// Its columns.
        columns: &'static [Column],
        /// Whether bars picture its rows.
        is_pictured: bool,
    }
    /// The cuts of vines from the bed.
    Cuts = "table-cuts" {
        columns: &[Column::When, Column::Cut, Column::Area],
        is_pictured: false,
    };
    /// The shares of a group's farms.
    Shares = "table-shares" {
        columns: &[Column::Farm, Column::Area, Column::Cuttings, Column::Plants, Column::Roots],
        is_pictured: false,
    };
    /// Amounts by size of field, in a zone.
    FieldSizes = "table-fields" {
        columns: &[
            Column::Area,
            Column::Cuttings,
            Column::Roots,
            Column::Plants,
            Column::Bed,
            Column::Jerrycans,
        ],
        is_pictured: false,
    };
    /// What waiting with the planting costs and saves.
    PlantLater = "table-planting-later" {
        columns: &[Column::From, Column::FalseStarts, Column::DaysLeft],
        is_pictured: true,
    };
}

catalogue! {
    /// A column of tables, by the message that heads it.
    pub enum Column: ColumnEntry {
        /// The value in its rows.
        value: &'static str,
        /// The message that holds the value; the bare value where there is none.
        message: Option<&'static str>,
    }
    /// Days.
    When = "column-when" { value: "when", message: None };
    /// The name of a farm.
    Farm = "column-farm" { value: "farm", message: None };
    /// An area of field.
    Area = "column-area" { value: "area_m2", message: None };
    /// Cuttings.
    Cuttings = "column-cuttings" { value: "cuttings", message: None };
    /// Cuttings of a cut, from few to many.
    Cut = "column-cut" { value: "cut_cuttings", message: Some("cut-value") };
    /// Plants to mark.
    Plants = "column-plants" { value: "plants", message: None };
    /// Roots to store.
    Roots = "column-roots" { value: "roots", message: None };
    /// The bed's area.
    Bed = "column-bed" { value: "bed_m2", message: None };
    /// Jerrycans of water a day.
    Jerrycans = "column-jerrycans" { value: "jerrycans", message: None };
    /// The first day.
    From = "column-from" { value: "from", message: None };
    /// Years with a false start.
    FalseStarts = "column-false-starts" { value: "false_starts", message: Some("false-starts-value") };
    /// Days that are left of the rains.
    DaysLeft = "column-days-left" { value: "days_left", message: None };
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

    /// Whether it frames what is told, as opening and closing do.
    pub fn is_framing(self) -> bool {
        matches!(self, Subject::Opening | Subject::Closing)
    }

    /// The subject's name: the id of its messages in language packs.
    pub fn name(self) -> &'static str {
        match self {
            Subject::Opening => "opening",
            Subject::Step(kind) => kind.name(),
            Subject::Table(table) => table.name(),
            Subject::Caution(caution) => caution.name(),
            Subject::Question(kind) => kind.question(),
            Subject::Closing => "closing",
        }
    }
}
