import type { Screen } from './camera.ts';

export type ScreenPoint = readonly [x: number, y: number];

export interface ScreenBox {
  readonly x0: number;
  readonly x1: number;
  readonly y0: number;
  readonly y1: number;
}

/** A stretch of a mix as it is seen, px from the top left. */
export interface SeenStretch {
  readonly batch: number;
  readonly isLit: boolean;
  /** Around all of it that is seen. */
  readonly box: ScreenBox;
  /** Places within it that are seen, the best first. */
  readonly within: readonly ScreenPoint[];
}

export interface BatchTag {
  readonly batch: number;
  readonly isLit: boolean;
  /** The one that says what is in the mix, or as much of it as has room; the mix's other stretches have their number alone. */
  readonly isLead: boolean;
  readonly text: string;
  /** Of its middle. */
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

/** px: how high a tag is, how wide a letter, and what stands free on both sides of the words. */
export const TAG_HEIGHT = 24;
const LETTER = 7.6;
const PAD = 7;
/** px between a tag and what it keeps clear of, its own stretch too when it stands beside it. */
const GAP = 4;
/** px across which a stretch must be to have a number of its own. */
const WORTH_A_NUMBER = 30;

/** px of a tag with these words. */
export const tagWidth = (text: string): number => Math.round(text.length * LETTER + 2 * PAD);

/**
 * The tags of the mixes on a picture. Each mix gets one that says as much as has room, on its largest stretch where any of it fits; then
 * other stretches get their number. A tag lies within its stretch, beside one that is smaller than itself, and never on another.
 * @param stretches  those of a mix largest first
 * @param textsOf    what may be said of a mix, the most first
 * @param free       where tags may lie
 * @param taken      what they must not lie on
 */
export function batchTags(
  stretches: readonly SeenStretch[],
  textsOf: (batch: number) => readonly string[],
  free: ScreenBox,
  taken: readonly ScreenBox[],
  most: number,
): readonly BatchTag[] {
  const boxes = [...taken];
  const tags: BatchTag[] = [];
  const led = new Map<number, SeenStretch>();
  const put = (stretch: SeenStretch, text: string, isLead: boolean): boolean => {
    const width = tagWidth(text);
    for (const [x, y] of placesFor(stretch, width)) {
      const box = { x0: x - width / 2, x1: x + width / 2, y0: y - TAG_HEIGHT / 2, y1: y + TAG_HEIGHT / 2 };
      if (!isInside(box, free) || boxes.some((other) => meet(box, other))) continue;
      boxes.push(box);
      tags.push({ batch: stretch.batch, isLit: stretch.isLit, isLead, text, x, y, width });
      return true;
    }
    return false;
  };
  // The mix that is pointed at keeps its words, whatever stands around it.
  const byWish = [...stretches].sort((a, b) => Number(b.isLit) - Number(a.isLit) || a.batch - b.batch);
  for (const batch of new Set(byWish.map((stretch) => stretch.batch))) {
    if (tags.length >= most) return tags;
    const own = byWish.filter((stretch) => stretch.batch === batch);
    const lead = textsOf(batch).flatMap((text) => own.slice(0, TRIES).map((stretch) => ({ text, stretch })));
    const found = lead.find(({ text, stretch }) => put(stretch, text, true));
    if (found !== undefined) led.set(batch, found.stretch);
  }
  // Of a single mix one word is enough.
  if (led.size < 2) return tags;
  for (const stretch of byWish) {
    if (tags.length >= most) break;
    const { x0, x1, y0, y1 } = stretch.box;
    const isWorth = x1 - x0 >= WORTH_A_NUMBER && y1 - y0 >= WORTH_A_NUMBER;
    if (isWorth && led.get(stretch.batch) !== stretch) put(stretch, String(stretch.batch), false);
  }
  return tags;
}

/** Stretches of a mix that are tried for its words. */
const TRIES = 6;

/** Within the stretch where the words fit into it, else beside it. */
function placesFor({ box, within }: SeenStretch, width: number): readonly ScreenPoint[] {
  const { x0, x1, y0, y1 } = box;
  if (x1 - x0 >= width + 2 * GAP && y1 - y0 >= TAG_HEIGHT + 2 * GAP) return within;
  const [x, y] = [(x0 + x1) / 2, (y0 + y1) / 2];
  const [aside, off] = [width / 2 + GAP, TAG_HEIGHT / 2 + GAP];
  return [
    [x1 + aside, y],
    [x0 - aside, y],
    [x, y0 - off],
    [x, y1 + off],
  ];
}

const meet = (a: ScreenBox, b: ScreenBox): boolean =>
  a.x0 < b.x1 + GAP && b.x0 < a.x1 + GAP && a.y0 < b.y1 + GAP && b.y0 < a.y1 + GAP;

const isInside = (a: ScreenBox, b: ScreenBox): boolean =>
  a.x0 >= b.x0 && a.x1 <= b.x1 && a.y0 >= b.y0 && a.y1 <= b.y1;

/** A picture of a size without what buttons and scale cover. */
export function freeBox(
  { width, height }: Screen,
  covered: { readonly top: number; readonly bottom: number; readonly side: number },
): ScreenBox {
  return { x0: covered.side, x1: width - covered.side, y0: covered.top, y1: height - covered.bottom };
}
