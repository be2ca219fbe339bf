import { notifications } from '@mantine/notifications';
import type { KeyboardEventHandler } from 'react';
import { navigate } from 'wouter/use-browser-location';
import type { Found } from '../../../shared/contract/find.ts';
import { pathOf, theOneFound } from '../../frame/open-found.ts';
import { useScanTaker } from '../../frame/scan-taker.ts';
import { lotPath, type ScannedForm } from './lot-form.ts';
import { useScanKeepsForm } from './use-scan-keeps-form.ts';

/** What the scanner typed into a field is no part of it. */
function takeOut(scanned: string, field: EventTarget): void {
  if (!(field instanceof HTMLInputElement)) return;
  // Past the setter of the instance, by which React would take the change for its own.
  const { set } = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value') ?? {};
  set?.call(field, field.value.replace(scanned, ''));
  field.dispatchEvent(new Event('input', { bubbles: true }));
}

interface StockScan {
  form: ScannedForm;
  /** The lot it stands on; null for none. */
  lotId: string | null;
  /** What an order's number means here; left out where it means nothing. */
  onOrder?: (orderId: string) => void;
}

/**
 * Scans while a form about stock is open, into its fields or beside them: the label of another lot
 * opens the same form on that lot, an order's number says what it is for.
 */
export function useStockScan({ form, lotId, onOrder }: StockScan): KeyboardEventHandler {
  const goTo = (found: Found) => {
    if (found.kind === 'lot') {
      if (found.id !== lotId) navigate(lotPath(found.id, form));
    } else if (found.kind === 'shelf' && form === 'issue') navigate(pathOf(found));
    else if (found.kind === 'order' && onOrder !== undefined) onOrder(found.id);
    else {
      notifications.show({
        title: found.title,
        message: 'This is not the label of a lot. Scan the label on the container.',
        color: 'ochre',
      });
    }
  };
  const take = async (scanned: string) => {
    const found = await theOneFound(scanned);
    if (found !== undefined) goTo(found);
  };
  useScanTaker((scanned) => void take(scanned));
  return useScanKeepsForm((scanned, field) => {
    takeOut(scanned, field);
    void take(scanned);
  });
}
