//! Dates and amounts, each with its reason. Pure computation: the same case
//! gives the same plan, on any machine and at any time.

mod defaults;
pub mod field;
pub mod multiply;
pub mod progress;
pub mod season;
pub mod seedbed;
pub mod store;
mod timeline;
mod units;

pub use defaults::{Assumptions, Basis, Default};
pub use timeline::{DateSpan, Step, Timeline, Topic, lay_out};
pub use units::{
    Celsius, Centimetres, Kilograms, Kilopascals, Litres, Megajoules, Metres, MetresPerSecond, Millimetres,
    SquareMetres,
};

use chrono::NaiveDate;
use serde::ser::SerializeMap;
use serde::{Serialize, Serializer};

use crate::finding::Finding;
use field::{Field, Spacing};
use multiply::Sizing;
use season::{Rains, Risk};
use seedbed::{Bed, Climate};
use store::{Container, Shape, Store};

/// Whom a case is about.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Kind {
    /// One farm.
    Farm,
    /// A group with one field and one bed.
    Group {
        /// Its members.
        members: u32,
    },
    /// An area with the same rains; amounts are for a round number of roots.
    Zone,
}

/// Where it is.
#[derive(Debug, Clone, PartialEq)]
pub struct Place {
    /// Name.
    pub name: String,
    /// Degrees, south negative.
    pub latitude: f64,
    /// Degrees, west negative.
    pub longitude: f64,
    /// Above the sea.
    pub elevation: Metres,
}

/// What is known of a farm, a group or a rain zone.
#[derive(Debug, Clone, PartialEq)]
pub struct Case {
    /// Its name.
    pub name: String,
    /// Whom it is about.
    pub kind: Kind,
    /// Where.
    pub place: Place,
    /// What is known of the rains.
    pub rains: Rains,
    /// Which part of the onsets times the plan.
    pub risk: Risk,
    /// The day the old field is dug.
    pub harvest: NaiveDate,
    /// The field to plant; a zone has none.
    pub field: Option<Field>,
    /// What the roots are sized for.
    pub sizing: Sizing,
    /// How sure, in percent, the cuttings are to suffice; the usual losses count where nothing is said.
    pub sure_percent: Option<f64>,
    /// What the checks of the store have found, by date.
    pub kept: Vec<progress::Check>,
    /// Containers at hand; empty where the case names none.
    pub containers: Vec<Container>,
    /// Temperatures, where the case gives them.
    pub climate: Option<Climate>,
    /// Language tag, where the case names one.
    pub language: Option<String>,
    /// The day it is, where the case says.
    pub today: Option<NaiveDate>,
    /// Defaults, and what the case puts in their place.
    pub assumptions: Assumptions,
}

/// What an amount measures.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Quantity {
    /// Cuttings that plant the field once.
    CuttingsNeeded,
    /// Cuttings of the first cut, losses in store taken off.
    CuttingsAtFirstCut,
    /// Cuttings over the whole bed season.
    CuttingsOverSeason,
    /// Roots to put into sand.
    RootsToStore,
    /// Plants to mark before harvest.
    PlantsToMark,
    /// Plants each member of a group marks.
    PlantsPerMember,
    /// Healthy roots at the last check.
    RootsLeft,
    /// Roots to be expected in the bed after the last check.
    RootsAtBed,
    /// Cuttings they give at the first cut.
    CuttingsExpected,
    /// Cuttings that are short of the field at the first cut.
    CuttingsShort,
    /// Roots in one layer.
    RootsPerLayer,
    /// Layers in the fullest container.
    Layers,
    /// Containers.
    Containers,
    /// Sand, litres.
    SandLitres,
    /// Sand, kilograms.
    SandKilograms,
    /// Loads in which the sand is carried.
    SandLoads,
    /// Bed area.
    BedArea,
    /// Longer side of the bed.
    BedLength,
    /// Shorter side of the bed.
    BedWidth,
    /// Litres of water a day.
    WaterPerDay,
    /// Jerrycans of water a day.
    JerrycansPerDay,
}

impl Quantity {
    /// The quantity's name in plans.
    pub fn name(self) -> &'static str {
        match self {
            Quantity::CuttingsNeeded => "cuttings_needed",
            Quantity::CuttingsAtFirstCut => "cuttings_at_first_cut",
            Quantity::CuttingsOverSeason => "cuttings_over_season",
            Quantity::RootsToStore => "roots_to_store",
            Quantity::PlantsToMark => "plants_to_mark",
            Quantity::PlantsPerMember => "plants_per_member",
            Quantity::RootsLeft => "roots_left",
            Quantity::RootsAtBed => "roots_at_bed",
            Quantity::CuttingsExpected => "cuttings_expected",
            Quantity::CuttingsShort => "cuttings_short",
            Quantity::RootsPerLayer => "roots_per_layer",
            Quantity::Layers => "layers",
            Quantity::Containers => "containers",
            Quantity::SandLitres => "sand_l",
            Quantity::SandKilograms => "sand_kg",
            Quantity::SandLoads => "sand_loads",
            Quantity::BedArea => "bed_area_m2",
            Quantity::BedLength => "bed_length_m",
            Quantity::BedWidth => "bed_width_m",
            Quantity::WaterPerDay => "water_l_per_day",
            Quantity::JerrycansPerDay => "jerrycans_per_day",
        }
    }

    /// Its unit, or what is counted.
    pub fn unit(self) -> &'static str {
        match self {
            Quantity::SandLitres => Litres::SYMBOL,
            Quantity::SandKilograms => Kilograms::SYMBOL,
            Quantity::BedArea => SquareMetres::SYMBOL,
            Quantity::BedLength | Quantity::BedWidth => Metres::SYMBOL,
            Quantity::WaterPerDay => "L/day",
            Quantity::JerrycansPerDay => "jerrycans/day",
            Quantity::CuttingsNeeded | Quantity::CuttingsAtFirstCut | Quantity::CuttingsOverSeason => {
                "cuttings"
            }
            Quantity::CuttingsExpected | Quantity::CuttingsShort => "cuttings",
            Quantity::RootsToStore | Quantity::RootsPerLayer | Quantity::RootsLeft | Quantity::RootsAtBed => {
                "roots"
            }
            Quantity::PlantsToMark | Quantity::PlantsPerMember => "plants",
            Quantity::Layers => "layers",
            Quantity::Containers => "containers",
            Quantity::SandLoads => "loads",
        }
    }
}

/// An amount with its reason.
#[derive(Debug, Clone, PartialEq)]
pub struct Amount {
    /// What it measures.
    pub quantity: Quantity,
    /// How much, in the quantity's unit.
    pub value: f64,
    /// Why so much.
    pub why: String,
}

/// The amounts of a plan, in the order in which they follow from each other.
#[derive(Debug, Clone, PartialEq, std::default::Default)]
pub struct Amounts(pub Vec<Amount>);

impl Amounts {
    /// The value of a quantity; `None` where the plan has none.
    pub fn get(&self, quantity: Quantity) -> Option<f64> {
        self.0.iter().find(|amount| amount.quantity == quantity).map(|amount| amount.value)
    }
}

impl Serialize for Amounts {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        #[derive(Serialize)]
        struct Entry<'a> {
            #[serde(serialize_with = "plain_number")]
            value: f64,
            unit: &'a str,
            why: &'a str,
        }
        let mut map = serializer.serialize_map(Some(self.0.len()))?;
        for amount in &self.0 {
            let entry = Entry { value: amount.value, unit: amount.quantity.unit(), why: &amount.why };
            map.serialize_entry(amount.quantity.name(), &entry)?;
        }
        map.end()
    }
}

/// Whole numbers without ".0", as a reader of JSON expects of counts.
fn plain_number<S: Serializer>(value: &f64, serializer: S) -> Result<S::Ok, S::Error> {
    if value.fract() == 0.0 && value.abs() < 9e15 {
        serializer.serialize_i64(*value as i64)
    } else {
        serializer.serialize_f64(*value)
    }
}

/// A value a plan rests on.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct UsedDefault {
    /// Name, as in a case's `[assumptions]`.
    pub name: &'static str,
    /// The value used.
    #[serde(serialize_with = "plain_number")]
    pub value: f64,
    /// Its unit.
    pub unit: &'static str,
    /// How well it is founded.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub basis: Option<Basis>,
    /// Where it comes from.
    pub source: &'static str,
}

/// A season's plan.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Plan {
    /// Name and version of this layout.
    pub schema: &'static str,
    /// The case's name.
    pub name: String,
    /// The place's name.
    pub place: String,
    /// The day the plan was asked for, where it was said.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub today: Option<NaiveDate>,
    /// The day the rains are expected.
    pub rains: NaiveDate,
    /// Why then.
    pub rains_why: String,
    /// The steps in order.
    pub steps: Vec<Step>,
    /// The amounts.
    pub amounts: Amounts,
    /// The checks of the store beside what was to be expected.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub kept: Vec<progress::Judged>,
    /// What somebody should know or look at.
    pub findings: Vec<Finding>,
    /// The values it rests on.
    pub defaults: Vec<UsedDefault>,
    /// The filled containers, for drawings.
    #[serde(skip)]
    pub store: Store,
    /// The assumptions, for wordings.
    #[serde(skip)]
    pub assumptions: Assumptions,
    /// Whom it is for.
    #[serde(skip)]
    pub kind: Kind,
}

impl Plan {
    /// The layout's name and version.
    pub const SCHEMA: &'static str = "kabla-plan/1";

    /// The steps of a topic, in order of date.
    pub fn steps_of(&self, topic: Topic) -> impl Iterator<Item = &Step> {
        self.steps.iter().filter(move |step| step.topic == topic)
    }
}

/// Computes the plan of a case.
///
/// # Errors
/// Findings, where the case leaves no plan to make: no onset in the record,
/// or no root fits into any container.
pub fn make(case: &Case) -> Result<Plan, Vec<Finding>> {
    let a = &case.assumptions;
    let mut findings = Vec::new();
    let Some(rains) = season::expect(&case.rains, case.risk, case.harvest, a) else {
        return Err(vec![
            Finding::error(
                "no year of the rainfall record has an onset by the chosen rule, so no date can be set",
            )
            .field("season")
            .hint("choose another rule or window, or give rains_begin"),
        ]);
    };
    findings.extend(remarks_on_rains(&case.rains));
    let timeline = lay_out(case.harvest, rains, a);
    findings.extend(timeline.findings);
    let mut amounts = Amounts::default();
    let roots = size(case, &mut amounts, &mut findings);
    let store = contain(case, roots, &mut amounts, &mut findings)?;
    let (kept, in_bed) = replan(case, roots, &timeline.steps, &mut amounts, &mut findings);
    water(case, in_bed, &timeline.steps, &mut amounts, &mut findings);
    Ok(Plan {
        schema: Plan::SCHEMA,
        name: case.name.clone(),
        place: case.place.name.clone(),
        today: case.today,
        rains: rains.onset,
        rains_why: season::reason(&case.rains, case.risk, a),
        steps: timeline.steps,
        amounts,
        kept,
        findings,
        defaults: used(a),
        store,
        assumptions: a.clone(),
        kind: case.kind,
    })
}

/// From what the checks found to what the bed will give, and what can still be
/// done. Returns the judged checks, and the roots that the bed is made for.
fn replan(
    case: &Case,
    roots: u32,
    steps: &[Step],
    amounts: &mut Amounts,
    findings: &mut Vec<Finding>,
) -> (Vec<progress::Judged>, u32) {
    let a = &case.assumptions;
    let day = |topic| steps.iter().find(|step| step.topic == topic).map(|step| step.when.from);
    let (Some(filled), Some(bed)) = (day(Topic::FillContainer), day(Topic::PlantBed)) else {
        return (Vec::new(), roots);
    };
    let Some(progress) = progress::assess(&case.kept, (filled, roots), bed, a) else {
        return (Vec::new(), roots);
    };
    findings.extend(progress.findings);
    let mut add = |quantity, value: u32, why: String| {
        amounts.0.push(Amount { quantity, value: f64::from(value), why });
    };
    let first = units::whole_down(f64::from(progress.at_bed) * a.cuttings_per_root_first_cut);
    let season = units::whole_down(f64::from(progress.at_bed) * multiply::per_survivor(Sizing::BedSeason, a));
    add(Quantity::RootsLeft, progress.left, "healthy at the last check".to_owned());
    add(
        Quantity::RootsAtBed,
        progress.at_bed,
        format!("what is left of {} on {bed}, losses as usual or as so far", progress.left),
    );
    add(
        Quantity::CuttingsExpected,
        first,
        format!(
            "{} roots, about {} cuttings from each at the first cut",
            progress.at_bed, a.cuttings_per_root_first_cut
        ),
    );
    if let Some(field) = &case.field {
        let needed = field.cuttings();
        let short = needed.saturating_sub(first);
        add(
            Quantity::CuttingsShort,
            short,
            format!("{needed} needed for the whole field, {first} expected at the first cut"),
        );
        let area = |cuttings: u32| f64::from(cuttings) / field.spacing.density();
        if short == 0 {
            findings.push(
                Finding::note(format!(
                    "enough: the first cut plants the whole field, with about {} cuttings to spare",
                    first - needed
                ))
                .field("kept"),
            );
        } else {
            let rest = if season >= needed {
                format!(
                    "wait {} to {} days for the next cut, which plants the rest",
                    a.next_cut_days_first, a.next_cut_days_last
                )
            } else {
                format!(
                    "wait {} to {} days for later cuts, which leave about {} short",
                    a.next_cut_days_first,
                    a.next_cut_days_last,
                    needed - season
                )
            };
            findings.push(
                Finding::warning(format!("the first cut will be about {short} cuttings short of the {needed} for the whole field"))
                    .field("kept")
                    .hint(format!("plant {:.0} m² at the onset instead of {:.0} m²; or {rest}; or get about {short} vines from neighbours or a vine grower", area(first), field.area.0)),
            );
        }
    }
    (progress.checks, progress.at_bed)
}

fn used(assumptions: &Assumptions) -> Vec<UsedDefault> {
    let default_of = |entry: &Default| {
        let value = assumptions.get(entry.name)?;
        let kept = value == entry.value;
        Some(UsedDefault {
            name: entry.name,
            value,
            unit: entry.unit,
            basis: kept.then_some(entry.basis),
            source: if kept { entry.source } else { "the case" },
        })
    };
    Assumptions::TABLE.iter().filter_map(default_of).collect()
}

fn remarks_on_rains(rains: &Rains) -> Vec<Finding> {
    let Rains::Observed(observed) = rains else { return Vec::new() };
    let mut findings = Vec::new();
    let of = |wanted: season::Onset| -> Vec<String> {
        let years = observed.years.iter().filter(|year| year.onset == wanted);
        years.map(|year| year.year.to_string()).collect()
    };
    let none = of(season::Onset::None);
    if !none.is_empty() {
        findings.push(
            Finding::warning(format!(
                "in {} of {} years the rains never began by this rule ({}); the percentiles leave them out",
                none.len(),
                observed.judged(),
                none.join(", ")
            ))
            .field("season.rainfall_record")
            .hint("in such a year vines planted on the first rain may die: keep some roots or a watered bed back"),
        );
    }
    let unknown = of(season::Onset::Unknown);
    if !unknown.is_empty() {
        findings.push(
            Finding::warning(format!("missing days leave the onset unknown in {}", unknown.join(", ")))
                .field("season.rainfall_record")
                .hint("complete the record, or be aware that these years are left out"),
        );
    }
    findings
}

/// From the field to cuttings, roots and plants.
fn size(case: &Case, amounts: &mut Amounts, findings: &mut Vec<Finding>) -> u32 {
    let a = &case.assumptions;
    let mut add = |quantity, value: f64, why: String| amounts.0.push(Amount { quantity, value, why });
    let roots = match &case.field {
        Some(field) => {
            let needed = field.cuttings();
            let spaced = match field.spacing {
                Spacing::Ridges { between, along } => format!("one every {along} on ridges {between} apart"),
                Spacing::Mounds { between, cuttings } => {
                    format!("{cuttings} on each mound, mounds {between} apart")
                }
            };
            add(Quantity::CuttingsNeeded, f64::from(needed), format!("{} of field, {spaced}", field.area));
            let usual = multiply::roots_for(needed, case.sizing, a);
            let sure = case.sure_percent.and_then(|percent| {
                Some((percent, multiply::roots_to_be_sure(needed, percent / 100.0, case.sizing, a)?))
            });
            if let (Some(percent), None) = (case.sure_percent, sure) {
                findings.push(
                    Finding::warning(format!(
                        "no number of roots makes {percent} % sure with so wide a spread of survival"
                    ))
                    .field("field.sure_percent")
                    .hint("ask for less, or give a smaller survival_spread in [assumptions]"),
                );
            }
            let roots = sure.map_or(usual, |(_, roots)| roots);
            let why = match case.sizing {
                Sizing::BedSeason => format!(
                    "{needed} cuttings; a stored root gives about {} over the bed season, usual losses included",
                    a.cuttings_per_root_season
                ),
                Sizing::FirstPlanting => format!(
                    "{needed} cuttings at the first cut; about {} of 100 roots survive, each gives about {}",
                    (a.survival_share * 100.0).round(),
                    a.cuttings_per_root_first_cut
                ),
            };
            let why = match sure {
                Some((percent, _)) => format!(
                    "enough in {percent} of 100 such seasons, where {usual} are enough with the usual losses: {why}; survival differs by about {} of 100 roots from season to season",
                    (a.survival_spread * 100.0).round()
                ),
                None => why,
            };
            add(Quantity::RootsToStore, f64::from(roots), why);
            roots
        }
        None => {
            let roots = units::whole_up(a.zone_roots);
            let season = f64::from(multiply::cuttings_of_season(roots, a));
            let why =
                format!("what {roots} roots give over the bed season; each farm scales it to its field");
            add(Quantity::CuttingsNeeded, season, why);
            add(
                Quantity::RootsToStore,
                f64::from(roots),
                "the round number a zone's plan is made for".to_owned(),
            );
            roots
        }
    };
    let first = multiply::cuttings_of_first_cut(roots, a);
    add(
        Quantity::CuttingsAtFirstCut,
        f64::from(first),
        format!(
            "{roots} roots, about {} of 100 survive, about {} cuttings from each at the first cut",
            (a.survival_share * 100.0).round(),
            a.cuttings_per_root_first_cut
        ),
    );
    add(
        Quantity::CuttingsOverSeason,
        f64::from(multiply::cuttings_of_season(roots, a)),
        format!(
            "{roots} roots stored, about {} cuttings from each over the bed season",
            a.cuttings_per_root_season
        ),
    );
    let plants = multiply::plants_for(roots, a);
    add(
        Quantity::PlantsToMark,
        f64::from(plants),
        format!("a plant gives about {} roots fit to store", a.roots_per_plant),
    );
    if let Kind::Group { members } = case.kind {
        add(
            Quantity::PlantsPerMember,
            f64::from(plants.div_ceil(members.max(1))),
            format!("{plants} plants shared among {members} members, rounded up"),
        );
    }
    if let Some(field) = &case.field {
        let needed = field.cuttings();
        // Once checks are known, what they say goes before what was expected.
        if first < needed && case.kept.is_empty() {
            let at_once = f64::from(first) / field.spacing.density();
            findings.push(
                Finding::note(format!(
                    "expect about {first} cuttings at the first cut, enough for {at_once:.0} m² of {:.0} m²; the rest of the field waits {} to {} days for the next cut",
                    field.area.0, a.next_cut_days_first, a.next_cut_days_last
                ))
                .field("field.sizing")
                .hint(format!(
                    "to plant the whole field at the onset, store {} roots (sizing = \"first-planting\")",
                    multiply::roots_for(needed, Sizing::FirstPlanting, a)
                )),
            );
        }
    }
    roots
}

/// From roots to containers and sand.
fn contain(
    case: &Case,
    roots: u32,
    amounts: &mut Amounts,
    findings: &mut Vec<Finding>,
) -> Result<Store, Vec<Finding>> {
    let a = &case.assumptions;
    let assumed;
    let containers = if case.containers.is_empty() {
        let width = Centimetres(a.container_width_cm);
        let depth = Centimetres(a.container_depth_cm);
        findings.push(
            Finding::note(format!(
                "no container named: straight basins {width} wide and {depth} deep are assumed"
            ))
            .field("container")
            .hint("measure the containers at hand and name them in the case"),
        );
        assumed = [Container { shape: Shape::Round { top: width, bottom: width }, depth, count: None }];
        assumed.as_slice()
    } else {
        case.containers.as_slice()
    };
    let store = store::fill(roots, containers, a);
    let Some(fullest) = store.filled.first() else {
        return Err(vec![
            Finding::error(format!(
                "no root fits: under {} cm of top sand and over {} cm of base sand a container must have room for at least one root {} mm × {} mm and {} cm of sand around it",
                a.top_sand_cm, a.base_sand_cm, a.root_length_mm, a.root_diameter_mm, a.root_gap_cm
            ))
            .field("container")
            .hint("use a deeper or wider container"),
        ]);
    };
    let mut add = |quantity, value: f64, why: String| amounts.0.push(Amount { quantity, value, why });
    add(
        Quantity::RootsPerLayer,
        f64::from(fullest.roots_per_layer()),
        format!(
            "roots lying flat with {} cm to each other and to the side, on the narrowest layer",
            a.root_gap_cm
        ),
    );
    add(
        Quantity::Layers,
        f64::from(fullest.layers),
        format!(
            "layers of roots between {} cm of sand below and {} cm on top",
            a.base_sand_cm, a.top_sand_cm
        ),
    );
    add(
        Quantity::Containers,
        f64::from(store.containers()),
        format!("for {} roots", roots - store.left_over),
    );
    let litres = units::round_up(store.sand().0, 1.0);
    add(Quantity::SandLitres, litres, "room of the containers up to the top sand, less the roots".to_owned());
    let mass = units::round_up(store.sand_mass(a).0, 1.0);
    add(Quantity::SandKilograms, mass, format!("loose dry sand, {} kg a litre", a.sand_density_kg_per_l));
    add(
        Quantity::SandLoads,
        f64::from(units::whole_up(mass / a.load_limit_kg)),
        format!("loads of at most {} kg", a.load_limit_kg),
    );
    if store.left_over > 0 {
        let more = if store.capacity_of_last > 0 {
            format!("{} more of the last kind are needed", store.left_over.div_ceil(store.capacity_of_last))
        } else {
            "another container is needed".to_owned()
        };
        findings.push(
            Finding::warning(format!(
                "{} of {roots} roots have no room in the containers at hand; {more}",
                store.left_over
            ))
            .field("container")
            .hint("find more containers before the harvest, or plant less field"),
        );
    }
    Ok(store)
}

/// From roots to the bed and its water.
fn water(case: &Case, roots: u32, steps: &[Step], amounts: &mut Amounts, findings: &mut Vec<Finding>) {
    let a = &case.assumptions;
    let bed = Bed::for_roots(roots, a);
    let mut add = |quantity, value: f64, why: String| amounts.0.push(Amount { quantity, value, why });
    add(Quantity::BedArea, bed.area.0, format!("{} m² a root", a.bed_area_per_root_m2));
    add(Quantity::BedLength, bed.length.0, "the area over the width, rounded up".to_owned());
    add(Quantity::BedWidth, bed.width.0, format!("at most {} m", a.bed_width_m));
    let assumed;
    let climate = match &case.climate {
        Some(climate) => climate,
        None => {
            findings.push(
                Finding::note(format!(
                    "no temperatures given: {} °C by day and {} °C by night are assumed for the bed's water",
                    a.dry_season_tmax_c, a.dry_season_tmin_c
                ))
                .field("climate")
                .hint("give tmax_c and tmin_c in [climate]"),
            );
            assumed = Climate::constant(Celsius(a.dry_season_tmax_c), Celsius(a.dry_season_tmin_c));
            &assumed
        }
    };
    let span =
        steps.iter().find(|step| step.topic == Topic::WaterBed).map(|step| (step.when.from, step.when.to));
    if let Some(span) = span {
        let watering = seedbed::watering(&bed, &case.place, climate, span, a);
        add(
            Quantity::WaterPerDay,
            watering.daily.0,
            format!(
                "{} m² × {} × {:.1} mm a day (ET₀ by {}), {:.0} of 100 litres reach the roots, no rain counted on",
                bed.area.0,
                a.bed_kc,
                watering.et0.0,
                climate.method(),
                a.watering_efficiency * 100.0
            ),
        );
        add(
            Quantity::JerrycansPerDay,
            f64::from(watering.jerrycans),
            format!("jerrycans of {} L, rounded up", a.jerrycan_l),
        );
    }
}
