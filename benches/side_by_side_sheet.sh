#!/usr/bin/env bash
# CPU time of one farm sheet: WeasyPrint (PyPI) sets the HTML of the sheet, Kabla its PDF.
# Both keep their process and set the sheet many times; what starting takes is left out of neither.
#
#     benches/side_by_side_sheet.sh [SHEETS]
#
# Needs python3 with venv, and the network for the package; the environment lies in a temporary folder.
set -euo pipefail
cd "$(dirname "$0")/.."
count=${1:-20}
made=$(mktemp -d)
trap 'rm -rf "$made"' EXIT
python3 -m venv "$made/venv"
"$made/venv/bin/pip" install --quiet weasyprint==70.0
cargo run --quiet -- sheet examples/farm.toml --language sw --as html --out "$made/sheet.html" >/dev/null
"$made/venv/bin/python" - "$made/sheet.html" "$count" <<'PYTHON'
import sys, time, weasyprint
page, count = open(sys.argv[1], encoding="utf-8").read(), int(sys.argv[2])
begun = time.process_time()
for _ in range(count):
    pdf = weasyprint.HTML(string=page).write_pdf()
each = (time.process_time() - begun) / count * 1000
print(f"WeasyPrint {weasyprint.__version__}: {each:.1f} ms of CPU each, {len(pdf) // 1000} KB each")
PYTHON
cargo bench --quiet -p kabla-benches --profile dev --bench many_sheets -- "$((count * 20))"
