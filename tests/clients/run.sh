#!/usr/bin/env bash
# Clients made from the document by generators that know nothing of this project, against a running service. Each generator runs
# where its tools are: npm packages, Python packages, programs of cargo.
#
#     tests/clients/run.sh URL NODE_MODULES PYTHON_PROGRAMS CARGO_PROGRAMS WORK
set -euo pipefail
url=$1 modules=$2 python=$3 cargo_programs=$4 work=$5
here=$(cd "$(dirname "$0")" && pwd)
document="$here/../../openapi/openapi.json"

mkdir -p "$work/python"
"$python/openapi-python-client" generate --path "$document" --meta none --output-path "$work/python/elbowroom_client" >"$work/log" 2>&1 || {
    cat "$work/log"
    exit 1
}
"$python/python" "$here/python/roundtrip.py" "$work/python" "$url"

cp -r "$here/typescript" "$work/typescript"
ln -s "$modules" "$work/typescript/node_modules"
echo '{"type": "module"}' >"$work/typescript/package.json"
# a member with a default may be left out of a request
"$modules/.bin/openapi-typescript" "$document" --default-non-nullable false --empty-objects-unknown \
    --output "$work/typescript/schema.d.ts" >"$work/log" 2>&1
node "$work/typescript/examples.mjs" "$document" "$work/typescript/examples.ts"
"$modules/.bin/tsc" --project "$work/typescript"
node "$work/typescript/roundtrip.js" "$url"

cp -r "$here/rust" "$work/rust"
"$cargo_programs/oas3-gen" generate client-mod --input "$document" --output "$work/rust/src/client" --api-name Elbowroom \
    >"$work/log" 2>&1
# the derive macro of validation has a variable of that name: a member so called cannot have one nested below it
perl -0pi -e 's/    #\[validate\(nested\)\]\n(\s+pub errors:)/$1/g' "$work/rust/src/client/types.rs"
RUSTFLAGS="${RUSTFLAGS:-} --cap-lints=allow" cargo run --quiet --locked --manifest-path "$work/rust/Cargo.toml" -- "$url"
