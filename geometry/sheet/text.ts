import type { Estimate } from '../estimate.ts';
import { balanceLines, PROPOSAL_HEADS, proposalRows, VECTOR_HEADS, vectorRows } from './balance-text.ts';
import { basisOf } from './basis.ts';
import {
  clearanceLines,
  LEVER_HEADS,
  leverRows,
  RADIUS_HEADS,
  radiusRows,
  STATE_HEADS,
  stateRows,
  VANE_HEADS,
  vaneRows,
} from './clearance-text.ts';
import { figure, gauge, within } from './figure.ts';
import {
  ACCEPTANCE_HEADS,
  acceptanceRows,
  DUTY_HEADS,
  dutyRows,
  flowLines,
  POINT_HEADS,
  pointRows,
} from './flow-text.ts';
import { type Headline, headlines } from './headline.ts';
import { historyLines, historyNotes } from './history-text.ts';
import { MIX_HEADS, mixCells, scaleText } from './mix-text.ts';
import { placeText, stretchesText } from './place-text.ts';
import { climateLines, combText, dayLines, LOG_HEADS, logRows, PLAN_HEADS, planRows } from './plan-text.ts';
import { READINGS_HEADS, readingsLines, readingsRows } from './readings-text.ts';
import { type PartResult, type Result, toResult } from './result.ts';
import { sectionLines } from './sheet-sections.ts';
import { textTable, wrapped } from './text-table.ts';
import { THIN_HEADS, thinRows, WALL_HEADS, wallLines, wallRows } from './wall-text.ts';

const WIDTH = 100;
/** Longer lists end in a count: the terminal is for reading, the result has them all. */
const MOST_ROWS = 40;
/** A part with more faces than this shows the worn ones alone. */
const FEW_FACES = 4;

/** The sheet in plain text for a terminal, about 100 columns wide: figures first, then where, how, and what to watch. */
export function sheetText(estimate: Estimate): string {
  const result = toResult(estimate);
  const { title } = estimate.job;
  const sections: readonly (readonly string[])[] = [
    wrapped(title.trim() === '' ? 'Repair sheet' : title, WIDTH, ''),
    headlines(result).flatMap(headlineLines),
    titled('Faces', facesTable(result)),
    ...result.parts.map((part) =>
      titled(`Regions of ${part.id}, deepest first`, regionsTable(estimate, part)),
    ),
    ...result.parts.map(({ id }, i) => titled(`Sections of ${id}`, bullets(sectionLines(estimate, i)))),
    titled('Metal left', [...bullets(wallLines(result)), ...limited(WALL_HEADS, wallRows(estimate, result))]),
    titled('Thin places', limited(THIN_HEADS, thinRows(estimate, result))),
    titled(
      'Wear so far',
      result.history === null
        ? []
        : bullets([...historyLines(result.history), ...historyNotes(result.history)]),
    ),
    titled('Gauge readings', readingsSection(estimate, result)),
    titled('Weather and putty', bullets(climateLines(result))),
    titled(`Mixes, each within ${within(result.filler.workingTime)} min`, mixesTable(estimate, result)),
    titled('Coats', coatsTable(estimate, result)),
    titled('Balance', balanceSection(result)),
    titled('Clearance', clearanceSection(estimate, result)),
    titled('Plan', [...bullets(dayLines(result)), ...limited(PLAN_HEADS, planRows(result))]),
    titled('Flow test', flowSection(result)),
    titled('Done', limited(LOG_HEADS, logRows(result))),
    titled(
      'Warnings',
      bullets(result.warnings.map(({ field, text }) => (field === undefined ? text : `${field}: ${text}`))),
    ),
    titled('Take care', bullets(result.cautions.map(({ text, source }) => `${text} [${source}]`))),
    titled(
      'How it was worked out',
      bullets(basisOf(estimate, result).map(({ what, how, source }) => `${what}: ${how} [${source}]`)),
    ),
  ];
  const text = sections
    .filter((lines) => lines.length > 0)
    .map((lines) => lines.join('\n'))
    .join('\n\n');
  // Names come from the file: what steers a terminal must not.
  return `${text.replace(/[^\P{Cc}\n]/gu, '')}\n`;
}

function headlineLines({ lead, notes }: Headline): string[] {
  return [lead, ...notes.flatMap((note) => wrapped(`    ${note}`, WIDTH, '    '))];
}

function facesTable({ parts }: Result): string[] {
  const sound = (id: string, count: number): string => `  ${id}: ${count} faces without wear are not listed`;
  const left = parts.map(({ id, faces }) => ({ id, count: faces.length - shownFaces(faces).length }));
  const rows = parts.flatMap(({ id, faces }) =>
    shownFaces(faces).map((face) => [
      id,
      face.face,
      figure(face.area),
      figure(face.wornArea),
      gauge(face.deepest),
      figure(face.lostVolume),
      figure(face.fillVolume),
      figure(face.leftVolume),
    ]),
  );
  const heads = ['part', 'face', '>area cm2', '>worn cm2', '>deepest mm', '>lost mL', '>fill mL', '>left mL'];
  return [...limited(heads, rows), ...left.flatMap(({ id, count }) => (count > 0 ? [sound(id, count)] : []))];
}

/** All faces of a plate; of an impeller, which has dozens, the worn ones. */
function shownFaces(faces: PartResult['faces']): PartResult['faces'] {
  return faces.length > FEW_FACES
    ? faces.filter(({ wornArea, deepest }) => wornArea > 0 || deepest > 0)
    : faces;
}

function regionsTable(estimate: Estimate, part: PartResult): string[] {
  const rows = part.regions.map(
    ({ id, face, at, area, deepest, lostVolume, fillVolume, action, overruled }, i) => [
      String(i + 1),
      id,
      gauge(deepest),
      figure(area),
      figure(lostVolume),
      figure(fillVolume),
      overruled ? `${action} (chosen)` : action,
      placeText(estimate, part.id, face, at),
    ],
  );
  const heads = ['>no', 'region', '>deepest mm', '>area cm2', '>lost mL', '>fill mL', 'do', 'deepest at'];
  return limited(heads, rows);
}

function mixesTable(estimate: Estimate, { filler }: Result): string[] {
  const rows = filler.batches.map((batch) => [
    String(batch.number),
    ...mixCells(batch),
    stretchesText(estimate, batch.covers),
  ]);
  return [
    ...bullets([scaleText(filler.batches, filler.selfMixing, estimate.job.filler)]),
    ...limited(['>no', ...MIX_HEADS, 'goes to'], rows),
  ];
}

function coatsTable({ job }: Estimate, { coat }: Result): string[] {
  const mixes = coat.layers.flatMap((layer) => layer.mixes.map((mix) => ({ layer, mix })));
  const rows = mixes.map(({ layer, mix }) => [
    String(layer.number),
    layer.mixes.length > 1 ? `${mix.number} of ${layer.mixes.length}` : '',
    ...mixCells(mix),
  ]);
  return [
    ...bullets([
      ...(coat.layers.length > 0 ? [combText(coat)] : []),
      scaleText(
        mixes.map(({ mix }) => mix),
        coat.selfMixing,
        job.coat,
      ),
    ]),
    ...limited(['>coat', 'mix', ...MIX_HEADS], rows),
  ];
}

/** What the vectors mean, the vectors, and what can be done. */
function balanceSection({ balance }: Result): string[] {
  if (balance === null) return [];
  return [
    ...bullets(balanceLines(balance)),
    ...limited(VECTOR_HEADS, vectorRows(balance)),
    ...limited(PROPOSAL_HEADS, proposalRows(balance)),
  ];
}

/** What the runs say of each other, what each does at duty, the guarantee, and the points. */
function flowSection({ flowTest }: Result): string[] {
  if (flowTest === null || flowTest.runs.length === 0) return [];
  return [
    ...bullets(flowLines(flowTest)),
    ...limited(DUTY_HEADS, dutyRows(flowTest)),
    ...limited(ACCEPTANCE_HEADS, acceptanceRows(flowTest)),
    ...limited(POINT_HEADS, pointRows(flowTest)),
  ];
}

/** What the gap means, its states, vane by vane, against the radius, and what each lever would do. */
function clearanceSection(estimate: Estimate, { clearance }: Result): string[] {
  if (clearance === null) return [];
  return [
    ...bullets(clearanceLines(estimate, clearance)),
    ...limited(STATE_HEADS, stateRows(clearance)),
    ...limited(VANE_HEADS, vaneRows(clearance)),
    ...limited(RADIUS_HEADS, radiusRows(clearance)),
    ...limited(LEVER_HEADS, leverRows(clearance)),
  ];
}

function readingsSection(estimate: Estimate, result: Result): string[] {
  return [...bullets(readingsLines(estimate, result)), ...limited(READINGS_HEADS, readingsRows(result))];
}

function limited(heads: readonly string[], rows: readonly (readonly string[])[]): string[] {
  if (rows.length === 0) return [];
  const rest = rows.length - MOST_ROWS;
  return [...textTable(heads, rows.slice(0, MOST_ROWS), WIDTH), ...(rest > 0 ? [`  and ${rest} more`] : [])];
}

const bullets = (texts: readonly string[]): string[] =>
  texts.filter((text) => text !== '').flatMap((text) => wrapped(`  - ${text}`, WIDTH, '    '));

const titled = (title: string, lines: readonly string[]): string[] =>
  lines.length === 0 ? [] : [title, ...lines];
