import { describe, expect, test } from 'vitest';
import { replay } from '../../../../geometry/depth/replay.ts';
import type { Mark } from '../../../../geometry/job/job.ts';
import type { Part } from '../../../../geometry/part/part.ts';
import { wearPlate } from '../../../../geometry/part/wear-plate.ts';
import { type Mm, type Rad, TURN, type Vec3 } from '../../../../geometry/units.ts';
import {
  type Assembled,
  isBehindMetal,
  isCutAway,
  isMetal,
} from '../../../../web/scene/assembly/behind-metal.ts';
import { facing } from '../../../../web/scene/assembly/facing.ts';
import type { LivePart } from '../../../../web/wear/live-faces.ts';
import { plate } from '../../../geometry/made.ts';
import { impellerPart } from '../../../geometry/part/impellers.ts';

const live = (part: Part, marks: readonly Mark[] = []): LivePart => ({
  part,
  faces: part.faces.map((face) => ({ part: part.id, face, map: replay(face, marks) })),
});

/** A level pair, 0.5 mm apart: tips at 40 mm, the face of the plate at 40.5, its back at 58.5. */
function pair({
  cut = null,
  marks = [],
  apart = 0,
}: {
  cut?: Rad | null;
  marks?: readonly Mark[];
  apart?: Mm;
} = {}): Assembled {
  const below = wearPlate(plate(), 2);
  const above = impellerPart({ vanes: { heightOutlet: 40 } });
  const stood = facing(below, above, { asNew: 0.5, shim: 0, asNewHolds: 'at the closest' });
  if (stood === null) throw new Error('pair: shares no radius');
  return {
    plate: live(below, marks),
    rotor: live(above, marks),
    pose: { facing: stood, height: stood.standOff + apart, turn: 0 },
    cut,
  };
}

const polar = (radius: Mm, angle: Rad, z: Mm): Vec3 => [
  radius * Math.cos(angle),
  radius * Math.sin(angle),
  z,
];
const ABOVE: Vec3 = [0, 0, 800];

describe('what is metal', () => {
  test('plate, gap, shroud and hub, each where its sizes have it', () => {
    const both = pair();
    const at = (radius: Mm, z: Mm) => isMetal(both, polar(radius, 0.2, z));
    expect([at(100, 40.4), at(100, 40.6), at(100, 58.4), at(100, 58.6)]).toEqual([false, true, true, false]);
    // In the bore of the plate, and in the shroud below it.
    expect([at(58, 45), at(70, -1), at(70, -10.1)]).toEqual([false, true, false]);
  });

  test('a vane reaches up to the gap, and is lower where its tip is worn', () => {
    const mark: Mark = {
      kind: 'edge',
      face: 'vane-1/tip',
      profile: [
        [0, 2],
        [300, 2],
      ],
      blend: 'deepest',
    };
    const [sound, worn] = [pair(), pair({ marks: [mark] })];
    const { body } = sound.rotor.part;
    if (body.kind !== 'impeller') throw new Error('needs an impeller');
    const at = (z: Mm) => body.vanes[0].position(60, 0, z);
    expect([isMetal(sound, at(39.9)), isMetal(sound, at(40.1))]).toEqual([true, false]);
    expect([isMetal(worn, at(37.9)), isMetal(worn, at(38.1))]).toEqual([true, false]);
  });

  test('what the cut takes away is none', () => {
    const both = pair({ cut: 0 });
    const [kept, gone] = [polar(100, 0.3, 50), polar(100, -0.3, 50)];
    expect([isMetal(both, kept), isMetal(both, gone)]).toEqual([true, false]);
    expect([isCutAway(both, kept), isCutAway(both, gone), isCutAway(both, polar(100, 0, 50))]).toEqual([
      false,
      true,
      false,
    ]);
  });
});

describe('a place in the gap', () => {
  const place = polar(110, 0, 40.25);

  test('is hidden from above by the plate, and seen through no metal when the plate is pulled off and looked under', () => {
    expect(isBehindMetal(pair(), place, ABOVE)).toBe(true);
    expect(isBehindMetal(pair({ apart: 200 }), place, [900, 0, 60])).toBe(false);
    expect(isBehindMetal(pair({ apart: 200 }), place, ABOVE)).toBe(true);
  });

  test('is seen on the cut from the side that is taken away, and hidden from the other', () => {
    const both = pair({ cut: 0 });
    expect(isBehindMetal(both, place, [110, -600, 40.25])).toBe(false);
    expect(isBehindMetal(both, [110, 0, 45], [110, 600, 45])).toBe(true);
  });

  test('looked at along the gap from outside nothing stands before it', () => {
    expect(isBehindMetal(pair(), place, polar(900, 0, 40.25))).toBe(false);
  });
});

test('the cut may run in any direction', () => {
  for (let i = 0; i < 8; i++) {
    const cut = (TURN * i) / 8 + 0.1;
    expect(isCutAway(pair({ cut }), polar(50, cut - 0.5, 0))).toBe(true);
    expect(isCutAway(pair({ cut }), polar(50, cut + 0.5, 0))).toBe(false);
  }
});
