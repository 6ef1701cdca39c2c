//! What the drawings of a plan show: sizes in centimetres, days, counts. To
//! scale, and without a word of any language.

use std::f64::consts::PI;

use chrono::{Days, NaiveDate};

use super::variables::facts;
use super::{StepKind, Values};
use crate::plan::field::Spacing;
use crate::plan::store::{Container, Filled, Floor, Position, Root, Shape};
use crate::plan::{Assumptions, Case, Centimetres, DateSpan, Plan};

/// All that is drawn.
#[derive(Debug, Clone, PartialEq)]
pub struct Shapes {
    /// Each kind of container that is filled, in the order of filling.
    pub stores: Vec<StoreShape>,
    /// The bed.
    pub bed: BedShape,
    /// How cuttings stand in the field.
    pub rows: Rows,
    /// The season from the old field's harvest to the new one's.
    pub season: SeasonBand,
    /// The values that words beside the drawings may use.
    pub values: Values,
}

/// A filled container.
#[derive(Debug, Clone, PartialEq)]
pub struct StoreShape {
    /// Inner half widths at heights above the bottom, from the bottom up.
    pub profile: Vec<(f64, f64)>,
    /// Inner depth.
    pub depth: f64,
    /// How high sand and roots stand.
    pub sand: f64,
    /// Thickness of a root.
    pub root: f64,
    /// Length of a root.
    pub root_length: f64,
    /// Layers from the bottom up.
    pub layers: Vec<LayerShape>,
    /// Sand under the lowest layer, between layers and above the topmost.
    pub sand_between: (f64, f64, f64),
}

/// A layer of roots.
#[derive(Debug, Clone, PartialEq)]
pub struct LayerShape {
    /// Underside of its roots above the bottom.
    pub height: f64,
    /// The floor it lies on, seen from above.
    pub floor: Area,
    /// The roots: middle from the floor's middle, and the way they point in radians.
    pub roots: Vec<(f64, f64, f64)>,
}

/// An area seen from above.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Area {
    /// A disc of this width.
    Disc(f64),
    /// A rectangle of this length and width.
    Rectangle(f64, f64),
}

/// The watered bed: strips with paths between them.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BedShape {
    /// Along the strips.
    pub length: f64,
    /// Across all strips and paths.
    pub width: f64,
    /// Strips.
    pub strips: u32,
    /// Width of a strip.
    pub strip_width: f64,
    /// Width of a path.
    pub path: f64,
    /// Rows along each strip.
    pub rows_per_strip: u32,
    /// Roots in all.
    pub roots: u32,
    /// Roots in the fullest row.
    pub roots_per_row: u32,
}

/// How cuttings stand in the field.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Rows {
    /// On ridges: from ridge to ridge, and from cutting to cutting.
    Ridges(f64, f64),
    /// On mounds: from mound to mound, and cuttings on each.
    Mounds(f64, u32),
}

/// The days the season hangs on.
#[derive(Debug, Clone, PartialEq)]
pub struct SeasonBand {
    /// The first day that is shown.
    pub from: NaiveDate,
    /// The last day that is shown.
    pub to: NaiveDate,
    /// The roots lie in sand.
    pub store: Option<DateSpan>,
    /// The monthly checks.
    pub checks: Vec<NaiveDate>,
    /// The roots sprout in the bed.
    pub bed: Option<DateSpan>,
    /// The plants grow in the field.
    pub field: DateSpan,
    /// The old field is dug.
    pub harvest: NaiveDate,
    /// The rains usually begin, or began.
    pub rains: NaiveDate,
    /// The first roots may be tried.
    pub food: NaiveDate,
    /// The day the plan is asked for, where it is known.
    pub today: Option<NaiveDate>,
}

/// Days shown before the harvest of the old field.
const LEAD: u64 = 14;

impl Shapes {
    /// What is drawn of a plan.
    pub fn of(case: &Case, plan: &Plan) -> Shapes {
        let bed = &plan.now.bed;
        Shapes {
            stores: plan
                .now
                .containers
                .iter()
                .map(|filled| StoreShape::of(filled, &plan.assumptions))
                .collect(),
            bed: BedShape {
                length: bed.length().0 * 100.0,
                width: bed.width().0 * 100.0,
                strips: bed.strips,
                strip_width: bed.strip_width.0 * 100.0,
                path: bed.path.0 * 100.0,
                rows_per_strip: bed.rows_per_strip,
                roots: bed.roots,
                roots_per_row: bed.roots_per_row,
            },
            rows: match case.spacing() {
                Spacing::Ridges { between, along } => Rows::Ridges(between.0 * 100.0, along.0 * 100.0),
                Spacing::Mounds { between, cuttings } => {
                    Rows::Mounds(between.0 * 100.0, cuttings.round().max(1.0) as u32)
                }
            },
            season: SeasonBand::of(case, plan),
            values: facts(case, plan, &plan.now),
        }
    }
}

impl StoreShape {
    fn of(filled: &Filled, assumptions: &Assumptions) -> StoreShape {
        let root = Root::of(assumptions);
        let layers: Vec<LayerShape> = filled
            .roots_by_layer()
            .map(|(layer, roots)| {
                let high = Centimetres(layer.height.0 + root.diameter.0);
                let places = layer.places.get(..roots as usize).unwrap_or_default();
                LayerShape {
                    height: layer.height.0,
                    floor: Area::of(filled.container.floor_between(layer.height, high)),
                    roots: places.iter().map(|Position { x, y, angle }| (*x, *y, *angle)).collect(),
                }
            })
            .collect();
        let top = layers.last().map_or(0.0, |layer| layer.height + root.diameter.0 + assumptions.top_sand_cm);
        StoreShape {
            profile: profile(&filled.container),
            depth: filled.container.depth.0,
            sand: top.min(filled.container.depth.0),
            root: root.diameter.0,
            root_length: root.length.0,
            layers,
            sand_between: (assumptions.base_sand_cm, assumptions.layer_sand_cm, assumptions.top_sand_cm),
        }
    }

    /// The roots of a layer that a cut along the container meets: their middles across, and half
    /// of what the cut shows of each. The cut goes where it meets most roots, near the middle.
    pub fn cut(&self, layer: &LayerShape) -> Vec<(f64, f64)> {
        let places = [0.0].into_iter().chain(layer.roots.iter().map(|(_, y, _)| *y));
        let cuts = places.map(|at| (self.cut_at(layer, at), at.abs()));
        // Away from the middle a cut counts only where the middle has nothing.
        let rank = |met: &Vec<(f64, f64)>, off: f64| if off <= self.root_length { met.len() } else { 0 };
        let better = |a: &(Vec<_>, f64), b: &(Vec<_>, f64)| {
            let many = rank(&a.0, a.1).cmp(&rank(&b.0, b.1));
            many.then(a.0.is_empty().cmp(&b.0.is_empty()).reverse()).then(b.1.total_cmp(&a.1))
        };
        cuts.max_by(better).map(|(met, _)| met).unwrap_or_default()
    }

    fn cut_at(&self, layer: &LayerShape, at: f64) -> Vec<(f64, f64)> {
        let met = layer.roots.iter().filter_map(|(x, y, angle)| {
            let (middle, half) = chord(self.root_length, self.root, *angle, at - y)?;
            Some((x + middle, half))
        });
        met.collect()
    }
}

/// Where a level line meets a root that lies at an angle, `off` from its middle: how far from there
/// the middle of what it meets is, and half of its length. A root is a line with round ends, as it is packed.
fn chord(length: f64, thick: f64, angle: f64, off: f64) -> Option<(f64, f64)> {
    let (reach, radius) = ((length - thick).max(0.0) / 2.0, thick / 2.0);
    let (sin, cos) = angle.sin_cos();
    let ends = [-reach, reach].into_iter().flat_map(|end| {
        let inside = radius * radius - (off - end * sin).powi(2);
        let half = (inside > 0.0).then(|| inside.sqrt());
        half.into_iter().flat_map(move |half| [end * cos - half, end * cos + half])
    });
    // A side runs beside the line at the distance of the radius.
    let sides = [-radius, radius].into_iter().filter_map(|beside| {
        let along = (off - beside * cos) / sin;
        (along.abs() <= reach).then_some(along * cos - beside * sin)
    });
    let met: Vec<f64> = ends.chain(sides).collect();
    let from = met.iter().copied().reduce(f64::min)?;
    let to = met.iter().copied().reduce(f64::max)?;
    Some(((from + to) / 2.0, (to - from) / 2.0))
}

fn profile(container: &Container) -> Vec<(f64, f64)> {
    let depth = container.depth.0;
    match &container.shape {
        Shape::Round { top, bottom } => vec![(bottom.0 / 2.0, 0.0), (top.0 / 2.0, depth)],
        Shape::Box { length, .. } => vec![(length.0 / 2.0, 0.0), (length.0 / 2.0, depth)],
        Shape::Pot { bands } => {
            let mut from = 0.0;
            let mut points = Vec::new();
            for band in bands {
                points.push((band.width.0 / 2.0, from));
                from += band.height.0;
                points.push((band.width.0 / 2.0, from));
            }
            points
        }
    }
}

impl Area {
    fn of(floor: Floor) -> Area {
        match floor {
            Floor::Round { width } => Area::Disc(width.0),
            Floor::Rectangle { length, width } => Area::Rectangle(length.0, width.0),
        }
    }

    /// Its size, in square centimetres.
    pub fn size(self) -> f64 {
        match self {
            Area::Disc(width) => PI * width * width / 4.0,
            Area::Rectangle(length, width) => length * width,
        }
    }
}

impl SeasonBand {
    fn of(case: &Case, plan: &Plan) -> SeasonBand {
        let span = |kind| plan.now.steps_of(kind).next().map(|step| step.when);
        let start = |kind| span(kind).map(|span| span.from);
        let bed_from = start(StepKind::PlantBed);
        let food = plan.now.harvest.first;
        let until = |from: NaiveDate, to: Option<NaiveDate>| to.map(|to| DateSpan::new(from, to));
        SeasonBand {
            from: case.harvest.checked_sub_days(Days::new(LEAD)).unwrap_or(case.harvest),
            to: plan.now.harvest.last.max(food),
            store: start(StepKind::FillContainer).and_then(|from| until(from, bed_from)),
            checks: plan.now.steps_of(StepKind::MonthlyCheck).map(|step| step.when.from).collect(),
            bed: bed_from.and_then(|from| until(from, Some(plan.rains))),
            field: DateSpan::new(start(StepKind::PlantField).unwrap_or(plan.rains), plan.now.harvest.last),
            harvest: case.harvest,
            rains: plan.usual_rains(),
            food,
            today: plan.today,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::chord;

    /// By the distance of each point of the line from the root's spine.
    #[test]
    fn a_cut_meets_a_root_where_its_points_are_near_enough() {
        let (length, thick, step) = (14.0, 5.0, 0.001);
        for (angle, off) in [
            (0.0, 0.0),
            (0.0, 2.4),
            (0.0, 2.6),
            (0.6, 0.0),
            (0.6, 3.9),
            (0.6, -4.9),
            (1.2, 5.0),
            (std::f64::consts::FRAC_PI_2, 6.5),
            (2.5, 1.0),
            (-0.9, 7.5),
        ] {
            let reach = (length - thick) / 2.0;
            let (sin, cos) = f64::sin_cos(angle);
            let within = |x: &f64| {
                let along = (x * cos + off * sin).clamp(-reach, reach);
                (x - along * cos).hypot(off - along * sin) <= thick / 2.0
            };
            let met: Vec<f64> = (-10_000..=10_000).map(|at| f64::from(at) * step).filter(within).collect();
            let expected =
                met.first().zip(met.last()).map(|(from, to)| ((from + to) / 2.0, (to - from) / 2.0));
            match (chord(length, thick, angle, off), expected) {
                (Some((middle, half)), Some((of_points, half_of_points))) => {
                    assert!((middle - of_points).abs() < 2.0 * step, "{angle} {off}: {middle} {of_points}");
                    assert!(
                        (half - half_of_points).abs() < 2.0 * step,
                        "{angle} {off}: {half} {half_of_points}"
                    );
                }
                (found, expected) => assert_eq!(found, expected, "{angle} {off}"),
            }
        }
    }
}
