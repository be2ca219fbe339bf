import { Button } from '@mantine/core';
import type { ReactNode } from 'react';
import { decimal } from '../../../shared/measure.ts';
import type { Reckoned } from '../../../shared/plan-answer.ts';
import type { PlanMethod } from '../../../shared/weight-plan.ts';
import { Mark, type MarkKind } from '../../parts/mark.tsx';
import { Panel } from '../../parts/panel.tsx';
import { useDesk } from './desk-context.tsx';
import { withChoices } from './draft.ts';
import type { MethodColumn, MethodState, MethodTable } from './method-table.ts';
import classes from './methods.module.css';

const marks: Partial<Record<MethodState, MarkKind>> = {
  recommended: 'done',
  short: 'attention',
  refused: 'stop',
  'no-answer': 'stop',
};

function State({ column }: { column: MethodColumn }) {
  const mark = marks[column.state];
  return mark === undefined ? <span>{column.said}</span> : <Mark kind={mark}>{column.said}</Mark>;
}

interface MethodsPanelProps {
  answer: Reckoned;
  table: MethodTable;
  shown: PlanMethod | null;
  onShow: (method: PlanMethod) => void;
  /** One cell a column: the way to accept it, or why not. */
  foot: ((column: MethodColumn) => ReactNode) | null;
  note: ReactNode;
}

/** All ways to the target as the columns of a plain table. */
export function MethodsPanel({ answer, table, shown, onShow, foot, note }: MethodsPanelProps) {
  const { columns, rows } = table;
  return (
    <Panel title="Ways to get there" actions={note}>
      <Outcome answer={answer} />
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a table wider than the panel scrolls by keyboard. */}
      <section className={classes.scroll} aria-label="Ways side by side" tabIndex={0}>
        <table className={classes.table}>
          <thead>
            <tr>
              <td />
              {columns.map((column) => (
                <th scope="col" key={column.method} className={classes[column.state]}>
                  <span className={classes.name}>{column.title}</span>
                  <span className={classes.state}>
                    <State column={column} />
                  </span>
                  {column.plan === null ? null : (
                    <Button
                      variant="default"
                      aria-pressed={shown === column.method}
                      aria-label={`${shown === column.method ? 'Shown' : 'Show'} ${column.title}`}
                      onClick={() => onShow(column.method)}
                    >
                      {shown === column.method ? 'Shown' : 'Show'}
                    </Button>
                  )}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map(({ name, said, cells, isText }) => (
              <tr key={name} className={isText === true ? classes.text : undefined}>
                <th scope="row">
                  {name}
                  {said === undefined ? null : <span className={classes.atDraw}> {said}</span>}
                </th>
                {cells.map((lines, i) => (
                  <td
                    key={columns[i]?.method ?? i}
                    className={classes[columns[i]?.state ?? 'possible']}
                  >
                    {lines.map((text) => (
                      <span key={text} className={classes.line}>
                        {text}
                      </span>
                    ))}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
          {foot === null ? null : (
            <tfoot>
              <tr>
                <th scope="row">Decide</th>
                {columns.map((column) => (
                  <td key={column.method}>{foot(column)}</td>
                ))}
              </tr>
            </tfoot>
          )}
        </table>
      </section>
      <WithoutHinge answer={answer} />
    </Panel>
  );
}

function Outcome({ answer }: { answer: Reckoned }) {
  const { drop, lowest, warnings, sanding } = answer;
  const strong = drop.level === 'refused' ? 'stop' : 'attention';
  return (
    <div className={classes.said}>
      {drop.sentence === null ? null : <Mark kind={strong}>{drop.sentence}</Mark>}
      {lowest === null ? null : (
        <div role="status">
          <Mark kind="stop">
            No way reaches the target within the limits. The lowest is {decimal(lowest.weightLbf)}{' '}
            lb
            {lowest.method === null ? ', the bow as it is.' : '.'}
          </Mark>
          <ul className={classes.why}>
            {lowest.why.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </div>
      )}
      {warnings.map((sentence) => (
        <Mark key={sentence} kind="attention">
          {sentence}
        </Mark>
      ))}
      {sanding === null || warnings.includes(sanding.sentence) ? null : (
        <p className={classes.plain}>{sanding.sentence}</p>
      )}
    </div>
  );
}

/** The same cut ended elsewhere, which makes no hinge. */
function WithoutHinge({ answer }: { answer: Reckoned }) {
  const { input, change } = useDesk();
  const { withoutHinge } = answer;
  if (withoutHinge === null) return null;
  return (
    <div className={classes.offer}>
      <Mark kind="attention">{withoutHinge.sentence}</Mark>
      <Button
        variant="default"
        onClick={() => change(withChoices(input, { cutShape: withoutHinge.cutShape }))}
      >
        Use this cut
      </Button>
    </div>
  );
}
