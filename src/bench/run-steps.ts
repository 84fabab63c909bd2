/** One thing to do with one jar, with one number at most. */
export type RunStep =
  | { kind: "measure"; sampleMl: number | null; blankWaterMl: number | null }
  | { kind: "inject"; letter: "A" | "B" }
  | { kind: "mix"; pace: "fast" | "between" | "slow"; rpm: number | null; seconds: number | null }
  | { kind: "pour"; pours: number }
  | { kind: "drain"; seconds: number }
  | { kind: "read"; reading: string; field: string };

/** One reading that a running jar is asked for: its kind, and its fields in the order they are taken down. */
export interface RunReading {
  reading: string;
  fields: readonly string[];
}

export interface RunProtocol {
  fastRpm: number | null;
  fastS: number | null;
  betweenS: number | null;
  slowRpm: number | null;
  slowS: number | null;
  pours: number | null;
  drainS: number | null;
}

/**
 * The steps of one jar in order: measure, inject the first polymer, mix, inject the second, mix, drain, read. A jar
 * without polymer is measured, mixed and read alike, so that it differs by the polymer alone.
 */
export function runSteps(jar: {
  sampleMl: number | null;
  blankWaterMl: number | null;
  polymers: readonly ("A" | "B")[];
  protocol: RunProtocol;
  readings: readonly RunReading[];
}): RunStep[] {
  const { protocol, polymers } = jar;
  const fast: RunStep = { kind: "mix", pace: "fast", rpm: protocol.fastRpm, seconds: protocol.fastS };
  const between: RunStep = {
    kind: "mix",
    pace: "between",
    rpm: protocol.fastRpm,
    seconds: protocol.betweenS ?? protocol.fastS,
  };
  const pour: RunStep[] =
    protocol.pours !== null && protocol.pours > 0 ? [{ kind: "pour", pours: protocol.pours }] : [];
  // Pouring from beaker to beaker stands in for the stirrer's fast mixing.
  const mixFast: RunStep[] = pour.length > 0 && protocol.fastS === null ? pour : [fast, ...pour];
  const slow: RunStep[] =
    protocol.slowS === null
      ? []
      : [{ kind: "mix", pace: "slow", rpm: protocol.slowRpm, seconds: protocol.slowS }];
  const [first, second] = polymers;
  return [
    { kind: "measure", sampleMl: jar.sampleMl, blankWaterMl: jar.blankWaterMl },
    ...(first ? [{ kind: "inject", letter: first } as const] : []),
    ...(second ? [between, { kind: "inject", letter: second } as const] : []),
    ...mixFast,
    ...slow,
    ...(jar.readings.some(({ reading }) => reading === "drained") && protocol.drainS !== null
      ? [{ kind: "drain", seconds: protocol.drainS } as const]
      : []),
    ...jar.readings
      // the drained volume is read while it drains
      .filter(({ reading }) => reading !== "drained")
      .flatMap(({ reading, fields }) => fields.map((field): RunStep => ({ kind: "read", reading, field }))),
  ];
}

/**
 * Where a jar goes on: once something of it was read, its first reading that is still empty; before that its first
 * step that is not done. Null where nothing is left to do.
 */
export function openStep(steps: readonly RunStep[], done: (step: RunStep) => boolean): number | null {
  const isReading = (step: RunStep) => step.kind === "read" || step.kind === "drain";
  const anyRead = steps.some((step) => isReading(step) && done(step));
  const open = steps.findIndex((step) => (isReading(step) || !anyRead) && !done(step));
  return steps.some((step) => isReading(step) && !done(step)) || (!anyRead && open >= 0) ? open : null;
}

/** The next step after one that is not done yet, or null at the end of the jar. */
export function stepAfter(
  steps: readonly RunStep[],
  current: number,
  done: (step: RunStep) => boolean,
): number | null {
  const next = steps.findIndex((step, i) => i > current && !done(step));
  return next < 0 ? null : next;
}
