import { Component, type ReactNode } from 'react';
import { MarkShape } from './StatusMark';

interface State {
  message: string | undefined;
}

/** Where a screen cannot be loaded or breaks: said in its place, with all else still there. A class, as React has it no other way. */
export class FaultBoundary extends Component<{ children: ReactNode }, State> {
  override state: State = { message: undefined };

  static getDerivedStateFromError(fault: unknown): State {
    return { message: fault instanceof Error ? fault.message : String(fault) };
  }

  override render(): ReactNode {
    const { message } = this.state;
    if (message === undefined) return this.props.children;
    return (
      <div className="complaint" role="alert">
        <MarkShape mark="stop" />
        <div>
          <p>
            <b>This screen cannot be shown: {message}.</b> All that was typed is kept. Without a network it
            may not have been loaded yet; else it is a fault of ours.
          </p>
          <button type="button" className="btn line" onClick={() => location.reload()}>
            Load the page again
          </button>
        </div>
      </div>
    );
  }
}
