//! Clips kept once they are prepared, and takes told apart by how they meet.
use std::fs;
use std::path::PathBuf;

use super::voice_bank::{Files, HEADER, bank_of, sine, wav_of};
use kabla::data::{CacheFolder, Cached, ClipCache as _, Data};
use kabla::language::{Intonation, Pause, Piece, Role, Words};
use kabla::voice::choose::{choose, explain};
use kabla::voice::level::measure;
use kabla::voice::{Bank, SpeakOptions, speak};
use proptest::prelude::*;

fn words(text: &str, intonation: Intonation) -> Piece {
    Piece::Words(Words { text: text.to_owned(), role: Role::Phrase, intonation })
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
fn what_nobody_uses_for_two_months_goes() {
    let folder = tempfile::tempdir().unwrap();
    let cache = CacheFolder(folder.path().to_owned());
    let days = |days: u64| std::time::SystemTime::now() - std::time::Duration::from_secs(days * 86_400);
    let set = |name: &str, age: u64| {
        fs::File::options()
            .write(true)
            .open(folder.path().join(name))
            .unwrap()
            .set_modified(days(age))
            .unwrap();
    };
    for (name, age) in
        [("new.clip", 0), ("last-month.clip", 40), ("old.clip", 61), ("used.clip", 61), ("letter.txt", 900)]
    {
        cache.put(name, b"sound");
        set(name, age);
    }
    assert_eq!(cache.get("used.clip").as_deref(), Some(&b"sound"[..]));
    let names = || {
        let all = kept(folder.path()).into_iter().map(|path| path.file_name().unwrap().to_owned());
        all.filter(|name| name != "tidied").collect::<Vec<_>>()
    };
    cache.tidy();
    assert_eq!(names(), ["last-month.clip", "letter.txt", "new.clip", "used.clip"]);
    // Looked at today already.
    set("new.clip", 70);
    cache.tidy();
    assert_eq!(names().len(), 4);
    set("tidied", 2);
    cache.tidy();
    assert_eq!(names(), ["last-month.clip", "letter.txt", "used.clip"]);
    CacheFolder(folder.path().join("not-there")).tidy();
    assert!(!folder.path().join("not-there").exists());
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

/// What a cover costs: clips, clips with another intonation, roughness in thousandths.
type Cost = (usize, usize, u64);

/// The cost of the best cover of words, from `at` on and after a clip, by trying all. Each word has
/// the intonation with which a clip that ends there is to end, and the pause after it.
fn cheapest(
    words: &[(&str, Intonation, Option<Pause>)],
    at: usize,
    before: Option<usize>,
    bank: &Bank<'_>,
) -> Option<Cost> {
    if at == words.len() {
        return Some((0, 0, 0));
    }
    let mut best: Option<Cost> = None;
    for end in at + 1..=words.len() {
        // No clip reaches over a pause.
        if words[at..end - 1].iter().any(|(_, _, pause)| pause.is_some()) {
            break;
        }
        let text = words[at..end].iter().map(|word| word.0).collect::<Vec<_>>().join(" ");
        for (place, _) in bank.clips().iter().enumerate().filter(|(_, clip)| clip.words == text) {
            let Some(rest) = cheapest(words, end, Some(place), bank) else { continue };
            let rough = before.map_or(0, |before| bank.joint(before, place).unwrap().roughness());
            let behind = at > 0 && words[at - 1].2.is_some();
            let rough = if behind { rough / 10 } else { rough };
            let other = usize::from(bank.clips()[place].intonation != words[end - 1].1);
            let cost = (rest.0 + 1, rest.1 + other, rest.2 + rough);
            best = Some(best.map_or(cost, |best| best.min(cost)));
        }
    }
    best
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(48))]
    #[test]
    fn no_cover_costs_less_with_what_is_heard_where_clips_meet(
        message in prop::collection::vec(("[ab]", any::<bool>()), 2..6),
        clips in prop::collection::btree_set((prop::collection::vec("[ab]", 1..3), any::<bool>(), 0..6usize), 3..9),
    ) {
        const PITCHES: [f64; 6] = [95.0, 120.0, 150.0, 190.0, 240.0, 310.0];
        let ending = |last: bool| if last { "final" } else { "medial" };
        let clips: Vec<(String, &str, u32, f64)> = clips
            .iter()
            .map(|(words, last, pitch)| (words.join(" "), ending(*last), *pitch as u32 + 1, PITCHES[*pitch]))
            .collect();
        let clips: Vec<(&str, &str, u32, f64)> = clips.iter().map(|(w, e, t, p)| (w.as_str(), *e, *t, *p)).collect();
        let files = takes(&clips);
        let bank = Bank::load(&files, "en", "v").unwrap();
        let mut pieces = Vec::new();
        let mut plain = Vec::new();
        for (word, stop) in &message {
            let (intonation, pause) = match stop {
                true => (Intonation::Final, Some(Pause::Sentence)),
                false => (Intonation::Medial, None),
            };
            pieces.push(words(word, intonation));
            pieces.extend(pause.map(Piece::Pause));
            plain.push((word.as_str(), intonation, pause));
        }
        match (choose(&pieces, &bank), cheapest(&plain, 0, None, &bank)) {
            (Ok(chosen), Some(best)) => {
                let explained = explain(&pieces, &bank).unwrap();
                let other = explained.iter().filter(|e| bank.clips()[e.choice.clip].intonation != e.wanted).count();
                let rough: u64 = explained.iter().map(|e| e.roughness).sum();
                prop_assert_eq!((chosen.len(), other, rough), best);
            }
            (Err(_), None) => {}
            (chosen, best) => prop_assert!(false, "{chosen:?}, {best:?}"),
        }
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
    // A room as loud as this adds to the peaks: what is known of the clip alone does not do.
    let measured = measure(&spoken.samples).unwrap();
    assert!((spoken.loudness.integrated_lufs - measured.integrated_lufs).abs() < 0.02, "{measured:?}");
    assert!((spoken.loudness.true_peak_dbtp - measured.true_peak_dbtp).abs() < 0.1, "{measured:?}");
}
