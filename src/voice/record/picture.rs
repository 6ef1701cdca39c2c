//! A clip drawn: its waveform as a path, its spectrogram as a small picture.

use std::fmt::Write as _;

use super::super::spectrum::Spectrum;

/// Columns of both pictures, in steps of time.
pub const COLUMNS: usize = 240;
/// The waveform runs from 0 (full scale up) to this (full scale down).
pub const HEIGHT: usize = 80;
/// Rows of the spectrogram.
pub const ROWS: usize = 64;
/// The spectrogram's highest frequency, in Hz: speech has little above.
const HIGHEST_HZ: f32 = 8_000.0;
/// Stretches of which spectra are taken, in seconds: about what an ear takes as one.
const STRETCH: f64 = 0.025;
/// Shades of the spectrogram: 4 bits.
const SHADES: f32 = 15.0;
/// What lies this far below the loudest, in dB, is white.
const RANGE_DB: f32 = 70.0;

/// The waveform as the path of an SVG picture, [`COLUMNS`] wide and [`HEIGHT`]
/// high: a stroke from the lowest to the highest sample of each column.
pub fn waveform(samples: &[f32]) -> String {
    let middle = HEIGHT as f32 / 2.0;
    let mut path = String::new();
    for column in 0..COLUMNS {
        let part = samples.get(at(column, samples.len())..at(column + 1, samples.len())).unwrap_or_default();
        let highest = part.iter().copied().fold(f32::NEG_INFINITY, f32::max).min(1.0);
        let lowest = part.iter().copied().fold(f32::INFINITY, f32::min).max(-1.0);
        if lowest > highest {
            continue;
        }
        let (top, bottom) = (middle * (1.0 - highest), middle * (1.0 - lowest));
        // A stroke of no length would not be drawn.
        let length = (bottom - top).max(0.5);
        // Writing to a String does not fail.
        let _ = write!(path, "M{column} {top:.1}v{length:.1}");
    }
    path
}

fn at(column: usize, length: usize) -> usize {
    column * length / COLUMNS
}

/// The spectrogram as a PNG picture, [`COLUMNS`] wide and [`ROWS`] high: time
/// to the right, frequency up to 8 kHz upwards, black where it is loudest.
/// None where the picture cannot be packed.
pub fn spectrogram(rate: u32, samples: &[f32]) -> Option<Vec<u8>> {
    let length = ((f64::from(rate) * STRETCH) as usize).next_power_of_two();
    let mut spectrum = Spectrum::new(length);
    let bands = (HIGHEST_HZ.min(rate as f32 / 2.0) / rate as f32 * length as f32) as usize;
    let mut columns: Vec<Vec<f32>> = Vec::with_capacity(COLUMNS);
    for column in 0..COLUMNS {
        let middle = (at(column, samples.len()) + at(column + 1, samples.len())) / 2;
        let powers: Vec<f32> =
            spectrum.powers(samples, middle.saturating_sub(length / 2)).take(bands + 1).collect();
        columns.push((0..ROWS).map(|row| loudest(&powers, row)).collect());
    }
    let top = columns.iter().flatten().copied().fold(f32::NEG_INFINITY, f32::max);
    let shade = |row: usize, column: &Vec<f32>| {
        let below = top - column.get(ROWS - 1 - row).copied().unwrap_or(f32::NEG_INFINITY);
        (SHADES * (below / RANGE_DB).clamp(0.0, 1.0)) as u8
    };
    let mut pixels = Vec::with_capacity(ROWS * COLUMNS / 2);
    for row in 0..ROWS {
        for pair in columns.chunks(2) {
            let shades = pair.iter().fold(0, |shades, column| shades << 4 | shade(row, column));
            pixels.push(shades);
        }
    }
    packed(&pixels)
}

/// In dB, the loudest band of a row; rows may share a band.
fn loudest(powers: &[f32], row: usize) -> f32 {
    let last = powers.len().saturating_sub(1);
    let (from, to) = (row * last / ROWS, ((row + 1) * last / ROWS).max(row * last / ROWS + 1));
    let power = powers.get(from..to).unwrap_or_default().iter().copied().fold(0f32, f32::max);
    10.0 * power.max(1e-12).log10()
}

fn packed(pixels: &[u8]) -> Option<Vec<u8>> {
    let mut bytes = Vec::new();
    let mut encoder = png::Encoder::new(&mut bytes, COLUMNS as u32, ROWS as u32);
    encoder.set_color(png::ColorType::Grayscale);
    encoder.set_depth(png::BitDepth::Four);
    encoder.set_compression(png::Compression::Balanced);
    let mut writer = encoder.write_header().ok()?;
    writer.write_image_data(pixels).ok()?;
    writer.finish().ok()?;
    Some(bytes)
}
