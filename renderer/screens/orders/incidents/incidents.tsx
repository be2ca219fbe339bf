import { Button } from '@mantine/core';
import { useState } from 'react';
import classes from '../order-page.module.css';
import { useOrder } from '../order-screen.tsx';
import { OrderSection } from '../order-section.tsx';
import { IncidentForm } from './incident-form.tsx';
import { IncidentItem } from './incident-item.tsx';

/** Damage and loss, here or on the way, until they are settled with the owner. */
export function Incidents() {
  const { order } = useOrder();
  const [isAdding, setAdding] = useState(false);
  return (
    <OrderSection
      place="incidents"
      title="Damage and loss"
      actions={
        isAdding ? null : (
          <Button variant="default" onClick={() => setAdding(true)}>
            Record an incident
          </Button>
        )
      }
    >
      {isAdding ? <IncidentForm onDone={() => setAdding(false)} /> : null}
      {order.incidents.length === 0 && !isAdding ? (
        <p className={classes.quiet}>Nothing happened to it.</p>
      ) : null}
      <ul className={classes.list}>
        {order.incidents.map((incident) => (
          <IncidentItem key={incident.id} incident={incident} />
        ))}
      </ul>
    </OrderSection>
  );
}
