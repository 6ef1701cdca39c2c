//! How loud a sound is, and decibels.

/// How loud a sound is. What it is too short or too quiet for is `None`.
#[derive(Debug, Clone, Copy, Default, PartialEq)]
pub struct Loudness {
    /// Integrated loudness in LUFS.
    pub integrated_lufs: f64,
    /// True peak in dBTP.
    pub true_peak_dbtp: f64,
    /// Loudness range in LU, by EBU Tech 3342.
    pub range_lu: Option<f64>,
    /// The highest momentary loudness (400 ms), in LUFS.
    pub momentary_lufs: Option<f64>,
    /// The highest short-term loudness (3 s), in LUFS.
    pub short_term_lufs: Option<f64>,
}

impl Loudness {
    /// That of the same sound after a gain.
    pub fn with_gain(self, db: f64) -> Loudness {
        let more = |value: Option<f64>| value.map(|value| value + db);
        Loudness {
            integrated_lufs: self.integrated_lufs + db,
            true_peak_dbtp: self.true_peak_dbtp + db,
            range_lu: self.range_lu,
            momentary_lufs: more(self.momentary_lufs),
            short_term_lufs: more(self.short_term_lufs),
        }
    }
}

pub(super) fn to_gain(db: f64) -> f64 {
    10f64.powf(db / 20.0)
}

pub(super) fn to_db(gain: f64) -> f64 {
    20.0 * gain.log10()
}
