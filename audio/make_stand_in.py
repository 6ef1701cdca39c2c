#!/usr/bin/env python3
"""Makes a stand-in voice: every phrase of a language, spoken by a machine.

    cargo run -- clips script --language sw --all --json > sw.jsonl
    python3 audio/make_stand_in.py --language sw --espeak-voice sw --pace 165 sw.jsonl

Needs espeak-ng, sox and opusenc. The same phrases give the same bytes. The voice
is there to try things out and to be replaced by a person.
"""

import argparse
import concurrent.futures
import hashlib
import json
import os
import pathlib
import re
import shutil
import subprocess
import tempfile
import unicodedata

RATE = 16000  # Hz: formant speech has little above 8 kHz
BITRATE = 18  # kbit/s: clear for speech of this rate, and a whole voice stays below 3 MB
# A lone word is spoken as slowly as a whole phrase's end; inside a sentence it is shorter.
LONE_WORD_FASTER = 1.3


def latin(letter):
    """An Ethiopic letter by its name in Unicode, such as sa for ETHIOPIC SYLLABLE SA; others as they are."""
    name = unicodedata.name(letter, "")
    return name.rsplit(" ", 1)[-1] if name.startswith("ETHIOPIC SYLLABLE ") else letter


def slug(words):
    """A readable file name, made unique by a few digits of a hash."""
    plain = unicodedata.normalize("NFKD", "".join(map(latin, words))).encode("ascii", "ignore").decode().lower()
    name = re.sub(r"[^a-z0-9]+", "-", plain).strip("-")[:32].strip("-")
    return f"{name or 'phrase'}-{hashlib.sha256(words.encode()).hexdigest()[:6]}"


def speak(words, intonation, voice, pace):
    """One phrase as Ogg Opus bytes.

    A sentence's end makes the voice fall. Where the sentence goes on, the
    phrase is spoken before a comma, which keeps the voice up.
    """
    with tempfile.TemporaryDirectory() as folder:
        return spoken(words, intonation, voice, pace, pathlib.Path(folder))


def spoken(words, intonation, voice, pace, folder):
    raw, cut, out = (folder / name for name in ("raw.wav", "cut.wav", "out.opus"))
    text = words + ("." if intonation == "final" else ",")
    lone = intonation == "medial" and " " not in words
    rate = round(pace * LONE_WORD_FASTER) if lone else pace
    subprocess.run(
        ["espeak-ng", "-v", voice, "-s", str(rate), "-w", str(raw), "--", text],
        check=True,
    )
    # Silence at both ends goes, 15 ms stays. No dither is added, so that the same phrase gives the same bytes.
    trim = ["silence", "1", "0.005", "0.3%", "pad", "0.015", "0"]
    subprocess.run(
        ["sox", "-D", str(raw), "-b", "16", "-r", str(RATE), str(cut)]
        + ["norm", "-3.5" if lone else "-3"] + trim + ["reverse"] + trim + ["reverse"],
        check=True,
    )
    options = ["--quiet", "--bitrate", str(BITRATE), "--speech", "--serial", "1", "--padding", "0", "--discard-comments"]
    subprocess.run(["opusenc", *options, str(cut), str(out)], check=True)
    return out.read_bytes()


def quoted(text):
    return json.dumps(text, ensure_ascii=False)


def main():
    arguments = argparse.ArgumentParser(description=__doc__.split("\n")[0])
    arguments.add_argument("phrases", type=pathlib.Path, help="what `kabla clips script --all --json` prints")
    arguments.add_argument("--language", required=True)
    arguments.add_argument("--espeak-voice", required=True)
    arguments.add_argument("--pace", type=int, default=145, help="words a minute, as espeak-ng counts them")
    arguments.add_argument("--note", help="what a listener should know of the voice")
    chosen = arguments.parse_args()
    phrases = [json.loads(line) for line in chosen.phrases.read_text("utf-8").splitlines() if line.strip()]
    bank = pathlib.Path(__file__).parent / chosen.language / "stand-in"
    version = subprocess.run(["espeak-ng", "--version"], check=True, capture_output=True, text=True).stdout
    version = re.search(r"\d+\.\d+(\.\d+)?", version).group()

    with tempfile.TemporaryDirectory() as made:
        made = pathlib.Path(made)
        entries = []
        phrases.sort(key=lambda phrase: (phrase["words"], phrase["intonation"]))

        def sound(phrase):
            return speak(phrase["words"], phrase["intonation"], chosen.espeak_voice, chosen.pace)

        with concurrent.futures.ThreadPoolExecutor(os.cpu_count()) as pool:
            sounds = list(pool.map(sound, phrases))
        for phrase, sound in zip(phrases, sounds):
            name = f"{slug(phrase['words'])}-{phrase['intonation'][0]}.opus"
            (made / name).write_bytes(sound)
            entries.append(
                f"[[clip]]\nfile = {quoted(name)}\nwords = {quoted(phrase['words'])}\n"
                f"intonation = {quoted(phrase['intonation'])}\nid = {quoted(phrase['id'])}\n"
            )
        head = (
            "# Made by audio/make_stand_in.py; not to be edited by hand.\n"
            f"language = {quoted(chosen.language)}\nvoice = \"stand-in\"\nstatus = \"stand-in\"\n"
            f"speaker = {quoted(f'espeak-ng {version}, formant synthesis, voice {chosen.espeak_voice}')}\n"
            'rights = "made by a machine; free to use as the project is"\n'
            'made_by = "audio/make_stand_in.py"\n'
            + (f"note = {quoted(chosen.note)}\n" if chosen.note else "")
            + "\n"
        )
        (made / "bank.toml").write_text(head + "\n".join(entries), "utf-8")
        if bank.exists():
            shutil.rmtree(bank)
        shutil.copytree(made, bank)
    size = sum(file.stat().st_size for file in bank.iterdir())
    print(f"{bank.name} {chosen.language}: {len(entries)} clips, {size / 1e6:.1f} MB")


if __name__ == "__main__":
    main()
