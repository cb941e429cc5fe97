/** How the flat picture of a face lies on the screen: a scale and a shift. Outside React, like the viewport of the 3D picture. */
import type { FlatBox, FlatPoint } from '../../geometry/sheet/flat-frame.ts';
import type { Mm } from '../../geometry/units.ts';
import type { Screen } from './camera.ts';

/** screen = scale * flat + shift, px from the top left. */
export interface FlatLay {
  readonly scale: number;
  readonly x: number;
  readonly y: number;
}

export interface FlatView {
  lay(): FlatLay;
  screen(): Screen;
  resize(screen: Screen): void;
  /** Sets what is looked at; shows all of it when it is another. */
  show(box: FlatBox): void;
  fit(): void;
  slide(dx: number, dy: number): void;
  zoom(factor: number, x: number, y: number): void;
  toScreen(place: FlatPoint): readonly [x: number, y: number];
  toFlat(x: number, y: number): FlatPoint;
  /** Hears of every change. @returns stops it */
  onChange(listener: () => void): () => void;
}

/** px kept free about the face: numbers of the angles at the sides, buttons and a word above, scale and legend below. */
const MARGIN = { side: 40, top: 88, bottom: 96 };
/** A long strip, an unrolled bore, is shown at least this high, px: it is slid along instead. */
const LEAST_HEIGHT = 72;
const CLOSEST = 40;
const FURTHEST = 0.5;

export function createFlatView(): FlatView {
  let screen: Screen = { width: 600, height: 600 };
  let box: FlatBox = { x: -160, y: -160, width: 320, height: 320 };
  let isFitted = true;
  let lay = fitted(box, screen);
  const listeners = new Set<() => void>();
  const change = (next: FlatLay) => {
    lay = next;
    for (const listener of listeners) listener();
  };
  return {
    lay: () => lay,
    screen: () => screen,
    resize(next) {
      if (next.width === screen.width && next.height === screen.height) return;
      screen = next;
      change(isFitted ? fitted(box, screen) : lay);
    },
    show(next) {
      if (next.x === box.x && next.y === box.y && next.width === box.width && next.height === box.height)
        return;
      box = next;
      isFitted = true;
      change(fitted(box, screen));
    },
    fit() {
      isFitted = true;
      change(fitted(box, screen));
    },
    slide(dx, dy) {
      isFitted = false;
      change({ ...lay, x: lay.x + dx, y: lay.y + dy });
    },
    zoom(factor, x, y) {
      isFitted = false;
      const whole = fitted(box, screen).scale;
      const scale = Math.min(CLOSEST * whole, Math.max(FURTHEST * whole, lay.scale * factor));
      const by = scale / lay.scale;
      change({ scale, x: x - (x - lay.x) * by, y: y - (y - lay.y) * by });
    },
    toScreen: ([x, y]) => [lay.scale * x + lay.x, lay.scale * y + lay.y],
    toFlat: (x, y) => [(x - lay.x) / lay.scale, (y - lay.y) / lay.scale],
    onChange(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}

/** All of the box in the middle of the screen; of a long strip its beginning. */
function fitted(box: FlatBox, { width, height }: Screen): FlatLay {
  const side = Math.min(MARGIN.side, width / 8);
  const [top, bottom] = [Math.min(MARGIN.top, height / 6), Math.min(MARGIN.bottom, height / 4)];
  const [freeWidth, freeHeight] = [width - 2 * side, height - top - bottom];
  const whole = Math.min(freeWidth / box.width, freeHeight / box.height);
  const scale = Math.max(whole, Math.min(LEAST_HEIGHT, freeHeight) / box.height);
  const x = box.width * scale > freeWidth + 1 ? side : side + (freeWidth - box.width * scale) / 2;
  return { scale, x: x - box.x * scale, y: top + (freeHeight - box.height * scale) / 2 - box.y * scale };
}

/** The longest round length that a scale bar of at most `most` px can show: 1, 2 or 5 times a power of ten, in the given unit. */
export function scaleBarLength(scale: number, most: number, unit: Mm): Mm {
  const length = most / scale / unit;
  const power = 10 ** Math.floor(Math.log10(length));
  return unit * power * (length >= 5 * power ? 5 : length >= 2 * power ? 2 : 1);
}
