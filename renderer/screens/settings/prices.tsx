import { Button, Group, Stack } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { PriceService } from '../../../shared/contract/prices.ts';
import { dollarText } from '../../../shared/money.ts';
import { serviceLabels, services } from '../../../shared/stages.ts';
import { api, orpc } from '../../api/client.ts';
import { useCommand } from '../../api/command.ts';
import { CommandError } from '../../parts/command-error.tsx';
import { Mark } from '../../parts/mark.tsx';
import { BusyNote, EmptyNote, ErrorNote } from '../../parts/notes.tsx';
import { Panel } from '../../parts/panel.tsx';
import { movedBy } from '../orders/price/price-words.ts';
import { PricePolicy } from './price-policy.tsx';
import { PriceServiceForm } from './price-service-form.tsx';
import classes from './scale-item.module.css';

interface ItemProps {
  line: PriceService;
  isOwner: boolean;
  isFirst: boolean;
  isLast: boolean;
  onEdit: () => void;
  onMove: (by: -1 | 1) => void;
}

function Item({ line, isOwner, isFirst, isLast, onEdit, onMove }: ItemProps) {
  const about = [
    // A line named as its service says it already.
    line.service === null || serviceLabels[line.service] === line.name
      ? ''
      : `offered with ${serviceLabels[line.service]}`,
    line.minutes > 0 ? `${line.minutes} min` : '',
    line.taxable ? 'taxed' : 'not taxed',
  ];
  return (
    <article className={classes.scale} aria-label={line.name}>
      <div className={classes.words}>
        <span className={classes.name}>{line.name}</span>
        {line.active ? null : <Mark kind="attention">Out of use</Mark>}
        {line.priceCents === 0 ? (
          <Mark kind="attention">No price yet</Mark>
        ) : (
          <span>{dollarText(line.priceCents)}</span>
        )}
        <span className={classes.quiet}>{about.filter((each) => each !== '').join(', ')}</span>
      </div>
      {isOwner ? (
        <Group gap="xs">
          <Button
            variant="default"
            disabled={isFirst}
            aria-label={`Move ${line.name} up`}
            onClick={() => onMove(-1)}
          >
            Up
          </Button>
          <Button
            variant="default"
            disabled={isLast}
            aria-label={`Move ${line.name} down`}
            onClick={() => onMove(1)}
          >
            Down
          </Button>
          <Button variant="default" onClick={onEdit} aria-label={`Change ${line.name}`}>
            Change
          </Button>
        </Group>
      ) : null}
    </article>
  );
}

type Open = { form: 'add' } | { form: 'edit'; line: PriceService } | null;

function PriceList({ isOwner, lines }: { isOwner: boolean; lines: readonly PriceService[] }) {
  const [open, setOpen] = useState<Open>(null);
  const addTypical = useCommand(api.prices.addTypical);
  const arrange = useCommand(api.prices.arrangeServices);
  const ids = lines.map(({ id }) => id);
  const isWhole = services.every((each) => lines.some(({ service }) => service === each));
  const key = open === null ? 'none' : open.form === 'add' ? 'add' : open.line.id;
  return (
    <Panel
      title="Price list"
      actions={
        isOwner ? (
          <Group gap="xs">
            {isWhole ? null : (
              <Button
                variant="default"
                loading={addTypical.busy}
                onClick={() => void addTypical.run({})}
              >
                Add a line for each service
              </Button>
            )}
            <Button variant="default" onClick={() => setOpen({ form: 'add' })}>
              Add a line
            </Button>
          </Group>
        ) : null
      }
    >
      <CommandError command={addTypical} />
      <CommandError command={arrange} />
      {lines.length === 0 ? (
        <EmptyNote title="No prices yet">
          {isOwner
            ? 'Add a line for each service, then set your own prices.'
            : 'The owner writes the list.'}
        </EmptyNote>
      ) : (
        <Stack gap="xs">
          {lines.map((line, i) => (
            <Item
              key={line.id}
              line={line}
              isOwner={isOwner}
              isFirst={i === 0}
              isLast={i === lines.length - 1}
              onEdit={() => setOpen({ form: 'edit', line })}
              onMove={(by) => void arrange.run({ ids: movedBy(ids, line.id, by) })}
            />
          ))}
        </Stack>
      )}
      <PriceServiceForm
        key={key}
        opened={open !== null}
        line={open?.form === 'edit' ? open.line : null}
        onClose={() => setOpen(null)}
      />
    </Panel>
  );
}

/** The shop's prices, and what is added to them. */
export function Prices({ isOwner }: { isOwner: boolean }) {
  const list = useQuery(orpc.prices.services.queryOptions());
  if (list.error !== null) {
    return <ErrorNote error={list.error} onAgain={() => void list.refetch()} />;
  }
  if (list.data === undefined) return <BusyNote />;
  return (
    <Stack>
      <PriceList isOwner={isOwner} lines={list.data} />
      <PricePolicy isOwner={isOwner} />
    </Stack>
  );
}
