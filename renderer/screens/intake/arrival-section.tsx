import { Radio } from '@mantine/core';
import { Panel } from '../../parts/panel.tsx';
import classes from './intake.module.css';
import { cameBy, waysIn } from './intake-form.ts';
import type { SectionProps } from './who-section.tsx';

const wayLabels: Record<(typeof waysIn)[number], string> = {
  phone: 'Phone',
  mail: 'Mail or e-mail',
  'web form': 'Web form',
  'walk-in': 'Walk-in',
  'unannounced box': 'Unannounced box',
};

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
          onChange={(way) => edit(cameBy(way))}
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
          onChange={(value) => edit({ startsAt: value === 'in-mail' ? 'in-mail' : 'requested' })}
        >
          <Radio value="requested" mt="sm" label="With the customer, not sent yet" />
          <Radio
            value="in-mail"
            mt="sm"
            label="In the mail, or here already"
            description="A box on the table is opened and recorded on the order's page."
          />
        </Radio.Group>
      </div>
    </Panel>
  );
}
