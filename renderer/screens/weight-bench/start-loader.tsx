import { Button } from '@mantine/core';
import type { UseQueryResult } from '@tanstack/react-query';
import { type ReactNode, useEffect, useState } from 'react';
import type { PlanStart } from '../../../shared/plan-record.ts';
import { BusyNote, ErrorNote } from '../../parts/notes.tsx';
import { Banner } from './banner.tsx';
import { isSameStart } from './draft.ts';

interface StartLoaderProps {
  query: UseQueryResult<PlanStart, unknown>;
  children: (start: PlanStart) => ReactNode;
}

/** Reads what a plan begins from, and says how that goes. */
export function StartLoader({ query, children }: StartLoaderProps) {
  if (query.data !== undefined) return children(query.data);
  if (query.error !== null) {
    return (
      <ErrorNote error={query.error} onAgain={() => void query.refetch()} busy={query.isFetching} />
    );
  }
  return <BusyNote>Reading the bow ...</BusyNote>;
}

interface BeganFromProps {
  /** As the records stand now. */
  fresh: PlanStart;
  /**
   * `changed` is a banner once the records say something else than when this began; `times` rises
   * with every new beginning.
   */
  children: (
    start: PlanStart,
    changed: ReactNode,
    beginAgain: () => void,
    times: number,
  ) => ReactNode;
}

/** Keeps what is being planned while the records move on, and says so instead of throwing it away. */
export function BeganFrom({ fresh, children }: BeganFromProps) {
  const [began, setBegan] = useState({ start: fresh, times: 1 });
  const isSame = isSameStart(began.start, fresh);
  useEffect(() => {
    // Only the order's version moved: the plan still begins from the same records.
    if (isSame) setBegan((now) => (now.start === fresh ? now : { ...now, start: fresh }));
  }, [isSame, fresh]);
  const beginAgain = () => setBegan(({ times }) => ({ start: fresh, times: times + 1 }));
  const changed = isSame ? null : (
    <Banner
      kind="attention"
      title="The records have changed since you began here."
      why={['What you see rests on the older ones and cannot be accepted.']}
      actions={<Button onClick={beginAgain}>Begin again from the records</Button>}
    />
  );
  return children(began.start, changed, beginAgain, began.times);
}
