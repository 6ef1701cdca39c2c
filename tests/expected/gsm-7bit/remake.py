"""Remakes cases.csv: how texts are coded and split by the PyPI package smsutil.

    pip install smsutil==1.1.3
    python remake.py

Every code point below U+0100, those of the GSM alphabet above, letters of African languages, and texts of all lengths near
the limits, with escaped letters and pairs of 16-bit units at the edges of parts.
"""

import csv
import pathlib
import random

import smsutil

random.seed(23038)
plain = "abcdefghijklmnopqrstuvwxyz ABC 0123456789 .:!?èéùìòÇØøÅåΔΦΓΛΩ"
escaped = "^{}\\[~]|€"
hooked = "ɓɗƙƴŵŋãçáóúሰላም"

texts = [chr(code) for code in range(0x20, 0x100) if chr(code).isprintable()]
texts += list("ΔΦΓΛΩΠΨΣΘΞ€ɓɗƙƴŵŋᾀሰ😀")
for length in [1, 69, 70, 71, 133, 134, 135, 152, 153, 154, 159, 160, 161, 200, 305, 306, 307, 459, 460]:
    texts.append("".join(random.choice(plain) for _ in range(length)))
    # An escaped letter that would be cut by the end of a part.
    for at in (151, 152, 153, 158, 159):
        if at < length:
            text = [random.choice(plain) for _ in range(length)]
            text[at] = random.choice(escaped)
            texts.append("".join(text))
    texts.append("".join(random.choice(plain + escaped) for _ in range(length)))
    texts.append("".join(random.choice(plain + hooked) for _ in range(length)))

with (pathlib.Path(__file__).parent / "cases.csv").open("w", newline="") as out:
    table = csv.writer(out, lineterminator="\n")
    table.writerow(["codepoints", "encoding", "parts"])
    for text in texts:
        result = smsutil.split(text)
        table.writerow([" ".join(f"{ord(c):04X}" for c in text), result.encoding, len(result.parts)])
