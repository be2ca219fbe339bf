import { useLocation } from 'wouter';
import { BigButton } from './big-button.tsx';
import classes from './panels.module.css';
import type { SeenStep } from './seen.ts';
import { useBenchKeys } from './use-bench-keys.ts';

interface IdleStepProps {
  step: Extract<SeenStep, { kind: 'idle' }>;
  onWeigh: () => void;
}

/** Nothing is cut now: a bow that was never weighed is weighed, any other goes on elsewhere. */
export function IdleStep({ step, onWeigh }: IdleStepProps) {
  const [, go] = useLocation();
  const { isWeighed, way } = step;
  const open = () => go(way.href);
  useBenchKeys({ onConfirm: isWeighed ? open : onWeigh });
  return (
    <div className={classes.row}>
      {isWeighed ? null : (
        <BigButton kind="main" keyHint="Enter" onClick={onWeigh}>
          Weigh the bow
        </BigButton>
      )}
      <BigButton
        kind={isWeighed ? 'main' : 'plain'}
        keyHint={isWeighed ? 'Enter' : undefined}
        onClick={open}
      >
        {way.label}
      </BigButton>
    </div>
  );
}
