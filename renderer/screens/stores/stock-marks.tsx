import { type StockMark, stockMarkLabels } from '../../../shared/stores.ts';
import { Mark } from '../../parts/mark.tsx';
import classes from './stores.module.css';
import { markKinds } from './stores-words.ts';

/** What a consumable needs somebody for, each as shape and word. */
export function StockMarks({ marks }: { marks: readonly StockMark[] }) {
  return (
    <span className={classes.marks}>
      {marks.map((mark) => (
        <Mark key={mark} kind={markKinds[mark]}>
          {stockMarkLabels[mark]}
        </Mark>
      ))}
    </span>
  );
}
