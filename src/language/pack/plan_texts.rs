//! The texts in which a pack tells a plan, and which it may still lack.

use crate::catalogue::catalogue;
use crate::guidance::Tip;
use crate::plan::{Quantity, Wording, wordings};

catalogue! {
    /// A wording of a plan on the terminal.
    pub enum PlanLabel: PlanLabelEntry {}
    /// When the rains are expected.
    Rains = "plan-rains";
    /// The early, the usual and the late day on which they may begin.
    RainsObserved = "plan-rains-observed";
    /// When they began.
    RainsBegun = "plan-rains-begun";
    /// Heads the days of a step or of a part of the season.
    ColumnWhen = "plan-column-when";
    /// Heads the weeks from a step to the rains.
    ColumnWeeks = "plan-column-weeks";
    /// Heads the names of steps.
    ColumnStep = "plan-column-step";
    /// Heads what to do, with the reason.
    ColumnWhat = "plan-column-what";
    /// Weeks after the rains began.
    WeeksAfter = "plan-weeks-after";
    /// Marks a step whose days have passed.
    Past = "plan-past";
    /// Marks a step that is due.
    Now = "plan-now";
    /// Marks a step that is done.
    Done = "plan-done";
    /// An amount as it stands, beside what was planned.
    BesidePlanned = "plan-beside-planned";
    /// The days of all monthly checks.
    Checks = "plan-checks";
    /// Heads the work that is known to be late.
    LateCertain = "plan-late-certain";
    /// Heads the work that may be late.
    LateMaybe = "plan-late-maybe";
    /// Heads the day by which a step was due.
    ColumnDue = "plan-column-due";
    /// Heads what can still be done.
    ColumnStill = "plan-column-still";
    /// Heads the amounts.
    ColumnAmount = "plan-column-amount";
    /// Heads how much of them.
    ColumnMuch = "plan-column-much";
    /// Heads why so much.
    ColumnWhy = "plan-column-why";
    /// Heads the containers.
    Containers = "plan-containers";
    /// A container with its sizes.
    Container = "plan-container";
    /// The roots in it.
    ContainerRoots = "plan-container-roots";
    /// Heads the dekads of the bed's water.
    ColumnWater = "plan-column-water";
    /// Heads reference evapotranspiration.
    ColumnEt0 = "plan-column-et0";
    /// Heads crop coefficients.
    ColumnKc = "plan-column-kc";
    /// Heads the rain that can be counted on.
    ColumnRain = "plan-column-rain";
    /// Heads litres a day.
    ColumnLitres = "plan-column-litres";
    /// Heads the days from one watering to the next.
    ColumnEveryDays = "plan-column-every-days";
    /// Heads litres at a time.
    ColumnEachTime = "plan-column-each-time";
    /// Heads the days of the cuts.
    ColumnCuts = "plan-column-cuts";
    /// Heads cuttings.
    ColumnCuttings = "plan-column-cuttings";
    /// Heads fields.
    ColumnField = "plan-column-field";
    /// Heads how often what a cut plants is ripe before the rains end.
    ColumnRipe = "plan-column-ripe";
    /// How often it is.
    Ripe = "plan-ripe";
    /// Heads what is good to know beside the steps.
    Advice = "plan-advice";
    /// Heads ways to plant the whole field.
    Ways = "plan-ways";
    /// Heads ways that are left where the store keeps too few roots.
    WaysLeft = "plan-ways-left";
    /// Heads these ways.
    ColumnWay = "plan-column-way";
    /// Heads the days on which their beds are planted.
    ColumnBegins = "plan-column-begins";
    /// Heads roots in the sand.
    ColumnRoots = "plan-column-roots";
    /// Heads cuttings when the rains come.
    ColumnAtRains = "plan-column-at-rains";
    /// Heads litres in all.
    ColumnAllLitres = "plan-column-all-litres";
    /// Heads days of watering.
    ColumnDays = "plan-column-days";
    /// Heads trips to the water.
    ColumnTrips = "plan-column-trips";
    /// The days of the harvest to come.
    Harvest = "plan-harvest";
    /// What it may give.
    Yield = "plan-yield";
    /// Vitamin A.
    Vitamin = "plan-vitamin";
    /// What a serving holds of it.
    VitaminWhy = "plan-vitamin-why";
    /// Heads the farms of a group.
    ColumnFarm = "plan-column-farm";
    /// Heads plants to mark.
    ColumnPlants = "plan-column-plants";
    /// Heads roots that a farm brings.
    ColumnBring = "plan-column-bring";
    /// Heads roots to store.
    ColumnStore = "plan-column-store";
    /// Heads beds.
    ColumnBed = "plan-column-bed";
    /// Heads jerrycans a day.
    ColumnJerrycans = "plan-column-jerrycans";
    /// Tells what the table of planting delays is.
    Delays = "plan-delays";
    /// Heads the first day on which one would plant.
    ColumnFrom = "plan-column-from";
    /// Heads the years in which there was rain to plant on.
    ColumnPlanted = "plan-column-planted";
    /// Heads the share of false starts.
    ColumnFalseStarts = "plan-column-false-starts";
    /// Heads the days of rain that are left.
    ColumnRainLeft = "plan-column-rain-left";
    /// So many years of so many.
    Planted = "plan-planted";
    /// What the case says instead of the default.
    Changed = "plan-changed";
    /// Begins a remark that somebody should look at.
    Warning = "plan-warning";
    /// Begins a remark worth knowing.
    Note = "plan-note";
    /// Begins what to do about a remark.
    Do = "plan-do";
}

/// The message whose attributes name the amounts.
pub(super) const AMOUNT: &str = "plan-amount";
/// The attribute with what to do about a remark.
pub(super) const DO: &str = "do";

/// The texts of plans, which a file may still lack. What is told to farmers is not among them.
pub(super) fn may_lack(file: &str) -> Vec<(&'static str, Option<&'static str>)> {
    if file == "spoken.ftl" {
        return Vec::new();
    }
    let is_told = |wording: &Wording| Tip::from_name(wording.code).is_some();
    let labels = PlanLabel::ALL.into_iter().map(|label| (label.name(), None));
    let amounts = Quantity::ALL.into_iter().map(|quantity| (AMOUNT, Some(quantity.name())));
    let worded = wordings().filter(|wording| !is_told(wording)).map(|wording| (wording.code, None));
    let advised = wordings().filter(|wording| has_advice(wording.code));
    let advice = advised.map(|wording| (wording.code, Some(DO)));
    labels.chain(amounts).chain(worded).chain(advice).collect()
}

/// Whether a message tells what to do.
fn has_advice(code: &str) -> bool {
    code.starts_with("remark-") || code.starts_with("refusal-")
}
