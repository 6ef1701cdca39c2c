#!/usr/bin/env python3
"""The telephone band's response, from scipy's own design of the same filters. Needs scipy."""
import math
import pathlib

import numpy as np
from scipy.signal import firwin, freqz


def design(rate, cutoff, width, attenuation, pass_zero):
    half = max(1, math.ceil((attenuation - 7.95) / (2.285 * 2 * math.pi * width / rate) / 2))
    beta = 0.1102 * (attenuation - 8.7)
    return firwin(2 * half + 1, cutoff, window=("kaiser", beta), pass_zero=pass_zero, fs=rate, scale=pass_zero)


low = design(48000, 3725, 600, 60, True)
high = design(8000, 225, 150, 60, False)
# Loss against 1020 Hz that ITU-T G.712 allows between four-wire points, from memory: least and most, in dB.
MASK = {300: (-0.5, 0.5), 400: (-0.5, 0.5), 1020: (0, 0), 2000: (-0.5, 0.5), 3000: (-0.5, 0.5), 3400: (-0.5, 1.8)}
lines = ["hz,gain_db,least_loss_db,most_loss_db"]
for hz in (100, 150, 200, 250, 300, 350, 400, 600, 1020, 1500, 2000, 2500, 3000, 3200, 3400, 3600, 3800):
    _, at_48 = freqz(low, worN=[hz], fs=48000)
    _, at_8 = freqz(high, worN=[hz], fs=8000)
    gain = 20 * np.log10(abs(at_48[0]) * abs(at_8[0]))
    least, most = MASK.get(hz, ("", ""))
    lines.append(f"{hz},{gain:.4f},{least},{most}")
(pathlib.Path(__file__).parent / "cases.csv").write_text("\n".join(lines) + "\n")
