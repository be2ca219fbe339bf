import { Button } from '@mantine/core';
import { useState } from 'react';
import { incidentKind } from '../../../../shared/incidents.ts';
import classes from '../order-page.module.css';
import { useOrder } from '../order-screen.tsx';
import { OrderSection } from '../order-section.tsx';
import { incidentsState } from '../section-states.ts';
import { IncidentForm } from './incident-form.tsx';
import { IncidentItem } from './incident-item.tsx';

/** Damage and loss, here or on the way, until they are settled with the owner. */
export function Incidents() {
  const { order, opened, close } = useOrder();
  const [isBegun, setBegun] = useState(false);
  const asked = incidentKind.safeParse(opened.incidents?.opens);
  const isAdding = isBegun || asked.success;
  const done = () => {
    setBegun(false);
    if (opened.incidents !== undefined) close('incidents');
  };
  return (
    <OrderSection
      place="incidents"
      title="Damage and loss"
      state={incidentsState(order)}
      isBusy={isAdding}
      actions={
        isAdding ? null : (
          <Button variant="default" onClick={() => setBegun(true)}>
            Record an incident
          </Button>
        )
      }
    >
      {isAdding || order.incidents.length > 0 ? (
        <>
          {isAdding ? <IncidentForm kind={asked.data ?? null} onDone={done} /> : null}
          <ul className={classes.list}>
            {order.incidents.map((incident) => (
              <IncidentItem key={incident.id} incident={incident} />
            ))}
          </ul>
        </>
      ) : null}
    </OrderSection>
  );
}
