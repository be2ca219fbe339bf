import { Button, Group } from '@mantine/core';
import { useState } from 'react';
import { decimal } from '../../../shared/measure.ts';
import { momentText } from '../../parts/days.ts';
import { Mark } from '../../parts/mark.tsx';
import { ScaleChecks } from './scale-checks.tsx';
import classes from './scale-item.module.css';
import type { Scale } from './scales.tsx';

interface ScaleItemProps {
  scale: Scale;
  isOwner: boolean;
  onCheck: () => void;
  onEdit: () => void;
}

function lastCheck({ lastCheck: check }: Scale): string {
  if (check === null) return 'Never checked.';
  const error = decimal(check.worstErrorLbf, 2);
  return `Checked ${momentText(check.checkedAt)} by ${check.checkedBy}; worst error ${error} lb.`;
}

/** Read only when somebody opens it: a shop checks every scale every day. */
function EarlierChecks({ scale }: { scale: Scale }) {
  const [isOpen, setOpen] = useState(false);
  return (
    <div className={classes.past}>
      <Button
        variant="subtle"
        aria-expanded={isOpen}
        aria-label={`${isOpen ? 'Fold the checks away' : 'Checks and drift'}: ${scale.name}`}
        onClick={() => setOpen(!isOpen)}
      >
        {isOpen ? 'Fold the checks away' : 'Checks and drift'}
      </Button>
      {isOpen ? <ScaleChecks scaleId={scale.id} name={scale.name} /> : null}
    </div>
  );
}

/** One scale: whether it may weigh today, or why not. */
export function ScaleItem({ scale, isOwner, onCheck, onEdit }: ScaleItemProps) {
  return (
    <article className={classes.scale} aria-label={scale.name}>
      <div className={classes.words}>
        <span className={classes.name}>{scale.name}</span>
        {scale.usable ? (
          <Mark kind="done">May weigh today</Mark>
        ) : (
          <Mark kind="attention">{scale.active ? scale.reason : 'Out of use'}</Mark>
        )}
        <span className={classes.quiet}>
          {lastCheck(scale)} Reads to {decimal(scale.resolutionLbf, 3)} lb.
        </span>
      </div>
      <Group gap="xs">
        {scale.active ? (
          <Button onClick={onCheck} aria-label={`Check with two loads: ${scale.name}`}>
            Check with two loads
          </Button>
        ) : null}
        {isOwner ? (
          <Button variant="default" onClick={onEdit} aria-label={`Change ${scale.name}`}>
            Change
          </Button>
        ) : null}
      </Group>
      {scale.lastCheck === null ? null : <EarlierChecks scale={scale} />}
    </article>
  );
}
