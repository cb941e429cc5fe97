import { beforeEach, describe, expect, test } from 'vitest';
import { type FacePoint, toRadians } from '../../../geometry/units.ts';
import { noticeStore } from '../../../web/files/notice-store.ts';
import { jobStore } from '../../../web/job/job-store.ts';
import {
  abandonMark,
  beginMark,
  draft,
  drawMark,
  faceInHand,
  finishMark,
  isMarking,
  marksFace,
} from '../../../web/scene/marking.ts';
import { viewStore } from '../../../web/view/view-store.ts';
import { laidInHand, laidInSight, onLaid, straightedgeStore } from '../../../web/wear/laid-section.ts';
import { liveFace } from '../../../web/wear/live-faces.ts';
import { jobOf, PLATES } from '../tools/plates.ts';

const deg = (radius: number, degrees: number): FacePoint => [radius, toRadians(degrees)];
const plate = () => jobStore.getState().job.parts[0];
const steps = () => jobStore.getState().past.length;
/** Listeners hear with the next frame, which here is the next turn. */
const nextFrame = () => Promise.resolve();

function live(face = 'face') {
  const found = liveFace('plate', face);
  if (found === undefined) throw new Error(`no face ${face}`);
  return found;
}

function draw(...points: readonly FacePoint[]): void {
  beginMark(live(), points[0]);
  for (const point of points.slice(1)) drawMark(point);
}

beforeEach(() => {
  jobStore.getState().open(jobOf(PLATES.round), null);
  straightedgeStore.setState({ lay: 'line', kept: null });
  viewStore
    .getState()
    .set({ step: 'wear', tool: 'straightedge', part: 'plate', face: 'face', selectedMark: null });
  noticeStore.setState({ notices: [] });
});

describe('the straightedge', () => {
  test('can be laid on every face', () => {
    expect(isMarking()).toBe(true);
    expect(marksFace(live('bore'))).toBe(true);
  });

  test('is seen while it is laid and is not kept before it is lifted', () => {
    const { map } = live();
    draw(deg(60, 10), deg(90, 10));
    expect(faceInHand()?.face.name).toBe('face');
    expect(laidInSight()?.section).toEqual({
      kind: 'line',
      face: 'face',
      from: deg(60, 10),
      to: deg(90, 10),
    });
    drawMark(deg(95, 40));
    expect(laidInSight()?.section).toMatchObject({ to: deg(95, 40) });
    expect(plate().sections).toBeUndefined();
    expect(draft()).toBeNull();
    expect(live().map).toBe(map);
  });

  test('lifted, it is kept: one step, to be undone, and it stays in sight', () => {
    const before = steps();
    draw(deg(60, 10), deg(90, 40));
    finishMark(0, false);
    expect(plate().sections).toEqual([{ kind: 'line', face: 'face', from: [60, 10], to: [90, 40] }]);
    expect(plate().wear).toEqual([]);
    expect(steps() - before).toBe(1);
    expect(laidInHand()).toBeNull();
    expect(laidInSight()?.section).toMatchObject({ from: deg(60, 10) });
    expect(straightedgeStore.getState().kept).toEqual({ part: 'plate', at: 0 });
    jobStore.getState().undo();
    expect(plate().sections).toBeUndefined();
    expect(laidInSight()).toBeNull();
  });

  test('leaves the wear as it is: a kept section makes no other map', () => {
    const { map } = live();
    draw(deg(60, 10), deg(90, 40));
    finishMark(0, false);
    expect(live().map).toBe(map);
  });

  test('laid as a spoke or a ring it takes one number', () => {
    straightedgeStore.setState({ lay: 'along-first' });
    draw(deg(60, 10), deg(90, 75));
    finishMark(0, false);
    straightedgeStore.setState({ lay: 'along-second' });
    draw(deg(60, 10));
    finishMark(0, false);
    expect(plate().sections).toEqual([
      { kind: 'along-first', face: 'face', at: 75 },
      { kind: 'along-second', face: 'face', at: 60 },
    ]);
    expect(straightedgeStore.getState().kept).toEqual({ part: 'plate', at: 1 });
  });

  test('a tap with a line, and one that is called off, leave nothing', () => {
    draw(deg(60, 10));
    finishMark(0, false);
    draw(deg(60, 10), deg(90, 40));
    abandonMark();
    expect(laidInSight()).toBeNull();
    draw(deg(60, 10), deg(90, 40));
    viewStore.getState().set({ tool: 'brush' });
    expect(laidInHand()).toBeNull();
    expect(plate().sections).toBeUndefined();
    expect(noticeStore.getState().notices).toEqual([]);
  });

  test('many moves within a frame are heard of once', async () => {
    let heard = 0;
    const stop = onLaid(() => {
      heard += 1;
    });
    draw(deg(60, 10), deg(70, 10), deg(80, 10), deg(90, 10));
    await nextFrame();
    expect(heard).toBe(1);
    drawMark(deg(95, 10));
    await nextFrame();
    stop();
    abandonMark();
    await nextFrame();
    expect(heard).toBe(2);
  });

  test('the twenty-first is refused in words', () => {
    for (let i = 0; i < 21; i++) {
      draw(deg(60, 10), deg(90, i));
      finishMark(0, false);
    }
    expect(plate().sections).toHaveLength(20);
    const [notice] = noticeStore.getState().notices;
    expect(notice.title).toBe('The section was not kept.');
    expect(notice.sentences).toEqual(['sections: a list of 21 is not a list of at most 20 sections.']);
  });

  test('shows the newest of a part, or the one that was chosen', () => {
    for (const degrees of [10, 20, 30]) {
      draw(deg(60, degrees), deg(90, degrees));
      finishMark(0, false);
    }
    straightedgeStore.setState({ kept: { part: 'plate', at: 1 } });
    expect(laidInSight()?.section).toMatchObject({ from: deg(60, 20) });
    straightedgeStore.setState({ kept: { part: 'other', at: 0 } });
    expect(laidInSight()?.section).toMatchObject({ from: deg(60, 30) });
  });
});
