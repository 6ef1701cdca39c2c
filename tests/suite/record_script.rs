//! What a speaker reads. Everything is counted again here from the pieces of
//! the messages; spelling is compared by a rule of this file's own.

use std::collections::{BTreeMap, BTreeSet};
use std::path::PathBuf;
use std::sync::LazyLock;

use kabla::app::{Data, Embedded, RecordingScript, ScriptRequest, script};
use kabla::guidance::{StepKind, Subject, chapter, for_step, tell, told_in, week_of};
use kabla::language::{Intonation, Pack, Pause, Piece, Role, Words};
use kabla::plan::make;
use kabla::voice::ClipState;
use kabla::voice::record::{Carriers, Group, Line, Pace};

use crate::examples;
use crate::outside::{plain_spaces, program, text_of_pdf};
use crate::project::{Project, example};
use crate::voice_bank::{bank_of, sine, wav_of};

type Heard = (String, Intonation);

/// Words without the marks at their ends, and in small letters.
pub(crate) fn plain(words: &str) -> String {
    let marks = |c: char| c.is_whitespace() || ".,;:!?…።፣፤፥፦»\"".contains(c);
    words.trim_end_matches(marks).to_lowercase()
}

fn heard(line: &Line) -> Heard {
    (plain(&line.words), line.intonation)
}

fn heard_in(pieces: &[Piece]) -> BTreeSet<Heard> {
    let words = pieces.iter().filter_map(|piece| match piece {
        Piece::Words(words) => Some((plain(&words.text), words.intonation)),
        Piece::Pause(_) => None,
    });
    words.collect()
}

/// What each message of a case needs.
fn messages(pack: &Pack, case: &kabla::plan::Case) -> Vec<BTreeSet<Heard>> {
    let statements = tell(case, &make(case).unwrap());
    let mut told = StepKind::ALL.map(|topic| for_step(&statements, topic)).to_vec();
    // In a segment a later check is the next.
    let check = statements.iter().find(|of| of.subject == Subject::Step(StepKind::MonthlyCheck)).unwrap();
    told.push(
        check.when[1..]
            .iter()
            .flat_map(|span| told_in(std::slice::from_ref(check), week_of(span.from)))
            .collect(),
    );
    // In a meeting each chapter ends with a question.
    told.extend(StepKind::ALL.map(|topic| chapter(&statements, topic).pop().into_iter().collect()));
    let told = told.iter().filter(|statements| !statements.is_empty());
    let pieces = told.map(|of| of.iter().flat_map(|of| pack.say(of).unwrap()).collect::<Vec<_>>());
    pieces.map(|pieces| heard_in(&pieces)).collect()
}

fn request<'a>(language: &'a str, cases: &'a [PathBuf]) -> ScriptRequest<'a> {
    ScriptRequest { language, voice: Some("nobody"), cases, all: false }
}

/// The scripts of all languages for a voice that has nothing yet.
static SCRIPTS: LazyLock<BTreeMap<String, RecordingScript>> = LazyLock::new(|| {
    let tags = Pack::tags(&Embedded).into_iter().chain(["en-XA".to_owned()]);
    tags.map(|tag| (tag.clone(), script(&Embedded, &request(&tag, &[])).unwrap())).collect()
});

fn script_of(language: &str) -> &'static RecordingScript {
    &SCRIPTS[language]
}

#[test]
fn a_case_has_what_its_messages_need_and_nothing_else() {
    for tag in Pack::tags(&Embedded) {
        let pack = Pack::load(&Embedded, &tag).unwrap();
        for (name, case) in examples() {
            let file = PathBuf::from(example(&format!("{name}.toml")));
            let made = script(&Embedded, &request(&tag, &[file])).unwrap().script;
            let listed: BTreeSet<Heard> = made.lines.iter().map(heard).collect();
            let needed: BTreeSet<Heard> = messages(&pack, &case).into_iter().flatten().collect();
            assert_eq!(listed, needed, "{tag} {name}");
            assert_eq!(made.lines.len(), listed.len(), "{tag} {name}: a line stands there twice");
            let numbers: Vec<usize> = made.lines.iter().map(|line| line.number).collect();
            assert_eq!(numbers, (1..=made.lines.len()).collect::<Vec<_>>());
        }
    }
}

#[test]
fn without_a_case_every_phrase_is_listed_once() {
    for tag in Pack::tags(&Embedded) {
        let pack = Pack::load(&Embedded, &tag).unwrap();
        let made = &script_of(&tag).script;
        let listed: Vec<Heard> = made.lines.iter().map(heard).collect();
        let all: BTreeSet<Heard> =
            pack.phrases().unwrap().iter().map(|phrase| (plain(&phrase.words), phrase.intonation)).collect();
        assert_eq!(listed.iter().cloned().collect::<BTreeSet<_>>(), all, "{tag}");
        assert_eq!(listed.len(), all.len(), "{tag}");
    }
}

/// The two endings of a word side by side: said twice and once skipped, it could not be told from said both ways.
#[test]
fn endings_of_the_same_words_are_apart() {
    let mut words_alone = 0;
    for tag in ["en", "sw", "am", "ha", "pt-MZ", "fr", "ny"] {
        let lines = &script_of(tag).script.lines;
        for pair in lines.windows(2) {
            let (one, next) = (&pair[0], &pair[1]);
            let together = (one.part, one.group) == (next.part, next.group);
            if together && plain(&one.words) == plain(&next.words) {
                let group = lines.iter().filter(|line| (line.part, line.group) == (one.part, one.group));
                let others = group.filter(|line| plain(&line.words) != plain(&one.words)).count();
                // One other can stand between them; where there is none, they must be neighbours.
                assert_eq!(others, 0, "{tag}: lines {} and {}, {}", one.number, next.number, one.words);
                words_alone += 1;
            }
        }
    }
    assert!(words_alone < 10, "{words_alone} words are alone in their group");
}

#[test]
fn a_message_is_complete_just_where_the_script_says_so() {
    for tag in Pack::tags(&Embedded) {
        let pack = Pack::load(&Embedded, &tag).unwrap();
        let needs: Vec<BTreeSet<Heard>> =
            examples().iter().flat_map(|(_, case)| messages(&pack, case)).collect();
        let made = &script_of(&tag).script;
        let mut recorded = BTreeSet::new();
        let mut complete = BTreeSet::new();
        let mut at: Vec<usize> = Vec::new();
        for line in &made.lines {
            recorded.insert(heard(line));
            let now: BTreeSet<usize> =
                (0..needs.len()).filter(|message| needs[*message].is_subset(&recorded)).collect();
            let new: Vec<usize> = now.difference(&complete).copied().collect();
            assert_eq!(line.completes, new, "{tag}: line {}", line.number);
            at.extend(new.iter().map(|_| line.number));
            complete = now;
            let unlocks = needs.iter().filter(|message| message.contains(&heard(line))).count();
            assert_eq!(line.unlocks, unlocks, "{tag}: line {}", line.number);
        }
        assert_eq!(complete.len(), needs.len(), "{tag}: all are complete in the end");

        // Read in the order of the pack, the same lines complete the messages much later.
        let of_pack: BTreeMap<Heard, usize> = (1..)
            .zip(pack.phrases().unwrap())
            .map(|(place, phrase)| ((plain(&phrase.words), phrase.intonation), place))
            .collect();
        let late = needs.iter().map(|of| of.iter().map(|heard| of_pack[heard]).max().unwrap());
        let (late, early) = (late.sum::<usize>(), at.iter().sum::<usize>());
        assert!(early * 10 < late * 8, "{tag}: {early} against {late}");
    }
}

/// The first part takes the messages that lack fewest: no message needs fewer phrases than the part has before it.
#[test]
fn parts_take_the_messages_that_lack_fewest() {
    for tag in Pack::tags(&Embedded) {
        let pack = Pack::load(&Embedded, &tag).unwrap();
        let needs: Vec<BTreeSet<Heard>> =
            examples().iter().flat_map(|(_, case)| messages(&pack, case)).collect();
        let made = &script_of(&tag).script;
        let mut recorded: BTreeSet<Heard> = BTreeSet::new();
        let mut parts = 0;
        for part in made.lines.chunk_by(|a, b| a.part == b.part) {
            if made.rest == Some(part[0].part) {
                assert!(part.iter().all(|line| line.unlocks == 0 && line.completes.is_empty()));
                continue;
            }
            let lacks = |message: usize| needs[message].difference(&recorded).count();
            let fewest = (0..needs.len()).map(lacks).filter(|lacking| *lacking > 0).min().unwrap();
            let completed: BTreeSet<usize> =
                part.iter().flat_map(|line| line.completes.iter().copied()).collect();
            assert!(completed.iter().any(|message| lacks(*message) == fewest), "{tag}");
            recorded.extend(part.iter().map(heard));
            let wanted: BTreeSet<Heard> =
                completed.iter().flat_map(|message| needs[*message].iter().cloned()).collect();
            assert!(part.iter().all(|line| wanted.contains(&heard(line))), "{tag}: a line completes nothing");
            parts += 1;
        }
        assert!(parts > 2, "{tag}: {parts} parts with messages");
    }
}

/// A sentence is made of phrases of its own pack, one after the other.
#[test]
fn sentences_hold_their_phrase_and_come_from_the_same_pack() {
    for tag in Pack::tags(&Embedded) {
        let pack = Pack::load(&Embedded, &tag).unwrap();
        let phrases: BTreeSet<String> =
            pack.phrases().unwrap().iter().map(|phrase| bare(&phrase.words)).collect();
        let mut fragments = 0;
        for line in &script_of(&tag).script.lines {
            let place = format!("{tag} {}: {}[{}]{}", line.id, line.before, line.words, line.after);
            if !line.said {
                // Any word of a number is listed as if it could end a sentence and go on.
                assert!(matches!(line.kind, Role::Number | Role::Unit) && line.unlocks == 0, "{place}");
                continue;
            }
            for around in [&line.before, &line.after] {
                let words: Vec<String> = bare(around).split_whitespace().map(str::to_owned).collect();
                assert!(is_made_of(&words, &phrases), "{place}");
            }
            let ends = !line.after.chars().any(char::is_alphabetic);
            assert_eq!(ends, line.intonation == Intonation::Final, "{place}");
            fragments += usize::from(line.before.chars().chain(line.after.chars()).any(char::is_alphabetic));
        }
        assert!(fragments > 50, "{tag}: {fragments}");
    }
}

/// Letters and spaces alone.
fn bare(words: &str) -> String {
    let letters = words.chars().filter(|c| c.is_alphabetic() || c.is_whitespace() || "'’-".contains(*c));
    letters.collect::<String>().to_lowercase().split_whitespace().collect::<Vec<_>>().join(" ")
}

fn is_made_of(words: &[String], phrases: &BTreeSet<String>) -> bool {
    let mut reached = vec![false; words.len() + 1];
    reached[0] = true;
    for from in 0..words.len() {
        for to in from + 1..=words.len() {
            reached[to] |= reached[from] && phrases.contains(&words[from..to].join(" "));
        }
    }
    reached[words.len()]
}

#[test]
fn numbers_stand_as_they_are_counted_and_months_as_they_follow() {
    let lines = |intonation, fits: fn(&Group) -> bool| {
        let request = ScriptRequest { all: true, ..request("en", &[]) };
        let all = script(&Embedded, &request).unwrap().script.lines;
        let of_part = all.chunk_by(|a, b| a.part == b.part);
        let picked = of_part.map(move |part| {
            let lines = part.iter().filter(|line| fits(&line.group) && line.intonation == intonation);
            lines.map(|line| line.words.clone()).collect::<Vec<_>>()
        });
        picked.collect::<Vec<_>>()
    };
    let counting = [
        "one",
        "two",
        "three",
        "four",
        "five",
        "six",
        "seven",
        "eight",
        "nine",
        "ten",
        "eleven",
        "twelve",
        "thirteen",
        "fourteen",
        "fifteen",
        "sixteen",
        "seventeen",
        "eighteen",
        "nineteen",
        "twenty",
        "thirty",
        "forty",
        "fifty",
        "sixty",
        "seventy",
        "eighty",
        "ninety",
        "hundred",
        "thousand",
    ];
    let year = [
        "January",
        "February",
        "March",
        "April",
        "May",
        "June",
        "July",
        "August",
        "September",
        "October",
        "November",
        "December",
    ];
    let mut seen = 0;
    for intonation in [Intonation::Medial, Intonation::Final] {
        for (order, fits) in [
            (&counting[..], (|group| *group == Group::Numbers(1)) as fn(&Group) -> bool),
            (&year[..], |group| *group == Group::Months),
        ] {
            for words in lines(intonation, fits) {
                let places: Vec<usize> =
                    words.iter().filter_map(|word| order.iter().position(|of| of == word)).collect();
                assert!(places.is_sorted(), "{words:?}");
                seen += places.len();
            }
        }
    }
    assert_eq!(seen, 2 * (counting.len() + year.len()));
}

/// The program's data, with files of a test in the place of the voice `v` of English.
struct WithVoice(crate::voice_bank::Files);

impl Data for WithVoice {
    fn read(&self, path: &str) -> Option<std::borrow::Cow<'_, [u8]>> {
        if path.starts_with("audio/") { self.0.read(path) } else { Embedded.read(path) }
    }
    fn list(&self, folder: &str) -> Vec<String> {
        if folder.starts_with("audio/") { self.0.list(folder) } else { Embedded.list(folder) }
    }
}

#[test]
fn what_is_recorded_is_left_out_and_what_is_stale_is_named() {
    let clips = [("Take care at rivers", "final"), ("March", "medial"), ("dig the last ones BY", "medial")];
    let files = bank_of(&clips, |_| wav_of(48_000, 1, sine(48_000, 300.0, 0.5, 0.5)));
    // The words of this one have changed since.
    let bank = String::from_utf8(files.read("audio/en/v/bank.toml").unwrap().into_owned()).unwrap();
    let stale = "[[clip]]\nfile = \"3.wav\"\nwords = \"Feel for ripe roots\"\nintonation = \"final\"\nid = \"first-harvest#3\"\n";
    let data = WithVoice(
        files
            .with("audio/en/v/3.wav", wav_of(48_000, 1, sine(48_000, 300.0, 0.5, 0.5)))
            .with("audio/en/v/bank.toml", bank + stale),
    );
    let request = ScriptRequest { voice: Some("v"), ..request("en", &[]) };
    let made = script(&data, &request).unwrap();
    let state = |words: &str, intonation| {
        let line = made.script.lines.iter().find(|line| line.words == words && line.intonation == intonation);
        line.map(|line| line.state.clone())
    };
    assert_eq!(state("Take care at rivers", Intonation::Final), None);
    assert_eq!(state("March", Intonation::Medial), None);
    assert_eq!(state("March", Intonation::Final), Some(ClipState::OtherIntonation));
    assert_eq!(state("Dig the last ones by", Intonation::Medial), None);
    let stale = ClipState::Stale { recorded: "Feel for ripe roots".to_owned() };
    assert_eq!(
        state("Feel under some plants for roots that are big enough to eat", Intonation::Final),
        Some(stale.clone())
    );
    let text = String::from_utf8(made.text(&data).unwrap()).unwrap();
    assert!(text.contains("The old recording says: Feel for ripe roots"), "{text}");
    assert!(!text.contains("[Take care at rivers]"));

    let all = script(&data, &ScriptRequest { all: true, ..request }).unwrap().script.lines;
    assert_eq!(all.len(), made.script.lines.len() + 3);
    // A voice that is not there has everything to record.
    let other = script(&data, &ScriptRequest { voice: Some("w"), ..request }).unwrap().script.lines;
    assert_eq!(other.len(), all.len());
}

/// Three clips of ten letters in one second, and one that somebody read four times as fast.
#[test]
fn time_follows_the_speakers_own_median() {
    let clips = [
        ("abcde fghij", "final"),
        ("bcdef ghijk", "final"),
        ("cdefg hijkl", "final"),
        ("defgh ijklm", "final"),
    ];
    let seconds = [1.0, 1.0, 1.0, 0.25];
    let files = bank_of(&clips, |clip| wav_of(48_000, 1, sine(48_000, 300.0, 0.5, seconds[clip])));
    let pace = Pace::of(&kabla::voice::Bank::load(&files, "en", "v").unwrap());
    assert!(pace.measured && (pace.letters_per_second - 10.0).abs() < 0.05, "{pace:?}");
    assert!((pace.seconds("Dig, and lift") - 1.0).abs() < 0.01);
}

#[test]
fn the_accented_script_has_no_english_but_what_is_recorded() {
    let made = script_of("en-XA");
    let mut text = String::from_utf8(made.text(&Embedded).unwrap()).unwrap();
    let mut own: Vec<String> = examples().into_iter().map(|(_, case)| case.name).collect();
    own.push("nobody".to_owned());
    for line in &made.script.lines {
        let space = if line.before.is_empty() { "" } else { " " };
        let shown = format!("{}{space}[{}]{}", line.before, line.words, line.after);
        assert!(text.contains(&shown), "{shown}");
        text = text.replacen(&shown, "", 1);
    }
    own.iter().for_each(|own| text = text.replace(own.as_str(), ""));
    let words = text.split(|c: char| !c.is_alphabetic()).filter(|word| word.len() > 1);
    let left: Vec<&str> = words.filter(|word| word.chars().all(|c| c.is_ascii_alphabetic())).collect();
    assert_eq!(left, [""; 0]);
}

#[test]
fn the_script_is_a_tagged_pdf_that_fits_its_paper_in_every_language() {
    for tag in Pack::tags(&Embedded).into_iter().chain(["en-XA".to_owned()]) {
        let (bytes, pages) = script_of(&tag).pdf(&Embedded).unwrap();
        assert!(pages > 5, "{tag}: {pages} pages");
        let text = String::from_utf8_lossy(&bytes).into_owned();
        assert!(
            text.contains("<pdfuaid:part>1</pdfuaid:part>") || text.contains("pdfuaid:part=\"1\""),
            "{tag}"
        );
    }
}

/// pdftotext finds every line in its order, and after it what it completes.
#[test]
fn pdftotext_finds_every_line_in_order() {
    let Some(pdftotext) = program("pdftotext") else { return };
    let project = Project::new();
    for tag in Pack::tags(&Embedded) {
        let made = script_of(&tag);
        // In the order of the file, as it is read aloud; the melody stands beside the words.
        // Lines end behind hyphens, which Portuguese writes again on the next line, and pdftotext parts some letters:
        // spaces do not count, and a hyphen counts once.
        let bare = |text: &str| text.replace(' ', "").replace("--", "-");
        let text =
            bare(&text_of_pdf(pdftotext, &project.write("script.pdf", made.pdf(&Embedded).unwrap().0)));
        let mut at = 0;
        for line in &made.script.lines {
            let space = if line.before.is_empty() { "" } else { " " };
            let shown = bare(&plain_spaces(&format!(
                "{} {}{space}{}{}",
                line.number, line.before, line.words, line.after
            )));
            let found = text[at..].find(&shown);
            at += found.unwrap_or_else(|| {
                panic!("{tag}: {shown} is not behind {}", &text[at..].chars().take(200).collect::<String>())
            });
        }
    }
}

#[test]
fn files_of_one_call_agree_and_wrong_ones_leave_nothing() {
    let project = Project::new();
    let script =
        |arguments: &[&str]| project.kabla(&[&["clips", "script", "--language", "sw"], arguments].concat());
    let case = example("village.toml");
    let whole = ["--voice", "asha", "--case", &case];
    script(&[&whole[..], &["--out", "a.txt", "--out", "a.jsonl", "--out", "a.pdf"]].concat()).done();
    let (json, text) = (project.read("a.jsonl"), project.read("a.txt"));
    let mut rest = text.as_str();
    for line in json.lines() {
        let line: serde_json::Value = serde_json::from_str(line).unwrap();
        let fields: BTreeSet<&str> = line.as_object().unwrap().keys().map(String::as_str).collect();
        let expected =
            ["number", "id", "words", "intonation", "kind", "group", "before", "after", "unlocks", "seconds"];
        assert_eq!(fields, BTreeSet::from(expected));
        let shown = format!("[{}]", line["words"].as_str().unwrap());
        let number = format!("\n{}. ", line["number"]);
        let (_, after) = rest.split_once(&number).unwrap();
        assert!(after.lines().next().unwrap().contains(&shown), "{line}");
        rest = after;
    }
    assert!(project.bytes("a.pdf").starts_with(b"%PDF"));
    assert_eq!(script(&[&whole[..], &["--json"]].concat()).out, json);

    for (wrong, named) in [
        (&["--out", "b.jsonl", "--out", "b.doc"][..], &["b.doc"][..]),
        (&["--case", "no.toml", "--case", "none.toml", "--out", "b.pdf"], &["no.toml", "none.toml"]),
    ] {
        let refused = script(wrong).ended(2);
        assert!(named.iter().all(|file| refused.err.contains(file)), "{}", refused.err);
    }
    assert_eq!(project.files(), ["a.jsonl", "a.pdf", "a.txt"]);
}

/// A short sentence is thought more easily than a long one.
#[test]
fn a_phrase_is_recorded_in_the_shortest_of_its_sentences() {
    let pack = Pack::load(&Embedded, "en").unwrap();
    let (_, case) = crate::examples().swap_remove(0);
    let statements = tell(&case, &make(&case).unwrap());
    // All sentences, as lists of their phrases.
    let mut sentences: Vec<Vec<Words>> = Vec::new();
    for statement in statements.iter().filter(|of| of.subject.is_spoken()) {
        let mut sentence = Vec::new();
        for piece in pack.say(statement).unwrap() {
            match piece {
                Piece::Words(words) => sentence.push(words),
                Piece::Pause(Pause::Comma) => {}
                Piece::Pause(_) => sentences.push(std::mem::take(&mut sentence)),
            }
        }
        sentences.extend((!sentence.is_empty()).then_some(sentence));
    }
    let count =
        |text: &str| text.split_whitespace().filter(|of| of.chars().any(char::is_alphanumeric)).count();
    let bare = |text: &str| text.trim_end_matches(|c: char| c.is_ascii_punctuation()).to_lowercase();
    let phrases = pack.phrases().unwrap();
    let carriers = Carriers::among(&pack, &statements, &phrases).unwrap();
    let mut several = 0;
    for phrase in &phrases {
        let says = |sentence: &&Vec<Words>| {
            sentence
                .iter()
                .any(|of| bare(&of.text) == bare(&phrase.words) && of.intonation == phrase.intonation)
        };
        let lengths = sentences.iter().filter(says).map(|of| of.iter().map(|words| count(&words.text)).sum());
        let lengths: Vec<usize> = lengths.collect();
        let Some(shortest) = lengths.iter().min() else { continue };
        let carrier = carriers.of(phrase).unwrap();
        let around = count(&carrier.before) + count(&phrase.words) + count(&carrier.after);
        assert_eq!(around, *shortest, "{} stands in: {carrier:?}", phrase.words);
        several += usize::from(lengths.len() > 1);
    }
    assert!(several > 10, "only {several} phrases have a choice");
}
