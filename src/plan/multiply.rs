//! From the cuttings a field needs back to roots and plants, and forward again.

use std::f64::consts::{FRAC_1_SQRT_2, FRAC_2_SQRT_PI};

use chrono::{Days, NaiveDate};

use super::growth::{Growth, PlanBy, Points, TO_TENTH, points};
use super::season::Ripening;
use super::units::{two_figures_down, whole_down, whole_up};
use super::{Assumptions, DateSpan, SquareMetres};

/// What the number of stored roots is sized for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Sizing {
    /// The cuttings of all cuts plant the field whose crop is ripe before the rains end in most years. Where
    /// nothing is known of the end, these are all cuts.
    #[default]
    InTime,
    /// The cuttings of the whole bed season plant the field: the round figures
    /// of common practice. The last part of the field waits for the later cuts.
    BedSeason,
    /// The first cut alone plants the whole field.
    FirstPlanting,
}

/// A part of what a bed gives.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Part {
    /// The first cut.
    First,
    /// All cuts after it that are counted on.
    Later,
    /// All cuts that are counted on.
    Season,
}

impl From<Sizing> for Part {
    fn from(sizing: Sizing) -> Part {
        match sizing {
            Sizing::InTime | Sizing::BedSeason => Part::Season,
            Sizing::FirstPlanting => Part::First,
        }
    }
}

/// The mean length of a month.
const DAYS_A_MONTH: f64 = 365.25 / 12.0;

/// Days in so many months.
pub(super) fn days_in(months: f64) -> f64 {
    months * DAYS_A_MONTH
}

/// Months between two days.
pub fn months_between(from: NaiveDate, to: NaiveDate) -> f64 {
    (to - from).num_days().max(0) as f64 / DAYS_A_MONTH
}

/// The share of roots that is left after `months` in sand when `share` is left after a season.
pub fn surviving(share: f64, months: f64, assumptions: &Assumptions) -> f64 {
    share.powf(months / assumptions.survival_months)
}

/// Cuttings, and what they may well be instead.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Cuttings {
    /// Fewer in one season of ten.
    pub low: u32,
    /// By the middle of all values.
    pub middle: u32,
    /// More in one season of ten.
    pub high: u32,
}

impl Cuttings {
    /// As they are told: to two figures, down.
    pub fn told(&self) -> Cuttings {
        Cuttings {
            low: two_figures_down(self.low),
            middle: two_figures_down(self.middle),
            high: two_figures_down(self.high),
        }
    }
}

/// What of a store is not known yet, besides what a root gives.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Unknown {
    /// How many roots survive and sprout.
    Survival,
    /// Nothing: the roots with sprouts are counted.
    Nothing,
}

/// What a root gives that is put into sand.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Rate {
    /// The share of roots that survives.
    survival: Points,
    /// Its standard deviation from season to season.
    survival_spread: f64,
    /// The share of those that sprouts.
    sprouting: Points,
    growth: Growth,
}

impl Rate {
    /// After `months` in sand and `days` in the bed.
    pub fn of(by: PlanBy, months: f64, days: f64, assumptions: &Assumptions) -> Rate {
        let a = assumptions;
        let left = |share: f64| surviving(share, months, a);
        let survival = left(a.survival_share);
        // The slope of the survival curve (the delta method) carries the spread over to so many months.
        let slope = months / a.survival_months * survival / a.survival_share;
        Rate {
            survival: Points {
                low: left(a.survival_low).min(survival),
                middle: survival,
                high: left(a.survival_high).max(survival),
            },
            survival_spread: a.survival_spread * slope,
            sprouting: match by {
                PlanBy::Print => points!(a, sprout_share),
                // Its figures count roots of which the usual share sprouts.
                PlanBy::Practice => {
                    Points::certain((a.sprout_share / Assumptions::DEFAULTS.sprout_share).min(1.0))
                }
            },
            growth: Growth::of(by, days, a),
        }
    }

    /// The same, where so many cuts are counted on.
    #[must_use]
    pub fn counting(self, cuts: u32) -> Rate {
        Rate { growth: self.growth.counting(cuts), ..self }
    }

    /// Cuts that are counted on.
    pub fn cuts(&self) -> u32 {
        self.growth.cuts()
    }

    /// The part that the roots are sized for: one cut alone is the first.
    pub(super) fn part(&self, sizing: Sizing) -> Part {
        if self.cuts() == 1 { Part::First } else { sizing.into() }
    }

    /// Cuttings of a sprouted root.
    pub(super) fn grown_points(&self, part: Part) -> Points {
        Points {
            low: self.grown(part, -TO_TENTH),
            middle: self.grown(part, 0.0),
            high: self.grown(part, TO_TENTH),
        }
    }

    /// The share of surviving roots that sprouts.
    pub(super) fn sprouting_points(&self) -> Points {
        self.sprouting
    }

    /// The share of roots that survives.
    pub(super) fn survival_points(&self) -> Points {
        self.survival
    }

    /// Cuttings of a sprouted root at one of the later cuts, by the middle.
    pub(super) fn per_later_cut(&self) -> f64 {
        self.growth.later_cut(0.0)
    }

    /// The share of roots that survives, by the middle.
    pub fn survival(&self) -> f64 {
        self.survival.middle
    }

    /// The share of surviving roots that sprouts, by the middle.
    pub fn sprouting(&self) -> f64 {
        self.sprouting.middle
    }

    /// Cuttings of a root that survives in store and sprouts, by the middle.
    pub fn per_sprouted(&self, part: impl Into<Part>) -> f64 {
        self.grown(part.into(), 0.0)
    }

    fn grown(&self, part: Part, deviations: f64) -> f64 {
        match part {
            Part::First => self.growth.first(deviations),
            Part::Later => self.growth.season(deviations) - self.growth.first(deviations),
            Part::Season => self.growth.season(deviations),
        }
    }

    /// Cuttings of a root that is stored, by the middle, losses included.
    pub fn per_stored(&self, part: impl Into<Part>) -> f64 {
        self.per_sprouted(part) * self.survival() * self.sprouting()
    }

    /// Roots to store for `cuttings`.
    pub fn roots_for(&self, cuttings: u32, sizing: Sizing) -> u32 {
        whole_up(f64::from(cuttings) / self.per_stored(sizing))
    }

    /// Cuttings that `roots` stored give.
    pub fn cuttings_of(&self, roots: u32, part: impl Into<Part>) -> Cuttings {
        let part = part.into();
        self.ranged(f64::from(roots) * self.per_stored(part), part, Unknown::Survival)
    }

    /// The same by the middle alone.
    pub(super) fn middle_of(&self, roots: u32, part: impl Into<Part>) -> u32 {
        whole_down(f64::from(roots) * self.per_stored(part))
    }

    /// Cuttings with their 10 and 90 % points.
    pub fn ranged(&self, cuttings: f64, part: Part, unknown: Unknown) -> Cuttings {
        let grown = self.grown_points(part);
        match unknown {
            Unknown::Survival => spread_over(cuttings, &[grown, self.sprouting, self.survival]),
            Unknown::Nothing => spread_over(cuttings, &[grown]),
        }
    }

    /// The fewest roots to store so that `places` in the field are planted, and once more where cuttings
    /// fail, with a chance of at least `confidence` (0 to 1). From season to season three things differ:
    /// the share of roots that survives and sprouts, as a beta distribution; what a sprouted root gives, and
    /// the share of cuttings that fails (`gaps`), each as the points of [`Points`]. In one season each root
    /// is on its own, so that those that sprout are beta-binomial. `None` where no number is so sure.
    pub fn roots_for_confidence(
        &self,
        places: f64,
        gaps: Points,
        confidence: f64,
        sizing: Sizing,
    ) -> Option<u32> {
        let (survival, sprouting) = (self.survival(), self.sprouting());
        let (survival_spread, sprouting_spread) = (self.survival_spread, self.sprouting.deviation());
        let deviation = (survival_spread * sprouting).hypot(survival * sprouting_spread);
        let deviation = deviation.hypot(survival_spread * sprouting_spread);
        let (alpha, beta) = beta_of(survival * sprouting, deviation)?;
        let wanted = self.sprouted_wanted(places, gaps, sizing);
        let reached: f64 = wanted.iter().map(|(_, share)| share).sum();
        let (least, _) = wanted.first()?;
        if reached < confidence || *least > MOST_ROOTS {
            return None;
        }
        let enough = |roots: u32| {
            let tails = at_least_each(roots, alpha, beta);
            let chance =
                |(wanted, share): &(u32, f64)| tails.get(*wanted as usize).map_or(0.0, |tail| tail * share);
            wanted.iter().map(chance).sum::<f64>() >= confidence
        };
        let mut high = (*least).max(1);
        while !enough(high) {
            high = high.checked_mul(2).filter(|roots| *roots <= MOST_ROOTS)?;
        }
        let mut low = *least;
        while low < high {
            let middle = low + (high - low) / 2;
            if enough(middle) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        Some(high)
    }

    /// Sprouted roots that are enough, each with the share of seasons in which it takes so many: ascending,
    /// without seasons in which no number is enough.
    fn sprouted_wanted(&self, places: f64, gaps: Points, sizing: Sizing) -> Vec<(u32, f64)> {
        let grown = |deviations| self.grown(sizing.into(), deviations);
        let yields = if grown(-TO_TENTH) == grown(TO_TENTH) { 1 } else { YIELDS };
        let fails = if gaps.is_certain() { 1 } else { FAILS };
        let share = 1.0 / (yields * fails) as f64;
        let fails: Vec<f64> = seasons(fails).map(|deviations| gaps.at(deviations)).collect();
        let mut wanted: Vec<u32> = seasons(yields)
            .map(grown)
            .filter(|cuttings| *cuttings > 0.0)
            .flat_map(|cuttings| fails.iter().map(move |fail| whole_up(places * (1.0 + fail) / cuttings)))
            .collect();
        wanted.sort_unstable();
        let mut shares: Vec<(u32, f64)> = Vec::new();
        for roots in wanted {
            match shares.last_mut() {
                Some((last, sum)) if *last == roots => *sum += share,
                _ => shares.push((roots, share)),
            }
        }
        shares
    }
}

/// Cuttings with their 10 and 90 % points: of how far each of their factors lies there from its middle, the
/// logarithms add up as squares do. That is exact where these are normal, and near enough here.
pub(super) fn spread_over(cuttings: f64, factors: &[Points]) -> Cuttings {
    let together =
        |far: fn(&Points) -> f64| factors.iter().map(|factor| far(factor).ln().powi(2)).sum::<f64>().sqrt();
    Cuttings {
        low: whole_down(cuttings * (-together(|of| of.middle / of.low)).exp()),
        middle: whole_down(cuttings),
        high: whole_down(cuttings * together(|of| of.high / of.middle).exp()),
    }
}

/// Seasons that stand for all: so many of what a root gives, and of cuttings that fail.
const YIELDS: usize = 512;
const FAILS: usize = 16;

/// `count` seasons of equal chance, as standard deviations from the middle one.
fn seasons(count: usize) -> impl Iterator<Item = f64> {
    (0..count).map(move |index| deviations_below((index as f64 + 0.5) / count as f64))
}

/// Below how many standard deviations from the middle a share of a normal distribution lies.
fn deviations_below(share: f64) -> f64 {
    if share > 0.5 {
        return -deviations_below(1.0 - share);
    }
    // By Newton from the middle, where the share bends one way only.
    let mut deviations: f64 = 0.0;
    loop {
        let below = 0.5 * libm::erfc(-deviations * FRAC_1_SQRT_2);
        let slope = (-0.5 * deviations * deviations).exp() * FRAC_1_SQRT_2 * FRAC_2_SQRT_PI / 2.0;
        let step = (below - share) / slope;
        deviations -= step;
        if step.abs() < 1e-12 || !step.is_finite() {
            return deviations;
        }
    }
}

/// No group stores more; bounds the work.
const MOST_ROOTS: u32 = 4_000_000;

/// The parameters of a beta distribution by its mean and standard deviation;
/// `None` where there is no such distribution.
pub fn beta_of(mean: f64, deviation: f64) -> Option<(f64, f64)> {
    // A share that is certain is a distribution as narrow as numbers allow.
    let (mean, deviation) = (mean.min(1.0 - 1e-6), deviation.max(1e-6));
    let size = mean * (1.0 - mean) / (deviation * deviation) - 1.0;
    (size > 0.0 && size.is_finite()).then_some((mean * size, (1.0 - mean) * size))
}

/// The chance that at least `k` of `n` survive, for a beta-binomial with `alpha` and `beta`.
pub fn at_least(n: u32, k: u32, alpha: f64, beta: f64) -> f64 {
    at_least_each(n, alpha, beta).get(k as usize).copied().unwrap_or(0.0)
}

/// The chances that at least 0, 1, … `n` of `n` survive.
fn at_least_each(n: u32, alpha: f64, beta: f64) -> Vec<f64> {
    let count = f64::from(n);
    // From the mean down and up, each chance from the one before: the far ones may vanish, the near ones
    // never do. All together they are certain.
    let mean = whole_down(count * alpha / (alpha + beta)).min(n);
    let up = |j: f64| (count - j) * (alpha + j) / ((j + 1.0) * (beta + count - j - 1.0));
    let mut chances = vec![0.0; n as usize + 1];
    let mut chance = 1.0;
    for (j, place) in chances.iter_mut().take(mean as usize + 1).enumerate().rev() {
        *place = chance;
        chance /= up(j as f64 - 1.0);
    }
    chance = 1.0;
    for (j, place) in chances.iter_mut().enumerate().skip(mean as usize + 1) {
        chance *= up(j as f64 - 1.0);
        *place = chance;
    }
    let mut sum = 0.0;
    for chance in chances.iter_mut().rev() {
        sum += *chance;
        *chance = sum;
    }
    chances.iter_mut().for_each(|chance| *chance /= sum);
    chances
}

/// Plants that give `roots` where none is found sick.
pub fn plants_without_spare(roots: u32, assumptions: &Assumptions) -> u32 {
    whole_up(f64::from(roots) / assumptions.roots_per_plant)
}

/// Plants to mark for `roots`: some are found sick later and give none.
pub fn plants_for(roots: u32, assumptions: &Assumptions) -> u32 {
    whole_up(f64::from(roots) / (assumptions.roots_per_plant * (1.0 - assumptions.sick_share)))
}

/// Roots fit to store from `plants` marked.
pub fn roots_from(plants: u32, assumptions: &Assumptions) -> u32 {
    whole_down(f64::from(plants) * assumptions.roots_per_plant * (1.0 - assumptions.sick_share))
}

/// One cut of vines from the bed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Cut {
    /// When.
    pub when: DateSpan,
    /// Cuttings it gives.
    pub cuttings: Cuttings,
    /// Field that they plant, by the middle.
    pub area: SquareMetres,
    /// How often what it plants is ripe before the rains end, where that is known.
    pub ripening: Option<Ripening>,
}

impl Cut {
    /// A cut whose cuttings stand so densely on a square metre.
    pub(super) fn of(when: DateSpan, cuttings: Cuttings, density: f64, ripening: Option<Ripening>) -> Cut {
        let area = (f64::from(cuttings.middle) / density * 10.0).floor() / 10.0;
        Cut { when, cuttings, area: SquareMetres(area), ripening }
    }

    /// The field as it is told: to two figures, down.
    pub fn told_area(&self) -> SquareMetres {
        SquareMetres(f64::from(two_figures_down(whole_down(self.area.0))))
    }
}

/// The days of all cuts of a bed whose first one is in the days of `first`.
pub(super) fn cut_days(first: DateSpan, assumptions: &Assumptions) -> impl Iterator<Item = DateSpan> {
    let a = assumptions;
    let (least, most) = (a.next_cut_days_first, a.next_cut_days_last);
    let after = |day: NaiveDate, days: f64, times: u32| {
        let days = Days::new((days.max(0.0) * f64::from(times)).round() as u64);
        day.checked_add_days(days).unwrap_or(day)
    };
    let later = 0..whole_down(a.cuts).max(1);
    later.map(move |times| DateSpan::new(after(first.from, least, times), after(first.to, most, times)))
}

/// The cuts of a bed that are counted on, in these days: the first one gives `first`, those after it `later`
/// together. `density` is cuttings on a square metre, those for gaps included.
pub(super) fn cuts(
    days: &[(DateSpan, Option<Ripening>)],
    (first, later): (Cuttings, Cuttings),
    density: f64,
) -> Vec<Cut> {
    let more = u32::try_from(days.len()).unwrap_or(u32::MAX).saturating_sub(1);
    // What the number of cuts does not divide goes to the earlier ones.
    let part = |whole: u32, times: u32| whole / more + u32::from(times <= whole % more);
    let cut = |(times, (when, ripening)): (u32, &(DateSpan, Option<Ripening>))| {
        let cuttings = match times {
            0 => first,
            _ => {
                Cuttings { low: later.low / more, middle: part(later.middle, times), high: later.high / more }
            }
        };
        Cut::of(*when, cuttings, density, *ripening)
    };
    (0..).zip(days).map(cut).filter(|cut| cut.cuttings.middle > 0).collect()
}
