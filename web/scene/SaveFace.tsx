import { Download } from 'lucide-react';
import { Button } from 'react-aria-components';
import { handOver } from '../files/hand-over.ts';
import { jobStore } from '../job/job-store.ts';
import { liveFace, livePart } from '../wear/live-faces.ts';
import { estimateStore } from '../worker/estimate-client.ts';
import { faceFile } from './face-file.ts';

interface SaveFaceProps {
  readonly part: string;
  readonly face: string;
  /** Depth the colours are made for, mm. */
  readonly scaledFor: number;
}

/** Hands the picture of the face over as a file to print at 1 : 1. */
export function SaveFace({ part, face, scaledFor }: SaveFaceProps) {
  const save = () => {
    const [live, whole] = [liveFace(part, face), livePart(part)];
    if (live === undefined || whole === undefined) return;
    const { name, text } = faceFile(
      whole,
      live,
      jobStore.getState().job,
      estimateStore.getState().result,
      scaledFor,
    );
    handOver(name, text, 'image/svg+xml');
  };
  return (
    <Button className="flat-button" aria-label="Save as SVG" onPress={() => onceWorkedOut(save)}>
      <Download aria-hidden="true" />
      <span className="flat-button-words">Save as SVG</span>
    </Button>
  );
}

/** Does it now, or once the figures of the newest job are there: regions are numbered by them. */
function onceWorkedOut(act: () => void): void {
  if (!estimateStore.getState().pending) {
    act();
    return;
  }
  const stop = estimateStore.subscribe(({ pending }) => {
    if (pending) return;
    stop();
    act();
  });
}
