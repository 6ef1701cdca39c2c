//! How many roots and plants: from the field back, and from what is at hand forward.

use super::amounts::Amounts;
use super::case::{Case, Kind};
use super::field::{Field, Spacing};
use super::growth::{PlanBy, points};
use super::limits::{self, Means, Planted};
use super::multiply::{self, Cuttings, Part, Rate, Sizing};
use super::quantities::{AmountReason, Quantity};
use super::remarks::{Refusal, Remark};
use super::units::{Metres, SquareMetres, of_100, tenths, two_figures_down, whole_up};

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

    /// What the cuttings of so many roots plant, where they alone tell how large the field is.
    fn of_roots(roots: u32, rate: &Rate, case: &Case) -> Demand {
        let cuttings = rate.cuttings_of(roots, case.sizing).middle;
        let places = f64::from(cuttings) / (1.0 + case.assumptions.gap_share);
        let area = SquareMetres((places / case.spacing().density() + 1e-9).floor());
        Demand { cuttings, places, area }
    }

    /// Tells the field and its cuttings, which so many roots give.
    fn explain(&self, roots: u32, case: &Case, amounts: &mut Amounts) {
        let cuttings = self.cuttings;
        let Spaced { layout, between_m, each } = Spaced::of(&case.spacing());
        let field = AmountReason::FieldOfCuttings { cuttings, layout, between_m, each };
        amounts.add(Quantity::FieldArea, self.area.0, field);
        let why = match case.sizing {
            Sizing::BedSeason => AmountReason::CuttingsOfSeason { roots },
            Sizing::FirstPlanting => AmountReason::CuttingsOfFirstCut { roots },
        };
        amounts.add(Quantity::CuttingsNeeded, cuttings, why);
    }

    /// The part of it that so many of its cuttings plant.
    fn part(&self, cuttings: u32) -> Demand {
        let area = SquareMetres(self.planted_by(cuttings));
        Demand { cuttings: cuttings.min(self.cuttings), places: self.places, area }
    }

    /// The field that so many of its cuttings plant.
    pub(super) fn planted_by(&self, cuttings: u32) -> f64 {
        self.area.0 * (f64::from(cuttings) / f64::from(self.cuttings.max(1))).min(1.0)
    }
}

/// Roots and plants, and the cuttings they give.
pub(super) struct Sized {
    pub(super) roots: u32,
    pub(super) plants: u32,
    pub(super) first: Cuttings,
    pub(super) season: Cuttings,
    pub(super) demand: Option<Demand>,
    /// What all cuts of the bed plant of the field.
    pub(super) planted: Demand,
}

impl Sized {
    /// From the field back to roots and plants; from what is at hand forward to the field. What the case says there
    /// is bounds the roots.
    ///
    /// # Errors
    /// No root fits into any container.
    pub(super) fn of(
        case: &Case,
        demand: Option<Demand>,
        stored: Stored<'_>,
        mut means: Means<'_>,
        amounts: &mut Amounts,
        remarks: &mut Vec<Remark>,
    ) -> Result<Sized, Refusal> {
        let rate = stored.rate;
        let stock = if demand.is_none() { limits::stock(case, &mut means) } else { None };
        let (wanted, why) = match (demand, &stock) {
            (Some(demand), _) => {
                explain_field(case, demand, amounts);
                wanted_roots(case, demand, stored, remarks)
            }
            (None, Some(stock)) => (stock.roots, stock.why.clone()),
            (None, None) => (whole_up(case.assumptions.zone_roots), AmountReason::RootsOfZone),
        };
        let limits = limits::below(wanted, case, &mut means)?;
        let (roots, why) = limits.first().map_or((wanted, why), |limit| (limit.roots, limit.why.clone()));
        let planted = Demand::of_roots(roots, rate, case);
        match (demand, &stock) {
            (Some(_), _) => {}
            (None, Some(stock)) => {
                planted.explain(roots, case, amounts);
                if wanted == 0 {
                    remarks.push(stock.nothing());
                }
            }
            (None, None) => {
                let why = AmountReason::CuttingsOfZone { roots };
                amounts.add(Quantity::CuttingsNeeded, planted.cuttings, why);
            }
        }
        amounts.add(Quantity::RootsToStore, roots, why);
        let whole = demand.unwrap_or_else(|| Demand::of_roots(wanted, rate, case));
        for limit in &limits {
            let by = |part: Part| whole.planted_by(rate.cuttings_of(limit.roots, part).middle).floor();
            let (first_m2, area_m2) = (by(Part::First), by(Part::Season));
            let planted = Planted { first_m2, area_m2, field_m2: whole.area.0.round() };
            remarks.extend(limit.remarks(wanted, &planted, case));
        }
        let season = rate.cuttings_of(roots, Part::Season);
        let mut sized = Sized {
            roots,
            plants: 0,
            first: rate.cuttings_of(roots, Part::First),
            season,
            demand: demand.or(stock.is_some().then_some(planted)),
            planted: whole.part(season.middle),
        };
        sized.yielding(case, stored, amounts);
        sized.remark(case, stored, remarks);
        Ok(sized)
    }

    /// Tells the cuttings of the first cut and of the season, and the plants.
    fn yielding(&mut self, case: &Case, stored: Stored<'_>, amounts: &mut Amounts) {
        let a = &case.assumptions;
        let rate = stored.rate;
        let roots = self.roots;
        amounts.add_cuttings(
            Quantity::CuttingsAtFirstCut,
            self.first,
            AmountReason::FirstCut {
                roots,
                surviving: of_100(rate.survival()),
                months: stored.months,
                sprouting: of_100(rate.sprouting()),
                per_root: tenths(rate.per_sprouted(Part::First)),
                days: stored.days,
            },
        );
        amounts.add_cuttings(
            Quantity::CuttingsOverSeason,
            self.season,
            AmountReason::BedSeason { roots, per_root: tenths(rate.per_stored(Part::Season)), cuts: a.cuts },
        );
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

    /// Says by whose figures the plan counts, and where the first cut does not plant the whole field.
    fn remark(&self, case: &Case, stored: Stored<'_>, remarks: &mut Vec<Remark>) {
        let a = &case.assumptions;
        if self.roots > 0 {
            let other = Rate::of(case.plan_by.other(), stored.months, stored.days, a);
            let by_other = |part: Part| two_figures_down(other.cuttings_of(self.roots, part).middle);
            let (first, season) = (two_figures_down(self.first.middle), two_figures_down(self.season.middle));
            let (other_first, other_season) = (by_other(Part::First), by_other(Part::Season));
            let roots = self.roots;
            remarks.push(match case.plan_by {
                PlanBy::Print => Remark::ByPrint { roots, first, season, other_first, other_season },
                PlanBy::Practice => Remark::ByPractice { roots, first, season, other_first, other_season },
            });
        }
        let Some(demand) = self.demand else { return };
        // Once checks are known, what they say goes before what was expected.
        if self.first.middle >= demand.cuttings || !case.store_checks.is_empty() {
            return;
        }
        remarks.push(Remark::FieldWaits {
            cuttings: two_figures_down(self.first.middle),
            low: two_figures_down(self.first.low),
            high: two_figures_down(self.first.high),
            area_m2: demand.planted_by(self.first.middle).floor(),
            field_m2: demand.area.0.round(),
            least_days: a.next_cut_days_first,
            most_days: a.next_cut_days_last,
            roots: stored.rate.roots_for(demand.cuttings, Sizing::FirstPlanting),
        });
    }
}

/// How long roots are stored and bedded, and what they give then.
#[derive(Clone, Copy)]
pub(super) struct Stored<'a> {
    /// Months in sand.
    pub(super) months: f64,
    /// Days in the bed until the first cut.
    pub(super) days: f64,
    pub(super) rate: &'a Rate,
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

/// Cuttings that plant the field, with rows and bundles.
fn explain_field(case: &Case, demand: Demand, amounts: &mut Amounts) {
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
        whole_up(f64::from(demand.cuttings) / bundle_size),
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
    let why = match case.sizing {
        Sizing::BedSeason => {
            AmountReason::RootsForSeason { cuttings, per_root: tenths(rate.per_stored(case.sizing)) }
        }
        Sizing::FirstPlanting => AmountReason::RootsForFirstCut {
            cuttings,
            surviving: of_100(rate.survival()),
            sprouting: of_100(rate.sprouting()),
            per_root: tenths(rate.per_sprouted(case.sizing)),
            days: stored.days,
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
