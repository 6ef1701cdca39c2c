//! The plan of one farm of a group.

use super::after;
use super::amounts::{Amount, Amounts};
use super::case::{Case, Kind};
use super::group::divide;
use super::multiply::{Cut, Cuttings};
use super::planned::{Plan, Together};
use super::quantities::{AmountReason, Quantity};
use super::remarks::Remark;
use super::size::{Demand, explain_field};
use super::state::State;
use super::steps::StepKind;
use super::units::whole_down;
use super::work;

/// The plan of one farm of a group: its plants, roots and cuttings, in the group's store and bed, which stay as they
/// are. The parts of all farms add up to the group's. `None` where there is no such farm.
pub fn plan_of_farm(case: &Case, plan: &Plan, name: &str) -> Option<(Case, Plan)> {
    let index = case.farms.iter().position(|farm| farm.name == name)?;
    let farm = case.farms.get(index)?;
    let own = Case {
        name: farm.name.clone(),
        kind: Kind::Farm,
        field: Some(farm.field),
        farms: Vec::new(),
        at_hand: None,
        ..case.clone()
    };
    let weights: Vec<u32> =
        case.farms.iter().map(|farm| farm.field.cuttings_with_gaps(&case.assumptions)).collect();
    let part = |whole: u32| divide(whole, &weights).get(index).copied().unwrap_or_default();
    let state = |whole: &State| whole.of_farm(&own, &part);
    let (of_all, of_group): (Vec<Remark>, Vec<Remark>) =
        plan.remarks.iter().cloned().partition(|remark| remark.amounts().is_empty());
    Some((
        own.clone(),
        Plan {
            name: own.name.clone(),
            kind: Kind::Farm,
            now: state(&plan.now),
            planned: plan.planned.as_ref().map(state),
            together: Some(Together {
                name: case.name.clone(),
                now: plan.now.clone(),
                planned: plan.planned.clone(),
                remarks: of_group,
            }),
            ways: Vec::new(),
            remarks: of_all,
            ..plan.clone()
        },
    ))
}

impl State {
    /// A farm's own part: `own` is its case, `part` its part of a number.
    fn of_farm(&self, own: &Case, part: &dyn Fn(u32) -> u32) -> State {
        let a = &own.assumptions;
        let count = |value: f64| whole_down(value);
        let season = self.amounts.get(Quantity::CuttingsOverSeason).map_or(0, count);
        let demand = Demand::of(own);
        let mut amounts = Amounts::default();
        if let Some(demand) = demand {
            explain_field(own, demand, part(season), &mut amounts);
        }
        let explained = amounts.0.len();
        for amount in &self.amounts.0 {
            let known = amounts.0.iter().take(explained).any(|own| own.quantity == amount.quantity);
            match amount.quantity {
                _ if known => {}
                // Told anew below.
                quantity if work::QUANTITIES.contains(&quantity) => {}
                quantity if !quantity.is_shared_out() => amounts.0.push(amount.clone()),
                _ => amounts.0.push(Amount {
                    quantity: amount.quantity,
                    value: f64::from(part(count(amount.value))),
                    range: amount
                        .range
                        .map(|(low, high)| (f64::from(part(count(low))), f64::from(part(count(high))))),
                    why: AmountReason::PartOfGroup { whole: amount.told() },
                }),
            }
        }
        let usual = own.spacing().density() * (1.0 + a.gap_share);
        let density = demand.map_or(usual, |demand| demand.density());
        let cuts = self.cuts.iter().map(|cut| {
            let Cuttings { low, middle, high } = cut.cuttings;
            let own = Cuttings { low: part(low), middle: part(middle), high: part(high) };
            Cut::of(cut.when, own, density, cut.ripening)
        });
        let cuts: Vec<Cut> = cuts.collect();
        let planted = demand.map(|demand| demand.planted_area(part(season)));
        if let (Some(demand), Some(field)) = (demand, planted) {
            work::tell(part(season).min(demand.cuttings), field, a, &mut amounts);
        }
        let planting = self.steps_of(StepKind::PlantField).next().map(|step| step.when);
        let planted = planted.filter(|_| self.harvest.yield_low.is_some());
        let harvest = planting.map(|when| after::harvest(when, planted, &own.variety, a));
        State {
            amounts,
            cuts,
            harvest: harvest.unwrap_or_else(|| self.harvest.clone()),
            farms: Vec::new(),
            by_field: Vec::new(),
            ..self.clone()
        }
    }
}
