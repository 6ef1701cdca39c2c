"""Remakes cases.csv: slopes of made-up series with their 95 % intervals, by scipy.

    pip install numpy scipy
    python remake.py

The days are whole, so that some come twice; some years are left out.
"""

import csv
import pathlib

import numpy as np
from scipy.stats import theilslopes

here = pathlib.Path(__file__).parent
draw = np.random.default_rng(22)
with (here / "cases.csv").open("w", newline="") as out:
    table = csv.writer(out, lineterminator="\n")
    table.writerow(["series", "years", "onset_days", "slope", "low", "high"])
    for name, count, slope, spread, kept in (
        ("few", 5, 0.0, 10, 1.0),
        ("ten", 10, 0.5, 12, 1.0),
        ("no trend", 20, 0.0, 14, 1.0),
        ("weak", 25, 0.3, 14, 0.9),
        ("earlier", 30, -0.8, 9, 1.0),
        ("later", 40, 1.0, 6, 0.8),
        ("many ties", 30, 0.0, 2, 1.0),
        ("all the same", 22, 0.0, 0, 1.0),
        ("steep", 24, 3.0, 1, 1.0),
        ("long", 60, -0.15, 15, 0.95),
    ):
        years = [year for year in range(1965, 1965 + count) if draw.random() < kept]
        days = [int(round(60 + slope * (year - 1965) + spread * draw.standard_normal())) for year in years]
        found = theilslopes(days, years, alpha=0.95)
        row = [found.slope, found.low_slope, found.high_slope]
        table.writerow([
            name,
            " ".join(map(str, years)),
            " ".join(map(str, days)),
            *(f"{value:.9f}" for value in row),
        ])
