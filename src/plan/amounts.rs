//! The amounts of a plan.

use super::quantities::{AmountReason, Quantity};

/// An amount with its reason.
#[derive(Debug, Clone, PartialEq)]
pub struct Amount {
    /// What it measures.
    pub quantity: Quantity,
    /// How much, in the quantity's unit.
    pub value: f64,
    /// What it may well be instead, from least to most, where its parameters are known to differ.
    pub range: Option<(f64, f64)>,
    /// Why so much.
    pub why: AmountReason,
}

/// The amounts of a plan, in the order in which they follow from each other.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Amounts(pub Vec<Amount>);

impl Amounts {
    /// The value of a quantity; `None` where the plan has none.
    pub fn get(&self, quantity: Quantity) -> Option<f64> {
        self.0.iter().find(|amount| amount.quantity == quantity).map(|amount| amount.value)
    }

    pub(super) fn add(&mut self, quantity: Quantity, value: impl Into<f64>, why: AmountReason) {
        self.0.push(Amount { quantity, value: value.into(), range: None, why });
    }

    pub(super) fn add_range(
        &mut self,
        quantity: Quantity,
        value: impl Into<f64>,
        range: (f64, f64),
        why: AmountReason,
    ) {
        self.0.push(Amount { quantity, value: value.into(), range: Some(range), why });
    }
}
