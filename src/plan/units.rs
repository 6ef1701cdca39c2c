//! Units as types, so that litres are never added to kilograms.

use std::fmt;
use std::ops::{Add, Sub};

macro_rules! units {
    ($($(#[$doc:meta])* $name:ident, $symbol:literal;)*) => {$(
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq, PartialOrd, Default)]
        pub struct $name(pub f64);

        impl $name {
            /// The unit's symbol.
            pub const SYMBOL: &'static str = $symbol;
        }

        impl Add for $name {
            type Output = $name;
            fn add(self, other: $name) -> $name { $name(self.0 + other.0) }
        }

        impl Sub for $name {
            type Output = $name;
            fn sub(self, other: $name) -> $name { $name(self.0 - other.0) }
        }

        impl fmt::Display for $name {
            fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                fmt::Display::fmt(&self.0, f)?;
                write!(f, " {}", $symbol)
            }
        }
    )*};
}

units! {
    /// Length in metres.
    Metres, "m";
    /// Length in centimetres.
    Centimetres, "cm";
    /// Area in square metres.
    SquareMetres, "m²";
    /// Volume in litres.
    Litres, "L";
    /// Mass in kilograms.
    Kilograms, "kg";
    /// Depth of water in millimetres; on one square metre 1 mm is 1 L.
    Millimetres, "mm";
    /// Temperature in degrees Celsius.
    Celsius, "°C";
    /// Pressure in kilopascals.
    Kilopascals, "kPa";
    /// Speed in metres per second.
    MetresPerSecond, "m/s";
    /// Energy in megajoules per square metre and day.
    Megajoules, "MJ/m²/day";
}

impl From<Centimetres> for Metres {
    fn from(length: Centimetres) -> Metres {
        Metres(length.0 / 100.0)
    }
}

/// Rounds up to a multiple of `step`, forgiving binary noise just above one
/// (so that 2.0000000001 steps are 2, not 3).
pub(crate) fn round_up(value: f64, step: f64) -> f64 {
    // Zero added: what lies just above nothing would be rounded to −0, and printed so.
    let steps = (value / step - 1e-9).ceil() + 0.0;
    // Multiplying by 0.1 would print 0.30000000000000004; dividing by 10 does not.
    let inverse = (1.0 / step).round();
    if step < 1.0 && (1.0 / step - inverse).abs() < 1e-9 { steps / inverse } else { steps * step }
}

/// A whole number of things that covers `value`, never below zero.
pub(crate) fn whole_up(value: f64) -> u32 {
    let value = round_up(value, 1.0);
    if value.is_nan() || value <= 0.0 {
        0
    } else if value >= f64::from(u32::MAX) {
        u32::MAX
    } else {
        value as u32
    }
}

/// A whole number of things that fit into `value`, never below zero.
pub(crate) fn whole_down(value: f64) -> u32 {
    let value = (value + 1e-9).floor();
    if value.is_nan() || value <= 0.0 {
        0
    } else if value >= f64::from(u32::MAX) {
        u32::MAX
    } else {
        value as u32
    }
}

/// A count to two figures, down: as it is told of what is counted on.
pub(crate) fn two_figures_down(count: u32) -> u32 {
    let scale = two_figures(count);
    count / scale * scale
}

/// A count to two figures, up: as it is told of what is missing.
pub(crate) fn two_figures_up(count: u32) -> u32 {
    let scale = two_figures(count);
    count.div_ceil(scale).saturating_mul(scale)
}

/// What a count of two figures is a multiple of.
fn two_figures(count: u32) -> u32 {
    10u32.pow(count.checked_ilog10().unwrap_or(0).saturating_sub(1))
}

/// A share as so many of 100.
pub(crate) fn of_100(share: f64) -> f64 {
    (share * 100.0).round()
}

/// A number to one decimal, down.
pub(crate) fn tenths_down(value: f64) -> f64 {
    (value * 10.0 + 1e-9).floor() / 10.0
}

/// A number to one decimal.
pub(crate) fn tenths(value: f64) -> f64 {
    (value * 10.0).round() / 10.0
}
