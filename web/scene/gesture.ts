/**
 * What a hand on the picture means: one finger, pen or left button marks where there is something to mark; two fingers, the right
 * button or a held key turn; a second finger calls off what the first began. Knows nothing of the page: pointers in, deeds out.
 */

export interface Pointer {
  readonly id: number;
  readonly kind: 'mouse' | 'pen' | 'touch';
  /** px from the top left of the picture. */
  readonly x: number;
  readonly y: number;
  /** 0 left or touch, 1 middle, 2 right. */
  readonly button: number;
  /** A key is held that turns. */
  readonly turns: boolean;
  /** A key is held that slides. */
  readonly slides: boolean;
}

export interface Deeds {
  /** Whether a press at this place marks; elsewhere it turns. */
  marksAt(x: number, y: number): boolean;
  begin(x: number, y: number): void;
  draw(x: number, y: number): void;
  finish(): void;
  abandon(): void;
  turn(dx: number, dy: number): void;
  slide(dx: number, dy: number): void;
  /** Comes `factor` nearer about a place. */
  zoom(factor: number, x: number, y: number): void;
}

export interface Gesture {
  down(pointer: Pointer): void;
  move(pointer: Pointer): void;
  up(pointer: Pointer): void;
  /** The system took the pointer away. */
  lost(pointer: Pointer): void;
  /** Calls off what is in hand (Escape). */
  callOff(): void;
  /** True while something is in hand. */
  isBusy(): boolean;
}

/** A finger waits this long, ms, or until it has moved this far, px, before it marks: the second finger of a pinch lands later. */
const WAIT = 100;
const SLACK = 6;

type State =
  | { readonly doing: 'nothing' }
  | {
      readonly doing: 'waiting';
      readonly id: number;
      readonly x: number;
      readonly y: number;
      readonly timer: ReturnType<typeof setTimeout>;
    }
  | { readonly doing: 'marking'; readonly id: number; readonly kind: Pointer['kind'] }
  | {
      readonly doing: 'turning' | 'sliding';
      readonly id: number;
      readonly kind: Pointer['kind'];
      readonly x: number;
      readonly y: number;
    }
  | { readonly doing: 'pinching'; readonly ids: readonly [number, number] }
  /** Over, but fingers are still down: nothing begins until all are lifted. */
  | { readonly doing: 'spent' };

export function createGesture(deeds: Deeds): Gesture {
  let state: State = { doing: 'nothing' };
  const fingers = new Map<number, readonly [x: number, y: number]>();

  const startMarking = (id: number, kind: Pointer['kind'], x: number, y: number) => {
    state = { doing: 'marking', id, kind };
    deeds.begin(x, y);
  };
  const press = (pointer: Pointer) => {
    const { id, kind, x, y, button } = pointer;
    if (button === 1 || (pointer.slides && button === 0)) state = { doing: 'sliding', id, kind, x, y };
    else if (button !== 0 || pointer.turns || !deeds.marksAt(x, y))
      state = { doing: 'turning', id, kind, x, y };
    else if (kind !== 'touch') startMarking(id, kind, x, y);
    else {
      const timer = setTimeout(() => startMarking(id, kind, x, y), WAIT);
      state = { doing: 'waiting', id, x, y, timer };
    }
  };
  const secondFinger = () => {
    if (state.doing === 'waiting') clearTimeout(state.timer);
    if (state.doing === 'marking') deeds.abandon();
    const [a, b] = fingers.keys();
    state = { doing: 'pinching', ids: [a, b] };
  };
  const pinch = (ids: readonly [number, number], id: number, x: number, y: number) => {
    const [a, b] = ids.map((known) => fingers.get(known) ?? [x, y]);
    fingers.set(id, [x, y]);
    const [c, d] = ids.map((known) => fingers.get(known) ?? [x, y]);
    const before = Math.hypot(b[0] - a[0], b[1] - a[1]);
    const now = Math.hypot(d[0] - c[0], d[1] - c[1]);
    const middle = [(c[0] + d[0]) / 2, (c[1] + d[1]) / 2] as const;
    deeds.turn(middle[0] - (a[0] + b[0]) / 2, middle[1] - (a[1] + b[1]) / 2);
    if (before > 1 && now > 1) deeds.zoom(now / before, middle[0], middle[1]);
  };
  const end = (pointer: Pointer, how: 'up' | 'lost') => {
    fingers.delete(pointer.id);
    switch (state.doing) {
      case 'waiting':
        if (state.id !== pointer.id) return;
        clearTimeout(state.timer);
        if (how === 'up') {
          deeds.begin(state.x, state.y);
          deeds.finish();
        }
        state = { doing: 'nothing' };
        return;
      case 'marking':
        if (state.id !== pointer.id) return;
        if (how === 'up') deeds.finish();
        else deeds.abandon();
        state = { doing: 'nothing' };
        return;
      case 'turning':
      case 'sliding':
        if (state.id === pointer.id) state = { doing: 'nothing' };
        return;
      default:
        state = { doing: fingers.size > 0 ? 'spent' : 'nothing' };
    }
  };

  return {
    down(pointer) {
      if (pointer.kind === 'touch') {
        // The heel of a hand that holds a pen is no finger.
        const hasOther = 'kind' in state && state.kind !== 'touch';
        if (hasOther) return;
        fingers.set(pointer.id, [pointer.x, pointer.y]);
        if (fingers.size === 2 && state.doing !== 'spent') return secondFinger();
        if (fingers.size > 2) {
          state = { doing: 'spent' };
          return;
        }
      }
      if (state.doing === 'nothing') press(pointer);
    },
    move(pointer) {
      const { id, x, y } = pointer;
      switch (state.doing) {
        case 'waiting':
          if (state.id !== id || Math.hypot(x - state.x, y - state.y) <= SLACK) break;
          clearTimeout(state.timer);
          startMarking(id, 'touch', state.x, state.y);
          deeds.draw(x, y);
          break;
        case 'marking':
          if (state.id === id) deeds.draw(x, y);
          break;
        case 'turning':
        case 'sliding': {
          if (state.id !== id) break;
          const [dx, dy] = [x - state.x, y - state.y];
          if (state.doing === 'turning') deeds.turn(dx, dy);
          else deeds.slide(dx, dy);
          state = { ...state, x, y };
          break;
        }
        case 'pinching':
          if (state.ids.includes(id)) return pinch(state.ids, id, x, y);
          break;
        default:
      }
      if (fingers.has(id)) fingers.set(id, [x, y]);
    },
    up: (pointer) => end(pointer, 'up'),
    lost: (pointer) => end(pointer, 'lost'),
    callOff() {
      if (state.doing === 'waiting') clearTimeout(state.timer);
      if (state.doing === 'marking') deeds.abandon();
      if (state.doing !== 'nothing') state = { doing: 'spent' };
    },
    isBusy: () => state.doing !== 'nothing',
  };
}
