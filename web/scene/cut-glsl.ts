/**
 * How a part is stood somewhere else than in its own frame, and how it is cut open by planes. Where nothing cuts, all of it is empty;
 * where a part stands in its own frame, the model's matrix changes nothing.
 */

/** The matrix from the part into the eye's axes, for fragments too. */
export const STANDS = /* glsl */ `
uniform mat4 modelViewMatrix;
`;

export const CUT = {
  vertexHead: '#include <clipping_planes_pars_vertex>',
  /** @param place  name of the drawn place, part frame */
  vertex: (place: string) => `
  #if NUM_CLIPPING_PLANES > 0
  vec4 mvPosition = modelViewMatrix * vec4(${place}, 1.0);
  #include <clipping_planes_vertex>
  #endif
`,
  fragmentHead: '#include <clipping_planes_pars_fragment>',
  fragment: '#include <clipping_planes_fragment>',
  /** The inside of a part only marks where the cut shows metal; the cut itself is drawn over it. */
  inside: `
  #ifdef INSIDE
  gl_FragColor = vec4(0.5, 0.5, 0.5, 1.0);
  return;
  #endif
`,
} as const;
