"""Connections of HTTP/1.1 that no honest caller makes: garbage, floods, slowness."""

import socket
import struct
import threading
import time

from bodies import GOOD_TEXT
from service import FILL, all_of, statuses

HEAD = f"POST {FILL} HTTP/1.1\r\nhost: x\r\ncontent-type: application/json\r\n".encode()
CHUNKED = HEAD + b"transfer-encoding: chunked\r\n\r\n"
LINES = (b"POST /v1/takeoffs?explain=none HTTP/1.1\r\nhost: x\r\ncontent-type: application/x-ndjson\r\n"
         b"transfer-encoding: chunked\r\n\r\n")


def good(extra=b""):
    return HEAD + extra + b"content-length: %d\r\n\r\n" % len(GOOD_TEXT) + GOOD_TEXT


def garbage():
    """What is sent, and which answers may come before the connection ends; none at all is always right."""
    for name, chunks in {
        "a size that is no number": b"zz\r\nabc\r\n0\r\n\r\n", "a negative size": b"-1\r\nabc\r\n", "a size of 2^64": b"10000000000000000\r\n",
        "the largest size": b"ffffffffffffffff\r\n" + b"x" * 300_000, "no line end": b"5\r\nabcdeXX0\r\n\r\n",
        "a size of zeros": b"0" * 100_000 + b"5\r\n", "an endless extension": b"5;" + b"x" * 300_000,
        "many extensions": b"1;a=b\r\nx\r\n" * 30_000, "endless trailers": b"0\r\n" + b"a: b\r\n" * 60_000,
        "one long trailer": b"0\r\na: " + b"b" * 300_000, "noise": bytes(range(256)) * 100,
    }.items():
        yield f"chunks: {name}", CHUNKED + chunks, {400, 408, 413, 422}
        yield f"chunked lines: {name}", LINES + chunks, {200, 400, 408, 413}
    for name, head in {
        "two lengths": good(b"content-length: 3\r\n"), "a length of 2^64": HEAD + b"content-length: 18446744073709551616\r\n\r\n",
        "a negative length": HEAD + b"content-length: -1\r\n\r\n", "a length with a plus": HEAD + b"content-length: +5\r\n\r\nabcde",
        "a length that is a list": HEAD + b"content-length: 5, 6\r\n\r\nabcde", "packed transfer": HEAD + b"transfer-encoding: gzip\r\n\r\n",
        "chunked not last": HEAD + b"transfer-encoding: chunked, gzip\r\n\r\n0\r\n\r\n", "a name with a blank": HEAD + b"content-length : 5\r\n\r\nabcde",
        "a folded header": HEAD + b"a: b\r\n c: d\r\n\r\n", "a zero byte": HEAD + b"a: b\0c\r\n\r\n", "a lone return": HEAD + b"a: b\rc: d\r\n\r\n",
        "an unknown version": b"GET / HTTP/9.9\r\n\r\n", "an old version": b"GET /\r\n\r\n", "noise": bytes(range(255, 0, -1)) * 50,
        "a handshake of TLS": b"\x16\x03\x01\x02\x00\x01\x00\x01\xfc\x03\x03" + b"a" * 500, "a preface of HTTP/2": b"PRI * HTTP/2.0\r\n\r\nSM\r\n\r\n",
        "a long target": b"GET /" + b"a" * 300_000 + b" HTTP/1.1\r\nhost: x\r\n\r\n", "a long method": b"A" * 300_000 + b" / HTTP/1.1\r\n\r\n",
        "a long header": b"GET / HTTP/1.1\r\na: " + b"b" * 300_000 + b"\r\n\r\n", "many headers": b"GET / HTTP/1.1\r\n" + b"a: b\r\n" * 50_000 + b"\r\n",
        "a head without an end": b"GET / HTTP/1.1\r\nhost: x\r\n", "a body without an end": HEAD + b"content-length: 1000\r\n\r\n{",
        "a body that is promised large": HEAD + b"content-length: 9999999999\r\n\r\n", "no host": b"CONNECT / HTTP/1.1\r\n\r\n",
        "a tunnel": b"CONNECT example.com:443 HTTP/1.1\r\nhost: x\r\nconnection: close\r\n\r\n",
        "another method": b"TRACE / HTTP/1.1\r\nhost: x\r\nconnection: close\r\n\r\n",
        "another protocol": b"GET /docs HTTP/1.1\r\nhost: x\r\nconnection: upgrade\r\nupgrade: h2c\r\n\r\n",
        "an expectation": HEAD + b"expect: 100-continue\r\ncontent-length: 5\r\n\r\n",
    }.items():
        yield name, head, {307, 400, 404, 405, 408, 413, 414, 431, 501, 505, 100}


def send_garbage(service):
    """All at once: most of these are only over when a wait runs out."""
    faults = []

    def one(name, text, expected):
        try:
            with service.connect(timeout=10) as connection:
                try:
                    connection.sendall(text)
                except OSError:
                    pass
                found = statuses(all_of(connection))
            if not set(found) <= expected:
                faults.append(f"{name}: {found}")
        except (OSError, AssertionError) as error:
            faults.append(f"{name}: {error!r}")

    attacks = [threading.Thread(target=one, args=attack) for attack in garbage()]
    for attack in attacks:
        attack.start()
    for attack in attacks:
        attack.join()
    assert not faults, faults
    return len(attacks)


def smuggle(service):
    """A body with a length and in chunks: what follows is never taken for a request of its own."""
    inner = b"GET /health/live HTTP/1.1\r\nhost: x\r\n\r\n"
    with service.connect() as connection:
        connection.sendall(HEAD + b"content-length: %d\r\ntransfer-encoding: chunked\r\n\r\n0\r\n\r\n" % (5 + len(inner)) + inner)
        found = statuses(all_of(connection))
    assert len(found) <= 1 and 200 not in found, found


def pipeline(service):
    """A thousand requests at once: all are answered, in order."""
    asks = [b"GET /health/live HTTP/1.1\r\nhost: x\r\n\r\n", good(), b"GET /nowhere HTTP/1.1\r\nhost: x\r\n\r\n"]
    with service.connect() as connection:
        sender = threading.Thread(target=connection.sendall, args=(b"".join(asks * 333),))
        sender.start()
        found = statuses(all_of(connection))
        sender.join()
    assert found == [200, 200, 404] * 333, (len(found), found[:9])
    return len(found)


def drip(service, text, pause=0.1):
    """A byte at a time; how long the service bears it."""
    began = time.monotonic()
    with service.connect() as connection:
        connection.settimeout(0.001)
        for byte in text:
            try:
                connection.sendall(bytes([byte]))
                time.sleep(pause)
                if not connection.recv(1, socket.MSG_PEEK):
                    break
            except TimeoutError:
                continue
            except OSError:
                break
            break
        took = time.monotonic() - began
        connection.settimeout(3)
        found = statuses(all_of(connection))
    return took, found


def slow_writers(service):
    """Fifty at a time that send a byte ten times a second, and never a whole anything."""
    texts = [b"GET /" + b"a" * 500, HEAD + b"x" * 500, LINES + b"1\r\nx\r\n" * 200, LINES + b"1\r\n\n\r\n" * 200,
             CHUNKED + b"1\r\n \r\n" * 200]
    results = []
    slow = [threading.Thread(target=lambda text=text: results.append(drip(service, text))) for text in texts * 10]
    for one in slow:
        one.start()
    for one in slow:
        one.join()
    longest = max(took for took, _ in results)
    assert len(results) == len(slow) and longest < 20, longest
    return longest


def slow_readers(service):
    """Callers that ask for much and read a byte now and then, or nothing: given up, and what they held is free again."""
    before = service.memory()
    held = []
    for number in range(40):
        connection = socket.socket()
        connection.setsockopt(socket.SOL_SOCKET, socket.SO_RCVBUF, 4096)
        connection.connect(("127.0.0.1", service.port))
        connection.settimeout(1)
        try:
            connection.sendall(b"GET /openapi.json HTTP/1.1\r\nhost: x\r\n\r\n" * 20)
        except OSError:
            pass
        held.append(connection)
    began, left = time.monotonic(), list(held)
    while left and time.monotonic() - began < 20:
        for connection in list(left):
            try:
                if not connection.recv(1):
                    left.remove(connection)
            except TimeoutError:
                pass
            except OSError:
                left.remove(connection)
        if open_connections(service) <= 1:
            break
        time.sleep(0.1)
    took = time.monotonic() - began
    peak = service.memory()
    for connection in held:
        connection.close()
    assert took < 15, "slow readers are still served"
    return took, peak - before


def open_connections(service):
    _, page = service.ask("GET", "/metrics")
    line = next(line for line in page.decode().splitlines() if line.startswith("elbowroom_open_connections "))
    return int(line.split()[1])


def come_and_go(service):
    """Connections that are reset at once, half closed, or never say a word."""
    for number in range(1500):
        connection = socket.create_connection(("127.0.0.1", service.port))
        if number % 3 == 0:
            connection.setsockopt(socket.SOL_SOCKET, socket.SO_LINGER, struct.pack("ii", 1, 0))
        elif number % 3 == 1:
            connection.sendall(good()[: number % 200])
        else:
            connection.sendall(good())
            connection.shutdown(socket.SHUT_WR)
        connection.close()
    return 1500
