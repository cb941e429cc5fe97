/** What never wears: walls and back, and the lines of the edges. */
import { CUT, STANDS } from './cut-glsl.ts';
import { DEPTH, SIDE, SINK } from './depth-glsl.ts';
import { LIGHT } from './light-glsl.ts';

export const BODY_VERTEX = /* glsl */ `
${SINK}
${CUT.vertexHead}
attribute vec2 place;
attribute vec3 inward;
varying vec2 vPlace;
varying vec3 vDrawn;
varying vec3 vNormal;

void main() {
  vPlace = place;
  vNormal = normal;
  vec3 drawn = position;
  if (inward != vec3(0.0)) drawn += inward * sinkAt(place);
  vDrawn = drawn;
  gl_Position = projectionMatrix * modelViewMatrix * vec4(drawn, 1.0);
  ${CUT.vertex('drawn')}
}
`;

export const BODY_FRAGMENT = /* glsl */ `
${LIGHT}
${STANDS}
${CUT.fragmentHead}
uniform sampler2D uCover;
uniform bool uHasCover;
uniform bool uUncut;
/** What wear has laid open: as dull as a casting, and in the shade of what stands about it. */
uniform bool uInner;
#ifdef IN_METAL
${DEPTH}
/** Least and greatest radius of the face they come to light in, and where its angle begins. */
uniform vec3 uLaidOpen;
#endif
varying vec2 vPlace;
varying vec3 vDrawn;
varying vec3 vNormal;
/** The depth of a face is read this far off such a wall, mm: below the wall itself the face ends. */
const float BESIDE = 0.6;

void main() {
  ${CUT.fragment}
  if (uUncut && uHasCover && texture2D(uCover, vPlace).r < 0.5) discard;
#ifdef IN_METAL
  // Cut open, walls within the metal would be seen where nothing has laid them open yet.
  if (vNormal.z < 0.5) {
    vec2 beside = vDrawn.xy + BESIDE * normalize(vNormal).xy;
    float round_ = fract((atan(beside.y, beside.x) - uLaidOpen.z) / 6.283185307);
    float out_ = (length(beside) - uLaidOpen.x) / (uLaidOpen.y - uLaidOpen.x);
    if (-vDrawn.z > depthAt(vec2(round_, out_)) + 0.05) discard;
  }
#endif
  ${CUT.inside}
  vec3 n0 = normalize(vNormal);
  vec3 n = normalize((modelViewMatrix * vec4(n0, 0.0)).xyz);
  // Walls are turned about z, the back is faced.
  vec3 turned = abs(n0.z) > 0.5 ? vec3(-vDrawn.y, vDrawn.x, 0.0) : vec3(-n0.y, n0.x, 0.0);
  vec3 groove = normalize((modelViewMatrix * vec4(turned + 1e-5, 0.0)).xyz);
  vec3 eye = normalize(-(modelViewMatrix * vec4(vDrawn, 1.0)).xyz);
  if (uInner) {
    gl_FragColor = vec4(0.7 * IRON * lightOn(n), 1.0);
    #include <colorspace_fragment>
    return;
  }
  vec3 shown = IRON * lightOn(n) + 0.22 * sheenOn(n, groove, eye, 0.6) * vec3(1.0, 0.985, 0.96);
  gl_FragColor = vec4(shown, 1.0);
  #include <colorspace_fragment>
}
`;

export const EDGE_FRAGMENT = /* glsl */ `
${SINK}
${CUT.fragmentHead}
${SIDE}
uniform float uInk;
varying vec2 vPlace;
varying vec3 vNormal;

void main() {
  ${CUT.fragment}
  // Where the bore is worn its edge has moved: shading shows it, a line at the old place would float.
  if (uCorner == 1 && vPlace.y < 1e-3) {
    float below = vNormal.z > 0.5 ? max(0.02, sinkAt(vPlace) / uCornerSize.y) : 0.98;
    if (sideAt(vec2(vPlace.x, below)) > 0.05) discard;
  }
  gl_FragColor = vec4(vec3(0.035, 0.033, 0.03), uInk);
  #include <colorspace_fragment>
}
`;
