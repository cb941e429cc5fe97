/** The textures of one worn face, and the uniforms that hand them to the shaders. */
import { type DataTexture, type IUniform, Vector2 } from 'three';
import type { CellBlock } from '../../geometry/depth/chart.ts';
import type { DepthMap } from '../../geometry/depth/depth-map.ts';
import type { Face } from '../../geometry/part/face.ts';
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
}

/** Vertices round a face: enough for a smooth rim and for worn places to sink; finer relief is the texture's. */
export const COLUMNS = 256;
/** Vertices across it: this many times as close together as those round it, since most wear runs round, and within these. */
const ROWS = { closer: 1.5, fewest: 8, most: 96 } as const;

export function wornTextures(face: Face): WornTextures {
  const texels = depthTexels(face);
  const columns = face.grid.wraps ? COLUMNS : Math.min(COLUMNS, face.grid.columns + 1);
  const sinkOf = sinkTexels(texels, rowsOf(face), columns);
  return {
    face,
    texels,
    depth: halfTexture(texels, face),
    cover: coverTexture(texels),
    sinkOf,
    sink: halfTexture(sinkOf, face),
  };
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
  { texels, depth, sinkOf, sink }: WornTextures,
  map: DepthMap,
  block: CellBlock,
): void {
  writeBlock(texels, map, block);
  writeSink(sinkOf, block);
  depth.needsUpdate = true;
  sink.needsUpdate = true;
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
function sinkSteps({ of, width, height }: SinkTexels): Vector2 {
  return new Vector2(of.face.grid.wraps ? width : width - 1, height - 1);
}
