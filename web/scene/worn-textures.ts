/** The textures of one worn face, and the uniforms that hand them to the shaders. */
import { type DataTexture, type IUniform, Vector2 } from 'three';
import type { CellBlock } from '../../geometry/depth/chart.ts';
import type { DepthMap } from '../../geometry/depth/depth-map.ts';
import type { Face } from '../../geometry/part/face.ts';
import { vaneFaceOf } from '../../geometry/part/vane-mesh.ts';
import { type DepthTexels, depthTexels, writeBlock } from './depth-texels.ts';
import { coverTexture, halfTexture } from './face-texture.ts';
import { type SinkTexels, sinkTexels, writeSink } from './sink-texels.ts';

export type Uniforms = Readonly<Record<string, IUniform>>;

export interface WornTextures {
  readonly face: Face;
  readonly texels: DepthTexels;
  readonly depth: DataTexture;
  /** Share of each texel that is face. */
  readonly cover: DataTexture;
  readonly sinkOf: SinkTexels;
  readonly sink: DataTexture;
  /** Whether anything of the face is worn: what is as new needs no looking up. */
  readonly isWorn: { value: boolean };
}

/** Vertices round a face: enough for a smooth rim and for worn places to sink; finer relief is the texture's. */
export const COLUMNS = 256;
/** Vertices across it: this many times as close together as those round it, since most wear runs round, and within these. */
const ROWS = { closer: 1.5, fewest: 8, most: 96 } as const;

/** mm between places of a vane that sink by themselves. */
const VANE_STEP = 1.5;
const VANE_MOST = 160;

/** @param like  textures of a face with the same cells, such as the same face of another vane */
export function wornTextures(face: Face, like?: WornTextures): WornTextures {
  const texels = depthTexels(face, like?.texels);
  const sinkOf = sinkTexels(texels, ...sinkSize(face));
  return {
    face,
    texels,
    depth: halfTexture(texels, face),
    cover: coverTexture(texels),
    sinkOf,
    sink: halfTexture(sinkOf, face),
    isWorn: { value: false },
  };
}

/** Places along u and along v that sink by themselves: the vertices of a face's mesh, on a vane evenly spread. */
function sinkSize(face: Face): readonly [rows: number, columns: number] {
  const { grid } = face;
  if (vaneFaceOf(face.name) !== null) {
    const places = (cells: number, cell: number) =>
      Math.max(2, Math.min(VANE_MOST, cells + 1, Math.round((cells * cell) / VANE_STEP) + 1));
    return [places(grid.rows, grid.du), places(grid.columns, grid.dv)];
  }
  return [rowsOf(face), grid.wraps ? COLUMNS : Math.min(COLUMNS, grid.columns + 1)];
}

/** Vertices across the mesh of a face. */
export function rowsOf({ grid, picture }: Face): number {
  const middle = picture.kind === 'polar' ? grid.u0 + (grid.rows * grid.du) / 2 : picture.columnScale;
  const apart = (grid.columns * grid.dv * middle) / COLUMNS;
  const wanted = Math.round((ROWS.closer * grid.rows * grid.du) / apart);
  return Math.max(2, Math.min(ROWS.most, Math.max(ROWS.fewest, wanted), grid.rows + 1));
}

/** Takes over a block of cells; the textures go up with the next frame. */
export function takeBlock(
  { texels, depth, sinkOf, sink, isWorn }: WornTextures,
  map: DepthMap,
  block: CellBlock,
): void {
  const worn = isWornIn(map, block);
  if (!worn && !isWorn.value) return;
  const isWhole = block.row1 - block.row0 + 1 === map.grid.rows && block.columns === map.grid.columns;
  isWorn.value = isWhole ? worn : true;
  writeBlock(texels, map, block);
  writeSink(sinkOf, block);
  depth.needsUpdate = true;
  sink.needsUpdate = true;
}

function isWornIn({ depth, grid }: DepthMap, { row0, row1, column0, columns }: CellBlock): boolean {
  for (let row = row0; row <= row1; row++) {
    for (let k = 0; k < columns; k++) {
      if (depth[row * grid.columns + ((column0 + k) % grid.columns)] > 0) return true;
    }
  }
  return false;
}

export function disposeTextures({ depth, sink, cover }: WornTextures): void {
  depth.dispose();
  sink.dispose();
  cover.dispose();
}

/** What the shaders read of a face's own depth. */
export function ofDepth({ face, texels, depth, cover, sink, sinkOf }: WornTextures): Uniforms {
  return {
    uDepth: { value: depth },
    uCells: { value: new Vector2(texels.width, texels.height) },
    uCover: { value: cover },
    uHasCover: { value: face.cover !== null },
    uSink: { value: sink },
    uSinkSteps: { value: sinkSteps(sinkOf) },
    uSinkTexels: { value: new Vector2(sinkOf.width, sinkOf.height) },
  };
}

/** What they read of the face it shares a corner with. */
export function ofSide({ sink, sinkOf }: WornTextures): Uniforms {
  return {
    uSide: { value: sink },
    uSideSteps: { value: sinkSteps(sinkOf) },
    uSideTexels: { value: new Vector2(sinkOf.width, sinkOf.height) },
  };
}

/** Steps between vertices along v and u: round a whole turn the seam is one vertex. */
export function sinkSteps({ of, width, height }: SinkTexels): Vector2 {
  return new Vector2(of.face.grid.wraps ? width : width - 1, height - 1);
}
