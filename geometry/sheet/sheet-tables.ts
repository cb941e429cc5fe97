import type { Estimate } from '../estimate.ts';
import type { BalanceResult } from './balance-result.ts';
import { PROPOSAL_HEADS, proposalRows, VECTOR_HEADS, vectorRows } from './balance-text.ts';
import type { ClearanceResult } from './clearance-result.ts';
import {
  LEVER_HEADS,
  leverRows,
  RADIUS_HEADS,
  radiusRows,
  STATE_HEADS,
  stateRows,
  VANE_HEADS,
  vaneRows,
} from './clearance-text.ts';
import { figure, gauge, plain, within } from './figure.ts';
import type { FlowTestResult } from './flow-result.ts';
import {
  ACCEPTANCE_HEADS,
  acceptanceRows,
  DUTY_HEADS,
  dutyRows,
  POINT_HEADS,
  pointRows,
} from './flow-text.ts';
import { html, type Markup } from './markup.ts';
import { MIX_HEADS, mixCells, scaleText } from './mix-text.ts';
import { placeText, stretchesText } from './place-text.ts';
import { combText, LOG_HEADS, logRows, PLAN_HEADS, planRows } from './plan-text.ts';
import { READINGS_HEADS, readingsRows } from './readings-text.ts';
import type { PartResult, Result } from './result.ts';
import { typeset } from './typeset.ts';
import { THIN_HEADS, thinRows, WALL_HEADS, wallRows } from './wall-text.ts';

/** Rows on paper; what is beyond is counted. The result lists all. */
const MOST_ROWS = 60;

/** Numbers stand to the right; a tick column holds an empty box a row, for a pen. */
interface Column {
  readonly head: string;
  readonly kind: 'number' | 'word' | 'tick';
}

const number = (head: string): Column => ({ head, kind: 'number' });
const word = (head: string): Column => ({ head, kind: 'word' });
const tick = (head: string): Column => ({ head, kind: 'tick' });

/** The damage regions of one part, deepest first, numbered as on its pictures. */
export function regionsTable(estimate: Estimate, part: PartResult): Markup {
  return table(
    `Regions of ${part.id}, deepest first`,
    [
      number('No'),
      word('Face'),
      number('Deepest mm'),
      number('Area cm2'),
      number('Lost mL'),
      number('Fill mL'),
      word('Do'),
      word('Deepest at'),
    ],
    part.regions.map(({ face, at, area, deepest, lostVolume, fillVolume, action, overruled }, i) => [
      String(i + 1),
      face,
      gauge(deepest),
      figure(area),
      figure(lostVolume),
      figure(fillVolume),
      overruled ? `${action}, chosen by hand` : action,
      placeText(estimate, part.id, face, at),
    ]),
  );
}

/** One row a mix: what goes into the bowl and where it goes on the part, with a box to tick. */
export function mixesTable(estimate: Estimate, { filler }: Result): Markup {
  return html`${table(
    `Mixes of ${estimate.job.filler.name || 'putty'}, each in place within ${within(filler.workingTime)} min`,
    [number('Mix'), ...headColumns(MIX_HEADS), word('Goes to'), tick('Done')],
    filler.batches.map((batch) => [
      String(batch.number),
      ...mixCells(batch),
      stretchesText(estimate, batch.covers),
      '',
    ]),
  )}
${note(scaleText(filler.batches, filler.selfMixing, estimate.job.filler))}`;
}

/** One row a mix of a coat. */
export function coatsTable({ job }: Estimate, { coat }: Result): Markup {
  const mixes = coat.layers.flatMap((layer) => layer.mixes.map((mix) => ({ layer, mix })));
  const scale = scaleText(
    mixes.map(({ mix }) => mix),
    coat.selfMixing,
    job.coat,
  );
  return html`${table(
    `Coats of ${job.coat.name || 'coat'}, ${figure(coat.wetFilm)} um wet each, each mix in place within ${within(coat.workingTime)} min`,
    [number('Coat'), word('Mix'), ...headColumns(MIX_HEADS), tick('Done')],
    mixes.map(({ layer, mix }) => [
      String(layer.number),
      layer.mixes.length > 1 ? `${mix.number} of ${layer.mixes.length}` : '',
      ...mixCells(mix),
      '',
    ]),
  )}
${note(coat.layers.length > 0 ? combText(coat) : '')}
${note(scale)}`;
}

/** Steps of the day, with a box to tick. */
export function planTable(result: Result): Markup {
  return table(
    'Plan',
    [...headColumns(PLAN_HEADS), tick('Done')],
    planRows(result).map((row) => [...row, '']),
  );
}

/** What was done when, as it was noted at the bench. */
export function logTable(result: Result): Markup {
  return table('Done', headColumns(LOG_HEADS), logRows(result));
}

/** The packs to buy for both materials; nothing when the job lists no packs. */
export function packsTable({ job }: Estimate, { filler, coat }: Result): Markup {
  const rows = [
    ...filler.packs.map(({ label, count }) => [job.filler.name || 'putty', String(count), label]),
    ...coat.packs.map(({ label, count }) => [job.coat.name || 'coat', String(count), label]),
  ];
  return table('Packs to buy', [word('Material'), number('Count'), word('Pack')], rows);
}

/** One row a wall, and one a place that is too thin. */
export function wallTables(estimate: Estimate, result: Result): Markup {
  return html`${table('Walls', headColumns(WALL_HEADS), wallRows(estimate, result))}
${table('Thin places, thinnest first', headColumns(THIN_HEADS), thinRows(estimate, result))}`;
}

/** One row a mark of gauge readings: how many, and what they leave open. */
export function readingsTable(result: Result): Markup {
  return table('Gauge readings', headColumns(READINGS_HEADS), readingsRows(result));
}

/** The vectors, and what can be done about them. */
export function balanceTables(balance: BalanceResult): Markup {
  return html`${table('Unbalance', headColumns(VECTOR_HEADS), vectorRows(balance))}
${table('Ways to bring it inside, least work first', headColumns(PROPOSAL_HEADS), proposalRows(balance))}`;
}

/** The gap in each state, vane by vane, against the radius, and what would bring it in. */
export function clearanceTables(clearance: ClearanceResult): Markup {
  return html`${table('Before and after', headColumns(STATE_HEADS), stateRows(clearance))}
${table('Gap by vane', headColumns(VANE_HEADS), vaneRows(clearance))}
${table('Gap by radius', headColumns(RADIUS_HEADS), radiusRows(clearance))}
${table('What each change alone would do, least work first', headColumns(LEVER_HEADS), leverRows(clearance))}`;
}

/** What each run does at duty, the guarantee, and every point at rated speed. */
export function flowTables(flowTest: FlowTestResult): Markup {
  const { duty, ratedSpeed } = flowTest;
  return html`${table(`At duty, ${plain(duty)} m3/h at ${plain(ratedSpeed)} r/min`, headColumns(DUTY_HEADS), dutyRows(flowTest))}
${table('Guarantee', headColumns(ACCEPTANCE_HEADS), acceptanceRows(flowTest))}
${table(`Points at ${plain(ratedSpeed)} r/min`, headColumns(POINT_HEADS), pointRows(flowTest))}`;
}

/** Heads as the terminal has them, with `>` before a number. */
function headColumns(heads: readonly string[]): Column[] {
  return heads.map((head) => {
    const words = head.replace('>', '');
    // A unit stays as it is written.
    const shown = words.includes('.') ? words : words.charAt(0).toUpperCase() + words.slice(1);
    return head.startsWith('>') ? number(shown) : word(shown);
  });
}

function table(caption: string, columns: readonly Column[], rows: readonly (readonly string[])[]): Markup {
  if (rows.length === 0) return html``;
  const rest = rows.length - MOST_ROWS;
  return html`<table>
<caption>${typeset(caption)}</caption>
<thead><tr>${columns.map((column) => html`<th scope="col" class="sheet-${column.kind}">${typeset(column.head)}</th>`)}</tr></thead>
<tbody>
${rows.slice(0, MOST_ROWS).map((row) => html`<tr>${row.map((cell, i) => html`<td class="sheet-${columns[i].kind}">${typeset(cell)}</td>`)}</tr>\n`)}
</tbody>
</table>
${rest > 0 ? html`<p class="sheet-rest">and ${rest} more</p>` : null}`;
}

const note = (text: string): Markup =>
  text === '' ? html`` : html`<p class="sheet-rest">${typeset(text)}</p>`;
