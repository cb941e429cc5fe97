import type { LivePart } from '../wear/live-faces.ts';
import type { Viewport } from './viewport.ts';

/** What a drawing over the 3D picture is given: the part, and where the eye stands. */
export interface OverlayProps {
  readonly live: LivePart;
  readonly viewport: Viewport;
}
