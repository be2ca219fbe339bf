import { Button } from '@mantine/core';
import { Link } from 'wouter';
import type { ArrivalRecord, Belonging } from '../../../../shared/contract/arrival.ts';
import { inchGlyph } from '../../../../shared/measure.ts';
import { fullDay, momentText } from '../../../parts/days.ts';
import { Facts } from '../../../parts/facts.tsx';
import { Mark } from '../../../parts/mark.tsx';
import { useOrder } from '../order-screen.tsx';
import { OrderSection } from '../order-section.tsx';
import { arrivalState } from '../section-states.ts';

const inches = (value: number | null) => (value === null ? '' : `${inchGlyph(value)}"`);

function packagingText(arrival: ArrivalRecord): string {
  return [
    arrival.packaging,
    arrival.packagingDamaged ? 'damaged' : '',
    arrival.packagingKept ? 'kept' : '',
  ]
    .filter((word) => word !== '')
    .join(', ');
}

function strungText(arrival: ArrivalRecord): string {
  if (arrival.strung === 'not-yet') return 'not yet';
  if (arrival.strung === 'strung') return 'yes';
  const reason = arrival.notStrungBecause.trim();
  return reason === '' ? 'no, without a reason given' : `no, because ${reason}`;
}

function alongText(arrival: ArrivalRecord, belongings: readonly Belonging[]): string {
  if (belongings.length === 0) return arrival.nothingCameAlong ? 'nothing' : '';
  return belongings
    .map(({ what, backAt }) => (backAt === null ? what : `${what} (back in the box)`))
    .join(', ');
}

function arrivalFacts(arrival: ArrivalRecord, belongings: readonly Belonging[]) {
  const isStrung = arrival.strung === 'strung';
  return [
    ['Box opened', fullDay(arrival.openedOn)],
    ['Came by', arrival.cameBy],
    ['Packaging', packagingText(arrival)],
    ['Condition', arrival.condition],
    ['Came along', alongText(arrival, belongings)],
    ['Out of the box', arrival.restingSince === null ? '' : momentText(arrival.restingSince)],
    ['Strung', strungText(arrival)],
    ['Alignment', isStrung ? arrival.alignment : ''],
    ['Brace', isStrung ? inches(arrival.braceIn) : ''],
    ['Tiller', isStrung ? inches(arrival.tillerIn) : ''],
    ['String track', isStrung ? arrival.stringTrack : ''],
    ['Note', arrival.note],
  ] as const;
}

/** What was seen at the unpacking table, in short, with the way there. */
export function Arrival() {
  const { order } = useOrder();
  const { arrival, belongings, card } = order;
  return (
    <OrderSection
      place="arrival"
      title="Arrival"
      state={arrivalState(order)}
      saysItself
      actions={
        <Button component={Link} href={`/orders/${card.id}/unpacking`} variant="default">
          At the unpacking table
        </Button>
      }
    >
      {arrival === null ? null : (
        <>
          <p style={{ margin: '0 0 8px' }}>
            {arrival.completedAt === null ? (
              <Mark kind="attention">Arrival check not complete</Mark>
            ) : (
              <Mark kind="done">
                Complete {momentText(arrival.completedAt)}, {arrival.completedBy}
              </Mark>
            )}
          </p>
          <Facts facts={arrivalFacts(arrival, belongings)} />
        </>
      )}
    </OrderSection>
  );
}
