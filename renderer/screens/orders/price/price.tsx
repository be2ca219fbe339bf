import classes from '../order-page.module.css';
import { useOrder } from '../order-screen.tsx';
import { OrderSection } from '../order-section.tsx';
import { AddLines } from './add-lines.tsx';
import { AgreedChanges } from './agreed-changes.tsx';
import { Payments } from './payments.tsx';
import { PriceLines } from './price-lines.tsx';
import { PriceSums } from './price-sums.tsx';
import { priceState } from './price-words.ts';

function start({ isOffice, isSet }: { isOffice: boolean; isSet: boolean }): string {
  if (isSet) return 'One amount, not made up of lines.';
  return isOffice
    ? 'No price yet. Add lines here, or give one amount under Job.'
    : 'No price yet. The office sets it.';
}

/** What the order costs, line by line, and what was paid. */
export function Price() {
  const { order, isOffice } = useOrder();
  const { price } = order;
  const isWaiting = price.agreedChanges.length > 0;
  return (
    <OrderSection
      place="price"
      title="Price"
      state={priceState(price)}
      saysItself
      isBusy={isWaiting}
    >
      {price.lines.length > 0 ? null : (
        <p className={classes.quiet}>{start({ isOffice, isSet: price.totalCents !== null })}</p>
      )}
      <PriceLines />
      <PriceSums price={price} />
      <AgreedChanges />
      {isOffice ? <AddLines /> : null}
      <Payments />
    </OrderSection>
  );
}
