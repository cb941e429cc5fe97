import { beforeEach, describe, expect, test } from 'vitest';
import { createDepthMap } from '../../../geometry/depth/depth-map.ts';
import { replay } from '../../../geometry/depth/replay.ts';
import type { MarkFile, WearPlateFile } from '../../../geometry/job/job-file.ts';
import { measured } from '../../../geometry/job/measured.ts';
import { jobStore } from '../../../web/job/job-store.ts';
import { putBrushDown } from '../../../web/tools/brush.ts';
import { addMark } from '../../../web/wear/add-mark.ts';
import {
  announceTouched,
  claimPressed,
  liveFace,
  liveFaces,
  livePart,
  marksPressed,
  onTouched,
} from '../../../web/wear/live-faces.ts';
import { IMPELLER, impellerJob } from '../tools/impellers.ts';
import { jobOf, PLATES } from '../tools/plates.ts';

const pitAt = (radius: number, face = 'face'): MarkFile => ({
  kind: 'pit',
  face,
  at: face === 'bore' ? [radius, 8] : [radius, 30],
  diameter: 10,
  depth: 2,
  form: 'bowl',
});

const store = () => jobStore.getState();

function live(face = 'face') {
  const found = liveFace('plate', face);
  if (found === undefined) throw new Error(`no face ${face}`);
  return found;
}

const isEqual = (a: Float32Array, b: Float32Array) => Buffer.from(a.buffer).equals(Buffer.from(b.buffer));

/** The live map is what the job's marks give when they are replayed from nothing. */
function expectFresh(face = 'face') {
  const fresh = replay(live(face).face, measured(store().job).parts[0].marks);
  expect(isEqual(live(face).map.depth, fresh.depth)).toBe(true);
}

const editPlate = (change: (plate: WearPlateFile) => WearPlateFile) =>
  store().edit('change', (job) => ({
    ...job,
    parts: job.parts.map((part) => change(part as WearPlateFile)),
  }));

beforeEach(() => store().open(jobOf(PLATES.round, [pitAt(60), pitAt(75)]), null));

describe('live depth maps', () => {
  test('are what the marks of the job replay to', () => {
    expect(liveFaces().map(({ part, face }) => `${part}:${face.name}`)).toEqual(['plate:face', 'plate:bore']);
    expectFresh();
    expect(live().map.depth.some((depth) => depth > 1.5)).toBe(true);
  });

  test('a mark more is pressed into the map that is there', () => {
    const { map } = live();
    addMark('plate', pitAt(90));
    const bore = live('bore').map;
    expect(live().map).toBe(map);
    expect([marksPressed(map), marksPressed(bore)]).toEqual([1, 0]);
    expectFresh();
  });

  test('undo, redo, another order or another depth replay that face alone', () => {
    addMark('plate', pitAt(90));
    const bore = live('bore').map;
    store().undo();
    expectFresh();
    store().redo();
    expectFresh();
    editPlate((plate) => ({ ...plate, wear: plate.wear.toReversed() }));
    expectFresh();
    editPlate((plate) => ({ ...plate, wear: plate.wear.map((mark) => ({ ...mark, depth: 1 }) as MarkFile) }));
    expectFresh();
    expect(live('bore').map).toBe(bore);
  });

  test('two changes before anyone looks are followed too', () => {
    addMark('plate', pitAt(90));
    addMark('plate', pitAt(50, 'bore'));
    addMark('plate', pitAt(95));
    expectFresh();
    expectFresh('bore');
  });

  test('another size makes another part; the title or the materials keep all', () => {
    const { map, face } = live();
    store().edit('title', (job) => ({ ...job, title: 'Another' }));
    editPlate((plate) => ({ ...plate, density: 7.8, leastThickness: 9 }));
    expect(live().map).toBe(map);
    editPlate((plate) => ({ ...plate, boreDiameter: 84 }));
    expect(live().face).not.toBe(face);
    expect(live().face.coordinates[0].from).toBe(42);
    expectFresh();
  });

  test('what a brush pressed is not pressed a second time', () => {
    const before = live();
    const brush = { mode: 'add', radius: 8, depth: 1, edge: 'hard', strength: 0.5 } as const;
    const inHand = putBrushDown(before.face, before.map, brush);
    inHand.drawTo([70, 1]);
    inHand.drawTo([70, 1.4]);
    const mark = inHand.lift();
    if (mark === null) throw new Error('no mark');
    claimPressed(before, mark);
    expect(addMark('plate', mark)).toBe(true);
    expect(live().map).toBe(before.map);
    expectFresh();
    // The claim is used up: the same mark once more presses once more.
    addMark('plate', structuredClone(mark));
    expectFresh();
  });

  test('a claim on a map that is gone is of no effect', () => {
    const mark = pitAt(90);
    claimPressed({ ...live(), map: createDepthMap(live().face.grid) }, mark);
    addMark('plate', mark);
    expectFresh();
  });

  test('a mark the job cannot take is refused and changes nothing', () => {
    const { map } = live();
    const before = map.depth.slice();
    expect(addMark('plate', { ...pitAt(90), depth: 40 } as MarkFile)).toBe(false);
    expect(isEqual(live().map.depth, before)).toBe(true);
  });

  test('the part asked for, or the first, or none', () => {
    expect(livePart('plate')?.part.id).toBe('plate');
    expect(livePart('gone')?.part.id).toBe('plate');
  });

  test('who listens hears what was touched, until they stop', () => {
    const heard: string[] = [];
    const stop = onTouched(({ face }, block) => heard.push(`${face.name} ${block.row0}`));
    const block = { row0: 3, row1: 4, column0: 0, columns: 1 };
    announceTouched(live(), block);
    stop();
    announceTouched(live(), block);
    expect(heard).toEqual(['face 3']);
  });
});

describe('live depth maps of an impeller', () => {
  const onVane = (face: string) => {
    const found = liveFace('impeller', face);
    if (found === undefined) throw new Error(`no face ${face}`);
    return found;
  };
  const pit = (face: string): MarkFile => ({
    kind: 'pit',
    face,
    at: [60, 12],
    diameter: 10,
    depth: 2,
    form: 'bowl',
  });
  const isWorn = (face: string) => onVane(face).map.depth.some((depth) => depth > 0);

  beforeEach(() => store().open(impellerJob([pit('vane-*/pressure')]), null));

  test('a mark of every vane is in the map of each', () => {
    const worn = liveFaces().filter(({ map }) => map.depth.some((depth) => depth > 0));
    expect(worn.map(({ face }) => face.name)).toEqual([1, 2, 3, 4, 5].map((k) => `vane-${k}/pressure`));
    expect(isEqual(worn[0].map.depth, worn[4].map.depth)).toBe(true);
  });

  test('a mark of one vane more changes that face alone', () => {
    const before = liveFaces();
    addMark('impeller', pit('vane-3/suction'));
    const changed = liveFaces().filter((live, i) => live !== before[i]);
    expect(changed.map(({ face }) => face.name)).toEqual(['vane-3/suction']);
    expect(changed[0].map).toBe(onVane('vane-3/suction').map);
    expect([isWorn('vane-3/suction'), isWorn('vane-2/suction')]).toEqual([true, false]);
  });

  test('a mark that goes to every vane is taken over by each of them, and undone', () => {
    addMark('impeller', pit('vane-3/suction'));
    const edit = (face: string) =>
      store().edit('copy', (job) => ({
        ...job,
        parts: job.parts.map((part) => ({ ...part, wear: [part.wear[0], pit(face)] })),
      }));
    edit('vane-*/suction');
    expect([1, 2, 3, 4, 5].map((k) => isWorn(`vane-${k}/suction`))).toEqual([true, true, true, true, true]);
    store().undo();
    expect([1, 2, 3, 4, 5].map((k) => isWorn(`vane-${k}/suction`))).toEqual([
      false,
      false,
      true,
      false,
      false,
    ]);
  });

  test('another number of vanes makes another part', () => {
    const before = livePart('impeller');
    store().edit('vanes', (job) => ({
      ...job,
      parts: [{ ...IMPELLER, wear: job.parts[0].wear, vanes: { ...IMPELLER.vanes, count: 7 } }],
    }));
    expect(livePart('impeller')?.part).not.toBe(before?.part);
    expect(isWorn('vane-7/pressure')).toBe(true);
  });
});
