import { Button } from '@mantine/core';
import type { FinishSystem } from '../../../../shared/contract/finish.ts';
import { finishKindLabels } from '../../../../shared/finish.ts';
import { fullDay } from '../../../parts/days.ts';
import { Facts } from '../../../parts/facts.tsx';
import { Mark } from '../../../parts/mark.tsx';
import { Cautions } from '../../finish-room/cautions.tsx';
import classes from '../scale-item.module.css';
import { systemFacts } from './system-words.ts';

interface SystemItemProps {
  system: FinishSystem;
  canEdit: boolean;
  onEdit: () => void;
}

/** One finish of the shop: what its sheet says, and how old that sheet is. */
export function SystemItem({ system, canEdit, onEdit }: SystemItemProps) {
  const { name, kind, sheet, active } = system;
  return (
    <article className={classes.scale} aria-label={name}>
      <div className={classes.words}>
        <span className={classes.name}>{name}</span>
        {active ? null : <Mark kind="attention">Out of use</Mark>}
        <span className={classes.quiet}>
          {finishKindLabels[kind]}, data sheet {sheet.revision} of {fullDay(sheet.datedOn)}
        </span>
        <Facts facts={systemFacts(system)} />
        <Cautions cautions={system.cautions} />
      </div>
      {canEdit ? (
        <Button variant="default" onClick={onEdit} aria-label={`Change ${name}`}>
          Change
        </Button>
      ) : null}
    </article>
  );
}
