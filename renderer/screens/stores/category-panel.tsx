import { Link } from 'wouter';
import type { ConsumableSummary } from '../../../shared/contract/stores.ts';
import { type Category, categoryLabels, quantityText } from '../../../shared/stores.ts';
import { Panel } from '../../parts/panel.tsx';
import { StockMarks } from './stock-marks.tsx';
import classes from './stores.module.css';
import { summaryLine } from './stores-words.ts';

function Row({ each }: { each: ConsumableSummary }) {
  return (
    <li>
      <Link href={`/stores/${each.id}`} className={classes.row ?? ''}>
        <span>
          <span className={classes.name}>{each.name}</span>{' '}
          <span className={classes.line}>{summaryLine(each)}</span>
        </span>{' '}
        <span className={classes.amount}>{quantityText(each.onHand, each.unit)}</span>{' '}
        <StockMarks marks={each.marks} />
      </Link>
    </li>
  );
}

interface CategoryPanelProps {
  category: Category;
  consumables: readonly ConsumableSummary[];
}

/** One category as it stands on the shelves; abrasives coarsest first. */
export function CategoryPanel({ category, consumables }: CategoryPanelProps) {
  return (
    <Panel title={categoryLabels[category]}>
      <ul className={classes.rows}>
        {consumables.map((each) => (
          <Row key={each.id} each={each} />
        ))}
      </ul>
      {category === 'abrasive' ? (
        <p className={classes.quiet} style={{ margin: '8px 0 0' }}>
          Coarsest first, by grain size: the same number is another grain on each scale.
        </p>
      ) : null}
    </Panel>
  );
}
