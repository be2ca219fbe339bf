import { useQuery } from '@tanstack/react-query';
import { consentLabels } from '../../../../shared/consents.ts';
import type { ConsentChange } from '../../../../shared/contract/consent-change.ts';
import { orpc } from '../../../api/client.ts';
import { Mark } from '../../../parts/mark.tsx';

const listed = (words: readonly string[]) =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;

/** Says, before an edit is saved, which approval it takes away. Nothing where it takes none. */
export function VoidsNote({ orderId, change }: { orderId: string; change: ConsentChange }) {
  const voided = useQuery({
    ...orpc.consents.wouldVoid.queryOptions({ input: { orderId, change } }),
    placeholderData: (before) => before,
  });
  if (voided.data === undefined || voided.data.length === 0) return null;
  const names = (state: 'granted' | 'waiting') =>
    listed(
      voided.data
        .filter((each) => each.state === state)
        .map(({ kind }) => consentLabels[kind].toLowerCase()),
    );
  const granted = names('granted');
  const waiting = names('waiting');
  return (
    <div role="status">
      {granted === '' ? null : (
        <Mark kind="attention">
          Saving this voids what the customer granted: {granted}. It will have to be asked again.
        </Mark>
      )}
      {waiting === '' ? null : (
        <Mark kind="attention">
          Saving this outdates what the customer was asked: {waiting}. Ask again with the new text.
        </Mark>
      )}
    </div>
  );
}
