"""A service of our own to be hostile to: started with short waits, asked after each attack whether it is well."""

import http.client
import pathlib
import re
import resource
import socket
import ssl
import subprocess
import time

FILL = "/v1/outlet-boxes/fill"
# short enough that every wait runs out within a test
WAITS = ["--header-timeout", "1500ms", "--body-timeout", "1500ms", "--write-timeout", "1500ms"]


class Service:
    def __init__(self, binary, *arguments, waits=WAITS, files=None, stderr=subprocess.DEVNULL, certificate=None):
        command = [binary, "--bind", "127.0.0.1:0", *waits, *arguments]
        if certificate:
            command += ["--tls-certificate", certificate[0], "--tls-key", certificate[1]]
        limit = (lambda: resource.setrlimit(resource.RLIMIT_NOFILE, (files, files))) if files else None
        self.process = subprocess.Popen(
            command, stdin=subprocess.DEVNULL, stdout=subprocess.PIPE, stderr=stderr, preexec_fn=limit, text=True)
        line = self.process.stdout.readline()
        found = re.search(r"://127\.0\.0\.1:(\d+)", line)
        if not found:
            raise AssertionError(f"it did not start: {line!r}")
        self.port = int(found[1])
        self.is_tls = certificate is not None

    def __enter__(self):
        return self

    def __exit__(self, *_):
        self.process.kill()
        self.process.wait()

    def connect(self, timeout=8.0, protocols=("http/1.1",)):
        connection = socket.create_connection(("127.0.0.1", self.port), timeout=timeout)
        if not self.is_tls:
            return connection
        context = ssl.create_default_context()
        context.check_hostname, context.verify_mode = False, ssl.CERT_NONE
        context.set_alpn_protocols(list(protocols))
        return context.wrap_socket(connection)

    def ask(self, method, path, body=None, headers=None):
        connection = http.client.HTTPConnection("127.0.0.1", self.port, timeout=8)
        connection.sock = self.connect()
        try:
            connection.request(method, path, body, headers or {})
            response = connection.getresponse()
            return response.status, response.read()
        finally:
            connection.close()

    def is_well(self, within=3.0):
        """It answers, whatever was done to it; it may need a moment to be free again."""
        end = time.monotonic() + within
        while True:
            try:
                status, _ = self.ask("GET", "/health/ready")
                if status == 200:
                    return
                problem = f"status {status}"
            except (OSError, http.client.HTTPException) as error:
                problem = repr(error)
            if self.process.poll() is not None:
                raise AssertionError(f"it ended with {self.process.returncode}")
            if time.monotonic() > end:
                raise AssertionError(f"it is not well: {problem}")
            time.sleep(0.05)

    def memory(self, which="VmRSS"):
        """Memory in MiB: now (VmRSS) or at the most (VmHWM)."""
        text = pathlib.Path(f"/proc/{self.process.pid}/status").read_text()
        return int(re.search(rf"{which}:\s+(\d+)", text)[1]) / 1024


def all_of(connection, most=64 * 1024 * 1024):
    """What comes until the other end closes; a reset is an end."""
    received = b""
    try:
        while piece := connection.recv(65536):
            received += piece
            assert len(received) < most, "it never stops"
    except (ConnectionError, ssl.SSLError):
        pass
    return received


def statuses(received):
    return [int(status) for status in re.findall(rb"HTTP/1\.1 (\d{3}) ", received)]
