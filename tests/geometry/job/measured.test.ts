import { describe, expect, test } from 'vitest';
import type { Job, WearPlate } from '../../../geometry/job/job.ts';
import { measured } from '../../../geometry/job/measured.ts';
import { newPlateJob } from '../../../geometry/job/new-plate-job.ts';
import { readJobValue } from '../../../geometry/job/read-job.ts';
import { wholeJob } from './whole-job.ts';

function taken(value: unknown): Job {
  const read = readJobValue(value);
  if ('faults' in read) throw new Error(JSON.stringify(read.faults));
  return measured(read.job);
}

function plateOf(value: unknown, i = 0): WearPlate {
  const part = taken(value).parts[i];
  if (part.kind !== 'wear-plate') throw new Error('not a plate');
  return part;
}

/** The one mark of the whole job's round plate as it is taken over. */
function mark(written: object) {
  const job = wholeJob();
  job.parts[0].wear = [written];
  return taken(job).parts[0].marks[0];
}

const DEG = Math.PI / 180;

describe('a round plate', () => {
  const plate = plateOf({ ...wholeJob(), climate: undefined });

  test('has radii in mm, its density in g/mm3, its cone in radians', () => {
    expect(plate).toMatchObject({ id: 'plate', kind: 'wear-plate', thickness: 18, leastThickness: 10 });
    expect(plate.density).toBeCloseTo(0.0072, 15);
    expect(plate.shape).toMatchObject({ kind: 'round', outerRadius: 160, boreRadius: 60, coneAngle: 0 });
    const dished = wholeJob();
    dished.parts[0].coneAngle = 4;
    expect(plateOf(dished).shape).toMatchObject({ coneAngle: 4 * DEG });
  });

  test('has every bolt hole by itself: six of 14 on 290, the second at 145 cos 60, 145 sin 60', () => {
    const { shape } = plate;
    if (shape.kind !== 'round') throw new Error('not round');
    expect(shape.holes).toHaveLength(6);
    expect(shape.holes[0]).toEqual({ x: 145, y: 0, radius: 7 });
    expect(shape.holes[1].x).toBeCloseTo(72.5, 10);
    expect(shape.holes[1].y).toBeCloseTo(125.573683549, 8);
  });

  test('left open, the cone is flat, there are no holes and no least wall', () => {
    const job = wholeJob();
    for (const name of ['coneAngle', 'boltHoles', 'leastThickness', 'wear']) delete job.parts[0][name];
    expect(taken(job).parts[0]).toMatchObject({
      leastThickness: null,
      marks: [],
      shape: { coneAngle: 0, holes: [] },
    });
  });
});

describe('an outline plate', () => {
  const corners = [
    [0, 0],
    [120, 0],
    [120, 50],
    [60, 50],
    [60, 90],
    [0, 90],
  ];

  test('keeps its corners, without the first repeated at the end', () => {
    const job = wholeJob();
    job.parts[1].outline = { edge: [...corners, [0, 0]] };
    expect(plateOf(job, 1).shape).toEqual({ kind: 'outline', edge: corners, holes: [] });
  });

  test('bolt holes become polygons of the same area, pi 5 squared, and centre', () => {
    const job = wholeJob();
    job.parts[1] = {
      ...job.parts[1],
      outline: {
        edge: [
          [-60, -60],
          [60, -60],
          [60, 60],
          [-60, 60],
        ],
      },
      boltHoles: [{ count: 2, circleDiameter: 80, holeDiameter: 10 }],
      wear: [],
    };
    const { shape } = plateOf(job, 1);
    if (shape.kind !== 'outline') throw new Error('not an outline');
    expect(shape.holes).toHaveLength(2);
    const hole = shape.holes[1];
    let area = 0;
    for (const [i, [x, y]] of hole.entries()) {
      const [nextX, nextY] = hole[(i + 1) % hole.length];
      area += (x * nextY - nextX * y) / 2;
    }
    expect(area).toBeCloseTo(Math.PI * 25, 9);
    expect(hole.reduce((sum, [x]) => sum + x, 0) / hole.length).toBeCloseTo(-40, 9);
  });

  test('has no angle among its coordinates', () => {
    expect(taken(wholeJob()).parts[1].marks).toEqual([
      { kind: 'patch', face: 'face', blend: 'deepest', first: [50, 70], second: [20, 40], depth: [1.5, 1.5] },
    ]);
  });
});

describe('marks', () => {
  test('on the face the second coordinate is the angle, on the bore the first', () => {
    const pit = { kind: 'pit', at: [100, 30], diameter: 12, depth: 2.5, form: 'cone' };
    const same = { kind: 'pit', blend: 'deepest', radius: 6, depth: 2.5, form: 'cone' };
    expect(mark({ ...pit, face: 'face' })).toEqual({ ...same, face: 'face', at: [100, 30 * DEG] });
    expect(mark({ ...pit, face: 'bore' })).toEqual({ ...same, face: 'bore', at: [100 * DEG, 30] });
  });

  test('an area and a stroke are taken point by point', () => {
    const outline = [
      [100, 10],
      [120, 10],
      [120, 40],
    ];
    expect(mark({ kind: 'area', face: 'face', outline, depth: 2, blend: 'replace' })).toEqual({
      kind: 'area',
      face: 'face',
      blend: 'replace',
      outline: [
        [100, 10 * DEG],
        [120, 10 * DEG],
        [120, 40 * DEG],
      ],
      depth: 2,
    });
    expect(
      mark({
        kind: 'stroke',
        face: 'bore',
        path: [
          [90, 3],
          [450, 4],
        ],
        radius: 5,
        depth: 1,
        edge: 'soft',
      }),
    ).toEqual({
      kind: 'stroke',
      face: 'bore',
      blend: 'deepest',
      path: [
        [90 * DEG, 3],
        [450 * DEG, 4],
      ],
      radius: 5,
      depth: 1,
      edge: 'soft',
      clear: false,
    });
  });

  test('a stroke that clears has no depth of its own, one without an edge is hard', () => {
    expect(mark({ kind: 'stroke', face: 'face', path: [[90, 0]], radius: 5, clear: true })).toMatchObject({
      depth: 0,
      edge: 'hard',
      clear: true,
    });
  });

  test('smoothing has a strength and no blend', () => {
    expect(mark({ kind: 'smooth', face: 'face', path: [[90, 90]], radius: 5, strength: 0.5 })).toEqual({
      kind: 'smooth',
      face: 'face',
      path: [[90, 90 * DEG]],
      radius: 5,
      strength: 0.5,
    });
  });

  const TURN = 2 * Math.PI;
  test.each([
    [[20, 95], 20 * DEG, 95 * DEG],
    [[350, 20], 350 * DEG, 380 * DEG],
    [[350, 380], 350 * DEG, 380 * DEG],
    [[-10, 20], -10 * DEG, 20 * DEG],
    [[350, -700], 350 * DEG, 380 * DEG],
    [[0, 360], 0, TURN],
    [[30, 390], 30 * DEG, 30 * DEG + TURN],
    [[30, 1000], 30 * DEG, 30 * DEG + TURN],
  ])('a patch from and to %j deg runs upwards and at most a turn', (second, from, to) => {
    const patch = mark({ kind: 'patch', face: 'face', first: [90, 130], second, depth: [2, 5] });
    if (patch.kind !== 'patch') throw new Error('not a patch');
    expect(patch.first).toEqual([90, 130]);
    expect(patch.depth).toEqual([2, 5]);
    expect(patch.second[0]).toBeCloseTo(from, 12);
    expect(patch.second[1]).toBeCloseTo(to, 12);
  });

  test('a whole turn is one to the last bit', () => {
    const patch = mark({ kind: 'patch', face: 'bore', first: [33.3, 393.3], second: [0, 5], depth: 1 });
    if (patch.kind !== 'patch') throw new Error('not a patch');
    expect(patch.first[1]).toBe(patch.first[0] + 2 * Math.PI);
  });
});

describe('materials and repair', () => {
  const job = taken(wholeJob());

  test('densities are in g/mm3, packs in g and mm3, films in mm, solids and waste shares, the rate in mm3/min', () => {
    expect(job.filler.density).toBeCloseTo(0.0023, 15);
    expect(job.filler.densityA).toBeCloseTo(0.0024, 15);
    expect(job.filler.densityB).toBeCloseTo(0.0021, 15);
    expect(job.filler.packs).toEqual([{ label: 'kit', mass: 1000, volume: null, selfMixing: false }]);
    expect(job.filler.workingTime).toEqual({ minutes: 20, at: 25, mass: 300 });
    expect(job.coat.packs).toEqual([{ label: 'cartridge', mass: null, volume: 400_000, selfMixing: true }]);
    expect(job.coat).toMatchObject({ solidsByVolume: 0.8, dryFilm: 0.25, coats: 2, profile: 0.075 });
    expect(job.repair).toMatchObject({
      fillerWaste: 0.12,
      coatWaste: 0.25,
      applicationRate: 15_000,
      readingWorth: 20_000,
      overbuild: 0.5,
    });
    expect(job.surface).toBe(17);
  });

  test('null as activation energy is the workshop rule, left out it is 55 kJ/mol', () => {
    expect(job.filler.activationEnergy).toBeNull();
    expect(job.coat.activationEnergy).toBe(60);
    const open = wholeJob();
    delete open.filler.activationEnergy;
    expect(taken(open).filler.activationEnergy).toBe(55);
  });

  test('the time it takes to mix is known only when the file gives it', () => {
    expect(job.filler.mixTime).toBe(2);
    const open = wholeJob();
    delete open.filler.mixTime;
    expect(taken(open).filler.mixTime).toBeNull();
  });

  test('overrules go with their part and face, angles in radians where the face has one', () => {
    expect(job.repair.overrules).toEqual([
      { part: 'plate', face: 'face', point: [118, 45 * DEG], action: 'leave' },
      { part: 'impeller', face: 'vane-1/tip', point: [10, 0], action: 'fill' },
    ]);
  });

  test('a job of parts alone gets the generic materials, which say what they are, and the usual repair', () => {
    const bare = taken({ format: 1, parts: wholeJob().parts.slice(0, 1) });
    expect(bare.filler.name).toBe('generic fine ceramic-filled putty - replace with your data sheet');
    expect(bare.coat.name).toBe('generic brushable ceramic coat - replace with your data sheet');
    expect(bare.coat).toMatchObject({ dryFilm: 0.25, coats: 2, solidsByVolume: 1, profile: 0.075 });
    expect(bare.filler.density).toBeCloseTo(0.0023, 15);
    expect(bare.surface).toBeNull();
    expect(bare.repair).toEqual({
      leaveBelow: 1,
      coatAllowance: 0,
      allowanceFaces: ['*:face', '*:vane-*/tip'],
      coatedFaces: ['*:*'],
      overbuild: 0,
      fillerWaste: 0.1,
      coatWaste: 0.2,
      applicationRate: 20_000,
      readingWorth: null,
      overrules: [],
    });
  });

  test('the job to start from has no fault and the same defaults written out', () => {
    const { filler, coat, repair } = taken(newPlateJob());
    const bare = taken({ format: 1, parts: newPlateJob().parts });
    expect({ filler, coat, repair }).toEqual({ filler: bare.filler, coat: bare.coat, repair: bare.repair });
  });
});

test('what is not worked out yet is listed with its field, and nothing else is', () => {
  expect(taken(wholeJob()).unsupported.map(({ field }) => field)).toEqual(['parts[0].wear[7]']);
  expect(taken(newPlateJob()).unsupported).toEqual([]);
});
