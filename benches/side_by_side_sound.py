#!/usr/bin/env python3
"""CPU time of whole processes that join the same clips: Kabla, sox and ffmpeg.

    cargo build && cargo bench -p kabla-benches --profile dev --no-run --bench many_messages && benches/side_by_side_sound.py [RUNS]

About 40 clips, 200 s of speech: every stretch of some of the example farm's messages as one clip, as if a
speaker had read whole sentences. They are cut from what the stand-in voice says, at 44.1 kHz, so that all
must resample. sox joins and resamples; ffmpeg joins, resamples, measures by ebur128 and applies a gain: in one
run any gain, in two what it measured before, as it takes to bring a message to a loudness;
Kabla reads the case, plans, words and chooses, joins with pauses, crossfades and room tone, measures,
levels, and writes broadcast WAV with cue sheets and captions. Needs sox, ffmpeg and flac.

In a batch (the bench `many_messages`, the bank read once) a message counts as long as these are, pauses and all.
"""

import json
import os
import pathlib
import re
import shutil
import subprocess
import sys
import tempfile

ROOT = pathlib.Path(__file__).resolve().parent.parent
KABLA = os.environ.get("KABLA", str(ROOT / "target/debug/kabla"))
CASE = ROOT / "examples/farm.toml"
TOPICS = ["gather-sand", "fill-container", "monthly-check", "plant-field"]
RUNS = int(sys.argv[1]) if len(sys.argv) > 1 else 15


def run(*command, **more):
    return subprocess.run([str(part) for part in command], check=True, capture_output=True, **more).stdout


def cpu(command, before=lambda: None):
    """The least and the middle CPU time in ms of some runs, user and system."""
    taken = []
    for _ in range(RUNS):
        before()
        child = subprocess.Popen([str(part) for part in command], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
        _, status, used = os.wait4(child.pid, 0)
        assert status == 0, command
        taken.append((used.ru_utime + used.ru_stime) * 1000)
    taken.sort()
    return taken[0], taken[len(taken) // 2]


def loudness(ffmpeg):
    """What ffmpeg measures, in LUFS."""
    said = subprocess.run(["ffmpeg", "-nostdin", "-hide_banner", *map(str, ffmpeg[4:]), "aresample=48000,ebur128", "-f", "null", "-"],
                          check=True, capture_output=True).stderr.decode()
    return float(re.findall(r"I:\s+(-?[0-9.]+) LUFS", said)[-1])


def both(first, second):
    """What two commands take one after the other."""
    return tuple(one + other for one, other in zip(first, second))


def speak(data, voice, out, cache):
    topics = [word for topic in TOPICS for word in ("--topic", topic)]
    return [KABLA, "--data", data, "--cache", cache, "speak", CASE, "--language", "en", "--voice", voice,
            "--for", "radio", *topics, *out]


def long_clips(made):
    """A voice with a clip for every stretch between pauses; the files in the order in which they are heard."""
    data = made / "data"
    for folder in ("locales", "templates", "fonts", "examples"):
        shutil.copytree(ROOT / folder, data / folder)
    for voice in ("audio/en/stand-in",):
        shutil.copytree(ROOT / voice, data / voice)
    folder = data / "audio/en/sentences"
    folder.mkdir(parents=True)
    run(*speak(data, "stand-in", ["--out", made / "spoken"], made / "cache-of-words"))
    told = json.loads(run(*speak(data, "stand-in", ["--explain", "--json"], made / "cache-of-words")))
    heard, words, entries = [], {}, []
    for message in told:
        cues = [line for line in (made / f"spoken/en-{message['message']}.cue.txt").read_text().splitlines()
                if line[:1].isdigit()]
        times = [[seconds(time) for time in line.split()[:2]] for line in cues]
        stretch = []
        for clip, (start, end) in zip(message["clips"], times, strict=True):
            stretch.append((clip, start, end))
            if clip["pause_s"] is None and clip is not message["clips"][-1]:
                continue
            said = " ".join(clip["words"] for clip, _, _ in stretch)
            key = (said.lower(), stretch[-1][0]["wanted"])
            if key not in words:
                words[key] = f"{len(words):02}.flac"
                start, end = max(stretch[0][1] - 0.05, 0), stretch[-1][2] + 0.05
                run("sox", made / f"spoken/en-{message['message']}.wav", "-b", "16", "-r", "44100", folder / words[key],
                    "trim", start, f"={end}")
                entries.append(f'[[clip]]\nfile = "{words[key]}"\nwords = {json.dumps(said)}\nintonation = "{key[1]}"\n')
            heard.append(folder / words[key])
            stretch = []
    (folder / "bank.toml").write_text(
        'language = "en"\nvoice = "sentences"\nstatus = "stand-in"\nspeaker = "a machine"\nrights = "free"\n'
        'made_by = "cut from the stand-in voice"\n' + "\n".join(entries))
    return data, heard


def batch(length):
    """The least and the middle CPU time in ms of as many seconds of messages, of a batch in one process."""
    benches = [file for file in (ROOT / "target/debug/deps").glob("many_messages-*") if not file.suffix]
    if not benches:
        sys.exit("there is no bench: cargo bench -p kabla-benches --profile dev --no-run --bench many_messages")
    newest = max(benches, key=lambda file: file.stat().st_mtime)
    said = [run(newest, "140").decode() for _ in range(max(RUNS // 2, 3))]
    taken = sorted(float(re.search(r"([0-9.]+) ms for 200 s", line)[1]) * length / 200 for line in said)
    return taken[0], taken[len(taken) // 2]


def seconds(time):
    minutes, rest = time.split(":")
    return int(minutes) * 60 + float(rest)


def main():
    with tempfile.TemporaryDirectory() as name:
        made = pathlib.Path(name)
        data, heard = long_clips(made)
        length = sum(float(run("soxi", "-D", clip)) for clip in heard)
        print(f"{len(heard)} clips, {len(set(heard))} of them different, {length:.0f} s of speech, {len(TOPICS)} messages")
        listing = made / "list.txt"
        listing.write_text("".join(f"file '{clip}'\n" for clip in heard))
        ffmpeg = ["ffmpeg", "-nostdin", "-v", "error", "-y", "-f", "concat", "-safe", "0", "-i", listing, "-af"]
        out, cache = made / "out", made / "cache"
        ours = speak(data, "sentences", ["--out", out], cache)
        rows = {
            "flac: decode each clip once": cpu(["flac", "-s", "-d", "-f", "-c", *sorted(set(heard))]),
            "sox: join, resample": cpu(["sox", *heard, "-b", "16", made / "sox.wav", "rate", "48000"]),
            "ffmpeg: join, resample, ebur128, gain":
                cpu([*ffmpeg, "aresample=48000,ebur128,volume=-3dB", made / "ffmpeg.wav"]),
            "ffmpeg: the same with true peak":
                cpu([*ffmpeg, "aresample=48000,ebur128=peak=true,volume=-3dB", made / "ffmpeg.wav"]),
            "ffmpeg: in two runs, with the gain it measured": both(
                cpu([*ffmpeg, "aresample=48000,ebur128", "-f", "null", "-"]),
                cpu([*ffmpeg, f"aresample=48000,volume={-23 - loudness(ffmpeg):.1f}dB", made / "ffmpeg.wav"]),
            ),
            "kabla: first time, no clip kept": cpu(ours, lambda: shutil.rmtree(cache, ignore_errors=True)),
            "kabla: clips kept": cpu(ours),
        }
        spoken = sum(float(run("soxi", "-D", wave)) for wave in out.glob("*.wav"))
        rows[f"kabla: in a batch, {spoken:.0f} s with pauses"] = batch(spoken)
        peaks = rows["ffmpeg: the same with true peak"][1]
        for name, (least, middle) in rows.items():
            print(f"{name:46} {middle:7.0f} ms (least {least:.0f})   1/{peaks / middle:.1f} of ffmpeg with true peak")


main()
