//! A plan as JSON: the layout `kabla-plan/2`, which docs/json.md describes.
//!
//! The layout stands here alone, so that the planner may change its types and the layout stays.

use chrono::NaiveDate;
use serde::{Serialize, Serializer};

use super::remarks;
use crate::finding::Place;
use crate::finding::{Finding, Severity};
use crate::language::{Pack, WordingError};
use crate::plan::overdue::Overdue;
use crate::plan::season::{PlantingDelay, RainsLength, Ripening};
use crate::plan::seedbed::{Bed, Period};
use crate::plan::store::{Filled, Position, Shape};
use crate::plan::{
    Advice, Amount, Basis, DateSpan, LateCut, Plan, Remark, State, Step, StepKind, UsedDefault, Value,
    Values, Worded, after, group, multiply, progress, ways,
};

/// The layout's name and version.
const SCHEMA: &str = "kabla-plan/2";

/// The plan of a case in the layout; `english` words it.
pub(super) fn json(
    of_case: &[Finding],
    plan: &Plan,
    english: &Pack,
) -> Result<serde_json::Value, WordingError> {
    Ok(serde_json::json!(PlanJson::of(of_case, plan, english)?))
}

#[derive(Serialize)]
struct PlanJson<'a> {
    schema: &'static str,
    name: &'a str,
    place: &'a str,
    #[serde(skip_serializing_if = "Option::is_none")]
    today: Option<NaiveDate>,
    rains: NaiveDate,
    #[serde(skip_serializing_if = "Option::is_none")]
    rains_early: Option<NaiveDate>,
    #[serde(skip_serializing_if = "Option::is_none")]
    rains_usual: Option<NaiveDate>,
    #[serde(skip_serializing_if = "Option::is_none")]
    rains_late: Option<NaiveDate>,
    #[serde(skip_serializing_if = "Option::is_none")]
    rains_none_share: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    rains_length: Option<LengthJson>,
    rains_why: ReasonJson,
    plan_by: &'static str,
    #[serde(flatten)]
    now: StateJson<'a>,
    #[serde(skip_serializing_if = "Option::is_none")]
    planned: Option<StateJson<'a>>,
    #[serde(skip_serializing_if = "Vec::is_empty")]
    overdue: Vec<OverdueJson>,
    #[serde(skip_serializing_if = "Option::is_none")]
    vitamin_a: Option<VitaminJson>,
    #[serde(skip_serializing_if = "Vec::is_empty")]
    advice: Vec<AdviceJson>,
    #[serde(skip_serializing_if = "Vec::is_empty")]
    ways: Vec<WayJson>,
    #[serde(rename = "trade", skip_serializing_if = "Vec::is_empty")]
    planting_delays: &'a Vec<PlantingDelay>,
    #[serde(rename = "kept", skip_serializing_if = "Vec::is_empty")]
    store_checks: Vec<CheckJson>,
    findings: Vec<FindingJson>,
    defaults: Vec<DefaultJson>,
}

impl<'a> PlanJson<'a> {
    fn of(of_case: &[Finding], plan: &'a Plan, english: &Pack) -> Result<PlanJson<'a>, WordingError> {
        let noticed = plan.remarks.iter().map(|remark| FindingJson::noticed(remark, english));
        let noticed = noticed.collect::<Result<Vec<_>, _>>()?;
        let of_files = of_case.iter().map(FindingJson::of_file);
        Ok(PlanJson {
            schema: SCHEMA,
            name: &plan.name,
            place: &plan.place,
            today: plan.today,
            rains: plan.rains,
            rains_early: plan.onset_outlook.map(|outlook| outlook.days.early),
            rains_usual: plan.onset_outlook.map(|outlook| outlook.days.usual),
            rains_late: plan.onset_outlook.map(|outlook| outlook.days.late),
            rains_none_share: plan.onset_outlook.map(|outlook| outlook.none_share),
            rains_length: plan
                .now
                .rains_length
                .as_ref()
                .map(|length| LengthJson::of(length, english))
                .transpose()?,
            rains_why: ReasonJson::of(&plan.rains_why, english)?,
            plan_by: plan.plan_by.name(),
            now: StateJson::of(&plan.now, english)?,
            planned: plan.planned.as_ref().map(|planned| StateJson::of(planned, english)).transpose()?,
            overdue: plan
                .overdue
                .iter()
                .map(|late| OverdueJson::of(late, english))
                .collect::<Result<_, _>>()?,
            vitamin_a: plan.vitamin_a.as_ref().map(VitaminJson::of),
            advice: plan
                .advice
                .iter()
                .map(|advice| AdviceJson::of(advice, english))
                .collect::<Result<_, _>>()?,
            ways: plan.ways.iter().map(WayJson::of).collect(),
            planting_delays: &plan.planting_delays,
            store_checks: plan.store_checks.iter().map(CheckJson::of).collect(),
            findings: of_files.chain(noticed).collect(),
            defaults: plan.defaults().iter().map(DefaultJson::of).collect(),
        })
    }
}

/// How long the rains last.
#[derive(Serialize)]
struct LengthJson {
    short_days: Plain,
    usual_days: Plain,
    long_days: Plain,
    early_end: NaiveDate,
    usual_end: NaiveDate,
    late_end: NaiveDate,
    #[serde(skip_serializing_if = "Option::is_none")]
    years: Option<u32>,
    why: ReasonJson,
}

impl LengthJson {
    fn of(length: &RainsLength, english: &Pack) -> Result<LengthJson, WordingError> {
        Ok(LengthJson {
            short_days: Plain(hundredths(length.short_days)),
            usual_days: Plain(hundredths(length.usual_days)),
            long_days: Plain(hundredths(length.long_days)),
            early_end: length.early_end,
            usual_end: length.usual_end,
            late_end: length.late_end,
            years: length.years,
            why: ReasonJson::of(&length.told(), english)?,
        })
    }
}

/// How often what a cut plants is ripe before the rains end.
#[derive(Serialize)]
struct RipeJson {
    ripe_share: f64,
    #[serde(skip_serializing_if = "Option::is_none")]
    ripe_years: Option<u32>,
}

impl From<Ripening> for RipeJson {
    fn from(ripening: Ripening) -> RipeJson {
        RipeJson { ripe_share: (ripening.share * 1000.0).round() / 1000.0, ripe_years: ripening.years }
    }
}

#[derive(Serialize)]
struct LateCutJson {
    #[serde(flatten)]
    when: SpanJson,
    #[serde(flatten)]
    ripe: RipeJson,
}

impl LateCutJson {
    fn of(cut: &LateCut) -> LateCutJson {
        LateCutJson { when: cut.when.into(), ripe: cut.ripening.into() }
    }
}

/// A season: as it stands, or as it was planned.
#[derive(Serialize)]
struct StateJson<'a> {
    steps: Vec<StepJson>,
    amounts: Named<AmountJson>,
    containers: Vec<FilledJson>,
    bed: BedJson,
    water: Vec<PeriodJson>,
    cuts: Vec<CutJson>,
    #[serde(skip_serializing_if = "Vec::is_empty")]
    late_cuts: Vec<LateCutJson>,
    harvest: HarvestJson,
    #[serde(skip_serializing_if = "Vec::is_empty")]
    farms: Vec<ShareJson<'a>>,
    #[serde(skip_serializing_if = "Vec::is_empty")]
    by_field: Vec<FieldSizeJson>,
}

impl<'a> StateJson<'a> {
    fn of(state: &'a State, english: &Pack) -> Result<StateJson<'a>, WordingError> {
        let steps = state.steps.iter().map(|step| StepJson::of(step, english));
        let amounts = state.amounts.0.iter();
        let amounts = amounts.map(|amount| Ok((amount.quantity.name(), AmountJson::of(amount, english)?)));
        Ok(StateJson {
            steps: steps.collect::<Result<_, _>>()?,
            amounts: Named(amounts.collect::<Result<_, WordingError>>()?),
            containers: state.containers.iter().map(FilledJson::of).collect(),
            bed: BedJson::of(&state.bed),
            water: state.water.iter().map(PeriodJson::of).collect(),
            cuts: state.cuts.iter().map(CutJson::of).collect(),
            late_cuts: state.late_cuts.iter().map(LateCutJson::of).collect(),
            harvest: HarvestJson::of(&state.harvest, english)?,
            farms: state.farms.iter().map(ShareJson::of).collect(),
            by_field: state.by_field.iter().map(FieldSizeJson::of).collect(),
        })
    }
}

/// A number as a reader of JSON expects it: whole ones without ".0".
#[derive(Clone, Copy)]
struct Plain(f64);

impl Serialize for Plain {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        if self.0.fract() == 0.0 && self.0.abs() < 9e15 {
            serializer.serialize_i64(self.0 as i64)
        } else {
            serializer.serialize_f64(self.0)
        }
    }
}

/// An object whose keys stand in order.
struct Named<T>(Vec<(&'static str, T)>);

impl<T: Serialize> Serialize for Named<T> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_map(self.0.iter().map(|(name, of)| (name, of)))
    }
}

fn hundredths(value: f64) -> f64 {
    (value * 100.0).round() / 100.0
}

#[derive(Serialize)]
struct SpanJson {
    from: NaiveDate,
    to: NaiveDate,
}

impl From<DateSpan> for SpanJson {
    fn from(span: DateSpan) -> SpanJson {
        SpanJson { from: span.from, to: span.to }
    }
}

#[derive(Serialize)]
#[serde(untagged)]
enum ValueJson {
    Number(Plain),
    Date(NaiveDate),
    Span(SpanJson),
    Name(&'static str),
    Text(String),
}

type ValuesJson = Named<ValueJson>;

fn values(of: Values) -> ValuesJson {
    let value = |value| match value {
        Value::Number(number, _) => ValueJson::Number(Plain(number)),
        Value::Date(day) => ValueJson::Date(day),
        Value::Span(span) => ValueJson::Span(span.into()),
        Value::Name(name) => ValueJson::Name(name),
        Value::Text(text) => ValueJson::Text(text),
    };
    Named(of.into_iter().map(|(name, of)| (name, value(of))).collect())
}

#[derive(Serialize)]
struct ReasonJson {
    code: &'static str,
    values: ValuesJson,
    text: String,
}

impl ReasonJson {
    fn of(reason: &dyn Worded, english: &Pack) -> Result<ReasonJson, WordingError> {
        Ok(ReasonJson {
            code: reason.code(),
            values: values(reason.values()),
            text: english.write_reason(reason)?,
        })
    }
}

#[derive(Serialize)]
struct StepJson {
    topic: StepKind,
    #[serde(flatten)]
    when: SpanJson,
    #[serde(skip_serializing_if = "std::ops::Not::not")]
    done: bool,
    why: ReasonJson,
}

impl StepJson {
    fn of(step: &Step, english: &Pack) -> Result<StepJson, WordingError> {
        Ok(StepJson {
            topic: step.kind,
            when: step.when.into(),
            done: step.done,
            why: ReasonJson::of(&step.why, english)?,
        })
    }
}

#[derive(Serialize)]
struct OverdueJson {
    topic: StepKind,
    due: SpanJson,
    code: &'static str,
    values: ValuesJson,
    still_possible: String,
    field_from: NaiveDate,
    days_later: u32,
    cuttings_at_first_cut: u32,
    cuttings_fewer: u32,
    certain: bool,
}

impl OverdueJson {
    fn of(late: &Overdue, english: &Pack) -> Result<OverdueJson, WordingError> {
        Ok(OverdueJson {
            topic: late.kind,
            due: late.due.into(),
            code: late.code(),
            values: values(late.values()),
            still_possible: english.write_reason(late)?,
            field_from: late.field_from,
            days_later: late.days_later,
            cuttings_at_first_cut: late.cuttings_at_first_cut,
            cuttings_fewer: late.cuttings_fewer,
            certain: late.certain,
        })
    }
}

#[derive(Serialize)]
struct AmountJson {
    label: String,
    value: Plain,
    #[serde(skip_serializing_if = "Option::is_none")]
    low: Option<Plain>,
    #[serde(skip_serializing_if = "Option::is_none")]
    high: Option<Plain>,
    unit: &'static str,
    why: ReasonJson,
}

impl AmountJson {
    fn of(amount: &Amount, english: &Pack) -> Result<AmountJson, WordingError> {
        Ok(AmountJson {
            label: english.plan_amount(amount.quantity)?,
            value: Plain(amount.value),
            low: amount.range.map(|(low, _)| Plain(low)),
            high: amount.range.map(|(_, high)| Plain(high)),
            unit: amount.quantity.unit(),
            why: ReasonJson::of(&amount.why, english)?,
        })
    }
}

#[derive(Serialize)]
#[serde(tag = "shape", rename_all = "lowercase")]
enum ShapeJson {
    Round { top_width_cm: f64, bottom_width_cm: f64 },
    Pot { bands: Vec<BandJson> },
    Box { length_cm: f64, width_cm: f64 },
}

#[derive(Serialize)]
struct BandJson {
    height_cm: f64,
    width_cm: f64,
}

#[derive(Serialize)]
struct FilledJson {
    #[serde(flatten)]
    shape: ShapeJson,
    depth_cm: f64,
    count: u32,
    roots: u32,
    layers: Vec<LayerJson>,
    sand_l: f64,
    lining_m2: f64,
}

/// A layer with the roots of the fullest container.
#[derive(Serialize)]
struct LayerJson {
    height_cm: f64,
    roots: u32,
    capacity: u32,
    places: Vec<PositionJson>,
}

/// Tenths of a millimetre and of a degree.
#[derive(Serialize)]
struct PositionJson {
    x_cm: f64,
    y_cm: f64,
    angle_deg: f64,
}

impl PositionJson {
    fn of(place: &Position) -> PositionJson {
        // Zero added, so that none is −0.
        PositionJson {
            x_cm: hundredths(place.x) + 0.0,
            y_cm: hundredths(place.y) + 0.0,
            angle_deg: (place.angle.to_degrees() * 10.0).round() / 10.0 + 0.0,
        }
    }
}

impl FilledJson {
    fn of(filled: &Filled) -> FilledJson {
        let layers = filled.roots_by_layer().map(|(layer, roots)| LayerJson {
            height_cm: layer.height.0,
            roots,
            capacity: layer.capacity(),
            places: layer.places.iter().take(roots as usize).map(PositionJson::of).collect(),
        });
        FilledJson {
            shape: match &filled.container.shape {
                Shape::Round { top, bottom } => {
                    ShapeJson::Round { top_width_cm: top.0, bottom_width_cm: bottom.0 }
                }
                Shape::Pot { bands } => ShapeJson::Pot {
                    bands: bands
                        .iter()
                        .map(|band| BandJson { height_cm: band.height.0, width_cm: band.width.0 })
                        .collect(),
                },
                Shape::Box { length, width } => ShapeJson::Box { length_cm: length.0, width_cm: width.0 },
            },
            depth_cm: filled.container.depth.0,
            count: filled.count,
            roots: filled.roots,
            layers: layers.collect(),
            sand_l: hundredths(filled.sand.0),
            lining_m2: hundredths(filled.lining.0),
        }
    }
}

#[derive(Serialize)]
struct BedJson {
    area_m2: f64,
    length_m: f64,
    width_m: f64,
    strips: u32,
    strip_length_m: f64,
    strip_width_m: f64,
    path_m: f64,
    rows: u32,
    roots_per_row: u32,
    between_rows_cm: f64,
    along_row_cm: f64,
}

impl BedJson {
    fn of(bed: &Bed) -> BedJson {
        BedJson {
            area_m2: bed.area.0,
            length_m: bed.length().0,
            width_m: bed.width().0,
            strips: bed.strips,
            strip_length_m: bed.strip_length.0,
            strip_width_m: bed.strip_width.0,
            path_m: bed.path.0,
            rows: bed.rows(),
            roots_per_row: bed.roots_per_row,
            between_rows_cm: bed.between_rows.0,
            along_row_cm: bed.along_row.0,
        }
    }
}

#[derive(Serialize)]
struct PeriodJson {
    #[serde(flatten)]
    when: SpanJson,
    et0_mm_per_day: f64,
    kc: f64,
    rain_mm_per_day: f64,
    l_per_day: f64,
    every_days: Plain,
    l_each_time: f64,
}

impl PeriodJson {
    fn of(period: &Period) -> PeriodJson {
        PeriodJson {
            when: period.when.into(),
            et0_mm_per_day: hundredths(period.et0.0),
            kc: hundredths(period.kc),
            rain_mm_per_day: hundredths(period.rain.0),
            l_per_day: period.daily.0,
            every_days: Plain(period.every_days),
            l_each_time: period.each_time.0,
        }
    }
}

#[derive(Serialize)]
struct CutJson {
    #[serde(flatten)]
    when: SpanJson,
    cuttings: u32,
    low: u32,
    high: u32,
    area_m2: f64,
    #[serde(flatten)]
    ripe: Option<RipeJson>,
}

impl CutJson {
    fn of(cut: &multiply::Cut) -> CutJson {
        let multiply::Cuttings { low, middle, high } = cut.cuttings;
        let ripe = cut.ripening.map(RipeJson::from);
        CutJson { when: cut.when.into(), cuttings: middle, low, high, area_m2: cut.area.0, ripe }
    }
}

#[derive(Serialize)]
struct AdviceJson {
    topic: StepKind,
    #[serde(flatten)]
    what: ReasonJson,
    source: &'static str,
}

impl AdviceJson {
    fn of(advice: &Advice, english: &Pack) -> Result<AdviceJson, WordingError> {
        let what = ReasonJson::of(advice, english)?;
        Ok(AdviceJson { topic: advice.step(), what, source: advice.source() })
    }
}

#[derive(Serialize)]
struct WayJson {
    way: &'static str,
    roots: u32,
    #[serde(skip_serializing_if = "Option::is_none")]
    from: Option<NaiveDate>,
    #[serde(skip_serializing_if = "Option::is_none")]
    second: Option<NaiveDate>,
    area_m2: f64,
    cuttings: u32,
    low: u32,
    high: u32,
    water_l: f64,
    days: u32,
    trips: u32,
}

impl WayJson {
    fn of(way: &ways::Way) -> WayJson {
        let multiply::Cuttings { low, middle, high } = way.cuttings;
        WayJson {
            way: way.kind.name(),
            roots: way.roots,
            from: way.from,
            second: way.second,
            area_m2: way.area.0,
            cuttings: middle,
            low,
            high,
            water_l: way.water.0,
            days: way.days,
            trips: way.trips,
        }
    }
}

#[derive(Serialize)]
struct HarvestJson {
    #[serde(skip_serializing_if = "Option::is_none")]
    maturity: Option<&'static str>,
    first: NaiveDate,
    last: NaiveDate,
    why: ReasonJson,
    #[serde(skip_serializing_if = "Option::is_none")]
    yield_low_kg: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    yield_high_kg: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    yield_why: Option<ReasonJson>,
}

impl HarvestJson {
    fn of(harvest: &after::Harvest, english: &Pack) -> Result<HarvestJson, WordingError> {
        let yield_why = harvest.yield_why.as_ref().map(|why| ReasonJson::of(why, english));
        Ok(HarvestJson {
            maturity: harvest.maturity,
            first: harvest.first,
            last: harvest.last,
            why: ReasonJson::of(&harvest.why, english)?,
            yield_low_kg: harvest.yield_low.map(|mass| mass.0),
            yield_high_kg: harvest.yield_high.map(|mass| mass.0),
            yield_why: yield_why.transpose()?,
        })
    }
}

#[derive(Serialize)]
struct VitaminJson {
    rae_ug_per_100g_fresh: f64,
    serving_g: f64,
    rae_ug_per_serving_boiled: f64,
    share_of_need_age_1_to_3: f64,
    share_of_need_age_4_to_8: f64,
}

impl VitaminJson {
    fn of(vitamin: &after::VitaminA) -> VitaminJson {
        VitaminJson {
            rae_ug_per_100g_fresh: vitamin.rae_ug_per_100g_fresh,
            serving_g: vitamin.serving_g,
            rae_ug_per_serving_boiled: vitamin.rae_ug_per_serving_boiled,
            share_of_need_age_1_to_3: vitamin.share_of_need_age_1_to_3,
            share_of_need_age_4_to_8: vitamin.share_of_need_age_4_to_8,
        }
    }
}

#[derive(Serialize)]
struct ShareJson<'a> {
    name: &'a str,
    area_m2: f64,
    cuttings: u32,
    plants: u32,
    roots: u32,
}

impl<'a> ShareJson<'a> {
    fn of(farm: &'a group::Share) -> ShareJson<'a> {
        ShareJson {
            name: &farm.name,
            area_m2: farm.area.0,
            cuttings: farm.cuttings,
            plants: farm.plants,
            roots: farm.roots,
        }
    }
}

#[derive(Serialize)]
struct FieldSizeJson {
    area_m2: f64,
    cuttings: u32,
    roots: u32,
    plants: u32,
    bed_area_m2: f64,
    jerrycans_per_day: u32,
}

impl FieldSizeJson {
    fn of(row: &group::FieldSize) -> FieldSizeJson {
        FieldSizeJson {
            area_m2: row.area.0,
            cuttings: row.cuttings,
            roots: row.roots,
            plants: row.plants,
            bed_area_m2: row.bed.0,
            jerrycans_per_day: row.jerrycans_per_day,
        }
    }
}

#[derive(Serialize)]
struct CheckJson {
    date: NaiveDate,
    healthy: u32,
    expected: u32,
    fast_loss: bool,
}

impl CheckJson {
    fn of(check: &progress::Judged) -> CheckJson {
        CheckJson {
            date: check.date,
            healthy: check.healthy,
            expected: check.expected,
            fast_loss: check.fast_loss,
        }
    }
}

/// A remark on the plan, or a finding about a file, which has neither values nor amounts.
#[derive(Serialize)]
struct FindingJson {
    code: &'static str,
    severity: Severity,
    place: Place,
    message: String,
    #[serde(skip_serializing_if = "String::is_empty")]
    hint: String,
    #[serde(skip_serializing_if = "Option::is_none")]
    values: Option<ValuesJson>,
    #[serde(skip_serializing_if = "Option::is_none")]
    amounts: Option<Vec<&'static str>>,
}

impl FindingJson {
    fn noticed(remark: &Remark, english: &Pack) -> Result<FindingJson, WordingError> {
        let (message, hint) = english.write_remark(remark)?;
        Ok(FindingJson {
            code: remark.code(),
            severity: remarks::severity(remark),
            place: Place { field: remark.field().map(str::to_owned), ..Place::default() },
            message,
            hint,
            values: Some(values(remark.values())),
            amounts: Some(remark.amounts().iter().map(|quantity| quantity.name()).collect()),
        })
    }

    fn of_file(finding: &Finding) -> FindingJson {
        FindingJson {
            code: finding.code.name(),
            severity: finding.severity,
            place: (*finding.place).clone(),
            message: finding.message.clone(),
            hint: finding.hint.clone(),
            values: None,
            amounts: None,
        }
    }
}

#[derive(Serialize)]
struct DefaultJson {
    name: &'static str,
    value: Plain,
    #[serde(skip_serializing_if = "Option::is_none")]
    low: Option<Plain>,
    #[serde(skip_serializing_if = "Option::is_none")]
    high: Option<Plain>,
    unit: &'static str,
    #[serde(skip_serializing_if = "Option::is_none")]
    basis: Option<&'static str>,
    source: &'static str,
}

impl DefaultJson {
    fn of(used: &UsedDefault) -> DefaultJson {
        DefaultJson {
            name: used.name,
            value: Plain(used.value),
            low: used.low.map(Plain),
            high: used.high.map(Plain),
            unit: used.unit,
            basis: used.basis.map(|basis| match basis {
                Basis::Found => "found",
                Basis::Memory => "memory",
                Basis::Practice => "practice",
                Basis::Computed => "computed",
            }),
            source: used.source.unwrap_or("the case"),
        }
    }
}
