//! Everything at once, on a case that comes with the program.

use std::path::Path;

use super::output::Output;
use super::{
    Data, Error, Length, Made, Overrides, Paper, Progress, ReadCase, SheetFormat, SpeakRequest, Topic,
    sheets, speaking,
};

const CASE: &str = "examples/farm.toml";
const LANGUAGES: [&str; 2] = ["en", "sw"];
const FORMATS: [SheetFormat; 3] = [SheetFormat::Pdf(Paper::Farm), SheetFormat::Html, SheetFormat::Text];
const TOPICS: [Topic; 3] = [Topic::MarkPlants, Topic::FillContainer, Topic::PlantField];

/// Makes the plan, and in each language the sheets and some radio messages.
///
/// # Errors
/// Whatever stops any of it; nothing is written then.
pub fn demo(data: &dyn Data, out: &Path, progress: Progress<'_>) -> Result<Vec<Made>, Error> {
    let read = ReadCase::from_data(data, CASE)?;
    let mut output = Output::default();
    let steps = LANGUAGES.len() * (FORMATS.len() + TOPICS.len());
    let plan = out.join("plan.json");
    let json = format!("{:#}\n", serde_json::json!(read.plan()?));
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
            made.push(sheets::make(data, &read, Some(tag), format, &mut output, place)?);
        }
        let request = SpeakRequest {
            case: Path::new(CASE),
            overrides: Overrides::default(),
            language: Some(tag),
            voice: None,
            topics: &TOPICS,
            out,
        };
        let messages = speaking::make(data, &read, &request, &mut output, &mut |done, _, what| {
            progress(before + FORMATS.len() + done, steps, &format!("{tag}: {what}"));
        })?;
        made.extend(messages);
    }
    output.commit()?;
    Ok(made)
}
