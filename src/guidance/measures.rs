//! What a step measures by the body or by vessels, so that nobody needs a rule.

use crate::catalogue::catalogue;
use crate::plan::StepKind;

catalogue! {
    /// A measure without a rule, by the name of its picture.
    pub enum Measure: MeasureEntry {
        /// The message that says how many.
        message: &'static str,
    }
    /// From the wrist to the fingertips.
    Hand = "measure-hand" { message: "unit-hand" };
    /// The upper joint of a thumb.
    ThumbJoint = "measure-thumb" { message: "unit-thumb-joint" };
    /// A jerrycan.
    Jerrycan = "measure-jerrycan" { message: "unit-jerrycan" };
    /// A bundle of cuttings.
    Bundle = "measure-bundle" { message: "unit-bundle" };
}

catalogue! {
    /// What is measured so beside a step, by the name of its value.
    pub enum Measured: MeasuredEntry {
        /// The step.
        step: StepKind,
        /// By what it is measured.
        measure: Measure,
    }
    /// Stem that is left.
    Stem = "stem_hands" { step: StepKind::CutVines, measure: Measure::Hand };
    /// Sand under the lowest layer.
    BaseSand = "base_joints" { step: StepKind::FillContainer, measure: Measure::ThumbJoint };
    /// Water for the bed.
    Water = "jerrycans" { step: StepKind::WaterBed, measure: Measure::Jerrycan };
    /// A cutting's length.
    CuttingLength = "cutting_hands" { step: StepKind::CutForPlanting, measure: Measure::Hand };
    /// Cuttings to carry to the field.
    Cuttings = "bundles" { step: StepKind::PlantField, measure: Measure::Bundle };
}
