#!/usr/bin/env python3
"""Makes the decoding tables of ITU-T G.711 anew from CPython's own module audioop (in Python up to 3.12)."""
import audioop
import pathlib
import struct

lines = ["code,a,mu"]
for code in range(256):
    a, mu = (struct.unpack("<h", law(bytes([code]), 2))[0] for law in (audioop.alaw2lin, audioop.ulaw2lin))
    lines.append(f"{code},{a},{mu}")
(pathlib.Path(__file__).parent / "decode.csv").write_text("\n".join(lines) + "\n")
