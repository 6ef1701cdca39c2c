"""Remakes cases.csv beside this file: the CLDR rules of European Portuguese (pt_PT.rbnf), said by ICU.

    python3 remake.py            write the file
    python3 remake.py --check    compare only; exit code 1 when it differs

Needs PyICU (Debian: python3-icu). ICU is an interpreter of its own; nothing of Kabla takes part.
With PyPI unicode-rbnf installed as well, --check also compares it and ICU's own built-in rules.
"""

import io
import sys
from pathlib import Path

import icu

HERE = Path(__file__).resolve().parent

SMALL = range(0, 10_000)
LARGE = [
    *range(10_000, 1_000_000, 997),  # a prime step, so that all endings come up
    *range(10_000, 1_000_000, 10_000),
    *range(10_100, 1_000_000, 33_100),
    999_999,
]
DECIMALS = [f"{whole}.{tenth}" for whole in (0, 1, 2, 5, 12, 17, 21, 31, 102, 250) for tenth in range(1, 10)]
FORMS = {"cardinal": "spellout-cardinal-masculine", "feminine": "spellout-cardinal-feminine"}


def numbers(form: str) -> list[str]:
    whole = sorted({*SMALL, *LARGE})
    return [str(n) for n in whole] + (DECIMALS if form == "cardinal" else [])


def table(say) -> str:
    out = io.StringIO()
    out.write("form,number,words\n")
    for form, rule_set in FORMS.items():
        for number in numbers(form):
            words = say(number, rule_set)
            assert "," not in words and '"' not in words
            out.write(f"{form},{number},{words}\n")
    for number in range(1, 32):
        out.write(f"day,{number},{say(str(number), FORMS['cardinal'])}\n")
    return out.getvalue()


def with_icu(speaker):
    return lambda number, rule_set: speaker.format(
        float(number) if "." in number else int(number), "%" + rule_set
    )


def main() -> int:
    rules = (HERE / "pt_PT.rbnf").read_text(encoding="utf-8")
    text = table(with_icu(icu.RuleBasedNumberFormat(rules, icu.Locale("pt_PT"))))
    file = HERE / "cases.csv"
    if sys.argv[1:] != ["--check"]:
        file.write_text(text, encoding="utf-8")
        return 0
    differ = file.read_text(encoding="utf-8") != text
    if differ:
        print("cases.csv differs")
    built_in = table(with_icu(icu.RuleBasedNumberFormat(icu.URBNFRuleSetTag.SPELLOUT, icu.Locale("pt_PT"))))
    apart = sum(a != b for a, b in zip(text.splitlines(), built_in.splitlines(), strict=True))
    print(f"ICU {icu.ICU_VERSION}, built-in rules: {apart} of {text.count(chr(10)) - 1} differ")
    try:
        from unicode_rbnf import RbnfEngine
    except ImportError:
        return int(differ or apart > 0)
    engine = RbnfEngine.for_language("pt_PT")
    asked = wrong = 0
    for line in text.splitlines()[1:]:
        form, number, words = line.split(",")
        if "." in number:
            continue  # it says decimals by rules of its own
        asked += 1
        rule_set = FORMS.get(form, FORMS["cardinal"])
        said = engine.format_number(int(number), ruleset_names=[rule_set]).text
        wrong += said != words
        if said != words and wrong < 6:
            print(f"unicode-rbnf: {form} {number}: {said!r}, ICU {words!r}")
    print(f"unicode-rbnf: {wrong} of {asked} differ")
    return int(differ or apart > 0 or wrong > 0)


if __name__ == "__main__":
    sys.exit(main())
