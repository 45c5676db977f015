#!/usr/bin/env bash
# Fuzzes everything that reads a request, guided by what is reached, for so many seconds (60 unless said). Needs a C++ compiler
# for libFuzzer; the flags are those of a stable compiler.
#
#     fuzz/run.sh [SECONDS]          ends with an error on the first input that breaks something, and keeps it
#     fuzz/run.sh SECONDS keep       afterwards reduces what was found to corpus/; commit a small part of it
#     fuzz/run.sh 0                  builds the fuzzer and stops
set -euo pipefail
cd "$(dirname "$0")"
seconds=${1:-60}

host=$(rustc -vV | sed -n 's/^host: //p')
export RUSTFLAGS="-Cpasses=sancov-module -Cllvm-args=-sanitizer-coverage-level=4 \
-Cllvm-args=-sanitizer-coverage-inline-8bit-counters -Cllvm-args=-sanitizer-coverage-pc-table \
-Cllvm-args=-sanitizer-coverage-trace-compares --cfg fuzzing -Ccodegen-units=1"
# with a target named, scripts and macros of the build are not instrumented
cargo build --release --locked --quiet --target "$host"
if [ "$seconds" = 0 ]; then exit; fi
fuzzer="${CARGO_TARGET_DIR:-target}/$host/release/elbowroom-fuzz"

work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
mkdir "$work/inputs"
python3 seeds.py "$work/inputs" "$work/words"
mkdir -p artifacts
"$fuzzer" -max_total_time="$seconds" -dict="$work/words" -max_len=6000 -timeout=5 -rss_limit_mb=2048 -use_value_profile=1 \
    -artifact_prefix=artifacts/ -print_final_stats=1 "$work/inputs" corpus >"$work/log" 2>&1 || {
    tail -40 "$work/log"
    exit 1
}
grep -E '(INITED|DONE)' "$work/log"
grep -E 'number_of_executed_units|average_exec_per_sec|peak_rss_mb' "$work/log"
if [ "${2:-}" = keep ]; then
    mkdir "$work/kept"
    "$fuzzer" -merge=1 -max_len=6000 "$work/kept" corpus "$work/inputs" >"$work/log" 2>&1
    rm -rf corpus
    mv "$work/kept" corpus
    echo "$(find corpus -type f | wc -l) inputs kept"
fi
