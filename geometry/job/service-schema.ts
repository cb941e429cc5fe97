/** What the job file says about the parts in service: the rotor, the gap, the weather on the day and the pump's flow test. */
import { angle, count, length, list, money, quantity, record, temperature, text } from './field-kinds.ts';

const partId = text('the id of a part', 64);
const gap = quantity('a gap in mm', { least: 0, most: 100 });
const speed = quantity('a speed in r/min', { above: 0, most: 100_000 });

export const rotorSchema = record('the rotor', {
  part: partId.describe('id of the impeller'),
  mass: quantity('a mass in kg', { above: 0, most: 100_000 }).describe('Of the whole rotor, kg'),
  speed: speed.describe('r/min'),
  grade: quantity('a balance grade in mm/s', { above: 0, most: 4000 }).describe(
    'Balance quality grade G, mm/s',
  ),
  planes: count('a number of planes', 1, 2).optional().describe('Correction planes; 1 when left out'),
  planeSpacing: length.optional().describe('Between the two correction planes, mm'),
  asFound: record('an unbalance', {
    amount: quantity('an unbalance in g.mm', { least: 0, most: 1e9 }).describe('g.mm'),
    angle: angle.describe('deg'),
  })
    .optional()
    .describe('Measured before the repair'),
});

export const clearanceSchema = record('the clearance', {
  plate: partId.describe('id of the wear plate'),
  impeller: partId.describe('id of the impeller'),
  asNew: gap.describe('Axial gap with both parts as new, mm'),
  least: gap.describe('Narrowest gap that runs free, mm'),
  most: gap.describe('Widest gap that is worth running, mm'),
  shim: quantity('a thickness in mm', { least: -100, most: 100 }).optional().describe('mm; 0 when left out'),
  tolerance: gap.optional().describe('Of the gap as set, mm; 0 when left out'),
});

export const climateSchema = record('the climate', {
  air: temperature.optional().describe('degC'),
  surface: temperature.optional().describe('Of the part, degC'),
  humidity: quantity('a relative humidity in %', { least: 0, most: 100 }).optional().describe('%'),
});

const testPoint = record('a point of the test', {
  flow: quantity('a flow in m3/h', { least: 0, most: 1e6 }).describe('m3/h'),
  head: quantity('a head in m', { least: 0, most: 1e5 }).describe('m'),
  power: quantity('a power in kW', { least: 0, most: 1e6 }).describe('At the pump shaft, kW'),
});

export const flowTestSchema = record('the flow test', {
  density: quantity('a density in kg/m3', { above: 0, most: 10_000 }).describe('Of the liquid, kg/m3'),
  ratedSpeed: speed.describe('r/min'),
  duty: quantity('a flow in m3/h', { above: 0, most: 1e6 }).describe('m3/h'),
  hoursPerYear: quantity('hours a year', { least: 0, most: 8784 }).optional().describe('h'),
  energyPrice: money.optional().describe('A kilowatt hour'),
  runs: list(
    record('a run of the test', {
      label: text('a label', 100).optional(),
      when: text('when the run was made', 100),
      speed: speed.describe('r/min'),
      points: list(testPoint, 'points', 1, 1000),
    }),
    'runs',
    0,
    100,
  ),
});
