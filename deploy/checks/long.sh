#!/usr/bin/env bash
# What takes longer than a change should wait for, an hour in all: run it before a release, on a machine that does nothing else, and
# commit what it prints as deploy/checks/long.txt. Needs what .ci/run needs, and a C++ compiler.
#
#     bash deploy/checks/long.sh | tee deploy/checks/long.txt           all parts
#     bash deploy/checks/long.sh laws load                              some of them: program exercises laws load http mutants
set -euo pipefail
cd "$(dirname "$0")/../.."

work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
binary=target/dist/elbowroom

step() { printf '\n== %s\n' "$*"; }

program() {
    step "the program as it ships"
    cargo build --quiet --profile dist --locked
    du -h "$binary" | cut -f1
}

exercises() {
    step "100,000 exercises of each topic, beside five minutes of fuzzing that is guided by what is reached"
    fuzz/run.sh 300 >"$work/fuzz" 2>&1 &
    ELBOWROOM_EXERCISES=100000 cargo test --quiet --release --locked --test engine exercises | grep "test result"
    wait $! || { cat "$work/fuzz"; exit 1; }
    cat "$work/fuzz"
}

laws() {
    step "the laws of soundness over requests of 40 other seeds"
    local seed
    for seed in $(seq 1001 1040); do
        ELBOWROOM_SEED=$seed cargo test --quiet --release --locked --test engine soundness >"$work/laws" 2>&1 || {
            echo "seed $seed"
            cat "$work/laws"
            exit 1
        }
    done
    echo "all hold"
}

load() {
    step "ten minutes at 80 % of capacity: no error, no growth of memory"
    python3 tests/load.py "$binary" 600
}

http() {
    step "one request over HTTP, beside a bare handler and the ordinary alternative"
    bash benches/http.sh
}

mutants() {
    step "every mutant of the engine"
    cargo run --quiet --locked --manifest-path tests/mutants/Cargo.toml
}

[ $# -gt 0 ] || set -- program exercises laws load http mutants
echo "at $(git rev-parse --short HEAD)$(git diff --quiet HEAD -- ':!deploy/checks/long.txt' || echo ' and uncommitted changes'), $(nproc) processors, $(rustc --version | cut -d' ' -f1,2)"
for part in "$@"; do "$part"; done
