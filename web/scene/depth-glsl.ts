/** What the shaders read of depth: textures of half floats in mm, addressed by the place on a face, share along v and along u. */

/** Depth under a place of a face; half floats, mm. */
export const DEPTH = /* glsl */ `
uniform sampler2D uDepth;
uniform vec2 uCells;

float depthAt(vec2 place) { return texture2D(uDepth, place).r; }

// A cubic B-spline over the cells, in four reads: smooth however near the eye comes.
float smoothDepthAt(vec2 place) {
  vec2 at = place * uCells - 0.5;
  vec2 f = fract(at);
  vec2 cell = at - f;
  vec2 g = 1.0 - f;
  vec2 w0 = g * g * g / 6.0;
  vec2 w1 = 2.0 / 3.0 - f * f * (2.0 - f) / 2.0;
  vec2 w2 = 2.0 / 3.0 - g * g * (2.0 - g) / 2.0;
  vec2 w3 = f * f * f / 6.0;
  vec2 low = w0 + w1;
  vec2 high = w2 + w3;
  vec2 a = (cell - 0.5 + w1 / low) / uCells;
  vec2 b = (cell + 1.5 + w3 / high) / uCells;
  return low.y * (low.x * depthAt(vec2(a.x, a.y)) + high.x * depthAt(vec2(b.x, a.y)))
       + high.y * (low.x * depthAt(vec2(a.x, b.y)) + high.x * depthAt(vec2(b.x, b.y)));
}
`;

/** How far a vertex sinks: a texel a vertex of the running mesh, its middle on the vertex. */
export const SINK = /* glsl */ `
uniform float uTimes;
uniform sampler2D uSink;
/** Steps between vertices, and texels; see SinkTexels. */
uniform vec2 uSinkSteps;
uniform vec2 uSinkTexels;

float sinkAt(vec2 place) {
  return uTimes * texture2D(uSink, (place * uSinkSteps + 0.5) / uSinkTexels).r;
}
`;

/**
 * What the other face of a corner has sunk: uCorner is 1 on the running face, 2 on the bore, 0 without a corner. uCornerSize: radius and
 * length of the bore, width of the running face; uSlope: sine and cosine of the cone.
 */
export const SIDE = /* glsl */ `
uniform int uCorner;
uniform sampler2D uSide;
uniform vec2 uSideSteps;
uniform vec2 uSideTexels;
uniform vec3 uCornerSize;
uniform vec2 uSlope;

float sideAt(vec2 place) {
  return texture2D(uSide, (clamp(place, 0.0, 1.0) * uSideSteps + 0.5) / uSideTexels).r;
}
`;
