#!/usr/bin/env bash
# What takes longer than a change should wait for: run it before a release, on a machine that does nothing else, and commit what it
# prints as deploy/checks/long.txt. Needs what .ci/run needs, and a C++ compiler.
#
#     bash deploy/checks/long.sh | tee deploy/checks/long.txt
set -euo pipefail
cd "$(dirname "$0")/../.."

step() { printf '\n== %s\n' "$*"; }

echo "at $(git rev-parse --short HEAD)$(git diff --quiet HEAD -- ':!deploy/checks/long.txt' || echo ' and uncommitted changes'), $(nproc) processors, $(rustc --version | cut -d' ' -f1,2)"

step "the program as it ships"
cargo build --quiet --profile dist --locked
binary=target/dist/elbowroom
du -h "$binary" | cut -f1

step "100,000 exercises of each topic, beside five minutes of fuzzing that is guided by what is reached"
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
fuzz/run.sh 300 >"$work/fuzz" 2>&1 &
ELBOWROOM_EXERCISES=100000 cargo test --quiet --release --locked --test engine exercises | grep "test result"
wait $! || { cat "$work/fuzz"; exit 1; }
cat "$work/fuzz"

step "the laws of soundness over requests of 40 other seeds"
for seed in $(seq 1001 1040); do
    ELBOWROOM_SEED=$seed cargo test --quiet --release --locked --test engine soundness >"$work/laws" 2>&1 || {
        echo "seed $seed"
        cat "$work/laws"
        exit 1
    }
done
echo "all hold"

step "the mutants of the engine"
cargo run --quiet --locked --manifest-path tests/mutants/Cargo.toml

step "ten minutes at 80 % of capacity: no error, no growth of memory"
python3 tests/load.py "$binary" 600

step "one request over HTTP, beside a bare handler and the ordinary alternative"
bash benches/http.sh
