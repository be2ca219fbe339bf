import { Checkbox, Radio } from '@mantine/core';
import { useWho } from '../../api/who.ts';
import { Panel } from '../../parts/panel.tsx';
import classes from './intake.module.css';
import { hasTwoWays } from './intake-form.ts';
import type { SectionProps } from './who-section.tsx';

/** How the bow goes home, and which way round the work goes. */
export function RouteSection({ form, edit, errors }: SectionProps) {
  const isOwner = useWho()?.role === 'owner';
  return (
    <Panel title="How it goes home">
      <div className={classes.stack}>
        <Radio.Group
          size="md"
          label="Goes home"
          value={form.handover}
          onChange={(value) => edit({ handover: value === 'collected' ? 'collected' : 'shipped' })}
        >
          <div className={classes.buttons} style={{ paddingTop: 8, gap: '8px 24px' }}>
            <Radio value="shipped" label="by parcel" />
            <Radio value="collected" label="collected" />
          </div>
        </Radio.Group>
        {hasTwoWays(form) ? (
          <Checkbox
            label="Strip & sand before the weight work"
            description={
              isOwner
                ? 'Thinning needs bare glass.'
                : 'Thinning needs bare glass. The owner decides, here or later on the order.'
            }
            disabled={!isOwner && !form.stripFirst}
            checked={form.stripFirst}
            error={errors.stripFirst}
            onChange={(event) => edit({ stripFirst: event.currentTarget.checked })}
          />
        ) : null}
      </div>
    </Panel>
  );
}
