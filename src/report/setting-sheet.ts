import { plantCautions } from "../study/cautions.ts";
import { settingWords } from "../study/derive/plant-pump.ts";
import { methodVersion } from "../study/derive/decision.ts";
import type { Paper } from "./paper.ts";
import { markup, type Markup } from "./markup.ts";
import { historyWords } from "./paper-input.ts";
import { ruleWords } from "./rule-words.ts";
import type { SettingGrid } from "./setting-grid.ts";
import { doseRange, restsOn } from "./sheet-basis.ts";
import { bandWords, sheetFacts, type PolymerFacts, type SheetFacts, type SheetInput } from "./sheet-facts.ts";
import { sheetStyle } from "./style.ts";
import type { PaperWords } from "./words.ts";

/** longest piece of free text on the one page; the report has it whole */
const longest = 120;
const short = (text: string) =>
  text.length > longest ? `${text.slice(0, longest).trimEnd()}… (whole in the report)` : text;

/** The setting sheet: one page of A4 or Letter for the panel, for one series and one feed case. */
export function settingSheet(input: SheetInput): Paper {
  const facts = sheetFacts(input);
  return {
    title: `Setting sheet: ${facts.study?.name ?? "study"}`,
    style: sheetStyle,
    article: sheetArticle(facts, input),
  };
}

function sheetArticle(facts: SheetFacts, input: SheetInput): Markup {
  const { polymers, words } = facts;
  const cards =
    polymers.length > 0
      ? polymers.map(card)
      : markup`<section class="card"><p class="setting none">No setting. Missing: ${facts.missing ?? "the polymers"}.</p></section>`;
  return markup`<article class="paper sheet">
${banners(facts)}
${head(facts)}
<div class="${polymers.length > 1 ? "cards two" : "cards one"}">${cards}</div>
${notes(polymers, words)}
<section class="cautions"><h2>Cautions</h2>
<ul>${plantCautions().map((line) => markup`<li>${line}</li>`)}</ul></section>
${approval(facts)}
${restsOn(facts, input.now)}
<p class="foot">Printed ${words.moment(input.now)} by Flocwright ${input.version} (methods ${methodVersion}); ${historyWords(input.history, 16)}.</p>
</article>`;
}

function banners({ status, reasons, study }: SheetFacts): Markup[] {
  const out: Markup[] = [];
  if (study?.invented)
    out.push(markup`<p class="invented">Invented demo data: set no pump by this sheet.</p>`);
  if (status === "not approved") out.push(markup`<p class="banner">NOT APPROVED: for discussion only</p>`);
  if (status === "out of date")
    out.push(
      markup`<div class="banner"><p>OUT OF DATE: set no pump by this</p><p class="why">${reasonWords(reasons)}</p></div>`,
    );
  return out;
}

/** The first reason for being out of date, and how many more there are. */
function reasonWords([first = "an input moved", ...more]: string[]): string {
  const rest = more.length === 0 ? "" : ` And ${more.length} more: see the Plant room.`;
  return `${capital(short(first))}.${rest}`;
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

function head({ study, series, feed, words }: SheetFacts): Markup {
  const flow = feed?.flowM3PerH ?? null;
  const solids = feed?.totalSolidsPct ?? null;
  const solidsFrom = feed?.feedCase.totalSolidsPct == null ? " of the sample" : "";
  const line = feed
    ? markup`For feed <strong>${feed.feedCase.label}</strong> (${feed.feedCase.size}):
${flow === null ? "flow missing" : words.both(flow, "flowM3PerH")},
${solids === null ? "TS missing" : `TS ${words.number(solids, 3)} %${solidsFrom}`}, DS ${words.figure(feed.load)}.`
    : markup`Feed case: missing.`;
  return markup`<header><div class="head"><h1>Setting sheet</h1><p><strong>${study?.name ?? ""}</strong>, series ${series.label}</p></div>
<p>${line}</p></header>`;
}

function card(one: PolymerFacts): Markup {
  const { polymer, setting } = one;
  const product = polymer.product ?? polymer.benchProduct;
  const pump = polymer.pump?.pump ?? null;
  const rows: [string, string | null][] = [
    ["Dose", `${one.dose} = ${one.asSupplied}`],
    ["Solution", one.solution],
    ["Water", one.water],
    ["Injected at", polymer.makeDown?.injectionPoint || null],
  ];
  const what = pump?.stream === "neat" ? "neat product" : "solution";
  return markup`<section class="card">
<h2><span class="letter ${polymer.letter}">${polymer.letter.toUpperCase()}</span> ${product.label}${product.lot ? `, ${product.lot}` : ""}</h2>
${pump ? markup`<p>Set <strong>${pump.label}</strong> (${what}) to</p>` : markup`<p>Pump: none entered.</p>`}
${
  setting.kind === "setting"
    ? markup`<p class="setting">${setting.text} ${setting.unit}</p><p>${setting.interval}</p>`
    : markup`<p class="setting none">${setting.text}</p>`
}
${one.flow && markup`<p class="cylinder">Expect ${one.flow}</p>`}
${one.cylinder && markup`<p class="cylinder">${one.cylinder}</p>`}
${one.bandNote && markup`<p>${one.bandNote}</p>`}
<div>${rows.map(([name, text]) => text !== null && markup`<p><strong>${name}:</strong> ${text}</p>`)}</div>
${one.grid && pump && gridTable(one.grid, settingWords(pump))}
</section>`;
}

/** How to read the cards, once for all of them. */
function notes(polymers: PolymerFacts[], words: PaperWords): Markup | null {
  const lines: string[] = [];
  if (polymers.some(({ hasBand }) => hasBand)) lines.push(bandWords(polymers, words));
  const beyond = polymers.some(({ grid }) =>
    grid?.rows.some(({ cells }) => cells.some(({ kind }) => kind !== "setting")),
  );
  if (beyond)
    lines.push("Table: above and below mean beyond the settings proven by draw-down. Set none of these.");
  return lines.length === 0 ? null : markup`<p class="notes">${lines.join(" ")}</p>`;
}

const cellWords = { above: "above", below: "below", missing: "no line" } as const;

function gridTable(grid: SettingGrid, unit: string): Markup {
  return markup`<table><caption>Setting, ${unit}, by feed flow and TS in %</caption>
<thead><tr><th scope="col">m³/h (gal/min)</th>${grid.solidsPct.map((ts) => markup`<th scope="col" class="num">${ts}</th>`)}</tr></thead>
<tbody>${grid.rows.map(
    (
      row,
    ) => markup`<tr class="${row.isThisCase ? "here" : ""}"><th scope="row">${row.flow}${row.label && markup`<span class="case"> ${row.label}</span>`}</th>
${row.cells.map((cell) =>
  cell.kind === "setting"
    ? markup`<td class="num">${cell.text}</td>`
    : markup`<td class="num out">${cellWords[cell.kind]}</td>`,
)}</tr>`,
  )}</tbody></table>
`;
}

function approval(facts: SheetFacts): Markup {
  const { decision, table, words, validUntil } = facts;
  const until = `Valid until: ${validUntil === null ? "not set" : `${words.moment(validUntil)}, by the pumps' calibration`}.`;
  const settings = table.approval
    ? ` Settings approved by ${table.approval.byName}, ${words.moment(table.approval.at)}.`
    : " Settings: approved by nobody yet.";
  if (!decision) return markup`<p class="approval"><strong>Dose approved by: nobody.</strong> ${until}</p>`;
  const one = decision.decision;
  return markup`<p class="approval"><strong>Dose approved by ${one.byName}, ${words.moment(one.at)}.${settings}</strong> ${until}
${doseRange(facts)}.
Rule: ${ruleWords[one.rule]}. Reason: ${short(one.reason)}</p>`;
}
