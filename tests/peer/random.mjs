/**
 * A seeded source of random numbers (mulberry32, T. Ettinger 2017, public domain), so that a tree that fails can be made again.
 * @param {number} seed 32-bit integer.
 */
export function randomOf(seed) {
  let state = seed >>> 0;
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  return {
    /** A number from low to high. */
    between: (low, high) => low + (high - low) * next(),
    /** A whole number from 0 to count - 1. */
    below: (count) => Math.floor(count * next()),
    /** True in the given part of all calls. */
    chance: (part) => next() < part,
  };
}
