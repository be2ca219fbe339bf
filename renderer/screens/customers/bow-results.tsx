import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { orpc } from '../../api/client.ts';
import { BusyNote, EmptyNote, ErrorNote } from '../../parts/notes.tsx';
import { LinkRow, Rows } from '../../parts/rows.tsx';
import { bowTitle, markedText } from '../bows/bow-text.ts';

export function BowResults({ text }: { text: string }) {
  const results = useQuery({
    ...orpc.bows.search.queryOptions({ input: { text } }),
    placeholderData: keepPreviousData,
  });
  if (results.error !== null) {
    return <ErrorNote error={results.error} onAgain={() => void results.refetch()} />;
  }
  if (results.data === undefined) return <BusyNote />;
  if (results.data.length === 0) {
    return text === '' ? (
      <EmptyNote title="No bows yet">
        Add one on the page of its customer, in Intake, or here for the shop itself.
      </EmptyNote>
    ) : (
      <EmptyNote title="No bow fits">Try the maker, the model or the serial.</EmptyNote>
    );
  }
  return (
    <Rows label="Bows">
      {results.data.map((bow) => (
        <LinkRow
          key={bow.id}
          href={`/bows/${bow.id}`}
          title={bowTitle(bow)}
          line={[markedText(bow), bow.serial && `serial ${bow.serial}`].filter(Boolean).join(' · ')}
          side={bow.customerId === null ? "the shop's own" : bow.ownerName}
        />
      ))}
    </Rows>
  );
}
