import type { Bar } from './time-line-layout.ts';

/** A word above a bar of the hands. */
export interface BarWord {
  readonly id: string;
  readonly text: string;
  /** px, of its left end. */
  readonly x: number;
}

/** px of a letter of 14 px, the widest of a word taken on the mean, and between two words. */
const LETTER = 7.6;
const APART = 6;

/** Words where there is room for them: mixes and coats first, then the others in their order. */
export function barWords(bars: readonly Bar[], width: number): BarWord[] {
  const taken: { readonly from: number; readonly to: number }[] = [];
  const words: BarWord[] = [];
  const isFirst = ({ step }: Bar) => step.kind === 'fill' || step.kind === 'coat';
  for (const bar of [...bars.filter(isFirst), ...bars.filter((bar) => !isFirst(bar))]) {
    const text = wordOf(bar);
    const to = bar.x + text.length * LETTER;
    const isFree = taken.every((other) => to + APART <= other.from || bar.x >= other.to + APART);
    if (!isFree || to > width) continue;
    taken.push({ from: bar.x, to });
    words.push({ id: bar.step.id, text, x: bar.x });
  }
  return words;
}

function wordOf({ step: { kind, batch, coat, coatMix } }: Bar): string {
  if (kind === 'fill') return String(batch);
  if (kind === 'coat') return coatMix === null || coatMix === 1 ? `coat ${coat}` : `${coat}.${coatMix}`;
  return SHORT[kind] ?? kind;
}

const SHORT: Readonly<Partial<Record<Bar['step']['kind'], string>>> = {
  'blow-down': 'blow',
  'touch-test': 'touch',
  'dress-hard': 'dress',
};
