//! The steps of a season.

use crate::catalogue::catalogue;

/// How much something matters when not all can be told.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Priority {
    /// Never left out: somebody may get hurt, or all is lost without it.
    Essential,
    /// The work itself.
    Important,
    /// Good to know.
    Helpful,
}

/// Declares the steps, and derives the names of each step's question and of the advice when it is late.
macro_rules! steps {
    ($($(#[$doc:meta])* $Step:ident = $name:literal { $($column:ident: $value:expr),* $(,)? };)+) => {
        catalogue! {
            /// The steps of a season, in their usual order.
            pub enum StepKind: StepEntry {
                /// The name of its question, which a meeting is asked.
                question: &'static str,
                /// The code of what can still be done when its days have passed.
                late: &'static str,
                /// How much it matters when not all can be told.
                priority: Priority,
                /// Whether it is overdue by itself; what only goes on with another step is overdue with that.
                falls_due: bool,
                /// Whether a radio season reaches to it.
                airs: bool,
                /// Whether a group does it together, at its store and its bed.
                together: bool,
            }
            $($(#[$doc])* $Step = $name { question: concat!("ask-", $name), late: concat!("late-", $name), $($column: $value),* };)+
        }
    };
}

steps! {
    /// Choose healthy plants and put a stick beside each.
    MarkPlants = "mark-plants" { priority: Priority::Important, falls_due: true, airs: true, together: false };
    /// Take what is needed and dry it: sand.
    GatherSand = "gather-sand" { priority: Priority::Important, falls_due: true, airs: true, together: true };
    /// Look at the marked plants again.
    CheckPlants = "check-plants" { priority: Priority::Helpful, falls_due: true, airs: true, together: false };
    /// Cut the vines back so that the skin toughens.
    CutVines = "cut-vines" { priority: Priority::Helpful, falls_due: true, airs: true, together: false };
    /// Dig and choose the roots.
    Harvest = "harvest" { priority: Priority::Important, falls_due: true, airs: true, together: false };
    /// Lay roots and sand in layers.
    FillContainer = "fill-container" { priority: Priority::Important, falls_due: true, airs: true, together: true };
    /// Take out, look, throw away, pack again.
    MonthlyCheck = "monthly-check" { priority: Priority::Important, falls_due: true, airs: true, together: true };
    /// Make the bed.
    PrepareBed = "prepare-bed" { priority: Priority::Important, falls_due: true, airs: true, together: true };
    /// Check for the last time and keep the sprouts.
    LastCheck = "last-check" { priority: Priority::Important, falls_due: true, airs: true, together: true };
    /// Lay the roots in the bed.
    PlantBed = "plant-bed" { priority: Priority::Important, falls_due: true, airs: true, together: true };
    /// Keep the bed moist: overdue with the bed.
    WaterBed = "water-bed" { priority: Priority::Important, falls_due: false, airs: true, together: true };
    /// Cut the vines to plant.
    CutForPlanting = "cut-for-planting" { priority: Priority::Important, falls_due: true, airs: true, together: false };
    /// Plant them.
    PlantField = "plant-field" { priority: Priority::Important, falls_due: true, airs: true, together: false };
    /// Try the first roots.
    FirstHarvest = "first-harvest" { priority: Priority::Helpful, falls_due: true, airs: false, together: false };
}
