import { guideWords as words } from "../../../words/guide.ts";
import type { RecordOf, StudyState } from "../../schema/records.ts";
import { seriesChain, type JarChain, type SeriesChain } from "../jars.ts";
import { sampleChain } from "../sample.ts";
import { stockChain } from "../stock.ts";
import { asSentence, type CurvesSoFar, type GuideAim, type StepState } from "./step.ts";

type Series = RecordOf<"series">;
type Stock = RecordOf<"stock">;

/** The reading that is asked for first, of those that a series takes: the quickest to give a curve. */
const readingOrder = ["turbidity", "drained", "cst", "filtrate-tss", "filter-time", "cake-ts", "floc-grade"];

const byId = <T extends { id: string }>(records: Record<string, T>): T[] =>
  Object.values(records).sort((a, b) => (a.id < b.id ? -1 : 1));

/** The stock solutions that the jars are dosed from; before a series names them, the first that was entered. */
function stocksInUse(state: StudyState, series: Series | null): Stock[] {
  const named = [series?.stockAId, series?.stockBId].flatMap((id) => {
    const stock = id ? state.stock[id] : undefined;
    return stock ? [stock] : [];
  });
  return named.length > 0 ? named : byId(state.stock).slice(0, 1);
}

/** From the sludge sample to jars with readings and a curve. */
export function benchSteps(
  state: StudyState,
  seriesId: string | null,
  selectedSampleId: string | null,
  curves: CurvesSoFar,
): StepState[] {
  const series = seriesId ? (state.series[seriesId] ?? null) : null;
  const sampleId = series?.sampleId ?? selectedSampleId;
  const stocks = stocksInUse(state, series);
  const chain = series ? seriesChain(state, series.id) : null;
  return [
    {
      key: "sample",
      title: words.titles.sample,
      done: sampleId !== null && state.sample[sampleId] !== undefined,
      why: words.sample,
      aim: { room: "sample", target: "add sample" },
    },
    solidsStep(state, sampleId),
    productStep(state, stocks),
    stockStep(state, stocks),
    seriesStep(series, chain),
    readingsStep(chain),
    curveStep(curves),
  ];
}

function solidsStep(state: StudyState, sampleId: string | null): StepState {
  const step = { key: "solids" as const, title: words.titles.solids };
  const aim = (target: string): GuideAim => ({ room: "sample", target });
  if (sampleId === null || !state.sample[sampleId])
    return { ...step, done: false, why: words.solids.dishes, aim: aim("add dish") };
  const { totalSolids, dishes } = sampleChain(state, sampleId);
  const empty = dishes
    .filter(({ dish }) => dish.leftOut === null)
    .flatMap(({ dish }) =>
      (["tareG", "wetG", "dryG"] as const).flatMap((field) =>
        dish[field] === null ? [`dish ${dish.id} ${field}`] : [],
      ),
    );
  return {
    ...step,
    done: totalSolids.value !== null,
    why: words.solids.masses,
    aim: aim(empty[0] ?? "add dish"),
  };
}

function productStep(state: StudyState, stocks: Stock[]): StepState {
  const used = stocks.flatMap(({ productId }) => state.product[productId] ?? []);
  const products = used.length > 0 ? used : byId(state.product).slice(0, 1);
  const unknown = products.find(({ activePct }) => activePct === null);
  return {
    key: "product",
    title: words.titles.product,
    done: products.length > 0 && !unknown,
    why: unknown ? words.product.active(unknown.label) : words.product.needed,
    aim: { room: "sample", target: unknown ? `product ${unknown.id} activePct` : "add product" },
  };
}

function stockStep(state: StudyState, stocks: Stock[]): StepState {
  const open = stocks.find(
    ({ id, solutionDensityKgPerL }) =>
      solutionDensityKgPerL === null || stockChain(state, id).active.value === null,
  );
  const fields = ["neatMassG", "totalMassG", "solutionDensityKgPerL"] as const;
  const field = open ? (fields.find((name) => open[name] === null) ?? "neatMassG") : null;
  return {
    key: "stock",
    title: words.titles.stock,
    done: stocks.length > 0 && !open,
    why: open
      ? words.stock.open(open.label, stockChain(state, open.id).active.missing ?? words.stock.enterDensity)
      : words.stock.needed,
    aim: { room: "sample", target: open ? `stock ${open.id} ${field}` : "add stock" },
  };
}

function seriesStep(series: Series | null, chain: SeriesChain | null): StepState {
  const step = { key: "series" as const, title: words.titles.series };
  const at = (target: string): GuideAim => ({ room: "bench", target });
  if (!series || !chain)
    return {
      ...step,
      done: false,
      why: words.series.needed,
      aim: at("add series"),
    };
  const used = chain.jars.filter(({ jar }) => jar.leftOut === null);
  const undosed = used.find(({ doseA, doseB }) => doseA.value === null || doseB.value === null);
  const done = used.length > 0 && !undosed;
  if (series.stockAId === null)
    return {
      ...step,
      done,
      why: words.series.pickStock,
      aim: at(`series ${series.id} stockA`),
    };
  if (series.sampleVolumeMl === null)
    return {
      ...step,
      done,
      why: words.series.volume,
      aim: at(`series ${series.id} sampleVolumeMl`),
    };
  if (used.length === 0)
    return {
      ...step,
      done,
      why: words.series.layOut,
      aim: at("lay out jars"),
    };
  return { ...step, done, why: undosedWords(undosed), aim: undosedAim(undosed) };
}

function undosedWords(jar: JarChain | undefined): string {
  if (!jar) return words.series.allDosed;
  const figure = jar.doseA.value === null ? jar.doseA : jar.doseB;
  return words.series.undosed(jar.jar.label, figure.missing ?? words.series.enterSyringe);
}

function undosedAim(jar: JarChain | undefined): GuideAim {
  if (!jar) return { room: "bench", target: "lay out jars" };
  const column = jar.doseA.value === null ? "syringeA" : "syringeB";
  return { room: "bench", target: "next empty", jarId: jar.jar.id, column };
}

function readingsStep(chain: SeriesChain | null): StepState {
  const used = (chain?.jars ?? []).filter(({ jar }) => jar.leftOut === null);
  const unread = used
    .filter(({ responses }) => Object.keys(responses).length === 0)
    .sort((a, b) => a.jar.order - b.jar.order);
  const next = unread[0];
  const column = readingOrder.find((name) => chain?.series.readings.some((one) => one === name));
  return {
    key: "readings",
    title: words.titles.readings,
    done: used.length > 0 && !next,
    why: next ? words.readings.next(next.jar.label, unread.length) : words.readings.needed,
    aim: {
      room: "bench",
      target: "next empty",
      ...(next ? { jarId: next.jar.id, ...(column ? { column } : {}) } : {}),
    },
  };
}

function curveStep(curves: CurvesSoFar): StepState {
  return {
    key: "curve",
    title: words.titles.curve,
    done: curves.word === "found",
    why:
      curves.word === "running"
        ? words.curve.running
        : curves.word === "refused"
          ? words.curve.refused(asSentence(curves.sentence))
          : words.curve.needed,
    aim: { room: "curves", target: "verdicts" },
  };
}
