//! How long a line takes this speaker.

/// What is known of a line before it is heard.
#[derive(Debug, Clone, Copy)]
pub(super) struct Measure {
    /// Letters to be heard.
    pub(super) letters: usize,
    /// Whether the voice falls at its end, which takes longer.
    pub(super) ends: bool,
}

impl Measure {
    fn features(self) -> [f64; 3] {
        [1.0, self.letters as f64, if self.ends { 1.0 } else { 0.0 }]
    }
}

/// Seconds from letters: a straight line, and how far from it the speaker strays.
#[derive(Debug, Clone, Copy)]
pub(super) struct Pace {
    weights: [f64; 3],
    /// Of the logarithm of the length.
    spread: f64,
}

/// The shortest word.
const SHORTEST_S: f64 = 0.12;

impl Pace {
    /// Before anything is known: all the speech over all the letters.
    pub(super) fn roughly(lines: &[Measure], speech_s: f64, spans: usize) -> Pace {
        let letters: usize = lines.iter().map(|line| line.letters).sum();
        let share = (spans as f64 / lines.len().max(1) as f64).min(1.0);
        let each = (speech_s - 0.2 * spans as f64) / (letters as f64 * share).max(1.0);
        Pace { weights: [0.2, each.clamp(0.03, 0.3), 0.0], spread: 0.35 }
    }

    /// Fitted to lines and their lengths; strays count less and less.
    pub(super) fn fitted(self, examples: &[(Measure, f64)]) -> Pace {
        if examples.len() < 4 {
            return self;
        }
        let mut pace = self;
        for _ in 0..5 {
            let off = |(line, seconds): &(Measure, f64)| (seconds / pace.expects(*line)).ln();
            let mut apart: Vec<f32> = examples.iter().map(|example| off(example).abs() as f32).collect();
            apart.sort_by(f32::total_cmp);
            let middle = f64::from(apart.get(apart.len() / 2).copied().unwrap_or(0.3));
            let spread = (1.48 * middle).clamp(0.1, 0.4);
            let weighted = examples.iter().map(|example| {
                let expected = pace.expects(example.0);
                let strays = (off(example).abs() / (1.5 * spread)).max(1.0);
                (example.0.features(), example.1, 1.0 / (strays * expected * expected))
            });
            let Some(weights) = least_squares(weighted, pace.weights) else { return Pace { spread, ..pace } };
            pace = Pace { weights, spread };
        }
        pace
    }

    /// How long the line should take, in seconds.
    pub(super) fn expects(&self, line: Measure) -> f64 {
        let seconds: f64 = line.features().iter().zip(self.weights).map(|(x, w)| x * w).sum();
        seconds.max(SHORTEST_S)
    }

    /// How likely such a length is: the logarithm of a density, with room for a slow or hasty take.
    pub(super) fn fits(&self, line: Measure, seconds: f64) -> f64 {
        let off = (seconds / self.expects(line)).ln();
        (0.95 * normal(off, self.spread) + 0.05 * normal(off, 0.5)).ln()
    }
}

/// The density of a normal distribution around 0.
pub(super) fn normal(off: f64, spread: f64) -> f64 {
    (-0.5 * (off / spread).powi(2)).exp() / (spread * std::f64::consts::TAU.sqrt()) + 1e-12
}

/// Weighted least squares, drawn a little to what was believed before.
fn least_squares(examples: impl Iterator<Item = ([f64; 3], f64, f64)>, before: [f64; 3]) -> Option<[f64; 3]> {
    let mut rows = [[0.0; 4]; 3];
    for (features, seconds, weight) in examples {
        for (row, a) in rows.iter_mut().zip(features) {
            for (cell, b) in row.iter_mut().zip(features.into_iter().chain([seconds])) {
                *cell += weight * a * b;
            }
        }
    }
    let trust = [0.5, 5.0, 0.5];
    for (index, (row, (before, trust))) in rows.iter_mut().zip(before.into_iter().zip(trust)).enumerate() {
        let [.., right] = row;
        *right += trust * before;
        *row.get_mut(index)? += trust;
    }
    solve(rows)
}

/// Three equations, each with its right side last.
fn solve(mut rows: [[f64; 4]; 3]) -> Option<[f64; 3]> {
    for pivot in 0..3 {
        let row = *rows.get(pivot)?;
        let head = *row.get(pivot)?;
        if head.abs() < 1e-12 {
            return None;
        }
        for (other, target) in rows.iter_mut().enumerate() {
            let factor = target.get(pivot)? / head;
            if other != pivot {
                target.iter_mut().zip(row).for_each(|(to, from)| *to -= factor * from);
            }
        }
    }
    let mut solution = [0.0; 3];
    for (index, (to, row)) in solution.iter_mut().zip(rows).enumerate() {
        *to = row.get(3)? / row.get(index)?;
    }
    Some(solution)
}
