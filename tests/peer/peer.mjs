import { readFile, readdir } from "node:fs/promises";
import { basename, join } from "node:path";
import { fileURLToPath } from "node:url";
import { EpanetTree, engineVersion, tightest } from "./epanet.mjs";
import { compareExchanged } from "./exchange.mjs";
import { layoutOf, treeOf } from "./layout.mjs";
import { withService } from "./service.mjs";
import { handmadeTrees, randomTree } from "./trees.mjs";

const usage = `usage: node peer.mjs [<address of a running service>] [options]
       node peer.mjs run [<path to FlowCalc.Api.dll>] [options]
Without an address, FLOWCALC_URL is asked for it; without a path, the Release build of this tree is started.
  --count <number>    random trees, 220
  --seed <number>     seed of the first one, 1
  --layouts <folder>  also the plain-….json that the benchmarks write there`;

// The engine's Swamee-Jain friction factor is within 1 % of Colebrook and White's over most of its range and within 3 % at its edges
// (Swamee, Jain, J. Hydraul. Div. ASCE 102 (1976) 657-664); where a tube takes half the pressure that is a quarter of it in the flow.
const nozzleTolerance = 0.015;
const totalTolerance = 0.005;

/** What both sides say about one tree: { ok, text, nozzle, total, reynolds, pressure }. */
async function compare(address, tree) {
  const engine = new EpanetTree(tree, tightest);
  try {
    engine.solve();
    engine.ending();
    const theirs = engine.flows();
    const ours = await flowsOf(address, tree);
    if (ours.nozzles.size !== theirs.nozzles.size) throw new Error(`${ours.nozzles.size} nozzles are answered of ${theirs.nozzles.size}`);
    let worst = { id: "", deviation: 0 };
    for (const [id, flow] of theirs.nozzles) {
      const deviation = ours.nozzles.get(id) / flow - 1;
      if (!Number.isFinite(deviation)) throw new Error(`nozzle ${id} has no flow in the answer`);
      if (Math.abs(deviation) >= Math.abs(worst.deviation)) worst = { id, deviation };
    }
    const total = ours.total / theirs.total - 1;
    const ok = Math.abs(worst.deviation) <= nozzleTolerance && Math.abs(total) <= totalTolerance;
    const text = `${tree.points.length} points, ${theirs.nozzles.size} nozzles: total ${percent(total)}, worst nozzle ${worst.id} ${percent(worst.deviation)}`;
    return { ok, text, nozzle: worst.deviation, total, reynolds: theirs.leastReynolds, pressure: theirs.leastPressure };
  } finally {
    engine.close();
  }
}

async function flowsOf(address, tree) {
  const response = await fetch(new URL("/v1/flow?units=si", address), {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify(layoutOf(tree)),
  });
  if (!response.ok) throw new Error(`the service answers ${response.status}: ${(await response.text()).slice(0, 500)}`);
  const answer = await response.json();
  return { total: flow(answer.supply.volumeFlow), nozzles: new Map(answer.nozzles.map((nozzle) => [nozzle.id, flow(nozzle.volumeFlow)])) };
}

function flow({ value, unit }) {
  if (unit !== "m3/s") throw new Error(`a flow is answered in ${unit}, not in m3/s`);
  return value;
}

const percent = (part) => `${(100 * part).toFixed(4)} %`;

async function written(folder) {
  const files = (await readdir(folder)).filter((file) => /^plain-\d+\.json$/.test(file));
  if (files.length === 0) throw new Error(`There is no plain-….json in ${folder}.`);
  return Promise.all(files.map(async (file) => treeOf(basename(file, ".json"), JSON.parse(await readFile(join(folder, file), "utf8")))));
}

async function compareAll(address, { count, seed, layouts }) {
  console.log(`EPANET engine ${engineVersion}, random seeds ${seed} to ${seed + count - 1}`);
  const trees = [...handmadeTrees(), ...(layouts ? await written(layouts) : []), ...Array.from({ length: count }, (_, i) => randomTree(seed + i))];
  const seen = { nozzle: 0, total: 0, reynolds: Infinity, pressure: Infinity };
  let [passed, failed] = [0, 0];
  for (const tree of trees) {
    // A tree that cannot be compared is a failed one; the reason is printed and the others still run.
    const result = await compare(address, tree).catch((error) => ({ ok: false, text: `${error.message} (${error.cause?.message ?? "no cause"})` }));
    console.log(`${result.ok ? "ok  " : "FAIL"} ${tree.name}: ${result.text}`);
    if (result.ok) passed++; else failed++;
    seen.nozzle = Math.max(seen.nozzle, Math.abs(result.nozzle ?? 0));
    seen.total = Math.max(seen.total, Math.abs(result.total ?? 0));
    seen.reynolds = Math.min(seen.reynolds, result.reynolds ?? Infinity);
    seen.pressure = Math.min(seen.pressure, result.pressure ?? Infinity);
  }
  const { examples } = await (await fetch(new URL("/v1/examples", address))).json();
  for (const { name } of examples) {
    const result = await compareExchanged(address, name).catch((error) => ({ ok: false, text: error.message }));
    console.log(`${result.ok ? "ok  " : "FAIL"} exchanged ${name}: ${result.text}`);
    if (result.ok) passed++; else failed++;
  }
  console.log(`worst nozzle ${percent(seen.nozzle)} of ${percent(nozzleTolerance)}, worst total ${percent(seen.total)} of ${percent(totalTolerance)}`);
  console.log(`least Reynolds number ${seen.reynolds.toFixed(0)}, least nozzle pressure ${percent(seen.pressure)} of the supply's`);
  console.log(`${passed} passed, ${failed} failed`);
  return failed === 0 && passed === trees.length + examples.length && passed > count;
}

function read(words) {
  const options = { count: 220, seed: 1, layouts: null, words: [] };
  for (let i = 0; i < words.length; i++) {
    const name = words[i].startsWith("--") ? words[i].slice(2) : "words";
    if (name === "words") options.words.push(words[i]);
    else if (name === "layouts" && words[i + 1]) options.layouts = words[++i];
    else if ((name === "count" || name === "seed") && /^[1-9]\d{0,5}$/.test(words[i + 1] ?? "")) options[name] = Number(words[++i]);
    else return null;
  }
  return options;
}

const options = read(process.argv.slice(2));
const [first = process.env.FLOWCALC_URL, library, ...rest] = options?.words ?? [];
const built = fileURLToPath(new URL("../../src/FlowCalc.Api/bin/Release/net10.0/FlowCalc.Api.dll", import.meta.url));
let ok;
if (options && first === "run" && rest.length === 0) ok = await withService(library ?? built, (address) => compareAll(address, options));
else if (options && first && first !== "run" && !library) ok = await compareAll(first, options);
else {
  console.error(usage);
  process.exit(2);
}
process.exitCode = ok ? 0 : 1;
