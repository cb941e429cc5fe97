import { beforeEach, describe, expect, test } from 'vitest';
import type { MarkFile } from '../../../geometry/job/job-file.ts';
import { type FacePoint, toRadians } from '../../../geometry/units.ts';
import { noticeStore } from '../../../web/files/notice-store.ts';
import { jobStore } from '../../../web/job/job-store.ts';
import {
  abandonArea,
  abandonMark,
  beginMark,
  draft,
  drawMark,
  faceInHand,
  finishArea,
  finishMark,
  isBrushDown,
  isMarking,
  marksFace,
  onDraft,
  takeCornerBack,
} from '../../../web/scene/marking.ts';
import { type ToolName, viewStore } from '../../../web/view/view-store.ts';
import { liveFace } from '../../../web/wear/live-faces.ts';
import { impellerJob } from '../tools/impellers.ts';
import { jobOf, PLATES } from '../tools/plates.ts';

const deg = (radius: number, degrees: number): FacePoint => [radius, toRadians(degrees)];
const marks = () => jobStore.getState().job.parts[0].wear;
const steps = () => jobStore.getState().past.length;
const take = (tool: ToolName) => viewStore.getState().set({ step: 'wear', tool });

function live(face = 'face') {
  const found = liveFace('plate', face);
  if (found === undefined) throw new Error(`no face ${face}`);
  return found;
}

function draw(...points: FacePoint[]): void {
  beginMark(live(), points[0]);
  for (const point of points.slice(1)) drawMark(point);
}

const isUntouched = () => live().map.depth.every((depth) => depth === 0);

beforeEach(() => {
  jobStore.getState().open(jobOf(PLATES.round), null);
  viewStore.getState().set({
    part: 'plate',
    face: 'face',
    selectedMark: null,
    brush: { mode: 'set', radius: 8, depth: 2, edge: 'soft', strength: 0.5 },
  });
  noticeStore.setState({ notices: [] });
  take('brush');
});

describe('the tool in hand', () => {
  test('marks on the step that marks, with a tool that marks', () => {
    expect(isMarking()).toBe(true);
    take('turn');
    expect(isMarking()).toBe(false);
    viewStore.getState().set({ tool: 'brush', step: 'fill' });
    expect(isMarking()).toBe(false);
  });

  test('a stroke is one mark and one step, and the map is not pressed twice', () => {
    const before = steps();
    viewStore.getState().set({ brush: { ...viewStore.getState().brush, mode: 'add' } });
    draw(deg(70, 10), deg(70, 30), deg(72, 60));
    expect(isBrushDown()).toBe(true);
    expect(marks().length).toBe(0);
    const pressed = live().map.depth.slice();
    finishMark(0, false);
    expect(isBrushDown()).toBe(false);
    expect([marks().length, steps() - before]).toEqual([1, 1]);
    expect(live().map.depth).toEqual(pressed);
    jobStore.getState().undo();
    expect(isUntouched()).toBe(true);
  });

  test('an abandoned stroke leaves neither a mark nor a trace', () => {
    draw(deg(70, 10), deg(70, 60));
    expect(isUntouched()).toBe(false);
    abandonMark();
    expect(isUntouched()).toBe(true);
    finishMark(0, false);
    expect(marks().length).toBe(0);
  });

  test('a stroke the job can not take is refused in words and leaves no trace', () => {
    viewStore.getState().set({ brush: { ...viewStore.getState().brush, depth: 30 } });
    draw(deg(70, 10), deg(70, 60));
    finishMark(0, false);
    expect(marks().length).toBe(0);
    expect(isUntouched()).toBe(true);
    const [notice] = noticeStore.getState().notices;
    expect(notice.title).toBe('The brush stroke was not taken.');
    expect(notice.sentences.join()).toMatch(/^depth: 30 is not at most the wall/);
  });

  test('undo in mid-stroke takes the stroke along and loses nothing else', () => {
    draw(deg(70, 200), deg(70, 230));
    finishMark(0, false);
    draw(deg(70, 10), deg(70, 60));
    jobStore.getState().undo();
    finishMark(0, false);
    expect(marks().length).toBe(0);
    expect(isUntouched()).toBe(true);
    jobStore.getState().redo();
    expect(marks().length).toBe(1);
  });

  test('another tool calls the stroke off', () => {
    draw(deg(70, 10), deg(70, 60));
    take('pit');
    expect(faceInHand()).toBeNull();
    expect(isUntouched()).toBe(true);
  });

  test('the face that is touched becomes the chosen one', () => {
    beginMark(live('bore'), [1, 8]);
    expect(viewStore.getState().face).toBe('bore');
    abandonMark();
  });

  test('a patch is drawn as a box and goes into the hand of the list', () => {
    take('patch');
    draw(deg(60, 10), deg(75, 50));
    const drawn = draft();
    expect(drawn?.kind === 'box' && drawn.lines.length).toBe(1);
    finishMark(0, false);
    expect(marks()[0]).toMatchObject({ kind: 'patch', first: [60, 75], second: [10, 50] });
    expect(viewStore.getState().selectedMark).toBe(0);
    expect(draft()).toBeNull();
  });

  test('a pit lands where the finger is lifted', () => {
    take('pit');
    draw(deg(60, 10), deg(75, 50));
    finishMark(0, false);
    expect(marks()[0]).toMatchObject({ kind: 'pit', at: [75, 50] });
  });

  describe('an area', () => {
    const corners = [deg(60, 10), deg(90, 20), deg(75, 60)];
    const tap = (point: FacePoint, isDouble = false) => {
      beginMark(live(), point);
      finishMark(3, isDouble);
    };
    const isArea = ([mark]: readonly MarkFile[]) => mark?.kind === 'area' && mark.outline.length === 3;
    beforeEach(() => {
      take('area');
      for (const corner of corners) tap(corner);
    });

    test('shows its corners and closes at the first one', () => {
      const drawn = draft();
      expect(drawn?.kind === 'corners' && drawn.corners.length).toBe(3);
      tap(deg(61, 11));
      expect(isArea(marks())).toBe(true);
      expect(draft()).toBeNull();
    });

    test('closes with a double tap and with Enter', () => {
      tap(deg(75, 60), true);
      expect(isArea(marks())).toBe(true);
      jobStore.getState().undo();
      for (const corner of corners) tap(corner);
      expect(finishArea()).toBe(true);
      expect(isArea(marks())).toBe(true);
    });

    test('gives corners back one by one', () => {
      expect([takeCornerBack(), takeCornerBack(), takeCornerBack(), takeCornerBack()]).toEqual([
        true,
        true,
        true,
        false,
      ]);
      expect(draft()).toBeNull();
    });

    test('can be given up, once', () => {
      expect([abandonArea(), abandonArea()]).toEqual([true, false]);
      expect(finishArea()).toBe(false);
      expect(marks().length).toBe(0);
    });

    test('stays on its face', () => {
      beginMark(live('bore'), [1, 8]);
      finishMark(3, false);
      const drawn = draft();
      expect(drawn?.live.face.name).toBe('face');
      expect(drawn?.kind === 'corners' && drawn.corners.length).toBe(3);
    });
  });

  test('who listens hears of every change until they stop', () => {
    let heard = 0;
    const stop = onDraft(() => {
      heard += 1;
    });
    draw(deg(70, 10), deg(70, 60));
    stop();
    abandonMark();
    expect(heard).toBe(2);
  });
});

describe('the edge tool', () => {
  const onVane = (name: string) => {
    const found = liveFace('impeller', name);
    if (found === undefined) throw new Error(`no face ${name}`);
    return found;
  };
  const press = (name: string, ...points: FacePoint[]) => {
    beginMark(onVane(name), points[0]);
    for (const point of points.slice(1)) drawMark(point);
    finishMark(2, false);
  };

  beforeEach(() => {
    jobStore.getState().open(impellerJob(), null);
    viewStore.getState().set({ part: 'impeller', face: 'vane-1/pressure', selectedMark: null });
    take('edge');
  });

  test('marks edges and tips and nothing else', () => {
    expect(marksFace(onVane('vane-2/leading-edge'))).toBe(true);
    expect(marksFace(onVane('vane-2/pressure'))).toBe(false);
    press('vane-2/pressure', [40, 10], [80, 10]);
    expect(marks()).toEqual([]);
    take('brush');
    expect(marksFace(onVane('vane-2/pressure'))).toBe(true);
  });

  test('shows its stretch while it is drawn, and leaves one mark in the hand of the list: one step', () => {
    const before = steps();
    beginMark(onVane('vane-2/leading-edge'), [5, 0]);
    drawMark([25, 0]);
    expect(draft()).toMatchObject({ kind: 'box' });
    finishMark(2, false);
    expect(draft()).toBeNull();
    expect(marks()).toMatchObject([
      {
        kind: 'edge',
        face: 'vane-2/leading-edge',
        profile: [
          [5, 2],
          [25, 2],
        ],
      },
    ]);
    expect(steps()).toBe(before + 1);
    expect(viewStore.getState()).toMatchObject({ selectedMark: 0, face: 'vane-2/leading-edge' });
  });

  test('a tap on the edge in hand sets a point of it, where there was one in its place', () => {
    press('vane-2/leading-edge', [5, 0], [25, 0]);
    viewStore.getState().set({ brush: { ...viewStore.getState().brush, depth: 6 } });
    press('vane-2/leading-edge', [15, 1]);
    press('vane-2/leading-edge', [25, -1]);
    expect(marks()).toMatchObject([
      {
        profile: [
          [5, 2],
          [15, 6],
          [25, 6],
        ],
      },
    ]);
    jobStore.getState().undo();
    expect(marks()).toMatchObject([
      {
        profile: [
          [5, 2],
          [15, 6],
          [25, 2],
        ],
      },
    ]);
  });

  test('a tap on another edge is that whole edge', () => {
    press('vane-2/leading-edge', [5, 0], [25, 0]);
    press('vane-4/leading-edge', [15, 1]);
    expect(marks()).toHaveLength(2);
    expect(marks()[1]).toMatchObject({
      face: 'vane-4/leading-edge',
      profile: [
        [0, 2],
        [40, 2],
      ],
    });
  });

  test('called off it leaves nothing', () => {
    beginMark(onVane('vane-2/tip'), [5, 0]);
    drawMark([25, 0]);
    abandonMark();
    expect(marks()).toEqual([]);
    expect(draft()).toBeNull();
  });
});
