//! What a plan says, as data: codes and typed values, for language packs to word.

use chrono::NaiveDate;

use super::span::DateSpan;
use super::units::{Celsius, Centimetres, Kilograms, Litres, Metres, Millimetres, SquareMetres};

/// A typed value of a message.
#[derive(Debug, Clone, PartialEq)]
pub enum Value {
    /// A number with the decimals it is to be written with.
    Number(f64, u8),
    /// A day.
    Date(NaiveDate),
    /// Days from one to another, both included.
    Span(DateSpan),
    /// One of a few names that wordings tell apart, such as `ridges` and `mounds`.
    Name(&'static str),
    /// A text from the case: printed as it is, never spoken.
    Text(String),
}

/// The values a message may use, with the kind of each.
pub type Values = Vec<(&'static str, Value)>;

/// Something to be worded: a reason, a remark, what is late.
pub trait Worded {
    /// Its code: stable, and the id of its message in language packs.
    fn code(&self) -> &'static str;
    /// Its values, by name.
    fn values(&self) -> Values;
}

/// What a message may say: all that is known of a code before there is a plan.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Wording {
    /// The code, and the message's id.
    pub code: &'static str,
    /// The values it may use: the name and the meaning of each.
    pub values: &'static [(&'static str, &'static str)],
}

/// Declares an enum of things to be worded. Each has a code and values; what stands above a value is its
/// meaning, which translators read as well.
macro_rules! coded {
    (
        $(#[$meta:meta])*
        pub enum $Kind:ident {
            $(
                $(#[doc = $doc:literal])+
                $Variant:ident = $code:literal
                $({ $($(#[doc = $meaning:literal])+ $field:ident: $Field:ty),* $(,)? })?,
            )+
        }
    ) => {
        $(#[$meta])*
        #[derive(Debug, Clone, PartialEq)]
        pub enum $Kind {
            $($(#[doc = $doc])+ $Variant $({ $($(#[doc = $meaning])+ $field: $Field),* })?,)+
        }

        impl $Kind {
            /// All codes, with the values of each.
            pub const WORDINGS: &'static [$crate::plan::Wording] = &[$($crate::plan::Wording {
                code: $code,
                values: &[$($((stringify!($field), concat!($($meaning),+).trim_ascii())),*)?],
            }),+];
        }

        impl $crate::plan::Worded for $Kind {
            fn code(&self) -> &'static str {
                match self {
                    $($Kind::$Variant { .. } => $code,)+
                }
            }

            fn values(&self) -> $crate::plan::Values {
                match self {
                    $($Kind::$Variant $({ $($field),* })? => {
                        vec![$($((stringify!($field), $crate::plan::Value::from(Clone::clone($field)))),*)?]
                    })+
                }
            }
        }
    };
}

pub(super) use coded;

/// No value of a plan is worth more decimals.
const MOST_DECIMALS: u8 = 3;

/// As many decimals as the number has, three at most.
impl From<f64> for Value {
    fn from(value: f64) -> Value {
        let rounded = |decimals: u8| {
            let scale = 10f64.powi(i32::from(decimals));
            (value * scale).round() / scale
        };
        let exact = rounded(MOST_DECIMALS);
        let decimals = (0..MOST_DECIMALS).find(|decimals| rounded(*decimals) == exact);
        Value::Number(exact, decimals.unwrap_or(MOST_DECIMALS))
    }
}

impl From<u32> for Value {
    fn from(count: u32) -> Value {
        Value::Number(f64::from(count), 0)
    }
}

impl From<NaiveDate> for Value {
    fn from(day: NaiveDate) -> Value {
        Value::Date(day)
    }
}

impl From<DateSpan> for Value {
    fn from(span: DateSpan) -> Value {
        Value::Span(span)
    }
}

impl From<&'static str> for Value {
    fn from(name: &'static str) -> Value {
        Value::Name(name)
    }
}

impl From<String> for Value {
    fn from(text: String) -> Value {
        Value::Text(text)
    }
}

macro_rules! from_units {
    ($($Unit:ident),*) => {$(
        impl From<$Unit> for Value {
            fn from(amount: $Unit) -> Value {
                Value::from(amount.0)
            }
        }
    )*};
}

/// Nobody measures a field more closely than in tenths, whatever the unit it was measured in.
impl From<SquareMetres> for Value {
    fn from(area: SquareMetres) -> Value {
        Value::from(if area.0 < SMALLEST_FIELD { area.0 } else { (area.0 * 10.0).round() / 10.0 })
    }
}

/// A smaller area is a bed's, which is computed.
const SMALLEST_FIELD: f64 = 100.0;

from_units!(Metres, Centimetres, Litres, Kilograms, Millimetres, Celsius);
