//! One layer of roots seen from above.
//!
//! A root lying flat is a capsule: a straight line, its spine, with a half
//! circle at each end. Several ways to lay roots are tried: straight rows,
//! staggered rows, rings along the wall and rings of spokes with the rest in
//! the middle; what room is left is searched for single roots. The way that
//! holds most roots is taken. Every root keeps the gap to every other and to the side.

use std::collections::HashMap;
use std::f64::consts::PI;
use std::sync::Arc;

use super::super::units::whole_down;
use super::{Assumptions, Centimetres};

/// The size of a root and the gap it keeps.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Root {
    /// From tip to tip.
    pub length: Centimetres,
    /// Across.
    pub diameter: Centimetres,
    /// To the next root and to the side.
    pub gap: Centimetres,
}

impl Root {
    /// The root of the assumptions.
    pub fn of(assumptions: &Assumptions) -> Root {
        Root {
            length: Centimetres(assumptions.root_length_mm / 10.0),
            diameter: Centimetres(assumptions.root_diameter_mm / 10.0),
            gap: Centimetres(assumptions.root_gap_cm),
        }
    }

    /// Length of the straight line in the capsule.
    fn spine(&self) -> f64 {
        (self.length.0 - self.diameter.0).max(0.0)
    }

    /// Radius with half the gap around it: swollen so, roots may touch.
    fn swollen(&self) -> f64 {
        (self.diameter.0 + self.gap.0) / 2.0
    }
}

/// What a layer lies on.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Floor {
    /// A disc of this width.
    Round {
        /// Inner width.
        width: Centimetres,
    },
    /// A rectangle.
    Rectangle {
        /// Inner length.
        length: Centimetres,
        /// Inner width.
        width: Centimetres,
    },
}

/// Where a root lies: its middle, measured from the middle of the floor, in centimetres.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Position {
    /// Along the floor's length.
    pub x: f64,
    /// Along the floor's width.
    pub y: f64,
    /// The way it points, radians from the `x` direction, from 0 to below π.
    pub angle: f64,
}

impl Position {
    fn at(x: f64, y: f64, angle: f64) -> Position {
        Position { x, y, angle: angle.rem_euclid(PI) }
    }

    /// The two ends of a spine this long.
    fn ends(&self, spine: f64) -> [(f64, f64); 2] {
        let (dx, dy) = (self.angle.cos() * spine / 2.0, self.angle.sin() * spine / 2.0);
        [(self.x - dx, self.y - dy), (self.x + dx, self.y + dy)]
    }

    fn turned(self) -> Position {
        Position::at(-self.y, self.x, self.angle + PI / 2.0)
    }
}

/// Layers that were packed before: the same floor and root are packed once.
#[derive(Debug, Default)]
pub struct Packings(HashMap<[u64; 5], Arc<[Position]>>);

impl Packings {
    /// The positions of as many roots as can be laid, from the middle outwards; empty where none fits.
    pub fn pack(&mut self, floor: &Floor, root: &Root) -> Arc<[Position]> {
        let (length, width) = match *floor {
            Floor::Round { width } => (-1.0, width.0),
            Floor::Rectangle { length, width } => (length.0, width.0),
        };
        let key = [length, width, root.length.0, root.diameter.0, root.gap.0].map(f64::to_bits);
        let packed = self.0.entry(key).or_insert_with(|| pack(floor, root).into());
        Arc::clone(packed)
    }
}

/// The positions of as many roots as can be laid, from the middle outwards; empty where none fits.
pub fn pack(floor: &Floor, root: &Root) -> Vec<Position> {
    let shape = Capsule { spine: root.spine(), radius: root.swollen() };
    // Swollen roots may touch a wall that has moved inwards by half the gap.
    let moved = root.gap.0 / 2.0;
    let room = match *floor {
        Floor::Round { width } => Room::Disc { radius: width.0 / 2.0 - moved },
        Floor::Rectangle { length, width } => {
            Room::Rectangle { half_length: length.0 / 2.0 - moved, half_width: width.0 / 2.0 - moved }
        }
    };
    let mut laid = match room {
        Room::Disc { radius } => shape.in_disc(radius, DEEPEST_RING),
        Room::Rectangle { half_length, half_width } => shape.in_rectangle(half_length, half_width),
    };
    if laid.len() <= MOST_TO_FILL_UP {
        shape.fill_up(&room, &mut laid);
    }
    // A layer that is not full is laid from its middle.
    laid.sort_by(|a, b| a.x.hypot(a.y).total_cmp(&b.x.hypot(b.y)));
    laid
}

/// A root with half its gap around it.
#[derive(Debug, Clone, Copy)]
struct Capsule {
    spine: f64,
    radius: f64,
}

/// A floor whose wall has moved inwards by half the gap.
#[derive(Debug, Clone, Copy)]
enum Room {
    Disc { radius: f64 },
    Rectangle { half_length: f64, half_width: f64 },
}

/// Steps by which rows are shifted in search of the best place.
const SHIFTS: u32 = 32;
/// Steps by which staggered rows are shifted along themselves.
const SIDE_SHIFTS: u32 = 4;
/// Bounds the work for sizes no container has.
const MOST_ROWS: u32 = 1_000;
/// Rings within rings; wider floors have rows in their middle.
const DEEPEST_RING: u32 = 4;
/// On a floor with more roots than these the wall matters little, and rings within rings take long.
const MOST_TO_RING: usize = 300;
/// In more roots than these a gap for one more is not searched for.
const MOST_TO_FILL_UP: usize = 60;
/// Places along each side, and ways to point, at which a root is tried in the room left.
const PLACES: i32 = 12;
const WAYS: u32 = 6;
/// Binary noise that is no overlap.
const NOISE: f64 = 1e-9;

impl Capsule {
    fn in_disc(&self, radius: f64, rings: u32) -> Vec<Position> {
        let reach = radius - self.radius;
        if !reach.is_finite() || reach + NOISE < self.spine / 2.0 {
            return Vec::new();
        }
        let mut best = self.rows(reach, |y| {
            let left = reach * reach - y * y;
            (left >= 0.0).then(|| left.sqrt())
        });
        if rings > 0 && best.len() <= MOST_TO_RING {
            for (ring, inner) in [self.wall_ring(reach), self.spokes(reach)].into_iter().flatten() {
                let mut laid = ring;
                laid.extend(self.in_disc(inner, rings - 1));
                if laid.len() > best.len() {
                    best = laid;
                }
            }
        }
        best
    }

    /// Roots along the wall, and the radius of the room inside them.
    fn wall_ring(&self, reach: f64) -> Option<(Vec<Position>, f64)> {
        let middle = (reach * reach - self.spine * self.spine / 4.0).max(0.0).sqrt();
        let root = |turn: f64| Position::at(middle * turn.cos(), middle * turn.sin(), turn + PI / 2.0);
        self.ring(reach, middle, root).map(|ring| (ring, middle - self.radius))
    }

    /// Roots pointing to the middle, and the radius of the room inside them.
    fn spokes(&self, reach: f64) -> Option<(Vec<Position>, f64)> {
        let middle = reach - self.spine / 2.0;
        if self.spine == 0.0 || reach < self.spine {
            return None;
        }
        let root = |turn: f64| Position::at(middle * turn.cos(), middle * turn.sin(), turn);
        self.ring(reach - self.spine, middle, root).map(|ring| (ring, reach - self.spine - self.radius))
    }

    /// As many roots around as keep apart; `near` is how far from the middle neighbours come closest.
    fn ring(&self, near: f64, middle: f64, root: impl Fn(f64) -> Position) -> Option<Vec<Position>> {
        if middle <= 0.0 || near <= 0.0 {
            return None;
        }
        let most = whole_down(PI / (self.radius / near).min(1.0).asin());
        (2..=most.min(MOST_ROWS)).rev().find_map(|count| {
            let step = 2.0 * PI / f64::from(count);
            self.apart(&root(0.0), &root(step))
                .then(|| (0..count).map(|index| root(step * f64::from(index))).collect())
        })
    }

    /// Rows in a room that reaches `height` to either side of its middle line for spines; `reach` says how
    /// far from the middle a spine's end may lie at a height.
    fn rows(&self, height: f64, reach: impl Fn(f64) -> Option<f64>) -> Vec<Position> {
        let straight = self.best_shift(height, 2.0 * self.radius, 1, |y, _, _| {
            let reach = reach(y)?;
            let count = whole_down((2.0 * (reach - self.spine / 2.0)) / self.step() + 1.0 + NOISE);
            let fits = reach + NOISE >= self.spine / 2.0 && count > 0;
            fits.then(|| (-(f64::from(count) - 1.0) / 2.0 * self.step(), count.min(MOST_ROWS)))
        });
        if self.spine >= 2.0 * self.radius {
            return straight;
        }
        // Round ends nest into the gaps of the next row.
        let apart = self.radius - self.spine / 2.0;
        let pitch = (4.0 * self.radius * self.radius - apart * apart).sqrt();
        let staggered = self.best_shift(height, pitch, SIDE_SHIFTS, |y, row, side| {
            let room = reach(y)? - self.spine / 2.0;
            let phase = self.step() * (f64::from(row % 2) / 2.0 + f64::from(side) / f64::from(SIDE_SHIFTS));
            let first = ((-room - phase) / self.step() - NOISE).ceil();
            let last = ((room - phase) / self.step() + NOISE).floor();
            let count = whole_down(last - first + 1.0).min(MOST_ROWS);
            (count > 0).then(|| (phase + first * self.step(), count))
        });
        if staggered.len() > straight.len() { staggered } else { straight }
    }

    /// From one root to the next in a row.
    fn step(&self) -> f64 {
        self.spine + 2.0 * self.radius
    }

    /// Shifts rows until most roots fit; `row` gives the first root's place and
    /// the count in the row at a height.
    fn best_shift(
        &self,
        height: f64,
        pitch: f64,
        sides: u32,
        row: impl Fn(f64, u32, u32) -> Option<(f64, u32)>,
    ) -> Vec<Position> {
        if !height.is_finite() || height < -NOISE {
            return Vec::new();
        }
        let height = height.max(0.0);
        let rows = |shift: u32, side: u32| {
            let first = pitch * f64::from(shift) / f64::from(SHIFTS);
            let lowest = first - f64::from(whole_down((height + first) / pitch)) * pitch;
            let at = move |row: u32| lowest + f64::from(row) * pitch;
            let row = &row;
            (0..MOST_ROWS)
                .map(move |index| (at(index), index))
                .take_while(move |(y, _)| *y <= height + NOISE)
                .filter_map(move |(y, index)| row(y, index, side).map(|(first, count)| (y, first, count)))
        };
        let mut best = (0, 0, 0);
        for side in 0..sides {
            for shift in 0..SHIFTS {
                let count: u32 = rows(shift, side).map(|(_, _, count)| count).sum();
                if count > best.0 {
                    best = (count, shift, side);
                }
            }
        }
        rows(best.1, best.2)
            .flat_map(|(y, first, count)| {
                (0..count).map(move |index| Position::at(first + f64::from(index) * self.step(), y, 0.0))
            })
            .collect()
    }

    fn in_rectangle(&self, half_length: f64, half_width: f64) -> Vec<Position> {
        let turned = |positions: Vec<Position>| positions.into_iter().map(Position::turned).collect();
        let ways = [
            self.blocks(half_length, half_width),
            turned(self.blocks(half_width, half_length)),
            self.nested(half_length, half_width),
            turned(self.nested(half_width, half_length)),
        ];
        ways.into_iter().fold(Vec::new(), |best, way| if way.len() > best.len() { way } else { best })
    }

    fn nested(&self, half_length: f64, half_width: f64) -> Vec<Position> {
        let reach = half_length - self.radius;
        if reach < 0.0 {
            return Vec::new();
        }
        self.rows(half_width - self.radius, |_| Some(reach))
    }

    /// Some rows lengthwise, and above them rows crosswise.
    fn blocks(&self, half_length: f64, half_width: f64) -> Vec<Position> {
        let (long, short) = (self.step(), 2.0 * self.radius);
        let fit = |room: f64, size: f64| whole_down(room / size).min(MOST_ROWS);
        let (length, width) = (2.0 * half_length, 2.0 * half_width);
        if !(length > 0.0 && width > 0.0) {
            return Vec::new();
        }
        let (in_row, in_cross_row) = (fit(length, long), fit(length, short));
        let cross_rows = |rows: u32| fit(width - f64::from(rows) * short, long);
        let held = |rows: u32| rows * in_row + cross_rows(rows) * in_cross_row;
        let Some(rows) = (0..=fit(width, short)).max_by_key(|rows| (held(*rows), *rows)) else {
            return Vec::new();
        };
        let crossed = cross_rows(rows);
        let used = f64::from(rows) * short + f64::from(crossed) * long;
        let lowest = -used / 2.0;
        let lengthwise = (0..rows).flat_map(move |row| {
            let y = lowest + (f64::from(row) + 0.5) * short;
            spread(in_row, long).map(move |x| Position::at(x, y, 0.0))
        });
        let above = lowest + f64::from(rows) * short;
        let crosswise = (0..crossed).flat_map(move |row| {
            let y = above + (f64::from(row) + 0.5) * long;
            spread(in_cross_row, short).map(move |x| Position::at(x, y, PI / 2.0))
        });
        lengthwise.chain(crosswise).collect()
    }

    /// Lays single roots where room is left.
    fn fill_up(&self, room: &Room, laid: &mut Vec<Position>) {
        let (half_length, half_width) = match *room {
            Room::Disc { radius } => (radius, radius),
            Room::Rectangle { half_length, half_width } => (half_length, half_width),
        };
        let ways = if self.spine == 0.0 { 1 } else { WAYS };
        let closest = 2.0 * self.radius - NOISE;
        for row in -PLACES..=PLACES {
            for column in -PLACES..=PLACES {
                let x = (half_length - self.radius) * f64::from(column) / f64::from(PLACES);
                let y = (half_width - self.radius) * f64::from(row) / f64::from(PLACES);
                let near = |other: &Position| square(other.x - x, other.y - y) < closest * closest;
                if laid.iter().any(near) {
                    continue;
                }
                let found = (0..ways)
                    .map(|way| Position::at(x, y, PI * f64::from(way) / f64::from(ways)))
                    .find(|here| self.within(room, here) && laid.iter().all(|other| self.apart(here, other)));
                laid.extend(found);
            }
        }
    }

    fn within(&self, room: &Room, position: &Position) -> bool {
        position.ends(self.spine).iter().all(|(x, y)| match *room {
            Room::Disc { radius } => x.hypot(*y) <= radius - self.radius + NOISE,
            Room::Rectangle { half_length, half_width } => {
                x.abs() <= half_length - self.radius + NOISE && y.abs() <= half_width - self.radius + NOISE
            }
        })
    }

    fn apart(&self, one: &Position, other: &Position) -> bool {
        // No two ends are nearer than the middles by more than half a spine each.
        let far = self.spine + 2.0 * self.radius;
        square(other.x - one.x, other.y - one.y) >= far * far || {
            let distance = between_segments(one.ends(self.spine), other.ends(self.spine));
            distance + NOISE >= 2.0 * self.radius
        }
    }
}

/// `count` places, `step` from each other, with their middle at 0.
fn spread(count: u32, step: f64) -> impl Iterator<Item = f64> {
    let first = -(f64::from(count) - 1.0) / 2.0 * step;
    (0..count).map(move |index| first + f64::from(index) * step)
}

type Segment = [(f64, f64); 2];

/// The distance between two straight lines that end.
fn between_segments(one: Segment, other: Segment) -> f64 {
    if cross(one, other) {
        return 0.0;
    }
    let [a, b] = one;
    let [c, d] = other;
    [to_segment(a, other), to_segment(b, other), to_segment(c, one), to_segment(d, one)]
        .into_iter()
        .fold(f64::INFINITY, f64::min)
        .sqrt()
}

/// The square of a length: to compare, no root is needed.
fn square(dx: f64, dy: f64) -> f64 {
    dx * dx + dy * dy
}

/// The square of the distance of a point to a straight line that ends.
fn to_segment((x, y): (f64, f64), [(ax, ay), (bx, by)]: Segment) -> f64 {
    let (dx, dy) = (bx - ax, by - ay);
    let length = square(dx, dy);
    let share = if length > 0.0 { (((x - ax) * dx + (y - ay) * dy) / length).clamp(0.0, 1.0) } else { 0.0 };
    square(x - ax - share * dx, y - ay - share * dy)
}

fn cross([a, b]: Segment, [c, d]: Segment) -> bool {
    let side =
        |p: (f64, f64), q: (f64, f64), r: (f64, f64)| (q.0 - p.0) * (r.1 - p.1) - (q.1 - p.1) * (r.0 - p.0);
    // Spokes in one line are on neither side but for binary noise.
    side(a, b, c) * side(a, b, d) < -NOISE && side(c, d, a) * side(c, d, b) < -NOISE
}
