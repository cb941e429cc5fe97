/** What independent.mjs writes for a job, in the result's units: mm, deg, cm2, cm3, g, min. */
export interface Expected {
  /** SHA-256 of the job file the numbers were made from. */
  readonly job: string;
  readonly source: Readonly<Record<'parts' | 'regions' | 'filler' | 'coat', string>>;
  /** Largest relative difference between the two grids, by the name of the number. */
  readonly ownError: Readonly<Record<string, number>>;
  readonly parts: readonly ExpectedPart[];
  readonly filler: ExpectedMix & {
    readonly passes: number;
    readonly largestBatch: number;
    readonly batches: number;
    readonly batchVolume: number;
  };
  readonly coat: ExpectedMix & {
    readonly area: number;
    readonly perCoat: readonly number[];
    readonly wetFilm: number;
  };
}

interface ExpectedPart {
  readonly id: string;
  readonly lostVolume: number;
  readonly lostMass: number;
  readonly fillVolume: number;
  readonly fillMass: number;
  readonly fillCentroid: readonly number[] | null;
  /** Half the plate's width, mm. */
  readonly size: number;
  readonly faces: readonly ExpectedFace[];
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
  /** Wall behind the deepest point. */
  readonly remaining: number;
  readonly regions: readonly ExpectedRegion[];
}

export interface ExpectedRegion {
  readonly at: readonly number[];
  /** Least and most of true x and y on the running face, of arc and distance below the face on the bore; mm. */
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
