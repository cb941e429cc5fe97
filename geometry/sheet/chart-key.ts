import { html, type Markup } from './markup.ts';

/** A sample of what stands in a drawing, and the words for it. */
export type Key<Sample> = readonly [sample: Sample, words: string];

/** Height of a row, in letters. */
export const KEY_ROW = 1.7;
/** Width of a letter, and what stands free on both sides of the words, in letters. */
const LETTER = 0.54;
const FREE = 1.8;

interface KeySizes {
  /** Of a letter, px. */
  readonly text: number;
  /** Width of a sample, in letters. */
  readonly sample: number;
}

/**
 * The keys in rows that fit.
 * @param width  px of the drawing
 */
export function keyRows<Sample>(
  keys: readonly Key<Sample>[],
  width: number,
  sizes: KeySizes,
): (readonly Key<Sample>[])[] {
  const rows: Key<Sample>[][] = [[]];
  let taken = 0;
  for (const key of keys) {
    const room = keyWidth(key, sizes);
    if (taken > 0 && taken + room > width - 0.4 * sizes.text) {
      rows.push([]);
      taken = 0;
    }
    rows[rows.length - 1].push(key);
    taken += room;
  }
  return rows;
}

/**
 * The rows drawn from `top` down, px.
 * @param wordClass  of the words
 * @param swatch     draws a sample from its left end at half the height of the row
 */
export function keyMarkup<Sample>(
  rows: readonly (readonly Key<Sample>[])[],
  top: number,
  sizes: KeySizes,
  wordClass: string,
  swatch: (sample: Sample, x: number, y: number) => Markup,
): Markup {
  const { text, sample } = sizes;
  return html`<g>${rows.flatMap((row, i) => {
    const y = top + (i + 0.5) * KEY_ROW * text;
    let x = 0.2 * text;
    return row.map((key) => {
      const at = x;
      x += keyWidth(key, sizes);
      return html`${swatch(key[0], at, y)}<text class="${wordClass}" x="${short(at + (sample + 0.5) * text)}" y="${short(y)}" dy="0.35em">${key[1]}</text>`;
    });
  })}</g>`;
}

const keyWidth = ([, words]: Key<unknown>, { text, sample }: KeySizes): number =>
  (sample + FREE + LETTER * words.length) * text;

const short = (value: number): string => String(Math.round(value * 100) / 100);
