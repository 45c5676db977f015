#!/usr/bin/env python3
"""Runs nginx with the configuration of deploy/nginx in front of three replicas, under load, while replicas die and leave.

No answer may be lost: one replica is killed and started again, another told to stop and started again. Prints figures, and
fails on the first request that is not answered with 200.

    python3 deploy/checks/proxy.py target/release/elbowroom [SECONDS]
"""

import http.client
import json
import pathlib
import signal
import socket
import subprocess
import sys
import tempfile
import threading
import time

FOLDER = pathlib.Path(__file__).resolve().parent.parent / "nginx"
CALLERS = 8
FILL = "/v1/outlet-boxes/fill"
BODY = json.dumps({
    "enclosure": {"standard": "square-4x2-1/8"},
    "contents": {"cables": [{"kind": "NM-B", "size": "12 AWG", "conductors": 2, "grounding": "12 AWG", "count": 2}]},
})
HEADERS = {"content-type": "application/json"}


def free_port():
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        return probe.getsockname()[1]


class Replica:
    def __init__(self, binary, port):
        self.command = [binary, "--bind", f"127.0.0.1:{port}", "--trusted-proxies", "127.0.0.1", "--shutdown-delay", "500ms"]
        self.port = port
        self.start()

    def start(self):
        self.process = subprocess.Popen(self.command, stdout=subprocess.PIPE, text=True)
        if "is listening on" not in self.process.stdout.readline():
            self.process.kill()
            sys.exit("a replica did not start")

    def answered(self):
        connection = http.client.HTTPConnection("127.0.0.1", self.port, timeout=5)
        connection.request("GET", "/metrics")
        page = connection.getresponse().read().decode()
        counts = (line for line in page.splitlines() if 'requests_total{operation="outlet_box_fill",status="200"}' in line)
        return sum(int(line.rsplit(" ", 1)[1]) for line in counts)

    def end(self, by):
        self.process.send_signal(by)
        return self.process.wait(timeout=20)


class Caller(threading.Thread):
    """Asks over one connection from an address of its own, at a pace below the limit of the proxy."""

    def __init__(self, number, port, until):
        super().__init__()
        self.source, self.port, self.until = f"127.0.1.{number}", port, until
        self.answered, self.lost, self.slowest = 0, [], 0.0

    def run(self):
        connection = None
        while time.monotonic() < self.until:
            began = time.monotonic()
            try:
                connection = connection or http.client.HTTPConnection(
                    "127.0.0.1", self.port, timeout=10, source_address=(self.source, 0))
                connection.request("POST", FILL, BODY, HEADERS)
                response = connection.getresponse()
                answer = response.read()
                if response.status == 200 and json.loads(answer)["verdict"] == "complies":
                    self.answered += 1
                else:
                    self.lost.append(f"{response.status} {answer[:200]!r}")
            except (OSError, http.client.HTTPException, ValueError) as error:
                self.lost.append(repr(error))
                connection = None
            took = time.monotonic() - began
            self.slowest = max(self.slowest, took)
            time.sleep(max(0.0, 0.0125 - took))


def ask(port, body, source="127.0.2.1"):
    connection = http.client.HTTPConnection("127.0.0.1", port, timeout=10, source_address=(source, 0))
    connection.request("POST", FILL, body, HEADERS)
    response = connection.getresponse()
    return response.status, response.getheader("content-type"), response.read()


def expect_problem(found, status, slug):
    code, media_type, body = found
    if code != status or media_type != "application/problem+json" or json.loads(body)["type"] != f"/v1/problems/{slug}":
        sys.exit(f"{slug} was expected, not {found}")


def refusals(port):
    """What the proxy refuses is told as the service tells it."""
    expect_problem(ask(port, " " * (1024 * 1024 + 1)), 413, "body-too-large")
    flood = [ask(port, BODY, "127.0.2.2") for _ in range(600)]
    refused = [found for found in flood if found[0] == 429]
    if not refused:
        sys.exit("a flood was not limited")
    expect_problem(refused[0], 429, "too-many-requests")
    return len(refused)


def main():
    binary, seconds = sys.argv[1], float(sys.argv[2]) if len(sys.argv) > 2 else 8.0
    replicas = [Replica(binary, free_port()) for _ in range(3)]
    port = free_port()
    proxy = None
    try:
        with tempfile.TemporaryDirectory() as work:
            work = pathlib.Path(work)
            (work / "logs").mkdir()
            (work / "elbowroom.conf").write_text((FOLDER / "elbowroom.conf").read_text())
            servers = (FOLDER / "elbowroom-replicas.conf").read_text()
            for replica, stated in zip(replicas, ["8314", "8324", "8334"], strict=True):
                if f":{stated} " not in servers:
                    sys.exit(f"no replica on {stated}")
                servers = servers.replace(f":{stated} ", f":{replica.port} ")
            (work / "elbowroom-replicas.conf").write_text(servers)
            listen = (FOLDER / "elbowroom-listen.conf").read_text()
            (work / "elbowroom-listen.conf").write_text(listen.replace("127.0.0.1:8300", f"127.0.0.1:{port}"))
            temporary = "".join(
                f"    {kind}_temp_path {work}/{kind};\n" for kind in ["client_body", "proxy", "fastcgi", "uwsgi", "scgi"])
            (work / "nginx.conf").write_text(
                f"daemon off;\nworker_processes 1;\npid {work}/pid;\nerror_log {work}/logs/error.log;\n"
                f"events {{ worker_connections 1024; }}\nhttp {{\n    access_log off;\n{temporary}"
                "    include elbowroom.conf;\n}\n")
            nginx = ["nginx", "-p", str(work), "-e", f"{work}/logs/error.log", "-c", "nginx.conf"]
            subprocess.run([*nginx, "-t", "-q"], check=True)
            proxy = subprocess.Popen(nginx)
            for _ in range(200):
                try:
                    socket.create_connection(("127.0.0.1", port)).close()
                    break
                except OSError:
                    time.sleep(0.02)

            until = time.monotonic() + seconds
            callers = [Caller(number + 1, port, until) for number in range(CALLERS)]
            for caller in callers:
                caller.start()
            time.sleep(seconds / 5)
            shares = [replica.answered() for replica in replicas]
            replicas[0].end(signal.SIGKILL)
            time.sleep(seconds / 5)
            replicas[0].start()
            time.sleep(seconds / 5)
            if replicas[1].end(signal.SIGTERM) != 0:
                sys.exit("a replica that was told to stop did not end well")
            replicas[1].start()
            for caller in callers:
                caller.join()
            answered, lost = sum(caller.answered for caller in callers), [fault for caller in callers for fault in caller.lost]
            again = [replica.answered() for replica in replicas]
            limited = refusals(port)
            slowest = max(caller.slowest for caller in callers) * 1000
            print(f"{answered} answers over {seconds:.0f} s through nginx, {len(lost)} lost; one replica killed, one told to stop, "
                  f"both started again; slowest {slowest:.0f} ms; shares at first {shares}, after the restarts {again}; "
                  f"{limited} of a flood of 600 limited")
            if lost:
                sys.exit("\n".join(lost[:5]))
            if answered < 100 or min(shares) == 0 or min(again) == 0:
                sys.exit("the load did not reach every replica")
    finally:
        if proxy:
            proxy.terminate()
            proxy.wait(timeout=10)
        for replica in replicas:
            replica.process.kill()
            replica.process.wait()


if __name__ == "__main__":
    main()
