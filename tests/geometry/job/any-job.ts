import fc from 'fast-check';

/** Numbers as files hold them: finite, and 0 without a sign, for JSON does not write that of -0. */
const number = (min: number, max: number) =>
  fc.double({ min, max, noNaN: true, noDefaultInfinity: true }).map((value) => value + 0);

const text = fc.string({ unit: 'grapheme', maxLength: 20 });
const coordinate = number(0, 400);
const point = fc.tuple(coordinate, coordinate);
const path = fc.array(point, { minLength: 1, maxLength: 30 });
const depth = number(0, 10);
const size = number(0.1, 50);
const blend = fc.constantFrom('deepest', 'add', 'replace');

/** Fields no version knows, of any value JSON can hold. */
const unknownFields = fc.dictionary(
  text.map((name) => `x ${name}`),
  fc.jsonValue({ maxDepth: 3 }).map((value) => JSON.parse(JSON.stringify(value)) as unknown),
  { maxKeys: 3 },
);

/** A record in which `optional` fields may be missing, with unknown fields strewn in. */
function record(
  needed: Record<string, fc.Arbitrary<unknown>>,
  optional: Record<string, fc.Arbitrary<unknown>> = {},
) {
  const known = fc.record({ ...needed, ...optional }, { requiredKeys: Object.keys(needed) });
  return fc
    .tuple(unknownFields, known)
    .map(([unknown, fields]): Record<string, unknown> => ({ ...unknown, ...fields }));
}

const range = fc.tuple(number(0, 200), number(1, 200)).map(([from, width]) => [from, from + width]);
const face = fc.constantFrom('face', 'bore');

const mark = fc.oneof(
  record(
    {
      kind: fc.constant('patch'),
      face,
      first: range,
      second: range,
      depth: fc.oneof(depth, fc.tuple(depth, depth)),
    },
    { blend },
  ),
  record(
    {
      kind: fc.constant('area'),
      face,
      outline: fc.constant([
        [80, 10],
        [120, 10],
        [120, 40],
      ]),
      depth,
    },
    { blend },
  ),
  record(
    {
      kind: fc.constant('pit'),
      face,
      at: point,
      diameter: size,
      depth,
      form: fc.constantFrom('cone', 'bowl', 'flat'),
    },
    { blend },
  ),
  record(
    { kind: fc.constant('stroke'), face, path, radius: size, depth },
    { edge: fc.constantFrom('hard', 'soft'), clear: fc.boolean(), blend },
  ),
  record({ kind: fc.constant('smooth'), face, path, radius: size, strength: number(0, 1) }),
  record({
    kind: fc.constant('edge'),
    // Along a first coordinate that is a length.
    face: fc.constant('face'),
    profile: fc.array(depth, { minLength: 1 }).map((d) => d.map((v, i) => [i, v])),
  }),
  record(
    {
      kind: fc.constant('readings'),
      face,
      points: fc.array(fc.tuple(coordinate, coordinate, depth), { minLength: 1 }),
    },
    {
      gaugeError: number(0, 1),
      covariance: record({}, { shape: fc.constantFrom('matern-5/2', 'gaussian'), length: size, sill: size }),
    },
  ),
);

const plate = record(
  {
    kind: fc.constant('wear-plate'),
    density: number(1, 9),
    outerDiameter: number(300, 900),
    boreDiameter: number(20, 250),
    thickness: number(10, 60),
  },
  {
    coneAngle: number(0, 10),
    boltHoles: fc.array(
      record({
        count: fc.integer({ min: 1, max: 8 }),
        circleDiameter: fc.constant(275),
        holeDiameter: number(1, 12),
      }),
      { maxLength: 1 },
    ),
    leastThickness: number(0, 10),
  },
);

const material = {
  density: number(0.5, 9),
  ratioByVolume: fc.tuple(size, size),
  workingTime: record({ minutes: size, at: number(0, 40) }),
};

const localTime = fc.constantFrom('2026-12-01T07:00', '2028-02-29T23:59');

/** A job without a fault: several plates with wear, optional sections there or not, unknown fields in every object. */
export const anyJob = fc
  .tuple(
    record(
      {
        format: fc.constant(1),
        parts: fc.array(fc.tuple(plate, fc.array(mark, { maxLength: 8 })), { minLength: 1, maxLength: 3 }),
      },
      {
        title: text,
        notes: text,
        filler: record(
          { ...material, mostBuild: size },
          { name: text, activationEnergy: fc.constantFrom(null, 50) },
        ),
        coat: record({
          ...material,
          solidsByVolume: number(1, 100),
          dryFilm: size,
          coats: fc.integer({ min: 1, max: 9 }),
          profile: number(0, 100),
        }),
        repair: record(
          {},
          { leaveBelow: depth, coatAllowance: depth, fillerWaste: depth, applicationRate: size },
        ),
        climate: record(
          {},
          { air: number(0, 40), surface: number(0, 40), humidity: number(0, 100), takenAt: localTime },
        ),
        service: record({ solids: fc.constantFrom('none', 'soft', 'hard') }),
        plan: record(
          { start: localTime, shiftStart: fc.constant('06:00'), shiftEnd: fc.constant('14:30') },
          { coatRate: number(1, 1000), minutes: record({}, { wash: number(0, 60), check: number(0, 60) }) },
        ),
        log: fc.array(
          record(
            { step: fc.constant('fill:1'), started: fc.constant('2026-12-01T09:12:30Z') },
            { note: text },
          ),
          { maxLength: 3 },
        ),
      },
    ),
  )
  .map(([job]) => ({
    ...job,
    parts: (job.parts as [object, unknown[]][]).map(([part, wear], i) => ({
      ...part,
      id: `part ${i}`,
      wear,
    })),
  }));
