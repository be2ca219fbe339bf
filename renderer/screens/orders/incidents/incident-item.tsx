import { Button } from '@mantine/core';
import { useState } from 'react';
import type { Incident } from '../../../../shared/contract/incidents.ts';
import { incidentLabels } from '../../../../shared/incidents.ts';
import { fullDay, momentText } from '../../../parts/days.ts';
import { Mark } from '../../../parts/mark.tsx';
import { PhotoStrip } from '../../../parts/photos/photo-strip.tsx';
import classes from '../order-page.module.css';
import { useOrder } from '../order-screen.tsx';
import { claimLine } from './incident-words.ts';
import { SettleForm } from './settle-form.tsx';
import { StoryForm } from './story-form.tsx';

function Told({ incident }: { incident: Incident }) {
  const { customerId } = useOrder().order.card;
  if (customerId === null) return null;
  const { ownerToldOn, ownerToldHow } = incident;
  return (
    <p className={classes.quiet}>
      {ownerToldOn === null
        ? 'The customer has not been told yet.'
        : `Customer told on ${fullDay(ownerToldOn)}${ownerToldHow === '' ? '' : `, ${ownerToldHow}`}.`}
    </p>
  );
}

function Claim({ incident }: { incident: Incident }) {
  const claim = claimLine(incident);
  if (claim === null) return null;
  return (
    <p className={classes.words}>
      {claim.mark === null ? claim.text : <Mark kind={claim.mark}>{claim.text}</Mark>}
    </p>
  );
}

function Story({ incident }: { incident: Incident }) {
  return (
    <>
      <p className={classes.words}>{incident.what}</p>
      <p className={classes.quiet}>
        Happened {fullDay(incident.happenedOn)}, written down {momentText(incident.foundAt)} by{' '}
        {incident.foundBy}.
      </p>
      <Told incident={incident} />
      {incident.remedy === '' ? null : <p className={classes.words}>Remedy: {incident.remedy}</p>}
      <Claim incident={incident} />
      {incident.settledAt === null ? null : (
        <p className={classes.words}>
          Settled {momentText(incident.settledAt)}: {incident.settledHow}
        </p>
      )}
    </>
  );
}

export function IncidentItem({ incident }: { incident: Incident }) {
  const { order, isOffice } = useOrder();
  const [form, setForm] = useState<'story' | 'settle' | null>(null);
  const isOpen = incident.settledAt === null;
  const label = incidentLabels[incident.kind];
  const close = () => setForm(null);
  return (
    <li className={classes.item}>
      <div className={classes.row}>
        {isOpen ? (
          <Mark kind="attention">{label}</Mark>
        ) : (
          <Mark kind="done">Settled: {label.toLowerCase()}</Mark>
        )}
        {isOpen && isOffice && form === null ? (
          <div className={classes.buttons}>
            <Button variant="default" onClick={() => setForm('story')}>
              Owner, remedy, claim
            </Button>
            <Button variant="default" onClick={() => setForm('settle')}>
              Settle
            </Button>
          </div>
        ) : null}
      </div>
      <Story incident={incident} />
      {form === 'story' ? <StoryForm incident={incident} onDone={close} /> : null}
      {form === 'settle' ? <SettleForm incident={incident} onDone={close} /> : null}
      <PhotoStrip
        of={{ orderId: order.card.id, incidentId: incident.id, about: 'incident' }}
        canAdd={isOpen}
      />
    </li>
  );
}
