//! A language pack: its four files, parted by lines of `=====`, in the place of the Swahili ones. A file that is empty is
//! the program's own.
#![no_main]

use std::borrow::Cow;
use std::sync::LazyLock;

use kabla::data::{Data, Embedded};
use kabla::finding::Finding;
use kabla::guidance::{Statement, tell};
use kabla::language::{self, Pack};
use kabla::sheet::{SmsOptions, sms};
use libfuzzer_sys::fuzz_target;

const FILES: [&str; 4] = ["written.ftl", "spoken.ftl", "numbers.rbnf", "pack.toml"];

struct Files<'a>(Vec<&'a str>);

impl Data for Files<'_> {
    fn read(&self, path: &str) -> Option<Cow<'_, [u8]>> {
        let own = path.strip_prefix("locales/sw/").and_then(|file| FILES.iter().position(|of| *of == file));
        match own.and_then(|place| self.0.get(place)).filter(|text| !text.is_empty()) {
            Some(text) => Some(Cow::Borrowed(text.as_bytes())),
            None => Embedded.read(path),
        }
    }

    fn list(&self, folder: &str) -> Vec<String> {
        Embedded.list(folder)
    }
}

/// What every pack is to say: a farm's season.
static TOLD: LazyLock<Vec<Statement>> = LazyLock::new(|| {
    let text = include_str!("../../examples/farm.toml");
    let (case, _) = kabla::case::read("farm.toml", text, &|_| unreachable!("no record")).expect("the example");
    tell(&case, &kabla::plan::make(&case).expect("a plan"))
});

fuzz_target!(|text: &str| {
    let files = Files(text.split("\n=====\n").collect());
    let report = language::check(&files, "sw", &|letter| letter < '\u{2000}');
    match Pack::load(&files, "sw") {
        Ok(pack) => {
            for told in TOLD.iter() {
                // Words, or an error that names what is wrong.
                let errors = [pack.write(told).err(), pack.say(told).err()];
                assert!(errors.into_iter().flatten().all(|error| !error.to_string().is_empty()));
            }
            if let Ok(messages) = sms(&pack, &TOLD, SmsOptions::default()) {
                assert!(messages.iter().all(|message| message.cost.parts > 0));
            }
            for form in pack.numerals().forms() {
                let words = pack.numerals().words(form);
                if let (Ok(said), Ok(words)) = (pack.numerals().say(21.into(), form), words) {
                    let listed = |word: &str| words.contains(word);
                    assert!(kabla::language::numerals::words_in(&said).all(listed), "{form}: {said}");
                }
            }
        }
        Err(findings) => {
            assert!(findings.iter().any(Finding::is_error));
            assert!(report.findings.iter().any(Finding::is_error));
        }
    }
});
