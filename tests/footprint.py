#!/usr/bin/env python3
"""Waits until a service that was just started is ready, and prints how long it took and what memory it rests in.

Figures for the reader, not a test: it fails only when the service does not become ready.

    python3 tests/footprint.py http://127.0.0.1:8314 PROCESS_ID
"""

import sys
import time
import urllib.error
import urllib.request
from pathlib import Path


def main():
    base, process = sys.argv[1].rstrip("/"), Path("/proc") / sys.argv[2]
    began = time.monotonic()
    while True:
        try:
            with urllib.request.urlopen(base + "/health/ready", timeout=1):
                break
        except (urllib.error.URLError, OSError):
            if not process.exists() or time.monotonic() - began > 10:
                sys.exit("the service did not become ready")
            time.sleep(0.002)
    waited = (time.monotonic() - began) * 1000
    status = (process / "status").read_text()
    resident = next(int(line.split()[1]) for line in status.splitlines() if line.startswith("VmRSS:"))
    print(f"ready after {waited:.0f} ms (seen from outside), {resident / 1024:.1f} MB resident at rest")


if __name__ == "__main__":
    main()
