import { expect, test } from 'vitest';
import { questionsFor, withSolids } from '../../../../web/panels/fill/service-answers.ts';

const whole = { solids: 'hard', grains: 'sand', concentration: 'much', shape: 'angular' } as const;

test('only what matters for the answer before is asked', () => {
  expect(questionsFor(undefined)).toEqual([]);
  expect(questionsFor({ solids: 'none' })).toEqual([]);
  expect(questionsFor({ solids: 'soft' })).toEqual(['concentration']);
  expect(questionsFor({ solids: 'hard' })).toEqual(['grains', 'concentration', 'shape']);
});

test('an answer that is no longer asked does not count unseen', () => {
  expect(withSolids(whole, 'hard')).toEqual(whole);
  expect(withSolids(whole, 'soft')).toEqual({ solids: 'soft', concentration: 'much' });
  expect(withSolids(whole, 'none')).toEqual({ solids: 'none' });
  expect(withSolids(undefined, 'soft')).toEqual({ solids: 'soft' });
});
