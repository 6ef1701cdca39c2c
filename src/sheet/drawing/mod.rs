//! Drawings computed from a plan: these files find every coordinate, the
//! templates in `drawings/` only paint. A unit is a point (1/72 inch) when the
//! drawing is set as wide as [`WIDTH`], [`HALF`] or [`BAND`] points.

mod bed;
mod draw;
mod layers;
mod parts;
mod rows;
mod season;
mod store;
mod words;

pub use draw::{Drawing, DrawingKind, drawings};
pub use words::Caption;
