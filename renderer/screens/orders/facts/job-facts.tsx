import { Button } from '@mantine/core';
import { Facts } from '../../../parts/facts.tsx';
import { useOrder } from '../order-screen.tsx';
import { OrderSection } from '../order-section.tsx';
import { jobFacts, jobLabels, jobOf } from './job-fields.ts';
import { JobForm } from './job-form.tsx';
import { LongText } from './long-text.tsx';
import { RouteChoices } from './route-choices.tsx';

/** What was agreed to do, by when and for how much. */
export function JobFacts() {
  const { order, isOffice, opened, open } = useOrder();
  const opening = opened.job;
  return (
    <OrderSection
      place="job"
      title="Job"
      actions={
        isOffice && opening === undefined ? (
          <Button variant="default" onClick={() => open('job')}>
            Change
          </Button>
        ) : null
      }
    >
      {opening !== undefined && isOffice ? (
        <JobForm opening={opening} />
      ) : (
        <>
          <Facts facts={jobFacts({ ...jobOf(order), privateNotes: '', customerNotes: '' })} />
          <LongText label={jobLabels.customerNotes} text={order.customerNotes} />
          <LongText label={jobLabels.privateNotes} text={order.privateNotes} />
        </>
      )}
      <RouteChoices />
    </OrderSection>
  );
}
