//! All integration tests in one binary: a module for each part of the program.

#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, clippy::indexing_slicing)]

mod case;
mod catalogues;
mod channels;
mod cli;
mod documents;
mod expected;
mod findings;
mod formats;
mod growth;
mod guidance;
mod hostile_packs;
mod language;
mod language_commands;
mod layering;
mod limits;
mod numerals;
mod numerals_cldr;
mod of_farm;
mod outside;
mod outside_channels;
mod outside_quality;
mod pack_numbers;
mod paper;
mod pictures;
mod plan;
mod plan_advice;
mod plan_dates;
mod plan_enough;
mod plan_json;
mod plan_late;
mod plan_many;
mod plan_now;
mod plan_words;
mod project;
mod pseudo;
mod rain_gaps;
mod rain_record;
mod rains_length;
mod record_script;
mod season;
mod season_cases;
mod seedbed;
mod segment;
mod sheet;
mod starters;
mod store;
mod told;
mod translating;
mod voice_bank;
mod voice_cache;
mod voice_choose;
mod voice_import;
mod voice_join;
mod voice_level;
mod voice_messages;
mod voice_quality;
mod voice_write;

use std::path::PathBuf;

use kabla::plan::Case;

/// The example cases that come with the project, the farm first.
fn examples() -> Vec<(String, Case)> {
    let folder = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("examples");
    ["farm", "group", "zone", "village"]
        .map(|name| {
            let file = format!("{name}.toml");
            let text = std::fs::read_to_string(folder.join(&file)).unwrap();
            let (case, remarks) =
                kabla::case::read(&file, &text, &|record| std::fs::read(folder.join(record))).unwrap();
            assert!(remarks.iter().all(|remark| !remark.is_error()), "{file}: {remarks:?}");
            (name.to_owned(), case)
        })
        .into()
}
