import type { Minute } from '../units.ts';
import { type Dressing, type FillPlace, placeFill } from './fill-and-dress.ts';
import { copyOf, earliestFree, giveBack, goBack, type Hands, take } from './hands.ts';
import { dustAt, type ShopHours } from './shop-hours.ts';

/** A mix that is in place and whose dressing may still be moved inside its window. */
export interface Pending {
  readonly mix: number;
  /** End of the fill. */
  readonly filled: Minute;
  readonly dress: Minute;
}

/**
 * Places a mix as `placeFill` does, or sooner where dressing planned before can wait for it and all of it still lies inside its windows.
 * Writes into `hands`.
 * @param pending  dressing that may be moved, inside the hours
 * @returns        the place, and each dressing that was moved
 */
export function placeFillFirst(
  hands: Hands,
  hours: ShopHours,
  from: Minute,
  fillMinutes: Minute,
  dressing: Dressing,
  pending: readonly Pending[],
): { readonly place: FillPlace; readonly moved: readonly Pending[] } {
  const before = copyOf(hands);
  const place = placeFill(hands, hours, from, fillMinutes, dressing);
  const open = pending.filter(({ dress }) => dress + dressing.minutes > from && dress < place.fill);
  if (open.length === 0) return { place, moved: [] };

  const planned = copyOf(hands);
  goBack(hands, before);
  for (const { dress } of open) giveBack(hands, dress, dressing.minutes);
  const without = copyOf(hands);
  let fill = earliestFree(without, hours, from, fillMinutes);
  while (fill < place.fill) {
    goBack(hands, without);
    take(hands, fill, fillMinutes);
    const own = { mix: -1, filled: fill + fillMinutes, dress: fill };
    const { laid, isLate } = layDressing(hands, hours, dressing, [...open, own]);
    if (!isLate) {
      const [{ dress }] = laid.filter(({ mix }) => mix === own.mix);
      return { place: { fill, dress }, moved: laid.filter(({ mix }) => mix !== own.mix) };
    }
    const next = open.map(({ dress }) => dress + dressing.minutes).filter((end) => end > fill);
    fill = next.length === 0 ? place.fill : earliestFree(without, hours, Math.min(...next), fillMinutes);
  }
  goBack(hands, planned);
  return { place, moved: [] };
}

/** First in place, first dressed. All take equally long and have windows equally wide: where this order is late, every order is. */
function layDressing(
  hands: Hands,
  hours: ShopHours,
  { opens, closes, minutes }: Dressing,
  open: readonly Pending[],
): { readonly laid: readonly Pending[]; readonly isLate: boolean } {
  const within = Math.max(closes ?? Number.POSITIVE_INFINITY, opens + minutes);
  const laid: Pending[] = [];
  for (const { mix, filled } of [...open].sort((a, b) => a.filled - b.filled)) {
    const dress = earliestFree(hands, hours, filled + opens, minutes);
    if (dress + minutes - (filled + within) > dustAt(dress)) return { laid, isLate: true };
    take(hands, dress, minutes);
    laid.push({ mix, filled, dress });
  }
  return { laid, isLate: false };
}
