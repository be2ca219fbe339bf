import type { PaperPdf } from './data.ts';
import { type StockLabelData, stockLabelPdf } from './stock-label.ts';

/** On the shelf: scanned, it issues what stands there. */
export type ShelfLabelData = StockLabelData;

/** @throws ShopError UNPRINTABLE, also where the text does not fit on the label */
export function shelfLabelPdf(data: ShelfLabelData): Promise<PaperPdf> {
  return stockLabelPdf(data, `${data.barcode} shelf label`);
}
