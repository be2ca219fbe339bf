import { notifications } from '@mantine/notifications';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { contract } from '../../../shared/contract/index.ts';
import type { ShopDetails } from '../../../shared/contract/setup.ts';
import { api, orpc } from '../../api/client.ts';
import { useCommand } from '../../api/command.ts';
import { addressLines } from '../../parts/address-fields.tsx';
import { Facts } from '../../parts/facts.tsx';
import { inputErrors } from '../../parts/input-schema.ts';
import { BusyNote, ErrorNote } from '../../parts/notes.tsx';
import { omit } from '../../parts/omit.ts';
import { Panel } from '../../parts/panel.tsx';
import { RecordForm } from '../../parts/record-form.tsx';
import { ShopFieldsForm } from './shop-fields-form.tsx';

/** Name, address and papers of the shop, and its policy on waiting. */
export function Shop({ isOwner }: { isOwner: boolean }) {
  const shop = useQuery(orpc.shop.get.queryOptions());
  if (shop.error !== null) {
    return <ErrorNote error={shop.error} onAgain={() => void shop.refetch()} />;
  }
  if (shop.data === undefined) return <BusyNote />;
  return isOwner ? <Editable shop={shop.data} /> : <ReadOnly shop={shop.data} />;
}

function ReadOnly({ shop }: { shop: ShopDetails }) {
  return (
    <Panel title="The shop on its papers">
      <Facts
        facts={[
          ['Name', shop.name],
          ['Address', addressLines(shop.address).join('\n')],
          ['Phone', shop.phone],
          ['E-mail', shop.email],
          ['Reminders', `after ${shop.reminderDays.join(', ')} days`],
          ['Storage fee', `after ${shop.storageFeeDays} days on hold`],
          ['Unclaimed', `after ${shop.abandonedDays} days on hold`],
        ]}
      />
      <p style={{ marginBottom: 0 }}>Only the owner changes this.</p>
    </Panel>
  );
}

function Editable({ shop }: { shop: ShopDetails }) {
  // Kept from when the form opened: a change by somebody else must be noticed on saving.
  const [opened, setOpened] = useState(shop);
  const edit = useCommand(api.shop.edit, {
    onDone: ({ rowVersion }) => {
      setOpened({ ...opened, rowVersion });
      notifications.show({ message: 'The shop was saved.' });
    },
  });
  const { rowVersion } = opened;
  return (
    <RecordForm
      initial={omit(opened, 'rowVersion', 'isDemo')}
      check={(fields) => inputErrors(contract.shop.edit, { ...fields, rowVersion })}
      command={edit}
      action="Save"
      onSave={(fields) => void edit.run({ ...fields, rowVersion })}
    >
      {(value, onChange, errors) => (
        <ShopFieldsForm value={value} onChange={onChange} errors={errors} />
      )}
    </RecordForm>
  );
}
