/** Filler and coat as the job file writes them: the person's own data-sheet values, in the units data sheets use. */
import {
  count,
  density,
  depth,
  flag,
  grams,
  length,
  list,
  millilitres,
  minutes,
  pair,
  quantity,
  record,
  temperature,
  text,
} from './field-kinds.ts';

const name = text('a name', 200);
const ratioByVolume = pair(
  quantity('a share by volume', { above: 0, most: 1000 }),
  'two shares by volume, [A, B]',
).describe('Part A to part B by volume');

const partDensity = density.optional().describe('g/cm3');
const activationEnergy = quantity('an energy in kJ/mol', { above: 0, most: 300 })
  .nullable()
  .optional()
  .describe('kJ/mol, 55 when left out; null: twice as fast every 10 degC');

const at = temperature.describe('The temperature the time holds at, degC');
const instant = quantity('a time in minutes', { least: 0, most: 100_000 });
const window = record('a span of time', { from: instant, to: instant, at }).optional().describe('minutes');
const hard = record('a time', { minutes, at }).optional().describe('Hard enough for service');

const surfaceRange = record('a range of temperature', { from: temperature, to: temperature })
  .optional()
  .describe('How warm the part may be when it goes on, degC; not asked when left out');

const packs = list(
  record('a pack', {
    label: text('a label', 100),
    mass: grams.optional().describe('g of both parts together'),
    volume: millilitres.optional().describe('cm3 of both parts together'),
    selfMixing: flag.optional().describe('A cartridge whose nozzle mixes A and B: nothing to weigh'),
  }),
  'packs',
  0,
  50,
)
  .optional()
  .describe('What can be bought; each by mass or by volume');

const scaleStep = quantity('a mass in g', { above: 0, most: 1000 })
  .optional()
  .describe('Step of the scale the parts are weighed on, g');

export const fillerSchema = record('a filler', {
  name: name.optional(),
  density: density.describe('Of the mix, g/cm3'),
  ratioByVolume,
  densityA: partDensity,
  densityB: partDensity,
  workingTime: record('a working time', {
    minutes,
    at,
    mass: grams.optional().describe('The mass of mix the time was quoted for, g'),
  }),
  activationEnergy,
  mixTime: minutes.optional().describe('minutes'),
  firmsUp: window,
  hard,
  leastBuild: depth.optional().describe('Thinnest layer, mm'),
  mostBuild: length.describe('Thickest layer in one pass, mm'),
  largestGrain: depth.optional().describe('mm'),
  packs,
  scaleStep,
  surfaceRange,
}).meta({ id: 'Filler' });

export const coatSchema = record('a coat', {
  name: name.optional(),
  density: density.describe('Of the mix, g/cm3'),
  ratioByVolume,
  densityA: partDensity,
  densityB: partDensity,
  solidsByVolume: quantity('a percentage', { least: 1, most: 100 }).describe('%'),
  dryFilm: quantity('a film thickness in um', { above: 0, most: 10_000 }).describe('Of one coat, dry, um'),
  coats: count('a number of coats', 1, 10),
  workingTime: record('a working time', { minutes, at }),
  overcoat: window,
  mixTime: minutes.optional().describe('minutes'),
  hard,
  activationEnergy,
  profile: quantity('a height in um', { least: 0, most: 1000 }).describe('Height of the blast profile, um'),
  packs,
  scaleStep,
  surfaceRange,
}).meta({ id: 'Coat' });
