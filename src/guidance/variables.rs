//! The values that messages may use.

use crate::catalogue::catalogue;
use crate::plan::field::Spacing;
use crate::plan::multiply::Cuttings;
use crate::plan::units::{two_figures_up, whole_up};
use crate::plan::{Case, Kind, Plan, Quantity, State};

use super::{Value, Values};

/// Computes a value of a plan in one of its states; a number's decimals are those of its declaration.
type Compute = fn(&Case, &Plan, &State) -> Value;

/// What a value may be.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum ValueKind {
    /// A number with so many decimals at most.
    Number(u8),
    /// A day.
    Day,
    /// The days from one to another.
    Span,
    /// One of these names, which choose words and are never written.
    Choice(&'static [&'static str]),
    /// A text of the case or a pack, written as it stands and never spoken.
    Text,
}

/// Which messages may use a value.
#[derive(Debug, Clone, Copy)]
pub enum Scope {
    /// All messages of a plan; computed so.
    Plan(Compute),
    /// The opening.
    Opening,
    /// The messages of a step.
    Step,
    /// The cells of a table.
    Row,
    /// The messages by which a day is told.
    Day,
    /// The messages by which spans, measures and events are told.
    Part,
    /// A label that stands by itself.
    Label,
}

catalogue! {
    /// A value of messages that is no quantity of the plan: those are declared with [`Quantity`].
    pub enum Variable: VariableEntry {
        /// What it means, for those who translate.
        meaning: &'static str,
        /// An example of it.
        example: &'static str,
        /// What it may be.
        kind: ValueKind,
        /// Which messages may use it.
        scope: Scope,
    }

    /// Whom the plan is for.
    Kind = "kind" {
        meaning: "farm, group or zone: chooses words, is never written",
        example: "farm",
        kind: ValueKind::Choice(&["farm", "group", "zone"]),
        scope: Scope::Plan(|_, plan, _| Value::Name(kind_name(plan))),
    };
    /// Whether all layers take as many roots.
    LayerWidths = "layer_widths" {
        meaning: "even or uneven: chooses words",
        example: "uneven",
        kind: ValueKind::Choice(&["even", "uneven"]),
        scope: Scope::Plan(|_, _, state| {
            let uneven = state.amounts.get(Quantity::RootsInTopLayer).is_some();
            Value::Name(if uneven { "uneven" } else { "even" })
        }),
    };
    /// By whose figures cuttings are counted.
    PlanBy = "plan_by" {
        meaning: "by whose figures cuttings are counted, print or practice: chooses words",
        example: "print",
        kind: ValueKind::Choice(&["print", "practice"]),
        scope: Scope::Plan(|_, plan, _| Value::Name(plan.plan_by.name())),
    };
    /// The fewest cuttings to be expected at the first cut.
    FirstCuttingsLow = "first_cuttings_low" {
        meaning: "cuttings of the first cut where they are few",
        example: "280",
        kind: ValueKind::Number(0),
        scope: Scope::Plan(|_, _, state| exactly(f64::from(first_cut(state).low))),
    };
    /// The most cuttings to be expected at the first cut.
    FirstCuttingsHigh = "first_cuttings_high" {
        meaning: "cuttings of the first cut where they are many",
        example: "1800",
        kind: ValueKind::Number(0),
        scope: Scope::Plan(|_, _, state| exactly(f64::from(first_cut(state).high))),
    };
    /// What the first cut allows to plant.
    CuttingsToPlant = "cuttings_to_plant" {
        meaning: "cuttings to plant at the onset: what the first cut gives, at most what the field takes",
        example: "750",
        kind: ValueKind::Number(0),
        scope: Scope::Plan(|_, _, state| {
            let field = state.amounts.told(Quantity::CuttingsNeeded);
            exactly(f64::from(first_cut(state).middle).min(field.unwrap_or(f64::INFINITY)))
        }),
    };
    /// The last sensible day to dig.
    LastHarvest = "last_harvest" {
        meaning: "last sensible day to dig, a day",
        example: "7 May 2028",
        kind: ValueKind::Day,
        scope: Scope::Plan(|_, _, state| Value::Date(state.harvest.last)),
    };
    /// Cuttings in a bundle.
    BundleSize = "bundle_size" {
        meaning: "cuttings in a bundle",
        example: "300",
        kind: ValueKind::Number(1),
        scope: Scope::Plan(|_, plan, _| exactly(plan.assumptions.cuttings_per_bundle)),
    };
    /// Stem that is left.
    StemCm = "stem_cm" {
        meaning: "stem that is left, centimetres",
        example: "15",
        kind: ValueKind::Number(1),
        scope: Scope::Plan(|_, plan, _| exactly(plan.assumptions.stem_left_cm)),
    };
    /// From root to root in the store.
    GapCm = "gap_cm" {
        meaning: "from root to root, centimetres",
        example: "2",
        kind: ValueKind::Number(1),
        scope: Scope::Plan(|_, plan, _| exactly(plan.assumptions.root_gap_cm)),
    };
    /// Sand under the lowest layer.
    BaseCm = "base_cm" {
        meaning: "sand under the lowest layer, centimetres",
        example: "3",
        kind: ValueKind::Number(1),
        scope: Scope::Plan(|_, plan, _| exactly(plan.assumptions.base_sand_cm)),
    };
    /// Sand between layers.
    LayerCm = "layer_cm" {
        meaning: "sand between layers, centimetres",
        example: "2",
        kind: ValueKind::Number(1),
        scope: Scope::Plan(|_, plan, _| exactly(plan.assumptions.layer_sand_cm)),
    };
    /// Sand above the highest layer.
    TopCm = "top_cm" {
        meaning: "sand above the highest layer, centimetres",
        example: "10",
        kind: ValueKind::Number(1),
        scope: Scope::Plan(|_, plan, _| exactly(plan.assumptions.top_sand_cm)),
    };
    /// The most to carry at once.
    LoadKg = "load_kg" {
        meaning: "the most to carry at once, kilograms",
        example: "15",
        kind: ValueKind::Number(1),
        scope: Scope::Plan(|_, plan, _| exactly(plan.assumptions.load_limit_kg)),
    };
    /// From row to row in the seedbed.
    SpacingCm = "spacing_cm" {
        meaning: "from row to row in the seedbed, centimetres",
        example: "60",
        kind: ValueKind::Number(1),
        scope: Scope::Plan(|_, _, state| exactly(state.bed.between_rows.0)),
    };
    /// Length of a cutting.
    CuttingCm = "cutting_cm" {
        meaning: "length of a cutting, centimetres",
        example: "30",
        kind: ValueKind::Number(1),
        scope: Scope::Plan(|_, plan, _| exactly(plan.assumptions.cutting_length_cm)),
    };
    /// Nodes of a cutting.
    Nodes = "nodes" {
        meaning: "nodes of a cutting",
        example: "3",
        kind: ValueKind::Number(1),
        scope: Scope::Plan(|_, plan, _| exactly(plan.assumptions.cutting_nodes)),
    };
    /// Stem that is left, in hands.
    StemHands = "stem_hands" {
        meaning: "stem that is left, in hands",
        example: "1",
        kind: ValueKind::Number(1),
        scope: Scope::Plan(|_, plan, _| by_body(plan.assumptions.stem_left_cm, HAND_CM)),
    };
    /// Length of a cutting, in hands.
    CuttingHands = "cutting_hands" {
        meaning: "length of a cutting, in hands",
        example: "2",
        kind: ValueKind::Number(1),
        scope: Scope::Plan(|_, plan, _| by_body(plan.assumptions.cutting_length_cm, HAND_CM)),
    };
    /// Sand under the lowest layer, in thumb joints.
    BaseJoints = "base_joints" {
        meaning: "sand under the lowest layer, in thumb joints",
        example: "1",
        kind: ValueKind::Number(1),
        scope: Scope::Plan(|_, plan, _| by_body(plan.assumptions.base_sand_cm, THUMB_JOINT_CM)),
    };
    /// Sand between layers, in thumb joints.
    LayerJoints = "layer_joints" {
        meaning: "sand between layers, in thumb joints",
        example: "1",
        kind: ValueKind::Number(1),
        scope: Scope::Plan(|_, plan, _| by_body(plan.assumptions.layer_sand_cm, THUMB_JOINT_CM)),
    };
    /// What a jerrycan holds.
    JerrycanLitres = "jerrycan_l" {
        meaning: "what a jerrycan holds, litres",
        example: "20",
        kind: ValueKind::Number(1),
        scope: Scope::Plan(|_, plan, _| exactly(plan.assumptions.jerrycan_l)),
    };
    /// Buckets of sand.
    Buckets = "buckets" {
        meaning: "buckets of sand",
        example: "8",
        kind: ValueKind::Number(0),
        scope: Scope::Plan(|_, plan, state| {
            let sand = state.amounts.get(Quantity::SandLitres).unwrap_or_default();
            exactly((sand / plan.assumptions.bucket_l).ceil())
        }),
    };
    /// What a bucket holds.
    BucketLitres = "bucket_l" {
        meaning: "what a bucket holds, litres",
        example: "10",
        kind: ValueKind::Number(1),
        scope: Scope::Plan(|_, plan, _| exactly(plan.assumptions.bucket_l)),
    };
    /// Whether all containers are alike.
    ContainerKinds = "container_kinds" {
        meaning: "one where all containers are alike, or several: chooses words",
        example: "one",
        kind: ValueKind::Choice(&["one", "several"]),
        scope: Scope::Plan(|_, _, state| {
            let alike = state.containers.windows(2).all(|pair| match pair {
                [one, other] => one.container.shape == other.container.shape,
                _ => true,
            });
            Value::Name(if alike { "one" } else { "several" })
        }),
    };
    /// What a container holds.
    ContainerLitres = "container_l" {
        meaning: "what a container for the roots holds, litres, where all are alike",
        example: "60",
        kind: ValueKind::Number(0),
        scope: Scope::Plan(|_, _, state| {
            let container = state.containers.first().map(|filled| &filled.container);
            let litres = container.map_or(0.0, |container| container.volume_to(container.depth).0);
            exactly(f64::from(two_figures_up(whole_up(litres))))
        }),
    };
    /// From root to root in a row of the seedbed.
    AlongRowCm = "along_row_cm" {
        meaning: "from root to root in a row of the seedbed, centimetres",
        example: "60",
        kind: ValueKind::Number(0),
        scope: Scope::Plan(|_, _, state| exactly(state.bed.along_row.0)),
    };
    /// Whether the seedbed has strips with paths between them.
    BedParts = "bed_parts" {
        meaning: "strips where the seedbed has strips with paths between them, else one: chooses words",
        example: "strips",
        kind: ValueKind::Choice(&["strips", "one"]),
        scope: Scope::Plan(|_, _, state| Value::Name(if state.bed.strips > 1 { "strips" } else { "one" })),
    };
    /// Jerrycans of water until shoots show.
    JerrycansYoung = "jerrycans_young" {
        meaning: "jerrycans of water at a time, until shoots show",
        example: "3",
        kind: ValueKind::Number(0),
        scope: Scope::Plan(|_, plan, state| {
            let litres = state.amounts.told(Quantity::WaterUntilShoots).unwrap_or_default();
            exactly((litres / plan.assumptions.jerrycan_l).round().max(1.0))
        }),
    };
    /// Soil over the roots in the bed.
    SoilCm = "soil_cm" {
        meaning: "soil over the roots in the bed, centimetres",
        example: "5",
        kind: ValueKind::Number(1),
        scope: Scope::Plan(|_, plan, _| exactly(plan.assumptions.bed_root_depth_cm)),
    };
    /// Stem that is left in the bed when vines are cut.
    StubCm = "stub_cm" {
        meaning: "stem that is left in the bed when vines are cut, centimetres",
        example: "5",
        kind: ValueKind::Number(1),
        scope: Scope::Plan(|_, plan, _| exactly(plan.assumptions.stub_cm)),
    };
    /// Cuts that are counted on.
    Cuts = "cuts" {
        meaning: "cuts from the bed that are counted on",
        example: "3",
        kind: ValueKind::Number(0),
        scope: Scope::Plan(|_, _, state| exactly(state.cuts.len() as f64)),
    };
    /// Whether shoots are still to show in the bed.
    Shoots = "shoots" {
        meaning: "before or after: whether the bed is still to be watered before shoots show; chooses words",
        example: "before",
        kind: ValueKind::Choice(&["before", "after"]),
        scope: Scope::Plan(|_, _, state| {
            let before = state.amounts.get(Quantity::WaterUntilShoots).is_some();
            Value::Name(if before { "before" } else { "after" })
        }),
    };
    /// How cuttings stand; `own` where each farm has its own way.
    Layout = "layout" {
        meaning: "ridges, mounds or own: chooses words",
        example: "ridges",
        kind: ValueKind::Choice(&["ridges", "mounds", "own"]),
        scope: Scope::Plan(|case, _, _| Value::Name(layout_name(case))),
    };
    /// From ridge to ridge, or mound to mound.
    BetweenCm = "between_cm" {
        meaning: "from ridge to ridge or mound to mound, centimetres",
        example: "100",
        kind: ValueKind::Number(0),
        scope: Scope::Plan(|case, _, _| {
            let (Spacing::Ridges { between, .. } | Spacing::Mounds { between, .. }) = case.spacing();
            exactly(between.0 * 100.0)
        }),
    };
    /// From cutting to cutting along a ridge.
    AlongCm = "along_cm" {
        meaning: "from cutting to cutting along the ridge, centimetres",
        example: "30",
        kind: ValueKind::Number(0),
        scope: Scope::Plan(|case, plan, _| match case.spacing() {
            Spacing::Ridges { along, .. } => exactly(along.0 * 100.0),
            Spacing::Mounds { .. } => exactly(plan.assumptions.plant_spacing_m * 100.0),
        }),
    };
    /// Cuttings on each mound.
    OnMound = "on_mound" {
        meaning: "cuttings on each mound",
        example: "3",
        kind: ValueKind::Number(0),
        scope: Scope::Plan(|case, plan, _| match case.spacing() {
            Spacing::Ridges { .. } => exactly(plan.assumptions.cuttings_per_mound),
            Spacing::Mounds { cuttings, .. } => exactly(cuttings),
        }),
    };

    /// How the day stands to the rains.
    Season = "season" {
        meaning: "before the rains, near them, after they are known to have begun, or later where nobody told that they have; chooses words",
        example: "before",
        kind: ValueKind::Choice(&["before", "near", "after", "later"]),
        scope: Scope::Opening,
    };
    /// Which of several ways to say the same.
    Variant = "variant" {
        meaning: "which of three ways to say the same, so that it is not the same words every week: chooses words",
        example: "1",
        kind: ValueKind::Number(0),
        scope: Scope::Opening,
    };
    /// When the rains usually begin, or began.
    Rains = "rains" {
        meaning: "when the rains are expected: the day they usually begin, or the day they began",
        example: "25 November",
        kind: ValueKind::Day,
        scope: Scope::Opening,
    };
    /// From the day on which the rains may begin to the day by which they mostly have.
    RainsSpan = "rains_span" {
        meaning: "from the day on which the rains may begin to the day by which they mostly have, days",
        example: "16 October – 16 November",
        kind: ValueKind::Span,
        scope: Scope::Opening,
    };
    /// When the old field is dug.
    Harvest = "harvest" {
        meaning: "when the old field is dug, a day",
        example: "24 May",
        kind: ValueKind::Day,
        scope: Scope::Opening,
    };
    /// Whose plan it is.
    Name = "name" {
        meaning: "the farm's name, as it stands",
        example: "Neema's farm",
        kind: ValueKind::Text,
        scope: Scope::Opening,
    };
    /// Where it is.
    Place = "place" {
        meaning: "the place's name, as it stands",
        example: "Kisima cha Mbali",
        kind: ValueKind::Text,
        scope: Scope::Opening,
    };

    /// The days of a step.
    When = "when" {
        meaning: "the days of the step, a span",
        example: "24 April to 1 May",
        kind: ValueKind::Span,
        scope: Scope::Step,
    };
    /// Its first day.
    First = "first" {
        meaning: "the first of them, a day",
        example: "24 April",
        kind: ValueKind::Day,
        scope: Scope::Step,
    };
    /// Its last day.
    Last = "last" {
        meaning: "the last of them, a day",
        example: "1 May",
        kind: ValueKind::Day,
        scope: Scope::Step,
    };
    /// Whether the step has been done before.
    Turn = "turn" {
        meaning: "first, or next where the step has been done before: chooses words",
        example: "first",
        kind: ValueKind::Choice(&["first", "next"]),
        scope: Scope::Step,
    };
    /// How often the step comes.
    Times = "times" {
        meaning: "how often the step comes",
        example: "3",
        kind: ValueKind::Number(0),
        scope: Scope::Step,
    };

    /// A farm of a group.
    Farm = "farm" {
        meaning: "a farm's name, as it stands",
        example: "Neema's farm",
        kind: ValueKind::Text,
        scope: Scope::Row,
    };
    /// An area of field.
    AreaM2 = "area_m2" {
        meaning: "a field, square metres",
        example: "450",
        kind: ValueKind::Number(1),
        scope: Scope::Row,
    };
    /// Cuttings of a cut.
    CutCuttings = "cut_cuttings" {
        meaning: "cuttings of a cut by the middle",
        example: "450",
        kind: ValueKind::Number(0),
        scope: Scope::Row,
    };
    /// The area of a bed.
    BedM2 = "bed_m2" {
        meaning: "a seedbed, square metres",
        example: "15",
        kind: ValueKind::Number(1),
        scope: Scope::Row,
    };
    /// Years with a false start.
    FalseStarts = "false_starts" {
        meaning: "years with a false start",
        example: "5",
        kind: ValueKind::Number(0),
        scope: Scope::Row,
    };
    /// Years in all.
    Years = "years" {
        meaning: "years in all",
        example: "19",
        kind: ValueKind::Number(0),
        scope: Scope::Row,
    };
    /// Days that are left of the rains.
    DaysLeft = "days_left" {
        meaning: "days that are left of the rains",
        example: "80",
        kind: ValueKind::Number(0),
        scope: Scope::Row,
    };

    /// Day of the month.
    Day = "day" {
        meaning: "day of the month",
        example: "24",
        kind: ValueKind::Number(0),
        scope: Scope::Day,
    };
    /// Month.
    Month = "month" {
        meaning: "month, 1 to 12",
        example: "5",
        kind: ValueKind::Number(0),
        scope: Scope::Day,
    };
    /// Year.
    Year = "year" {
        meaning: "year",
        example: "2027",
        kind: ValueKind::Text,
        scope: Scope::Day,
    };
    /// Day of the week.
    Weekday = "weekday" {
        meaning: "day of the week, 1 is Monday",
        example: "1",
        kind: ValueKind::Number(0),
        scope: Scope::Day,
    };
    /// Week of the month.
    Week = "week" {
        meaning: "week of the month, 1 to 5",
        example: "4",
        kind: ValueKind::Number(0),
        scope: Scope::Day,
    };
    /// Day of the Ethiopian month.
    EthiopicDay = "ethiopic_day" {
        meaning: "day of the Ethiopian month",
        example: "16",
        kind: ValueKind::Number(0),
        scope: Scope::Day,
    };
    /// Ethiopian month.
    EthiopicMonth = "ethiopic_month" {
        meaning: "Ethiopian month, 1 to 13",
        example: "9",
        kind: ValueKind::Number(0),
        scope: Scope::Day,
    };
    /// Ethiopian year.
    EthiopicYear = "ethiopic_year" {
        meaning: "Ethiopian year",
        example: "2019",
        kind: ValueKind::Text,
        scope: Scope::Day,
    };

    /// The number of a measure.
    N = "n" {
        meaning: "the number of the measure",
        example: "5",
        kind: ValueKind::Number(1),
        scope: Scope::Part,
    };
    /// The whole part of a measure.
    Whole = "whole" {
        meaning: "the number of the measure without its half",
        example: "4",
        kind: ValueKind::Number(0),
        scope: Scope::Part,
    };
    /// Whether a half is added to it.
    Half = "half" {
        meaning: "yes where a half is added to the whole number, or no: chooses words",
        example: "yes",
        kind: ValueKind::Choice(&["yes", "no"]),
        scope: Scope::Part,
    };
    /// The first day of a span.
    From = "from" {
        meaning: "the first day of a span",
        example: "24 April",
        kind: ValueKind::Day,
        scope: Scope::Part,
    };
    /// The last day of a span.
    To = "to" {
        meaning: "the last day of a span",
        example: "1 May",
        kind: ValueKind::Day,
        scope: Scope::Part,
    };
    /// A local event.
    Event = "event" {
        meaning: "a local event's name, as it stands",
        example: "the maize feast",
        kind: ValueKind::Text,
        scope: Scope::Part,
    };
    /// Days from the event.
    Days = "days" {
        meaning: "days from the event",
        example: "3",
        kind: ValueKind::Number(0),
        scope: Scope::Part,
    };

    /// A size in a drawing.
    Cm = "cm" {
        meaning: "a size in a drawing, centimetres",
        example: "30",
        kind: ValueKind::Number(0),
        scope: Scope::Label,
    };
    /// A size in a drawing.
    M = "m" {
        meaning: "a size in a drawing, metres",
        example: "5",
        kind: ValueKind::Number(1),
        scope: Scope::Label,
    };
    /// How long recording takes.
    Minutes = "minutes" {
        meaning: "minutes that recording takes",
        example: "5",
        kind: ValueKind::Number(0),
        scope: Scope::Label,
    };
    /// Part of the recording script.
    Part = "part" {
        meaning: "part of the recording script",
        example: "2",
        kind: ValueKind::Number(0),
        scope: Scope::Label,
    };
    /// Its first line.
    FirstLine = "first_line" {
        meaning: "its first line",
        example: "58",
        kind: ValueKind::Number(0),
        scope: Scope::Label,
    };
    /// Its last line.
    LastLine = "last_line" {
        meaning: "its last line",
        example: "97",
        kind: ValueKind::Number(0),
        scope: Scope::Label,
    };
    /// Form of numbers.
    Form = "form" {
        meaning: "form of numbers in the language, from 1",
        example: "2",
        kind: ValueKind::Number(0),
        scope: Scope::Label,
    };
    /// How far music lies below the voice.
    Decibels = "decibels" {
        meaning: "how far music lies below the voice",
        example: "20",
        kind: ValueKind::Number(1),
        scope: Scope::Label,
    };
    /// How fast a presenter reads.
    Rate = "rate" {
        meaning: "syllables that a presenter reads in a second",
        example: "4",
        kind: ValueKind::Number(1),
        scope: Scope::Label,
    };
    /// How long people talk after a step.
    Seconds = "seconds" {
        meaning: "seconds in which people talk",
        example: "30",
        kind: ValueKind::Number(0),
        scope: Scope::Label,
    };
    /// What a clip says.
    Words = "words" {
        meaning: "words of a recording, as they stand",
        example: "choose healthy plants",
        kind: ValueKind::Text,
        scope: Scope::Label,
    };

    // Of a plan on the terminal.
    /// The day on which the rains may begin.
    Early = "early" {
        meaning: "the day from which the rains may begin, a day",
        example: "16 October",
        kind: ValueKind::Day,
        scope: Scope::Label,
    };
    /// The day on which they usually begin.
    Usual = "usual" {
        meaning: "the day on which they usually begin, a day",
        example: "2 November",
        kind: ValueKind::Day,
        scope: Scope::Label,
    };
    /// The day by which they mostly have begun.
    Late = "late" {
        meaning: "the day by which they have begun in most years, a day",
        example: "16 November",
        kind: ValueKind::Day,
        scope: Scope::Label,
    };
    /// Weeks back to the rains.
    Weeks = "weeks" {
        meaning: "weeks from a step back to the rains",
        example: "12",
        kind: ValueKind::Number(0),
        scope: Scope::Label,
    };
    /// Days one by one.
    Dates = "dates" {
        meaning: "days one by one, year-month-day",
        example: "2027-06-24, 2027-07-24",
        kind: ValueKind::Text,
        scope: Scope::Label,
    };
    /// The day the plan is asked for.
    Today = "today" {
        meaning: "the day the plan is asked for, a day",
        example: "8 November",
        kind: ValueKind::Day,
        scope: Scope::Label,
    };
    /// What to write on the command line.
    Option = "option" {
        meaning: "what to write on the command line, as it stands",
        example: "--done harvest",
        kind: ValueKind::Text,
        scope: Scope::Label,
    };
    /// An amount as it stands.
    Much = "much" {
        meaning: "an amount as it stands now, with its range where it has one",
        example: "60",
        kind: ValueKind::Text,
        scope: Scope::Label,
    };
    /// The same as it was planned.
    Planned = "planned" {
        meaning: "the same amount as it was planned",
        example: "95",
        kind: ValueKind::Text,
        scope: Scope::Label,
    };
    /// Containers of a kind.
    Count = "count" {
        meaning: "how many containers of a kind",
        example: "2",
        kind: ValueKind::Number(0),
        scope: Scope::Label,
    };
    /// The shape of a container.
    Shape = "shape" {
        meaning: "round, tapered (round, but narrower below), pot or box: chooses words",
        example: "pot",
        kind: ValueKind::Choice(&["round", "tapered", "pot", "box"]),
        scope: Scope::Label,
    };
    /// Width of a container.
    WidthCm = "width_cm" {
        meaning: "width of a container, centimetres",
        example: "60",
        kind: ValueKind::Number(1),
        scope: Scope::Label,
    };
    /// Its width at the bottom.
    BottomCm = "bottom_cm" {
        meaning: "its width at the bottom, centimetres",
        example: "52",
        kind: ValueKind::Number(1),
        scope: Scope::Label,
    };
    /// Widths of a pot.
    Widths = "widths" {
        meaning: "widths of a pot from the bottom up, centimetres",
        example: "30, 50, 38",
        kind: ValueKind::Text,
        scope: Scope::Label,
    };
    /// Length of a box.
    LengthCm = "length_cm" {
        meaning: "length of a box, centimetres",
        example: "90",
        kind: ValueKind::Number(1),
        scope: Scope::Label,
    };
    /// Depth of a container.
    DepthCm = "depth_cm" {
        meaning: "depth of a container, centimetres",
        example: "40",
        kind: ValueKind::Number(1),
        scope: Scope::Label,
    };
    /// Roots in each layer.
    EachLayer = "each_layer" {
        meaning: "roots in each layer from the bottom up",
        example: "17, 18, 5",
        kind: ValueKind::Text,
        scope: Scope::Label,
    };
    /// Whether the last container holds only the rest.
    Rest = "rest" {
        meaning: "yes where the last container holds only the rest, or no: chooses words",
        example: "yes",
        kind: ValueKind::Choice(&["yes", "no"]),
        scope: Scope::Label,
    };
    /// The least that is expected.
    Low = "low" {
        meaning: "the least that is expected",
        example: "202",
        kind: ValueKind::Number(1),
        scope: Scope::Label,
    };
    /// The most that is expected.
    High = "high" {
        meaning: "the most that is expected",
        example: "405",
        kind: ValueKind::Number(1),
        scope: Scope::Label,
    };
    /// A serving of roots.
    ServingG = "serving_g" {
        meaning: "a serving of roots, grams",
        example: "125",
        kind: ValueKind::Number(0),
        scope: Scope::Label,
    };
    /// Vitamin A in it.
    VitaminUg = "vitamin_ug" {
        meaning: "vitamin A in it, micrograms",
        example: "406",
        kind: ValueKind::Number(0),
        scope: Scope::Label,
    };
    /// Years with rain to plant on.
    Planted = "planted" {
        meaning: "years with rain to plant on",
        example: "18",
        kind: ValueKind::Number(0),
        scope: Scope::Label,
    };
    /// Whether the rains have come.
    Came = "came" {
        meaning: "yes where the rains have come, or no: chooses words",
        example: "no",
        kind: ValueKind::Choice(&["yes", "no"]),
        scope: Scope::Label,
    };
    /// What limits a plan.
    Limit = "limit" {
        meaning: "roots, plants, bed, sand, containers, water or hands: chooses words",
        example: "roots",
        kind: ValueKind::Choice(&["roots", "plants", "bed", "sand", "containers", "water", "hands"]),
        scope: Scope::Label,
    };
    /// How water is measured.
    Per = "per" {
        meaning: "day where water is told a day, all where it is told in all: chooses words",
        example: "day",
        kind: ValueKind::Choice(&["day", "all"]),
        scope: Scope::Label,
    };
    /// The soil of the bed.
    Soil = "soil" {
        meaning: "sand, loam, clay or unknown: chooses words",
        example: "loam",
        kind: ValueKind::Choice(&["sand", "loam", "clay", "unknown"]),
        scope: Scope::Label,
    };
    /// Water in all.
    WaterAll = "water_all_l" {
        meaning: "water that a way takes in all, litres",
        example: "4900",
        kind: ValueKind::Number(0),
        scope: Scope::Row,
    };
    /// Trips to the water.
    Trips = "trips" {
        meaning: "trips to the water that a way takes in all",
        example: "330",
        kind: ValueKind::Number(0),
        scope: Scope::Row,
    };
    /// A way to have cuttings when the rains come.
    Way = "way" {
        meaning: "one-bed, second-bed, vine-plot, as-planned, bed-now, bed-now-second-bed or buy: chooses words",
        example: "second-bed",
        kind: ValueKind::Choice(&["one-bed", "second-bed", "vine-plot", "as-planned", "bed-now", "bed-now-second-bed", "buy"]),
        scope: Scope::Row,
    };
    /// How early a variety is ripe.
    Maturity = "maturity" {
        meaning: "early, medium, late or unknown: chooses words",
        example: "medium",
        kind: ValueKind::Choice(&["early", "medium", "late", "unknown"]),
        scope: Scope::Label,
    };
    /// How the water is computed.
    Method = "method" {
        meaning: "penman-monteith or hargreaves: chooses words",
        example: "hargreaves",
        kind: ValueKind::Choice(&["penman-monteith", "hargreaves"]),
        scope: Scope::Label,
    };
    /// Whether cuts that come too late are counted all the same.
    Counted = "counted" {
        meaning: "yes where the case has cuts counted that come too late, or no: chooses words",
        example: "no",
        kind: ValueKind::Choice(&["yes", "no"]),
        scope: Scope::Label,
    };
    /// What tells the end of the rains.
    Known = "known" {
        meaning: "record, case, open (no year of the record tells it) or nothing: chooses words",
        example: "record",
        kind: ValueKind::Choice(&["record", "case", "open", "nothing"]),
        scope: Scope::Label,
    };
    /// What helps where the rains are too short.
    Helps = "helps" {
        meaning: "on-time (planting on time), quicker (an earlier variety) or neither: chooses words",
        example: "quicker",
        kind: ValueKind::Choice(&["on-time", "quicker", "neither"]),
        scope: Scope::Label,
    };
    /// What comes next in the store.
    Next = "next" {
        meaning: "check where the roots stay in the sand, bed where they go to the bed: chooses words",
        example: "check",
        kind: ValueKind::Choice(&["check", "bed"]),
        scope: Scope::Label,
    };
    /// Whether a record has two rainy seasons a year.
    TwoSeasons = "two_seasons" {
        meaning: "yes where the record has two rainy seasons a year, or no: chooses words",
        example: "yes",
        kind: ValueKind::Choice(&["yes", "no"]),
        scope: Scope::Label,
    };
    /// Whether the dates have bounds.
    Bounded = "bounded" {
        meaning: "yes where it is known between which days the dates lie, or no: chooses words",
        example: "yes",
        kind: ValueKind::Choice(&["yes", "no"]),
        scope: Scope::Label,
    };
    /// Whether a seasonal outlook weighs the years.
    Outlook = "outlook" {
        meaning: "yes where a seasonal outlook weighs the years, or no: chooses words",
        example: "no",
        kind: ValueKind::Choice(&["yes", "no"]),
        scope: Scope::Label,
    };
}

impl Variable {
    /// The value under its name.
    pub const fn with(self, value: Value) -> (&'static str, Value) {
        (self.name(), value)
    }

    /// A number under its name, with the decimals of its declaration.
    pub fn number(self, value: f64) -> (&'static str, Value) {
        self.with(self.kind().finish(Value::Number(value, u8::MAX)))
    }

    /// Whether a spoken message may use it: nobody has recorded a text or what only a sheet shows.
    pub const fn is_spoken(self) -> bool {
        !matches!(self.kind(), ValueKind::Text) && !matches!(self.scope(), Scope::Row | Scope::Label)
    }
}

impl ValueKind {
    fn finish(self, value: Value) -> Value {
        match (self, value) {
            (ValueKind::Number(decimals), Value::Number(value, _)) => number(value, decimals),
            (_, value) => value,
        }
    }
}

/// What is known of a value of messages, be it a quantity of the plan or another.
#[derive(Debug, Clone, Copy)]
pub struct ValueInfo {
    /// Its name in messages.
    pub name: &'static str,
    /// What it means.
    pub meaning: &'static str,
    /// An example of it.
    pub example: &'static str,
    /// What it may be.
    pub kind: ValueKind,
    /// Whether messages of every plan may use it, and not only one label or table.
    pub is_common: bool,
    /// Whether spoken messages may use it.
    pub is_spoken: bool,
}

impl ValueInfo {
    /// All values there are.
    pub fn all() -> impl Iterator<Item = ValueInfo> {
        let quantities = Quantity::ALL.into_iter().filter_map(Quantity::in_messages).map(|value| ValueInfo {
            name: value.name,
            meaning: value.meaning,
            example: value.example,
            kind: ValueKind::Number(value.decimals),
            is_common: true,
            is_spoken: true,
        });
        let others = Variable::ALL.into_iter().map(|variable| ValueInfo {
            name: variable.name(),
            meaning: variable.meaning(),
            example: variable.example(),
            kind: variable.kind(),
            is_common: !matches!(variable.scope(), Scope::Row | Scope::Label),
            is_spoken: variable.is_spoken(),
        });
        quantities.chain(others)
    }

    /// The value of this name.
    pub fn of(name: &str) -> Option<ValueInfo> {
        ValueInfo::all().find(|value| value.name == name)
    }
}

/// The values that every message of a plan may use, in one of its states.
pub(super) fn facts(case: &Case, plan: &Plan, state: &State) -> Values {
    let quantities = Quantity::ALL.into_iter().filter_map(|quantity| {
        let value = quantity.in_messages()?;
        let known = state.amounts.told(quantity);
        let known = known.or_else(|| Some(state.amounts.told(value.otherwise?).unwrap_or_default()))?;
        Some((value.name, number(known, value.decimals)))
    });
    let others = Variable::ALL.into_iter().filter_map(|variable| match variable.scope() {
        Scope::Plan(compute) => Some(variable.with(variable.kind().finish(compute(case, plan, state)))),
        _ => None,
    });
    quantities.chain(others).collect()
}

/// The first cut as it is told; nothing where the bed gives none.
fn first_cut(state: &State) -> Cuttings {
    state.cuts.first().map(|cut| cut.cuttings.told()).unwrap_or_default()
}

/// A hand from the wrist to the fingertips, as a measure, and the upper joint of a thumb: common practice, no source.
const HAND_CM: f64 = 15.0;
const THUMB_JOINT_CM: f64 = 2.5;

/// How many of a measure of the body: in halves at best.
fn by_body(centimetres: f64, measure: f64) -> Value {
    exactly((centimetres / measure * 2.0).round().max(1.0) / 2.0)
}

/// A number before its decimals are known.
fn exactly(value: f64) -> Value {
    Value::Number(value, u8::MAX)
}

/// At most `decimals` decimals, and none where the number is whole.
pub(super) fn number(value: f64, decimals: u8) -> Value {
    let scale = 10f64.powi(i32::from(decimals));
    let rounded = (value * scale).round() / scale;
    Value::Number(rounded, if rounded.fract() == 0.0 { 0 } else { decimals })
}

fn kind_name(plan: &Plan) -> &'static str {
    match plan.kind {
        // Farms with fields of their own do not all bring the same: their table says what each does.
        Kind::Group { .. } if !plan.now.farms.is_empty() => "farm",
        Kind::Farm => "farm",
        Kind::Group { .. } => "group",
        Kind::Zone => "zone",
    }
}

fn layout_name(case: &Case) -> &'static str {
    let alike = case.fields().all(|field| field.spacing == case.spacing());
    match case.spacing() {
        _ if !alike => "own",
        Spacing::Ridges { .. } => "ridges",
        Spacing::Mounds { .. } => "mounds",
    }
}
