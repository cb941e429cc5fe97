import { expect, test } from 'vitest';
import { replay } from '../../../../geometry/depth/replay.ts';
import type { Mark } from '../../../../geometry/job/job.ts';
import type { Part } from '../../../../geometry/part/part.ts';
import { wearPlate } from '../../../../geometry/part/wear-plate.ts';
import { TURN } from '../../../../geometry/units.ts';
import { facing } from '../../../../web/scene/assembly/facing.ts';
import { fromPlate, fromRotor, type Pose } from '../../../../web/scene/assembly/pose.ts';
import { meeting, tightPlaces, tightRig } from '../../../../web/scene/assembly/tight-spot.ts';
import { sightOf } from '../../../../web/scene/camera.ts';
import type { LivePart } from '../../../../web/wear/live-faces.ts';
import { plate } from '../../../geometry/made.ts';
import { impellerPart } from '../../../geometry/part/impellers.ts';

const live = (part: Part, marks: readonly Mark[] = []): LivePart => ({
  part,
  faces: part.faces.map((face) => ({ part: part.id, face, map: replay(face, marks) })),
});
const worn: Mark = {
  kind: 'patch',
  face: 'face',
  first: [60, 160],
  second: [0, TURN - 1e-9],
  depth: [0.3, 0.3],
  blend: 'deepest',
};
const below = live(wearPlate(plate(), 2), [worn]);
const above = live(impellerPart());
const stood = facing(below.part, above.part, { asNew: 0.4, shim: 0, asNewHolds: 'everywhere' });
if (stood === null) throw new Error('shares no radius');
const parts = { plate: below, rotor: above, facing: stood };
const { body } = above.part;
if (body.kind !== 'impeller') throw new Error('needs an impeller');
const [x, y] = body.vanes[1].position(70, -2.5, 0);
const radius = Math.hypot(x, y);
const spot = { gap: 0.7, radius, plate: [radius, 215] as const, tip: 'vane-2/tip', on: [70, -2.5] as const };

test('turned as it says, plate and tip of the tight spot meet one over the other at the gap, on the cut', () => {
  const places = tightPlaces(spot, parts);
  if (places === null) throw new Error('has the faces');
  const { turn, cut } = meeting(places);
  const pose: Pose = { facing: stood, height: stood.standOff, turn };
  const [onPlate, onTip] = [fromPlate(pose, places.onPlate), fromRotor(pose, places.onTip)];
  expect(onPlate[0]).toBeCloseTo(onTip[0], 6);
  expect(onPlate[1]).toBeCloseTo(onTip[1], 6);
  // 0.4 as new and 0.3 worn off the plate; the tip, turned on a lathe, is as high here as everywhere at this radius.
  expect(onPlate[2] - onTip[2]).toBeCloseTo(0.7, 6);
  expect(onPlate[0] * Math.sin(cut) - onPlate[1] * Math.cos(cut)).toBeCloseTo(0, 6);
  expect(onPlate[0] * Math.cos(cut) + onPlate[1] * Math.sin(cut)).toBeCloseTo(radius, 6);
});

test.each([0.02, 0.12, 0.7, 9, 0, -0.2])(
  'a gap of %s mm is looked at square on, in the middle, as near as it needs',
  (gap) => {
    const places = tightPlaces(spot, parts);
    if (places === null) throw new Error('has the faces');
    const { turn, cut } = meeting(places);
    const pose: Pose = { facing: stood, height: stood.standOff, turn };
    const screen = { width: 900, height: 600 };
    const sight = sightOf(tightRig(places, pose, cut, gap, screen), screen);
    const [px, py] = sight.project(fromPlate(pose, places.onPlate));
    const across = Math.min(900 / 6, Math.max(900 / 60, 48 / Math.max(Math.abs(gap), 0.001)));
    expect(px).toBeCloseTo(450, 3);
    expect(300 - py).toBeCloseTo((0.7 / 2) * across, 3);
    // From the side that is cut away, level with the gap.
    expect(sight.into[0]).toBeCloseTo(-Math.sin(cut), 9);
    expect(sight.into[1]).toBeCloseTo(Math.cos(cut), 9);
    expect(sight.into[2]).toBeCloseTo(0, 9);
  },
);

test('a tight spot of a vane the impeller has no more is none', () => {
  expect(tightPlaces({ ...spot, tip: 'vane-9/tip' }, parts)).toBeNull();
});
