import { depthsWithin } from '../depth/depth-map.ts';
import type { Face } from '../part/face.ts';
import type { Mm } from '../units.ts';
import type { Layer } from './shared-metal.ts';

/** What is known of a layer over a box of grid points. */
export interface Bounds {
  /** No place of the box is shallower: 0 where a part of it lies off the face or is not in the layer. mm */
  readonly least: Mm;
  /** No place of the box is deeper: 0 where none of it is in the layer. mm */
  readonly most: Mm;
}

/** Cells a side of a tile. */
const TILE = 16;

/**
 * The least and the greatest depth of a layer, tile by tile, so that a stretch of metal behind the face is found to lie wholly in the
 * layer or wholly out of it without going through it.
 * @returns  answers for the box between two grid points
 * Accuracy: true for every place of the box, as `depthAt` sees it; off by what lies within a tile and a row of the box.
 */
export function layerBounds(
  face: Face,
  layer: Layer,
): (u0: number, v0: number, u1: number, v1: number) => Bounds {
  const { rows, columns, u0: firstU, v0: firstV, du, dv, wraps } = face.grid;
  const across = Math.ceil(columns / TILE);
  const tiles = Math.ceil(rows / TILE) * across;
  const least = new Float32Array(tiles).fill(Infinity);
  const most = new Float32Array(tiles);
  const isHeld = new Uint8Array(tiles);
  for (let row = 0, cell = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++, cell++) {
      const tile = Math.floor(row / TILE) * across + Math.floor(column / TILE);
      const [low, high] = depthsWithin(layer.map, cell);
      const held = layer.holds(cell);
      if (held) isHeld[tile] = 1;
      least[tile] = Math.min(least[tile], held ? low : 0);
      most[tile] = Math.max(most[tile], high);
    }
  }
  return (u0, v0, u1, v1) => {
    const top = Math.floor((Math.min(u0, u1) - firstU) / du);
    const bottom = Math.floor((Math.max(u0, u1) - firstU) / du);
    const left = Math.floor((Math.min(v0, v1) - firstV) / dv);
    const right = Math.min(Math.floor((Math.max(v0, v1) - firstV) / dv), left + columns - 1);
    const isWithin = top >= 0 && bottom < rows && (wraps || (left >= 0 && right < columns));
    const from = wraps ? left : Math.max(0, left);
    const to = wraps ? right : Math.min(columns - 1, right);
    let low = isWithin ? Infinity : 0;
    let high = 0;
    let touches = false;
    // A row more on either side: between rows depth runs on to the next.
    const lastTile = Math.floor(Math.min(rows - 1, bottom + 1) / TILE);
    for (let down = Math.floor(Math.max(0, top - 1) / TILE); down <= lastTile; down++) {
      for (let at = from; at <= to; ) {
        const column = wraps ? at - columns * Math.floor(at / columns) : at;
        const tile = down * across + Math.floor(column / TILE);
        low = Math.min(low, least[tile]);
        high = Math.max(high, most[tile]);
        touches ||= isHeld[tile] === 1;
        at += Math.min(TILE - (column % TILE), columns - column);
      }
    }
    return { least: touches ? low : 0, most: touches ? high : 0 };
  };
}
