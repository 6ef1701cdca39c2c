//! Recordings become the clips of a voice.

use std::collections::BTreeMap;
use std::fs::{self, File};
use std::path::{Path, PathBuf};

use super::super::output::Output;
use super::super::{Data, Error, Folder, ScriptRequest};
use crate::finding::{Code, Finding};
use crate::language::Pack;
use crate::voice::Bank;
use crate::voice::record::import::{
    Consent, Cut, CutClip, CutVerdict, HeardRecording, Line, NewClip, Recording, are_phrases, cut_out,
    file_name, listen, match_files, match_session, read_cuts, read_script, update_bank, write_cuts,
};

/// What is to be imported.
#[derive(Debug)]
pub struct ImportRequest<'a> {
    /// The language's tag.
    pub language: &'a str,
    /// The voice's name.
    pub voice: &'a str,
    /// What was read; all that the voice still lacks where none is given.
    pub script: Option<&'a Path>,
    /// A list of cuts that decides instead of the matching.
    pub cuts: Option<&'a Path>,
    /// What the speaker agreed to.
    pub consent: Consent,
    /// The recordings, in the order in which they were made.
    pub recordings: &'a [PathBuf],
}

/// What was imported.
#[derive(Debug)]
pub struct Imported {
    /// The bank's folder.
    pub folder: PathBuf,
    /// Clips written.
    pub clips: usize,
    /// Rows of the list of cuts that became no clip.
    pub left_out: usize,
    /// What the user should know.
    pub notes: Vec<Finding>,
}

const ROOM_TONE: &str = "room-tone.wav";

/// Imports recordings into the bank of a voice, below the folder `root`.
///
/// The bank is written only where every cut is sure. Else a list of cuts is
/// written beside the first recording.
///
/// # Errors
/// All problems of recordings, script, list of cuts and consent; every cut
/// that is to be confirmed.
pub fn import(data: &dyn Data, root: Option<&Path>, request: &ImportRequest<'_>) -> Result<Imported, Error> {
    let target = Target::new(root, request)?;
    let recordings = open(request.recordings)?;
    let mut wrong = Vec::new();
    let mut script = or_findings(script(data, request), &mut wrong);
    let (before, asked) = target.before(request);
    wrong.extend(asked);
    let heard = or_findings(listen(&recordings), &mut wrong);
    let (Some(script), Some((heard, mut notes)), true) = (script.take(), heard, wrong.is_empty()) else {
        return Err(Error::Input(wrong));
    };
    let cuts = cuts(request, &script, &heard).map_err(Error::Input)?;
    let list = beside(request.recordings);
    let listed = write_cuts(&cuts);
    let mut output = Output::default();
    if request.cuts.is_none() {
        spare_edits(&list, &listed)?;
        output.add(&list, listed.as_bytes())?;
        let doubtful = to_confirm(&cuts, &list);
        if !doubtful.is_empty() {
            output.commit()?;
            return Err(Error::Input(doubtful));
        }
    }
    let clips = target.clips(&recordings, &cuts, &script, &mut output)?;
    let room = target.room_tone(&recordings, &heard, before.as_deref(), &mut output)?;
    if room.is_none() {
        notes.push(
            Finding::warning(
                Code::NO_ROOM_TONE,
                "no recording has half a second of quiet, so there is no room tone",
            )
            .hint("record some seconds in which nobody speaks"),
        );
    }
    let names = (request.language, request.voice);
    let bank = update_bank(names, before.as_deref(), &request.consent, &clips, room).map_err(Error::Input)?;
    output.add(&target.folder.join("bank.toml"), bank.as_bytes())?;
    output.commit()?;
    Ok(Imported { folder: target.folder, clips: clips.len(), left_out: cuts.len() - clips.len(), notes })
}

fn or_findings<T>(result: Result<T, Vec<Finding>>, wrong: &mut Vec<Finding>) -> Option<T> {
    result.map_err(|findings| wrong.extend(findings)).ok()
}

/// Recordings of disk, each under a name of its own.
fn open(paths: &[PathBuf]) -> Result<Vec<Recording<'_>>, Error> {
    let mut seen = BTreeMap::new();
    let mut wrong = Vec::new();
    let mut recordings = Vec::new();
    for path in paths {
        let name = path.file_name().unwrap_or_default().to_string_lossy().into_owned();
        if let Some(other) = seen.insert(name.clone(), path) {
            let message = format!("has the same name as {}", other.display());
            wrong.push(
                Finding::error(Code::DUPLICATE, message)
                    .file(path.display().to_string())
                    .hint("rename one of them"),
            );
        }
        let open = Box::new(move || Ok(Box::new(regular(path)?) as _));
        recordings.push(Recording { path: path.display().to_string(), name, open });
    }
    if wrong.is_empty() { Ok(recordings) } else { Err(Error::Input(wrong)) }
}

fn regular(path: &Path) -> std::io::Result<File> {
    // A pipe would never end, and a folder cannot be read.
    if !fs::metadata(path)?.is_file() {
        return Err(std::io::Error::other("it is not a file"));
    }
    File::open(path)
}

fn script(data: &dyn Data, request: &ImportRequest<'_>) -> Result<Vec<Line>, Vec<Finding>> {
    Pack::load(data, request.language)?;
    match request.script {
        Some(path) => read_script(&path.display().to_string(), &read_text(path)?),
        None => still_missing(data, request),
    }
}

/// All that the voice still lacks, as `kabla clips script` prints it.
fn still_missing(data: &dyn Data, request: &ImportRequest<'_>) -> Result<Vec<Line>, Vec<Finding>> {
    let asked =
        ScriptRequest { language: request.language, voice: Some(request.voice), cases: &[], all: false };
    let printed = super::script::script(data, &asked).map_err(|error| match error {
        Error::Input(findings) => findings,
        error => vec![Finding::error(Code::SYNTAX, error.to_string())],
    })?;
    let lines = printed.script.lines.into_iter().map(|line| Line {
        number: u32::try_from(line.number).unwrap_or(u32::MAX),
        id: line.id,
        words: line.words,
        intonation: line.intonation,
    });
    let lines: Vec<Line> = lines.collect();
    if lines.is_empty() {
        let hint = "to record some of them again, give their lines";
        let finding =
            Finding::error(Code::NOTHING_TO_RECORD, format!("the voice {} lacks no phrase", request.voice));
        return Err(vec![finding.hint(hint)]);
    }
    Ok(lines)
}

fn read_text(path: &Path) -> Result<String, Vec<Finding>> {
    fs::read_to_string(path).map_err(|error| {
        let finding = Finding::error(Code::CANNOT_READ, format!("cannot be read: {error}"))
            .file(path.display().to_string());
        vec![finding.hint("check the name and the folder")]
    })
}

fn cuts(
    request: &ImportRequest<'_>,
    script: &[Line],
    heard: &[HeardRecording],
) -> Result<Vec<Cut>, Vec<Finding>> {
    let Some(path) = request.cuts else {
        return match are_phrases(script, heard) {
            true => match_files(script, heard),
            false => Ok(match_session(script, heard)),
        };
    };
    let text = read_text(path)?;
    let lengths = heard.iter().map(|one| (one.name().to_owned(), one.seconds())).collect();
    read_cuts(&path.display().to_string(), text.as_bytes(), script, &lengths)
}

fn beside(recordings: &[PathBuf]) -> PathBuf {
    let first = recordings.first().cloned().unwrap_or_default();
    let stem = first.file_stem().unwrap_or_default().to_string_lossy().into_owned();
    first.with_file_name(format!("{stem}.cuts.csv"))
}

/// What a person has mended in a list must not be lost.
fn spare_edits(list: &Path, new: &str) -> Result<(), Error> {
    match fs::read_to_string(list) {
        Ok(old) if old != new => Err(Error::Input(vec![
            Finding::error(Code::LIST_CHANGED, "is there already, and differs from what would be written")
                .file(list.display().to_string())
                .hint("use it, or move it away"),
        ])),
        _ => Ok(()),
    }
}

fn to_confirm(cuts: &[Cut], list: &Path) -> Vec<Finding> {
    let file = list.display().to_string();
    let doubtful = cuts.iter().zip(2..).filter(|(cut, _)| cut.verdict == CutVerdict::Confirm);
    let mut findings: Vec<Finding> = doubtful
        .map(|(cut, row)| {
            let what = match cut.line {
                Some(line) => format!("line {line} \"{}\": {}", cut.words, cut.remark),
                None => cut.remark.clone(),
            };
            Finding::error(Code::CONFIRM_CUT, what).file(&file).line(row)
        })
        .collect();
    if !findings.is_empty() {
        let (count, all) = (findings.len(), cuts.len());
        let hint =
            "listen at those places, write keep or skip in place of confirm, and import again with this list";
        findings.push(
            Finding::error(
                Code::NO_CLIPS,
                format!("no clip was written: {count} of {all} cuts are to be confirmed"),
            )
            .file(file)
            .hint(hint),
        );
    }
    findings
}

/// Where the clips go.
struct Target {
    folder: PathBuf,
}

impl Target {
    fn new(root: Option<&Path>, request: &ImportRequest<'_>) -> Result<Target, Error> {
        let refused = |code, message: &str, hint: &str| {
            Err(Error::Input(vec![Finding::error(code, message).hint(hint)]))
        };
        let Some(root) = root else {
            return refused(
                Code::NO_FOLDER,
                "no folder is named for the voice",
                "the clips go to its folder audio/",
            );
        };
        let is_plain = |name: &str| {
            !name.is_empty() && name.chars().all(|c| c.is_ascii_alphanumeric() || matches!(c, '-' | '_'))
        };
        if !is_plain(request.voice) || !is_plain(request.language) {
            return refused(
                Code::BAD_NAME,
                "the voice's name is no name for a folder",
                "use letters, digits and - alone",
            );
        }
        Ok(Target { folder: root.join("audio").join(request.language).join(request.voice) })
    }

    /// `bank.toml` as it is, and what stands in the way of adding to it.
    fn before(&self, request: &ImportRequest<'_>) -> (Option<String>, Vec<Finding>) {
        let path = self.folder.join("bank.toml");
        let mut wrong = Vec::new();
        let before = if path.exists() { or_findings(read_text(&path), &mut wrong) } else { None };
        if before.is_some() {
            let root = self.folder.ancestors().nth(3).unwrap_or(Path::new(""));
            let loaded = Folder::open(root).map_err(|finding| vec![finding]);
            let loaded = loaded.and_then(|data| Bank::load(&data, request.language, request.voice).map(drop));
            or_findings(loaded, &mut wrong);
        }
        if wrong.is_empty() {
            let names = (request.language, request.voice);
            or_findings(update_bank(names, before.as_deref(), &request.consent, &[], None), &mut wrong);
        }
        (before, wrong)
    }

    fn clips(
        &self,
        recordings: &[Recording<'_>],
        cuts: &[Cut],
        script: &[Line],
        output: &mut Output,
    ) -> Result<Vec<NewClip>, Error> {
        let line = |cut: &Cut| script.iter().find(|line| Some(line.number) == cut.line);
        let mut failed = None;
        for recording in recordings {
            let places: Vec<(usize, f64, f64)> = cuts
                .iter()
                .enumerate()
                .filter(|(_, cut)| cut.is_taken())
                .filter_map(|(index, cut)| Some((index, cut.place.as_ref()?)))
                .filter(|(_, (name, _, _))| *name == recording.name)
                .map(|(index, (_, from, to))| (index, *from, *to))
                .collect();
            let mut write = |clip: CutClip| {
                let line = cuts.get(clip.cut).and_then(line);
                let path = line.map(|line| self.folder.join(file_name(&line.words, line.intonation)));
                if let (None, Some(path)) = (&failed, path) {
                    failed = output.add(&path, &clip.wav).err();
                }
                Ok(())
            };
            cut_out(recording, &places, &mut write).map_err(|finding| Error::Input(vec![finding]))?;
        }
        if let Some(error) = failed {
            return Err(error);
        }
        let clips = cuts.iter().filter(|cut| cut.is_taken()).filter_map(line).map(|line| NewClip {
            file: file_name(&line.words, line.intonation),
            words: line.words.clone(),
            intonation: line.intonation,
            id: line.id.clone(),
        });
        Ok(clips.collect())
    }

    /// The longest quiet stretch of all recordings; a bank that has one keeps it.
    fn room_tone(
        &self,
        recordings: &[Recording<'_>],
        heard: &[HeardRecording],
        before: Option<&str>,
        output: &mut Output,
    ) -> Result<Option<&'static str>, Error> {
        let path = self.folder.join(ROOM_TONE);
        if before.is_some() && path.exists() {
            return Ok(Some(ROOM_TONE));
        }
        let quiet = recordings.iter().zip(heard).filter_map(|(one, heard)| Some((one, heard.room_tone()?)));
        let longest = quiet.max_by(|(_, a), (_, b)| (a.1 - a.0).total_cmp(&(b.1 - b.0)));
        let Some((recording, (from, to))) = longest else { return Ok(None) };
        let mut written = Ok(());
        let mut write = |clip: CutClip| {
            written = output.add(&path, &clip.wav);
            Ok(())
        };
        cut_out(recording, &[(0, from, to)], &mut write).map_err(|finding| Error::Input(vec![finding]))?;
        written.map(|()| Some(ROOM_TONE))
    }
}
