//! Plans in a pack's words: reasons, remarks, what is late, and the labels of the terminal.
//!
//! A pack may still lack these texts. It says so ([`Pack::words_plan`]), and nothing is put in their place.

use super::plan_texts::{AMOUNT, DO, PlanLabel, may_lack};
use super::wanted::Wanted;
use super::{Pack, WordingError};
use crate::finding::{Code, Finding};
use crate::language::piece::Piece;
use crate::language::wording::Messages;
use crate::plan::{Quantity, Remark, Value, Worded};

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
