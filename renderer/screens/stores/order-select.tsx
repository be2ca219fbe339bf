import { Select } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import type { ReactNode } from 'react';
import { orpc } from '../../api/client.ts';

interface OrderSelectProps {
  value: string | null;
  onChange: (orderId: string | null) => void;
  description?: string;
  error?: ReactNode;
}

/** An order in work, or none; found by its number or its customer. */
export function OrderSelect({ value, onChange, description, error }: OrderSelectProps) {
  const board = useQuery(orpc.orders.board.queryOptions({ input: { includeClosed: true } }));
  return (
    <Select
      label="For order"
      {...(description === undefined ? {} : { description })}
      placeholder={board.error === null ? 'No order' : 'The orders could not be read'}
      searchable
      clearable
      clearButtonProps={{ 'aria-label': 'Clear: for order' }}
      nothingFoundMessage="No order in work fits."
      maxDropdownHeight={320}
      limit={60}
      data={(board.data ?? []).map(({ id, number, customerName }) => ({
        value: id,
        label: customerName === '' ? number : `${number} ${customerName}`,
      }))}
      value={value}
      error={error}
      onChange={onChange}
    />
  );
}
