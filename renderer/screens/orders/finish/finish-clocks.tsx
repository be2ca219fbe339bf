import type { OrderFinishNow } from '../../../../shared/contract/finish.ts';
import { useClockList, useShopSecond } from '../../../frame/clock-strip/use-clocks.ts';
import { Mark } from '../../../parts/mark.tsx';
import { cureLines } from '../../finish-room/cure-words.ts';
import { windowWords } from '../../finish-room/window-words.ts';
import classes from '../order-page.module.css';
import { useOrder } from '../order-screen.tsx';

/** Recoat window, while more coats may follow, and cure of this bow as they stand now. */
export function FinishClocks({ finish }: { finish: OrderFinishNow }) {
  const { order } = useOrder();
  const nowMs = useShopSecond(useClockList(), finish.cure.length > 0);
  const { window, clockTrouble } = finish;
  const words =
    window === null || order.card.stage !== 'finish'
      ? null
      : windowWords({ window, finishSystemId: finish.chosen?.finishSystemId ?? '' });
  return (
    <>
      {clockTrouble === null ? null : <Mark kind="stop">{clockTrouble}</Mark>}
      {words === null ? null : (
        <p className={classes.words}>
          Recoat window: <Mark kind={words.kind}>{words.text}</Mark>
        </p>
      )}
      {finish.cure.length === 0 ? null : (
        <ul className={classes.list} aria-label="After the last coat" style={{ gap: 2 }}>
          {cureLines(finish, nowMs).map(({ step, isPassed, text }) => (
            <li key={step}>{isPassed ? <Mark kind="done">{text}</Mark> : text}</li>
          ))}
        </ul>
      )}
    </>
  );
}
