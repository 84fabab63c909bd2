import { bandFor } from "../study/derive/plant-check.ts";
import { calibrationAge, settingWords } from "../study/derive/plant-pump.ts";
import { machineChain } from "../study/derive/plant-machine.ts";
import type { SampleChain } from "../study/derive/sample.ts";
import { pumpChain, type CaseChain } from "../study/derive/plant.ts";
import type { RecordOf, StudyState } from "../study/schema/records.ts";
import type { QuantityKind } from "../units/display.ts";
import { markup, type Markup } from "./markup.ts";
import { calibrationWords } from "./sheet-basis.ts";
import { facts, table } from "./table.ts";
import { notMeasured, type PaperWords } from "./words.ts";

const byId = <T extends { id: string }>(records: Readonly<Record<string, T>>): T[] =>
  Object.values(records).sort((a, b) => (a.id < b.id ? -1 : 1));

/** Make-downs, pumps with their draw-downs and lines, cylinder checks. */
export function pumpsSection(state: StudyState, now: string, words: PaperWords): Markup {
  const pumps = byId(state.pump);
  const share = (pct: number | null) => (pct === null ? notMeasured : `${words.entered(pct)} %`);
  return markup`<section><h2>Make-down and pumps</h2>
${table(
  "Make-down at the plant",
  [
    "lot at the plant",
    "lot on the bench",
    "solution, active",
    "after carrier water",
    "batch",
    "ageing",
    "injected at",
  ].map((head) => ({ head })),
  byId(state.makeDown).map((one) => [
    `${state.product[one.productId]?.label ?? ""}, ${state.product[one.productId]?.lot || "lot not noted"}`,
    one.productId === one.benchProductId ? "the same" : (state.product[one.benchProductId]?.label ?? ""),
    share(one.solutionActivePct),
    one.carrierActivePct === null ? "none" : share(one.carrierActivePct),
    one.batchL === null ? "not given" : words.both(one.batchL, "volumeL"),
    one.ageingMin === null ? "not given" : `${words.entered(one.ageingMin)} min`,
    one.injectionPoint || "not noted",
  ]),
  "none entered",
)}
${pumps.length === 0 ? markup`<p class="gap">No pump is entered.</p>` : pumps.map((pump) => pumpBlock(state, pump, now, words))}</section>`;
}

function pumpBlock(state: StudyState, pump: RecordOf<"pump">, now: string, words: PaperWords): Markup {
  const chain = pumpChain(state, pump.id);
  const unit = pump.measuredIn === "g" ? "g" : "mL";
  const makeDown = state.makeDown[pump.makeDownId];
  const product = makeDown ? state.product[makeDown.productId] : undefined;
  const model = chain.model.ok ? chain.model.value : null;
  const line = chain.line.ok
    ? model?.used === "curve"
      ? `a curve through ${chain.line.value.n} draw-downs; scatter ${chain.line.value.residualSd === null ? "not known" : `${words.number(chain.line.value.residualSd, 3)} ${unit}/min`}`
      : `${words.number(chain.line.value.intercept)} + ${words.number(chain.line.value.slope)} × setting, ${unit}/min; scatter ${chain.line.value.residualSd === null ? "not known (two draw-downs)" : `${words.number(chain.line.value.residualSd, 3)} ${unit}/min`}`
    : `none: ${chain.line.message}`;
  const check = chain.metering.ok
    ? chain.metering.value
        .map(({ name, value, limit, within, missing }) =>
          value === null
            ? `${name} not measured (${missing})`
            : `${name} ${words.number(value, 3)}${name === "turndown" ? " : 1" : " %"} (${within ? "within" : "outside"} ${words.entered(limit)})`,
        )
        .join(", ")
    : notMeasured;
  const checks = byId(state.cylinderCheck).filter(({ pumpId }) => pumpId === pump.id);
  return markup`<h3>${pump.label}</h3>
${facts([
  [
    "Moves",
    `${pump.stream === "neat" ? "neat product" : "solution"} of ${product?.label ?? "a product that is not entered"}`,
  ],
  ["Calibration", calibrationWords(chain, now, words)],
  ["Setting", settingWords(pump)],
  ["Line", `${line}.${model ? ` ${model.reason}` : ""}`],
  ["Age", calibrationAge(chain, now).words],
  ...chain.changes.map((change): [string, string] => ["STALE", change]),
  ["API 675-style check", check],
  ...(pump.note ? [["Note", pump.note] as [string, string]] : []),
])}
${table(
  "Draw-downs",
  [
    { head: `setting, ${pump.settingUnit}` },
    { head: `caught, ${unit}`, number: true },
    { head: "seconds", number: true },
    { head: `flow, ${unit}/min`, number: true },
    { head: "taken" },
    { head: "left out, note" },
  ],
  chain.draws.map((draw) => [
    words.entered(draw.setting),
    words.entered(draw.amount),
    words.entered(draw.seconds),
    words.number((draw.amount / draw.seconds) * 60),
    words.moment(draw.takenAt),
    [draw.leftOut ? "LEFT OUT" : "", draw.note].filter((text) => text !== "").join(": "),
  ]),
  "none yet",
)}
${table(
  "Cylinder checks",
  [
    { head: "when" },
    { head: "by" },
    { head: "setting", number: true },
    { head: "caught", number: true },
    { head: "good from, to" },
    { head: "pump" },
  ],
  checks.map((one) => {
    const band = bandFor(chain, one.setting, one.seconds);
    return [
      words.moment(one.takenAt),
      one.byName || "nobody named",
      `${words.number(one.setting)} ${settingWords(pump)}`,
      `${words.entered(one.amount)} ${unit} in ${words.entered(one.seconds)} s`,
      band.ok
        ? `${words.number(band.value.low, 3)} to ${words.number(band.value.high, 3)} ${unit}`
        : `no band: ${band.message}`,
      !band.ok
        ? "not judged"
        : one.amount >= band.value.low && one.amount <= band.value.high
          ? "within its band"
          : "OUTSIDE its band",
    ];
  }),
  "none made",
)}`;
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
    return markup`<section><h2>Machine</h2><p class="gap">No machine is entered.</p></section>`;
  return markup`<section><h2>Machine</h2>${machines.map(
    (machine) => markup`<h3>${machine.label}</h3>
${facts([
  [
    "Effective width",
    machine.effectiveWidthM === null ? "not given" : `${words.entered(machine.effectiveWidthM)} m`,
  ],
  [
    "Hydraulic limit",
    machine.hydraulicLimitM3PerH === null
      ? "not given"
      : words.both(machine.hydraulicLimitM3PerH, "flowM3PerH"),
  ],
  [
    "Feed solids",
    machine.feedLowPct === null || machine.feedHighPct === null
      ? "not given"
      : `${words.entered(machine.feedLowPct)} to ${words.entered(machine.feedHighPct)} %`,
  ],
  [
    "Loading limits",
    machine.loadings.length === 0
      ? "not given"
      : machine.loadings
          .map(
            ({ sludgeClass, kgPerHPerM }) =>
              `${sludgeClass} ${words.both(kgPerHPerM, "loadingKgPerHPerM", 3)}`,
          )
          .join("; "),
  ],
  ["Class of sludge that counts", machine.loadingClass || "not picked"],
  ...(machine.note ? [["Note", machine.note] as [string, string]] : []),
])}
${table(
  "The machine's own limits against each feed case",
  [
    { head: "check" },
    { head: "feed case" },
    { head: "value", number: true },
    { head: "limits" },
    { head: "state" },
    { head: "what to do" },
  ],
  cases.flatMap((one) =>
    machineChain(machine, one.feed, sample).map(({ title, figure, quantity, check }) => [
      title,
      one.feedCase.label,
      figure.value === null ? "not known" : words.both(figure.value, quantity, 3),
      limitWords(check.low, check.high, quantity, words),
      check.state,
      check.words,
    ]),
  ),
  "no feed case",
)}`,
  )}<p>Outside a limit: lower the load or the flow, and ask the machine's supplier and a licensed engineer.</p></section>`;
}

function limitWords(low: number | null, high: number | null, kind: QuantityKind, words: PaperWords): string {
  if (low !== null && high !== null) return words.range(low, high, kind);
  if (high !== null) return `at most ${words.both(high, kind, 3)}`;
  return low === null ? "not given" : `at least ${words.both(low, kind, 3)}`;
}
