//! `kabla language`: a translator's commands.

use std::fmt::Write as _;
use std::path::Path;

use chrono::NaiveDate;
use clap::{Args, Subcommand};

use crate::app::{self, Data, Error, PackState};

#[derive(Debug, Subcommand)]
pub(super) enum Language {
    /// Begin a pack: every text to translate, with English and Swahili beside it.
    New {
        /// Language tag, e.g. om or pt-MZ.
        tag: String,
    },
    /// What is still to be done on a pack, and what looks wrong in it.
    Check {
        /// Language tag; all packs where none is given.
        tag: Option<String>,
    },
    /// All packs: how far they have come.
    List,
    /// Remember the English that each text of a pack is now made from.
    Keep {
        /// Language tag.
        tag: String,
    },
    /// Note that a fluent speaker has read texts of a pack.
    Review {
        /// Language tag.
        tag: String,
        /// Who has read them: a role, not a name.
        #[arg(long, value_name = "ROLE", value_parser = role)]
        role: String,
        /// The day; today where none is given.
        #[arg(long, value_name = "DATE")]
        on: Option<NaiveDate>,
        /// Only this text, e.g. mark-plants.text; may be given again.
        #[arg(long = "text", value_name = "ID")]
        texts: Vec<String>,
    },
    /// A number in words.
    Say(Say),
    /// How a pack writes and says a day.
    Date {
        /// The day (year-month-day).
        date: NaiveDate,
        /// Language tag.
        #[arg(long, value_name = "TAG")]
        language: String,
    },
}

#[derive(Debug, Args)]
pub(super) struct Say {
    /// The number, e.g. 21, -3 or 2.5.
    #[arg(allow_hyphen_values = true)]
    number: String,
    /// Language tag, e.g. sw.
    #[arg(long, value_name = "TAG")]
    language: String,
    /// The form, as it is named in the number rules; without it `cardinal`, or every form of a language without one.
    #[arg(long, value_name = "NAME")]
    form: Option<String>,
    /// Each form of the language, with its name.
    #[arg(long, conflicts_with = "form")]
    all_forms: bool,
}

impl Say {
    fn run(&self, data: &dyn Data) -> Result<(), Error> {
        let in_form = |form| app::say(data, &self.language, &self.number, form);
        let mut said = in_form(self.form.as_deref())?;
        if self.form.is_none() && !self.all_forms {
            let plain = said.iter().find(|said| said.form == "cardinal");
            // Where no form has words, the error of one tells why.
            let unsaid = said.first().filter(|_| said.iter().all(|said| said.words.is_none()));
            if let Some(form) = plain.or(unsaid).map(|said| said.form.clone()) {
                said = in_form(Some(&form))?;
            }
        }
        let width = said.iter().map(|said| said.form.chars().count()).max().unwrap_or(0);
        let many = self.all_forms || said.len() > 1;
        let line = |said: &app::SaidNumber| {
            let words = said.words.as_deref().unwrap_or("(no words)");
            if many { format!("{:<width$}  {words}\n", said.form) } else { format!("{words}\n") }
        };
        super::print(&said.iter().map(line).collect::<String>())
    }
}

fn role(text: &str) -> Result<String, String> {
    let fits = !text.trim().is_empty() && text.chars().all(|c| !c.is_control() && !matches!(c, '"' | '\\'));
    if fits {
        Ok(text.trim().to_owned())
    } else {
        Err("write a role in plain words, e.g. agronomist".to_owned())
    }
}

pub(super) fn run(data: &dyn Data, root: Option<&Path>, command: Language) -> Result<(), Error> {
    match command {
        Language::New { tag } => {
            let made = app::new_pack(data, root, &tag)?;
            let mut text = String::new();
            for path in made {
                let _ = writeln!(text, "{}", path.display());
            }
            let folder = root.map_or(String::new(), |root| format!(" --data {}", root.display()));
            let _ = writeln!(text, "Translate these, then run: kabla language check {tag}{folder}");
            super::print(&text)
        }
        Language::Check { tag } => {
            let states = app::check_packs(data, tag.as_deref())?;
            super::print(&states.iter().map(in_words).collect::<Vec<_>>().join("\n"))
        }
        Language::List => super::print(&list(&app::check_packs(data, None)?)),
        Language::Keep { tag } => {
            let path = app::keep_sources(data, root, &tag)?;
            super::print(&format!("{}\n", path.display()))
        }
        Language::Review { tag, role, on, texts } => {
            let on = on.unwrap_or_else(|| chrono::Local::now().date_naive());
            let (count, path) = app::review(data, root, &tag, &texts, (&role, on))?;
            super::print(&format!("{count} texts read by {role} on {on}: {}\n", path.display()))
        }
        Language::Say(say) => say.run(data),
        Language::Date { date, language } => {
            let day = app::day_in_words(data, &language, date)?;
            let lines: Vec<String> =
                day.forms.iter().map(|(form, words)| format!("{form:<17} {words}\n")).collect();
            super::print(&lines.concat())
        }
    }
}

/// Letters of a coverage bar.
const BAR: usize = 20;

fn in_words(state: &PackState) -> String {
    let mut text = format!("{} {} ({})\n", state.tag, state.name, state.status);
    for coverage in &state.report.coverage {
        let filled = (coverage.done * BAR).checked_div(coverage.all).unwrap_or(0);
        let _ = writeln!(
            text,
            "  {:<12} {}{} {} of {} translated, {} reviewed",
            coverage.file,
            "█".repeat(filled),
            "░".repeat(BAR - filled),
            coverage.done,
            coverage.all,
            coverage.reviewed
        );
    }
    let _ = writeln!(text, "  voice        {} of {} phrases still to record", state.to_record, state.phrases);
    for (role, on) in &state.report.reviews {
        let _ = writeln!(text, "  read by {role}, last on {on}");
    }
    for finding in &state.report.findings {
        let _ = writeln!(text, "{}", super::hints::in_words(finding));
    }
    if !state.report.doubts.is_empty() {
        let _ = writeln!(text, "{} doubts for a reviewer:", state.report.doubts.len());
        for doubt in &state.report.doubts {
            let _ = writeln!(text, "  {}: {}", doubt.place, doubt.text);
        }
    }
    text
}

fn list(states: &[PackState]) -> String {
    let mut text =
        "TAG     NAME                     STATUS    WRITTEN  SPOKEN  DOUBTS  RECORDED   REVIEWED\n"
            .to_owned();
    for state in states {
        let share = |file: &str| {
            let of = state.report.coverage.iter().find(|of| of.file == file);
            of.map_or("–".to_owned(), |of| {
                format!("{} %", (of.done * 100).checked_div(of.all).unwrap_or(0))
            })
        };
        let recorded = state.phrases - state.to_record;
        let reviews: Vec<String> =
            state.report.reviews.iter().map(|(role, on)| format!("{role} {on}")).collect();
        let reviewed = if reviews.is_empty() { "–".to_owned() } else { reviews.join(", ") };
        let line = format!(
            "{:<7} {:<24} {:<9} {:>7} {:>7} {:>7}  {:>9}  {reviewed}",
            state.tag,
            state.name,
            state.status,
            share("written.ftl"),
            share("spoken.ftl"),
            state.report.doubts.len(),
            format!("{recorded}/{}", state.phrases)
        );
        let _ = writeln!(text, "{}", line.trim_end());
    }
    let silent = states.iter().filter(|state| state.phrases > 0 && state.to_record == state.phrases);
    for state in silent {
        let _ = writeln!(
            text,
            "{}: no voice speaks it yet; kabla clips script --language {} lists what to record",
            state.tag, state.tag
        );
    }
    text
}
