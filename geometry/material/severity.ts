import type { Service } from '../job/job.ts';
import type { Warning } from '../job/warning.ts';
import type { Mm } from '../units.ts';

/** The public ladder of slurry duties, mildest first; `clean` stands below it. */
export type Severity = 'clean' | 'mildly-abrasive' | 'abrasive' | 'severely-abrasive' | 'most-severe';
/** Which class of putty stands up to it. */
export type PuttyClass = 'fine-paste' | 'coarse-bead';

export interface PuttyAdvice {
  readonly severity: Severity;
  readonly putty: PuttyClass;
  /** Sentences: how the answers led to the class, and the class to the putty. */
  readonly reasons: readonly string[];
  readonly source: string;
}

const LADDER: readonly Severity[] = [
  'clean',
  'mildly-abrasive',
  'abrasive',
  'severely-abrasive',
  'most-severe',
];
/** A putty whose largest grain reaches this is one with coarse beads (our judgement). */
const COARSE_BEAD: Mm = 0.5;
/** A bead needs a bed this many times its size (common practice). */
const BED = 2;

/**
 * The class of service that three answers give, and the class of putty for it, as advice.
 * The classes are the published ones. Where the answers draw the lines, one class up for angular grains, and which putty belongs to which
 * class are our judgement: no public table ties filler grain to service.
 * @returns null when the answers do not say enough
 * Source: Lobanoff & Ross, Centrifugal Pumps, table 13-3 (the four classes); tests/geometry/material/severity.test.ts
 */
export function puttyAdvice(service: Service): PuttyAdvice | null {
  const base = classOf(service);
  if (base === null) return null;
  const raised = service.shape === 'angular' && (base.place === 1 || base.place === 2);
  const place = base.place + (raised ? 1 : 0);
  const putty: PuttyClass = place >= 3 ? 'coarse-bead' : 'fine-paste';
  return {
    severity: LADDER[place],
    putty,
    reasons: [
      base.reason,
      ...(raised ? ['Angular grains wear about twice as fast as rounded ones: one class up.'] : []),
      putty === 'coarse-bead'
        ? 'Coarse ceramic beads take the scouring that a fine paste loses its binder to. Use it where the fill is at least twice as deep as the beads are large; edges, tips and shallow places take the fine paste.'
        : 'A fine paste dresses to a smooth, true edge and stands up to this duty; beads would only roughen the passage.',
    ],
    source:
      'Classes: Lobanoff & Ross, Centrifugal Pumps, table 13-3. Which putty for which class: our judgement, no public table',
  };
}

function classOf({ solids, grains, concentration }: Service): { place: number; reason: string } | null {
  if (solids === 'none') return { place: 0, reason: 'The pump moves clean liquid.' };
  if (solids === 'soft') {
    if (concentration === null) return null;
    return concentration === 'much'
      ? { place: 2, reason: 'Much soft material.' }
      : { place: 1, reason: 'Soft solids, not much of them.' };
  }
  if (grains === 'coarse') {
    return concentration === 'much'
      ? { place: 4, reason: 'Hard coarse grains, and much of them.' }
      : { place: 3, reason: 'Some hard coarse grains.' };
  }
  if (grains === null || concentration === null) return null;
  if (concentration === 'much') return { place: 3, reason: 'Much hard fine material.' };
  if (concentration === 'little') return { place: 2, reason: 'Hard fines in low concentration.' };
  return grains === 'silt'
    ? { place: 1, reason: 'Hard silt, a trace of it.' }
    : { place: 2, reason: 'Hard sand, a trace of it: more than silt wears.' };
}

/**
 * Where the putty of the job is not of the class advised, or its beads want a deeper bed than the deepest fill gives.
 * @param grain    largest grain of the job's putty, 0 when its data sheet does not say
 * @param deepest  deepest fill, 0 when nothing is filled
 */
export function adviceWarnings(advice: PuttyAdvice | null, grain: Mm, deepest: Mm): Warning[] {
  if (advice === null || deepest === 0 || grain === 0) return [];
  const isCoarse = grain >= COARSE_BEAD;
  if (advice.putty === 'coarse-bead' && !isCoarse && deepest >= BED * COARSE_BEAD) {
    return [
      {
        code: 'putty-too-fine',
        field: 'filler.largestGrain',
        text: `The service is ${SEVERITY_WORDS[advice.severity]}: for the deep places consider a putty with coarse ceramic beads; this one's largest grain is ${grain} mm. ${advice.source}.`,
      },
    ];
  }
  if (advice.putty === 'fine-paste' && isCoarse) {
    return [
      {
        code: 'putty-too-coarse',
        field: 'filler.largestGrain',
        text: `The service is ${SEVERITY_WORDS[advice.severity]}: a fine paste stands up to it and leaves a smoother face than beads of ${grain} mm. ${advice.source}.`,
      },
    ];
  }
  return [];
}

export const SEVERITY_WORDS: Readonly<Record<Severity, string>> = {
  clean: 'clean',
  'mildly-abrasive': 'mildly abrasive',
  abrasive: 'abrasive',
  'severely-abrasive': 'severely abrasive',
  'most-severe': 'of the most severe kind',
};
