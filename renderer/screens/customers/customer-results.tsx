import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { Link } from 'wouter';
import { orpc } from '../../api/client.ts';
import { BusyNote, EmptyNote, ErrorNote } from '../../parts/notes.tsx';
import { LinkRow, Rows } from '../../parts/rows.tsx';

/** Best matches first; without a text, the newest. */
export function CustomerResults({ text }: { text: string }) {
  const results = useQuery({
    ...orpc.customers.search.queryOptions({ input: { text } }),
    placeholderData: keepPreviousData,
  });
  if (results.error !== null) {
    return <ErrorNote error={results.error} onAgain={() => void results.refetch()} />;
  }
  if (results.data === undefined) return <BusyNote />;
  if (results.data.length === 0) {
    return text === '' ? (
      <EmptyNote title="No customers yet">
        They come with their first request: <Link href="/intake">take one in</Link>.
      </EmptyNote>
    ) : (
      <EmptyNote title="Nobody fits">Try a part of the name, the town or the phone.</EmptyNote>
    );
  }
  return (
    <Rows label="Customers">
      {results.data.map((customer) => (
        <LinkRow
          key={customer.id}
          href={`/customers/${customer.id}`}
          title={customer.name}
          line={[customer.address.city, customer.phone, customer.email].filter(Boolean).join(' · ')}
        />
      ))}
    </Rows>
  );
}
