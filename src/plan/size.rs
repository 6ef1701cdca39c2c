//! How many roots and plants: from the field back, and from what is at hand forward.

use chrono::NaiveDate;

use super::amounts::Amounts;
use super::case::{Case, Kind};
use super::defaults::Assumptions;
use super::field::{Field, Spacing};
use super::growth::{PlanBy, points};
use super::limits::{self, Means, Planted};
use super::multiply::{self, Cuttings, Part, Rate, Sizing, Unknown};
use super::progress::Progress;
use super::quantities::{AmountReason, Quantity};
use super::remarks::{Refusal, Remark};
use super::units::{
    Metres, SquareMetres, of_100, tenths, two_figures_down, two_figures_up, whole_down, whole_up,
};

/// What is to be planted.
#[derive(Debug, Clone, Copy)]
pub(super) struct Demand {
    /// Cuttings, those for gaps included.
    pub(super) cuttings: u32,
    /// Places in the field, each for a cutting.
    pub(super) places: f64,
    pub(super) area: SquareMetres,
}

impl Demand {
    pub(super) fn of(case: &Case) -> Option<Demand> {
        let mut demand = Demand { cuttings: 0, places: 0.0, area: SquareMetres(0.0) };
        let mut any = false;
        for field in case.fields() {
            demand.cuttings = demand.cuttings.saturating_add(field.cuttings_with_gaps(&case.assumptions));
            demand.places += f64::from(field.cuttings());
            demand.area = demand.area + field.area;
            any = true;
        }
        any.then_some(demand)
    }

    /// What so many cuttings plant, where they alone tell how large the field is.
    fn of_cuttings(cuttings: u32, case: &Case) -> Demand {
        let places = f64::from(cuttings) / (1.0 + case.assumptions.gap_share);
        let area = SquareMetres((places / case.spacing().density() + 1e-9).floor());
        Demand { cuttings, places, area }
    }

    /// Cuttings on a square metre, those for gaps included.
    pub(super) fn density(&self) -> f64 {
        f64::from(self.cuttings) / self.area.0
    }

    /// The same in whole square metres, or all of it.
    pub(super) fn planted_area(&self, cuttings: u32) -> SquareMetres {
        let planted = self.planted_by(cuttings);
        if planted < self.area.0 { SquareMetres((planted + 1e-9).floor()) } else { self.area }
    }

    /// The field that so many of its cuttings plant, square metres.
    pub(super) fn planted_by(&self, cuttings: u32) -> f64 {
        self.area.0 * (f64::from(cuttings) / f64::from(self.cuttings.max(1))).min(1.0)
    }

    /// The same as it is told: to two figures, down.
    fn told_area(&self, cuttings: u32) -> f64 {
        f64::from(two_figures_down(whole_down(self.planted_by(cuttings))))
    }
}

/// Roots and plants, and the cuttings they give.
pub(super) struct Sized {
    /// Roots to store, or those that are still in the store.
    pub(super) roots: u32,
    /// Roots that the bed is made for.
    pub(super) bedded: u32,
    pub(super) plants: u32,
    pub(super) first: Cuttings,
    /// The cuts after the first one.
    pub(super) later: Cuttings,
    pub(super) season: Cuttings,
    pub(super) demand: Option<Demand>,
}

/// Where the roots stand that a state counts from.
#[derive(Clone, Copy)]
pub(super) enum Roots<'a> {
    /// They can still be chosen.
    ToChoose,
    /// Plants are marked for as many as were planned.
    Marked(&'a Amounts),
    /// So many are left in the store, where plants were marked for as many as were planned.
    Left(&'a Amounts, Progress),
}

impl Roots<'_> {
    /// What is left in the store, where somebody looked.
    fn left(&self) -> Option<Progress> {
        match self {
            Roots::Left(_, progress) => Some(*progress),
            Roots::ToChoose | Roots::Marked(_) => None,
        }
    }

    /// What was planned, once plants are marked.
    fn planned(&self) -> Option<&Amounts> {
        match self {
            Roots::ToChoose => None,
            Roots::Marked(planned) | Roots::Left(planned, _) => Some(planned),
        }
    }

    /// What they give: `count` roots, or those that the checks leave.
    fn give(&self, count: u32, rate: &Rate, part: Part) -> Cuttings {
        let Some(progress) = self.left() else { return rate.cuttings_of(count, part) };
        let unknown = if progress.sprouted.is_some() { Unknown::Nothing } else { Unknown::Survival };
        rate.ranged(progress.cuttings(rate, part), part, unknown)
    }

    /// The same by the middle alone.
    fn give_middle(&self, count: u32, rate: &Rate, part: Part) -> u32 {
        match self.left() {
            Some(progress) => whole_down(progress.cuttings(rate, part)),
            None => rate.middle_of(count, part),
        }
    }
}

impl Progress {
    /// Roots that give cuttings.
    fn sprouting(&self, rate: &Rate) -> u32 {
        self.sprouted.unwrap_or_else(|| whole_down(f64::from(self.at_bed) * rate.sprouting()))
    }

    /// What these give.
    fn cuttings(&self, rate: &Rate, part: Part) -> f64 {
        f64::from(self.sprouting(rate)) * rate.per_sprouted(part)
    }
}

impl Sized {
    /// From the field back to roots and plants; from what is at hand forward to the field; and from the roots
    /// that there are once they are chosen.
    ///
    /// # Errors
    /// No root fits into any container.
    pub(super) fn of(
        case: &Case,
        (roots, stored): (Roots<'_>, Stored<'_>),
        means: Means<'_>,
        amounts: &mut Amounts,
        remarks: &mut Vec<Remark>,
    ) -> Result<Sized, Refusal> {
        let rate = stored.rate;
        let fields = Demand::of(case);
        let (count, why) = match roots {
            Roots::ToChoose => choose_roots(case, fields, stored, means, remarks)?,
            Roots::Marked(planned) => {
                let roots = planned.amount(Quantity::RootsToStore);
                roots.map_or((0, AmountReason::RootsAtHand), |roots| (roots.value as u32, roots.why.clone()))
            }
            Roots::Left(_, progress) => (progress.left, AmountReason::RootsLeft),
        };
        let give = |part: Part| roots.give(count, rate, part);
        let (first, season) = (give(Part::First), give(Part::Season));
        // Whole cuttings, so that the cuts add up to the season.
        let later = Cuttings { middle: season.middle.saturating_sub(first.middle), ..give(Part::Later) };
        let demand = match (fields, case.at_hand) {
            (Some(demand), _) => {
                explain_field(case, demand, season.middle, amounts);
                Some(demand)
            }
            (None, Some(_)) => {
                let cuttings = roots.give_middle(count, rate, case.sizing.into());
                Some(explain_field_of(case, (cuttings, rate.part(case.sizing)), count, amounts))
            }
            (None, None) => {
                let cuttings = season.middle;
                amounts.add(
                    Quantity::CuttingsNeeded,
                    cuttings,
                    AmountReason::CuttingsOfZone { roots: count },
                );
                None
            }
        };
        amounts.add(Quantity::RootsToStore, count, why);
        let bedded = roots.left().map_or(count, |progress| progress.at_bed);
        let mut sized = Sized { roots: count, bedded, plants: 0, first, later, season, demand };
        sized.yielding(case, (roots, stored), amounts);
        sized.remark(case, (roots, stored), remarks);
        Ok(sized)
    }

    /// Tells the cuttings of the first cut and of the season, and the plants.
    fn yielding(&mut self, case: &Case, (roots, stored): (Roots<'_>, Stored<'_>), amounts: &mut Amounts) {
        let rate = stored.rate;
        let per_root = tenths(rate.per_sprouted(Part::First));
        let days = stored.days;
        let left = roots.left();
        let first_cut = match left {
            Some(progress) => {
                AmountReason::CuttingsExpected { sprouting: progress.sprouting(rate), per_root, days }
            }
            None => AmountReason::FirstCut {
                roots: self.roots,
                surviving: of_100(rate.survival()),
                months: tenths(stored.months),
                sprouting: of_100(rate.sprouting()),
                per_root,
                days,
            },
        };
        amounts.add_cuttings(Quantity::CuttingsAtFirstCut, self.first, first_cut.clone());
        let per_root = match left {
            Some(_) => f64::from(self.season.middle) / f64::from(self.roots.max(1)),
            None => rate.per_stored(Part::Season),
        };
        amounts.add_cuttings(
            Quantity::CuttingsOverSeason,
            self.season,
            AmountReason::BedSeason {
                roots: self.roots,
                per_root: tenths(per_root),
                cuts: f64::from(rate.cuts()),
            },
        );
        self.plants(case, roots, amounts);
        let Some(Progress { left, at_bed, .. }) = left else { return };
        amounts.add(Quantity::RootsLeft, left, AmountReason::RootsLeft);
        amounts.add(Quantity::RootsAtBed, at_bed, AmountReason::RootsAtBed { left, bed: stored.bed });
        amounts.add_cuttings(Quantity::CuttingsExpected, self.first, first_cut);
        if let (Some(demand), true) = (self.demand, case.fields().next().is_some()) {
            let (cuttings, expected) = (demand.cuttings, self.first.middle);
            let short = cuttings.saturating_sub(expected);
            amounts.add(Quantity::CuttingsShort, short, AmountReason::CuttingsShort { cuttings, expected });
        }
    }

    /// Tells the plants to mark; those that were marked, once they are.
    fn plants(&mut self, case: &Case, roots: Roots<'_>, amounts: &mut Amounts) {
        let a = &case.assumptions;
        if let Some(planned) = roots.planned() {
            let marked = [Quantity::PlantsToMark, Quantity::PlantsPerMember];
            for amount in marked.into_iter().filter_map(|quantity| planned.amount(quantity)) {
                amounts.0.push(amount.clone());
            }
            self.plants = planned.get(Quantity::PlantsToMark).unwrap_or_default() as u32;
            return;
        }
        let roots = self.roots;
        let at_hand = case.at_hand.and_then(|at_hand| at_hand.plants);
        let needed = multiply::plants_for(roots, a);
        self.plants = at_hand.map_or(needed, |plants| needed.min(plants));
        let without_spare = self.plants.min(multiply::plants_without_spare(roots, a));
        amounts.add(
            Quantity::PlantsToMark,
            self.plants,
            AmountReason::PlantsToMark {
                per_plant: a.roots_per_plant,
                roots,
                without_spare,
                spare: self.plants - without_spare,
                sick: of_100(a.sick_share),
            },
        );
        if let (Kind::Group { members }, true) = (case.kind, case.farms.is_empty()) {
            amounts.add(
                Quantity::PlantsPerMember,
                self.plants.div_ceil(members.max(1)),
                AmountReason::PlantsPerMember { plants: self.plants, members },
            );
        }
    }

    /// Says whether what the checks leave is enough for the field.
    fn compare(&self, demand: Demand, rate: &Rate, assumptions: &Assumptions) -> Remark {
        let (cuttings, first) = (demand.cuttings, self.first.middle);
        match cuttings.saturating_sub(first) {
            0 => Remark::Enough { spare: two_figures_down(first - cuttings) },
            short => Remark::CuttingsShort {
                short: two_figures_up(short).min(cuttings),
                cuttings,
                area_m2: demand.told_area(first),
                field_m2: demand.area.0.round(),
                later_cuts: rate.cuts() - 1,
                least_days: assumptions.next_cut_days_first,
                most_days: assumptions.next_cut_days_last,
                still_short: two_figures_up(cuttings.saturating_sub(self.season.middle)).min(cuttings),
            },
        }
    }

    /// Says by whose figures the plan counts, and where the first cut does not plant the whole field.
    fn remark(&self, case: &Case, (roots, stored): (Roots<'_>, Stored<'_>), remarks: &mut Vec<Remark>) {
        let a = &case.assumptions;
        if self.roots > 0 {
            let other = Rate::of(case.plan_by.other(), stored.months, stored.days, a);
            let other = other.counting(stored.rate.cuts());
            let by_other = |part: Part| two_figures_down(roots.give_middle(self.roots, &other, part));
            let (first, season) = (two_figures_down(self.first.middle), two_figures_down(self.season.middle));
            let (other_first, other_season) = (by_other(Part::First), by_other(Part::Season));
            let roots = self.roots;
            remarks.push(match case.plan_by {
                PlanBy::Print => Remark::ByPrint { roots, first, season, other_first, other_season },
                PlanBy::Practice => Remark::ByPractice { roots, first, season, other_first, other_season },
            });
        }
        let Some(demand) = self.demand else { return };
        let falls_short = self.first.middle < demand.cuttings;
        match roots {
            // Nobody can mark more plants now.
            Roots::Marked(_) if falls_short => remarks.push(self.compare(demand, stored.rate, a)),
            Roots::Left(..) if case.fields().next().is_some() => {
                remarks.push(self.compare(demand, stored.rate, a))
            }
            // Where something binds the plan, that has its own remark, and more roots are no answer.
            Roots::ToChoose if falls_short && self.season.middle >= demand.cuttings => {
                remarks.push(Remark::FieldWaits {
                    cuttings: two_figures_down(self.first.middle),
                    low: two_figures_down(self.first.low),
                    high: two_figures_down(self.first.high),
                    area_m2: demand.told_area(self.first.middle),
                    field_m2: demand.area.0.round(),
                    least_days: a.next_cut_days_first,
                    most_days: a.next_cut_days_last,
                    roots: stored.rate.roots_for(demand.cuttings, Sizing::FirstPlanting),
                });
            }
            _ => {}
        }
    }
}

/// How long roots are stored and bedded, and what they give then.
#[derive(Clone, Copy)]
pub(super) struct Stored<'a> {
    /// Months in sand.
    pub(super) months: f64,
    /// The day the first roots go to the bed.
    pub(super) bed: NaiveDate,
    /// Days in the bed until the first cut.
    pub(super) days: f64,
    pub(super) rate: &'a Rate,
}

/// The roots that the field wants, what is at hand gives or a zone's round number, as far as what there is allows
/// them; and why so many.
///
/// # Errors
/// No root fits into any container.
fn choose_roots(
    case: &Case,
    fields: Option<Demand>,
    stored: Stored<'_>,
    mut means: Means<'_>,
    remarks: &mut Vec<Remark>,
) -> Result<(u32, AmountReason), Refusal> {
    let rate = stored.rate;
    let stock = if fields.is_none() { limits::stock(case, &mut means) } else { None };
    let (wanted, why) = match (fields, stock) {
        (Some(demand), _) => wanted_roots(case, demand, stored, remarks),
        (None, Some(stock)) => {
            if stock.roots == 0 {
                remarks.push(stock.nothing());
            }
            (stock.roots, stock.why)
        }
        (None, None) => (whole_up(case.assumptions.zone_roots), AmountReason::RootsOfZone),
    };
    let limits = limits::below(wanted, case, &mut means)?;
    if !limits.is_empty() {
        let all = || Demand::of_cuttings(rate.middle_of(wanted, case.sizing), case);
        let whole = fields.unwrap_or_else(all);
        for limit in &limits {
            let by = |part: Part| whole.told_area(rate.middle_of(limit.roots, part));
            let (first_m2, area_m2) = (by(Part::First), by(Part::Season));
            let planted = Planted { first_m2, area_m2, field_m2: whole.area.0.round() };
            remarks.extend(limit.remarks(wanted, &planted, case));
        }
    }
    Ok(limits.into_iter().next().map_or((wanted, why), |limit| (limit.roots, limit.why)))
}

/// The field that so many cuttings of `roots` plant.
fn explain_field_of(case: &Case, (cuttings, part): (u32, Part), roots: u32, amounts: &mut Amounts) -> Demand {
    let demand = Demand::of_cuttings(cuttings, case);
    let Spaced { layout, between_m, each } = Spaced::of(&case.spacing());
    let why = AmountReason::FieldOfCuttings { cuttings, layout, between_m, each };
    amounts.add(Quantity::FieldArea, demand.area.0, why);
    let why = match part {
        Part::First => AmountReason::CuttingsOfFirstCut { roots },
        Part::Later | Part::Season => AmountReason::CuttingsOfSeason { roots },
    };
    amounts.add(Quantity::CuttingsNeeded, cuttings, why);
    demand
}

/// How cuttings stand, as reasons tell it.
struct Spaced {
    layout: &'static str,
    between_m: Metres,
    /// Metres along a ridge, or cuttings on a mound.
    each: f64,
}

impl Spaced {
    fn of(spacing: &Spacing) -> Spaced {
        match *spacing {
            Spacing::Ridges { between, along } => {
                Spaced { layout: "ridges", between_m: between, each: along.0 }
            }
            Spacing::Mounds { between, cuttings } => {
                Spaced { layout: "mounds", between_m: between, each: cuttings }
            }
        }
    }
}

/// Cuttings that plant the field, with rows, and bundles of those that there will be.
pub(super) fn explain_field(case: &Case, demand: Demand, season: u32, amounts: &mut Amounts) {
    let a = &case.assumptions;
    let Spaced { layout, between_m, each } = Spaced::of(&case.spacing());
    if let Some(rows) = case.field.as_ref().and_then(Field::rows) {
        amounts.add(Quantity::FieldRows, rows.count, AmountReason::FieldRows { layout, between_m });
        amounts.add(
            Quantity::CuttingsPerRow,
            rows.cuttings,
            AmountReason::CuttingsPerRow { layout, between_m, each },
        );
    }
    let (area_m2, gaps) = (demand.area, of_100(a.gap_share));
    let why = match u32::try_from(case.farms.len()).unwrap_or(u32::MAX) {
        0 => AmountReason::CuttingsForField { area_m2, layout, between_m, each, gaps },
        farms => AmountReason::CuttingsForFarms { farms, area_m2, gaps },
    };
    let failing = points!(a, gap_share);
    let with = |share: f64| whole_up(demand.places * (1.0 + share));
    if failing.is_certain() {
        amounts.add(Quantity::CuttingsNeeded, demand.cuttings, why);
    } else {
        let range = (f64::from(with(failing.low)), f64::from(with(failing.high)));
        amounts.add_range(Quantity::CuttingsNeeded, demand.cuttings, range, why);
    }
    let bundle_size = a.cuttings_per_bundle;
    amounts.add(
        Quantity::Bundles,
        whole_up(f64::from(demand.cuttings.min(season)) / bundle_size),
        AmountReason::Bundles { bundle_size },
    );
}

/// The roots that a field wants, and why so many.
fn wanted_roots(
    case: &Case,
    demand: Demand,
    stored: Stored<'_>,
    remarks: &mut Vec<Remark>,
) -> (u32, AmountReason) {
    let a = &case.assumptions;
    let rate = stored.rate;
    let cuttings = demand.cuttings;
    let usual = rate.roots_for(cuttings, case.sizing);
    let why = match rate.part(case.sizing) {
        Part::First => AmountReason::RootsForFirstCut {
            cuttings,
            surviving: of_100(rate.survival()),
            sprouting: of_100(rate.sprouting()),
            per_root: tenths(rate.per_sprouted(Part::First)),
            days: stored.days,
        },
        Part::Later | Part::Season => AmountReason::RootsForSeason {
            cuttings,
            per_root: tenths(rate.per_stored(Part::Season)),
            cuts: f64::from(rate.cuts()),
        },
    };
    let Some(percent) = case.confidence_percent else { return (usual, why) };
    let failing = points!(a, gap_share);
    match rate.roots_for_confidence(demand.places, failing, percent / 100.0, case.sizing) {
        Some(roots) => {
            // The middle of all seasons is a little better than the season whose values are all middle ones.
            let roots = if percent >= 50.0 { roots.max(usual) } else { roots };
            let plan_by = case.plan_by.name();
            (roots, AmountReason::RootsToBeSure { cuttings, percent, usual, plan_by })
        }
        None => {
            remarks.push(Remark::NeverSoSure { percent });
            (usual, why)
        }
    }
}
