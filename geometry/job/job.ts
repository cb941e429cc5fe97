/**
 * The job in our own units: what `measured` makes of a job file and what every later stage reads.
 * Lengths mm, angles radians, densities g/mm3, volumes mm3, shares as fractions. Holds what was measured and chosen, nothing computed.
 */
import type { Celsius, Density, FacePoint, Fraction, Gram, Minute, Mm, Mm3, Rad } from '../units.ts';

export interface Job {
  readonly title: string;
  readonly notes: string;
  readonly parts: readonly WearPlate[];
  readonly filler: Filler;
  readonly coat: Coat;
  readonly repair: Repair;
  /** Surface temperature of the part, null when the job has no climate: times are then those of the reference temperature. */
  readonly surface: Celsius | null;
  /** What the job asks for and this version does not work out yet; each becomes a warning, none is guessed. */
  readonly unsupported: readonly Unsupported[];
}

export interface Unsupported {
  /** Path in the job file, e.g. `parts[1]`. */
  readonly field: string;
  /** A noun phrase for the person: "the impeller \"impeller\"". */
  readonly what: string;
}

export interface WearPlate {
  readonly id: string;
  readonly kind: 'wear-plate';
  readonly density: Density;
  readonly shape: RoundPlate | OutlinePlate;
  readonly thickness: Mm;
  readonly leastThickness: Mm | null;
  readonly marks: readonly Mark[];
}

export interface RoundPlate {
  readonly kind: 'round';
  readonly outerRadius: Mm;
  readonly boreRadius: Mm;
  /** 0 flat, positive dished: lower at the bore. */
  readonly coneAngle: Rad;
  readonly holes: readonly Hole[];
}

/** A round hole drilled parallel to z. */
export interface Hole {
  readonly x: Mm;
  readonly y: Mm;
  readonly radius: Mm;
}

export interface OutlinePlate {
  readonly kind: 'outline';
  /** Closed polygons in x, y, mm; the last corner is not repeated. */
  readonly edge: readonly FacePoint[];
  readonly holes: readonly (readonly FacePoint[])[];
}

export type Blend = 'deepest' | 'add' | 'replace';

interface OnFace {
  /** Name of the face on its part: `face`, `bore`. */
  readonly face: string;
  readonly blend: Blend;
}

export interface Patch extends OnFace {
  readonly kind: 'patch';
  /** From and to along each coordinate; an angle range runs counter-clockwise from the first to the second value. */
  readonly first: readonly [number, number];
  readonly second: readonly [number, number];
  /** Depth at the two ends of the first coordinate, linear between. */
  readonly depth: readonly [Mm, Mm];
}

export interface Area extends OnFace {
  readonly kind: 'area';
  readonly outline: readonly FacePoint[];
  readonly depth: Mm;
}

export interface Pit extends OnFace {
  readonly kind: 'pit';
  readonly at: FacePoint;
  readonly radius: Mm;
  readonly depth: Mm;
  readonly form: 'cone' | 'bowl' | 'flat';
}

export interface Stroke extends OnFace {
  readonly kind: 'stroke';
  readonly path: readonly FacePoint[];
  readonly radius: Mm;
  readonly depth: Mm;
  readonly edge: 'hard' | 'soft';
  /** Wipes wear away instead of adding it; depth and blend are then of no effect. */
  readonly clear: boolean;
}

export interface Smooth {
  readonly kind: 'smooth';
  readonly face: string;
  readonly path: readonly FacePoint[];
  readonly radius: Mm;
  readonly strength: Fraction;
}

export type Mark = Patch | Area | Pit | Stroke | Smooth;

export interface Filler {
  readonly name: string;
  /** Density of the mix as the data sheet states it. */
  readonly density: Density;
  readonly ratioByVolume: readonly [number, number];
  readonly densityA: Density | null;
  readonly densityB: Density | null;
  /** Working time of a batch of `mass` at a temperature; mass null when the sheet names none. */
  readonly workingTime: { readonly minutes: Minute; readonly at: Celsius; readonly mass: Gram | null };
  /** kJ/mol; null uses the workshop rule, twice as fast every 10 degC. */
  readonly activationEnergy: number | null;
  readonly leastBuild: Mm;
  readonly mostBuild: Mm;
  readonly largestGrain: Mm;
  readonly packs: readonly Pack[];
}

/** What one pack holds, by mass or by volume, both parts together. */
export interface Pack {
  readonly label: string;
  readonly mass: Gram | null;
  readonly volume: Mm3 | null;
}

export interface Coat {
  readonly name: string;
  readonly density: Density;
  readonly ratioByVolume: readonly [number, number];
  readonly densityA: Density | null;
  readonly densityB: Density | null;
  readonly solidsByVolume: Fraction;
  /** One coat, dry. */
  readonly dryFilm: Mm;
  readonly coats: number;
  readonly workingTime: { readonly minutes: Minute; readonly at: Celsius };
  readonly activationEnergy: number | null;
  /** Height of the blast profile. */
  readonly profile: Mm;
  readonly packs: readonly Pack[];
}

export interface Repair {
  readonly leaveBelow: Mm;
  readonly coatAllowance: Mm;
  /** `part:face` patterns, * matches any run of characters. */
  readonly allowanceFaces: readonly string[];
  readonly coatedFaces: readonly string[];
  readonly overbuild: Mm;
  readonly fillerWaste: Fraction;
  readonly coatWaste: Fraction;
  /** What this person fills and levels, mm3/min. */
  readonly applicationRate: number;
  readonly overrules: readonly Overrule[];
}

export interface Overrule {
  readonly part: string;
  readonly face: string;
  readonly point: FacePoint;
  readonly action: 'fill' | 'leave';
}
