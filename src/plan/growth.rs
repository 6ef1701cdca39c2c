//! Cuttings that a sprouted root gives, by its days in the bed.

use super::defaults::Assumptions;
use super::units::whole_down;

/// By whose figures a plan counts cuttings.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum PlanBy {
    /// The middle of the growth curve, held against what is in print.
    #[default]
    Print,
    /// The round figures of common practice.
    Practice,
}

impl PlanBy {
    /// Both, by name.
    pub const NAMED: [(&'static str, PlanBy); 2] = [("print", PlanBy::Print), ("practice", PlanBy::Practice)];

    /// Its name in cases and plans.
    pub fn name(self) -> &'static str {
        match self {
            PlanBy::Print => "print",
            PlanBy::Practice => "practice",
        }
    }

    /// The other one.
    pub(super) fn other(self) -> PlanBy {
        match self {
            PlanBy::Print => PlanBy::Practice,
            PlanBy::Practice => PlanBy::Print,
        }
    }
}

/// From the middle of a normal distribution to its 10 and 90 % points, in standard deviations.
pub(super) const TO_TENTH: f64 = 1.281_551_565_544_600_4;

/// What a value is from season to season: fewer in one season of ten, more in one of ten.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Points {
    /// The 10 % point.
    pub low: f64,
    /// The 50 % point.
    pub middle: f64,
    /// The 90 % point.
    pub high: f64,
}

impl Points {
    /// A value that does not differ.
    pub(super) fn certain(value: f64) -> Points {
        Points { low: value, middle: value, high: value }
    }

    /// A default has its range. What a case gives in its place has none: it is taken as certain.
    pub(super) fn of(value: f64, default: f64, range: Option<(f64, f64)>) -> Points {
        match range {
            Some((low, high)) if value == default => Points { low, middle: value, high },
            _ => Points::certain(value),
        }
    }

    /// Whether it never differs.
    pub(super) fn is_certain(&self) -> bool {
        self.low == self.high
    }

    /// The value so many standard deviations from the middle: normal, with one width below and one above.
    pub(super) fn at(&self, deviations: f64) -> f64 {
        let width = if deviations < 0.0 { self.middle - self.low } else { self.high - self.middle };
        (self.middle + deviations / TO_TENTH * width).max(0.0)
    }

    /// Its standard deviation, both sides taken together.
    pub(super) fn deviation(&self) -> f64 {
        (self.high - self.low) / 2.0 / TO_TENTH
    }
}

/// An assumption with the range of its default.
macro_rules! points {
    ($assumptions:expr, $name:ident) => {
        $crate::plan::growth::Points::of(
            $assumptions.$name,
            $crate::plan::Assumptions::DEFAULTS.$name,
            $crate::plan::Assumptions::RANGES.$name,
        )
    };
}
pub(super) use points;

/// The days of the curve.
const DAYS: [f64; 5] = [30.0, 42.0, 56.0, 70.0, 84.0];
/// Regrowth for which the figure of a later cut holds, days.
const REGROWTH_DAYS: f64 = 28.0;
/// Common practice gives vines 6 to 8 weeks to grow: its figures hold for no shorter bed.
const PRACTICE_DAYS: f64 = 42.0;

/// What a sprouted root gives that was so many days in the bed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Growth {
    days: f64,
    /// Days from bed to the first sensible cut.
    first_day: f64,
    curve: [Points; 5],
    later: Points,
    /// Cuts after the first.
    later_cuts: f64,
    /// Those of them that are counted on.
    counted: f64,
    /// First cut and season by common practice, where the plan counts by it.
    practice: Option<(f64, f64)>,
}

impl Growth {
    /// After `days` in the bed.
    pub fn of(by: PlanBy, days: f64, assumptions: &Assumptions) -> Growth {
        let a = assumptions;
        // Vines cut again sooner have grown less.
        let regrown = (a.next_cut_days_first / REGROWTH_DAYS).min(1.0);
        let later = points!(a, cuttings_per_root_later_cut);
        let practice = || {
            // The season's figure counts roots stored, usual losses included.
            (a.cuttings_per_root_first_cut, a.cuttings_per_root_season / a.survival_share)
        };
        Growth {
            days,
            first_day: a.first_cut_days_after_bed.round(),
            curve: [
                points!(a, cuttings_per_root_day_30),
                points!(a, cuttings_per_root_day_42),
                points!(a, cuttings_per_root_day_56),
                points!(a, cuttings_per_root_day_70),
                points!(a, cuttings_per_root_day_84),
            ],
            later: Points {
                low: later.low * regrown,
                middle: later.middle * regrown,
                high: later.high * regrown,
            },
            later_cuts: (a.cuts.floor() - 1.0).max(0.0),
            counted: (a.cuts.floor() - 1.0).max(0.0),
            practice: (by == PlanBy::Practice).then(practice),
        }
    }

    /// The same, where so many cuts are counted on.
    pub(super) fn counting(self, cuts: u32) -> Growth {
        let counted = (f64::from(cuts) - 1.0).max(0.0).min(self.later_cuts);
        Growth { counted, ..self }
    }

    /// Cuts that are counted on.
    pub(super) fn cuts(&self) -> u32 {
        whole_down(self.counted) + 1
    }

    /// Cuttings at the first cut in a season so many standard deviations from the middle one.
    pub fn first(&self, deviations: f64) -> f64 {
        match self.practice {
            Some((first, _)) => {
                let usual = self.curve(PRACTICE_DAYS.max(self.first_day), 0.0);
                first * (self.curve(self.days, 0.0) / usual).min(1.0)
            }
            None => self.curve(self.days, deviations),
        }
    }

    /// Cuttings at one of the later cuts in such a season.
    pub(super) fn later_cut(&self, deviations: f64) -> f64 {
        match self.practice {
            Some((first, season)) => (season - first).max(0.0) / self.later_cuts.max(1.0),
            None => self.later.at(deviations),
        }
    }

    /// Cuttings of all cuts together that are counted on, in such a season: one that is good for the first cut is
    /// for all.
    pub fn season(&self, deviations: f64) -> f64 {
        self.first(deviations) + self.counted * self.later_cut(deviations)
    }

    /// None before the first sensible day, then straight from point to point, level after the last.
    /// A longer time never gives fewer, whatever the points.
    fn curve(&self, days: f64, deviations: f64) -> f64 {
        if days < self.first_day {
            return 0.0;
        }
        let mut before: Option<(f64, f64)> = None;
        for (day, points) in DAYS.into_iter().zip(self.curve) {
            // Where vines are cut before the first point, they give what it says.
            let day = if before.is_none() { day.min(self.first_day) } else { day };
            let least = before.map_or(0.0, |(_, least)| least);
            let cuttings = points.at(deviations).max(least);
            if days <= day {
                return match before {
                    Some((from, least)) => least + (cuttings - least) * (days - from) / (day - from),
                    None => cuttings,
                };
            }
            before = Some((day, cuttings));
        }
        before.map_or(0.0, |(_, cuttings)| cuttings)
    }
}
