#!/usr/bin/env bash
# Whole takeoffs, measured side by side in one run:
#   one core against two, from a file, without HTTP in between;
#   growth: 1,000 to 1,000,000 lines over HTTP, processor time and memory of the service;
#   lines a second of the service and of FastAPI, a server core each, the same lines, answers of the same size.
# Needs taskset (Debian: util-linux), curl, Python 3 with venv, and two cores.
#
#     bash benches/stream.sh            # about five minutes
#     LINES=100000 bash benches/stream.sh
set -euo pipefail
cd "$(dirname "$0")/.."

most=${LINES:-1000000}
work=$(mktemp -d)
servers=()
finish() {
    for server in "${servers[@]}"; do kill "$server" 2>/dev/null || true; done
    rm -rf "$work"
}
trap finish EXIT

cargo build --profile dist --locked --bin elbowroom
service=target/dist/elbowroom
venv=target/bench-venv
if [ ! -x $venv/bin/uvicorn ]; then
    python3 -m venv $venv
    $venv/bin/pip install --quiet "fastapi>=0.115,<1" "uvicorn[standard]>=0.30,<1"
fi
seconds() { python3 -c 'import subprocess, sys, time
start = time.monotonic()
subprocess.run(sys.argv[1:], stdout=subprocess.DEVNULL, check=False)
print(f"{time.monotonic() - start:.3f}")' "$@"; }

echo "== one core against two: 100,000 lines with their full proofs, from a file"
$service demo --boxes 92308 --seed 7 >"$work/lines.ndjson"
for round in 1 2 3; do
    one=$(seconds taskset -c 0 $service takeoff "$work/lines.ndjson" --as ndjson)
    two=$(seconds taskset -c 0,1 $service takeoff "$work/lines.ndjson" --as ndjson)
    echo "$one $two" >>"$work/cores"
done
python3 - "$work/cores" <<'PYTHON'
import statistics, sys
rows = [list(map(float, line.split())) for line in open(sys.argv[1])]
for one, two in rows:
    print(f"   one core {one:6.2f} s   two cores {two:6.2f} s   {one / two:.2f} times")
print(f"two cores against one: {statistics.median(one / two for one, two in rows):.2f} times")
PYTHON

echo "== growth: lines over HTTP, one server core"
taskset -c 0 $service --bind 127.0.0.1:18081 >"$work/service.log" 2>&1 &
servers+=($!)
for _ in $(seq 100); do curl --silent --fail --output /dev/null http://127.0.0.1:18081/health/ready && break; sleep 0.1; done
post() {
    taskset -c 1 curl --silent --show-error --fail --output "$3" --upload-file "$2" --request POST \
        --header 'content-type: application/x-ndjson' --header 'expect:' "http://127.0.0.1:$1/v1/takeoffs"
}
processor() { python3 -c 'import os, sys
fields = open(f"/proc/{sys.argv[1]}/stat").read().rsplit(")", 1)[1].split()
print((int(fields[11]) + int(fields[12])) / os.sysconf("SC_CLK_TCK"))' "$1"; }
highest() { awk '/^VmHWM/ {print $2}' "/proc/$1/status"; }
resident() { awk '/^VmRSS/ {print $2}' "/proc/$1/status"; }
head -n 1000 "$work/lines.ndjson" >"$work/some.ndjson"
post 18081 "$work/some.ndjson" /dev/null
rest=$(resident "${servers[0]}")
lines=1000
while [ "$lines" -le "$most" ]; do
    # whole lines of one job, over and over
    python3 -c 'import itertools, sys
lines = open(sys.argv[1]).readlines()
sys.stdout.writelines(itertools.islice(itertools.cycle(lines), int(sys.argv[2])))' "$work/lines.ndjson" "$lines" >"$work/some.ndjson"
    before=$(processor "${servers[0]}")
    taken=$(seconds bash -c "$(declare -f post); post 18081 '$work/some.ndjson' /dev/null")
    after=$(processor "${servers[0]}")
    python3 -c 'import sys
lines, before, after, taken, rest, highest = map(float, sys.argv[1:])
spent = after - before
print(f"   {lines:9,.0f} lines   {taken:7.2f} s   processor {spent:7.2f} s, {spent / lines * 1e6:5.1f} µs a line   {(highest - rest) / 1024:5.1f} MB above rest at most")
' "$lines" "$before" "$after" "$taken" "$rest" "$(highest "${servers[0]}")"
    lines=$((lines * 10))
done

echo "== beside FastAPI: the same box in every line, a server core each"
python3 - benches/data/outlet-box.json >"$work/same.ndjson" <<'PYTHON'
import json, sys
line = json.dumps({"check": "outlet_box_fill", "request": json.load(open(sys.argv[1]))}, separators=(",", ":"))
print("\n".join([line] * 20_000))
PYTHON
head -n 2000 "$work/same.ndjson" >"$work/fewer.ndjson"
taskset -c 0 $venv/bin/uvicorn --app-dir benches/http ordinary:app --port 18083 --no-access-log --log-level warning \
    >"$work/ordinary.log" 2>&1 &
servers+=($!)
for _ in $(seq 100); do post 18083 "$work/fewer.ndjson" "$work/theirs" 2>/dev/null && break; sleep 0.1; done
post 18081 "$work/fewer.ndjson" "$work/ours"
# the service sends one line more, the summary
[ "$(wc -l <"$work/ours")" = 2001 ] && [ "$(wc -l <"$work/theirs")" = 2000 ]
echo "   an answer: service $(head -n 1 "$work/ours" | wc -c) bytes, FastAPI $(head -n 1 "$work/theirs" | wc -c) bytes"
for round in 1 2 3; do
    theirs=$(seconds bash -c "$(declare -f post); post 18083 '$work/fewer.ndjson' /dev/null")
    ours=$(seconds bash -c "$(declare -f post); post 18081 '$work/same.ndjson' /dev/null")
    echo "$ours $theirs" >>"$work/beside"
done
python3 - "$work/beside" <<'PYTHON'
import statistics, sys
rows = [(20_000 / ours, 2_000 / theirs) for ours, theirs in (map(float, line.split()) for line in open(sys.argv[1]))]
for ours, theirs in rows:
    print(f"   service {ours:8,.0f} lines/s   FastAPI {theirs:6,.0f} lines/s   {ours / theirs:.1f} times")
print(f"to FastAPI: {statistics.median(ours / theirs for ours, theirs in rows):.1f} times")
PYTHON
