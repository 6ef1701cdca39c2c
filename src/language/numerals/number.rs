//! Numbers to be said.

use std::fmt;

/// How many digits a [`Number`] may have behind the point.
pub(super) const MOST_PLACES: u8 = 18;

/// A number to be said: a sign, a whole part up to `u64::MAX`, and up to 18 decimal digits as they are written.
///
/// `5.5` and `5.50` are different numbers here, since they are said differently.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Number {
    pub(super) negative: bool,
    pub(super) whole: u64,
    pub(super) decimals: u64,
    pub(super) places: u8,
}

impl From<u64> for Number {
    fn from(whole: u64) -> Number {
        Number { negative: false, whole, decimals: 0, places: 0 }
    }
}

impl Number {
    /// `value` with at most `decimals` (and at most 18) digits behind the point, without zeros at the end.
    ///
    /// The shortest decimal number that stands for `value` is rounded, halves away from zero: 2.5 becomes 3, and 0.15
    /// becomes 0.2. `None` when the value is not finite or its whole part exceeds `u64::MAX`.
    pub fn rounded(value: f64, decimals: u8) -> Option<Number> {
        if !value.is_finite() {
            return None;
        }
        let text = value.abs().to_string();
        let (whole, digits) = text.split_once('.').unwrap_or((text.as_str(), ""));
        let mut whole: u64 = whole.parse().ok()?;
        let mut places = decimals.min(MOST_PLACES);
        let mut digits = digits.chars().map(|digit| digit.to_digit(10).unwrap_or(0));
        let mut fraction: u64 = 0;
        let mut one: u64 = 1;
        for _ in 0..places {
            fraction = fraction * 10 + u64::from(digits.next().unwrap_or(0));
            one *= 10;
        }
        if digits.next().unwrap_or(0) >= 5 {
            fraction += 1;
        }
        if fraction == one {
            fraction = 0;
            whole = whole.checked_add(1)?;
        }
        while places > 0 && fraction.is_multiple_of(10) {
            fraction /= 10;
            places -= 1;
        }
        Some(Number {
            negative: value < 0.0 && (whole, fraction) != (0, 0),
            whole,
            decimals: fraction,
            places,
        })
    }

    /// The part before the point, without its sign.
    pub fn whole(&self) -> u64 {
        self.whole
    }

    /// The digits behind the point as they are written, `""` for a whole number.
    pub fn decimals(&self) -> String {
        if self.places == 0 {
            return String::new();
        }
        format!("{:0places$}", self.decimals, places = usize::from(self.places))
    }

    /// Whether the number is below zero.
    pub fn is_negative(&self) -> bool {
        self.negative
    }

    /// How many of `denominator` the decimals are, where they are that exactly: 5 tenths in 2.5, but no number of thirds.
    pub(super) fn numerator(&self, denominator: u64) -> Option<u64> {
        let one = 10u128.pow(u32::from(self.places));
        let parts = u128::from(self.decimals) * u128::from(denominator);
        let exact = denominator > 0 && parts.is_multiple_of(one);
        u64::try_from(parts / one).ok().filter(|_| exact)
    }

    pub(super) fn without_sign(self) -> Number {
        Number { negative: false, ..self }
    }
}

impl fmt::Display for Number {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let sign = if self.negative { "-" } else { "" };
        write!(f, "{sign}{}", self.whole)?;
        if self.places > 0 {
            write!(f, ".{}", self.decimals())?;
        }
        Ok(())
    }
}
