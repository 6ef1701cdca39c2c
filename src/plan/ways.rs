//! Ways to have cuttings when the rains come, beside each other: what they give, the water and the work.
//!
//! Two comparisons are made. Before the season, for a large field or little water: how much each way takes to
//! plant the whole field at the onset. Once checks find too little left: what each way still gives by then.
//!
//! A watered plot of vines is counted by what a cutting gives at a cut and by what a square metre gives, whichever
//! takes more room. Its low and high points and those of the bed add up as in [`Rate::ranged`].

use chrono::{Days, NaiveDate};

use super::case::{Case, Kind};
use super::defaults::Assumptions;
use super::growth::{Points, points};
use super::multiply::{Cuttings, Part, Rate, spread_over};
use super::quantities::Quantity;
use super::seedbed::{self, Period, Soil};
use super::size::Demand;
use super::span::DateSpan;
use super::state::{State, first_day};
use super::steps::StepKind;
use super::units::{Litres, SquareMetres, two_figures_up, whole_down, whole_up};
use crate::catalogue::catalogue;

catalogue! {
    /// How cuttings are come by.
    pub enum WayKind: WayKindEntry {}
    /// The roots sprout in one bed, and its first cut plants the field.
    OneBed = "one-bed";
    /// A small early bed, whose first cut is multiplied in a watered plot.
    SecondBed = "second-bed";
    /// Vines of the old field, kept and multiplied in a watered plot; nothing is stored.
    VinePlot = "vine-plot";
    /// The roots that are left stay in the sand until the day of the bed.
    AsPlanned = "as-planned";
    /// The sound roots go to the bed now.
    BedNow = "bed-now";
    /// The sound roots go to the bed now, and its first cut is multiplied in a watered plot.
    BedNowSecondBed = "bed-now-second-bed";
    /// Vines that are short come from somebody else.
    Buy = "buy";
}

/// A way, with what it takes and gives.
#[derive(Debug, Clone, PartialEq)]
pub struct Way {
    /// What it is.
    pub kind: WayKind,
    /// Roots in the sand that it takes.
    pub roots: u32,
    /// The day its bed or plot is planted; `None` where there is none.
    pub from: Option<NaiveDate>,
    /// The day its second bed is planted, where it has one.
    pub second: Option<NaiveDate>,
    /// Bed and plot together, at their largest.
    pub area: SquareMetres,
    /// Cuttings when the rains come.
    pub cuttings: Cuttings,
    /// Water until then.
    pub water: Litres,
    /// Days of watering.
    pub days: u32,
    /// Trips to the water in all.
    pub trips: u32,
}

impl Way {
    /// Its cuttings as they are told, to two figures: those that are grown down, those that are still to be found up.
    pub fn told(&self) -> Cuttings {
        let Cuttings { low, middle, high } = self.cuttings;
        match self.kind {
            WayKind::Buy => {
                let [low, middle, high] = [low, middle, high].map(two_figures_up);
                Cuttings { low, middle, high }
            }
            _ => self.cuttings.told(),
        }
    }
}

/// What the ways of a case have in common.
struct Common<'a> {
    case: &'a Case,
    onset: NaiveDate,
    /// Cuttings that a stored or left root gives are counted from the share that survives until its bed.
    months: f64,
}

/// A bed of roots or a plot of vines, watered until the rains.
#[derive(Clone, Copy)]
struct Watered {
    from: NaiveDate,
    /// Square metres.
    area: f64,
    /// Litres.
    water: f64,
}

/// A bed and the plot that its first cut plants.
struct Grown {
    /// Cuttings of one sprouted root at the onset.
    per_sprouted: f64,
    /// What differs from season to season.
    factors: Vec<Points>,
    second: Option<NaiveDate>,
}

/// The ways to plant the whole field at the onset: for a field that is large, or where water is short.
pub(super) fn to_plant(case: &Case, state: &State, onset: NaiveDate, dry: bool) -> Vec<Way> {
    let a = &case.assumptions;
    let Some(demand) = Demand::of(case).filter(|_| case.kind != Kind::Zone) else { return Vec::new() };
    if !dry && demand.area.0 < a.large_field_m2 {
        return Vec::new();
    }
    let filled = first_day(&state.steps, StepKind::FillContainer).unwrap_or(case.harvest);
    let common = Common { case, onset, months: a.survival_months };
    let bed = (a.bed_weeks_before_rains_first * 7.0).round();
    let plot = (a.vine_plot_weeks * 7.0).round();
    let mut ways = Vec::with_capacity(3);
    ways.extend(common.roots_for(WayKind::OneBed, demand.cuttings, (filled, bed, None)));
    ways.extend(common.roots_for(WayKind::SecondBed, demand.cuttings, (filled, bed + plot, Some(plot))));
    ways.extend(common.vine_plot(demand.cuttings));
    if ways.len() > 1 { ways } else { Vec::new() }
}

/// The ways that are left to a store that keeps too few roots, as it stands on `today`.
pub(super) fn to_rescue(case: &Case, now: &State, today: NaiveDate, onset: NaiveDate) -> Vec<Way> {
    let a = &case.assumptions;
    let open_bed = now.steps_of(StepKind::PlantBed).find(|step| !step.done).map(|step| step.when.from);
    let (Some(demand), Some(bed)) = (Demand::of(case), open_bed) else { return Vec::new() };
    let planned = now.cuts.first().map(|cut| cut.cuttings).unwrap_or_default();
    let season: u32 = now.cuts.iter().map(|cut| cut.cuttings.middle).sum();
    if season >= demand.cuttings {
        return Vec::new();
    }
    let common = Common { case, onset, months: 0.0 };
    let left = now.amounts.get(Quantity::RootsToStore).unwrap_or_default() as u32;
    let water = now.water.iter().map(|period| period.total().0).sum();
    let mut ways = vec![Way {
        kind: WayKind::AsPlanned,
        roots: left,
        from: Some(bed),
        second: None,
        area: now.bed.area,
        cuttings: planned,
        water: Litres(water),
        days: u32::try_from(now.water.iter().map(Period::days).sum::<i64>()).unwrap_or(0),
        trips: whole_up(water / a.litres_per_trip),
    }];
    let tomorrow = today.checked_add_days(Days::new(1)).unwrap_or(today);
    let to_rains = (onset - tomorrow).num_days() as f64;
    if bed > tomorrow && to_rains >= a.first_cut_days_after_bed {
        let bed = common.bed(left, tomorrow);
        ways.push(common.of_roots(WayKind::BedNow, left, bed, None));
        let plot = (a.vine_plot_weeks * 7.0).round();
        if to_rains - plot >= a.first_cut_days_after_bed {
            ways.push(common.of_roots(WayKind::BedNowSecondBed, left, bed, Some(plot)));
        }
    }
    let short = demand.cuttings.saturating_sub(planned.middle);
    ways.push(Way {
        kind: WayKind::Buy,
        roots: 0,
        from: None,
        second: None,
        area: SquareMetres(0.0),
        cuttings: Cuttings { low: short, middle: short, high: short },
        water: Litres(0.0),
        days: 0,
        trips: 0,
    });
    ways
}

impl Common<'_> {
    fn assumptions(&self) -> &Assumptions {
        &self.case.assumptions
    }

    fn before_onset(&self, days: f64) -> NaiveDate {
        let days = Days::new(days.max(0.0).round() as u64);
        self.onset.checked_sub_days(days).unwrap_or(self.onset)
    }

    /// What a root gives that sprouts in a bed of `bed` and, where there is a plot of so many days, what its first
    /// cut gives there beside the cut of the bed itself.
    fn grown(&self, bed: NaiveDate, plot: Option<f64>) -> (Rate, Grown) {
        let a = self.assumptions();
        let days = (self.onset - bed).num_days().max(0) as f64;
        let first = (days - plot.unwrap_or(0.0)).max(0.0);
        let rate = Rate::of(self.case.plan_by, self.months, first, a);
        let mut factors = vec![rate.grown_points(Part::First), rate.sprouting_points()];
        let of_first = rate.per_sprouted(Part::First);
        let Some(plot) = plot else {
            return (rate, Grown { per_sprouted: of_first, factors, second: None });
        };
        let (multiplied, failing) = (points!(a, vine_plot_rate), points!(a, gap_share));
        factors.push(multiplied);
        let establish = |fails: f64| 1.0 - fails;
        factors.push(Points {
            low: establish(failing.high),
            middle: establish(failing.middle),
            high: establish(failing.low),
        });
        // The bed itself is cut once more at the onset.
        let again = if a.cuts >= 2.0 { rate.per_later_cut() } else { 0.0 };
        let per_sprouted = of_first * establish(failing.middle) * multiplied.middle + again;
        (rate, Grown { per_sprouted, factors, second: Some(self.before_onset(plot)) })
    }

    /// A bed of so many roots that is planted on a day.
    fn bed(&self, roots: u32, from: NaiveDate) -> Watered {
        let area = f64::from(roots) * self.assumptions().bed_area_per_root_m2;
        self.watered(area, from, Some(self.case.soil.unwrap_or_default()))
    }

    /// A plot that gives so many cuttings at a cut.
    fn plot(&self, cuttings: u32, from: NaiveDate) -> Watered {
        self.watered(plot_area(f64::from(cuttings), self.assumptions()), from, None)
    }

    /// An area of roots in this soil, or of vines.
    fn watered(&self, area: f64, from: NaiveDate, soil: Option<Soil>) -> Watered {
        let last = self.before_onset(1.0);
        if area <= 0.0 || from > last {
            return Watered { from, area, water: 0.0 };
        }
        let (place, climate) = (&self.case.place, self.case.climate_or_usual());
        let days = (from, DateSpan::new(from, last));
        let periods = seedbed::schedule(SquareMetres(area), place, &climate, days, soil, self.assumptions());
        Watered { from, area, water: periods.map(|period| period.total().0).sum() }
    }

    fn way(
        &self,
        kind: WayKind,
        roots: u32,
        bed: Watered,
        cuttings: Cuttings,
        second: Option<NaiveDate>,
    ) -> Way {
        let plot = second.map(|second| self.plot(cuttings.middle, second));
        let Watered { from, area, water } = bed;
        let area = area + plot.map_or(0.0, |plot| plot.area);
        let water = water + plot.map_or(0.0, |plot| plot.water);
        Way {
            kind,
            roots,
            from: Some(from),
            second,
            area: SquareMetres((area * 10.0).ceil() / 10.0),
            cuttings,
            water: Litres(water),
            days: u32::try_from((self.onset - from).num_days()).unwrap_or(0),
            trips: whole_up(water / self.assumptions().litres_per_trip),
        }
    }

    /// A way by which so many stored roots of a bed that begins so many days before the onset give `cuttings` then;
    /// `None` where the bed would begin before the store is filled.
    fn roots_for(
        &self,
        kind: WayKind,
        cuttings: u32,
        (filled, before, plot): (NaiveDate, f64, Option<f64>),
    ) -> Option<Way> {
        let bed = self.before_onset(before);
        if bed < filled {
            return None;
        }
        let (rate, grown) = self.grown(bed, plot);
        let per_root = grown.per_sprouted * rate.survival() * rate.sprouting();
        if per_root <= 0.0 {
            return None;
        }
        let roots = whole_up(f64::from(cuttings) / per_root);
        let mut factors = grown.factors;
        factors.push(rate.survival_points());
        let given = spread_over(f64::from(roots) * per_root, &factors);
        Some(self.way(kind, roots, self.bed(roots, bed), given, grown.second))
    }

    /// A way from `roots` that go to a bed.
    fn of_roots(&self, kind: WayKind, roots: u32, bed: Watered, plot: Option<f64>) -> Way {
        let (rate, grown) = self.grown(bed.from, plot);
        let sprouting = whole_down(f64::from(roots) * rate.sprouting());
        // A plot is made no larger than the field asks for.
        let wanted =
            plot.and_then(|_| Demand::of(self.case)).map_or(f64::INFINITY, |demand| demand.cuttings.into());
        let given = spread_over((f64::from(sprouting) * grown.per_sprouted).min(wanted), &grown.factors);
        self.way(kind, roots, bed, given, grown.second)
    }

    /// Vines of the old field in a watered plot until the rains, where the time until then is short.
    fn vine_plot(&self, cuttings: u32) -> Option<Way> {
        let a = self.assumptions();
        let from = self.case.harvest;
        let days = (self.onset - from).num_days();
        if days as f64 > a.vines_kept_days || days as f64 <= a.vine_plot_weeks * 7.0 {
            return None;
        }
        let given = spread_over(f64::from(cuttings), &[points!(a, vine_plot_rate)]);
        Some(self.way(WayKind::VinePlot, 0, self.plot(cuttings, from), given, None))
    }
}

/// The plot that gives so many cuttings at a cut, square metres: by what a square metre gives, and by the room
/// that the cuttings take which are planted for them.
fn plot_area(cuttings: f64, assumptions: &Assumptions) -> f64 {
    let a = assumptions;
    let side = a.vine_plot_spacing_cm / 100.0;
    let planted = cuttings / a.vine_plot_rate;
    (cuttings / a.vine_plot_cuttings_per_m2).max(planted * side * side)
}
