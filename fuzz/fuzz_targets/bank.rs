//! A voice's `bank.toml`, beside a few clips.
#![no_main]

use std::borrow::Cow;

use kabla::data::Data;
use kabla::finding::Finding;
use kabla::language::{Intonation, Piece, Role, Words};
use kabla::voice::choose::choose;
use kabla::voice::Bank;
use libfuzzer_sys::fuzz_target;

struct Shelf<'a>(&'a [u8]);

impl Data for Shelf<'_> {
    fn read(&self, path: &str) -> Option<Cow<'_, [u8]>> {
        (path == "audio/en/v/bank.toml").then_some(Cow::Borrowed(self.0))
    }

    fn list(&self, folder: &str) -> Vec<String> {
        match folder {
            "audio/en/v" => ["a.wav", "b.flac", "bank.toml", "c.opus"].map(str::to_owned).into(),
            "audio/en" => vec!["v".to_owned()],
            _ => Vec::new(),
        }
    }
}

fuzz_target!(|text: &[u8]| {
    let shelf = Shelf(text);
    match Bank::load(&shelf, "en", "v") {
        Ok(bank) => {
            // Every clip says its own words.
            for clip in bank.clips() {
                let said = Words { text: clip.words.clone(), role: Role::Phrase, intonation: Intonation::Final };
                assert!(choose(&[Piece::Words(said)], &bank).is_ok(), "{clip:?}");
            }
        }
        Err(findings) => assert!(findings.iter().any(Finding::is_error)),
    }
});
