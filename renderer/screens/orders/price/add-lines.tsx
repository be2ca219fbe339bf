import { Button, Checkbox } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { PricePolicy, PriceService } from '../../../../shared/contract/prices.ts';
import { dollarText } from '../../../../shared/money.ts';
import { api, orpc } from '../../../api/client.ts';
import { CommandError } from '../../../parts/command-error.tsx';
import { FormBox } from '../../../parts/form-box.tsx';
import { BusyNote, EmptyNote, ErrorNote } from '../../../parts/notes.tsx';
import { VoidsNote } from '../consents/voids-note.tsx';
import classes from '../order-page.module.css';
import { useOrder } from '../order-screen.tsx';
import { useOrderCommand } from '../use-order-command.ts';
import { type LineDraft, newLine } from './line-fields.ts';
import { LineForm } from './line-form.tsx';
import { suggestedServices } from './price-words.ts';

interface AddLineProps {
  title: string;
  initial: LineDraft;
  answerId: string | null;
  onClose: () => void;
}

/** A line that is not on the list, or one the customer's answer agreed to. */
export function AddLine({ title, initial, answerId, onClose }: AddLineProps) {
  const { order } = useOrder();
  const command = useOrderCommand(api.prices.addLine, onClose);
  const { id: orderId, rowVersion } = order.card;
  return (
    <LineForm
      title={title}
      submitLabel="Add the line"
      initial={initial}
      command={command}
      onCancel={onClose}
      onSubmit={(fields) => void command.run({ orderId, rowVersion, ...fields, answerId })}
    />
  );
}

function PickForm({ list, onClose }: { list: readonly PriceService[]; onClose: () => void }) {
  const { order } = useOrder();
  const [chosen, setChosen] = useState<string[]>([]);
  const [isTried, setTried] = useState(false);
  const command = useOrderCommand(api.prices.addFromList, onClose);
  const { id: orderId, rowVersion } = order.card;
  return (
    <FormBox
      title="Add from the price list"
      submitLabel="Add the lines"
      command={command}
      onCancel={onClose}
      onSubmit={() => {
        setTried(true);
        if (chosen.length > 0) void command.run({ orderId, rowVersion, serviceIds: chosen });
      }}
    >
      <Checkbox.Group
        label="Lines of the list"
        value={chosen}
        onChange={setChosen}
        error={isTried && chosen.length === 0 ? 'Choose at least one line.' : undefined}
      >
        {list.map(({ id, name, priceCents }) => (
          <Checkbox
            key={id}
            value={id}
            label={`${name}, ${priceCents === 0 ? 'no price yet' : dollarText(priceCents)}`}
          />
        ))}
      </Checkbox.Group>
      <VoidsNote orderId={orderId} change={{ priceLines: true }} />
    </FormBox>
  );
}

type Open = { form: 'list' } | { form: 'line'; title: string; initial: LineDraft } | null;

interface WaysProps {
  list: readonly PriceService[];
  policy: PricePolicy;
  onOpen: (open: Open) => void;
}

/** The buttons. The first one is the usual way: what the services asked cost. */
function Ways({ list, policy, onOpen }: WaysProps) {
  const { order } = useOrder();
  const addAsked = useOrderCommand(api.prices.addFromList);
  const asked = suggestedServices(list, order.services, order.price.lines);
  const { id: orderId, rowVersion } = order.card;
  const serviceIds = asked.map(({ id }) => id);
  return (
    <>
      <CommandError command={addAsked} />
      <div className={classes.buttons} style={{ marginTop: 12 }}>
        {asked.length === 0 ? null : (
          <Button
            loading={addAsked.busy}
            onClick={() => void addAsked.run({ orderId, rowVersion, serviceIds })}
          >
            Lines for the services asked
          </Button>
        )}
        {list.some(({ active }) => active) ? (
          <Button variant="default" onClick={() => onOpen({ form: 'list' })}>
            From the list
          </Button>
        ) : null}
        {freeLines(policy).map(({ label, title, part }) => (
          <Button
            key={label}
            variant="default"
            onClick={() => onOpen({ form: 'line', title, initial: { ...newLine, ...part } })}
          >
            {label}
          </Button>
        ))}
      </div>
    </>
  );
}

interface FreeLine {
  label: string;
  title: string;
  part: Partial<LineDraft>;
}

/** Lines of no list, with what the shop usually asks for them. */
function freeLines({ rushFeeCents, returnFreightCents }: PricePolicy): FreeLine[] {
  return [
    { label: 'Add a line', title: 'Add a line', part: {} },
    { label: 'Discount', title: 'Add a discount', part: { kind: 'discount' } },
    {
      label: 'Rush fee',
      title: 'Add a rush fee',
      part: { kind: 'rush', what: 'Rush fee', unitCents: rushFeeCents },
    },
    {
      label: 'Return freight',
      title: 'Add return freight',
      part: {
        kind: 'freight',
        what: 'Return freight',
        unitCents: returnFreightCents,
        taxable: false,
      },
    },
  ];
}

/** Ways to add to the price: for the services asked, from the list, or freely. */
export function AddLines() {
  const list = useQuery(orpc.prices.services.queryOptions());
  const policy = useQuery(orpc.prices.policy.queryOptions());
  const [open, setOpen] = useState<Open>(null);
  const close = () => setOpen(null);
  const failed = list.error ?? policy.error;
  if (failed !== null) {
    const again = () => void Promise.all([list.refetch(), policy.refetch()]);
    return <ErrorNote error={failed} onAgain={again} />;
  }
  if (list.data === undefined || policy.data === undefined) return <BusyNote />;
  if (open?.form === 'line') {
    return <AddLine title={open.title} initial={open.initial} answerId={null} onClose={close} />;
  }
  const active = list.data.filter((each) => each.active);
  if (open?.form === 'list') return <PickForm list={active} onClose={close} />;
  return (
    <>
      {active.length === 0 ? (
        <EmptyNote title="The price list is empty">
          The owner writes it in Settings, under Prices. Lines can be written here too.
        </EmptyNote>
      ) : null}
      <Ways list={list.data} policy={policy.data} onOpen={setOpen} />
    </>
  );
}
