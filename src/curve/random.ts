import { normalPoint } from "./distributions.ts";

/** A source of uniform numbers in [0, 1). */
export type Random = () => number;

/** A seeded uniform generator (the 32-bit mulberry step): the same seed gives the same draws everywhere. */
export function seededRandom(seed: number): Random {
  let state = Math.imul(seed | 0, 0x9e3779b1) ^ (seed > 0xffffffff ? Math.floor(seed / 0x100000000) : 0);
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/** Standard normal draws from a uniform source. */
export function normalFrom(random: Random): () => number {
  return () => normalPoint(Math.min(1 - 1e-12, Math.max(1e-12, random())));
}
