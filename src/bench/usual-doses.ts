import { benchFormulaWords } from "../words/bench-formulas.ts";

/** A range of usual doses, kg active per t dry solids: for soft warnings and a first ladder, never a limit. */
export interface UsualDoses {
  low: number;
  high: number;
  source: string;
}

const practice = "practice";
const memory = "memory";

const bands: Record<string, { low: number; high: number; source: "practice" | "memory" }> = {
  primary: { low: 1, high: 6, source: practice },
  excess: { low: 3, high: 15, source: practice },
  digested: { low: 4, high: 15, source: practice },
  flotation: { low: 2, high: 8, source: practice },
  "water-works": { low: 1, high: 6, source: practice },
  mixed: { low: 1, high: 10, source: memory },
  aerobic: { low: 2, high: 8, source: memory },
  livestock: { low: 3, high: 10, source: practice },
};

/** The usual doses of a kind of sludge, or null where there is no telling. */
export function usualDoses(sludgeClass: string | null): UsualDoses | null {
  const band = sludgeClass !== null && Object.hasOwn(bands, sludgeClass) ? bands[sludgeClass]! : null;
  return band && { ...band, source: benchFormulaWords.usualDoses[band.source] };
}
