#!/usr/bin/env bash
# The unit as systemd reads it, and how exposed systemd finds it.
#
#     deploy/checks/unit.sh BINARY
set -euo pipefail
binary=$(realpath "${1:?the program}")
cd "$(dirname "$0")/../systemd"
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

# verify asks that the program is there
sed "s|/usr/local/bin/elbowroom|$binary|" elbowroom.service >"$work/elbowroom.service"
found=$(systemd-analyze verify --man=no "$work/elbowroom.service" 2>&1 || true)
if grep -F "elbowroom.service" <<<"$found"; then
    exit 1
fi
systemd-analyze security --no-pager --offline=true --threshold=20 "$work/elbowroom.service" | tail -n 1
