"""Remakes cases.csv from CLDR's JSON.

    npm pack cldr-dates-full@48.2.0 cldr-cal-ethiopic-full@46.1.0     (unpack each beside the other)
    python remake.py FOLDER-OF-DATES FOLDER-OF-ETHIOPIC

Names standing alone and within a date, since languages differ in which is wanted where.
"""

import csv
import json
import pathlib
import sys

dates, ethiopic = map(pathlib.Path, sys.argv[1:])
PACKS = ["en", "sw", "am", "ha", "pt-MZ", "fr"]
# Languages in which somebody may begin a pack.
NEW = "om ti so lg rw yo ig sn zu xh st nd mg ln kea rn wo tn ff-Adlm ki".split()
ETHIOPIC = ["am", "om", "ti", "ff-Adlm"]
DAYS = ["mon", "tue", "wed", "thu", "fri", "sat", "sun"]


def calendar(root, tag, name):
    text = (root / "main" / tag / f"ca-{name}.json").read_text()
    return json.loads(text)["main"][tag]["dates"]["calendars"][name]


with (pathlib.Path(__file__).parent / "cases.csv").open("w", newline="") as out:
    table = csv.writer(out, lineterminator="\n")
    table.writerow(["tag", "new", "what", "number", "alone", "in_date"])
    for tag in [*PACKS, *NEW]:
        new = "yes" if tag in NEW else "no"
        names = calendar(dates, tag, "gregorian")
        for number in range(1, 13):
            wide = (names["months"][place]["wide"][str(number)] for place in ("stand-alone", "format"))
            table.writerow([tag, new, "month", number, *wide])
        for number, day in enumerate(DAYS, 1):
            wide = (names["days"][place]["wide"][day] for place in ("stand-alone", "format"))
            table.writerow([tag, new, "weekday", number, *wide])
    for tag in ETHIOPIC:
        months = calendar(ethiopic, tag, "ethiopic")["months"]
        for number in range(1, 14):
            wide = (months[place]["wide"][str(number)] for place in ("stand-alone", "format"))
            table.writerow([tag, "yes" if tag in NEW else "no", "ethiopic_month", number, *wide])
