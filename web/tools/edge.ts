/** The edge: how far an edge or a tip is eaten back, drawn from one place along it to another. */
import type { MarkFile } from '../../geometry/job/job-file.ts';
import { type Face, toGridPoint } from '../../geometry/part/face.ts';
import type { FacePoint, Mm } from '../../geometry/units.ts';
import { boxOutline } from './box-outline.ts';
import type { BrushSettings } from './brush.ts';
import { roundLength } from './file-point.ts';

export type EdgeMark = Extract<MarkFile, { readonly kind: 'edge' }>;

export interface EdgeInHand {
  /** Draws on to a point; what lies past the ends of the edge counts as its end. */
  drawTo(point: FacePoint): void;
  /** The stretch as it stands: one closed line across the whole face. */
  outline(): readonly (readonly FacePoint[])[];
  /** True while it is no longer than a tap. */
  isTap(): boolean;
  /** Where it began, along the edge, as the file spells it. */
  start(): Mm;
  /** The mark, in the file's units: the stretch drawn, of a tap the whole edge. */
  finish(): EdgeMark;
}

/** A stretch shorter than this was a tap. */
const SHORTEST: Mm = 1;

/** True for the faces that can be eaten back: edges and tip of a vane. */
export function takesEdge({ name }: Face): boolean {
  return /^vane-\d+\/(tip|leading-edge|trailing-edge)$/.test(name);
}

/** Starts a stretch at a point of the face. */
export function startEdge(face: Face, { depth }: BrushSettings, at: FacePoint): EdgeInHand {
  const [{ from, to }, across] = face.coordinates;
  const alongOf = (point: FacePoint): Mm => Math.min(to, Math.max(from, toGridPoint(face, point)[0]));
  const first = alongOf(at);
  let last = first;
  const span = (): readonly [Mm, Mm] => [Math.min(first, last), Math.max(first, last)];
  const isTap = () => Math.abs(last - first) < SHORTEST;
  // Rounding must not reach past the edge.
  const within = (along: Mm) => Math.min(Math.floor(to * 100) / 100, roundLength(along));
  return {
    drawTo(point) {
      last = alongOf(point);
    },
    outline: () => (isTap() ? [] : boxOutline(face, span(), [across.from, across.to])),
    isTap,
    start: () => within(first),
    finish() {
      const [a, b] = isTap() ? [from, to] : span();
      return {
        kind: 'edge',
        face: face.name,
        profile: [
          [within(a), depth],
          [within(b), depth],
        ],
        blend: 'deepest',
      };
    },
  };
}
