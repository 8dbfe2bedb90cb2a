"""Looks into the packages FlowCalc and FlowCalc.Cli: what they say of themselves, and that documentation and symbols belong to the library.

Usage: look.py FOLDER VERSION. Ends with 1 and a line for each thing that is not as it should be.
"""

import os
import re
import sys
import xml.etree.ElementTree as xml
import zipfile
import zlib
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


def stream(symbols, name):
    """A stream of a portable PDB, by the headers after its version (ECMA-335 II.24.2.1); empty where there is none."""
    at = 16 + int.from_bytes(symbols[12:16], "little")
    count, at = int.from_bytes(symbols[at + 2 : at + 4], "little"), at + 4
    for _ in range(count):
        start, size = (int.from_bytes(symbols[at + part : at + part + 4], "little") for part in (0, 4))
        end = symbols.index(b"\0", at + 8)
        if symbols[at + 8 : end].decode() == name:
            return symbols[start : start + size]
        at = at + 8 + (end - at - 8) // 4 * 4 + 4
    return b""


def sources(blobs):
    """Every blob that is an embedded source: its size in four bytes, 0 for plain, else the text deflated (portable PDB, Embedded Source)."""
    at = 0
    while at < len(blobs):
        first = blobs[at]
        width = 1 if first < 0x80 else 2 if first < 0xC0 else 4
        length = int.from_bytes(blobs[at : at + width], "big") & (0x7F, 0x3FFF, 0, 0x1FFFFFFF)[width - 1]
        blob, at = blobs[at + width : at + width + length], at + width + length
        size = int.from_bytes(blob[:4], "little")
        if len(blob) > 4 and size == 0:
            yield blob[4:]
        elif len(blob) > 4 and size < 1 << 20:
            try:
                text = zlib.decompress(blob[4:], wbits=-15)
            except zlib.error:
                continue  # A blob of another kind, of which the heap does not say so.
            if len(text) == size:
                yield text


files, said, space = described("FlowCalc")
library, words = files.get("lib/net10.0/FlowCalc.dll", b""), files.get("lib/net10.0/FlowCalc.xml", b"")
depends = {one.get("id") for one in said["dependencies"].iter(f"{space}dependency")}
holds(depends == {"MathNet.Numerics", "Silk.NET.Maths", "UnitsNet"}, f"FlowCalc: depends on {sorted(depends)}")
documented = {member.get("name"): "".join(member.itertext()).strip() for member in xml.fromstring(words).iter("member")}
for member in ("T:FlowCalc.Flows.SteadyFlow", "T:FlowCalc.Layouts.LayoutReader", "P:FlowCalc.Flows.NozzleFlow.Deviation"):
    holds(documented.get(member), f"FlowCalc: {member} is not documented")

with zipfile.ZipFile(FOLDER / f"FlowCalc.{VERSION}.snupkg") as symbols:
    pdb = symbols.read("lib/net10.0/FlowCalc.pdb") if "lib/net10.0/FlowCalc.pdb" in symbols.namelist() else b""
holds(pdb[:4] == b"BSJB", "FlowCalc: no portable symbols")
# The stream starts with the id that the library's debug directory names after "RSDS".
holds(b"RSDS" + stream(pdb, "#Pdb")[:16] in library, "FlowCalc: the symbols are of another build")
carried = set(sources(stream(pdb, "#Blob")))
source = ROOT / "src" / "FlowCalc"
files = [file for file in source.rglob("*.cs") if file.relative_to(source).parts[0] not in ("bin", "obj")]
missing = [file.name for file in files if file.read_bytes() not in carried]
holds(files and not missing, f"FlowCalc: the symbols lack {len(missing)} of {len(files)} sources, such as {missing[:3]}")
if os.environ.get("CI") == "true":
    for place, content in (("library", library), ("documentation", words)):
        holds(str(ROOT).encode() not in content, f"FlowCalc: the {place} names this folder")

described("FlowCalc.Cli")

for fault in faults:
    print(f"FAIL {fault}")
print(f"packages {VERSION}: {'as they should be' if not faults else f'{len(faults)} faults'}")
sys.exit(1 if faults else 0)
