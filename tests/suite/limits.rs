//! What there is bounds the plan: containers, sand, water, bed, roots, plants and hands.

use kabla::plan::field::{Field, Spacing};
use kabla::plan::season::Rains;
use kabla::plan::seedbed::{Soil, Source};
use kabla::plan::store::{Band, Container, Packings, Shape, covered_by, fill};
use kabla::plan::{
    AmountReason, Assumptions, AtHand, Case, Centimetres, Hands, Kind, Litres, Metres, Place, Plan, PlanBy,
    Planner, Quantity, Remark, SquareMetres, StepKind, make,
};
use proptest::prelude::*;

use crate::plan::{amount, date, farm};

const RIDGES: Spacing = Spacing::Ridges { between: Metres(1.0), along: Metres(0.3) };

/// A bucket with straight sides, 15.5 cm × 26.5 cm and 28 cm deep. One root (11.1 cm) and 2 cm of sand at both ends take
/// 15.1 cm; three (6.1 cm) beside each other with 2 cm between and at the sides take 26.3 cm. Two layers
/// with 3 cm of sand below, 2 cm between and 10 cm on top take 27.2 cm. So it takes 6 roots.
fn bucket(count: Option<u32>) -> Container {
    let shape = Shape::Box { length: Centimetres(26.5), width: Centimetres(15.5) };
    Container { shape, depth: Centimetres(28.0), count }
}

fn well(litres: f64) -> Option<Source> {
    Some(Source { name: "the well".to_owned(), daily: Some([Litres(litres); 12]), stored: None })
}

fn nothing_at_hand() -> AtHand {
    AtHand { roots: None, plants: None, bed: None, sand: None, spacing: RIDGES }
}

fn has(plan: &Plan, remark: &Remark) {
    assert!(plan.remarks.contains(remark), "{remark:?} is not among {:#?}", plan.remarks);
}

fn why(plan: &Plan, quantity: Quantity) -> &AmountReason {
    &plan.now.amounts.0.iter().find(|amount| amount.quantity == quantity).unwrap().why
}

/// By hand: 300 m² take 1,000 cuttings, by common practice 1,000 / 37.5 = 26.7 roots. Six roots give 225 cuttings over
/// the season for 67.5 m², and 6 × 0.88 × 30 = 158.4 at the first cut for 47.4 m². The other 21 take
/// 21 / 6 = 3.5 buckets. 6 / (1.6 × 0.9) = 4.2 plants; 6 × 0.375 = 2.25 m² of bed. Sand: 15.5 × 26.5 × 27.2 cm are
/// 11.17 L, less 6 × 0.188 L. Work: 67.5 / 300 × 5 = 1.1 days of ridging (3 to 8: 0.7 to 1.8);
/// 0.225 × 4 = 0.9 of watering (2 to 6: 0.45 to 1.35).
#[test]
fn one_bucket_for_300_square_metres() {
    let plan = make(&Case { containers: vec![bucket(Some(1))], ..farm(300.0) }).unwrap();
    has(
        &plan,
        &Remark::ContainersTooSmall {
            left_over: 21,
            roots: 27,
            more: 4,
            fit: 6,
            first_m2: 47.0,
            area_m2: 67.0,
            field_m2: 300.0,
        },
    );
    assert_eq!(why(&plan, Quantity::RootsToStore), &AmountReason::RootsOfContainers { containers: 1 });
    for (quantity, by_hand) in [
        (Quantity::CuttingsNeeded, 1000.0),
        (Quantity::RootsToStore, 6.0),
        (Quantity::PlantsToMark, 5.0),
        (Quantity::Containers, 1.0),
        (Quantity::SandLitres, 11.0),
        (Quantity::BedArea, 2.25),
        (Quantity::CuttingsAtFirstCut, 158.0),
        (Quantity::CuttingsOverSeason, 225.0),
        (Quantity::WorkRidging, 1.2),
        (Quantity::WorkWatering, 0.9),
    ] {
        assert_eq!(amount(&plan, quantity), by_hand, "{quantity:?}");
    }
    let range = |quantity| plan.now.amounts.0.iter().find(|of| of.quantity == quantity).unwrap().range;
    assert_eq!(range(Quantity::WorkRidging), Some((0.7, 1.8)));
    assert_eq!(range(Quantity::WorkWatering), Some((0.5, 1.4)));
    // What is planted is harvested: 67.5 m² at 4.5 and 9 t/ha.
    assert_eq!(plan.now.harvest.yield_low.unwrap().0, 30.0);
    assert_eq!(plan.now.harvest.yield_high.unwrap().0, 60.0);
    // Five buckets are enough; so are as many as needed.
    for count in [Some(5), None] {
        let enough = make(&Case { containers: vec![bucket(count)], ..farm(300.0) }).unwrap();
        assert_eq!(amount(&enough, Quantity::RootsToStore), 27.0, "{count:?}");
        assert_eq!(amount(&enough, Quantity::Containers), 5.0);
        assert!(!enough.remarks.iter().any(|of| matches!(of, Remark::ContainersTooSmall { .. })));
    }
}

/// The same bucket by the growth curve: 10 cuttings of a sprouted root at the first cut after 56 days, 6 at each of two
/// later cuts; 0.88 survive and 0.9 of these sprout. 1,000 / (22 × 0.792) = 57.4 roots are wanted.
/// Six give 6 × 7.92 = 47.5 at the first cut for 14.1 m², 6 × 17.424 = 104.5 in all for 31.2 m²; 52 / 6 = 8.7 buckets more.
#[test]
fn one_bucket_by_the_growth_curve() {
    let case = Case { containers: vec![bucket(Some(1))], plan_by: PlanBy::Print, ..farm(300.0) };
    let remark = Remark::ContainersTooSmall {
        left_over: 52,
        roots: 58,
        more: 9,
        fit: 6,
        first_m2: 14.0,
        area_m2: 31.0,
        field_m2: 300.0,
    };
    has(&make(&case).unwrap(), &remark);
}

/// By hand: a pot with a narrow foot, 4 cm high and 12 cm wide, and a belly 32 cm high and 20 cm wide. No root lies
/// in the foot. The next two layers lie from 11.1 and from 19.2 cm on (10 cm of sand on top end at 35.3 of 36 cm). Two
/// roots beside each other, 8.1 cm from middle to middle, with ends 2.5 cm from there, take
/// 2 × (√(2.5² + 4.05²) + 3.05 + 2) = 19.6 cm. So 4 roots in each pot.
/// Mounds 1 m apart with 3 cuttings: 300 m² take 900 cuttings, 24 roots. Five pots hold 20, for 750 cuttings and
/// 250 m²; 20 × 0.88 × 30 = 528 at the first cut, 176 m². One pot more is enough.
#[test]
fn mounds_and_clay_pots() {
    let band = |height, width| Band { height: Centimetres(height), width: Centimetres(width) };
    let shape = Shape::Pot { bands: vec![band(4.0, 12.0), band(32.0, 20.0)] };
    let pots = |count| vec![Container { shape: shape.clone(), depth: Centimetres(36.0), count }];
    let mounds = Spacing::Mounds { between: Metres(1.0), cuttings: 3.0 };
    let field = Some(Field::of(SquareMetres(300.0), mounds));
    let plan = make(&Case { field, containers: pots(Some(5)), ..farm(1.0) }).unwrap();
    has(
        &plan,
        &Remark::ContainersTooSmall {
            left_over: 4,
            roots: 24,
            more: 1,
            fit: 20,
            first_m2: 170.0,
            area_m2: 250.0,
            field_m2: 300.0,
        },
    );
    let whole = make(&Case { field, containers: pots(Some(6)), ..farm(1.0) }).unwrap();
    assert_eq!(amount(&whole, Quantity::RootsToStore), 24.0);
}

/// By hand (Hargreaves, 32 and 18 °C, latitude −6): ET₀ is 5.744 mm a day around 15 November, when the bed is full of
/// leaves; 1.15 × 5.744 / 0.8 = 8.257 L/m². 60 L water 60 / (8.257 × 0.375) = 19.4 roots; a bed for all 40,
/// 15 m², takes 123.8 L, from 14 October on more than 60 L (15 × 7.158). 19 roots give 712 cuttings, 213.7 m²;
/// 19 × 26.4 = 501.6 at the first cut, 150.5 m².
#[test]
fn sixty_litres_of_water_a_day() {
    let plan = make(&Case { source: well(60.0), ..farm(450.0) }).unwrap();
    has(
        &plan,
        &Remark::WaterLimits {
            source: "the well".to_owned(),
            from: date("2027-10-14"),
            per: "day",
            gives_l: 60.0,
            needs_l: 124.0,
            more_l: 64,
            bed_m2: SquareMetres(7.1),
            fit: 19,
            roots: 40,
            first_m2: 150.0,
            area_m2: 210.0,
            field_m2: 450.0,
        },
    );
    let by_well = AmountReason::RootsOfWater { source: "the well".to_owned(), litres: 60.0, per: "day" };
    assert_eq!(why(&plan, Quantity::RootsToStore), &by_well);
    assert_eq!(amount(&plan, Quantity::RootsToStore), 19.0);
    assert_eq!(amount(&plan, Quantity::BedArea), 7.125);
    // 7.125 × 8.257 = 58.8 L are within the well's 60.
    assert_eq!(amount(&plan, Quantity::WaterPerDay), 59.0);
    assert!(!plan.remarks.iter().any(|of| matches!(of, Remark::WaterShort { .. })), "it is enough now");
    // 124 L are enough for all.
    let enough = make(&Case { source: well(124.0), ..farm(450.0) }).unwrap();
    assert_eq!(amount(&enough, Quantity::RootsToStore), 40.0);
    // A tank of as much as the smaller bed drinks in all waters just that one.
    let in_all = amount(&plan, Quantity::WaterTotal);
    let tank = Source { name: "the tank".to_owned(), daily: None, stored: Some(Litres(in_all)) };
    let by_tank = make(&Case { source: Some(tank), ..farm(450.0) }).unwrap();
    assert_eq!(amount(&by_tank, Quantity::RootsToStore), 19.0);
    assert!(by_tank.remarks.iter().any(|of| matches!(of, Remark::WaterLimits { per: "all", .. })));
}

/// By hand (latitude 3.1, the rains of 20 March): ET₀ is 5.667 mm around 15 March, 1.15 × 5.667 / 0.8 = 8.147 L/m². A
/// field of 3,400 m² takes 11,333.3, so 11,334 cuttings and 302.2, so 303 roots: 113.6 m², 925.7 L a day and
/// 61.7 trips of 15 L. With 10 minutes each they take 10.3 hours, 5.2 for each of two. Four hours are 24 trips with
/// 360 L, for 303 × 360 / 926 = 117.8 roots and 43.8 m². 94.7 m of strip are ten strips of 9.5 m (9.47),
/// 10 × 1.2 + 9 × 0.5 = 16.5 m across.
#[test]
fn water_that_is_too_much_to_carry() {
    let far = Case {
        place: Place { latitude: 3.1, ..farm(1.0).place },
        harvest: date("2027-10-18"),
        rains: Rains::On(date("2028-03-20")),
        ..farm(3400.0)
    };
    let plan = make(&far).unwrap();
    for (quantity, by_hand) in [
        (Quantity::RootsToStore, 303.0),
        (Quantity::WaterPerDay, 926.0),
        (Quantity::TripsPerDay, 62.0),
        (Quantity::WaterHours, 10.4),
        (Quantity::BedStrips, 10.0),
        (Quantity::StripLength, 9.5),
        (Quantity::StripWidth, 1.2),
        (Quantity::BedLength, 9.5),
        (Quantity::BedWidth, 16.5),
    ] {
        assert_eq!(amount(&plan, quantity), by_hand, "{quantity:?}");
    }
    has(
        &plan,
        &Remark::WaterHeavy {
            litres: 926.0,
            trips: 62,
            hours: 11.0,
            people: 2,
            hours_each: 5.2,
            most_hours: 2.0,
            roots: 117,
            bed_m2: SquareMetres(43.8),
        },
    );
    // Twelve who share it need less than an hour each.
    let hands = Some(Hands { people: 12, hours_per_day: 1.0 });
    let shared = make(&Case { hands, kind: Kind::Group { members: 12 }, ..far.clone() }).unwrap();
    assert_eq!(amount(&shared, Quantity::RootsToStore), 303.0);
    assert!(
        !shared.remarks.iter().any(|of| matches!(of, Remark::WaterHeavy { .. } | Remark::HandsShort { .. }))
    );
    // Two with two hours each, as the case says: 24 trips with 360 L are 117 roots, 43.875 × 8.147 = 357.4 L. These give
    // 4,387 cuttings for 1,316 m² of 3,400, and 117 × 26.4 = 3,088.8 at the first cut for 926.5 m².
    let hands = Some(Hands { people: 2, hours_per_day: 2.0 });
    let plan = make(&Case { hands, ..far }).unwrap();
    assert_eq!(amount(&plan, Quantity::RootsToStore), 117.0);
    assert_eq!(amount(&plan, Quantity::TripsPerDay), 24.0);
    has(
        &plan,
        &Remark::HandsShort {
            people: 2,
            hours_each: 2.0,
            trips: 62,
            hours: 10.4,
            bed_m2: SquareMetres(43.8),
            fit: 117,
            roots: 303,
            first_m2: 920.0,
            area_m2: 1300.0,
            field_m2: 3400.0,
        },
    );
}

/// By hand: one bucket takes 10.04 L, a layer of three in it 15.5 × 26.5 × 19.1 cm less 3 × 0.188 = 7.28 L. 25 L are two
/// buckets (20.09 L) and no third layer (4.9 L are left); 28 L are a layer more. 27 roots take four buckets and a layer,
/// 40.18 + 7.28 = 47.5 L.
#[test]
fn sand_at_hand_covers_so_many_roots() {
    let a = Assumptions::default();
    let buckets = [bucket(None)];
    for (litres, roots) in [(7.0, 0), (8.0, 3), (10.0, 3), (11.0, 6), (25.0, 12), (28.0, 15), (48.0, 27)] {
        let covered = covered_by(Litres(litres), 27, &buckets, &a, &mut Packings::default());
        assert_eq!(covered, roots, "{litres} L");
    }
    let at_hand = Some(AtHand { sand: Some(Litres(25.0)), ..nothing_at_hand() });
    let plan = make(&Case { at_hand, containers: vec![bucket(None)], ..farm(300.0) }).unwrap();
    assert_eq!(why(&plan, Quantity::RootsToStore), &AmountReason::RootsOfSand { sand_l: Litres(25.0) });
    assert_eq!(amount(&plan, Quantity::SandLitres), 21.0);
    has(
        &plan,
        &Remark::SandShort {
            has_l: 25.0,
            needs_l: 48.0,
            more_l: 23,
            fit: 12,
            roots: 27,
            first_m2: 94.0,
            area_m2: 130.0,
            field_m2: 300.0,
        },
    );
    // One bucket takes 6 of the 27, and 11 L: what has no room takes no sand. 8 L cover 3 of the 6.
    let one = |litres| {
        let at_hand = Some(AtHand { sand: Some(Litres(litres)), ..nothing_at_hand() });
        make(&Case { at_hand, containers: vec![bucket(Some(1))], ..farm(300.0) }).unwrap()
    };
    let short = |of: &Remark| matches!(of, Remark::SandShort { .. });
    assert!(!one(25.0).remarks.iter().any(short));
    let three =
        |of: &Remark| matches!(of, Remark::SandShort { fit: 3, roots: 6, needs_l: 11.0, more_l: 3, .. });
    assert!(one(8.0).remarks.iter().any(three), "{:#?}", one(8.0).remarks);
    assert_eq!(amount(&one(8.0), Quantity::RootsToStore), 3.0);
    // Without a field, what the sand covers is planted: 12 roots, 450 cuttings, 135 m².
    let forward = make(&Case { at_hand, containers: vec![bucket(None)], field: None, ..farm(1.0) }).unwrap();
    assert_eq!(amount(&forward, Quantity::FieldArea), 135.0);
}

/// The least of all counts, and each is named with what it would take: 20 roots lack 7; 15 plants give 21.6 roots, and 27
/// take 18.75 plants; 3 m² of bed take 8 roots, and 27 take 10.125 m²; the bucket takes 6.
#[test]
fn the_least_of_all_binds_and_each_is_named() {
    let at_hand =
        Some(AtHand { roots: Some(20), plants: Some(15), bed: Some(SquareMetres(3.0)), ..nothing_at_hand() });
    let plan = make(&Case { at_hand, containers: vec![bucket(Some(1))], ..farm(300.0) }).unwrap();
    assert_eq!(amount(&plan, Quantity::RootsToStore), 6.0);
    let named: Vec<(String, u32, f64)> = plan
        .remarks
        .iter()
        .filter_map(|remark| match remark {
            Remark::ContainersTooSmall { fit, more, .. } => {
                Some(("containers".to_owned(), *fit, f64::from(*more)))
            }
            Remark::LimitedAtHand { limit, roots, lacking, .. } => {
                Some(((*limit).to_owned(), *roots, *lacking))
            }
            _ => None,
        })
        .collect();
    let by_hand = [("containers", 6, 4.0), ("bed", 8, 7.2), ("roots", 20, 7.0), ("plants", 21, 4.0)];
    assert_eq!(named, by_hand.map(|(name, roots, lacking)| (name.to_owned(), roots, lacking)));
    // Forward, from 20 roots: the same bucket, and the field is what six roots plant.
    let forward = Case { field: None, ..Case { at_hand, containers: vec![bucket(Some(1))], ..farm(1.0) } };
    let plan = make(&forward).unwrap();
    assert_eq!(amount(&plan, Quantity::FieldArea), 67.0, "225 × 0.3 = 67.5");
    // Of the bed's 8 roots, and their 90 m².
    let two = |of: &Remark| matches!(of, Remark::ContainersTooSmall { left_over: 2, roots: 8, fit: 6, field_m2, .. } if *field_m2 == 90.0);
    assert!(plan.remarks.iter().any(two), "{:#?}", plan.remarks);
}

/// A well that is dry while the bed needs it allows no root, and that is said.
#[test]
fn a_dry_well_allows_no_root() {
    let plan = make(&Case { source: well(0.0), ..farm(450.0) }).unwrap();
    assert_eq!(amount(&plan, Quantity::RootsToStore), 0.0);
    has(&plan, &Remark::NothingAtHand { limit: "water" });
    assert!(plan.now.amounts.0.iter().all(|amount| amount.value.is_finite()));
}

/// The plan that was made for the well's water is short where the bed comes late, into drier months.
#[test]
fn a_late_bed_may_be_short_of_water() {
    let mut months = [Litres(1000.0); 12];
    months[11] = Litres(50.0);
    let pond = Source { name: "the pond".to_owned(), daily: Some(months), stored: None };
    let case = Case { source: Some(pond), ..farm(450.0) };
    let in_time = make(&case).unwrap();
    assert_eq!(amount(&in_time, Quantity::RootsToStore), 40.0, "November is the last month");
    let late = Case { today: Some(date("2027-11-08")), done: Some(StepKind::LastCheck), ..case };
    let short = |of: &Remark| matches!(of, Remark::WaterShort { from, .. } if *from == date("2027-12-01"));
    let plan = make(&late).unwrap();
    assert!(plan.remarks.iter().any(short), "{:#?}", plan.remarks);
}

/// Where the soil is not named it counts as loam; sand is watered every second day, clay every fourth.
#[test]
fn soil_tells_how_often_a_bed_is_watered_until_shoots_show() {
    let with = |soil| make(&Case { soil, ..farm(450.0) }).unwrap();
    let days = |soil| amount(&with(soil), Quantity::WateringDaysUntilShoots);
    assert_eq!([None, Some(Soil::Sand), Some(Soil::Loam), Some(Soil::Clay)].map(days), [3.0, 2.0, 3.0, 4.0]);
    // On 30 September, by hand: 0.5432 × 5.665 / 0.8 = 3.847 mm a day; for 15 m² and three days 173.1 L.
    assert_eq!(amount(&with(None), Quantity::WaterUntilShoots), 174.0);
    let reason = |soil| match why(&with(soil), Quantity::WateringDaysUntilShoots) {
        AmountReason::WateringUntilShoots { soil, days } => (*soil, *days),
        other => panic!("{other:?}"),
    };
    assert_eq!((reason(None), reason(Some(Soil::Clay))), (("unknown", 14.0), ("clay", 14.0)));
}

/// What there may be, in all its kinds.
#[derive(Debug, Clone)]
struct There {
    roots: u32,
    plants: u32,
    bed: f64,
    sand: f64,
    buckets: u32,
    litres: f64,
    stored: f64,
    people: u32,
    hours: f64,
}

fn there() -> impl Strategy<Value = There> {
    let at_hand = (0u32..120, 0u32..80, 0.0..40.0f64, 0.0..200.0f64);
    let more = (1u32..20, 0.0..400.0f64, 0.0..15_000.0f64, 1u32..6, 0.1..4.0f64);
    (at_hand, more).prop_map(|((roots, plants, bed, sand), (buckets, litres, stored, people, hours))| There {
        roots,
        plants,
        bed,
        sand,
        buckets,
        litres,
        stored,
        people,
        hours,
    })
}

impl There {
    fn case(&self, area: f64) -> Case {
        let at_hand = AtHand {
            roots: Some(self.roots),
            plants: Some(self.plants),
            bed: Some(SquareMetres(self.bed)),
            sand: Some(Litres(self.sand)),
            spacing: RIDGES,
        };
        Case {
            at_hand: Some(at_hand),
            containers: vec![bucket(Some(self.buckets))],
            source: Some(Source {
                name: "the well".to_owned(),
                daily: Some([Litres(self.litres); 12]),
                stored: Some(Litres(self.stored)),
            }),
            hands: Some(Hands { people: self.people, hours_per_day: self.hours }),
            ..farm(area)
        }
    }
}

/// What the plan stores and what its cuts plant.
fn planted(planner: &mut Planner, case: &Case) -> (f64, f64, f64) {
    let plan = planner.plan(case).unwrap();
    let cuts: f64 = plan.now.cuts.iter().map(|cut| cut.area.0).sum();
    let of = |quantity| amount(&plan, quantity);
    (of(Quantity::RootsToStore), cuts, of(Quantity::CuttingsOverSeason))
}

proptest! {
    /// More of anything never allows less field, with a field and without; and everything fits into what there is.
    #[test]
    fn more_never_allows_less(
        there in there(), area in 10.0..800.0f64, which in 0usize..9, more in 1.0..3.0f64, forward in any::<bool>(),
    ) {
        let larger = |value: u32| (f64::from(value) * more).ceil() as u32;
        let mut richer = there.clone();
        match which {
            0 => richer.roots = larger(there.roots),
            1 => richer.plants = larger(there.plants),
            2 => richer.bed *= more,
            3 => richer.sand *= more,
            4 => richer.buckets = larger(there.buckets),
            5 => richer.litres *= more,
            6 => richer.stored *= more,
            7 => richer.people = larger(there.people),
            _ => richer.hours *= more,
        }
        let case = |there: &There| {
            let case = there.case(area);
            Case { field: if forward { None } else { case.field }, ..case }
        };
        let mut planner = Planner::default();
        let (less, more) = (planted(&mut planner, &case(&there)), planted(&mut planner, &case(&richer)));
        prop_assert!(more.0 >= less.0 && more.1 >= less.1 - 0.31 && more.2 >= less.2, "{less:?} {more:?}");

        let plan = planner.plan(&case(&there)).unwrap();
        let of = |quantity| plan.now.amounts.get(quantity).unwrap_or_default();
        prop_assert!(of(Quantity::RootsToStore) <= f64::from(there.roots));
        prop_assert!(of(Quantity::PlantsToMark) <= f64::from(there.plants));
        prop_assert!(of(Quantity::BedArea) <= there.bed + 1e-9);
        prop_assert!(of(Quantity::SandLitres) < there.sand + 1.0);
        prop_assert!(of(Quantity::Containers) <= f64::from(there.buckets));
        prop_assert!(of(Quantity::WaterPerDay) <= there.litres.max(0.0));
        prop_assert!(of(Quantity::WaterTotal) <= there.stored);
        let minutes = f64::from(there.people) * there.hours * 60.0;
        prop_assert!(of(Quantity::TripsPerDay) * 10.0 <= minutes + 1e-6);
        let short = |of: &Remark| matches!(of, Remark::WaterShort { .. } | Remark::WaterHeavy { .. });
        prop_assert!(!plan.remarks.iter().any(short), "{:?}", plan.remarks);
    }

    /// Held against the store as it is filled: so many roots take no more than the sand, and no larger number does that
    /// either.
    #[test]
    fn no_more_roots_than_the_sand_covers(sand in 0.0..300.0f64, wanted in 0u32..120, counts in (1u32..4, 1u32..4)) {
        let a = Assumptions::default();
        let basin = Container {
            shape: Shape::Round { top: Centimetres(52.0), bottom: Centimetres(40.0) },
            depth: Centimetres(38.0),
            count: Some(counts.1),
        };
        let containers = [bucket(Some(counts.0)), basin];
        let mut packings = Packings::default();
        let covered = covered_by(Litres(sand), wanted, &containers, &a, &mut packings);
        let takes = |roots, packings: &mut Packings| {
            let store = fill(roots, &containers, &a, packings);
            (store.left_over == 0).then(|| store.sand().0)
        };
        prop_assert!(takes(covered, &mut packings).is_some_and(|litres| litres <= sand + 1e-6));
        for roots in covered + 1..=wanted {
            prop_assert!(takes(roots, &mut packings).is_none_or(|litres| litres > sand - 1e-6), "{roots} of {wanted}");
        }
    }
}
