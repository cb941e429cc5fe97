import { beforeEach, describe, expect, it } from 'vitest';
import type { MarkFile, PartFile } from '../../../../../geometry/job/job-file.ts';
import { jobStore } from '../../../../../web/job/job-store.ts';
import { type PlaceOnFace, putReadingDown } from '../../../../../web/panels/wear/readings/put-down.ts';
import {
  readingAt,
  readingsInHand,
  withoutReading,
  withReading,
  withReadings,
} from '../../../../../web/panels/wear/readings/reading-edits.ts';
import {
  chooseMode,
  endWalk,
  readingEntry,
  setEntry,
  startWalk,
  walkOn,
} from '../../../../../web/panels/wear/readings/reading-entry.ts';
import { beginMark, draft, dropPlace, finishMark } from '../../../../../web/scene/marking.ts';
import type { ReadingsMark } from '../../../../../web/tools/table-readings.ts';
import { viewStore } from '../../../../../web/view/view-store.ts';
import { liveFace } from '../../../../../web/wear/live-faces.ts';
import { readingPlace, setReadingPlace } from '../../../../../web/wear/reading-place.ts';
import { jobOf, PLATES } from '../../../tools/plates.ts';

const one: ReadingsMark = { kind: 'readings', face: 'face', points: [[60, 0, 1]], gaugeError: 0.2 };
const pit: MarkFile = { kind: 'pit', face: 'face', at: [70, 10], diameter: 8, depth: 2, form: 'bowl' };
const inBore: ReadingsMark = { kind: 'readings', face: 'bore', points: [[0, 4, 1]] };

const part = (): PartFile => jobStore.getState().job.parts[0];
const wear = () => part().wear;
const steps = () => jobStore.getState().past;
const on = (at: readonly [number, number], face = 'face'): PlaceOnFace => ({
  part: part(),
  index: 0,
  face,
  at,
});

function put(text: string, at: readonly [number, number] = [60, 30], face = 'face'): boolean {
  setEntry({ reading: text });
  return putReadingDown(on(at, face));
}

beforeEach(() => {
  jobStore.getState().open(jobOf(PLATES.round), null);
  viewStore
    .getState()
    .set({ part: 'plate', face: 'face', step: 'wear', tool: 'readings', selectedMark: null, units: 'mm' });
  endWalk();
  chooseMode('single');
  setEntry({ kind: 'depth', reading: '', reference: null, faults: [] });
  setReadingPlace(null);
});

describe('the mark a reading joins', () => {
  const wearing = (...marks: MarkFile[]): PartFile => ({ ...PLATES.round, wear: marks });

  it('is the one in hand, else the last of the face, else a new one', () => {
    expect(readingsInHand(wearing(one, pit, one, pit), 'face', 0)).toBe(0);
    expect(readingsInHand(wearing(one, pit, one, pit), 'face', 1)).toBe(2);
    expect(readingsInHand(wearing(one, pit, one, pit), 'face', null)).toBe(2);
    expect(readingsInHand(wearing(one, inBore), 'face', 1)).toBe(0);
    expect(readingsInHand(wearing(pit, inBore), 'face', 0)).toBeNull();
  });

  it('of all vanes takes a reading of one only while it is in hand', () => {
    const all: MarkFile = { ...one, face: 'vane-*/pressure' };
    expect(readingsInHand(wearing(all), 'vane-2/pressure', 0)).toBe(0);
    expect(readingsInHand(wearing(all), 'vane-2/pressure', null)).toBeNull();
  });
});

describe('a reading put down', () => {
  it('is one step, and undo restores what was there', () => {
    const before = steps().length;
    expect(put('2,35')).toBe(true);
    expect(wear()).toEqual([
      { kind: 'readings', face: 'face', points: [[60, 30, 2.35]], gaugeError: 0.1, blend: 'deepest' },
    ]);
    expect(steps().length - before).toBe(1);
    expect(steps().at(-1)?.label).toBe('reading');
    expect(put('1/8 in', [60, 40])).toBe(true);
    expect(wear()).toHaveLength(1);
    expect(wear()[0]).toMatchObject({
      points: [
        [60, 30, 2.35],
        [60, 40, 3.175],
      ],
    });
    expect(steps().length - before).toBe(2);
    jobStore.getState().undo();
    expect(wear()[0]).toMatchObject({ points: [[60, 30, 2.35]] });
    jobStore.getState().undo();
    expect(wear()).toEqual([]);
  });

  it('stays typed where it is refused, in the words of the command', () => {
    for (const [text, fault] of [
      ['', 'empty'],
      ['deep', 'not a number'],
      ['17', 'is not at most the wall, thickness 16'],
      ['-2', 'at least -1'],
    ]) {
      expect(put(text)).toBe(false);
      expect(readingEntry().reading).toBe(text);
      expect(readingEntry().faults.join()).toContain(fault);
    }
    expect(wear()).toEqual([]);
  });

  it('keeps only the depth of a gauge that tells something else', () => {
    setEntry({ kind: 'two-readings' });
    expect(put('12.40')).toBe(false);
    expect(readingEntry().faults).toEqual(['The reading on sound metal is missing. Type it below.']);
    setEntry({ reference: 9.85 });
    expect(put('12.40')).toBe(true);
    expect(put('9.80', [60, 60])).toBe(true);
    setEntry({ kind: 'wall-left' });
    expect(put('13.5', [60, 90])).toBe(true);
    expect(wear()[0]).toMatchObject({
      points: [
        [60, 30, 2.55],
        [60, 60, -0.05],
        [60, 90, 2.5],
      ],
    });
    expect(readingEntry().reference).toBe(9.85);
  });

  it('goes on the face it was taken on', () => {
    expect(put('1', [20, 5], 'bore')).toBe(true);
    expect(put('1')).toBe(true);
    expect(wear().map(({ face }) => face)).toEqual(['bore', 'face']);
  });
});

describe('a place tapped', () => {
  const tap = (radius: number, angle: number) => {
    const live = liveFace('plate', 'face');
    if (live === undefined) throw new Error('no face');
    beginMark(live, [radius, angle]);
    finishMark(0, false);
  };

  it('waits for its depth, drawn; another tap moves it and keeps what is typed; escape drops it', () => {
    const before = steps().length;
    tap(60, Math.PI / 2);
    expect(readingPlace()).toMatchObject({ part: 'plate', face: 'face', at: [60, 90] });
    expect(draft()).toMatchObject({ kind: 'place', at: [60, Math.PI / 2] });
    setEntry({ reading: '2.3' });
    tap(70, 0);
    expect(readingPlace()?.at).toEqual([70, 0]);
    expect(readingEntry().reading).toBe('2.3');
    expect(steps().length).toBe(before);
    expect(dropPlace()).toBe(true);
    expect(draft()).toBeNull();
    expect(dropPlace()).toBe(false);
  });

  it('is not drawn with another tool in hand, and there again afterwards', () => {
    tap(60, 0);
    viewStore.getState().set({ tool: 'turn' });
    expect(draft()).toBeNull();
    viewStore.getState().set({ tool: 'readings' });
    expect(draft()).not.toBeNull();
  });

  it('off the face is none', () => {
    tap(130, 0);
    expect(readingPlace()).toBeNull();
  });
});

describe('a walk', () => {
  const places = [
    [60, 0],
    [60, 90],
    [60, 180],
  ] as const;
  const here = () => {
    const { walk } = readingEntry();
    if (walk === null) throw new Error('no walk');
    return walk.places[walk.next];
  };
  const take = (text: string) => {
    setEntry({ reading: text });
    if (putReadingDown(on(here()), { isAgain: true })) walkOn(1);
  };

  beforeEach(() => {
    chooseMode('walk');
    startWalk({ part: 'plate', face: 'face', places, next: 0 });
  });

  it('goes from place to place, each reading a step, and is drawn', () => {
    expect(draft()).toMatchObject({ kind: 'place', at: [60, 0] });
    const before = steps().length;
    take('1');
    expect(readingPlace()?.at).toEqual([60, 90]);
    walkOn(1);
    take('3');
    expect(wear()[0]).toMatchObject({
      points: [
        [60, 0, 1],
        [60, 180, 3],
      ],
    });
    expect(steps().length - before).toBe(2);
    expect([readingEntry().walk?.next, readingPlace()]).toEqual([3, null]);
  });

  it('back reads a place once more: it takes the place of the first reading', () => {
    take('1');
    take('2');
    walkOn(-2);
    take('1.5');
    expect(wear()[0]).toMatchObject({
      points: [
        [60, 0, 1.5],
        [60, 90, 2],
      ],
    });
    walkOn(-9);
    expect(readingEntry().walk?.next).toBe(0);
  });

  it('waits while something else is tapped, with what is typed, and goes on', () => {
    take('1');
    setEntry({ reading: '2.2' });
    const live = liveFace('plate', 'face');
    if (live === undefined) throw new Error('no face');
    beginMark(live, [70, 1]);
    finishMark(0, false);
    expect(readingEntry()).toMatchObject({ mode: 'single', reading: '2.2' });
    chooseMode('walk');
    expect(readingPlace()?.at).toEqual([60, 90]);
    expect(readingEntry().walk?.next).toBe(1);
  });

  it('a refused reading stays where it is', () => {
    take('99');
    expect(readingEntry()).toMatchObject({ reading: '99' });
    expect(readingEntry().walk?.next).toBe(0);
  });
});

describe('changes to a mark of readings', () => {
  const three: ReadingsMark = {
    ...one,
    points: [
      [60, 0, 1],
      [60, 90, 2],
      [60, 180, 3],
    ],
  };

  it('one reading changes or goes, the others keep their order', () => {
    expect(withReading(three, 1, [61, 91, 2.5]).points).toEqual([
      [60, 0, 1],
      [61, 91, 2.5],
      [60, 180, 3],
    ]);
    expect(withoutReading(three, 0).points).toEqual([
      [60, 90, 2],
      [60, 180, 3],
    ]);
    expect(withoutReading(one, 0)).toEqual(one);
    expect(readingAt(three.points, [60, 180])).toBe(2);
    expect(readingAt(three.points, [60, 181])).toBe(-1);
  });

  it('a table joins a mark in one step', () => {
    jobStore.getState().open(jobOf(PLATES.round, [three]), null);
    const before = steps().length;
    const points = [
      [70, 0, 1],
      [70, 90, 2],
    ] as const;
    const faults = jobStore
      .getState()
      .edit('paste readings', (job) => withReadings(job, 0, { at: 0, face: 'face', points }));
    expect([faults, steps().length - before]).toEqual([[], 1]);
    expect(wear()[0]).toMatchObject({ points: [...three.points, ...points], gaugeError: 0.2 });
    jobStore.getState().undo();
    expect(wear()).toEqual([three]);
  });
});
