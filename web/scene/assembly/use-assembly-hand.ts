import { type RefObject, useEffect } from 'react';
import { createGesture, type Pointer } from '../gesture.ts';
import type { Viewport } from '../viewport.ts';

export interface RotorHand {
  /** Whether a drag turns the rotor; else it turns the view. */
  isOn(): boolean;
  /** px to the right. */
  turn(dx: number): void;
}

/** A hand on the picture of both parts: one finger turns the view, or the rotor; two fingers, right button and wheel as everywhere. */
export function useAssemblyHand(
  area: RefObject<HTMLElement | null>,
  viewport: Viewport,
  rotor: RotorHand,
): void {
  useEffect(() => {
    const element = area.current;
    if (element === null) return;
    let last = 0;
    const gesture = createGesture({
      marksAt: rotor.isOn,
      begin: (x) => {
        last = x;
      },
      draw: (x) => {
        rotor.turn(x - last);
        last = x;
      },
      finish: () => {},
      abandon: () => {},
      turn: viewport.turn,
      slide: viewport.slide,
      zoom: viewport.zoom,
    });
    const asPointer = (event: PointerEvent): Pointer => {
      const box = element.getBoundingClientRect();
      return {
        id: event.pointerId,
        kind: event.pointerType === 'touch' || event.pointerType === 'pen' ? event.pointerType : 'mouse',
        x: event.clientX - box.left,
        y: event.clientY - box.top,
        button: event.button,
        turns: false,
        slides: event.shiftKey,
      };
    };
    const onDown = (event: PointerEvent) => {
      element.setPointerCapture(event.pointerId);
      gesture.down(asPointer(event));
    };
    const onWheel = (event: WheelEvent) => {
      event.preventDefault();
      const lines = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? 16 : 1;
      const box = element.getBoundingClientRect();
      viewport.zoom(
        Math.exp(-event.deltaY * lines * 0.0016),
        event.clientX - box.left,
        event.clientY - box.top,
      );
    };
    const onMove = (event: PointerEvent) => gesture.move(asPointer(event));
    const onUp = (event: PointerEvent) => gesture.up(asPointer(event));
    const onLost = (event: PointerEvent) => gesture.lost(asPointer(event));
    const onMenu = (event: Event) => event.preventDefault();
    element.addEventListener('pointerdown', onDown);
    element.addEventListener('pointermove', onMove);
    element.addEventListener('pointerup', onUp);
    element.addEventListener('pointercancel', onLost);
    element.addEventListener('wheel', onWheel, { passive: false });
    element.addEventListener('contextmenu', onMenu);
    return () => {
      gesture.callOff();
      element.removeEventListener('pointerdown', onDown);
      element.removeEventListener('pointermove', onMove);
      element.removeEventListener('pointerup', onUp);
      element.removeEventListener('pointercancel', onLost);
      element.removeEventListener('wheel', onWheel);
      element.removeEventListener('contextmenu', onMenu);
    };
  }, [area, viewport, rotor]);
}
