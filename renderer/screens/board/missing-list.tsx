import { Button, Group, Stack } from '@mantine/core';
import { useState } from 'react';
import { Link } from 'wouter';
import type { MissingItem } from '../../../shared/gates.ts';
import { Mark } from '../../parts/mark.tsx';
import classes from './missing-list.module.css';
import { ReasonForm } from './reason-form.tsx';

interface MissingListProps {
  orderId: string;
  missing: readonly MissingItem[];
  mayOverride: boolean;
  busy: boolean;
  onOverride: (reason: string) => void;
  onClose: () => void;
}

/** Address of the place on the order page where a missing item is put right. */
export function placeToFix(orderId: string, { section, opens }: MissingItem): string {
  const open = opens === null ? section : `${section}:${opens}`;
  return `/orders/${orderId}?open=${open}`;
}

/** Everything a gate still needs, each with the way there; the owner may let some of it pass. */
export function MissingList({
  orderId,
  missing,
  mayOverride,
  busy,
  onOverride,
  onClose,
}: MissingListProps) {
  const [giving, setGiving] = useState(false);
  const passable = mayOverride && missing.every((item) => item.override === 'owner');
  return (
    <Stack>
      <ul className={classes.list}>
        {missing.map((item) => (
          <li key={`${item.gate} ${item.item} ${item.opens}`}>
            <Link href={placeToFix(orderId, item)} className={classes.item ?? ''}>
              <Mark kind={item.override === 'never' ? 'stop' : 'attention'}>{item.sentence}</Mark>
              <span className={classes.fix}>Put right</span>
            </Link>
          </li>
        ))}
      </ul>
      {giving ? (
        <ReasonForm
          label="Why may it pass?"
          action="Let it pass"
          busy={busy}
          onReason={onOverride}
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
