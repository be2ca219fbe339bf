import type { PaperPdf, ShippingTagData, WorkOrderData } from './data.ts';
import { shippingTagPdf } from './shipping-tag.ts';
import { workOrderPdf } from './work-order.ts';

/** One paper to make, by kind, with everything that goes on it. */
export type PaperJob =
  | { kind: 'work-order'; data: WorkOrderData }
  | { kind: 'shipping-tag'; data: ShippingTagData };

/** @throws ShopError UNPRINTABLE */
export function drawPaper(job: PaperJob): Promise<PaperPdf> {
  return job.kind === 'work-order' ? workOrderPdf(job.data) : shippingTagPdf(job.data);
}
