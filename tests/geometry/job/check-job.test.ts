import { describe, expect, test } from 'vitest';
import { sentences } from './sentences.ts';
import { wholeJob } from './whole-job.ts';

/** The sentences about the whole job with some fields of its round plate changed. */
function plate(changes: object): string[] {
  const job = wholeJob();
  job.parts[0] = { ...job.parts[0], ...changes };
  return sentences(job);
}

const outlined = (outline: object, changes: object = {}): string[] => {
  const job = wholeJob();
  job.parts[1] = { ...job.parts[1], outline, ...changes };
  return sentences(job);
};

const marked = (mark: object): string[] => plate({ wear: [mark] });

describe('round plate', () => {
  test('the bore is smaller than the plate', () => {
    expect(plate({ boreDiameter: 330, boltHoles: [] })).toContain(
      'parts[0].boreDiameter: 330 is not smaller than outerDiameter 320',
    );
    expect(plate({ boreDiameter: 320, boltHoles: [] })).toContain(
      'parts[0].boreDiameter: 320 is not smaller than outerDiameter 320',
    );
  });

  test('holes lie on the plate, clear of rim and bore, touching neither', () => {
    const circle = (circleDiameter: number) => [{ count: 4, circleDiameter, holeDiameter: 14 }];
    expect(plate({ boltHoles: circle(306) })).toEqual([
      'parts[0].boltHoles[0].circleDiameter: 306 is not less than 306, where holes of 14 lie inside outerDiameter 320',
    ]);
    expect(plate({ boltHoles: circle(134) })).toEqual([
      'parts[0].boltHoles[0].circleDiameter: 134 is not more than 134, where holes of 14 lie clear of boreDiameter 120',
    ]);
    expect(plate({ boltHoles: circle(305.9) })).toEqual([]);
    expect(plate({ boltHoles: circle(134.1) })).toEqual([]);
  });

  test('a hole as wide as the metal fits on no circle: (320 - 120) / 2 = 100', () => {
    expect(plate({ boltHoles: [{ count: 1, circleDiameter: 220, holeDiameter: 400 }] })).toEqual([
      'parts[0].boltHoles[0].holeDiameter: 400 is not smaller than 100, the metal between boreDiameter and outerDiameter',
    ]);
    expect(plate({ boltHoles: [{ count: 1, circleDiameter: 220, holeDiameter: 100 }] })).toHaveLength(1);
    expect(plate({ boltHoles: [{ count: 1, circleDiameter: 220, holeDiameter: 99 }] })).toEqual([]);
  });

  test('holes of a circle do not overlap: 290 sin(180/60) = 15.18 apart', () => {
    const sixty = { count: 60, circleDiameter: 290 };
    expect(plate({ boltHoles: [{ ...sixty, holeDiameter: 16 }] })).toEqual([
      'parts[0].boltHoles[0].holeDiameter: 16 is not smaller than 15.18, the distance between neighbouring holes of the circle',
    ]);
    expect(plate({ boltHoles: [{ ...sixty, holeDiameter: 15 }] })).toEqual([]);
    expect(plate({ boltHoles: [{ count: 1, circleDiameter: 290, holeDiameter: 16 }] })).toEqual([]);
  });

  test('holes of two circles do not overlap', () => {
    const first = { count: 4, circleDiameter: 280, holeDiameter: 14 };
    expect(plate({ boltHoles: [first, { ...first, circleDiameter: 290, startAngle: 90 }] })).toEqual([
      'parts[0].boltHoles[1]: a circle with holes that overlap those of parts[0].boltHoles[0] is not clear of them',
    ]);
    expect(plate({ boltHoles: [first, { ...first, startAngle: 45 }] })).toEqual([]);
  });

  test('the least wall is no more than the wall', () => {
    expect(plate({ leastThickness: 18.5 })).toEqual([
      'parts[0].leastThickness: 18.5 is not at most thickness 18',
    ]);
  });

  test('the cone lies between -45 and 45 deg', () => {
    for (const coneAngle of [45, -45, 90]) {
      expect(plate({ coneAngle })).toEqual([
        `parts[0].coneAngle: ${coneAngle} is not an angle in deg, more than -45 and less than 45`,
      ]);
    }
    expect(plate({ coneAngle: 4 })).toEqual([]);
  });

  test('behind a domed face the metal stays clear of the axis: 18 sin 40 = 11.6', () => {
    const small = { coneAngle: -40, boltHoles: [], wear: [] };
    expect(plate({ ...small, boreDiameter: 23 })).toEqual([
      'parts[0].coneAngle: -40 is not so slight a cone that a depth of thickness 18 stays clear of the axis in a bore of 23',
    ]);
    expect(plate({ ...small, boreDiameter: 24 })).toEqual([]);
  });

  test('a plate needs its diameters or an outline, and not both', () => {
    const either = 'missing, needs a length in mm, or an outline instead of the two diameters';
    const job = wholeJob();
    job.parts = [{ id: 'bare', kind: 'wear-plate', density: 7.2, thickness: 10, wear: [] }];
    expect(sentences({ format: 1, parts: job.parts })).toEqual([
      `parts[0].outerDiameter: ${either}`,
      `parts[0].boreDiameter: ${either}`,
    ]);
    expect(
      plate({
        outline: {
          edge: [
            [0, 0],
            [9, 0],
            [9, 9],
          ],
        },
        coneAngle: 3,
        boltHoles: [],
        wear: [],
        sections: [],
      }),
    ).toEqual([
      'parts[0].outerDiameter: 320 is to be left out beside an outline',
      'parts[0].boreDiameter: 120 is to be left out beside an outline',
      'parts[0].coneAngle: 3 is to be 0 beside an outline, which is flat',
    ]);
  });
});

test('an outline that could not be read is held against neither the diameters nor the bore', () => {
  const pit = { kind: 'pit', face: 'bore', at: [10, 5], diameter: 6, depth: 1, form: 'bowl' };
  expect(plate({ outline: null, wear: [pit] })).toEqual([
    'parts[0].outline: null is not an outline in braces, { … }',
  ]);
});

describe('outline plate', () => {
  const square = [
    [0, 0],
    [100, 0],
    [100, 100],
    [0, 100],
  ];
  const hole = (x: number, y: number, size: number) => [
    [x, y],
    [x + size, y],
    [x + size, y + size],
    [x, y + size],
  ];

  test('sides do not cross', () => {
    expect(
      outlined(
        {
          edge: [
            [0, 0],
            [100, 100],
            [100, 0],
            [0, 100],
          ],
        },
        { wear: [] },
      ),
    ).toEqual([
      // A bow tie of two equal halves has no area either; that its sides cross is what can be put right.
      'parts[1].outline.edge: the side from [0, 0] to [100, 100] meets the side from [100, 0] to [0, 100]; needs a polygon whose sides do not cross or touch',
    ]);
    expect(
      outlined(
        {
          edge: [
            [0, 0],
            [100, 100],
            [100, 0],
            [0, 80],
          ],
        },
        { wear: [] },
      ),
    ).toEqual([
      'parts[1].outline.edge: the side from [0, 0] to [100, 100] meets the side from [100, 0] to [0, 80]; needs a polygon whose sides do not cross or touch',
    ]);
  });

  test('a spike, and a corner on a side, touch', () => {
    expect(outlined({ edge: [...square, [0, 50], [40, 50], [0, 50]] }, { wear: [] })).toHaveLength(1);
    expect(
      outlined(
        {
          edge: [
            [0, 0],
            [100, 0],
            [100, 100],
            [50, 0],
            [0, 100],
          ],
        },
        { wear: [] },
      ),
    ).toHaveLength(1);
  });

  test('a hole that crosses itself is named', () => {
    expect(
      outlined(
        {
          edge: square,
          holes: [
            [
              [10, 10],
              [40, 40],
              [40, 10],
              [10, 35],
            ],
          ],
        },
        { wear: [] },
      ),
    ).toEqual([
      'parts[1].outline.holes[0]: the side from [10, 10] to [40, 40] meets the side from [40, 10] to [10, 35]; needs a polygon whose sides do not cross or touch',
    ]);
  });

  test('it has three different corners and an area', () => {
    expect(
      outlined({
        edge: [
          [0, 0],
          [9, 0],
        ],
      }),
    ).toEqual(['parts[1].outline.edge: [[0,0],[9,0]] is not a list of 3 to 2000 corners']);
    expect(
      outlined({
        edge: [
          [0, 0],
          [9, 0],
          [9, 0],
          [0, 0],
        ],
      }),
    ).toEqual(['parts[1].outline.edge: a polygon of 2 different corners is not one of 3 or more']);
    expect(
      outlined({
        edge: [
          [0, 0],
          [9, 3],
          [18, 6],
        ],
      }),
    ).toEqual(['parts[1].outline.edge: a polygon without area is not one that encloses an area']);
  });

  test('it is no longer than the largest plate', () => {
    const wide = (x: number) => ({
      edge: [
        [-50, 0],
        [x, 0],
        [0, 90],
      ],
    });
    expect(outlined(wide(10_000), { wear: [] })).toEqual([
      'parts[1].outline.edge: an outline 10050 mm long is not at most 10000 mm',
    ]);
    expect(outlined(wide(9950), { wear: [] })).toEqual([]);
  });

  test('the first corner may be repeated at the end', () => {
    expect(outlined({ edge: [...square, [0, 0]] })).toEqual([]);
  });

  test('holes lie inside the edge and clear of each other', () => {
    const off = 'a hole that leaves the plate is not inside the edge';
    expect(outlined({ edge: square, holes: [hole(200, 10, 20)] })).toEqual([
      `parts[1].outline.holes[0]: ${off}`,
    ]);
    expect(outlined({ edge: square, holes: [hole(90, 10, 20)] })).toEqual([
      `parts[1].outline.holes[0]: ${off}`,
    ]);
    expect(outlined({ edge: square, holes: [hole(10, 10, 60), hole(20, 20, 5)] })).toEqual([
      'parts[1].outline.holes[1]: a hole that overlaps parts[1].outline.holes[0] is not clear of it',
    ]);
    expect(outlined({ edge: square, holes: [hole(10, 10, 20), hole(50, 50, 20)] })).toEqual([]);
  });

  test('bolt holes go with an outline, about its origin', () => {
    const edge = hole(-50, -50, 100);
    const circle = { count: 4, circleDiameter: 80, holeDiameter: 10, startAngle: 45 };
    expect(outlined({ edge }, { boltHoles: [circle], wear: [] })).toEqual([]);
    expect(outlined({ edge }, { boltHoles: [{ ...circle, circleDiameter: 180 }], wear: [] })).toEqual([
      'parts[1].boltHoles[0]: a hole that leaves the plate is not inside the edge',
    ]);
  });

  test('it has no bore', () => {
    const pit = { kind: 'pit', face: 'bore', at: [10, 5], diameter: 6, depth: 1, form: 'bowl' };
    expect(outlined({ edge: square }, { wear: [pit] })).toEqual([
      'parts[1].wear[0].face: "bore" is not a face of this part: "face", the one face of an outline plate',
    ]);
  });
});

describe('marks', () => {
  const pit = { kind: 'pit', face: 'face', at: [100, 20], diameter: 6, depth: 1, form: 'bowl' };
  const patch = { kind: 'patch', face: 'face', first: [90, 130], second: [20, 95], depth: 3.5 };

  test('the face exists, and the message says which there are', () => {
    expect(marked({ ...pit, face: 'rim' })).toEqual([
      'parts[0].wear[0].face: "rim" is not a face of this part: "face" or "bore"',
    ]);
    const job = wholeJob();
    job.parts[2].wear = [
      'vane-6/tip',
      'vane-0/tip',
      'vane-2/nose',
      'shroud/front',
      'vane-5/suction',
      'vane-*/tip',
    ].map((face) => ({ ...pit, face, at: [80, 0] }));
    const faces =
      '"shroud/front", "shroud/back", or vane-1 to vane-5 (vane-* for all) with /pressure, /suction, /tip, /leading-edge, /trailing-edge';
    expect(sentences(job)).toEqual([
      `parts[2].wear[0].face: "vane-6/tip" is not a face of this part: ${faces}`,
      `parts[2].wear[1].face: "vane-0/tip" is not a face of this part: ${faces}`,
      `parts[2].wear[2].face: "vane-2/nose" is not a face of this part: ${faces}`,
    ]);
  });

  test('no depth beyond the wall; as deep as the wall is worn through and no fault', () => {
    expect(marked({ ...pit, depth: 18 })).toEqual([]);
    expect(marked({ ...pit, depth: 18.01 })).toEqual([
      'parts[0].wear[0].depth: 18.01 is not at most the wall, thickness 18',
    ]);
    expect(marked({ ...patch, depth: [2, 19] })).toEqual([
      'parts[0].wear[0].depth[1]: 19 is not at most the wall, thickness 18',
    ]);
    expect(marked({ ...pit, face: 'bore', depth: 101 })).toEqual([
      'parts[0].wear[0].depth: 101 is not at most the wall, 100 between boreDiameter and outerDiameter',
    ]);
    expect(marked({ ...pit, face: 'bore', depth: 100 })).toEqual([]);
    expect(
      marked({
        kind: 'readings',
        face: 'face',
        points: [
          [90, 3, 1],
          [80, 4, 20],
        ],
      }),
    ).toEqual(['parts[0].wear[0].points[1][2]: 20 is not at most the wall, thickness 18']);
    const job = wholeJob();
    job.parts[2].wear = ['vane-1/tip', 'vane-1/pressure', 'shroud/back'].map((face) => ({
      ...pit,
      face,
      depth: 50,
    }));
    expect(sentences(job)).toEqual([
      'parts[2].wear[0].depth: 50 is not at most the wall, heightInlet 40',
      'parts[2].wear[1].depth: 50 is not at most the wall, thicknessOutlet 8',
      'parts[2].wear[2].depth: 50 is not at most the wall, shroudThickness 10',
    ]);
  });

  test('no depth below 0', () => {
    expect(marked({ ...pit, depth: -1 })).toEqual([
      'parts[0].wear[0].depth: -1 is not a depth in mm, at least 0 and at most 10000',
    ]);
    expect(marked({ ...patch, depth: [2, -1] })).toEqual([
      'parts[0].wear[0].depth[1]: -1 is not a depth in mm, at least 0 and at most 10000',
    ]);
    expect(marked({ ...patch, depth: 'deep' })).toEqual([
      'parts[0].wear[0].depth: the text "deep" is not a depth in mm of at least 0, or two of them, [at from, at to]',
    ]);
  });

  test('a range runs upwards, an angle range any way round', () => {
    expect(marked({ ...patch, first: [130, 90] })).toEqual([
      'parts[0].wear[0].first: [130,90] is not from the smaller number to the larger',
    ]);
    expect(marked({ ...patch, second: [95, 20] })).toEqual([]);
    expect(marked({ ...patch, second: [20, 380] })).toEqual([]);
    expect(marked({ ...patch, second: [20, 20] })).toEqual([
      'parts[0].wear[0].second: [20,20] is not two different angles; the whole turn is [0, 360]',
    ]);
    // Back to the same angle may mean nothing or the whole turn: neither is guessed.
    for (const second of [
      [360, 0],
      [370, 10],
    ]) {
      expect(marked({ ...patch, second })).toEqual([
        `parts[0].wear[0].second: [${second}] is not two different angles; the whole turn is [0, 360]`,
      ]);
    }
    expect(marked({ ...patch, second: [0, 360] })).toEqual([]);
    // On the bore the first coordinate is the angle and the second a distance.
    expect(marked({ ...patch, face: 'bore', first: [350, 20], second: [9, 2] })).toEqual([
      'parts[0].wear[0].second: [9,2] is not from the smaller number to the larger',
    ]);
  });

  test('no radius below 0', () => {
    expect(marked({ ...pit, at: [-100, 20] })).toEqual([
      'parts[0].wear[0].at[0]: -100 is not a radius, at least 0',
    ]);
    const stroke = {
      kind: 'stroke',
      face: 'face',
      path: [
        [90, 1],
        [-9, 2],
      ],
      radius: 5,
      depth: 1,
      edge: 'hard',
    };
    expect(marked(stroke)).toEqual(['parts[0].wear[0].path[1][0]: -9 is not a radius, at least 0']);
    expect(marked({ ...patch, first: [-5, 90] })).toEqual([
      'parts[0].wear[0].first[0]: -5 is not a radius, at least 0',
    ]);
  });

  test('a mark that misses its face is no fault', () => {
    expect(marked({ ...pit, at: [4000, 20] })).toEqual([]);
    expect(marked({ ...pit, face: 'bore', at: [20, -300] })).toEqual([]);
  });

  test('an area does not cross itself in the flat picture, across the 0/360 line either', () => {
    const area = { kind: 'area', face: 'face', depth: 1 };
    expect(
      marked({
        ...area,
        outline: [
          [100, 350],
          [100, 10],
          [120, 10],
          [120, 350],
        ],
      }),
    ).toEqual([]);
    expect(
      marked({
        ...area,
        outline: [
          [100, 350],
          [121, 12],
          [100, 10],
          [120, 350],
        ],
      }),
    ).toHaveLength(1);
    const onBore = { ...area, face: 'bore' };
    expect(
      marked({
        ...onBore,
        outline: [
          [350, 2],
          [10, 2],
          [10, 9],
          [350, 9],
        ],
      }),
    ).toEqual([]);
    expect(
      marked({
        ...onBore,
        outline: [
          [350, 2],
          [10, 10],
          [10, 2],
          [350, 9],
        ],
      }),
    ).toEqual([
      'parts[0].wear[0].outline: the side from [350, 2] to [10, 10] meets the side from [10, 2] to [350, 9]; needs a polygon whose sides do not cross or touch',
    ]);
  });

  test('only a stroke that clears needs no depth', () => {
    const stroke = { kind: 'stroke', face: 'face', path: [[90, 1]], radius: 5 };
    expect(marked({ ...stroke, clear: true })).toEqual([]);
    expect(marked(stroke)).toEqual([
      'parts[0].wear[0].depth: missing, needs a depth in mm, or "clear": true',
    ]);
  });

  test('a scan holds as many depths as it says', () => {
    expect(marked({ kind: 'scan', face: 'face', columns: 2, rows: 2, depths: 'AAAAAAAAAAA=' })).toEqual([
      'parts[0].wear[0].depths: base64 of 8 bytes is not the 16 of 2 columns and 2 rows of 4 each',
    ]);
  });

  test('the profile of an edge runs one way', () => {
    const job = wholeJob();
    job.parts[2].wear = [
      {
        kind: 'edge',
        face: 'vane-1/leading-edge',
        profile: [
          [0, 1],
          [20, 2],
          [10, 1],
        ],
      },
    ];
    expect(sentences(job)).toEqual([
      'parts[2].wear[0].profile[2][0]: 10 is not at least 20, where the point before it stands',
    ]);
  });
});

describe('impeller', () => {
  const impeller = (changes: object, vanes: object = {}): string[] => {
    const job = wholeJob();
    job.parts[2] = {
      ...job.parts[2],
      vanes: { ...(job.parts[2].vanes as object), ...vanes },
      wear: [],
      ...changes,
    };
    return sentences(job);
  };

  test('hub within inlet within rim', () => {
    expect(impeller({ outerDiameter: 130 })).toEqual([
      'parts[2].vanes.inletDiameter: 130 is not smaller than outerDiameter 130',
    ]);
    expect(impeller({ hubDiameter: 131 })).toEqual([
      'parts[2].hubDiameter: 131 is not at most vanes.inletDiameter 130',
    ]);
    expect(impeller({ hubDiameter: 130 })).toEqual([]);
  });

  test('blade angles lie between 5 and 85 deg from the tangential direction', () => {
    expect(impeller({}, { inletAngle: 4, outletAngle: 86 })).toEqual(
      [4, 86].map(
        (angle, i) =>
          `parts[2].vanes.${['inletAngle', 'outletAngle'][i]}: ${angle} is not an angle in deg from the tangential direction, at least 5 and at most 85`,
      ),
    );
  });

  test('vanes stand apart at the inlet: pi 130 sin 22 / 8 = 19.1', () => {
    expect(impeller({}, { count: 20 })).toEqual([
      'parts[2].vanes.count: 20 is not at most 19, as many as stand apart at inletDiameter 130',
    ]);
    expect(impeller({}, { count: 19 })).toEqual([]);
  });

  test('the least wall is no more than the thickest there is', () => {
    expect(impeller({ leastThickness: 11 })).toEqual([
      'parts[2].leastThickness: 11 is not at most the thickest wall 10',
    ]);
  });
});

describe('between the sections', () => {
  test('ids are unique and free of the signs that patterns use', () => {
    const job = wholeJob();
    job.parts[1].id = 'plate';
    job.parts[2].id = 'a:b';
    expect(sentences(job)).toEqual([
      'parts[2].id: "a:b" is not a name of 1 to 64 characters on one line, without ":" or "*"',
      'parts[1].id: "plate" is already the id of parts[0]; needs an id of its own',
    ]);
  });

  test('an id can be printed in a table: not blank, on one line, of 64 characters at most', () => {
    const named = (id: string) => plate({ id }).filter((sentence) => sentence.startsWith('parts[0].id'));
    for (const id of ['', '  ', 'a\nb', 'a\u2028b', 'a\u001b[31mb', 'a\u009bb', 'x'.repeat(65)])
      expect(named(id), JSON.stringify(id)).toHaveLength(1);
    for (const id of ['p', 'pump 2, plate', 'Spülplatte "B"', 'x'.repeat(64)])
      expect(named(id), JSON.stringify(id)).toEqual([]);
  });

  test('rotor, clearance and overrules name parts of the job, of the right kind', () => {
    const job = wholeJob();
    job.rotor.part = 'runner';
    job.clearance.plate = 'impeller';
    job.clearance.impeller = 'plate';
    job.repair.overrule = ['casing:face', 'plate:rim'].map((at) => ({ at, point: [1, 2], action: 'fill' }));
    expect(sentences(job)).toEqual([
      'repair.overrule[0].at: "casing:face" is not part:face with the id of a part of this job: "plate", "outlined", "impeller"',
      'repair.overrule[1].at: "plate:rim" is not "plate:" and a face of that part: "face" or "bore"',
      'rotor.part: "runner" is not the id of a part of this job: "plate", "outlined", "impeller"',
      'clearance.plate: "impeller" is not the id of a wear plate of this job: "plate", "outlined"',
      'clearance.impeller: "plate" is not the id of an impeller of this job: "impeller"',
    ]);
  });

  test('an earlier repair names a part of the job, and its mean is no more than its deepest', () => {
    const job = wholeJob();
    job.history.repairs.push({ part: 'casing', date: '2025-02-29', hours: 10, deepest: 1, mean: 1.5 });
    expect(sentences(job)).toEqual([
      'history.repairs[1].date: "2025-02-29" is not a day, "2026-12-01"',
      'history.repairs[1].part: "casing" is not the id of a part of this job: "plate", "outlined", "impeller"',
      'history.repairs[1].mean: 1.5 is not at most deepest, 1',
    ]);
  });

  test('tips are not dressed down to the shroud', () => {
    const job = wholeJob();
    job.clearance.dressTips = 30;
    expect(sentences(job)).toEqual([
      expect.stringMatching(
        /^clearance\.dressTips: 30 is not less than \d+, the height of the vanes where they are lowest$/,
      ),
    ]);
  });

  test('two correction planes have a distance', () => {
    const job = wholeJob();
    delete job.rotor.planeSpacing;
    expect(sentences(job)).toEqual([
      'rotor.planeSpacing: missing, needs the distance between the two planes in mm',
    ]);
  });

  test('a pattern that fits no face is no fault', () => {
    const job = wholeJob();
    job.repair.allowanceFaces = ['casing:*'];
    expect(sentences(job)).toEqual([]);
  });

  test('limits stand in order', () => {
    const job = wholeJob();
    job.clearance.least = 0.7;
    job.filler.leastBuild = 12;
    job.filler.firmsUp = { from: 50, to: 45, at: 25 };
    expect(sentences(job)).toEqual([
      'filler.firmsUp.from: 50 is not at most 45, the field to',
      'filler.leastBuild: 12 is not at most mostBuild 10',
      'clearance.least: 0.7 is not at most 0.6, the field most',
    ]);
  });

  test('densities of the two parts come in pairs, packs with a size', () => {
    const job = wholeJob();
    delete job.filler.densityA;
    delete job.coat.densityB;
    job.coat.packs = [{ label: 'tin' }];
    const pair = 'missing, needs the densities of both parts, or of neither';
    expect(sentences(job)).toEqual([
      `filler.densityA: ${pair}`,
      `coat.densityB: ${pair}`,
      'coat.packs[0].mass: missing, needs a mass in g, or a volume in cm3 in its place',
    ]);
  });

  test('a pack has a mass or a volume, not both', () => {
    const job = wholeJob();
    job.filler.packs = [{ label: 'kit', mass: 1000, volume: 400 }];
    expect(sentences(job)).toEqual([
      'filler.packs[0].mass: 1000 is to be left out beside a volume: a pack has one of the two',
    ]);
  });
});
