//! A number from its digits.

use std::str::FromStr;

use super::error::NumeralError;
use super::number::{MOST_PLACES, Number};

impl FromStr for Number {
    type Err = NumeralError;

    /// Plain digits with an optional `-` and one optional point; the digits behind the point are kept as written.
    fn from_str(text: &str) -> Result<Number, NumeralError> {
        let wrong = || NumeralError::NotANumber { text: text.to_owned() };
        let number = |digits: &str| -> Option<u64> {
            let plain = !digits.is_empty() && digits.chars().all(|c| c.is_ascii_digit());
            digits.parse().ok().filter(|_| plain)
        };
        let (negative, digits) = match text.strip_prefix('-') {
            Some(rest) => (true, rest),
            None => (false, text),
        };
        let (whole, decimals) = match digits.split_once('.') {
            Some((whole, decimals)) => (whole, Some(decimals)),
            None => (digits, None),
        };
        let whole = number(whole).ok_or_else(wrong)?;
        let (decimals, places) = match decimals {
            Some(digits) => {
                let places = u8::try_from(digits.len()).ok().filter(|places| *places <= MOST_PLACES);
                (number(digits).ok_or_else(wrong)?, places.ok_or_else(wrong)?)
            }
            None => (0, 0),
        };
        Ok(Number { negative: negative && (whole, decimals) != (0, 0), whole, decimals, places })
    }
}
