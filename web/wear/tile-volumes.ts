import type { CellBlock } from '../../geometry/depth/chart.ts';
import type { DepthMap } from '../../geometry/depth/depth-map.ts';
import { blockVolume } from '../../geometry/moments/block-volume.ts';
import type { Face } from '../../geometry/part/face.ts';
import type { Mm3 } from '../../geometry/units.ts';

/** The lost metal of a face, summed tile by tile, so that a brush move needs to sum only the tiles it touched. */
export interface TileVolumes {
  readonly face: Face;
  readonly map: DepthMap;
  /** mm3 a tile, row-major. */
  readonly volumes: Float64Array;
  readonly columns: number;
}

/** Cells a side: a 10 mm brush then touches a handful of tiles. */
const TILE = 32;

/** Sums a whole face: 1 to 3 ms for the usual 400 000 cells. */
export function tileVolumes(face: Face, map: DepthMap): TileVolumes {
  const { grid } = map;
  const columns = Math.ceil(grid.columns / TILE);
  const tiles = { face, map, volumes: new Float64Array(columns * Math.ceil(grid.rows / TILE)), columns };
  retally(tiles, { row0: 0, row1: grid.rows - 1, column0: 0, columns: grid.columns });
  return tiles;
}

/** Sums the tiles a block touches anew. Writes into `tiles`; returns by how much the lost metal has changed, mm3. */
export function retally(tiles: TileVolumes, block: CellBlock): Mm3 {
  const { face, map, volumes } = tiles;
  const { grid } = map;
  let change = 0;
  for (let row = Math.floor(block.row0 / TILE); row <= Math.floor(block.row1 / TILE); row++) {
    const row1 = Math.min(grid.rows, (row + 1) * TILE) - 1;
    for (const column of tileColumns(tiles, block)) {
      const column0 = column * TILE;
      const width = Math.min(grid.columns - column0, TILE);
      const volume = blockVolume(face, map, { row0: row * TILE, row1, column0, columns: width });
      change += volume - volumes[row * tiles.columns + column];
      volumes[row * tiles.columns + column] = volume;
    }
  }
  return change;
}

/** The tile columns a block touches, each once; a block may run across the 0/360 line. */
function tileColumns({ map, columns }: TileVolumes, { column0, columns: wide }: CellBlock): Set<number> {
  const touched = new Set<number>();
  for (let k = 0; k < wide; k += TILE) touched.add(Math.floor(((column0 + k) % map.grid.columns) / TILE));
  touched.add(Math.floor(((column0 + wide - 1) % map.grid.columns) / TILE));
  // The narrow last tile may lie between two steps of a whole tile.
  if (column0 + wide > map.grid.columns) touched.add(columns - 1).add(0);
  return touched;
}
