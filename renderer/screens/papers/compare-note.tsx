import { useQuery } from '@tanstack/react-query';
import { orpc } from '../../api/client.ts';
import { Mark } from '../../parts/mark.tsx';
import { BusyNote, ErrorNote } from '../../parts/notes.tsx';
import classes from './papers.module.css';

/** Whether a paper made again says what the old one said. */
export function CompareNote({ id }: { id: string }) {
  const comparison = useQuery({
    ...orpc.papers.compare.queryOptions({ input: { id } }),
    // Asked once a look: the reprint itself must not be compared with the old one again.
    staleTime: Number.POSITIVE_INFINITY,
    gcTime: 0,
  });
  if (comparison.isError) {
    return <ErrorNote error={comparison.error} onAgain={() => void comparison.refetch()} />;
  }
  if (comparison.data === undefined) return <BusyNote>Comparing with the old paper ...</BusyNote>;
  const { data } = comparison;
  // Why it cannot be made stands in place of the preview.
  if (data.outcome === 'unmade') return null;
  return (
    <p className={classes.message} role="status">
      {data.outcome === 'same' ? (
        <Mark kind="done">It says the same as the old paper.</Mark>
      ) : (
        <Mark kind="attention">{data.sentence}</Mark>
      )}
    </p>
  );
}
