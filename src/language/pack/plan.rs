//! Plans in a pack's words: reasons, remarks, what is late, and the labels of the terminal.
//!
//! A pack may still lack these texts. It says so ([`Pack::words_plan`]), and nothing is put in their place.

use super::plan_texts::{AMOUNT, DO, PlanLabel, may_lack};
use super::wanted::Wanted;
use super::{Pack, WordingError};
use crate::finding::{Code, Finding};
use crate::language::wording::Messages;
use crate::plan::{Quantity, Value, Worded};

fn lacking(messages: &Messages, file: &str) -> Vec<Wanted> {
    may_lack(file).into_iter().filter(|(id, attribute)| !messages.has(id, *attribute)).collect()
}

impl Pack {
    /// Whether the pack has all the words of plans.
    pub fn words_plan(&self) -> bool {
        lacking(&self.written, "written.ftl").is_empty()
    }

    /// What the pack still lacks of plans, in one finding.
    pub(in crate::language) fn lacks_of_plan(&self) -> Option<Finding> {
        let lacking: Vec<String> =
            lacking(&self.written, "written.ftl").into_iter().map(super::wanted::name).collect();
        let text = format!("{} texts of plans are not translated yet", lacking.len());
        let finding = || {
            let finding = Finding::note(Code::UNTRANSLATED, text);
            let hint = format!("plans are told in English until they are: {}", lacking.join(", "));
            finding.file(format!("locales/{}/written.ftl", self.tag())).hint(hint)
        };
        (!lacking.is_empty()).then(finding)
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
}
