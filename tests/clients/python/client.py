"""Calls a running FlowCalc with Python's standard library alone and checks what comes back.

usage: python3 client.py <address of a running service> <path to the contract>

The words that an answer may use are read from the contract, not written here. Ends with "N passed, N failed".
"""

import json
import sys
import urllib.error
import urllib.request

# Shares are written in full; their sum is off by rounding alone.
SHARE_SUM_TOLERANCE = 1e-9

passed = failed = 0


def check(name, holds, seen):
    global passed, failed
    if holds:
        passed += 1
    else:
        failed += 1
        print(f"FAIL {name}: {seen}")


def call(address, path, body=None):
    """Status and JSON of a call; faults are answers too."""
    data = None if body is None else json.dumps(body).encode()
    request = urllib.request.Request(address + path, data=data, headers={"content-type": "application/json"})
    try:
        with urllib.request.urlopen(request, timeout=60) as response:
            return response.status, json.load(response)
    except urllib.error.HTTPError as error:
        with error:
            return error.code, json.load(error)


def main(address, contract_path):
    with open(contract_path, encoding="utf-8") as file:
        schemas = json.load(file)["components"]["schemas"]

    def words(schema):
        return schemas[schema]["properties"]["verdict"]["enum"]

    status, layout = call(address, "/v1/examples/raid-pickup")
    check("an example is given", status == 200, status)
    nozzles = [point["id"] for point in layout["points"] if point["kind"] == "nozzle"]

    status, flow = call(address, "/v1/flow", layout)
    check("a flow is answered", status == 200, status)
    check("every nozzle is answered", sorted(n["id"] for n in flow["nozzles"]) == sorted(nozzles), flow["nozzles"])
    total = sum(n["share"] for n in flow["nozzles"])
    check("shares add up to 1", abs(total - 1) <= SHARE_SUM_TOLERANCE, total)
    check("the flow's verdict is a word of the contract", flow["verdict"] in words("FlowAnswer"), flow["verdict"])

    status, whole = call(address, "/v1/check?today=2026-11-25", layout)
    check("the whole check is answered", status == 200, status)
    check("the check's verdict is a word of the contract", whole["verdict"] in words("CheckAnswer"), whole["verdict"])

    variants = [{"name": "feed in R11", "set": {"runs/R11/tube": "feed"}}]
    status, compared = call(address, "/v1/compare", {"layout": layout, "variants": variants})
    check("a comparison is answered", status == 200, status)
    check("the layout and its variant are compared", len(compared["answers"]) == 2, compared["ranking"])
    verdicts = [answer["verdict"] for answer in compared["answers"]]
    known = schemas["VariantAnswer"]["properties"]["verdict"]["enum"]
    check("verdicts of the comparison are words of the contract", all(verdict in known for verdict in verdicts), verdicts)

    run = layout["runs"][0]
    wrong = {**layout, "runs": [{**run, "from": "nowhere"}, *layout["runs"][1:]]}
    status, problem = call(address, "/v1/flow", wrong)
    check("a run from nowhere is refused", status == 422, status)
    check("the fault points at the run", "/runs/0/from" in problem["errors"], problem)


if len(sys.argv) != 3:
    sys.exit(__doc__)
main(*sys.argv[1:])
print(f"{passed} passed, {failed} failed")
sys.exit(failed > 0)
