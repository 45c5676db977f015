"""Schemathesis, taught what this service means: lines of JSON and tables as bodies, and two checks of its own."""

import schemathesis

# what no schema says: members that contradict each other, or of which one is needed; numbers with too many decimals; bounds
# that depend on the units; names that are read leniently
BEYOND_A_SCHEMA = {
    "ambiguous",
    "conflict",
    "contradiction",
    "duplicate-id",
    "missing-member",
    "out-of-bounds",
    "too-many-decimals",
    "unknown-conductor-size",
    "unknown-reference",
    "unknown-standard-box",
    "unknown-trade-size",
    "unverified-edition",
}


@schemathesis.serializer("application/x-ndjson", "text/csv")
def as_it_is(ctx, value):
    return value if isinstance(value, bytes) else str(value).encode()


@schemathesis.deserializer("application/x-ndjson", "text/csv")
def text(ctx, response):
    return response.content.decode()


@schemathesis.check
def what_a_schema_allows_is_refused_only_for_what_it_cannot_say(ctx, response, case):
    if response.status_code != 422 or case.media_type != "application/json" or is_meant_to_be_wrong(case):
        return
    codes = {error["code"] for error in response.json()["errors"]}
    assert codes <= BEYOND_A_SCHEMA, f"refused for {codes - BEYOND_A_SCHEMA}"


@schemathesis.check
def a_wrong_item_of_a_takeoff_is_told(ctx, response, case):
    if case.operation.path != "/v1/takeoffs" or response.status_code != 200 or case.media_type != "application/json":
        return
    if is_meant_to_be_wrong(case) and "json" in response.headers["content-type"][0]:
        assert response.json()["summary"]["lines"]["refused"] > 0, "nothing was refused"


def is_meant_to_be_wrong(case):
    return case.meta is not None and case.meta.generation.mode.is_negative
