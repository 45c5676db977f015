"""Is hostile to the service in every way that is known here, and asks after each whether it is well.

    python3 tests/hostile target/release/elbowroom

Prints figures; fails on the first answer that is out of place, on a service that is not well, on memory that grows.
"""

import pathlib
import socket
import subprocess
import sys
import tempfile
import time

import bodies
import http1
import http2
from service import FILL, Service

# above what it has at rest, in MiB: room for all connections that the attacks hold at a time
MOST_MEMORY = 96


def plain(binary):
    with Service(binary, "--max-body-size", "256KiB", "--max-connections", "300") as service:
        service.is_well()
        rest = service.memory()
        count, slowest, name = bodies.refuse_all(service)
        print(f"{count} bodies refused, the slowest in {slowest * 1000:.0f} ms ({name})")
        print(f"{http1.send_garbage(service)} connections of garbage ended")
        service.is_well()
        http1.smuggle(service)
        print(f"{http1.pipeline(service)} requests in one write answered in order")
        print(f"50 slow writers cut off after {http1.slow_writers(service):.1f} s at the most")
        service.is_well()
        took, growth = http1.slow_readers(service)
        print(f"40 slow readers given up after {took:.1f} s; {growth:+.1f} MiB meanwhile")
        service.is_well()
        print(f"{http1.come_and_go(service)} connections came and went")
        service.is_well()
        peak = service.memory("VmHWM")
        print(f"memory: {rest:.1f} MiB at rest, {peak:.1f} MiB at the most")
        assert peak < rest + MOST_MEMORY


def over_tls(binary, work):
    certificate = [str(work / name) for name in ("certificate.pem", "key.pem")]
    subprocess.run(
        ["openssl", "req", "-x509", "-newkey", "ec", "-pkeyopt", "ec_paramgen_curve:P-256", "-nodes", "-days", "1",
         "-subj", "/CN=localhost", "-out", certificate[0], "-keyout", certificate[1]],
        check=True, stdin=subprocess.DEVNULL, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    with Service(binary, certificate=certificate) as service:
        service.is_well()
        rest = service.memory()
        count, worst, name, longest = http2.flood(service)
        print(f"{count} floods of HTTP/2 borne, the longest {longest:.1f} s, the worst {worst:+.1f} MiB ({name})")
        print(f"640 answers over HTTP/2 that nobody reads: {http2.unread(service):+.1f} MiB")
        silent = [socket.create_connection(("127.0.0.1", service.port)) for _ in range(200)]
        service.is_well()
        for connection in silent:
            connection.close()
        peak = service.memory("VmHWM")
        print(f"memory over TLS: {rest:.1f} MiB at rest, {peak:.1f} MiB at the most")
        assert peak < rest + MOST_MEMORY


def without_files(binary):
    """As few open files as it needs, and more callers than that."""
    with Service(binary, files=40) as service:
        service.is_well()
        held = []
        for _ in range(80):
            try:
                held.append(socket.create_connection(("127.0.0.1", service.port), timeout=1))
            except OSError:
                break
        time.sleep(0.3)
        for connection in held:
            connection.close()
        service.is_well()
        print(f"{len(held)} callers with 40 open files: well again once they had gone")


def full_disk(binary):
    """Nothing that it logs can be written."""
    with open("/dev/full", "w") as full, Service(binary, "--log-requests", "all", "--log-format", "json", stderr=full) as service:
        for number in range(200):
            status, _ = service.ask("POST", FILL, bodies.GOOD_TEXT, bodies.JSON)
            assert status == 200, status
        service.is_well()
        print("200 requests answered while no line of the log could be written")


def main():
    binary = pathlib.Path(sys.argv[1]).resolve()
    began = time.monotonic()
    with tempfile.TemporaryDirectory() as work:
        plain(binary)
        over_tls(binary, pathlib.Path(work))
    without_files(binary)
    full_disk(binary)
    print(f"hostile input: all borne in {time.monotonic() - began:.0f} s")


main()
