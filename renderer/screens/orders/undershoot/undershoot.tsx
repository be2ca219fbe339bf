import { Mark } from '../../../parts/mark.tsx';
import classes from '../order-page.module.css';
import { useOrder } from '../order-screen.tsx';
import { OrderSection } from '../order-section.tsx';
import { Decision } from './decision.tsx';
import { OfferItem } from './offer-item.tsx';
import { briefShortfall, shortfallText } from './offer-words.ts';

/** A bow under its target is a decision with its owner; otherwise there is nothing here. */
export function Undershoot() {
  const { undershoot } = useOrder().order;
  if (undershoot.now === null && undershoot.offers.length === 0) return null;
  return (
    <OrderSection
      place="undershoot"
      title="Under the target"
      state={undershoot.now === null ? 'not any more' : briefShortfall(undershoot.now)}
      saysItself
    >
      {undershoot.now === null ? null : (
        <>
          <Mark kind="attention">{shortfallText(undershoot.now)}</Mark>
          <Decision />
        </>
      )}
      {undershoot.offers.length === 0 ? null : (
        <ul className={classes.list} style={{ marginTop: 12 }}>
          {undershoot.offers.map((record) => (
            <OfferItem key={record.id} record={record} />
          ))}
        </ul>
      )}
    </OrderSection>
  );
}
