import { Button, Textarea } from '@mantine/core';
import { useState } from 'react';
import type { Finding } from '../../../../shared/contract/findings.ts';
import { api } from '../../../api/client.ts';
import { momentText } from '../../../parts/days.ts';
import { FormBox } from '../../../parts/form-box.tsx';
import { Mark, type MarkKind } from '../../../parts/mark.tsx';
import { PhotoStrip } from '../../../parts/photos/photo-strip.tsx';
import classes from '../order-page.module.css';
import { useOrderCommand } from '../use-order-command.ts';
import { gradeLabels } from './grades.ts';

const marks: Record<Finding['grade'], MarkKind> = {
  stop: 'stop',
  watch: 'attention',
  cosmetic: 'attention',
};

function ResolveForm({ finding, onDone }: { finding: Finding; onDone: () => void }) {
  const [how, setHow] = useState('');
  const [isTried, setTried] = useState(false);
  const command = useOrderCommand(api.findings.resolve, onDone);
  const isThin = how.trim().length < 3;
  return (
    <FormBox
      title={`Resolve: ${finding.place}`}
      submitLabel="Resolve"
      command={command}
      onCancel={onDone}
      onSubmit={() => {
        setTried(true);
        if (!isThin) void command.run({ id: finding.id, rowVersion: finding.rowVersion, how });
      }}
    >
      <Textarea
        label="What was done, and what was seen afterwards"
        description={
          finding.grade === 'stop'
            ? 'A stop finding ends by repair and a second look, never by a signature.'
            : undefined
        }
        required
        maxLength={1000}
        value={how}
        error={isTried && isThin ? 'Say what was done and seen.' : command.details.how}
        onChange={(event) => setHow(event.currentTarget.value)}
      />
    </FormBox>
  );
}

export function FindingItem({ finding }: { finding: Finding }) {
  const [isResolving, setResolving] = useState(false);
  const isOpen = finding.resolvedAt === null;
  return (
    <li className={classes.item}>
      <div className={classes.row}>
        <span>
          {isOpen ? (
            <Mark kind={marks[finding.grade]}>
              {gradeLabels[finding.grade]}: {finding.place}
            </Mark>
          ) : (
            <Mark kind="done">
              Resolved ({gradeLabels[finding.grade].toLowerCase()}): {finding.place}
            </Mark>
          )}
        </span>
        {isOpen && !isResolving ? (
          <Button
            variant="default"
            aria-label={`Resolve: ${finding.place}`}
            onClick={() => setResolving(true)}
          >
            Resolve
          </Button>
        ) : null}
      </div>
      {finding.note === '' ? null : <p className={classes.words}>{finding.note}</p>}
      <p className={classes.quiet} style={{ margin: '4px 0 0' }}>
        Found {momentText(finding.foundAt)}, {finding.foundBy}
      </p>
      {finding.resolvedAt === null ? null : (
        <p className={classes.words}>
          {momentText(finding.resolvedAt)}: {finding.resolvedHow}
        </p>
      )}
      <PhotoStrip of={{ findingId: finding.id, about: 'finding' }} canAdd={isOpen} />
      {isResolving && isOpen ? (
        <ResolveForm finding={finding} onDone={() => setResolving(false)} />
      ) : null}
    </li>
  );
}
