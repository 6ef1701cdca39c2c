//! Areas as people measure them: in square metres, acres or hectares.

use crate::finding::Code;
use crate::plan::SquareMetres;
use crate::toml_reader::TomlTable;

/// A unit of area.
#[derive(Debug, PartialEq)]
struct Unit {
    /// The field of an area.
    area: &'static str,
    /// The field of a list of areas.
    list: &'static str,
    symbol: &'static str,
    square_metres: f64,
}

/// The units. An acre is 4840 square yards, each of 0.9144 m × 0.9144 m.
const UNITS: [Unit; 3] = [
    Unit { area: "area_m2", list: "field_sizes_m2", symbol: "m²", square_metres: 1.0 },
    Unit { area: "area_acres", list: "field_sizes_acres", symbol: "acres", square_metres: 4_046.856_422_4 },
    Unit { area: "area_ha", list: "field_sizes_ha", symbol: "ha", square_metres: 10_000.0 },
];

/// What to write where an area is wanted.
pub(super) const HOW: &str = "area_m2 = …, area_ha = … or area_acres = …";

/// Less takes the cuttings of a single root: hardly anybody measures it.
const LEAST_M2: f64 = 10.0;
/// Hardly any farm has more.
const UNUSUAL_M2: f64 = 100_000.0;
/// No smallholder has more, and no group.
const MOST_M2: f64 = 1_000_000.0;

/// The fields in which a table gives an area.
pub(super) fn given(table: &TomlTable<'_>) -> Vec<&'static str> {
    UNITS.iter().map(|unit| unit.area).filter(|field| table.has(field)).collect()
}

/// The area that a table gives in one of the units, for so many farms.
pub(super) fn read(table: &TomlTable<'_>, farms: u32) -> Option<SquareMetres> {
    let (unit, field) = only_one(table, |unit| unit.area)?;
    let value = table.any_number(field)?;
    let write = |unit: &Unit| format!("{} = {value}", unit.area);
    match unit.measure(value) {
        Ok(area) => {
            if area.0 > UNUSUAL_M2 * f64::from(farms.max(1)) {
                let message = format!("{value} {} is very much for a farm", unit.symbol);
                table.warn(Code::UNUSUAL, field, message, unit.ask(value, write));
            }
            Some(area)
        }
        Err(message) => {
            let mut hint = unit.ask(value, write);
            if (0.0..LEAST_M2).contains(&(value * unit.square_metres)) && value > 0.0 {
                hint.push_str("; for so small a plot, write its sides: length_m, width_m");
            }
            table.problem(Code::OUT_OF_RANGE, field, message, hint);
            None
        }
    }
}

/// The areas that a table lists in one of the units.
pub(super) fn read_list(table: &TomlTable<'_>) -> Option<Vec<SquareMetres>> {
    let (unit, field) = only_one(table, |unit| unit.list)?;
    let mut areas = Vec::new();
    for value in table.any_numbers(field)? {
        match unit.measure(value) {
            Ok(area) => areas.push(area),
            Err(message) => {
                let hint = unit.ask(value, |unit| unit.list.to_owned());
                table.problem(Code::OUT_OF_RANGE, field, message, hint);
                return None;
            }
        }
    }
    Some(areas)
}

/// The unit in which a table says something, and its field there.
fn only_one(
    table: &TomlTable<'_>,
    field: impl Fn(&Unit) -> &'static str,
) -> Option<(&'static Unit, &'static str)> {
    let mut given = UNITS.iter().map(|unit| (unit, field(unit))).filter(|(_, field)| table.has(field));
    let first = given.next()?;
    for (_, other) in given {
        let message = format!("{} and {other} both stand here", first.1);
        table.problem(Code::CONFLICT, other, message, "keep one of them");
    }
    Some(first)
}

impl Unit {
    /// So much of it in square metres; what is wrong where nobody has such a field.
    fn measure(&self, value: f64) -> Result<SquareMetres, String> {
        let area = value * self.square_metres;
        let written = format!("{value} {}", self.symbol);
        match area {
            LEAST_M2..=MOST_M2 => Ok(SquareMetres(area)),
            _ if area > MOST_M2 && area.is_finite() => {
                Err(format!("{written} is more than a smallholder's field"))
            }
            _ if area > 0.0 && area.is_finite() => {
                Err(format!("{written} is less than a field of sweet potato"))
            }
            _ => Err(format!("{value} is not possible")),
        }
    }

    /// Asks for the unit that was meant, where there is one.
    fn ask(&self, value: f64, write: impl Fn(&Unit) -> String) -> String {
        let fits =
            |unit: &&Unit| **unit != *self && (LEAST_M2..=UNUSUAL_M2).contains(&(value * unit.square_metres));
        let meant: Vec<String> = UNITS.iter().filter(fits).map(write).collect();
        if meant.is_empty() {
            let limit = |area: f64| (area / self.square_metres * 1e4).round() / 1e4;
            return format!("write a number from {} to {}", limit(LEAST_M2), limit(MOST_M2));
        }
        format!("was another unit meant? write {}", meant.join(" or "))
    }
}
