import type { ReactNode } from 'react';
import { useLocation } from 'wouter';
import { BigButton } from './big-button.tsx';
import { GlassFull } from './glass-full.tsx';
import { SandFull } from './sand-full.tsx';
import type { Seen, SeenStep } from './seen.ts';
import { stepName } from './step-name.ts';
import { StopScreen } from './stop-screen.tsx';
import { StopWords } from './stop-words.tsx';
import { useBenchKeys } from './use-bench-keys.ts';
import type { StepWrites } from './use-step-writes.ts';

type FullKind = 'stop' | 'glass' | 'sand';
export type FullSeen = Seen & { step: Extract<SeenStep, { kind: FullKind }> };

const fullKinds: readonly string[] = ['stop', 'glass', 'sand'] satisfies FullKind[];

export const isFull = (seen: Seen): seen is FullSeen => fullKinds.includes(seen.step.kind);

export interface FullStepProps {
  seen: FullSeen;
  writes: StepWrites;
  side: ReactNode;
  /** The bench around what follows the full screen. */
  shell: (work: ReactNode) => ReactNode;
}

/** Steps that fill the screen before anything else is done. */
export function FullStep(props: FullStepProps) {
  const { seen, side } = props;
  const { step } = seen;
  const key = stepName(seen);
  if (step.kind === 'glass') return <GlassFull key={key} {...props} />;
  if (step.kind === 'sand') return <SandFull key={key} {...props} />;
  return (
    <StopScreen
      key={key}
      kind={step.tone}
      words={step.words}
      actions={
        <>
          <WayButton way={step.way} />
          {side}
        </>
      }
    >
      <StopWords seen={seen} why={step.why} isTold={step.tone === 'attention'} />
    </StopScreen>
  );
}

function WayButton({ way }: { way: { label: string; href: string } }) {
  const [, go] = useLocation();
  const open = () => go(way.href);
  useBenchKeys({ onConfirm: open });
  return (
    <BigButton kind="main" keyHint="Enter" onClick={open}>
      {way.label}
    </BigButton>
  );
}
