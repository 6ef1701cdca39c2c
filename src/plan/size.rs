//! How many roots and plants: from the field back, and from what is at hand forward.

use super::amounts::Amounts;
use super::case::{Case, Kind};
use super::field::{Field, Spacing};
use super::multiply::{self, Sizing};
use super::overdue::Overdue;
use super::quantities::{AmountReason, Quantity};
use super::remarks::Remark;
use super::units::{Metres, SquareMetres, whole_down, whole_up};

/// What is to be planted.
#[derive(Debug, Clone, Copy)]
pub(super) struct Demand {
    pub(super) cuttings: u32,
    pub(super) area: SquareMetres,
}

impl Demand {
    pub(super) fn of(case: &Case) -> Option<Demand> {
        let mut demand = Demand { cuttings: 0, area: SquareMetres(0.0) };
        let mut any = false;
        for field in case.fields() {
            demand.cuttings = demand.cuttings.saturating_add(field.cuttings_with_gaps(&case.assumptions));
            demand.area = demand.area + field.area;
            any = true;
        }
        any.then_some(demand)
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
    pub(super) first: u32,
    pub(super) season: u32,
    pub(super) demand: Option<Demand>,
}

impl Sized {
    /// From the field back to roots and plants; from what is at hand forward to the field.
    pub(super) fn of(
        case: &Case,
        demand: Option<Demand>,
        months: f64,
        amounts: &mut Amounts,
        remarks: &mut Vec<Remark>,
    ) -> Sized {
        let a = &case.assumptions;
        let limit = Limit::of(case);
        let (roots, demand) = match (demand, &limit) {
            (Some(demand), _) => {
                explain_field(case, demand, amounts);
                let (wanted, why) = wanted_roots(case, demand.cuttings, months, remarks);
                match &limit {
                    Some(limit) if limit.roots < wanted => {
                        limit.add_to(amounts);
                        let cuttings = multiply::cuttings_of(limit.roots, case.sizing, months, a);
                        remarks.push(Remark::LimitedAtHand {
                            limit: limit.what,
                            roots: limit.roots,
                            wanted,
                            area_m2: demand.planted_by(cuttings).round(),
                            field_m2: demand.area.0.round(),
                        });
                        (limit.roots, Some(demand))
                    }
                    _ => {
                        amounts.add(Quantity::RootsToStore, wanted, why);
                        (wanted, Some(demand))
                    }
                }
            }
            (None, Some(limit)) => {
                let cuttings = multiply::cuttings_of(limit.roots, case.sizing, months, a);
                let density = case.spacing().density() * (1.0 + a.gap_share);
                let area = SquareMetres((f64::from(cuttings) / density + 1e-9).floor());
                let Spaced { layout, between_m, each } = Spaced::of(&case.spacing());
                amounts.add(
                    Quantity::FieldArea,
                    area.0,
                    AmountReason::FieldOfCuttings { cuttings, layout, between_m, each },
                );
                let roots = limit.roots;
                amounts.add(
                    Quantity::CuttingsNeeded,
                    cuttings,
                    match case.sizing {
                        Sizing::BedSeason => AmountReason::CuttingsOfSeason { roots },
                        Sizing::FirstPlanting => AmountReason::CuttingsOfFirstCut { roots },
                    },
                );
                limit.add_to(amounts);
                if roots == 0 {
                    remarks.push(Remark::NothingAtHand { limit: limit.what });
                }
                (limit.roots, Some(Demand { cuttings, area }))
            }
            (None, None) => {
                let roots = whole_up(a.zone_roots);
                let cuttings = multiply::cuttings_of(roots, Sizing::BedSeason, months, a);
                amounts.add(Quantity::CuttingsNeeded, cuttings, AmountReason::CuttingsOfZone { roots });
                amounts.add(Quantity::RootsToStore, roots, AmountReason::RootsOfZone);
                (roots, None)
            }
        };
        let mut sized = Sized { roots, plants: 0, first: 0, season: 0, demand };
        sized.yielding(case, months, amounts);
        sized.remark(case, months, remarks);
        sized
    }

    /// The cuttings of the first cut and of the season, each with its range, and the plants.
    fn yielding(&mut self, case: &Case, months: f64, amounts: &mut Amounts) {
        let a = &case.assumptions;
        let roots = self.roots;
        let left = |share: f64| multiply::surviving(share, months, a);
        // With the losses at their most and at their least on record.
        let range = |cuttings: u32| {
            let with = |share: f64| {
                f64::from(whole_down(f64::from(cuttings) * left(share) / left(a.survival_share)))
            };
            (with(a.survival_low.min(a.survival_share)), with(a.survival_high.max(a.survival_share)))
        };
        self.first = multiply::cuttings_of(roots, Sizing::FirstPlanting, months, a);
        amounts.add_range(
            Quantity::CuttingsAtFirstCut,
            self.first,
            range(self.first),
            AmountReason::FirstCut {
                roots,
                surviving: of_100(left(a.survival_share)),
                months,
                sprouting: of_100(a.sprout_share),
                per_root: a.cuttings_per_root_first_cut,
            },
        );
        self.season = multiply::cuttings_of(roots, Sizing::BedSeason, months, a);
        amounts.add_range(
            Quantity::CuttingsOverSeason,
            self.season,
            range(self.season),
            AmountReason::BedSeason {
                roots,
                per_root: tenths(multiply::per_stored(Sizing::BedSeason, months, a)),
                cuts: a.cuts,
            },
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

    /// Says where the first cut does not plant the whole field.
    fn remark(&self, case: &Case, months: f64, remarks: &mut Vec<Remark>) {
        let a = &case.assumptions;
        let Some(demand) = self.demand else { return };
        // Once checks are known, what they say goes before what was expected.
        if self.first >= demand.cuttings || !case.store_checks.is_empty() {
            return;
        }
        remarks.push(Remark::FieldWaits {
            cuttings: self.first,
            area_m2: demand.planted_by(self.first).round(),
            field_m2: demand.area.0.round(),
            least_days: a.next_cut_days_first,
            most_days: a.next_cut_days_last,
            roots: multiply::roots_for(demand.cuttings, Sizing::FirstPlanting, months, a),
        });
    }

    /// What the first cut gives when work is known to be late.
    pub(super) fn first_now(&self, overdue: &[Overdue]) -> u32 {
        let late = overdue.iter().filter(|step| step.certain);
        late.map(|step| step.cuttings_at_first_cut).fold(self.first, u32::min)
    }
}

/// What limits the roots, where the plan is counted forward.
struct Limit {
    roots: u32,
    what: &'static str,
    why: AmountReason,
}

impl Limit {
    fn of(case: &Case) -> Option<Limit> {
        let a = &case.assumptions;
        let at_hand = case.at_hand?;
        let roots = at_hand.roots.map(|roots| Limit { roots, what: "roots", why: AmountReason::RootsAtHand });
        let plants = at_hand.plants.map(|plants| Limit {
            roots: multiply::roots_from(plants, a),
            what: "plants",
            why: AmountReason::RootsOfPlants {
                plants,
                per_plant: a.roots_per_plant,
                sick: of_100(a.sick_share),
            },
        });
        let bed = at_hand.bed.map(|bed| Limit {
            roots: whole_down(bed.0 / a.bed_area_per_root_m2),
            what: "bed",
            why: AmountReason::RootsOfBed { bed_m2: bed, per_root_m2: a.bed_area_per_root_m2 },
        });
        [roots, plants, bed].into_iter().flatten().min_by_key(|limit| limit.roots)
    }

    fn add_to(&self, amounts: &mut Amounts) {
        amounts.add(Quantity::RootsToStore, self.roots, self.why.clone());
    }
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

/// A share as so many of 100.
fn of_100(share: f64) -> f64 {
    (share * 100.0).round()
}

fn tenths(value: f64) -> f64 {
    (value * 10.0).round() / 10.0
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
    amounts.add(Quantity::CuttingsNeeded, demand.cuttings, why);
    let bundle_size = a.cuttings_per_bundle;
    amounts.add(
        Quantity::Bundles,
        whole_up(f64::from(demand.cuttings) / bundle_size),
        AmountReason::Bundles { bundle_size },
    );
}

/// The roots that a field wants, and why so many.
fn wanted_roots(case: &Case, cuttings: u32, months: f64, remarks: &mut Vec<Remark>) -> (u32, AmountReason) {
    let a = &case.assumptions;
    let usual = multiply::roots_for(cuttings, case.sizing, months, a);
    let why = match case.sizing {
        Sizing::BedSeason => AmountReason::RootsForSeason {
            cuttings,
            per_root: tenths(multiply::per_stored(case.sizing, months, a)),
        },
        Sizing::FirstPlanting => AmountReason::RootsForFirstCut {
            cuttings,
            surviving: of_100(multiply::surviving(a.survival_share, months, a)),
            per_root: a.cuttings_per_root_first_cut,
        },
    };
    let Some(percent) = case.confidence_percent else { return (usual, why) };
    match multiply::roots_for_confidence(cuttings, percent / 100.0, case.sizing, months, a) {
        Some(roots) => {
            let spread = of_100(a.survival_spread);
            (roots, AmountReason::RootsToBeSure { cuttings, percent, usual, spread })
        }
        None => {
            remarks.push(Remark::NeverSoSure { percent });
            (usual, why)
        }
    }
}
