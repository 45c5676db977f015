"""Bodies that no honest caller sends. Each is refused with a problem, at once, and takes no memory to speak of."""

import gzip
import json
import time
import zlib

from service import FILL

JSON = {"content-type": "application/json"}
GOOD = {
    "enclosure": {"standard": "square-4x2-1/8"},
    "contents": {"devices": [{"id": "S1", "kind": "switch", "largest_conductor": "12 AWG"}]},
}
GOOD_TEXT = json.dumps(GOOD).encode()
DEEP = 200_000
# seconds that a body may take
LONGEST = 3.0


def volume(text):
    return b'{"enclosure": {"marked_volume": ' + text + b'}, "contents": {}}'


def texts():
    """Texts that are no good JSON, or no good request."""
    deep = {
        "lists": b"[" * DEEP,
        "closed lists": b"[" * DEEP + b"]" * DEEP,
        "objects": b'{"a":' * (DEEP // 4),
        "lists in a member": b'{"contents": ' + b"[" * DEEP,
        "lists in a member that is not known": b'{"x": ' + b"[" * 100_000 + b"]" * 100_000 + b"}",
        "objects of the same name": b'{"enclosure":' * 20_000 + b"1" + b"}" * 20_000,
    }
    yield from ((f"deep {name}", text) for name, text in deep.items())
    numbers = [
        b"1e999999", b"-1e999999", b"1e-999999", b"9" * 200_000, b"0." + b"1" * 200_000, b"1e99999999999999999999", b"-0",
        b"18446744073709551616", b"1.7976931348623159e308", b"5e-324", b"0.1234567", b"NaN", b"Infinity", b"-Infinity",
        b"nan", b"0x10", b"1_000", b"+1", b"01", b".5", b"1.", b"1e", b"--1", b"1e+", b'"NaN"', b'"1"', b"true", b"null",
    ]
    yield from ((f"number {number[:24].decode()}", volume(number)) for number in numbers)
    text = GOOD_TEXT.decode()
    yield from ((f"in {encoding}", text.encode(encoding)) for encoding in ["utf-16", "utf-16-le", "utf-16-be", "utf-32", "utf-8-sig"])
    reference = lambda raw: b'{"reference": "' + raw + b'", "contents": {}}'
    for name, raw in {
        "overlong": b"\xc0\xaf", "lone continuation": b"\x80", "cut sequence": b"\xe2\x82", "beyond Unicode": b"\xf4\x90\x80\x80",
        "surrogate in UTF-8": b"\xed\xa0\x80", "Latin-1": b"caf\xe9", "lone high surrogate": b"\\ud800",
        "lone low surrogate": b"\\udc00", "surrogates the wrong way": b"\\udc00\\ud800", "cut escape": b"\\u12",
        "unknown escape": b"\\x41", "control byte": b"\x01", "line feed": b"\n", "too long": b"x" * 200_000,
    }.items():
        yield f"text with {name}", reference(raw)
    yield "member twice", b'{"contents": {}, "contents": {}}'
    yield "member twice, deep", b'{"contents": {"devices": [{"id": "a", "id": "b", "kind": "switch"}]}}'
    yield "member twice, once escaped", b'{"contents": {}, "c\\u006fntents": {}}'
    yield "many members", b"{" + b",".join(b'"m%d": 1' % number for number in range(15_000)) + b"}"
    yield "one member many times", b"{" + b",".join([b'"contents": {}'] * 14_000) + b"}"
    yield "many items", b'{"contents": {"devices": [' + b",".join([b"{}"] * 60_000) + b"]}}"
    yield "many wrong items", b'{"contents": {"devices": [' + b",".join([b"1"] * 120_000) + b"]}}"
    yield "a name of 200,000 letters", b'{"' + b"n" * 200_000 + b'": 1}'
    yield "names like known ones", b"{" + b",".join(b'"content%d": 1' % number for number in range(12_000)) + b"}"
    for name, body in {
        "nothing": b"", "blanks": b" " * 100_000, "null": b"null", "a list": b"[]", "a text": b'"a"', "two values": GOOD_TEXT * 2,
        "cut": GOOD_TEXT[:-1], "a comment": b"// x\n" + GOOD_TEXT, "single quotes": b"{'contents': {}}", "zero bytes": b"\0" * 100_000,
        "a trailing comma": b'{"contents": {},}', "noise": bytes(range(256)) * 400,
    }.items():
        yield name, body


def packed():
    """Bodies that are packed, some of them bombs: never unpacked, always 415."""
    bomb = gzip.compress(b" " * (64 * 1024 * 1024))
    yield "gzip", {"content-encoding": "gzip"}, gzip.compress(GOOD_TEXT)
    yield "a gzip bomb of 64 MiB", {"content-encoding": "gzip"}, bomb
    yield "a bomb in a bomb", {"content-encoding": "gzip, gzip"}, gzip.compress(bomb)
    yield "deflate", {"content-encoding": "deflate"}, zlib.compress(GOOD_TEXT)
    yield "br", {"content-encoding": "br"}, b"\x0b\x02\x80{}\x03"
    yield "zstd", {"content-encoding": "zstd"}, b"\x28\xb5\x2f\xfd"
    yield "another charset", {"content-type": "application/json; charset=utf-16"}, GOOD_TEXT.decode().encode("utf-16")


def wrapped(text):
    """The same text where it is part of something else."""
    yield "/v1/boxes/review", JSON, b'{"checks": {"outlet_box_fill": ' + text + b"}}"
    yield "/v1/editions/compare", JSON, (
        b'{"check": "outlet_box_fill", "editions": ["2023", "2020"], "request": ' + text + b"}")
    yield "/v1/takeoffs?explain=none", JSON, b'[{"check": "outlet_box_fill", "request": ' + text + b"}]"
    yield "/v1/takeoffs?explain=none", {"content-type": "application/x-ndjson"}, (
        b'{"check": "outlet_box_fill", "request": ' + text + b"}\n")
    yield "/v1/takeoffs?explain=none", {"content-type": "text/csv"}, text


def refuse_all(service):
    """Sends all of them; gives back how many, and the longest time that one took."""
    count, slowest, name_of_slowest = 0, 0.0, ""
    for name, text in texts():
        requests = [(FILL, JSON, text), *wrapped(text)]
        for path, headers, body in requests:
            began = time.monotonic()
            try:
                status, answer = service.ask("POST", path, body, headers)
            except OSError as error:
                raise AssertionError(f"{name} to {path}") from error
            took = time.monotonic() - began
            if took > slowest:
                slowest, name_of_slowest = took, f"{name} to {path}"
            count += 1
            if path == FILL and name not in GOOD_ONES:
                assert status in (400, 413, 422), f"{name}: {status} {answer[:200]!r}"
                assert json.loads(answer)["type"].startswith("/v1/problems/"), name
            assert status in (200, 400, 413, 422), f"{name} to {path}: {status} {answer[:200]!r}"
            assert len(answer) < 1024 * 1024, f"{name} to {path}: an answer of {len(answer)} bytes"
            assert took < LONGEST, f"{name} to {path} took {took:.1f} s"
        service.is_well()
    for name, headers, body in packed():
        status, answer = service.ask("POST", FILL, body, {**JSON, **headers})
        assert status == 415, f"{name}: {status} {answer[:200]!r}"
        count += 1
        service.is_well()
    return count, slowest, name_of_slowest


# nothing is wrong with these
GOOD_ONES = {"number 1e-999999", "number 5e-324"}
