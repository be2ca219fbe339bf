import { Button } from '@mantine/core';
import { useState } from 'react';
import type { Stage } from '../../../../shared/stages.ts';
import { api } from '../../../api/client.ts';
import { FormBox } from '../../../parts/form-box.tsx';
import { AddCustomer } from '../../customers/add-customer.tsx';
import { CustomerSearch } from '../../intake/customer-search.tsx';
import { useOrder } from '../order-screen.tsx';
import { useOrderCommand } from '../use-order-command.ts';

const beforeAgreement: readonly Stage[] = ['requested', 'in-mail', 'arrived'];

/** Gives the order of an unknown sender, with its bow, to the customer whose it turned out to be. */
export function IdentifyCustomer() {
  const { order, isOffice } = useOrder();
  const [isOpen, setOpen] = useState(false);
  const { stage, customerId } = order.card;
  const isAnswered = order.consents.some((consent) => consent.answers.length > 0);
  if (!isOffice || customerId === null || isAnswered || !beforeAgreement.includes(stage)) {
    return null;
  }
  if (!isOpen) {
    return (
      <Button variant="subtle" mt="xs" px={0} onClick={() => setOpen(true)}>
        It belongs to somebody else
      </Button>
    );
  }
  return <IdentifyForm onDone={() => setOpen(false)} />;
}

interface Chosen {
  id: string;
  name: string;
}

function IdentifyForm({ onDone }: { onDone: () => void }) {
  const { order } = useOrder();
  const { id, rowVersion } = order.card;
  const [typed, setTyped] = useState('');
  const [chosen, setChosen] = useState<Chosen | null>(null);
  const [isAdding, setAdding] = useState(false);
  const [isTried, setTried] = useState(false);
  const command = useOrderCommand(api.orders.identifyCustomer, onDone);
  const give = (customerId: string) => void command.run({ id, rowVersion, customerId });
  return (
    <div style={{ marginTop: 16 }}>
      <FormBox
        title="Whose bow is it?"
        submitLabel={chosen === null ? 'Give it to this customer' : `Give it to ${chosen.name}`}
        command={command}
        onCancel={onDone}
        onSubmit={() => {
          setTried(true);
          if (chosen !== null) give(chosen.id);
        }}
      >
        <CustomerSearch
          typed={typed}
          error={isTried && chosen === null ? 'Choose the customer.' : command.details.customerId}
          onTyped={(text) => {
            setTyped(text);
            setChosen(null);
          }}
          onKnown={(customer) => {
            setTyped(customer.name);
            setChosen(customer);
          }}
          onNew={() => setAdding(true)}
        />
      </FormBox>
      <AddCustomer
        key={isAdding ? 'open' : 'closed'}
        opened={isAdding}
        name={typed.trim()}
        onClose={() => setAdding(false)}
        onAdded={(added) => {
          setAdding(false);
          setChosen({ id: added, name: typed.trim() });
          give(added);
        }}
      />
    </div>
  );
}
