import type { PumpLine } from "../plant/pump-line.ts";
import { bandFor } from "../study/derive/plant-check.ts";
import { calibrationAge, settingWords } from "../study/derive/plant-pump.ts";
import { machineChain } from "../study/derive/plant-machine.ts";
import type { SampleChain } from "../study/derive/sample.ts";
import { pumpChain, type CaseChain } from "../study/derive/plant.ts";
import type { RecordOf, StudyState } from "../study/schema/records.ts";
import type { QuantityKind } from "../units/display.ts";
import { markup, type Markup } from "./markup.ts";
import { paperSize } from "./drawing.ts";
import { plotFigure } from "./plot-figure.ts";
import { pumpPlot } from "./pump-plot.ts";
import { calibrationWords } from "./sheet-basis.ts";
import { facts, table } from "./table.ts";
import type { PaperWords } from "./words.ts";
import { onPaperWords } from "../words/on-paper.ts";
import { pumpChainWords } from "../words/pump-chain.ts";
import { plotReportWords } from "../words/plot-report.ts";
import { pumpReportWords } from "../words/pump-report.ts";

const byId = <T extends { id: string }>(records: Readonly<Record<string, T>>): T[] =>
  Object.values(records).sort((a, b) => (a.id < b.id ? -1 : 1));

/** Make-downs, pumps with their draw-downs and lines, cylinder checks. */
export function pumpsSection(state: StudyState, now: string, words: PaperWords): Markup {
  const pumps = byId(state.pump);
  const share = (pct: number | null) => (pct === null ? onPaperWords.notMeasured : `${words.entered(pct)} %`);
  return markup`<section><h2>${pumpReportWords.title}</h2>
${table(
  pumpReportWords.makeDown.caption,
  [
    pumpReportWords.makeDown.lotAtPlant,
    pumpReportWords.makeDown.lotOnBench,
    pumpReportWords.makeDown.solution,
    pumpReportWords.makeDown.carrier,
    pumpReportWords.makeDown.batch,
    pumpReportWords.makeDown.ageing,
    pumpReportWords.makeDown.injected,
  ].map((head) => ({ head })),
  byId(state.makeDown).map((one) => [
    `${state.product[one.productId]?.label ?? ""}, ${state.product[one.productId]?.lot || onPaperWords.lotNotNoted}`,
    one.productId === one.benchProductId
      ? pumpReportWords.makeDown.same
      : (state.product[one.benchProductId]?.label ?? ""),
    share(one.solutionActivePct),
    one.carrierActivePct === null ? onPaperWords.none : share(one.carrierActivePct),
    one.batchL === null ? onPaperWords.notGiven : words.enteredBoth(one.batchL, "volumeL"),
    one.ageingMin === null ? onPaperWords.notGiven : `${words.entered(one.ageingMin)} min`,
    one.injectionPoint || onPaperWords.notNoted,
  ]),
  pumpReportWords.makeDown.none,
)}
${pumps.length === 0 ? markup`<p class="gap">${pumpReportWords.noPump}</p>` : pumps.map((pump) => pumpBlock(state, pump, now, words))}</section>`;
}

function pumpBlock(state: StudyState, pump: RecordOf<"pump">, now: string, words: PaperWords): Markup {
  const chain = pumpChain(state, pump.id);
  const unit = pump.measuredIn === "g" ? "g" : "mL";
  const makeDown = state.makeDown[pump.makeDownId];
  const product = makeDown ? state.product[makeDown.productId] : undefined;
  const model = chain.model.ok ? chain.model.value : null;
  const line = chain.line.ok
    ? lineWords(chain.line.value, model?.used === "curve", unit, words)
    : pumpReportWords.noLine(chain.line.message);
  const check = chain.metering.ok
    ? chain.metering.value
        .map(({ name, value, limit, within, missing }) => {
          const what = pumpReportWords.metering[name];
          if (value === null) return pumpReportWords.notMeasured(what, missing);
          const measured = `${what} ${words.number(value)}${name === "turndown" ? " : 1" : " %"}`;
          return pumpReportWords[within ? "within" : "outside"](measured, words.entered(limit));
        })
        .join(", ")
    : onPaperWords.notMeasured;
  const plot = pumpPlot(chain, (value) => words.number(value));
  const checks = byId(state.cylinderCheck).filter(({ pumpId }) => pumpId === pump.id);
  return markup`<h3>${pump.label}</h3>
${facts([
  [pumpReportWords.moves, pumpReportWords.stream[pump.stream](product?.label ?? pumpReportWords.noProduct)],
  [pumpReportWords.calibration, calibrationWords(chain, now, words)],
  [pumpReportWords.setting, settingWords(pump)],
  [pumpReportWords.lineHead, model ? pumpReportWords.lineAndReason(line, model.reason) : `${line}.`],
  [pumpReportWords.age, calibrationAge(chain, now).words],
  ...chain.changes.map((change): [string, string] => [pumpReportWords.stale, change]),
  [pumpReportWords.check, check],
  ...(pump.note ? [[pumpReportWords.note, pump.note] as [string, string]] : []),
])}
${table(
  pumpReportWords.draws.caption,
  [
    { head: pumpReportWords.draws.setting(pumpChainWords.units[pump.settingUnit]) },
    { head: pumpReportWords.draws.caught(unit), number: true },
    { head: pumpReportWords.draws.seconds, number: true },
    { head: pumpReportWords.draws.flow(unit), number: true },
    { head: pumpReportWords.draws.taken },
    { head: pumpReportWords.draws.leftOutAndNote },
  ],
  chain.draws.map((draw) => [
    words.entered(draw.setting),
    words.entered(draw.amount),
    words.entered(draw.seconds),
    words.number((draw.amount / draw.seconds) * 60),
    words.moment(draw.takenAt),
    [draw.leftOut ? pumpReportWords.draws.leftOut : "", draw.note].filter((text) => text !== "").join(": "),
  ]),
  pumpReportWords.draws.none,
)}
${plot && plotFigure(plot, plotReportWords.pump, words, { ...paperSize, height: 170 })}
${table(
  pumpReportWords.checks.caption,
  [
    { head: pumpReportWords.checks.when },
    { head: pumpReportWords.checks.by },
    { head: pumpReportWords.checks.setting, number: true },
    { head: pumpReportWords.checks.caught, number: true },
    { head: pumpReportWords.checks.goodFrom },
    { head: pumpReportWords.checks.pump },
  ],
  checks.map((one) => {
    const band = bandFor(chain, one.setting, one.seconds);
    return [
      words.moment(one.takenAt),
      one.byName || pumpReportWords.checks.nobody,
      `${words.entered(one.setting)} ${settingWords(pump)}`,
      pumpReportWords.checks.caughtIn(`${words.entered(one.amount)} ${unit}`, words.entered(one.seconds)),
      band.ok
        ? `${words.fromTo(band.value.expectedMl, band.value.low, band.value.high, "ratio")} ${unit}`
        : pumpReportWords.checks.noBand(band.message),
      !band.ok
        ? pumpReportWords.checks.notJudged
        : one.amount >= band.value.low && one.amount <= band.value.high
          ? pumpReportWords.checks.within
          : pumpReportWords.checks.outside,
    ];
  }),
  pumpReportWords.checks.none,
)}`;
}

/** A pump's line or curve with its scatter. */
function lineWords(line: PumpLine, isCurve: boolean, unit: string, words: PaperWords): string {
  const { residualSd, intercept, slope, n } = line;
  const scatter = residualSd === null ? null : `${words.number(residualSd)} ${unit}/min`;
  return isCurve
    ? pumpReportWords.curve(n, scatter ?? onPaperWords.notKnown)
    : pumpReportWords.line(
        words.number(intercept, 4),
        words.number(slope, 4),
        unit,
        scatter ?? pumpReportWords.twoDraws,
      );
}

/** The machine's own limits against the load of each feed case. */
export function machineSection(
  state: StudyState,
  cases: CaseChain[],
  sample: SampleChain | null,
  words: PaperWords,
): Markup {
  const machines = byId(state.machine);
  if (machines.length === 0)
    return markup`<section><h2>${pumpReportWords.machine.title}</h2><p class="gap">${pumpReportWords.machine.none}</p></section>`;
  return markup`<section><h2>${pumpReportWords.machine.title}</h2>${machines.map(
    (machine) => markup`<h3>${machine.label}</h3>
${facts([
  [
    pumpReportWords.machine.width,
    machine.effectiveWidthM === null ? onPaperWords.notGiven : `${words.entered(machine.effectiveWidthM)} m`,
  ],
  [
    pumpReportWords.machine.hydraulic,
    machine.hydraulicLimitM3PerH === null
      ? onPaperWords.notGiven
      : words.enteredBoth(machine.hydraulicLimitM3PerH, "flowM3PerH"),
  ],
  [
    pumpReportWords.machine.feedSolids,
    machine.feedLowPct === null || machine.feedHighPct === null
      ? onPaperWords.notGiven
      : onPaperWords.range(words.entered(machine.feedLowPct), `${words.entered(machine.feedHighPct)} %`),
  ],
  [
    pumpReportWords.machine.loadings,
    machine.loadings.length === 0
      ? onPaperWords.notGiven
      : machine.loadings
          .map(
            ({ sludgeClass, kgPerHPerM }) =>
              `${sludgeClass} ${words.enteredBoth(kgPerHPerM, "loadingKgPerHPerM")}`,
          )
          .join("; "),
  ],
  [pumpReportWords.machine.countingClass, machine.loadingClass || pumpReportWords.machine.notPicked],
  ...(machine.note ? [[pumpReportWords.note, machine.note] as [string, string]] : []),
])}
${table(
  pumpReportWords.machine.caption,
  [
    { head: pumpReportWords.machine.check },
    { head: pumpReportWords.machine.feedCase },
    { head: pumpReportWords.machine.value, number: true },
    { head: pumpReportWords.machine.limits },
    { head: pumpReportWords.machine.state },
    { head: pumpReportWords.machine.advice },
  ],
  cases.flatMap((one) =>
    machineChain(machine, one.feed, sample).map(({ title, figure, quantity, check }) => [
      title,
      one.feedCase.label,
      figure.value === null ? onPaperWords.notKnown : words.both(figure.value, quantity),
      limitWords(check.low, check.high, quantity, words),
      pumpReportWords.machine.states[check.state],
      check.words,
    ]),
  ),
  pumpReportWords.machine.noFeedCase,
)}`,
  )}<p>${pumpReportWords.machine.outsideAdvice}</p></section>`;
}

function limitWords(low: number | null, high: number | null, kind: QuantityKind, words: PaperWords): string {
  if (low !== null && high !== null) return words.range(low, high, kind);
  if (high !== null) return pumpReportWords.machine.atMost(words.enteredBoth(high, kind));
  return low === null ? onPaperWords.notGiven : pumpReportWords.machine.atLeast(words.enteredBoth(low, kind));
}
