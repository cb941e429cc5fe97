/**
 * The job in our own units: what `measured` makes of a job file and what every later stage reads.
 * Lengths mm, angles radians, densities g/mm3, volumes mm3, shares as fractions. Holds what was measured and chosen, nothing computed.
 */
import type {
  Celsius,
  Density,
  FacePoint,
  Fraction,
  Gram,
  GramMm,
  Instant,
  LocalTime,
  Minute,
  Mm,
  Mm2,
  Mm3,
  Rad,
  Rpm,
} from '../units.ts';

export interface Job {
  readonly title: string;
  readonly notes: string;
  readonly parts: readonly WornPart[];
  readonly filler: Filler;
  readonly coat: Coat;
  readonly repair: Repair;
  /** The rotor one of the parts sits on; null when the job asks for no balance. */
  readonly rotor: Rotor | null;
  /** What is asked of the gap between vane tips and plate; null when the job asks for none. */
  readonly clearance: Clearance | null;
  /** Surface temperature of the part, null when the job has no climate: times are then those of the reference temperature. */
  readonly surface: Celsius | null;
  /** The weather in the shop; null when the job does not say. */
  readonly climate: Climate | null;
  /** What the pump moves; null when the job does not say. */
  readonly service: Service | null;
  readonly plan: PlanChoices;
  /** What was done, in the order begun. */
  readonly log: readonly LogEntry[];
  /** The pump on the test bench; null when the job has no test. */
  readonly flowTest: FlowTest | null;
  readonly history: History;
  /** What the job asks for and this version does not work out yet; each becomes a warning, none is guessed. */
  readonly unsupported: readonly Unsupported[];
}

export interface Unsupported {
  /** Path in the job file, e.g. `parts[1]`. */
  readonly field: string;
  /** A noun phrase for the person: "the impeller \"impeller\"". */
  readonly what: string;
}

export type WornPart = WearPlate | Impeller;

export interface WearPlate {
  readonly id: string;
  readonly kind: 'wear-plate';
  readonly density: Density;
  readonly shape: RoundPlate | OutlinePlate;
  readonly thickness: Mm;
  readonly leastThickness: Mm | null;
  readonly marks: readonly Mark[];
  readonly sections: readonly Section[];
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

/** A backward-swept impeller, open on the vane side. The vane side of its shroud is z = 0. */
export interface Impeller {
  readonly id: string;
  readonly kind: 'impeller';
  readonly density: Density;
  /** Seen from the vane side, from +z. */
  readonly rotation: 'clockwise' | 'counter-clockwise';
  readonly outerRadius: Mm;
  readonly hubRadius: Mm;
  /** How far the hub stands above z = 0, and the hole through it: for the mass and the picture alone. */
  readonly hubHeight: Mm;
  readonly boreRadius: Mm;
  /** 0 = open: hub and vanes only. */
  readonly shroudThickness: Mm;
  readonly vanes: Vanes;
  readonly leastThickness: Mm | null;
  readonly marks: readonly Mark[];
  readonly sections: readonly Section[];
}

export interface Vanes {
  readonly count: number;
  /** Where the leading edge of vane 1 stands; the others follow counter-clockwise. */
  readonly firstAngle: Rad;
  readonly inletRadius: Mm;
  /** Blade angles from the tangential direction. */
  readonly inletAngle: Rad;
  readonly outletAngle: Rad;
  readonly camber: 'linear' | 'arc';
  /** As measured from leading edge to outer end; null when it was not. */
  readonly wrap: Rad | null;
  readonly thicknessInlet: Mm;
  readonly thicknessOutlet: Mm;
  readonly heightInlet: Mm;
  readonly heightOutlet: Mm;
  readonly nose: 'round' | 'square';
}

/** What is asked of the balance. */
export interface Rotor {
  /** id of the part whose repair counts. */
  readonly part: string;
  /** Of the whole rotor; null when it was not weighed: it is then estimated from the solid. */
  readonly mass: Gram | null;
  readonly speed: Rpm;
  /** Balance quality grade, mm/s. */
  readonly grade: number;
  readonly planes: 1 | 2;
  /** Between the two correction planes, plane A at z = 0 and plane B at z = spacing; null when not given. */
  readonly planeSpacing: Mm | null;
  /** Residual measured before the repair. */
  readonly asFound: { readonly amount: GramMm; readonly angle: Rad };
  /** One standard deviation of the mixed filler's density, as a share of it. */
  readonly densityError: Fraction;
  /** What the person has decided to take off or put on, in the order decided. */
  readonly corrections: readonly Correction[];
}

/** Metal taken off or putty put on to bring the rotor into balance. It is no wear: nothing of it is filled. */
export type Correction = BlindHoles | Skim | Putty;

/** Flat-bottomed blind holes in the back of the shroud (axial) or in its rim (radial). */
export interface BlindHoles {
  readonly kind: 'holes';
  readonly face: 'shroud/back' | 'shroud/rim';
  /** Centres: radius and angle on the back, angle and distance below the vane side on the rim. */
  readonly at: readonly FacePoint[];
  readonly radius: Mm;
  readonly depth: Mm;
}

/** A thin sector taken off the back of the shroud. */
export interface Skim {
  readonly kind: 'skim';
  readonly face: 'shroud/back';
  /** Radii from and to. */
  readonly first: readonly [Mm, Mm];
  /** Angles from and to, counter-clockwise. */
  readonly second: readonly [Rad, Rad];
  readonly depth: Mm;
}

/** Metal-filled putty built up on the vane side of the shroud, between two vanes. */
export interface Putty {
  readonly kind: 'putty';
  readonly face: 'shroud/front';
  readonly first: readonly [Mm, Mm];
  readonly second: readonly [Rad, Rad];
  /** How high it stands above the shroud. */
  readonly height: Mm;
  readonly density: Density;
}

/** The axial gap between the vane tips and the face of the plate. */
export interface Clearance {
  /** ids of a wear plate and an impeller of the job. */
  readonly plate: string;
  readonly impeller: string;
  readonly asNew: Mm;
  /** `at the closest`: elsewhere the cone of the plate and the heights of the vanes open it further. */
  readonly asNewHolds: 'everywhere' | 'at the closest';
  readonly least: Mm;
  readonly most: Mm;
  readonly shim: Mm;
  /** How far under their height as new the filled vane tips are dressed, to a plane, before they are coated. */
  readonly dressTips: Mm;
  /** Each to either side. */
  readonly tolerances: {
    /** Of the gap as set. */
    readonly setting: Mm;
    /** Of the coats on both running faces together. */
    readonly film: Mm;
    /** Of both running faces as dressed. */
    readonly dressing: Mm;
    /** Half of what a dial gauge shows on the tips in a turn. */
    readonly runOut: Mm;
  };
}

/** What was measured on the test bench. Flows m3/h, heads m, powers kW, densities kg/m3, as the test sheet has them. */
export interface FlowTest {
  readonly density: number;
  readonly ratedSpeed: Rpm;
  readonly duty: number;
  readonly hoursPerYear: number | null;
  /** A kilowatt hour, in the person's money. */
  readonly energyPrice: number | null;
  readonly motorEfficiency: Fraction | null;
  /** Grade of ISO 9906 that the instruments keep to. */
  readonly gauges: 1 | 2 | 3;
  readonly sameGauges: boolean;
  /** What an efficiency measured again with the same instruments may differ by, as a share of it; null when nobody knows. */
  readonly repeatability: Fraction | null;
  readonly guarantee: Guarantee | null;
  readonly runs: readonly TestRun[];
}

export interface TestRun {
  readonly label: string;
  /** `new`, `before`, `after`; anything else is shown and not compared. */
  readonly when: string;
  readonly speed: Rpm;
  readonly powerAt: 'shaft' | 'motor';
  readonly density: number;
  /** As measured, in the order given. */
  readonly points: readonly { readonly flow: number; readonly head: number; readonly power: number }[];
}

/** The point the pump is accepted against, at rated speed. */
export interface Guarantee {
  readonly flow: number;
  readonly head: number;
  readonly efficiency: Fraction | null;
  readonly power: number | null;
  /** Acceptance grade of ISO 9906. */
  readonly grade: '1B' | '1E' | '1U' | '2B' | '2U' | '3B';
}

/** What earlier repairs found. */
export interface History {
  /** Run since the last of them, or since new, h; null when the job does not say. */
  readonly hours: number | null;
  /** Oldest first. */
  readonly repairs: readonly EarlierRepair[];
}

export interface EarlierRepair {
  readonly part: string;
  /** ISO 8601: `2026-12-01`. */
  readonly date: string;
  /** Run since the repair before it, or since new, h. */
  readonly hours: number;
  readonly deepest: Mm;
  /** Over the worn area. */
  readonly mean: Mm | null;
  readonly volume: Mm3 | null;
  readonly note: string;
}

export type Blend = 'deepest' | 'add' | 'replace';

interface OnFace {
  /** Name of the face on its part: `face`, `bore`, `vane-2/tip`; `vane-*` stands for every vane. */
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

/** Loss along an edge or a tip against the face's first coordinate, alike all the way across. */
export interface EdgeLoss extends OnFace {
  readonly kind: 'edge';
  /** First coordinate and depth, linear between, nothing outside; ascending. */
  readonly profile: readonly (readonly [along: number, depth: Mm])[];
}

/** Depths taken with a gauge; the surface between them is estimated. */
export interface Readings extends OnFace {
  readonly kind: 'readings';
  readonly points: readonly Reading[];
  /** One standard deviation of a reading. */
  readonly gaugeError: Mm;
  /** Closed polygon in the face's flat picture in which the readings hold; null for the whole face. */
  readonly within: readonly FacePoint[] | null;
  /** What the person says of it; the rest is found from the readings. */
  readonly covariance: GivenCovariance;
}

export interface Reading {
  readonly at: FacePoint;
  /** May lie a little below 0 on sound metal. */
  readonly depth: Mm;
}

export type GivenCovariance = { readonly [K in keyof Covariance]?: Covariance[K] | undefined };

/** How alike two depths are against the distance between them. */
export interface Covariance {
  readonly shape: CovarianceShape;
  readonly length: Mm;
  /** Variance of the depth, mm2. */
  readonly sill: Mm2;
}

export type CovarianceShape = 'matern-3/2' | 'matern-5/2' | 'exponential' | 'gaussian';

export type Mark = Patch | Area | Pit | Stroke | Smooth | EdgeLoss | Readings;

/** A straightedge laid over a face. */
export type Section = LineSection | FixedSection;

/** Straight in the flat picture, across holes too. */
export interface LineSection {
  readonly kind: 'line';
  /** One face of the part; `vane-*` is none. */
  readonly face: string;
  readonly from: FacePoint;
  readonly to: FacePoint;
}

/** All along one coordinate of the face, at a value of the other. */
export interface FixedSection {
  readonly kind: 'along-first' | 'along-second';
  readonly face: string;
  /** The other coordinate. */
  readonly at: number;
}

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
  /** How long it takes to mix; null when the sheet names none. */
  readonly mixTime: Minute | null;
  /** When a layer can be dressed, from its end on; null when the sheet does not say. */
  readonly firmsUp: TimeWindow | null;
  readonly hard: QuotedTime | null;
  readonly leastBuild: Mm;
  readonly mostBuild: Mm;
  readonly largestGrain: Mm;
  readonly packs: readonly Pack[];
  readonly scaleStep: Gram;
  readonly surfaceRange: readonly [Celsius, Celsius] | null;
}

/** Minutes at the temperature the data sheet states them for. */
export interface QuotedTime {
  readonly minutes: Minute;
  readonly at: Celsius;
}

export interface TimeWindow {
  readonly from: Minute;
  readonly to: Minute;
  readonly at: Celsius;
}

/** What one pack holds, by mass or by volume, both parts together. */
export interface Pack {
  readonly label: string;
  readonly mass: Gram | null;
  readonly volume: Mm3 | null;
  /** Its nozzle mixes A and B: nothing to weigh. */
  readonly selfMixing: boolean;
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
  readonly workingTime: QuotedTime;
  /** How long it takes to mix; null when the sheet names none. */
  readonly mixTime: Minute | null;
  /** When the next coat can go on, from the end of the last; null when the sheet does not say. */
  readonly overcoat: TimeWindow | null;
  readonly hard: QuotedTime | null;
  readonly activationEnergy: number | null;
  /** Height of the blast profile. */
  readonly profile: Mm;
  readonly packs: readonly Pack[];
  readonly scaleStep: Gram;
  readonly surfaceRange: readonly [Celsius, Celsius] | null;
}

export interface Climate {
  readonly air: Celsius | null;
  readonly surface: Celsius | null;
  /** Relative, 1 = saturated. */
  readonly humidity: Fraction | null;
  readonly takenAt: LocalTime | null;
}

/** What the pump moves; what was not said is null. */
export interface Service {
  readonly solids: 'none' | 'soft' | 'hard';
  readonly grains: 'silt' | 'sand' | 'coarse' | null;
  readonly concentration: 'trace' | 'little' | 'much' | null;
  readonly shape: 'rounded' | 'angular' | null;
}

/** How the day is to run. */
export interface PlanChoices {
  /** null: minutes count from zero, and no shift or break holds. */
  readonly start: LocalTime | null;
  /** Minutes after midnight at which later days begin, and after which no work of the hands is done; null = round the clock. */
  readonly shift: { readonly from: Minute; readonly to: Minute } | null;
  /** Every day, minutes after midnight. */
  readonly breaks: readonly { readonly at: Minute; readonly minutes: Minute }[];
  /** What this person brushes, mm2/min. */
  readonly coatRate: number;
  readonly minutes: StepTimes;
}

/** How long the work of the hands takes, min. */
export interface StepTimes {
  readonly wash: Minute;
  readonly blast: Minute;
  readonly blowDown: Minute;
  readonly wipe: Minute;
  /** Waiting. */
  readonly flashOff: Minute;
  /** Each mix. */
  readonly dress: Minute;
  readonly touchTest: Minute;
  /** Each part. */
  readonly dressHard: Minute;
  readonly check: Minute;
  readonly assemble: Minute;
  readonly test: Minute;
}

/** What was done when, as the person at the bench said. */
export interface LogEntry {
  /** id of the step in the plan. */
  readonly step: string;
  readonly started: Instant;
  readonly done: Instant | null;
  /** null: it was done, or is being done. */
  readonly outcome: 'skipped' | 'discarded' | null;
  readonly massA: Gram | null;
  readonly massB: Gram | null;
  /** Batch numbers on the packs; empty when not noted. */
  readonly packA: string;
  readonly packB: string;
  readonly surface: Celsius | null;
  readonly note: string;
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
  /** Another gauge reading is worth taking while it may change the putty order by this much; null: by the smallest pack. */
  readonly readingWorth: Mm3 | null;
}

export interface Overrule {
  readonly part: string;
  readonly face: string;
  readonly point: FacePoint;
  readonly action: 'fill' | 'leave';
}
