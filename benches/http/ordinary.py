"""The ordinary alternative: FastAPI and pydantic do the same sum of an outlet box, and answer with as many bytes.

Every allowance is looked up and every product is a step of the answer, so that the answer is as long as the service's;
nothing is proved, no rule is chosen by edition, no box is picked.
"""

from collections.abc import AsyncIterator
from decimal import Decimal
from typing import Literal

from fastapi import FastAPI, Request as HttpRequest
from fastapi.responses import StreamingResponse
from pydantic import BaseModel, ConfigDict, Field

ALLOWANCE = {
    "18 AWG": Decimal("1.5"), "16 AWG": Decimal("1.75"), "14 AWG": Decimal("2"), "12 AWG": Decimal("2.25"),
    "10 AWG": Decimal("2.5"), "8 AWG": Decimal("3"), "6 AWG": Decimal("5"),
}
BOXES = {"square-4x1-1/2": Decimal("21"), "device-3x2x3-1/2": Decimal("18")}
STEPS = 56

Size = Literal["18 AWG", "16 AWG", "14 AWG", "12 AWG", "10 AWG", "8 AWG", "6 AWG"]
Kind = Literal["switch", "receptacle", "combination"]


class Strict(BaseModel):
    model_config = ConfigDict(extra="forbid")


class Cable(Strict):
    kind: str
    size: Size
    conductors: int = Field(ge=1, le=50)
    grounding: Size | None = None
    count: int = Field(default=1, ge=1, le=1000)


class Device(Strict):
    id: str | None = Field(default=None, max_length=64)
    kind: Kind
    largest_conductor: Size
    count: int = Field(default=1, ge=1, le=1000)


class Clamp(Strict):
    kind: Literal["internal", "external"]
    count: int = Field(default=1, ge=1, le=1000)


class Grounding(Strict):
    size: Size
    kind: Literal["equipment_grounding", "stays_inside"]
    count: int = Field(default=1, ge=1, le=1000)


class Section(Strict):
    kind: str
    marked_volume: Decimal = Field(gt=0)


class Enclosure(Strict):
    standard: Literal["square-4x1-1/2", "device-3x2x3-1/2"]
    sections: list[Section] = []


class Contents(Strict):
    cables: list[Cable] = []
    devices: list[Device] = []
    clamps: list[Clamp] = []
    grounding: list[Grounding] = []


class Request(Strict):
    edition: Literal["2017", "2020", "2023"] = "2023"
    units: Literal["us", "si"] = "us"
    reference: str | None = Field(default=None, max_length=200)
    enclosure: Enclosure
    contents: Contents


class Step(BaseModel):
    id: str
    op: str
    rule: str
    citation: str
    basis: str
    of: list[str]
    equals: float
    unit: str
    note: str


class Answer(BaseModel):
    check: str
    reference: str | None
    verdict: Literal["complies", "violates"]
    required: float
    available: float
    steps: list[Step]


app = FastAPI(docs_url=None, redoc_url=None, openapi_url=None)
# as long as the words of the service's answer make a step
NOTE = "The volume required is the sum of what conductors, clamps, devices and grounding take." + " " * 10


@app.post("/v1/outlet-boxes/fill")
async def fill(request: Request) -> Answer:
    return answer(request)


class Item(Strict):
    check: Literal["outlet_box_fill"]
    request: Request


@app.post("/v1/takeoffs")
async def takeoff(http: HttpRequest) -> StreamingResponse:
    """Answers line by line once all lines have arrived: a streamed answer takes the body's messages for a disconnection."""
    lines = (await http.body()).splitlines()

    async def answers() -> AsyncIterator[bytes]:
        for first in range(0, len(lines), 16):
            yield b"".join(map(line_of, lines[first : first + 16]))

    return StreamingResponse(answers(), media_type="application/x-ndjson")


def line_of(line: bytes) -> bytes:
    return answer(Item.model_validate_json(line).request).model_dump_json().encode() + b"\n"


def answer(request: Request) -> Answer:
    steps: list[Step] = []

    def step(op: str, rule: str, citation: str, value: Decimal, of: list[str]) -> str:
        name = f"s{len(steps) + 1}"
        steps.append(Step(id=name, op=op, rule=rule, citation=citation, basis="published", of=of,
                          equals=float(value), unit="in3", note=NOTE))
        return name

    contents = request.contents
    sizes: list[Decimal] = []
    required = Decimal(0)
    for cable in contents.cables:
        each = ALLOWANCE[cable.size]
        sizes.append(each)
        value = each * cable.conductors * cable.count
        required += value
        step("product", "outlet-fill.conductors", "314.16(B)(1)", value, [step("lookup", "outlet-fill.allowance", "Table 314.16(B)(1)", each, [])])
    for device in contents.devices:
        value = 2 * ALLOWANCE[device.largest_conductor] * device.count
        required += value
        step("product", "outlet-fill.devices", "314.16(B)(4)", value, [])
    largest = max(sizes, default=Decimal(0))
    if any(clamp.kind == "internal" for clamp in contents.clamps):
        required += largest
        step("largest", "outlet-fill.clamps", "314.16(B)(2)", largest, [])
    grounding = [ALLOWANCE[cable.grounding] for cable in contents.cables if cable.grounding]
    grounding += [ALLOWANCE[one.size] for one in contents.grounding if one.kind == "equipment_grounding"]
    if grounding:
        required += max(grounding)
        step("largest", "outlet-fill.grounding", "314.16(B)(5)", max(grounding), [])
    available = BOXES[request.enclosure.standard] + sum(one.marked_volume for one in request.enclosure.sections)
    while len(steps) < STEPS:
        step("compare", "outlet-volume.scope", "314.16", available - required, ["s1", "s2"])
    return Answer(check="outlet_box_fill", reference=request.reference,
                  verdict="complies" if required <= available else "violates",
                  required=float(required), available=float(available), steps=steps)
