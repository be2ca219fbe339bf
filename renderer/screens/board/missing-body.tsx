import { Button, Group, Stack } from '@mantine/core';
import { useState } from 'react';
import type { MissingItem } from '../../../shared/gates.ts';
import { MissingList } from '../../parts/missing-list.tsx';
import { ReasonForm } from '../../parts/reason-form.tsx';
import { placeToFix } from './place-to-fix.ts';

interface MissingBodyProps {
  orderId: string;
  missing: readonly MissingItem[];
  isOwner: boolean;
  command: Parameters<typeof ReasonForm>[0]['command'];
  onOverride: (reason: string) => void;
  onClose: () => void;
}

/** Why a card stayed where it was; the owner may let some of it pass. */
export function MissingBody(props: MissingBodyProps) {
  const { orderId, missing, isOwner, command, onOverride, onClose } = props;
  const [giving, setGiving] = useState(false);
  const passable = isOwner && missing.every((item) => item.override === 'owner');
  return (
    <Stack>
      <MissingList
        missing={missing}
        wayTo={(item) => ({ href: placeToFix(orderId, item) })}
        nameGates
        showBarred={isOwner}
      />
      {giving ? (
        <ReasonForm
          inDialog
          title="Let it pass"
          label="Why may it pass?"
          submitLabel="Let it pass"
          command={command}
          onSubmit={onOverride}
          onCancel={() => setGiving(false)}
        />
      ) : (
        <Group>
          <Button variant="default" onClick={onClose}>
            Leave it where it is
          </Button>
          {passable ? (
            <Button variant="subtle" color="brick" onClick={() => setGiving(true)}>
              Let it pass with a reason
            </Button>
          ) : null}
        </Group>
      )}
    </Stack>
  );
}
