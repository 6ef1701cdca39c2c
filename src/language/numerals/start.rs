//! How a rule starts.

use super::fault::{Fault, fault};

/// How a rule starts.
pub(super) enum Start {
    Base { base: u64, divisor: u64 },
    Following,
    Negative,
    Decimal(Decimals, Point),
    Ignored,
}

/// Which numbers with decimals a rule is for.
#[derive(Clone, Copy)]
pub(super) enum Decimals {
    Any,
    BelowOne,
    Zero,
}

/// What a rule for decimals writes before them.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Point {
    Point,
    Comma,
}

/// How the rule starts, and its text.
pub(super) fn start_of(rule: &str) -> Result<(Start, &str), Fault> {
    let Some((start, text)) = rule.split_once(':') else {
        return Ok((Start::Following, rule));
    };
    let start = start.trim();
    let found = match start {
        "-x" => Start::Negative,
        "x.x" => Start::Decimal(Decimals::Any, Point::Point),
        "x,x" => Start::Decimal(Decimals::Any, Point::Comma),
        "0.x" => Start::Decimal(Decimals::BelowOne, Point::Point),
        "0,x" => Start::Decimal(Decimals::BelowOne, Point::Comma),
        "x.0" => Start::Decimal(Decimals::Zero, Point::Point),
        "x,0" => Start::Decimal(Decimals::Zero, Point::Comma),
        "Inf" | "NaN" => Start::Ignored,
        _ if start.starts_with(|c: char| c.is_ascii_digit()) => base_value(start)?,
        _ if start.contains(|c: char| c.is_whitespace() || "<>=←→[]'$".contains(c)) => {
            return Ok((Start::Following, rule));
        }
        _ => {
            return Err(fault(
                format!("`{start}:` is no start of a rule"),
                "start it with a base value such as `20:`, or with `'` if the colon belongs to the words",
            ));
        }
    };
    Ok((found, text))
}

/// `1000`, `1,000/20` or `1000>>`.
fn base_value(start: &str) -> Result<Start, Fault> {
    let number = |digits: &str| -> Option<u64> {
        let digits: String = digits.chars().filter(|c| !matches!(c, ',' | '.' | ' ')).collect();
        let plain = !digits.is_empty() && digits.chars().all(|c| c.is_ascii_digit());
        digits.parse().ok().filter(|_| plain)
    };
    let unlowered = start.trim_end_matches(['>', '→']);
    let lowered = start.chars().count() - unlowered.chars().count();
    let (base, radix) = match unlowered.split_once('/') {
        Some((base, radix)) => (number(base), number(radix)),
        None => (number(unlowered), Some(10)),
    };
    let (Some(base), Some(radix)) = (base, radix) else {
        return Err(fault(
            format!("`{start}` is no base value"),
            "write a whole number, and `/` and a radix if it is not 10, such as `80/20:`",
        ));
    };
    match divisor(base, radix, lowered) {
        Some(divisor) => Ok(Start::Base { base, divisor }),
        None => Err(fault(
            format!("`{start}` gives no divisor"),
            "use a radix of 2 or more, and fewer `>` than the base value has powers of the radix",
        )),
    }
}

/// The highest power of `radix` up to `base`, lowered by some powers.
pub(super) fn divisor(base: u64, radix: u64, lowered: usize) -> Option<u64> {
    if radix < 2 {
        return None;
    }
    let exponent = base.checked_ilog(radix).unwrap_or(0);
    radix.checked_pow(exponent.checked_sub(u32::try_from(lowered).ok()?)?)
}
