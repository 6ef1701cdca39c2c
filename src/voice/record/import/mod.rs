//! A speaker's recordings become clips.
//!
//! ```text
//! recordings
//!   -> listen      each once, as a stream: voice, level and shape of every 16 ms
//!   -> speech      where somebody speaks
//!   -> matching    which stretch is which line of the script (`pace` and `acoustic_model` bear witness),
//!                  or names, where each file holds one phrase
//!   -> cuts        a list that a person can read, mend and give back
//!   -> clips       the recordings once more, cut by the list
//!   -> update_bank bank.toml with the new clips in it
//! ```
//!
//! Nothing is guessed: a line that is not sure is put up for confirmation.

mod acoustic_model;
mod clips;
mod cuts;
mod listen;
mod matching;
mod names;
mod pace;
mod script;
mod speech;
mod update_bank;
mod verdict;

use std::fmt;
use std::io::{self, Read, Seek};

use super::super::decode::{self, Problem, Sound};
use crate::finding::{Code, Finding};
use listen::{Frame, Listener, STEP};
use speech::Span;

pub use clips::{CutClip, cut_out, file_name};
pub use cuts::{Cut, CutVerdict, read as read_cuts, write as write_cuts};
pub use names::are_phrases;
pub use script::{Line, read as read_script};
pub use update_bank::{Consent, NewClip, update_bank};
pub use verdict::{match_files, match_session};

/// The longest session, in seconds.
const LONGEST_S: u64 = 3 * 3600;
/// Speech must rise this far above silence somewhere.
const SILENT_DB: f32 = -75.0;

/// Something to read and go back in.
pub trait Readable: Read + Seek + Send + Sync {}

impl<T: Read + Seek + Send + Sync> Readable for T {}

/// A recording, which is opened twice: to be heard and to be cut.
pub struct Recording<'a> {
    /// Its file, as messages name it.
    pub path: String,
    /// Its file's name, as the cut list has it.
    pub name: String,
    /// Opens it at its beginning.
    pub open: Box<dyn Fn() -> io::Result<Box<dyn Readable>> + 'a>,
}

impl fmt::Debug for Recording<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Recording").field("path", &self.path).finish_non_exhaustive()
    }
}

impl Recording<'_> {
    fn stream(&self, take: &mut dyn FnMut(u32, &[f32])) -> Result<Sound, Finding> {
        let unreadable = |error: io::Error| {
            let hint = "check the name and the folder";
            Finding::error(Code::CANNOT_READ, format!("cannot be read: {error}")).file(&self.path).hint(hint)
        };
        let source = (self.open)().map_err(unreadable)?;
        decode::stream(source, LONGEST_S, take).map_err(|problem| self.refuse(&problem))
    }

    fn refuse(&self, problem: &Problem) -> Finding {
        Finding::error(Code::BROKEN_SOUND, problem.to_string()).file(&self.path).hint(problem.hint())
    }
}

/// A recording that was heard.
#[derive(Debug)]
pub struct HeardRecording {
    name: String,
    frames: Vec<Frame>,
    spans: Vec<Span>,
    seconds: f64,
}

impl HeardRecording {
    /// Its file's name.
    pub fn name(&self) -> &str {
        &self.name
    }

    /// How long it is.
    pub fn seconds(&self) -> f64 {
        self.seconds
    }

    /// How many stretches of speech it has.
    pub fn stretches(&self) -> usize {
        self.spans.len()
    }

    /// The longest stretch without speech, up to ten seconds of it: from and to in seconds.
    pub fn room_tone(&self) -> Option<(f64, f64)> {
        let (from, to) = speech::quietest(&self.spans, self.frames.len(), 10.0)?;
        Some((from as f64 * STEP, (to as f64 * STEP).min(self.seconds)))
    }
}

/// Hears all recordings.
///
/// # Errors
/// Everything that is wrong with any of them; notes come with the result.
pub fn listen(recordings: &[Recording<'_>]) -> Result<(Vec<HeardRecording>, Vec<Finding>), Vec<Finding>> {
    let mut heard = Vec::with_capacity(recordings.len());
    let (mut wrong, mut notes) = (Vec::new(), Vec::new());
    for recording in recordings {
        match hear(recording) {
            Ok((one, sound)) => {
                notes.extend(misnamed(recording, &sound));
                heard.push(one);
            }
            Err(finding) => wrong.push(finding),
        }
    }
    if wrong.is_empty() { Ok((heard, notes)) } else { Err(wrong) }
}

fn hear(recording: &Recording<'_>) -> Result<(HeardRecording, Sound), Finding> {
    let mut listener: Option<Listener> = None;
    let sound = recording.stream(&mut |rate, samples| {
        if listener.is_none() {
            listener = Listener::new(rate);
        }
        if let Some(listener) = &mut listener {
            listener.hear(samples);
        }
    })?;
    let frames = listener.map(Listener::finish).unwrap_or_default();
    if sound.frames == 0 || frames.is_empty() {
        return Err(recording.refuse(&Problem::Empty));
    }
    if frames.iter().all(|frame| frame.level < SILENT_DB) {
        return Err(recording.refuse(&Problem::Silent));
    }
    let spans = speech::find(&frames);
    if spans.is_empty() {
        let hint = "listen to it; record nearer to the mouth, in a quieter place";
        return Err(Finding::error(Code::BROKEN_SOUND, "has no speech that can be told from the noise")
            .file(&recording.path)
            .hint(hint));
    }
    let seconds = sound.frames as f64 / f64::from(sound.rate);
    Ok((HeardRecording { name: recording.name.clone(), frames, spans, seconds }, sound))
}

fn misnamed(recording: &Recording<'_>, sound: &Sound) -> Option<Finding> {
    let (_, ending) = recording.name.rsplit_once('.')?;
    let ending = ending.to_lowercase();
    let message = format!("is {}, though its name ends in .{ending}", sound.kind.name());
    (!sound.kind.goes_by(&ending))
        .then(|| Finding::note(Code::UNCLEAR_FILE_NAME, message).file(&recording.path))
}
