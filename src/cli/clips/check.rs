//! `kabla clips check`

use std::path::{Path, PathBuf};

use clap::Args;

use crate::app::{
    self, CheckRequest, ClipChecked, ClipsChecked, Code, Data, Error, Fault, Finding, Found, Outcome,
};

#[derive(Debug, Args)]
pub(in crate::cli) struct Arguments {
    /// Language tag, e.g. sw.
    #[arg(long, value_name = "TAG")]
    language: String,
    /// The recorded voice; the pack's own where none is given.
    #[arg(long, value_name = "NAME")]
    voice: Option<String>,
    /// Write a page with a picture of each clip, for its speaker (HTML).
    #[arg(long, value_name = "FILE")]
    out: Option<PathBuf>,
    /// Print JSON.
    #[arg(long)]
    json: bool,
    /// End with exit code 2 where a clip is to be recorded again or a phrase has none.
    #[arg(long)]
    strict: bool,
}

pub(super) fn run(data: &dyn Data, root: Option<&Path>, arguments: &Arguments) -> Result<(), Error> {
    let Arguments { language, voice, out, json, strict } = arguments;
    let request = CheckRequest { language, voice: voice.as_deref(), page: out.as_deref(), root };
    let checked = app::check_clips(data, request)?;
    if *json {
        super::super::print_json(&serde_json::json!({
            "language": language, "voice": checked.voice, "clips": checked.clips,
            "missing": checked.missing, "other_intonation": checked.other_intonation,
        }))?;
    } else {
        super::super::print(&in_words(language, &checked, out.as_deref()))?;
    }
    if *strict { complain(language, &checked) } else { Ok(()) }
}

/// The clips that are to be recorded again, as findings.
fn complain(language: &str, checked: &ClipsChecked) -> Result<(), Error> {
    let again = checked.clips.iter().filter(|clip| clip.outcome == Outcome::Again);
    let mut findings: Vec<Finding> = again
        .map(|clip| {
            let finding =
                Finding::error(Code::RECORD_AGAIN, format!("\"{}\": {}", clip.words, reasons(clip)));
            finding.file(&clip.path).hint("record it again")
        })
        .collect();
    if let Some(first) = checked.missing.first() {
        let finding = Finding::error(
            Code::MISSING_CLIPS,
            format!("{} phrases have no clip, \"{first}\" first", checked.missing.len()),
        );
        findings.push(
            finding
                .file(format!("audio/{language}/{}", checked.voice))
                .value("language", language)
                .hint("record them"),
        );
    }
    if findings.is_empty() { Ok(()) } else { Err(Error::Input(findings)) }
}

fn in_words(language: &str, checked: &ClipsChecked, page: Option<&Path>) -> String {
    let count = |outcome| checked.clips.iter().filter(|clip| clip.outcome == outcome).count();
    let mut text = format!("{language}, {}: {} clips\n", checked.voice, checked.clips.len());
    let rows = [
        ("to record again", count(Outcome::Again)),
        ("usable", count(Outcome::Usable)),
        ("good", count(Outcome::Good)),
        ("no longer needed", count(Outcome::Unused)),
        ("phrases without a clip", checked.missing.len()),
        ("with the other intonation only", checked.other_intonation),
    ];
    for (label, number) in rows {
        text.push_str(&format!("  {label:<31}{number:>6}\n"));
    }
    let groups = [
        ("To record again", Outcome::Again),
        ("Usable, with faults", Outcome::Usable),
        ("No longer needed", Outcome::Unused),
    ];
    for (heading, outcome) in groups {
        let mut title = "";
        let clips: Vec<&ClipChecked> = checked.clips.iter().filter(|clip| clip.outcome == outcome).collect();
        if !clips.is_empty() {
            text.push_str(&format!("\n{heading}\n"));
        }
        for clip in clips {
            if title != cause(clip) {
                title = cause(clip);
                text.push_str(&format!("  {title}\n"));
            }
            let file = clip.path.rsplit('/').next().unwrap_or_default();
            text.push_str(&format!("    {file}  \"{}\"\n        {}\n", clip.words, reasons(clip)));
        }
    }
    if !checked.missing.is_empty() {
        text.push_str("\nPhrases without a clip\n");
        let shown = checked.missing.iter().take(MOST_MISSING);
        shown.for_each(|words| text.push_str(&format!("    {words}\n")));
        if let Some(more @ 1..) = checked.missing.len().checked_sub(MOST_MISSING) {
            text.push_str(&format!("    and {more} more: see kabla clips script --language {language}\n"));
        }
    }
    if let Some(page) = page {
        text.push_str(&format!("\n{}: a picture of each clip, for its speaker\n", page.display()));
    }
    text
}

/// Phrases without a clip that are named; a voice that is begun has hundreds.
const MOST_MISSING: usize = 20;

/// What is worst about a clip.
fn cause(clip: &ClipChecked) -> &'static str {
    match (&clip.measures, clip.faults.first()) {
        _ if clip.outcome == Outcome::Unused => "no phrase has its words any more",
        (Err(_), _) => "the file cannot be read",
        (_, Some(found)) => name(found.fault),
        (_, None) => "its words have changed",
    }
}

fn name(fault: Fault) -> &'static str {
    match fault {
        Fault::Clipped => "peaks are cut off",
        Fault::CutStart => "the beginning is cut off",
        Fault::CutEnd => "the end is cut off",
        Fault::Noise => "noise",
        Fault::Hum => "hum of the mains",
        Fault::Room => "echo of the room",
        Fault::Quiet => "quieter than the others",
        Fault::Loud => "louder than the others",
        Fault::Fast => "faster than the others",
        Fault::Slow => "slower than the others",
        Fault::Offset => "an offset",
    }
}

fn reasons(clip: &ClipChecked) -> String {
    match &clip.measures {
        Err(finding) => finding.message.clone(),
        Ok(_) if clip.faults.is_empty() => clip.reasons.join(" "),
        Ok(_) => clip.faults.iter().map(in_figures).collect::<Vec<_>>().join("; "),
    }
}

fn in_figures(found: &Found) -> String {
    let Found { fault, amount, .. } = *found;
    match fault {
        Fault::Clipped => format!("{:.2} % of its samples are held at their extreme", 100.0 * amount),
        Fault::CutStart if amount < 1.0 => "it begins in full voice".to_owned(),
        Fault::CutStart => format!("it begins only {amount:.0} dB below the voice"),
        Fault::CutEnd if amount < 1.0 => "it ends in full voice".to_owned(),
        Fault::CutEnd => format!("it ends only {amount:.0} dB below the voice"),
        Fault::Noise => format!("the voice stands {amount:.0} dB above noise"),
        Fault::Hum => format!("the voice stands {amount:.0} dB above hum"),
        Fault::Room => format!("sound dies in {amount:.1} s"),
        Fault::Quiet => format!("{:.0} dB below the median", -amount),
        Fault::Loud => format!("{amount:.0} dB above the median"),
        Fault::Fast => format!("{amount:.1} times the usual pace"),
        Fault::Slow => format!("{amount:.1} times slower than usual"),
        Fault::Offset => {
            format!("its middle lies {:.1} % off zero, which is put right by itself", 100.0 * amount)
        }
    }
}
