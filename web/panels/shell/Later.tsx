import type { ReactNode } from 'react';
import { type LaterPiece, useLaterPiece } from './later-pieces.ts';

interface LaterProps {
  readonly piece: LaterPiece;
  /** What stands in its place until it is there. */
  readonly waiting: ReactNode;
}

/** A piece of the screen that is fetched after the first page. */
export function Later({ piece, waiting }: LaterProps) {
  const Piece = useLaterPiece(piece);
  if (Piece === 'coming') return waiting;
  if (Piece !== 'missing') return <Piece />;
  return (
    <div className="section" role="alert">
      <h2>This could not be loaded.</h2>
      <p>Your job is as it was. Save it to a file, then load the page again.</p>
    </div>
  );
}
