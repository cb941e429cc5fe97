import type { Mm } from '../units.ts';

/** The least diametral running clearance of a wear ring, in both columns of the table as printed: they are no conversions of each other. */
export interface RingClearance {
  readonly diameter: Mm;
  readonly mm: Mm;
  /** Inches; null beyond the printed column. */
  readonly inch: number | null;
}

/** Diameter below which the clearance holds, mm. */
const MILLIMETRES: readonly (readonly [below: Mm, clearance: Mm])[] = [
  [50, 0.25],
  [65, 0.28],
  [80, 0.3],
  [90, 0.33],
  [100, 0.36],
  [115, 0.38],
  [125, 0.41],
  [150, 0.43],
  [175, 0.46],
  [200, 0.48],
  [225, 0.51],
  [250, 0.53],
  [275, 0.56],
  [300, 0.58],
  [325, 0.61],
  [350, 0.63],
  [375, 0.66],
  [400, 0.69],
  [425, 0.71],
  [450, 0.74],
  [475, 0.76],
  [500, 0.79],
  [525, 0.81],
  [550, 0.84],
  [575, 0.86],
  [600, 0.89],
  [625, 0.91],
  [650, 0.94],
];
/** Beyond the last row, a thousandth of a mm for each mm more. */
const LAST = { diameter: 650, clearance: 0.94, perMm: 0.001 } as const;

const MM_PER_INCH = 25.4;
/** A whole number of inches stays one. */
const HAIR = 1e-9;

/**
 * Radial, between wear rings, for cast iron, bronze and the like: it says nothing about the axial gap before the vanes.
 * Source: API 610, table of least running clearances, as service manuals print it; an older edition is coarser
 */
export function ringClearance(diameter: Mm): RingClearance {
  const row = MILLIMETRES.find(([below]) => diameter < below);
  const beyond = LAST.clearance + LAST.perMm * (diameter - LAST.diameter);
  return { diameter, mm: row === undefined ? beyond : row[1], inch: inInches(diameter / MM_PER_INCH + HAIR) };
}

/** 10 thousandths below 2 in, one more for each half inch from there to 5 in, for each inch from there to 26 in. */
function inInches(diameter: number): number | null {
  if (diameter < 2) return 0.01;
  if (diameter < 5) return (11 + Math.floor((diameter - 2) * 2)) / 1000;
  return diameter < 26 ? (17 + Math.floor(diameter - 5)) / 1000 : null;
}
