//! From the roots to store to containers and sand.

use std::borrow::Cow;

use super::amounts::Amounts;
use super::case::Case;
use super::quantities::{AmountReason, Quantity};
use super::remarks::{Refusal, Remark};
use super::store::{self, Container, Layer, Packings, Shape, Store};
use super::units::{Centimetres, round_up, whole_up};

/// The containers of the case; where it names none, basins of which there are as many as needed.
pub(super) fn containers(case: &Case) -> Cow<'_, [Container]> {
    if !case.containers.is_empty() {
        return Cow::Borrowed(&case.containers);
    }
    let a = &case.assumptions;
    let (width, depth) = (Centimetres(a.container_width_cm), Centimetres(a.container_depth_cm));
    let shape = Shape::Round { top: width, bottom: width };
    Cow::Owned(vec![Container { shape, depth, count: None }])
}

/// Lays `roots` into the containers of the case.
///
/// # Errors
/// No root fits into any of them.
pub(super) fn lay(case: &Case, roots: u32, packings: &mut Packings) -> Result<Store, Refusal> {
    let a = &case.assumptions;
    let store = store::fill(roots, &containers(case), a, packings);
    if roots > 0 && store.filled.is_empty() {
        return Err(Refusal::NoRootFits {
            top_cm: a.top_sand_cm,
            base_cm: a.base_sand_cm,
            length_mm: a.root_length_mm,
            width_mm: a.root_diameter_mm,
            gap_cm: a.root_gap_cm,
        });
    }
    Ok(store)
}

/// Lays `roots` into the containers of the case, and tells what that takes.
///
/// # Errors
/// As [`lay`].
pub(super) fn fill(
    case: &Case,
    roots: u32,
    packings: &mut Packings,
    amounts: &mut Amounts,
    remarks: &mut Vec<Remark>,
) -> Result<Store, Refusal> {
    let a = &case.assumptions;
    if case.containers.is_empty() {
        remarks.push(Remark::NoContainer {
            width_cm: Centimetres(a.container_width_cm),
            depth_cm: Centimetres(a.container_depth_cm),
        });
    }
    let store = lay(case, roots, packings)?;
    let Some(first) = store.filled.first() else { return Ok(store) };
    let lowest = first.layers.first().map_or(0, Layer::capacity);
    let gap_cm = a.root_gap_cm;
    amounts.add(Quantity::RootsPerLayer, lowest, AmountReason::RootsPerLayer { gap_cm });
    let topmost = first.layers.last().map_or(0, Layer::capacity);
    if topmost != lowest {
        amounts.add(Quantity::RootsInTopLayer, topmost, AmountReason::RootsInTopLayer);
    }
    amounts.add(
        Quantity::Layers,
        first.layers.len() as u32,
        AmountReason::Layers { base_cm: a.base_sand_cm, top_cm: a.top_sand_cm },
    );
    amounts.add(Quantity::Containers, store.containers(), AmountReason::Containers { roots });
    amounts.add(Quantity::Lining, round_up(store.lining().0, 0.1), AmountReason::Lining);
    amounts.add(Quantity::SandLitres, round_up(store.sand().0, 1.0), AmountReason::SandLitres);
    let mass = round_up(store.sand_mass(a).0, 1.0);
    let per_litre_kg = a.sand_density_kg_per_l;
    amounts.add(Quantity::SandKilograms, mass, AmountReason::SandKilograms { per_litre_kg });
    let load_kg = a.load_limit_kg;
    amounts.add(Quantity::SandLoads, whole_up(mass / load_kg), AmountReason::SandLoads { load_kg });
    Ok(store)
}
