//! Clips kept once they are prepared, and takes told apart by how they meet.
use std::fs;
use std::path::PathBuf;

use super::voice_bank::{Files, HEADER, bank_of, sine, wav_of};
use kabla::data::{CacheFolder, Cached, Data};
use kabla::language::{Intonation, Pause, Piece, Role, Words};
use kabla::voice::choose::{choose, explain};
use kabla::voice::{Bank, SpeakOptions, speak};

fn words(text: &str, ending: Intonation) -> Piece {
    Piece::Words(Words { text: text.to_owned(), role: Role::Phrase, ending })
}

fn message() -> [Piece; 3] {
    [words("dig", Intonation::Medial), words("gently", Intonation::Final), Piece::Pause(Pause::Statement)]
}

fn files(hz: f64) -> Files {
    bank_of(&[("dig", "medial"), ("gently", "final")], |n| {
        wav_of(22_050, 1, sine(22_050, hz * (n + 1) as f64, 0.3, 0.6))
    })
}

fn samples(data: &dyn Data) -> Vec<f32> {
    let bank = Bank::load(data, "en", "v").unwrap();
    speak(&message(), &bank, &SpeakOptions::default()).unwrap().samples
}

fn kept(folder: &std::path::Path) -> Vec<PathBuf> {
    let mut names: Vec<PathBuf> = fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().path()).collect();
    names.sort();
    names
}

#[test]
fn a_cache_changes_no_sample_and_mends_itself() {
    let folder = tempfile::tempdir().unwrap();
    let place = folder.path().join("made/when/needed");
    let files = files(200.0);
    let cached = Cached { data: &files, folder: CacheFolder(place.clone()) };
    let plain = samples(&files);
    assert_eq!(samples(&cached), plain);
    assert_eq!(kept(&place).len(), 2);
    let whole: Vec<Vec<u8>> = kept(&place).iter().map(|path| fs::read(path).unwrap()).collect();
    assert_eq!(samples(&cached), plain);
    fs::write(&kept(&place)[0], &whole[0][..1000]).unwrap();
    let mut damaged = whole[1].clone();
    damaged[5000] ^= 4;
    fs::write(&kept(&place)[1], damaged).unwrap();
    assert_eq!(samples(&cached), plain);
    let mended: Vec<Vec<u8>> = kept(&place).iter().map(|path| fs::read(path).unwrap()).collect();
    assert_eq!(mended, whole);
}

#[test]
fn the_cache_is_what_is_read_and_a_changed_clip_is_noticed() {
    let folder = tempfile::tempdir().unwrap();
    let (before, after) = (files(200.0), files(210.0));
    let cache = || CacheFolder(folder.path().to_owned());
    let first = samples(&Cached { data: &before, folder: cache() });
    // Each file under the other's name: were the cache not read, nothing would change.
    let names = kept(folder.path());
    let (one, two) = (fs::read(&names[0]).unwrap(), fs::read(&names[1]).unwrap());
    fs::write(&names[0], two).unwrap();
    fs::write(&names[1], one).unwrap();
    assert_ne!(samples(&Cached { data: &before, folder: cache() }), first);
    assert_eq!(samples(&Cached { data: &after, folder: cache() }), samples(&after));
    assert_eq!(kept(folder.path()).len(), 4);
}

#[test]
fn a_cache_that_cannot_be_written_is_not_needed() {
    let folder = tempfile::tempdir().unwrap();
    let file = folder.path().join("a-file");
    fs::write(&file, "").unwrap();
    let files = files(200.0);
    assert_eq!(samples(&Cached { data: &files, folder: CacheFolder(file) }), samples(&files));
}

#[test]
fn many_at_once_read_whole_clips() {
    let folder = tempfile::tempdir().unwrap();
    let files = files(200.0);
    let plain = samples(&files);
    std::thread::scope(|scope| {
        for _ in 0..8 {
            scope.spawn(|| {
                let cached = Cached { data: &files, folder: CacheFolder(folder.path().to_owned()) };
                assert_eq!(samples(&cached), plain);
            });
        }
    });
    assert_eq!(kept(folder.path()).len(), 2, "no temporary files are left");
}

#[test]
fn the_users_folder_follows_the_rules() {
    let of = |known: &[(&str, &str)]| {
        let value =
            |name: &str| known.iter().find(|(key, _)| *key == name).map(|(_, value)| PathBuf::from(value));
        CacheFolder::of_user(value).map(|folder| folder.0)
    };
    assert_eq!(of(&[("HOME", "/h")]), Some(PathBuf::from("/h/.cache/kabla")));
    assert_eq!(of(&[("HOME", "/h"), ("XDG_CACHE_HOME", "/c")]), Some(PathBuf::from("/c/kabla")));
    assert_eq!(of(&[("HOME", "/h"), ("XDG_CACHE_HOME", "c")]), Some(PathBuf::from("/h/.cache/kabla")));
    assert_eq!(of(&[("HOME", "/h"), ("KABLA_CACHE", "/k")]), Some(PathBuf::from("/k")));
    assert_eq!(of(&[("HOME", "")]), None);
}

/// Tones as clips: file, words, intonation, take, pitch.
fn takes(clips: &[(&str, &str, u32, f64)]) -> Files {
    let mut text = HEADER.to_owned();
    let mut files = Files::default();
    for (n, (words, intonation, take, hz)) in clips.iter().enumerate() {
        text += &format!(
            "[[clip]]\nfile = \"{n}.wav\"\nwords = \"{words}\"\nintonation = \"{intonation}\"\ntake = {take}\n"
        );
        let wave = |n: usize| {
            (1..6)
                .map(|k| {
                    (std::f64::consts::TAU * f64::from(k) * hz * n as f64 / 48_000.0).sin() / f64::from(k)
                })
                .sum::<f64>()
        };
        let sound: Vec<f32> = (0..24_000).map(|n| 0.2 * wave(n) as f32).collect();
        files = files.with(&format!("audio/en/v/{n}.wav"), wav_of(48_000, 1, sound.into_iter()));
    }
    files.with("audio/en/v/bank.toml", text)
}

#[test]
fn the_take_that_meets_best_is_chosen_against_every_pair() {
    let pitches = [110.0, 150.0, 220.0, 300.0];
    for before in pitches {
        let mut clips = vec![("dig", "medial", 1, before)];
        clips.extend(
            [(1, 300.0), (2, 160.0), (3, 215.0), (4, 105.0)].map(|(take, hz)| ("gently", "final", take, hz)),
        );
        let files = takes(&clips);
        let bank = Bank::load(&files, "en", "v").unwrap();
        let chosen = choose(&message(), &bank).unwrap();
        let nearest =
            clips[1..].iter().min_by(|a, b| (a.3 / before).ln().abs().total_cmp(&(b.3 / before).ln().abs()));
        assert_eq!(clips[chosen[1].clip].3, nearest.unwrap().3, "after {before} Hz");
        let explained = explain(&message(), &bank).unwrap();
        assert_eq!(explained.iter().map(|e| e.choice.clone()).collect::<Vec<_>>(), chosen);
        assert_eq!(explained[1].others.len(), 3);
        assert!(explained[0].meets.unwrap().pitch_semitones < 2.0);
    }
}

#[test]
fn recordings_of_the_same_words_need_numbers() {
    let files = takes(&[("dig", "medial", 1, 100.0), ("dig", "medial", 1, 100.0)]);
    let findings = Bank::load(&files, "en", "v").unwrap_err();
    assert_eq!(findings.len(), 1);
    assert!(findings[0].to_string().contains("take = 2"), "{}", findings[0]);
}

#[test]
fn a_recorded_room_is_heard_in_pauses() {
    let room: Vec<f32> = sine(48_000, 310.0, 0.01, 1.3).collect();
    let text = HEADER.to_owned()
        + "room_tone = \"room.wav\"\n[[clip]]\nfile = \"0.wav\"\nwords = \"dig gently\"\nintonation = \"final\"\n";
    let files = Files::default()
        .with("audio/en/v/0.wav", wav_of(48_000, 1, sine(48_000, 233.0, 0.1, 0.6)))
        .with("audio/en/v/room.wav", wav_of(48_000, 1, room.into_iter()))
        .with("audio/en/v/bank.toml", text);
    let bank = Bank::load(&files, "en", "v").unwrap();
    let spoken = speak(&message(), &bank, &SpeakOptions::default()).unwrap();
    let level = |samples: &[f32]| {
        10.0 * (samples.iter().map(|s| f64::from(s * s)).sum::<f64>() / samples.len() as f64).log10()
    };
    let (lead, clip) = (level(&spoken.samples[2000..10_000]), level(&spoken.samples[16_000..36_000]));
    // The room was recorded 20 dB below the clip, and stays there.
    assert!((clip - lead - 20.0).abs() < 0.5, "{clip} {lead}");
}
