import {
  ClampToEdgeWrapping,
  DataTexture,
  HalfFloatType,
  LinearFilter,
  RedFormat,
  RepeatWrapping,
  RGBAFormat,
  SRGBColorSpace,
  type Texture,
  UnsignedByteType,
} from 'three';
import type { Face } from '../../geometry/part/face.ts';
import { DEPTH_RAMP } from '../../geometry/sheet/depth-colour.ts';
import { coverShares, type DepthTexels } from './depth-texels.ts';

/** Depths for the shaders. After a change of the texels set `needsUpdate`: the whole, 0.8 MB a face, goes up in a millisecond. */
export function halfTexture(texels: Texels, face: Face): DataTexture {
  return filtered(new DataTexture(texels.data, texels.width, texels.height, RedFormat, HalfFloatType), face);
}

interface Texels {
  readonly width: number;
  readonly height: number;
  /** Half floats. */
  readonly data: Uint16Array<ArrayBuffer>;
}

/** Share of each texel of a face that is face; of one without holes a single texel. */
export function coverTexture(texels: DepthTexels): DataTexture {
  const { width, height, face } = texels;
  if (face.cover === null)
    return filtered(new DataTexture(Uint8Array.of(255), 1, 1, RedFormat, UnsignedByteType), face);
  return filtered(new DataTexture(coverShares(texels), width, height, RedFormat, UnsignedByteType), face);
}

/** The colours of depth, shallow to deep. */
export function rampTexture(): Texture {
  const entries = DEPTH_RAMP.length / 3;
  const colours = new Uint8Array(entries * 4);
  for (let i = 0; i < entries; i++) {
    colours.set(DEPTH_RAMP.subarray(i * 3, i * 3 + 3), i * 4);
    colours[i * 4 + 3] = 255;
  }
  const texture = new DataTexture(colours, entries, 1, RGBAFormat, UnsignedByteType);
  texture.colorSpace = SRGBColorSpace;
  texture.minFilter = LinearFilter;
  texture.magFilter = LinearFilter;
  texture.needsUpdate = true;
  return texture;
}

function filtered(texture: DataTexture, { grid }: Face): DataTexture {
  texture.minFilter = LinearFilter;
  texture.magFilter = LinearFilter;
  texture.wrapS = grid.wraps ? RepeatWrapping : ClampToEdgeWrapping;
  texture.wrapT = ClampToEdgeWrapping;
  // Rows need not be a multiple of four bytes long.
  texture.unpackAlignment = 1;
  texture.needsUpdate = true;
  return texture;
}
