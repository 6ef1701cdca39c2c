//! Noise that is the same on every run.

use std::sync::LazyLock;

/// The value of a noise at a place: between -1 and 1, triangularly distributed
/// around 0. Values of different places, or seeds, know nothing of each other.
///
/// A hash of the place and not a sequence, so that many places can be worked on at once.
#[inline(always)]
pub(super) fn triangular(seed: u32, place: u32) -> f32 {
    let bits = mixed(seed, place);
    ((bits >> 16) as i32 - (bits & 0xFFFF) as i32) as f32 / 65_536.0
}

#[inline(always)]
fn mixed(seed: u32, place: u32) -> u32 {
    // The final mix of MurmurHash3 (public domain).
    // Each seed begins far from every other.
    let mut bits = place.wrapping_add(seed.wrapping_mul(0x9E37_79B9));
    bits = (bits ^ (bits >> 16)).wrapping_mul(0x85EB_CA6B);
    bits = (bits ^ (bits >> 13)).wrapping_mul(0xC2B2_AE35);
    bits ^ (bits >> 16)
}

/// Frames of dither that are made at once.
pub(super) const STRETCH: usize = 64;
/// Frames of an even noise before it repeats.
const EVEN: usize = 4096;
const DITHER: u32 = 0xD17E;

/// Two even noises, each between -0.5 and 0.5, whose sum is the triangular noise of a stretch.
///
/// They are cut from noises made once, wherever the stretch's hash says: a hash for each frame would take longer
/// than all else that is done to it.
#[inline(always)]
pub(super) fn dither(stretch: u32) -> [&'static [f32; STRETCH]; 2] {
    static NOISES: LazyLock<[Vec<f32>; 2]> = LazyLock::new(|| [even(DITHER), even(DITHER + 1)]);
    const NONE: &[f32; STRETCH] = &[0.0; STRETCH];
    let bits = mixed(DITHER + 2, stretch) as usize;
    let [one, other] = &*NOISES;
    [(one, bits), (other, bits >> 16)]
        .map(|(noise, bits)| noise.get(bits % EVEN..).and_then(|rest| rest.first_chunk()).unwrap_or(NONE))
}

/// Every value as often as any other, in no order; so much longer than [`EVEN`] that a cut may begin anywhere.
fn even(seed: u32) -> Vec<f32> {
    let mut order: Vec<u32> = (0..EVEN as u32).collect();
    order.sort_by_key(|place| mixed(seed, *place));
    let values = order.iter().map(|place| (*place as f32 + 0.5) / EVEN as f32 - 0.5);
    values.cycle().take(EVEN + STRETCH).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    const COUNT: u32 = 1 << 20;

    fn mean(values: &mut dyn Iterator<Item = f64>) -> f64 {
        values.sum::<f64>() / f64::from(COUNT)
    }

    #[test]
    fn it_is_triangular_and_white() {
        let noise: Vec<f64> = (0..COUNT).map(|place| f64::from(triangular(7, place))).collect();
        check(&noise, 0.001);
        let other = (0..COUNT).map(|place| f64::from(triangular(8, place)));
        assert!(mean(&mut noise.iter().zip(other).map(|(one, other)| one * other)).abs() < 0.001);
    }

    #[test]
    fn so_is_dither() {
        let stretches = (0..COUNT / STRETCH as u32).map(dither);
        let sums = stretches.flat_map(|[one, other]| one.iter().zip(other).map(|(one, other)| one + other));
        // Within a stretch, order is that of the noises it is cut from: a share of 2 % may go together.
        check(&sums.map(f64::from).collect::<Vec<_>>(), 0.02 / 6.0);
    }

    fn check(noise: &[f64], together: f64) {
        assert!(noise.iter().all(|value| (-1.0..=1.0).contains(value)));
        assert!(mean(&mut noise.iter().copied()).abs() < 0.002);
        // Of a triangle from -1 to 1: a variance of 1/6, an eighth on either side of one half.
        assert!((mean(&mut noise.iter().map(|value| value * value)) - 1.0 / 6.0).abs() < 0.001);
        let outer = mean(&mut noise.iter().map(|value| f64::from(u8::from(*value > 0.5))));
        assert!((outer - 0.125).abs() < 0.002, "{outer}");
        // White: neighbours, near and far, go together no more than chance has it.
        for lag in [1, 2, 3, 7, 16, 64, 480, 4096, 65_536] {
            let product = mean(&mut noise.iter().zip(noise.iter().skip(lag)).map(|(one, other)| one * other));
            assert!(product.abs() < together, "{lag}: {product}");
        }
    }
}
