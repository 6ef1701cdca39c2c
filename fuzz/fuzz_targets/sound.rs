//! A sound file of any kind, as a station's signature and as a clip of a voice.
#![no_main]

use std::borrow::Cow;

use kabla::data::Data;
use kabla::voice::Bank;
use kabla::voice::segment::{Use, read};
use libfuzzer_sys::fuzz_target;

const BANK: &str = "language = \"en\"\nvoice = \"v\"\nstatus = \"draft\"\nspeaker = \"s\"\nrights = \"r\"\nmade_by = \"m\"\n\
    [[clip]]\nfile = \"a.wav\"\nwords = \"dig\"\nintonation = \"final\"\n";

struct Clip<'a>(&'a [u8]);

impl Data for Clip<'_> {
    fn read(&self, path: &str) -> Option<Cow<'_, [u8]>> {
        match path {
            "audio/en/v/bank.toml" => Some(Cow::Borrowed(BANK.as_bytes())),
            "audio/en/v/a.wav" => Some(Cow::Borrowed(self.0)),
            _ => None,
        }
    }

    fn list(&self, _: &str) -> Vec<String> {
        vec!["a.wav".to_owned(), "bank.toml".to_owned()]
    }
}

/// The Opus decoder can panic on packets no encoder writes; the reader catches that, and says so. libFuzzer
/// would end at the panic itself, caught or not.
fn quiet_about_caught_panics() {
    let end = std::panic::take_hook();
    std::panic::set_hook(Box::new(move |panic| {
        if !panic.location().is_some_and(|place| place.file().contains("opus-rs")) {
            end(panic);
        }
    }));
}

fn right(samples: &[f32]) {
    assert!(!samples.is_empty() && samples.iter().all(|sample| sample.is_finite()));
}

fuzz_target!(init: quiet_about_caught_panics(), |bytes: &[u8]| {
    match read(bytes, "signature.wav", Use::Signature) {
        Ok(samples) => right(&samples),
        Err(finding) => assert!(finding.is_error()),
    }
    let clip = Clip(bytes);
    let bank = Bank::load(&clip, "en", "v").expect("a right bank");
    match bank.sound(0) {
        Ok(samples) => right(&samples),
        Err(finding) => assert!(finding.is_error()),
    }
});
