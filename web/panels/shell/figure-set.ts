import type { JobFile } from '../../../geometry/job/job-file.ts';
import type { BalanceResult } from '../../../geometry/sheet/balance-result.ts';
import type { ClearanceResult } from '../../../geometry/sheet/clearance-result.ts';
import { counted, figure } from '../../../geometry/sheet/figure.ts';
import type { PartResult, Result } from '../../../geometry/sheet/result.ts';
import { formatQuantity } from '../../fields/format-quantity.ts';
import { type ScreenUnits, shownUnit } from '../../fields/quantity-units.ts';
import { faceLabel } from '../../view/face-label.ts';

type Verdict = BalanceResult['verdict'];

/** One of the five figures: `142` `mL`, with a few words below. */
export interface Figure {
  readonly label: string;
  /** The label where there is little room. */
  readonly short?: string;
  readonly value: string;
  readonly unit: string;
  readonly note: string;
  /** Says that the note is a warning. */
  readonly isBad?: boolean;
}

/** What the figures are made of: the estimate's, or in the middle of a stroke the live ones. File's units. */
export interface FigureSource {
  /** In the middle of a stroke: putty and coat are near enough to watch, not to mix by. */
  readonly isAbout: boolean;
  readonly putty: number;
  /** Two standard errors of it, from gauge readings; 0 when there are none. */
  readonly puttyError: number;
  readonly mixes: number;
  readonly partA: number;
  readonly partB: number;
  readonly coat: number;
  readonly coats: number;
  readonly deepest: { readonly depth: number; readonly at: string } | null;
  /** null when the job asks for no balance: the deepest wear stands in its place. */
  readonly unbalance: {
    readonly net: number;
    readonly permissible: number;
    readonly verdict: Verdict;
  } | null;
  readonly thinnest: { readonly wall: number; readonly at: string; readonly least: number | null } | null;
  /** Filled and coated; null when the job asks for no clearance: the thinnest wall stands in its place. */
  readonly clearance: {
    readonly least: number;
    readonly verdict: ClearanceResult['verdict'];
    readonly band: { readonly least: number; readonly most: number };
  } | null;
}

/** The five figures as they stand on the screen. */
export function figureSet(source: FigureSource, units: ScreenUnits): readonly Figure[] {
  const {
    isAbout,
    putty,
    puttyError,
    mixes,
    partA,
    partB,
    coat,
    coats,
    deepest,
    unbalance,
    thinnest,
    clearance,
  } = source;
  const about = isAbout ? 'about, ' : '';
  const error = puttyError > 0 ? `±${puttyError.toFixed(puttyError < 9.95 ? 1 : 0)}, ` : '';
  const length = (size: number) => formatQuantity(size, 'length', units);
  const unit = shownUnit('length', units).symbol;
  const isThin = thinnest !== null && thinnest.least !== null && thinnest.wall < thinnest.least;
  return [
    {
      label: 'Putty',
      value: amount(putty),
      unit: 'mL',
      note: putty > 0 ? `${about}${error}in ${counted(mixes, 'mix', 'mixes')}` : 'Nothing to fill',
    },
    {
      label: 'A : B',
      value: `${amount(partA)} : ${amount(partB)}`,
      unit: 'g',
      note:
        putty === 0
          ? ''
          : mixes > 1
            ? `${figure(partA / mixes)} : ${figure(partB / mixes)} g a mix`
            : 'by weight',
    },
    {
      label: 'Coat',
      value: amount(coat),
      unit: 'mL',
      note: coat > 0 ? `${about}in ${counted(coats, 'coat', 'coats')}` : 'No coat',
    },
    unbalance === null
      ? {
          label: 'Deepest wear',
          short: 'Deepest',
          value: deepest === null ? '0' : length(deepest.depth),
          unit,
          note: deepest === null ? 'Nothing marked' : deepest.at,
        }
      : {
          label: 'Unbalance',
          value: amount(unbalance.net),
          unit: 'g·mm',
          isBad: unbalance.verdict !== 'within',
          note: `${VERDICTS[unbalance.verdict]}, limit ${figure(unbalance.permissible)}`,
        },
    clearance !== null
      ? clearanceFigure(clearance, length, unit)
      : {
          label: 'Thinnest wall',
          short: 'Thinnest',
          value: thinnest === null ? '–' : length(thinnest.wall),
          unit: thinnest === null ? '' : unit,
          isBad: isThin || thinnest?.wall === 0,
          note: thinnest === null ? '' : wallNote(thinnest, isThin, (size) => `${length(size)} ${unit}`),
        },
  ];
}

const GAPS = { fit: 'Fits', tight: 'Tight', wide: 'Wide', both: 'Tight and wide' } as const;

function clearanceFigure(
  { least, verdict, band }: NonNullable<FigureSource['clearance']>,
  length: (size: number) => string,
  unit: string,
): Figure {
  return {
    label: 'Least clearance',
    short: 'Clearance',
    value: least < 0 ? `−${length(-least)}` : length(least),
    unit,
    isBad: verdict !== 'fit',
    note: `${GAPS[verdict]}, ${length(band.least)} to ${length(band.most)}`,
  };
}

const VERDICTS: Readonly<Record<Verdict, string>> = { within: 'Within', check: 'Check', over: 'Over' };

const amount = (value: number): string => (value === 0 ? '0' : figure(value));

function wallNote(
  { wall, at, least }: NonNullable<FigureSource['thinnest']>,
  isThin: boolean,
  length: (size: number) => string,
): string {
  if (wall === 0) return 'Worn through';
  if (isThin && least !== null) return `Under the least, ${length(least)}`;
  return least === null ? at : `Least ${length(least)}`;
}

/** The figures of the estimate. With several parts, the deepest wear and the thinnest wall of any of them. */
export function estimatedFigures(result: Result, job: JobFile): FigureSource {
  const { filler, coat, parts, balance, clearance } = result;
  return {
    isAbout: false,
    putty: filler.volume,
    puttyError: 2 * filler.standardError,
    mixes: filler.batches.length,
    partA: filler.partA.mass,
    partB: filler.partB.mass,
    coat: coat.volume,
    coats: coat.perCoat.length,
    deepest: deepestOf(parts),
    unbalance: balance && {
      net: balance.net.amount,
      permissible: balance.permissible,
      verdict: balance.verdict,
    },
    thinnest: thinnestOf(parts, job),
    clearance:
      clearance === null || job.clearance === undefined
        ? null
        : {
            least: clearance.coated.least,
            verdict: clearance.verdict,
            band: { least: job.clearance.least, most: job.clearance.most },
          },
  };
}

function deepestOf(parts: readonly PartResult[]): FigureSource['deepest'] {
  const faces = parts.flatMap(({ id, faces }) =>
    faces.map(({ face, deepest }) => ({ depth: deepest, at: on(id, face, parts) })),
  );
  const deepest = faces.reduce((a, b) => (b.depth > a.depth ? b : a), { depth: 0, at: '' });
  return deepest.depth > 0 ? deepest : null;
}

/** The wall furthest under its least, or closest to it; without any least the thinnest. */
function thinnestOf(parts: readonly PartResult[], job: JobFile): FigureSource['thinnest'] {
  const walls = parts.map(({ id, thinnest }) => ({
    wall: thinnest.remaining,
    at: on(id, thinnest.face, parts),
    least: job.parts.find((part) => part.id === id)?.leastThickness ?? null,
  }));
  const spare = ({ wall, least }: (typeof walls)[number]) => wall - (least ?? 0);
  return walls.length === 0 ? null : walls.reduce((a, b) => (spare(b) < spare(a) ? b : a));
}

function on(part: string, face: string, parts: readonly PartResult[]): string {
  const words = faceLabel(face);
  if (parts.length > 1) return `${part}, ${words}`;
  return face.startsWith('vane-') ? words : `on the ${words}`;
}
