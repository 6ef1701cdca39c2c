//! What a plan counts and measures, and how messages and sheets name it.

use super::{Kilograms, Litres, Metres, SquareMetres};
use crate::catalogue::catalogue;

/// A quantity as messages name it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct MessageValue {
    /// Its name in messages.
    pub name: &'static str,
    /// What it means, for those who translate.
    pub meaning: &'static str,
    /// An example of it.
    pub example: &'static str,
    /// The most decimals it is written with.
    pub decimals: u8,
    /// What stands for it where a plan lacks it. Messages that name it first ask what holds.
    pub otherwise: Option<Quantity>,
    /// Its row among a sheet's amounts. A value without one stands in sentences only.
    pub row: Option<AmountRow>,
}

/// A row of a sheet's amounts. It is there where the plan has its value.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct AmountRow {
    /// The message that labels it.
    pub label: &'static str,
    /// The message that holds its value, with the choice for which alone it does; else the bare number.
    pub message: Option<(&'static str, Option<Choice>)>,
    /// The choice for which alone the row is there.
    pub only: Option<Choice>,
}

/// A value that chooses words, and what it is: `("kind", "group")`.
pub type Choice = (&'static str, &'static str);

const fn told(name: &'static str, meaning: &'static str, example: &'static str) -> MessageValue {
    MessageValue { name, meaning, example, decimals: 0, otherwise: None, row: None }
}

impl MessageValue {
    const fn decimals(self, decimals: u8) -> MessageValue {
        MessageValue { decimals, ..self }
    }

    const fn otherwise(self, quantity: Quantity) -> MessageValue {
        MessageValue { otherwise: Some(quantity), ..self }
    }

    /// With a row that holds the number.
    const fn row(self, label: &'static str) -> MessageValue {
        MessageValue { row: Some(AmountRow { label, message: None, only: None }), ..self }
    }

    /// With a row that is there for one choice only.
    const fn row_only(self, label: &'static str, only: Choice) -> MessageValue {
        MessageValue { row: Some(AmountRow { label, message: None, only: Some(only) }), ..self }
    }

    /// With a row whose value is a message.
    const fn row_in(self, label: &'static str, message: &'static str) -> MessageValue {
        MessageValue { row: Some(AmountRow { label, message: Some((message, None)), only: None }), ..self }
    }

    /// With a row that holds the number, and for one choice a message.
    const fn row_or(self, label: &'static str, message: &'static str, only: Choice) -> MessageValue {
        let message = Some((message, Some(only)));
        MessageValue { row: Some(AmountRow { label, message, only: None }), ..self }
    }
}

/// Declares the quantities: each with its name in plans, its unit and, where messages name it, how.
macro_rules! quantities {
    ($($(#[$doc:meta])* $Quantity:ident = $name:literal, $unit:expr $(, $value:expr)?;)+) => {
        catalogue! {
            /// What an amount measures; on a sheet in this order.
            pub enum Quantity: QuantityEntry {
                /// Its unit, or what is counted.
                unit: &'static str,
                /// How messages name it; nothing where none does.
                in_messages: Option<MessageValue>,
            }
            $($(#[$doc])* $Quantity = $name {
                unit: $unit,
                in_messages: quantities!(@value $($value)?),
            };)+
        }
    };
    (@value) => { None };
    (@value $value:expr) => { Some($value) };
}

quantities! {
    /// The field that what is at hand plants.
    FieldArea = "field_m2", SquareMetres::SYMBOL;
    /// Rows of ridges or mounds.
    FieldRows = "field_rows", "rows";
    /// Cuttings in a row.
    CuttingsPerRow = "cuttings_per_row", "cuttings";
    /// Cuttings that plant the field once, gaps included.
    CuttingsNeeded = "cuttings_needed", "cuttings",
        told("cuttings", "cuttings that the field takes", "1500").row("amount-cuttings");
    /// Bundles of them.
    Bundles = "bundles", "bundles",
        told("bundles", "bundles of cuttings", "5").row_in("amount-bundles", "bundles-value");
    /// Roots to put into sand.
    RootsToStore = "roots_to_store", "roots",
        told("roots", "roots to store", "40").row_or("amount-roots", "roots-for-zone", ("kind", "zone"));
    /// Plants to mark before harvest.
    PlantsToMark = "plants_to_mark", "plants",
        told("plants", "plants to mark", "25").row("amount-plants");
    /// Plants each member of a group marks.
    PlantsPerMember = "plants_per_member", "plants",
        told("plants_each", "plants that each member of a group marks", "6")
            .row_only("amount-plants-each", ("kind", "group"))
            .otherwise(Quantity::PlantsToMark);
    /// Healthy roots at the last check.
    RootsLeft = "roots_left", "roots";
    /// Roots to be expected in the bed after the last check.
    RootsAtBed = "roots_at_bed", "roots";
    /// Cuttings they give at the first cut.
    CuttingsExpected = "cuttings_expected", "cuttings";
    /// Cuttings that are short of the field at the first cut.
    CuttingsShort = "cuttings_short", "cuttings";
    /// Containers.
    Containers = "containers", "containers",
        told("containers", "containers for the roots", "2").row("amount-containers");
    /// Layers in the fullest container.
    Layers = "layers", "layers",
        told("layers", "layers of roots in a container", "3").row("amount-layers");
    /// Roots in the lowest layer.
    RootsPerLayer = "roots_per_layer", "roots",
        told("roots_per_layer", "roots in the lowest layer", "17").row("amount-roots-per-layer");
    /// Roots in the topmost layer when it is full.
    RootsInTopLayer = "roots_in_top_layer", "roots",
        told("roots_top", "roots in the highest layer", "18")
            .row_only("amount-roots-top-layer", ("layer_widths", "uneven"))
            .otherwise(Quantity::RootsPerLayer);
    /// Paper to line them.
    Lining = "lining_m2", SquareMetres::SYMBOL,
        told("lining_m2", "paper to line the containers, square metres", "0.9")
            .decimals(1)
            .row_in("amount-lining", "lining-value");
    /// Sand, litres.
    SandLitres = "sand_l", Litres::SYMBOL,
        told("sand_l", "sand, litres", "79").row_in("amount-sand", "sand-value");
    /// Sand, kilograms.
    SandKilograms = "sand_kg", Kilograms::SYMBOL,
        told("sand_kg", "sand, kilograms", "113");
    /// Loads in which the sand is carried.
    SandLoads = "sand_loads", "loads",
        told("loads", "loads in which the sand is carried", "8").row("amount-loads");
    /// Bed area.
    BedArea = "bed_area_m2", SquareMetres::SYMBOL;
    /// Longer side of the bed.
    BedLength = "bed_length_m", Metres::SYMBOL,
        told("bed_length_m", "length of the seedbed, metres", "5")
            .decimals(1)
            .row_in("amount-bed", "bed-value");
    /// Shorter side of the bed.
    BedWidth = "bed_width_m", Metres::SYMBOL,
        told("bed_width_m", "width of the seedbed, metres", "3").decimals(1);
    /// Rows of roots along the bed.
    BedRows = "bed_rows", "rows",
        told("bed_rows", "rows of roots in the seedbed", "6");
    /// Roots in a row.
    RootsPerBedRow = "roots_per_bed_row", "roots",
        told("row_roots", "roots in each row", "7");
    /// Litres of water a day when the bed needs most.
    WaterPerDay = "water_l_per_day", "L/day",
        told("water_l", "water for the seedbed a day, litres", "119").row_in("amount-water", "water-value");
    /// Jerrycans of water a day.
    JerrycansPerDay = "jerrycans_per_day", "jerrycans/day",
        told("jerrycans", "jerrycans of water a day", "6").row("amount-jerrycans");
    /// Trips to the water a day.
    TripsPerDay = "water_trips_per_day", "trips/day";
    /// Water of the whole bed season.
    WaterTotal = "water_total_l", Litres::SYMBOL,
        told("water_total_l", "water for the seedbed, all season, litres", "6230")
            .row_in("amount-water-total", "water-total-value");
    /// Cuttings of the first cut, losses in store taken off.
    CuttingsAtFirstCut = "cuttings_at_first_cut", "cuttings",
        told("first_cuttings", "cuttings expected at the first cut", "1056").row("amount-first-cuttings");
    /// Cuttings over the whole bed season.
    CuttingsOverSeason = "cuttings_over_season", "cuttings";
}
