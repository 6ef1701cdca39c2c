//! What a plan tells of: steps and what they lead to, tables, tips, cautions and questions.

use crate::catalogue::catalogue;
use crate::plan::{Priority, StepKind};

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
        steps: &[StepKind::CutForPlanting, StepKind::PlantField],
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
    /// What a plan cannot hold, and what has come otherwise: the remarks that change what is done, under their codes.
    pub enum Consequence: ConsequenceEntry {
        /// The steps beside which it must be heard.
        steps: &'static [StepKind],
        /// How much it matters.
        priority: Priority,
    }
    /// Work is late, and the dates are counted anew.
    LateWork = "remark-late-work" {
        steps: &[StepKind::PlantBed, StepKind::CutForPlanting, StepKind::PlantField],
        priority: Priority::Essential,
    };
    /// Roots rot faster than any are known to.
    FastLoss = "remark-fast-loss" {
        steps: &[StepKind::MonthlyCheck, StepKind::LastCheck],
        priority: Priority::Essential,
    };
    /// The roots, plants or bed at hand are too few or too small.
    LimitedAtHand = "remark-limited-at-hand" {
        steps: &[StepKind::MarkPlants, StepKind::Harvest, StepKind::PrepareBed],
        priority: Priority::Essential,
    };
    /// The containers are too small.
    ContainersTooSmall = "remark-containers-too-small" {
        steps: &[StepKind::MarkPlants, StepKind::Harvest, StepKind::FillContainer],
        priority: Priority::Essential,
    };
    /// The sand is too little.
    SandShort = "remark-sand-short" {
        steps: &[StepKind::GatherSand, StepKind::FillContainer],
        priority: Priority::Essential,
    };
    /// The water allows a smaller bed.
    WaterLimits = "remark-water-limits" {
        steps: &[StepKind::PrepareBed, StepKind::PlantBed, StepKind::WaterBed],
        priority: Priority::Essential,
    };
    /// Those who carry water allow a smaller bed.
    HandsShort = "remark-hands-short" {
        steps: &[StepKind::PrepareBed, StepKind::WaterBed],
        priority: Priority::Essential,
    };
    /// The bed will lack water.
    WaterShort = "remark-water-short" {
        steps: &[StepKind::PrepareBed, StepKind::WaterBed],
        priority: Priority::Essential,
    };
    /// The bed takes much carrying.
    WaterHeavy = "remark-water-heavy" {
        steps: &[StepKind::PrepareBed, StepKind::WaterBed],
        priority: Priority::Important,
    };
    /// The dry time is too short for storing.
    RainsTooSoon = "remark-rains-too-soon" {
        steps: &[StepKind::Harvest, StepKind::FillContainer, StepKind::PlantBed],
        priority: Priority::Essential,
    };
    /// Vines live through the dry time.
    StoringNotNeeded = "remark-storing-not-needed" {
        steps: &[StepKind::MarkPlants, StepKind::Harvest],
        priority: Priority::Important,
    };
    /// The roots lie in sand longer than is known to go well.
    LongInSand = "remark-long-in-sand" {
        steps: &[StepKind::Harvest, StepKind::FillContainer],
        priority: Priority::Essential,
    };
    /// The bed gives vines only after the rains have begun.
    BedLate = "remark-bed-late" {
        steps: &[StepKind::PlantBed, StepKind::CutForPlanting, StepKind::PlantField],
        priority: Priority::Essential,
    };
    /// The first cut does not plant the whole field: it waits for later ones.
    FieldWaits = "remark-field-waits" {
        steps: &[StepKind::CutForPlanting, StepKind::PlantField],
        priority: Priority::Important,
    };
    /// The roots that are left give too few cuttings.
    CuttingsShort = "remark-cuttings-short" {
        steps: &[StepKind::CutForPlanting, StepKind::PlantField],
        priority: Priority::Essential,
    };
    /// The rains are too short for the crop.
    RainsTooShort = "remark-rains-too-short" {
        steps: &[StepKind::PlantBed, StepKind::PlantField],
        priority: Priority::Essential,
    };
    /// Later cuts do not ripen.
    CutsTooLate = "remark-cuts-too-late" {
        steps: &[StepKind::CutForPlanting, StepKind::PlantField],
        priority: Priority::Important,
    };
    /// The rains may begin long after the bed is planted.
    RainsMayBeLate = "remark-rains-may-be-late" {
        steps: &[StepKind::WaterBed, StepKind::PlantField],
        priority: Priority::Important,
    };
    /// There are years without rains.
    YearsWithoutRains = "remark-years-without-rains" {
        steps: &[StepKind::LastCheck, StepKind::CutForPlanting, StepKind::PlantField],
        priority: Priority::Important,
    };
}

catalogue! {
    /// What is good to know beside a step, read and never spoken: the plan's advice, under its codes.
    pub enum Tip: TipEntry {
        /// The step that it belongs to.
        step: StepKind,
        /// How much it matters: the important ones stand on the sheet that a farm takes home as well.
        priority: Priority,
    }
    /// What to do with roots that are not stored.
    RootsNotChosen = "advice-roots-not-chosen" { step: StepKind::Harvest, priority: Priority::Helpful };
    /// Where the containers stand.
    StoragePlace = "advice-storage-place" { step: StepKind::FillContainer, priority: Priority::Helpful };
    /// Tips of vines carry fewer weevils.
    CleanVines = "advice-clean-vines" { step: StepKind::CutForPlanting, priority: Priority::Helpful };
    /// Away from old fields and their residues.
    CleanField = "advice-clean-field" { step: StepKind::PlantField, priority: Priority::Helpful };
    /// Cuttings set deep.
    DeepPlanting = "advice-deep-planting" { step: StepKind::PlantField, priority: Priority::Helpful };
    /// When no rain follows the planting.
    DryAfterPlanting = "advice-dry-after-planting" { step: StepKind::PlantField, priority: Priority::Important };
    /// Manure and weeding.
    FeedAndWeed = "advice-feed-and-weed" { step: StepKind::PlantField, priority: Priority::Helpful };
    /// Children and orange-fleshed roots.
    Children = "advice-children" { step: StepKind::FirstHarvest, priority: Priority::Helpful };
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
    /// Ways to have cuttings when the rains come, for a large field, little water or a store that rots.
    Ways = "table-ways" {
        columns: &[Column::Way, Column::Cut, Column::Water, Column::Trips],
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
    /// A way to have cuttings.
    Way = "column-way" { value: "way", message: Some("way-value") };
    /// Water in all.
    Water = "column-water" { value: "water_all_l", message: None };
    /// Trips to the water.
    Trips = "column-trips" { value: "trips", message: None };
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
    /// What the plan leads to.
    Consequence(Consequence),
    /// A table.
    Table(Table),
    /// What is good to know.
    Tip(Tip),
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
        let consequences = Consequence::ALL.into_iter().map(Subject::Consequence);
        let tips = Tip::ALL.into_iter().map(Subject::Tip);
        let tables = Table::ALL.into_iter().map(Subject::Table);
        let cautions = Caution::ALL.into_iter().map(Subject::Caution);
        let questions = StepKind::ALL.into_iter().map(Subject::Question);
        let opening = [Subject::Opening].into_iter();
        let told = opening.chain(steps).chain(consequences).chain(tables).chain(tips).chain(cautions);
        told.chain(questions).chain([Subject::Closing])
    }

    /// Whether it is spoken; tables and tips are only read.
    pub fn is_spoken(self) -> bool {
        !matches!(self, Subject::Table(_) | Subject::Tip(_))
    }

    /// Whether it belongs beside a step.
    pub fn is_beside(self, kind: StepKind) -> bool {
        match self {
            Subject::Consequence(consequence) => consequence.steps().contains(&kind),
            Subject::Caution(caution) => caution.steps().contains(&kind),
            Subject::Tip(tip) => tip.step() == kind,
            Subject::Opening
            | Subject::Step(_)
            | Subject::Table(_)
            | Subject::Question(_)
            | Subject::Closing => false,
        }
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
            Subject::Consequence(consequence) => consequence.name(),
            Subject::Table(table) => table.name(),
            Subject::Tip(tip) => tip.name(),
            Subject::Caution(caution) => caution.name(),
            Subject::Question(kind) => kind.question(),
            Subject::Closing => "closing",
        }
    }
}
