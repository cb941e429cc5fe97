import type { Estimate } from '../estimate.ts';
import { balanceLines } from './balance-text.ts';
import { basisOf } from './basis.ts';
import { clearanceLines } from './clearance-text.ts';
import { flowChart } from './flow-chart.ts';
import { flowLines } from './flow-text.ts';
import { gapChart } from './gap-chart.ts';
import { type Headline, headlines } from './headline.ts';
import { historyLines, historyNotes } from './history-text.ts';
import { html, type Markup } from './markup.ts';
import { climateLines, dayLines } from './plan-text.ts';
import { readingsLines } from './readings-text.ts';
import { type Result, toResult } from './result.ts';
import { MILLIMETRES } from './section-svg.ts';
import { sheetPictures } from './sheet-pictures.ts';
import { sheetSections } from './sheet-sections.ts';
import { SHEET_STYLE } from './sheet-style.ts';
import {
  balanceTables,
  clearanceTables,
  coatsTable,
  flowTables,
  logTable,
  mixesTable,
  packsTable,
  planTable,
  readingsTable,
  regionsTable,
  wallTables,
} from './sheet-tables.ts';
import { typeset } from './typeset.ts';
import { wallPictures } from './wall-pictures.ts';
import { wallLines } from './wall-text.ts';

/**
 * The printable sheet as an HTML fragment: quantities first, then where they go, how they were found and what to watch.
 * Everything a person wrote is escaped; no style attribute, script or address is in it, so that a strict content policy lets it
 * through. Looks as meant with `SHEET_STYLE`.
 */
export function sheetBody(estimate: Estimate): string {
  return bodyOf(estimate).markup;
}

/** The same sheet as one page that needs nothing beside it. */
export function sheetPage(estimate: Estimate): string {
  return html`<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${titleOf(estimate)}</title>
<style>${{ markup: SHEET_STYLE }}</style>
</head>
<body>
${bodyOf(estimate)}
</body>
</html>
`.markup;
}

function bodyOf(estimate: Estimate): Markup {
  const result = toResult(estimate);
  return html`<article class="sheet">
${head(estimate)}
<section class="sheet-figures" aria-label="Quantities">
${headlines(result).map(figureCard)}
</section>
${warnings(result)}
${estimate.parts.map(
  (part, i) => html`<section aria-label="Wear of ${part.id}">
${sheetPictures(part, estimate.job.parts[i].marks, i + 1)}
${sheetSections(estimate, i)}
${regionsTable(estimate, result.parts[i])}
</section>
`,
)}
${walls(estimate, result)}
${history(result)}
${readings(estimate, result)}
<section aria-label="Materials">
${climateLines(result).length === 0 ? null : html`<h2>Weather and putty</h2>\n`}${lines(climateLines(result))}
${mixesTable(estimate, result)}
${coatsTable(estimate, result)}
${packsTable(estimate, result)}
</section>
${balanceSection(result)}
${clearanceSection(estimate, result)}
${daySection(result)}
${flowSection(result)}
${cautions(result)}
${basis(estimate, result)}
${signatures()}
</article>`;
}

const titleOf = ({ job }: Estimate): string => (job.title.trim() === '' ? 'Repair sheet' : job.title);

function head(estimate: Estimate): Markup {
  const { job } = estimate;
  return html`<header class="sheet-head">
<h1>${titleOf(estimate)}</h1>
<p>${job.parts.map(({ id }) => id).join(', ')}</p>
${job.notes.trim() === '' ? null : html`<p class="sheet-notes">${job.notes}</p>`}
<p class="sheet-blanks"><span>Date</span><span>Job number</span><span>Fitter</span></p>
</header>`;
}

function figureCard({ lead, notes }: Headline): Markup {
  return html`<div class="sheet-card">
<p class="sheet-lead">${typeset(lead)}</p>
${notes.map((note) => html`<p>${typeset(note)}</p>`)}
</div>
`;
}

function warnings(result: Result): Markup {
  if (result.warnings.length === 0) return html``;
  return html`<section class="sheet-warnings">
<h2>Warnings</h2>
<ul>${result.warnings.map(({ field, text }) => html`<li>${field === undefined ? null : html`<code>${field}</code> `}${typeset(text)}</li>\n`)}</ul>
</section>`;
}

function walls(estimate: Estimate, result: Result): Markup {
  if (result.parts.every(({ walls }) => walls.length === 0)) return html``;
  return html`<section>
<h2>Metal left</h2>
${lines(wallLines(result))}
${wallTables(estimate, result)}
${estimate.parts.flatMap((part, i) => wallPictures(part, i + 1))}
</section>`;
}

function history({ history }: Result): Markup {
  if (history === null) return html``;
  return html`<section>
<h2>Wear so far</h2>
${lines([...historyLines(history), ...historyNotes(history)])}
</section>`;
}

function readings(estimate: Estimate, result: Result): Markup {
  if (result.parts.every(({ readings }) => readings.length === 0)) return html``;
  return html`<section>
<h2>Gauge readings</h2>
${lines(readingsLines(estimate, result))}
${readingsTable(result)}
</section>`;
}

function balanceSection({ balance }: Result): Markup {
  if (balance === null) return html``;
  return html`<section>
<h2>Balance</h2>
${lines(balanceLines(balance))}
${balanceTables(balance)}
</section>`;
}

/** Size of the drawing of the gap, px: letters, and how high it is against its width. */
const GAP = { width: 660, text: 11.5, high: 0.42, unit: MILLIMETRES } as const;

function clearanceSection(estimate: Estimate, { clearance }: Result): Markup {
  if (clearance === null) return html``;
  const words = clearanceLines(estimate, clearance);
  return html`<section>
<h2>Clearance</h2>
${lines(words)}
<figure class="sheet-picture">
<figcaption>Gap between plate and vane tips against the radius</figcaption>
${gapChart(clearance, { title: 'Gap against the radius', description: typeset(words[0]), id: 'gap', ...GAP })}
</figure>
${clearanceTables(clearance)}
</section>`;
}

function daySection(result: Result): Markup {
  if (result.plan.length === 0 && result.log.length === 0) return html``;
  return html`<section>
<h2>The day</h2>
${lines(dayLines(result))}
${planTable(result)}
${logTable(result)}
</section>`;
}

/** Size of the curves, px: letters, and how high the plot of heads is against its width. */
const CURVES = { width: 660, text: 11.5, high: 0.3 } as const;

function flowSection({ flowTest }: Result): Markup {
  if (flowTest === null || flowTest.runs.length === 0) return html``;
  const words = flowLines(flowTest);
  return html`<section>
<h2>Flow test</h2>
${lines(words)}
${flowChart(flowTest, { title: 'Curves of the flow test', description: words.join(' '), id: 'flow-test', ...CURVES })}
${flowTables(flowTest)}
</section>`;
}

function lines(texts: readonly string[]): Markup {
  if (texts.length === 0) return html``;
  return html`<ul>${texts.map((line) => html`<li>${typeset(line)}</li>\n`)}</ul>`;
}

function cautions(result: Result): Markup {
  return html`<section>
<h2>Take care</h2>
<ul>${result.cautions.map(({ text, source }) => html`<li>${text} <cite>${source}</cite></li>\n`)}</ul>
</section>`;
}

function basis(estimate: Estimate, result: Result): Markup {
  return html`<section>
<h2>How it was worked out</h2>
<dl>${basisOf(estimate, result).map(({ what, how, source }) => html`<dt>${what}</dt><dd>${typeset(how)} <cite>${source}</cite></dd>\n`)}</dl>
</section>`;
}

function signatures(): Markup {
  return html`<section class="sheet-signatures" aria-label="Signatures">
${['Wear measured', 'Filled and coated', 'Checked before restart'].map((role) => html`<p><span>${role}</span></p>\n`)}
</section>`;
}
