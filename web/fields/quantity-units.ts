/**
 * The units a person may type and the one each quantity is shown in. The file's unit of a quantity is fixed (mm, deg, g/cm3, ...);
 * only lengths and films change with the screen's units.
 */
export type Quantity =
  | 'length'
  | 'angle'
  | 'density'
  | 'volume'
  | 'percent'
  | 'minutes'
  | 'temperature'
  | 'mass'
  | 'rate'
  | 'brushing'
  | 'film'
  | 'speed'
  | 'grade'
  | 'kilograms'
  | 'unbalance'
  | 'flow'
  | 'head'
  | 'kilowatts'
  | 'liquidDensity'
  | 'hours'
  | 'plain';

export type ScreenUnits = 'mm' | 'in';

/** A unit against the file's unit of its quantity: file = (shown - zero) * times / over. Whole numbers keep the factors exact. */
export interface Unit {
  /** As it stands beside a figure; empty for a bare number. */
  readonly symbol: string;
  /** What is understood when typed: lower case, no spaces, after `plainSigns` of parse-quantity. */
  readonly spellings: readonly string[];
  readonly times: number;
  readonly over: number;
  readonly zero: number;
}

/** A unit that figures are shown in. */
export interface ShownUnit extends Unit {
  /** Smallest step of a figure, in this unit: what a gauge or a scale on the bench can tell. */
  readonly resolution: number;
  /** Decimals that show one resolution. */
  readonly digits: number;
  /** Decimals of a value in a field: a typed 3.175 stays 3.175. */
  readonly fieldDigits: number;
  /** What the arrows and the buttons change, in this unit. */
  readonly step: number;
}

/** The unit a quantity is shown in. */
export function shownUnit(quantity: Quantity, units: ScreenUnits): ShownUnit {
  const { shown, shownInch } = UNITS[quantity];
  return units === 'in' && shownInch !== undefined ? shownInch : shown;
}

/** Every unit that may be typed for a quantity, the file's own first. */
export function typedUnits(quantity: Quantity): readonly Unit[] {
  return UNITS[quantity].typed;
}

export function toFile(shown: number, unit: Unit): number {
  return ((shown - unit.zero) * unit.times) / unit.over;
}

export function toShown(value: number, unit: Unit): number {
  return (value * unit.over) / unit.times + unit.zero;
}

interface QuantityUnits {
  readonly shown: ShownUnit;
  /** In place of `shown` on a screen in inches. */
  readonly shownInch?: ShownUnit;
  readonly typed: readonly Unit[];
}

function unit(symbol: string, spellings: string, times = 1, over = 1, zero = 0): Unit {
  return { symbol, spellings: spellings.split(' '), times, over, zero };
}

function shown(
  of: Unit,
  digits: number,
  fieldDigits: number,
  step: number,
  resolution = 10 ** -digits,
): ShownUnit {
  return { ...of, digits, fieldDigits, step, resolution };
}

// The inch is 25.4 mm and the avoirdupois ounce 28.349523125 g exactly (international yard and pound agreement, 1959).
const MM = unit('mm', 'mm millimeter millimeters millimetre millimetres');
const INCH = unit('in', 'in " inch inches', 254, 10);
const DEGREE = unit('°', '° deg degs degree degrees');
const GRAM_PER_CM3 = unit('g/cm³', 'g/cm3 g/ccm g/cc g/ml kg/l kg/dm3 g/cm^3');
const ML = unit('mL', 'ml cm3 ccm cc cm^3 milliliter millilitre');
const PERCENT = unit('%', '% percent pct');
const MINUTE = unit('min', 'min mins minute minutes');
const CELSIUS = unit('°C', '°c c degc celsius');
const GRAM = unit('g', 'g gram grams gr');
const ML_PER_MINUTE = unit('mL/min', 'ml/min cm3/min cc/min ccm/min');
const CM2_PER_MINUTE = unit('cm²/min', 'cm2/min');
const MICROMETRE = unit('µm', 'um micron microns micrometer micrometre');
const MIL = unit('mil', 'mil mils thou', 254, 10);
const RPM = unit('r/min', 'r/min rpm 1/min min-1 /min');
const MM_PER_SECOND = unit('mm/s', 'mm/s');
const KILOGRAM = unit('kg', 'kg kilo kilos kilogram kilograms');
const GRAM_MM = unit('g·mm', 'gmm g.mm g·mm');
const M3_PER_HOUR = unit('m³/h', 'm3/h m³/h cbm/h cum/h m^3/h');
const METRE = unit('m', 'm meter meters metre metres');
const KILOWATT = unit('kW', 'kw');
const KG_PER_M3 = unit('kg/m³', 'kg/m3 kg/m³ kg/m^3');
const HOUR = unit('h', 'h hr hrs hour hours');
const BARE = unit('', '');

const UNITS: Readonly<Record<Quantity, QuantityUnits>> = {
  // A depth gauge reads 0.01 mm or 0.0005 in.
  length: {
    shown: shown(MM, 2, 3, 1),
    shownInch: shown(INCH, 4, 4, 0.05, 0.0005),
    typed: [
      MM,
      unit('cm', 'cm centimeter centimeters centimetre centimetres', 10),
      unit('m', 'm meter meters metre metres', 1000),
      INCH,
      unit('thou', 'thou thous mil mils', 254, 10_000),
    ],
  },
  angle: { shown: shown(DEGREE, 1, 3, 1), typed: [DEGREE] },
  density: {
    shown: shown(GRAM_PER_CM3, 2, 3, 0.05),
    typed: [GRAM_PER_CM3, unit('kg/m³', 'kg/m3 kg/m^3', 1, 1000)],
  },
  volume: { shown: shown(ML, 1, 2, 5), typed: [ML, unit('L', 'l liter liters litre litres', 1000)] },
  percent: { shown: shown(PERCENT, 1, 2, 1), typed: [PERCENT] },
  minutes: { shown: shown(MINUTE, 0, 1, 1), typed: [MINUTE, unit('h', 'h hr hrs hour hours', 60)] },
  temperature: {
    shown: shown(CELSIUS, 1, 1, 1),
    typed: [CELSIUS, unit('°F', '°f f degf fahrenheit', 5, 9, 32)],
  },
  mass: {
    shown: shown(GRAM, 1, 2, 10),
    typed: [
      GRAM,
      unit('kg', 'kg kilo kilos kilogram kilograms', 1000),
      unit('oz', 'oz ounce ounces', 45_359_237, 1_600_000),
    ],
  },
  rate: {
    shown: shown(ML_PER_MINUTE, 1, 2, 1),
    typed: [ML_PER_MINUTE, unit('L/min', 'l/min', 1000), unit('L/h', 'l/h', 1000, 60)],
  },
  brushing: {
    shown: shown(CM2_PER_MINUTE, 0, 1, 50),
    typed: [CM2_PER_MINUTE, unit('m²/h', 'm2/h', 10_000, 60), unit('m²/min', 'm2/min', 10_000)],
  },
  film: {
    shown: shown(MICROMETRE, 0, 1, 10),
    shownInch: shown(MIL, 1, 3, 0.5),
    typed: [MICROMETRE, MIL, unit('mm', 'mm', 1000)],
  },
  speed: {
    shown: shown(RPM, 0, 1, 10),
    typed: [RPM, unit('1/s', '1/s hz rps', 60)],
  },
  grade: { shown: shown(MM_PER_SECOND, 1, 2, 0.1), typed: [MM_PER_SECOND] },
  kilograms: {
    shown: shown(KILOGRAM, 2, 3, 0.5),
    typed: [
      KILOGRAM,
      unit('g', 'g gram grams gr', 1, 1000),
      unit('lb', 'lb lbs pound pounds', 45_359_237, 100_000_000),
    ],
  },
  unbalance: {
    shown: shown(GRAM_MM, 0, 2, 10),
    typed: [
      GRAM_MM,
      unit('kg·mm', 'kgmm kg.mm kg·mm', 1000),
      unit('oz·in', 'ozin oz.in oz·in', 720_077_887_375, 1_000_000_000),
    ],
  },
  // The US gallon is 231 cubic inches, the horsepower 550 ft lbf/s (0.745 699 872 kW), exactly by the pound and the foot of 1959.
  flow: {
    shown: shown(M3_PER_HOUR, 1, 3, 5),
    typed: [
      M3_PER_HOUR,
      unit('L/s', 'l/s', 36, 10),
      unit('L/min', 'l/min lpm', 6, 100),
      unit('gpm', 'gpm usgpm gal/min', 22_712_470_704, 100_000_000_000),
    ],
  },
  head: {
    shown: shown(METRE, 2, 3, 0.5),
    typed: [METRE, unit('ft', 'ft feet foot', 3048, 10_000)],
  },
  kilowatts: {
    shown: shown(KILOWATT, 2, 3, 0.1),
    typed: [KILOWATT, unit('W', 'w watt watts', 1, 1000), unit('hp', 'hp bhp', 745_699_872, 1_000_000_000)],
  },
  liquidDensity: {
    shown: shown(KG_PER_M3, 0, 2, 1),
    typed: [KG_PER_M3, unit('g/cm³', 'g/cm3 g/ccm g/cc g/ml kg/l kg/dm3 g/cm^3', 1000)],
  },
  hours: { shown: shown(HOUR, 0, 1, 100), typed: [HOUR] },
  plain: { shown: shown(BARE, 2, 3, 1), typed: [BARE] },
};
