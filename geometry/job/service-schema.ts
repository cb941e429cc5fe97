/** What the job file says about the parts in service: the rotor, the gap, the weather on the day and the pump's flow test. */
import {
  allowance,
  angle,
  byKind,
  calendarDay,
  coordinate,
  count,
  density,
  depth,
  described,
  flag,
  length,
  list,
  localTime,
  millilitres,
  money,
  oneOf,
  optional,
  pair,
  point,
  quantity,
  record,
  temperature,
  text,
} from './field-kinds.ts';
import { z } from './zod.ts';

const partId = text('the id of a part', 64);
const gap = quantity('a gap in mm', { least: 0, most: 100 });
const speed = quantity('a speed in r/min', { above: 0, most: 100_000 });

const cutDepth = quantity('a depth in mm', { above: 0, most: 1000 });
const radii = described(pair(coordinate, 'two radii in mm, [from, to]'), 'Radii from and to, mm');
const angles = described(
  pair(angle, 'two angles in deg, [from, to]'),
  'Angles from and to, counter-clockwise, deg',
);

const holes = record('balance holes', {
  kind: z.literal('holes'),
  face: oneOf(['shroud/back', 'shroud/rim']),
  at: described(
    list(point, 'holes', 1, 100),
    'Centres: on the back [radius, angle], on the rim [angle, distance below the vane side]',
  ),
  diameter: described(length, 'mm'),
  depth: described(cutDepth, 'To the flat bottom, mm'),
});

const skim = record('a skim', {
  kind: z.literal('skim'),
  face: z.literal('shroud/back', { error: '"shroud/back", the face that is skimmed' }),
  first: radii,
  second: angles,
  depth: described(cutDepth, 'mm'),
});

const putty = record('balance putty', {
  kind: z.literal('putty'),
  face: z.literal('shroud/front', { error: '"shroud/front", the face that putty is built up on' }),
  first: radii,
  second: angles,
  height: described(quantity('a height in mm', { above: 0, most: 1000 }), 'Above the shroud, mm'),
  density: described(density, 'Of the mix, g/cm3'),
});

const correctionSchema = byKind('a correction', [holes, skim, putty], '"holes", "skim" or "putty"', {
  id: 'Correction',
  description: 'Metal taken off or putty put on to balance the rotor',
});

const unbalance = record('an unbalance', {
  amount: described(quantity('an unbalance in g.mm', { least: 0, most: 1e9 }), 'g.mm'),
  angle: described(angle, 'deg'),
});

export const rotorSchema = record('the rotor', {
  part: described(partId, 'id of the impeller'),
  mass: optional(
    quantity('a mass in kg', { above: 0, most: 100_000 }),
    'Of the whole rotor, kg; estimated from the part when left out',
  ),
  speed: described(speed, 'r/min'),
  grade: described(
    quantity('a balance grade in mm/s', { above: 0, most: 4000 }),
    'Balance quality grade G, mm/s',
  ),
  planes: optional(count('a number of planes', 1, 2), 'Correction planes; 1 when left out'),
  planeSpacing: optional(length, 'Between the two correction planes, mm'),
  asFound: optional(unbalance, 'Measured before the repair'),
  densityError: optional(
    quantity('a percentage', { least: 0, most: 50 }),
    'One standard deviation of the density of the filler as mixed, %; 2 when left out',
  ),
  corrections: optional(list(correctionSchema, 'corrections', 0, 100), 'Decided on, in the order decided'),
});

export const clearanceSchema = record('the clearance', {
  plate: described(partId, 'id of the wear plate'),
  impeller: described(partId, 'id of the impeller'),
  asNew: described(gap, 'Axial gap with both parts as new, mm'),
  asNewHolds: optional(
    oneOf(['everywhere', 'at the closest']),
    'Everywhere: tips and plate run parallel. At the closest: elsewhere cone and vane heights open it. Everywhere when left out',
  ),
  least: described(gap, 'Narrowest gap that runs free, mm'),
  most: described(gap, 'Widest gap that is worth running, mm'),
  shim: optional(quantity('a thickness in mm', { least: -100, most: 100 }), 'mm; 0 when left out'),
  dressTips: optional(
    allowance,
    'How far under their height as new the filled vane tips are dressed before they are coated, mm; 0 when left out',
  ),
  tolerance: optional(gap, 'Of the gap as set, mm; 0 when left out'),
  filmTolerance: optional(gap, 'Of the coats on both running faces together, mm; 0 when left out'),
  dressTolerance: optional(gap, 'Of both running faces as dressed, mm; 0 when left out'),
  runOut: optional(gap, 'Half of what a dial gauge shows on the tips in a turn, mm; 0 when left out'),
});

export const climateSchema = record('the climate', {
  air: optional(temperature, 'degC'),
  surface: optional(temperature, 'Of the part, degC'),
  humidity: optional(quantity('a relative humidity in %', { least: 0, most: 100 }), '%'),
  takenAt: optional(localTime, 'When the three were read'),
});

/** What the pump moves, in the words a fitter can answer in. */
export const serviceSchema = record('the service', {
  solids: described(
    oneOf(['none', 'soft', 'hard']),
    'What is carried along; soft: wood, peel, sludge; hard: sand, grit, scale',
  ),
  grains: optional(
    oneOf(['silt', 'sand', 'coarse']),
    'silt: not felt between the fingers; sand: felt, under 2 mm; coarse: 2 mm and more',
  ),
  concentration: optional(
    oneOf(['trace', 'little', 'much']),
    'By weight. trace: clear water with some; little: cloudy, under 5 %; much: 5 % and more',
  ),
  shape: optional(oneOf(['rounded', 'angular'])),
});

const flow = quantity('a flow in m3/h', { least: 0, most: 1e6 });
const head = quantity('a head in m', { least: 0, most: 1e5 });
const power = quantity('a power in kW', { least: 0, most: 1e6 });
const share = quantity('a percentage', { above: 0, most: 100 });
const liquidDensity = quantity('a density in kg/m3', { above: 0, most: 10_000 });
const hours = quantity('hours', { least: 0, most: 1e7 });

const testPoint = record('a point of the test', {
  flow: described(flow, 'm3/h'),
  head: described(head, 'm'),
  power: described(power, 'Where the run says, kW'),
});

const testRun = record('a run of the test', {
  label: optional(text('a label', 100)),
  when: described(
    text('when the run was made', 100),
    '"new", "before" or "after" the repair; others are shown and not compared',
  ),
  speed: described(speed, 'r/min'),
  powerAt: optional(oneOf(['shaft', 'motor']), 'Pump shaft, or what the motor takes in; shaft when left out'),
  density: optional(liquidDensity, 'Of the liquid in this run, kg/m3; that of the test when left out'),
  points: list(testPoint, 'points', 1, 1000),
});

const guarantee = record('a guarantee', {
  flow: described(quantity('a flow in m3/h', { above: 0, most: 1e6 }), 'm3/h, at rated speed'),
  head: described(quantity('a head in m', { above: 0, most: 1e5 }), 'm, at rated speed'),
  efficiency: optional(share, '%'),
  power: optional(quantity('a power in kW', { above: 0, most: 1e6 }), 'At the pump shaft, kW'),
  grade: described(oneOf(['1B', '1E', '1U', '2B', '2U', '3B']), 'Acceptance grade of ISO 9906'),
});

export const flowTestSchema = record('the flow test', {
  density: described(liquidDensity, 'Of the liquid, kg/m3'),
  ratedSpeed: described(speed, 'r/min'),
  duty: described(quantity('a flow in m3/h', { above: 0, most: 1e6 }), 'm3/h'),
  hoursPerYear: optional(quantity('hours a year', { least: 0, most: 8784 }), 'h'),
  energyPrice: optional(money, 'A kilowatt hour'),
  motorEfficiency: optional(share, 'Of the motor, %'),
  gauges: optional(
    count('a grade of measurement', 1, 3),
    'Grade of ISO 9906 that the instruments keep to; 2 when left out',
  ),
  sameGauges: optional(flag, 'Every run was measured with the same instruments in the same places'),
  repeatability: optional(
    share,
    'What an efficiency measured again with the same instruments may differ by, % of it, 95 of 100',
  ),
  guarantee: optional(guarantee, 'The point the pump is accepted against'),
  runs: list(testRun, 'runs', 0, 100),
});

const earlierRepair = record('an earlier repair', {
  part: described(partId, 'id of the part'),
  date: described(calendarDay, 'When it was measured'),
  hours: described(hours, 'Run since the repair before it, or since new, h'),
  deepest: described(depth, 'mm'),
  mean: optional(depth, 'Over the worn area, mm'),
  volume: optional(millilitres, 'Of metal and filler lost, cm3'),
  note: optional(text('a note', 1000)),
});

export const historySchema = record('the history', {
  hours: optional(hours, 'Run since the last of these repairs, or since new, h'),
  repairs: optional(list(earlierRepair, 'earlier repairs', 0, 500), 'Oldest first'),
});
