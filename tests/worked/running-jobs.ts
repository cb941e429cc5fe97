/** Small pairs of a plate and an impeller, with a flow test and a history, that differ in all that the gap hangs on. Job `seed` is always the same one. */
import type { FlowTestFile, HistoryFile, JobFile, MarkFile, PartFile } from '../../geometry/job/job-file.ts';
import { type Chances, chances } from './varied-jobs.ts';

/** mm; no damage comes near the depth from which it is filled, 1 mm, where two grids might tell otherwise. */
const SHALLOW = [0.3, 0.5, 0.7];
const DEEP = [1.4, 1.9, 2.6, 4.6];

/** A test and a history of their own, so that a change to the parts leaves them as they are. */
const OTHER = 1000;

export function runningJob(seed: number): JobFile {
  const chance = chances(seed);
  const { one, maybe, between } = chance;
  const bare = one([], ['plate:*'], ['impeller:*'], ['impeller:vane-1/tip', 'plate:face']);
  return {
    format: 1,
    parts: [plateOf(chance), impellerOf(chance)],
    clearance: {
      plate: 'plate',
      impeller: 'impeller',
      asNew: one(0.4, 0.8, 1.5),
      ...maybe(0.4, { asNewHolds: one('everywhere', 'at the closest') }),
      least: one(0.2, 0.4),
      most: one(0.5, 0.9, 1.6),
      ...maybe(0.4, { shim: one(-0.25, 0.4, 1.1) }),
      ...maybe(0.5, { tolerance: one(0.05, 0.2) }),
      ...maybe(0.4, { filmTolerance: one(0.05, 0.15) }),
      ...maybe(0.4, { dressTolerance: 0.1 }),
      ...maybe(0.4, { runOut: one(0.03, 0.12) }),
    },
    coat: {
      density: 1.7,
      ratioByVolume: [2, 1],
      solidsByVolume: one(100, 60),
      dryFilm: one(40, 150, 250),
      coats: one(1, 2, 3),
      profile: 75,
      workingTime: { minutes: 25, at: 25 },
    },
    repair: {
      ...maybe(0.4, { leaveBelow: one(0.1, 1, 5) }),
      ...maybe(0.4, { coatAllowance: one(0.15, 0.5) }),
      ...maybe(0.2, { allowanceFaces: one(['plate:face'], ['impeller:vane-*/tip'], ['*:vane-1/tip']) }),
      ...maybe(0.4, { coatedFaces: bare }),
      ...maybe(0.3, {
        overrule: [{ at: 'plate:face', point: [between(34, 50), 30], action: one('fill', 'leave') }],
      }),
    },
    flowTest: flowTestOf(chances(OTHER + seed)),
    ...maybe(0.8, { history: historyOf(chances(2 * OTHER + seed)) }),
  };
}

function plateOf(chance: Chances): PartFile {
  const { one, maybe, between } = chance;
  const depth = () => one(...SHALLOW, ...DEEP);
  const bands = Array.from({ length: one(0, 1, 2, 3) }, (_, i): MarkFile => {
    const [from, wide] = [between(27, 45), between(5, 12)];
    const turn = 110 * i + between(0, 20);
    return one<MarkFile>(
      {
        kind: 'patch',
        face: 'face',
        first: [from, from + wide],
        second: [turn, turn + between(30, 85)],
        depth: depth(),
      },
      {
        kind: 'patch',
        face: 'face',
        first: [from, from + wide],
        second: [turn, turn + 80],
        depth: [depth(), depth()],
      },
      { kind: 'patch', face: 'face', first: [from, from + wide], second: [0, 360], depth: depth() },
      {
        kind: 'stroke',
        face: 'face',
        path: [
          [from, turn],
          [from + 4, turn + 50],
        ],
        radius: between(5, 9),
        depth: depth(),
        edge: one('soft', 'hard'),
      },
      {
        kind: 'pit',
        face: 'face',
        at: [from, turn],
        diameter: between(6, 12),
        depth: depth(),
        form: one('cone', 'bowl', 'flat'),
      },
    );
  });
  return {
    id: 'plate',
    kind: 'wear-plate',
    density: 7.2,
    outerDiameter: one(96, 120, 132),
    boreDiameter: one(40, 52, 62),
    thickness: 12,
    ...maybe(0.4, { coneAngle: one(5, 12) }),
    ...maybe(0.4, { boltHoles: [{ count: 4, circleDiameter: one(74, 80), holeDiameter: 7 }] }),
    ...maybe(0.7, { leastThickness: 8 }),
    wear: bands,
  };
}

function impellerOf(chance: Chances): PartFile {
  const { one, maybe, between } = chance;
  const depth = () => one(...SHALLOW, ...DEEP);
  const [count, high] = [one(1, 2, 3), one(14, 20)];
  const wear = Array.from({ length: one(0, 1, 2) }, (): MarkFile => {
    const face = `vane-${one('*', '1')}/tip`;
    const s = between(4, 25);
    return one<MarkFile>(
      {
        kind: 'edge',
        face,
        profile: [
          [0, depth()],
          [s + 8, depth()],
          [s + 40, depth()],
        ],
      },
      { kind: 'patch', face, first: [s, s + 9], second: [-5, 5], depth: depth() },
      {
        kind: 'stroke',
        face,
        path: [
          [s, -1],
          [s + 15, 1],
        ],
        radius: 3,
        depth: depth(),
        edge: 'soft',
      },
      { kind: 'pit', face, at: [s, 0], diameter: 5, depth: depth(), form: one('cone', 'bowl', 'flat') },
    );
  });
  const sides = Array.from({ length: one(0, 0, 1, 2) }, (_, i): MarkFile => {
    const face = `vane-${one('*', '1')}/${i === 0 ? 'pressure' : 'suction'}`;
    return {
      kind: 'pit',
      face,
      at: [between(14, 20), 5],
      diameter: 7,
      depth: one(0.6, 1.6, 2.4),
      form: 'bowl',
    };
  });
  return {
    id: 'impeller',
    kind: 'impeller',
    density: 7.2,
    rotation: one('clockwise', 'counter-clockwise'),
    outerDiameter: one(104, 116),
    hubDiameter: 30,
    shroudThickness: 6,
    vanes: {
      count,
      firstAngle: between(0, 300),
      inletDiameter: one(50, 60),
      inletAngle: one(18, 24),
      outletAngle: one(24, 34),
      ...maybe(0.5, { camber: one('linear', 'arc') }),
      thicknessInlet: one(5, 7),
      thicknessOutlet: one(5, 7),
      heightInlet: high,
      heightOutlet: high - one(0, 2.5, 5),
      ...maybe(0.6, { nose: one('round', 'square') }),
    },
    ...maybe(0.6, { leastThickness: 3 }),
    wear: [...wear, ...sides],
  };
}

/** Points about a falling head and a rising power, now and then one that lies where it should not. */
function flowTestOf({ one, maybe, between }: Chances): FlowTestFile {
  const scale = one(1, 1, 12);
  const pointsOf = (worse: number) =>
    Array.from({ length: one(1, 5, 7, 8, 8) }, (_, i) => {
      const flow = (20 + 15 * i + between(0, 9)) * scale;
      return {
        flow,
        head: (17 - 0.0004 * (flow / scale) ** 2) * (2 - worse) + between(-0.1, 0.1),
        power: one(1, 1, 1, 1, 1, 1, 1, 1, 1, 0) * (2.4 + 0.027 * (flow / scale)) * scale * worse,
      };
    });
  const run = (when: string, worse: number) => ({
    when,
    speed: one(1450, 1446, 1475, 1475, 960),
    ...maybe(0.3, { powerAt: one('motor', 'shaft') }),
    ...maybe(0.3, { density: one(1010, 1090) }),
    points: pointsOf(worse),
  });
  return {
    density: one(998, 1050),
    ratedSpeed: 1450,
    duty: one(45, 60, 75, 90) * scale,
    ...maybe(0.7, { hoursPerYear: one(0, 800, 4000) }),
    ...maybe(0.7, { energyPrice: one(0.12, 0.3) }),
    ...maybe(0.5, { motorEfficiency: one(82, 91.5) }),
    ...maybe(0.6, { gauges: one(1, 2, 3) }),
    ...maybe(0.5, { sameGauges: one(true, false) }),
    ...maybe(0.5, { repeatability: one(1, 3) }),
    ...maybe(0.6, {
      guarantee: {
        flow: 70 * scale,
        head: between(13, 16),
        ...maybe(0.7, { efficiency: one(60, 72) }),
        ...maybe(0.5, { power: one(3.9, 4.8) * scale }),
        grade: one('1B', '1E', '1U', '2B', '2U', '3B'),
      },
    }),
    runs: [
      ...one([run('new', 1)], []),
      ...one(
        [run('before', between(1.02, 1.1))],
        [run('before', between(1.02, 1.1))],
        [run('before', 1.1), run('before', 1.2)],
        [],
      ),
      ...one([run('after', between(0.98, 1.04))], [run('after', 1.02), run('trial', 1)]),
    ],
  };
}

function historyOf({ one, maybe, between }: Chances): HistoryFile {
  const repairs = Array.from({ length: one(0, 1, 2, 4) }, (_, i) => ({
    part: one('plate', 'impeller'),
    date: `20${10 + i}-03-0${1 + i}` as const,
    hours: one(0, 900, 2600, 4000),
    deepest: between(0.5, 4),
    ...maybe(0.5, { mean: between(0.1, 0.5) }),
    ...maybe(0.5, { volume: between(1, 30) }),
  }));
  return { ...maybe(0.7, { hours: one(0, 600, 3100) }), repairs };
}
