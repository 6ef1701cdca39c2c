//! Seed roots in dry sand: how many fit into a container, and how much sand that takes.

mod container;
mod packing;

use std::sync::Arc;

pub use container::{Band, Container, Shape};
pub use packing::{Floor, Packings, Position, Root, pack};

use super::units::whole_down;
use super::{Assumptions, Centimetres, Kilograms, Litres, SquareMetres};

/// The containers of one plan, filled.
#[derive(Debug, Clone, PartialEq)]
pub struct Store {
    /// Filled containers, in the order of filling; each used at least by one root.
    pub filled: Vec<Filled>,
    /// Roots for which the containers at hand have no room.
    pub left_over: u32,
    /// Room that one more container of the last kind would give, where roots are left over; 0 where no root fits at all.
    pub capacity_of_last: u32,
}

/// A number of equal containers. All are full but the last, which holds the rest.
#[derive(Debug, Clone, PartialEq)]
pub struct Filled {
    /// The container.
    pub container: Container,
    /// How many of them.
    pub count: u32,
    /// Roots in all of them together.
    pub roots: u32,
    /// Layers of roots in the fullest one, from the bottom up; the topmost may not be full.
    pub layers: Vec<Layer>,
    /// Roots in the fullest one.
    pub roots_in_fullest: u32,
    /// Sand in all of them together.
    pub sand: Litres,
    /// Paper that lines all of them, without overlap.
    pub lining: SquareMetres,
}

/// One layer of roots.
#[derive(Debug, Clone, PartialEq)]
pub struct Layer {
    /// Underside of the roots above the bottom.
    pub height: Centimetres,
    /// Places for roots, seen from above.
    pub places: Arc<[Position]>,
}

impl Layer {
    /// Roots that the layer holds when it is full.
    pub fn capacity(&self) -> u32 {
        u32::try_from(self.places.len()).unwrap_or(u32::MAX)
    }
}

impl Filled {
    /// Roots in each layer of the fullest container, from the bottom up.
    pub fn roots_by_layer(&self) -> impl Iterator<Item = (&Layer, u32)> {
        self.layers.iter().scan(self.roots_in_fullest, |left, layer| {
            let here = layer.capacity().min(*left);
            *left -= here;
            Some((layer, here))
        })
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

    /// Lining paper of all containers, without overlap.
    pub fn lining(&self) -> SquareMetres {
        self.filled.iter().fold(SquareMetres(0.0), |sum, filled| sum + filled.lining)
    }

    /// Containers used.
    pub fn containers(&self) -> u32 {
        self.filled.iter().map(|filled| filled.count).sum()
    }
}

/// The most layers that leave the top sand in a container `depth` deep.
fn layers_within(depth: Centimetres, assumptions: &Assumptions) -> u32 {
    let room = depth.0 - assumptions.base_sand_cm - assumptions.top_sand_cm + assumptions.layer_sand_cm;
    whole_down(room / (assumptions.root_diameter_mm / 10.0 + assumptions.layer_sand_cm))
}

/// The layers of a container for so many roots, each packed at the width it has at its height.
fn layers_of(
    roots: u32,
    container: &Container,
    assumptions: &Assumptions,
    packings: &mut Packings,
) -> Vec<Layer> {
    let root = Root::of(assumptions);
    let thickness = assumptions.root_diameter_mm / 10.0;
    let mut layers: Vec<Layer> = Vec::new();
    let mut left = roots;
    for index in 0..layers_within(container.depth, assumptions) {
        // Packing is slow: layers that no root reaches are left out.
        if left == 0 {
            break;
        }
        let low = assumptions.base_sand_cm + f64::from(index) * (thickness + assumptions.layer_sand_cm);
        let floor = container.floor_between(Centimetres(low), Centimetres(low + thickness));
        let layer = Layer { height: Centimetres(low), places: packings.pack(&floor, &root) };
        left = left.saturating_sub(layer.capacity());
        // In the narrow foot of a pot a layer may hold nothing; those above it still count.
        if !layer.places.is_empty() {
            layers.push(layer);
        }
    }
    layers
}

/// A container with the layers that so many roots may take in it.
struct Layered<'a> {
    container: &'a Container,
    layers: Vec<Layer>,
    assumptions: &'a Assumptions,
}

impl<'a> Layered<'a> {
    fn of(
        roots: u32,
        container: &'a Container,
        assumptions: &'a Assumptions,
        packings: &mut Packings,
    ) -> Layered<'a> {
        let layers = layers_of(roots, container, assumptions, packings);
        Layered { container, layers, assumptions }
    }

    fn capacity(&self) -> u32 {
        self.layers.iter().fold(0u32, |sum, layer| sum.saturating_add(layer.capacity()))
    }

    /// Sand around so many roots in one container.
    fn sand(&self, roots: u32) -> f64 {
        let top = topped(roots, &self.layers, self.assumptions);
        let root = self.assumptions.root_volume_ml / 1000.0;
        (self.container.volume_to(top).0 - f64::from(roots) * root).max(0.0)
    }

    /// The most roots, of so many, for which the sand is enough: all of them, or full layers, since a root more in a
    /// layer takes the place of sand.
    fn covered(&self, sand: f64, roots: u32) -> u32 {
        let full = self.layers.iter().scan(0u32, |sum, layer| {
            *sum = sum.saturating_add(layer.capacity());
            Some(*sum)
        });
        let counts = full.take_while(|full| *full < roots).chain([roots]);
        counts.filter(|count| self.sand(*count) <= sand + 1e-9).max().unwrap_or(0)
    }
}

/// The most of `roots` for which `sand` is enough, laid as [`fill`] lays them.
pub fn covered_by(
    sand: Litres,
    roots: u32,
    containers: &[Container],
    assumptions: &Assumptions,
    packings: &mut Packings,
) -> u32 {
    let (mut covered, mut sand) = (0, sand.0);
    for container in containers {
        let left = roots - covered;
        let layered = Layered::of(left, container, assumptions, packings);
        let capacity = layered.capacity();
        if capacity == 0 || left == 0 {
            continue;
        }
        let count = left.div_ceil(capacity).min(container.count.unwrap_or(u32::MAX));
        let room = left.min(capacity.saturating_mul(count));
        let each = layered.sand(capacity);
        let full = (room / capacity).min(if each > 0.0 { whole_down(sand / each) } else { u32::MAX });
        covered += full * capacity;
        sand -= f64::from(full) * each;
        let rest = capacity.min(room - full * capacity);
        let here = layered.covered(sand, rest);
        covered += here;
        sand -= layered.sand(here);
        if here < rest {
            break;
        }
    }
    covered
}

/// Lays `roots` into the containers at hand, in the order given, each filled
/// before the next is begun.
pub fn fill(
    roots: u32,
    containers: &[Container],
    assumptions: &Assumptions,
    packings: &mut Packings,
) -> Store {
    let mut store = Store { filled: Vec::new(), left_over: roots, capacity_of_last: 0 };
    for container in containers {
        let layered = Layered::of(store.left_over, container, assumptions, packings);
        let capacity = layered.capacity();
        store.capacity_of_last = capacity;
        if capacity == 0 || store.left_over == 0 {
            continue;
        }
        let count = store.left_over.div_ceil(capacity).min(container.count.unwrap_or(u32::MAX));
        let here = store.left_over.min(capacity.saturating_mul(count));
        let in_last = here - capacity * (count - 1);
        let lining = |roots| container.lining_to(topped(roots, &layered.layers, assumptions)).0;
        let before = f64::from(count - 1);
        let lining = before * lining(capacity) + lining(in_last);
        let sand = before * layered.sand(capacity) + layered.sand(in_last);
        let layers = layered.layers;
        let fullest = here.min(capacity);
        let used = layers_for(fullest, &layers);
        store.filled.push(Filled {
            container: container.clone(),
            count,
            roots: here,
            layers: layers.into_iter().take(used).collect(),
            roots_in_fullest: fullest,
            sand: Litres(sand),
            lining: SquareMetres(lining),
        });
        store.left_over -= here;
    }
    store
}

/// How many of the layers `roots` take.
fn layers_for(roots: u32, layers: &[Layer]) -> usize {
    let mut left = roots;
    layers
        .iter()
        .take_while(|layer| {
            let more = left > 0;
            left = left.saturating_sub(layer.capacity());
            more
        })
        .count()
}

/// How high sand and roots stand with so many roots in them.
fn topped(roots: u32, layers: &[Layer], assumptions: &Assumptions) -> Centimetres {
    let used = layers_for(roots, layers);
    match used.checked_sub(1).and_then(|last| layers.get(last)) {
        Some(layer) => {
            layer.height + Centimetres(assumptions.root_diameter_mm / 10.0 + assumptions.top_sand_cm)
        }
        None => Centimetres(0.0),
    }
}
