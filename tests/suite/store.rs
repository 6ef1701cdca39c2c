//! Roots in containers: the geometry itself.

use kabla::plan::store::{Band, Container, Floor, Layer, Packings, Position, Root, Shape, fill, pack};
use kabla::plan::{Assumptions, Centimetres};
use proptest::prelude::*;

use crate::expected::rows;

/// Ends of the straight line inside a root.
fn spine(at: &Position, root: &Root) -> [(f64, f64); 2] {
    let half = (root.length.0 - root.diameter.0).max(0.0) / 2.0;
    let (x, y) = (half * at.angle.cos(), half * at.angle.sin());
    [(at.x - x, at.y - y), (at.x + x, at.y + y)]
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
    // Which side of a line a point lies on: segments cross where the ends of each lie on both sides of the other.
    let side = |s: [(f64, f64); 2], p: (f64, f64)| {
        (s[1].0 - s[0].0) * (p.1 - s[0].1) - (s[1].1 - s[0].1) * (p.0 - s[0].0)
    };
    // Spokes that lie in one line are on neither side but for binary noise.
    if side(a, b[0]) * side(a, b[1]) < -1e-12 && side(b, a[0]) * side(b, a[1]) < -1e-12 {
        return 0.0;
    }
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
        let store = fill(roots, &[container(width, Some(count)), container(width / 2.0, Some(count))], &Assumptions::default(), &mut Packings::default());
        prop_assert_eq!(store.filled.iter().map(|filled| filled.roots).sum::<u32>() + store.left_over, roots);
        for filled in &store.filled {
            prop_assert!(filled.count <= count);
            let capacity: u32 = filled.layers.iter().map(Layer::capacity).sum();
            prop_assert!(filled.roots <= filled.count * capacity);
            let by_layer: Vec<u32> = filled.roots_by_layer().map(|(_, roots)| roots).collect();
            prop_assert_eq!(by_layer.iter().sum::<u32>(), filled.roots_in_fullest);
            prop_assert!(by_layer.iter().all(|roots| *roots > 0));
            let room = filled.container.volume_to(filled.container.depth).0 * f64::from(filled.count);
            prop_assert!(filled.sand.0 > 0.0 && filled.sand.0 < room);
        }
    }
}

/// Round roots: never more than the best packing known for the disc, and as many where
/// the disc is 5 % wider than that packing needs.
#[test]
fn round_roots_come_within_5_percent_of_the_best_packings() {
    for (diameter, gap) in [(5.0, 1.0), (6.1, 2.0), (3.0, 0.5)] {
        let root =
            Root { length: Centimetres(diameter), diameter: Centimetres(diameter), gap: Centimetres(gap) };
        // With half the gap a root is a disc of this radius, and the basin loses half a gap.
        let radius = (diameter + gap) / 2.0;
        let held = |reach: f64| {
            let floor = Floor::Round { width: Centimetres(2.0 * reach + gap) };
            let layer = pack(&floor, &root);
            check(&floor, &root, &layer).unwrap();
            layer.len()
        };
        let packings = rows("circle-packings", "cases.csv");
        assert_eq!(packings.len(), 20);
        for row in packings {
            let (number, ratio): (usize, f64) = (row["n"].parse().unwrap(), row["ratio"].parse().unwrap());
            let wider = held(radius * ratio * 1.05);
            assert!(wider >= number, "{wider} of {number} round roots in a disc 5 % wider than the best");
            let narrower = held(radius * ratio * 0.999);
            assert!(narrower < number, "{narrower} round roots in a disc too narrow for {number}");
        }
    }
}

/// Lengthwise rows alone hold 6 here; a box this wide takes one row crosswise beside them.
#[test]
fn boxes_mix_rows_lengthwise_and_crosswise() {
    // With its gap a root takes 12 × 8; the box, less one gap, is 36 × 20.
    let root = Root { length: Centimetres(10.0), diameter: Centimetres(6.0), gap: Centimetres(2.0) };
    let floor = Floor::Rectangle { length: Centimetres(38.0), width: Centimetres(22.0) };
    let layer = pack(&floor, &root);
    check(&floor, &root, &layer).unwrap();
    assert_eq!(layer.len(), 3 + 4, "a row of 3, and one of 36 / 8 = 4 across it");
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
    let store = fill(10, &[tray], &Assumptions::default(), &mut Packings::default());
    assert_eq!((store.left_over, store.filled.len()), (10, 0), "3 + 6.1 + 10 cm need more than 18");
}

fn basin(top: f64, bottom: f64, depth: f64) -> Container {
    Container {
        shape: Shape::Round { top: Centimetres(top), bottom: Centimetres(bottom) },
        depth: Centimetres(depth),
        count: None,
    }
}

/// Each layer is packed at its own width: in a basin that opens upwards no layer holds fewer than the one below it.
#[test]
fn layers_grow_with_the_basin() {
    let a = Assumptions::default();
    let store = fill(500, &[basin(80.0, 40.0, 60.0)], &a, &mut Packings::default());
    let layers = &store.filled[0].layers;
    assert_eq!(layers.len(), 6, "(60 - 3 - 10 + 2) / 8.1 = 6.05");
    for (index, layer) in layers.iter().enumerate() {
        let low = 3.0 + index as f64 * 8.1;
        assert!((layer.height.0 - low).abs() < 1e-9);
        let floor = Floor::Round { width: Centimetres(40.0 + 40.0 * low / 60.0) };
        check(&floor, &Root::of(&a), &layer.places).unwrap();
        assert_eq!(layer.places.len(), pack(&floor, &Root::of(&a)).len());
    }
    assert!(layers.windows(2).all(|pair| pair[0].capacity() <= pair[1].capacity()));
    assert!(layers[0].capacity() < layers[5].capacity());
}

/// A pot of three bands: volume and lining by hand, and its layers no wider than the narrowest place they touch.
#[test]
fn pots_are_measured_band_by_band() {
    let band = |height, width| Band { height: Centimetres(height), width: Centimetres(width) };
    let bands = vec![band(10.0, 30.0), band(20.0, 50.0), band(15.0, 40.0)];
    let pot = Container { shape: Shape::Pot { bands }, depth: Centimetres(45.0), count: None };
    let disc = |width: f64| std::f64::consts::PI * width * width / 4.0;
    let to_20 = (disc(30.0) * 10.0 + disc(50.0) * 10.0) / 1000.0;
    assert!((pot.volume_to(Centimetres(20.0)).0 - to_20).abs() < 1e-9);
    let all = (disc(30.0) * 10.0 + disc(50.0) * 20.0 + disc(40.0) * 15.0) / 1000.0;
    assert!((pot.volume_to(Centimetres(99.0)).0 - all).abs() < 1e-9);
    let around = std::f64::consts::PI * (30.0 * 10.0 + 50.0 * 20.0 + 40.0 * 5.0);
    let shoulders = disc(50.0) - disc(30.0) + disc(50.0) - disc(40.0);
    let lining = (disc(30.0) + around + shoulders) / 10_000.0;
    assert!((pot.lining_to(Centimetres(35.0)).0 - lining).abs() < 1e-9);
    // Roots from 3 to 9.1 cm lie in the foot, those from 11.1 in the belly, those from 27.3 up touch the neck.
    let at = |low: f64| match pot.floor_between(Centimetres(low), Centimetres(low + 6.1)) {
        Floor::Round { width } => width.0,
        Floor::Rectangle { .. } => unreachable!(),
    };
    assert_eq!([at(3.0), at(5.0), at(11.1), at(19.2), at(27.3)], [30.0, 30.0, 50.0, 50.0, 40.0]);
}

/// Different containers are filled one after the other, and what has no room is counted.
#[test]
fn different_containers_share_the_roots() {
    let a = Assumptions::default();
    let small = Container { count: Some(2), ..basin(40.0, 40.0, 30.0) };
    let large = Container { count: Some(1), ..basin(60.0, 60.0, 40.0) };
    let mut packings = Packings::default();
    let capacity = |container: &Container, packings: &mut Packings| {
        let one = Container { count: Some(1), ..container.clone() };
        10_000 - fill(10_000, &[one], &a, packings).left_over
    };
    let (of_small, of_large) = (capacity(&small, &mut packings), capacity(&large, &mut packings));
    let store = fill(2 * of_small + of_large + 7, &[small, large], &a, &mut packings);
    assert_eq!(store.filled.iter().map(|filled| filled.roots).collect::<Vec<_>>(), [2 * of_small, of_large]);
    assert_eq!((store.left_over, store.containers()), (7, 3));
}

/// Sand by hand: five roots in one layer of a straight basin 50 cm wide, less the 188 ml of each root; and
/// three basins for 100 roots, of which two are full.
#[test]
fn sand_fills_what_the_roots_leave() {
    let a = Assumptions::default();
    let disc = std::f64::consts::PI * 25.0 * 25.0;
    let one = fill(5, &[basin(50.0, 50.0, 40.0)], &a, &mut Packings::default());
    let by_hand = disc * (3.0 + 6.1 + 10.0) / 1000.0 - 5.0 * 0.188;
    assert!((one.sand().0 - by_hand).abs() < 1e-9, "{} and {by_hand}", one.sand().0);
    assert!((one.sand_mass(&a).0 - by_hand * 1.442).abs() < 1e-9);

    let shallow = basin(50.0, 50.0, 20.0);
    let each =
        fill(1, std::slice::from_ref(&shallow), &a, &mut Packings::default()).filled[0].layers[0].capacity();
    let three = fill(2 * each + 1, &[shallow], &a, &mut Packings::default());
    assert_eq!(three.containers(), 3);
    let by_hand = 3.0 * disc * (3.0 + 6.1 + 10.0) / 1000.0 - f64::from(2 * each + 1) * 0.188;
    assert!((three.sand().0 - by_hand).abs() < 1e-9, "{} and {by_hand}", three.sand().0);
}

/// The lining of a straight basin by hand: a disc 50 cm wide and a wall up to the top sand.
#[test]
fn lining_covers_bottom_and_sides() {
    let store = fill(5, &[basin(50.0, 50.0, 40.0)], &Assumptions::default(), &mut Packings::default());
    let high = 3.0 + 6.1 + 10.0;
    let by_hand = std::f64::consts::PI * (25.0 * 25.0 + 50.0 * high) / 10_000.0;
    assert!((store.lining().0 - by_hand).abs() < 1e-9);
}
