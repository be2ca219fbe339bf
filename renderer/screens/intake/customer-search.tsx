import { Combobox, TextInput, useCombobox } from '@mantine/core';
import { useDebouncedValue } from '@mantine/hooks';
import { useQuery } from '@tanstack/react-query';
import { useEffect } from 'react';
import type { Customer } from '../../../shared/contract/customers.ts';
import { orpc } from '../../api/client.ts';
import { sentenceOf } from '../../api/errors.ts';
import classes from './intake.module.css';

interface CustomerSearchProps {
  typed: string;
  onTyped: (typed: string) => void;
  onKnown: (customer: Customer) => void;
  onNew: () => void;
  /** Where it may be the shop's own bow as well. */
  onShop?: () => void;
  error: string | undefined;
}

const howTo = 'Type to find a returning customer. Enter takes the marked line.';
const shopToo = "The down arrow also offers the shop's own bow.";
const searchAfterMs = 150;
const shown = 8;

function whereabouts(customer: Customer): string {
  return [customer.address.city, customer.phone, customer.email].filter(Boolean).join(', ');
}

/** Finds the returning customer while the name is typed; Enter takes the marked line. */
export function CustomerSearch(props: CustomerSearchProps) {
  const { typed, onTyped, onKnown, onNew, onShop, error } = props;
  const combobox = useCombobox({ onDropdownClose: () => combobox.resetSelectedOption() });
  const [text] = useDebouncedValue(typed.trim(), searchAfterMs);
  const query = useQuery({
    ...orpc.customers.search.queryOptions({ input: { text } }),
    enabled: text !== '',
  });
  const found = text === '' ? [] : (query.data ?? []).slice(0, shown);
  // Enter takes the first line only once the lines belong to what is typed now.
  const isSettled = text !== '' && text === typed.trim() && query.isSuccess && !query.isFetching;
  // biome-ignore lint/correctness/useExhaustiveDependencies: the store is new on every render.
  useEffect(() => {
    if (isSettled) combobox.selectFirstOption();
    else combobox.resetSelectedOption();
  }, [isSettled, text]);
  const pick = (value: string) => {
    combobox.closeDropdown();
    if (value === 'new') return onNew();
    if (value === 'shop') return onShop?.();
    const customer = found.find((one) => one.id === value);
    if (customer !== undefined) onKnown(customer);
  };
  return (
    <Combobox store={combobox} onOptionSubmit={pick}>
      <Combobox.Target>
        <TextInput
          label="Name, phone or e-mail"
          description={onShop === undefined ? howTo : `${howTo} ${shopToo}`}
          required
          autoComplete="off"
          maxLength={120}
          value={typed}
          error={error ?? (query.isError ? sentenceOf(query.error) : undefined)}
          onClick={() => combobox.openDropdown()}
          onBlur={() => combobox.closeDropdown()}
          onChange={(event) => {
            onTyped(event.currentTarget.value);
            combobox.openDropdown();
          }}
        />
      </Combobox.Target>
      <Combobox.Dropdown>
        <Combobox.Options mah={400} style={{ overflowY: 'auto' }}>
          {found.map((customer) => (
            <Combobox.Option key={customer.id} value={customer.id}>
              <span className={classes.option}>
                {customer.name} <span className={classes.quiet}>{whereabouts(customer)}</span>
              </span>
            </Combobox.Option>
          ))}
          {typed.trim() === '' ? null : (
            <Combobox.Option value="new">
              <span className={classes.option}>New customer: {typed.trim()}</span>
            </Combobox.Option>
          )}
          {onShop === undefined ? null : (
            <Combobox.Option value="shop">
              <span className={classes.option}>The shop's own bow</span>
            </Combobox.Option>
          )}
        </Combobox.Options>
      </Combobox.Dropdown>
    </Combobox>
  );
}
