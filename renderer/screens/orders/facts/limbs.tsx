import { Button, Radio } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { api, orpc } from '../../../api/client.ts';
import { Facts } from '../../../parts/facts.tsx';
import { FormBox } from '../../../parts/form-box.tsx';
import { BusyNote, ErrorNote } from '../../../parts/notes.tsx';
import { AddLimbSet } from '../../bows/limb-sets/limb-set-form.tsx';
import { limbSetFacts } from '../../bows/limb-sets/limb-sets-panel.tsx';
import { useOrder } from '../order-screen.tsx';
import { useOrderCommand } from '../use-order-command.ts';

const ownLimbs = 'own';

/** Which limbs of a take-down the order is about, and whether they came without their riser. */
export function Limbs() {
  const { order } = useOrder();
  const [isOpen, setOpen] = useState(false);
  const { bow, limbSet, cameAs, weighedOnRisers } = order;
  if (bow === null || bow.takeDown === 'one-piece') return null;
  const facts: [string, string][] = [
    ...(limbSet === null ? [] : limbSetFacts(limbSet)),
    ['Came as', cameAs === 'limbs-only' ? 'limbs only, without a riser' : 'the whole bow'],
    ['Weighed on', weighedOnRisers.join('; ')],
  ];
  return (
    <div style={{ marginTop: 12 }}>
      <Facts facts={facts} />
      {isOpen ? (
        <LimbsForm bowId={bow.id} onClose={() => setOpen(false)} />
      ) : (
        <Button variant="subtle" px={0} onClick={() => setOpen(true)}>
          Which limbs came
        </Button>
      )}
    </div>
  );
}

function LimbsForm({ bowId, onClose }: { bowId: string; onClose: () => void }) {
  const { order } = useOrder();
  const { id, rowVersion } = order.card;
  const [limbSetId, setLimbSetId] = useState(order.limbSet?.id ?? null);
  const [cameAs, setCameAs] = useState(order.cameAs);
  const [isAdding, setAdding] = useState(false);
  const query = useQuery(orpc.bows.get.queryOptions({ input: { id: bowId } }));
  const command = useOrderCommand(api.orders.setLimbSet, onClose);
  return (
    <>
      <FormBox
        title="Which limbs came"
        submitLabel="Save"
        command={command}
        onCancel={onClose}
        onSubmit={() => void command.run({ id, rowVersion, limbSetId, cameAs })}
      >
        {query.isPending ? <BusyNote /> : null}
        {query.isError ? (
          <ErrorNote error={query.error} onAgain={() => void query.refetch()} />
        ) : null}
        <Radio.Group
          label="The order is about"
          value={limbSetId ?? ownLimbs}
          error={command.details.limbSetId}
          onChange={(value) => setLimbSetId(value === ownLimbs ? null : value)}
        >
          <Radio value={ownLimbs} label="The bow with its own limbs" />
          {(query.data?.limbSets ?? []).map((set) => (
            <Radio key={set.id} value={set.id} label={set.name} />
          ))}
        </Radio.Group>
        <Radio.Group
          label="What came"
          value={cameAs}
          onChange={(value) => setCameAs(value === 'limbs-only' ? 'limbs-only' : 'whole-bow')}
        >
          <Radio value="whole-bow" label="The whole bow" />
          <Radio
            value="limbs-only"
            label="Only the limbs"
            description="Every weighing then says on which riser it was taken."
          />
        </Radio.Group>
        <Button variant="default" style={{ justifySelf: 'start' }} onClick={() => setAdding(true)}>
          Add a pair of limbs
        </Button>
      </FormBox>
      <AddLimbSet
        opened={isAdding}
        bowId={bowId}
        onClose={() => setAdding(false)}
        onDone={(added) => {
          setAdding(false);
          setLimbSetId(added);
          void query.refetch();
        }}
      />
    </>
  );
}
