import createClient from "openapi-fetch";
import {
  checkAnswerVerdictValues as checkWords,
  flowAnswerVerdictValues as flowWords,
  variantAnswerVerdictValues as variantWords,
  type components,
  type paths,
} from "./generated/contract.js";

// Calls a running FlowCalc through types that are generated from its contract, and checks what comes back.
// usage: node generated/program/client.js <address of a running service>. Ends with "N passed, N failed".

type Layout = components["schemas"]["LayoutDocument"];

declare const process: { argv: string[]; exitCode?: number };

// Shares are written in full; their sum is off by rounding alone.
const shareSumTolerance = 1e-9;

let passed = 0;
let failed = 0;

function check(name: string, holds: boolean, seen: unknown) {
  if (holds) passed += 1;
  else {
    failed += 1;
    console.log(`FAIL ${name}: ${JSON.stringify(seen)}`);
  }
}

const has = (words: readonly string[], word: string | undefined) => word !== undefined && words.includes(word);

async function run(address: string) {
  const service = createClient<paths>({ baseUrl: address });

  const example = await service.GET("/v1/examples/{name}", { params: { path: { name: "raid-pickup" } } });
  check("an example is given", example.data !== undefined, example.error);
  if (!example.data) return;
  const layout = example.data;
  const nozzles = layout.points.filter((point) => point.kind === "nozzle").map((point) => point.id);

  const flow = await service.POST("/v1/flow", { body: layout });
  check("a flow is answered", flow.data !== undefined, flow.error);
  const answered = flow.data?.nozzles.map((nozzle) => nozzle.id) ?? [];
  check("every nozzle is answered", nozzles.length > 0 && nozzles.sort().join() === answered.sort().join(), answered);
  const total = flow.data?.nozzles.reduce((sum, nozzle) => sum + nozzle.share, 0) ?? NaN;
  check("shares add up to 1", Math.abs(total - 1) <= shareSumTolerance, total);
  check("the flow's verdict is a word of the contract", has(flowWords, flow.data?.verdict), flow.data?.verdict);

  const whole = await service.POST("/v1/check", { body: layout, params: { query: { today: "2026-11-25" } } });
  check("the whole check is answered", whole.data !== undefined, whole.error);
  check("the check's verdict is a word of the contract", has(checkWords, whole.data?.verdict), whole.data?.verdict);

  const compared = await service.POST("/v1/compare", { body: { layout, variants: [{ name: "feed in R11", set: { "runs/R11/tube": "feed" } }] } });
  const answers = compared.data?.answers ?? [];
  check("a comparison is answered", compared.data !== undefined, compared.error);
  check("the layout and its variant are compared", answers.length === 2, compared.data?.ranking);
  check("verdicts of the comparison are words of the contract", answers.every((answer) => has(variantWords, answer.verdict)), answers.map((answer) => answer.verdict));

  const [first, ...others] = layout.runs;
  const wrong: Layout = { ...layout, runs: first ? [{ ...first, from: "nowhere" }, ...others] : [] };
  const refused = await service.POST("/v1/flow", { body: wrong });
  check("a run from nowhere is refused", refused.response.status === 422, refused.response.status);
  check("the fault points at the run", "/runs/0/from" in (refused.error?.errors ?? {}), refused.error);
}

// What the compiler has to refuse, or the types would be worth nothing.
export const refusedByTheCompiler = (service: ReturnType<typeof createClient<paths>>, layout: Layout) => [
  // @ts-expect-error No such call.
  service.POST("/v1/flows", { body: layout }),
  // @ts-expect-error A layout has points.
  service.POST("/v1/flow", { body: { format: 1, agent: "water", supply: {}, runs: [] } }),
  // @ts-expect-error A pressure carries its unit: a bare number is none.
  service.POST("/v1/flow", { body: { ...layout, supply: { pressure: 12 } } }),
  // @ts-expect-error No such word.
  service.POST("/v1/flow", { body: layout, params: { query: { units: "imperial" } } }),
];

const address = process.argv[2];
if (process.argv.length !== 3 || !address) throw new Error("usage: node generated/program/client.js <address of a running service>");
await run(address);
console.log(`${passed} passed, ${failed} failed`);
if (failed > 0) process.exitCode = 1;
