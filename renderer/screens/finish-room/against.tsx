import { Mark } from '../../parts/mark.tsx';
import classes from './finish-room.module.css';

interface AgainstProps {
  title: string;
  sentences: readonly string[];
}

/** Why something cannot be done now, one sentence each. */
export function Against({ title, sentences }: AgainstProps) {
  if (sentences.length === 0) return null;
  return (
    <div className={classes.against} role="alert">
      <p>
        <Mark kind="stop">{title}</Mark>
      </p>
      {sentences.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
    </div>
  );
}
