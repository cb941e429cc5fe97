import { Component, type ReactNode } from 'react';

interface GuardState {
  readonly reason: string | null;
}

/** Keeps the rest of the screen when the picture of the part cannot be drawn, and says why. React asks for a class here. */
export class StageGuard extends Component<{ readonly children: ReactNode }, GuardState> {
  override state: GuardState = { reason: null };

  static getDerivedStateFromError(error: unknown): GuardState {
    return { reason: error instanceof Error ? error.message : String(error) };
  }

  override render() {
    if (this.state.reason === null) return this.props.children;
    return (
      <div className="stage-failed" role="alert">
        <h2>The part cannot be drawn here.</h2>
        <p>Sizes, marks, figures and the sheet work all the same. Mark the wear by typing.</p>
        <p className="quiet">{this.state.reason}</p>
      </div>
    );
  }
}
