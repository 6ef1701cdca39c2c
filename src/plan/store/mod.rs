//! Seed roots in dry sand: how many fit into a container, and how much sand that takes.

mod container;
mod packing;

pub use container::{Container, Shape};
pub use packing::{Floor, Position, Root, pack};

use super::{Assumptions, Centimetres, Kilograms, Litres};

/// The containers of one plan, filled.
#[derive(Debug, Clone, PartialEq)]
pub struct Store {
    /// Filled containers, in the order of filling; each used at least by one root.
    pub filled: Vec<Filled>,
    /// Roots for which the containers at hand have no room.
    pub left_over: u32,
    /// Room that one more container of the last kind would give; 0 where no root fits at all.
    pub capacity_of_last: u32,
}

/// A number of equal containers, filled alike.
#[derive(Debug, Clone, PartialEq)]
pub struct Filled {
    /// The container.
    pub container: Container,
    /// How many of them.
    pub count: u32,
    /// Roots in all of them together.
    pub roots: u32,
    /// Layers of roots in the fullest one.
    pub layers: u32,
    /// Where the roots of one layer lie, seen from above; the lowest layer, which is the narrowest.
    pub layer: Vec<Position>,
    /// Sand in all of them together.
    pub sand: Litres,
}

impl Filled {
    /// Roots that one layer holds.
    pub fn roots_per_layer(&self) -> u32 {
        u32::try_from(self.layer.len()).unwrap_or(u32::MAX)
    }
}

impl Store {
    /// Sand in all containers.
    pub fn sand(&self) -> Litres {
        self.filled.iter().fold(Litres(0.0), |sum, filled| sum + filled.sand)
    }

    /// Mass of that sand, loose and dry.
    pub fn sand_mass(&self, assumptions: &Assumptions) -> Kilograms {
        Kilograms(self.sand().0 * assumptions.sand_density_kg_per_l)
    }

    /// Containers used.
    pub fn containers(&self) -> u32 {
        self.filled.iter().map(|filled| filled.count).sum()
    }
}

/// How high the sand and roots of `layers` layers stand.
fn height(layers: u32, assumptions: &Assumptions) -> Centimetres {
    let layers = f64::from(layers);
    let roots = layers * assumptions.root_diameter_mm / 10.0;
    let between = (layers - 1.0).max(0.0) * assumptions.layer_sand_cm;
    Centimetres(assumptions.base_sand_cm + roots + between + assumptions.top_sand_cm)
}

/// The most layers that leave the top sand in a container `depth` deep.
fn layers_within(depth: Centimetres, assumptions: &Assumptions) -> u32 {
    let room = depth.0 - assumptions.base_sand_cm - assumptions.top_sand_cm + assumptions.layer_sand_cm;
    super::units::whole_down(room / (assumptions.root_diameter_mm / 10.0 + assumptions.layer_sand_cm))
}

/// Lays `roots` into the containers at hand, in the order given.
///
/// All layers of a container hold as many roots as its lowest one, which is
/// the narrowest: one number to remember, safe in a tapered basin.
pub fn fill(roots: u32, containers: &[Container], assumptions: &Assumptions) -> Store {
    let mut store = Store { filled: Vec::new(), left_over: roots, capacity_of_last: 0 };
    let root = Root::of(assumptions);
    for container in containers {
        let layers = layers_within(container.depth, assumptions);
        let floor = container.floor_at(Centimetres(assumptions.base_sand_cm));
        let layer = if layers == 0 { Vec::new() } else { pack(&floor, &root) };
        let per_layer = u32::try_from(layer.len()).unwrap_or(u32::MAX);
        let capacity = per_layer.saturating_mul(layers);
        store.capacity_of_last = capacity;
        if capacity == 0 || store.left_over == 0 {
            continue;
        }
        let count = store.left_over.div_ceil(capacity).min(container.count.unwrap_or(u32::MAX));
        let here = store.left_over.min(capacity.saturating_mul(count));
        let sand = (0..count)
            .scan(here, |left, _| {
                let in_this = (*left).min(capacity);
                *left -= in_this;
                Some(in_this)
            })
            .fold(Litres(0.0), |sum, in_this| {
                let top = height(in_this.div_ceil(per_layer), assumptions);
                let volume =
                    container.volume_to(top).0 - f64::from(in_this) * assumptions.root_volume_ml / 1000.0;
                sum + Litres(volume.max(0.0))
            });
        let layers = here.min(capacity).div_ceil(per_layer);
        store.filled.push(Filled { container: container.clone(), count, roots: here, layers, layer, sand });
        store.left_over -= here;
    }
    store
}
