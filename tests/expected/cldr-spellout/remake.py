"""Remakes the .csv files beside this one: the CLDR rules (the .rbnf files) and small rules of our own, said by ICU.

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

# Every public form of each language: words as they are for a few numbers, a hash of the words for many.
LANGUAGES = ["en", "sw", "fr", "pt", "pt-PT", "am", "ee"]
FEW = [
    *range(0, 121),
    *range(121, 10_000, 211),
    *range(10_000, 1_000_000, 49_999),
    *[factor * 10**power + rest for power in range(6, 18, 3) for factor, rest in [(1, 0), (2, 1), (21, 100), (300, 1_000)]],
    10**18 - 1,
    10**18,
    *[-1, -2, -21, -100, -1_001, -2_000_000],
    *["0.1", "0.05", "0.25", "1.5", "2.75", "5.5", "5.05", "12.125", "100.001", "1000.5", "-0.5", "-1.5"],
]
# Decimal places, first, last and step; the numbers are first to last divided by that power of ten. Those that end in 0
# are left out where there are decimals.
MANY = [
    *[(0, first, first + 99, 1) for first in range(0, 10_000, 100)],
    *[(0, first, min(first + 99 * 997, 999_999), 997) for first in range(10_000, 1_000_000, 100 * 997)],
    (0, 10**6, 10**12, 997_000_003),
    (0, 10**12, 10**18 - 1, 997_000_000_000_037),
    (0, -1_199, -1, 1),
    (1, 1, 1_299, 1),
    (2, 1, 2_599, 1),
    (3, -1_999, -1, 1),
]

# One rule set for each part of the syntax that the English and Swahili rules do not use.
def choice(kind: str, categories: list[str]) -> str:
    return f"$({kind}," + "".join(f"{name}{{{name}}}" for name in [*categories, "other"]) + ")$"


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
    # fractions: the base values are denominators
    (UNITS + "10: ten >>; 20: <<ty >>; x.x: <<, >%%f>; %%f: 10: <%a< tenths;", ["0.1", "3.5", "12.9"]),
    (UNITS + "10: <<ty >>; -x: minus >>; x.x: [<<, ]>%%f>; %%f: 2: <%a< half; 4: <%a< quarters; 10: <%a< tenths; 100: <%a< hundredths;",
     ["0.5", "0.25", "4.75", "1.1", "1.35", "-2.5", "0.01"]),
    (UNITS + "10: <<ty >>; x.x: << . >%%f>; %%f: 10: <%a<<; 100: <%a<<; 1000: <%a<<;",
     ["1.5", "1.05", "1.25", "1.005", "1.035", "1.125", "0.009"]),
    ("%a: 0: $(cardinal,one{unit}other{units})$; x.x: <%%n<, >%%f>; %%n: 0: n; m; %%f: 10: <%%n< $(cardinal,one{tenth}other{tenths})$;",
     ["0", "1", "2", "1.1", "0.2"]),
    # the point that the language writes
    ("%a: 0: n; m; x.x: << point >>; x,x: << comma >>;", ["0.1"], "en"),
    ("%a: 0: n; m; x.x: << point >>; x,x: << comma >>;", ["0.1"], "pt"),
    ("%a: 0: n; m; x,x: << comma >>;", ["0.1"], "en"),
    ("%a: 0: n; m; x.x: << . >>; 0.x: little >>; 0,x: petit >>;", ["0.1", "1.1"], "en"),
    ("%a: 0: n; m; x.x: << . >>; 0.x: little >>; 0,x: petit >>;", ["0.1", "1.1"], "fr"),
    ("%a: 0: n; m; k; x.x: << . >>; x.0: << even;", ["2.0", "1.2"]),
    # plural categories, of the number of times that the divisor goes into it
    ("%a: 0: n; 10: $(cardinal,one{ten}other{tens})$;", [10, 19, 20, 99], "en"),
    *[
        (f"%a: 0: {choice(kind, names)}; 1000: k {choice(kind, names)};", [*range(0, 26), 100, 101, 999, 1_000, 2_000, 21_000], language)
        for language, kind, names in [
            ("en", "cardinal", ["one"]),
            ("sw", "cardinal", ["one"]),
            ("fr", "cardinal", ["one"]),
            ("pt", "cardinal", ["one"]),
            ("am", "cardinal", ["one"]),
            ("ru", "cardinal", ["one", "few", "many"]),
            ("ar", "cardinal", ["zero", "one", "two", "few", "many"]),
            ("en", "ordinal", ["one", "two", "few"]),
            ("fr", "ordinal", ["one"]),
        ]
    ],
]


def syntax() -> str:
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\n")
    writer.writerow(["language", "rules", "number", "words"])
    for rules, numbers, *language in SYNTAX:
        language = language[0] if language else "en"
        speaker = icu.RuleBasedNumberFormat(rules, icu.Locale(language))
        for number in numbers:
            value = float(number) if "." in str(number) else int(number)
            writer.writerow([language, rules, number, speaker.format(value, "%a")])
    return out.getvalue()


class Speaker:
    """ICU with the rules of a language."""

    def __init__(self, language: str):
        rules = (HERE / f"{language}.rbnf").read_text(encoding="utf-8")
        self.icu = icu.RuleBasedNumberFormat(rules, icu.Locale(language.replace("-", "_")))
        names = [self.icu.getRuleSetName(place) for place in range(self.icu.getNumberOfRuleSetNames())]
        self.forms = [name[1:] for name in names if not name.startswith("%%")]

    def use(self, form: str) -> None:
        self.icu.setDefaultRuleSet("%" + form)

    def say(self, number: str) -> str:
        value = icu.Formattable()
        if "." in number:
            value.setDouble(float(number))
        else:
            value.setInt64(int(number))  # a plain int becomes a double, which rounds above 2^53
        return self.icu.format(value)


def few(speaker: Speaker) -> str:
    columns = []
    for form in speaker.forms:
        speaker.use(form)
        columns.append([speaker.say(str(number)) for number in FEW])
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\n")
    writer.writerow(["number", *speaker.forms])
    writer.writerows(zip(FEW, *columns))
    return out.getvalue()


def fnv1a(text: str) -> str:
    value = 0xCBF29CE484222325
    for byte in text.encode("utf-8"):
        value = (value ^ byte) * 0x100000001B3 % 2**64
    return f"{value:016x}"


def many(speaker: Speaker) -> str:
    columns = []
    for form in speaker.forms:
        speaker.use(form)
        column = []
        for places, first, last, step in MANY:
            lines = ""
            for number in range(first, last + 1, step):
                if places and number % 10 == 0:
                    continue
                words = speaker.say(str(Decimal(number).scaleb(-places)))
                lines += ("" if any(c.isdigit() for c in words) else words) + "\n"
            column.append(fnv1a(lines))
        columns.append(column)
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\n")
    writer.writerow(["places", "first", "last", "step", *speaker.forms])
    writer.writerows([*row, *hashes] for row, *hashes in zip(MANY, *columns))
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
    for language in LANGUAGES:
        speaker = Speaker(language)
        tables[f"{language}.few.csv"] = few(speaker)
        tables[f"{language}.many.csv"] = many(speaker)
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
