//! Everything at once, on a case that comes with the program.

use std::path::Path;

use super::output::Output;
use super::{
    Channel, Data, Error, Length, Made, MusicFiles, Overrides, Paper, Progress, ReadCase, SegmentRequest,
    SegmentTime, SheetFormat, SpeakRequest, StepKind, segment, sheets, speaking,
};
use crate::voice::segment::MixOptions;

const CASE: &str = "examples/farm.toml";
const LANGUAGES: [&str; 2] = ["en", "sw"];
const FORMATS: [SheetFormat; 3] = [SheetFormat::Pdf(Paper::Farm), SheetFormat::Html, SheetFormat::Text];
const TOPICS: [StepKind; 3] = [StepKind::MarkPlants, StepKind::FillContainer, StepKind::PlantField];
/// A radio segment is for a whole zone.
const SEGMENT_CASE: &str = "examples/zone.toml";
const SEGMENT_SECONDS: f64 = 120.0;

/// Makes the plan, and in each language the sheets and some radio messages.
///
/// # Errors
/// Whatever stops any of it; nothing is written then.
pub fn demo(data: &dyn Data, out: &Path, progress: Progress<'_>) -> Result<Vec<Made>, Error> {
    let read = ReadCase::from_data(data, CASE)?;
    let mut output = Output::default();
    let steps = LANGUAGES.len() * (FORMATS.len() + TOPICS.len()) + 1;
    let plan = out.join("plan.json");
    let json = format!("{:#}\n", read.plan_json(None)?);
    output.add(&plan, json.as_bytes())?;
    let mut made = vec![Made {
        path: plan,
        what: "plan: dates and amounts with their reasons".to_owned(),
        audience: "all, and programs",
        length: Length::Unmeasured,
        remarks: Vec::new(),
    }];
    for (index, tag) in LANGUAGES.into_iter().enumerate() {
        let before = index * (FORMATS.len() + TOPICS.len());
        for (done, format) in FORMATS.into_iter().enumerate() {
            progress(before + done, steps, &format!("{tag}: sheet"));
            let place = |tag: &str| out.join(format!("{tag}-sheet.{}", format.extension()));
            made.push(sheets::make(data, (&read, None), Some(tag), format, &mut output, place)?);
        }
        let request = SpeakRequest {
            case: Path::new(CASE),
            overrides: Overrides::default(),
            language: Some(tag),
            voice: None,
            topics: &TOPICS,
            channel: Channel::Radio { mp3: false },
            out,
        };
        let messages = speaking::make(data, &read, &request, &mut output, &mut |done, _, what| {
            progress(before + FORMATS.len() + done, steps, &format!("{tag}: {what}"));
        })?;
        made.extend(messages);
    }
    progress(steps - 1, steps, "segment");
    made.extend(radio_segment(data, out, &mut output)?);
    output.commit()?;
    Ok(made)
}

/// A segment for the first week of a zone's season, with the invented station's signature.
fn radio_segment(data: &dyn Data, out: &Path, output: &mut Output) -> Result<Vec<Made>, Error> {
    let read = ReadCase::from_data(data, SEGMENT_CASE)?;
    let plan = read.plan()?;
    let Some(week) = plan.now.steps.iter().map(|step| step.when.from).min() else { return Ok(Vec::new()) };
    let music = MusicFiles {
        opening: Some(Path::new("audio/signature/opening.flac")),
        closing: Some(Path::new("audio/signature/closing.flac")),
        bed: Some(Path::new("audio/signature/bed.flac")),
        bed_below: MixOptions::BED_BELOW,
    };
    let request = SegmentRequest {
        case: Path::new(SEGMENT_CASE),
        overrides: Overrides::default(),
        language: None,
        voice: None,
        music,
        live: false,
        out,
    };
    let open = |path: &Path| {
        let bytes = data.read(&path.to_string_lossy()).map(std::borrow::Cow::into_owned);
        bytes.ok_or_else(|| std::io::ErrorKind::NotFound.into())
    };
    let sounds = segment::read_music(&music, &open).map_err(Error::Input)?;
    let time = SegmentTime { week, seconds: SEGMENT_SECONDS };
    let segment = segment::make(data, &read, &request, (time, &sounds), output, &mut |_, _, _| {})?;
    Ok(segment.made)
}
