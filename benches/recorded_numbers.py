#!/usr/bin/env python3
"""Numbers said with a person's clips: stitched by Kabla, and the same files played one after the other.

    cargo build && benches/recorded_numbers.py [FOLDER]

Debian's asterisk-core-sounds-en-wav and -fr-wav (CC BY-SA 3.0) hold digits, tens, months and ordinals, each spoken
alone, at 8 kHz. The script fetches both with apt-get into a temporary folder, or takes the .deb files from FOLDER.
For each language it writes a test pack whose messages are nothing but numbers and dates, imports the clips as a voice,
and lets Kabla speak.

English is heard by pocketsphinx with a grammar of numbers and dates; word errors are substitutions, words left out and
words added. Both sides are brought to the same level, and get the same faint noise of a room: the recogniser knows
rooms, and hears words in the dead silence between studio files. Its model is for 16 kHz. Beside the errors stands where
95 % of the differences lie when the utterances are drawn anew; a range that holds 0 tells no difference.

French has no model there. It is judged by what is heard where words of a number meet: steps of level and pitch, as
`kabla speak --explain` measures them at the clips' edges, and from word to word by the level of the whole word.

Needs apt-get or FOLDER, dpkg-deb and sox; pocketsphinx and numpy (PyPI) go into a temporary environment where Python
lacks them. KABLA names the program where it is not target/debug/kabla.
"""

import json
import os
import pathlib
import random
import re
import shutil
import subprocess
import sys
import tempfile
import venv

from english import FIRST, LATER, MONTHS, ONES, TEENS, TENS, farm

ROOT = pathlib.Path(__file__).resolve().parent.parent
KABLA = pathlib.Path(os.environ.get("KABLA", ROOT / "target/debug/kabla")).resolve()
TOPICS = ["mark-plants", "cut-vines", "harvest", "plant-field"]  # messages of one plan, each with other numbers
RATE = 16000  # Hz: what the recogniser's model was trained on
LEVEL = 2000  # RMS of what is recognised, in steps of 16 bits
ROOMS_DB = [40, 30]  # noise below speech


def files(names, pattern, first=0):
    """Words in a row, and the files that count on from `first`."""
    return {name: pattern.format(first + at) for at, name in enumerate(names)}


def files_of_tens(names):
    return {name: str(ten) for name, ten in zip(names, range(20, 100, 10))}


class English:
    folder, one = "en_US_f_Allison", "One"
    package = "asterisk-core-sounds-en-wav"
    months = MONTHS
    clips = {
        **files(ONES, "{}", 1), **files(TEENS, "{}", 10), **files_of_tens(TENS),
        **files(FIRST, "h-{}", 1), **files(LATER, "h-{}", 10), "twentieth": "h-20", "thirtieth": "h-30",
        **files(MONTHS, "mon-{}"), "hundred": "hundred", "thousand": "thousand",
    }
    numbers = f"""%cardinal:
0: zero; {"; ".join(ONES)};
10: {"; ".join(TEENS)};
20: twenty[ >>];
30: thirty[ >>];
40: forty[ >>];
50: fifty[ >>];
60: sixty[ >>];
70: seventy[ >>];
80: eighty[ >>];
90: ninety[ >>];
100: << hundred[ >>];
1000: << thousand[ >>];
1000000: =#,##0=;
%day:
0: =#,##0=;
1: {"; ".join(FIRST)};
10: {"; ".join(LATER)};
20: twentieth;
21: twenty >>;
30: thirtieth;
31: thirty >>;
32: =#,##0=;
"""

    @staticmethod
    def date(month, day):
        return f'{month} {{ SAY({day}, form: "day") }}.'


class French:
    folder, one = "fr_CA_f_June", "Un"
    package = "asterisk-core-sounds-fr-wav"
    below = "un deux trois quatre cinq six sept huit neuf dix onze douze treize quatorze quinze seize".split()
    months = "janvier février mars avril mai juin juillet août septembre octobre novembre décembre".split()
    clips = {
        **files(below, "{}", 1), "dix-sept": "17", "dix-huit": "18", "dix-neuf": "19",
        "vingt": "20", "trente": "30", "quarante": "40", "cinquante": "50", "soixante": "60", "quatre-vingt": "80",
        **files(months, "mon-{}"), "premier": "h-1", "et": "et", "cent": "hundred", "mille": "thousand",
    }
    numbers = f"""%cardinal:
0: zéro; {"; ".join(below)}; dix-sept; dix-huit; dix-neuf;
20: vingt[ >%%et>];
30: trente[ >%%et>];
40: quarante[ >%%et>];
50: cinquante[ >%%et>];
60/20: soixante[ >%%et>];
80/20: quatre-vingt[ >>];
100: cent[ >>];
200: << cent[ >>];
1000: mille[ >>];
2000: << mille[ >>];
1000000: =#,##0=;
%%et:
1: et un;
2: =%cardinal=;
11: et onze;
12: =%cardinal=;
%day:
0: =#,##0=;
1: premier;
2: =%cardinal=;
32: =#,##0=;
"""

    @staticmethod
    def date(month, day):
        return f'{{ SAY({day}, form: "day") }} {month}.'


def run(*command, **more):
    done = subprocess.run([str(part) for part in command], check=False, capture_output=True, **more)
    if done.returncode:
        sys.exit(f"{command[0]} failed: {done.stderr.decode()}")
    return done.stdout


def with_packages(made):
    """Runs this script once more where Python has what it needs."""
    print("pocketsphinx and numpy go into a temporary environment", file=sys.stderr)
    venv.create(made / "venv", with_pip=True)
    python = made / "venv/bin/python"
    subprocess.run([python, "-m", "pip", "install", "--quiet", "pocketsphinx>=5", "numpy"], check=True)
    return subprocess.run([python, __file__, *sys.argv[1:]], check=False).returncode


def recordings(language, made):
    """The folder with a language's clips."""
    given = list(pathlib.Path(sys.argv[1]).glob(language.package + "_*.deb")) if len(sys.argv) > 1 else []
    if not given:
        run("apt-get", "download", language.package, cwd=made)
        given = list(made.glob(language.package + "_*.deb"))
    run("dpkg-deb", "--extract", given[0], made / "sounds")
    return made / "sounds/usr/share/asterisk/sounds" / language.folder / "digits"


def numbers_to_say(language, chance):
    """Numbers of one to five digits and dates, as sentences of a spoken message. A message holds no more than 100."""
    numbers = [chance.randrange(low, high)
               for low, high, count in ((1, 100, 10), (100, 1000, 20), (1000, 10_000, 20), (10_000, 100_000, 10))
               for _ in range(count)]
    said = [f'{{ SAY({number}, form: "cardinal") }}.' for number in numbers]
    dates = [language.date(chance.choice(language.months), chance.randrange(1, 32)) for _ in range(20)]
    return " ".join(said + dates)


def pack(language, data):
    """The English pack, with other number words, and messages that say numbers and nothing else.

    It stays "en" for French as well: what is printed stays English, and counts as untranslated in another pack.
    """
    folder = data / "locales/en"
    folder.mkdir(parents=True)
    shutil.copy(ROOT / "locales/en/written.ftl", folder)
    (folder / "numbers.rbnf").write_text(language.numbers, "utf-8")
    (folder / "pack.toml").write_text(
        'tag = "en"\nname = "Test"\nscript = "Latn"\ndirection = "ltr"\ncalendar = "gregorian"\n'
        'status = "draft"\nvoice = "human"\n[numbers]\ngroup = ","\ndecimal = "."\n', "utf-8")
    chance = random.Random(5)
    bodies = {topic: numbers_to_say(language, chance) for topic in TOPICS}
    spoken = (ROOT / "locales/en/spoken.ftl").read_text("utf-8")
    messages = []
    for message in re.split(r"^(?=-?[a-z][a-z0-9-]* =)", spoken, flags=re.M)[1:]:
        name = message.split(" =")[0]
        terms = "" if name.startswith("-") else " ".join(re.findall(r"\{ -[a-z-]+ \}", message))
        messages.append(f"{name} = {bodies.get(name, language.one + '.')} {terms}\n")
    (folder / "spoken.ftl").write_text("".join(messages), "utf-8")


def voice(language, sounds, data, made):
    """Imports each clip twice, since it was spoken alone: where a number goes on, and where it ends."""
    lines, named = [], []
    folder = made / f"recorded-{language.folder}"
    folder.mkdir()
    for name, file in language.clips.items():
        for intonation in ("medial", "final"):
            lines.append({"id": name, "words": name, "intonation": intonation})
            named.append(folder / f"{len(lines):03}.wav")
            shutil.copy(sounds / (file + ".wav"), named[-1])
    script = made / f"{language.folder}.jsonl"
    script.write_text("".join(json.dumps(line, ensure_ascii=False) + "\n" for line in lines), "utf-8")
    run(KABLA, "--data", data, "clips", "import", "--language", "en", "--voice", "human", "--script", script,
        "--speaker", language.folder, "--rights", "CC BY-SA 3.0", "--consent", "published under that licence",
        "--made-by", f"Debian's {language.package}", *named)
    return data / "audio/en/human"


def samples(path):
    raw = run("sox", "-R", path, "-t", "raw", "-e", "signed", "-b", 16, "-r", RATE, "-c", 1, "-")
    return numpy.frombuffer(raw, "<i2").astype(float)


def level(sound):
    """RMS of what sounds: of the 10 ms pieces that are no more than 20 dB below the loudest."""
    pieces = sound[: len(sound) // 160 * 160].reshape(-1, 160)
    powers = (pieces**2).mean(axis=1)
    return powers[powers > powers.max() / 100].mean() ** 0.5


def seconds(time):
    minutes, rest = time.split(":")
    return int(minutes) * 60 + float(rest)


def spoken(language, data, made, channel):
    """Each number and date once: its words, and of each word the sound as stitched and the clip's file."""
    out = made / f"{channel}-{language.folder}"
    ending, sounds = ("", ".wav") if channel == "radio" else ("-phone", ".pcm.wav")
    case = made / "case.toml"
    case.write_text(farm())
    topics = [part for topic in TOPICS for part in ("--topic", topic)]
    command = [KABLA, "--data", data, "--cache", made / "cache", "speak", case, "--language", "en", "--voice", "human",
               "--for", channel, *topics]
    run(*command, "--out", out)
    explained = json.loads(run(*command, "--explain", "--json"))
    found = {}
    for message in explained:
        sheet = out / f"en-{message['message']}{ending}.cue.txt"
        sound = samples(sheet.with_name(sheet.name.replace(".cue.txt", sounds)))
        rows = [line.split() for line in sheet.read_text("utf-8").splitlines() if re.match(r"\d+:[\d.]+ ", line)]
        stretch = []
        for row, clip in zip(rows, message["clips"], strict=True):
            assert row[-1] == clip["clip"]
            at = slice(*(round(seconds(time) * RATE) for time in row[:2]))
            stretch.append((sound[at], clip))
            if clip["pause_s"] is not None or clip is message["clips"][-1]:
                said = " ".join(clip["words"] for _, clip in stretch).replace(".", "").lower()
                found.setdefault(tuple(said.split()), stretch)
                stretch = []
    return found


def grammar():
    """Every number below a million and every date, and nothing else."""
    any_of = {name: " | ".join(names).lower()
              for name, names in (("ones", ONES), ("teens", TEENS), ("tens", TENS), ("first", FIRST), ("later", LATER),
                                  ("months", MONTHS))}
    return """#JSGF V1.0; grammar numbers;
public <said> = <number> | <month> <day>;
<number> = <below> thousand [<below>] | <below>;
<below> = <one> hundred [<two>] | <two>;
<two> = {teens} | ({tens}) [<one>] | <one>;
<one> = {ones};
<month> = {months};
<day> = {first} | {later} | twentieth | thirtieth | (twenty | thirty) ({first});
""".format(**any_of)


def heard(decoder, sound, below_db):
    """The words that the recogniser hears, in a room with noise so far below the voice."""
    sound = numpy.pad(sound * (LEVEL / level(sound)), RATE // 4)
    noise = numpy.random.default_rng(1).normal(0, LEVEL * 10 ** (-below_db / 20), len(sound))
    steps = numpy.clip(numpy.rint(sound + noise), -32768, 32767).astype("<i2")
    decoder.start_utt()
    decoder.process_raw(steps.tobytes(), full_utt=True)
    decoder.end_utt()
    found = decoder.hyp()
    return [re.sub(r"\(\d+\)$", "", word) for word in found.hypstr.split()] if found else []


def word_errors(said, heard):
    """The least words to change, leave out or add."""
    row = list(range(len(heard) + 1))
    for at, word in enumerate(said, 1):
        before, row[0] = row[0], at
        for place, other in enumerate(heard, 1):
            before, row[place] = row[place], min(row[place] + 1, row[place - 1] + 1, before + (word != other))
    return row[-1]


def plain(stretch, bank, kept={}):
    """The files one after the other, as they are."""
    for _, clip in stretch:
        if clip["clip"] not in kept:
            kept[clip["clip"]] = samples(bank / clip["clip"])
    return [kept[clip["clip"]] for _, clip in stretch]


def recognise(radio, phone, bank, made):
    joined = lambda found: [numpy.concatenate([sound for sound, _ in stretch]) for stretch in found.values()]
    sides = [joined(radio), joined(phone), [numpy.concatenate(plain(stretch, bank)) for stretch in radio.values()]]
    gram = made / "numbers.gram"
    gram.write_text(grammar())
    print(f"English: {len(radio)} numbers and dates, {sum(map(len, radio))} words; word errors, and 95 % of differences")
    print(f"{'noise below the voice':<22} {'radio':>6} {'':>11} {'phone':>6} {'':>11} {'one after the other':>20}")
    for room in ROOMS_DB:
        *stitched, after = ([word_errors(said, heard(decoder, sound, room)) for said, sound in zip(radio, sounds)]
                            for sounds in sides for decoder in [pocketsphinx.Decoder(jsgf=str(gram), bestpath=False, loglevel="FATAL")])
        columns = [f"{sum(errors):>6} {apart(errors, after):>11}" for errors in stitched]
        print(f"{room:>19} dB {' '.join(columns)} {sum(after):>20}", flush=True)


def apart(errors, others):
    """Where 95 % of the differences lie when utterances are drawn anew."""
    differences = numpy.array(errors) - numpy.array(others)
    drawn = numpy.random.default_rng(1).integers(0, len(differences), (2000, len(differences)))
    low, high = numpy.percentile(differences[drawn].sum(axis=1), [2.5, 97.5])
    return f"{low:+.0f}…{high:+.0f}"


def steps(name, found, bank):
    """How words of a number meet."""
    explained = [clip["meets"] for stretch in found.values() for _, clip in stretch[:-1]]
    def from_word_to_word(sides):
        return [abs(20 * numpy.log10(level(after) / level(before)))
                for sounds in sides for before, after in zip(sounds, sounds[1:])]
    rows = {
        "level at the edges, dB": [meets["level_db"] for meets in explained],
        "pitch at voiced edges, semitones": [meets["pitch_semitones"] for meets in explained if meets["pitch_semitones"] > 0],
        "level of whole words, stitched, dB": from_word_to_word([sound for sound, _ in stretch] for stretch in found.values()),
        "level of whole words, one after the other, dB": from_word_to_word(plain(stretch, bank) for stretch in found.values()),
    }
    print(f"{name}: {len(explained)} joins of {len(found)} numbers and dates\n{'steps':<46} {'joins':>6} {'median':>7} {'of 10, 9 below':>15}")
    for row, values in rows.items():
        print(f"{row:<46} {len(values):>6} {numpy.median(values):>7.1f} {numpy.percentile(values, 90):>15.1f}", flush=True)


def main():
    with tempfile.TemporaryDirectory() as folder:
        made = pathlib.Path(folder)
        if numpy is None:
            return with_packages(made)
        for language in (English, French):
            data = made / f"data-{language.folder}"
            sounds = recordings(language, made)
            pack(language, data)
            bank = voice(language, sounds, data, made)
            found = spoken(language, data, made, "radio")
            if language is English:
                recognise(found, spoken(language, data, made, "phone"), bank, made)
            steps(language.__name__, found, bank)
    return 0


try:
    import numpy
    import pocketsphinx
except ImportError:
    numpy = None

if __name__ == "__main__":
    sys.exit(main())
