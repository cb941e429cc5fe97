import { describe, expect, test } from 'vitest';
import type { JobFile } from '../../../../geometry/job/job-file.ts';
import { newPlateJob } from '../../../../geometry/job/new-plate-job.ts';
import { coatedGroups, isCoated, withCoated } from '../../../../web/panels/fill/coated-groups.ts';
import { newImpeller } from '../../../../web/panels/part/new-impeller.ts';

const job: JobFile = { ...newPlateJob(), parts: [...newPlateJob().parts, newImpeller()] };
const groups = coatedGroups(job);
const group = (face: string) => {
  const found = groups.find((known) => known.face === face);
  if (!found) throw new Error(`no ${face}`);
  return found;
};

describe('coated faces', () => {
  test('stand face by face for a plate and kind by kind for an impeller', () => {
    expect(groups.map(({ face }) => face)).toEqual([
      'face',
      'bore',
      'shroud/front',
      'shroud/back',
      'vane-*/pressure',
      'vane-*/suction',
      'vane-*/tip',
      'vane-*/leading-edge',
      'vane-*/trailing-edge',
    ]);
  });
  test('all of them are one pattern, one less are listed', () => {
    const less = withCoated(['*:*'], groups, group('shroud/back'), false);
    expect(less).toHaveLength(groups.length - 1);
    expect(isCoated(less, group('shroud/back'))).toBe(false);
    expect(withCoated(less, groups, group('shroud/back'), true)).toEqual(['*:*']);
  });
  test('what a file has chosen vane by vane outlives a switch elsewhere', () => {
    const { part } = group('vane-*/tip');
    const chosen = withCoated([`${part}:vane-2/tip`], groups, group('face'), true);
    expect(chosen).toContain(`${part}:vane-2/tip`);
    expect(chosen).toHaveLength(2);
    expect(isCoated(chosen, group('vane-*/tip'))).toBe(false);
  });
});
