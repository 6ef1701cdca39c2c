//! A language pack: its four files, parted by lines of `=====`, in the place of the Swahili ones. A file that is empty is
//! the program's own.
#![no_main]

use std::borrow::Cow;

use kabla::app::check_packs;
use kabla::data::{Data, Embedded};
use kabla::language::Pack;
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

fuzz_target!(|text: &str| {
    let files = Files(text.split("\n=====\n").collect());
    let states = check_packs(&files, Some("sw")).expect("the pack is there");
    match Pack::load(&files, "sw") {
        Ok(pack) => {
            for form in pack.numerals().forms() {
                let words = pack.numerals().words(form);
                if let (Ok(said), Ok(words)) = (pack.numerals().say(21.into(), form), words) {
                    let listed = |word: &str| words.contains(word);
                    assert!(kabla::language::numerals::words_in(&said).all(listed), "{form}: {said}");
                }
            }
        }
        Err(findings) => {
            assert!(!findings.is_empty() && findings.iter().any(kabla::finding::Finding::is_error));
            assert!(states.iter().all(|state| state.status == "broken"));
        }
    }
});
