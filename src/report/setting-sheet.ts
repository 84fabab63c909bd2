import { plantCautions } from "../study/cautions.ts";
import { settingWords } from "../study/derive/plant-pump.ts";
import { methodVersion } from "../study/derive/decision.ts";
import type { RecordOf } from "../study/schema/records.ts";
import type { Paper } from "./paper.ts";
import { markup, type Markup } from "./markup.ts";
import { historyWords } from "./paper-input.ts";
import type { SettingGrid } from "./setting-grid.ts";
import { doseRange, restsOn } from "./sheet-basis.ts";
import { bandWords, sheetFacts, type PolymerFacts, type SheetFacts, type SheetInput } from "./sheet-facts.ts";
import { sheetStyle } from "./style.ts";
import type { PaperWords } from "./words.ts";
import { onPaperWords } from "../words/on-paper.ts";
import { kindWords } from "../words/records.ts";
import { namedOnce } from "../words/named.ts";
import { sheetWords } from "../words/sheet.ts";

/** longest piece of free text on the one page; the report has it whole */
const longest = 120;
const short = (text: string) =>
  text.length > longest ? sheetWords.shortened(text.slice(0, longest).trimEnd()) : text;

/** The setting sheet: one page of A4 or Letter for the panel, for one series and one feed case. */
export function settingSheet(input: SheetInput): Paper {
  const facts = sheetFacts(input);
  return {
    title: sheetWords.titleOf(facts.study?.name ?? onPaperWords.study),
    style: sheetStyle,
    article: sheetArticle(facts, input),
  };
}

function sheetArticle(facts: SheetFacts, input: SheetInput): Markup {
  const { polymers, words } = facts;
  const cards =
    polymers.length > 0
      ? polymers.map(card)
      : markup`<section class="card"><p class="setting none">${sheetWords.noSetting(facts.missing ?? sheetWords.gaps.polymers)}</p></section>`;
  return markup`<article class="paper sheet">
${banners(facts)}
${head(facts)}
<div class="${polymers.length > 1 ? "cards two" : "cards one"}">${cards}</div>
${notes(polymers, words)}
<section class="cautions"><h2>${sheetWords.cautions}</h2>
<ul>${plantCautions().map((line) => markup`<li>${line}</li>`)}</ul></section>
${approval(facts)}
${restsOn(facts, input.now)}
<p class="foot">${sheetWords.printed(words.moment(input.now), input.version, methodVersion, historyWords(input.history, 16))}</p>
</article>`;
}

function banners({ status, reasons, study }: SheetFacts): Markup[] {
  const out: Markup[] = [];
  if (study?.invented) out.push(markup`<p class="invented">${sheetWords.invented}</p>`);
  if (status === "not approved") out.push(markup`<p class="banner">${sheetWords.notApproved}</p>`);
  if (status === "out of date")
    out.push(
      markup`<div class="banner"><p>${sheetWords.outOfDate}</p><p class="why">${reasonWords(reasons)}</p></div>`,
    );
  return out;
}

/** The first reason for being out of date, and how many more there are. */
function reasonWords([first = sheetWords.moved, ...more]: string[]): string {
  const reason = capital(short(first));
  return more.length === 0 ? sheetWords.reason(reason) : sheetWords.reasons(reason, more.length);
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

/** Which of the three cases it is, where its own name does not say so. */
const feedSize = ({ label, size }: RecordOf<"feedCase">) => {
  const words = onPaperWords.feedSizes[size];
  return label.toLowerCase() === words.toLowerCase() ? "" : ` (${words})`;
};

function head({ study, series, feed, words }: SheetFacts): Markup {
  const flow = feed?.flowM3PerH ?? null;
  const solids = feed?.totalSolidsPct ?? null;
  const solidsWords = feed?.feedCase.totalSolidsPct == null ? sheetWords.solidsOfSample : sheetWords.solids;
  const line = feed
    ? markup`${sheetWords.forFeed} <strong>${feed.feedCase.label}</strong>${feedSize(feed.feedCase)}:
${flow === null ? sheetWords.flowMissing : words.givenBoth(flow, "flowM3PerH")},
${solids === null ? sheetWords.solidsMissing : solidsWords(feed?.feedCase.totalSolidsPct == null ? words.givenBare(solids, "percent") : words.entered(solids))}, ${sheetWords.load(words.figure(feed.load))}.`
    : markup`${sheetWords.noFeedCase}`;
  return markup`<header><div class="head"><h1>${sheetWords.title}</h1><p><strong>${study?.name ?? ""}</strong>${sheetWords.of(namedOnce(kindWords.series.one, series.label))}</p></div>
<p>${line}</p></header>`;
}

function card(one: PolymerFacts): Markup {
  const { polymer, setting } = one;
  const product = polymer.product ?? polymer.benchProduct;
  const pump = polymer.pump?.pump ?? null;
  const rows: [string, string | null][] = [
    [sheetWords.dose, `${one.dose} = ${one.asSupplied}`],
    [sheetWords.solution, one.solution],
    [sheetWords.water, one.water],
    [sheetWords.injectedAt, polymer.makeDown?.injectionPoint || null],
  ];
  return markup`<section class="card">
<h2><span class="letter ${polymer.letter}">${polymer.letter.toUpperCase()}</span> ${product.label}${product.lot ? `, ${product.lot}` : ""}</h2>
${pump ? markup`<p>${sheetWords.setStart} <strong>${pump.label}</strong> ${sheetWords.setEnd(onPaperWords.streams[pump.stream])}</p>` : markup`<p>${sheetWords.noPump}</p>`}
${
  setting.kind === "setting"
    ? markup`<p class="setting">${setting.text} ${setting.unit}</p><p>${setting.interval}</p>`
    : markup`<p class="setting none">${setting.text}</p>`
}
${one.flow && markup`<p class="cylinder">${sheetWords.expect(one.flow)}</p>`}
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
  if (beyond) lines.push(sheetWords.beyond);
  return lines.length === 0 ? null : markup`<p class="notes">${lines.join(" ")}</p>`;
}

function gridTable(grid: SettingGrid, unit: string): Markup {
  return markup`<table><caption>${sheetWords.tableCaption(unit)}</caption>
<thead><tr><th scope="col">m³/h (gal/min)</th>${grid.solidsPct.map((ts) => markup`<th scope="col" class="num">${ts}</th>`)}</tr></thead>
<tbody>${grid.rows.map(
    (
      row,
    ) => markup`<tr class="${row.isThisCase ? "here" : ""}"><th scope="row">${row.flow}${row.label && markup`<span class="case"> ${row.label}</span>`}</th>
${row.cells.map((cell) =>
  cell.kind === "setting"
    ? markup`<td class="num">${cell.text}</td>`
    : markup`<td class="num out">${sheetWords.cells[cell.kind]}</td>`,
)}</tr>`,
  )}</tbody></table>
`;
}

function approval(facts: SheetFacts): Markup {
  const { decision, table, words, validUntil } = facts;
  const until = validUntil === null ? sheetWords.noValidity : sheetWords.validUntil(words.moment(validUntil));
  const settings = table.approval
    ? sheetWords.settingsBy(table.approval.byName, words.moment(table.approval.at))
    : sheetWords.settingsByNobody;
  if (!decision)
    return markup`<p class="approval"><strong>${sheetWords.approvedByNobody}</strong> ${until}</p>`;
  const one = decision.decision;
  return markup`<p class="approval"><strong>${sheetWords.approvedBy(one.byName, words.moment(one.at))} ${settings}</strong> ${until}
${doseRange(facts)}.
${sheetWords.ruleAndReason(onPaperWords.rules[one.rule], short(one.reason))}</p>`;
}
