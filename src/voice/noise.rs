//! Noise that is the same on every run.

/// A pseudo-random sequence fixed by its seed (SplitMix64).
#[derive(Debug, Clone)]
pub(super) struct Noise {
    state: u64,
}

impl Noise {
    pub(super) fn new(seed: u64) -> Noise {
        Noise { state: seed }
    }

    fn next(&mut self) -> u64 {
        self.state = self.state.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.state;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        z ^ (z >> 31)
    }

    /// Between -1 and 1, triangularly distributed around 0.
    pub(super) fn triangular(&mut self) -> f32 {
        let bits = self.next();
        let (high, low) = ((bits >> 40) as i32, (bits & 0xFF_FFFF) as i32);
        (high - low) as f32 / 16_777_216.0
    }
}
