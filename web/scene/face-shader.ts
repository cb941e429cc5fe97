/** A worn face: sound metal turned on a lathe, worn metal in the colour of its depth with mm contour lines and its own relief. */
import { CUT, STANDS } from './cut-glsl.ts';
import { DEPTH, SIDE, SINK } from './depth-glsl.ts';
import { BARE, LIGHT } from './light-glsl.ts';
import { TURNED_TIP, VANE_GONE, VANE_PLACE } from './vane-glsl.ts';

export const FACE_VERTEX = /* glsl */ `
${SINK}
${CUT.vertexHead}
attribute vec2 place;
attribute vec3 groove;
attribute float open;
varying vec2 vPlace;
varying vec3 vNominal;
varying vec3 vDrawn;
varying vec3 vNormal;
varying vec3 vGroove;
varying float vOpen;

void main() {
  vPlace = place;
  vOpen = open;
  vNormal = normal;
  vGroove = groove;
  vNominal = position;
  vDrawn = position - normal * sinkAt(place);
  gl_Position = projectionMatrix * modelViewMatrix * vec4(vDrawn, 1.0);
  ${CUT.vertex('vDrawn')}
}
`;

/** The same for a face of a vane: it sinks along the vane's own coordinates, an edge along the camber. */
export const VANE_VERTEX = /* glsl */ `
${SINK}
${VANE_PLACE}
${TURNED_TIP}
${CUT.vertexHead}
attribute vec2 place;
attribute vec3 groove;
attribute vec3 inVane;
varying vec2 vPlace;
varying vec3 vNominal;
varying vec3 vDrawn;
varying vec3 vNormal;
varying vec3 vGroove;
varying vec3 vInVane;
varying float vOpen;

vec3 turnedWith(vec3 v, vec2 from, vec2 to) {
  float c = dot(from, to);
  float s = from.x * to.y - from.y * to.x;
  return vec3(c * v.x - s * v.y, s * v.x + c * v.y, v.z);
}

void main() {
  vPlace = place;
  vNormal = normal;
  vGroove = groove;
  vNominal = position;
  vDrawn = position;
  vInVane = inVane;
  float sunk = sinkAt(place);
  if (sunk > 0.0) {
    if (uRole == 1) vInVane.y -= sunk;
    else if (uRole == 2) vInVane.y += sunk;
    else if (uRole == 3) vInVane.z -= sunk;
    else if (uRole == 4) vInVane.x += sunk;
    else vInVane.x -= sunk;
    vec4 camber = camberAt(vInVane.x);
    if (uRole > 3) {
      // Further along the vane may be thicker and higher.
      vInVane.y *= max(1.0, thicknessAt(vInVane.x) / thicknessAt(inVane.x));
      vInVane.z *= max(1.0, heightAt(vInVane.x) / heightAt(inVane.x));
      vec2 before = camberAt(inVane.x).zw;
      vNormal = turnedWith(normal, before, camber.zw);
      vGroove = turnedWith(groove, before, camber.zw);
    }
    vDrawn = vec3(camber.xy + vInVane.y * acrossOf(camber), vInVane.z);
  }
  vDrawn.z += lathed(vInVane, length(vDrawn.xy));
  // Down between the vanes less light comes in.
  vOpen = mix(0.7, 1.0, smoothstep(0.0, 0.75, vInVane.z / heightAt(vInVane.x)));
  gl_Position = projectionMatrix * modelViewMatrix * vec4(vDrawn, 1.0);
  ${CUT.vertex('vDrawn')}
}
`;

export const FACE_FRAGMENT = /* glsl */ `
${DEPTH}
${LIGHT}
${BARE}
${STANDS}
${CUT.fragmentHead}
uniform float uStep;
uniform float uScaleTo;
uniform float uPixel;
uniform sampler2D uRamp;
uniform sampler2D uCover;
uniform bool uHasCover;
/** A place with less of its cell on the face than this is none of it. */
uniform float uLeastCover;
/** mm a cell along v and along u; along v a radius of 1 when the face is polar. */
uniform vec2 uCellSize;
uniform bool uPolar;
/** 1 when v x normal points along u, else -1. */
uniform float uHand;

varying vec2 vPlace;
varying vec3 vNominal;
varying vec3 vDrawn;
varying vec3 vNormal;
varying vec3 vGroove;
/** Share of the light about that reaches the place. */
varying float vOpen;

// The marks of the turning tool: faint, and gone where they would be finer than the pixels.
float grainAt(float mm, float wide) {
  float fine = sin(mm * 9.1) * sin(mm * 4.3 + 1.0);
  float coarse = sin(mm * 1.9) * sin(mm * 0.83 + 2.0);
  return 1.0 + 0.035 * fine * smoothstep(0.35, 0.1, wide) + 0.02 * coarse * smoothstep(1.6, 0.6, wide);
}

#ifdef VANE
varying vec3 vInVane;
${VANE_GONE}
/** Meshes of two worn faces meet to within this, mm. */
const float MEET = 0.03;
void discardLost() {
  if (uVaneWorn && isGone(vInVane, MEET)) discard;
}
#else
uniform float uTimes;
${SIDE}
// Where the metal behind this face went with the other face of the corner there is nothing to draw.
void discardLost() {
  if (uCorner == 0) return;
  if (uCorner == 1) {
    float below = (vNominal.z - vDrawn.z) + (uCornerSize.x - length(vNominal.xy)) * uSlope.x / uSlope.y;
    float lost = sideAt(vec2(vPlace.x, max(below, 0.0) / uCornerSize.y));
    if (length(vDrawn.xy) < uCornerSize.x + uTimes * lost) discard;
  } else if (uCorner == 2) {
    float out_ = length(vDrawn.xy) - uCornerSize.x;
    float behind = (vPlace.y * uCornerSize.y + out_ * uSlope.x / uSlope.y) * uSlope.y;
    float lost = sideAt(vec2(vPlace.x, max(out_, 0.0) / uCornerSize.z));
    if (behind < uTimes * lost) discard;
  } else if (uCorner == 3 && abs(vNominal.z - vDrawn.z) + uTimes * sideAt(vPlace) > uCornerSize.x) {
    discard;
  }
}
#endif

void main() {
  // Differences between pixels first, while all of them still run.
  vec2 perPixel = fwidth(vPlace * uCells);
  vec3 pixelRight = dFdx(vNominal);
  vec3 pixelUp = dFdy(vNominal);
  ${CUT.fragment}
  if (uHasCover && texture2D(uCover, vPlace).r < uLeastCover) discard;
  discardLost();
  ${CUT.inside}

  vec3 n0 = normalize(vNormal);
  vec3 across = normalize(vGroove);
  vec3 beside = cross(across, n0);
  // Depth runs along a vane's edge and not into it: on the round of a nose its slopes tilt the surface less.
  float facing = length(beside);
  vec3 along = uHand * beside / facing;
  vec2 cell = uPolar ? vec2(uCellSize.x * length(vNominal.xy), uCellSize.y) : uCellSize;

  vec3 eye = normalize(-(modelViewMatrix * vec4(vDrawn, 1.0)).xyz);
  vec3 turned = across;
  float wideMm = perPixel.y * cell.y;
#ifdef VANE
  // Tips are turned with the impeller.
  if (uRole == 3) turned = vec3(-vDrawn.y, vDrawn.x, 0.0) / length(vDrawn.xy);
  float grain = uCast ? skinAt(vNominal, wideMm) : grainAt(length(vDrawn.xy), wideMm);
#else
  float grain = uCast ? skinAt(vNominal, wideMm) : grainAt(vPlace.y * uCells.y * cell.y, wideMm);
#endif
  grain *= vOpen;
  vec3 grooveSeen = (modelViewMatrix * vec4(turned, 0.0)).xyz;

  // The depth a little way round: where there is none the metal is sound and needs nothing more.
  vec2 wide = max(vec2(2.5) / cell, 1.5 * perPixel) / uCells;
  float east = depthAt(vPlace + vec2(wide.x, 0.0));
  float west = depthAt(vPlace - vec2(wide.x, 0.0));
  float north = depthAt(vPlace + vec2(0.0, wide.y));
  float south = depthAt(vPlace - vec2(0.0, wide.y));
  float near = depthAt(vPlace);
  if (near + east + west + north + south == 0.0) {
    vec3 n = normalize((modelViewMatrix * vec4(n0, 0.0)).xyz);
    vec3 groove = normalize(grooveSeen - n * dot(grooveSeen, n));
    gl_FragColor = vec4(bareMetal(n, groove, eye, lightOn(n) * grain), 1.0);
    #include <colorspace_fragment>
    return;
  }

  // Slopes over at least a cell and at least a pixel, so that far off nothing sparkles.
  vec2 reach = max(vec2(1.0), 0.7 * perPixel);
  vec2 stepX = vec2(reach.x, 0.0) / uCells;
  vec2 stepY = vec2(0.0, reach.y) / uCells;
  float right = depthAt(vPlace + stepX);
  float left = depthAt(vPlace - stepX);
  float up = depthAt(vPlace + stepY);
  float down = depthAt(vPlace - stepY);
  float depth = max(perPixel.x, perPixel.y) > 1.0 ? near : smoothDepthAt(vPlace);
  vec3 slope = across * (right - left) / (2.0 * reach.x * cell.x) + along * (up - down) / (2.0 * reach.y * cell.y);

  vec3 n = normalize((modelViewMatrix * vec4(n0 + uTimes * facing * slope, 0.0)).xyz);
  vec3 groove = normalize(grooveSeen - n * dot(grooveSeen, n));

  // A worn place lies in the shade of its own walls.
  float shade = 1.0 - clamp(0.16 * uTimes * (depth - 0.25 * (east + west + north + south)), 0.0, 0.45);
  float worn = smoothstep(0.02, 0.12, depth);
  float light = lightOn(n) * shade * vOpen;
  vec3 colour = texture2D(uRamp, vec2(clamp(depth / uScaleTo, 0.0, 1.0) * (255.0 / 256.0) + 0.5 / 256.0, 0.5)).rgb;
  vec3 scoured = colour * (0.16 + 0.86 * light) + 0.05 * sheenOn(n, groove, eye, 0.0);
  vec3 shown = mix(bareMetal(n, groove, eye, light * grain / vOpen), scoured, worn);

  // Contour lines: how many steps of depth one pixel spans decides their width, so they are as fine at any distance.
  float level = depth / uStep + 0.02;
  float span = length(vec2(dot(slope, pixelRight), dot(slope, pixelUp))) / uStep;
  float off = abs(fract(level + 0.5) - 0.5) / max(span, 1e-4);
  float isLine = 1.0 - smoothstep(0.35 * uPixel, 0.35 * uPixel + 1.0, off);
  isLine *= smoothstep(0.0006, 0.0025, span * uPixel) * (1.0 - smoothstep(0.22, 0.6, span)) * step(0.5, level);
  float edge = abs(depth - 0.05) / max(span * uStep, 1e-4);
  float isEdge = (1.0 - smoothstep(0.3 * uPixel, 0.3 * uPixel + 1.0, edge)) * smoothstep(0.0006, 0.0025, span * uPixel);
  float tone = dot(colour, vec3(0.21, 0.72, 0.07));
  vec3 ink = tone > 0.07 ? vec3(0.02, 0.025, 0.03) : vec3(0.5, 0.55, 0.62);
  shown = mix(shown, ink, max(0.72 * isLine, 0.5 * isEdge * (1.0 - worn * 0.5)));

  gl_FragColor = vec4(shown, 1.0);
  #include <colorspace_fragment>
}
`;
