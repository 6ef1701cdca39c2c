//! What must be noticed of a plan, and what leaves none to make.

use chrono::NaiveDate;

use super::quantities::Quantity;
use super::units::{Celsius, Centimetres, SquareMetres};
use super::worded::{Value, coded};

/// How much a remark matters.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Severity {
    /// Somebody should look.
    Warning,
    /// Worth knowing.
    Note,
}

/// Years, in order.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Years(pub Vec<i32>);

impl From<Years> for Value {
    fn from(years: Years) -> Value {
        let years: Vec<String> = years.0.iter().map(ToString::to_string).collect();
        Value::Text(years.join(", "))
    }
}

/// Declares the remarks: a code, how much it matters, the field of a case that it hangs on and the amounts
/// that it concerns. Those that change what a farmer does are told by `guidance`.
macro_rules! remarks {
    ($(
        $(#[doc = $doc:literal])+
        $Variant:ident = $code:literal, $Severity:ident, $field:expr, [$($Quantity:ident),*]
        { $($(#[doc = $meaning:literal])+ $name:ident: $Type:ty),* $(,)? }
    )+) => {
        coded! {
            /// What must be noticed.
            pub enum Remark {
                $($(#[doc = $doc])+ $Variant = $code { $($(#[doc = $meaning])+ $name: $Type),* },)+
            }
        }

        impl Remark {
            /// How much it matters.
            pub fn severity(&self) -> Severity {
                match self {
                    $(Remark::$Variant { .. } => Severity::$Severity,)+
                }
            }

            /// The field of the case that it hangs on, where it is one.
            pub fn field(&self) -> Option<&'static str> {
                match self {
                    $(Remark::$Variant { .. } => $field,)+
                }
            }

            /// The amounts that it concerns.
            pub fn amounts(&self) -> &'static [Quantity] {
                match self {
                    $(Remark::$Variant { .. } => &[$(Quantity::$Quantity),*],)+
                }
            }
        }
    };
}

remarks! {
    /// The case names no container.
    NoContainer = "remark-no-container", Note, Some("container"), [Containers, Layers, SandLitres] {
        /// Width of the container that is assumed, centimetres.
        width_cm: Centimetres,
        /// Its depth, centimetres.
        depth_cm: Centimetres,
    }
    /// The containers at hand do not hold all roots.
    ContainersTooSmall = "remark-containers-too-small", Warning, Some("container"), [Containers, RootsToStore] {
        /// Roots that have no room.
        left_over: u32,
        /// Roots to store.
        roots: u32,
        /// Containers of the last kind that hold them; 0 where none of that kind does.
        more: u32,
        /// Roots that have room.
        fit: u32,
        /// The part of the field that their first cut plants, square metres.
        first_m2: f64,
        /// The part that all cuts of the bed plant, square metres.
        area_m2: f64,
        /// The whole field, square metres.
        field_m2: f64,
    }
    /// The sand at hand does not cover all roots.
    SandShort = "remark-sand-short", Warning, Some("at_hand.sand_litres"), [SandLitres, RootsToStore] {
        /// Sand at hand, litres.
        has_l: f64,
        /// Sand that the roots take, litres.
        needs_l: f64,
        /// Sand that is missing, litres.
        more_l: u32,
        /// Roots that it covers.
        fit: u32,
        /// Roots that the field wants and the containers hold.
        roots: u32,
        /// The part of the field that the first cut plants, square metres.
        first_m2: f64,
        /// The part that all cuts of the bed plant, square metres.
        area_m2: f64,
        /// The whole field, square metres.
        field_m2: f64,
    }
    /// The water allows a smaller bed than the field wants.
    WaterLimits = "remark-water-limits", Warning, Some("water"), [WaterPerDay, RootsToStore] {
        /// Where the water comes from, as it stands in the case.
        source: String,
        /// The first day on which there would be too little.
        from: NaiveDate,
        /// Whether it is short of what it gives a day or of what it holds in all: chooses words.
        per: &'static str,
        /// What it gives then, litres.
        gives_l: f64,
        /// What the bed of all roots would need then, litres.
        needs_l: f64,
        /// What is missing, litres.
        more_l: u32,
        /// The bed that it can water, square metres.
        bed_m2: SquareMetres,
        /// Roots in that bed.
        fit: u32,
        /// Roots that the field wants.
        roots: u32,
        /// The part of the field that the first cut plants, square metres.
        first_m2: f64,
        /// The part that all cuts of the bed plant, square metres.
        area_m2: f64,
        /// The whole field, square metres.
        field_m2: f64,
    }
    /// Those who carry water allow a smaller bed than the field wants.
    HandsShort = "remark-hands-short", Warning, Some("hands"), [TripsPerDay, RootsToStore] {
        /// People who carry water.
        people: u32,
        /// Hours a day that each has for it.
        hours_each: f64,
        /// Trips a day that the bed of all roots would need.
        trips: u32,
        /// Hours that these would take, of all who carry.
        hours: f64,
        /// The bed that they can water, square metres.
        bed_m2: SquareMetres,
        /// Roots in that bed.
        fit: u32,
        /// Roots that the field wants.
        roots: u32,
        /// The part of the field that the first cut plants, square metres.
        first_m2: f64,
        /// The part that all cuts of the bed plant, square metres.
        area_m2: f64,
        /// The whole field, square metres.
        field_m2: f64,
    }
    /// The bed takes more carrying than those who carry can keep up.
    WaterHeavy = "remark-water-heavy", Warning, Some("hands"), [WaterPerDay, TripsPerDay] {
        /// Water a day when the bed needs most, litres.
        litres: f64,
        /// Trips a day.
        trips: u32,
        /// Hours that these take, of all who carry.
        hours: f64,
        /// People who carry.
        people: u32,
        /// Hours a day of each of them.
        hours_each: f64,
        /// Hours a day that each can keep up.
        most_hours: f64,
        /// Roots of a bed that they can water.
        roots: u32,
        /// That bed, square metres.
        bed_m2: SquareMetres,
    }
    /// What is at hand allows fewer roots than the field wants.
    LimitedAtHand = "remark-limited-at-hand", Warning, Some("at_hand"), [RootsToStore, CuttingsAtFirstCut] {
        /// What limits the roots, roots, plants or bed: chooses words.
        limit: &'static str,
        /// Roots that it allows.
        roots: u32,
        /// Roots that the field wants.
        wanted: u32,
        /// Roots, plants or square metres of bed that are missing.
        lacking: f64,
        /// The part of the field that their first cut plants, square metres.
        first_m2: f64,
        /// The part that all cuts plant that are counted on, square metres.
        area_m2: f64,
        /// The whole field, square metres.
        field_m2: f64,
    }
    /// What is at hand allows no root at all.
    NothingAtHand = "remark-nothing-at-hand", Warning, Some("at_hand"), [RootsToStore, FieldArea] {
        /// What limits the roots, roots, plants, bed, sand, containers, water or hands: chooses words.
        limit: &'static str,
    }
    /// No number of roots is as sure as that.
    NeverSoSure = "remark-never-so-sure", Warning, Some("field.sure_percent"), [RootsToStore] {
        /// Seasons of 100 in which the cuttings should suffice.
        percent: f64,
    }
    /// The first cut plants a part of the field only.
    FieldWaits = "remark-field-waits", Note, Some("field.sizing"), [CuttingsAtFirstCut, RootsToStore] {
        /// Cuttings expected at the first cut.
        cuttings: u32,
        /// Fewer of them in one season of ten.
        low: u32,
        /// More of them in one season of ten.
        high: u32,
        /// The part of the field that they plant, square metres.
        area_m2: f64,
        /// The whole field, square metres.
        field_m2: f64,
        /// Days from one cut to the next, at least.
        least_days: f64,
        /// Days from one cut to the next, at most.
        most_days: f64,
        /// Roots to store so that the first cut plants the whole field.
        roots: u32,
    }
    /// The plan counts by the growth curve.
    ByPrint = "remark-by-print", Note, Some("plan_by"), [CuttingsAtFirstCut, CuttingsOverSeason] {
        /// Roots to store.
        roots: u32,
        /// Cuttings at the first cut.
        first: u32,
        /// Cuttings over the bed season.
        season: u32,
        /// Cuttings at the first cut by common practice.
        other_first: u32,
        /// Cuttings over the bed season by common practice.
        other_season: u32,
    }
    /// The plan counts by common practice.
    ByPractice = "remark-by-practice", Warning, Some("plan_by"), [CuttingsAtFirstCut, CuttingsOverSeason] {
        /// Roots to store.
        roots: u32,
        /// Cuttings at the first cut.
        first: u32,
        /// Cuttings over the bed season.
        season: u32,
        /// Cuttings at the first cut by the growth curve.
        other_first: u32,
        /// Cuttings over the bed season by the growth curve.
        other_season: u32,
    }
    /// The rains come too soon after the harvest to store anything.
    RainsTooSoon = "remark-rains-too-soon", Warning, None, [] {
        /// The day the rains are expected.
        rains: NaiveDate,
        /// The day the roots go to the bed.
        bed: NaiveDate,
    }
    /// The dry time is so short that vines live through it.
    StoringNotNeeded = "remark-storing-not-needed", Warning, Some("harvest"), [RootsToStore] {
        /// Dry days until the rains have begun in most years.
        days: u32,
        /// The first of them: the harvest, or the end of the rains before.
        from: NaiveDate,
        /// The day by which the rains have begun in most years.
        rains: NaiveDate,
        /// Days for which vines can be kept.
        kept_days: f64,
        /// Whether the record has two rainy seasons a year, yes or no: chooses words.
        two_seasons: &'static str,
    }
    /// Not even the first planting is ripe before the rains end, in most years.
    RainsTooShort = "remark-rains-too-short", Warning, Some("variety.maturity"), [CuttingsAtFirstCut] {
        /// The first day on which the field is planted.
        planted: NaiveDate,
        /// Days from planting to the last ripe roots.
        most_days: f64,
        /// Years of 100 in which they are ripe before the rains end.
        of_100: f64,
        /// What tells the end of the rains, record, case or open where no year does: chooses words.
        known: &'static str,
        /// Days that the rains usually last.
        usual_days: f64,
        /// The day the rains usually end.
        end: NaiveDate,
        /// What would help, on-time where planting at the onset would do in most years, quicker where an early
        /// variety is ripe in time more often, or neither: chooses words.
        helps: &'static str,
        /// Days from planting to the last ripe roots of an early variety.
        early_days: f64,
        /// Years of 100 in which these are ripe before the rains end.
        early_of_100: f64,
    }
    /// What later cuts plant is not ripe before the rains end, in most years.
    CutsTooLate = "remark-cuts-too-late", Warning, Some("field.sizing"), [CuttingsOverSeason, RootsToStore] {
        /// Number of the first cut of these.
        cut: u32,
        /// Cuts after it.
        more: u32,
        /// Its first day.
        from: NaiveDate,
        /// Its last day.
        to: NaiveDate,
        /// The day on which what is planted on its first day is ripe.
        ripe: NaiveDate,
        /// Years of 100 in which that is before the rains end.
        of_100: f64,
        /// What tells the end of the rains, record, case or open where no year does: chooses words.
        known: &'static str,
        /// The day the rains usually end.
        end: NaiveDate,
        /// Whether the case has these cuts counted all the same, yes or no: chooses words.
        counted: &'static str,
    }
    /// Nothing tells whether what later cuts plant is ripe before the rains end.
    EndUnknown = "remark-end-unknown", Note, Some("season"), [CuttingsOverSeason] {
        /// The first day of the last cut.
        planted: NaiveDate,
        /// The day on which what is planted then is ripe.
        ripe: NaiveDate,
        /// What is known of the end, nothing or open where no year of the record tells it: chooses words.
        known: &'static str,
    }
    /// The rains come before the bed gives cuttings.
    BedLate = "remark-bed-late", Warning, None, [] {
        /// The day the bed gives its first cuttings.
        cut: NaiveDate,
        /// Whether the rains have come, yes or no: chooses words.
        came: &'static str,
        /// The day the rains came or are expected.
        onset: NaiveDate,
    }
    /// No figure for survival covers so long a time in sand.
    LongInSand = "remark-long-in-sand", Warning, None, [RootsToStore, CuttingsAtFirstCut] {
        /// Days that the roots stay in the sand.
        days: u32,
        /// Days in the sand from which the figures for survival come.
        evidence_days: f64,
    }
    /// Work is known not to be done, and the dates are moved.
    LateWork = "remark-late-work", Warning, Some("done"), [CuttingsAtFirstCut] {
        /// Steps that were not done when due.
        steps: u32,
        /// The day from which the dates are counted anew.
        today: NaiveDate,
        /// The first day on which the field can then be planted.
        field_from: NaiveDate,
        /// How many days later that is than planned.
        days_later: u32,
        /// How many fewer cuttings the first cut gives than planned.
        fewer: u32,
    }
    /// A check found more roots lost than the evidence knows of.
    FastLoss = "remark-fast-loss", Warning, Some("kept"), [RootsLeft, RootsAtBed] {
        /// The day of the check.
        day: NaiveDate,
        /// Healthy roots that were found.
        healthy: u32,
        /// Roots at the check before.
        roots: u32,
        /// Healthy roots that were to be expected.
        expected: u32,
        /// Healthy roots at the worst on record.
        worst: u32,
        /// What comes next, check or bed: chooses words.
        next: &'static str,
    }
    /// The roots that are left are enough.
    Enough = "remark-enough", Note, Some("kept"), [CuttingsExpected, CuttingsShort] {
        /// Cuttings that are left over.
        spare: u32,
    }
    /// The roots that there are now are not enough.
    CuttingsShort = "remark-cuttings-short", Warning, Some("field.sizing"), [CuttingsNeeded, CuttingsAtFirstCut] {
        /// Cuttings that are short at the first cut.
        short: u32,
        /// Cuttings that the field takes.
        cuttings: u32,
        /// The part of the field that the first cut plants, square metres.
        area_m2: f64,
        /// The whole field, square metres.
        field_m2: f64,
        /// Later cuts that are counted on.
        later_cuts: u32,
        /// Days from one cut to the next, at least.
        least_days: f64,
        /// Days from one cut to the next, at most.
        most_days: f64,
        /// Cuttings that are short even after the last cut.
        still_short: u32,
    }
    /// The case gives no temperatures.
    NoTemperatures = "remark-no-temperatures", Note, Some("climate"), [WaterPerDay, WaterTotal] {
        /// Temperature by day that is assumed, degrees Celsius.
        day_c: Celsius,
        /// Temperature by night that is assumed, degrees Celsius.
        night_c: Celsius,
    }
    /// The bed's water cannot come from where the case says.
    WaterShort = "remark-water-short", Warning, Some("water"), [WaterPerDay, WaterTotal] {
        /// Where the water comes from, as it stands in the case.
        source: String,
        /// The first day on which there is too little.
        from: NaiveDate,
        /// Litres that it gives of 100 needed, at the worst.
        gives: f64,
        /// The bed that it can water, square metres.
        bed_m2: SquareMetres,
    }
    /// The rains may begin long after the plan is ready for them.
    RainsMayBeLate = "remark-rains-may-be-late", Note, Some("season.rainfall_record"), [] {
        /// The day that the plan is timed by.
        onset: NaiveDate,
        /// The day by which they have begun in most years.
        late: NaiveDate,
    }
    /// There are years in which the rains never began.
    YearsWithoutRains = "remark-years-without-rains", Warning, Some("season.rainfall_record"), [] {
        /// Years in which the rains never began.
        count: u32,
        /// Years that could be judged.
        judged: u32,
        /// The years without rains, one by one.
        years: Years,
    }
    /// There are years whose onset missing days leave open.
    YearsUnknown = "remark-years-unknown", Warning, Some("season.rainfall_record"), [] {
        /// Years whose onset missing days leave open.
        count: u32,
        /// These years, one by one.
        years: Years,
        /// Whether bounds of the early and the late day are known, yes or no: chooses words.
        bounded: &'static str,
        /// The early day at the earliest, whatever fell on the missing days.
        early_from: NaiveDate,
        /// The early day at the latest.
        early_to: NaiveDate,
        /// The late day at the earliest.
        late_from: NaiveDate,
        /// The late day at the latest.
        late_to: NaiveDate,
    }
}

coded! {
    /// Why there is no plan to make.
    #[derive(thiserror::Error)]
    #[error("{}", super::worded::Worded::code(self))]
    pub enum Refusal {
        /// No year of the rainfall record has an onset by the chosen rule.
        NoOnset = "refusal-no-onset",
        /// The roots would have to lie in sand for longer than any are known to.
        StoredTooLong = "refusal-stored-too-long" {
            /// Days from the filling to the bed.
            days: u32,
            /// Days in sand that are the most.
            most_days: f64,
            /// The day the old field is dug.
            harvest: NaiveDate,
            /// The day the first roots go to the bed.
            bed: NaiveDate,
            /// The day the rains are expected.
            rains: NaiveDate,
        },
        /// No root fits into any container.
        NoRootFits = "refusal-no-root-fits" {
            /// Sand above the highest layer, centimetres.
            top_cm: f64,
            /// Sand under the lowest layer, centimetres.
            base_cm: f64,
            /// Length of a root, millimetres.
            length_mm: f64,
            /// Width of a root, millimetres.
            width_mm: f64,
            /// From root to root, centimetres.
            gap_cm: f64,
        },
    }
}

impl Refusal {
    /// The field of the case that it hangs on.
    pub fn field(&self) -> &'static str {
        match self {
            Refusal::NoOnset => "season",
            Refusal::StoredTooLong { .. } => "harvest",
            Refusal::NoRootFits { .. } => "container",
        }
    }
}
