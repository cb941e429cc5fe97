import { useThree } from '@react-three/fiber';
import { useEffect } from 'react';

/** A tablet takes the context away in the background; once it is back the picture stays blank until a frame is asked for. */
export function useLostContext(): void {
  const gl = useThree((three) => three.gl);
  const invalidate = useThree((three) => three.invalidate);
  useEffect(() => {
    const canvas = gl.domElement;
    const lost = (event: Event) => event.preventDefault();
    const restored = () => requestAnimationFrame(() => invalidate());
    canvas.addEventListener('webglcontextlost', lost);
    canvas.addEventListener('webglcontextrestored', restored);
    return () => {
      canvas.removeEventListener('webglcontextlost', lost);
      canvas.removeEventListener('webglcontextrestored', restored);
    };
  }, [gl, invalidate]);
}
