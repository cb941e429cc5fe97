import { describe, expect, test } from 'vitest';
import type { Gap, GapSpread } from '../../../geometry/clearance/gap.ts';
import type { EdgeLoss, WearPlate } from '../../../geometry/job/job.ts';
import { toRadians } from '../../../geometry/units.ts';
import { evenly, patch, plate } from '../made.ts';
import { estimateOf, gapOf, type MadePair, onTip, pairJob } from './made-gap.ts';

/** Depths are kept in 32 bits. */
const FLOAT = 1e-6;

function expectSpread(gap: GapSpread, [least, mean, most]: readonly number[], within = FLOAT): void {
  expect(Math.abs(gap.least - least), `least ${gap.least}, not ${least}`).toBeLessThan(within);
  expect(Math.abs(gap.mean - mean), `mean ${gap.mean}, not ${mean}`).toBeLessThan(within);
  expect(Math.abs(gap.most - most), `most ${gap.most}, not ${most}`).toBeLessThan(within);
}

const ringsWithin = ({ byRadius, from, to }: Gap, [low, high]: readonly [number, number]) => {
  const half = (to - from) / byRadius.length / 2;
  return byRadius.filter(({ radius }) => radius - half >= low - 1e-9 && radius + half <= high + 1e-9);
};

/** Of a face that is worn evenly everywhere the radii do not matter. */
const both = (onPlate: number, onTips: number, more: MadePair = {}) =>
  gapOf({ onPlate: [evenlyOnPlate(onPlate)], onTips: [evenly('vane-*/tip', onTips)], ...more });
const evenlyOnPlate = (depth: number) => patch([60, 160], [0, 360], depth);

describe('where the radii are shared', () => {
  /**
   * A corner of the tip stands half a thickness across from the camber, which makes the angle beta with the tangent, so its radius is
   * sqrt(r^2 -+ t r cos(beta) + t^2/4): inwards at the inlet (65 mm, 22 deg, 8 mm), outwards at the outlet (150 mm, 28 deg). Closed form.
   */
  const corner = (r: number, beta: number, sign: number) =>
    Math.sqrt(r * r + sign * 8 * r * Math.cos(toRadians(beta)) + 16);

  test('from the innermost corner of a tip to the outermost', () => {
    const { from, to } = gapOf();
    expect(from).toBeCloseTo(corner(65, 22, -1), 6);
    expect(to).toBeCloseTo(corner(150, 28, 1), 6);
  });

  test('or from the bore to the rim of a plate that is smaller', () => {
    const { from, to } = gapOf({ shape: { boreRadius: 80, outerRadius: 140, holes: [] } });
    expect(from).toBeCloseTo(80, 6);
    expect(to).toBeCloseTo(140, 6);
  });

  test('on a plate given by its outline its own edges count', () => {
    const square: WearPlate = {
      ...plate(),
      shape: {
        kind: 'outline',
        edge: [
          [-100, -100],
          [100, -100],
          [100, 100],
          [-100, 100],
        ],
        holes: [
          [
            [-80, -80],
            [-80, 80],
            [80, 80],
            [80, -80],
          ],
        ],
      },
    };
    // The hole reaches 80 mm at the middle of its sides, the corners of the plate lie at 100 sqrt(2) mm.
    const { from, to } = gapOf({ wearPlate: square });
    expect(from).toBeCloseTo(80, 6);
    expect(to).toBeCloseTo(100 * Math.SQRT2, 6);
  });

  test('none: no gap, and a warning that says so', async () => {
    const apart = pairJob({ shape: { boreRadius: 155, outerRadius: 180, holes: [] } });
    expect(estimateOf(apart)).toBeNull();
    const { clearanceWarnings } = await import('../../../geometry/clearance/clearance-warnings.ts');
    const [warning] = clearanceWarnings(
      apart.clearance ?? expect.fail('a job that asks for its clearance'),
      null,
    );
    expect(warning).toMatchObject({ code: 'clearance-apart', field: 'clearance' });
    expect(warning.text).toMatch(/^The face of plate and the vane tips of impeller share no radius/);
  });
});

/** Job format, "Clearance": gap = as new + shim + what is missing of plate and tip - coats, each on its own face. */
describe('faces that are worn evenly', () => {
  test('sound and coated with 2 x 0.25 mm on each face: the gap closes by two coat systems', () => {
    const gap = gapOf();
    expectSpread(gap.asFound, [0.8, 0.8, 0.8]);
    expectSpread(gap.filled, [0.8, 0.8, 0.8]);
    expectSpread(gap.coated, [-0.2, -0.2, -0.2]);
    expect(gap.films).toEqual({ plate: 0.5, tips: 0.5 });
  });

  test('worn 2 mm and 1.5 mm, filled flush', () => {
    const gap = both(2, 1.5);
    expectSpread(gap.asFound, [4.3, 4.3, 4.3]);
    expectSpread(gap.filled, [0.8, 0.8, 0.8]);
    expectSpread(gap.coated, [-0.2, -0.2, -0.2]);
  });

  test('filled 0.5 mm short, coated up to the old surface', () => {
    const gap = both(2, 1.5, { repair: { coatAllowance: 0.5 } });
    expectSpread(gap.filled, [1.8, 1.8, 1.8]);
    expectSpread(gap.coated, [0.8, 0.8, 0.8]);
  });

  test('what is left to the coat stays missing: 0.6 mm under a limit of 1 mm', () => {
    const gap = both(0.6, 0.4);
    expectSpread(gap.filled, [1.8, 1.8, 1.8]);
    expectSpread(gap.coated, [0.8, 0.8, 0.8]);
  });

  test('uncoated faces lose nothing, tips that are coated alone lose one system', () => {
    expectSpread(gapOf({ repair: { coatedFaces: [] } }).coated, [0.8, 0.8, 0.8]);
    const tips = gapOf({ repair: { coatedFaces: ['impeller:vane-*/tip'] } });
    expectSpread(tips.coated, [0.3, 0.3, 0.3]);
    expect(tips.films).toEqual({ plate: 0, tips: 0.5 });
  });

  test('one vane coated out of five: least under it, mean by its share, most beside it', () => {
    const gap = gapOf({ repair: { coatedFaces: ['impeller:vane-2/tip'] } });
    expectSpread(gap.coated, [0.3, 0.8 - 0.5 / 5, 0.8]);
    expectSpread(gap.byVane[1].coated, [0.3, 0.3, 0.3]);
    expectSpread(gap.byVane[0].coated, [0.8, 0.8, 0.8]);
  });

  test('a shim opens or closes all states, dressing opens what is filled', () => {
    const gap = gapOf({ ask: { shim: -0.3, dressTips: 0.4 } });
    expectSpread(gap.asFound, [0.5, 0.5, 0.5]);
    expectSpread(gap.filled, [0.9, 0.9, 0.9]);
    expectSpread(gap.coated, [-0.1, -0.1, -0.1]);
  });

  /** 0.8 mm as new; places 0.6 deep are left open, being under 1 mm. A plane takes off what stands above it and no more. */
  test('tips are dressed to a plane: open wear counts only as far as it lies deeper', () => {
    const worn = { onTips: [onTip('*', [0, 300], 0.6)] };
    expectSpread(gapOf({ ...worn, ask: { dressTips: 0.4 } }).filled, [1.4, 1.4, 1.4]);
    expectSpread(gapOf({ ...worn, ask: { dressTips: 0.8 } }).filled, [1.6, 1.6, 1.6]);
    const one = { onTips: [onTip(2, [0, 300], 0.6)] };
    expectSpread(gapOf({ ...one, ask: { dressTips: 0.4 } }).filled, [1.2, 1.2 + 0.2 / 5, 1.4]);
    expectSpread(gapOf({ ...one, ask: { dressTips: 0.8 } }).filled, [1.6, 1.6, 1.6]);
    expectSpread(gapOf({ ...one, ask: { dressTips: 0.8 } }).asFound, [0.8, 0.8 + 0.6 / 5, 1.4]);
  });

  test('nor does a fill that stops short add to a plane that lies deeper', () => {
    const short = { onTips: [onTip('*', [0, 300], 2)], repair: { coatAllowance: 0.5 } };
    expectSpread(gapOf({ ...short, ask: { dressTips: 0.3 } }).filled, [1.3, 1.3, 1.3]);
    expectSpread(gapOf({ ...short, ask: { dressTips: 0.7 } }).filled, [1.5, 1.5, 1.5]);
  });
});

/** A ring 40 mm wide of the radii that are shared, over 92.2 mm of them; the mean of the gap counts each radius alike. */
describe('a plate worn in places', () => {
  /** A cell of 0.5 mm counts in the ring of its middle, so an edge may stand a quarter of a mm off: 2 mm x 0.25 / 92.2. */
  const EDGE = 0.0055;
  const share = (gap: Gap, width: number) => width / (gap.to - gap.from);

  test('a ring 2 mm deep counts at its radii and nowhere else', () => {
    const gap = gapOf({ onPlate: [patch([90, 130], [0, 360], 2)] }, 0.5);
    expectSpread(gap.asFound, [0.8, 0.8 + 2 * share(gap, 40), 2.8], EDGE);
    for (const ring of ringsWithin(gap, [90, 130])) expectSpread(ring.asFound, [2.8, 2.8, 2.8]);
    for (const range of [
      [60, 90],
      [130, 160],
    ] as const)
      for (const ring of ringsWithin(gap, range)) expectSpread(ring.asFound, [0.8, 0.8, 0.8]);
    expect(ringsWithin(gap, [90, 130]).length).toBeGreaterThan(35);
  });

  test('75 deg of it: every tip meets both the sound and the worn part once a turn', () => {
    const gap = gapOf({ onPlate: [patch([90, 130], [20, 95], 2)] }, 0.5);
    for (const ring of ringsWithin(gap, [90, 130]))
      expectSpread(ring.asFound, [0.8, 0.8 + (2 * 75) / 360, 2.8], 1e-3);
    expectSpread(gap.asFound, [0.8, 0.8 + 2 * (75 / 360) * share(gap, 40), 2.8], EDGE);
  });

  test('ramped from 1 to 3 mm: each ring as deep as it lies out', () => {
    const gap = gapOf({ onPlate: [patch([90, 130], [0, 360], [1, 3])] }, 0.5);
    for (const ring of ringsWithin(gap, [91, 129])) {
      const depth = 1 + (2 * (ring.radius - 90)) / 40;
      // A row of 0.5 mm counts in the ring of its middle: half a row of 0.05 to the mm. A ring of 1 mm holds half its rise to either side.
      expect(Math.abs(ring.asFound.mean - 0.8 - depth)).toBeLessThan(0.25 * 0.05);
      expect(ring.asFound.least).toBeGreaterThan(0.8 + depth - 0.026);
      expect(ring.asFound.most).toBeLessThan(0.8 + depth + 0.026);
    }
  });

  test('deeper wear is filled and the shallow is left: least from one, most from the other', () => {
    const gap = gapOf({ onPlate: [patch([80, 100], [0, 90], 2), patch([80, 100], [180, 270], 0.7)] }, 0.5);
    for (const ring of ringsWithin(gap, [80, 100])) {
      expectSpread(ring.asFound, [0.8, 0.8 + (2 + 0.7) / 4, 2.8], 1e-3);
      expectSpread(ring.filled, [0.8, 0.8 + 0.7 / 4, 1.5], 1e-3);
    }
  });

  test('bolt holes are no plate: 14 mm of them in a ring change no mean', () => {
    const gap = gapOf({ shape: {}, onPlate: [patch([130, 160], [0, 360], 2)] }, 0.5);
    for (const ring of ringsWithin(gap, [131, 153])) expectSpread(ring.asFound, [2.8, 2.8, 2.8]);
  });
});

describe('tips worn in places', () => {
  test('one of five: least beside it, most under it, mean by its share', () => {
    const gap = gapOf({ onTips: [evenly('vane-2/tip', 1.5)] }, 0.5);
    expectSpread(gap.asFound, [0.8, 0.8 + 1.5 / 5, 2.3], 1e-6);
    for (const { tip, asFound } of gap.byVane) {
      const depth = tip === 'vane-2/tip' ? 1.5 : 0;
      expectSpread(asFound, [0.8 + depth, 0.8 + depth, 0.8 + depth]);
    }
    expect(gap.byVane.map(({ tip }) => tip)).toEqual([1, 2, 3, 4, 5].map((i) => `vane-${i}/tip`));
  });

  test('all five alike and one alone of the same depth are the same vane', () => {
    const all = gapOf({ onTips: [onTip('*', [40, 120], 1.5)] });
    const one = gapOf({ onTips: [onTip(3, [40, 120], 1.5)] });
    const third = ({ byVane }: Gap) => byVane[2].asFound;
    expectSpread(all.asFound, [third(one).least, third(one).mean, third(one).most], 1e-9);
    for (const { asFound } of all.byVane)
      expectSpread(asFound, [third(all).least, third(all).mean, third(all).most], 1e-6);
  });

  /**
   * Loss that grows along the camber, on a vane so thin that a radius has one place of it. The angle runs linearly in the radius,
   * beta = b1 + k (r - r1), so s(r) = ln(tan(beta/2) / tan(b1/2)) / k (checks, B2). Closed form.
   */
  test('loss linear along the camber lies at the radii the camber passes', () => {
    const [b1, k] = [toRadians(22), toRadians(6) / 85];
    const along = (r: number) => Math.log(Math.tan((b1 + k * (r - 65)) / 2) / Math.tan(b1 / 2)) / k;
    const length = along(150);
    const loss: EdgeLoss = {
      kind: 'edge',
      face: 'vane-*/tip',
      blend: 'deepest',
      profile: [
        [0, 0.5],
        [length, 2.5],
      ],
    };
    const vanes = { thicknessInlet: 0.5, thicknessOutlet: 0.5 };
    const gap = gapOf({ vanes, onTips: [loss] }, 0.25);
    const rings = ringsWithin(gap, [68, 147]);
    expect(rings.length).toBeGreaterThan(70);
    for (const { radius, asFound } of rings) {
      const depth = (at: number) => 0.8 + 0.5 + (2 * along(at)) / length;
      // Half a thickness to either side moves a place by up to 0.25 mm along the radius; 2 mm over 202 mm of camber, about 2.3 mm of it to the mm.
      expect(Math.abs(asFound.mean - depth(radius))).toBeLessThan(0.003);
      expect(Math.abs(asFound.least - depth(radius - 0.5))).toBeLessThan(0.012);
      expect(Math.abs(asFound.most - depth(radius + 0.5))).toBeLessThan(0.012);
    }
  });

  test('an arc camber takes the same wear alike', () => {
    const gap = gapOf({ vanes: { camber: 'arc' }, onTips: [evenly('vane-*/tip', 1.2)] });
    expectSpread(gap.asFound, [2, 2, 2]);
  });
});

/** Where a tapered vane or a round nose cuts cells to slivers that hold no sample, those have no depth of their own. */
test('a tip worn all over and filled flush leaves nothing behind at its edges', () => {
  const profile: EdgeLoss = {
    kind: 'edge',
    face: 'vane-*/tip',
    blend: 'deepest',
    profile: [
      [0, 0.7],
      [60, 0.5],
      [300, 2],
    ],
  };
  for (const cell of [0.25, 0.5, 1, 2]) {
    const vanes = { thicknessInlet: 9, thicknessOutlet: 7, nose: 'round' } as const;
    const gap = gapOf({ vanes, onTips: [profile] }, cell);
    expectSpread(gap.filled, [0.8, 0.8, 0.8]);
  }
});

/**
 * A plate dished by 5 deg stands (R - r) tan 5 deg lower at the bore; tips that fall by as much to the mm outwards follow it, level ones do not.
 * `from` and `to` are the ends of the overlap. Closed forms.
 */
describe('parts that do not run parallel', () => {
  const rise = Math.tan(toRadians(5));
  const shape = { coneAngle: toRadians(5), holes: [] };
  const raked = { heightInlet: 30, heightOutlet: 30 - 85 * rise };

  test('a dished plate over level tips opens towards the bore, closest at the rim', () => {
    const gap = gapOf({ shape, ask: { asNewHolds: 'at the closest' } });
    const opening = (gap.to - gap.from) * rise;
    expectSpread(gap.asFound, [0.8, 0.8 + opening / 2, 0.8 + opening], 1e-6);
    for (const { radius, opening } of gap.byRadius) expect(opening).toBeCloseTo((gap.to - radius) * rise, 6);
    expect(gap.mismatch).toBeCloseTo(opening, 6);
  });

  test('raked tips under a flat plate open outwards', () => {
    const gap = gapOf({ vanes: raked, ask: { asNewHolds: 'at the closest' } });
    const opening = (gap.to - gap.from) * rise;
    expectSpread(gap.asFound, [0.8, 0.8 + opening / 2, 0.8 + opening], 1e-6);
  });

  test('raked tips follow a dished plate of the same slope', () => {
    const gap = gapOf({ shape, vanes: raked, ask: { asNewHolds: 'at the closest' } });
    expectSpread(gap.asFound, [0.8, 0.8, 0.8], 1e-6);
    expect(gap.mismatch).toBeLessThan(1e-6);
  });

  test('taken as parallel the figures do not open, the mismatch is told all the same', () => {
    const gap = gapOf({ shape });
    expectSpread(gap.asFound, [0.8, 0.8, 0.8]);
    expect(gap.mismatch).toBeCloseTo((gap.to - gap.from) * rise, 6);
  });
});

describe('where it is tightest and widest', () => {
  test('the shallow corner of the plate meets the vane that is worn least', () => {
    const gap = gapOf(
      {
        onPlate: [evenlyOnPlate(0.9), patch([100, 110], [200, 230], 0)].map((mark, i) => ({
          ...mark,
          blend: i === 0 ? 'deepest' : 'replace',
        })),
        onTips: [evenly('vane-*/tip', 0.9), { ...onTip(4, [-10, 300], 0.2), blend: 'replace' }],
        repair: { coatedFaces: [] },
      },
      0.5,
    );
    expect(gap.tightest.gap).toBeCloseTo(0.8 + 0.2, 6);
    expect(gap.tightest.tip).toBe('vane-4/tip');
    expect(gap.tightest.radius).toBeGreaterThan(99);
    expect(gap.tightest.radius).toBeLessThan(111);
    const [radius, angle] = gap.tightest.plate;
    expect(Math.abs(radius - gap.tightest.radius)).toBeLessThan(0.51);
    expect(angle).toBeGreaterThan(toRadians(199.5));
    expect(angle).toBeLessThan(toRadians(230.5));
    expect(gap.widest.gap).toBeCloseTo(0.8 + 0.9 + 0.9, 6);
  });
});

/**
 * The mean of a patch that no cell edge follows: a ring from 91.3 to 127.7 mm over 73 deg, 2 mm deep, over the 92.2 mm shared.
 * Finer cells bring it closer to the closed form, and the default is within what the sheet shows.
 */
test('finer cells come closer', () => {
  const off = [5, 2, 1, 0.5, 0.25].map((cell) => {
    const gap = gapOf({ onPlate: [patch([91.3, 127.7], [20, 93], 2)] }, cell);
    return Math.abs(gap.asFound.mean - 0.8 - (2 * 73 * (127.7 - 91.3)) / 360 / (gap.to - gap.from));
  });
  expect(off[0], 'of 5 mm').toBeLessThan(0.02);
  expect(off[1], 'of 2 mm').toBeLessThan(0.01);
  expect(off[2], 'of 1 mm').toBeLessThan(0.004);
  expect(off[3], 'of 0.5 mm').toBeLessThan(0.002);
  expect(off[4], 'of 0.25 mm').toBeLessThan(0.001);
  expect(off[4]).toBeLessThan(off[0]);
});

test('least and most do not depend on the cells', () => {
  for (const cell of [5, 2, 1, 0.5]) {
    const gap = gapOf({ onPlate: [patch([80, 140], [20, 95], 2)], onTips: [onTip(1, [50, 150], 1.1)] }, cell);
    expect(gap.asFound.least).toBeCloseTo(0.8, 6);
    expect(gap.asFound.most).toBeCloseTo(0.8 + 2 + 1.1, 6);
  }
});
