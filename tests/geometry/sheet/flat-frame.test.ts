import { describe, expect, it } from 'vitest';
import { flatFrame } from '../../../geometry/sheet/flat-frame.ts';
import { impellerPart } from '../part/impellers.ts';

const faceOf = (name: string) => {
  const face = impellerPart().faces.find((known) => known.name === name);
  if (face === undefined) throw new Error(`no face ${name}`);
  return face;
};

describe('the faces of a vane laid flat', () => {
  it.each(['vane-1/pressure', 'vane-1/suction', 'vane-1/tip'])(
    'lie with the distance along to the right and the second number up: %s',
    (name) => {
      const face = faceOf(name);
      const frame = flatFrame(face);
      const [along, second] = face.coordinates;
      expect(frame.box).toEqual({
        x: along.from,
        y: expect.closeTo(-second.to, 9),
        width: expect.closeTo(along.to - along.from, 9),
        height: expect.closeTo(second.to - second.from, 9),
      });
      expect(frame.toFlat(100, 3)).toEqual([100, -3]);
      expect(frame.toGrid(...frame.toFlat(17, -2.5))).toEqual([17, -2.5]);
    },
  );

  it.each(['vane-1/leading-edge', 'vane-1/trailing-edge'])('stand upright, height up: %s', (name) => {
    const frame = flatFrame(faceOf(name));
    expect(frame.toFlat(20, 3)).toEqual([3, -20]);
    expect(frame.box.height).toBeGreaterThan(frame.box.width);
  });
});
