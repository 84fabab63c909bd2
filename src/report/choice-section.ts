import type { RuleResult } from "../choice/rules.ts";
import { limitsOf } from "../study/derive/choice.ts";
import type { RecordOf, StudyState } from "../study/schema/records.ts";
import { markup, type Markup } from "./markup.ts";
import { draws, missChance, savingOf, seed } from "./rule-chances.ts";
import { ruleWords } from "./rule-words.ts";
import type { SeriesReport } from "./series-report.ts";
import { facts, table } from "./table.ts";
import type { PaperWords } from "./words.ts";

/** Limits, working window, the rules side by side and every decision, withdrawn ones too. */
export function choiceSection(state: StudyState, one: SeriesReport, words: PaperWords): Markup {
  const currency = state.study["study"]?.currency ?? "";
  return markup`<h3>Choice of the dose</h3>
${limitsBlock(one, words)}
${one.pair ? pairBlock(one, words, currency) : rulesBlock(one, words, currency)}
${decisionsBlock(state, one, words)}`;
}

function limitsBlock({ chain, targets, choice, pair }: SeriesReport, words: PaperWords): Markup {
  const limits = limitsOf(targets, chain.series.turbidityUnit, (value) => words.entered(value));
  if (limits.length === 0) return markup`<p class="gap">No limits were set.</p>`;
  const spans = (list: { low: number; high: number }[]) =>
    list.length === 0
      ? "at no dose tested"
      : list.map(({ low, high }) => words.range(low, high, "doseKgPerT")).join("; ");
  const window = choice?.window;
  return markup`${table(
    "Limits, each by itself at the one-sided 95 % bound of the mean curve",
    [{ head: "limit" }, { head: "holds from, to" }],
    limits.map((limit) => {
      const bar = choice?.bars.find((found) => found.limit.response === limit.response);
      return [
        limit.words,
        bar
          ? spans(bar.bound)
          : pair
            ? "judged on the fitted surface, see the pair below"
            : "not judged: this response has no fitted curve",
      ];
    }),
    "none",
  )}${
    window &&
    (window.kind === "window"
      ? markup`<p>Working window: ${spans(window.spans)}.</p>`
      : markup`<p class="warning">${window.sentence}</p>`)
  }`;
}

const expectedColumns = [
  { response: "turbidity_ntu", head: "filtrate turbidity" },
  { response: "cake_ts_pct", head: "cake TS, %" },
  { response: "capture_pct", head: "capture, %" },
];

function rulesBlock(one: SeriesReport, words: PaperWords, currency: string): Markup {
  const { choice, targets } = one;
  if (!choice) return markup`<p class="gap">No rule has a dose: no curve is fitted.</p>`;
  return markup`${table(
    "The rules side by side",
    [
      { head: "rule" },
      { head: "dose, kg/t active (lb/short ton)", number: true },
      { head: "95 %, kg/t" },
      { head: `cost, ${currency} per t dry solids`, number: true },
      ...expectedColumns.map(({ head }) => ({ head, number: true })),
      { head: "to the nearest failing edge" },
      { head: "chance to miss", number: true },
      ...(targets?.presentDoseKgPerT == null ? [] : [{ head: `against today, ${currency} per t` }]),
    ],
    choice.rules.map((rule) => ruleRow(one, rule, words)),
    "none",
  )}${choice.rules.filter(({ why }) => why).map(({ words: name, why }) => markup`<p>${capital(name)}: ${why}</p>`)}<p>Chance to miss at least the likeliest limit: simulated (${String(draws)} draws, seed ${String(seed)}) from the curves' error, the dose error all jars share, the feed's drift at a fixed ratio and one jar's scatter.</p>${choice.costNote && markup`<p class="warning">${choice.costNote}</p>`}`;
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

function ruleRow(one: SeriesReport, rule: RuleResult, words: PaperWords): string[] {
  const today = one.targets?.presentDoseKgPerT == null ? [] : [""];
  if (rule.dose === null) return [rule.words, "none", "", "", "", "", "", "", "", ...today];
  const end = (value: number | null) => (value === null ? "open" : words.number(value, 3));
  const both = words.both(rule.dose, "doseKgPerT", 3).replace(/ (?:kg\/t|lb\/short ton)/g, "");
  return [
    rule.words,
    both,
    rule.low === null && rule.high === null ? "–" : `${end(rule.low)} to ${end(rule.high)}`,
    rule.cost?.total == null ? "not priced" : words.number(rule.cost.total),
    ...expectedColumns.map(({ response }) => {
      const found = rule.expected.find((one) => one.response === response);
      return found && Number.isFinite(found.mean) ? words.number(found.mean, 3) : "–";
    }),
    rule.edge
      ? `${rule.edge.distance === 0 ? "fails" : `${words.number(rule.edge.distance, 2)} kg/t`}: ${rule.edge.words}`
      : "–",
    missWords(missChance(one, rule.dose), words),
    ...today.map(() => savingWords(one, rule.dose!, words)),
  ];
}

function missWords(chance: number | null, words: PaperWords): string {
  if (chance === null) return "–";
  return chance < 0.005 ? "under 1 %" : `${words.number(chance * 100, 2)} %`;
}

function savingWords(one: SeriesReport, dose: number, words: PaperWords): string {
  const saving = savingOf(one, dose);
  if (!saving) return "not priced, or today's dose lies outside those tested";
  const signed = (value: number) => `${value > 0 ? "+" : ""}${words.number(value, 3)}`;
  return `${signed(saving.perTDs)} (${signed(saving.low)} to ${signed(saving.high)}), cheaper with a chance of ${words.number(saving.chanceReal * 100, 2)} %`;
}

function pairBlock({ pair }: SeriesReport, words: PaperWords, currency: string): Markup {
  const cheapest = pair?.cheapest ?? null;
  if (!cheapest)
    return markup`<p class="gap">No limit of this series can be judged, so no pair was picked by rule.</p>`;
  if (cheapest.kind === "empty") return markup`<p class="warning">${cheapest.sentence}</p>`;
  const { a, b } = cheapest.pair;
  const cost =
    cheapest.cost === null ? "" : ` at ${words.number(cheapest.cost)} ${currency} per t dry solids`;
  return markup`<p>${cheapest.by === "cost" ? "Cheapest" : "Least polymer"} within all limits: A ${words.both(a, "doseKgPerT", 3)}, B ${words.both(b, "doseKgPerT", 3)} active${cost}.</p>`;
}

function decisionsBlock(state: StudyState, one: SeriesReport, words: PaperWords): Markup {
  const all = Object.values(state.decision)
    .filter(({ seriesId }) => seriesId === one.seriesId)
    .sort((a, b) => Date.parse(b.at) - Date.parse(a.at));
  if (all.length === 0) return markup`<p class="gap">No dose was approved for this series.</p>`;
  return markup`${all.map((decision) => decisionBlock(decision, one, words))}`;
}

function decisionBlock(decision: RecordOf<"decision">, one: SeriesReport, words: PaperWords): Markup {
  const inForce = one.decision?.decision.id === decision.id;
  const state = decision.withdrawn ? "withdrawn" : inForce ? one.decision!.word : "replaced by a later one";
  const b = decision.doseBKgPerT;
  const { lowKgPerT: low, highKgPerT: high } = decision;
  const product = one.chain.stockA?.product;
  const supplied =
    product?.activePct == null || b !== null
      ? ""
      : `, ${words.both(decision.doseAKgPerT / (product.activePct / 100), "doseKgPerT", 3)} as supplied`;
  return markup`<div class="decision"><p><strong>${b === null ? "" : "A "}${words.both(decision.doseAKgPerT, "doseKgPerT", 3)}${b === null ? "" : `, B ${words.both(b, "doseKgPerT", 3)}`} active</strong>${supplied}: <strong>${state}</strong></p>
${facts([
  [
    "Good from, to",
    low === null || high === null ? "no range was recorded" : words.range(low, high, "doseKgPerT"),
  ],
  ["Rule", `${ruleWords[decision.rule]}${decision.response ? `, ${decision.response}` : ""}`],
  ["Reason", decision.reason],
  [
    "Approved",
    `${decision.byName}, ${words.moment(decision.at)}, methods ${decision.methodVersion}, ${decision.snapshot.length} inputs kept with it`,
  ],
  ...(inForce && one.decision!.moved
    ? [["Out of date", `since then ${one.decision!.moved}`] as [string, string]]
    : []),
  ...(decision.withdrawn
    ? [
        [
          "Withdrawn",
          `${decision.withdrawn.byName}, ${words.moment(decision.withdrawn.at)}: ${decision.withdrawn.reason}`,
        ] as [string, string],
      ]
    : []),
])}</div>`;
}
