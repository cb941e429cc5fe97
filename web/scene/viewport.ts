/**
 * One 3D picture: its size and where its eye stands. Outside React: turning the part moves numbers and DOM attributes, no component.
 */
import type { Fraction } from '../../geometry/units.ts';
import {
  type Covered,
  presetRig,
  type Rig,
  type Screen,
  type Shown,
  type Sight,
  sightOf,
  slid,
  turned,
  type ViewName,
  zoomed,
} from './camera.ts';

export interface Viewport {
  readonly sight: () => Sight;
  readonly rig: () => Rig;
  readonly screen: () => Screen;
  resize(screen: Screen): void;
  /** Sets what is looked at and what covers the picture's edges. Keeps a view the person has chosen when the size hardly differs. */
  show(shown: Shown, covered: Covered): void;
  go(view: ViewName): void;
  /** Stands the eye somewhere of its own. */
  look(rig: Rig): void;
  turn(dx: number, dy: number): void;
  slide(dx: number, dy: number): void;
  zoom(factor: number, x: number, y: number): void;
  /** Hears of every change. @returns stops it */
  onChange(listener: () => void): () => void;
}

/** How near, unless told otherwise, and how far the eye may go, as shares of the distance that shows all. */
const NEAREST = 0.06;
const FURTHEST = 2.5;

export function createViewport({ nearest = NEAREST }: { readonly nearest?: Fraction } = {}): Viewport {
  let screen: Screen = { width: 800, height: 600 };
  let shown: Shown = {
    middle: [0, 0, 0],
    points: [
      [-100, 0, 0],
      [100, 0, 0],
    ],
  };
  let covered: Covered = { top: 0, bottom: 0, side: 0 };
  let view: ViewName | null = 'angled';
  let rig = presetRig('angled', shown, screen, covered);
  let sight = sightOf(rig, screen);
  const listeners = new Set<() => void>();

  const change = (next: Rig) => {
    rig = next;
    sight = sightOf(rig, screen);
    for (const listener of listeners) listener();
  };
  const preset = (name: ViewName) => presetRig(name, shown, screen, covered);
  const go = (name: ViewName) => {
    view = name;
    change(preset(name));
  };
  return {
    sight: () => sight,
    rig: () => rig,
    screen: () => screen,
    resize(next) {
      if (next.width === screen.width && next.height === screen.height) return;
      screen = next;
      // A view the person has not touched stays fitted; one they chose stays where it is.
      change(view === null ? rig : preset(view));
    },
    show(next, edges) {
      if (isSame(next, shown) && isSame(edges, covered)) return;
      const grown = reachOf(next) / reachOf(shown);
      shown = next;
      covered = edges;
      if (view !== null) change(preset(view));
      else if (grown > 1.6 || grown < 0.6) go('angled');
    },
    go,
    look(next) {
      view = null;
      change(next);
    },
    turn(dx, dy) {
      if (dx === 0 && dy === 0) return;
      view = null;
      change(turned(rig, dx, dy));
    },
    slide(dx, dy) {
      view = null;
      change(slid(rig, dx, dy, screen));
    },
    zoom(factor, x, y) {
      view = null;
      const whole = preset('angled').distance;
      change(zoomed(rig, factor, x, y, screen, [whole * nearest, whole * FURTHEST]));
    },
    onChange(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}

/** How far the points lie from the middle, mm. */
function reachOf({ middle, points }: Shown): number {
  return Math.max(...points.map((point) => Math.hypot(...point.map((value, k) => value - middle[k]))));
}

function isSame(a: object, b: object): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}
