"""Remakes cases.csv: alpha and beta of the beta distribution with a given mean and standard deviation, by scipy.

    pip install scipy
    python remake.py

No formula for alpha and beta is used: scipy's root finder searches the pair for
which scipy.stats.beta gives the mean and the deviation.
"""

import csv
import pathlib

import numpy as np
from scipy.optimize import root
from scipy.stats import beta

PAIRS = [
    (0.88, 0.055),
    (0.88, 0.02),
    (0.88, 0.15),
    (0.81, 0.10),
    (0.95, 0.03),
    (0.95, 0.005),
    (0.50, 0.05),
    (0.50, 0.2886751346),  # very nearly alpha = beta = 1
    (0.57, 0.20),
    (0.16, 0.08),
    (0.07, 0.04),
    (0.98, 0.01),
    (0.70, 0.40),  # both below 1: most of the weight at the ends
]
lines = []
for mean, deviation in PAIRS:
    def miss(logs):
        a, b = np.exp(logs)
        return [np.log(beta.mean(a, b) / mean), np.log(beta.std(a, b) / deviation)]

    found = root(miss, [0.5, 0.0], tol=1e-14)
    a, b = np.exp(found.x)
    assert abs(beta.mean(a, b) - mean) < 1e-12 and abs(beta.std(a, b) - deviation) < 1e-12, (mean, deviation)
    lines.append([mean, deviation, f"{a:.9g}", f"{b:.9g}"])
with (pathlib.Path(__file__).parent / "cases.csv").open("w", newline="") as out:
    table = csv.writer(out, lineterminator="\n")
    table.writerow(["mean", "deviation", "alpha", "beta"])
    table.writerows(lines)
