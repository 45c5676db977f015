#!/usr/bin/env python3
"""Loads the service: first as much as it takes, for a few seconds, then 80 % of that for as long as is said. Memory is looked at
each second. Fails on an answer that is an error, on one that is missing, and on memory that grows.

    python3 tests/load.py target/release/elbowroom [SECONDS]

The caller (wrk) runs on the same processors, so the capacity is that of both together.
"""

import os
import pathlib
import re
import statistics
import subprocess
import sys
import tempfile
import time

ROOT = pathlib.Path(__file__).resolve().parent.parent
sys.path.insert(0, str(ROOT / "tests/hostile"))
from service import FILL, Service  # noqa: E402

CONNECTIONS = 200
# memory may differ by so much between the beginning and the end of the load, in MiB: what the allocator holds back comes and goes
MOST_GROWTH = 4.0
SCRIPT = """
wrk.method, wrk.body = "POST", {body!r}
wrk.headers["content-type"] = "application/json"
{delay}
"""
BODY = next((ROOT / "openapi/examples/outlet_box_fill").glob("*.request.json")).read_text().replace("\n", "")


def processor_seconds(service):
    fields = pathlib.Path(f"/proc/{service.process.pid}/stat").read_text().rsplit(")", 1)[1].split()
    return (int(fields[11]) + int(fields[12])) / os.sysconf("SC_CLK_TCK")


def wrk(service, work, seconds, delay=""):
    script = work / "load.lua"
    script.write_text(SCRIPT.format(body=BODY, delay=delay))
    return subprocess.Popen(
        ["wrk", "-t1", f"-c{CONNECTIONS}", f"-d{seconds}s", "--latency", "-s", str(script),
         f"http://127.0.0.1:{service.port}{FILL}"], stdout=subprocess.PIPE, text=True)


def read(report):
    if "Socket errors" in report or "Non-2xx" in report:
        sys.exit(report)
    requests = int(re.search(r"(\d+) requests in", report)[1])
    rate = float(re.search(r"Requests/sec:\s+([\d.]+)", report)[1])
    p99 = re.search(r"99%\s+(\S+)", report)[1]
    return requests, rate, p99


def main():
    seconds = int(sys.argv[2]) if len(sys.argv) > 2 else 30
    with tempfile.TemporaryDirectory() as work, Service(sys.argv[1], "--header-wait", "60s") as service:
        work = pathlib.Path(work)
        _, capacity, _ = read(wrk(service, work, 5).communicate()[0])
        pause = max(1, round(1000 * CONNECTIONS / (0.8 * capacity)))
        used = processor_seconds(service)
        load = wrk(service, work, seconds, f"function delay() return {pause} end")
        samples = []
        while load.poll() is None:
            samples.append(service.memory())
            time.sleep(1)
        requests, rate, p99 = read(load.communicate()[0])
        used = processor_seconds(service) - used
        service.is_well()
    quarter = max(1, len(samples) // 4)
    begin, end = statistics.median(samples[quarter:2 * quarter] or samples), statistics.median(samples[-quarter:])
    print(f"capacity {capacity:.0f} requests/s with the caller on the same {os.cpu_count()} processors; "
          f"then {rate:.0f}/s ({100 * rate / capacity:.0f} %) for {seconds} s: {requests} answered, no error, 99 % within {p99}; "
          f"{1e6 * used / requests:.1f} µs of processor time a request; memory {begin:.1f} MiB, at the end {end:.1f} MiB")
    if end > begin + MOST_GROWTH:
        sys.exit(f"memory grows: {samples}")


main()
