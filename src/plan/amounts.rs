//! What a plan counts, and why so much.

use serde::ser::SerializeMap;
use serde::{Serialize, Serializer};

use super::Quantity;

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
    pub why: String,
}

/// The amounts of a plan, in the order in which they follow from each other.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Amounts(pub Vec<Amount>);

impl Amounts {
    /// The value of a quantity; `None` where the plan has none.
    pub fn get(&self, quantity: Quantity) -> Option<f64> {
        self.0.iter().find(|amount| amount.quantity == quantity).map(|amount| amount.value)
    }

    pub(super) fn add(&mut self, quantity: Quantity, value: impl Into<f64>, why: impl Into<String>) {
        self.0.push(Amount { quantity, value: value.into(), range: None, why: why.into() });
    }

    pub(super) fn add_range(
        &mut self,
        quantity: Quantity,
        value: impl Into<f64>,
        range: (f64, f64),
        why: impl Into<String>,
    ) {
        self.0.push(Amount { quantity, value: value.into(), range: Some(range), why: why.into() });
    }
}

impl Serialize for Amounts {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        #[derive(Serialize)]
        struct Entry<'a> {
            #[serde(serialize_with = "plain_number")]
            value: f64,
            #[serde(skip_serializing_if = "Option::is_none", serialize_with = "plain_if_known")]
            low: Option<f64>,
            #[serde(skip_serializing_if = "Option::is_none", serialize_with = "plain_if_known")]
            high: Option<f64>,
            unit: &'a str,
            why: &'a str,
        }
        let mut map = serializer.serialize_map(Some(self.0.len()))?;
        for amount in &self.0 {
            let entry = Entry {
                value: amount.value,
                low: amount.range.map(|(low, _)| low),
                high: amount.range.map(|(_, high)| high),
                unit: amount.quantity.unit(),
                why: &amount.why,
            };
            map.serialize_entry(amount.quantity.name(), &entry)?;
        }
        map.end()
    }
}

/// Whole numbers without ".0", as a reader of JSON expects of counts.
pub(super) fn plain_number<S: Serializer>(value: &f64, serializer: S) -> Result<S::Ok, S::Error> {
    if value.fract() == 0.0 && value.abs() < 9e15 {
        serializer.serialize_i64(*value as i64)
    } else {
        serializer.serialize_f64(*value)
    }
}

/// The same for a number that may be absent.
pub(super) fn plain_if_known<S: Serializer>(value: &Option<f64>, serializer: S) -> Result<S::Ok, S::Error> {
    match value {
        Some(value) => plain_number(value, serializer),
        None => serializer.serialize_none(),
    }
}
