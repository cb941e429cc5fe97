import type { Caution } from '../../../geometry/job/warning.ts';
import type { PlanStepResult } from '../../../geometry/sheet/day-result.ts';

/** A caution beside its step. */
export interface StepCaution {
  readonly code: string;
  /** In two or three words, to be unfolded. */
  readonly topic: string;
  readonly text: string;
  readonly source: string;
}

export interface PlanCautions {
  readonly of: ReadonlyMap<PlanStepResult['id'], readonly StepCaution[]>;
  /** Steps at which a caution comes up for the first time in the day. */
  readonly first: ReadonlySet<PlanStepResult['id']>;
  /** What every one of them ends in, to be said once; empty when they have nothing in common. */
  readonly always: string;
}

/** What to watch for at each step of the plan. */
export function cautionsOf(steps: readonly PlanStepResult[], cautions: readonly Caution[]): PlanCautions {
  const used = cautions.filter(({ code }) => steps.some((step) => step.cautions.includes(code)));
  const always = sharedEnd(used.map(({ text }) => text));
  const seen = new Set<string>();
  const first = new Set<string>();
  const of = new Map(
    steps.map((step) => {
      const own = used.filter(({ code }) => step.cautions.includes(code));
      if (own.some(({ code }) => !seen.has(code))) first.add(step.id);
      for (const { code } of own) seen.add(code);
      return [step.id, own.map((caution) => shorter(caution, always))] as const;
    }),
  );
  return { of, first, always };
}

const TOPICS: Readonly<Record<string, string>> = {
  isolate: 'lock off',
  'blast-dust': 'blast dust',
  solvent: 'vapour',
  skin: 'skin',
  'batch-heat': 'heat of the mix',
  'dressing-dust': 'dressing dust',
  restart: 'restart',
};

function shorter({ code, text, source }: Caution, always: string): StepCaution {
  return {
    code,
    topic: TOPICS[code] ?? code,
    text: text.slice(0, text.length - always.length).trim(),
    source,
  };
}

/** The whole sentences that all texts end in; none of a single text, which would be left without any. */
function sharedEnd(texts: readonly string[]): string {
  if (texts.length < 2) return '';
  const ends = texts.map((text) => text.split(/(?<=\.) (?=[A-Z])/));
  const shared: string[] = [];
  for (let i = 1; ends.every((sentences) => sentences.length > i); i++) {
    const sentence = ends[0].at(-i);
    if (sentence === undefined || ends.some((sentences) => sentences.at(-i) !== sentence)) break;
    shared.unshift(sentence);
  }
  return shared.join(' ');
}
