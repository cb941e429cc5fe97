import { CUT } from './cut-glsl.ts';

/** What the shaders know of a vane: its camber, its sizes, and how far each of its faces has sunk. Vane coordinates are s, n, z in mm. */

/** The faces of a vane as the shaders number them; 0 is none of them. */
export const VANE_ROLES = ['pressure', 'suction', 'tip', 'leading-edge', 'trailing-edge'] as const;

const SIZES = /* glsl */ `
/** Length of the camber, thickness at its two ends, radius of a round nose (0 for a square one). */
uniform vec4 uVane;
/** Height against the share of the length, powers 0 to 3. */
uniform vec4 uVaneHeight;
/** Which face this is, see VANE_ROLES: 1 to 5. */
uniform int uRole;

float shareAt(float s) { return clamp(s / uVane.x, 0.0, 1.0); }
float thicknessAt(float s) { return mix(uVane.y, uVane.z, shareAt(s)); }
float heightAt(float s) {
  float t = shareAt(s);
  return uVaneHeight.x + t * (uVaneHeight.y + t * (uVaneHeight.z + t * uVaneHeight.w));
}
`;

/** Where a place of the vane lies in the part frame; past the ends of the camber it runs on straight. */
export const VANE_PLACE = /* glsl */ `
${SIZES}
/** x, y and direction of the camber of vane 1 at even steps. */
uniform sampler2D uCamber;
uniform float uCamberSteps;
/** Cosine and sine of the turn from vane 1 to this vane. */
uniform vec2 uTurn;
/** 1 where the camber turns with the pressure side on its left, else -1. */
uniform float uSweep;

vec4 camberAt(float s) {
  float on = clamp(s, 0.0, uVane.x);
  float at = on / uVane.x * uCamberSteps;
  int i = int(min(floor(at), uCamberSteps - 1.0));
  vec4 c = mix(texelFetch(uCamber, ivec2(i, 0), 0), texelFetch(uCamber, ivec2(i + 1, 0), 0), at - float(i));
  vec2 along = normalize(c.zw);
  vec2 place = c.xy + (s - on) * along;
  mat2 turn = mat2(uTurn.x, uTurn.y, -uTurn.y, uTurn.x);
  return vec4(turn * place, turn * along);
}

vec2 acrossOf(vec4 camber) { return uSweep * vec2(camber.w, -camber.z); }
`;

/**
 * A tip has the height of its vane all across. Where plate and tips are drawn against each other that would not do: tips are turned on a
 * lathe, so that their height goes by the radius.
 */
export const TURNED_TIP = /* glsl */ `
#ifdef TURNED_TIPS
/** Radius and height where the vanes begin, rise a mm of radius, radius where they end. */
uniform vec4 uRake;

float lathed(vec3 inVane, float radius) {
  float height = heightAt(inVane.x);
  float turned = uRake.y + uRake.z * (clamp(radius, uRake.x, uRake.w) - uRake.x);
  return (turned - height) * clamp(inVane.z / (0.6 * height), 0.0, 1.0);
}
#else
float lathed(vec3 inVane, float radius) { return 0.0; }
#endif
`;

/** Whether the metal at a place of the vane has gone with one of its faces. */
export const VANE_GONE = /* glsl */ `
${SIZES}
uniform float uTimes;
/** Whether any face of this vane is worn. */
uniform bool uVaneWorn;
uniform sampler2D uPressure;
uniform sampler2D uSuction;
uniform sampler2D uTip;
uniform sampler2D uLead;
uniform sampler2D uTrail;
/** Steps between the places that sink, along v and u: of the sides, the tip and the two edges. */
uniform vec2 uSideSteps;
uniform vec2 uTipSteps;
uniform vec2 uLeadSteps;
uniform vec2 uTrailSteps;
/** Height the sides reach; half widths of tip and edges; heights of the edges. */
uniform float uSideTop;
uniform vec3 uHalves;
uniform vec2 uEdgeTops;

float sunkAt(sampler2D map, vec2 steps, vec2 place) {
  return uTimes * texture2D(map, (clamp(place, 0.0, 1.0) * steps + 0.5) / (steps + 1.0)).r;
}

float acrossShare(float n, float half_) { return 0.5 + 0.5 * n / half_; }

float noseAt(float n) {
  float r = uVane.w;
  return r > 0.0 ? r - sqrt(max(0.0, r * r - n * n)) : 0.0;
}

/** @param slack  mm that a face may stand out and count as there: how exactly two meshes meet */
bool isGone(vec3 at, float slack) {
  float s = at.x;
  float n = at.y;
  float z = at.z;
  float half_ = 0.5 * thicknessAt(s);
  vec2 side = vec2(z / uSideTop, s / uVane.x);
  if (uRole != 1 && n > half_ - sunkAt(uPressure, uSideSteps, side) + slack) return true;
  if (uRole != 2 && n < -half_ + sunkAt(uSuction, uSideSteps, side) - slack) return true;
  vec2 tip = vec2(acrossShare(n, uHalves.x), s / uVane.x);
  if (uRole != 3 && z > heightAt(s) - sunkAt(uTip, uTipSteps, tip) + slack) return true;
  vec2 lead = vec2(acrossShare(n, uHalves.y), z / uEdgeTops.x);
  if (uRole != 4 && s < noseAt(n) + sunkAt(uLead, uLeadSteps, lead) - slack) return true;
  vec2 trail = vec2(acrossShare(n, uHalves.z), z / uEdgeTops.y);
  return uRole != 5 && s > uVane.x - sunkAt(uTrail, uTrailSteps, trail) + slack;
}
`;

export const VANE_EDGE_VERTEX = /* glsl */ `
${SIZES}
${TURNED_TIP}
${CUT.vertexHead}
attribute vec3 inVane;
varying vec3 vInVane;

void main() {
  vInVane = inVane;
  vec3 drawn = position + vec3(0.0, 0.0, lathed(inVane, length(position.xy)));
  gl_Position = projectionMatrix * modelViewMatrix * vec4(drawn, 1.0);
  ${CUT.vertex('drawn')}
}
`;

export const VANE_EDGE_FRAGMENT = /* glsl */ `
${VANE_GONE}
${CUT.fragmentHead}
uniform float uInk;
varying vec3 vInVane;

void main() {
  ${CUT.fragment}
  // Where something about it is worn the edge has moved: shading shows it, a line at the old place would float.
  if (uVaneWorn && isGone(vInVane, 0.05)) discard;
  gl_FragColor = vec4(vec3(0.035, 0.033, 0.03), uInk);
  #include <colorspace_fragment>
}
`;
