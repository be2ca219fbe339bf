import { Button, Tabs, TextInput } from '@mantine/core';
import { useDebouncedValue, useDisclosure } from '@mantine/hooks';
import { IconSearch } from '@tabler/icons-react';
import { useState } from 'react';
import { useLocation, useSearchParams } from 'wouter';
import { useWho } from '../../api/who.ts';
import { Page } from '../../parts/page.tsx';
import { AddBow } from '../bows/add-bow.tsx';
import { AddCustomer } from './add-customer.tsx';
import { BowResults } from './bow-results.tsx';
import { CustomerResults } from './customer-results.tsx';

/** Everybody and every bow the shop knows, found while typing. */
export function CustomersScreen() {
  const [params, setParams] = useSearchParams();
  const [, go] = useLocation();
  const who = useWho();
  const [adding, add] = useDisclosure(false);
  const [addingBow, addBow] = useDisclosure(false);
  const [typed, setTyped] = useState(params.get('text') ?? '');
  const [text] = useDebouncedValue(typed.trim(), 120);
  const tab = params.get('tab') === 'bows' ? 'bows' : 'customers';
  const mayAdd = who?.role !== 'bench';
  return (
    <Page
      title="Customers & bows"
      actions={
        <>
          <Button variant="default" onClick={addBow.open}>
            Add a bow of the shop's own
          </Button>
          {mayAdd ? <Button onClick={add.open}>Add a customer</Button> : null}
        </>
      }
    >
      <TextInput
        label="Search"
        description="Name, town, phone, maker, model or serial."
        leftSection={<IconSearch size={20} aria-hidden="true" />}
        value={typed}
        maxLength={200}
        maw={560}
        mb="md"
        onChange={(event) => setTyped(event.currentTarget.value)}
      />
      <Tabs
        value={tab}
        onChange={(next) => setParams({ tab: next ?? 'customers' }, { replace: true })}
        keepMounted={false}
      >
        <Tabs.List mb="md">
          <Tabs.Tab value="customers" h={44}>
            Customers
          </Tabs.Tab>
          <Tabs.Tab value="bows" h={44}>
            Bows
          </Tabs.Tab>
        </Tabs.List>
        <Tabs.Panel value="customers">
          <CustomerResults text={text} />
        </Tabs.Panel>
        <Tabs.Panel value="bows">
          <BowResults text={text} />
        </Tabs.Panel>
      </Tabs>
      <AddCustomer
        opened={adding}
        onClose={add.close}
        name={tab === 'customers' ? typed.trim() : ''}
        onAdded={(id) => go(`/customers/${id}`)}
      />
      <AddBow
        opened={addingBow}
        customerId={null}
        onClose={addBow.close}
        onAdded={(id) => go(`/bows/${id}`)}
      />
    </Page>
  );
}
