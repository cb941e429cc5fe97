import { describe, expect, test } from 'vitest';
import { balance } from '../../../geometry/balance/balance.ts';
import { type BalanceResult, balanceResult } from '../../../geometry/sheet/balance-result.ts';
import {
  balanceBasis,
  balanceCautions,
  balanceHeadline,
  balanceLines,
  PROPOSAL_HEADS,
  proposalRows,
  VECTOR_HEADS,
  vectorRows,
} from '../../../geometry/sheet/balance-text.ts';
import { chanceWords, correctionWords } from '../../../geometry/sheet/balance-words.ts';
import { type Made, ROTOR, rotorInput } from '../balance/made-rotor.ts';
import { evenly, madeImpeller } from '../made.ts';

const of = (made: Made): BalanceResult => balanceResult(balance(rotorInput(made)));
/** 2 mm off one side and filled flush: 2730 g.mm at 293 deg added, 5816 at 113 deg net, 589 permitted. */
const OVER = of({ marks: [evenly('vane-1/pressure', 2)] });
const WITHIN = of({ marks: [evenly('vane-1/tip', 0.2)] });
const text = (result: BalanceResult) => balanceLines(result).join('\n');

describe('the headline', () => {
  test('gives the verdict, the vector and the limit', () => {
    const { lead, notes } = balanceHeadline(OVER);
    expect(lead).toBe('Balance: over the limit, 5816 g.mm at 113 deg of 589 g.mm permitted');
    // 5.81635 x 23.0565 N, of 14.2 kg x 9.80665 N/kg.
    expect(notes[0]).toBe(
      "pulls with 134 N at speed, 96 % of the rotor's weight; chance of being over: over 99.9 %",
    );
    expect(notes[1]).toContain('indicative');
    expect(balanceHeadline(WITHIN).lead).toMatch(/^Balance: within the limit, \d+ g\.mm at 112 deg of 589/);
  });
});

describe('the sentences', () => {
  test('say both truths of the filler', () => {
    const said = balanceLines(OVER);
    expect(said[0]).toBe('What the filler adds: 2730 g.mm at 293 deg. The filler alone is heavy there.');
    expect(said[1]).toBe(
      'What is missing against the part as new: metal lost makes 8546 g.mm at 113 deg, on the far side of the wear.',
    );
    expect(said[2]).toBe(
      'Filler weighs 0.32 of the metal it replaces, so a vane filled flush is still light there. Worn alike on all vanes, the pulls cancel, filled or not.',
    );
    expect(said[3]).toBe('Together the shaft feels 5816 g.mm at 113 deg.');
  });

  test('say how far over, or how sure of being within', () => {
    expect(text(OVER)).toContain(
      'That is 9.87 times the limit of 589 g.mm. Uncertain by +- 109 g.mm (2 se).',
    );
    expect(text(WITHIN)).toMatch(/That is 25 % of the limit of 589 g\.mm, and surely within it\./);
    const unsure = of({ marks: [evenly('vane-1/pressure', 0.19)], rotor: { densityError: 0.2 } });
    expect(text(unsure)).toMatch(/but it may be over: a chance of \d+\.\d %/);
  });

  test('count in what was found before and what was taken', () => {
    const said = text(
      of({
        marks: [evenly('vane-1/tip', 0.2)],
        rotor: {
          asFound: { amount: 50, angle: 1 },
          corrections: [{ kind: 'holes', face: 'shroud/back', at: [[130, 2]], radius: 2, depth: 3 }],
        },
      }),
    );
    expect(said).toContain('As found before the repair: 50.0 g.mm at 57 deg, counted in.');
    expect(said).toMatch(
      /Before correction \d+ g\.mm at \d+ deg; the corrections taken make 35\.\d g\.mm at 295 deg\./,
    );
    expect(said).toMatch(
      /Taken: Drill a flat-bottomed hole of 4 mm, 3 mm deep, .* \(0\.27 g off, leaves 7\.00 mm\)\./,
    );
  });

  test('say when the mass is an estimate, and what each plane gets', () => {
    const input = rotorInput({
      marks: [evenly('vane-1/pressure', 0.4)],
      rotor: { planes: 2, planeSpacing: 60 },
    });
    const said = text(balanceResult(balance({ ...input, isMassEstimated: true })));
    expect(said).toContain('The rotor was not weighed: 14.2 kg is the part alone');
    expect(said).toMatch(/Plane A at z 0 mm: \d+ g\.mm at \d+ deg of \d+ g\.mm permitted there, over\./);
    expect(said).toContain('take out the pull, not the couple');
  });

  test('say why a way is not possible, the same reason once', () => {
    const thin = of({
      shape: madeImpeller({}, { shroudThickness: 4, leastThickness: 3.9 }),
      marks: [evenly('vane-1/pressure', 0.3)],
    });
    expect(text(thin)).toContain(
      'Not possible: holes in the rim; the rim is 4 mm thick, and the smallest drill of 4 mm needs 8 mm.',
    );
    const open = of({
      shape: madeImpeller({}, { shroudThickness: 0 }),
      marks: [evenly('vane-1/pressure', 1)],
    });
    expect(text(open)).toMatch(
      /On an open impeller metal can only come off the vanes: [\d.]+ g off vane 4 at radius 150 mm, /,
    );
    expect(text(open).match(/there is no shroud/g)).toHaveLength(1);
  });

  test('a part without wear has nothing to say of pulls', () => {
    expect(balanceLines(of({}))[0]).toBe('Nothing that is worn or filled pulls to one side.');
  });
});

describe('the rows', () => {
  test('one a vector, as wide as their heads', () => {
    const rows = vectorRows(OVER);
    expect(rows).toEqual([
      ['added by the filler', '2730', '293'],
      ['missing as metal', '8546', '113'],
      ['net', '5816', '113'],
      ['permitted', '589', ''],
    ]);
    for (const row of rows) expect(row).toHaveLength(VECTOR_HEADS.length);
  });

  test('one a proposal, least work first', () => {
    const rows = proposalRows(OVER);
    expect(rows.length).toBe(OVER.correction.proposals.length);
    expect(rows.map(([number]) => number)).toEqual(rows.map((_, i) => String(i + 1)));
    for (const row of rows) {
      expect(row).toHaveLength(PROPOSAL_HEADS.length);
      expect(row[row.length - 1]).toMatch(/^[A-Z][a-z ]+: (Drill|Skim|Build up) .*\.$/);
    }
    expect(proposalRows(WITHIN)).toEqual([]);
  });
});

describe('corrections as orders', () => {
  const place = { between: [3, 4], behind: null, tip: 7.1 } as const;
  test('holes in the back and in the rim', () => {
    expect(
      correctionWords(
        {
          kind: 'holes',
          face: 'shroud/back',
          at: [
            [130, 92.5],
            [130, 106],
            [130, 120],
          ],
          diameter: 10,
          depth: 5.1,
        },
        0,
        place,
      ),
    ).toBe(
      'Drill 3 flat-bottomed holes of 10 mm, 5.1 mm deep, into the back of the shroud at radius 130 mm, at 92.5, 106 and 120 deg, between vanes 3 and 4; a usual drill takes as much with its tip 7.1 mm deep',
    );
    expect(
      correctionWords({ kind: 'holes', face: 'shroud/rim', at: [[113, 5]], diameter: 5, depth: 12 }, 0, {
        between: null,
        behind: null,
        tip: null,
      }),
    ).toBe(
      'Drill a flat-bottomed hole of 5 mm, 12 mm deep, into the rim 5 mm below the vane side, at 113 deg',
    );
  });
  test('a skim and a pad', () => {
    const sector = { first: [120, 145] as const, second: [350, 370] as const };
    expect(correctionWords({ kind: 'skim', face: 'shroud/back', ...sector, depth: 0.6 }, 0, place)).toBe(
      'Skim 0.6 mm off the back of the shroud, radius 120 to 145 mm, angle 350 to 370 deg, between vanes 3 and 4',
    );
    expect(
      correctionWords(
        { kind: 'putty', face: 'shroud/front', ...sector, height: 4, density: 2.5 },
        11.56,
        place,
      ),
    ).toBe(
      'Build up 11.6 g of metal-filled putty of 2.5 g/cm3 on the vane side of the shroud, radius 120 to 145 mm, angle 350 to 370 deg, between vanes 3 and 4, 4 mm high; weigh it, the mass is what counts',
    );
  });
});

test.each([
  [0, 'none'],
  [1e-6, 'under 0.1 %'],
  [0.0368, '3.7 %'],
  [0.9995, 'over 99.9 %'],
  [1, 'certain'],
])('a chance of %f reads %s', (chance, words) => {
  expect(chanceWords(chance)).toBe(words);
});

test('the caution stands with every verdict; one more where metal is to come off', () => {
  expect(balanceCautions(WITHIN).map(({ code }) => code)).toEqual(['balance-indicative']);
  expect(balanceCautions(OVER).map(({ code }) => code)).toEqual(['balance-indicative', 'balance-correction']);
  for (const { text: said, source } of balanceCautions(OVER)) {
    expect(said).not.toBe('');
    expect(source).toContain('Common practice');
  }
  expect(balanceCautions(OVER)[0].text).toContain('balancing machine');
});

test('how it was worked out names the formula, its numbers and its source', () => {
  const basis = balanceBasis(OVER, ROTOR);
  expect(basis.map(({ what }) => what)).toEqual([
    'Unbalance',
    'Permitted unbalance',
    'Force',
    'Chance of being over',
  ]);
  expect(basis[1]).toEqual({
    what: 'Permitted unbalance',
    how: '1000 x G 6.3 mm/s x 14.2 kg / 152 rad/s = 589 g.mm, an eccentricity of 41.5 um',
    source: 'ISO 21940-11:2016, 6.3.3',
  });
  expect(basis[2].how).toBe('5816 g.mm x (152 rad/s)^2 x 1e-6 = 134 N');
  expect(basis[3].how).toContain('2 % of the 2730 g.mm added');
});
