"""Remakes cases.csv with scipy.

    pip install scipy
    python remake.py
"""

import csv
import pathlib

from scipy.stats import betabinom

cases = [
    (10, 8, 29.8, 4.06),
    (40, 30, 29.8, 4.06),
    (57, 50, 29.8, 4.06),
    (64, 50, 29.8, 4.06),
    (72, 50, 29.8, 4.06),
    (40, 20, 2.0, 2.0),
    (1, 1, 29.8, 4.06),
    (500, 430, 29.8, 4.06),
    (3000, 2500, 12.0, 2.5),
    (25, 0, 5.0, 1.0),
    (25, 25, 5.0, 1.0),
]
path = pathlib.Path(__file__).parent / "cases.csv"
with path.open("w", newline="") as out:
    table = csv.writer(out, lineterminator="\n")
    table.writerow(["n", "k", "alpha", "beta", "at_least_k"])
    for n, k, alpha, beta in cases:
        table.writerow([n, k, alpha, beta, f"{betabinom.sf(k - 1, n, alpha, beta):.12f}"])
