import type { Fraction, GramMm } from '../units.ts';
import { normalTail } from './normal-tail.ts';

/** From here on the limit, in standard errors, is so far out that its circle is all but straight within reach of the normal law. */
const FAR = 12;
/** Nodes round the circle: the trapezoid rule on a whole turn gains digits with every few. */
const NODES = 256;
/** Standard errors across, beyond which nothing is left (2e-19), and the step between nodes. */
const ACROSS = 9;
const STEP = 0.1;

/**
 * The chance that the true unbalance is over the permissible one: 1 - F((U/s)^2) of the noncentral chi-square law with 2 degrees of
 * freedom and noncentrality (u/s)^2, which is the tail of Rice's law.
 * @param net            u, as worked out
 * @param limit          U
 * @param standardError  s, of each component; 0 when nothing is uncertain, and the answer then is 0 or 1
 * Accuracy: 1e-12. The component across the vector is integrated out: along it lies a normal law with a known tail.
 * Source: S. O. Rice, 1945; tests/geometry/balance/chance-over.test.ts.
 */
export function chanceOver(net: GramMm, limit: GramMm, standardError: GramMm): Fraction {
  if (standardError === 0) return net > limit ? 1 : 0;
  const a = net / standardError;
  const b = limit / standardError;
  const ahead = (limit - net) / standardError;
  return Math.min(1, Math.max(0, b < FAR ? roundCircle(a, b) : acrossVector(a, b, ahead)));
}

/**
 * With y = b sin t the tail over |y| < b, and 2 Q(b) beyond. Taken round the whole turn the integrand is smooth and periodic; what
 * its far half counts too much is a plain normal law, and all constants add up to 1.
 */
function roundCircle(a: number, b: number): number {
  let sum = 0;
  for (let i = 0; i < NODES; i++) {
    const t = (2 * Math.PI * (i + 0.5)) / NODES;
    const along = b * Math.cos(t);
    sum += density(b * Math.sin(t)) * along * (normalTail(along - a) + normalTail(along + a));
  }
  return 1 + (sum * Math.PI) / NODES;
}

/** Far out, straight across the vector: sqrt(b^2 - y^2) - a without loss of digits, however large both are. */
function acrossVector(a: number, b: number, ahead: number): number {
  let sum = 0;
  const steps = Math.round(ACROSS / STEP);
  for (let i = -steps; i <= steps; i++) {
    const y = i * STEP;
    const along = b * Math.sqrt(1 - (y / b) ** 2);
    sum += density(y) * (normalTail(ahead - (y * y) / (b + along)) + normalTail(along + a));
  }
  return sum * STEP;
}

function density(y: number): number {
  return Math.exp((-y * y) / 2) / Math.sqrt(2 * Math.PI);
}
