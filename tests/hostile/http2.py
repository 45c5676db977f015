"""Floods of HTTP/2, frame by frame: what each costs the caller a few bytes may cost the service no more."""

import struct
import time

from service import FILL

PREFACE = b"PRI * HTTP/2.0\r\n\r\nSM\r\n\r\n"
DATA, HEADERS, PRIORITY, RESET, SETTINGS, PUSH, PING, GOAWAY, WINDOW, CONTINUATION = range(10)
END_STREAM, END_HEADERS = 1, 4


def frame(kind, flags=0, stream=0, payload=b""):
    return struct.pack(">I", len(payload))[1:] + struct.pack(">BBI", kind, flags, stream) + payload


def header(name, value):
    """A header in HPACK, neither indexed nor packed."""
    def text(part):
        length = len(part)
        if length < 127:
            return bytes([length]) + part
        rest, more = length - 127, b""
        while rest > 127:
            more, rest = more + bytes([rest % 128 + 128]), rest // 128
        return b"\x7f" + more + bytes([rest]) + part
    return b"\x00" + text(name) + text(value)


def request(method=b"GET", path=b"/health/live", *more):
    parts = [(b":method", method), (b":scheme", b"https"), (b":path", path), (b":authority", b"x"), *more]
    return b"".join(header(*part) for part in parts)


def opened(service):
    connection = service.connect(protocols=("h2",))
    assert connection.selected_alpn_protocol() == "h2"
    connection.sendall(PREFACE + frame(SETTINGS))
    return connection


def attacks():
    """What is sent after the preface."""
    get = request()
    post = request(b"POST", FILL.encode(), (b"content-type", b"application/json"))
    odd = range(1, 40_000, 2)
    yield "rapid reset", b"".join(
        frame(HEADERS, END_HEADERS | END_STREAM, stream, get) + frame(RESET, 0, stream, b"\0\0\0\x08") for stream in odd)
    yield "reset while the body is awaited", b"".join(
        frame(HEADERS, END_HEADERS, stream, post) + frame(RESET, 0, stream, b"\0\0\0\x08") for stream in odd)
    yield "settings", frame(SETTINGS, 0, 0, struct.pack(">HI", 4, 65535)) * 50_000
    yield "pings", frame(PING, 0, 0, b"8 bytes.") * 50_000
    yield "continuation", frame(HEADERS, 0, 1, get) + frame(CONTINUATION, 0, 1, header(b"a", b"b" * 4000)) * 2_000
    yield "empty continuation", frame(HEADERS, 0, 1, get) + frame(CONTINUATION, 0, 1) * 50_000
    yield "large headers", b"".join(
        frame(HEADERS, END_HEADERS | END_STREAM, stream, get + header(b"a", b"b" * 15_000)) for stream in range(1, 400, 2))
    yield "many small headers", frame(HEADERS, END_HEADERS | END_STREAM, 1, get + header(b"a", b"") * 4_000)
    yield "a bomb of indexed headers", frame(
        HEADERS, END_HEADERS | END_STREAM, 1, get + b"\x40\x01a\x7f\x81\x1e" + b"b" * 4000 + b"\xbe" * 12_000)
    yield "empty data", frame(HEADERS, END_HEADERS, 1, post) + frame(DATA, 0, 1) * 50_000
    yield "priorities", frame(PRIORITY, 0, 1, b"\0\0\0\0\x10") * 50_000
    yield "windows of nothing", frame(WINDOW, 0, 0, b"\0\0\0\0") * 10_000
    yield "a window too far", frame(WINDOW, 0, 0, b"\x7f\xff\xff\xff") * 10
    yield "more streams than are allowed", b"".join(frame(HEADERS, END_HEADERS, stream, post) for stream in range(1, 2_000, 2))
    yield "data of no stream", frame(DATA, 0, 99, b"x" * 16_000) * 100
    yield "a frame too large", struct.pack(">I", 1 << 23)[1:] + struct.pack(">BBI", DATA, 0, 1) + b"x" * 100_000
    yield "a promise", frame(PUSH, END_HEADERS, 1, b"\0\0\0\x02" + get)
    yield "unknown frames", frame(0xEE, 0xFF, 0, b"x" * 100) * 20_000
    yield "noise", bytes(range(256)) * 1000


def flood(service):
    """All of them, each on a connection of its own; the growth in memory of the worst, in MiB."""
    worst, name_of_worst, longest = 0.0, "", 0.0
    for name, text in attacks():
        before, began = service.memory("VmRSS"), time.monotonic()
        with opened(service) as connection:
            connection.settimeout(3)
            try:
                for start in range(0, len(text), 65536):
                    connection.sendall(text[start:start + 65536])
                # what is asked for is read for a moment, so that answers do not end the attack
                connection.settimeout(0.3)
                while connection.recv(65536):
                    pass
            except OSError:
                pass
            growth = service.memory("VmRSS") - before
        service.is_well()
        longest = max(longest, time.monotonic() - began)
        if growth > worst:
            worst, name_of_worst = growth, name
        assert growth < 48, f"{name} takes {growth:.0f} MiB"
    return len(list(attacks())), worst, name_of_worst, longest


def unread(service):
    """Streams whose answers are never read: the window stays shut, and the connection is given up or kept small."""
    before = service.memory()
    asks = b"".join(
        frame(HEADERS, END_HEADERS | END_STREAM, stream, request(path=b"/openapi.json")) for stream in range(1, 129, 2))
    held = []
    for _ in range(10):
        connection = opened(service)
        connection.sendall(frame(SETTINGS, 0, 0, struct.pack(">HI", 4, 0)) + asks)
        held.append(connection)
    time.sleep(1)
    growth = service.memory() - before
    service.is_well()
    for connection in held:
        connection.close()
    assert growth < 64, f"{growth:.0f} MiB"
    return growth
