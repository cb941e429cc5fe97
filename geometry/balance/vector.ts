import { type Rad, TURN, wrapTurn } from '../units.ts';

/** An unbalance as it is spoken of: how much, g.mm (g.mm2 for a couple), and where the heavy side lies, in [0, 2 pi). */
export interface Vector {
  readonly amount: number;
  readonly angle: Rad;
}

const NO_VECTOR: Vector = { amount: 0, angle: 0 };

/** The vector of two components along the part's x and y; angle 0 when there is nothing. */
export function vectorOf(x: number, y: number): Vector {
  const amount = Math.hypot(x, y);
  return amount === 0 ? NO_VECTOR : { amount, angle: heading(Math.atan2(y, x)) };
}

export function sumOf(vectors: readonly Vector[]): Vector {
  let x = 0;
  let y = 0;
  for (const { amount, angle } of vectors) {
    x += amount * Math.cos(angle);
    y += amount * Math.sin(angle);
  }
  return vectorOf(x, y);
}

/** The same amount on the far side of the shaft. */
export function opposite({ amount, angle }: Vector): Vector {
  return { amount, angle: heading(angle + Math.PI) };
}

/** A direction in [0, 2 pi), also when it misses 0 by less than a float shows. */
export function heading(angle: Rad): Rad {
  const wrapped = wrapTurn(angle);
  return wrapped >= TURN ? 0 : wrapped;
}

/** The turn from `from` to `to` the short way round, in [-pi, pi]. */
export function turnBetween(from: Rad, to: Rad): Rad {
  const turn = to - from;
  return turn - TURN * Math.round(turn / TURN);
}
