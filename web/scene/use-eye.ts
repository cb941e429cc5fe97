import { useThree } from '@react-three/fiber';
import { useEffect } from 'react';
import type { PerspectiveCamera } from 'three';
import type { Mm } from '../../geometry/units.ts';
import { LENS } from './camera.ts';
import type { Viewport } from './viewport.ts';

/**
 * The library's camera goes where the viewport's eye is.
 * @param reach  how far things stand behind what is looked at, mm; null where the eye never comes so near that it matters
 */
export function useEye(viewport: Viewport, reach: Mm | null = null): void {
  const camera = useThree((three) => three.camera) as PerspectiveCamera;
  const invalidate = useThree((three) => three.invalidate);
  useEffect(() => {
    const follow = () => {
      const { eye, up, into } = viewport.sight();
      const { distance } = viewport.rig();
      const { width, height } = viewport.screen();
      camera.position.set(...eye);
      camera.up.set(...up);
      camera.lookAt(eye[0] + into[0], eye[1] + into[1], eye[2] + into[2]);
      camera.fov = (LENS / Math.PI) * 180;
      camera.aspect = width / height;
      camera.near = distance / 50;
      camera.far = reach === null ? distance * 20 : distance + 3 * reach;
      camera.updateProjectionMatrix();
      invalidate();
    };
    follow();
    return viewport.onChange(follow);
  }, [viewport, reach, camera, invalidate]);
}
