//! What a user of the command can do about a finding or an error: which option is meant, and which
//! command helps. The rest of the program knows no commands.

use crate::app::{Code, Error, Finding, Severity, SheetError, VoiceError};

/// What stands before a hint.
const HINT: &str = "\n    hint: ";

/// An error as a user of the command reads it.
pub(super) fn error_in_words(error: &Error) -> String {
    match error {
        Error::Input(findings) => findings.iter().map(in_words).collect::<Vec<_>>().join("\n"),
        error => {
            let mut text = format!("error: {error}");
            if let Some(hint) = for_error(error) {
                text.push_str(if text.contains(HINT) { "; " } else { HINT });
                text.push_str(&hint);
            }
            text
        }
    }
}

/// A finding as a user of the command reads it.
pub(super) fn in_words(finding: &Finding) -> String {
    let mut finding = finding.clone();
    let hint = for_finding(&finding);
    if let Some(argument) = finding.place.argument.take() {
        finding.place.field = Some(option(argument));
    }
    let parts: Vec<String> = [std::mem::take(&mut finding.hint)].into_iter().chain(hint).collect();
    finding
        .hint(parts.iter().filter(|part| !part.is_empty()).cloned().collect::<Vec<_>>().join("; "))
        .to_string()
}

/// The option for what was asked for.
fn option(argument: &str) -> String {
    match argument {
        "seconds" => "--fit".to_owned(),
        "confidence_percent" => "--sure".to_owned(),
        argument => format!("--{}", argument.replace('_', "-")),
    }
}

fn for_finding(finding: &Finding) -> Option<String> {
    let value = |name: &str| {
        let found = finding.values.iter().find(|(of, _)| *of == name);
        found.map_or("…", |(_, value)| value.as_str())
    };
    let place = &finding.place;
    let file = place.file.as_deref().unwrap_or_default();
    Some(match finding.code {
        Code::UNKNOWN_PACK if place.field.is_none() => {
            format!("kabla language new {} begins one", value("language"))
        }
        Code::PACK_EXISTS => {
            "kabla language check tells what is still to do; --data DIR names a folder".to_owned()
        }
        Code::OUTDATED => "then run: kabla language keep".to_owned(),
        Code::REVIEW_DROPPED => "then run: kabla language review".to_owned(),
        Code::NO_FOLDER => "name it with --data DIR".to_owned(),
        Code::NO_LANGUAGE => "or give --language".to_owned(),
        Code::NO_VOICE => format!("kabla clips script --language {} lists them", value("language")),
        Code::MISSING_CLIPS => {
            format!("kabla clips script --language {} lists all phrases", value("language"))
        }
        Code::STAND_IN_VOICE => "--voice NAME names it".to_owned(),
        Code::NOTHING_TO_RECORD => "--script FILE names them".to_owned(),
        Code::NOT_A_SCRIPT => "kabla clips script --json makes one".to_owned(),
        Code::LIST_CHANGED | Code::NO_CLIPS => format!("--cuts {file} names it"),
        Code::NOT_BUILT_IN => {
            "build it with cargo build --release --features mp3, or leave --mp3 out".to_owned()
        }
        Code::LONG_MESSAGE if finding.severity == Severity::Error => "--parts N allows more".to_owned(),
        Code::NOT_IN_PLAN if place.argument == Some("week") => {
            "--season shows what is told in each week".to_owned()
        }
        Code::NOT_IN_PLAN if place.argument.is_none() => "kabla plan shows what it has".to_owned(),
        // Of a case these name their field.
        Code::SHORT_RECORD if place.field.is_none() => "--from and --until name them".to_owned(),
        Code::SEASON_TAKEN if place.field.is_none() => {
            "--season N chooses one, --from and --until name the days".to_owned()
        }
        _ => return None,
    })
}

fn for_error(error: &Error) -> Option<String> {
    match error {
        Error::Wording(error) | Error::Sheet(SheetError::Wording(error)) => {
            Some(format!("kabla language check {} tells all that its pack lacks", error.language))
        }
        Error::Voice(VoiceError::Missing { language, voice, .. }) => Some(format!(
            "record them; `kabla clips script --language {language} --voice {voice}` lists what is still to record"
        )),
        Error::Sheet(SheetError::NoFont { .. }) => {
            Some("--data DIR names the folder that holds fonts/".to_owned())
        }
        _ => None,
    }
}
