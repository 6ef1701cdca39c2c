//! Every default of the trade, in one place, each with its source.
//!
//! A case overrides any of them in its `[assumptions]` table, by the same
//! name; the plan lists which were used.

/// How well a default is founded.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Basis {
    /// Read in the publication named, or in an abstract of it.
    Found,
    /// From memory; not yet read in the publication named.
    Memory,
    /// Common practice of the trade, no source.
    Practice,
    /// Arithmetic from other values.
    Computed,
}

/// A default: its name, value, unit, limits and source.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Default {
    /// Name, as written in a case's `[assumptions]`.
    pub name: &'static str,
    /// The default value, in `unit`.
    pub value: f64,
    /// Unit of the value; empty for a plain number.
    pub unit: &'static str,
    /// Least sensible value.
    pub least: f64,
    /// Greatest sensible value.
    pub greatest: f64,
    /// From least to most of what is found in practice or print, where it is known to differ.
    pub range: Option<(f64, f64)>,
    /// How well it is founded.
    pub basis: Basis,
    /// Where it comes from.
    pub source: &'static str,
}

macro_rules! assumptions {
    ($($name:ident = $value:literal, $unit:literal, $least:literal..$greatest:literal, $(($low:literal..$high:literal),)? $basis:ident, $source:literal;)*) => {
        /// The values one plan rests on: the defaults, where the case says nothing else.
        #[derive(Debug, Clone, PartialEq)]
        pub struct Assumptions {
            $(#[doc = concat!("In ", $unit, "; ", $source, ".")] pub $name: f64,)*
        }

        impl std::default::Default for Assumptions {
            fn default() -> Self {
                Assumptions::DEFAULTS
            }
        }

        /// From least to most of what is found of each default, where it is known to differ.
        #[derive(Debug, Clone)]
        #[allow(missing_docs)]
        pub struct Ranges {
            $(pub $name: Option<(f64, f64)>,)*
        }

        impl Assumptions {
            /// The table of defaults.
            pub const TABLE: &'static [Default] = &[$(Default {
                name: stringify!($name), value: $value, unit: $unit, least: $least as f64, greatest: $greatest as f64,
                range: assumptions!(@range $($low, $high)?), basis: Basis::$basis, source: $source,
            },)*];

            /// The defaults themselves.
            pub const DEFAULTS: Assumptions = Assumptions { $($name: $value,)* };

            /// How far each default is known to differ.
            pub const RANGES: Ranges = Ranges { $($name: assumptions!(@range $($low, $high)?),)* };

            /// The value of the assumption called `name`.
            pub fn get(&self, name: &str) -> Option<f64> {
                match name { $(stringify!($name) => Some(self.$name),)* _ => None }
            }

            /// Sets the assumption called `name`; `None` where there is no such name.
            pub fn set(&mut self, name: &str, value: f64) -> Option<()> {
                match name { $(stringify!($name) => { self.$name = value; Some(()) })* _ => None }
            }

            /// The values in the order of the table.
            pub fn values(&self) -> impl Iterator<Item = f64> + use<> {
                [$(self.$name),*].into_iter()
            }
        }
    };
    (@range) => { None };
    (@range $low:literal, $high:literal) => { Some(($low, $high)) };
}

assumptions! {
    mark_days_before_harvest = 30.0, "days", 7..120, Practice, "common practice, no source";
    mark_within_days = 7.0, "days", 1..30, Practice, "common practice, no source";
    check_days_before_harvest_first = 7.0, "days", 1..30, (5.0..7.0), Practice, "common practice, no source: 3 to 5 days before; here 2 days sooner, as nobody sees sickness on vines that are cut";
    check_days_before_harvest_last = 5.0, "days", 0..30, (3.0..5.0), Practice, "common practice, no source: 3 to 5 days before; here 2 days sooner, as nobody sees sickness on vines that are cut";
    cut_vines_days_before_harvest_first = 4.0, "days", 1..30, Practice, "common practice, no source";
    cut_vines_days_before_harvest_last = 3.0, "days", 0..30, Practice, "common practice, no source";
    stem_left_cm = 15.0, "cm", 5..50, Practice, "common practice, no source: a hand's length";
    gather_sand_days_before_harvest = 14.0, "days", 1..90, Practice, "common practice, no source: time to dry and to cool";
    fill_within_days = 1.0, "days", 0..7, Practice, "common practice, no source: after some hours in shade";
    early_check_days_first = 10.0, "days", 3..30, Memory, "most losses come early, from memory: look after 10 to 14 days";
    early_check_days_last = 14.0, "days", 3..60, Memory, "most losses come early, from memory: look after 10 to 14 days";
    check_every_months = 1.0, "months", 1..3, Practice, "common practice, no source";
    least_days_between_checks = 14.0, "days", 0..60, Practice, "common practice, no source: a check so close to the next work only disturbs the roots";
    check_soon_days = 14.0, "days", 3..60, Practice, "common practice, no source: a store that rots faster than any on record is checked again in two weeks";
    bed_weeks_before_rains_first = 8.0, "weeks", 2..26, Practice, "common practice, no source: 6 to 8 weeks";
    bed_weeks_before_rains_last = 6.0, "weeks", 1..26, Practice, "common practice, no source: 6 to 8 weeks";
    prepare_bed_days = 7.0, "days", 1..60, Practice, "common practice, no source";
    first_cut_days_after_bed = 30.0, "days", 14..120, (30.0..56.0), Found, "FAO Better Farming 16 (1977): about 30 to 56 days from bed to first cutting";
    next_cut_days_first = 28.0, "days", 7..90, Memory, "4 to 6 weeks between cuts, from memory";
    next_cut_days_last = 42.0, "days", 7..120, Memory, "4 to 6 weeks between cuts, from memory";
    planting_window_days = 14.0, "days", 1..60, Practice, "common practice, no source";
    first_harvest_days_first = 90.0, "days", 60..300, Found, "orange-fleshed varieties 3 to 4 months (HarvestChoice and others)";
    first_harvest_days_last = 120.0, "days", 60..365, Found, "orange-fleshed varieties 3 to 4 months (HarvestChoice and others)";
    early_maturity_days_first = 90.0, "days", 60..300, Memory, "early varieties 90 to 105 days, from memory";
    early_maturity_days_last = 105.0, "days", 60..365, Memory, "early varieties 90 to 105 days, from memory";
    medium_maturity_days_first = 120.0, "days", 60..300, Memory, "medium varieties 120 to 135 days, from memory";
    medium_maturity_days_last = 135.0, "days", 60..365, Memory, "medium varieties 120 to 135 days, from memory";
    late_maturity_days_first = 150.0, "days", 60..300, Memory, "late varieties 150 to 180 days, from memory";
    late_maturity_days_last = 180.0, "days", 60..365, Memory, "late varieties 150 to 180 days, from memory";
    dry_ripening_days = 0.0, "days", 0..90, (0.0..20.0), Practice, "common practice, no source: the rains are to last until the last roots are ripe; a soil that holds 100 mm and loses 5 mm a day carries a crop for 20 days more";
    ripe_share_least = 0.5, "", 0..1, Practice, "common practice, no source: a cut is counted on that ripens before the rains end in half of the years or more";
    vines_kept_days = 90.0, "days", 0..240, (60.0..120.0), Memory, "vines live through two to four dry months in a standing crop or a small watered plot, from memory; where the rains come twice a year, evenly spaced, farmers in Uganda take all vines from standing crops (found: Namanda, Gibson and Sindi, J. Sustainable Agriculture 35:870, 2011)";
    harvest_within_days = 30.0, "days", 0..180, Practice, "common practice, no source: weevil damage grows from 3 % at 3.5 months to 73 % at 9.5 (found: Uganda trials, 1997)";
    zone_span_days = 7.0, "days", 1..60, Practice, "common practice, no source: in a zone nobody works on the same day";
    storage_evidence_days = 150.0, "days", 30..365, Found, "participatory validation study, southern Ethiopia: one dry season, here taken as 5 months at most";
    storage_most_days = 240.0, "days", 60..730, (135.0..198.0), Memory, "no dry season that roots are stored over is longer, from memory; kept in sand for eating 4.5 months in Ghana, 6.5 in Malawi (Abidin and others, guide 2018)";

    roots_per_plant = 1.6, "roots", 0.2..20, Practice, "common practice, no source: 25 plants for 40 roots";
    sick_share = 0.1, "", 0..0.9, (0.0..0.2), Memory, "about 1 in 10 of the plants marked is given up at the check, from memory; 25 plants for 40 roots leave none to spare";
    zone_roots = 40.0, "roots", 1..10000, Practice, "common practice, no source: 40 roots as the unit of a zone's plan";
    cuttings_per_root_day_30 = 1.0, "cuttings", 0.1..200, (0.0..4.0), Computed, "cuttings of a sprouted root cut 30 days after bedding: sprouts, vine growth and emergence from memory (docs/methods.md)";
    cuttings_per_root_day_42 = 5.0, "cuttings", 0.1..200, (2.0..12.0), Computed, "the same after 42 days; 4 to 5 slips a root after about six weeks found (Browning, Nebraska column, 2020)";
    cuttings_per_root_day_56 = 10.0, "cuttings", 0.1..200, (4.0..24.0), Computed, "the same after 56 days: sprouts, vine growth and emergence from memory";
    cuttings_per_root_day_70 = 14.0, "cuttings", 0.1..200, (6.0..31.0), Computed, "the same after 70 days: sprouts, vine growth and emergence from memory";
    cuttings_per_root_day_84 = 18.0, "cuttings", 0.1..200, (7.0..39.0), Computed, "the same after 84 days or more: sprouts, vine growth and emergence from memory";
    cuttings_per_root_later_cut = 6.0, "cuttings", 0..200, (2.0..12.0), Computed, "cuttings of a sprouted root at each later cut, after 28 days of regrowth: sprouts and vine growth from memory";
    cuttings_per_root_season = 37.5, "cuttings", 1..200, (30.0..40.0), Practice, "common practice, no source: 40 roots stored give about 1,500 cuttings over the bed season, losses included; counts only where plan_by is practice";
    cuttings_per_root_first_cut = 30.0, "cuttings", 1..200, (30.0..40.0), Practice, "30 to 40 over three harvests found elsewhere; contradictory, 30 a surviving root taken for the first cut; counts only where plan_by is practice";
    cuts = 3.0, "cuts", 1..6, Found, "30 to 40 cuttings a root over three harvests of the bed";
    sprout_share = 0.9, "", 0.05..1, (0.7..0.98), Memory, "of roots that survive, 70 to 98 % sprout, from memory; strongly varietal: one variety left half of its roots unsprouted (found: CIP dataset doi:10.21223/P3/BYYGSK)";
    gap_share = 0.1, "", 0..0.5, (0.02..0.15), Memory, "of cuttings planted in wet soil, 85 to 98 % establish, from memory; 10 to 20 % fail is usual, and far more after a dry week";
    vine_plot_weeks = 7.0, "weeks", 4..16, (6.0..8.0), Memory, "vines of a watered plot are cut after 6 to 8 weeks, from memory";
    vine_plot_rate = 5.0, "cuttings", 1..20, (3.0..10.0), Memory, "a cutting planted in a watered plot gives 3 to 10 at a cut, from memory";
    vine_plot_cuttings_per_m2 = 100.0, "cuttings", 10..400, (50.0..200.0), Memory, "a watered plot gives 50 to 200 cuttings a square metre at a cut, from memory";
    vine_plot_spacing_cm = 15.0, "cm", 5..50, (15.0..30.0), Found, "15 × 15 cm gives more vines than 30 × 30 (Kakuhenzire and others, 2017)";
    large_field_m2 = 2000.0, "m²", 0..100000, Practice, "common practice, no source: from a fifth of a hectare on, other ways to cuttings are shown beside the plain one";
    cuttings_per_bundle = 300.0, "cuttings", 10..2000, Computed, "a bundle is local; 300 cuttings plant 90 m² at 33,333 a hectare";
    survival_share = 0.88, "", 0.01..1, (0.81..0.95), Found, "81 to 95 % in sand over a season, southern Ethiopia (participatory validation study, abstract); middle of the range";
    survival_low = 0.81, "", 0.01..1, Found, "81 to 95 % in sand over a season, southern Ethiopia (participatory validation study, abstract); low end of the range";
    survival_high = 0.95, "", 0.01..1, Found, "81 to 95 % in sand over a season, southern Ethiopia (participatory validation study, abstract); high end of the range";
    survival_months = 4.0, "months", 1..12, Computed, "the season of these shares is taken to last 4 months: 1.3 to 5.1 % lost a month";
    early_loss_months = 1.0, "months", 0..6, Memory, "most losses come early, from memory: what an early check finds lost counts as the losses of a month";
    survival_spread = 0.055, "", 0.001..0.3, Computed, "81 to 95 % taken as the middle 80 % of seasons: half the range over 1.28 is one standard deviation";

    root_length_mm = 111.0, "mm", 40..300, (86.0..136.0), Found, "physical-properties study of one orange-fleshed variety: 111 ± 25 mm";
    root_diameter_mm = 61.0, "mm", 15..200, (53.0..69.0), Found, "physical-properties study of one orange-fleshed variety: 61 ± 8 mm";
    root_volume_ml = 188.0, "ml", 10..3000, (114.0..262.0), Found, "physical-properties study of one orange-fleshed variety: 188 ± 74 ml";
    root_gap_cm = 2.0, "cm", 0.5..10, Practice, "common practice, no source: roots touch neither each other nor the side";
    base_sand_cm = 3.0, "cm", 1..20, (2.0..3.0), Practice, "common practice, no source: 2 to 3 cm";
    layer_sand_cm = 2.0, "cm", 0.5..20, (2.0..5.0), Practice, "common practice, no source: enough to cover the roots";
    top_sand_cm = 10.0, "cm", 2..50, Practice, "common practice, no source";
    sand_density_kg_per_l = 1.442, "kg/L", 1..2.2, (1.442..1.602), Found, "web tables of bulk density: dry sand, loose, 1,442 kg/m³";
    bucket_l = 10.0, "L", 1..30, Practice, "common practice, no source: a bucket that one carries";
    load_limit_kg = 15.0, "kg", 5..25, Found, "ILO Occupational Safety and Health Series 59: 15 kg for occasional lifting, women aged 19 to 45";
    container_width_cm = 50.0, "cm", 10..300, Practice, "common practice, no source: a wide basin, where the case names none";
    container_depth_cm = 25.0, "cm", 10..200, Practice, "common practice, no source: a wide basin, where the case names none";

    bed_area_per_root_m2 = 0.375, "m²", 0.05..2, Practice, "common practice, no source: 3 m × 5 m for 40 roots";
    bed_width_m = 1.2, "m", 0.3..5, (1.0..1.2), Memory, "arms reach across strips of 1 to 1.2 m, from memory (CIP; a Kerala package of practices)";
    bed_path_m = 0.5, "m", 0..2, Memory, "paths of 0.5 m between the strips of a bed, from memory";
    bed_strip_length_m = 10.0, "m", 1..100, Practice, "common practice, no source: round a longer strip one walks too far";
    bed_root_depth_cm = 5.0, "cm", 1..20, (3.0..7.0), Memory, "soil over the roots in the bed, from memory";
    bed_root_spacing_cm = 50.0, "cm", 10..100, (30.0..50.0), Memory, "CIP training-of-trainers manual vol. 3 (2013), from memory: 50 × 50 cm, 30 to 50";
    kc_initial = 0.5, "", 0.1..1.5, Found, "FAO Irrigation and Drainage Paper 56, Table 12: sweet potato, initial stage";
    kc_middle = 1.15, "", 0.3..1.5, Found, "FAO Irrigation and Drainage Paper 56, Table 12: sweet potato, mid season";
    kc_end = 0.65, "", 0.1..1.5, Found, "FAO Irrigation and Drainage Paper 56, Table 12: sweet potato, end of the late season";
    kc_initial_days = 15.0, "days", 1..90, Found, "FAO Irrigation and Drainage Paper 56, Table 11: sweet potato, tropics";
    kc_development_days = 30.0, "days", 1..120, Found, "FAO Irrigation and Drainage Paper 56, Table 11: sweet potato, tropics";
    kc_middle_days = 50.0, "days", 1..200, Found, "FAO Irrigation and Drainage Paper 56, Table 11: sweet potato, tropics";
    kc_late_days = 30.0, "days", 1..120, Found, "FAO Irrigation and Drainage Paper 56, Table 11: sweet potato, tropics";
    wet_soil_kc = 1.15, "", 0.5..1.3, Memory, "bare wet soil loses at most 1.15 ET₀ (FAO-56, annex 7, from memory)";
    water_every_days = 1.0, "days", 1..14, Practice, "common practice, no source: once shoots show, the bed is watered every day";
    shoots_days = 14.0, "days", 0..60, (10.0..18.0), Memory, "shoots show 10 to 18 days after bedding, from memory";
    sand_water_every_days = 2.0, "days", 1..7, (1.0..2.0), Practice, "common practice, no source: until shoots show; the air takes 6 to 12 mm from the top of sand (FAO-56, Table 19, from memory)";
    loam_water_every_days = 3.0, "days", 1..7, (2.0..4.0), Practice, "common practice, no source: until shoots show; the air takes 16 to 22 mm from the top of loam (FAO-56, Table 19, from memory)";
    clay_water_every_days = 4.0, "days", 1..7, (3.0..5.0), Practice, "common practice, no source: until shoots show; the air takes 22 to 29 mm from the top of clay (FAO-56, Table 19, from memory), and wet clay rots roots";
    litres_per_trip = 15.0, "L", 1..1000, Computed, "a load of 15 kg; more where a cart or a bicycle carries it";
    minutes_per_trip = 10.0, "minutes", 1..240, (5.0..30.0), Practice, "common practice, no source: there and back, drawing and pouring, where the bed is close to the water";
    water_people = 2.0, "people", 1..1000, Practice, "common practice, no source: two of a household carry water";
    water_hours_per_day = 2.0, "hours", 0.1..12, Practice, "common practice, no source: more than two hours a day for each who carries is more than a household keeps up";
    watering_efficiency = 0.8, "", 0.2..1, Practice, "common practice, no source: a fifth runs off or evaporates when watering by hand";
    dry_season_tmax_c = 32.0, "°C", -10..50, Practice, "common practice, no source: used only where the case gives no temperatures";
    dry_season_tmin_c = 18.0, "°C", -20..40, Practice, "common practice, no source: used only where the case gives no temperatures";
    jerrycan_l = 20.0, "L", 1..50, Practice, "common practice, no source";

    ridging_days_per_300_m2 = 5.0, "person-days", 0.5..30, (3.0..8.0), Memory, "ridging of 300 m² by hand, from memory: 3 to 8 person-days";
    bed_days_per_1000_cuttings = 1.0, "person-days", 0.1..10, (0.5..2.0), Memory, "a bed for 1,000 cuttings, from memory: 0.5 to 2 person-days";
    watering_days_per_1000_cuttings = 4.0, "person-days", 0.1..60, (2.0..6.0), Memory, "watering it for 8 weeks, from memory: 2 to 6 person-days";
    cutting_days_per_1000_cuttings = 0.5, "person-days", 0.1..10, (0.3..1.0), Memory, "cutting 1,000 cuttings, from memory: 0.3 to 1 person-day";
    planting_days_per_1000_cuttings = 0.7, "person-days", 0.1..10, (0.3..1.0), Memory, "planting 1,000 cuttings, from memory: 0.3 to 1 person-day";

    yield_low_t_per_ha = 4.5, "t/ha", 0..60, Found, "about 4.5 t/ha in farmers' fields, Uganda";
    yield_high_t_per_ha = 9.0, "t/ha", 0..100, (9.0..18.0), Found, "good practice gives 2 to 4 times the 4.5 t/ha of farmers' fields; the lower end";
    carotene_per_rae_ug = 12.0, "µg", 1..30, Found, "12 µg of β-carotene are 1 µg of retinol activity equivalents (IOM)";
    carotene_kept_share = 0.78, "", 0.1..1, Found, "78 % kept on boiling (J. Food Comp. Anal. 2008)";
    serving_g = 125.0, "g", 10..1000, Computed, "a serving for a child, by which the figures are told";

    ridge_spacing_m = 1.0, "m", 0.3..3, Found, "CIP manual and others: ridges 1.0 × 0.3 m, 33,333 cuttings a hectare";
    plant_spacing_m = 0.3, "m", 0.1..2, Found, "CIP manual and others: ridges 1.0 × 0.3 m, 33,333 cuttings a hectare";
    cuttings_per_mound = 3.0, "cuttings", 1..10, Found, "mounds 1 × 1 m with 3 cuttings, 30,000 a hectare";
    cutting_length_cm = 30.0, "cm", 15..60, Found, "Lucid sweetpotato key: 20 to 40 cm";
    cutting_nodes = 3.0, "nodes", 2..12, Found, "Lucid sweetpotato key: at least 3 nodes";
    stub_cm = 5.0, "cm", 2..30, (5.0..15.0), Memory, "stem that is left to grow again, from memory; the growth curve counts with 5 cm";
    nodes_buried = 2.0, "nodes", 1..8, Found, "CIP manual vol. 4: 2 to 3 nodes buried";

    onset_early_percent = 20.0, "%", 1..99, Memory, "20/50/80 % of the years, from memory";
    onset_middle_percent = 50.0, "%", 1..99, Memory, "20/50/80 % of the years, from memory";
    onset_late_percent = 80.0, "%", 1..99, Memory, "20/50/80 % of the years, from memory";
}
