import { AnalysisStatistic, CountType, InitHydOption, LinkProperty, NodeProperty, Option, Project, Workspace } from "epanet-js";

/*
 * The EPANET engine (Rossman, Woo, Tryby, Shang, Janke, Haxton: EPANET 2.2 User Manual, EPA/600/R-20/133, 2020) on a tree. It works in
 * heads, with g = 32.2 ft/s²; pressures become heads with that same g, so that losses and nozzle flows mean the same pressures on both
 * sides. Heights are scaled to cost what they cost at standard gravity. Its friction factor is Swamee and Jain's above a Reynolds number
 * of 4 000, Hagen and Poiseuille's below 2 000 and a cubic between; ours is not, which is what the tolerances allow for.
 */
const engineGravity = 32.2 * 0.3048;
const standardGravity = 9.80665;

export const workspace = new Workspace();
await workspace.loadModule();

/** The tightest that the engine takes: it would quietly clip a smaller one. */
export const tightest = 1e-5;

/** The engine's version, as it names itself: 20305 is 2.3.5. */
export const engineVersion = workspace.version;

/** A tree, read by the engine and ready to be solved as often as wanted. End it with close(). */
export class EpanetTree {
  #model = new Project(workspace);
  #tree;

  /** @param {number} accuracy Sum of flow changes over sum of flows at which the engine stops, 1e-5 to 1e-1. */
  constructor(tree, accuracy) {
    this.#tree = tree;
    this.accuracy = accuracy;
    workspace.writeFile("tree.inp", inputOf(tree, accuracy));
    this.#model.open("tree.inp", "tree.rpt", "tree.out");
    this.#model.openH();
    const taken = this.#model.getOption(Option.Accuracy);
    if (taken !== accuracy) throw new Error(`${tree.name}: the engine took an accuracy of ${taken}, not ${accuracy}.`);
    const links = this.#model.getCount(CountType.LinkCount);
    if (links !== tree.points.length - 1) throw new Error(`${tree.name}: the engine read ${links} runs of ${tree.points.length - 1}.`);
  }

  /** One solve from the engine's own first guess. Errors throw; warnings do not: see ending() and flows(). */
  solve() {
    this.#model.initH(InitHydOption.InitFlow);
    this.#model.runH();
  }

  /** How the last solve ended; throws where it did not converge. */
  ending() {
    const iterations = this.#model.getStatistic(AnalysisStatistic.Iterations);
    const error = this.#model.getStatistic(AnalysisStatistic.RelativeError);
    if (!(error <= this.accuracy)) throw new Error(`${this.#tree.name}: the engine stopped at a relative error of ${error}.`);
    return { iterations, error };
  }

  /**
   * Flows of the last solve in m³/s: nozzles by point, and what leaves the supply; the least Reynolds number of any run, and the least
   * pressure of a nozzle as a part of the supply's.
   */
  flows() {
    const flows = this.#model.getLinkValues(LinkProperty.Flow).map((litres) => litres / 1e3);
    const pressures = this.#model.getNodeValues(NodeProperty.Pressure);
    const nozzles = new Map();
    const held = pressureHead(this.#tree);
    let [leastReynolds, leastPressure] = [Infinity, Infinity];
    this.#tree.points.forEach((point, j) => {
      if (j === 0) return;
      const flow = flows[j - 1];
      leastReynolds = Math.min(leastReynolds, (4 * flow * this.#tree.density) / (Math.PI * point.bore * this.#tree.viscosity));
      if (!point.nozzle) return;
      // Junctions are listed before the reservoir, so point j is node j - 1.
      if (!(pressures[j - 1] > 0 && flow > 0)) throw new Error(`${this.#tree.name}: the engine gives nozzle P${j} nothing.`);
      nozzles.set(`P${j}`, flow);
      leastPressure = Math.min(leastPressure, pressures[j - 1] / held);
    });
    const total = [...nozzles.values()].reduce((sum, flow) => sum + flow, 0);
    if (!(Math.abs(total - flows[0]) <= 2 * this.accuracy * flows[0])) throw new Error(`${this.#tree.name}: ${flows[0]} m³/s go in, ${total} come out.`);
    return { nozzles, total, leastReynolds, leastPressure };
  }

  close() {
    this.#model.closeH();
    this.#model.close();
  }
}

/** Effective area of a nozzle, m²: a K-factor in L/min/bar^0.5 refers to 1 000 kg/m³. */
function effectiveArea(nozzle) {
  return "kFactor" in nozzle
    ? (nozzle.kFactor / 60_000 / Math.sqrt(1e5)) * Math.sqrt(1_000 / 2)
    : (nozzle.dischargeCoefficient * Math.PI * nozzle.diameter ** 2) / 4;
}

/** Head of the supply's pressure, m, as the engine counts. */
const pressureHead = ({ pressure, density }) => pressure / (density * engineGravity);

function inputOf(tree, accuracy) {
  const { density, viscosity, points } = tree;
  const heights = [0];
  const [junctions, pipes, emitters] = [[], [], []];
  // A run may come before the one that feeds it.
  const height = (j) => (heights[j] ??= height(points[j].above) + (points[j].rise * standardGravity) / engineGravity);
  points.forEach((point, j) => {
    if (j === 0) return;
    junctions.push(`P${j} ${height(j)} 0`);
    // Lengths in m; bores and roughnesses in mm.
    pipes.push(`R${j} P${point.above} P${j} ${point.length} ${point.bore * 1e3} ${point.roughness * 1e3} ${point.lossCoefficient} OPEN`);
    // L/s at a head of 1 m.
    if (point.nozzle) emitters.push(`P${j} ${effectiveArea(point.nozzle) * Math.sqrt(2 * engineGravity) * 1e3}`);
  });
  return [
    "[JUNCTIONS]", ...junctions,
    "[RESERVOIRS]", `P0 ${pressureHead(tree)}`,
    "[PIPES]", ...pipes,
    "[EMITTERS]", ...emitters,
    "[OPTIONS]", "UNITS LPS", "PRESSURE METERS", "HEADLOSS D-W", "SPECIFIC GRAVITY 1", "EMITTER EXPONENT 0.5",
    `VISCOSITY ${viscosity / density}`, "TRIALS 200", `ACCURACY ${accuracy}`, "UNBALANCED STOP",
    "[TIMES]", "DURATION 0",
    "[END]", "",
  ].join("\n");
}
