/** Filler and coat as the job file writes them: the person's own data-sheet values, in the units data sheets use. */
import {
  count,
  density,
  depth,
  described,
  flag,
  grams,
  length,
  list,
  millilitres,
  minutes,
  optional,
  pair,
  quantity,
  record,
  temperature,
  text,
} from './field-kinds.ts';
import { z } from './zod.ts';

const name = text('a name', 200);
const share = quantity('a share by volume', { above: 0, most: 1000 });
const ratioByVolume = described(pair(share, 'two shares by volume, [A, B]'), 'Part A to part B by volume');

const partDensity = optional(density, 'g/cm3');
const activationEnergy = optional(
  z.nullable(quantity('an energy in kJ/mol', { above: 0, most: 300 })),
  'kJ/mol, 55 when left out; null: twice as fast every 10 degC',
);

const at = described(temperature, 'The temperature the time holds at, degC');
const instant = quantity('a time in minutes', { least: 0, most: 100_000 });
const window = optional(record('a span of time', { from: instant, to: instant, at }), 'minutes');
const hard = optional(record('a time', { minutes, at }), 'Hard enough for service');

const surfaceRange = optional(
  record('a range of temperature', { from: temperature, to: temperature }),
  'How warm the part may be when it goes on, degC; not asked when left out',
);

const pack = record('a pack', {
  label: text('a label', 100),
  mass: optional(grams, 'g of both parts together'),
  volume: optional(millilitres, 'cm3 of both parts together'),
  selfMixing: optional(flag, 'A cartridge whose nozzle mixes A and B: nothing to weigh'),
});
const packs = optional(list(pack, 'packs', 0, 50), 'What can be bought; each by mass or by volume');

const scaleStep = optional(
  quantity('a mass in g', { least: 0.001, most: 1000 }),
  'Step of the scale the parts are weighed on, g',
);

export const fillerSchema = record(
  'a filler',
  {
    name: optional(name),
    density: described(density, 'Of the mix, g/cm3'),
    ratioByVolume,
    densityA: partDensity,
    densityB: partDensity,
    workingTime: record('a working time', {
      minutes,
      at,
      mass: optional(grams, 'The mass of mix the time was quoted for, g'),
    }),
    activationEnergy,
    mixTime: optional(minutes, 'minutes'),
    firmsUp: window,
    hard,
    leastBuild: optional(depth, 'Thinnest layer, mm'),
    mostBuild: described(length, 'Thickest layer in one pass, mm'),
    largestGrain: optional(depth, 'mm'),
    packs,
    scaleStep,
    surfaceRange,
  },
  { id: 'Filler' },
);

export const coatSchema = record(
  'a coat',
  {
    name: optional(name),
    density: described(density, 'Of the mix, g/cm3'),
    ratioByVolume,
    densityA: partDensity,
    densityB: partDensity,
    solidsByVolume: described(quantity('a percentage', { least: 1, most: 100 }), '%'),
    dryFilm: described(
      quantity('a film thickness in um', { above: 0, most: 10_000 }),
      'Of one coat, dry, um',
    ),
    coats: count('a number of coats', 1, 10),
    workingTime: record('a working time', { minutes, at }),
    overcoat: window,
    mixTime: optional(minutes, 'minutes'),
    hard,
    activationEnergy,
    profile: described(
      quantity('a height in um', { least: 0, most: 1000 }),
      'Height of the blast profile, um',
    ),
    packs,
    scaleStep,
    surfaceRange,
  },
  { id: 'Coat' },
);
