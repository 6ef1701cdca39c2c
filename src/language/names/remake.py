"""Remakes cldr.tsv from CLDR's JSON.

    npm pack cldr-dates-full@48.2.0 cldr-cal-ethiopic-full@46.1.0     (unpack each beside the other)
    python3 remake.py FOLDER-OF-DATES FOLDER-OF-ETHIOPIC

One line for each list of names: language, what it names, the names parted by bars. Names are those that stand within a
date. A locale has a line only where its names differ from those of its own tag without the last part, which is how they
are looked up; names that a locale has only from CLDR's root (M01, Mon, Meskerem) are left out, since they are in no language.
"""

import json
import pathlib
import re
import sys

HERE = pathlib.Path(__file__).resolve().parent
DAYS = ["mon", "tue", "wed", "thu", "fri", "sat", "sun"]
HEAD = """\
# Names of months and weekdays in Unicode CLDR, made by remake.py; not to be edited by hand.
# Source: npm cldr-dates-full 48.2.0 and, for Ethiopian months, cldr-cal-ethiopic-full 46.1.0, the last there is.
# Licence: Unicode-3.0, Copyright © 1991-2025 Unicode, Inc.; its text stands in tests/expected/cldr-spellout/SOURCE.toml.
"""


def lists(dates, ethiopic, tag):
    """The lists of a locale, by what they name."""

    def calendar(root, name):
        file = root / "main" / tag / f"ca-{name}.json"
        return json.loads(file.read_text("utf-8"))["main"][tag]["dates"]["calendars"][name] if file.exists() else None

    found = {}
    if names := calendar(dates, "gregorian"):
        months = names["months"]["format"]
        found["month"] = [months["wide"][str(number)] for number in range(1, 13)]
        found["month-short"] = [months["abbreviated"][str(number)] for number in range(1, 13)]
        found["weekday"] = [names["days"]["format"]["wide"][day] for day in DAYS]
    if names := calendar(ethiopic, "ethiopic"):
        found["ethiopic-month"] = [names["months"]["format"]["wide"][str(number)] for number in range(1, 14)]
    return found


def shorter(tag):
    """The tag that hands names on to this one: without its region. A script is never dropped."""
    shorter, _, last = tag.rpartition("-")
    return shorter if shorter and not re.fullmatch("[A-Z][a-z]{3}", last) else None


def main():
    dates, ethiopic = map(pathlib.Path, sys.argv[1:])
    root = lists(dates, ethiopic, "und")
    table, lines = {}, []
    tags = sorted(file.name for file in (dates / "main").iterdir() if file.name != "und")
    for tag in sorted(tags, key=lambda tag: (tag.count("-"), tag)):
        for what, names in lists(dates, ethiopic, tag).items():
            inherited = shorter(tag) and table.get((shorter(tag), what))
            if names not in (root[what], inherited):
                table[tag, what] = names
    for (tag, what), names in sorted(table.items()):
        assert not any(set("|\t\n{}") & set(name) for name in names), (tag, names)
        lines.append(f"{tag}\t{what}\t{'|'.join(names)}\n")
    (HERE / "cldr.tsv").write_text(HEAD + "".join(lines), "utf-8")
    print(f"{len(lines)} lists of {len({tag for tag, _ in table})} locales")


if __name__ == "__main__":
    main()
