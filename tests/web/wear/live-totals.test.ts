import { beforeEach, describe, expect, test } from 'vitest';
import { lostMetal } from '../../../geometry/moments/integrate.ts';
import { jobStore } from '../../../web/job/job-store.ts';
import { putBrushDown } from '../../../web/tools/brush.ts';
import { addMark } from '../../../web/wear/add-mark.ts';
import { announceTouched, claimPressed, type LiveFace, liveFace } from '../../../web/wear/live-faces.ts';
import { dropStroke, notePointerDepth, takeStroke, watchFace } from '../../../web/wear/live-totals.ts';
import { liveTotals } from '../../../web/wear/live-totals-store.ts';
import { estimateStore } from '../../../web/worker/estimate-client.ts';
import { jobOf, PLATES } from '../tools/plates.ts';

const nextFrame = () => new Promise((resolve) => setTimeout(resolve));
const change = () => liveTotals.getState().lostChange['plate:face'];

function live(): LiveFace {
  const found = liveFace('plate', 'face');
  if (found === undefined) throw new Error('no face');
  return found;
}

function stroke(angles: readonly number[], mode: 'add' | 'clear' = 'add') {
  watchFace(live());
  const { face, map } = live();
  const brush = { mode, radius: 8, depth: 1, edge: 'soft', strength: 0.5 } as const;
  const inHand = putBrushDown(face, map, brush, (block) => announceTouched(live(), block));
  for (const angle of angles) inHand.drawTo([70, angle]);
  return inHand;
}

beforeEach(async () => {
  const wear = [{ kind: 'patch', face: 'face', first: [50, 90], second: [0, 180], depth: 3 }] as const;
  jobStore.getState().open(jobOf(PLATES.dished, structuredClone(wear) as never), null);
  estimateStore.setState({ job: jobStore.getState().job });
  dropStroke();
  await nextFrame();
});

describe('figures that follow the brush', () => {
  // Drift over a stroke: sums of float64 differences of the same cells.
  test('the change is the new lost metal less the old, also across the 0/360 line', async () => {
    const before = lostMetal(live().face, live().map).volume;
    stroke([0.4, 0.2, 0, -0.2, -0.4]);
    await nextFrame();
    const after = lostMetal(live().face, live().map).volume;
    expect(change()).toBeGreaterThan(100);
    expect(change() / (after - before)).toBeCloseTo(1, 5);
  });

  test('clearing takes away', async () => {
    stroke([1, 1.2], 'clear');
    await nextFrame();
    expect(change()).toBeLessThan(-100);
  });

  test('an abandoned stroke leaves no change', async () => {
    stroke([1, 1.2]).abandon();
    dropStroke();
    await nextFrame();
    expect(change()).toBeUndefined();
  });

  test('a stroke counts until the estimate of its job is there', async () => {
    const mark = stroke([1, 1.2]).lift();
    if (mark === null) throw new Error('no mark');
    claimPressed(live(), mark);
    takeStroke(() => addMark('plate', mark));
    await nextFrame();
    const first = change();
    expect(first).toBeGreaterThan(100);
    stroke([4, 4.2]);
    await nextFrame();
    const both = change();
    expect(both).toBeGreaterThan(first + 100);
    estimateStore.setState({ job: jobStore.getState().job });
    await nextFrame();
    expect(change()).toBeCloseTo(both - first, 6);
  });

  test('undo takes the changes of the strokes with it', async () => {
    const mark = stroke([1, 1.2]).lift();
    if (mark === null) throw new Error('no mark');
    takeStroke(() => addMark('plate', mark));
    jobStore.getState().undo();
    await nextFrame();
    expect(change()).toBeUndefined();
  });

  test('the depth under the pointer', async () => {
    notePointerDepth(2.5);
    await nextFrame();
    expect(liveTotals.getState().pointerDepth).toBe(2.5);
    notePointerDepth(null);
    await nextFrame();
    expect(liveTotals.getState().pointerDepth).toBeNull();
  });
});
