"""Remakes cases.csv and curve.csv with pyfao56: its copies of the FAO-56 tables, and the curve its model runs through.

    pip install pyfao56==1.4.0
    python remake.py
"""

import csv
import pathlib

import numpy as np
import pandas as pd
import pyfao56
from pyfao56.tools import FAO56Tables

here = pathlib.Path(__file__).parent
tables = FAO56Tables()
CROP = "sweet potato"


def only(rows):
    rows = rows[rows["Crop"].str.strip() == CROP]
    assert len(rows) == 1, rows
    return rows.iloc[0]


def write(name, header, lines):
    with (here / name).open("w", newline="") as out:
        table = csv.writer(out, lineterminator="\n")
        table.writerow(header)
        table.writerows(lines)


lines = []
stages = tables.search11(CROP)
regions = {"tropical regions": "tropics", "mediterranean": "mediterranean"}
for region, short in regions.items():
    row = only(stages[stages["Region"].str.strip() == region])
    for column, name in [("Lini", "initial"), ("Ldev", "development"), ("Lmid", "mid"), ("Llate", "late"),
                         ("Total", "total")]:
        lines.append([CROP, 11, f"{short}_{name}_days", row[column].strip()])
    assert int(row["Total"]) == sum(int(row[column]) for column in ("Lini", "Ldev", "Lmid", "Llate"))
for number, names in [
    (12, {"Kcmini": "kc_initial", "Kcmmid": "kc_mid", "Kcmend": "kc_end", "hmax": "height_m"}),
    (17, {"Kcbini": "kcb_initial", "Kcbmid": "kcb_mid", "Kcbend": "kcb_end"}),
    (22, {"Zrmax1": "root_depth_least_m", "Zrmax2": "root_depth_most_m", "pbase": "depletion_fraction"}),
]:
    row = only(getattr(tables, f"search{number}")(CROP))
    lines += [[CROP, number, name, row[column].strip()] for column, name in names.items()]
write("cases.csv", ["crop", "table", "value_name", "value"], lines)

# The curve: pyfao56 sets its parameters from the same rows and runs its model;
# Kcm is the single coefficient. The weather only has to be there: the
# coefficients are not adjusted to it (K_adj is False by default).
par = pyfao56.Parameters()
par.setfrom11(int(stages.index[stages["Region"].str.strip() == "tropical regions"][0]))
for number in (12, 17, 22):
    getattr(par, f"setfrom{number}")(int(getattr(tables, f"search{number}")(CROP).index[0]))
assert (par.Lini, par.Ldev, par.Lmid, par.Lend) == (15, 30, 50, 30)
assert (par.Kcmini, par.Kcmmid, par.Kcmend) == (0.5, 1.15, 0.65)

LAST = 125
wth = pyfao56.Weather()
wth.wndht = 2.0
wth.wdata = pd.DataFrame(
    {"Srad": 20.0, "Tmax": 30.0, "Tmin": 20.0, "Vapr": np.nan, "Tdew": 18.0, "RHmax": np.nan, "RHmin": 45.0,
     "Wndsp": 2.0, "Rain": 0.0, "ETref": 5.0, "MorP": "M"},
    index=[f"2001-{day:03d}" for day in range(1, LAST + 2)])
model = pyfao56.Model("2001-001", f"2001-{LAST + 1:03d}", par, wth)
model.run()
kc = [float(value) for value in model.odata["Kcm"]]  # kc[0] is the start date, kc[n] n days after it
assert len(kc) == LAST + 1

# Straight lines between the corners give the same.
assert np.allclose(kc, np.interp(range(LAST + 1), [0, 15, 45, 95, 125], [0.5, 0.5, 1.15, 1.15, 0.65]), atol=1e-12)
# The project's handbook, section 4.
for day, value in {15: 0.50, 30: 0.825, 45: 1.15, 95: 1.15, 110: 0.90, 125: 0.65}.items():
    assert abs(kc[day] - value) < 1e-12, (day, kc[day])
# Day 15 is the last at the initial value, 45 the first at the middle value, 95 the last.
assert kc[15] == 0.5 < kc[16] and kc[44] < 1.15 == kc[46] == kc[95] > kc[96]

write("curve.csv", ["day", "kc"], [[day, f"{kc[day]:.6f}"] for day in range(1, LAST + 1)])
