import { Component, type ReactNode } from 'react';
import { useLocation } from 'wouter';
import { ErrorNote } from '../parts/notes.tsx';

interface GuardState {
  failed: boolean;
}

class Guard extends Component<{ children: ReactNode }, GuardState> {
  override state: GuardState = { failed: false };

  static getDerivedStateFromError(): GuardState {
    return { failed: true };
  }

  override render() {
    if (!this.state.failed) return this.props.children;
    return (
      <div style={{ padding: 24 }}>
        <ErrorNote
          error="This screen could not be drawn. Nothing was changed."
          againLabel="Draw it again"
          onAgain={() => this.setState({ failed: false })}
        />
      </div>
    );
  }
}

/** Keeps the frame usable when a screen fails; going elsewhere clears the failure. */
export function ScreenGuard({ children }: { children: ReactNode }) {
  const [path] = useLocation();
  return <Guard key={path}>{children}</Guard>;
}
