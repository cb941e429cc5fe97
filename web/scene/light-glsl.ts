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

/** Sound metal, turned. */
export const BARE = /* glsl */ `
vec3 bareMetal(vec3 n, vec3 groove, vec3 eye, float light) {
  return IRON * light + 0.46 * sheenOn(n, groove, eye, 1.0) * vec3(1.0, 0.985, 0.96);
}
`;
