import { contract } from '../../../../shared/contract/index.ts';
import type {
  AgreedChange,
  PriceLine,
  PriceLineFields,
} from '../../../../shared/contract/prices.ts';
import type { PriceLineKind } from '../../../../shared/money.ts';
import { inputErrors } from '../../../parts/input-schema.ts';

/** A line while it is typed; NaN where the text is no number. */
export interface LineDraft {
  kind: PriceLineKind;
  what: string;
  quantity: number | null;
  unitCents: number | null;
  /** A discount in percent rather than as an amount. */
  isPercent: boolean;
  percent: number | null;
  taxable: boolean;
  minutes: number | null;
}

export const newLine: LineDraft = {
  kind: 'service',
  what: '',
  quantity: 1,
  unitCents: null,
  isPercent: true,
  percent: null,
  taxable: true,
  minutes: 0,
};

export function draftOf(line: PriceLine): LineDraft {
  return {
    kind: line.kind,
    what: line.what,
    quantity: line.quantity,
    unitCents: line.discountBp === null ? line.unitCents : null,
    isPercent: line.discountBp !== null,
    percent: line.discountBp === null ? null : line.discountBp / 100,
    taxable: line.taxable,
    minutes: line.minutes,
  };
}

/** The line that takes up a change of cost the customer agreed to. */
export function draftOfChange({ cents, answeredBy }: AgreedChange): LineDraft {
  return {
    ...newLine,
    kind: cents < 0 ? 'discount' : 'other',
    what: `Agreed with ${answeredBy}`,
    unitCents: Math.abs(cents),
    isPercent: false,
  };
}

export function lineInput(draft: LineDraft): PriceLineFields {
  const isDiscount = draft.kind === 'discount';
  const isPart = isDiscount && draft.isPercent;
  const bp = Math.round((draft.percent ?? Number.NaN) * 100);
  return {
    kind: draft.kind,
    what: draft.what.trim(),
    quantity: isDiscount ? 1 : (draft.quantity ?? Number.NaN),
    unitCents: isPart ? 0 : (draft.unitCents ?? Number.NaN),
    discountBp: isPart ? bp : null,
    taxable: draft.taxable,
    minutes: draft.minutes ?? 0,
  };
}

/** What is wrong with a typed line, by field. */
export function lineErrors(draft: LineDraft): Record<string, string> {
  const fields = { ...lineInput(draft), id: 'check', rowVersion: 1 };
  const errors = inputErrors(contract.prices.editLine, fields);
  if (errors.unitCents !== undefined) errors.unitCents = 'Give an amount, 0 or more.';
  if (errors.discountBp !== undefined) errors.discountBp = 'Between 0.01 and 100 percent.';
  if (draft.kind === 'discount' && !draft.isPercent && draft.unitCents === 0) {
    errors.unitCents = 'Say how much comes off.';
  }
  return errors;
}
