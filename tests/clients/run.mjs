import { spawn } from "node:child_process";
import { fileURLToPath } from "node:url";
import { withService } from "../peer/service.mjs";

// Starts the built service, runs every client against it, and ends with their sum: "N passed, N failed".
const place = (path) => fileURLToPath(new URL(path, import.meta.url));
const library = place("../../src/FlowCalc.Api/bin/Release/net10.0/FlowCalc.Api.dll");
const contract = place("../../src/FlowCalc.Api/openapi/v1.json");

const clients = [{ name: "python", command: (address) => ["python3", place("python/client.py"), address, contract] }];

/** What a client counted; one that ends badly without a counted failure, or counts nothing, is a failure of its own. */
async function run({ name, command }, address) {
  const [program, ...words] = command(address);
  const client = spawn(program, words, { stdio: ["ignore", "pipe", "inherit"], timeout: 120_000 });
  let text = "";
  client.stdout.setEncoding("utf8").on("data", (part) => (text += part));
  const code = await new Promise((resolve) => client.once("error", (error) => resolve(error.message)).once("close", resolve));
  process.stdout.write(`${name}:\n${text}`);
  const counts = [...text.matchAll(/^(\d+) passed, (\d+) failed$/gm)].at(-1);
  let [passed, failed] = counts ? [Number(counts[1]), Number(counts[2])] : [0, 0];
  if (passed + failed === 0 || (code !== 0 && failed === 0)) {
    console.log(`FAIL ${name}: it ended with ${code}`);
    failed += 1;
  }
  return { passed, failed };
}

const sums = await withService(library, async (address) => {
  const all = [];
  for (const client of clients) all.push(await run(client, address));
  return all;
});
const [passed, failed] = ["passed", "failed"].map((kind) => sums.reduce((sum, one) => sum + one[kind], 0));
console.log(`${passed} passed, ${failed} failed`);
process.exitCode = failed > 0 ? 1 : 0;
