//! Rules as they were read.

#[derive(Debug, Clone, Default)]
pub(super) struct RuleSet {
    /// With its `%` or `%%`.
    pub(super) name: String,
    /// By rising base value.
    pub(super) rules: Vec<Rule>,
    /// `-x`
    pub(super) negative: Option<Rule>,
    /// `x.x`
    pub(super) decimal: Option<Rule>,
    /// `0.x`
    pub(super) below_one: Option<Rule>,
    /// `x.0`
    pub(super) zero_decimals: Option<Rule>,
}

#[derive(Debug, Clone)]
pub(super) struct Rule {
    pub(super) base: u64,
    pub(super) divisor: u64,
    pub(super) parts: Vec<Part>,
}

#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) enum Part {
    Text(String),
    /// How many times the divisor goes into the number.
    Quotient(usize),
    Remainder(Target),
    /// The number as it is, sign and decimals included.
    Same(usize),
    WithoutSign(usize),
    /// The part before the point.
    Whole(usize),
    /// The digits behind the point, one by one.
    Decimals {
        set: usize,
        spaced: bool,
    },
    Digits,
    Unsupported(&'static str),
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub(super) enum Target {
    Set(usize),
    /// One rule of one set, whatever its base value.
    Rule(usize, usize),
}

impl RuleSet {
    /// The place of the rule that says the whole number `n`.
    pub(super) fn place_of(&self, n: u64) -> Option<usize> {
        let place = self.rules.partition_point(|rule| rule.base <= n).checked_sub(1)?;
        match self.rules.get(place) {
            Some(rule) if rule.steps_back() && n.is_multiple_of(rule.divisor) => place.checked_sub(1),
            Some(_) => Some(place),
            None => None,
        }
    }
}

impl Rule {
    /// Whether the rule, as it says a remainder, leaves the numbers without one to the rule before it.
    pub(super) fn steps_back(&self) -> bool {
        !self.base.is_multiple_of(self.divisor)
            && self.parts.iter().any(|part| matches!(part, Part::Remainder(_)))
    }

    /// Whether the rule hands a sign or decimals on to another set, so that none is lost.
    pub(super) fn hands_on(&self) -> bool {
        let loses = |part: &Part| {
            matches!(part, Part::Quotient(_) | Part::Remainder(_) | Part::Whole(_) | Part::Decimals { .. })
        };
        self.parts.iter().any(|part| matches!(part, Part::Same(_))) && !self.parts.iter().any(loses)
    }
}
