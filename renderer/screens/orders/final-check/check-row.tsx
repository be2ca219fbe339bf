import { Button, Radio, Textarea, TextInput } from '@mantine/core';
import type { FinalCheckRow } from '../../../../shared/contract/final-check.ts';
import { api } from '../../../api/client.ts';
import { momentText } from '../../../parts/days.ts';
import { Mark } from '../../../parts/mark.tsx';
import orderClasses from '../order-page.module.css';
import { useOrder } from '../order-screen.tsx';
import { StrikeOut } from '../strike-out.tsx';
import { type CheckErrors, type CheckFields, ticked } from './check-fields.ts';
import classes from './final-check.module.css';

interface CheckRowProps {
  row: FinalCheckRow;
  /** Undefined while the row is not ticked. */
  value: CheckFields | undefined;
  errors: CheckErrors;
  /** What the core refused of this row. */
  refused: string | undefined;
  /** False where the bow may not be looked at this way now. */
  mayTick: boolean;
  onChange: (value: CheckFields | undefined) => void;
}

/** Recorded before: what, when, by whom, and whether it still counts. */
function Recorded({ row }: { row: FinalCheckRow }) {
  const { entry, outdated, label } = row;
  if (entry === null) return null;
  const words = entry.outcome === 'ok' ? 'In order' : 'Not in order';
  const kind = outdated ? 'attention' : entry.outcome === 'ok' ? 'done' : 'stop';
  return (
    <div>
      <Mark kind={kind}>
        {words}, {momentText(entry.recordedAt)}, {entry.personName}
        {outdated ? '. A bite was taken since: look again.' : ''}
      </Mark>
      {entry.note === '' ? null : <p className={orderClasses.words}>{entry.note}</p>}
      <StrikeOut what={`the check "${label}"`} record={entry} fn={api.entries.strikeOut} />
    </div>
  );
}

function FindingFields({
  row,
  value,
  errors,
  onChange,
}: Omit<CheckRowProps, 'value' | 'mayTick' | 'refused'> & { value: CheckFields }) {
  return (
    <>
      <Radio.Group
        size="md"
        label="Does it become a finding?"
        required
        value={value.finding}
        error={errors[`${row.item} finding`]}
        onChange={(chosen) => {
          const finding = chosen === 'stop' || chosen === 'watch' ? chosen : 'none';
          onChange({ ...value, finding });
        }}
      >
        <Radio
          value="stop"
          label="Stop"
          description="Do not string or draw until it is repaired and looked at again."
        />
        <Radio
          value="watch"
          label="Watch"
          description="May get worse: the customer accepts it in writing."
        />
        <Radio
          value="none"
          label="No finding"
          description="It is put right and looked at again here."
        />
      </Radio.Group>
      {value.finding === 'stop' || value.finding === 'watch' ? (
        <TextInput
          label="Place on the bow"
          required
          maxLength={200}
          autoComplete="off"
          value={value.place}
          error={errors[`${row.item} place`]}
          onChange={(event) => onChange({ ...value, place: event.currentTarget.value })}
        />
      ) : null}
    </>
  );
}

function TickButtons({ row, value, onChange }: Pick<CheckRowProps, 'row' | 'value' | 'onChange'>) {
  const { open } = useOrder();
  const choose = (outcome: CheckFields['outcome']) =>
    onChange(
      value?.outcome === outcome ? undefined : { ...ticked(outcome), note: value?.note ?? '' },
    );
  return (
    <div className={classes.buttons}>
      <Button
        h={56}
        size="md"
        variant={value?.outcome === 'ok' ? 'filled' : 'default'}
        aria-pressed={value?.outcome === 'ok'}
        aria-label={`In order: ${row.label}`}
        onClick={() => choose('ok')}
      >
        {value?.outcome === 'ok' ? '✓ In order' : 'In order'}
      </Button>
      <Button
        h={56}
        size="md"
        color="brick"
        variant={value?.outcome === 'not-ok' ? 'filled' : 'default'}
        aria-pressed={value?.outcome === 'not-ok'}
        aria-label={`Not in order: ${row.label}`}
        onClick={() => choose('not-ok')}
      >
        {value?.outcome === 'not-ok' ? '✗ Not in order' : 'Not in order'}
      </Button>
      {row.item === 'check-weighed' ? (
        <Button h={56} size="md" variant="subtle" onClick={() => open('weighings', 'final')}>
          Weigh it now
        </Button>
      ) : null}
    </div>
  );
}

/** One thing to look at: what, how, and two large buttons. */
export function CheckRow(props: CheckRowProps) {
  const { row, value, errors, refused, mayTick, onChange } = props;
  return (
    <li className={classes.row} id={`order-${row.item}`}>
      <div className={classes.head}>
        <span className={classes.label}>{row.label}</span>
        {row.safety ? <span className={classes.safety}>Safety: nobody may waive it</span> : null}
      </div>
      <p className={classes.hint}>{row.hint}</p>
      <Recorded row={row} />
      {mayTick ? <TickButtons row={row} value={value} onChange={onChange} /> : null}
      {refused === undefined ? null : <Mark kind="stop">{refused}</Mark>}
      {value === undefined || !mayTick ? null : (
        <div className={classes.fields}>
          <Textarea
            label={value.outcome === 'ok' ? 'Words, if any' : 'What is not in order'}
            required={value.outcome === 'not-ok'}
            maxLength={1000}
            autosize
            minRows={1}
            value={value.note}
            error={errors[`${row.item} note`]}
            onChange={(event) => onChange({ ...value, note: event.currentTarget.value })}
          />
          {value.outcome === 'not-ok' && row.safety ? (
            <FindingFields row={row} value={value} errors={errors} onChange={onChange} />
          ) : null}
        </div>
      )}
    </li>
  );
}
