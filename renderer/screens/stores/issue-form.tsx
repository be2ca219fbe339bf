import { Select, TextInput } from '@mantine/core';
import { useDebouncedValue } from '@mantine/hooks';
import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { contract } from '../../../shared/contract/index.ts';
import type { ConsumableDetail, IssuePreview, Lot, Pick } from '../../../shared/contract/stores.ts';
import { isWhole, quantityText, type StockUnit } from '../../../shared/stores.ts';
import { api, orpc } from '../../api/client.ts';
import { useCommand } from '../../api/command.ts';
import { fullDay } from '../../parts/days.ts';
import { FormBox } from '../../parts/form-box.tsx';
import { inputErrors } from '../../parts/input-schema.ts';
import { Mark } from '../../parts/mark.tsx';
import { Cautions } from '../finish-room/cautions.tsx';
import { OrderSelect } from './order-select.tsx';
import { type Amount, QuantityFields } from './quantity-fields.tsx';
import classes from './stores.module.css';
import { lotText } from './stores-words.ts';
import { useStockScan } from './use-stock-scan.ts';

function pickText({ lotName, quantity, lastDay }: Pick, unit: StockUnit): string {
  const until = lastDay === null ? '' : `, use by ${fullDay(lastDay)}`;
  return `${quantityText(quantity, unit)} from lot ${lotName}${until}`;
}

/** Which lots it will come from, before anything is taken. */
function Preview({ preview }: { preview: IssuePreview }) {
  return (
    <div role="status">
      {preview.sentence === null ? null : <Mark kind="stop">{preview.sentence}</Mark>}
      {preview.sentence === null ? (
        <ul className={classes.picks} aria-label="It comes from">
          {preview.picks.map((pick) => (
            <li key={pick.lotId}>{pickText(pick, preview.unit)}</li>
          ))}
        </ul>
      ) : null}
    </div>
  );
}

function FromLots({ consumableId, amount }: { consumableId: string; amount: Amount }) {
  const [asked] = useDebouncedValue(amount, 200);
  const quantity = asked.quantity ?? 0;
  const input = { consumableId, quantity, unit: asked.unit };
  const preview = useQuery({
    ...orpc.stores.wouldIssue.queryOptions({ input }),
    enabled: quantity > 0,
    placeholderData: keepPreviousData,
  });
  if (preview.data === undefined || !(quantity > 0)) return null;
  return <Preview preview={preview.data} />;
}

const firstFirst = 'first';

interface FromSelectProps {
  detail: ConsumableDetail;
  from: string;
  error: string | undefined;
  onChange: (from: string) => void;
}

/** The lot that expires first, or one in the hand; says where another one has its turn. */
function FromSelect({ detail, from, error, onChange }: FromSelectProps) {
  const holding = detail.lots.filter((lot) => lot.onHand > 0);
  const chosen = holding.find((lot) => lot.id === from);
  const sooner = holding.find((lot) => lot.next);
  const label = (lot: Lot) =>
    `${lotText(lot)}: ${quantityText(lot.onHand, detail.unit)}${lot.expired ? ', expired' : ''}`;
  return (
    <>
      <Select
        label="From"
        data={[
          { value: firstFirst, label: 'The lot that expires first' },
          ...holding.map((lot) => ({ value: lot.id, label: label(lot) })),
        ]}
        value={from}
        error={error}
        onChange={(value) => onChange(value ?? firstFirst)}
      />
      {chosen?.expired === true ? (
        <Mark kind="stop">This lot has expired and may not be issued. Take another.</Mark>
      ) : null}
      {chosen !== undefined && !chosen.expired && sooner !== undefined && !chosen.next ? (
        <Mark kind="attention">{lotText(sooner)}, is to be used first.</Mark>
      ) : null}
    </>
  );
}

interface IssueFormProps {
  detail: ConsumableDetail;
  /** The lot somebody holds in the hand; none for the one that expires first. */
  lotId: string | null;
  onDone: (said: string) => void;
  onCancel: () => void;
  times: number;
}

/** Takes from the shelf, first expired first, or from the lot in the hand. */
export function IssueForm({ detail, lotId, onDone, onCancel, times }: IssueFormProps) {
  const { id: consumableId, unit, name } = detail;
  const [amount, setAmount] = useState<Amount>({ quantity: isWhole(unit) ? 1 : null, unit });
  const [from, setFrom] = useState(lotId ?? firstFirst);
  const [orderId, setOrder] = useState<string | null>(null);
  const [reason, setReason] = useState('');
  const [tried, setTried] = useState(false);
  const issue = useCommand(api.stores.issue, {
    onDone: ({ picks }) => {
      onDone(`Issued: ${picks.map((pick) => pickText(pick, unit)).join('; ')}.`);
    },
  });
  const onScan = useStockScan({ form: 'issue', lotId, onOrder: setOrder });
  const fields = {
    consumableId,
    lotId: from === firstFirst ? null : from,
    quantity: amount.quantity ?? Number.NaN,
    unit: amount.unit,
    orderId,
    reason,
  };
  const wrong = inputErrors(contract.stores.issue, fields);
  const errors = tried ? { ...issue.details, ...wrong } : {};
  return (
    <div onKeyDownCapture={onScan}>
      <FormBox
        title={`Issue ${name}`}
        submitLabel="Issue"
        command={issue}
        times={times}
        onCancel={onCancel}
        answer={
          from === firstFirst ? <FromLots consumableId={consumableId} amount={amount} /> : null
        }
        onSubmit={() => {
          setTried(true);
          if (Object.keys(wrong).length === 0) void issue.run(fields);
        }}
      >
        <QuantityFields
          label="How much"
          counted={unit}
          value={amount}
          errors={errors}
          onChange={setAmount}
        />
        <FromSelect detail={detail} from={from} error={errors.lotId} onChange={setFrom} />
        <OrderSelect value={orderId} error={errors.orderId} onChange={setOrder} />
        <TextInput
          label="Note"
          maxLength={400}
          autoComplete="off"
          value={reason}
          error={errors.reason}
          onChange={(event) => setReason(event.currentTarget.value)}
        />
        <Cautions cautions={detail.cautions} />
      </FormBox>
    </div>
  );
}
