import type { CoatResult } from '../../../geometry/sheet/result.ts';
import { formatQuantity } from '../../fields/format-quantity.ts';
import { type ScreenUnits, shownUnit } from '../../fields/quantity-units.ts';

/** The wet film to aim at: `250 µm`; on a screen in inches `9.8 mil (250 µm)`, since combs carry both. */
export function wetFilmText({ wetFilm }: CoatResult, units: ScreenUnits): string {
  const film = (shown: ScreenUnits) =>
    `${formatQuantity(wetFilm, 'film', shown)} ${shownUnit('film', shown).symbol}`;
  return units === 'in' ? `${film('in')} (${film('mm')})` : film('mm');
}
