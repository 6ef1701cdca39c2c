#!/usr/bin/env python3
"""Levels of known noise as numpy measures them. Needs numpy; writes cases.csv beside itself.

The noise is a linear congruential generator's, so that anybody can make the same samples:
x' = (1664525 x + 1013904223) mod 2^32 from x = seed, sample = gain * (x' / 2^31 - 1).
"""

import pathlib

import numpy

COUNT = 24_000


def noise(seed, gain):
    state, samples = seed, []
    for _ in range(COUNT):
        state = (1664525 * state + 1013904223) % 2**32
        samples.append(gain * (state / 2**31 - 1))
    return numpy.array(samples)


lines = ["seed,gain,rms_dbfs"]
for seed, gain in [(1, 0.5), (2, 0.1), (3, 0.03), (4, 0.01), (5, 0.003)]:
    rms = numpy.sqrt(numpy.mean(noise(seed, gain) ** 2))
    lines.append(f"{seed},{gain},{20 * numpy.log10(rms):.3f}")
(pathlib.Path(__file__).parent / "cases.csv").write_text("\n".join(lines) + "\n")
