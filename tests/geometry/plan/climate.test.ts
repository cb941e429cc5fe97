/**
 * Dew points: Magnus with the WMO coefficients (WMO Guide No. 8, Annex 4.B, as an instrument manual quotes them) against two other formulations,
 * ASHRAE 2017 (Hyland and Wexler) and Wagner and Pruss 2002, recomputed. Limits: 3 degC and 85 %, ISO 8502-4 and ISO 12944-7 (from memory).
 */
import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import type { Climate } from '../../../geometry/job/job.ts';
import { climateWarnings, dewPointOf, humidityFor, judgeClimate } from '../../../geometry/plan/climate.ts';
import { COAT, FILLER } from '../material/generic-materials.ts';

const weather = (air: number, surface: number, humidity: number): Climate => ({
  air,
  surface,
  humidity: humidity / 100,
  takenAt: null,
});
const judged = (air: number, surface: number, humidity: number) =>
  judgeClimate(weather(air, surface, humidity), []);

describe('dew point', () => {
  // Two decimals as recomputed from the formula in other code.
  it.each([
    [5, [-7.5, -4.58, -2.13, -0.02, 1.83, 2.69, 3.5]],
    [10, [-3, 0.04, 2.58, 4.78, 6.71, 7.59, 8.43]],
    [15, [1.49, 4.65, 7.29, 9.57, 11.58, 12.5, 13.37]],
    [20, [5.98, 9.26, 12, 14.36, 16.44, 17.4, 18.31]],
    [25, [10.46, 13.85, 16.69, 19.15, 21.31, 22.3, 23.24]],
    [30, [14.93, 18.44, 21.39, 23.93, 26.17, 27.2, 28.18]],
    [35, [19.38, 23.02, 26.07, 28.71, 31.03, 32.1, 33.11]],
  ])('at %d degC and 40, 50, 60, 70, 80, 85, 90 %', (air, wants) => {
    [40, 50, 60, 70, 80, 85, 90].forEach((humidity, i) => {
      expect(Math.abs(dewPointOf(air, humidity / 100) - wants[i])).toBeLessThan(0.0051);
    });
  });

  it.each([
    [20, 50, 9.2724, 9.2735],
    [21, 55, 11.6243, 11.6252],
    [25, 60, 16.7011, 16.7018],
    [30, 85, 27.1986, 27.1988],
    [5, 90, 3.4985, 3.4987],
  ])(
    'at %d degC and %d % it is within 0.05 of ASHRAE and of Wagner and Pruss',
    (air, humidity, ashrae, wagner) => {
      const dewPoint = dewPointOf(air, humidity / 100);
      expect(Math.abs(dewPoint - ashrae)).toBeLessThan(0.05);
      expect(Math.abs(dewPoint - wagner)).toBeLessThan(0.05);
    },
  );

  test('saturated air has its own temperature as its dew point, drier air a lower one, and the inverse undoes it', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -20, max: 50, noNaN: true }),
        fc.double({ min: 0.02, max: 1, noNaN: true }),
        (air, humidity) => {
          expect(dewPointOf(air, 1)).toBeCloseTo(air, 9);
          expect(dewPointOf(air, humidity)).toBeLessThanOrEqual(air + 1e-9);
          expect(humidityFor(air, dewPointOf(air, humidity))).toBeCloseTo(humidity, 9);
        },
      ),
    );
  });
});

describe('judgeClimate', () => {
  it('is fit at 20 degC and 50 %, with the dew point and the margin', () => {
    const verdict = judged(20, 19, 50);
    expect(verdict).toMatchObject({ fit: true, reasons: [], changes: [] });
    expect(verdict?.dewPoint).toBeCloseTo(9.2552, 4);
    expect(verdict?.margin).toBeCloseTo(19 - 9.2552, 4);
  });

  // Derived: at air temperature the 3 degC alone stop work at 82.88 % for 20 degC, 81.63 % for 10 degC, 84.01 % for 30 degC.
  it.each([
    [10, 81.63],
    [20, 82.88],
    [30, 84.01],
  ])('a part at the air temperature of %d degC may be coated up to %d %', (air, limit) => {
    expect(judged(air, air, limit - 0.02)?.fit).toBe(true);
    expect(judged(air, air, limit + 0.02)?.fit).toBe(false);
  });

  it('85 % binds when the part is warmer than the air', () => {
    expect(judged(20, 25, 85)?.fit).toBe(true);
    expect(judged(20, 25, 85.1)?.reasons).toHaveLength(1);
  });

  it('says by how much the part is too cold, and that water stands on one below the dew point', () => {
    expect(judged(20, 15, 75)?.reasons).toEqual([
      'the part at 15 degC is 0.4 degC below the dew point of 15.4 degC, so water stands on it',
    ]);
    expect(judged(20, 17, 75)?.reasons).toEqual([
      'the part at 17 degC is only 1.6 degC above the dew point of 15.4 degC; at least 3 degC are wanted',
    ]);
  });

  it('says what to change, and what it says is enough', () => {
    const verdict = judged(20, 15, 75);
    expect(verdict?.fit).toBe(false);
    const [warm, dry] = (verdict?.changes ?? []).map((change) =>
      Number(/(\d+(?:\.\d+)?) (?:degC|%)/.exec(change)?.[1]),
    );
    expect(judged(20, warm, 75)?.fit).toBe(true);
    expect(judged(20, warm - 0.2, 75)?.fit).toBe(false);
    expect(judged(20, 15, dry)?.fit).toBe(true);
    expect(judged(20, 15, dry + 1.1)?.fit).toBe(false);
  });

  it('asks for the range that each material is given, and only then', () => {
    const used = [
      { what: 'putty', material: { ...FILLER, surfaceRange: [10, 30] as const } },
      { what: 'coat', material: { ...COAT, surfaceRange: [12, 35] as const } },
    ];
    expect(judgeClimate(weather(12, 11, 50), used)?.reasons).toEqual([
      'the part at 11 degC is colder than the coat takes, 12 degC',
    ]);
    expect(judgeClimate(weather(30, 33, 40), used)?.reasons).toEqual([
      'the part at 33 degC is warmer than the putty takes, 30 degC',
    ]);
    expect(judgeClimate(weather(12, 11, 50), [{ what: 'putty', material: FILLER }])?.fit).toBe(true);
  });

  it('has no answer without air, part and humidity, and says which is missing', () => {
    const partly: Climate = { ...weather(20, 20, 50), surface: null };
    expect(judgeClimate(partly, [])).toBeNull();
    expect(climateWarnings(partly, null, null)).toMatchObject([
      { code: 'climate-incomplete', field: 'climate.surface' },
    ]);
    expect(judgeClimate(null, [])).toBeNull();
    expect(climateWarnings(null, null, null)).toEqual([]);
    // The temperature of the part alone is for the times: nothing is asked of the weather.
    const alone: Climate = { air: null, humidity: null, surface: 20, takenAt: null };
    expect(climateWarnings(alone, judgeClimate(alone, []), null)).toEqual([]);
    const dry = weather(20, 20, 0);
    expect(climateWarnings(dry, judgeClimate(dry, []), null)).toMatchObject([{ code: 'climate-dry' }]);
  });

  // Readings hold for 4 h: common practice. By the shop clock, over midnight.
  it('asks to read again what is more than 4 h old when the work begins', () => {
    const read: Climate = { ...weather(20, 19, 50), takenAt: '2026-12-01T22:30' };
    const codes = (start: string | null) =>
      climateWarnings(read, judgeClimate(read, []), start).map(({ code }) => code);
    expect(codes('2026-12-02T02:30')).toEqual([]);
    expect(codes('2026-12-02T02:31')).toEqual(['climate-stale']);
    expect(codes('2026-12-01T07:00')).toEqual([]);
    expect(codes(null)).toEqual([]);
  });
});
