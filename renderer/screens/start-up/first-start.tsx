import { Button, Group, TextInput } from '@mantine/core';
import { useState } from 'react';
import { contract } from '../../../shared/contract/index.ts';
import type { ContractRequests } from '../../../shared/contract/types.ts';
import { usualWaiting } from '../../../shared/waiting-policy.ts';
import { api } from '../../api/client.ts';
import { useCommand } from '../../api/command.ts';
import { queryClient } from '../../api/queries.ts';
import { setPerson } from '../../api/session.ts';
import { AddressFields, emptyAddress } from '../../parts/address-fields.tsx';
import { CommandError } from '../../parts/command-error.tsx';
import { errorsUnder } from '../../parts/field-errors.ts';
import { FieldGrid } from '../../parts/fields.tsx';
import { inputErrors } from '../../parts/input-schema.ts';
import { Panel } from '../../parts/panel.tsx';
import { initialsOf } from './initials-of.ts';
import { LookAtDemo } from './look-at-demo.tsx';
import { StartPage } from './start-page.tsx';

type Opening = Omit<ContractRequests['setup']['openShop'], 'commandId'>;

const empty: Opening = {
  shop: {
    name: '',
    address: emptyAddress,
    phone: '',
    email: '',
    paperFormat: 'letter',
    tagFormat: '4x6',
    contentsOnTag: false,
    ...usualWaiting,
  },
  owner: { name: '', initials: '' },
};

interface FirstStartProps {
  dataFolder: string;
  demoTrouble: string | null;
}

/** First start: two ways in. For one's own shop its name and its owner are enough. */
export function FirstStart({ dataFolder, demoTrouble }: FirstStartProps) {
  const [value, setValue] = useState(empty);
  const [shown, setShown] = useState<Record<string, string>>({});
  const open = useCommand(api.setup.openShop, {
    onDone: ({ personId }) => {
      setPerson(personId);
      void queryClient.invalidateQueries();
    },
  });
  const setShop = (part: Partial<Opening['shop']>) =>
    setValue({ ...value, shop: { ...value.shop, ...part } });
  const setOwner = (part: Partial<Opening['owner']>) =>
    setValue({ ...value, owner: { ...value.owner, ...part } });
  const submit = () => {
    const errors = inputErrors(contract.setup.openShop, value);
    setShown(errors);
    if (Object.keys(errors).length === 0) void open.run(value);
  };
  return (
    <StartPage title="Open your shop">
      <LookAtDemo trouble={demoTrouble} />
      <h2 style={{ margin: 0, fontSize: 22, fontWeight: 600 }}>Or begin with your own shop</h2>
      <p>
        Everything is kept in one folder on this computer: <strong>{dataFolder}</strong>
      </p>
      <form
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          submit();
        }}
      >
        <div style={{ display: 'grid', gap: 16 }}>
          <Panel title="The shop">
            <FieldGrid>
              <TextInput
                label="Shop name"
                required
                value={value.shop.name}
                error={shown['shop.name']}
                onChange={(event) => setShop({ name: event.currentTarget.value })}
              />
              <AddressFields
                value={value.shop.address}
                onChange={(address) => setShop({ address })}
                errors={errorsUnder(shown, 'shop.address')}
              />
            </FieldGrid>
          </Panel>
          <Panel title="The owner">
            <FieldGrid>
              <TextInput
                label="Owner's name"
                required
                value={value.owner.name}
                error={shown['owner.name']}
                onChange={(event) => {
                  const name = event.currentTarget.value;
                  const kept = value.owner.initials !== initialsOf(value.owner.name);
                  setOwner({ name, initials: kept ? value.owner.initials : initialsOf(name) });
                }}
              />
              <TextInput
                label="Initials"
                description="Up to four letters, as on the paper tags."
                required
                value={value.owner.initials}
                error={shown['owner.initials']}
                onChange={(event) => setOwner({ initials: event.currentTarget.value })}
              />
            </FieldGrid>
          </Panel>
          <CommandError command={open} />
          <Group>
            <Button type="submit" loading={open.busy}>
              Open the shop
            </Button>
          </Group>
        </div>
      </form>
    </StartPage>
  );
}
