#!/usr/bin/env python3
"""Tells the service to stop in the middle of a takeoff of 100,000 lines: every line is answered all the same, and the summary
says that it is complete. Prints what a line costs.

    python3 tests/stream_end.py target/release/elbowroom
"""

import json
import pathlib
import resource
import signal
import subprocess
import sys
import threading
import time

sys.path.insert(0, str(pathlib.Path(__file__).resolve().parent / "hostile"))
from service import Service  # noqa: E402

LINES = 100_000


def main():
    binary = sys.argv[1]
    made = subprocess.run([binary, "demo", "--boxes", str(LINES), "--seed", "1"], check=True, stdout=subprocess.PIPE).stdout
    lines = made.split(b"\n")[:LINES]
    text = b"\n".join(lines) + b"\n"
    before = resource.getrusage(resource.RUSAGE_CHILDREN)
    with Service(binary, waits=["--shutdown-grace", "2m"]) as service:
        connection = service.connect(timeout=60)
        connection.sendall(
            b"POST /v1/takeoffs?explain=none HTTP/1.1\r\nhost: x\r\nconnection: close\r\n"
            b"content-type: application/x-ndjson\r\ncontent-length: %d\r\n\r\n" % len(text))
        threading.Thread(target=connection.sendall, args=(text,), daemon=True).start()
        began, received, told = time.monotonic(), [], None
        while piece := connection.recv(1 << 20):
            received.append(piece)
            # the first answers are there, most of the lines are not even read
            if told is None and len(received) > 20:
                service.process.send_signal(signal.SIGTERM)
                told = sum(piece.count(b'"check":') for piece in received)
        took = time.monotonic() - began
        status = service.process.wait(timeout=30)
    after = resource.getrusage(resource.RUSAGE_CHILDREN)
    used = after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime
    body = b"".join(received).split(b"\r\n\r\n", 1)[1]
    # chunks of the transfer end within lines: what they are made of is counted, not lines
    answered = body.count(b'"ruleset":')
    summary = json.loads(b"{" + body[body.rindex(b'"summary":'):].split(b"\n")[0])["summary"]
    if told is None or told > LINES / 2:
        sys.exit(f"the signal came too late: after {told} answers")
    if status != 0 or not summary["complete"] or summary["lines"]["answered"] != LINES or answered != LINES:
        sys.exit(f"status {status}, {answered} answers, summary {summary['lines']}")
    print(f"told to stop after some {told} of {LINES} lines: all answered, complete, status 0, "
          f"{LINES / took:.0f} lines/s, {1e6 * used / LINES:.1f} µs of processor time a line, start and end of the service included")


main()
