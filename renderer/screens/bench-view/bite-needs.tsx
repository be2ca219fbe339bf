import { useState } from 'react';
import { useLocation } from 'wouter';
import type { MissingItem } from '../../../shared/gates.ts';
import { useWho } from '../../api/who.ts';
import { Mark } from '../../parts/mark.tsx';
import { BigButton } from './big-button.tsx';
import classes from './panels.module.css';
import { useBenchKeys } from './use-bench-keys.ts';

interface BiteNeedsProps {
  /** What is about to be done: `this bite`. */
  label: string;
  orderId: string;
  missing: readonly MissingItem[];
  onPass: (because: string) => void;
}

/** What must be there before anything comes off, and the owner's way past where there is one. */
export function BiteNeeds({ label, orderId, missing, onPass }: BiteNeedsProps) {
  const [, go] = useLocation();
  const who = useWho();
  const mayPass = who?.role === 'owner' && missing.every((item) => item.override === 'owner');
  const open = () => go(`/orders/${orderId}`);
  useBenchKeys({ onConfirm: open });
  return (
    <section className={classes.panel} aria-label={`Before ${label}`}>
      <h2 className={classes.title}>Before {label}:</h2>
      <ul className={classes.needs}>
        {missing.map(({ item, gate, sentence }) => (
          <li key={`${gate} ${item}`}>
            <Mark kind="attention">{sentence}</Mark>
          </li>
        ))}
      </ul>
      <div className={classes.row}>
        <BigButton kind="main" keyHint="Enter" onClick={open}>
          Open the order
        </BigButton>
      </div>
      {mayPass ? <Pass onPass={onPass} /> : null}
    </section>
  );
}

/** Words are typed here, as an exception: to let something pass is the owner's own decision. */
function Pass({ onPass }: { onPass: (because: string) => void }) {
  const [because, setBecause] = useState('');
  const isThin = because.trim().length < 3;
  return (
    <form
      className={classes.panel}
      onSubmit={(event) => {
        event.preventDefault();
        if (!isThin) onPass(because.trim());
      }}
    >
      <label className={classes.panel}>
        <span className={classes.quiet}>Why may it pass with this missing?</span>
        <input
          className={classes.field}
          value={because}
          maxLength={400}
          onChange={(event) => setBecause(event.currentTarget.value)}
        />
      </label>
      <div className={classes.row}>
        <BigButton disabled={isThin} onClick={() => onPass(because.trim())}>
          Let it pass with a reason
        </BigButton>
      </div>
    </form>
  );
}
