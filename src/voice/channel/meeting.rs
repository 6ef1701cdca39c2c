//! Meetings: chapters, each with time to talk after it, from a small loudspeaker outdoors.

use super::louder;
use crate::voice::filter::rumble_out;
use crate::voice::join::{self, JoinOptions};
use crate::voice::{Frames, LevelError, SAMPLE_RATE, Spoken, Timed};

/// What lies below, in Hz, small loudspeakers cannot give back: taken out, it costs no loudness.
const LOWEST_HZ: f64 = 150.0;
/// Frames at the end of a message that are room tone and nothing else.
const TONE: usize = SAMPLE_RATE as usize / 4;

/// A part of a meeting: messages of one topic, and the time to talk about it.
#[derive(Debug, Clone, PartialEq)]
pub struct Section {
    /// The chapter's title; `None` goes on with the chapter before.
    pub title: Option<String>,
    /// What is heard.
    pub spoken: Spoken,
    /// How long the people talk afterwards.
    pub talk: Frames,
}

/// A chapter's place.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Chapter {
    /// Its title.
    pub title: String,
    /// Its first frame.
    pub from: Frames,
    /// The frame after its last.
    pub to: Frames,
}

/// A whole meeting.
#[derive(Debug, Clone, PartialEq)]
pub struct Meeting {
    /// Its sound and words.
    pub spoken: Spoken,
    /// Its chapters; they cover all of it, without a gap.
    pub chapters: Vec<Chapter>,
    /// The times to talk: first frame, and the frame after the last.
    pub talks: Vec<(Frames, Frames)>,
}

/// Puts sections one after the other; `None` where there is none.
///
/// # Errors
/// Loudness and true peak cannot both be had.
pub fn meeting(sections: &[Section]) -> Result<Option<Meeting>, LevelError> {
    let Some(first) = sections.first() else { return Ok(None) };
    let mut samples: Vec<f32> = Vec::new();
    let mut lines: Vec<Timed> = Vec::new();
    let (mut chapters, mut talks): (Vec<Chapter>, _) = (Vec::new(), Vec::new());
    for Section { title, spoken, talk } in sections {
        let start = Frames(samples.len() as u64);
        samples.extend(&spoken.samples);
        lines.extend(spoken.lines.iter().map(|line| Timed {
            from: line.from + start,
            to: line.to + start,
            ..line.clone()
        }));
        let end = Frames(samples.len() as u64);
        if *talk > Frames(0) {
            samples.extend(tone_after(&spoken.samples, *talk));
            talks.push((end, end + *talk));
        }
        let to = Frames(samples.len() as u64);
        match (title, chapters.last_mut()) {
            (None, Some(chapter)) => chapter.to = to,
            _ => chapters.push(Chapter { title: title.clone().unwrap_or_default(), from: start, to }),
        }
    }
    rumble_out(&mut samples, f64::from(SAMPLE_RATE), LOWEST_HZ);
    let spoken = Spoken { lines, samples, ..first.spoken.clone() };
    let spoken = louder(&spoken, &spoken.samples)?;
    Ok(Some(Meeting { spoken, chapters, talks }))
}

/// Room tone as loud as that at the end of a message.
fn tone_after(samples: &[f32], length: Frames) -> Vec<f32> {
    let end = samples.get(samples.len().saturating_sub(TONE)..).unwrap_or_default();
    let power = end.iter().map(|sample| f64::from(*sample).powi(2)).sum::<f64>() / end.len().max(1) as f64;
    let room_tone_dbfs = (10.0 * power.log10()).clamp(-90.0, -50.0);
    let options = JoinOptions { lead: length, tail: Frames(0), room_tone_dbfs, ..JoinOptions::default() };
    join::join(Vec::new(), &options).samples
}
