import type { Mode } from './bench-view.tsx';
import { BigButton } from './big-button.tsx';

interface SideButtonsProps {
  mode: Mode;
  onMode: (mode: Mode) => void;
  canWeigh: boolean;
  /** Drops a weighing that was begun by hand; null where the step asks for it. */
  onNoWeighing: (() => void) | null;
}

/** The ways that are always there: weigh, undo, strike out. */
export function SideButtons({ mode, onMode, canWeigh, onNoWeighing }: SideButtonsProps) {
  return (
    <>
      {mode === 'step' && canWeigh ? (
        <BigButton onClick={() => onMode('weigh')}>Weigh again</BigButton>
      ) : null}
      {onNoWeighing === null ? null : <BigButton onClick={onNoWeighing}>Do not weigh</BigButton>}
      {(['undo', 'strike'] as const).map((one) => (
        <BigButton key={one} onClick={() => onMode(mode === one ? 'step' : one)}>
          {mode === one ? 'Back' : one === 'undo' ? 'Undo' : 'Strike out'}
        </BigButton>
      ))}
    </>
  );
}
