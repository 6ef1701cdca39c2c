//! Cases as people write them: a TOML text, and the records it names.

mod rain_csv;

pub use rain_csv::{DateLayout, read_rain};

use std::io;

use chrono::NaiveDate;

use crate::finding::Finding;
use crate::plan::field::{Field, Spacing};
use crate::plan::multiply::Sizing;
use crate::plan::progress::Check;
use crate::plan::season::{MonthDay, ObservedRains, OnsetRule, Rains, Risk, Window};
use crate::plan::seedbed::{Air, Climate};
use crate::plan::store::{Container, Shape};
use crate::plan::{
    Assumptions, Case, Celsius, Centimetres, Kind, Metres, MetresPerSecond, Place, SquareMetres,
};
use crate::table::{self, Source, Table};

/// Reads files that a case names, relative to the case.
pub type Open<'a> = &'a dyn Fn(&str) -> io::Result<Vec<u8>>;

/// Reads a case.
///
/// `name` is the file's name as the user knows it; `open` reads files the
/// case names.
///
/// # Errors
/// All problems of the case and of the records it names, each with its line,
/// field and a hint. Warnings alone do not fail: they come with the case.
pub fn read(name: &str, text: &str, open: Open<'_>) -> Result<(Case, Vec<Finding>), Vec<Finding>> {
    let (case, findings) = table::read(name, text, |source, root| read_root(source, root, open));
    match case {
        Some(case) if !findings.iter().any(Finding::is_error) => Ok((case, findings)),
        _ => Err(findings),
    }
}

fn read_root(source: &Source<'_>, root: &Table<'_>, open: Open<'_>) -> Option<Case> {
    let name =
        required(root, "name", "write the farm's, group's or zone's name: name = \"…\"", root.text("name"));
    let language = root.text("language");
    let today = root.date("today");
    let harvest = required(
        root,
        "harvest",
        "write the day the roots are dug: harvest = 2027-04-30",
        root.date("harvest"),
    );

    let group = root.table("group");
    let members = required_if(
        group.is_given(),
        &group,
        "members",
        "write how many members: members = 12",
        group.whole("members", 1..=100_000),
    );
    let named_kind = root
        .choice("kind", &[("farm", Kind::Farm), ("group", Kind::Group { members: 0 }), ("zone", Kind::Zone)]);
    let kind = match (named_kind, group.is_given()) {
        (Some(Kind::Group { .. }), true) | (None, true) => members.map(|members| Kind::Group { members }),
        (Some(Kind::Group { .. }), false) => {
            root.problem("kind", "a group needs its table [group]", "add [group] with members = …");
            None
        }
        (Some(_), true) => {
            root.problem(
                "kind",
                "only a group has a table [group]",
                "write kind = \"group\", or take [group] out",
            );
            None
        }
        (Some(kind), false) => Some(kind),
        (None, false) if root.has("kind") => None,
        (None, false) => Some(Kind::Farm),
    };
    group.finish();

    let place = read_place(root.table("place"));
    let season = root.table("season");
    let rains = read_season(source, &season, harvest, open);
    let risk = read_risk(&season);
    season.finish();

    let assumptions = read_assumptions(root);
    let field_table = root.table("field");
    let field = read_field(&field_table, &assumptions);
    let sizing = field_table
        .choice("sizing", &[("bed-season", Sizing::BedSeason), ("first-planting", Sizing::FirstPlanting)])
        .unwrap_or_default();
    let sure_percent = field_table.number("sure_percent", 1.0..=99.0);
    if matches!(kind, Some(Kind::Zone)) && field_table.is_given() {
        root.problem("field", "a zone has no field", "take [field] out, or write kind = \"farm\"");
    } else if matches!(kind, Some(Kind::Farm | Kind::Group { .. })) && !field_table.is_given() {
        root.missing("field", "add [field] with area_m2 = …, or with length_m and width_m");
    }
    field_table.finish();

    let kept = read_kept(root, harvest);
    let containers: Vec<_> = root.tables("container").into_iter().filter_map(read_container).collect();
    let climate = read_climate(root.table("climate"));
    Some(Case {
        name: name?,
        kind: kind?,
        place: place?,
        rains: rains?,
        risk,
        harvest: harvest?,
        field,
        sizing,
        sure_percent,
        kept,
        containers,
        climate,
        language,
        today,
        assumptions,
    })
}

/// Reports a field that is absent; a field that is there but wrong has been reported.
fn required<T>(table: &Table<'_>, key: &'static str, hint: &str, value: Option<T>) -> Option<T> {
    required_if(true, table, key, hint, value)
}

fn required_if<T>(
    wanted: bool,
    table: &Table<'_>,
    key: &'static str,
    hint: &str,
    value: Option<T>,
) -> Option<T> {
    if wanted && value.is_none() && !table.has(key) {
        table.missing(key, hint);
    }
    value
}

fn read_place(place: Table<'_>) -> Option<Place> {
    let name = required(&place, "name", "add [place] with name = \"…\"", place.text("name"));
    let degrees = "write degrees with a decimal point, south and west negative";
    let latitude = required(&place, "latitude", degrees, place.number("latitude", -90.0..=90.0));
    let longitude = required(&place, "longitude", degrees, place.number("longitude", -180.0..=180.0));
    let elevation = required(
        &place,
        "elevation_m",
        "write metres above the sea",
        place.number("elevation_m", -430.0..=6000.0),
    );
    place.finish();
    Some(Place { name: name?, latitude: latitude?, longitude: longitude?, elevation: Metres(elevation?) })
}

fn read_risk(season: &Table<'_>) -> Risk {
    let named = [("early", Risk::Early), ("middle", Risk::Middle), ("late", Risk::Late)];
    let percentile = season.number("risk_percent", 1.0..=99.0).map(Risk::Percentile);
    let risk = season.choice("risk", &named);
    if season.has("risk") && season.has("risk_percent") {
        season.problem("risk_percent", "risk and risk_percent both stand here", "keep one of them");
    }
    percentile.or(risk).unwrap_or(Risk::Early)
}

fn read_season(
    source: &Source<'_>,
    season: &Table<'_>,
    harvest: Option<NaiveDate>,
    open: Open<'_>,
) -> Option<Rains> {
    let path = season.text("rainfall_record");
    let rules = OnsetRule::ALL.map(|rule| (rule.name(), rule));
    let rule = season.choice("rule", &rules).unwrap_or(OnsetRule::THREE_DAY);
    let layout = season
        .choice("dates", &[("day-first", DateLayout::DayFirst), ("month-first", DateLayout::MonthFirst)]);
    let from = month_day(season, "window_from");
    let until = month_day(season, "window_until");
    let given = season.has("rains_begin");
    if given && season.has("rainfall_record") {
        season.problem(
            "rainfall_record",
            "rains_begin and rainfall_record both stand here",
            "keep one of them",
        );
        return None;
    }
    if given {
        return read_rains_begin(season, harvest);
    }
    let Some(path) = path else {
        if !season.has("rainfall_record") {
            season.missing(
                "rains_begin",
                "add [season] with rains_begin = \"10-15\" (month-day), or rainfall_record = \"file.csv\"",
            );
        }
        return None;
    };
    let window_hint = "write the first and last day of the year on which the rains may begin: window_from = \"09-15\", window_until = \"12-31\"";
    let from = required(season, "window_from", window_hint, from);
    let until = required(season, "window_until", window_hint, until);
    let bytes = match open(&path) {
        Ok(bytes) => bytes,
        Err(error) => {
            season.problem(
                "rainfall_record",
                format!("{path} cannot be read: {error}"),
                "name the file relative to the case",
            );
            return None;
        }
    };
    let (record, findings) = read_rain(&path, &bytes, layout);
    let failed = findings.iter().any(Finding::is_error);
    for finding in findings {
        source.add_foreign(finding);
    }
    if failed {
        return None;
    }
    let window = Window { from: from?, until: until? };
    let years = record.onsets(&rule, &window);
    Some(Rains::Observed(ObservedRains { years, window, rule }))
}

fn month_day(season: &Table<'_>, key: &'static str) -> Option<MonthDay> {
    let text = season.text(key)?;
    let day = text.parse().ok();
    if day.is_none() {
        season.problem(key, format!("{text} is not a day of the year"), "write month-day, e.g. \"10-15\"");
    }
    day
}

/// Either a day of the year ("10-15") or a date (2027-10-15).
fn read_rains_begin(season: &Table<'_>, harvest: Option<NaiveDate>) -> Option<Rains> {
    if season.is_text("rains_begin") {
        let text = season.text("rains_begin")?;
        if text.len() <= 5 {
            return month_day(season, "rains_begin").map(Rains::Usual);
        }
    }
    let date = season.date("rains_begin")?;
    if let Some(harvest) = harvest {
        if date <= harvest {
            season.problem(
                "rains_begin",
                format!("the rains ({date}) begin before the harvest ({harvest}) is over"),
                "write the rains that follow the harvest, or only their day of the year: rains_begin = \"10-15\"",
            );
            return None;
        }
        if (date - harvest).num_days() > 366 {
            season.problem(
                "rains_begin",
                format!("the rains ({date}) begin more than a year after the harvest ({harvest})"),
                "check the years",
            );
            return None;
        }
    }
    Some(Rains::On(date))
}

fn read_field(table: &Table<'_>, assumptions: &Assumptions) -> Option<Field> {
    if !table.is_given() {
        return None;
    }
    let sides = 0.1..=10_000.0;
    let area = table.number("area_m2", 0.01..=1_000_000.0);
    let length = table.number("length_m", sides.clone());
    let width = table.number("width_m", sides);
    let has_side = table.has("length_m") || table.has("width_m");
    let area = match (table.has("area_m2"), has_side) {
        (true, true) => {
            table.problem(
                "area_m2",
                "area_m2 and length_m or width_m both stand here",
                "keep the area, or the two sides",
            );
            None
        }
        (true, false) => area,
        (false, true) => {
            let length = required(table, "length_m", "write both sides", length);
            let width = required(table, "width_m", "write both sides", width);
            Some(length? * width?)
        }
        (false, false) => {
            table.missing("area_m2", "write area_m2 = …, or length_m and width_m");
            None
        }
    };
    let ridge = table.number("ridge_spacing_m", 0.2..=5.0);
    let along = table.number("plant_spacing_m", 0.05..=5.0);
    let mound = table.number("mound_spacing_m", 0.2..=5.0);
    let on_mound = table.number("cuttings_per_mound", 1.0..=20.0);
    let mounds = table.has("mound_spacing_m") || table.has("cuttings_per_mound");
    if mounds && (table.has("ridge_spacing_m") || table.has("plant_spacing_m")) {
        table.problem(
            "mound_spacing_m",
            "ridges and mounds both stand here",
            "keep the ridge and plant spacing, or the mounds",
        );
        return None;
    }
    let spacing = if mounds {
        let between = required(table, "mound_spacing_m", "write the metres from mound to mound", mound)?;
        Spacing::Mounds {
            between: Metres(between),
            cuttings: on_mound.unwrap_or(assumptions.cuttings_per_mound),
        }
    } else {
        Spacing::Ridges {
            between: Metres(ridge.unwrap_or(assumptions.ridge_spacing_m)),
            along: Metres(along.unwrap_or(assumptions.plant_spacing_m)),
        }
    };
    Some(Field { area: SquareMetres(area?), spacing })
}

fn read_container(table: Table<'_>) -> Option<Container> {
    let sizes = 5.0..=500.0;
    let hint = "write the inner size in centimetres";
    let depth = required(&table, "depth_cm", hint, table.number("depth_cm", sizes.clone()));
    let count = table.whole("count", 1..=100_000);
    let is_box = table.choice("shape", &[("round", false), ("box", true)]);
    let is_box = required(&table, "shape", "write shape = \"round\" or \"box\"", is_box);
    let shape = match is_box {
        Some(true) => {
            let length = required(&table, "length_cm", hint, table.number("length_cm", sizes.clone()));
            let width = required(&table, "width_cm", hint, table.number("width_cm", sizes));
            length
                .zip(width)
                .map(|(length, width)| Shape::Box { length: Centimetres(length), width: Centimetres(width) })
        }
        Some(false) => {
            let top = required(&table, "top_width_cm", hint, table.number("top_width_cm", sizes.clone()));
            let bottom = table.number("bottom_width_cm", sizes).or(top);
            top.zip(bottom)
                .map(|(top, bottom)| Shape::Round { top: Centimetres(top), bottom: Centimetres(bottom) })
        }
        None => {
            // Known fields of either shape are no extra mistake while the shape is unknown.
            for key in ["length_cm", "width_cm", "top_width_cm", "bottom_width_cm"] {
                table.has(key);
            }
            None
        }
    };
    table.finish();
    Some(Container { shape: shape?, depth: Centimetres(depth?), count })
}

/// The checks of the store: each after the one before, with no more roots.
fn read_kept(root: &Table<'_>, harvest: Option<NaiveDate>) -> Vec<Check> {
    let mut kept: Vec<Check> = Vec::new();
    for table in root.tables("kept") {
        let date =
            required(&table, "date", "write the day of the check: date = 2027-06-24", table.date("date"));
        let healthy = required(
            &table,
            "healthy",
            "write how many healthy roots were packed again",
            table.whole("healthy", 0..=10_000_000),
        );
        let thrown_away = table.whole("thrown_away", 0..=10_000_000);
        let sprouted = table.whole("sprouted", 0..=10_000_000);
        if let (Some(date), Some(healthy)) = (date, healthy) {
            let before = kept.last();
            let earliest = before.map(|check| check.date).or(harvest);
            if earliest.is_some_and(|earliest| date <= earliest) {
                table.problem(
                    "date",
                    format!("{date} does not come after the harvest and the check before"),
                    "write the checks in order of date",
                );
            }
            if let Some(before) = before
                && healthy + thrown_away.unwrap_or(0) > before.healthy
            {
                let message = format!("more roots than the {} of the check before", before.healthy);
                table.problem("healthy", message, "count again, or mend the check before");
            }
            if sprouted.is_some_and(|sprouted| sprouted > healthy) {
                table.problem(
                    "sprouted",
                    "more roots than are healthy",
                    "count the healthy roots with sprouts",
                );
            }
            kept.push(Check { date, healthy, thrown_away, sprouted });
        }
        table.finish();
    }
    kept
}

fn read_climate(table: Table<'_>) -> Option<Climate> {
    let tmax = table.monthly("tmax_c", -30.0..=55.0);
    let tmin = table.monthly("tmin_c", -40.0..=45.0);
    if table.is_given() {
        required(
            &table,
            "tmax_c",
            "write the mean greatest temperature of a day, once or for twelve months",
            tmax,
        );
        required(
            &table,
            "tmin_c",
            "write the mean least temperature of a day, once or for twelve months",
            tmin,
        );
    }
    let climate = tmax.zip(tmin);
    if let Some((tmax, tmin)) = climate
        && tmax.iter().zip(tmin.iter()).any(|(most, least)| most < least)
    {
        table.problem(
            "tmax_c",
            "a greatest temperature lies below the least one",
            "check whether the two lines are swapped",
        );
    }
    let air = read_air(&table);
    table.finish();
    climate.map(|(tmax, tmin)| Climate { tmax: tmax.map(Celsius), tmin: tmin.map(Celsius), air })
}

/// Humidity, wind and sunshine: all three, or none.
fn read_air(table: &Table<'_>) -> Option<Air> {
    const FIELDS: [&str; 3] = ["humidity_percent", "wind_m_s", "sunshine_h"];
    let humidity = table.monthly("humidity_percent", 1.0..=100.0);
    let wind = table.monthly("wind_m_s", 0.0..=20.0);
    let sunshine_hours = table.monthly("sunshine_h", 0.0..=24.0);
    if FIELDS.iter().any(|field| table.has(field)) {
        for field in FIELDS.iter().filter(|field| !table.has(field)) {
            let hint = "Penman–Monteith needs humidity_percent, wind_m_s (2 m above ground) and sunshine_h; take them out for Hargreaves";
            table.missing(field, hint);
        }
    }
    Some(Air { humidity: humidity?, wind: wind?.map(MetresPerSecond), sunshine_hours: sunshine_hours? })
}

fn read_assumptions(root: &Table<'_>) -> Assumptions {
    let table = root.table("assumptions");
    let mut assumptions = Assumptions::default();
    for entry in Assumptions::TABLE {
        if let Some(value) = table.number(entry.name, entry.least..=entry.greatest) {
            assumptions.set(entry.name, value);
        }
    }
    for (first, last) in [
        ("check_days_before_harvest_last", "check_days_before_harvest_first"),
        ("cut_vines_days_before_harvest_last", "cut_vines_days_before_harvest_first"),
        ("bed_weeks_before_rains_last", "bed_weeks_before_rains_first"),
        ("next_cut_days_first", "next_cut_days_last"),
        ("first_harvest_days_first", "first_harvest_days_last"),
        ("onset_early_percent", "onset_late_percent"),
    ] {
        if assumptions.get(first) > assumptions.get(last) {
            table.problem(first, format!("is greater than {last}"), "swap the two, or give both");
        }
    }
    table.finish();
    assumptions
}
