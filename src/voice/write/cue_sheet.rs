//! Cue sheet: plain text that tells a presenter what is heard when.

use crate::voice::{Frames, Sound, Spoken, Status};

/// How a cue sheet is written.
#[derive(Debug, Clone, PartialEq)]
pub struct CueOptions {
    /// The message's title.
    pub title: String,
    /// The language's name, for people.
    pub language: String,
    /// The words of the sheet itself.
    pub labels: CueLabels,
    /// The level of active speech in dBov, where it counts in place of loudness and true peak.
    pub active_dbov: Option<f64>,
    /// What else happens: chapters, times to talk.
    pub marks: Vec<Mark>,
}

/// Something in a message that is no clip.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Mark {
    /// Where it begins.
    pub from: Frames,
    /// Where it ends.
    pub to: Frames,
    /// What it is.
    pub words: String,
}

/// The words of a cue sheet, in the language of those who read it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct CueLabels {
    /// Before the title.
    pub title: String,
    /// Before the language.
    pub language: String,
    /// Before the voice's name and speaker.
    pub voice: String,
    /// Before the recordings' rights.
    pub rights: String,
    /// Before the voice's status.
    pub status: String,
    /// The status of a stand-in voice.
    pub status_stand_in: String,
    /// The status of a voice not yet approved.
    pub status_draft: String,
    /// The status of an approved voice.
    pub status_approved: String,
    /// A sentence: this is a stand-in voice, to be replaced by a person.
    pub stand_in_remark: String,
    /// Before the length.
    pub length: String,
    /// Before the loudness.
    pub loudness: String,
    /// Before the true peak.
    pub true_peak: String,
    /// Before the level of active speech.
    pub active_level: String,
    /// Over the column of starts.
    pub from: String,
    /// Over the column of ends.
    pub to: String,
    /// Over the column of words.
    pub words: String,
    /// Over the column of files.
    pub clip: String,
}

impl CueLabels {
    fn status(&self, status: Status) -> &str {
        match status {
            Status::StandIn => &self.status_stand_in,
            Status::Draft => &self.status_draft,
            Status::Approved => &self.status_approved,
        }
    }
}

/// The cue sheet of a message: a head, then a table with a row for each clip;
/// times as minutes, seconds and milliseconds from the message's start.
pub fn cue_sheet<S: Sound>(spoken: &Spoken<S>, options: &CueOptions) -> String {
    let CueOptions { title, language, labels, active_dbov, marks } = options;
    let voice = &spoken.voice;
    let mut lines = vec![
        format!("{}: {}", labels.title, one_line(title)),
        format!("{}: {} ({})", labels.language, one_line(language), voice.language),
        format!("{}: {} ({})", labels.voice, voice.voice, voice.speaker),
        format!("{}: {}", labels.rights, voice.rights),
        format!("{}: {}", labels.status, labels.status(voice.status)),
    ];
    if voice.status == Status::StandIn {
        lines.push(labels.stand_in_remark.clone());
    }
    lines.push(format!("{}: {}", labels.length, clock(spoken.length())));
    match active_dbov {
        Some(dbov) => lines.push(format!("{}: {dbov:.1} dBov", labels.active_level)),
        None => {
            lines.push(format!("{}: {:.1} LUFS", labels.loudness, spoken.loudness.integrated_lufs));
            lines.push(format!("{}: {:.1} dBTP", labels.true_peak, spoken.loudness.true_peak_dbtp));
        }
    }
    lines.push(String::new());
    let row = |from: &str, to: &str, words: &str, clip: &str| [from, to, words, clip].map(one_line);
    let mut rows = vec![row(&labels.from, &labels.to, &labels.words, &labels.clip)];
    let marks = marks.iter().map(|mark| (mark.from, mark.to, mark.words.as_str(), ""));
    let said = spoken.lines.iter().map(|line| (line.from, line.to, line.words.as_str(), line.clip.as_str()));
    let mut heard: Vec<_> = marks.chain(said).collect();
    heard.sort_by_key(|(from, ..)| *from);
    rows.extend(heard.iter().map(|(from, to, words, clip)| row(&clock(*from), &clock(*to), words, clip)));
    let mut widths = [0; 4];
    for row in &rows {
        for (width, cell) in widths.iter_mut().zip(row) {
            *width = (*width).max(cell.chars().count());
        }
    }
    for row in rows {
        let cells = row.iter().zip(widths).map(|(cell, width)| format!("{cell:width$}"));
        lines.push(cells.collect::<Vec<_>>().join("  ").trim_end().to_owned());
    }
    lines.push(String::new());
    lines.join("\n")
}

/// Minutes, seconds and milliseconds.
fn clock(frames: Frames) -> String {
    let millis = frames.millis();
    format!("{:02}:{:02}.{:03}", millis / 60_000, millis / 1000 % 60, millis % 1000)
}

fn one_line(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}
