import { EqualStencilFunc, KeepStencilOp, Mesh, PlaneGeometry, ShaderMaterial } from 'three';
import type { Mm } from '../../../geometry/units.ts';
import { still } from '../mesh-geometry.ts';

/** Which cut metal is whose: what the inside of each part writes where it is seen. */
export const CUT_OF = { plate: 1, rotor: 2 } as const;
export type CutPart = keyof typeof CUT_OF;

const VERTEX = /* glsl */ `
varying vec2 vPlace;

void main() {
  vPlace = position.xy;
  gl_Position = projectionMatrix * modelViewMatrix * vec4(position, 1.0);
}
`;

/** Hatched as a section is drawn: the two parts the opposite way, so that they are told apart without colour. */
const FRAGMENT = /* glsl */ `
uniform vec3 uMetal;
uniform float uLeans;
/** mm between two lines. */
uniform float uApart;
uniform float uPixel;
varying vec2 vPlace;

void main() {
  float across = (vPlace.x + uLeans * vPlace.y) * 0.70710678 / uApart;
  float wide = fwidth(across);
  float off = abs(fract(across) - 0.5) / max(wide, 1e-6);
  float isLine = 1.0 - smoothstep(0.45 * uPixel, 0.45 * uPixel + 1.0, off);
  gl_FragColor = vec4(mix(uMetal, uMetal * 0.45, isLine), 1.0);
  #include <colorspace_fragment>
}
`;

/** Linear colours. */
const METAL: Readonly<Record<CutPart, readonly [number, number, number]>> = {
  plate: [0.58, 0.5, 0.38],
  rotor: [0.4, 0.46, 0.5],
};

/**
 * The cut face of one part: a plane through the shaft, seen where the inside of the part would be.
 * @param order  after everything solid of the part
 */
export function capObject(part: CutPart, reach: Mm, order: number) {
  const material = new ShaderMaterial({
    vertexShader: VERTEX,
    fragmentShader: FRAGMENT,
    uniforms: {
      uMetal: { value: METAL[part] },
      uLeans: { value: part === 'plate' ? 1 : -1 },
      uApart: { value: 5 },
      uPixel: { value: 1 },
    },
    stencilWrite: true,
    stencilRef: CUT_OF[part],
    stencilFunc: EqualStencilFunc,
    stencilFail: KeepStencilOp,
    stencilZFail: KeepStencilOp,
    stencilZPass: KeepStencilOp,
  });
  const cap = still(new Mesh(new PlaneGeometry(2 * reach, 2 * reach), material));
  cap.renderOrder = order;
  return cap;
}
