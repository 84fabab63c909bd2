import { seededRandom } from "../../src/curve/random.ts";

/** Seeded choices for the fuzz: the same seed tries the same inputs everywhere. */
export interface Chance {
  next(): number;
  /** a whole number from low to high, both included */
  whole(low: number, high: number): number;
  pick<T>(list: readonly T[]): T;
  odds(share: number): boolean;
}

export function chanceFrom(seed: number): Chance {
  const next = seededRandom(seed);
  const whole = (low: number, high: number) => low + Math.floor(next() * (high - low + 1));
  return {
    next,
    whole,
    pick: (list) => {
      if (list.length === 0) throw new Error("nothing to pick from");
      return list[whole(0, list.length - 1)]!;
    },
    odds: (share) => next() < share,
  };
}

/** What a run of fuzz counted, with the first few faults in words. */
export interface Tally {
  what: string;
  tried: number;
  accepted: number;
  refused: number;
  crashed: number;
  acceptedWrongly: number;
  faults: string[];
}

export function newTally(what: string): Tally {
  return { what, tried: 0, accepted: 0, refused: 0, crashed: 0, acceptedWrongly: 0, faults: [] };
}

const mostFaults = 12;

/** Takes a fault down; the words of the first dozen are kept. */
export function fault(tally: Tally, kind: "crashed" | "acceptedWrongly", words: string): void {
  tally[kind] += 1;
  if (tally.faults.length < mostFaults) tally.faults.push(words.slice(0, 700));
}

/** The line a run of fuzz prints. */
export function tallyLine(tally: Tally): string {
  const { what, tried, accepted, refused, crashed, acceptedWrongly } = tally;
  return `${what}: ${tried} tried (${accepted} accepted, ${refused} refused), ${crashed} crashed, ${acceptedWrongly} accepted wrongly`;
}
