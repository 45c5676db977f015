#!/usr/bin/env bash
# Two independent linters on the committed document: no error and no warning.
#
#     openapi/lint.sh FOLDER-OF-THEIR-PROGRAMS
set -euo pipefail
programs=$1
cd "$(dirname "$0")"

# redocly itself fails on errors only
"$programs/redocly" lint --format=json openapi.json 2>/dev/null | python3 -c '
import json, sys
report = json.load(sys.stdin)
for problem in report["problems"]:
    print(problem["severity"], problem["ruleId"], problem["message"], problem["location"][0].get("pointer"))
totals = report["totals"]
print("redocly:", totals["errors"], "errors,", totals["warnings"], "warnings")
sys.exit(totals["errors"] + totals["warnings"] > 0)
'
"$programs/spectral" lint --ruleset .spectral.yaml --fail-severity hint openapi.json
