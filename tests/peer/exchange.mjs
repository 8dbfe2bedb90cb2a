import { InitHydOption, LinkProperty, NodeProperty, Project } from "epanet-js";
import { workspace } from "./epanet.mjs";

// Friction is the engine's own, within some per cent of ours (see peer.mjs); all other losses of a run are frozen in the file.
const nozzleTolerance = 0.005;
const pressureTolerance = 0.01;

const engineGravity = 32.2 * 0.3048;

/** The table of our own flow, a row as an object by the columns' names. */
function rowsOf(table) {
  const [names, ...rows] = table.replace(/^\uFEFF/, "").trimEnd().split("\r\n").map((line) => line.split(","));
  return rows.map((row) => Object.fromEntries(names.map((name, i) => [name, row[i]])));
}

async function posted(address, call, document) {
  const response = await fetch(new URL(call, address), { method: "POST", headers: { "content-type": "application/json" }, body: document });
  return { status: response.status, text: await response.text() };
}

/** Lets the engine read the file that the service writes for an example, and holds its flows and pressures against the service's own table. */
export async function compareExchanged(address, name) {
  const document = await (await fetch(new URL(`/v1/examples/${name}`, address))).text();
  const [file, table] = [await posted(address, "/v1/exchange", document), await posted(address, "/v1/exchange?format=csv&units=si", document)];
  if (table.status !== 200) throw new Error(`the table is answered ${table.status}`);
  if (file.status === 422 && /is no liquid/.test(file.text)) return { ok: true, text: "no liquid, which the service says" };
  if (file.status !== 200) throw new Error(`the file is answered ${file.status}: ${file.text.slice(0, 300)}`);

  const density = await densityOf(address, document);
  workspace.writeFile("exchanged.inp", file.text);
  const model = new Project(workspace);
  model.open("exchanged.inp", "exchanged.rpt", "exchanged.out");
  try {
    model.openH();
    model.initH(InitHydOption.InitFlow);
    model.runH();
    const rows = rowsOf(table.text);
    let [worstFlow, worstPressure] = [0, 0];
    const runs = rows.filter((row) => row.kind === "run");
    for (const row of runs) {
      const theirs = model.getLinkValue(model.getLinkIndex(row.name_in_file), LinkProperty.Flow) / 1e3;
      worstFlow = Math.max(worstFlow, Math.abs(Number(row.volume_flow_m3_s) / theirs - 1));
    }
    const nozzles = rows.filter((row) => row.kind === "nozzle");
    for (const row of nozzles) {
      const theirs = model.getNodeValue(model.getNodeIndex(row.name_in_file), NodeProperty.Pressure) * density * engineGravity;
      worstPressure = Math.max(worstPressure, Math.abs(Number(row.pressure_Pa) / theirs - 1));
    }
    model.closeH();
    const ok = runs.length > 0 && nozzles.length > 0 && worstFlow <= nozzleTolerance && worstPressure <= pressureTolerance;
    return { ok, text: `${runs.length} runs, ${nozzles.length} nozzles as an input file: worst flow ${(100 * worstFlow).toFixed(3)} %, worst nozzle pressure ${(100 * worstPressure).toFixed(3)} %` };
  } finally {
    model.close();
  }
}

// Mass flow over volume flow of the supply.
async function densityOf(address, document) {
  const { text } = await posted(address, "/v1/flow?units=si", document);
  const { massFlow, volumeFlow } = JSON.parse(text).supply;
  return massFlow.value / volumeFlow.value;
}
