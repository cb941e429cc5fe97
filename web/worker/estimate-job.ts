import { type Estimate, estimate } from '../../geometry/estimate.ts';
import type { PartEstimate } from '../../geometry/estimate-part.ts';
import type { Fault } from '../../geometry/job/fault.ts';
import type { JobFile } from '../../geometry/job/job-file.ts';
import { measured } from '../../geometry/job/measured.ts';
import { readJobValue } from '../../geometry/job/read-job.ts';
import { sheetBody } from '../../geometry/sheet/html.ts';
import { type Result, toResult } from '../../geometry/sheet/result.ts';
import type { Fraction } from '../../geometry/units.ts';
import type { FoundSurface } from '../wear/read-surfaces.ts';
import { type KnownSurveys, surveyor } from './surveyor.ts';

/** What is asked of the worker. The sheet is asked for apart: drawing its pictures may take as long as the figures. */
export interface EstimateService {
  /**
   * The whole way from a job file to its figures. Never throws.
   * @param report  hears of surfaces as they are found, and how far a long kriging is
   */
  estimateJob(file: JobFile, report?: (news: EstimateNews) => void): EstimateAnswer;
  /** The printable sheet of the job estimated last, as an HTML fragment; null when that gave no figures. */
  sheetOfLast(): string | null;
}

/** What is said before the answer is there. */
export type EstimateNews =
  | { readonly surface: FoundSurface }
  /** Share of the readings in hand that is done. */
  | { readonly progress: Fraction };

/** What comes back: plain data, whatever happened. */
export type EstimateAnswer =
  | Figures
  | { readonly faults: readonly Fault[] }
  /** A sentence for the person. */
  | { readonly error: string };

export interface Figures {
  /** In the file's units. */
  readonly result: Result;
  readonly regions: readonly FaceRegions[];
}

/** Which damage region each cell of a face belongs to; the cells are those of the face's grid. */
export interface FaceRegions {
  readonly part: string;
  readonly face: string;
  readonly rows: number;
  readonly columns: number;
  /** rows x columns; 0 = none, k = ids[k - 1]. */
  readonly label: Int32Array<ArrayBuffer>;
  readonly ids: readonly string[];
}

/** Remembers the last estimate, so that the sheet need not be worked out again. */
export function estimateService(): EstimateService {
  let last: Estimate | null = null;
  const surveys: KnownSurveys = new Map();
  return {
    estimateJob(file, report = () => {}) {
      last = null;
      try {
        const read = readJobValue(file);
        if ('faults' in read) return { faults: read.faults };
        const job = measured(read.job);
        last = estimate(job, { surveyOf: surveyor(read.job, job, surveys, report) });
        return { result: toResult(last), regions: last.parts.flatMap(faceRegions) };
      } catch (error) {
        last = null;
        return { error: sentence(error) };
      }
    },
    sheetOfLast: () => (last === null ? null : sheetBody(last)),
  };
}

function faceRegions(part: PartEstimate): FaceRegions[] {
  return part.faces.map(({ face, fill }) => {
    const { rows, columns } = face.grid;
    const ids = fill.regions.map((region) => region.id);
    // A copy: what is handed over is gone here, and the sheet needs it.
    return { part: part.id, face: face.name, rows, columns, label: new Int32Array(fill.label), ids };
  });
}

/** The engine refuses what it has no room for with a sentence of its own. */
function sentence(error: unknown): string {
  const reason = error instanceof Error ? error.message : String(error);
  return error instanceof RangeError ? reason : `This job could not be worked out: ${reason}`;
}
