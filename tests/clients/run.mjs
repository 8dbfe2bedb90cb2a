import { spawn } from "node:child_process";
import { fileURLToPath } from "node:url";
import { withService } from "../peer/service.mjs";

// Makes the clients of every language from the kept contract, starts the built service, runs every client against it, and ends with their
// sum: "N passed, N failed". Needs `npm ci` in typescript, and `dotnet tool restore` in csharp.
const place = (path) => fileURLToPath(new URL(path, import.meta.url));
const library = place("../../src/FlowCalc.Api/bin/Release/net10.0/FlowCalc.Api.dll");
const contract = place("../../src/FlowCalc.Api/openapi/v1.json");

const json = "Microsoft.Kiota.Serialization.Json.Json", text = "Microsoft.Kiota.Serialization.Text.Text";
// Warnings are of unions without a discriminator, which text beside an object does not need; the program checks that nothing is lost.
const kiota = [
  "dotnet", "kiota", "generate", "--language", "CSharp", "--openapi", contract, "--output", "generated", "--clean-output", "--log-level", "Error",
  "--class-name", "FlowCalcClient", "--namespace-name", "FlowCalc.Client", "--exclude-backward-compatible",
  "--serializer", `${json}SerializationWriterFactory`, "--serializer", `${text}SerializationWriterFactory`,
  "--deserializer", `${json}ParseNodeFactory`, "--deserializer", `${text}ParseNodeFactory`,
];

const clients = [
  { name: "python", steps: [], command: (address) => ["python3", "client.py", address, contract] },
  {
    name: "typescript",
    steps: [["npm", "run", "--silent", "generate"], ["npm", "run", "--silent", "build"]],
    command: (address) => ["node", "generated/program/client.js", address],
  },
  {
    name: "csharp",
    steps: [kiota, ["dotnet", "build", "-c", "Release", "--nologo", "--verbosity", "quiet"]],
    command: (address) => ["dotnet", "bin/Release/net10.0/CSharpClient.dll", address],
  },
];

/** Runs a program in a client's folder; gives its output and what it ended with: a number, or why it did not start or was stopped. */
async function start(name, [program, ...words]) {
  const began = spawn(program, words, {
    cwd: place(`${name}/`),
    env: { ...process.env, KIOTA_OFFLINE_ENABLED: "true", KIOTA_TUTORIAL_ENABLED: "false", DOTNET_NOLOGO: "1" },
    stdio: ["ignore", "pipe", "inherit"],
    timeout: 120_000,
  });
  let output = "";
  began.stdout.setEncoding("utf8").on("data", (part) => (output += part));
  const code = await new Promise((resolve) => began.once("error", (error) => resolve(error.message)).once("close", (number, signal) => resolve(number ?? signal)));
  return { output, code };
}

/** Makes a client; gives what went wrong, or null. */
async function make({ name, steps }) {
  for (const step of steps) {
    const { output, code } = await start(name, step);
    if (code !== 0) return `${output}FAIL ${name}: ${step.slice(0, 4).join(" ")} ended with ${code}`;
  }
  return null;
}

/** What a client counted; one that ends badly without a counted failure, or counts nothing, is a failure of its own. */
async function run({ name, command }, address) {
  const { output, code } = await start(name, command(address));
  process.stdout.write(`${name}:\n${output}`);
  const counts = [...output.matchAll(/^(\d+) passed, (\d+) failed\r?$/gm)].at(-1);
  let [passed, failed] = counts ? [Number(counts[1]), Number(counts[2])] : [0, 0];
  if (passed + failed === 0 || (code !== 0 && failed === 0)) {
    console.log(`FAIL ${name}: it ended with ${code}`);
    failed += 1;
  }
  return { passed, failed };
}

const faults = await Promise.all(clients.map(make));
for (const fault of faults.filter((fault) => fault)) console.log(fault);
const sums = [{ passed: 0, failed: faults.filter((fault) => fault).length }];
await withService(library, async (address) => {
  for (const client of clients.filter((_, at) => !faults[at])) sums.push(await run(client, address));
});
const [passed, failed] = ["passed", "failed"].map((kind) => sums.reduce((sum, one) => sum + one[kind], 0));
console.log(`${passed} passed, ${failed} failed`);
process.exitCode = failed > 0 ? 1 : 0;
