import { PerspectiveCamera } from '@react-three/drei';
import { Canvas, useFrame, useThree } from '@react-three/fiber';
import { useEffect, useMemo } from 'react';
import { type LivePart, onTouched } from '../wear/live-faces.ts';
import type { DepthScale } from './depth-scale.ts';
import { type DrawnPart, drawnPart } from './drawn-part.ts';
import { rendererKind } from './renderer-kind.ts';
import { useEye } from './use-eye.ts';
import { useLostContext } from './use-lost-context.ts';
import { usePixels } from './use-pixels.ts';
import type { Viewport } from './viewport.ts';

interface PartCanvasProps {
  readonly live: LivePart;
  readonly viewport: Viewport;
  /** Times its true depth that the wear is drawn. */
  readonly times: number;
  readonly scale: DepthScale;
}

/** Pointers are answered by the shapes themselves, never by triangles. */
const NO_EVENTS = () => ({ enabled: false, priority: 0 });

/** The part itself, drawn when something has changed and never else. */
export function PartCanvas(props: PartCanvasProps) {
  const byChip = rendererKind() === 'chip';
  return (
    <Canvas
      frameloop="demand"
      flat
      dpr={usePixels(props.viewport)}
      gl={{ antialias: byChip, alpha: true, powerPreference: 'high-performance' }}
      events={NO_EVENTS}
    >
      <Scene {...props} />
    </Canvas>
  );
}

function Scene({ live, viewport, times, scale }: PartCanvasProps) {
  const gl = useThree((three) => three.gl);
  const invalidate = useThree((three) => three.invalidate);
  // biome-ignore lint/correctness/useExhaustiveDependencies: only another shape needs other meshes; the maps are taken over below
  const drawn = useMemo(() => drawnPart(live), [live.part]);
  useEffect(() => () => drawn.dispose(), [drawn]);
  useEffect(() => {
    drawn.takeAll(live);
    invalidate();
  }, [drawn, live, invalidate]);
  useEffect(
    () =>
      onTouched((face, block) => {
        drawn.take(face, block);
        invalidate();
      }),
    [drawn, invalidate],
  );
  // biome-ignore lint/correctness/useExhaustiveDependencies: another look is another frame
  useEffect(() => invalidate(), [times, scale, invalidate]);
  useFrame(() => drawn.look({ times, scale, pixel: gl.getPixelRatio() }));
  useEye(viewport);
  useLostContext();
  return (
    <>
      <PerspectiveCamera makeDefault manual />
      <Objects drawn={drawn} />
    </>
  );
}

function Objects({ drawn }: { readonly drawn: DrawnPart }) {
  return drawn.objects.map((object) => <primitive key={object.id} object={object} />);
}
