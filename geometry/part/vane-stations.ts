import type { Mm } from '../units.ts';
import type { CamberPlace, VaneShape } from './vane-shape.ts';

/** Where the meshes of a vane have their vertices, so that faces that meet have the same ones. */
export interface VaneStations {
  /** Ascending along the vane; a round nose first. */
  readonly along: readonly VaneStation[];
  /** Of these, the first that lies behind the round of the nose; 0 for a square one. */
  readonly shoulder: number;
  /** Heights as shares of the vane's own there, 0 to 1. */
  readonly heights: readonly number[];
  /** Distances across as shares of the half thickness there, -1 to 1. */
  readonly across: readonly number[];
}

/** The vane at one place along it. */
export interface VaneStation extends CamberPlace {
  readonly s: Mm;
  readonly height: Mm;
  readonly thickness: Mm;
  /** The greatest |n| that is metal here. */
  readonly half: Mm;
  /** How fast height and thickness change along it. */
  readonly rise: number;
  readonly taper: number;
}

/** Vertices stand about this far apart, mm, on a vane that is not so long that it would take more than MOST of them. */
const APART: Mm = 1.5;
const MOST = 120;
const NOSE = 8;
const ACROSS = 8;
const HEIGHTS = { fewest: 6, most: 40 } as const;

const known = new WeakMap<VaneShape, VaneStations>();

/** Stations every 1.5 mm or 1/120 of the length; a round nose is divided evenly along its arc. */
export function vaneStations(shape: VaneShape): VaneStations {
  const stations = known.get(shape) ?? stationsOf(shape);
  known.set(shape, stations);
  return stations;
}

function stationsOf(shape: VaneShape): VaneStations {
  const { length, nose, noseThickness } = shape;
  const apart = Math.max(APART, length / MOST);
  const noseEnd = nose === 'round' ? noseThickness / 2 : 0;
  const shoulder = nose === 'round' ? NOSE : 0;
  const pieces = Math.max(2, Math.round((length - noseEnd) / apart));
  const high = Math.max(shape.height(0), shape.height(length)) / apart;
  const rows = Math.min(HEIGHTS.most, Math.max(HEIGHTS.fewest, Math.round(high)));
  const along = [
    ...Array.from({ length: shoulder }, (_, i) => noseEnd * (1 - Math.cos((Math.PI / 2) * (i / NOSE)))),
    ...evenly(pieces).map((share) => noseEnd + share * (length - noseEnd)),
  ];
  return {
    along: along.map((s) => ({
      ...shape.camber(s),
      s,
      height: shape.height(s),
      thickness: shape.thickness(s),
      half: shape.halfThickness(s),
      rise: slope(shape.height, s, length),
      taper: slope(shape.thickness, s, length),
    })),
    shoulder,
    heights: evenly(rows),
    across: evenly(ACROSS).map((share) => 2 * share - 1),
  };
}

/** How fast a size of the vane changes along it, over a little way that stays on it. */
function slope(size: (s: Mm) => Mm, s: Mm, length: Mm): number {
  const [a, b] = [Math.max(0, s - length / 1000), Math.min(length, s + length / 1000)];
  return (size(b) - size(a)) / (b - a);
}

/** 0 to 1 in so many pieces, both ends to the last bit. */
const evenly = (pieces: number): readonly number[] =>
  Array.from({ length: pieces + 1 }, (_, i) => i / pieces);
