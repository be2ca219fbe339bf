import { Button } from '@mantine/core';
import { Link } from 'wouter';
import { Facts } from '../../../parts/facts.tsx';
import { Mark } from '../../../parts/mark.tsx';
import { bowFacts } from '../../bows/bow-text.ts';
import { useOrder } from '../order-screen.tsx';
import { OrderSection } from '../order-section.tsx';
import { IdentifyBow } from './identify-bow.tsx';
import { Limbs } from './limbs.tsx';
import { LongText } from './long-text.tsx';

/** Which bow it is, or the way to say so. */
export function BowFacts() {
  const { order, opened, open } = useOrder();
  const { bow } = order;
  if (bow !== null) {
    return (
      <OrderSection
        place="bow"
        title="Bow"
        actions={<Link href={`/bows/${bow.id}`}>Open bow</Link>}
      >
        <Facts facts={bowFacts({ ...bow, notes: '' })} />
        <Limbs />
        <LongText label="Notes" text={bow.notes} />
      </OrderSection>
    );
  }
  const opening = opened.bow;
  return (
    <OrderSection
      place="bow"
      title="Bow"
      actions={
        opening === undefined ? (
          <Button variant="default" onClick={() => open('bow')}>
            Identify the bow
          </Button>
        ) : null
      }
    >
      <Mark kind="attention">Not identified yet</Mark>
      {opening === undefined ? null : <IdentifyBow opening={opening} />}
    </OrderSection>
  );
}
