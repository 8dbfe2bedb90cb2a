import { randomOf } from "./random.mjs";

/*
 * A tree: { name, pressure, density, viscosity, points }, SI units, gauge pressure held at points[0], the supply. Every other point has the
 * run that feeds it: { above, bore, length, roughness, lossCoefficient, rise }, and where nothing leaves it a nozzle,
 * { kFactor } in L/min/bar^0.5 or { diameter, dischargeCoefficient }. No tees: the engine compared with knows no loss of a tee's split.
 */

/** A random tree with bores that grow with the nozzles behind them, so that most runs are turbulent. */
export function randomTree(seed) {
  const random = randomOf(seed);
  const count = Math.round(5 * Math.pow(100, random.between(0, 1)));
  const isLevel = random.chance(0.5);
  const hasKFactors = random.chance(0.5);
  const points = [{}];
  for (let j = 1; j < count; j++) points.push({ above: j === 1 ? 0 : 1 + random.below(j - 1) });
  const nozzles = nozzlesBehind(points);
  for (const [j, point] of points.entries()) {
    if (j === 0) continue;
    point.bore = 4e-3 * Math.pow(nozzles[j], 0.42) * random.between(0.9, 1.25);
    point.length = random.between(0.2, 2);
    point.roughness = random.chance(0.3) ? 1.5e-6 : random.between(1e-6, 4e-5);
    point.lossCoefficient = random.chance(0.3) ? 0 : random.between(0.1, 3);
    point.rise = isLevel ? 0 : point.length * random.between(-0.8, 0.8);
    if (!hasBelow(points, j)) {
      point.nozzle = hasKFactors
        ? { kFactor: random.between(0.6, 1.5) }
        : { diameter: random.between(1.1e-3, 1.8e-3), dischargeCoefficient: random.between(0.6, 0.98) };
    }
  }
  return {
    name: `random-${seed}`,
    pressure: random.between(6e5, 2e6),
    density: random.between(960, 1060),
    viscosity: random.between(0.6e-3, 1.4e-3),
    points,
  };
}

/** Trees made by hand, each for one thing. */
export function handmadeTrees() {
  const water = { density: 998.2, viscosity: 1.0016e-3 };
  const run = (above, bore, length, extra = {}) => ({ above, bore, length, roughness: 1.5e-6, lossCoefficient: 0, rise: 0, ...extra });
  const jet = (diameter) => ({ nozzle: { diameter, dischargeCoefficient: 0.82 } });
  return [
    { name: "one-run", pressure: 1e6, ...water, points: [{}, run(0, 6e-3, 5, jet(2e-3))] },
    {
      name: "series-of-bores",
      pressure: 1.2e6,
      ...water,
      points: [{}, run(0, 12e-3, 3), run(1, 8e-3, 2, { lossCoefficient: 0.4 }), run(2, 5e-3, 2), run(3, 10e-3, 1, { lossCoefficient: 1 }), run(4, 4e-3, 1.5, jet(1.8e-3))],
    },
    {
      name: "unequal-bores",
      pressure: 1.2e6,
      ...water,
      points: [{}, run(0, 16e-3, 2), run(1, 3e-3, 1.5, jet(1.2e-3)), run(1, 40e-3, 3), run(3, 4e-3, 1, jet(1.5e-3)), run(3, 20e-3, 4, { nozzle: { kFactor: 12 } })],
    },
    {
      name: "starved-by-friction",
      pressure: 1.5e6,
      ...water,
      points: [{}, run(0, 6e-3, 20), run(1, 4e-3, 10, jet(2.5e-3)), run(1, 4e-3, 1, jet(2.5e-3)), run(1, 5e-3, 30, { nozzle: { kFactor: 5 } })],
    },
    {
      name: "fully-rough",
      pressure: 2e6,
      ...water,
      points: [{}, run(0, 20e-3, 10, { roughness: 8e-4 }), run(1, 12e-3, 4, { roughness: 5e-4, nozzle: { kFactor: 20 } }), run(1, 12e-3, 8, { roughness: 5e-4, nozzle: { kFactor: 20 } })],
    },
    {
      name: "coefficients-rule",
      pressure: 8e5,
      ...water,
      points: [{}, run(0, 6e-3, 0.1, { lossCoefficient: 20 }), run(1, 4e-3, 0.1, { lossCoefficient: 40, ...jet(2e-3) }), run(1, 4e-3, 0.1, { lossCoefficient: 5, ...jet(2e-3) })],
    },
    {
      name: "up-and-down",
      pressure: 4e5,
      ...water,
      points: [{}, run(0, 10e-3, 6, { rise: 5 }), run(1, 6e-3, 12, { rise: 10, ...jet(2e-3) }), run(1, 6e-3, 12, { rise: -12, ...jet(2e-3) }), run(1, 6e-3, 3, jet(2e-3))],
    },
    // Reynolds numbers below 2 000 all through: both sides follow Hagen-Poiseuille there.
    {
      name: "laminar-oil",
      pressure: 6e5,
      density: 870,
      viscosity: 46e-3,
      points: [{}, run(0, 8e-3, 4), run(1, 5e-3, 2, jet(1.5e-3)), run(1, 5e-3, 6, jet(1.5e-3))],
    },
  ];
}

function nozzlesBehind(points) {
  const nozzles = new Array(points.length).fill(0);
  for (let j = points.length - 1; j > 0; j--) {
    if (nozzles[j] === 0) nozzles[j] = 1;
    nozzles[points[j].above] += nozzles[j];
  }
  return nozzles;
}

const hasBelow = (points, j) => points.some((point) => point.above === j);
