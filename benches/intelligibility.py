#!/usr/bin/env python3
"""How well a machine recognises dates and numbers in stitched phone audio, beside the same words spoken in one breath.

    python3 benches/intelligibility.py target/debug/kabla

Needs pocketsphinx and numpy (PyPI), flite and sox. For many harvest days and field sizes, English phone messages are made
from a bank of flite's voice slt, which was made from a person's recordings and which the recogniser understands better than the
stand-in voice's formants; the dates and numbers in them are cut out by the times of their cue sheets and recognised with a
small grammar. The originals are the same words by the same voice in one breath, through the same band. The recogniser's model is
for 16 kHz, so both are resampled from 8 kHz.
"""

import datetime
import hashlib
import json
import pathlib
import random
import re
import subprocess
import sys
import tempfile
import wave

import numpy
from pocketsphinx import Decoder

from english import FIRST, LATER, MONTHS, ONES, TEENS, TENS, farm

WORDS = set(ONES + TEENS + TENS + ["hundred", "thousand", "and"])
GRAMMARS = {
    "date": f"""#JSGF V1.0; grammar date;
public <date> = the <day> of <month>;
<day> = {" | ".join(FIRST + LATER)} | twentieth | thirtieth | (twenty | thirty) ({" | ".join(FIRST)});
<month> = {" | ".join(MONTHS).lower()};""",
    "number": f"""#JSGF V1.0; grammar number;
public <number> = [<below> thousand [and]] [<one> hundred [and]] <two> | <below> thousand [and] <one> hundred | <one> hundred | <below> thousand;
<below> = [<one> hundred [and]] <two>;
<one> = {" | ".join(ONES)};
<two> = {" | ".join(ONES + TEENS)} | ({" | ".join(TENS)}) [<one>];""",
}


def samples(path):
    with wave.open(str(path)) as file:
        assert (file.getnchannels(), file.getsampwidth(), file.getframerate()) == (1, 2, 8000)
        return numpy.frombuffer(file.readframes(file.getnframes()), "<i2")


def plain(words):
    return re.sub(r"[^a-z ]", "", words.lower().replace("-", " ")).split()


def runs(sheet):
    """The dates and numbers of a cue sheet: kind, words, and their times in seconds."""
    rows = []
    for line in sheet.read_text("utf-8").splitlines():
        row = re.match(r"(\d+):([\d.]+)\s+(\d+):([\d.]+)\s+(.*?)\s{2,}\S+\.wav", line)
        if row:
            begin, end = (int(row[i]) * 60 + float(row[i + 1]) for i in (1, 3))
            rows.append((begin, end, plain(row[5])))
    at = 0
    while at < len(rows):
        for length in range(min(12, len(rows) - at), 0, -1):
            words = sum((row[2] for row in rows[at : at + length]), [])
            is_date = words[0] == "the" and words[-1].capitalize() in MONTHS and words[-2] == "of" and 4 <= len(words) <= 5
            is_number = set(words) <= WORDS and words[0] != "and" and words[-1] != "and"
            if is_date or is_number:
                yield ("date" if is_date else "number"), words, rows[at][0], rows[at + length - 1][1]
                at += length - 1
                break
        at += 1


def say(words, ending, path):
    subprocess.run(["flite", "-voice", "slt", "-t", words + ending, "-o", path], check=True)


def bank(kabla, data):
    """Every phrase of the English pack, as a bank of its own."""
    listed = subprocess.run([kabla, "clips", "script", "--language", "en", "--all", "--json"], check=True, capture_output=True)
    folder = data / "audio/en/slt"
    folder.mkdir(parents=True)
    entries = []
    for line in listed.stdout.decode().splitlines():
        phrase = json.loads(line)
        ending = "." if phrase["intonation"] == "final" else ","
        name = hashlib.sha256((phrase["words"] + ending).encode()).hexdigest()[:12] + ".wav"
        say(phrase["words"], ending, data / "raw.wav")
        # Silence at both ends goes, 15 ms stays, as a cutter would leave it.
        trim = ["silence", "1", "0.005", "0.3%", "pad", "0.015", "0", "reverse"]
        subprocess.run(["sox", "-R", data / "raw.wav", folder / name] + trim + trim, check=True)
        text = json.dumps(phrase["words"], ensure_ascii=False)
        entries.append(f'[[clip]]\nfile = "{name}"\nwords = {text}\nintonation = "{phrase["intonation"]}"\n')
    head = 'language = "en"\nvoice = "slt"\nstatus = "stand-in"\nspeaker = "flite slt"\nrights = "for this measurement"\nmade_by = "benches/intelligibility.py"\n\n'
    (folder / "bank.toml").write_text(head + "\n".join(entries), "utf-8")


def original(words, folder):
    raw, cut = folder / "raw.wav", folder / "cut.wav"
    say(" ".join(words), ".", raw)
    subprocess.run(["sox", "-R", raw, "-b", "16", "-r", "8000", cut, "sinc", "300-3400", "norm", "-6"], check=True)
    return samples(cut)


def recognised(decoder, sound, folder):
    source, wide = folder / "source.wav", folder / "wide.wav"
    quiet = numpy.zeros(1600, "<i2")
    with wave.open(str(source), "wb") as file:
        file.setparams((1, 2, 8000, 0, "NONE", ""))
        file.writeframes(numpy.concatenate([quiet, sound, quiet]).astype("<i2").tobytes())
    subprocess.run(["sox", "-R", source, "-r", "16000", wide, "norm", "-6"], check=True)
    with wave.open(str(wide)) as file:
        frames = file.readframes(file.getnframes())
    decoder.start_utt()
    decoder.process_raw(frames, full_utt=True)
    decoder.end_utt()
    found = decoder.hyp()
    return found.hypstr.split() if found else []


def main():
    kabla = pathlib.Path(sys.argv[1]).resolve()
    decoders = {}
    chance = random.Random(5)
    tried = {kind: {} for kind in GRAMMARS}
    with tempfile.TemporaryDirectory() as folder:
        folder = pathlib.Path(folder)
        bank(kabla, folder / "data")
        for kind, text in GRAMMARS.items():
            (folder / f"{kind}.gram").write_text(text)
            decoders[kind] = Decoder(jsgf=str(folder / f"{kind}.gram"), loglevel="FATAL")
        for round in range(24):
            harvest = datetime.date(2027, 1, 1) + datetime.timedelta(days=15 * round + chance.randrange(15))
            rains = harvest + datetime.timedelta(days=200 + chance.randrange(40))
            case = folder / "case.toml"
            case.write_text(farm(harvest, rains, chance.randrange(100, 2000)))
            out = folder / f"out-{round}"
            command = [kabla, "--data", folder / "data", "speak", case, "--language", "en", "--voice", "slt", "--for", "phone", "--out", out]
            for topic in ("mark-plants", "gather-sand", "harvest", "plant-bed", "plant-field"):
                command += ["--topic", topic]
            subprocess.run(command, check=True, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
            for sheet in sorted(out.glob("*.cue.txt")):
                sound = samples(sheet.with_name(sheet.name.replace(".cue.txt", ".pcm.wav")))
                for kind, words, begin, end in runs(sheet):
                    tried[kind].setdefault(tuple(words), sound[int(begin * 8000) : int(end * 8000)])
        for kind, found in tried.items():
            right = {"stitched": 0, "in one breath": 0}
            for words, sound in found.items():
                for name, audio in (("stitched", sound), ("in one breath", original(words, folder))):
                    heard = recognised(decoders[kind], audio, folder)
                    right[name] += [word for word in heard if word != "and"] == [word for word in words if word != "and"]
            for name, count in right.items():
                print(f"{kind}s {name}: {count} of {len(found)} recognised whole ({100 * count / len(found):.0f} %)")


if __name__ == "__main__":
    main()
