import type { PaperKind } from '../../shared/papers.ts';
import { type BeforeAfterData, beforeAfterPdf } from './before-after.ts';
import { type BowLabelData, bowLabelPdf } from './bow-label.ts';
import { type CareCardData, careCardPdf } from './care-card.ts';
import { type ConsentFormData, consentFormPdf } from './consent-form.ts';
import { type CustomsNoteData, customsNotePdf } from './customs-note.ts';
import type { PaperPdf, ShippingTagData, WorkOrderData } from './data.ts';
import { type InscriptionProofData, inscriptionProofPdf } from './inscription-proof.ts';
import { type LotLabelData, lotLabelPdf } from './lot-label.ts';
import { markingTemplatePdf } from './marking-template.ts';
import type { MarkingTemplateData } from './marking-template-data.ts';
import { type MixCardData, mixCardPdf } from './mix-card.ts';
import { type PackingListData, packingListPdf } from './packing-list.ts';
import { type PricePaperData, pricePaperPdf } from './price-paper.ts';
import { type ReturnTagData, returnTagPdf } from './return-tag.ts';
import { type ShelfLabelData, shelfLabelPdf } from './shelf-label.ts';
import { shippingTagPdf } from './shipping-tag.ts';
import { workOrderPdf } from './work-order.ts';

/** Everything that goes on a paper, by its kind. */
export interface PaperData {
  'work-order': WorkOrderData;
  'shipping-tag': ShippingTagData;
  'return-tag': ReturnTagData;
  'customs-note': CustomsNoteData;
  estimate: PricePaperData;
  receipt: PricePaperData;
  'inscription-proof': InscriptionProofData;
  'bow-label': BowLabelData;
  'consent-form': ConsentFormData;
  'marking-template': MarkingTemplateData;
  'before-after': BeforeAfterData;
  'care-card': CareCardData;
  'packing-list': PackingListData;
  'shelf-label': ShelfLabelData;
  'lot-label': LotLabelData;
  'mix-card': MixCardData;
}

/** One paper to make. */
export interface PaperJob<Kind extends PaperKind = PaperKind> {
  kind: Kind;
  data: PaperData[Kind];
}

const drawers: { [Kind in PaperKind]: (data: PaperData[Kind]) => Promise<PaperPdf> } = {
  'work-order': workOrderPdf,
  'shipping-tag': shippingTagPdf,
  'return-tag': returnTagPdf,
  'customs-note': customsNotePdf,
  estimate: pricePaperPdf,
  receipt: pricePaperPdf,
  'inscription-proof': inscriptionProofPdf,
  'bow-label': bowLabelPdf,
  'consent-form': consentFormPdf,
  'marking-template': markingTemplatePdf,
  'before-after': beforeAfterPdf,
  'care-card': careCardPdf,
  'packing-list': packingListPdf,
  'shelf-label': shelfLabelPdf,
  'lot-label': lotLabelPdf,
  'mix-card': mixCardPdf,
};

/** @throws ShopError UNPRINTABLE */
export function drawPaper<Kind extends PaperKind>(job: PaperJob<Kind>): Promise<PaperPdf> {
  return drawers[job.kind](job.data);
}
