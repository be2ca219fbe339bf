import { useState } from 'react';
import { BenchCommandError, type FailedCommand } from './bench-command-error.tsx';
import { BigButton } from './big-button.tsx';
import classes from './panels.module.css';
import { ReadBack } from './read-back.tsx';
import { reasonText, type StrikeReason, strikeReasons } from './strike-reasons.ts';
import { useChoiceKeys } from './use-choice-keys.ts';

export interface StrikeItem {
  id: string;
  rowVersion: number;
  /** What it is, with when and who: `47.8 lb at 28 in, 10:20, IP`. */
  what: string;
  when: string;
}

interface StrikePanelProps {
  items: readonly StrikeItem[];
  command: FailedCommand;
  onStrike: (item: StrikeItem, reason: string) => void;
  onClose: () => void;
}

/** Takes a record out of the count: which one, why, read back. Words may be added, none are needed. */
export function StrikePanel({ items, command, onStrike, onClose }: StrikePanelProps) {
  const [item, setItem] = useState<StrikeItem | null>(null);
  const [reason, setReason] = useState<StrikeReason | null>(null);
  const [words, setWords] = useState('');
  const strike = () => {
    if (item !== null && reason !== null && !command.busy)
      onStrike(item, reasonText(reason, words));
  };
  const back = () => {
    if (reason !== null) setReason(null);
    else if (item !== null) setItem(null);
    else onClose();
  };
  const shown = items.slice(0, 5);
  useChoiceKeys({
    choices:
      item === null
        ? shown.map((one) => () => setItem(one))
        : reason === null
          ? strikeReasons.map((one) => () => setReason(one))
          : [],
    onConfirm: strike,
    onBack: back,
  });
  if (item === null) return <Which items={shown} onChoose={setItem} onClose={onClose} />;
  if (reason === null) {
    return (
      <section className={classes.panel} aria-label="Why does it not count?">
        <h2 className={classes.title}>Why does it not count?</h2>
        <p className={classes.words}>{item.what}</p>
        <div className={classes.row}>
          {strikeReasons.map((one, at) => (
            <BigButton key={one} keyHint={`${at + 1} Enter`} onClick={() => setReason(one)}>
              {one}
            </BigButton>
          ))}
          <BigButton keyHint="Backspace" onClick={back}>
            Back
          </BigButton>
        </div>
        <label className={classes.panel}>
          <span className={classes.quiet}>More in words, if you like, before you choose</span>
          <input
            className={classes.field}
            value={words}
            maxLength={300}
            onChange={(event) => setWords(event.currentTarget.value)}
          />
        </label>
      </section>
    );
  }
  return (
    <>
      <ReadBack
        said={item.what}
        question="Strike it out?"
        more={`${reasonText(reason, words)}. It stays readable and counts no more.`}
        yes="Yes, strike out"
        busy={command.busy}
        onYes={strike}
        onNo={back}
      />
      <BenchCommandError command={command} />
    </>
  );
}

interface WhichProps {
  items: readonly StrikeItem[];
  onChoose: (item: StrikeItem) => void;
  onClose: () => void;
}

function Which({ items, onChoose, onClose }: WhichProps) {
  return (
    <section className={classes.panel} aria-label="Strike out">
      <h2 className={classes.title}>
        {items.length === 0 ? 'Nothing here can be struck out.' : 'Which one does not count?'}
      </h2>
      <ul className={classes.list}>
        {items.map((item, at) => (
          <li key={item.id}>
            <BigButton keyHint={`${at + 1} Enter`} onClick={() => onChoose(item)}>
              <span className={classes.small}>
                {item.what} <span className={classes.dropped}>{item.when}</span>
              </span>
            </BigButton>
          </li>
        ))}
      </ul>
      <div className={classes.row}>
        <BigButton keyHint="Backspace" onClick={onClose}>
          Back
        </BigButton>
      </div>
    </section>
  );
}
