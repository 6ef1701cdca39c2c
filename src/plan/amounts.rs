//! The amounts of a plan.

use super::multiply::Cuttings;
use super::quantities::{AmountReason, Quantity};
use super::units::{two_figures_down, two_figures_up, whole_down, whole_up};

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

impl Amount {
    /// The amount as it is told, to two figures to the cautious side: cuttings that are counted on down, sand and water
    /// up; until shoots show less water is the cautious side.
    pub fn told(&self) -> f64 {
        self.rounded(self.value)
    }

    /// Its range as it is told.
    pub fn told_range(&self) -> Option<(f64, f64)> {
        self.range.map(|(low, high)| (self.rounded(low), self.rounded(high)))
    }

    fn rounded(&self, value: f64) -> f64 {
        let down = || f64::from(two_figures_down(whole_down(value)));
        match self.quantity {
            Quantity::CuttingsAtFirstCut
            | Quantity::CuttingsOverSeason
            | Quantity::CuttingsExpected
            | Quantity::WaterUntilShoots => down(),
            // Where the plan is counted forward, they are not what a field takes but what roots give.
            Quantity::CuttingsNeeded => match self.why {
                AmountReason::CuttingsOfSeason { .. }
                | AmountReason::CuttingsOfFirstCut { .. }
                | AmountReason::CuttingsOfZone { .. } => down(),
                _ => value,
            },
            Quantity::SandLitres | Quantity::SandKilograms | Quantity::WaterPerDay | Quantity::WaterTotal => {
                f64::from(two_figures_up(whole_up(value)))
            }
            _ => value,
        }
    }
}

/// The amounts of a plan, in the order in which they follow from each other.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Amounts(pub Vec<Amount>);

impl Amounts {
    /// The amount of a quantity; `None` where the plan has none.
    pub fn amount(&self, quantity: Quantity) -> Option<&Amount> {
        self.0.iter().find(|amount| amount.quantity == quantity)
    }

    /// Its value.
    pub fn get(&self, quantity: Quantity) -> Option<f64> {
        self.amount(quantity).map(|amount| amount.value)
    }

    /// The same as it is told.
    pub fn told(&self, quantity: Quantity) -> Option<f64> {
        self.amount(quantity).map(Amount::told)
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

    pub(super) fn add_cuttings(&mut self, quantity: Quantity, cuttings: Cuttings, why: AmountReason) {
        let Cuttings { low, middle, high } = cuttings;
        self.add_range(quantity, middle, (f64::from(low), f64::from(high)), why);
    }
}
