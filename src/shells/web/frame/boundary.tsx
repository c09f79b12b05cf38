/** A screen that fails must not take the others with it, nor the journal: it says what failed, and the rest stays in reach. */
import { Component, type ReactNode } from 'react';

interface BoundaryProps {
  /** What stands there instead; it is given the fault. */
  readonly instead: (fault: Error, again: () => void) => ReactNode;
  readonly children: ReactNode;
}

interface BoundaryState {
  readonly fault: Error | null;
}

/** The one class of the screens: React has no other way to catch a fault while drawing. */
export class Boundary extends Component<BoundaryProps, BoundaryState> {
  override state: BoundaryState = { fault: null };

  static getDerivedStateFromError(fault: unknown): BoundaryState {
    return { fault: fault instanceof Error ? fault : new Error(String(fault)) };
  }

  override render(): ReactNode {
    const { fault } = this.state;
    return fault === null ? this.props.children : this.props.instead(fault, () => this.setState({ fault: null }));
  }
}
