/** The faces of a part in words, as they stand in the middle of a sentence; what no part has stays as it is. */
export function faceLabel(face: string): string {
  const vane = /^vane-(\*|\d+)\/(.*)$/.exec(face);
  if (vane !== null) {
    const [, number, name] = vane;
    return `${number === '*' ? 'all vanes' : `vane ${number}`}, ${VANE_FACES[name] ?? name}`;
  }
  return SHROUD_FACES[face] ?? face;
}

/** The faces of a vane in words, in the order they are offered. */
export const VANE_FACES: Readonly<Record<string, string>> = {
  pressure: 'pressure side',
  suction: 'suction side',
  tip: 'tip',
  'leading-edge': 'leading edge',
  'trailing-edge': 'trailing edge',
};

const SHROUD_FACES: Readonly<Record<string, string>> = {
  'shroud/front': 'front of the shroud',
  'shroud/back': 'back of the shroud',
};
