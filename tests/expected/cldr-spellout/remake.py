"""Remakes the .csv files beside this one: the CLDR rules (en.rbnf, sw.rbnf) and small rules of our own, said by ICU.

    python3 remake.py            write the files
    python3 remake.py --check    compare only; exit code 1 when a file differs

Needs PyICU (Debian: python3-icu). ICU is an interpreter of its own; nothing of Kabla takes part.
"""

import csv
import io
import sys
from decimal import Decimal
from pathlib import Path

import icu

HERE = Path(__file__).resolve().parent

SMALL = range(0, 10_000)
LARGE = range(10_000, 1_000_000, 997)  # a prime step, so that all endings come up
DECIMALS = ["0.5", "0.25", "1.5", "5.5", "5.05", "12.75", "250.125"]

# The numbers of each column.
COLUMNS = {
    "en": {
        "spellout-cardinal": [*SMALL, *LARGE, *DECIMALS],
        "spellout-cardinal-verbose": [*SMALL, *LARGE, *DECIMALS],
        "spellout-ordinal": [*range(0, 131), *LARGE],
        "spellout-ordinal-verbose": [*range(0, 131), *LARGE],
        "spellout-numbering-year": range(1000, 2100),
    },
    "sw": {
        "spellout-cardinal": [*SMALL, *LARGE, *DECIMALS],
        "spellout-ordinal": range(0, 131),
    },
}

# One rule set for each part of the syntax that the English and Swahili rules do not use.
UNITS = "%a: 0: zero; one; two; three; four; five; six; seven; eight; nine; "
SYNTAX = [
    (UNITS + "10: ten[ >>]; 20: <<ty[->>];", [0, 9, 10, 15, 20, 25, 30, 99]),
    (UNITS + "10: <<a >>; 33: <<b >>;", [30, 33, 40, 41, 50]),  # a multiple goes back to the rule before
    (UNITS + "10: A >>> B; 100: <<h >>>;", [25, 105, 125]),
    (UNITS + "80/20: <<x[ >>]; 100: <<h[ >>];", [80, 86, 99, 100, 199]),
    (UNITS + "1,000>: <<k[ >>];", [1002, 1100, 1900]),
    (UNITS + "10: <<a[, >>]; 1000>>: <<k[ >>];", [990, 1002, 1020, 1500, 9999]),
    (UNITS + "x.x: << p >>;", ["5.25", "0.5", "5.05"]),
    (UNITS + "x.x: << p >>>;", ["5.25", "5.05"]),
    (UNITS + "x.x: [<< ]p >>;", ["5.25", "0.5"]),
    (UNITS + "0.x: q >>; x.x: << p >%a>;", ["5.25", "0.5"]),
    (UNITS + "-x: minus >>; x.x: << p >>;", ["-5", "-5.5", "-0.5"]),
    ("%a: 0: none; 1: ' =%%b=; %%b: 0: 'x; 2: y'z;", [0, 1, 2]),
    ("%a: 0: zero; 2: two; three; 10: ten;", [0, 1, 2, 3, 4, 11]),
    ("%a: 0: =%%b=; 7: <%%b<-=%%b=; %%b: 0: u; v; -x: w >>; x.x: << . >>;", ["0", "1.1", "-1", "8"]),
]


def syntax() -> str:
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\n")
    writer.writerow(["rules", "number", "words"])
    for rules, numbers in SYNTAX:
        speaker = icu.RuleBasedNumberFormat(rules, icu.Locale("en"))
        for number in numbers:
            value = float(number) if "." in str(number) else int(number)
            writer.writerow([rules, number, speaker.format(value, "%a")])
    return out.getvalue()


def table(language: str) -> str:
    rules = (HERE / f"{language}.rbnf").read_text(encoding="utf-8")
    speaker = icu.RuleBasedNumberFormat(rules, icu.Locale(language))
    columns = {}
    for form, numbers in COLUMNS[language].items():
        words = {}
        for number in numbers:
            value = float(number) if isinstance(number, str) else number
            words[str(number)] = speaker.format(value, "%" + form)
        columns[form] = words
    keys = sorted(set().union(*columns.values()), key=Decimal)
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\n")
    writer.writerow(["number", *columns])
    for key in keys:
        writer.writerow([key, *(words.get(key, "") for words in columns.values())])
    return out.getvalue()


def main() -> int:
    check = sys.argv[1:] == ["--check"]
    differ = False
    tables = {f"{language}.csv": table(language) for language in COLUMNS}
    tables["syntax.csv"] = syntax()
    for name, text in tables.items():
        file = HERE / name
        if not check:
            file.write_text(text, encoding="utf-8")
        elif file.read_text(encoding="utf-8") != text:
            print(f"{file.name} differs")
            differ = True
    return int(differ)


if __name__ == "__main__":
    sys.exit(main())
