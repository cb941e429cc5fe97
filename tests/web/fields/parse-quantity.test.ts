import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatQuantity } from '../../../web/fields/format-quantity.ts';
import { parseQuantity } from '../../../web/fields/parse-quantity.ts';
import { type Quantity, type ScreenUnits, shownUnit, toFile } from '../../../web/fields/quantity-units.ts';

const read = (text: string, quantity: Quantity = 'length', units: ScreenUnits = 'mm') => {
  const parsed = parseQuantity(text, quantity, units);
  return 'value' in parsed ? parsed.value : parsed.fault;
};
const faultOf = (text: string, quantity: Quantity = 'length', units: ScreenUnits = 'mm') => {
  const parsed = parseQuantity(text, quantity, units);
  return 'fault' in parsed ? parsed.fault : `taken as ${parsed.value}`;
};

const QUANTITIES: readonly Quantity[] = [
  'length',
  'angle',
  'density',
  'volume',
  'percent',
  'minutes',
  'temperature',
  'mass',
  'rate',
  'film',
  'plain',
];
const SCREENS: readonly ScreenUnits[] = ['mm', 'in'];
const anyQuantity = fc.constantFrom(...QUANTITIES);
const anyScreen = fc.constantFrom(...SCREENS);

describe('a length as typed on a screen in mm', () => {
  it.each<[string, number]>([
    ['3.5', 3.5],
    ['3,5', 3.5],
    ['123,45', 123.45],
    ['12,3', 12.3],
    ['123.45', 123.45],
    ['12,5', 12.5],
    // A mark alone is a decimal mark, however many digits follow.
    ['1,234', 1.234],
    ['1.234', 1.234],
    ['3.5 mm', 3.5],
    ['3,5mm', 3.5],
    [' 3.5  MM ', 3.5],
    ['.5', 0.5],
    [',5', 0.5],
    ['3.', 3],
    ['+3', 3],
    ['007', 7],
    ['0', 0],
    ['-0', 0],
    ['-2.5', -2.5],
    ['\u22122.5', -2.5],
    ['1.2 cm', 12],
    ['0,32 m', 320],
    ['5 thou', 0.127],
    ['5 mil', 0.127],
  ])('%s is %d mm', (text, mm) => {
    expect(read(text)).toBeCloseTo(mm, 12);
  });

  it('never gives minus zero, which a file would spell differently from zero', () => {
    expect(Object.is(read('-0'), 0)).toBe(true);
    expect(Object.is(read('-0.0 in'), 0)).toBe(true);
  });
});

// 1 in = 25.4 mm exactly (international yard and pound agreement, 1959).
describe('inches', () => {
  it.each<[string, number]>([
    ['1/8 in', 3.175],
    ['1 1/2 in', 38.1],
    ['1-1/2"', 38.1],
    ['1 - 1/2 in', 38.1],
    ['0.5in', 12.7],
    ['0,5"', 12.7],
    ['0.5 in.', 12.7],
    ['3 inches', 76.2],
    ['-1 1/2 in', -38.1],
    ['\u00bd in', 12.7],
    ['1\u00bd"', 38.1],
    ['1\u20448 in', 3.175],
    ['3/4\u2033', 19.05],
    ['3/4\u201d', 19.05],
    ["3/4''", 19.05],
    ['5/4 in', 31.75],
  ])('%s is %d mm, whatever the screen shows', (text, mm) => {
    expect(read(text, 'length', 'mm')).toBeCloseTo(mm, 12);
    expect(read(text, 'length', 'in')).toBeCloseTo(mm, 12);
  });

  it('a number without a unit is in the unit of the screen', () => {
    expect(read('1/8', 'length', 'in')).toBeCloseTo(3.175, 12);
    expect(read('2', 'length', 'in')).toBeCloseTo(50.8, 12);
    expect(read('2 mm', 'length', 'in')).toBe(2);
  });

  it('a fraction without a unit is not guessed at on a screen in mm', () => {
    expect(faultOf('1/8')).toBe('"1/8" needs its unit here. Type 1/8 in, or a number of mm like 3.5.');
    expect(read('1/2 mm')).toBe(0.5);
  });
});

describe('other quantities, in the unit of the file', () => {
  it.each<[string, Quantity, number]>([
    ['22,5', 'angle', 22.5],
    ['22.5\u00b0', 'angle', 22.5],
    ['22.5 deg', 'angle', 22.5],
    ['7,2', 'density', 7.2],
    ['7.2 g/cm\u00b3', 'density', 7.2],
    ['7.2 g / cm3', 'density', 7.2],
    ['7200 kg/m3', 'density', 7.2],
    ['400 mL', 'volume', 400],
    ['400 cm3', 'volume', 400],
    ['0.4 l', 'volume', 400],
    ['15 %', 'percent', 15],
    ['20 min', 'minutes', 20],
    ['8 h', 'minutes', 480],
    ['21', 'temperature', 21],
    ['21 \u00b0C', 'temperature', 21],
    ['-5 degC', 'temperature', -5],
    // By definition of the scale: 0 degC = 32 degF, 100 degC = 212 degF.
    ['32 degF', 'temperature', 0],
    ['68 \u00b0F', 'temperature', 20],
    ['212F', 'temperature', 100],
    ['300 g', 'mass', 300],
    ['1,5 kg', 'mass', 1500],
    // Avoirdupois ounce, 28.349523125 g exactly (the same agreement of 1959).
    ['2 oz', 'mass', 56.69904625],
    ['20', 'rate', 20],
    ['20 mL/min', 'rate', 20],
    ['1.2 L/min', 'rate', 1200],
    ['250 \u00b5m', 'film', 250],
    ['250 \u03bcm', 'film', 250],
    ['250 um', 'film', 250],
    ['10 mil', 'film', 254],
    ['0.25 mm', 'film', 250],
    ['2,5', 'plain', 2.5],
    ['1/4', 'plain', 0.25],
  ])('%s as %s is %d', (text, quantity, value) => {
    expect(read(text, quantity)).toBeCloseTo(value, 10);
  });

  it('a film is in mil where lengths are in inches', () => {
    expect(read('10', 'film', 'in')).toBeCloseTo(254, 12);
    expect(read('10', 'film', 'mm')).toBe(10);
  });
});

describe('what is refused, in words', () => {
  it.each<[string, string]>([
    ['', 'This is empty. Type a number, like 3.5 mm.'],
    ['   ', 'This is empty. Type a number, like 3.5 mm.'],
    ['thick', '"thick" is not a number. Type one like 3.5 mm.'],
    ['NaN', '"NaN" is not a number. Type one like 3.5 mm.'],
    ['Infinity', '"Infinity" is not a number. Type one like 3.5 mm.'],
    ['-Infinity', '"-Infinity" is not a number. Type one like 3.5 mm.'],
    ['\u221e', '"\u221e" is not a number. Type one like 3.5 mm.'],
    ['--3', '"--3" is not a number. Type one like 3.5 mm.'],
    ['3-', '"3-" is not a number. Type one like 3.5 mm.'],
    ['.', '"." is not a number. Type one like 3.5 mm.'],
    ['1/0 in', '"1/0 in" is not a number. Type one like 3.5 mm.'],
    ['1/2/3 in', '"1/2/3 in" is not a number. Type one like 3.5 mm.'],
    ['3.5+2', '"3.5+2" is not a number. Type one like 3.5 mm.'],
    ['1 234/5 in', '"1 234/5 in" is not a number. Type one like 3.5 mm.'],
    ['1e3', '"1e3" has a power of ten. Type the number out, like 3.5.'],
    ['1E-3 mm', '"1E-3 mm" has a power of ten. Type the number out, like 3.5.'],
    ['1e999', '"1e999" has a power of ten. Type the number out, like 3.5.'],
    ['0x10', '"0x10" has a unit that does not fit here. Use mm, cm, m, in or thou.'],
    ['3 kg', '"3 kg" has a unit that does not fit here. Use mm, cm, m, in or thou.'],
    ['3 mm 4', '"3 mm 4" has a unit that does not fit here. Use mm, cm, m, in or thou.'],
  ])('"%s"', (text, sentence) => {
    expect(faultOf(text)).toBe(sentence);
  });

  it.each<[string, string]>([
    ['1.234,5', '1234.5'],
    ['1,234.5', '1234.5'],
    ['1.234.567', '1234567'],
    ['1,234,567.8', '1234567.8'],
    ['1 234', '1234'],
    ['1 234,5', '1234.5'],
    ['1\u00a0234', '1234'],
    ['1\u202f234,5', '1234.5'],
    ["1'234", '1234'],
    ['1\u2019234.5', '1234.5'],
    ['1_234', '1234'],
  ])('marks for thousands: "%s", with %s mm as the example', (text, example) => {
    expect(faultOf(text)).toContain(`Type it without marks for thousands, like ${example} mm.`);
  });

  it('a number too large for the machine, and digits of no end', () => {
    expect(faultOf('9'.repeat(400))).toContain('is not a number');
  });

  it('a unit where only a bare number fits', () => {
    expect(faultOf('3 mm', 'plain')).toBe('"3 mm" has a unit. Type the number alone, like 3.5.');
  });
});

describe('the range', () => {
  const inRange = (text: string, units: ScreenUnits) =>
    parseQuantity(text, 'length', units, { min: 0, max: 320 });

  it('takes its ends', () => {
    expect(inRange('0', 'mm')).toEqual({ value: 0 });
    expect(inRange('320', 'mm')).toEqual({ value: 320 });
  });

  it('says in the unit of the screen what fits', () => {
    expect(inRange('-3', 'mm')).toEqual({ fault: '"-3" is less than 0 mm. Type 0 mm or more.' });
    expect(inRange('330', 'mm')).toEqual({ fault: '"330" is more than 320 mm. Type 320 mm or less.' });
    expect(inRange('13', 'in')).toEqual({ fault: '"13" is more than 12.59 in. Type 12.59 in or less.' });
  });
});

describe('properties', () => {
  /** Digits as a person types them, with one decimal mark at most. */
  const plainNumber = fc
    .tuple(fc.boolean(), fc.integer({ min: 0, max: 99_999 }), fc.option(fc.integer({ min: 0, max: 9999 })))
    .map(([isNegative, whole, part]) => `${isNegative ? '-' : ''}${whole}${part === null ? '' : `.${part}`}`);

  it('comma and dot mean the same for every quantity and screen', () => {
    fc.assert(
      fc.property(plainNumber, anyQuantity, anyScreen, (text, quantity, units) => {
        const parsed = parseQuantity(text, quantity, units);
        expect(parsed).toHaveProperty('value');
        expect(parseQuantity(text.replace('.', ','), quantity, units)).toEqual(parsed);
      }),
    );
  });

  it('a bare number is exactly the number in the unit of the screen', () => {
    fc.assert(
      fc.property(plainNumber, anyQuantity, anyScreen, (text, quantity, units) => {
        const value = toFile(Number(text), shownUnit(quantity, units));
        expect(parseQuantity(text, quantity, units)).toEqual({ value: value === 0 ? 0 : value });
      }),
    );
  });

  it('thousands set apart are never taken', () => {
    const groups = fc.array(fc.integer({ min: 0, max: 999 }), { minLength: 1, maxLength: 3 });
    const marks: readonly (readonly [group: string, decimal: string])[] = [
      ['.', ','],
      [',', '.'],
      [' ', ','],
      ['\u00a0', '.'],
      ["'", '.'],
      ['_', '.'],
    ];
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 999 }),
        groups,
        fc.option(fc.integer({ min: 0, max: 99 })),
        fc.constantFrom(...marks),
        anyQuantity,
        anyScreen,
        (first, rest, part, [group, decimal], quantity, units) => {
          // One comma or dot alone is a decimal mark: it needs a second mark to be a mark for thousands.
          fc.pre(!/[.,]/.test(group) || rest.length > 1 || part !== null);
          const grouped = [String(first), ...rest.map((digits) => String(digits).padStart(3, '0'))].join(
            group,
          );
          const text = part === null ? grouped : `${grouped}${decimal}${part}`;
          expect(faultOf(text, quantity, units)).toContain('without marks for thousands');
        },
      ),
    );
  });

  it('any text gives a finite value in the range or a sentence', () => {
    const scraps = fc.string({ unit: fc.constantFrom(...'0123456789.,-+/ "\'einmcf°%½'), maxLength: 12 });
    fc.assert(
      fc.property(fc.oneof(scraps, fc.string()), anyQuantity, anyScreen, (text, quantity, units) => {
        const parsed = parseQuantity(text, quantity, units, { min: 0, max: 500 });
        if ('value' in parsed) expect(parsed.value >= 0 && parsed.value <= 500).toBe(true);
        else expect(parsed.fault).toMatch(/^.+\.$/s);
      }),
    );
  });

  it('what is shown, typed again, is the value within the last digit shown', () => {
    const sizes = fc.double({ min: -1e6, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(sizes, anyQuantity, anyScreen, (value, quantity, units) => {
        const unit = shownUnit(quantity, units);
        const back = (as: 'figure' | 'typed') =>
          Number(read(formatQuantity(value, quantity, units, { as }), quantity, units));
        const perShown = unit.times / unit.over;
        // A little over half a step: the value may lie on the border, give or take a rounding error of its own size.
        const slack = Math.abs(value) * 1e-14;
        expect(Math.abs(back('figure') - value)).toBeLessThanOrEqual(
          (unit.resolution / 2) * perShown * 1.0001 + slack,
        );
        expect(Math.abs(back('typed') - value)).toBeLessThanOrEqual(
          (10 ** -unit.fieldDigits / 2) * perShown * 1.0001 + slack,
        );
      }),
    );
  });
});
