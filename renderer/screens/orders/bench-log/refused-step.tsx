import { Button } from '@mantine/core';
import { useState } from 'react';
import type { MissingItem } from '../../../../shared/gates.ts';
import { Mark } from '../../../parts/mark.tsx';
import { MissingList } from '../../../parts/missing-list.tsx';
import { ReasonForm } from '../../../parts/reason-form.tsx';
import { useOrder } from '../order-screen.tsx';
import { useWayTo } from '../use-way-to.ts';

interface RefusedStepProps {
  label: string;
  missing: readonly MissingItem[];
  command: Parameters<typeof ReasonForm>[0]['command'];
  onOverride: (reason: string) => void;
}

/** A step that was not recorded: what it needs first, and the owner's way past where there is one. */
export function RefusedStep({ label, missing, command, onOverride }: RefusedStepProps) {
  const { role } = useOrder();
  const wayTo = useWayTo();
  const [isAsking, setAsking] = useState(false);
  const mayPass = role === 'owner' && missing.every((item) => item.override === 'owner');
  return (
    <div role="alert">
      <Mark kind="stop">Not recorded. {label} needs first:</Mark>
      <MissingList missing={missing} wayTo={wayTo} nameGates showBarred={role === 'owner'} />
      {mayPass && !isAsking ? (
        <Button variant="default" mb="md" onClick={() => setAsking(true)}>
          Let it pass with a reason
        </Button>
      ) : null}
      {mayPass && isAsking ? (
        <ReasonForm
          title={`Record ${label} as it stands`}
          label="Why may it pass with this missing?"
          submitLabel="Let it pass"
          command={command}
          onSubmit={onOverride}
          onCancel={() => setAsking(false)}
        />
      ) : null}
    </div>
  );
}
