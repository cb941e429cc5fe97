import { formatQuantity } from '../fields/format-quantity.ts';
import { type ScreenUnits, shownUnit } from '../fields/quantity-units.ts';
import { sentenceCase } from '../panels/sentence-case.ts';
import { faceLabel } from '../view/face-label.ts';
import type { LiveFace, LivePart } from '../wear/live-faces.ts';
import type { DepthScale } from './depth-scale.ts';

/** The picture of a part in a sentence, for who does not see it. */
export function partWords({ part }: LivePart, { deepest }: DepthScale, units: ScreenUnits): string {
  const wear =
    deepest > 0
      ? `worn up to ${formatQuantity(deepest, 'length', units)} ${shownUnit('length', units).symbol}`
      : 'as new';
  const kind = part.body.kind === 'impeller' ? 'Impeller' : 'Wear plate';
  return `${kind} ${part.id}, ${wear}. Arrow keys turn it, plus and minus come nearer and go back, Home shows all.`;
}

/** The same for one face laid flat. */
export function faceWords({ part, face }: LiveFace, units: ScreenUnits): string {
  const [first, second] = face.coordinates.map(({ label, isAngle, from, to }) =>
    isAngle ? `all round in ${label}` : `${label} ${length(from, units)} to ${length(to, units)}`,
  );
  return `${sentenceCase(faceLabel(face.name))} of ${part} laid flat, ${first}, ${second}. Arrow keys slide it, plus and minus come nearer and go back, Home shows all.`;
}

function length(size: number, units: ScreenUnits): string {
  return `${formatQuantity(size, 'length', units, { as: 'typed' })} ${shownUnit('length', units).symbol}`;
}
