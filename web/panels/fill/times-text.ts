import { durationText, spanText } from '../../../geometry/sheet/duration.ts';
import type { CoatResult, FillerResult } from '../../../geometry/sheet/result.ts';
import type { Celsius, Minute } from '../../../geometry/units.ts';

/** A span of the data sheet, in words. */
type NamedSpan = { readonly what: string; readonly from: Minute; readonly to: Minute } | null;

export const firmsUpSpan = ({ firmsUp }: FillerResult): NamedSpan =>
  firmsUp && { what: 'firms up in', ...firmsUp };

export const overcoatSpan = ({ overcoat }: CoatResult): NamedSpan =>
  overcoat && { what: 'coat over after', ...overcoat };

interface CureTimes {
  readonly workingTime: Minute;
  readonly hard: Minute | null;
  readonly span: NamedSpan;
}

/** The times of a material as warm as the part is: `At 14 °C on the part: workable 32 min, firms up in 48 to 73 min, hard after 12 h.` */
export function timesText({ workingTime, span, hard }: CureTimes, surface: Celsius | undefined): string {
  const where =
    surface === undefined
      ? 'As quoted, the temperature of the part is not given'
      : `At ${Number(surface.toFixed(1))} °C on the part`;
  const times = [
    `workable ${durationText(Math.floor(workingTime))}`,
    ...(span === null ? [] : [`${span.what} ${spanText(span)}`]),
    ...(hard === null ? [] : [`hard after ${durationText(hard)}`]),
  ];
  return `${where}: ${times.join(', ')}.`;
}
