import fc from 'fast-check';
import { beforeEach, describe, expect, it } from 'vitest';
import type { JobFile, MarkFile, WearPlateFile } from '../../../geometry/job/job-file.ts';
import { newPlateJob } from '../../../geometry/job/new-plate-job.ts';
import { writeJob } from '../../../geometry/job/write-job.ts';
import { jobStore } from '../../../web/job/job-store.ts';
import { MOST_STEPS } from '../../../web/job/time-line.ts';

const state = () => jobStore.getState();
const start = jobStore.getInitialState();

beforeEach(() => jobStore.setState(start, true));

const withPlate = (job: JobFile, change: Partial<WearPlateFile>): JobFile => ({
  ...job,
  parts: job.parts.map((part, i) => (i === 0 && part.kind === 'wear-plate' ? { ...part, ...change } : part)),
});
const setThickness = (thickness: number) => (job: JobFile) => withPlate(job, { thickness });
const addMark = (mark: MarkFile) => (job: JobFile) => withPlate(job, { wear: [...job.parts[0].wear, mark] });
const thickness = () => (state().job.parts[0] as WearPlateFile).thickness;
const labels = () => state().past.map((step) => step.label);

describe('an edit', () => {
  it('is one step, with its name', () => {
    expect(state().edit('thickness', setThickness(18))).toEqual([]);
    expect(thickness()).toBe(18);
    expect(labels()).toEqual(['thickness']);
    state().undo();
    expect(state().job).toBe(start.job);
  });

  it('that would bring a fault changes nothing and hands the fault back', () => {
    const faults = state().edit('bore diameter', (job) => withPlate(job, { boreDiameter: 330 }));
    expect(faults.map((fault) => fault.field)).toEqual(['parts[0].boreDiameter']);
    expect(state()).toBe(start);
  });

  it('that puts NaN, text or nothing where a number belongs is refused', () => {
    for (const wrong of [Number.NaN, Number.POSITIVE_INFINITY, -3, 'thick', null]) {
      const faults = state().edit('thickness', setThickness(wrong as number));
      expect(faults.map((fault) => fault.field)).toEqual(['parts[0].thickness']);
    }
    expect(state()).toBe(start);
  });

  it('that changes nothing is no step', () => {
    expect(state().edit('thickness', (job) => structuredClone(job))).toEqual([]);
    expect(state()).toBe(start);
  });

  it('keeps what it did not touch by reference, so that screens see what changed', () => {
    state().edit('thickness', (job) => setThickness(18)(structuredClone(job)));
    expect(state().job.filler).toBe(start.job.filler);
    expect(state().job.parts[0].wear).toBe(start.job.parts[0].wear);
    expect(state().job.parts[0]).not.toBe(start.job.parts[0]);
  });

  it('keeps fields we do not know', () => {
    const job = { ...newPlateJob(), shelf: { row: 4 } };
    state().open(job, null);
    state().edit('thickness', setThickness(18));
    expect(state().job).toHaveProperty('shelf', { row: 4 });
  });

  it('after an undo throws the undone steps out', () => {
    state().edit('thickness', setThickness(18));
    state().undo();
    state().edit('thickness', setThickness(19));
    expect(state().future).toEqual([]);
    state().redo();
    expect(thickness()).toBe(19);
  });
});

describe('edits with one key', () => {
  it('are one step, back to where the first began', () => {
    for (const value of [19, 18, 17]) state().edit('thickness', setThickness(value), 'parts[0].thickness');
    expect(labels()).toEqual(['thickness']);
    state().undo();
    expect(thickness()).toBe(20);
    state().redo();
    expect(thickness()).toBe(17);
  });

  it('are no step when they end where they began', () => {
    for (const value of [19, 20]) state().edit('thickness', setThickness(value), 'drag');
    expect(state().past).toEqual([]);
    expect(state().job).toBe(start.job);
  });

  it('do not join across another step, an undo, or a second key', () => {
    state().edit('thickness', setThickness(19), 'a');
    state().edit('title', (job) => ({ ...job, title: 'Plate 4' }));
    state().edit('thickness', setThickness(18), 'a');
    state().edit('thickness', setThickness(17), 'b');
    state().undo();
    state().edit('thickness', setThickness(16), 'a');
    expect(labels()).toEqual(['thickness', 'title', 'thickness', 'thickness']);
  });
});

describe('opening another job', () => {
  it('is a step: undo brings the job and its file name back, redo the other', () => {
    const other = { ...newPlateJob(), title: 'Other' };
    jobStore.setState({ fileName: 'mine.job.json' });
    state().edit('thickness', setThickness(18));
    state().open(other, 'other.job.json');
    expect(labels()).toEqual(['thickness', 'Open other.job.json']);
    expect(state().fileName).toBe('other.job.json');
    state().undo();
    expect([thickness(), state().fileName]).toEqual([18, 'mine.job.json']);
    state().redo();
    expect([state().job, state().fileName]).toEqual([other, 'other.job.json']);
  });

  it('undoing an ordinary step leaves the name of a file saved meanwhile', () => {
    state().edit('thickness', setThickness(18));
    jobStore.setState({ fileName: 'saved.job.json' });
    state().undo();
    expect(state().fileName).toBe('saved.job.json');
  });
});

it(`the list ends at ${MOST_STEPS} steps, the oldest goes`, () => {
  for (let i = 0; i < MOST_STEPS + 5; i++) state().edit(`step ${i}`, setThickness(10 + i / 100));
  expect(state().past).toHaveLength(MOST_STEPS);
  expect(labels()[0]).toBe('step 5');
});

describe('random scripts of edits', () => {
  const mark: fc.Arbitrary<MarkFile> = fc.oneof(
    fc.record({
      kind: fc.constant('pit' as const),
      face: fc.constant('face'),
      at: fc.tuple(fc.integer({ min: 61, max: 149 }), fc.integer({ min: 0, max: 359 })),
      diameter: fc.integer({ min: 1, max: 20 }),
      depth: fc.integer({ min: 0, max: 50 }).map((tenths) => tenths / 10),
      form: fc.constantFrom('cone' as const, 'bowl' as const, 'flat' as const),
    }),
    fc.record({
      kind: fc.constant('patch' as const),
      face: fc.constant('face'),
      first: fc.constant([80, 120] as [number, number]),
      second: fc.tuple(fc.integer({ min: 0, max: 359 }), fc.integer({ min: 0, max: 359 })),
      depth: fc.double({ min: 0, max: 10, noNaN: true }),
    }),
  );
  /** One edit of the script; some are refused, some change nothing. */
  const edit = fc.oneof(
    fc
      .double({ min: -1, max: 40, noNaN: true })
      .map((size) => ({ name: 'thickness', change: setThickness(size) })),
    mark.map((added) => ({ name: 'mark', change: addMark(added) })),
    fc.nat(3).map((at) => ({
      name: 'remove',
      change: (job: JobFile) => withPlate(job, { wear: job.parts[0].wear.filter((_, i) => i !== at) }),
    })),
    fc.string().map((title) => ({ name: 'title', change: (job: JobFile) => ({ ...job, title }) })),
    fc.constant({ name: 'same', change: (job: JobFile) => structuredClone(job) }),
  );
  const script = fc.array(fc.tuple(edit, fc.option(fc.constantFrom('a', 'b'), { nil: undefined })), {
    minLength: 1,
    maxLength: 25,
  });

  it('undo all gives the first bytes, redo all the last, however often', () => {
    fc.assert(
      fc.property(script, (steps) => {
        jobStore.setState(start, true);
        const first = writeJob(state().job);
        for (const [{ name, change }, key] of steps) state().edit(name, change, key);
        const last = writeJob(state().job);
        const count = state().past.length;
        for (let round = 0; round < 2; round++) {
          for (let i = 0; i < count; i++) state().undo();
          expect(writeJob(state().job)).toBe(first);
          expect(state().past).toEqual([]);
          for (let i = 0; i < count; i++) state().redo();
          expect(writeJob(state().job)).toBe(last);
          expect(state().future).toEqual([]);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('each undo takes back exactly the step it names', () => {
    fc.assert(
      fc.property(script, (steps) => {
        jobStore.setState(start, true);
        const seen = [writeJob(state().job)];
        for (const [{ name, change }] of steps) {
          const before = state().past.length;
          state().edit(name, change);
          if (state().past.length > before) seen.push(writeJob(state().job));
        }
        for (let i = seen.length - 2; i >= 0; i--) {
          state().undo();
          expect(writeJob(state().job)).toBe(seen[i]);
        }
      }),
      { numRuns: 60 },
    );
  });
});
