//! What a plan counts and measures, how messages and sheets name it, and why it is so much.

use chrono::NaiveDate;

use super::units::{Centimetres, Kilograms, Litres, Metres, SquareMetres};
use super::worded::coded;
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
    /// The bed with its paths, along its strips.
    BedLength = "bed_length_m", Metres::SYMBOL,
        told("bed_length_m", "length of the seedbed, metres", "6.5")
            .decimals(1)
            .row_in("amount-bed", "bed-value");
    /// The bed with its paths, across its strips.
    BedWidth = "bed_width_m", Metres::SYMBOL,
        told("bed_width_m", "width of the seedbed with its paths, metres", "2.9").decimals(1);
    /// Strips of the bed, where there are more than one.
    BedStrips = "bed_strips", "strips",
        told("strips", "strips of the seedbed", "2").row_in("amount-strips", "strips-value");
    /// Length of each.
    StripLength = "strip_length_m", Metres::SYMBOL,
        told("strip_length_m", "length of a strip of the seedbed, metres", "6.5").decimals(1);
    /// Width of each.
    StripWidth = "strip_width_m", Metres::SYMBOL,
        told("strip_width_m", "width of a strip of the seedbed, metres", "1.2").decimals(1);
    /// Width of a path between them.
    BedPath = "bed_path_m", Metres::SYMBOL,
        told("path_m", "width of a path between the strips, metres", "0.5").decimals(1);
    /// Rows of roots along the bed.
    BedRows = "bed_rows", "rows",
        told("bed_rows", "rows of roots in the seedbed", "4");
    /// Roots in a row.
    RootsPerBedRow = "roots_per_bed_row", "roots",
        told("row_roots", "roots in each row", "10");
    /// Days from one watering to the next until shoots show.
    WateringDaysUntilShoots = "watering_days_until_shoots", "days",
        told("water_every_days", "days from one watering to the next, until shoots show", "3");
    /// Water to give at a time until shoots show.
    WaterUntilShoots = "water_l_until_shoots", Litres::SYMBOL,
        told("water_l_young", "water at a time until shoots show, litres", "50");
    /// Litres of water a day when the bed needs most.
    WaterPerDay = "water_l_per_day", "L/day",
        told("water_l", "water for the seedbed a day, litres", "119").row_in("amount-water", "water-value");
    /// Jerrycans of water a day.
    JerrycansPerDay = "jerrycans_per_day", "jerrycans/day",
        told("jerrycans", "jerrycans of water a day", "6").row("amount-jerrycans");
    /// Trips to the water a day.
    TripsPerDay = "water_trips_per_day", "trips/day";
    /// Hours of carrying water a day, of all who carry.
    WaterHours = "water_hours_per_day", "hours/day";
    /// Water of the whole bed season.
    WaterTotal = "water_total_l", Litres::SYMBOL,
        told("water_total_l", "water for the seedbed, all season, litres", "6230")
            .row_in("amount-water-total", "water-total-value");
    /// Cuttings of the first cut, losses in store taken off.
    CuttingsAtFirstCut = "cuttings_at_first_cut", "cuttings",
        told("first_cuttings", "cuttings expected at the first cut", "750")
            .row_in("amount-first-cuttings", "first-cuttings-value");
    /// Cuttings over the whole bed season.
    CuttingsOverSeason = "cuttings_over_season", "cuttings";
    /// Work on the ridges or mounds.
    WorkRidging = "work_ridging_days", "person-days";
    /// Work on the bed.
    WorkBed = "work_bed_days", "person-days";
    /// Work on watering it.
    WorkWatering = "work_watering_days", "person-days";
    /// Work on cutting the vines.
    WorkCutting = "work_cutting_days", "person-days";
    /// Work on planting them.
    WorkPlanting = "work_planting_days", "person-days";
    /// All this work.
    WorkTotal = "work_days", "person-days";
}

impl Quantity {
    /// Whether each farm of a group has its part of it. The others are of the store and the bed, which the group has together.
    pub fn is_shared_out(self) -> bool {
        matches!(
            self,
            Quantity::FieldArea
                | Quantity::FieldRows
                | Quantity::CuttingsPerRow
                | Quantity::CuttingsNeeded
                | Quantity::Bundles
                | Quantity::RootsToStore
                | Quantity::PlantsToMark
                | Quantity::PlantsPerMember
                | Quantity::RootsLeft
                | Quantity::RootsAtBed
                | Quantity::CuttingsExpected
                | Quantity::CuttingsShort
                | Quantity::CuttingsAtFirstCut
                | Quantity::CuttingsOverSeason
        )
    }
}

coded! {
    /// Why an amount is so.
    pub enum AmountReason {
        /// A farm's part of what the group has.
        PartOfGroup = "why-part-of-group" {
            /// What the whole group has.
            whole: f64,
        },
        /// What the cuttings plant.
        FieldOfCuttings = "why-field-of-cuttings" {
            /// Cuttings that there will be.
            cuttings: u32,
            /// How cuttings stand, ridges or mounds: chooses words.
            layout: &'static str,
            /// From ridge to ridge or mound to mound, metres.
            between_m: Metres,
            /// Metres from cutting to cutting on a ridge, or cuttings on a mound.
            each: f64,
        },
        /// The rows that the field has room for.
        FieldRows = "why-field-rows" {
            /// How cuttings stand, ridges or mounds: chooses words.
            layout: &'static str,
            /// From ridge to ridge or mound to mound, metres.
            between_m: Metres,
        },
        /// The cuttings that a row has room for.
        CuttingsPerRow = "why-cuttings-per-row" {
            /// How cuttings stand, ridges or mounds: chooses words.
            layout: &'static str,
            /// From ridge to ridge or mound to mound, metres.
            between_m: Metres,
            /// Metres from cutting to cutting on a ridge, or cuttings on a mound.
            each: f64,
        },
        /// The field by how cuttings stand in it.
        CuttingsForField = "why-cuttings-for-field" {
            /// The field, square metres.
            area_m2: SquareMetres,
            /// How cuttings stand, ridges or mounds: chooses words.
            layout: &'static str,
            /// From ridge to ridge or mound to mound, metres.
            between_m: Metres,
            /// Metres from cutting to cutting on a ridge, or cuttings on a mound.
            each: f64,
            /// Cuttings of 100 that are planted once more, for gaps.
            gaps: f64,
        },
        /// The sum of a group's farms.
        CuttingsForFarms = "why-cuttings-for-farms" {
            /// Farms of the group.
            farms: u32,
            /// Their fields together, square metres.
            area_m2: SquareMetres,
            /// Cuttings of 100 that are planted once more, for gaps.
            gaps: f64,
        },
        /// What the roots give over the bed season.
        CuttingsOfSeason = "why-cuttings-of-season" {
            /// Roots to store.
            roots: u32,
        },
        /// What the roots give at the first cut.
        CuttingsOfFirstCut = "why-cuttings-of-first-cut" {
            /// Roots to store.
            roots: u32,
        },
        /// What a zone's round number of roots gives.
        CuttingsOfZone = "why-cuttings-of-zone" {
            /// Roots to store.
            roots: u32,
        },
        /// The cuttings in bundles.
        Bundles = "why-bundles" {
            /// Cuttings in a bundle.
            bundle_size: f64,
        },
        /// As many as there are.
        RootsAtHand = "why-roots-at-hand",
        /// As many as the plants at hand give.
        RootsOfPlants = "why-roots-of-plants" {
            /// Plants at hand.
            plants: u32,
            /// Roots fit to store that a plant gives.
            per_plant: f64,
            /// Plants of 100 that are found sick later and given up.
            sick: f64,
        },
        /// As many as the bed has room for.
        RootsOfBed = "why-roots-of-bed" {
            /// The bed, square metres.
            bed_m2: SquareMetres,
            /// Bed that a root takes, square metres.
            per_root_m2: f64,
        },
        /// As many as the containers hold.
        RootsOfContainers = "why-roots-of-containers" {
            /// Containers at hand.
            containers: u32,
        },
        /// As many as the sand covers.
        RootsOfSand = "why-roots-of-sand" {
            /// Sand at hand, litres.
            sand_l: Litres,
        },
        /// As many as the water is enough for in the bed.
        RootsOfWater = "why-roots-of-water" {
            /// Where the water comes from, as it stands in the case.
            source: String,
            /// Water that it gives, litres.
            litres: f64,
            /// Whether it gives that a day or in all: chooses words.
            per: &'static str,
        },
        /// As many as those who carry water can water in the bed.
        RootsOfHands = "why-roots-of-hands" {
            /// People who carry.
            people: u32,
            /// Hours a day that each has for it.
            hours: f64,
            /// Trips that they make in a day together.
            trips: u32,
        },
        /// As many as give the cuttings over the bed season.
        RootsForSeason = "why-roots-for-season" {
            /// Cuttings that the field takes.
            cuttings: u32,
            /// Cuttings that a stored root gives, losses taken off.
            per_root: f64,
            /// Cuts of the bed that are counted on.
            cuts: f64,
        },
        /// As many as give the cuttings at the first cut.
        RootsForFirstCut = "why-roots-for-first-cut" {
            /// Cuttings that the field takes.
            cuttings: u32,
            /// Roots of 100 that survive in the sand.
            surviving: f64,
            /// Surviving roots of 100 that sprout; 100 where the figure for a root counts the others.
            sprouting: f64,
            /// Cuttings that a sprouted root gives at the first cut.
            per_root: f64,
            /// Days in the bed until then.
            days: f64,
        },
        /// As many as are enough in so many seasons.
        RootsToBeSure = "why-roots-to-be-sure" {
            /// Cuttings that the field takes.
            cuttings: u32,
            /// Seasons of 100 in which the cuttings suffice.
            percent: f64,
            /// Roots that are enough with the usual losses.
            usual: u32,
            /// By whose figures the plan counts, print or practice: chooses words.
            plan_by: &'static str,
        },
        /// A round number.
        RootsOfZone = "why-roots-of-zone",
        /// What survives, by what a root gives at the first cut.
        FirstCut = "why-first-cut" {
            /// Roots to store.
            roots: u32,
            /// Roots of 100 that survive in the sand.
            surviving: f64,
            /// Months in the sand.
            months: f64,
            /// Surviving roots of 100 that sprout; 100 where the figure for a root counts the others.
            sprouting: f64,
            /// Cuttings that a sprouted root gives at the first cut.
            per_root: f64,
            /// Days in the bed until then.
            days: f64,
        },
        /// The roots by what a root gives over the bed season.
        BedSeason = "why-bed-season" {
            /// Roots to store.
            roots: u32,
            /// Cuttings that a stored root gives, losses taken off.
            per_root: f64,
            /// Cuts of the bed that are counted on.
            cuts: f64,
        },
        /// The roots by what a plant gives.
        PlantsToMark = "why-plants-to-mark" {
            /// Roots fit to store that a plant gives.
            per_plant: f64,
            /// Roots to store.
            roots: u32,
            /// Plants that give them where none is given up.
            without_spare: u32,
            /// Plants marked beyond those.
            spare: u32,
            /// Marked plants of 100 that are found sick and given up.
            sick: f64,
        },
        /// The plants shared among the members.
        PlantsPerMember = "why-plants-per-member" {
            /// Plants to mark.
            plants: u32,
            /// Members of the group.
            members: u32,
        },
        /// Counted at the last check.
        RootsLeft = "why-roots-left",
        /// What the last check leaves by the day of the bed.
        RootsAtBed = "why-roots-at-bed" {
            /// Healthy roots at the last check.
            left: u32,
            /// The day the roots go to the bed.
            bed: NaiveDate,
        },
        /// What the roots at the bed give.
        CuttingsExpected = "why-cuttings-expected" {
            /// Roots that sprout.
            sprouting: u32,
            /// Cuttings that a sprouted root gives at the first cut.
            per_root: f64,
            /// Days in the bed until then.
            days: f64,
        },
        /// What the field takes, less what is expected.
        CuttingsShort = "why-cuttings-short" {
            /// Cuttings that the field takes.
            cuttings: u32,
            /// Cuttings expected at the first cut.
            expected: u32,
        },
        /// How roots lie in the lowest layer.
        RootsPerLayer = "why-roots-per-layer" {
            /// From root to root, centimetres.
            gap_cm: f64,
        },
        /// The container is wider or narrower there.
        RootsInTopLayer = "why-roots-in-top-layer",
        /// Between the sand below and on top.
        Layers = "why-layers" {
            /// Sand under the lowest layer, centimetres.
            base_cm: f64,
            /// Sand above the highest layer, centimetres.
            top_cm: f64,
        },
        /// For the roots that have room.
        Containers = "why-containers" {
            /// Roots in the containers.
            roots: u32,
        },
        /// Bottom and sides.
        Lining = "why-lining",
        /// What the roots leave of the containers.
        SandLitres = "why-sand-litres",
        /// By its weight.
        SandKilograms = "why-sand-kilograms" {
            /// What a litre of sand weighs, kilograms.
            per_litre_kg: f64,
        },
        /// By what one carries.
        SandLoads = "why-sand-loads" {
            /// The most to carry at once, kilograms.
            load_kg: f64,
        },
        /// By what a root takes.
        BedArea = "why-bed-area" {
            /// Bed that a root takes, square metres.
            per_root_m2: f64,
        },
        /// As long as its strips.
        BedLength = "why-bed-length" {
            /// Strips of the bed.
            strips: u32,
        },
        /// All strips, and the paths between them.
        BedWidth = "why-bed-width" {
            /// Strips of the bed.
            strips: u32,
            /// Width of a path, metres.
            path_m: Metres,
            /// The widest strip, metres.
            most_m: f64,
        },
        /// So many that none is too long.
        BedStrips = "why-bed-strips" {
            /// The longest strip, metres.
            longest_m: f64,
        },
        /// The area over the width, shared among the strips.
        StripLength = "why-strip-length",
        /// As far as arms reach.
        StripWidth = "why-strip-width" {
            /// The widest strip, metres.
            most_m: f64,
        },
        /// Room for feet.
        BedPath = "why-bed-path",
        /// Along the strips.
        BedRows = "why-bed-rows" {
            /// From row to row, centimetres.
            between_cm: Centimetres,
            /// Strips of the bed.
            strips: u32,
            /// Rows in each of them.
            per_strip: u32,
        },
        /// The roots shared among the rows.
        RootsPerBedRow = "why-roots-per-bed-row" {
            /// From root to root in a row, centimetres.
            along_cm: Centimetres,
        },
        /// By how much water the soil holds.
        WateringUntilShoots = "why-watering-until-shoots" {
            /// The soil of the bed, sand, loam, clay or unknown: chooses words.
            soil: &'static str,
            /// Days from bedding until shoots show.
            days: f64,
        },
        /// What the air takes from bare soil until the next watering.
        WaterUntilShoots = "why-water-until-shoots" {
            /// Days from one watering to the next.
            days: f64,
            /// The bed, square metres.
            bed_m2: SquareMetres,
            /// Coefficient of bare soil that is watered so often.
            kc: f64,
            /// Reference evapotranspiration, millimetres a day.
            et0_mm: f64,
        },
        /// The bed, by what its leaves and the sky take.
        WaterPerDay = "why-water-per-day" {
            /// The first day on which it needs most.
            from: NaiveDate,
            /// The bed, square metres.
            bed_m2: SquareMetres,
            /// Crop coefficient: how much the vines drink against grass.
            kc: f64,
            /// Reference evapotranspiration, millimetres a day.
            et0_mm: f64,
            /// How that is computed, hargreaves or penman-monteith: chooses words.
            method: &'static str,
            /// Rain that can be counted on, millimetres a day.
            rain_mm: f64,
            /// Litres of 100 that reach the roots.
            reaching: f64,
        },
        /// In jerrycans.
        JerrycansPerDay = "why-jerrycans-per-day" {
            /// What a jerrycan holds, litres.
            litres: f64,
        },
        /// In trips.
        TripsPerDay = "why-trips-per-day" {
            /// What one brings from a trip, litres.
            litres: f64,
        },
        /// By how long a trip takes.
        WaterHours = "why-water-hours" {
            /// Trips a day.
            trips: u32,
            /// Minutes that each takes.
            minutes: f64,
        },
        /// All days of the bed.
        WaterTotal = "why-water-total" {
            /// The first day on which the bed is watered.
            from: NaiveDate,
            /// The last day on which it is watered.
            to: NaiveDate,
        },
        /// By the field.
        WorkOnField = "why-work-on-field" {
            /// The field that is planted, square metres.
            area_m2: SquareMetres,
            /// The field for which the days are known, square metres.
            per_m2: f64,
        },
        /// By the cuttings.
        WorkOnCuttings = "why-work-on-cuttings" {
            /// Cuttings that are planted.
            cuttings: u32,
            /// Cuttings for which the days are known.
            per: f64,
        },
        /// All tasks together.
        WorkTotal = "why-work-total",
    }
}
