import { Radio } from '@mantine/core';
import { today } from '../../parts/days.ts';
import { errorsUnder } from '../../parts/field-errors.ts';
import { Panel } from '../../parts/panel.tsx';
import classes from './intake.module.css';
import { cameBy, type IntakeForm, mayBeLimbsOnly, startsAt, waysIn } from './intake-form.ts';
import { SeenFields } from './seen-fields.tsx';
import type { SectionProps } from './who-section.tsx';

const wayLabels: Record<(typeof waysIn)[number], string> = {
  phone: 'Phone',
  mail: 'Mail or e-mail',
  'web form': 'Web form',
  'walk-in': 'Walk-in',
  'unannounced box': 'Unannounced box',
};

const starts: readonly { value: IntakeForm['startsAt']; label: string; description?: string }[] = [
  { value: 'requested', label: 'With the customer, not sent yet' },
  { value: 'in-mail', label: 'In the mail' },
  {
    value: 'arrived',
    label: 'Here already',
    description: 'Handed over the counter, or its box is on the table.',
  },
];

/** How the request came in and where the bow is now. */
export function ArrivalSection({ form, edit, errors }: SectionProps) {
  return (
    <Panel title="How it came, where it is">
      <div className={classes.stack}>
        <Radio.Group
          size="md"
          label="Came by"
          value={form.cameBy}
          error={errors.cameBy}
          onChange={(way) => edit(cameBy(form, way, today()))}
        >
          <div className={classes.buttons} style={{ paddingTop: 8, gap: '8px 24px' }}>
            {waysIn.map((way) => (
              <Radio key={way} value={way} label={wayLabels[way]} />
            ))}
          </div>
        </Radio.Group>
        <Radio.Group
          size="md"
          label="Where the bow is now"
          value={form.startsAt}
          error={errors.startsAt}
          onChange={(value) => {
            const start = starts.find((one) => one.value === value);
            if (start !== undefined) edit(startsAt(form, start.value, today()));
          }}
        >
          {starts.map(({ value, label, description }) => (
            <Radio key={value} value={value} label={label} description={description} />
          ))}
        </Radio.Group>
        {mayBeLimbsOnly(form) ? (
          <Radio.Group
            size="md"
            label="What comes"
            value={form.cameAs}
            onChange={(value) =>
              edit({ cameAs: value === 'limbs-only' ? 'limbs-only' : 'whole-bow' })
            }
          >
            <div className={classes.buttons} style={{ paddingTop: 8, gap: '8px 24px' }}>
              <Radio value="whole-bow" label="The whole bow" />
              <Radio value="limbs-only" label="Only its limbs" />
            </div>
          </Radio.Group>
        ) : null}
        {form.startsAt === 'arrived' ? (
          <SeenFields
            seen={form.arrival}
            set={(part) => edit({ arrival: { ...form.arrival, ...part } })}
            errors={errorsUnder(errors, 'arrival')}
          />
        ) : null}
      </div>
    </Panel>
  );
}
