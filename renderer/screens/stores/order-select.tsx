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

const noOrder = { value: 'none', label: 'No order' };

/** An order in work, or none; found by its number or its customer. */
export function OrderSelect({ value, onChange, description, error }: OrderSelectProps) {
  const board = useQuery(orpc.orders.board.queryOptions({ input: { includeClosed: true } }));
  return (
    <Select
      label="For order"
      {...(description === undefined ? {} : { description })}
      placeholder={board.error === null ? noOrder.label : 'The orders could not be read'}
      searchable
      nothingFoundMessage="No order in work fits."
      maxDropdownHeight={320}
      limit={60}
      data={[
        noOrder,
        ...(board.data ?? []).map(({ id, number, customerName }) => ({
          value: id,
          label: customerName === '' ? number : `${number} ${customerName}`,
        })),
      ]}
      value={value}
      error={error}
      onChange={(chosen) => onChange(chosen === noOrder.value ? null : chosen)}
    />
  );
}
