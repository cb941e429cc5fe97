import { expect, test } from 'vitest';
import type { WallResult } from '../../../../geometry/sheet/wall-result.ts';
import { wallOfFace, wallState, wallTitle, worstFirst } from '../../../../web/panels/clearance/wall-words.ts';

const wall = (
  face: string,
  remaining: number,
  limit: number | null,
  behind: string | null = null,
): WallResult => ({
  face,
  behind,
  at: [0, 0],
  asNew: 8,
  remaining,
  limit,
  under: 0,
  verdict: remaining === 0 ? 'through' : limit === null ? 'no limit' : remaining < limit ? 'under' : 'sound',
  places: [],
});

const VANE = wall('vane-2/suction', 3.2, 4, 'vane-2/pressure');

test('a wall by its name, what is left of it, in the units of the screen', () => {
  expect(wallTitle(VANE)).toBe('Vane 2');
  expect(wallTitle({ face: 'shroud/back' })).toBe('Shroud');
  expect(wallTitle({ face: 'face' })).toBe('Face');
  expect(wallState(VANE, 'mm')).toBe('3.20 of 8.00 mm left, under the least of 4.00 mm');
  expect(wallState(wall('face', 6, 4), 'mm')).toBe('6.00 of 8.00 mm left, sound');
  expect(wallState(wall('face', 6, null), 'mm')).toBe('6.00 of 8.00 mm left');
  expect(wallState(wall('face', 0, 4), 'mm')).toBe('worn through');
  expect(wallState(wall('face', 6.35, 4), 'in')).toBe('0.2500 of 0.3150 in left, sound');
});

test('the worst first: by how far over its limit, not by how thin', () => {
  const walls = [wall('face', 6, 5.5), VANE, wall('bore', 0, 4), wall('shroud/front', 9, 4)];
  expect(worstFirst(walls).map(({ face }) => face)).toEqual([
    'bore',
    'vane-2/suction',
    'face',
    'shroud/front',
  ]);
});

test('either side chooses a wall, a face that is none the worst', () => {
  const walls = [wall('shroud/front', 9, 4, 'shroud/back'), VANE];
  expect(wallOfFace(walls, 'shroud/back')?.face).toBe('shroud/front');
  expect(wallOfFace(walls, 'vane-2/pressure')).toBe(VANE);
  expect(wallOfFace(walls, 'vane-1/tip')).toBe(VANE);
  expect(wallOfFace([], 'face')).toBeUndefined();
});
