//! From a case to its plan.

use chrono::NaiveDate;

use super::field::{Field, Spacing};
use super::multiply::{self, Sizing, months_between};
use super::seedbed::{self, Bed, Climate, Period, Source};
use super::store::{self, Container, Packings, Shape, Store};
use super::timeline::{SeasonInputs, Step, WorkDone, lay_out};
use super::units::{round_up, whole_down, whole_up};
use super::{
    Amounts, Assumptions, Case, Celsius, Centimetres, DateSpan, Default, Finding, Kind, Plan, Quantity,
    SquareMetres, StepKind, UsedDefault, after, group, overdue, progress, season,
};
use crate::finding::Code;
use season::Rains;

/// Makes plans, and keeps what they share: a layer of one container is packed once for all of them.
#[derive(Debug, std::default::Default)]
pub struct Planner {
    packings: Packings,
}

/// Computes the plan of one case.
///
/// ```
/// use kabla::plan::{self, Quantity};
///
/// # let no_files = |_: &str| Err(std::io::Error::from(std::io::ErrorKind::NotFound));
/// # let (case, _) = kabla::case::read("farm.toml", kabla::case::Starter::Farm.text(), &no_files)?;
/// let plan = plan::make(&case)?;
/// assert_eq!(plan.amounts.get(Quantity::RootsToStore), Some(40.0));
/// # Ok::<(), Vec<kabla::finding::Finding>>(())
/// ```
///
/// # Errors
/// As [`Planner::plan`].
pub fn make(case: &Case) -> Result<Plan, Vec<Finding>> {
    Planner::default().plan(case)
}

impl Planner {
    /// Computes the plan of a case.
    ///
    /// # Errors
    /// Findings, where the case leaves no plan to make: no onset in the record,
    /// or no root fits into any container.
    pub fn plan(&mut self, case: &Case) -> Result<Plan, Vec<Finding>> {
        let a = &case.assumptions;
        let Some(rains) = season::expect(&case.rains, case.risk, case.harvest, a) else {
            return Err(vec![
                Finding::error(
                    Code::PLAN,
                    "no year of the rainfall record has an onset by the chosen rule, so no date can be set",
                )
                .field("season")
                .hint("choose another rule or window, or give rains_begin"),
            ]);
        };
        let mut findings = remarks_on_rains(&case.rains);
        let inputs = SeasonInputs {
            harvest: DateSpan::new(case.harvest, last_harvest(case)),
            rains,
            began: case.rains_began,
            maturity: case.variety.days(a),
            spread: case.kind == Kind::Zone,
            work_done: None,
        };
        let planned = lay_out(&inputs, a);
        let work_done = case.today.zip(case.done).map(|(today, done)| WorkDone { today, done: Some(done) });
        let now = match work_done {
            Some(_) => lay_out(&SeasonInputs { work_done, ..inputs }, a),
            None => planned.clone(),
        };
        let first_day = |steps: &[Step], kind| {
            steps.iter().find(|step| step.kind == kind).map_or(case.harvest, |step| step.when.from)
        };
        // Survival is not known to the week: it is counted in whole months. Most losses come early,
        // so a storage shorter than that of the evidence counts as long.
        let filled = first_day(&planned.steps, StepKind::FillContainer);
        let months = months_between(filled, first_day(&planned.steps, StepKind::PlantBed)).round();
        let months = months.max(a.survival_months);

        let mut amounts = Amounts(Vec::with_capacity(32));
        let demand = Demand::of(case);
        let sized = Sized::of(case, demand, months, &mut amounts, &mut findings);
        let store = self.contain(case, sized.roots, &mut amounts, &mut findings)?;
        let overdue = overdue_steps(case, &inputs, &planned.steps, sized.first, &mut findings);
        let in_store = (first_day(&now.steps, StepKind::FillContainer), sized.roots);
        let bed_day = first_day(&now.steps, StepKind::PlantBed);
        let (store_checks, in_bed) =
            replan(case, in_store, bed_day, sized.demand, &mut amounts, &mut findings);
        let bed = Bed::for_roots(in_bed.unwrap_or(sized.roots), a);
        let span = |kind| {
            let step = now.steps.iter().find(|step| step.kind == kind);
            step.map_or(DateSpan::day(case.harvest), |step| step.when)
        };
        let water = water(case, &bed, span(StepKind::WaterBed), &mut amounts, &mut findings);
        findings.extend(now.findings);
        let cutting = span(StepKind::CutForPlanting);
        let expected = |quantity, otherwise| amounts.get(quantity).map_or(otherwise, whole_down);
        let first = expected(Quantity::CuttingsExpected, sized.first_now(&overdue));
        let season_cuttings = in_bed.map_or(sized.season, |_| {
            let ratio = multiply::per_sprouted(Sizing::BedSeason, a)
                / multiply::per_sprouted(Sizing::FirstPlanting, a);
            whole_down(f64::from(first) * ratio)
        });
        let area = sized.demand.map(|demand| demand.area);
        let peak = water.iter().map(|period| period.daily.0).fold(0.0, f64::max);
        let by_field = match case.kind {
            Kind::Zone if bed.area.0 > 0.0 => group::by_field(
                &case.field_sizes,
                case.spacing(),
                (case.sizing, months),
                peak / bed.area.0,
                a,
            ),
            _ => Vec::new(),
        };
        Ok(Plan {
            schema: Plan::SCHEMA,
            name: case.name.clone(),
            place: case.place.name.clone(),
            today: case.today,
            rains: case.rains_began.unwrap_or(rains.onset),
            rains_why: match case.rains_began {
                Some(_) => format!("they have begun; they were expected on {}", rains.onset),
                None => season::reason(&case.rains, case.risk, a),
            },
            overdue,
            cuts: multiply::cuts(cutting, (first, season_cuttings), case.spacing().density(), a),
            harvest: after::harvest(cutting, area, &case.variety, a),
            vitamin_a: after::vitamin_a(&case.variety, a),
            farms: group::shares(&case.farms, (sized.roots, sized.plants), a),
            by_field,
            planting_delays: match &case.rains {
                Rains::Observed(observed) => observed.planting_delays.clone(),
                Rains::Usual(_) | Rains::On(_) => Vec::new(),
            },
            steps: now.steps,
            amounts,
            containers: store.filled,
            bed,
            water,
            store_checks,
            findings,
            defaults: used(a),
            assumptions: a.clone(),
            kind: case.kind,
        })
    }

    /// From roots to containers and sand.
    fn contain(
        &mut self,
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
                Finding::note(
                    Code::PLAN,
                    format!("no container named: straight basins {width} wide and {depth} deep are assumed"),
                )
                .field("container")
                .hint("measure the containers at hand and name them in the case"),
            );
            assumed = [Container { shape: Shape::Round { top: width, bottom: width }, depth, count: None }];
            assumed.as_slice()
        } else {
            case.containers.as_slice()
        };
        let store = store::fill(roots, containers, a, &mut self.packings);
        if roots == 0 {
            return Ok(store);
        }
        let Some(first) = store.filled.first() else {
            return Err(vec![no_root_fits(a)]);
        };
        let lowest = first.layers.first().map_or(0, store::Layer::capacity);
        amounts.add(
            Quantity::RootsPerLayer,
            lowest,
            format!(
                "roots lying flat with {} cm to each other and to the side, in the lowest layer",
                a.root_gap_cm
            ),
        );
        let topmost = first.layers.last().map_or(0, store::Layer::capacity);
        if topmost != lowest {
            amounts.add(
                Quantity::RootsInTopLayer,
                topmost,
                "when it is full: the container has another width there",
            );
        }
        amounts.add(
            Quantity::Layers,
            first.layers.len() as u32,
            format!(
                "layers of roots between {} cm of sand below and {} cm on top",
                a.base_sand_cm, a.top_sand_cm
            ),
        );
        amounts.add(
            Quantity::Containers,
            store.containers(),
            format!("for {} roots", roots - store.left_over),
        );
        amounts.add(
            Quantity::Lining,
            round_up(store.lining().0, 0.1),
            "paper on bottom and sides up to the top sand, overlaps not counted",
        );
        let litres = round_up(store.sand().0, 1.0);
        amounts.add(
            Quantity::SandLitres,
            litres,
            "room of the containers up to the top sand, less the roots",
        );
        let mass = round_up(store.sand_mass(a).0, 1.0);
        amounts.add(
            Quantity::SandKilograms,
            mass,
            format!("loose dry sand, {} kg a litre", a.sand_density_kg_per_l),
        );
        amounts.add(
            Quantity::SandLoads,
            whole_up(mass / a.load_limit_kg),
            format!("loads of at most {} kg", a.load_limit_kg),
        );
        if store.left_over > 0 {
            let more = if store.capacity_of_last > 0 {
                let count = store.left_over.div_ceil(store.capacity_of_last);
                format!("{count} more of the last kind are needed")
            } else {
                "another container is needed".to_owned()
            };
            findings.push(
                Finding::warning(
                    Code::PLAN,
                    format!(
                        "{} of {roots} roots have no room in the containers at hand; {more}",
                        store.left_over
                    ),
                )
                .field("container")
                .hint("find more containers before the harvest, or plant less field"),
            );
        }
        Ok(store)
    }
}

fn no_root_fits(a: &Assumptions) -> Finding {
    Finding::error(Code::PLAN, format!(
        "no root fits: under {} cm of top sand and over {} cm of base sand a container must have room for at least one root {} mm × {} mm and {} cm of sand around it",
        a.top_sand_cm, a.base_sand_cm, a.root_length_mm, a.root_diameter_mm, a.root_gap_cm
    ))
    .field("container")
    .hint("use a deeper or wider container")
}

/// The last day of the harvest: in a zone nobody digs on the same day.
fn last_harvest(case: &Case) -> NaiveDate {
    let usual = || match case.kind {
        Kind::Zone => {
            let days = case.assumptions.zone_span_days.round().max(1.0) as u64 - 1;
            case.harvest.checked_add_days(chrono::Days::new(days)).unwrap_or(case.harvest)
        }
        Kind::Farm | Kind::Group { .. } => case.harvest,
    };
    case.harvest_until.unwrap_or_else(usual).max(case.harvest)
}

/// What is to be planted.
#[derive(Debug, Clone, Copy)]
struct Demand {
    cuttings: u32,
    area: SquareMetres,
}

impl Demand {
    fn of(case: &Case) -> Option<Demand> {
        let mut demand = Demand { cuttings: 0, area: SquareMetres(0.0) };
        let mut any = false;
        for field in case.fields() {
            demand.cuttings = demand.cuttings.saturating_add(field.cuttings_with_gaps(&case.assumptions));
            demand.area = demand.area + field.area;
            any = true;
        }
        any.then_some(demand)
    }

    /// The field that so many of its cuttings plant.
    fn planted_by(&self, cuttings: u32) -> f64 {
        self.area.0 * (f64::from(cuttings) / f64::from(self.cuttings.max(1))).min(1.0)
    }
}

/// Roots and plants, and the cuttings they give.
struct Sized {
    roots: u32,
    plants: u32,
    first: u32,
    season: u32,
    demand: Option<Demand>,
}

impl Sized {
    /// From the field back to roots and plants; from what is at hand forward to the field.
    fn of(
        case: &Case,
        demand: Option<Demand>,
        months: f64,
        amounts: &mut Amounts,
        findings: &mut Vec<Finding>,
    ) -> Sized {
        let a = &case.assumptions;
        let limit = Limit::of(case);
        let (roots, demand) = match (demand, &limit) {
            (Some(demand), _) => {
                explain_field(case, demand, amounts);
                let (wanted, why) = wanted_roots(case, demand.cuttings, months, findings);
                match &limit {
                    Some(limit) if limit.roots < wanted => {
                        limit.add_to(amounts);
                        let cuttings = multiply::cuttings_of(limit.roots, case.sizing, months, a);
                        findings.push(
                            Finding::warning(Code::PLAN, format!(
                                "{} allow {} roots to be stored, where the field wants {wanted}: their cuttings plant about {:.0} m² of {:.0} m²",
                                limit.what, limit.roots, demand.planted_by(cuttings), demand.area.0
                            ))
                            .field("at_hand")
                            .hint("plant less field, find more, or plan for cuttings from neighbours"),
                        );
                        (limit.roots, Some(demand))
                    }
                    _ => {
                        amounts.add(Quantity::RootsToStore, wanted, why);
                        (wanted, Some(demand))
                    }
                }
            }
            (None, Some(limit)) => {
                let cuttings = multiply::cuttings_of(limit.roots, case.sizing, months, a);
                let density = case.spacing().density() * (1.0 + a.gap_share);
                let area = SquareMetres((f64::from(cuttings) / density + 1e-9).floor());
                amounts.add(
                    Quantity::FieldArea,
                    area.0,
                    format!("what {cuttings} cuttings plant, {}", spaced(&case.spacing())),
                );
                amounts.add(
                    Quantity::CuttingsNeeded,
                    cuttings,
                    match case.sizing {
                        Sizing::BedSeason => format!("what {} roots give over the bed season", limit.roots),
                        Sizing::FirstPlanting => format!("what {} roots give at the first cut", limit.roots),
                    },
                );
                limit.add_to(amounts);
                if limit.roots == 0 {
                    findings.push(
                        Finding::warning(Code::PLAN, format!("{} allow no root to be stored", limit.what))
                            .field("at_hand")
                            .hint("find more plants or room, or get vines from neighbours at the onset"),
                    );
                }
                (limit.roots, Some(Demand { cuttings, area }))
            }
            (None, None) => {
                let roots = whole_up(a.zone_roots);
                let cuttings = multiply::cuttings_of(roots, Sizing::BedSeason, months, a);
                amounts.add(
                    Quantity::CuttingsNeeded,
                    cuttings,
                    format!("what {roots} roots give over the bed season; each farm scales it to its field"),
                );
                amounts.add(Quantity::RootsToStore, roots, "the round number a zone's plan is made for");
                (roots, None)
            }
        };
        let mut sized = Sized { roots, plants: 0, first: 0, season: 0, demand };
        sized.yielding(case, months, amounts);
        sized.remark(case, months, findings);
        sized
    }

    /// The cuttings of the first cut and of the season, each with its range, and the plants.
    fn yielding(&mut self, case: &Case, months: f64, amounts: &mut Amounts) {
        let a = &case.assumptions;
        let roots = self.roots;
        let left = |share: f64| multiply::surviving(share, months, a);
        let of_100 = (left(a.survival_share) * 100.0).round();
        let sprouting = if a.sprout_share < 1.0 {
            format!(", of these {:.0} of 100 sprout", a.sprout_share * 100.0)
        } else {
            String::new()
        };
        // With the losses at their most and at their least on record.
        let range = |cuttings: u32| {
            let with = |share: f64| {
                f64::from(whole_down(f64::from(cuttings) * left(share) / left(a.survival_share)))
            };
            (with(a.survival_low.min(a.survival_share)), with(a.survival_high.max(a.survival_share)))
        };
        self.first = multiply::cuttings_of(roots, Sizing::FirstPlanting, months, a);
        amounts.add_range(
            Quantity::CuttingsAtFirstCut,
            self.first,
            range(self.first),
            format!(
                "{roots} roots, about {of_100} of 100 survive {months} months{sprouting}, about {} cuttings from each at the first cut",
                a.cuttings_per_root_first_cut
            ),
        );
        self.season = multiply::cuttings_of(roots, Sizing::BedSeason, months, a);
        amounts.add_range(
            Quantity::CuttingsOverSeason,
            self.season,
            range(self.season),
            format!(
                "{roots} roots stored, about {:.1} cuttings from each over the bed season and {} cuts",
                multiply::per_stored(Sizing::BedSeason, months, a),
                a.cuts
            ),
        );
        let at_hand = case.at_hand.and_then(|at_hand| at_hand.plants);
        let needed = multiply::plants_for(roots, a);
        self.plants = at_hand.map_or(needed, |plants| needed.min(plants));
        let sick = if a.sick_share > 0.0 {
            format!("; about {:.0} of 100 are found sick and given up", a.sick_share * 100.0)
        } else {
            String::new()
        };
        amounts.add(
            Quantity::PlantsToMark,
            self.plants,
            format!("a plant gives about {} roots fit to store{sick}", a.roots_per_plant),
        );
        if let (Kind::Group { members }, true) = (case.kind, case.farms.is_empty()) {
            amounts.add(
                Quantity::PlantsPerMember,
                self.plants.div_ceil(members.max(1)),
                format!("{} plants shared among {members} members, rounded up", self.plants),
            );
        }
    }

    /// Says where the first cut does not plant the whole field.
    fn remark(&self, case: &Case, months: f64, findings: &mut Vec<Finding>) {
        let a = &case.assumptions;
        let Some(demand) = self.demand else { return };
        // Once checks are known, what they say goes before what was expected.
        if self.first >= demand.cuttings || !case.store_checks.is_empty() {
            return;
        }
        findings.push(
            Finding::note(Code::PLAN, format!(
                "expect about {} cuttings at the first cut, enough for {:.0} m² of {:.0} m²; the rest of the field waits {} to {} days for each later cut",
                self.first, demand.planted_by(self.first), demand.area.0, a.next_cut_days_first, a.next_cut_days_last
            ))
            .field("field.sizing")
            .hint(format!(
                "to plant the whole field at the onset, store {} roots (sizing = \"first-planting\")",
                multiply::roots_for(demand.cuttings, Sizing::FirstPlanting, months, a)
            )),
        );
    }

    /// What the first cut gives when work is known to be late.
    fn first_now(&self, overdue: &[overdue::Overdue]) -> u32 {
        let late = overdue.iter().filter(|step| step.certain);
        late.map(|step| step.cuttings_at_first_cut).fold(self.first, u32::min)
    }
}

/// What limits the roots, where the plan is counted forward.
struct Limit {
    roots: u32,
    what: &'static str,
    why: String,
}

impl Limit {
    fn of(case: &Case) -> Option<Limit> {
        let a = &case.assumptions;
        let at_hand = case.at_hand?;
        let roots = at_hand.roots.map(|roots| Limit {
            roots,
            what: "the roots at hand",
            why: "the roots at hand".to_owned(),
        });
        let plants = at_hand.plants.map(|plants| Limit {
            roots: multiply::roots_from(plants, a),
            what: "the plants at hand",
            why: format!("{plants} plants at hand, about {} roots fit to store from each", a.roots_per_plant),
        });
        let bed = at_hand.bed.map(|bed| Limit {
            roots: whole_down(bed.0 / a.bed_area_per_root_m2),
            what: "the sides of the bed",
            why: format!("a bed of {bed}, {} m² a root", a.bed_area_per_root_m2),
        });
        [roots, plants, bed].into_iter().flatten().min_by_key(|limit| limit.roots)
    }

    fn add_to(&self, amounts: &mut Amounts) {
        amounts.add(Quantity::RootsToStore, self.roots, self.why.as_str());
    }
}

fn spaced(spacing: &Spacing) -> String {
    match spacing {
        Spacing::Ridges { between, along } => format!("one every {along} on ridges {between} apart"),
        Spacing::Mounds { between, cuttings } => {
            format!("{cuttings} on each mound, mounds {between} apart")
        }
    }
}

/// Cuttings that plant the field, with rows and bundles.
fn explain_field(case: &Case, demand: Demand, amounts: &mut Amounts) {
    let a = &case.assumptions;
    let rows = case.field.as_ref().and_then(Field::rows);
    if let (Some(rows), Some(field)) = (rows, &case.field) {
        let (kind, between) = match field.spacing {
            Spacing::Ridges { between, .. } => ("ridges", between),
            Spacing::Mounds { between, .. } => ("rows of mounds", between),
        };
        amounts.add(
            Quantity::FieldRows,
            rows.count,
            format!("{kind} {between} apart along the longer side of the field"),
        );
        amounts.add(
            Quantity::CuttingsPerRow,
            rows.cuttings,
            format!("a row as long as the field, {}", spaced(&field.spacing)),
        );
    }
    let gaps = if a.gap_share > 0.0 {
        format!(", and {:.0} of 100 once more for gaps", a.gap_share * 100.0)
    } else {
        String::new()
    };
    let why = match case.farms.len() {
        0 => format!("{} of field, {}{gaps}", demand.area, spaced(&case.spacing())),
        farms => format!("the sum of {farms} farms with {} of field together{gaps}", demand.area),
    };
    amounts.add(Quantity::CuttingsNeeded, demand.cuttings, why);
    amounts.add(
        Quantity::Bundles,
        whole_up(f64::from(demand.cuttings) / a.cuttings_per_bundle),
        format!("bundles of {} cuttings", a.cuttings_per_bundle),
    );
}

/// The roots that a field wants, and why so many.
fn wanted_roots(case: &Case, needed: u32, months: f64, findings: &mut Vec<Finding>) -> (u32, String) {
    let a = &case.assumptions;
    let usual = multiply::roots_for(needed, case.sizing, months, a);
    let why = match case.sizing {
        Sizing::BedSeason => format!(
            "{needed} cuttings; a stored root gives about {:.1} over the bed season, usual losses included",
            multiply::per_stored(case.sizing, months, a)
        ),
        Sizing::FirstPlanting => format!(
            "{needed} cuttings at the first cut; about {} of 100 roots survive, each gives about {}",
            (multiply::surviving(a.survival_share, months, a) * 100.0).round(),
            a.cuttings_per_root_first_cut
        ),
    };
    let Some(percent) = case.confidence_percent else { return (usual, why) };
    match multiply::roots_for_confidence(needed, percent / 100.0, case.sizing, months, a) {
        Some(roots) => {
            let why = format!(
                "enough in {percent} of 100 such seasons, where {usual} are enough with the usual losses: {why}; survival differs by about {} of 100 roots from season to season",
                (a.survival_spread * 100.0).round()
            );
            (roots, why)
        }
        None => {
            findings.push(
                Finding::warning(
                    Code::PLAN,
                    format!("no number of roots makes {percent} % sure with so wide a spread of survival"),
                )
                .field("field.sure_percent")
                .hint("ask for less, or give a smaller survival_spread in [assumptions]"),
            );
            (usual, why)
        }
    }
}

/// The steps whose days have passed. What the checks of the store show done, is done.
fn overdue_steps(
    case: &Case,
    inputs: &SeasonInputs,
    planned: &[Step],
    first_cut: u32,
    findings: &mut Vec<Finding>,
) -> Vec<overdue::Overdue> {
    let Some(today) = case.today else { return Vec::new() };
    let certain = case.done.is_some();
    let shown = match case.store_checks.last() {
        Some(check) if check.sprouted.is_some() => Some(StepKind::LastCheck),
        Some(_) => Some(StepKind::FillContainer),
        None => None,
    };
    let done = case.done.max(shown);
    let overdue = overdue::find(inputs, planned, today, (done, certain), first_cut, &case.assumptions);
    if let Some(worst) = overdue.iter().filter(|step| step.certain).max_by_key(|step| step.days_later) {
        let names: Vec<_> = overdue.iter().map(|step| step.kind.name()).collect();
        let message =
            format!("not done when due: {}; the dates are counted anew from {today}", names.join(", "));
        let hint = format!("{}; this costs: {}", worst.still_possible, worst.cost());
        findings.push(Finding::warning(Code::PLAN, message).field("done").hint(hint));
    }
    overdue
}

/// From what the checks found to what the bed will give, and what can still be
/// done. Returns the judged checks, and the roots that the bed is made for, where checks are known.
fn replan(
    case: &Case,
    in_store: (NaiveDate, u32),
    bed: NaiveDate,
    demand: Option<Demand>,
    amounts: &mut Amounts,
    findings: &mut Vec<Finding>,
) -> (Vec<progress::Judged>, Option<u32>) {
    let a = &case.assumptions;
    let Some(progress) = progress::assess(&case.store_checks, in_store, bed, a) else {
        return (Vec::new(), None);
    };
    findings.extend(progress.findings);
    let give = |sizing| whole_down(f64::from(progress.sprouting) * multiply::per_sprouted(sizing, a));
    let (first, season) = (give(Sizing::FirstPlanting), give(Sizing::BedSeason));
    amounts.add(Quantity::RootsLeft, progress.left, "healthy at the last check");
    amounts.add(
        Quantity::RootsAtBed,
        progress.at_bed,
        format!("what is left of {} on {bed}, losses as usual or as so far", progress.left),
    );
    amounts.add(
        Quantity::CuttingsExpected,
        first,
        format!(
            "{} roots that sprout, about {} cuttings from each at the first cut",
            progress.sprouting, a.cuttings_per_root_first_cut
        ),
    );
    let Some(demand) = demand else { return (progress.checks, Some(progress.at_bed)) };
    let needed = demand.cuttings;
    let short = needed.saturating_sub(first);
    amounts.add(
        Quantity::CuttingsShort,
        short,
        format!("{needed} needed for the whole field, {first} expected at the first cut"),
    );
    if short == 0 {
        let spare = first - needed;
        let message =
            format!("enough: the first cut plants the whole field, with about {spare} cuttings to spare");
        findings.push(Finding::note(Code::PLAN, message).field("kept"));
    } else {
        let (soonest, latest) = (a.next_cut_days_first, a.next_cut_days_last);
        let rest = if season >= needed {
            format!("wait {soonest} to {latest} days for each later cut; these plant the rest")
        } else {
            let still = needed - season;
            format!("wait {soonest} to {latest} days for each later cut, which leave about {still} short")
        };
        let message =
            format!("the first cut will be about {short} cuttings short of the {needed} for the whole field");
        findings.push(Finding::warning(Code::PLAN, message).field("kept").hint(format!(
            "plant {:.0} m² at the onset instead of {:.0} m²; or {rest}; or get about {short} vines from neighbours or a vine grower",
            demand.planted_by(first),
            demand.area.0
        )));
    }
    (progress.checks, Some(progress.at_bed))
}

/// The bed and its water.
fn water(
    case: &Case,
    bed: &Bed,
    span: DateSpan,
    amounts: &mut Amounts,
    findings: &mut Vec<Finding>,
) -> Vec<Period> {
    let a = &case.assumptions;
    amounts.add(Quantity::BedArea, bed.area.0, format!("{} m² a root", a.bed_area_per_root_m2));
    amounts.add(Quantity::BedLength, bed.length.0, "the area over the width, rounded up");
    amounts.add(Quantity::BedWidth, bed.width.0, format!("at most {} m", a.bed_width_m));
    amounts.add(Quantity::BedRows, bed.rows, format!("rows along the bed, {} apart", bed.between_rows));
    amounts.add(
        Quantity::RootsPerBedRow,
        bed.roots_per_row,
        format!("roots shared among the rows, {} apart", bed.along_row),
    );
    let assumed;
    let climate = match &case.climate {
        Some(climate) => climate,
        None => {
            findings.push(
                Finding::note(Code::PLAN, format!(
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
    let periods = seedbed::schedule(bed, &case.place, climate, span, a);
    let thirstiest = periods.iter().fold(None, |most: Option<&Period>, period| match most {
        Some(most) if most.daily.0 >= period.daily.0 => Some(most),
        _ => Some(period),
    });
    if let Some(most) = thirstiest {
        let rain = if most.rain.0 > 0.0 {
            format!("less {:.1} mm of rain a day", most.rain.0)
        } else {
            "no rain counted on".to_owned()
        };
        amounts.add(
            Quantity::WaterPerDay,
            most.daily.0,
            format!(
                "from {} on, when it needs most: {} m² × {:.2} × {:.1} mm a day (ET₀ by {}), {rain}, {:.0} of 100 litres reach the roots",
                most.when.from,
                bed.area.0,
                most.kc,
                most.et0.0,
                climate.method(),
                a.watering_efficiency * 100.0
            ),
        );
        amounts.add(
            Quantity::JerrycansPerDay,
            whole_up(most.daily.0 / a.jerrycan_l),
            format!("jerrycans of {} L, rounded up", a.jerrycan_l),
        );
        amounts.add(
            Quantity::TripsPerDay,
            whole_up(most.daily.0 / a.litres_per_trip),
            format!("trips with {} L each", a.litres_per_trip),
        );
        amounts.add(
            Quantity::WaterTotal,
            periods.iter().map(|period| period.total().0).sum::<f64>(),
            format!("all days from {} to {}", span.from, span.to),
        );
    }
    if let Some(source) = &case.source {
        findings.extend(dry_source(source, &periods, bed));
    }
    periods
}

/// A warning where the source named cannot give the bed's water.
fn dry_source(source: &Source, periods: &[Period], bed: &Bed) -> Option<Finding> {
    let short = source.shortage(periods)?;
    let carried = bed.area.0 * short.share;
    Some(
        Finding::warning(Code::PLAN, format!(
            "{} cannot give the bed's water: from {} on it has only about {:.0} of every 100 litres needed at the worst",
            source.name,
            short.first.from,
            (short.share * 100.0).floor()
        ))
        .field("water")
        .hint(format!(
            "find a second source, mulch and shade the bed, or make a bed of about {carried:.1} m² and plant less field"
        )),
    )
}

fn used(assumptions: &Assumptions) -> Vec<UsedDefault> {
    let used = |(entry, value): (&Default, f64)| {
        let kept = value == entry.value;
        let range = entry.range.filter(|_| kept);
        UsedDefault {
            name: entry.name,
            value,
            low: range.map(|(low, _)| low),
            high: range.map(|(_, high)| high),
            unit: entry.unit,
            basis: kept.then_some(entry.basis),
            source: if kept { entry.source } else { "the case" },
        }
    };
    Assumptions::TABLE.iter().zip(assumptions.values()).map(used).collect()
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
            Finding::warning(Code::PLAN, format!(
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
            Finding::warning(
                Code::PLAN,
                format!("missing days leave the onset unknown in {}", unknown.join(", ")),
            )
            .field("season.rainfall_record")
            .hint("complete the record, or be aware that these years are left out"),
        );
    }
    findings
}
