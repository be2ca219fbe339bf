import { Button, Radio } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { Bow } from '../../../../shared/contract/bows.ts';
import { api, orpc } from '../../../api/client.ts';
import { FormBox } from '../../../parts/form-box.tsx';
import { BusyNote, ErrorNote } from '../../../parts/notes.tsx';
import { AddBow } from '../../bows/add-bow.tsx';
import type { Opening } from '../open-forms.ts';
import classes from '../order-page.module.css';
import { useOrder } from '../order-screen.tsx';
import { useOrderCommand } from '../use-order-command.ts';
import { bowText } from '../words.ts';

/** Bows of the order's customer, or the shop's own where the order has none. */
export function useBowsOf(customerId: string | null) {
  const theirs = useQuery({
    ...orpc.customers.get.queryOptions({ input: { id: customerId ?? '' } }),
    enabled: customerId !== null,
  });
  const own = useQuery({
    ...orpc.bows.search.queryOptions({ input: { text: '' } }),
    enabled: customerId === null,
  });
  const query = customerId === null ? own : theirs;
  const bows: Bow[] =
    customerId === null
      ? (own.data ?? []).filter((bow) => bow.customerId === null)
      : (theirs.data?.bows ?? []);
  return { query, bows };
}

/** Says which bow came: one the owner has here already, or a new one. */
export function IdentifyBow({ opening }: { opening: Opening }) {
  const { order, close } = useOrder();
  const { id, rowVersion, customerId } = order.card;
  const [bowId, setBowId] = useState<string | null>(null);
  const [isAdding, setAdding] = useState(false);
  const [isTried, setTried] = useState(false);
  const { query, bows } = useBowsOf(customerId);
  const command = useOrderCommand(api.orders.identifyBow, () => close('bow'));
  const identify = (chosen: string) => void command.run({ id, rowVersion, bowId: chosen });
  return (
    <>
      <FormBox
        title="Which bow is it?"
        submitLabel="This is the bow"
        command={command}
        times={opening.times}
        onCancel={() => close('bow')}
        onSubmit={() => {
          setTried(true);
          if (bowId !== null) identify(bowId);
        }}
      >
        {query.isPending ? <BusyNote /> : null}
        {query.isError ? (
          <ErrorNote error={query.error} onAgain={() => void query.refetch()} />
        ) : null}
        {query.isSuccess && bows.length === 0 ? (
          <p className={classes.quiet}>No bow of this owner is known here yet. Add it.</p>
        ) : null}
        {bows.length === 0 ? null : (
          <Radio.Group
            size="md"
            label="Bows of this owner"
            value={bowId}
            onChange={setBowId}
            error={isTried && bowId === null ? 'Choose the bow, or add it.' : command.details.bowId}
          >
            {bows.map((bow) => (
              <Radio key={bow.id} value={bow.id} label={bowText(bow)} />
            ))}
          </Radio.Group>
        )}
        <Button variant="default" style={{ justifySelf: 'start' }} onClick={() => setAdding(true)}>
          Add a new bow
        </Button>
      </FormBox>
      <AddBow
        opened={isAdding}
        customerId={customerId}
        onClose={() => setAdding(false)}
        onAdded={(added) => {
          setAdding(false);
          setBowId(added);
          identify(added);
        }}
      />
    </>
  );
}
