"""Looks into the packages FlowCalc and FlowCalc.Cli: what they say of themselves, and that documentation and symbols belong to the library.

Usage: look.py FOLDER VERSION. Ends with 1 and a line for each thing that is not as it should be.
"""

import os
import re
import sys
import uuid
import xml.etree.ElementTree as xml
import zipfile
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
FOLDER, VERSION = Path(sys.argv[1]), sys.argv[2]
faults = []


def holds(condition, what):
    if not condition:
        faults.append(what)


def described(name):
    """Checks readme, licence, tags and repository of a package; gives its files by name."""
    with zipfile.ZipFile(FOLDER / f"{name}.{VERSION}.nupkg") as package:
        files = {file: package.read(file) for file in package.namelist()}
    about = xml.fromstring(files[f"{name}.nuspec"])
    space = about.tag.partition("}")[0] + "}"
    metadata = about.find(f"{space}metadata")
    said = {part.tag.removeprefix(space): part for part in metadata}
    holds(said["license"].get("type") == "expression" and said["license"].text == "MIT", f"{name}: the licence is not the expression MIT")
    holds(said.get("readme") is not None and said["readme"].text == "README.md", f"{name}: no readme is named")
    readme = (ROOT / "src" / name / "README.md").read_bytes()
    holds(len(readme) > 500 and files.get("README.md") == readme, f"{name}: the readme is not in it")
    holds(len((said["tags"].text or "").split()) >= 3 if "tags" in said else False, f"{name}: no tags")
    holds(len(said["description"].text or "") > 40, f"{name}: no description")
    repository = said.get("repository")
    holds(repository is not None and repository.get("type") == "git" and re.fullmatch("[0-9a-f]{40}", repository.get("commit", "")), f"{name}: the commit is not named")
    holds(repository is None or not repository.get("url"), f"{name}: the address of a remote is in it")
    return files, said, space


files, said, space = described("FlowCalc")
library, words = files.get("lib/net10.0/FlowCalc.dll", b""), files.get("lib/net10.0/FlowCalc.xml", b"")
depends = {one.get("id") for one in said["dependencies"].iter(f"{space}dependency")}
holds(depends == {"MathNet.Numerics", "UnitsNet"}, f"FlowCalc: depends on {sorted(depends)}")
documented = {member.get("name"): "".join(member.itertext()).strip() for member in xml.fromstring(words).iter("member")}
for member in ("T:FlowCalc.Flows.SteadyFlow", "T:FlowCalc.Layouts.LayoutReader", "P:FlowCalc.Flows.NozzleFlow.Deviation"):
    holds(documented.get(member), f"FlowCalc: {member} is not documented")

with zipfile.ZipFile(FOLDER / f"FlowCalc.{VERSION}.snupkg") as symbols:
    pdb = symbols.read("lib/net10.0/FlowCalc.pdb") if "lib/net10.0/FlowCalc.pdb" in symbols.namelist() else b""
holds(pdb[:4] == b"BSJB", "FlowCalc: no portable symbols")
# Portable PDB: a header of the stream's offset and size before its name; the stream starts with the id that the library's debug directory names after "RSDS".
stream = pdb.find(b"#Pdb\0\0\0\0")
if stream >= 8:
    start = int.from_bytes(pdb[stream - 8 : stream - 4], "little")
    holds(b"RSDS" + pdb[start : start + 16] in library, "FlowCalc: the symbols are of another build")
else:
    faults.append("FlowCalc: the symbols have no id")
# The kind "Embedded Source" of the portable PDB format's CustomDebugInformation table.
holds(uuid.UUID("0E8A571B-6926-466E-B4AD-8AB04611F5FE").bytes_le in pdb, "FlowCalc: the symbols carry no sources")
if os.environ.get("CI") == "true":
    for place, content in (("library", library), ("documentation", words)):
        holds(str(ROOT).encode() not in content, f"FlowCalc: the {place} names this folder")

described("FlowCalc.Cli")

for fault in faults:
    print(f"FAIL {fault}")
print(f"packages {VERSION}: {'as they should be' if not faults else f'{len(faults)} faults'}")
sys.exit(1 if faults else 0)
