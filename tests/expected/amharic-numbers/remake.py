"""Makes cases.csv anew: Amharic number words of two packages, in one spelling.

Needs PyPI num2words 0.5.14, npm n2words 4.0.0 unpacked, and node:
    pip install num2words==0.5.14; npm pack n2words@4.0.0 && tar xzf n2words-4.0.0.tgz
    python3 remake.py PATH/TO/package/dist-or-src/am-ET.js
Our own program and its rules are not used.
"""
import csv, json, pathlib, subprocess, sys
from num2words import num2words

HERE = pathlib.Path(__file__).parent
ALIASES = {row["alias"]: row["ours"] for row in csv.DictReader((HERE / "aliases.csv").open(encoding="utf-8"))}
WHOLE = list(range(1000)) + [1000, 1001, 1010, 1100, 1101, 1110, 1111, 1999, 2000, 10000, 11000, 20000, 25000, 99999,
                             100000, 100001, 100100, 101000, 200000, 999000, 999999]
WHOLE += [n for n in range(1056, 1000000, 9973) if n not in WHOLE]
DECIMALS = ["0.5", "1.2", "2.5", "3.1", "10.7", "12.4", "25.9", "100.5"]


def one_spelling(words):
    return " ".join(ALIASES.get(word, word) for word in words.split())


def n2words(module):
    code = f"""import {{ toCardinal }} from {json.dumps(str(pathlib.Path(module).resolve()))};
console.log(JSON.stringify({json.dumps([str(n) for n in WHOLE] + DECIMALS)}.map(n => [n, toCardinal(n)])));"""
    done = subprocess.run(["node", "--input-type=module", "-e", code], capture_output=True, text=True, check=True)
    return {number: one_spelling(words) for number, words in json.loads(done.stdout)}


def num2words_am(text):
    try:
        return one_spelling(num2words(float(text) if "." in text else int(text), lang="am"))
    except TypeError:  # it fails on exact hundreds behind thousands, among others
        return None


def main():
    js = n2words(sys.argv[1])
    both = differ = alone = 0
    rows = []
    for number in [str(n) for n in WHOLE] + DECIMALS:
        first, second = num2words_am(number), js[number]
        if first is None:
            alone += 1
        elif first == second:
            both += 1
        else:
            differ += 1
            print(f"differ: {number}: num2words {first} | n2words {second}")
        rows.append((number, first, second))
    print(f"{both} alike, {differ} differ, {alone} said by n2words alone")
    with (HERE / "cases.csv").open("w", encoding="utf-8", newline="\n") as file:
        file.write("form,number,words\n")
        for number, first, second in rows:
            # Where both say a number and differ, the one that is named in SOURCE.toml is taken.
            file.write(f"cardinal,{number},{first if first is not None else second}\n")


main()
