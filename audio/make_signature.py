#!/usr/bin/env python3
"""Makes an invented station's signature: a few tones of our own, before, after and under the voice.

    python3 audio/make_signature.py

Needs flac. The same script gives the same bytes. A station puts its own sounds in their place.
"""

import array
import math
import pathlib
import subprocess
import tempfile
import wave

RATE = 24000  # Hz: the tones have nothing above 6 kHz
FOLDER = pathlib.Path(__file__).parent / "signature"
# Five notes of a scale without half tones, in Hz, from A3.
NOTES = [220.0 * 2 ** (steps / 12) for steps in (0, 2, 4, 7, 9, 12)]


def pluck(sound, at, pitch, seconds, loud):
    """Adds a plucked note: partials that die away, the higher the faster."""
    first = round(at * RATE)
    for index in range(min(round(seconds * RATE), len(sound) - first)):
        time = index / RATE
        rise = min(1.0, time / 0.005)
        tone = sum(
            math.sin(2 * math.pi * pitch * n * time) * math.exp(-time * (1.5 + n)) / n**1.5 for n in range(1, 7)
        )
        sound[first + index] += loud * rise * tone


def tune(seconds, notes, spacing, loud=0.3):
    """Notes one after the other, the last one left to ring."""
    sound = [0.0] * round(seconds * RATE)
    for turn, note in enumerate(notes):
        pluck(sound, turn * spacing, NOTES[note], seconds, loud)
    fade = round(0.4 * RATE)
    for index in range(fade):
        sound[-1 - index] *= index / fade
    return sound


def bed(seconds, beat):
    """A slow figure over a low drone; its end runs into its beginning."""
    sound = [0.0] * round(seconds * RATE)
    for index in range(len(sound)):
        time = index / RATE
        sway = 0.6 + 0.4 * math.sin(2 * math.pi * time / seconds * 2)
        sound[index] = 0.05 * sway * sum(math.sin(2 * math.pi * pitch * time) for pitch in (110.0, 165.0))
    figure = [0, 2, 3, 2, 4, 3, 2, 1]
    for turn in range(int(seconds / beat)):
        pluck(sound, turn * beat, NOTES[figure[turn % len(figure)]], 1.5, 0.15)
    return sound


def write(name, sound):
    with tempfile.TemporaryDirectory() as folder:
        path = pathlib.Path(folder) / "sound.wav"
        with wave.open(str(path), "wb") as file:
            file.setnchannels(1)
            file.setsampwidth(2)
            file.setframerate(RATE)
            file.writeframes(array.array("h", (round(32767 * max(-1.0, min(1.0, s))) for s in sound)).tobytes())
        out = FOLDER / f"{name}.flac"
        subprocess.run(["flac", "--silent", "--best", "--no-padding", "--force", "-o", str(out), str(path)], check=True)
        print(f"{out}: {out.stat().st_size / 1000:.0f} kB")


if __name__ == "__main__":
    FOLDER.mkdir(exist_ok=True)
    write("opening", tune(4.0, [0, 2, 3, 5, 4, 5], 0.35))
    write("closing", tune(3.0, [5, 3, 2, 0], 0.35))
    write("bed", bed(12.0, 0.75))
