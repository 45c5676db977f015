#!/usr/bin/env python3
"""Recomputes every proof of a running service from nothing but its answers, the requests and /v1/tables.

Independent of the engine: Python, standard library only, decimal arithmetic. Every conformance case is sent to the
service in every edition that it names, and each step of the answer is recomputed, each figure of the outcome compared
with the step that it names, and the verdict with the findings.

    python3 tests/replay.py http://127.0.0.1:8314
"""

import json
import sys
import urllib.error
import urllib.request
from decimal import ROUND_FLOOR, ROUND_HALF_UP, Decimal, getcontext
from pathlib import Path
from urllib.parse import quote

getcontext().prec = 60
NINTH = Decimal("0.000000001")


class Wrong(Exception):
    """What does not hold in an answer."""


def read(text):
    return json.loads(text, parse_float=Decimal, parse_int=Decimal)


class Service:
    def __init__(self, base):
        self.base = base
        self.tables = {}

    def get(self, path):
        with urllib.request.urlopen(self.base + path, timeout=30) as answer:
            return read(answer.read())

    def post(self, path, body):
        request = urllib.request.Request(
            self.base + path, data=json.dumps(body).encode(), headers={"Content-Type": "application/json"}
        )
        try:
            with urllib.request.urlopen(request, timeout=30) as answer:
                return read(answer.read())
        except urllib.error.HTTPError as error:
            raise Wrong(f"{error.code}: {error.read().decode()}") from error

    def checks(self):
        """The path of every check, by the name that its operation carries in the OpenAPI document."""
        described = self.get("/openapi.json")["paths"]
        return {item["post"]["operationId"]: path for path, item in described.items() if "post" in item}

    def rows(self, table):
        if table not in self.tables:
            rows = self.get("/v1/tables/" + quote(table))["rows"]
            self.tables[table] = {one["key"]: one["values"] for one in rows}
        return self.tables[table]

    def cell(self, table, row, column):
        try:
            return self.rows(table)[row][column]
        except KeyError as error:
            raise Wrong(f"table {table} has no row {row!r} with column {column!r}") from error


def resolve(document, pointer):
    for part in pointer.split("/")[1:]:
        part = part.replace("~1", "/").replace("~0", "~")
        try:
            document = document[int(part)] if isinstance(document, list) else document[part]
        except (KeyError, IndexError, ValueError) as error:
            raise Wrong(f"the request has nothing at {pointer}") from error
    return document


def says_something(request, pointer):
    try:
        resolve(request, pointer)
    except Wrong:
        return False
    return True


def given(step, request):
    value = resolve(request, step["at"])
    return Decimal(str(value)) if isinstance(value, (int, float)) and not isinstance(value, bool) else Decimal(1)


def affirm(service, step, request):
    """A yes or no of a table; where the step points at a word, the row is that word's."""
    says = service.cell(step["table"], step["row"], step["column"])
    if says not in ("yes", "no") or step["holds"] is not (says == "yes"):
        raise Wrong(f"{step['id']}: the table says {says!r}, not {step['holds']}")
    word = resolve(request, step["at"]) if "at" in step else None
    named = step.get("at", "").rsplit("/", 1)[-1]
    if (named.isdigit() or named in ("kind", "conduit")) and not step["row"].endswith(word):
        raise Wrong(f"{step['id']}: row {step['row']!r} is not that of {word!r}")


def whole_quotient(of, by):
    return max(Decimal(0), (of / by).to_integral_value(ROUND_FLOOR))


def round_count(of, by, step):
    whole = whole_quotient(of, by)
    rest = of - whole * by
    return whole + (1 if rest > 0 and (rest / by).quantize(NINTH, ROUND_FLOOR) >= step else 0)


def distance(legs):
    return sum((leg * leg for leg in legs), Decimal(0)).sqrt().quantize(NINTH, ROUND_FLOOR)


def percent(part, whole, limit=Decimal(100)):
    """To the second decimal, or as many more as it takes to tell it from a limit that it is not."""
    exact = 100 * part / whole
    for decimals in range(2, 10):
        rounded = exact.quantize(Decimal(1).scaleb(-decimals), ROUND_HALF_UP)
        if rounded != limit or 100 * part == limit * whole:
            return rounded
    return limit + (NINTH if 100 * part > limit * whole else -NINTH)


INCH = Decimal("25.4")
TO_SI = {
    "in": (INCH, "mm"),
    "in2": (INCH**2, "mm2"),
    "in3": (INCH**3 / 1000, "cm3"),
    "lb": (Decimal("0.45359237"), "kg"),
}


def converted(value, unit, to):
    """What the request says in the one system, in the other."""
    if unit in TO_SI and TO_SI[unit][1] == to:
        return (value * TO_SI[unit][0]).quantize(NINTH, ROUND_HALF_UP)
    factor, metric = TO_SI[to]
    if metric != unit:
        raise Wrong(f"{unit} is not converted to {to}")
    return (value / factor).quantize(NINTH, ROUND_HALF_UP)


COMPUTE = {
    "sum": lambda values: sum(values, Decimal(0)),
    "product": lambda values: (values[0] * values[1]).quantize(NINTH, ROUND_HALF_UP),
    "difference": lambda values: values[0] - values[1],
    "quotient": lambda values: (values[0] / values[1]).quantize(NINTH, ROUND_FLOOR),
    "whole_quotient": lambda values: whole_quotient(values[0], values[1]),
    "round_count": lambda values: round_count(*values),
    "percent": lambda values: percent(*values),
    "largest": max,
    "smallest": min,
    "distance": distance,
    "nothing": lambda values: Decimal(0),
}

COMBINE = {"every": all, "any": any}


def system(unit):
    """The system that a unit belongs to, if it belongs to one."""
    return "us" if unit in TO_SI else "si" if unit in ("mm", "mm2", "cm3", "kg") else None

HOLDING = {*COMBINE, "whatever", "account"}

RELATIONS = {
    ">=": lambda left, right: left >= right,
    "<=": lambda left, right: left <= right,
    "<": lambda left, right: left < right,
    ">": lambda left, right: left > right,
}


def select_boxes(service, step, values, units):
    needed, added, gangs, square, octagonal = values
    column = "volume_in3" if units == "us" else "volume_cm3"
    picked = []
    for place, (key, row) in enumerate(service.rows(step["table"]).items()):
        shape = row["shape"]
        fits = {
            "square": gangs <= square,
            "octagonal": gangs <= octagonal,
            "fs-single-cover": gangs <= 1,
            "fd-single-cover": gangs <= 1,
            "fs-multiple-cover": gangs > 1,
            "fd-multiple-cover": gangs > 1,
        }.get(shape, True)
        volume = row[column] * (gangs if row["per_gang"] == "yes" else 1)
        if fits and volume + added >= needed:
            picked.append((volume, place, key))
    return [key for _, _, key in sorted(picked)]


def replay(service, request, answer):
    """Recomputes the proof of one answer; raises Wrong where it does not hold. Returns the number of steps."""
    units = request.get("units", "us")
    steps = {}
    for step in answer["derivation"]["steps"]:
        name = step["id"]
        if any(operand not in steps for operand in step.get("of", [])):
            raise Wrong(f"{name} computes with a step that is not before it")
        operation = step["op"]
        takes = "holds" if operation in HOLDING else "equals"
        values = [steps[operand].get(takes) for operand in step.get("of", [])]
        if None in values and operation != "account":
            raise Wrong(f"{name} computes with a step that has no value")
        if operation == "given":
            expected = given(step, request)
        elif operation == "converted":
            [said] = [steps[operand] for operand in step["of"]]
            if said["op"] not in ("given", "stated"):
                raise Wrong(f"{name}: {said['op']} is not what the request says")
            expected = converted(said["equals"], said["unit"], step["unit"])
        elif operation == "chosen":
            expected = step["equals"]
        elif operation == "fact":
            there = resolve(request, step["at"])
            if (True if isinstance(there, str) else there) is not step["holds"]:
                raise Wrong(f"{name}: the request says otherwise at {step['at']}")
            expected = None
        elif operation == "word":
            if resolve(request, step["at"]) != step["says"]:
                raise Wrong(f"{name}: the request says otherwise at {step['at']}")
            expected = None
        elif operation == "whatever":
            if says_something(request, step["at"]):
                raise Wrong(f"{name}: the request says what stands at {step['at']}")
            truths = [steps[operand].get("holds") for operand in step["of"]]
            if len(truths) != len(step["values"]) or set(truths) != {step["holds"]}:
                raise Wrong(f"{name}: with {step['values']} it is {truths}")
            expected = None
        elif operation == "account":
            account(step, steps)
            expected = None
        elif operation == "stated" and step.get("amended"):
            amended = {one["figure"]: one["value"] for one in request["amendments"]}
            expected = Decimal(str(amended[step["row"]]))
        elif operation in ("lookup", "stated"):
            expected = service.cell(step["table"], step["row"], step["column"])
        elif operation == "affirm":
            affirm(service, step, request)
            expected = None
        elif operation in COMBINE:
            if not values or step["holds"] is not COMBINE[operation](values):
                raise Wrong(f"{name}: {operation} of {values} is not {step['holds']}")
            expected = None
        elif operation in COMPUTE:
            expected = COMPUTE[operation](values)
        elif operation == "compare":
            expected = RELATIONS[step["relation"]](*values)
            if step["holds"] is not expected:
                raise Wrong(f"{name}: {values[0]} {step['relation']} {values[1]} is {expected}")
            expected = None
        elif operation == "select_boxes":
            expected = select_boxes(service, step, values, units)
            if step["selects"] != expected:
                raise Wrong(f"{name} should pick {expected}")
            expected = None
        elif operation in ("read", "does_not_apply"):
            expected = None
        else:
            raise Wrong(f"{name}: no operation is called {operation}")
        mixed = {system(steps[operand].get("unit")) for operand in step.get("of", [])} | {system(step.get("unit"))}
        if operation != "converted" and {"us", "si"} <= mixed:
            raise Wrong(f"{name} computes with figures of both systems of units")
        if expected is not None and step["equals"] != expected:
            raise Wrong(f"{name}: {operation} of {values} is {expected}, not {step['equals']}")
        steps[name] = step
    figures(answer["outcome"], steps, "/outcome")
    for finding in answer["findings"]:
        if "step" in finding and finding["step"] not in steps:
            raise Wrong(f"a finding names {finding['step']}, which is no step")
    verdict(answer)
    return len(steps)


def figures(part, steps, place):
    """Compares every figure of the outcome with the step that it names."""
    if isinstance(part, dict):
        if "step" in part and "value" in part:
            step = steps.get(part["step"])
            if step is None:
                raise Wrong(f"{place} names {part['step']}, which is no step")
            if (step.get("equals"), step.get("unit")) != (part["value"], part["unit"]):
                raise Wrong(f"{place} is {part['value']} {part['unit']}, but {part['step']} is {step.get('equals')}")
        for member, below in part.items():
            figures(below, steps, f"{place}/{member}")
    elif isinstance(part, list):
        for index, below in enumerate(part):
            figures(below, steps, f"{place}/{index}")


def account(step, steps):
    """A rule that a step decides: satisfied where that holds or does not, as is wanted; or open, for want of an input."""
    status, decides = step["status"], step.get("of", [])
    # one that is not determined names what would decide it, which may be there and say too little
    if status != "not_determined" and "wants" in step:
        [truth] = [steps[operand]["holds"] for operand in decides]
        if status != ("satisfied" if truth is step["wants"] else "violated"):
            raise Wrong(f"{step['id']}: {step['rule']} is not {status}")


GRAVITY = ("violated", "not_determined", "satisfied", "does_not_apply")


def verdict(answer):
    """The verdict that the steps come to, rule by rule."""
    if answer["verdict"] is None:
        return
    listed = {rule: status for status in GRAVITY for rule in answer["account"][status]}
    came = dict.fromkeys(listed, "does_not_apply")
    steps = answer["derivation"]["steps"]
    for step in steps:
        if step["op"] not in ("account", "does_not_apply") and step["rule"] in came:
            came[step["rule"]] = "satisfied"
    for rule in came:
        about = [step["status"] for step in steps if step["op"] == "account" and step["rule"] == rule]
        came[rule] = min(about, key=GRAVITY.index, default=came[rule])
    for rule, status in listed.items():
        # a rule that is worked with and decides nothing: nothing raises it, or another way to satisfy the same demand is met
        unraised = status == "does_not_apply" and came[rule] == "satisfied"
        if came[rule] != status and not unraised:
            raise Wrong(f"{rule} comes to {came[rule]}, the account says {status}")
    decided = [step["status"] for step in steps if step["op"] == "account"]
    gravest = min([*came.values(), *decided], key=GRAVITY.index, default="does_not_apply")
    expected = {"violated": "violates", "not_determined": "not_determined"}.get(gravest, "complies")
    if answer["verdict"] != expected:
        raise Wrong(f"the steps come to {expected}, the verdict is {answer['verdict']}")


def main():
    if len(sys.argv) != 2:
        sys.exit(__doc__)
    service = Service(sys.argv[1].rstrip("/"))
    paths = service.checks()
    passed = failed = steps = 0
    for file in sorted((Path(__file__).parent / "conformance").glob("*.json")):
        for case in json.loads(file.read_text(encoding="utf-8")):
            for edition in case["editions"]:
                request = {**case["request"], "edition": edition}
                try:
                    answer = service.post(paths[case["check"]], request)
                    steps += replay(service, request, answer)
                    passed += 1
                except (Wrong, KeyError) as wrong:
                    failed += 1
                    print(f"{file.name}: «{case['name']}» ({edition}): {wrong!r}")
    print(f"{steps} proof steps recomputed from the answers and the published tables")
    print(f"{passed} passed, {failed} failed")
    sys.exit(1 if failed or not passed else 0)


if __name__ == "__main__":
    main()
