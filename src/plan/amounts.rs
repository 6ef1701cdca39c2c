//! What a plan counts, and why so much.

use chrono::NaiveDate;

use super::quantities::Quantity;
use super::units::{Centimetres, Metres, SquareMetres};
use super::worded::coded;

coded! {
    /// Why an amount is so.
    pub enum AmountReason {
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
        },
        /// As many as the bed has room for.
        RootsOfBed = "why-roots-of-bed" {
            /// The bed, square metres.
            bed_m2: SquareMetres,
            /// Bed that a root takes, square metres.
            per_root_m2: f64,
        },
        /// As many as give the cuttings over the bed season.
        RootsForSeason = "why-roots-for-season" {
            /// Cuttings that the field takes.
            cuttings: u32,
            /// Cuttings that a stored root gives, losses taken off.
            per_root: f64,
        },
        /// As many as give the cuttings at the first cut.
        RootsForFirstCut = "why-roots-for-first-cut" {
            /// Cuttings that the field takes.
            cuttings: u32,
            /// Roots of 100 that survive in the sand.
            surviving: f64,
            /// Cuttings that a surviving root gives at the first cut.
            per_root: f64,
        },
        /// As many as are enough in so many seasons.
        RootsToBeSure = "why-roots-to-be-sure" {
            /// Cuttings that the field takes.
            cuttings: u32,
            /// Seasons of 100 in which the cuttings suffice.
            percent: f64,
            /// Roots that are enough with the usual losses.
            usual: u32,
            /// By how many of 100 roots survival differs from season to season.
            spread: f64,
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
            /// Surviving roots of 100 that sprout.
            sprouting: f64,
            /// Cuttings that a sprouted root gives at the first cut.
            per_root: f64,
        },
        /// The roots by what a root gives over the bed season.
        BedSeason = "why-bed-season" {
            /// Roots to store.
            roots: u32,
            /// Cuttings that a stored root gives, losses taken off.
            per_root: f64,
            /// Cuts of the bed.
            cuts: f64,
        },
        /// The roots by what a plant gives.
        PlantsToMark = "why-plants-to-mark" {
            /// Roots fit to store that a plant gives.
            per_plant: f64,
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
        /// The area over the width.
        BedLength = "why-bed-length",
        /// As far as arms reach, or the bed is small.
        BedWidth = "why-bed-width" {
            /// The widest bed, metres.
            most_m: f64,
        },
        /// Along the bed.
        BedRows = "why-bed-rows" {
            /// From row to row, centimetres.
            between_cm: Centimetres,
        },
        /// The roots shared among the rows.
        RootsPerBedRow = "why-roots-per-bed-row" {
            /// From root to root in a row, centimetres.
            along_cm: Centimetres,
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
        /// All days of the bed.
        WaterTotal = "why-water-total" {
            /// The first day on which the bed is watered.
            from: NaiveDate,
            /// The last day on which it is watered.
            to: NaiveDate,
        },
    }
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
    pub why: AmountReason,
}

/// The amounts of a plan, in the order in which they follow from each other.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Amounts(pub Vec<Amount>);

impl Amounts {
    /// The value of a quantity; `None` where the plan has none.
    pub fn get(&self, quantity: Quantity) -> Option<f64> {
        self.0.iter().find(|amount| amount.quantity == quantity).map(|amount| amount.value)
    }

    pub(super) fn add(&mut self, quantity: Quantity, value: impl Into<f64>, why: AmountReason) {
        self.0.push(Amount { quantity, value: value.into(), range: None, why });
    }

    pub(super) fn add_range(
        &mut self,
        quantity: Quantity,
        value: impl Into<f64>,
        range: (f64, f64),
        why: AmountReason,
    ) {
        self.0.push(Amount { quantity, value: value.into(), range: Some(range), why });
    }
}
