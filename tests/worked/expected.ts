/** What independent.mjs writes for a job, in the result's units: mm, deg, cm2, cm3, g, min. */
export interface Expected {
  /** SHA-256 of the job file the numbers were made from. */
  readonly job: string;
  readonly source: Readonly<Record<'parts' | 'regions' | 'filler' | 'coat', string>> & {
    readonly impeller?: string;
    readonly balance?: string;
    readonly readings?: string;
  };
  /** Largest difference between the two grids, by the name of the number: relative, but mm for places and g.mm or g.mm2 for vectors. */
  readonly ownError: Readonly<Record<string, number>>;
  readonly parts: readonly ExpectedPart[];
  readonly filler: ExpectedMix & {
    readonly passes: number;
    readonly largestBatch: number;
    readonly batches: number;
    readonly batchVolume: number;
    /** Of `volume`, where readings leave it open. */
    readonly standardError?: number;
  };
  readonly coat: ExpectedMix & {
    readonly area: number;
    readonly perCoat: readonly number[];
    readonly wetFilm: number;
  };
  /** Of a job that has a rotor. */
  readonly balance?: ExpectedBalance;
}

/** g.mm, g.mm2 for the couple, deg, N, um. */
export interface ExpectedBalance {
  readonly added: Vector;
  readonly net: Vector;
  readonly couple: Vector;
  readonly permissible: number;
  readonly permissibleEccentricity: number;
  readonly force: number;
  readonly ratio: number;
  readonly chanceOver: number;
  readonly verdict: string;
  /** Of each of the two components of the net vector: 2 % of the added unbalance, and what readings leave open in its worst direction. */
  readonly standardError: number;
  /** At z = 0 and at z = planeSpacing, where the job asks for two planes. */
  readonly planes: readonly Vector[];
  /** What the pieces of lost metal and of fill come to without regard to direction; a vector may be off by a share of it. */
  readonly scale: number;
  readonly coupleScale: number;
  /** The chance with the net 0.2 % of `scale` less and more. */
  readonly chanceRange: readonly [number, number];
}

export interface Vector {
  readonly amount: number;
  readonly angle: number;
}

interface ExpectedPart {
  readonly id: string;
  readonly lostVolume: number;
  readonly lostMass: number;
  readonly fillVolume: number;
  readonly fillMass: number;
  readonly fillCentroid: readonly number[] | null;
  /** Half the part's width, mm. */
  readonly size: number;
  /** Of a part with gauge readings: one standard deviation of the volumes filled and lost. */
  readonly standardError?: number;
  readonly lostError?: number;
  readonly readings?: readonly ExpectedReadings[];
  readonly faces: readonly ExpectedFace[];
}

export interface ExpectedReadings {
  /** Place in the part's list of wear, from 0. */
  readonly mark: number;
  /** How many lie on the face. */
  readonly used: number;
  readonly fillError: number;
  readonly lostError: number;
  readonly leaveOneOut: { readonly rms: number; readonly within: number; readonly of: number };
  /** The best place of all tried, the error after a reading there, and how far it is to be expected to move the volume. */
  readonly next: { readonly at: readonly number[]; readonly to: number; readonly moves: number };
}

export interface ExpectedFace {
  readonly face: string;
  /** How the two numbers of a point unfold: radius and angle, angle and distance below the face, or x and y. */
  readonly kind: 'polar' | 'bore' | 'plain';
  /** Of the bore, mm. */
  readonly radius?: number;
  readonly area: number;
  readonly wornArea: number;
  readonly deepest: number;
  readonly lostVolume: number;
  readonly fillVolume: number;
  readonly leftVolume: number;
  /** Least wall left; on the sides of a vane and of the shroud less what the other side has lost there. */
  readonly remaining: number;
  /** The same with the other side taken as sound; only on an impeller. */
  readonly remainingAlone?: number;
  readonly regions: readonly ExpectedRegion[];
}

export interface ExpectedRegion {
  readonly at: readonly number[];
  /** Least and most of true x and y on round faces, of arc and distance below the face on the bore, of the face's two numbers on a vane; mm. */
  readonly box: readonly [number, number, number, number];
  readonly area: number;
  readonly deepest: number;
  readonly lostVolume: number;
  readonly fillVolume: number;
  readonly action: string;
}

export interface ExpectedMix {
  readonly netVolume: number;
  readonly volume: number;
  readonly mass: number;
  readonly partA: { readonly volume: number; readonly mass?: number };
  readonly partB: { readonly volume: number; readonly mass?: number };
  readonly workingTime: number;
  /** Empty where nothing is needed or the sheet names no packs. */
  readonly packs: readonly { readonly label: string; readonly count: number }[];
}
