import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { useLocation } from 'wouter';
import { stageLabels } from '../../../shared/stages.ts';
import { orpc } from '../../api/client.ts';
import { BusyNote, EmptyNote, ErrorNote } from '../../parts/notes.tsx';
import { BenchFrame } from './bench-frame.tsx';
import { bowsToChoose } from './bench-list.ts';
import classes from './bench-list-screen.module.css';
import { NumberPad } from './number-pad.tsx';
import { useBenchKeys, useBenchListener } from './use-bench-keys.ts';
import { useOpenBow } from './use-open-bow.ts';

/** Bows to choose from at the bench, by number, scan or tap. */
export function BenchListScreen() {
  const [, go] = useLocation();
  const [digits, setDigits] = useState('');
  const board = useQuery(orpc.orders.board.queryOptions({ input: { includeClosed: false } }));
  const { open, trouble } = useOpenBow();
  const shown = bowsToChoose(board.data ?? [], digits);
  const [only] = shown;
  useBenchListener((number) => void open(number));
  const press = useBenchKeys({
    onText: setDigits,
    onEntered: (text) => {
      const [found, ...others] = bowsToChoose(board.data ?? [], text);
      if (found !== undefined && others.length === 0) go(`/bench/${found.id}`);
      else setDigits(text);
    },
    onConfirm: () => {
      if (only !== undefined && shown.length === 1) go(`/bench/${only.id}`);
    },
  });
  return (
    <BenchFrame title="On the bench" back={{ href: '/board', label: 'Board' }}>
      <div className={classes.columns}>
        <section className={classes.pad} aria-label="Order number">
          <p className={classes.ask}>Scan the work order, tap a bow, or key in its number.</p>
          <output className={classes.digits} aria-label="Number keyed in">
            {digits === '' ? '–' : digits}
          </output>
          <NumberPad onKey={press} />
          {trouble === null ? null : <ErrorNote error={trouble} />}
        </section>
        <section aria-label="Bows" className={classes.bows}>
          {board.error === null ? null : (
            <ErrorNote error={board.error} onAgain={() => void board.refetch()} />
          )}
          {board.data === undefined && board.error === null ? <BusyNote /> : null}
          {board.data !== undefined && shown.length === 0 ? (
            digits === '' ? (
              <EmptyNote title="No bow is on the bench.">
                Move an agreed order to weight work on the board. It then shows here.
              </EmptyNote>
            ) : (
              <EmptyNote title={`No open order has the number ${digits}.`}>
                Rub out the digits to see every bow on the bench.
              </EmptyNote>
            )
          ) : null}
          <ul className={classes.list}>
            {shown.map((card) => (
              <li key={card.id}>
                <button
                  type="button"
                  className={classes.bow}
                  onClick={() => go(`/bench/${card.id}`)}
                >
                  <span className={classes.number}>{card.number}</span>
                  <span className={classes.who}>
                    <span className={classes.name}>{card.customerName || 'No customer'}</span>
                    <span className={classes.line}>{card.bowLine}</span>
                  </span>
                  <span className={classes.stage}>{stageLabels[card.stage]}</span>
                </button>
              </li>
            ))}
          </ul>
        </section>
      </div>
    </BenchFrame>
  );
}
