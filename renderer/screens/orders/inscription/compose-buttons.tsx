import { Button } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { suggestionLabels } from '../../../../shared/inscription.ts';
import { inchGlyph } from '../../../../shared/measure.ts';
import { orpc } from '../../../api/client.ts';
import { Mark } from '../../../parts/mark.tsx';
import { BusyNote, ErrorNote } from '../../../parts/notes.tsx';
import { NumberField } from '../../../parts/number-field.tsx';
import { useOrder } from '../order-screen.tsx';
import classes from './inscription.module.css';

const masterRange = { from: 30, to: 84 };

/** Lines the records bear out, each put under the others with one tap; then plain text. */
export function ComposeButtons({ onAdd }: { onAdd: (line: string) => void }) {
  const { order } = useOrder();
  const [masterIn, setMasterIn] = useState<number | null>(null);
  const isLong = masterIn !== null && masterIn >= masterRange.from && masterIn <= masterRange.to;
  const suggested = useQuery(
    orpc.inscriptions.suggest.queryOptions({
      input: { orderId: order.card.id, ...(isLong ? { masterStringIn: masterIn } : {}) },
      // The buttons stay while another length of the master string is looked up.
      placeholderData: (before) => before,
    }),
  );
  if (suggested.error !== null) {
    return <ErrorNote error={suggested.error} onAgain={() => void suggested.refetch()} />;
  }
  if (suggested.data === undefined) return <BusyNote>Reading what the records say ...</BusyNote>;
  const { lines, missing, masterStringIn } = suggested.data;
  return (
    <fieldset className={classes.compose}>
      <legend>Lines from the records: each button adds one</legend>
      <ul className={classes.suggestions}>
        {lines.map(({ kind, text, from }) => (
          <li key={`${kind} ${text} ${from}`}>
            <Button variant="default" onClick={() => onAdd(text)} className={classes.suggestion}>
              {text}
            </Button>
            <span className={classes.from}>
              {suggestionLabels[kind]}: {from}
            </span>
          </li>
        ))}
      </ul>
      {missing.map(({ kind, why }) => (
        <Mark key={kind} kind="attention">
          {suggestionLabels[kind]}: {why}
        </Mark>
      ))}
      <div className={classes.master}>
        <NumberField
          label="Master string, measured here, inches"
          unit="in"
          description={
            masterStringIn === null
              ? 'AMO length is 3 in more (AMO Standards, FP-3, 2000). Never from the string that came.'
              : `The length marked goes with a master string of ${inchGlyph(masterStringIn)} in. Never from the string that came.`
          }
          value={masterIn}
          error={
            masterIn !== null && !isLong
              ? 'A master string is between 30 and 84 inches long.'
              : null
          }
          onChange={setMasterIn}
        />
      </div>
    </fieldset>
  );
}
