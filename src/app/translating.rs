//! A translator's way: a new pack, its checks, its reviews, and how it says a day.

use std::path::{Path, PathBuf};

use chrono::NaiveDate;
use unic_langid::LanguageIdentifier;

use super::output::Output;
use super::{Code, Data, Embedded, Error, Finding, ReadCase};
use crate::guidance::Statement;
use crate::language::{self, Pack, REVIEW_LOG_FILE, Report, ReviewLog, WordingError};
use crate::sheet::{self, Facts, Printer, SmsOptions};
use crate::voice::{Bank, ClipState};

pub use crate::language::{Coverage, Doubt};

/// A pack as it stands.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct PackState {
    /// Its tag.
    pub tag: String,
    /// Its name in itself; empty where the pack cannot be read.
    pub name: String,
    /// `draft`, `read` or `approved`; `broken` where the pack cannot be read.
    pub status: &'static str,
    /// Mistakes and remarks, how far its files have come, what its translator doubts.
    pub report: Report,
    /// Phrases that speech needs.
    pub phrases: usize,
    /// Phrases that the pack's voice has not, or not by these words.
    pub to_record: usize,
}

/// The example cases with which packs are tried.
const EXAMPLES: [&str; 4] = ["farm", "group", "zone", "village"];
/// Text messages in more parts than these are dear.
const DEAR_PARTS: usize = 2;

/// Checks one pack, or all.
///
/// # Errors
/// A tag that has no pack.
pub fn check_packs(data: &dyn Data, tag: Option<&str>) -> Result<Vec<PackState>, Error> {
    let tags = Pack::tags(data);
    let wanted: Vec<String> = match tag {
        Some(tag) if tags.iter().any(|of| of == tag) => vec![tag.to_owned()],
        Some(tag) => {
            let finding = Finding::error(Code::UNKNOWN_PACK, format!("there is no pack {tag}"));
            let hint = format!("packs are {}", tags.join(", "));
            return Err(Error::Input(vec![finding.value("language", tag).hint(hint)]));
        }
        None => tags,
    };
    let printer = Printer::new(data)?;
    let told: Vec<Vec<Statement>> = EXAMPLES
        .iter()
        .map(|name| ReadCase::from_data(&Embedded, &format!("examples/{name}.toml"))?.statements())
        .collect::<Result<_, _>>()?;
    wanted.iter().map(|tag| check_one(data, tag, &printer, &told)).collect()
}

fn check_one(
    data: &dyn Data,
    tag: &str,
    printer: &Printer<'_>,
    told: &[Vec<Statement>],
) -> Result<PackState, Error> {
    let mut report = language::check(data, tag, &|letter| printer.covers(letter));
    let mut state = PackState {
        tag: tag.to_owned(),
        name: String::new(),
        status: "broken",
        phrases: 0,
        to_record: 0,
        report: Report {
            findings: Vec::new(),
            coverage: Vec::new(),
            doubts: Vec::new(),
            reviews: Default::default(),
        },
    };
    if let Ok(pack) = Pack::load(data, tag) {
        pack.name().clone_into(&mut state.name);
        state.status = pack.status().name();
        let phrases = pack.phrases().unwrap_or_default();
        state.phrases = phrases.len();
        state.to_record = match Bank::load(data, tag, pack.voice()) {
            Ok(bank) => {
                let states = bank.statuses(&phrases);
                states.iter().filter(|state| !matches!(state, ClipState::Recorded)).count()
            }
            Err(_) => phrases.len(),
        };
        let sheets = told.iter().try_for_each(|statements| Facts::of(&pack, statements).map(drop));
        match sheets.and_then(|()| dear_messages(&pack, told)) {
            Ok(dear) => report.findings.extend(dear),
            Err(WordingError { id, problem, .. }) => report.findings.push(
                Finding::error(Code::MISSING_MESSAGE, problem)
                    .file(format!("locales/{tag}/written.ftl"))
                    .field(id),
            ),
        }
    }
    state.report = report;
    Ok(state)
}

/// Text messages of the examples that take more parts than most people pay for.
fn dear_messages(pack: &Pack, told: &[Vec<Statement>]) -> Result<Vec<Finding>, WordingError> {
    let mut dear: Vec<(String, usize)> = Vec::new();
    for statements in told {
        for message in sheet::sms(pack, statements, SmsOptions::default())? {
            let id = format!("{}.sms", message.subject.name());
            if message.cost.parts > DEAR_PARTS && !dear.iter().any(|(of, _)| *of == id) {
                dear.push((id, message.cost.parts));
            }
        }
    }
    let file = format!("locales/{}/written.ftl", pack.tag());
    let finding = |(id, parts): (String, usize)| {
        let finding = Finding::warning(Code::LONG_MESSAGE, format!("takes {parts} parts as a text message"))
            .file(&file)
            .field(id);
        finding.hint("make it shorter")
    };
    Ok(dear.into_iter().map(finding).collect())
}

/// The folder in which packs are written: below the data folder, or below here.
fn pack_folder(root: Option<&Path>, tag: &str) -> PathBuf {
    root.unwrap_or(Path::new("")).join("locales").join(tag)
}

/// Begins a pack: its files with every text to translate, each with what a translator must know.
///
/// # Errors
/// A tag that is none, or a pack that is there already.
pub fn new_pack(data: &dyn Data, root: Option<&Path>, tag: &str) -> Result<Vec<PathBuf>, Error> {
    let wrong =
        |code, message: String, hint: &str| Error::Input(vec![Finding::error(code, message).hint(hint)]);
    let language: LanguageIdentifier = tag.parse().map_err(|_| {
        wrong(
            Code::BAD_NAME,
            format!("{tag} is not a language tag"),
            "write it as in BCP 47, e.g. sw or pt-MZ",
        )
    })?;
    if language != tag {
        return Err(wrong(Code::BAD_NAME, format!("{tag} is written {language}"), "write it so"));
    }
    let folder = pack_folder(root, tag);
    if folder.exists() {
        let message = format!("{} is there already", folder.display());
        return Err(wrong(Code::PACK_EXISTS, message, "go on with it, or take another folder"));
    }
    let mut output = Output::default();
    let mut made = Vec::new();
    for (name, text) in language::new_pack(data, &language) {
        let path = folder.join(name);
        output.add(&path, text.as_bytes())?;
        made.push(path);
    }
    output.commit()?;
    Ok(made)
}

/// Remembers for each text of a pack the English that it is now made from.
///
/// # Errors
/// A pack that is not in the folder, or a file that cannot be written.
pub fn keep_sources(data: &dyn Data, root: Option<&Path>, tag: &str) -> Result<PathBuf, Error> {
    let (mut log, path) = review_log_of(data, root, tag)?;
    log.keep(data, tag);
    write_review_log(&log, path)
}

/// Notes that somebody has reviewed texts of a pack, all that are translated where none is named. Returns how many.
///
/// # Errors
/// Texts that the pack does not have or that are not translated, or a file that cannot be written.
pub fn review(
    data: &dyn Data,
    root: Option<&Path>,
    tag: &str,
    texts: &[String],
    (role, on): (&str, NaiveDate),
) -> Result<(usize, PathBuf), Error> {
    let (mut log, path) = review_log_of(data, root, tag)?;
    let count = log.review(data, tag, texts, (role, on)).map_err(Error::Input)?;
    Ok((count, write_review_log(&log, path)?))
}

fn review_log_of(data: &dyn Data, root: Option<&Path>, tag: &str) -> Result<(ReviewLog, PathBuf), Error> {
    let folder = pack_folder(root, tag);
    if !folder.is_dir() {
        let finding = Finding::error(Code::NO_FOLDER, format!("{} is not there", folder.display()));
        let hint = "name the folder that holds locales/; what the program carries cannot be changed";
        return Err(Error::Input(vec![finding.hint(hint)]));
    }
    let log = ReviewLog::load(data, tag);
    if log.findings.iter().any(Finding::is_error) {
        return Err(Error::Input(log.findings));
    }
    Ok((log, folder.join(REVIEW_LOG_FILE)))
}

fn write_review_log(log: &ReviewLog, path: PathBuf) -> Result<PathBuf, Error> {
    let mut output = Output::default();
    output.add(&path, log.to_toml().as_bytes())?;
    output.commit()?;
    Ok(path)
}

/// A day as a pack writes and says it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct DayInWords {
    /// What each form is.
    pub forms: Vec<(&'static str, String)>,
}

/// How a pack writes and says a day.
///
/// # Errors
/// Problems of the pack.
pub fn day_in_words(data: &dyn Data, tag: &str, date: NaiveDate) -> Result<DayInWords, Error> {
    let pack = Pack::load(data, tag).map_err(Error::Input)?;
    let forms = vec![
        ("written", pack.write_date(date)?),
        ("with its weekday", pack.write_span(crate::plan::DateSpan::day(date))?),
        ("short", pack.write_day(date, "BRIEF")?),
        ("the week", pack.write_day(date, "WEEK")?),
        ("spoken", pack.say_day(date, "DAY")?),
        ("the week, spoken", pack.say_day(date, "WEEK")?),
    ];
    Ok(DayInWords { forms })
}
