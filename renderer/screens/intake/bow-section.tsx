import { Radio } from '@mantine/core';
import { errorsUnder } from '../../parts/field-errors.ts';
import { BusyNote, ErrorNote } from '../../parts/notes.tsx';
import { Panel } from '../../parts/panel.tsx';
import { BowFieldsForm } from '../bows/bow-form.tsx';
import { useBowsOf } from '../orders/facts/identify-bow.tsx';
import { bowText } from '../orders/words.ts';
import classes from './intake.module.css';
import type { SectionProps } from './who-section.tsx';

/** Which bow: one that was here before, a new one, or still unknown. */
export function BowSection({ form, edit, errors }: SectionProps) {
  const value = form.bowIs === 'known' ? form.bowId : form.bowIs;
  return (
    <Panel title="Which bow">
      <div className={classes.stack}>
        <Radio.Group
          size="md"
          label="The bow"
          required
          value={value}
          error={errors.bow}
          onChange={(chosen) => {
            if (chosen === 'new' || chosen === 'later') edit({ bowIs: chosen, bowId: '' });
            else edit({ bowIs: 'known', bowId: chosen });
          }}
        >
          {form.customerIs === 'known' || form.customerIs === 'shop' ? (
            <KnownBows customerId={form.customerIs === 'known' ? form.customerId : null} />
          ) : null}
          <Radio value="new" label="A new bow" />
          <Radio
            value="later"
            label="Not known yet"
            description="Identified when the box is opened."
          />
        </Radio.Group>
        {form.bowIs === 'new' ? (
          <BowFieldsForm
            value={form.bow}
            errors={errorsUnder(errors, 'bow')}
            onChange={(bow) => edit({ bow })}
          />
        ) : null}
      </div>
    </Panel>
  );
}

function KnownBows({ customerId }: { customerId: string | null }) {
  const { query, bows } = useBowsOf(customerId);
  if (query.isPending) return <BusyNote />;
  if (query.isError) {
    return <ErrorNote error={query.error} onAgain={() => void query.refetch()} />;
  }
  return bows.map((bow) => <Radio key={bow.id} value={bow.id} label={bowText(bow)} />);
}
