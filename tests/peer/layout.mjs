/** A tree as a layout document. */
export function layoutOf(tree) {
  return {
    format: 1,
    title: tree.name,
    agent: { density: `${tree.density} kg/m3`, viscosity: `${tree.viscosity * 1e3} mPa·s` },
    ambientPressure: "1.01325 bara",
    supply: { pressure: `${tree.pressure / 1e5} bar` },
    points: tree.points.map((point, j) => ({ id: `P${j}`, ...kindOf(point, j) })),
    runs: tree.points.slice(1).map((point, i) => ({
      id: `R${i + 1}`,
      from: `P${point.above}`,
      to: `P${i + 1}`,
      bore: `${point.bore * 1e3} mm`,
      roughness: `${point.roughness * 1e6} µm`,
      length: `${point.length} m`,
      rise: `${point.rise} m`,
      lossCoefficient: point.lossCoefficient,
    })),
  };
}

function kindOf({ nozzle }, j) {
  if (j === 0) return { kind: "supply" };
  if (!nozzle) return { kind: "junction" };
  return "kFactor" in nozzle
    ? { kind: "nozzle", kFactor: `${nozzle.kFactor} L/min/bar^0.5` }
    : { kind: "nozzle", orifice: { diameter: `${nozzle.diameter * 1e3} mm`, dischargeCoefficient: nozzle.dischargeCoefficient } };
}

/**
 * The tree of a layout document that holds the agent "water" at 20 °C, a held supply, junctions, and nozzles given as orifices: what the
 * benchmarks write. Anything else throws.
 */
export function treeOf(name, layout) {
  if (layout.agent !== "water" || layout.temperature !== "20 °C") throw new Error(`${name}: water at 20 °C is expected.`);
  const places = new Map(layout.points.map((point, j) => [point.id, j]));
  const points = layout.points.map(({ id, kind, orifice }) => {
    if (kind === "supply" || kind === "junction") return {};
    if (kind !== "nozzle" || !orifice) throw new Error(`${name}: ${id} is neither a junction nor a nozzle with an orifice.`);
    return { nozzle: { diameter: si(orifice.diameter), dischargeCoefficient: orifice.dischargeCoefficient } };
  });
  if (layout.points[0].kind !== "supply") throw new Error(`${name}: the first point is not the supply.`);
  for (const { id, from, to, bore, roughness, length, lossCoefficient, ...others } of layout.runs) {
    if (Object.keys(others).length > 0) throw new Error(`${name}: ${id} has ${Object.keys(others)}, which this reader does not know.`);
    Object.assign(points[places.get(to)], { above: places.get(from), bore: si(bore), roughness: si(roughness), length: si(length), lossCoefficient, rise: 0 });
  }
  // Water at 20 °C and 1 atm: density of IAPWS-95, viscosity of the IAPWS formulation of 2008 (1.0016 mPa·s).
  return { name, pressure: si(layout.supply.pressure), density: 998.2, viscosity: 1.0016e-3, points };
}

const factors = { m: 1, mm: 1e-3, µm: 1e-6, bar: 1e5 };

function si(text) {
  const [value, unit] = text.split(" ");
  const read = Number(value) * (factors[unit] ?? NaN);
  if (!Number.isFinite(read)) throw new Error(`"${text}" is not a number with one of the units ${Object.keys(factors)}.`);
  return read;
}
