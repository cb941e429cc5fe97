import type { CoatResult } from '../../../geometry/sheet/result.ts';
import { formatQuantity } from '../../fields/format-quantity.ts';
import { type ScreenUnits, shownUnit } from '../../fields/quantity-units.ts';

/** The wet film to aim at: `250 µm`; on a screen in inches `9.8 mil (250 µm)`, since combs carry both. */
export function wetFilmText({ wetFilm }: CoatResult, units: ScreenUnits): string {
  const film = (shown: ScreenUnits) =>
    `${formatQuantity(wetFilm, 'film', shown)} ${shownUnit('film', shown).symbol}`;
  return units === 'in' ? `${film('in')} (${film('mm')})` : film('mm');
}

/** What a wet film comb shows at that film. Teeth 25 µm apart, common practice. */
export function combText({ comb: { wet, dry } }: CoatResult): string {
  return wet === 0
    ? `On a wet film comb even the ${dry} µm tooth stays dry.`
    : `On a wet film comb the ${wet} µm tooth wets, the ${dry} stays dry.`;
}
