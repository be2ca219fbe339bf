import type { UndershootRecord } from '../../../../shared/contract/undershoot.ts';
import { api } from '../../../api/client.ts';
import { momentText } from '../../../parts/days.ts';
import classes from '../order-page.module.css';
import { useOrder } from '../order-screen.tsx';
import { StrikeOut } from '../strike-out.tsx';
import { offerText, shortfallText } from './offer-words.ts';

/** One offer as it was made; what was struck out stays readable. */
export function OfferItem({ record }: { record: UndershootRecord }) {
  const { isOffice } = useOrder();
  const isStruck = record.struckReason !== null;
  return (
    <li className={classes.item}>
      <p className={`${classes.words} ${isStruck ? classes.struck : ''}`}>{offerText(record)}</p>
      <p className={classes.quiet}>
        {momentText(record.proposedAt)}, {record.proposedBy}, {shortfallText(record)}.
        {isStruck ? ` Struck out: ${record.struckReason}` : ''}
      </p>
      {isStruck || !isOffice ? null : (
        <StrikeOut
          what={`the offer of ${momentText(record.proposedAt)}`}
          record={record}
          fn={api.undershoot.strikeOut}
        />
      )}
    </li>
  );
}
