/** How the bars of a part are told apart without colour. */
export type Texture = 'plain' | 'stripes' | 'dots' | 'weave';

const OF_PART: readonly Texture[] = ['plain', 'stripes', 'dots'];

/** @param parts  the step's own @param all  ids in the job's order; work on several of them at once is `weave` */
export function textureOf(parts: readonly string[], all: readonly string[]): Texture {
  if (all.length < 2) return 'plain';
  if (parts.length !== 1) return 'weave';
  return OF_PART[Math.max(0, all.indexOf(parts[0])) % OF_PART.length];
}
