//! Plans in a pack's words: reasons, remarks, what is late, and the labels of the terminal.
//!
//! A pack may still lack these texts. It says so ([`Pack::words_plan`]), and nothing is put in their place.

use super::wanted::Wanted;
use super::{Pack, WordingError};
use crate::catalogue::catalogue;
use crate::finding::{Code, Finding};
use crate::language::piece::Piece;
use crate::language::wording::Messages;
use crate::plan::{Quantity, Remark, Value, Worded, wordings};

catalogue! {
    /// A wording of a plan on the terminal.
    pub enum PlanLabel: PlanLabelEntry {}
    /// When the rains are expected.
    Rains = "plan-rains";
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
    /// Heads the days of the cuts.
    ColumnCuts = "plan-column-cuts";
    /// Heads cuttings.
    ColumnCuttings = "plan-column-cuttings";
    /// Heads fields.
    ColumnField = "plan-column-field";
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
const AMOUNT: &str = "plan-amount";
/// The attribute with what to do about a remark.
const DO: &str = "do";

/// The texts of plans, which a file may still lack.
pub(super) fn may_lack(file: &str) -> Vec<Wanted> {
    if file == "spoken.ftl" {
        return Remark::SPOKEN.iter().map(|code| (*code, None)).collect();
    }
    let labels = PlanLabel::ALL.into_iter().map(|label| (label.name(), None));
    let amounts = Quantity::ALL.into_iter().map(|quantity| (AMOUNT, Some(quantity.name())));
    let worded = wordings().map(|wording| (wording.code, None));
    let advised = wordings().filter(|wording| has_advice(wording.code));
    let advice = advised.map(|wording| (wording.code, Some(DO)));
    labels.chain(amounts).chain(worded).chain(advice).collect()
}

/// Their names, such as `why-harvest` and `remark-enough.do`.
pub(in crate::language) fn of_plans(file: &str) -> Vec<String> {
    may_lack(file).into_iter().map(super::wanted::name).collect()
}

/// Whether a message tells what to do.
fn has_advice(code: &str) -> bool {
    code.starts_with("remark-") || code.starts_with("refusal-")
}

fn lacking(messages: &Messages, file: &str) -> Vec<Wanted> {
    may_lack(file).into_iter().filter(|(id, attribute)| !messages.has(id, *attribute)).collect()
}

impl Pack {
    /// Whether the pack has all the words of plans.
    pub fn words_plan(&self) -> bool {
        lacking(&self.written, "written.ftl").is_empty()
    }

    /// The spoken remarks that the pack has words for.
    pub(super) fn spoken_remarks(&self) -> Vec<&'static str> {
        Remark::SPOKEN.iter().copied().filter(|code| self.spoken.has(code, None)).collect()
    }

    /// Remarks aloud, those left out that the pack has no words for.
    ///
    /// # Errors
    /// As [`Pack::say_remark`].
    pub fn say_remarks(&self, remarks: &[Remark]) -> Result<Vec<Vec<Piece>>, WordingError> {
        let known = self.spoken_remarks();
        let said = remarks.iter().filter(|remark| known.contains(&remark.code()));
        said.filter_map(|remark| self.say_remark(remark).transpose()).collect()
    }

    /// What the pack still lacks of plans: one finding a file.
    pub(in crate::language) fn lacks_of_plan(&self) -> Vec<Finding> {
        let mut findings = Vec::new();
        for (file, messages, then) in [
            ("written.ftl", &self.written, "plans are told in English until they are"),
            ("spoken.ftl", &self.spoken, "remarks are not spoken until they are"),
        ] {
            let lacking: Vec<String> = lacking(messages, file).into_iter().map(super::wanted::name).collect();
            if !lacking.is_empty() {
                let text = format!("{} texts of plans are not translated yet", lacking.len());
                let finding =
                    Finding::note(Code::UNTRANSLATED, text).file(format!("locales/{}/{file}", self.tag()));
                findings.push(finding.hint(format!("{then}: {}", lacking.join(", "))));
            }
        }
        findings
    }

    /// A wording of a plan on the terminal.
    ///
    /// # Errors
    /// The message that is missing or cannot be resolved.
    pub fn plan_label(&self, label: PlanLabel, values: &[(&str, Value)]) -> Result<String, WordingError> {
        self.with(values).message(label.name(), None)
    }

    /// The name of an amount, with its unit.
    ///
    /// # Errors
    /// As [`Pack::plan_label`].
    pub fn plan_amount(&self, quantity: Quantity) -> Result<String, WordingError> {
        self.with(&[]).message(AMOUNT, Some(quantity.name()))
    }

    /// A reason, a remark, or what can still be done, in writing.
    ///
    /// # Errors
    /// As [`Pack::plan_label`].
    pub fn write_reason(&self, reason: &dyn Worded) -> Result<String, WordingError> {
        self.with(&reason.values()).message(reason.code(), None)
    }

    /// A remark or a refusal in writing, and what to do about it.
    ///
    /// # Errors
    /// As [`Pack::plan_label`].
    pub fn write_remark(&self, remark: &dyn Worded) -> Result<(String, String), WordingError> {
        let values = remark.values();
        let words = self.with(&values);
        Ok((words.message(remark.code(), None)?, words.message(remark.code(), Some(DO))?))
    }

    /// A remark aloud; nothing where it changes nothing that a farmer does.
    ///
    /// # Errors
    /// The message that is missing or cannot be resolved, or a number without words.
    pub fn say_remark(&self, remark: &Remark) -> Result<Option<Vec<Piece>>, WordingError> {
        if !Remark::SPOKEN.contains(&remark.code()) {
            return Ok(None);
        }
        self.say_message(remark.code(), &remark.values()).map(Some)
    }
}
