#!/usr/bin/env bash
# Two independent linters on the committed document: no error, no warning.
#
#     bash openapi/lint.sh FOLDER_WITH_REDOCLY_AND_SPECTRAL
set -euo pipefail
cd "$(dirname "$0")"
"$1/redocly" lint --extends=recommended --format=json openapi.json 2>/dev/null | python3 -c '
import json, sys
report = json.load(sys.stdin)
for problem in report["problems"]:
    print(problem["severity"], problem["ruleId"], problem["message"])
totals = report["totals"]
print("redocly:", totals["errors"], "errors,", totals["warnings"], "warnings")
sys.exit(1 if totals["errors"] or totals["warnings"] else 0)'
"$1/spectral" lint --ruleset .spectral.yaml --fail-severity=hint openapi.json
