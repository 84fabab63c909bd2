import { basisSlip } from "../../../bench/dose.ts";
import { responseNamed, responseWords } from "../../../responses/registry.ts";
import { rectangular } from "../../../bench/dose-uncertainty.ts";
import { usualDoses } from "../../../bench/usual-doses.ts";
import { replicates } from "../../../sample/solids.ts";
import { qualityFlagWords } from "../../../words/quality-flags.ts";
import type { StudyState } from "../../schema/records.ts";
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
        word: qualityFlagWords.offPlan.word,
        sentence: qualityFlagWords.offPlan.sentence(jarList(labels(off)), letter, plannedTolerance * 100),
        todo: qualityFlagWords.offPlan.todo,
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
        word: qualityFlagWords.syringe.word,
        sentence: qualityFlagWords.syringe.sentence(jarList(labels(small)), letter, syringeLimit * 100),
        todo: qualityFlagWords.syringe.todo,
        aim: { room: "bench", jarId: small[0]!.jar.id, column: `syringe${letter}` },
      });
    const refill = jars.filter(
      (jar) => series.syringeCapacityMl !== null && syringe(jar) > series.syringeCapacityMl,
    );
    if (refill.length > 0)
      flags.push({
        id: `refill-${letter}`,
        tone: "open",
        word: qualityFlagWords.refill.word,
        sentence: qualityFlagWords.refill.sentence(
          jarList(labels(refill)),
          letter,
          number(series.syringeCapacityMl!),
        ),
        todo: qualityFlagWords.refill.todo,
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
        word: qualityFlagWords.dilution.word,
        sentence: qualityFlagWords.dilution.sentence(number(spread), dilutionLimit * 100),
        todo: qualityFlagWords.dilution.todo,
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
      word: qualityFlagWords.basis.word,
      sentence: qualityFlagWords.basis.sentence(
        doses.number(middle.value),
        doses.number(band.low),
        doses.number(band.high),
        band.source,
        doses.number(other),
        doses.unit,
      ),
      todo:
        slip === "read-as-supplied"
          ? qualityFlagWords.basis.readAsSupplied(stock.stock.label)
          : qualityFlagWords.basis.readAsActive(stock.stock.label),
      aim: { room: "sample" },
    },
  ];
}

/** The cell of the jar table that a flag about a response leads to. */
const columnOf = (name: string) =>
  responseNamed(name)?.kinds.find(({ columns }) => columns.length > 0)?.columns[0]?.key;
const driftLimitPct = 15;

/** What was read: re-reads apart, over range, the standard jar drifting, blanks that are missing. */
export function readingFlags(chain: SeriesChain, { number }: FlagWords): Flag[] {
  const jars = usedJars(chain);
  const flags: Flag[] = [];
  for (const jar of jars)
    for (const [name, readings] of Object.entries(jar.responses)) {
      const limit = responseNamed(name)?.fitted?.rereadBandPct;
      const summary = replicates(
        (readings ?? []).filter(({ censored }) => censored === null).map(({ value }) => value),
      );
      const difference = summary.ok ? summary.value.relativeDifferencePct : null;
      if (limit !== undefined && difference !== null && difference > limit)
        flags.push({
          id: `reread-${jar.jar.id}-${name}`,
          tone: "warn",
          word: qualityFlagWords.reread.word,
          sentence: qualityFlagWords.reread.sentence(
            jar.jar.label,
            responseWords[name]?.label ?? name,
            number(difference),
            limit,
          ),
          todo: qualityFlagWords.reread.todo,
          aim: { room: "bench", jarId: jar.jar.id, column: columnOf(name) },
        });
    }
  const over = jars.filter(({ responses }) =>
    Object.values(responses).some((readings) => readings?.some(({ censored }) => censored === "above")),
  );
  if (over.length > 0)
    flags.push({
      id: "over-range",
      tone: "open",
      word: qualityFlagWords.overRange.word,
      sentence: qualityFlagWords.overRange.sentence(jarList(labels(over)), over.length),
      todo: qualityFlagWords.overRange.todo,
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
      word: qualityFlagWords.residue.word,
      sentence: qualityFlagWords.residue.sentence(jarList(labels(residue))),
      todo: qualityFlagWords.residue.todo,
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
        word: qualityFlagWords.drift.word,
        sentence: qualityFlagWords.drift.sentence(
          responseWords[name]!.label,
          number(drift),
          first.jar.jar.label,
          last.jar.jar.label,
          driftLimitPct,
        ),
        todo: qualityFlagWords.drift.todo,
        aim: { room: "bench", jarId: last.jar.jar.id, column: columnOf(name) },
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
      word: qualityFlagWords.order.word,
      sentence: qualityFlagWords.order.sentence(out.jar.label),
      todo: qualityFlagWords.order.todo,
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
      word: qualityFlagWords.noPolymer.word,
      sentence: qualityFlagWords.noPolymer.sentence,
      todo: qualityFlagWords.noPolymer.todo,
      aim: { room: "bench" },
    });
  const cstRead = jars.find(({ responses }) => (responses.cst_s ?? []).length > 0);
  if (cstRead && chain.series.cstWaterS === null)
    flags.push({
      id: "water-blank",
      tone: "open",
      word: qualityFlagWords.waterBlank.word,
      sentence: qualityFlagWords.waterBlank.sentence,
      todo: qualityFlagWords.waterBlank.todo,
      aim: { room: "bench" },
    });
  return flags;
}
