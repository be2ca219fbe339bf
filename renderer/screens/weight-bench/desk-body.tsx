import { Button, Loader } from '@mantine/core';
import { type ReactNode, useMemo, useState } from 'react';
import type { Reckoned } from '../../../shared/plan-answer.ts';
import type { PlanInput } from '../../../shared/plan-input.ts';
import type { PlanStart } from '../../../shared/plan-record.ts';
import type { PlanMethod } from '../../../shared/weight-plan.ts';
import { BusyNote, ErrorNote } from '../../parts/notes.tsx';
import { Panel } from '../../parts/panel.tsx';
import { AcceptDialog, type Chosen } from './accept-dialog.tsx';
import { BowPanel } from './bow-panel.tsx';
import { ChartsPanel } from './charts-panel.tsx';
import { type Desk, DeskProvider } from './desk-context.tsx';
import { draftErrors } from './draft.ts';
import { GapList } from './gap-list.tsx';
import { LimbPanel } from './limb-panel.tsx';
import { type MethodColumn, methodTable, shownColumn, whyNotAccept } from './method-table.ts';
import { MethodsPanel } from './methods-panel.tsx';
import { ReadingsPanel } from './readings-panel.tsx';
import { type ReckoningView, useReckoning } from './use-reckoning.ts';
import classes from './weight-bench.module.css';
import type { StoryFacts } from './weight-story.ts';
import { WishPanel } from './wish-panel.tsx';

interface DeskBodyProps {
  start: PlanStart;
  /** Weighings and accepted plan of the order; none in a what-if. */
  story: Pick<StoryFacts, 'weighings'>;
  /** What stands above everything: banners. */
  children?: ReactNode;
  onAccepted?: (version: number) => void;
}

function BusyWord({ isBusy }: { isBusy: boolean }) {
  return (
    <span className={classes.reckoning} role="status">
      {isBusy ? (
        <>
          <Loader size={14} mr={8} aria-hidden="true" />
          reckoning ...
        </>
      ) : null}
    </span>
  );
}

/** Why there is no answer to show, or none that fits what is typed. */
function Trouble({ view, isWrong }: { view: ReckoningView; isWrong: boolean }) {
  if (isWrong) {
    return (
      <ErrorNote error="Something typed is no usable figure: it is marked below. What is shown is the last answer." />
    );
  }
  if (view.error !== null) {
    return <ErrorNote error={view.error} onAgain={view.again} busy={view.isBusy} />;
  }
  if (view.answer === null) return <BusyNote>Reckoning the bow ...</BusyNote>;
  if (view.answer.outcome === 'no-answer') {
    return <ErrorNote error={`No answer for this bow: ${view.answer.sentence}`} />;
  }
  return null;
}

interface FootProps {
  column: MethodColumn;
  notNow: string | null;
  isSettled: boolean;
  onAccept: (column: MethodColumn) => void;
}

/** The way to accept one method, or the sentence why it cannot be. */
function Foot({ column, notNow, isSettled, onAccept }: FootProps) {
  const why = whyNotAccept(column);
  if (why !== null || notNow !== null)
    return <span className={classes.quiet}>{why ?? notNow}</span>;
  return (
    <Button
      variant={column.state === 'recommended' ? 'filled' : 'default'}
      disabled={!isSettled}
      aria-label={`Accept ${column.title}`}
      onClick={() => onAccept(column)}
    >
      Accept ...
    </Button>
  );
}

function useDeskState(start: PlanStart) {
  const [input, change] = useState<PlanInput>(start.input);
  const [isSliding, setSliding] = useState(false);
  const errors = useMemo(() => draftErrors(input), [input]);
  const isWrong = Object.keys(errors).length > 0;
  const view = useReckoning(isWrong ? null : input, isSliding);
  const desk: Desk = { start, input, change, setSliding, errors };
  return { desk, view, isWrong, isSettled: !isWrong && !isSliding && view.input === input };
}

/** Inputs, all ways side by side, pictures, and the plan that is accepted. */
export function DeskBody({ start, story, children, onAccepted }: DeskBodyProps) {
  const { desk, view, isWrong, isSettled } = useDeskState(start);
  const [asked, setAsked] = useState<PlanMethod | null>(null);
  const [chosen, setChosen] = useState<Chosen | null>(null);
  const answer: Reckoned | null = view.answer?.outcome === 'reckoned' ? view.answer : null;
  const { drawIn } = (view.input ?? desk.input).wish;
  const table = useMemo(
    () => (answer === null ? null : methodTable(answer, drawIn)),
    [answer, drawIn],
  );
  const shown = table === null ? null : shownColumn(table.columns, asked);
  const accept = (column: MethodColumn) => {
    if (answer === null || column.plan === null) return;
    setChosen({ start, input: desk.input, plan: column.plan, drop: answer.drop });
  };
  return (
    <DeskProvider desk={desk}>
      <div className={classes.desk}>
        {children}
        <Trouble view={view} isWrong={isWrong} />
        <LimbPanel shown={shown} note={<BusyWord isBusy={view.isBusy} />} />
        <div className={classes.columns}>
          <div className={classes.column}>
            <WishPanel />
            {answer === null || table === null ? (
              <Panel title="Ways to get there">
                <p className={classes.quiet}>They show here as soon as the bow is reckoned.</p>
              </Panel>
            ) : (
              <MethodsPanel
                answer={answer}
                table={table}
                shown={shown?.method ?? null}
                onShow={setAsked}
                note={<BusyWord isBusy={view.isBusy} />}
                foot={
                  onAccepted === undefined
                    ? null
                    : (column) => (
                        <Foot
                          column={column}
                          notNow={start.notNow}
                          isSettled={isSettled}
                          onAccept={accept}
                        />
                      )
                }
              />
            )}
            <GapList start={start} />
            <BowPanel />
          </div>
          <div className={classes.column}>
            <ChartsPanel answer={answer} shown={shown} story={story} />
            <ReadingsPanel />
          </div>
        </div>
      </div>
      {chosen === null || onAccepted === undefined ? null : (
        <AcceptDialog
          chosen={chosen}
          onClose={() => setChosen(null)}
          onAccepted={(version) => {
            setChosen(null);
            onAccepted(version);
          }}
        />
      )}
    </DeskProvider>
  );
}
