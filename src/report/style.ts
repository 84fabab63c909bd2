// Black on white throughout, so that a paper reads the same from any printer and under any theme of the screen.
const common = `
.paper { color: #000; background: #fff; font-family: "Source Sans 3 Variable", "Source Sans 3", "Noto Sans", Arial, "Liberation Sans", Helvetica, "DejaVu Sans Condensed", sans-serif; font-variant-numeric: tabular-nums lining-nums; overflow-wrap: anywhere; }
.paper *, .paper *::before { box-sizing: border-box; }
.paper h1, .paper h2, .paper h3, .paper h4, .paper p, .paper dl, .paper dd, .paper ul, .paper figure { margin: 0; }
.paper table { border-collapse: collapse; }
.paper th { text-align: left; font-weight: 600; }
.paper .num { text-align: right; }
.paper .lined { white-space: nowrap; }
.paper .lined::before { visibility: hidden; content: attr(data-lead); }
.paper .lined::after { visibility: hidden; content: attr(data-tail); }
.paper .letter { display: inline-block; min-width: 1.5em; padding: 0 0.25em; border: 2px solid #000; border-radius: 1em; font-weight: 700; text-align: center; }
.paper .letter.b { border-style: double; border-width: 4px; border-radius: 0; }
.paper .banner { padding: 1mm 3mm; border: 1.2mm solid #000; font-weight: 700; text-align: center; }
`;

/** The setting sheet: one page of A4 or of Letter, nothing under 11 pt, the settings largest. */
export const sheetStyle = `${common}
.paper.sheet { display: grid; gap: 1.2mm; align-content: start; width: 186mm; max-width: 100%; font-size: 11pt; line-height: 1.1; }
.paper.sheet:not(:has(.two), :has(.banner)) { font-size: 12pt; line-height: 1.15; }
.paper.sheet:has(.two) { gap: 0.7mm; line-height: 1.05; }
.sheet h1 { font-size: 15pt; white-space: nowrap; }
.sheet h2 { font-size: 12pt; }
.sheet .banner { font-size: 20pt; line-height: 1.05; }
.paper.sheet:has(.two) .banner { padding: 0.5mm 3mm; font-size: 17pt; }
.sheet .banner .why { font-size: 11pt; font-weight: 400; line-height: 1.12; }
.sheet .invented { font-weight: 700; text-align: center; }
.sheet .head { display: flex; gap: 4mm; justify-content: space-between; align-items: baseline; border-bottom: 0.6mm solid #000; }
.sheet .cards { display: grid; grid-template-columns: minmax(0, 1fr); gap: 3mm; }
.sheet .two tr:not(.here) .case { display: none; }
.sheet .cards.two { grid-template-columns: minmax(0, 1fr) minmax(0, 1fr); }
.sheet .card { display: grid; gap: 0.6mm; align-content: start; padding: 1.2mm 2mm; border: 0.5mm solid #000; }
.sheet .setting { font-size: 60pt; font-weight: 700; line-height: 1; }
.sheet .two .card { gap: 0.2mm; padding: 0.8mm 2mm; }
.sheet .two .setting { font-size: 29pt; }
.sheet .setting.none { font-size: 14pt; line-height: 1.15; }
.sheet .cylinder { font-size: 15pt; font-weight: 700; line-height: 1.1; }
.sheet .two .cylinder { font-size: 12pt; line-height: 1.05; }
.sheet table { width: 100%; line-height: 1.1; }
.sheet caption { text-align: left; font-weight: 600; }
.sheet th, .sheet td { padding: 0 1mm; border-bottom: 0.2mm solid #000; }
.sheet thead th { border-bottom-width: 0.4mm; }
.sheet tr.here th, .sheet tr.here td { font-weight: 700; border-top: 0.5mm solid #000; border-bottom: 0.5mm solid #000; }
.sheet td.out { font-style: italic; }
.sheet ul { padding-left: 4mm; }
.sheet .foot { border-top: 0.3mm solid #000; }
@media print { .paper.sheet { width: auto; } }
`;

/** The trial report: as many pages as it takes. */
export const reportStyle = `${common}
.paper.report { width: 190mm; max-width: 100%; font-size: 10pt; line-height: 1.25; }
.report section, .report header { display: block; }
.paper.report h1 { margin-bottom: 3mm; font-size: 18pt; }
.paper.report h2 { margin: 7mm 0 2mm; font-size: 14pt; border-bottom: 0.5mm solid #000; break-after: avoid; }
.paper.report h3 { margin: 4mm 0 1.5mm; font-size: 11.5pt; break-after: avoid; }
.paper.report h4 { margin: 3mm 0 1mm; font-size: 10.5pt; break-after: avoid; }
.paper.report p { margin: 1mm 0; }
.report table { width: 100%; margin: 1.5mm 0 3mm; font-size: 8.5pt; line-height: 1.2; }
.report caption { padding-bottom: 0.5mm; font-weight: 600; text-align: left; break-after: avoid; }
.report th, .report td { padding: 0.5mm 1mm; border-bottom: 0.2mm solid #777; vertical-align: top; }
.report thead th { border-bottom: 0.4mm solid #000; vertical-align: bottom; overflow-wrap: normal; }
.report thead { display: table-header-group; break-after: avoid; }
.report tbody tr:first-child { break-before: avoid; }
.report tbody th, .report tbody td { min-width: 14mm; }
.report tbody .num { min-width: 0; overflow-wrap: break-word; }
.report tbody .unbroken { overflow-wrap: normal; }
.report tr, .report .whole, .report .decision { break-inside: avoid; }
.report dl { display: grid; grid-template-columns: 36mm minmax(0, 1fr); gap: 0.3mm 3mm; }
.report dt { font-weight: 600; }
.report .gap { font-style: italic; }
.report .warning { padding-left: 2mm; border-left: 1.2mm solid #000; }
.report .decision { margin: 2mm 0; padding: 2mm; border: 0.4mm solid #000; }
.report svg { display: block; width: 100%; height: auto; }
.report figure { break-inside: avoid; }
.report .plots { display: grid; grid-template-columns: repeat(2, minmax(0, 1fr)); gap: 2mm 4mm; }
.report .pictures { display: grid; grid-template-columns: repeat(3, minmax(0, 1fr)); gap: 3mm; }
.report img { display: block; width: 100%; height: auto; }
.report figcaption { font-size: 8.5pt; }
.paper.report ul { padding-left: 5mm; }
@media print { .paper.report { width: auto; } }
`;
