//! Where a case is.

use super::units::Metres;

/// Where it is.
#[derive(Debug, Clone, PartialEq)]
pub struct Place {
    /// Name.
    pub name: String,
    /// Degrees, south negative.
    pub latitude: f64,
    /// Degrees, west negative.
    pub longitude: f64,
    /// Above the sea.
    pub elevation: Metres,
}
