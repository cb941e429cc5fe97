/**
 * How metal looks here: matte machined iron under a key and a fill light that stay with the eye, so that relief reads the same from
 * every side. Directions are in the eye's own axes, colours linear.
 */

/** Light on a bare or worn place; directions in the eye's own axes. */
export const LIGHT = /* glsl */ `
const vec3 KEY = vec3(-0.463, 0.617, 0.637);
const vec3 FILL = vec3(0.82, -0.12, 0.56);
const vec3 IRON = vec3(0.36, 0.352, 0.336);

float lightOn(vec3 n) {
  float sky = 0.5 + 0.5 * n.y;
  return 0.20 + 0.20 * sky + 0.84 * max(dot(n, KEY), 0.0) + 0.18 * max(dot(n, FILL), 0.0);
}

// Grooves of the tool run along \`groove\`: the light stretches across them, as on anything turned on a lathe.
float sheenOn(vec3 n, vec3 groove, vec3 eye, float polish) {
  vec3 h = normalize(KEY + eye);
  vec3 across = cross(n, groove);
  float a = dot(h, groove) / mix(0.55, 0.2, polish);
  float b = dot(h, across) / 0.7;
  return max(dot(n, KEY), 0.0) * exp(-2.0 * (a * a + b * b) / (1.0 + max(dot(h, n), 0.0)));
}
`;

/** Sound metal, turned on a lathe or as it was cast: dull then, and alike from all sides. */
export const BARE = /* glsl */ `
uniform bool uCast;

vec3 bareMetal(vec3 n, vec3 groove, vec3 eye, float light) {
  if (uCast) {
    float gloss = pow(max(dot(n, normalize(KEY + eye)), 0.0), 9.0);
    return IRON * light * vec3(0.98, 0.97, 0.955) + 0.09 * gloss * max(dot(n, KEY), 0.0);
  }
  return IRON * light + 0.46 * sheenOn(n, groove, eye, 1.0) * vec3(1.0, 0.985, 0.96);
}

// The skin of the sand: faint, and gone where it would be finer than the pixels.
float skinAt(vec3 p, float wide) {
  vec3 q = p * 0.62;
  float coarse = sin(q.x + 1.7 * sin(0.83 * q.y)) * sin(q.y + 1.3 * sin(0.71 * q.z)) * sin(q.z + 1.9 * sin(0.77 * q.x));
  vec3 r = p.yzx * 2.3 + 3.0 * coarse;
  float fine = sin(r.x + sin(0.9 * r.y)) * sin(r.y + sin(1.1 * r.z)) * sin(r.z + sin(0.8 * r.x));
  return 1.0 + 0.05 * coarse * smoothstep(5.0, 2.0, wide) + 0.05 * fine * smoothstep(1.4, 0.5, wide);
}
`;
