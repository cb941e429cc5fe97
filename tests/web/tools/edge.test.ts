import { describe, expect, test } from 'vitest';
import { checkJob } from '../../../geometry/job/check-job.ts';
import { measured } from '../../../geometry/job/measured.ts';
import type { Face } from '../../../geometry/part/face.ts';
import { partOf } from '../../../geometry/part/part-of.ts';
import type { BrushSettings } from '../../../web/tools/brush.ts';
import { startEdge, takesEdge } from '../../../web/tools/edge.ts';
import { impellerJob } from './impellers.ts';
import { faceNamed } from './plates.ts';

const brush: BrushSettings = { mode: 'set', radius: 6, depth: 3.5, edge: 'soft', strength: 0.5 };
const part = partOf(measured(impellerJob()).parts[0], 1);
const named = (name: string): Face => faceNamed(part, name);

describe('the edge drawn along', () => {
  test('is the stretch from where it began to where it ended, either way', () => {
    const edge = startEdge(named('vane-2/leading-edge'), brush, [30, 1]);
    edge.drawTo([26, 3]);
    edge.drawTo([8.123, -2]);
    expect(edge.finish()).toEqual({
      kind: 'edge',
      face: 'vane-2/leading-edge',
      profile: [
        [8.12, 3.5],
        [30, 3.5],
      ],
      blend: 'deepest',
    });
    expect(edge.isTap()).toBe(false);
  });

  test('its outline runs across the whole face', () => {
    const edge = startEdge(named('vane-1/tip'), brush, [20, 0]);
    edge.drawTo([60, 0]);
    const [line] = edge.outline();
    const span = (i: 0 | 1) => [Math.min(...line.map((p) => p[i])), Math.max(...line.map((p) => p[i]))];
    expect(span(0)).toEqual([20, 60]);
    expect(span(1)).toEqual([-4, 4]);
  });

  test.each(['vane-1/tip', 'vane-5/leading-edge', 'vane-3/trailing-edge'])(
    'of a tap, and drawn past both ends, is all of %s, and sound',
    (name) => {
      const face = named(name);
      const [{ from, to }] = face.coordinates;
      const tap = startEdge(face, brush, [12, 0]);
      tap.drawTo([12.4, 1]);
      expect(tap.isTap()).toBe(true);
      expect(tap.outline()).toEqual([]);
      const across = startEdge(face, brush, [from - 40, 0]);
      across.drawTo([to + 40, 0]);
      for (const mark of [tap.finish(), across.finish()]) {
        const [[a], [b]] = mark.profile;
        expect(a).toBe(from);
        // Rounded to the file's hundredths, and never past the end.
        expect(b).toBeLessThanOrEqual(to);
        expect(b).toBeGreaterThan(to - 0.011);
        expect(checkJob(impellerJob([mark]))).toEqual([]);
      }
    },
  );

  test('is for edges and tips', () => {
    expect(part.faces.filter(takesEdge).map(({ name }) => name.replace(/^vane-\d+\//, ''))).toEqual(
      Array.from({ length: 5 }, () => ['tip', 'leading-edge', 'trailing-edge']).flat(),
    );
  });
});
