//! What a plan counts, and why so much.

use serde::ser::SerializeMap;
use serde::{Serialize, Serializer};

use super::{Kilograms, Litres, Metres, SquareMetres};

macro_rules! quantities {
    ($($(#[$doc:meta])* $variant:ident = $name:literal, $unit:expr;)*) => {
        /// What an amount measures.
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub enum Quantity {
            $($(#[$doc])* $variant,)*
        }

        impl Quantity {
            /// The quantity's name in plans.
            pub fn name(self) -> &'static str {
                match self { $(Quantity::$variant => $name,)* }
            }

            /// Its unit, or what is counted.
            pub fn unit(self) -> &'static str {
                match self { $(Quantity::$variant => $unit,)* }
            }
        }
    };
}

quantities! {
    /// The field that what is at hand plants.
    FieldArea = "field_m2", SquareMetres::SYMBOL;
    /// Rows of ridges or mounds.
    FieldRows = "field_rows", "rows";
    /// Cuttings in a row.
    CuttingsPerRow = "cuttings_per_row", "cuttings";
    /// Cuttings that plant the field once, gaps included.
    CuttingsNeeded = "cuttings_needed", "cuttings";
    /// Bundles of them.
    Bundles = "bundles", "bundles";
    /// Cuttings of the first cut, losses in store taken off.
    CuttingsAtFirstCut = "cuttings_at_first_cut", "cuttings";
    /// Cuttings over the whole bed season.
    CuttingsOverSeason = "cuttings_over_season", "cuttings";
    /// Roots to put into sand.
    RootsToStore = "roots_to_store", "roots";
    /// Plants to mark before harvest.
    PlantsToMark = "plants_to_mark", "plants";
    /// Plants each member of a group marks.
    PlantsPerMember = "plants_per_member", "plants";
    /// Healthy roots at the last check.
    RootsLeft = "roots_left", "roots";
    /// Roots to be expected in the bed after the last check.
    RootsAtBed = "roots_at_bed", "roots";
    /// Cuttings they give at the first cut.
    CuttingsExpected = "cuttings_expected", "cuttings";
    /// Cuttings that are short of the field at the first cut.
    CuttingsShort = "cuttings_short", "cuttings";
    /// Roots in the lowest layer.
    RootsPerLayer = "roots_per_layer", "roots";
    /// Roots in the topmost layer when it is full.
    RootsInTopLayer = "roots_in_top_layer", "roots";
    /// Layers in the fullest container.
    Layers = "layers", "layers";
    /// Containers.
    Containers = "containers", "containers";
    /// Paper to line them.
    Lining = "lining_m2", SquareMetres::SYMBOL;
    /// Sand, litres.
    SandLitres = "sand_l", Litres::SYMBOL;
    /// Sand, kilograms.
    SandKilograms = "sand_kg", Kilograms::SYMBOL;
    /// Loads in which the sand is carried.
    SandLoads = "sand_loads", "loads";
    /// Bed area.
    BedArea = "bed_area_m2", SquareMetres::SYMBOL;
    /// Longer side of the bed.
    BedLength = "bed_length_m", Metres::SYMBOL;
    /// Shorter side of the bed.
    BedWidth = "bed_width_m", Metres::SYMBOL;
    /// Rows of roots along the bed.
    BedRows = "bed_rows", "rows";
    /// Roots in a row.
    RootsPerBedRow = "roots_per_bed_row", "roots";
    /// Litres of water a day when the bed needs most.
    WaterPerDay = "water_l_per_day", "L/day";
    /// Jerrycans of water a day.
    JerrycansPerDay = "jerrycans_per_day", "jerrycans/day";
    /// Trips to the water a day.
    TripsPerDay = "water_trips_per_day", "trips/day";
    /// Water of the whole bed season.
    WaterTotal = "water_total_l", Litres::SYMBOL;
}

/// An amount with its reason.
#[derive(Debug, Clone, PartialEq)]
pub struct Amount {
    /// What it measures.
    pub quantity: Quantity,
    /// How much, in the quantity's unit.
    pub value: f64,
    /// What it may well be instead, from least to most, where its parameters are known to differ.
    pub range: Option<(f64, f64)>,
    /// Why so much.
    pub why: String,
}

/// The amounts of a plan, in the order in which they follow from each other.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Amounts(pub Vec<Amount>);

impl Amounts {
    /// The value of a quantity; `None` where the plan has none.
    pub fn get(&self, quantity: Quantity) -> Option<f64> {
        self.0.iter().find(|amount| amount.quantity == quantity).map(|amount| amount.value)
    }

    pub(super) fn add(&mut self, quantity: Quantity, value: impl Into<f64>, why: impl Into<String>) {
        self.0.push(Amount { quantity, value: value.into(), range: None, why: why.into() });
    }

    pub(super) fn add_range(
        &mut self,
        quantity: Quantity,
        value: impl Into<f64>,
        range: (f64, f64),
        why: impl Into<String>,
    ) {
        self.0.push(Amount { quantity, value: value.into(), range: Some(range), why: why.into() });
    }
}

impl Serialize for Amounts {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        #[derive(Serialize)]
        struct Entry<'a> {
            #[serde(serialize_with = "plain_number")]
            value: f64,
            #[serde(skip_serializing_if = "Option::is_none", serialize_with = "plain_if_known")]
            low: Option<f64>,
            #[serde(skip_serializing_if = "Option::is_none", serialize_with = "plain_if_known")]
            high: Option<f64>,
            unit: &'a str,
            why: &'a str,
        }
        let mut map = serializer.serialize_map(Some(self.0.len()))?;
        for amount in &self.0 {
            let entry = Entry {
                value: amount.value,
                low: amount.range.map(|(low, _)| low),
                high: amount.range.map(|(_, high)| high),
                unit: amount.quantity.unit(),
                why: &amount.why,
            };
            map.serialize_entry(amount.quantity.name(), &entry)?;
        }
        map.end()
    }
}

/// Whole numbers without ".0", as a reader of JSON expects of counts.
pub(super) fn plain_number<S: Serializer>(value: &f64, serializer: S) -> Result<S::Ok, S::Error> {
    if value.fract() == 0.0 && value.abs() < 9e15 {
        serializer.serialize_i64(*value as i64)
    } else {
        serializer.serialize_f64(*value)
    }
}

/// The same for a number that may be absent.
pub(super) fn plain_if_known<S: Serializer>(value: &Option<f64>, serializer: S) -> Result<S::Ok, S::Error> {
    match value {
        Some(value) => plain_number(value, serializer),
        None => serializer.serialize_none(),
    }
}
