import { describe, expect, test } from 'vitest';
import { hydraulicPower, specificSpeed } from '../../../geometry/flow-test/pump-power.ts';

// P = rho g Q H, definition. The first row is a textbook exercise with g 9.81 (67.3 hp at the shaft at 60 %); the others worked out by other code.
describe('hydraulic power', () => {
  test.each([
    [1000, 130, 85, 30.1113 * (9.80665 / 9.81)],
    [1000, 100, 32, 8.71702],
    [998, 90, 12.5, 3.05845],
    [1050, 45, 22, 2.83167],
  ])('%f kg/m3, %f m3/h, %f m: %f kW', (density, flow, head, power) => {
    expect(hydraulicPower(density, flow, head) / power).toBeCloseTo(1, 5);
  });

  test.each([
    [1000, 100, 32, 11.6, 75.1467],
    [998, 90, 12.5, 5.2, 58.8163],
    [1050, 45, 22, 4.9, 57.7892],
  ])('%f kg/m3, %f m3/h, %f m from %f kW is %f %% efficient', (density, flow, head, power, efficiency) => {
    expect((hydraulicPower(density, flow, head) / power) * 100).toBeCloseTo(efficiency, 4);
  });

  test('US units: 3960 hp for 1 gpm at 1 ft of water, as the handbooks have it', () => {
    // 33000 ft.lbf/min over 8.3304 lb a US gallon = 3961.4; books round to 3960, others print 3956. 998.2 kg/m3.
    const horsepower = hydraulicPower(998.2, 0.2271247, 0.3048) / 0.745699872;
    expect((1 / horsepower - 3960) / 3960).toBeLessThan(1e-3);
    expect((1 / horsepower - 3956) / 3956).toBeGreaterThan(0);
  });
});

// Factors between the three spellings derived from 231 cubic inches and 0.3048 m.
describe('specific speed', () => {
  test('1450 r/min, 60 m3/h, 14.1 m: nq 25.7263, 1328.64 in US units, 0.486145 without', () => {
    const found = specificSpeed(1450, 60, 14.1);
    expect(found?.nq).toBeCloseTo(25.7263, 4);
    expect(found?.us).toBeCloseTo(1328.64, 2);
    expect(found?.dimensionless).toBeCloseTo(0.486145, 6);
  });

  test('1180 r/min, 4500 gpm, 85 ft: 2827.64 in US units', () => {
    // Data of a published exercise; gpm and ft by their definitions.
    expect(specificSpeed(1180, 4500 * 0.003785411784 * 60, 85 * 0.3048)?.us).toBeCloseTo(2827.64, 2);
  });

  test('without flow or head there is none', () => {
    expect(specificSpeed(1450, 0, 14)).toBeNull();
    expect(specificSpeed(1450, 60, 0)).toBeNull();
  });
});
