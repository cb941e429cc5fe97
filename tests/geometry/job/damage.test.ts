import fc from 'fast-check';
import { expect, test } from 'vitest';
import { faultText } from '../../../geometry/job/fault.ts';
import { readJob } from '../../../geometry/job/read-job.ts';
import { wholeJob } from './whole-job.ts';

/** Puts `value` where `turns` lead, one turn a level down, or takes away what is there. */
function damaged(job: unknown, turns: readonly number[], value: unknown): void {
  let holder = job as Record<string, unknown>;
  for (const [i, turn] of turns.entries()) {
    const keys = Object.keys(holder);
    const key = keys[turn % keys.length];
    if (key === undefined) return;
    const inner = holder[key];
    if (i === turns.length - 1 || typeof inner !== 'object' || inner === null) {
      if (value === undefined && Array.isArray(holder)) holder.splice(Number(key), 1);
      else if (value === undefined) delete holder[key];
      else holder[key] = structuredClone(value);
      return;
    }
    holder = inner as Record<string, unknown>;
  }
}

const value = fc.oneof(
  fc.constantFrom(
    undefined,
    null,
    true,
    0,
    -1,
    -1e9,
    1e9,
    1e300,
    1.5,
    '',
    'worn',
    '12',
    [],
    {},
    [[]],
    [null],
  ),
  fc.jsonValue({ maxDepth: 2 }),
);
const damage = fc.array(fc.tuple(fc.array(fc.nat({ max: 40 }), { minLength: 1, maxLength: 7 }), value), {
  minLength: 1,
  maxLength: 4,
});

/** Follows all of the path but its last step, which may lead to something missing. */
function holds(job: unknown, field: string): boolean {
  const steps = [...field.matchAll(/([A-Za-z_]\w*)|\[(\d+)\]|\["((?:[^"\\]|\\.)*)"\]/g)].map(
    ([, name, index, quoted]) => name ?? index ?? (JSON.parse(`"${quoted}"`) as string),
  );
  let there = job;
  for (const step of steps.slice(0, -1)) {
    if (typeof there !== 'object' || there === null || !Object.hasOwn(there, step)) return false;
    there = (there as Record<string, unknown>)[step];
  }
  return typeof there === 'object' && there !== null;
}

test('whatever is done to a job, it is read or its faults name fields that are there; nothing throws', () => {
  let refused = 0;
  fc.assert(
    fc.property(damage, (changes) => {
      const job: unknown = wholeJob();
      for (const [turns, put] of changes) damaged(job, turns, put);
      const read = readJob(JSON.stringify(job));
      if ('job' in read) return;
      refused += 1;
      expect(read.faults.length).toBeGreaterThan(0);
      for (const fault of read.faults) {
        expect(fault.field === 'file' || holds(job, fault.field), faultText(fault)).toBe(true);
        expect(fault.found).not.toBe('');
        expect(fault.needs).not.toBe('');
        // The schema library's own words begin like this.
        expect(faultText(fault)).not.toMatch(/Invalid|Too (big|small)|expected|undefined|\[object/);
      }
    }),
    { numRuns: 600 },
  );
  expect(refused).toBeGreaterThan(200);
});

test('whatever is done to the text of a job, reading it does not throw', () => {
  const text = JSON.stringify(wholeJob(), null, 1);
  const place = fc.nat({ max: text.length });
  const scrap = fc.oneof(
    fc.string(),
    fc.constantFrom('"', '{', ']', ',', 'NaN', '-', '\\', '\u0000', '1e999'),
  );
  fc.assert(
    fc.property(place, fc.nat({ max: 30 }), scrap, (at, length, put) => {
      const read = readJob(text.slice(0, at) + put + text.slice(at + length));
      expect('job' in read || read.faults.length > 0).toBe(true);
    }),
    { numRuns: 600 },
  );
});
