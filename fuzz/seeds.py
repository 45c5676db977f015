#!/usr/bin/env python3
"""Makes what the fuzzer begins with: one input an example of the document, and a dictionary of the words of the schemas.

    fuzz/seeds.py CORPUS DICTIONARY
"""

import json
import pathlib
import sys

ROOT = pathlib.Path(__file__).resolve().parent.parent
CORPUS, DICTIONARY = map(pathlib.Path, sys.argv[1:])
document = json.loads((ROOT / "openapi/openapi.json").read_text())
# the order of the register is the order in which the document lists the checks of a comparison
forms = document["components"]["schemas"]["ComparisonRequest"]["oneOf"]
checks = [form["properties"]["check"]["enum"][0] for form in forms]
first_byte = {name: chr(ord("a") + place) for place, name in enumerate([*checks, "line", "table", "comparison", "certificate"])}


def write(name, kind, text):
    (CORPUS / name).write_text(first_byte[kind] + text)


for check in checks:
    for path in sorted((ROOT / "openapi/examples" / check).glob("*.request.json")):
        text = json.dumps(json.loads(path.read_text()))
        write(f"{check}-{path.stem}", check, text)
        write(f"line-{check}-{path.stem}", "line", f'{{"check": "{check}", "request": {text}}}')
        write(f"comparison-{check}-{path.stem}", "comparison", chr(checks.index(check)) + text)
write("table", "table", (ROOT / "openapi/examples/takeoff/table.request.txt").read_text())

for path in sorted((ROOT / "openapi/examples/verify").glob("*.request.json")):
    write(f"certificate-{path.stem}", "certificate", json.dumps(json.loads(path.read_text())))

words = set()


def gather(schema):
    if isinstance(schema, dict):
        words.update(schema.get("properties", {}))
        words.update(word for word in schema.get("enum", []) if isinstance(word, str))
        for member in schema.values():
            gather(member)
    elif isinstance(schema, list):
        for item in schema:
            gather(item)


gather(document["components"]["schemas"])
quoted = [f'"\\"{word}\\""' for word in sorted(words) if word.replace("_", "").replace("-", "").isalnum()]
more = ["null", "true", "false", "1e9", "-1", "0.0000001", "1e999", "99999999999999999999", "12 AWG", "250 kcmil", "1-1/4", "\\\\ud800"]
DICTIONARY.write_text("\n".join(quoted + [f'"{word}"' for word in more]) + "\n")
print(f"{len(list(CORPUS.iterdir()))} inputs and {len(quoted) + len(more)} words to begin with")
