import { expect, test } from 'vitest';
import { markField, placeInFile } from '../../../geometry/job/mark-field.ts';

test('a mark is found in the file past the marks that are not worked out', () => {
  const leftOut = ['parts[0].wear[0]', 'parts[1].wear[1]', 'parts[1].wear[2]', 'parts[1]'];
  const job = { unsupported: leftOut.map((field) => ({ field, what: 'the mark' })) };
  expect([0, 1, 2].map((mark) => placeInFile(job, 1, mark))).toEqual([0, 3, 4]);
  expect([0, 1].map((mark) => placeInFile(job, 0, mark))).toEqual([1, 2]);
  expect(placeInFile({ unsupported: [] }, 0, 7)).toBe(7);
  expect(markField(1, 3)).toBe('parts[1].wear[3]');
});
