"""Runs the tests against every mutant: mutants.py WORK [FOLDER …], with the mutation tool in WORK/tool.

The tool writes the mutants, all of them into one assembly, and lists them; each is then tried in a process of its own. The tool's own runner
keeps one process for all: what is worked out once, such as the table of units, would stay that of the first mutant. Stops at the first failing
test, quick classes before slow ones. Prints survivors as they come and a count for each folder; ends with 0 whatever survives.
"""
import collections
import json
import os
import re
import shutil
import signal
import subprocess
import sys
import time

TESTS = "FlowCalc.Tests."
# Classes by folder, in the order in which they are run; a mutant survives if all let it through.
STAGES = {
    "Quantities": [["Quantities.*"], ["Properties.QuantitiesRoundTripTests", "Published.QuantitiesExactFactorsTests", "Peers.QuantitiesUnitsNetTests"]],
    "Losses": [["ClosedForms.Losses.*", "Published.Losses.*"], ["Properties.Losses.*", "Peers.Losses.*"]],
    "Networks": [["ClosedForms.Networks.*", "Properties.Networks.LossSweepLawTests"],
                 ["Networks.*", "Properties.Networks.SteadySolverLawTests", "Properties.Networks.QuasiSteadyLawTests"],
                 ["Properties.Networks.Compressible*"]],
}
# A mutant that takes so many times as long as the tests alone, and some seconds, never ends.
TIMES, SECONDS = 6, 20


def make(work):
    """Has the tool write the mutants; gives the folder of the tests with the mutated assembly, and the tool's report."""
    built, kept, log = "FlowCalc.Tests/bin/Release/net10.0", os.path.join(work, "tests"), []
    command = [os.path.join(work, "tool", "dotnet-stryker"), "--skip-version-check", "-O", work]
    # It puts the true assembly back at its end, so that the mutated one is copied as soon as the first mutant is tried.
    with subprocess.Popen(command, cwd="FlowCalc.Tests", stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True) as tool:
        for line in tool.stdout:
            log.append(line)
            if "total mutants will be tested" in line:
                shutil.copytree(built, kept, dirs_exist_ok=True)
    if tool.returncode or not os.path.isdir(kept):
        sys.exit("".join(log))
    with open(os.path.join(work, "reports", "mutation-report.json"), encoding="utf-8") as report:
        return kept, json.load(report)


def tried(kept, mutant, classes, seconds):
    """Runs some classes with a mutant active (None for none), for so many seconds at most."""
    filters = [part for name in classes for part in ("-class", TESTS + name)]
    environment = dict(os.environ, STRYKER_MUTANT_ID_CONTROL_VAR="FLOWCALC_MUTANT", FLOWCALC_MUTANT=mutant or "")
    run = subprocess.Popen(["./FlowCalc.Tests", "-noColor", "-noLogo", "-stopOnFail", *filters], cwd=kept, env=environment,
                           stdout=subprocess.PIPE, stderr=subprocess.STDOUT, start_new_session=True)
    try:
        output = run.communicate(timeout=seconds)[0].decode(errors="replace")
    except subprocess.TimeoutExpired:
        os.killpg(run.pid, signal.SIGKILL)
        run.communicate()
        return "timed out"
    if run.returncode:
        return "killed"
    if not re.search(r"Total: [1-9]\d*, Errors: 0, Failed: 0", output):
        sys.exit("No test was run:\n" + output)
    return "survived"


def main():
    work, folders = sys.argv[1], sys.argv[2:] or list(STAGES)
    kept, report = make(work)
    limits = {}
    for folder in folders:
        for number, stage in enumerate(STAGES[folder]):
            start = time.monotonic()
            if tried(kept, None, stage, 1800) != "survived":
                sys.exit(f"The tests of {folder} fail without a mutant.")
            limits[folder, number] = TIMES * (time.monotonic() - start) + SECONDS
    counts = {folder: collections.Counter() for folder in folders}
    for path, file in report["files"].items():
        folder, name = path.split("src/FlowCalc/")[1].split("/", 1)
        if folder not in folders:
            continue
        for mutant in file["mutants"]:
            if mutant["status"] in ("CompileError", "Ignored"):
                counts[folder]["not compiled" if mutant["status"] == "CompileError" else "within another"] += 1
                continue
            runs = (tried(kept, mutant["id"], stage, limits[folder, number]) for number, stage in enumerate(STAGES[folder]))
            outcome = next((seen for seen in runs if seen != "survived"), "survived")
            counts[folder][outcome] += 1
            if outcome != "killed":
                start = mutant["location"]["start"]
                print(f"{outcome}: {folder}/{name}({start['line']},{start['column']}): {mutant['mutatorName']}: {mutant['replacement']}", flush=True)
    for folder, count in counts.items():
        noticed, all_tried = count["killed"] + count["timed out"], count["killed"] + count["timed out"] + count["survived"]
        print(f"{folder}: {noticed} of {all_tried} noticed ({100 * noticed / max(all_tried, 1):.1f} %); {dict(count)}")


main()
