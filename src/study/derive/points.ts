import type { AnalyseRow } from "../../curve/analyse-types.ts";
import { toTheEnd } from "../../steps.ts";
import type { JarChain, SeriesChain } from "./jars.ts";
import { memo } from "./memo.ts";

export interface SeriesRows {
  rows: AnalyseRow[];
  /** what the jar behind a row is called */
  labels: Map<number, string>;
}

/**
 * A series as rows for the analysis: one row a reading round of a jar, so that a jar read again is averaged there and
 * never counted twice. Jars that are left out, or whose dose is not known yet, stay away.
 */
export function analyseRows(chain: SeriesChain): SeriesRows {
  return toTheEnd(analyseRowsInSteps(chain));
}

const knownRows = new WeakMap<SeriesChain, SeriesRows>();
/** Jars put into rows between two steps: some milliseconds of work. */
const jarsAStep = 500;

/** The same in steps, for a series of thousands of jars. */
export function* analyseRowsInSteps(chain: SeriesChain): Generator<number, SeriesRows> {
  const known = knownRows.get(chain);
  if (known) return known;
  const rows: AnalyseRow[] = [];
  const labels = new Map<number, string>();
  for (const [index, jar] of chain.jars.entries()) {
    if (index % jarsAStep === jarsAStep - 1) yield index;
    if (jar.jar.leftOut !== null || jar.doseA.value === null || jar.doseB.value === null) continue;
    for (const readings of knownRounds(jar, [], () => roundsOf(jar))) {
      const row = rows.length + 1;
      labels.set(row, jar.jar.label);
      rows.push({
        row,
        jar: jar.jar.id,
        doseA: jar.doseA.value,
        doseB: jar.doseB.value,
        block: jar.jar.block || null,
        order: jar.jar.order,
        readings,
      });
    }
  }
  const made = { rows, labels };
  knownRows.set(chain, made);
  return made;
}

const knownRounds = memo<AnalyseRow["readings"][]>();

/** A jar's readings, one group a round of reading. */
function roundsOf({ responses }: JarChain): AnalyseRow["readings"][] {
  const names = Object.keys(responses);
  const rounds = Math.max(0, ...names.map((name) => responses[name]?.length ?? 0));
  return Array.from({ length: rounds }, (_, round) => {
    const readings: AnalyseRow["readings"] = {};
    for (const name of names) {
      const reading = responses[name]?.[round];
      if (reading) readings[name] = { value: reading.value, censored: reading.censored };
    }
    return readings;
  });
}
