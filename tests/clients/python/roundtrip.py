#!/usr/bin/env python3
"""Every request of the document's examples, sent by a client that was made from the document: what comes back is read into the
client's own types, and written out again it is what came.

    roundtrip.py FOLDER_OF_THE_CLIENT URL
"""

import importlib
import json
import pathlib
import sys
import typing

sys.path.insert(0, sys.argv[1])
from elbowroom_client import Client  # noqa: E402
from elbowroom_client.models.problem import Problem  # noqa: E402

EXAMPLES = pathlib.Path(__file__).resolve().parents[3] / "openapi/examples"
client = Client(base_url=sys.argv[2])


def operation(name, tag="checks"):
    return importlib.import_module(f"elbowroom_client.api.{tag}.{name}")


def same(sent, received):
    """The same JSON: a whole number and its decimal form are one number."""
    return json.loads(json.dumps(sent), parse_int=float) == json.loads(json.dumps(received), parse_int=float)


# takeoffs are streams; teaching has a sheet that is a page, and choices that its own tests follow (tests/http/training.rs)
ELSEWHERE = {"takeoff", "exercises", "grade", "worksheet"}
# whatever is no check
TAGS = {"certify": "certificates", "verify": "certificates"}
# how the forms of a body are named that there is one of for each check
FORMS = {"edition_comparison": "Compare", "certify": "Certify"}

requests = answers = problems = 0
for folder in sorted(EXAMPLES.iterdir()):
    for path in sorted(folder.glob("*.request.json")):
        asked = json.loads(path.read_text())
        if folder.name in ELSEWHERE or not path.with_name(path.name.replace(".request.", ".answer.")).exists():
            continue
        module = operation(folder.name, TAGS.get(folder.name, "checks"))
        body_type = typing.get_type_hints(module._get_kwargs)["body"]
        if forms := typing.get_args(body_type):
            name = FORMS[folder.name] + asked["check"].title().replace("_", "")
            body_type = next(form for form in forms if form.__name__ == name)
        body = body_type.from_dict(asked)
        assert same(body.to_dict(), asked), f"{path}: the client sends something else"
        requests += 1
        response = module.sync_detailed(client=client, body=body)
        assert response.status_code == 200, f"{path}: {response.content[:200]}"
        assert same(response.parsed.to_dict(), json.loads(response.content)), f"{path}: the client reads something else"
        answers += 1

fill = operation("outlet_box_fill")
refused = fill.sync_detailed(client=client, body=fill.OutletFillRequest())
assert refused.status_code == 422 and isinstance(refused.parsed, Problem) and refused.parsed.errors[0].code
problems += 1
rule = operation("rule", "rulebook").sync(client=client, id="outlet-fill.devices")
assert rule.id == "outlet-fill.devices"
print(f"Python: {requests} requests sent and {answers} answers read without loss, {problems} problem read")
