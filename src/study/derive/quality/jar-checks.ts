import { basisSlip } from "../../../bench/dose.ts";
import { rectangular } from "../../../bench/dose-uncertainty.ts";
import { usualDoses } from "../../../bench/usual-doses.ts";
import { replicates } from "../../../sample/solids.ts";
import type { StudyState } from "../../schema/records.ts";
import { responseWords } from "../choice.ts";
import { meanReading, type JarChain, type SeriesChain } from "../jars.ts";
import { jarList, type Flag, type FlagWords } from "./flag.ts";

const plannedTolerance = 0.05;
const syringeLimit = 0.03;
const dilutionLimit = 0.1;

const usedJars = (chain: SeriesChain) => chain.jars.filter(({ jar }) => jar.leftOut === null);
const labels = (jars: JarChain[]) => jars.map(({ jar }) => jar.label);

/** What went into the jars: off the plan, too little for the syringe, unequal volumes, the slip of bases. */
export function doseFlags(state: StudyState, chain: SeriesChain, { number, doses }: FlagWords): Flag[] {
  const { series } = chain;
  const jars = usedJars(chain);
  const flags: Flag[] = [];
  const letters = series.stockBId === null ? (["A"] as const) : (["A", "B"] as const);
  for (const letter of letters) {
    const dose = (jar: JarChain) => (letter === "A" ? jar.doseA.value : jar.doseB.value);
    const syringe = ({ jar }: JarChain) => (letter === "A" ? jar.syringeAMl : jar.syringeBMl) ?? 0;
    const off = jars.filter((jar) => {
      const planned = letter === "A" ? jar.jar.plannedDoseAKgPerT : jar.jar.plannedDoseBKgPerT;
      const real = dose(jar);
      return (
        planned !== null && planned > 0 && real !== null && Math.abs(real / planned - 1) > plannedTolerance
      );
    });
    if (off.length > 0)
      flags.push({
        id: `off-plan-${letter}`,
        tone: "warn",
        word: "off plan",
        sentence: `In ${jarList(labels(off))} polymer ${letter} is more than ${plannedTolerance * 100} % off its planned dose.`,
        todo: "Check the syringe volume, the strength and the solids; the fit uses what was really dosed.",
        aim: { room: "bench", jarId: off[0]!.jar.id, column: `syringe${letter}` },
      });
    const small = jars.filter(
      (jar) =>
        syringe(jar) > 0 &&
        series.syringeLimitMl !== null &&
        rectangular(series.syringeLimitMl, syringe(jar)) > syringeLimit,
    );
    if (small.length > 0)
      flags.push({
        id: `syringe-${letter}`,
        tone: "warn",
        word: "syringe too coarse",
        sentence: `In ${jarList(labels(small))} the volume of solution ${letter} is too small for this syringe: its error is over ${syringeLimit * 100} %.`,
        todo: "Use a weaker stock, a smaller syringe, or weigh what is injected.",
        aim: { room: "bench", jarId: small[0]!.jar.id, column: `syringe${letter}` },
      });
    const refill = jars.filter(
      (jar) => series.syringeCapacityMl !== null && syringe(jar) > series.syringeCapacityMl,
    );
    if (refill.length > 0)
      flags.push({
        id: `refill-${letter}`,
        tone: "open",
        word: "more than one fill",
        sentence: `In ${jarList(labels(refill))} solution ${letter} needs more than one fill of the ${number(series.syringeCapacityMl!)} mL syringe.`,
        todo: "Use a stronger stock or a larger syringe.",
        aim: { room: "bench", jarId: refill[0]!.jar.id, column: `syringe${letter}` },
      });
    flags.push(...slipFlags(state, chain, letter, jars, dose, doses));
  }
  const totals = jars.flatMap((jar) => (jar.addedMl === null ? [] : [jar.addedMl]));
  const volume = series.sampleVolumeMl;
  if (volume !== null && totals.length > 1) {
    const spread = Math.max(...totals) - Math.min(...totals);
    if (spread / volume > dilutionLimit)
      flags.push({
        id: "dilution",
        tone: "warn",
        word: "unequal volumes",
        sentence: `What was added differs by ${number(spread)} mL between jars, over ${dilutionLimit * 100} % of the sample: the filtrate is diluted unequally.`,
        todo: "Bring every jar to the same volume with blank water.",
        aim: { room: "bench", jarId: jars[0]!.jar.id, column: "blankWater" },
      });
  }
  return flags;
}

function slipFlags(
  state: StudyState,
  chain: SeriesChain,
  letter: "A" | "B",
  jars: JarChain[],
  dose: (jar: JarChain) => number | null,
  doses: FlagWords["doses"],
): Flag[] {
  const stock = letter === "A" ? chain.stockA : chain.stockB;
  const band = usualDoses(state.stream[state.sample[chain.series.sampleId]!.streamId]?.sludgeClass ?? null);
  const activePct = stock?.product.activePct ?? null;
  // A metal salt is counted and dosed otherwise, so the polymer's band says nothing of it.
  if (!stock || !band || activePct === null || stock.product.form === "metal-salt" || letter === "B")
    return [];
  const dosed = jars
    .flatMap((jar) => {
      const value = dose(jar);
      return value !== null && value > 0 ? [{ jar, value }] : [];
    })
    .sort((a, b) => a.value - b.value);
  const middle = dosed[Math.floor(dosed.length / 2)];
  const slip = middle && basisSlip(middle.value, activePct, band);
  if (!slip) return [];
  const other =
    slip === "read-as-supplied" ? (middle.value * activePct) / 100 : middle.value / (activePct / 100);
  return [
    {
      id: `basis-${letter}`,
      tone: "bad",
      word: "neat for active?",
      sentence: `The doses (${doses.number(middle.value)} ${doses.unit} in the middle) lie outside the usual ${doses.number(band.low)} to ${doses.number(band.high)} ${doses.unit} active of this sludge (${band.source}), but ${doses.number(other)} would lie inside: that is the slip of neat for active.`,
      todo: `Check whether ${stock.stock.label} was weighed as ${slip === "read-as-supplied" ? "active where the sheet says as supplied" : "supplied where the sheet says active"}, and the active share.`,
      aim: { room: "sample" },
    },
  ];
}

/** Relative differences of re-reads that are still good, percent of the mean: common practice, no source. */
const rereadBands: Record<string, number> = {
  filtrate_tss_mg_per_l: 10,
  cst_s: 10,
  cake_ts_pct: 3,
  srf_tm_per_kg: 20,
};
const columnOf: Record<string, string> = {
  turbidity_ntu: "turbidity",
  filtrate_tss_mg_per_l: "filtrate-tss",
  cst_s: "cst",
  cake_ts_pct: "cake-ts",
  drained_ml: "drained",
};
const driftLimitPct = 15;

/** What was read: re-reads apart, over range, the standard jar drifting, blanks that are missing. */
export function readingFlags(chain: SeriesChain, { number }: FlagWords): Flag[] {
  const jars = usedJars(chain);
  const flags: Flag[] = [];
  for (const jar of jars)
    for (const [name, readings] of Object.entries(jar.responses)) {
      const limit = rereadBands[name];
      const summary = replicates(
        (readings ?? []).filter(({ censored }) => censored === null).map(({ value }) => value),
      );
      const difference = summary.ok ? summary.value.relativeDifferencePct : null;
      if (limit !== undefined && difference !== null && difference > limit)
        flags.push({
          id: `reread-${jar.jar.id}-${name}`,
          tone: "warn",
          word: "re-reads differ",
          sentence: `Jar ${jar.jar.label}: ${responseWords[name]?.label ?? name} was read ${number(difference)} % apart, more than ${limit} % (common practice, no source).`,
          todo: "Read once more, or leave a reading out with a reason.",
          aim: { room: "bench", jarId: jar.jar.id, column: columnOf[name] },
        });
    }
  const over = jars.filter(({ responses }) =>
    Object.values(responses).some((readings) => readings?.some(({ censored }) => censored === "above")),
  );
  if (over.length > 0)
    flags.push({
      id: "over-range",
      tone: "open",
      word: "over range",
      sentence: `${over.length === 1 ? "A reading" : "Readings"} of ${jarList(labels(over))} ${over.length === 1 ? "is" : "are"} over the instrument's range: known only to lie above it.`,
      todo: "Dilute and read again where it matters; the fit takes it as a bound, never as a number.",
      aim: { room: "bench", jarId: over[0]!.jar.id, column: "turbidity" },
    });
  const residue = jars.filter(({ readings }) =>
    readings.some(({ result, leftOut }) => {
      if (leftOut !== null || result.kind !== "filtrate-tss-dish" || result.dryG === null) return false;
      const milligrams = (result.dryG - result.tareG) * 1000;
      return milligrams < 2.5 || milligrams > 200;
    }),
  );
  if (residue.length > 0)
    flags.push({
      id: "residue",
      tone: "warn",
      word: "filter residue",
      sentence: `The residue on the filter of ${jarList(labels(residue))} is outside 2.5 to 200 mg (Standard Methods 2540 D, 20th edition, quoted).`,
      todo: "Filter more, or less, and weigh again.",
      aim: { room: "bench", jarId: residue[0]!.jar.id },
    });
  return [...flags, ...standardFlags(jars, number)];
}

function standardFlags(jars: JarChain[], number: FlagWords["number"]): Flag[] {
  const standards = jars
    .filter(({ jar }) => jar.role === "standard")
    .sort((a, b) => a.jar.order - b.jar.order);
  return Object.keys(responseWords).flatMap((name): Flag[] => {
    const read = standards.flatMap((jar) => {
      const value = meanReading(jar.responses[name as keyof JarChain["responses"]]);
      return value === null ? [] : [{ jar, value }];
    });
    const [first] = read;
    const last = read.at(-1);
    if (!first || !last || first === last || first.value === 0) return [];
    const drift = (last.value / first.value - 1) * 100;
    if (Math.abs(drift) <= driftLimitPct) return [];
    return [
      {
        id: `drift-${name}`,
        tone: "bad",
        word: "standard jar drifts",
        sentence: `${responseWords[name]!.label} of the standard jar moved by ${number(drift)} % from jar ${first.jar.jar.label} to jar ${last.jar.jar.label}, more than ${driftLimitPct} % (common practice, no source).`,
        todo: "The sludge or the solution changed: take a fresh sample or solution and repeat the later jars.",
        aim: { room: "bench", jarId: last.jar.jar.id, column: columnOf[name] },
      },
    ];
  });
}

/** How the series was run: in its order, with its blanks, with repeats. */
export function orderFlags(chain: SeriesChain): Flag[] {
  const jars = usedJars(chain);
  const flags: Flag[] = [];
  const timed = jars
    .filter(({ jar }) => jar.mixedAt !== null)
    .sort((a, b) => (a.jar.mixedAt! < b.jar.mixedAt! ? -1 : 1));
  const out = timed.find((jar, i) => i > 0 && jar.jar.order < timed[i - 1]!.jar.order);
  if (out)
    flags.push({
      id: "order",
      tone: "warn",
      word: "order not kept",
      sentence: `Jar ${out.jar.label} was run after a jar that stands behind it in the running order.`,
      todo: "Keep to the order: it is what tells an ageing sludge from a dose. Note why where it had to change.",
      aim: { room: "bench", jarId: out.jar.id, column: "order" },
    });
  const dosed = jars.filter(({ doseA, doseB }) => (doseA.value ?? 0) > 0 || (doseB.value ?? 0) > 0);
  const blank = jars.some(
    ({ doseA, doseB, jar }) => jar.role === "no-polymer" || (doseA.value === 0 && doseB.value === 0),
  );
  if (dosed.length >= 3 && !blank)
    flags.push({
      id: "no-polymer",
      tone: "open",
      word: "no jar without polymer",
      sentence: "No jar without polymer stands beside the dosed ones.",
      todo: "Run one jar with water in the place of polymer: it says what the polymer does at all.",
      aim: { room: "bench" },
    });
  const cstRead = jars.find(({ responses }) => (responses.cst_s ?? []).length > 0);
  if (cstRead && chain.series.cstWaterS === null)
    flags.push({
      id: "water-blank",
      tone: "open",
      word: "no water blank",
      sentence:
        "CST was read, but not of water on the same paper, so it cannot be compared with another day.",
      todo: "Time water on the same paper lot and enter it with the series.",
      aim: { room: "bench" },
    });
  return flags;
}
