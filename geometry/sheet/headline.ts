import type { PackCount } from '../material/pack.ts';
import type { Weighing } from '../material/weighing.ts';
import { balanceHeadline } from './balance-text.ts';
import { clearanceHeadline } from './clearance-text.ts';
import { counted, figure, gauge, plain, within } from './figure.ts';
import { flowHeadlines } from './flow-text.ts';
import { plusMinus } from './readings-text.ts';
import type { CoatResult, FillerResult, PartResult, Result } from './result.ts';

/** A sentence to be read from two metres, and what belongs to it. */
export interface Headline {
  readonly lead: string;
  readonly notes: readonly string[];
}

/** What to mix, then what wall each part has left, then the balance; in that order on every sheet. */
export function headlines(result: Result): Headline[] {
  const left = result.warnings.filter(({ code }) => code === 'not-worked-out').map(({ field = '' }) => field);
  const marks = left.filter((field) => field.includes('.wear['));
  const all = left.filter((field) => field.startsWith('parts['));
  return [
    noted(puttyHeadline(result.filler), all),
    noted(coatHeadline(result.coat), all),
    ...result.parts.map((part) => noted(wallHeadline(part), marks)),
    ...(result.balance === null ? [] : [balanceHeadline(result.balance)]),
    ...(result.clearance === null ? [] : [clearanceHeadline(result.clearance)]),
    ...(result.flowTest === null ? [] : flowHeadlines(result.flowTest)),
  ];
}

/** What is left out must not be overlooked: without it "nothing to fill" could be wrong. */
function noted({ lead, notes }: Headline, left: readonly string[]): Headline {
  if (left.length === 0) return { lead, notes };
  const what = counted(left.length, 'part or mark', 'parts or marks');
  return { lead, notes: [`without ${what} not worked out yet, see the warnings`, ...notes] };
}

function puttyHeadline(filler: FillerResult): Headline {
  if (filler.volume === 0) return { lead: 'Nothing to fill', notes: [] };
  const mixes = filler.batches.length > 0 ? ` in ${counted(filler.batches.length, 'mix', 'mixes')}` : '';
  return {
    lead: `Mix ${plusMinus(filler.volume, filler.standardError, 'mL')} of putty${mixes}`,
    notes: [
      ...readingsText(filler),
      portionsText(filler),
      `${counted(filler.passes, 'pass', 'passes')}, each mix in place within ${within(filler.workingTime)} min`,
      ...packsText(filler.packs),
      ...weighingText(filler.weighing),
    ],
  };
}

function coatHeadline(coat: CoatResult): Headline {
  if (coat.volume === 0) return { lead: 'Nothing to coat', notes: [] };
  return {
    lead: `Mix ${figure(coat.volume)} mL of coat for ${counted(coat.perCoat.length, 'coat', 'coats')}`,
    notes: [
      portionsText(coat),
      `${figure(coat.area)} cm2, ${figure(coat.wetFilm)} um wet each coat`,
      ...packsText(coat.packs),
      ...weighingText(coat.weighing),
    ],
  };
}

function wallHeadline({ id, thinnest, lostVolume, lostError, lostMass }: PartResult): Headline {
  return {
    lead:
      thinnest.remaining > 0 ? `${id}: ${gauge(thinnest.remaining)} mm of wall left` : `${id}: worn through`,
    notes: [
      `thinnest on ${thinnest.face}; ${plusMinus(lostVolume, lostError, 'mL')}, ${figure(lostMass)} g of metal lost`,
    ],
  };
}

function readingsText({ standardError, volume }: FillerResult): string[] {
  if (standardError === 0) return [];
  return [
    `between ${figure(Math.max(0, volume - 2 * standardError))} and ${figure(volume + 2 * standardError)} mL, 19 times in 20: what the gauge readings leave open`,
  ];
}

function portionsText({ partA, partB }: Pick<FillerResult, 'partA' | 'partB'>): string {
  return `A ${figure(partA.volume)} mL or ${figure(partA.mass)} g, B ${figure(partB.volume)} mL or ${figure(partB.mass)} g`;
}

function packsText(packs: readonly PackCount[]): string[] {
  return packs.length === 0
    ? []
    : [`buy ${packs.map(({ label, count }) => `${count} x ${label}`).join(', ')}`];
}

function weighingText(weighing: Weighing | null): string[] {
  if (weighing === null) return [];
  const much = weighing.error > 0 ? 'too much' : 'too little';
  return [
    `on a scale ${plain(Number(weighing.partBPer100.toFixed(1)))} g of B to 100 g of A: the ratio is by volume, weighing it out puts in ${Math.abs(weighing.error * 100).toFixed(0)} % ${much} B`,
  ];
}
