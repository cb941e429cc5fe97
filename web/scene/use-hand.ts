import { type RefObject, useEffect, useLayoutEffect, useRef } from 'react';
import { depthAt } from '../../geometry/depth/depth-at.ts';
import { toFacePoint } from '../../geometry/part/face.ts';
import type { Mm } from '../../geometry/units.ts';
import type { LiveFace } from '../wear/live-faces.ts';
import { notePointerDepth } from '../wear/live-totals.ts';
import type { GridPlace } from './face-ring.ts';
import { createGesture, type Pointer } from './gesture.ts';
import type { Hover } from './hover.ts';
import {
  abandonArea,
  abandonMark,
  beginMark,
  drawMark,
  dropPlace,
  faceInHand,
  finishArea,
  finishMark,
  isMarking,
  isReading,
  marksFace,
  takeCornerBack,
} from './marking.ts';

/** What a picture answers about places on the screen, px from its top left. */
export interface Picture {
  /** The place of a face that is seen there. */
  placeAt(x: number, y: number): { readonly live: LiveFace; readonly place: GridPlace } | null;
  /** The same on one face, carried on past its edges. */
  placeBeyond(live: LiveFace, x: number, y: number): GridPlace | null;
  turn(dx: number, dy: number): void;
  slide(dx: number, dy: number): void;
  zoom(factor: number, x: number, y: number): void;
  /** mm a px there. */
  mmAPixel(): Mm;
}

/** How near, px, a tap comes to the first corner of an area to close it. */
const CLOSE = 16;
/** A second tap this soon, ms, and this near, px, makes a double one. */
const DOUBLE = { within: 350, near: 24 } as const;

/**
 * Everything a hand does on a picture: marks, turns, comes nearer, and shows where it is. Pointers are captured and never move a
 * React state.
 */
export function useHand(area: RefObject<HTMLElement | null>, latest: Picture, hover: Hover): void {
  // A picture that changes under a stroke (another scale, the chosen face) must not break it off.
  const held = useRef(latest);
  useLayoutEffect(() => {
    held.current = latest;
  });
  useEffect(() => {
    const element = area.current;
    if (element === null) return;
    const picture: Picture = {
      placeAt: (x, y) => held.current.placeAt(x, y),
      placeBeyond: (live, x, y) => held.current.placeBeyond(live, x, y),
      turn: (dx, dy) => held.current.turn(dx, dy),
      slide: (dx, dy) => held.current.slide(dx, dy),
      zoom: (factor, x, y) => held.current.zoom(factor, x, y),
      mmAPixel: () => held.current.mmAPixel(),
    };
    let isTurning = false;
    let press = { at: Number.NEGATIVE_INFINITY, x: 0, y: 0, isDouble: false };

    const point = ({ clientX, clientY }: { clientX: number; clientY: number }) => {
      const box = element.getBoundingClientRect();
      return [clientX - box.left, clientY - box.top] as const;
    };
    const show = (x: number, y: number, byTouch: boolean) => {
      const live = faceInHand();
      const seen = picture.placeAt(x, y);
      const onLive = seen !== null && (live === null || live.face === seen.live.face);
      const beyond = live === null || onLive ? null : picture.placeBeyond(live, x, y);
      if (onLive) hover.set({ ...seen, isOnFace: true, x, y, byTouch });
      else if (live !== null && beyond !== null)
        hover.set({ live, place: beyond, isOnFace: false, x, y, byTouch });
      else hover.set(null);
      const now = hover.now();
      notePointerDepth(now?.isOnFace ? depthAt(now.live.map, now.live.face, ...now.place) : null);
    };
    const hide = () => {
      hover.set(null);
      notePointerDepth(null);
    };
    const onHand = (x: number, y: number) => {
      const live = faceInHand();
      if (live === null) return null;
      const seen = picture.placeAt(x, y);
      const place = seen?.live.face === live.face ? seen.place : picture.placeBeyond(live, x, y);
      return place === null ? null : toFacePoint(live.face, ...place);
    };

    const gesture = createGesture({
      marksAt: (x, y) => {
        if (!isMarking()) return false;
        const seen = picture.placeAt(x, y);
        return seen !== null && marksFace(seen.live) && (faceInHand() ?? seen.live).face === seen.live.face;
      },
      begin: (x, y) => {
        const seen = picture.placeAt(x, y);
        if (seen !== null) beginMark(seen.live, toFacePoint(seen.live.face, ...seen.place));
        const at = performance.now();
        const isDouble = at - press.at < DOUBLE.within && Math.hypot(x - press.x, y - press.y) < DOUBLE.near;
        press = { at, x, y, isDouble };
      },
      draw: (x, y) => {
        const at = onHand(x, y);
        if (at !== null) drawMark(at);
      },
      finish: () => finishMark(CLOSE * picture.mmAPixel(), press.isDouble),
      abandon: abandonMark,
      turn: picture.turn,
      slide: picture.slide,
      zoom: picture.zoom,
    });

    const asPointer = (event: PointerEvent): Pointer => {
      const [x, y] = point(event);
      const kind = event.pointerType === 'touch' || event.pointerType === 'pen' ? event.pointerType : 'mouse';
      return {
        id: event.pointerId,
        kind,
        x,
        y,
        button: event.button,
        turns: isTurning,
        slides: event.shiftKey,
      };
    };
    const onDown = (event: PointerEvent) => {
      element.setPointerCapture(event.pointerId);
      const pointer = asPointer(event);
      gesture.down(pointer);
      if (isMarking()) show(pointer.x, pointer.y, pointer.kind === 'touch');
    };
    const onMove = (event: PointerEvent) => {
      const pointer = asPointer(event);
      const between = event.getCoalescedEvents?.() ?? [];
      if (gesture.isBusy() && between.length > 1) for (const each of between) gesture.move(asPointer(each));
      else gesture.move(pointer);
      if (pointer.kind !== 'touch' || gesture.isBusy()) show(pointer.x, pointer.y, pointer.kind === 'touch');
    };
    const onUp = (event: PointerEvent) => {
      const pointer = asPointer(event);
      gesture.up(pointer);
      if (pointer.kind === 'touch') hide();
      else show(pointer.x, pointer.y, false);
    };
    const onLost = (event: PointerEvent) => {
      gesture.lost(asPointer(event));
      hide();
    };
    const onLeave = () => {
      if (!gesture.isBusy()) hide();
    };
    const onWheel = (event: WheelEvent) => {
      event.preventDefault();
      const lines = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? 16 : 1;
      picture.zoom(Math.exp(-event.deltaY * lines * 0.0016), ...point(event));
    };
    // A context menu, or the middle button's own scrolling, would take the pointer away; a tap for a place, the depth field the keyboard.
    const onMenu = (event: Event) => event.preventDefault();
    const onMouseDown = (event: MouseEvent) => {
      if (event.button === 1 || isReading()) event.preventDefault();
    };
    const onKeyDown = (event: KeyboardEvent) => {
      if (!isFree(event.target, element)) return;
      if (event.key === ' ') isTurning = true;
      else if (event.key === 'Escape') {
        if (gesture.isBusy()) gesture.callOff();
        else if (!abandonArea() && !dropPlace()) return;
      } else if (event.key === 'Enter' ? !finishArea() : event.key !== 'Backspace' || !takeCornerBack())
        return;
      event.preventDefault();
    };
    const onKeyUp = (event: KeyboardEvent) => {
      if (event.key === ' ') isTurning = false;
    };

    const listeners = [
      listen(element, 'pointerdown', onDown),
      listen(element, 'pointermove', onMove),
      listen(element, 'pointerup', onUp),
      listen(element, 'pointercancel', onLost),
      listen(element, 'pointerleave', onLeave),
      listen(element, 'wheel', onWheel, { passive: false }),
      listen(element, 'contextmenu', onMenu),
      listen(element, 'mousedown', onMouseDown),
      listen(window, 'keydown', onKeyDown),
      listen(window, 'keyup', onKeyUp),
    ];
    return () => {
      gesture.callOff();
      hide();
      for (const stop of listeners) stop();
    };
  }, [area, hover]);
}

/** Keys belong to the picture while it, or nothing, has the focus. */
function isFree(target: EventTarget | null, element: HTMLElement): boolean {
  return target === element || target === document.body;
}

function listen<Name extends keyof HTMLElementEventMap>(
  target: HTMLElement | Window,
  name: Name,
  answer: (event: HTMLElementEventMap[Name]) => void,
  options?: AddEventListenerOptions,
): () => void {
  const listener = answer as EventListener;
  target.addEventListener(name, listener, options);
  return () => target.removeEventListener(name, listener, options);
}
