import { Autocomplete, Button, CopyButton, Select, Textarea } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import {
  type ConsentKind,
  consentKinds,
  consentLabels,
  consentTextMax,
} from '../../../../shared/consents.ts';
import { api, orpc } from '../../../api/client.ts';
import { Dialog } from '../../../parts/dialog.tsx';
import { FormBox } from '../../../parts/form-box.tsx';
import { BusyNote, ErrorNote } from '../../../parts/notes.tsx';
import { useOrder } from '../order-screen.tsx';
import { useOrderCommand } from '../use-order-command.ts';
import { waysToReach } from '../ways-to-reach.ts';

const kinds = consentKinds.map((value) => ({ value, label: consentLabels[value] }));
/** Shortest text the contract takes. */
const shortest = 20;

/** Asks for a consent: the exact words are read and changed here, then kept for good. */
export function AskDialog({ first, onDone }: { first: ConsentKind; onDone: () => void }) {
  return (
    <Dialog onClose={onDone} size="xl" title="Ask the customer">
      <AskForm first={first} onDone={onDone} />
    </Dialog>
  );
}

function AskForm({ first, onDone }: { first: ConsentKind; onDone: () => void }) {
  const { order } = useOrder();
  const [kind, setKind] = useState(first);
  const [texts, setTexts] = useState<Partial<Record<ConsentKind, string>>>({});
  const [askedHow, setAskedHow] = useState('');
  const [isTried, setTried] = useState(false);
  const command = useOrderCommand(api.consents.ask, onDone);
  const orderId = order.card.id;
  const proposal = useQuery({
    ...orpc.consents.propose.queryOptions({ input: { orderId, kind } }),
    // Written anew each time: what was proposed before a change must not be asked even for a moment.
    gcTime: 0,
  });
  const text = texts[kind] ?? proposal.data?.text ?? '';
  const isThin = text.trim().length < shortest;
  const errors = {
    text: isTried && isThin ? 'The text may not be empty.' : command.details.text,
    how: isTried && askedHow.trim() === '' ? 'Say how.' : command.details.askedHow,
  };
  // The text is long: the form opens with it, so that it pushes no button away.
  if (proposal.isPending && kind === first) return <BusyNote>Writing the text ...</BusyNote>;
  return (
    <FormBox
      plain
      title={`${consentLabels[kind]}, order ${order.card.number}`}
      submitLabel="Record that this was asked"
      command={command}
      onCancel={onDone}
      onSubmit={() => {
        setTried(true);
        if (!isThin && askedHow.trim() !== '')
          void command.run({
            orderId,
            kind,
            text,
            askedHow,
            ...(proposal.data === undefined
              ? {}
              : { wordingVersion: proposal.data.wordingVersion }),
          });
      }}
    >
      <Select
        label="What is asked"
        data={kinds}
        value={kind}
        error={command.details.kind}
        onChange={(value) => {
          command.reset();
          if (value !== null) setKind(value);
        }}
      />
      {proposal.isPending ? <BusyNote>Writing the text ...</BusyNote> : null}
      {proposal.isError ? (
        <ErrorNote error={proposal.error} onAgain={() => void proposal.refetch()} />
      ) : null}
      {proposal.data === undefined ? null : (
        <>
          <Textarea
            label="Text the customer reads or hears, word for word"
            description="Change it as you like; the lines that say what it is about must stay."
            required
            maxLength={consentTextMax}
            autosize
            maxRows={24}
            minRows={8}
            value={text}
            error={errors.text}
            onChange={(event) => setTexts({ ...texts, [kind]: event.currentTarget.value })}
          />
          <CopyButton value={text}>
            {({ copied, copy }) => (
              <Button variant="default" onClick={copy} style={{ justifySelf: 'start' }}>
                {copied ? 'Copied' : 'Copy the text'}
              </Button>
            )}
          </CopyButton>
        </>
      )}
      <Autocomplete
        size="md"
        label="How it is asked"
        description="The program sends nothing by itself."
        required
        maxLength={200}
        data={waysToReach(order.customer)}
        value={askedHow}
        error={errors.how}
        onChange={setAskedHow}
      />
    </FormBox>
  );
}
