//! What the case says there is: how many roots each of it allows, and what it would take for all of them.

use super::bed::{self, Watering};
use super::case::{Case, Hands};
use super::fill;
use super::multiply;
use super::quantities::AmountReason;
use super::remarks::{Refusal, Remark};
use super::seedbed::Shortage;
use super::store::{self, Packings};
use super::units::{
    Litres, SquareMetres, of_100, round_up, tenths_down, two_figures_up, whole_down, whole_up,
};

/// More roots than any sand at hand covers; bounds the work.
const MOST_ROOTS: u32 = 10_000_000;

/// What limits are found with.
pub(super) struct Means<'a> {
    pub(super) watering: &'a Watering,
    pub(super) packings: &'a mut Packings,
}

/// Something that allows so many roots and no more.
pub(super) struct Limit {
    pub(super) roots: u32,
    pub(super) why: AmountReason,
    what: What,
}

/// What limits, and what all roots would take.
enum What {
    Roots,
    Plants(u32),
    Bed(SquareMetres),
    Sand { has: Litres, needs: Litres, of: u32 },
    Containers { more: u32 },
    Water { source: String, short: Shortage },
    Hands { hands: Hands, trips: u32, hours: f64 },
}

impl What {
    /// Its name, which chooses words.
    fn name(&self) -> &'static str {
        match self {
            What::Roots => "roots",
            What::Plants(_) => "plants",
            What::Bed(_) => "bed",
            What::Sand { .. } => "sand",
            What::Containers { .. } => "containers",
            What::Water { .. } => "water",
            What::Hands { .. } => "hands",
        }
    }
}

/// The field that limited roots plant, and the whole one.
pub(super) struct Planted {
    /// By their first cut, square metres.
    pub(super) first_m2: f64,
    /// By all cuts of the bed.
    pub(super) area_m2: f64,
    pub(super) field_m2: f64,
}

impl Limit {
    /// What there is no root for.
    pub(super) fn nothing(&self) -> Remark {
        Remark::NothingAtHand { limit: self.what.name() }
    }

    /// What is said of it where it allows less than the `wanted` roots.
    pub(super) fn remarks(&self, wanted: u32, planted: &Planted, case: &Case) -> Vec<Remark> {
        let a = &case.assumptions;
        let (fit, roots, left_over) = (self.roots, wanted, wanted - self.roots);
        let &Planted { first_m2, area_m2, field_m2 } = planted;
        let at_hand = |lacking: f64| Remark::LimitedAtHand {
            limit: self.what.name(),
            roots: fit,
            wanted,
            lacking,
            first_m2,
            area_m2,
            field_m2,
        };
        let bed_m2 = |roots: u32| f64::from(roots) * a.bed_area_per_root_m2;
        let said = match &self.what {
            What::Roots => at_hand(f64::from(left_over)),
            What::Plants(plants) => {
                at_hand(f64::from(multiply::plants_for(wanted, a).saturating_sub(*plants)))
            }
            What::Bed(bed) => at_hand(round_up(bed_m2(wanted) - bed.0, 0.1)),
            What::Containers { more } => {
                let more = *more;
                Remark::ContainersTooSmall { left_over, roots, more, fit, first_m2, area_m2, field_m2 }
            }
            What::Sand { has, needs, of } => Remark::SandShort {
                has_l: has.0,
                needs_l: round_up(needs.0, 1.0),
                more_l: whole_up(needs.0 - has.0),
                fit,
                roots: *of,
                first_m2,
                area_m2,
                field_m2,
            },
            What::Water { source, short } => Remark::WaterLimits {
                source: source.clone(),
                from: short.first.from,
                per: per(short),
                gives_l: short.gives.0.floor(),
                needs_l: short.needs.0.ceil(),
                more_l: two_figures_up(whole_up(short.needs.0 - short.gives.0)),
                bed_m2: SquareMetres(tenths_down(bed_m2(fit))),
                fit,
                roots,
                first_m2,
                area_m2,
                field_m2,
            },
            What::Hands { hands, trips, hours } => Remark::HandsShort {
                people: hands.people,
                hours_each: hands.hours_per_day,
                trips: *trips,
                hours: *hours,
                bed_m2: SquareMetres(tenths_down(bed_m2(fit))),
                fit,
                roots,
                first_m2,
                area_m2,
                field_m2,
            },
        };
        match (fit, &said) {
            (0, Remark::LimitedAtHand { .. }) => vec![self.nothing()],
            (0, _) => vec![self.nothing(), said],
            _ => vec![said],
        }
    }
}

/// Whether a source is short of what it gives a day, or of what it holds in all.
fn per(short: &Shortage) -> &'static str {
    if short.of_all { "all" } else { "day" }
}

/// The least of what is at hand, from which the plan is counted where nobody says how large the field is.
pub(super) fn stock(case: &Case, means: &mut Means<'_>) -> Option<Limit> {
    at_hand(case).min_by_key(|limit| limit.roots).or_else(|| sand(case, MOST_ROOTS, means))
}

/// What allows fewer than the `wanted` roots, the least first.
///
/// # Errors
/// No root fits into any container.
pub(super) fn below(wanted: u32, case: &Case, means: &mut Means<'_>) -> Result<Vec<Limit>, Refusal> {
    let mut limits: Vec<Limit> = at_hand(case).collect();
    let containers = containers(case, wanted, means)?;
    let room = containers.as_ref().map_or(wanted, |containers| containers.roots);
    limits.extend(containers);
    limits.extend(sand(case, room, means));
    limits.extend(water(case, wanted, means.watering));
    limits.extend(hands(case, wanted, means.watering));
    limits.retain(|limit| limit.roots < wanted);
    limits.sort_by_key(|limit| limit.roots);
    // Layers that are not full take more sand than full ones, which something else may not allow.
    let least = limits.first().map_or(wanted, |limit| limit.roots);
    if let Some(sand) = sand(case, least, means) {
        limits.retain(|limit| !matches!(limit.what, What::Sand { .. }));
        limits.insert(0, sand);
    }
    Ok(limits)
}

/// Roots, plants and room for the bed.
fn at_hand(case: &Case) -> impl Iterator<Item = Limit> {
    let a = &case.assumptions;
    let at_hand = case.at_hand.as_ref();
    let roots = at_hand.and_then(|of| of.roots).map(|roots| Limit {
        roots,
        why: AmountReason::RootsAtHand,
        what: What::Roots,
    });
    let plants = at_hand.and_then(|of| of.plants).map(|plants| Limit {
        roots: multiply::roots_from(plants, a),
        why: AmountReason::RootsOfPlants { plants, per_plant: a.roots_per_plant, sick: of_100(a.sick_share) },
        what: What::Plants(plants),
    });
    let bed = at_hand.and_then(|of| of.bed).map(|bed| Limit {
        roots: whole_down(bed.0 / a.bed_area_per_root_m2),
        why: AmountReason::RootsOfBed { bed_m2: bed, per_root_m2: a.bed_area_per_root_m2 },
        what: What::Bed(bed),
    });
    [roots, plants, bed].into_iter().flatten()
}

/// Containers, where all are counted: of a kind that is not, there are as many as needed.
fn containers(case: &Case, wanted: u32, means: &mut Means<'_>) -> Result<Option<Limit>, Refusal> {
    if case.containers.is_empty() || case.containers.iter().any(|container| container.count.is_none()) {
        return Ok(None);
    }
    let store = fill::lay(case, wanted, means.packings)?;
    let more = match store.capacity_of_last {
        0 => 0,
        capacity => store.left_over.div_ceil(capacity),
    };
    Ok(Some(Limit {
        roots: wanted - store.left_over,
        why: AmountReason::RootsOfContainers { containers: store.containers() },
        what: What::Containers { more },
    }))
}

/// The sand, where it does not cover `most` roots.
fn sand(case: &Case, most: u32, means: &mut Means<'_>) -> Option<Limit> {
    let has = case.at_hand.as_ref()?.sand?;
    let a = &case.assumptions;
    let containers = fill::containers(case);
    let roots = store::covered_by(has, most, &containers, a, means.packings);
    if roots >= most {
        return None;
    }
    let needs = match most {
        MOST_ROOTS => has,
        _ => store::fill(most, &containers, a, means.packings).sand(),
    };
    let what = What::Sand { has, needs, of: most };
    Some(Limit { roots, why: AmountReason::RootsOfSand { sand_l: has }, what })
}

fn water(case: &Case, wanted: u32, watering: &Watering) -> Option<Limit> {
    let source = case.source.as_ref()?;
    let short = source.shortage(watering.on(bed_of(wanted, case)))?;
    let roots = most(wanted, |roots| source.suffices(watering.on(bed_of(roots, case))));
    let why = AmountReason::RootsOfWater {
        source: source.name.clone(),
        litres: short.gives.0.floor(),
        per: per(&short),
    };
    Some(Limit { roots, why, what: What::Water { source: source.name.clone(), short } })
}

fn hands(case: &Case, wanted: u32, watering: &Watering) -> Option<Limit> {
    let hands = case.hands?;
    let a = &case.assumptions;
    let trips_for = |roots| bed::trips(watering.peak(bed_of(roots, case)), a);
    let trips = hands.trips(a);
    let roots = most(wanted, |roots| trips_for(roots) <= trips);
    let needed = trips_for(wanted);
    let Hands { people, hours_per_day } = hands;
    Some(Limit {
        roots,
        why: AmountReason::RootsOfHands { people, hours: hours_per_day, trips },
        what: What::Hands { hands, trips: needed, hours: bed::hours(needed, a) },
    })
}

/// The bed that so many roots take.
fn bed_of(roots: u32, case: &Case) -> SquareMetres {
    SquareMetres(f64::from(roots) * case.assumptions.bed_area_per_root_m2)
}

/// The most of `roots` that are still allowed, where fewer are allowed with every number that is.
fn most(roots: u32, allowed: impl Fn(u32) -> bool) -> u32 {
    let (mut low, mut high) = (0, roots);
    while low < high {
        let middle = low + (high - low).div_ceil(2);
        if allowed(middle) {
            low = middle;
        } else {
            high = middle - 1;
        }
    }
    low
}
