//! A recording heard once: for each 16 ms how likely it is a voice, how loud, and how it sounds.

use std::sync::Arc;

use earshot::Detector;
use realfft::num_complex::Complex32;
use realfft::{RealFftPlanner, RealToComplex};
use rubato::audioadapter_buffers::direct::InterleavedSlice;
use rubato::{Fft, FixedSync, Resampler};

/// The detector of voices wants this rate.
const RATE: u32 = 16_000;
/// Samples to a frame: 16 ms.
const HOP: usize = 256;
/// Samples to a spectrum: a frame and the one before.
const WINDOW: usize = 2 * HOP;
/// Bands of the spectrum, evenly spread over pitch as it is heard.
const BANDS: usize = 24;
const LOWEST_HZ: f32 = 130.0;
const HIGHEST_HZ: f32 = 7_000.0;
/// Numbers that tell the shape of a spectrum.
pub(super) const SHAPE: usize = 12;

/// Seconds from one frame to the next.
pub(super) const STEP: f64 = HOP as f64 / RATE as f64;

/// 16 ms of sound.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Frame {
    /// How likely a voice is heard, from 0 to 1.
    pub(super) voice: f32,
    /// Level from 130 Hz to 7 kHz in dB, so that hum does not count.
    pub(super) level: f32,
    /// The spectrum's shape (cepstrum).
    pub(super) shape: [f32; SHAPE],
}

/// Listens to samples as they come.
pub(super) struct Listener {
    resampler: Option<Fft<f32>>,
    /// Of the resampler's output, still to be left out.
    delay: usize,
    waiting: Vec<f32>,
    ready: Vec<f32>,
    before: [f32; HOP],
    detector: Box<Detector>,
    spectrum: Spectrum,
    pub(super) frames: Vec<Frame>,
}

impl Listener {
    /// `None`, where no resampler can be made for the rate.
    pub(super) fn new(rate: u32) -> Option<Listener> {
        let resampler = match rate {
            RATE => None,
            rate => Some(Fft::new(rate as usize, RATE as usize, 1024, 1, FixedSync::Input).ok()?),
        };
        Some(Listener {
            delay: resampler.as_ref().map_or(0, Resampler::output_delay),
            resampler,
            waiting: Vec::new(),
            ready: Vec::new(),
            before: [0.0; HOP],
            detector: Detector::default_boxed(),
            spectrum: Spectrum::new(),
            frames: Vec::new(),
        })
    }

    /// More samples, at the rate promised.
    pub(super) fn hear(&mut self, samples: &[f32]) {
        let Some(resampler) = &mut self.resampler else {
            self.ready.extend_from_slice(samples);
            return self.work();
        };
        self.waiting.extend_from_slice(samples);
        let mut used = 0;
        loop {
            let needed = resampler.input_frames_next();
            let Some(block) = self.waiting.get(used..used + needed) else { break };
            let output = InterleavedSlice::new(block, 1, needed)
                .ok()
                .and_then(|input| resampler.process(&input, None).ok())
                .map(|output| output.take_data())
                .unwrap_or_default();
            let skipped = self.delay.min(output.len());
            self.delay -= skipped;
            self.ready.extend(output.iter().skip(skipped));
            used += needed;
        }
        self.waiting.drain(..used);
        self.work();
    }

    /// The last samples, filled up with silence.
    pub(super) fn finish(mut self) -> Vec<Frame> {
        if let Some(resampler) = &self.resampler {
            let silence = vec![0.0; 2 * resampler.input_frames_next()];
            self.hear(&silence);
        }
        self.frames
    }

    fn work(&mut self) {
        let mut used = 0;
        while let Some(block) = self.ready.get(used..).and_then(|rest| rest.first_chunk::<HOP>()) {
            let voice = self.detector.predict_f32(&block.map(|sample| sample.clamp(-1.0, 1.0)));
            let (level, shape) = self.spectrum.of(&self.before, block);
            self.frames.push(Frame { voice, level, shape });
            self.before = *block;
            used += HOP;
        }
        self.ready.drain(..used);
    }
}

/// Turns samples into level and shape.
struct Spectrum {
    fft: Arc<dyn RealToComplex<f32>>,
    window: Vec<f32>,
    input: Vec<f32>,
    output: Vec<Complex32>,
    /// For each bin the bands it belongs to, with their weights.
    bands: Vec<[(usize, f32); 2]>,
    cosines: Vec<[f32; BANDS]>,
}

impl Spectrum {
    fn new() -> Spectrum {
        let fft = RealFftPlanner::new().plan_fft_forward(WINDOW);
        let turn = std::f32::consts::TAU / WINDOW as f32;
        let cosine = |number: usize, band: usize| {
            (std::f32::consts::PI * (number + 1) as f32 * (band as f32 + 0.5) / BANDS as f32).cos()
        };
        Spectrum {
            input: fft.make_input_vec(),
            output: fft.make_output_vec(),
            fft,
            window: (0..WINDOW).map(|at| 0.5 - 0.5 * (turn * at as f32).cos()).collect(),
            bands: (0..=WINDOW / 2).map(bands_of).collect(),
            cosines: (0..SHAPE).map(|number| std::array::from_fn(|band| cosine(number, band))).collect(),
        }
    }

    fn of(&mut self, before: &[f32; HOP], now: &[f32; HOP]) -> (f32, [f32; SHAPE]) {
        let samples = before.iter().chain(now);
        for ((input, sample), weight) in self.input.iter_mut().zip(samples).zip(&self.window) {
            *input = sample * weight;
        }
        if self.fft.process(&mut self.input, &mut self.output).is_err() {
            return (-120.0, [0.0; SHAPE]);
        }
        let mut energies = [1e-10f32; BANDS];
        for (bin, bands) in self.output.iter().zip(&self.bands) {
            for (band, weight) in bands {
                if let Some(energy) = energies.get_mut(*band) {
                    *energy += weight * bin.norm_sqr() / WINDOW as f32;
                }
            }
        }
        let level = 10.0 * (energies.iter().sum::<f32>() / WINDOW as f32).log10();
        let logs = energies.map(|energy| (energy + 1e-7).ln());
        let mut shape = [0.0; SHAPE];
        for (value, cosines) in shape.iter_mut().zip(&self.cosines) {
            *value = logs.iter().zip(cosines).map(|(log, cosine)| log * cosine).sum::<f32>() / BANDS as f32;
        }
        (level, shape)
    }
}

/// Triangles that overlap by half, on the mel scale.
fn bands_of(bin: usize) -> [(usize, f32); 2] {
    let mel = |hz: f32| 1127.0 * (1.0 + hz / 700.0).ln();
    let hz = bin as f32 * RATE as f32 / WINDOW as f32;
    let width = (mel(HIGHEST_HZ) - mel(LOWEST_HZ)) / (BANDS as f32 + 1.0);
    let place = (mel(hz) - mel(LOWEST_HZ)) / width - 1.0;
    let none = (BANDS, 0.0);
    if place <= -1.0 || place >= BANDS as f32 {
        return [none, none];
    }
    let share = place - place.floor();
    let lower = if place < 0.0 { none } else { (place.floor() as usize, 1.0 - share) };
    [lower, ((place.floor() + 1.0) as usize, share)]
}
