import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { createGesture, type Deeds, type Gesture, type Pointer } from '../../../web/scene/gesture.ts';

let done: string[];
let gesture: Gesture;

beforeEach(() => {
  vi.useFakeTimers();
  done = [];
  const say =
    (name: string) =>
    (...values: number[]) => {
      done.push([name, ...values.map((value) => Math.round(value * 100) / 100)].join(' '));
    };
  const deeds: Deeds = {
    marksAt: (x) => x < 500,
    begin: say('begin'),
    draw: say('draw'),
    finish: say('finish'),
    abandon: say('abandon'),
    turn: say('turn'),
    slide: say('slide'),
    zoom: say('zoom'),
  };
  gesture = createGesture(deeds);
});
afterEach(() => vi.useRealTimers());

const pointer = (kind: Pointer['kind'], x: number, y: number, more: Partial<Pointer> = {}): Pointer => ({
  id: 1,
  kind,
  x,
  y,
  button: 0,
  turns: false,
  slides: false,
  ...more,
});
const mouse = (x: number, y: number, more: Partial<Pointer> = {}) => pointer('mouse', x, y, more);
const finger = (x: number, y: number, id = 1) => pointer('touch', x, y, { id });

describe('a mouse or a pen', () => {
  test.each(['mouse', 'pen'] as const)('the left button of a %s marks at once', (kind) => {
    gesture.down(pointer(kind, 10, 20));
    gesture.move(pointer(kind, 15, 20));
    gesture.up(pointer(kind, 15, 20));
    expect(done).toEqual(['begin 10 20', 'draw 15 20', 'finish']);
    expect(gesture.isBusy()).toBe(false);
  });

  test('beside the part it turns', () => {
    gesture.down(mouse(600, 20));
    gesture.move(mouse(590, 25));
    gesture.up(mouse(590, 25));
    expect(done).toEqual(['turn -10 5']);
  });

  test('the right button and a held key turn, the middle button and shift slide', () => {
    for (const more of [{ button: 2 }, { turns: true }, { button: 1 }, { slides: true }]) {
      gesture.down(mouse(10, 20, more));
      gesture.move(mouse(12, 20, more));
      gesture.up(mouse(12, 20, more));
    }
    expect(done).toEqual(['turn 2 0', 'turn 2 0', 'slide 2 0', 'slide 2 0']);
  });

  test('Escape calls the stroke off; what follows until the button is up does nothing', () => {
    gesture.down(mouse(10, 20));
    gesture.callOff();
    gesture.move(mouse(15, 20));
    gesture.up(mouse(15, 20));
    gesture.down(mouse(30, 20));
    expect(done).toEqual(['begin 10 20', 'abandon', 'begin 30 20']);
  });

  test('a pointer the system takes away calls the stroke off', () => {
    gesture.down(mouse(10, 20));
    gesture.lost(mouse(10, 20));
    expect(done).toEqual(['begin 10 20', 'abandon']);
  });

  test('the hand that rests beside a pen does nothing', () => {
    gesture.down(pointer('pen', 10, 20, { id: 9 }));
    gesture.down(finger(200, 200, 2));
    gesture.move(finger(220, 200, 2));
    gesture.up(finger(220, 200, 2));
    gesture.up(pointer('pen', 10, 20, { id: 9 }));
    expect(done).toEqual(['begin 10 20', 'finish']);
  });
});

describe('fingers', () => {
  test('one finger marks after 100 ms', () => {
    gesture.down(finger(10, 20));
    vi.advanceTimersByTime(99);
    expect(done).toEqual([]);
    vi.advanceTimersByTime(1);
    expect(done).toEqual(['begin 10 20']);
  });

  test('or when it has moved more than 6 px, from where it came down', () => {
    gesture.down(finger(10, 20));
    gesture.move(finger(15, 20));
    expect(done).toEqual([]);
    gesture.move(finger(17, 20));
    gesture.up(finger(17, 20));
    expect(done).toEqual(['begin 10 20', 'draw 17 20', 'finish']);
  });

  test('a quick tap marks once', () => {
    gesture.down(finger(10, 20));
    gesture.up(finger(10, 20));
    vi.advanceTimersByTime(500);
    expect(done).toEqual(['begin 10 20', 'finish']);
  });

  test('two fingers turn and zoom and never mark, however far apart in time within the wait', () => {
    gesture.down(finger(100, 100, 1));
    vi.advanceTimersByTime(80);
    gesture.down(finger(200, 100, 2));
    vi.advanceTimersByTime(500);
    gesture.move(finger(90, 100, 1));
    gesture.move(finger(210, 100, 2));
    gesture.up(finger(90, 100, 1));
    gesture.move(finger(300, 100, 2));
    gesture.up(finger(300, 100, 2));
    expect(done).toEqual(['turn -5 0', 'zoom 1.1 145 100', 'turn 5 0', 'zoom 1.09 150 100']);
    expect(gesture.isBusy()).toBe(false);
  });

  test('a second finger after the stroke has begun takes it back and leaves no mark', () => {
    gesture.down(finger(100, 100, 1));
    vi.advanceTimersByTime(150);
    gesture.down(finger(200, 100, 2));
    gesture.up(finger(200, 100, 2));
    gesture.up(finger(100, 100, 1));
    expect(done).toEqual(['begin 100 100', 'abandon']);
    gesture.down(finger(100, 100, 3));
    vi.advanceTimersByTime(150);
    expect(done.at(-1)).toBe('begin 100 100');
  });

  test('a finger that stays after a pinch begins nothing', () => {
    gesture.down(finger(100, 100, 1));
    gesture.down(finger(200, 100, 2));
    gesture.up(finger(200, 100, 2));
    gesture.move(finger(140, 100, 1));
    gesture.down(finger(220, 100, 3));
    gesture.move(finger(240, 100, 3));
    gesture.up(finger(240, 100, 3));
    gesture.up(finger(140, 100, 1));
    expect(done).toEqual([]);
  });

  test('a third finger ends the turning', () => {
    for (const id of [1, 2, 3]) gesture.down(finger(100 * id, 100, id));
    gesture.move(finger(50, 100, 1));
    for (const id of [1, 2, 3]) gesture.up(finger(100 * id, 100, id));
    expect(done).toEqual([]);
    expect(gesture.isBusy()).toBe(false);
  });

  test('a finger that is taken away while it waits marks nothing', () => {
    gesture.down(finger(10, 20));
    gesture.lost(finger(10, 20));
    vi.advanceTimersByTime(500);
    expect(done).toEqual([]);
  });
});
