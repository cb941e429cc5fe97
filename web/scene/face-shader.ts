/** A worn face: sound metal turned on a lathe, worn metal in the colour of its depth with mm contour lines and its own relief. */
import { DEPTH, SIDE, SINK } from './depth-glsl.ts';
import { BARE, LIGHT } from './light-glsl.ts';

export const FACE_VERTEX = /* glsl */ `
${SINK}
attribute vec2 place;
attribute vec3 groove;
varying vec2 vPlace;
varying vec3 vNominal;
varying vec3 vDrawn;
varying vec3 vNormal;
varying vec3 vGroove;

void main() {
  vPlace = place;
  vNormal = normal;
  vGroove = groove;
  vNominal = position;
  vDrawn = position - normal * sinkAt(place);
  gl_Position = projectionMatrix * viewMatrix * vec4(vDrawn, 1.0);
}
`;

export const FACE_FRAGMENT = /* glsl */ `
${DEPTH}
${LIGHT}
${BARE}
uniform float uTimes;
uniform float uStep;
uniform float uScaleTo;
uniform float uPixel;
uniform sampler2D uRamp;
uniform sampler2D uCover;
uniform bool uHasCover;
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

// The marks of the turning tool: faint, and gone where they would be finer than the pixels.
float grainAt(float mm, float wide) {
  float fine = sin(mm * 9.1) * sin(mm * 4.3 + 1.0);
  float coarse = sin(mm * 1.9) * sin(mm * 0.83 + 2.0);
  return 1.0 + 0.035 * fine * smoothstep(0.35, 0.1, wide) + 0.02 * coarse * smoothstep(1.6, 0.6, wide);
}

${SIDE}
// Where the metal behind this face went with the other face of the corner there is nothing to draw.
void discardLost() {
  if (uCorner == 1) {
    float below = (vNominal.z - vDrawn.z) + (uCornerSize.x - length(vNominal.xy)) * uSlope.x / uSlope.y;
    float lost = sideAt(vec2(vPlace.x, max(below, 0.0) / uCornerSize.y));
    if (length(vDrawn.xy) < uCornerSize.x + uTimes * lost) discard;
  } else if (uCorner == 2) {
    float out_ = length(vDrawn.xy) - uCornerSize.x;
    float behind = (vPlace.y * uCornerSize.y + out_ * uSlope.x / uSlope.y) * uSlope.y;
    float lost = sideAt(vec2(vPlace.x, max(out_, 0.0) / uCornerSize.z));
    if (behind < uTimes * lost) discard;
  }
}

void main() {
  // Differences between pixels first, while all of them still run.
  vec2 perPixel = fwidth(vPlace * uCells);
  vec3 pixelRight = dFdx(vNominal);
  vec3 pixelUp = dFdy(vNominal);
  if (uHasCover && texture2D(uCover, vPlace).r < 0.5) discard;
  if (uCorner != 0) discardLost();

  vec3 n0 = normalize(vNormal);
  vec3 across = normalize(vGroove);
  vec3 along = uHand * cross(across, n0);
  vec2 cell = uPolar ? vec2(uCellSize.x * length(vNominal.xy), uCellSize.y) : uCellSize;

  vec3 eye = normalize(-(viewMatrix * vec4(vDrawn, 1.0)).xyz);
  vec3 grooveSeen = (viewMatrix * vec4(across, 0.0)).xyz;
  float grain = grainAt(vPlace.y * uCells.y * cell.y, perPixel.y * cell.y);

  // The depth a little way round: where there is none the metal is sound and needs nothing more.
  vec2 wide = max(vec2(2.5) / cell, 1.5 * perPixel) / uCells;
  float east = depthAt(vPlace + vec2(wide.x, 0.0));
  float west = depthAt(vPlace - vec2(wide.x, 0.0));
  float north = depthAt(vPlace + vec2(0.0, wide.y));
  float south = depthAt(vPlace - vec2(0.0, wide.y));
  float near = depthAt(vPlace);
  if (near + east + west + north + south == 0.0) {
    vec3 n = normalize((viewMatrix * vec4(n0, 0.0)).xyz);
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

  vec3 n = normalize((viewMatrix * vec4(n0 + uTimes * slope, 0.0)).xyz);
  vec3 groove = normalize(grooveSeen - n * dot(grooveSeen, n));

  // A worn place lies in the shade of its own walls.
  float shade = 1.0 - clamp(0.16 * uTimes * (depth - 0.25 * (east + west + north + south)), 0.0, 0.45);
  float worn = smoothstep(0.02, 0.12, depth);
  float light = lightOn(n) * shade;
  vec3 colour = texture2D(uRamp, vec2(clamp(depth / uScaleTo, 0.0, 1.0) * (255.0 / 256.0) + 0.5 / 256.0, 0.5)).rgb;
  vec3 scoured = colour * (0.16 + 0.86 * light) + 0.05 * sheenOn(n, groove, eye, 0.0);
  vec3 shown = mix(bareMetal(n, groove, eye, light * grain), scoured, worn);

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
