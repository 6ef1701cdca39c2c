"""Remakes cases.csv beside this file: the CLDR rules (fr.rbnf), said by ICU.

    python3 remake.py            write the file
    python3 remake.py --check    compare only; exit code 1 when it differs

Needs PyICU (Debian: python3-icu). ICU is an interpreter of its own; nothing of Kabla takes part.
"""

import sys
from pathlib import Path

import icu

HERE = Path(__file__).resolve().parent

SMALL = range(0, 10_000)
LARGE = range(10_000, 1_000_000, 997)  # a prime step, so that all endings come up
# "s" of quatre-vingts and cents before and behind "mille", "et" and "une" at the edges.
EDGES = [
    10_001, 20_001, 21_000, 21_001, 61_000, 71_000, 71_071, 80_000, 80_080, 81_000, 81_081, 99_999, 100_000, 100_001,
    180_000, 200_000, 200_200, 201_000, 280_000, 280_080, 300_021, 500_000, 571_000, 680_080, 780_081, 900_000, 999_999,
]
DECIMALS = ["0.5", "0.8", "1.5", "2.5", "5.05", "17.5", "21.2", "80.5", "200.1"]

# Form of ours: rule set of CLDR, numbers.
FORMS = {
    "cardinal": ("%spellout-cardinal-masculine", sorted({*SMALL, *LARGE, *EDGES}) + DECIMALS),
    "feminine": ("%spellout-cardinal-feminine", sorted({*SMALL, *LARGE, *EDGES}) + DECIMALS),
}


def table() -> str:
    speaker = icu.RuleBasedNumberFormat((HERE / "fr.rbnf").read_text(encoding="utf-8"), icu.Locale("fr"))
    lines = ["form,number,words"]
    for form, (rules, numbers) in FORMS.items():
        for number in numbers:
            value = float(number) if isinstance(number, str) else number
            lines.append(f"{form},{number},{speaker.format(value, rules)}")
    # Days of a month: the first is an ordinal in French, all others are plain numbers.
    lines.append(f"day,1,{speaker.format(1, '%spellout-ordinal-masculine')}")
    lines += [f"day,{day},{speaker.format(day, '%spellout-cardinal-masculine')}" for day in range(2, 32)]
    return "\n".join(lines) + "\n"


def main() -> int:
    file, text = HERE / "cases.csv", table()
    if sys.argv[1:] == ["--check"]:
        if file.read_text(encoding="utf-8") != text:
            print(f"{file.name} differs")
            return 1
        return 0
    file.write_text(text, encoding="utf-8")
    return 0


if __name__ == "__main__":
    sys.exit(main())
