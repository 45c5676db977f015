#!/usr/bin/env python3
"""Shows that replicas add up: nginx in front of one, two and three of them, each with the same small part of a processor, under as
much load as they take. Fails when three do not answer 1.4 times as much as one: nginx and the caller take most of two processors,
so that little more than 2 times can be seen here; replicas that hold each other up would come to 1.

All of it runs on one machine, so a replica is not given a processor: it is stopped and continued so that it has a twentieth of one, in its own turn.
What is shown is that nothing is shared between replicas that would hold them up, not how fast they are.

    python3 deploy/checks/replicas.py target/release/elbowroom [SECONDS]
"""

import json
import pathlib
import re
import signal
import subprocess
import sys
import tempfile
import threading
import time

from proxy import BODY, Replica, free_port

PERIOD, PART = 0.04, 0.05
# much work in a request and little to carry: what is measured is the replicas, not the proxy and the caller
ITEMS = json.dumps([{"check": "outlet_box_fill", "request": json.loads(BODY)}] * 200)
TAKEOFFS = "/v1/takeoffs?explain=none"


class Slowed(threading.Thread):
    """Lets processes run for a part of the time only."""

    def __init__(self, processes):
        super().__init__(daemon=True)
        self.processes, self.over = processes, threading.Event()

    def run(self):
        for process in self.processes:
            process.send_signal(signal.SIGSTOP)
        while not self.over.is_set():
            # one after the other: together they would share the processors of this machine, and not add up
            for process in self.processes:
                process.send_signal(signal.SIGCONT)
                time.sleep(PERIOD * PART)
                process.send_signal(signal.SIGSTOP)
            self.over.wait(PERIOD * (1 - PART * len(self.processes)))
        for process in self.processes:
            process.send_signal(signal.SIGCONT)


def rate(replicas, work, seconds):
    """Answers a second through nginx in front of these replicas."""
    port = free_port()
    servers = "".join(f"server 127.0.0.1:{replica.port}; " for replica in replicas)
    temporary = "".join(f"{kind}_temp_path {work}/{kind}; " for kind in ["client_body", "proxy", "fastcgi", "uwsgi", "scgi"])
    (work / "nginx.conf").write_text(
        f"daemon off; worker_processes 1; pid {work}/pid; error_log {work}/error.log; events {{ worker_connections 1024; }}\n"
        f"http {{ access_log off; client_body_buffer_size 1m; proxy_buffering off; {temporary}\n"
        f"upstream replicas {{ least_conn; {servers} keepalive 64; }}\n"
        f"server {{ listen 127.0.0.1:{port}; location / {{ proxy_pass http://replicas; proxy_http_version 1.1; "
        'proxy_set_header Connection ""; } } }\n')
    (work / "load.lua").write_text(
        f'wrk.method, wrk.body = "POST", {ITEMS!r}\nwrk.headers["content-type"] = "application/json"\n'
        'wrk.headers["accept"] = "text/csv"\n')
    proxy = subprocess.Popen(["nginx", "-p", str(work), "-e", f"{work}/error.log", "-c", "nginx.conf"])
    slowed = Slowed([replica.process for replica in replicas])
    try:
        time.sleep(0.5)
        slowed.start()
        report = subprocess.run(
            ["wrk", "-t1", "-c12", f"-d{seconds}s", "-s", str(work / "load.lua"), f"http://127.0.0.1:{port}{TAKEOFFS}"],
            check=True, stdout=subprocess.PIPE, text=True).stdout
    finally:
        slowed.over.set()
        slowed.join()
        proxy.terminate()
        proxy.wait(timeout=10)
    if "Non-2xx" in report or "Socket errors" in report:
        sys.exit(report)
    return float(re.search(r"Requests/sec:\s+([\d.]+)", report)[1])


def main():
    seconds = int(sys.argv[2]) if len(sys.argv) > 2 else 4
    replicas = [Replica(sys.argv[1], free_port()) for _ in range(3)]
    try:
        with tempfile.TemporaryDirectory() as work:
            rates = [rate(replicas[:count], pathlib.Path(work), seconds) for count in (1, 2, 3)]
    finally:
        for replica in replicas:
            replica.process.kill()
            replica.process.wait()
    one, two, three = rates
    print(f"with a twentieth of a processor each: one replica {200 * one:.0f} checks/s, two {200 * two:.0f} ({two / one:.1f} times), "
          f"three {200 * three:.0f} ({three / one:.1f} times)")
    if three < 1.4 * one:
        sys.exit("replicas do not add up")


if __name__ == "__main__":
    main()
