//! From the roots to store to containers and sand.

use super::amounts::Amounts;
use super::case::Case;
use super::quantities::{AmountReason, Quantity};
use super::remarks::{Refusal, Remark};
use super::store::{self, Container, Layer, Packings, Shape, Store};
use super::units::{Centimetres, round_up, whole_up};

/// Lays `roots` into the containers of the case, or into basins where it names none.
///
/// # Errors
/// No root fits into any of them.
pub(super) fn fill(
    case: &Case,
    roots: u32,
    packings: &mut Packings,
    amounts: &mut Amounts,
    remarks: &mut Vec<Remark>,
) -> Result<Store, Refusal> {
    let a = &case.assumptions;
    let assumed;
    let containers = if case.containers.is_empty() {
        let width = Centimetres(a.container_width_cm);
        let depth = Centimetres(a.container_depth_cm);
        remarks.push(Remark::NoContainer { width_cm: width, depth_cm: depth });
        assumed = [Container { shape: Shape::Round { top: width, bottom: width }, depth, count: None }];
        assumed.as_slice()
    } else {
        case.containers.as_slice()
    };
    let store = store::fill(roots, containers, a, packings);
    if roots == 0 {
        return Ok(store);
    }
    let Some(first) = store.filled.first() else {
        return Err(Refusal::NoRootFits {
            top_cm: a.top_sand_cm,
            base_cm: a.base_sand_cm,
            length_mm: a.root_length_mm,
            width_mm: a.root_diameter_mm,
            gap_cm: a.root_gap_cm,
        });
    };
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
    let in_containers = roots - store.left_over;
    amounts.add(Quantity::Containers, store.containers(), AmountReason::Containers { roots: in_containers });
    amounts.add(Quantity::Lining, round_up(store.lining().0, 0.1), AmountReason::Lining);
    amounts.add(Quantity::SandLitres, round_up(store.sand().0, 1.0), AmountReason::SandLitres);
    let mass = round_up(store.sand_mass(a).0, 1.0);
    let per_litre_kg = a.sand_density_kg_per_l;
    amounts.add(Quantity::SandKilograms, mass, AmountReason::SandKilograms { per_litre_kg });
    let load_kg = a.load_limit_kg;
    amounts.add(Quantity::SandLoads, whole_up(mass / load_kg), AmountReason::SandLoads { load_kg });
    if store.left_over > 0 {
        let more = match store.capacity_of_last {
            0 => 0,
            capacity => store.left_over.div_ceil(capacity),
        };
        remarks.push(Remark::ContainersTooSmall { left_over: store.left_over, roots, more });
    }
    Ok(store)
}
