//! Noise that is the same on every run.

/// The value of a noise at a place: between -1 and 1, triangularly distributed
/// around 0. Values of different places, or seeds, know nothing of each other.
///
/// A hash of the place and not a sequence, so that many places can be worked on at once.
#[inline(always)]
pub(super) fn triangular(seed: u32, place: u32) -> f32 {
    // The final mix of MurmurHash3 (public domain).
    // Each seed begins far from every other.
    let mut bits = place.wrapping_add(seed.wrapping_mul(0x9E37_79B9));
    bits = (bits ^ (bits >> 16)).wrapping_mul(0x85EB_CA6B);
    bits = (bits ^ (bits >> 13)).wrapping_mul(0xC2B2_AE35);
    bits ^= bits >> 16;
    ((bits >> 16) as i32 - (bits & 0xFFFF) as i32) as f32 / 65_536.0
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn it_is_triangular_and_white() {
        const COUNT: u32 = 1 << 20;
        let noise: Vec<f64> = (0..COUNT).map(|place| f64::from(triangular(7, place))).collect();
        let mean = |values: &mut dyn Iterator<Item = f64>| values.sum::<f64>() / f64::from(COUNT);
        assert!(noise.iter().all(|value| (-1.0..=1.0).contains(value)));
        assert!(mean(&mut noise.iter().copied()).abs() < 0.002);
        // Of a triangle from -1 to 1: a variance of 1/6, an eighth on either side of one half.
        assert!((mean(&mut noise.iter().map(|value| value * value)) - 1.0 / 6.0).abs() < 0.001);
        let outer = mean(&mut noise.iter().map(|value| f64::from(u8::from(*value > 0.5))));
        assert!((outer - 0.125).abs() < 0.002, "{outer}");
        // White: neighbours, near and far, go together no more than chance has it.
        for lag in [1, 2, 3, 7, 16, 64, 480, 4096, 65_536] {
            let product = mean(&mut noise.iter().zip(noise.iter().skip(lag)).map(|(one, other)| one * other));
            assert!(product.abs() < 0.001, "{lag}: {product}");
        }
        let other = (0..COUNT).map(|place| f64::from(triangular(8, place)));
        assert!(mean(&mut noise.iter().zip(other).map(|(one, other)| one * other)).abs() < 0.001);
    }
}
