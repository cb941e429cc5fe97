import { describe, expect, test } from 'vitest';
import { faultText } from '../../../geometry/job/fault.ts';
import type { Impeller } from '../../../geometry/job/job.ts';
import { measured } from '../../../geometry/job/measured.ts';
import { readJobValue } from '../../../geometry/job/read-job.ts';

const file = (change: object = {}, vanes: object = {}, wear: readonly object[] = []) => ({
  format: 1,
  parts: [
    {
      id: 'impeller',
      kind: 'impeller',
      density: 7.2,
      rotation: 'clockwise',
      outerDiameter: 300,
      hubDiameter: 60,
      shroudThickness: 10,
      ...change,
      vanes: {
        count: 5,
        inletDiameter: 130,
        inletAngle: 22,
        outletAngle: 28,
        thicknessInlet: 8,
        thicknessOutlet: 7,
        heightInlet: 40,
        heightOutlet: 26,
        ...vanes,
      },
      wear,
    },
  ],
});

function taken(value: unknown): Impeller {
  const read = readJobValue(value);
  if ('faults' in read) throw new Error(read.faults.map(faultText).join('; '));
  const [part] = measured(read.job).parts;
  if (part.kind !== 'impeller') throw new Error('not an impeller');
  return part;
}

function faultsOf(value: unknown): string[] {
  const read = readJobValue(value);
  return 'faults' in read ? read.faults.map(faultText) : [];
}

describe('an impeller is taken over', () => {
  test('in radii, radians and g/mm3', () => {
    const part = taken(file({}, { firstAngle: 90, wrap: 105, nose: 'round', camber: 'arc' }));
    expect(part).toMatchObject({
      outerRadius: 150,
      hubRadius: 30,
      shroudThickness: 10,
      leastThickness: null,
    });
    expect(part.density).toBeCloseTo(0.0072, 15);
    expect(part.vanes).toMatchObject({ inletRadius: 65, nose: 'round', camber: 'arc', thicknessOutlet: 7 });
    expect(part.vanes.firstAngle).toBeCloseTo(Math.PI / 2, 12);
    expect(part.vanes.wrap).toBeCloseTo((105 * Math.PI) / 180, 12);
  });
  test('what is left out has its usual value', () => {
    const part = taken(file());
    expect(part.vanes).toMatchObject({ firstAngle: 0, camber: 'linear', nose: 'square', wrap: null });
    // The hub as tall as the vanes at the inlet, its bore half the hub: common practice, for the mass alone.
    expect(part).toMatchObject({ hubHeight: 40, boreRadius: 15 });
  });
  test('an edge loss keeps its profile, for every vane if it says so', () => {
    const part = taken(
      file({}, {}, [
        {
          kind: 'edge',
          face: 'vane-*/leading-edge',
          profile: [
            [0, 1],
            [40, 2],
          ],
        },
      ]),
    );
    expect(part.marks).toEqual([
      {
        kind: 'edge',
        face: 'vane-*/leading-edge',
        blend: 'deepest',
        profile: [
          [0, 1],
          [40, 2],
        ],
      },
    ]);
  });
});

describe('an impeller that cannot be', () => {
  test('its inlet not smaller than its outlet', () => {
    expect(faultsOf(file({}, { inletDiameter: 300 }))).toContain(
      'parts[0].vanes.inletDiameter: 300 is not smaller than outerDiameter 300',
    );
  });
  test('its bore not smaller than its hub', () => {
    expect(faultsOf(file({ boreDiameter: 60 }))).toEqual([
      'parts[0].boreDiameter: 60 is not smaller than hubDiameter 60',
    ]);
  });
  test('a blade angle outside 5 to 85 degrees', () => {
    for (const inletAngle of [4.9, 85.1, -22]) {
      expect(faultsOf(file({}, { inletAngle }))[0]).toMatch(
        /^parts\[0\]\.vanes\.inletAngle: .* angle in deg from the tangential direction, at least 5 and at most 85/,
      );
    }
  });
  test('vanes that overlap at the inlet, or are thicker than the pitch', () => {
    // A vane of thickness t at blade angle b takes t / sin b of the circle: pi 130 sin 22 / 8 = 19.1.
    expect(faultsOf(file({}, { count: 20 }))[0]).toContain('parts[0].vanes.count: 20');
    expect(faultsOf(file({}, { thicknessInlet: 60 }))[0]).toContain('parts[0].vanes.count: 5');
  });
  test('wear deeper than the vane is thick, high or long', () => {
    const deep = (mark: object) => faultsOf(file({}, {}, [mark]))[0];
    const box = { kind: 'patch', first: [0, 10], second: [0, 10] };
    expect(deep({ ...box, face: 'vane-1/pressure', depth: 9 })).toBe(
      'parts[0].wear[0].depth: 9 is not at most the wall, thicknessInlet 8',
    );
    expect(deep({ ...box, face: 'vane-1/tip', depth: 41 })).toContain('heightInlet 40');
    expect(
      deep({
        kind: 'edge',
        face: 'vane-2/leading-edge',
        profile: [
          [0, 1],
          [40, 300],
        ],
      }),
    ).toBe(
      'parts[0].wear[0].profile[1][1]: 300 is not at most the wall, the length of a vane, 226.9 at most',
    );
  });
  test('a vane or a face that is not there', () => {
    const on = (face: string, change: object = {}) =>
      faultsOf(
        file(change, {}, [{ kind: 'pit', face, at: [10, 10], diameter: 4, depth: 1, form: 'bowl' }]),
      )[0];
    expect(on('vane-6/tip')).toContain('vane-1 to vane-5');
    expect(on('vane-0/tip')).toContain('parts[0].wear[0].face: "vane-0/tip"');
    expect(on('shroud/front', { shroudThickness: 0 })).toContain('"shroud/front"');
    expect(on('bore')).toContain('"shroud/front", "shroud/back"');
  });
  test('an edge loss along an angle', () => {
    const plate = {
      format: 1,
      parts: [
        {
          id: 'plate',
          kind: 'wear-plate',
          density: 7.2,
          outerDiameter: 320,
          boreDiameter: 120,
          thickness: 18,
          wear: [
            {
              kind: 'edge',
              face: 'bore',
              profile: [
                [0, 1],
                [40, 2],
              ],
            },
          ],
        },
      ],
    };
    expect(faultsOf(plate)).toEqual([
      'parts[0].wear[0].face: "bore" is not a face whose first coordinate is a length: an edge or a tip of a vane',
    ]);
  });
});
