import { Mark } from '../../parts/mark.tsx';
import classes from './finish-room.module.css';

/** What is odd about the grits just recorded: advice, nothing more. */
export function Advice({ advice }: { advice: readonly string[] }) {
  if (advice.length === 0) return <Mark kind="done">Recorded: nothing odd about the grits.</Mark>;
  return (
    <ul className={classes.list}>
      {advice.map((sentence) => (
        <li key={sentence}>
          <Mark kind="attention">{sentence}</Mark>
        </li>
      ))}
    </ul>
  );
}
