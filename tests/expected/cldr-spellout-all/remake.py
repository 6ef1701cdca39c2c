"""Remakes words.tsv: every spell-out file of CLDR (rules/), said by ICU.

    python3 remake.py            write the file
    python3 remake.py --check    compare only; exit code 1 when it differs

Needs PyICU (Debian: python3-icu). ICU is an interpreter of its own; nothing of Kabla takes part.
"""

import csv
import io
import re
import sys
from decimal import Decimal
from pathlib import Path

import icu

HERE = Path(__file__).resolve().parent
FEW = ["21", "172", "1999", "2000005", "-3", "2.5"]
# The numbers of each hash.
MANY = {
    "to_199": [str(n) for n in range(200)],
    "to_9999": [str(n) for n in range(200, 10_000, 97)],
    "to_999999": [str(n) for n in range(10_000, 1_000_000, 9_973)],
    "large": [str(n) for n in [*range(10**6, 10**12, 17_000_000_003), *range(10**12, 10**18, 31_000_000_000_000_037)]],
    "negative": [str(n) for n in range(-1_199, 0, 17)],
    "decimal": [str(Decimal(n) / 10) for n in range(1, 400, 7) if n % 10] + [str(Decimal(n) / 100) for n in range(1, 2_000, 37) if n % 10],
}


def without_alternatives(rules):
    """The rules with each `[a|b]` as two rules, as UTS #35 explains it: b where nothing is left over, a elsewhere.

    ICU 72 does not know the bar yet and would say it.
    """
    lines = []
    for line in rules.splitlines():
        if found := re.fullmatch(r"(\d+)([^:]*:.*)\[([^|\]]*)\|([^\]]*)\](.*)", line):
            base, before, kept, left, behind = found.groups()
            lines += [f"{base}{before}{left}{behind}", f"{int(base) + 1}{before}{kept}{behind}"]
        else:
            lines.append(line)
    return "\n".join(lines) + "\n"


class Speaker:
    """ICU with the rules of a language."""

    def __init__(self, file):
        rules = without_alternatives(file.read_text("utf-8"))
        self.icu = icu.RuleBasedNumberFormat(rules, icu.Locale(file.stem.replace("-", "_")))
        names = [self.icu.getRuleSetName(place) for place in range(self.icu.getNumberOfRuleSetNames())]
        self.forms = [name[1:] for name in names if not name.startswith("%%")]

    def say(self, number):
        """The words; nothing where ICU writes digits."""
        value = icu.Formattable()
        if "." in number:
            value.setDouble(float(number))
        else:
            value.setInt64(int(number))  # a plain int becomes a double, which rounds above 2^53
        words = self.icu.format(value).replace("\u00ad", "")  # soft hyphens only show where a printed word may break
        return "" if any(c.isdigit() for c in words) else words


def fnv1a(text):
    value = 0xCBF29CE484222325
    for byte in text.encode("utf-8"):
        value = (value ^ byte) * 0x100000001B3 % 2**64
    return f"{value:016x}"


def main():
    out = io.StringIO()
    table = csv.writer(out, lineterminator="\n", delimiter="\t", quoting=csv.QUOTE_NONE)
    table.writerow(["language", "form", *FEW, *MANY])
    for file in sorted(HERE.glob("rules/*.rbnf")):
        speaker = Speaker(file)
        for form in speaker.forms:
            speaker.icu.setDefaultRuleSet("%" + form)
            few = [speaker.say(number) for number in FEW]
            many = [fnv1a("".join(speaker.say(number) + "\n" for number in numbers)) for numbers in MANY.values()]
            table.writerow([file.stem, form, *few, *many])
    file = HERE / "words.tsv"
    if sys.argv[1:] == ["--check"]:
        return int(file.read_text("utf-8") != out.getvalue())
    file.write_text(out.getvalue(), "utf-8")
    return 0


if __name__ == "__main__":
    sys.exit(main())
