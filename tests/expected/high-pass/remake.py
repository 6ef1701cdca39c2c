#!/usr/bin/env python3
"""Response of a Butterworth high-pass as scipy designs it. Needs scipy; writes cases.csv beside itself."""

import pathlib

import numpy
from scipy.signal import butter, freqz

HERTZ = [20, 30, 40, 50, 60, 75, 90, 110, 150, 200, 400, 1000, 4000]
numerator, denominator = butter(2, 75, "highpass", fs=48000)
_, response = freqz(numerator, denominator, worN=HERTZ, fs=48000)
lines = ["hz,db"] + [f"{hz},{20 * numpy.log10(abs(gain)):.4f}" for hz, gain in zip(HERTZ, response)]
(pathlib.Path(__file__).parent / "cases.csv").write_text("\n".join(lines) + "\n")
