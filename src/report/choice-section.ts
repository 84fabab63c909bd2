import type { RuleResult } from "../choice/rules.ts";
import { limitsOf } from "../study/derive/choice.ts";
import type { RecordOf, StudyState } from "../study/schema/records.ts";
import { costFigure, limitsFigure } from "./choice-plots.ts";
import { markup, type Markup } from "./markup.ts";
import { draws, missChance, savingOf, seed } from "./rule-chances.ts";
import type { SeriesReport } from "./series-report.ts";
import { facts, table } from "./table.ts";
import type { PaperWords } from "./words.ts";
import { doseReportWords } from "../words/dose-report.ts";
import { onPaperWords } from "../words/on-paper.ts";

/** Limits, working window, the rules side by side and every decision, withdrawn ones too. */
export function choiceSection(state: StudyState, one: SeriesReport, words: PaperWords): Markup {
  const currency = state.study["study"]?.currency ?? "";
  return markup`<h3>${doseReportWords.choice}</h3>
${limitsBlock(one, words)}
${limitsFigure(one, words)}
${one.pair ? pairBlock(one, words, currency) : rulesBlock(one, words, currency)}
${costFigure(one, currency, words)}
${decisionsBlock(state, one, words)}`;
}

function limitsBlock({ chain, targets, choice, pair }: SeriesReport, words: PaperWords): Markup {
  const limits = limitsOf(targets, chain.series.turbidityUnit, (value) => words.entered(value));
  if (limits.length === 0) return markup`<p class="gap">${doseReportWords.limits.noneSet}</p>`;
  const spans = (list: { low: number; high: number }[]) =>
    list.length === 0
      ? doseReportWords.limits.atNoDose
      : list.map(({ low, high }) => words.range(low, high, "doseKgPerT")).join("; ");
  const window = choice?.window;
  return markup`${table(
    doseReportWords.limits.caption,
    [{ head: doseReportWords.limits.limit }, { head: doseReportWords.limits.holds }],
    limits.map((limit) => {
      const bar = choice?.bars.find((found) => found.limit.response === limit.response);
      return [
        limit.words,
        bar ? spans(bar.bound) : pair ? doseReportWords.limits.onSurface : doseReportWords.limits.notJudged,
      ];
    }),
    onPaperWords.none,
  )}${
    window &&
    (window.kind === "window"
      ? markup`<p>${doseReportWords.limits.window(spans(window.spans))}</p>`
      : markup`<p class="warning">${window.sentence}</p>`)
  }`;
}

const expectedColumns = [
  { response: "turbidity_ntu", head: "turbidity" },
  { response: "cake_ts_pct", head: "cake" },
  { response: "capture_pct", head: "capture" },
] as const;

function rulesBlock(one: SeriesReport, words: PaperWords, currency: string): Markup {
  const { choice, targets } = one;
  if (!choice) return markup`<p class="gap">${doseReportWords.rules.none}</p>`;
  return markup`${table(
    doseReportWords.rules.caption,
    [
      { head: doseReportWords.rules.rule },
      { head: doseReportWords.rules.dose, number: true },
      { head: doseReportWords.rules.range, ranges: true },
      { head: doseReportWords.rules.cost(currency), number: true },
      ...expectedColumns.map(({ head }) => ({ head: doseReportWords.rules[head], number: true })),
      { head: doseReportWords.rules.edge },
      { head: doseReportWords.rules.miss, number: true },
      ...(targets?.presentDoseKgPerT == null ? [] : [{ head: doseReportWords.rules.againstToday(currency) }]),
    ],
    choice.rules.map((rule) => ruleRow(one, rule, words)),
    onPaperWords.none,
  )}${choice.rules.filter(({ why }) => why).map(({ words: name, why }) => markup`<p>${doseReportWords.rules.why(capital(name), why)}</p>`)}<p>${doseReportWords.rules.chance(draws, seed)}</p>${choice.costNote && markup`<p class="warning">${choice.costNote}</p>`}`;
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

function ruleRow(one: SeriesReport, rule: RuleResult, words: PaperWords): string[] {
  const today = one.targets?.presentDoseKgPerT == null ? [] : [""];
  if (rule.dose === null) return [rule.words, onPaperWords.none, "", "", "", "", "", "", "", ...today];
  const write = words.bareInterval(rule.dose, rule.low, rule.high, "doseKgPerT");
  const end = (value: number | null) => (value === null ? onPaperWords.open : write(value));
  return [
    rule.words,
    write(rule.dose),
    rule.low === null && rule.high === null ? "–" : onPaperWords.range(end(rule.low), end(rule.high)),
    rule.cost?.total == null ? doseReportWords.rules.notPriced : words.money(rule.cost.total),
    ...expectedColumns.map(({ response }) => {
      const found = rule.expected.find((one) => one.response === response);
      return found && Number.isFinite(found.mean)
        ? words.interval(found.mean, found.low, found.high)(found.mean)
        : "–";
    }),
    rule.edge
      ? rule.edge.distance === 0
        ? doseReportWords.rules.fails(rule.edge.words)
        : doseReportWords.rules.distance(words.both(rule.edge.distance, "doseKgPerT", 2), rule.edge.words)
      : "–",
    missWords(missChance(one, rule.dose), words),
    ...today.map(() => savingWords(one, rule.dose!, words)),
  ];
}

function missWords(chance: number | null, words: PaperWords): string {
  if (chance === null) return "–";
  return chance < 0.005 ? doseReportWords.under("1 %") : `${words.number(chance * 100, 2)} %`;
}

function savingWords(one: SeriesReport, dose: number, words: PaperWords): string {
  const saving = savingOf(one, dose);
  if (!saving) return doseReportWords.rules.noSaving;
  const write = words.interval(saving.perTDs, saving.low, saving.high);
  const signed = (value: number) => `${value > 0 ? "+" : ""}${write(value)}`;
  return doseReportWords.rules.saving(
    signed(saving.perTDs),
    signed(saving.low),
    signed(saving.high),
    words.number(saving.chanceReal * 100, 2),
  );
}

function pairBlock({ pair }: SeriesReport, words: PaperWords, currency: string): Markup {
  const cheapest = pair?.cheapest ?? null;
  if (!cheapest) return markup`<p class="gap">${doseReportWords.pair.none}</p>`;
  if (cheapest.kind === "empty") return markup`<p class="warning">${cheapest.sentence}</p>`;
  const a = words.both(cheapest.pair.a, "doseKgPerT");
  const b = words.both(cheapest.pair.b, "doseKgPerT");
  const { pair: texts } = doseReportWords;
  const byCost = cheapest.by === "cost";
  const sentence =
    cheapest.cost === null
      ? texts[byCost ? "cheapest" : "least"](a, b)
      : texts[byCost ? "cheapestAt" : "leastAt"](a, b, words.money(cheapest.cost), currency);
  return markup`<p>${sentence}</p>`;
}

function decisionsBlock(state: StudyState, one: SeriesReport, words: PaperWords): Markup {
  const all = Object.values(state.decision)
    .filter(({ seriesId }) => seriesId === one.seriesId)
    .sort((a, b) => Date.parse(b.at) - Date.parse(a.at));
  if (all.length === 0) return markup`<p class="gap">${doseReportWords.decision.none}</p>`;
  return markup`${all.map((decision) => decisionBlock(decision, one, words))}`;
}

function decisionBlock(decision: RecordOf<"decision">, one: SeriesReport, words: PaperWords): Markup {
  const inForce = one.decision?.decision.id === decision.id;
  const state = decision.withdrawn
    ? doseReportWords.decision.withdrawn
    : inForce
      ? one.decision!.word
      : doseReportWords.decision.replaced;
  const b = decision.doseBKgPerT;
  const { lowKgPerT: low, highKgPerT: high } = decision;
  const product = one.chain.stockA?.product;
  const supplied =
    product?.activePct == null || b !== null
      ? ""
      : `, ${onPaperWords.asSupplied(words.both(decision.doseAKgPerT / (product.activePct / 100), "doseKgPerT"))}`;
  const doseA = words.givenBoth(decision.doseAKgPerT, "doseKgPerT");
  const dose =
    b === null
      ? onPaperWords.active(doseA)
      : doseReportWords.decision.pair(doseA, words.givenBoth(b, "doseKgPerT"));
  return markup`<div class="decision"><p><strong>${dose}</strong>${supplied}: <strong>${state}</strong></p>
${facts([
  [
    doseReportWords.decision.goodFrom,
    low === null || high === null
      ? doseReportWords.decision.noRange
      : words.fromTo(decision.doseAKgPerT, low, high, "doseKgPerT"),
  ],
  [
    doseReportWords.decision.rule,
    `${onPaperWords.rules[decision.rule]}${decision.response ? `, ${decision.response}` : ""}`,
  ],
  [doseReportWords.decision.reason, decision.reason],
  [
    doseReportWords.decision.approved,
    doseReportWords.decision.approvedBy(
      decision.byName,
      words.moment(decision.at),
      decision.methodVersion,
      decision.snapshot.length,
    ),
  ],
  ...(inForce && one.decision!.moved
    ? [
        [doseReportWords.decision.outOfDate, doseReportWords.decision.since(one.decision!.moved)] as [
          string,
          string,
        ],
      ]
    : []),
  ...(decision.withdrawn
    ? [
        [
          doseReportWords.decision.withdrawnHead,
          doseReportWords.decision.withdrawnBy(
            decision.withdrawn.byName,
            words.moment(decision.withdrawn.at),
            decision.withdrawn.reason,
          ),
        ] as [string, string],
      ]
    : []),
])}</div>`;
}
