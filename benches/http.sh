#!/usr/bin/env bash
# One request over HTTP: the service with its default layers, the bare axum handler, and the ordinary alternative in
# FastAPI, side by side in one run. Needs wrk and taskset (Debian: wrk, util-linux), Python 3 with venv, and two cores:
# servers run on core 0, the client on core 1.
#
#     bash benches/http.sh            # three rounds of five seconds each
#     ROUNDS=5 SECONDS_EACH=10 CONNECTIONS=32 bash benches/http.sh
set -euo pipefail
cd "$(dirname "$0")/.."

rounds=${ROUNDS:-3} seconds=${SECONDS_EACH:-5} connections=${CONNECTIONS:-32}
export BODY=$PWD/benches/data/outlet-box.json
path=/v1/outlet-boxes/fill

work=$(mktemp -d)
servers=()
finish() {
    for server in "${servers[@]}"; do kill "$server" 2>/dev/null || true; done
    rm -rf "$work"
}
trap finish EXIT

cargo build --profile dist --locked --bin elbowroom --example bare_handler
venv=target/bench-venv
if [ ! -x $venv/bin/uvicorn ]; then
    python3 -m venv $venv
    $venv/bin/pip install --quiet "fastapi>=0.115,<1" "uvicorn[standard]>=0.30,<1"
fi

# with the default layers: limits, request ids, panic guard, metrics; requests that succeed are not logged
taskset -c 0 target/dist/elbowroom --bind 127.0.0.1:18081 >"$work/service.log" 2>&1 &
servers+=($!)
taskset -c 0 target/dist/examples/bare_handler 127.0.0.1:18082 "$BODY" >"$work/bare.log" 2>&1 &
servers+=($!)
taskset -c 0 $venv/bin/uvicorn --app-dir benches/http ordinary:app --port 18083 --no-access-log --log-level warning \
    >"$work/ordinary.log" 2>&1 &
servers+=($!)

answer() { curl --silent --fail --show-error --data @"$BODY" --header 'content-type: application/json' "http://127.0.0.1:$1$path"; }
for port in 18081 18082 18083; do
    for _ in $(seq 100); do answer $port >"$work/$port" 2>/dev/null && break; sleep 0.1; done
    answer $port >"$work/$port"
done
cmp "$work/18081" "$work/18082" || { echo "the bare handler does not answer with the same bytes" >&2; exit 1; }
echo "request $(wc -c <"$BODY") bytes; answers: service $(wc -c <"$work/18081"), bare $(wc -c <"$work/18082"), FastAPI $(wc -c <"$work/18083") bytes"

load() {
    taskset -c 1 wrk -t1 -c"$connections" -d"$2"s -s benches/http/post.lua "http://127.0.0.1:$1$path" 2>>"$work/result.$1" >/dev/null
}
for port in 18081 18082 18083; do load $port 1; : >"$work/result.$port"; done
for round in $(seq "$rounds"); do
    for port in 18082 18081 18083; do load $port "$seconds"; done
done

python3 - "$work" <<'PYTHON'
import statistics, sys

def rounds(port):
    rows = [list(map(float, line.split())) for line in open(f"{sys.argv[1]}/result.{port}")]
    failed = sum(row[3] for row in rows)
    assert failed == 0, f"{failed:.0f} requests failed on port {port}"
    return rows

named = {"bare axum handler": 18082, "elbowroom": 18081, "FastAPI, pydantic": 18083}
results = {name: rounds(port) for name, port in named.items()}
print(f"{'':20} {'requests/s':>11} {'p50 µs':>8} {'p99 µs':>8}   each round: requests/s")
for name, rows in results.items():
    middle = [statistics.median(column) for column in zip(*rows)]
    print(f"{name:20} {middle[0]:11.0f} {middle[1]:8.0f} {middle[2]:8.0f}   {' '.join(f'{row[0]:.0f}' for row in rows)}")

def ratio(other, column):
    return statistics.median(a[column] / b[column] for a, b in zip(results["elbowroom"], results[other]))

print(f"to the bare handler: throughput {ratio('bare axum handler', 0):.2f}, p99 {ratio('bare axum handler', 2):.2f}")
print(f"to FastAPI: throughput {ratio('FastAPI, pydantic', 0):.1f}, p99 {ratio('FastAPI, pydantic', 2):.3f}")
PYTHON
