import { PerspectiveCamera } from '@react-three/drei';
import { Canvas, useFrame, useThree } from '@react-three/fiber';
import { useEffect, useMemo } from 'react';
import type { Mm, Rad } from '../../../geometry/units.ts';
import { type LivePart, onTouched } from '../../wear/live-faces.ts';
import type { DepthScale } from '../depth-scale.ts';
import { rendererKind } from '../renderer-kind.ts';
import { useEye } from '../use-eye.ts';
import { useLostContext } from '../use-lost-context.ts';
import { usePixels } from '../use-pixels.ts';
import type { Viewport } from '../viewport.ts';
import { drawnAssembly } from './drawn-assembly.ts';
import type { Pose } from './pose.ts';

interface AssemblyCanvasProps {
  readonly plate: LivePart;
  readonly rotor: LivePart;
  readonly pose: Pose;
  /** Angle of the cut; null when nothing is cut away. */
  readonly cut: Rad | null;
  readonly viewport: Viewport;
  readonly scale: DepthScale;
  /** How far things reach from the middle, mm. */
  readonly reach: Mm;
}

const NO_EVENTS = () => ({ enabled: false, priority: 0 });

/** Both parts, drawn when something has changed and never else. */
export function AssemblyCanvas(props: AssemblyCanvasProps) {
  const byChip = rendererKind() === 'chip';
  return (
    <Canvas
      frameloop="demand"
      flat
      dpr={usePixels(props.viewport)}
      gl={{ antialias: byChip, alpha: true, stencil: true, powerPreference: 'high-performance' }}
      onCreated={({ gl }) => {
        gl.localClippingEnabled = true;
      }}
      events={NO_EVENTS}
    >
      <Scene {...props} />
    </Canvas>
  );
}

function Scene({ plate, rotor, pose, cut, viewport, scale, reach }: AssemblyCanvasProps) {
  const gl = useThree((three) => three.gl);
  const invalidate = useThree((three) => three.invalidate);
  const { facing } = pose;
  // biome-ignore lint/correctness/useExhaustiveDependencies: only other shapes need other meshes; the maps are taken over below
  const drawn = useMemo(() => drawnAssembly(plate, rotor, facing), [plate.part, rotor.part, facing.follows]);
  useEffect(() => () => drawn.dispose(), [drawn]);
  useEffect(() => {
    drawn.takeAll(plate, rotor);
    drawn.stand(pose);
    drawn.open(cut);
    invalidate();
  }, [drawn, plate, rotor, pose, cut, invalidate]);
  useEffect(
    () =>
      onTouched((face, block) => {
        drawn.take(face, block);
        invalidate();
      }),
    [drawn, invalidate],
  );
  // biome-ignore lint/correctness/useExhaustiveDependencies: another scale is another frame
  useEffect(() => invalidate(), [scale, invalidate]);
  useFrame(() => drawn.look({ scale, pixel: gl.getPixelRatio(), mmAPixel: 1 / viewport.sight().scale }));
  useEye(viewport, reach);
  useLostContext();
  return (
    <>
      <PerspectiveCamera makeDefault manual />
      <primitive object={drawn.root} />
    </>
  );
}
