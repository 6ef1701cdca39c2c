#!/usr/bin/env python3
"""Active speech levels by an independent implementation of the method that ITU-T P.56 (method B) describes.

Needs numpy and scipy. Signals: a sine of 300 Hz at 8 kHz whose amplitude swings as speech does, in steps of
level@seconds (dB of the sine's peak to full scale; "-" is silence).
"""
import pathlib

import numpy as np
from scipy.signal import lfilter

RATE, TIME, HANG, MARGIN = 8000, 0.03, 0.2, 15.9
CASES = {
    "steady": "-20@10",
    "half": "-20@1 -@1 -20@1 -@1 -20@1 -@1 -20@1 -@1",
    "mostly-silent": "-23@2 -@18",
    "two-levels": "-20@3 -@0.5 -32@3 -@0.5 -26@3",
    "short-words": "-18@0.3 -@0.3 -18@0.25 -@0.4 -18@0.5 -@0.9 -18@0.3 -@0.5",
    "quiet": "-50@4 -@2 -50@3",
    "loud": "-3@4 -@2 -1@3",
}


def signal(steps):
    parts, count = [], 0
    for step in steps.split():
        level, seconds = step.split("@")
        length = round(float(seconds) * RATE)
        n = np.arange(count, count + length)
        count += length
        swing = 0.55 - 0.45 * np.cos(2 * np.pi * 4 * n / RATE)
        peak = 0.0 if level == "-" else 10 ** (float(level) / 20)
        parts.append(peak * swing * np.sin(2 * np.pi * 300 * n / RATE))
    return np.concatenate(parts)


def active_level(x):
    g = np.exp(-1 / (RATE * TIME))
    envelope = np.abs(x)
    for _ in range(2):
        envelope = lfilter([1 - g], [1, -g], envelope)
    energy = np.sum(x**2)
    hang = round(HANG * RATE)
    points = []
    for j in range(15):
        c = 2.0 ** (j - 15)
        over = envelope >= c
        # Samples since the envelope was last above; a sample counts while these are within the hangover.
        last = np.maximum.accumulate(np.where(over, np.arange(len(x)), -(10**9)))
        active = np.sum(np.arange(len(x)) - last <= hang)
        if active:
            points.append((10 * np.log10(energy / active), 20 * np.log10(c)))
    for (a0, c0), (a1, c1) in zip(points, points[1:]):
        if a0 - c0 >= MARGIN >= a1 - c1:
            share = ((a0 - c0) - MARGIN) / ((a0 - c0) - (a1 - c1))
            return a0 + share * (a1 - a0)
    raise ValueError("no threshold has the margin")


lines = ["name,steps,dbov,long_term_dbov"]
for name, steps in CASES.items():
    x = signal(steps)
    lines.append(f"{name},{steps},{active_level(x):.4f},{10 * np.log10(np.mean(x**2)):.4f}")
(pathlib.Path(__file__).parent / "cases.csv").write_text("\n".join(lines) + "\n")
