//! The chooser against trying everything.
use super::voice_bank::bank_of;
use kabla::language::{Intonation, Pause, Phrase, Piece, Role, Words};
use kabla::voice::choose::choose;
use kabla::voice::{Bank, SpeakOptions, VoiceError, Why, speak};
use proptest::prelude::*;

fn piece(text: &str, intonation: Intonation) -> Piece {
    Piece::Words(Words { text: text.to_owned(), role: Role::Phrase, intonation })
}

/// Gaps, clips, mismatches of the best cover, by trying all.
fn cheapest(words: &[(String, Intonation, usize)], clips: &[(String, Intonation)]) -> (usize, usize, usize) {
    let Some((_, _, piece_length)) = words.first() else { return (0, 0, 0) };
    let mut best = (usize::MAX, 0, 0);
    for length in 1..=words.len() {
        let text = words[..length].iter().map(|w| w.0.as_str()).collect::<Vec<_>>().join(" ");
        for (_, intonation) in clips.iter().filter(|clip| clip.0 == text) {
            let rest = cheapest(&words[length..], clips);
            if rest.0 != usize::MAX {
                best =
                    best.min((rest.0, rest.1 + 1, rest.2 + usize::from(*intonation != words[length - 1].1)));
            }
        }
    }
    if *piece_length > 0 {
        let rest = cheapest(&words[*piece_length..], clips);
        if rest.0 != usize::MAX {
            best = best.min((rest.0 + 1, rest.1, rest.2));
        }
    }
    best
}

proptest! {
    #[test]
    fn no_cover_is_cheaper(
        pieces in prop::collection::vec(prop::collection::vec("[ab]", 1..3), 1..5),
        clips in prop::collection::btree_set((prop::collection::vec("[ab]", 1..4), any::<bool>()), 0..8),
    ) {
        let ending = |last: bool| if last { Intonation::Final } else { Intonation::Medial };
        let clips: Vec<_> = clips.into_iter().map(|(words, last)| (words.join(" "), ending(last))).collect();
        let entries: Vec<_> = clips.iter().map(|(words, i)| (words.as_str(), if *i == Intonation::Final { "final" } else { "medial" })).collect();
        let files = bank_of(&entries, |_| Vec::new());
        let bank = Bank::load(&files, "en", "v").unwrap();
        let count = pieces.len();
        let mut message = Vec::new();
        let mut words = Vec::new();
        for (index, piece_words) in pieces.iter().enumerate() {
            let end = ending(index + 1 == count);
            message.push(piece(&piece_words.join(" "), end));
            for (at, word) in piece_words.iter().enumerate() {
                let wanted = if at + 1 == piece_words.len() { end } else { Intonation::Medial };
                words.push((word.clone(), wanted, if at == 0 { piece_words.len() } else { 0 }));
            }
        }
        message.push(Piece::Pause(Pause::Sentence));
        let (gaps, fewest, mismatches) = cheapest(&words, &clips);
        match choose(&message, &bank) {
            Ok(chosen) => {
                prop_assert_eq!(gaps, 0);
                prop_assert_eq!(chosen.len(), fewest);
                let mut at = 0;
                let mut off = 0;
                for choice in &chosen {
                    at += choice.words.split(' ').count();
                    prop_assert_eq!(&bank.clips()[choice.clip].words, &choice.words);
                    off += usize::from(bank.clips()[choice.clip].intonation != words[at - 1].1);
                }
                prop_assert_eq!(at, words.len());
                prop_assert_eq!(off, mismatches);
            }
            Err(found) => prop_assert!(gaps >= found.len() && !found.is_empty()),
        }
    }
}

#[test]
fn the_longest_recording_wins() {
    let files = bank_of(
        &[("mark", "medial"), ("five", "medial"), ("plants", "final"), ("mark five plants", "final")],
        |_| vec![],
    );
    let bank = Bank::load(&files, "en", "v").unwrap();
    let message = [
        piece("Mark", Intonation::Medial),
        piece("five", Intonation::Medial),
        piece("plants.", Intonation::Final),
        Piece::Pause(Pause::Statement),
    ];
    let chosen = choose(&message, &bank).unwrap();
    assert_eq!(
        chosen.iter().map(|c| (c.clip, c.words.as_str(), c.pause)).collect::<Vec<_>>(),
        [(3, "Mark five plants.", Some(Pause::Statement))]
    );
}

#[test]
fn what_is_missing_is_told_and_what_is_stale_too() {
    let text = super::voice_bank::HEADER.to_owned()
        + "[[clip]]\nfile = \"0.wav\"\nwords = \"Dig gently\"\nintonation = \"final\"\nid = \"harvest#1\"\n";
    let files =
        super::voice_bank::Files::default().with("audio/en/v/bank.toml", text).with("audio/en/v/0.wav", "");
    let bank = Bank::load(&files, "en", "v").unwrap();
    let phrase = |id: &str, words: &str| Phrase {
        id: id.to_owned(),
        words: words.to_owned(),
        intonation: Intonation::Final,
        role: Role::Phrase,
    };
    let options = SpeakOptions {
        phrases: vec![phrase("harvest#1", "Dig softly"), phrase("harvest#2", "Rest")],
        ..SpeakOptions::default()
    };
    let pause = Piece::Pause(Pause::Sentence);
    let message = [
        piece("Dig softly.", Intonation::Final),
        pause.clone(),
        piece("Rest.", Intonation::Final),
        pause.clone(),
        piece("rest", Intonation::Final),
        pause,
    ];
    let Err(VoiceError::Missing { phrases, .. }) = speak(&message, &bank, &options) else { panic!() };
    let found: Vec<_> = phrases.into_iter().map(|p| (p.words, p.why)).collect();
    assert_eq!(
        found,
        [
            ("Dig softly.".to_owned(), Why::Stale { recorded: "Dig gently".to_owned() }),
            ("Rest.".to_owned(), Why::Missing)
        ]
    );
}
