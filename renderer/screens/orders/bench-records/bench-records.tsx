import { Button } from '@mantine/core';
import { useEffect, useState } from 'react';
import { api } from '../../../api/client.ts';
import classes from '../order-page.module.css';
import { useOrder } from '../order-screen.tsx';
import { OrderSection } from '../order-section.tsx';
import { benchState } from '../section-states.ts';
import { BiteForm } from './bite-form.tsx';
import { GlassForm } from './glass-form.tsx';
import { RecordLines } from './record-lines.tsx';
import { TillerForm } from './tiller-form.tsx';

const forms = {
  bite: { label: 'Note a bite', Form: BiteForm },
  'glass-check': { label: 'Check the glass', Form: GlassForm },
  'tiller-read': { label: 'Read the tiller', Form: TillerForm },
} as const;
type Asked = keyof typeof forms;
const asked = Object.keys(forms) as Asked[];

/** What was taken off, looked at and read, whether at the bench view or written down here. */
export function BenchRecords() {
  const { order, opened, close } = useOrder();
  const [form, setForm] = useState<Asked | null>(null);
  const opening = opened['bench-records'];
  // biome-ignore lint/correctness/useExhaustiveDependencies: each asking opens the form once.
  useEffect(() => {
    if (opening === undefined) return;
    setForm(asked.find((each) => each === opening.opens) ?? 'bite');
  }, [opening?.times]);
  const { removals, glassChecks, tillerReadings } = order.bench;
  const done = () => {
    setForm(null);
    close('bench-records');
  };
  const Form = form === null ? null : forms[form].Form;
  return (
    <OrderSection
      place="bench-records"
      title="Bites, glass and tiller"
      state={benchState(order.bench)}
      isBusy={form !== null}
    >
      {Form === null ? (
        <div className={classes.buttons} style={{ marginBottom: 12 }}>
          {asked.map((each) => (
            <Button key={each} variant="default" onClick={() => setForm(each)}>
              {forms[each].label}
            </Button>
          ))}
        </div>
      ) : (
        <Form onClose={done} />
      )}
      <RecordLines title="Bites" records={removals} strike={api.bench.strikeOutRemoval} />
      <RecordLines
        title="Glass checks"
        records={glassChecks}
        strike={api.bench.strikeOutGlassCheck}
      />
      <RecordLines title="Tiller" records={tillerReadings} strike={api.bench.strikeOutTiller} />
    </OrderSection>
  );
}
