import type { Clearance } from '../job/job.ts';
import type { Mm } from '../units.ts';
import type { GapSetting } from './gap-setting.ts';
import type { Lever, LeverKind } from './levers.ts';

/** What a lever asks of the fitter, as an order. */
export function leverWords({ kind, amount }: Lever, { shim, dressTips }: Clearance, now: GapSetting): string {
  const by = amount ?? 0;
  switch (kind) {
    case 'flush':
      return 'Fill both running faces flush';
    case 'stop-short':
      return `Stop the filler ${mm(by)} under the surface on both running faces`;
    case 'bare-tips':
      return 'Leave the vane tips uncoated';
    case 'bare-plate':
      return 'Leave the face of the plate uncoated';
    case 'bare-both':
      return 'Leave both running faces uncoated';
    case 'one-coat-less':
      return `Brush ${now.coats - 1 === 1 ? '1 coat' : `${now.coats - 1} coats`} instead of ${now.coats}`;
    case 'shim':
      return by === 0
        ? 'Leave the shims as they are'
        : by > 0
          ? `Shim the parts ${mm(by)} further apart${total(shim + by)}`
          : `Bring the parts ${mm(-by)} closer with the shims${total(shim + by)}`;
    case 'dress-tips':
      return by === 0
        ? 'Dress no more off the vane tips'
        : by > 0
          ? `Dress ${mm(by)}${dressTips > 0 ? ' more' : ''} off every vane tip before coating`
          : `Dress ${mm(-by)} less off the vane tips`;
    case 'fill-left':
      return 'Fill what is left to the coat on the running faces';
  }

  function total(sum: Mm): string {
    return shim === 0 ? '' : `, ${mm(sum)} in all`;
  }
}

/** What to think of before pulling a lever; null where nothing speaks against it. Common practice. */
export function leverCaution({ kind, amount }: Lever): string | null {
  if (amount === 0) return null;
  return CAUTIONS[kind];
}

const BARE =
  'A bare face is bare metal and putty: it wears and rusts sooner, and the edge of the coat beside it can lift.';

const CAUTIONS: Readonly<Record<LeverKind, string | null>> = {
  flush: null,
  'stop-short': 'Level the putty with a template: a fill that stands proud takes the gap the coat needs.',
  'bare-tips': BARE,
  'bare-plate': BARE,
  'bare-both': BARE,
  'one-coat-less': 'Pinholes are closed by two coats crossing: one coat alone leaves them open.',
  shim: 'Shims move the whole rotor: check the clearance behind the impeller and the setting of the seal.',
  'dress-tips':
    'Take the same off every vane or the balance goes. Check the height left on the vanes, and keep the tip edges square.',
  'fill-left': 'A fill thinner than the putty allows lifts: check the least build on its data sheet.',
};

const mm = (size: Mm): string => `${size.toFixed(2)} mm`;
