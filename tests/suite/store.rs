//! Roots in containers: the geometry itself.

use kabla::plan::store::{Container, Floor, Position, Root, Shape, fill, pack};
use kabla::plan::{Assumptions, Centimetres};
use proptest::prelude::*;

/// Ends of the straight line inside a root.
fn spine(at: &Position, root: &Root) -> [(f64, f64); 2] {
    let half = (root.length.0 - root.diameter.0).max(0.0) / 2.0;
    if at.across {
        [(at.x, at.y - half), (at.x, at.y + half)]
    } else {
        [(at.x - half, at.y), (at.x + half, at.y)]
    }
}

/// Distance between two points' segments, by the general formula for segments in a plane.
fn distance(a: [(f64, f64); 2], b: [(f64, f64); 2]) -> f64 {
    let to_segment = |p: (f64, f64), s: [(f64, f64); 2]| {
        let (dx, dy) = (s[1].0 - s[0].0, s[1].1 - s[0].1);
        let length = dx * dx + dy * dy;
        let t = if length == 0.0 {
            0.0
        } else {
            (((p.0 - s[0].0) * dx + (p.1 - s[0].1) * dy) / length).clamp(0.0, 1.0)
        };
        ((p.0 - s[0].0 - t * dx).powi(2) + (p.1 - s[0].1 - t * dy).powi(2)).sqrt()
    };
    // Roots of one layer are parallel, so their segments never cross.
    to_segment(a[0], b).min(to_segment(a[1], b)).min(to_segment(b[0], a)).min(to_segment(b[1], a))
}

fn check(floor: &Floor, root: &Root, layer: &[Position]) -> Result<(), TestCaseError> {
    let slack = 1e-6;
    let clear = root.diameter.0 + root.gap.0;
    for (index, at) in layer.iter().enumerate() {
        for other in &layer[..index] {
            let apart = distance(spine(at, root), spine(other, root));
            prop_assert!(apart >= clear - slack, "roots {apart} cm apart, {clear} wanted");
        }
        for (x, y) in spine(at, root) {
            let wall = root.diameter.0 / 2.0 + root.gap.0;
            let room = match floor {
                Floor::Round { width } => width.0 / 2.0 - (x * x + y * y).sqrt(),
                Floor::Rectangle { length, width } => (length.0 / 2.0 - x.abs()).min(width.0 / 2.0 - y.abs()),
            };
            prop_assert!(room >= wall - slack, "a root {room} cm from the side, {wall} wanted");
        }
    }
    Ok(())
}

fn root_strategy() -> impl Strategy<Value = Root> {
    (2.0..12.0, 1.0..3.0, 0.5..4.0).prop_map(|(diameter, stretch, gap): (f64, f64, f64)| Root {
        length: Centimetres(diameter * stretch),
        diameter: Centimetres(diameter),
        gap: Centimetres(gap),
    })
}

proptest! {
    #[test]
    fn roots_keep_their_distance_in_a_round_container(root in root_strategy(), width in 5.0..150.0) {
        let floor = Floor::Round { width: Centimetres(width) };
        check(&floor, &root, &pack(&floor, &root))?;
    }

    #[test]
    fn roots_keep_their_distance_in_a_box(root in root_strategy(), length in 5.0..150.0, width in 5.0..150.0) {
        let floor = Floor::Rectangle { length: Centimetres(length), width: Centimetres(width) };
        check(&floor, &root, &pack(&floor, &root))?;
    }

    #[test]
    fn parts_add_to_totals(roots in 0u32..500, width in 20.0..100.0, depth in 15.0..80.0, count in 1u32..6) {
        let container = |width: f64, count| Container {
            shape: Shape::Round { top: Centimetres(width), bottom: Centimetres(width * 0.9) },
            depth: Centimetres(depth),
            count,
        };
        let store = fill(roots, &[container(width, Some(count)), container(width / 2.0, Some(count))], &Assumptions::default());
        prop_assert_eq!(store.filled.iter().map(|filled| filled.roots).sum::<u32>() + store.left_over, roots);
        for filled in &store.filled {
            prop_assert!(filled.count <= count);
            prop_assert!(filled.roots <= filled.count * filled.layers * filled.roots_per_layer());
            let room = filled.container.volume_to(filled.container.depth).0 * f64::from(filled.count);
            prop_assert!(filled.sand.0 > 0.0 && filled.sand.0 < room);
        }
    }
}

/// A row packing must not claim more round roots than the best packing known
/// for the disc: R/r for N = 7 is 3 and for N = 8 is 3.304 (handbook, section 5).
#[test]
fn no_more_round_roots_than_the_best_packing() {
    let root = Root { length: Centimetres(5.0), diameter: Centimetres(5.0), gap: Centimetres(1.0) };
    // With the gap, a root is a disc of radius 3 and the basin loses half a gap.
    for (number, ratio) in [(1, 1.0), (2, 2.0), (3, 2.154), (4, 2.414), (5, 2.701), (7, 3.0), (8, 3.304)] {
        let width = 2.0 * (3.0 * ratio + 0.5);
        let fitting = pack(&Floor::Round { width: Centimetres(width - 0.02) }, &root).len();
        assert!(fitting < number, "{fitting} round roots in a disc that holds fewer than {number}");
    }
}

/// The basin of the handbook: 50 cm wide, 25 cm deep, 49 litres, 71 kg of loose sand.
#[test]
fn a_basin_holds_what_the_handbook_computes() {
    let basin = Container {
        shape: Shape::Round { top: Centimetres(50.0), bottom: Centimetres(50.0) },
        depth: Centimetres(25.0),
        count: None,
    };
    let litres = basin.volume_to(Centimetres(25.0)).0;
    assert!((litres - 49.0).abs() < 0.5, "{litres}");
    assert!((litres * Assumptions::default().sand_density_kg_per_l - 71.0).abs() < 0.5);
}

#[test]
fn a_shallow_container_takes_no_root() {
    let tray = Container {
        shape: Shape::Box { length: Centimetres(80.0), width: Centimetres(60.0) },
        depth: Centimetres(18.0),
        count: Some(3),
    };
    let store = fill(10, &[tray], &Assumptions::default());
    assert_eq!((store.left_over, store.filled.len()), (10, 0), "3 + 6.1 + 10 cm need more than 18");
}
