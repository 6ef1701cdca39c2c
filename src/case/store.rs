//! Containers, and what the checks of the store have found.

use chrono::NaiveDate;

use super::given::required;
use crate::finding::Code;
use crate::plan::Centimetres;
use crate::plan::progress::Check;
use crate::plan::store::{Band, Container, Shape};
use crate::toml_reader::TomlTable;

const SIZES: std::ops::RangeInclusive<f64> = 5.0..=500.0;
/// What people measure in besides, and how many centimetres it is.
const OTHER_UNITS: [(&str, f64); 2] = [("metres", 100.0), ("millimetres", 0.1)];
const SIZE_HINT: &str = "write the inner size in centimetres";

/// What a container is said to be.
#[derive(Debug, Clone, Copy)]
enum Kind {
    Round,
    Pot,
    Box,
}

pub(super) fn read_container(table: TomlTable<'_>) -> Option<Container> {
    let count = table.whole("count", 1..=100_000);
    let kinds = [("round", Kind::Round), ("pot", Kind::Pot), ("box", Kind::Box)];
    let kind = table.choice("shape", &kinds);
    let kind = required(&table, "shape", "write shape = \"round\", \"pot\" or \"box\"", kind);
    let size = |key| required(&table, key, SIZE_HINT, table.number_or_unit(key, SIZES, &OTHER_UNITS));
    let container = match kind {
        Some(Kind::Pot) => {
            let bands = read_bands(&table);
            bands.and_then(|bands| {
                let depth = bands.iter().map(|band: &Band| band.height.0).sum();
                if !SIZES.contains(&depth) {
                    let message = format!("the bands are {depth} cm high together");
                    table.problem(Code::OUT_OF_RANGE, "band", message, "check the heights");
                    return None;
                }
                Some((Shape::Pot { bands }, depth))
            })
        }
        Some(Kind::Box) => {
            let (length, width, depth) = (size("length_cm"), size("width_cm"), size("depth_cm"));
            length.zip(width).zip(depth).map(|((length, width), depth)| {
                (Shape::Box { length: Centimetres(length), width: Centimetres(width) }, depth)
            })
        }
        Some(Kind::Round) => {
            let (top, depth) = (size("top_width_cm"), size("depth_cm"));
            let bottom = table.number_or_unit("bottom_width_cm", SIZES, &OTHER_UNITS).or(top);
            top.zip(bottom).zip(depth).map(|((top, bottom), depth)| {
                (Shape::Round { top: Centimetres(top), bottom: Centimetres(bottom) }, depth)
            })
        }
        None => {
            // Known fields of any shape are no extra mistake while the shape is unknown.
            for key in ["length_cm", "width_cm", "top_width_cm", "bottom_width_cm", "depth_cm"] {
                table.number(key, SIZES);
            }
            table.has("band");
            None
        }
    };
    table.finish();
    let (shape, depth) = container?;
    Some(Container { shape, depth: Centimetres(depth), count })
}

/// The bands of a pot from the bottom up.
fn read_bands(pot: &TomlTable<'_>) -> Option<Vec<Band>> {
    let hint =
        "add [[container.band]] with height_cm and width_cm for each straight part, from the bottom up";
    if !pot.has("band") {
        pot.missing("band", hint);
        return None;
    }
    let tables = pot.tables("band");
    if tables.is_empty() {
        pot.problem(Code::EMPTY, "band", "has no band", hint);
        return None;
    }
    let mut bands = Vec::with_capacity(tables.len());
    let count = tables.len();
    for table in tables {
        let heights = 1.0..=500.0;
        let height = required(&table, "height_cm", SIZE_HINT, table.number("height_cm", heights));
        let width = required(&table, "width_cm", SIZE_HINT, table.number("width_cm", SIZES));
        bands.extend(
            height
                .zip(width)
                .map(|(height, width)| Band { height: Centimetres(height), width: Centimetres(width) }),
        );
        table.finish();
    }
    (bands.len() == count).then_some(bands)
}

/// The checks of the store: each after the one before, with no more roots.
pub(super) fn read_checks(root: &TomlTable<'_>, harvest: Option<NaiveDate>) -> Vec<Check> {
    let mut checks: Vec<Check> = Vec::new();
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
            let before = checks.last();
            let earliest = before.map(|check| check.date).or(harvest);
            if earliest.is_some_and(|earliest| date <= earliest) {
                table.problem(
                    Code::WRONG_ORDER,
                    "date",
                    format!("{date} does not come after the harvest and the check before"),
                    "write the checks in order of date",
                );
            }
            if let Some(before) = before
                && healthy + thrown_away.unwrap_or(0) > before.healthy
            {
                let message = format!("more roots than the {} of the check before", before.healthy);
                table.problem(Code::MISMATCH, "healthy", message, "count again, or correct the check before");
            }
            if sprouted.is_some_and(|sprouted| sprouted > healthy) {
                table.problem(
                    Code::MISMATCH,
                    "sprouted",
                    "more roots than are healthy",
                    "count the healthy roots with sprouts",
                );
            }
            checks.push(Check { date, healthy, thrown_away, sprouted });
        }
        table.finish();
    }
    checks
}
