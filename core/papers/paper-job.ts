import type { PaperKind } from '../../shared/papers.ts';
import type { PaperPdf, ShippingTagData, WorkOrderData } from './data.ts';
import { shippingTagPdf } from './shipping-tag.ts';
import { workOrderPdf } from './work-order.ts';

/** Everything that goes on a paper, by its kind. */
export interface PaperData {
  'work-order': WorkOrderData;
  'shipping-tag': ShippingTagData;
}

/** One paper to make. */
export interface PaperJob<Kind extends PaperKind = PaperKind> {
  kind: Kind;
  data: PaperData[Kind];
}

const drawers: { [Kind in PaperKind]: (data: PaperData[Kind]) => Promise<PaperPdf> } = {
  'work-order': workOrderPdf,
  'shipping-tag': shippingTagPdf,
};

/** @throws ShopError UNPRINTABLE */
export function drawPaper<Kind extends PaperKind>(job: PaperJob<Kind>): Promise<PaperPdf> {
  return drawers[job.kind](job.data);
}
