/** Something that can be worked out but should worry someone. */
export interface Warning {
  /** Stays the same from version to version, for programs: `filler-density`. */
  readonly code: string;
  /** Path in the job file, when one field is the cause. */
  readonly field: string | null;
  readonly text: string;
}

/** A danger of the work itself. A reminder beside the rules that hold where the work is done, never in their place. */
export interface Caution {
  readonly code: string;
  readonly text: string;
  /** The public rule or study it rests on. */
  readonly source: string;
}
