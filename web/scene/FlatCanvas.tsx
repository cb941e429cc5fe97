import { useEffect, useRef } from 'react';
import type { FlatOutline } from '../../geometry/sheet/flat-outline.ts';
import { useView } from '../view/view-store.ts';
import { type LiveFace, onTouched } from '../wear/live-faces.ts';
import type { DepthScale } from './depth-scale.ts';
import { type FlatImage, flatImage, type PixelBox, paint, pixelsOf } from './flat-image.ts';
import type { FlatView } from './flat-view.ts';

interface FlatCanvasProps {
  readonly live: LiveFace;
  readonly outline: FlatOutline;
  readonly view: FlatView;
  readonly scale: DepthScale;
}

/** More pixels than this take longer to place than a frame lasts; the picture is then drawn coarser and smoothed. */
const MOST_PIXELS = 900_000;

/** The colours of a face's depth. Drawn from the live map: a brush move colours the touched pixels alone. */
export function FlatCanvas({ live, outline, view, scale }: FlatCanvasProps) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const theme = useView((state) => state.theme);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another theme has another colour of sound metal
  useEffect(() => {
    const element = canvas.current;
    if (element === null) return;
    return keepDrawn(element, live, outline, view, scale);
  }, [live, outline, view, scale, theme]);
  return <canvas className="flat-canvas" ref={canvas} />;
}

/** Draws now and whenever the view or the map changes, once a frame. @returns stops it */
function keepDrawn(
  canvas: HTMLCanvasElement,
  live: LiveFace,
  outline: FlatOutline,
  view: FlatView,
  scale: DepthScale,
): () => void {
  const context = canvas.getContext('2d');
  if (context === null) return () => {};
  const sheet = document.createElement('canvas');
  const shape = new Path2D([...outline.edges, ...outline.holes].join(''));
  const metal = getComputedStyle(canvas).getPropertyValue('--flat-metal');
  let image: FlatImage | null = null;
  let touched: PixelBox | null = null;
  let frame = 0;

  const draw = () => {
    frame = 0;
    if (image === null) {
      image = placed(live, view);
      canvas.width = image.width;
      canvas.height = image.height;
      sheet.width = image.width;
      sheet.height = image.height;
      touched = { x0: 0, x1: image.width - 1, y0: 0, y1: image.height - 1 };
    }
    if (touched !== null) {
      paint(image, live.map, scale.to, touched);
      const data = new ImageData(image.pixels, image.width, image.height);
      const { x0, x1, y0, y1 } = touched;
      sheet.getContext('2d')?.putImageData(data, 0, 0, x0, y0, x1 - x0 + 1, y1 - y0 + 1);
      touched = null;
    }
    present(context, sheet, shape, image, metal);
  };
  const ask = () => {
    frame ||= requestAnimationFrame(draw);
  };
  draw();
  const stops = [
    view.onChange(() => {
      image = null;
      ask();
    }),
    onTouched((on, block) => {
      if (on.face !== live.face || image === null) return;
      const box = pixelsOf(image, block);
      touched = box === null ? touched : joined(touched, box);
      ask();
    }),
  ];
  return () => {
    cancelAnimationFrame(frame);
    for (const stop of stops) stop();
  };
}

/** The face on as many pixels as the screen has, or as there is time for. */
function placed(live: LiveFace, view: FlatView): FlatImage {
  const { width, height } = view.screen();
  const wanted = Math.min(2, window.devicePixelRatio);
  const ratio = Math.min(wanted, Math.sqrt(MOST_PIXELS / (width * height)));
  const { scale, x, y } = view.lay();
  const lay = { scale: scale * ratio, x: x * ratio, y: y * ratio };
  return flatImage(live.face, lay, Math.round(width * ratio), Math.round(height * ratio));
}

/** Sound metal, and the depths over it, within the edges of the face. */
function present(
  context: CanvasRenderingContext2D,
  sheet: HTMLCanvasElement,
  shape: Path2D,
  { width, height, lay }: FlatImage,
  metal: string,
): void {
  context.setTransform(1, 0, 0, 1, 0, 0);
  context.clearRect(0, 0, width, height);
  context.save();
  context.setTransform(lay.scale, 0, 0, lay.scale, lay.x, lay.y);
  context.clip(shape, 'evenodd');
  context.setTransform(1, 0, 0, 1, 0, 0);
  context.fillStyle = metal;
  context.fillRect(0, 0, width, height);
  context.drawImage(sheet, 0, 0);
  context.restore();
}

function joined(a: PixelBox | null, b: PixelBox): PixelBox {
  if (a === null) return b;
  return {
    x0: Math.min(a.x0, b.x0),
    x1: Math.max(a.x1, b.x1),
    y0: Math.min(a.y0, b.y0),
    y1: Math.max(a.y1, b.y1),
  };
}
