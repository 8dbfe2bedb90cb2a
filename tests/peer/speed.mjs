import { readFile } from "node:fs/promises";
import { performance } from "node:perf_hooks";
import { join } from "node:path";
import { EpanetTree } from "./epanet.mjs";
import { treeOf } from "./layout.mjs";

/*
 * Times the engine on the trees of the benchmarks. Timed is one cold hydraulic solve: initH (which resets the flows to the engine's first
 * guess) and runH. Reading the input, sizing the matrix and ordering it (open, openH) and reading the flows are left out, and the engine
 * stops at its own default accuracy, 0.001: looser than ours, so in its favour.
 */
const accuracy = 1e-3;
const sizes = [10, 100, 1_000, 10_000];

const [folder, ...others] = process.argv.slice(2);
if (!folder || others.length > 0) {
  console.error("usage: node speed.mjs <folder with plain-<points>.json>");
  process.exit(2);
}

for (const size of sizes) {
  const tree = treeOf(`plain-${size}`, JSON.parse(await readFile(join(folder, `plain-${size}.json`), "utf8")));
  if (tree.points.length !== size) throw new Error(`${tree.name} has ${tree.points.length} points.`);
  const engine = new EpanetTree(tree, accuracy);
  try {
    const microseconds = medianTime(() => engine.solve());
    // Throws where the last solve did not converge, a nozzle got nothing, or the flows do not add up.
    const { iterations, error } = engine.ending();
    const { nozzles, total } = engine.flows();
    console.error(`plain-${size}: ${nozzles.size} nozzles, ${(60_000 * total).toPrecision(6)} L/min, ${iterations} iterations, relative error ${error.toExponential(1)}`);
    console.log(`epanet-js-${size} ${microseconds.toPrecision(5)} us`);
  } finally {
    engine.close();
  }
}

/** Median time of one call in microseconds, over 15 samples and 0.5 s, or 15 calls where those take longer, after a warm-up of 0.5 s. */
function medianTime(action) {
  let calls = 0;
  for (const start = performance.now(); performance.now() - start < 500; calls++) action();
  const perSample = Math.max(1, Math.floor(calls / 15));
  const samples = Array.from({ length: 15 }, () => {
    const start = performance.now();
    for (let i = 0; i < perSample; i++) action();
    return ((performance.now() - start) * 1e3) / perSample;
  });
  return samples.sort((a, b) => a - b)[7];
}
