/** Small jobs that differ in everything the day hangs on: parts, depths, materials, weather, hours, scales. Job `seed` is always the same one. */
import type { CoatFile, FillerFile, JobFile, PartFile, PlanFile } from '../../geometry/job/job-file.ts';

export function variedJob(seed: number): JobFile {
  const chance = chances(seed);
  const { one, maybe, between } = chance;
  // What is worked: all of it mostly, now and then a face without putty, without coat, or nothing at all.
  const kind = one(...Array.from({ length: 9 }, () => 'both'), 'no fill', 'no coat', 'neither');
  const [filled, coated] = [kind === 'both' || kind === 'no coat', kind === 'both' || kind === 'no fill'];
  return {
    format: 1,
    parts: partsOf(chance),
    ...maybe(0.9, { filler: fillerOf(chance) }),
    ...maybe(0.9, { coat: coatOf(chance) }),
    repair: {
      leaveBelow: filled ? one(0.1, 1) : 1000,
      coatedFaces: coated ? one(['*:*'], ['first:face']) : [],
      ...maybe(0.3, { coatAllowance: one(0.2, 0.5) }),
      ...maybe(0.3, { overbuild: one(0.5, 2) }),
      ...maybe(0.6, { fillerWaste: one(0, 5, 25, 100) }),
      ...maybe(0.6, { coatWaste: one(0, 7.5, 30, 200) }),
      ...maybe(0.8, { applicationRate: one(1.5, 4, 12, 45) }),
    },
    ...maybe(0.85, {
      climate: {
        ...maybe(0.9, { surface: Math.round(between(2, 40)) }),
        ...maybe(0.8, { air: Math.round(between(2, 40)) }),
        ...maybe(0.8, { humidity: one(20, 55, 70, 84.9, 85, 86, 100) }),
      },
    }),
    ...maybe(0.8, { plan: planOf(chance) }),
  };
}

function partsOf({ one, maybe, between }: Chances): PartFile[] {
  const depths = () => Array.from({ length: one(1, 1, 2, 3) }, () => one(0.4, 2, 3, 6, 14));
  const [wide, deep] = [one(120, 260, 500), depths()];
  const plate = (id: string, outer: number): PartFile => ({
    id,
    kind: 'wear-plate',
    density: 7.2,
    outerDiameter: outer,
    boreDiameter: outer * 0.4,
    thickness: 20,
    wear: deep.map((depth, i) => ({
      kind: 'patch',
      face: i === 2 ? 'bore' : 'face',
      first: i === 2 ? [10, 60] : [outer * 0.22, outer * between(0.24, 0.45)],
      second: i === 2 ? [2, 9] : [120 * i, 120 * i + between(4, 110)],
      depth,
    })),
  });
  const impeller: PartFile = {
    id: 'impeller',
    kind: 'impeller',
    density: 7.2,
    rotation: one('clockwise', 'counter-clockwise'),
    outerDiameter: 200,
    hubDiameter: 50,
    shroudThickness: 8,
    vanes: {
      count: 3,
      inletDiameter: 90,
      inletAngle: 24,
      outletAngle: 28,
      thicknessInlet: 8,
      thicknessOutlet: 8,
      heightInlet: 24,
      heightOutlet: 18,
    },
    wear: [
      { kind: 'patch', face: 'shroud/front', first: [60, 90], second: [10, 200], depth: one(0.6, 2, 4) },
      { kind: 'patch', face: 'vane-1/tip', first: [10, 60], second: [-4, 4], depth: one(1.2, 6) },
    ],
  };
  const second = one('none', 'none', 'plate', 'impeller');
  return [
    plate('first', wide),
    ...(second === 'plate' ? [plate('second', 150)] : []),
    ...(second === 'impeller' ? [impeller] : []),
    ...(maybe(0.1, { yes: true }).yes === true ? [{ ...plate('sound', 160), wear: [] }] : []),
  ];
}

/** Density of the mix is a word beside those of the parts: where both are given they decide. */
function mixOf({ one, maybe }: Chances) {
  const [densityA, densityB] = one([2.4, 2.1], [1.6, 1.05], [3.1, 2.9]);
  return {
    density: one(2.3, 1.7),
    ratioByVolume: one<[number, number]>([2, 1], [1, 1], [4, 1], [2.7, 1], [10, 1]),
    ...maybe(0.8, { densityA, densityB }),
    ...maybe(0.7, { activationEnergy: one(null, 45, 55, 70.7) }),
    ...maybe(0.7, { mixTime: one(0.5, 3, 6) }),
    ...maybe(0.7, { scaleStep: one(0.1, 0.5, 1, 2, 5, 20) }),
    ...maybe(0.4, { surfaceRange: { from: one(5, 10), to: one(20, 30) } }),
  };
}

function packsOf({ one, maybe }: Chances, selfMixing: boolean) {
  return maybe(0.8, {
    packs: [
      { label: 'small', volume: one(50, 75), selfMixing },
      ...one([], [{ label: 'large', mass: one(500, 1000), selfMixing: selfMixing && one(true, false) }]),
    ],
  });
}

function fillerOf(chance: Chances): FillerFile {
  const { one, maybe } = chance;
  const from = one(20, 30, 90);
  return {
    ...mixOf(chance),
    ...packsOf(chance, one(true, false, false)),
    workingTime: {
      minutes: one(4, 12, 20, 45),
      at: one(20, 25),
      ...maybe(0.5, { mass: one(100, 300, 1000) }),
    },
    ...maybe(0.85, { firmsUp: { from, to: from + one(4, 15, 15, 30, 90), at: one(20, 25) } }),
    ...maybe(0.8, { hard: { minutes: one(120, 480, 1440), at: 25 } }),
    mostBuild: one(1, 2, 5, 10, 20),
  };
}

function coatOf(chance: Chances): CoatFile {
  const { one, maybe } = chance;
  const from = one(15, 60, 300);
  return {
    ...mixOf(chance),
    ...packsOf(chance, one(true, false, false)),
    solidsByVolume: one(100, 83, 60),
    dryFilm: one(40, 120, 250, 333),
    coats: one(1, 2, 2, 3, 4),
    profile: one(0, 60, 75),
    workingTime: { minutes: one(3, 10, 25), at: one(20, 25) },
    ...maybe(0.85, { overcoat: { from, to: from + one(4, 60, 180, 900), at: one(20, 25) } }),
    ...maybe(0.8, { hard: { minutes: one(240, 960), at: 25 } }),
  };
}

function planOf({ one, maybe }: Chances): PlanFile {
  const start = one('06:00', '07:30', '13:15');
  const hours = {
    start: `2026-12-${one('01', '31')}T${start}` as const,
    ...maybe(0.7, { shiftEnd: one('14:00', '15:30', '22:45') }),
    ...maybe(0.4, { shiftStart: one('05:30', '08:00') }),
    ...maybe(0.6, {
      breaks: [
        { at: '09:30', minutes: 15 },
        { at: '12:30', minutes: one(30, 60) },
        ...one([], [{ at: '23:50', minutes: 25 }]),
      ],
    }),
  };
  return {
    ...(maybe(0.85, { clock: true }).clock === true ? hours : {}),
    ...maybe(0.5, { coatRate: one(10, 60, 900) }),
    ...maybe(0.4, {
      minutes: {
        wash: one(0, 35),
        blast: one(12, 240),
        ...maybe(0.5, { dress: one(0, 3, 25), touchTest: 6, dressHard: 0 }),
      },
    }),
  };
}

export interface Chances {
  readonly one: <const T>(...of: readonly T[]) => T;
  /** The fields, or none of them. */
  readonly maybe: <T extends object>(chance: number, fields: T) => Partial<T>;
  readonly between: (low: number, high: number) => number;
}

/** A row of chances that a seed decides (mulberry32, in the public domain). */
export function chances(seed: number): Chances {
  let state = Math.imul(seed + 1, 0x9e3779b1);
  const next = () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
  return {
    one: (...of) => of[Math.floor(next() * of.length)],
    maybe: (chance, fields) => (next() < chance ? fields : {}),
    between: (low, high) => low + (high - low) * next(),
  };
}
