import type { PaperPdf } from './data.ts';
import { type StockLabelData, stockLabelPdf } from './stock-label.ts';

/** On the can or pack: scanned, it issues from that lot. */
export type LotLabelData = StockLabelData;

/** @throws ShopError UNPRINTABLE, also where the text does not fit on the label */
export function lotLabelPdf(data: LotLabelData): Promise<PaperPdf> {
  return stockLabelPdf(data, `${data.barcode} lot label`);
}
