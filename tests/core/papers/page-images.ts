/** Draws every paper, typical and with very long data, as one PNG a page: `page-images.ts FOLDER [PART OF A NAME]`. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAfterPdf } from '../../../core/papers/before-after.ts';
import { bowLabelPdf } from '../../../core/papers/bow-label.ts';
import { careCardPdf } from '../../../core/papers/care-card.ts';
import { consentFormPdf } from '../../../core/papers/consent-form.ts';
import { customsNotePdf } from '../../../core/papers/customs-note.ts';
import { inscriptionProofPdf } from '../../../core/papers/inscription-proof.ts';
import { lotLabelPdf } from '../../../core/papers/lot-label.ts';
import { markingTemplatePdf } from '../../../core/papers/marking-template.ts';
import { mixCardPdf } from '../../../core/papers/mix-card.ts';
import { packingListPdf } from '../../../core/papers/packing-list.ts';
import { pricePaperPdf } from '../../../core/papers/price-paper.ts';
import { returnTagPdf } from '../../../core/papers/return-tag.ts';
import { shelfLabelPdf } from '../../../core/papers/shelf-label.ts';
import { shippingTagPdf } from '../../../core/papers/shipping-tag.ts';
import { workOrderPdf } from '../../../core/papers/work-order.ts';
import { beforeAfterLong, beforeAfterSample, beforeAfterShortest } from './before-after-samples.ts';
import { careLong, careSample, careShortest } from './care-card-samples.ts';
import { consentLong, consentSigned, consentWaiting } from './consent-form-samples.ts';
import { customsLong, customsSample, customsShortest } from './customs-note-samples.ts';
import {
  labelLong,
  labelSample,
  proofLong,
  proofSample,
  proofShortest,
} from './inscription-samples.ts';
import { markingLong, markingSample, markingShortest } from './marking-samples.ts';
import { mixCardLong, mixCardSample } from './mix-card-samples.ts';
import { packingLong, packingSample } from './packing-list-samples.ts';
import { planOutdated } from './plan-samples.ts';
import {
  estimateSample,
  estimateShortest,
  receiptLong,
  receiptSample,
} from './price-paper-samples.ts';
import { pagesOf, raster } from './read-back.ts';
import {
  returnTagLong,
  returnTagSample,
  returnTagShortest,
  returnTagUnsafe,
} from './return-tag-samples.ts';
import {
  tagLong,
  tagSample,
  workOrderEmpty,
  workOrderLong,
  workOrderSample,
} from './sample-data.ts';
import { lotSample, shelfLong, shelfSample, shelfShortest } from './stock-label-samples.ts';

/** Only papers whose name holds `part`. */
const [folder = 'tests/output/papers', part = ''] = process.argv.slice(2);
mkdirSync(folder, { recursive: true });
const papers = {
  'mix card letter': await mixCardPdf(mixCardSample),
  'mix card a4 long': await mixCardPdf({ ...mixCardLong, format: 'a4' }),
  'packing list letter': await packingListPdf(packingSample),
  'packing list a4 long': await packingListPdf({ ...packingLong, format: 'a4' }),
  'care card letter': await careCardPdf(careSample),
  'care card a4 shortest': await careCardPdf({ ...careShortest, format: 'a4' }),
  'care card letter long': await careCardPdf(careLong),
  'marking template letter': await markingTemplatePdf(markingSample),
  'marking template a4 shortest': await markingTemplatePdf({ ...markingShortest, format: 'a4' }),
  'marking template letter long': await markingTemplatePdf(markingLong),
  'marking template one page': await markingTemplatePdf({ ...markingSample, format: 'long' }),
  'before after letter': await beforeAfterPdf(beforeAfterSample),
  'before after a4 shortest': await beforeAfterPdf({ ...beforeAfterShortest, format: 'a4' }),
  'before after letter long': await beforeAfterPdf(beforeAfterLong),
  'work order letter office': await workOrderPdf(workOrderSample),
  'work order letter bench': await workOrderPdf({ ...workOrderSample, copy: 'bench' }),
  'work order a4 bench': await workOrderPdf({ ...workOrderSample, format: 'a4', copy: 'bench' }),
  'work order letter unplanned': await workOrderPdf({ ...workOrderSample, plan: null }),
  'work order a4 plan outdated': await workOrderPdf({
    ...workOrderSample,
    format: 'a4',
    copy: 'bench',
    plan: planOutdated,
  }),
  'work order a4 empty': await workOrderPdf(workOrderEmpty),
  'work order a4 long': await workOrderPdf(workOrderLong),
  'work order letter long': await workOrderPdf({ ...workOrderLong, format: 'letter' }),
  'inscription proof letter': await inscriptionProofPdf(proofSample),
  'inscription proof a4 shortest': await inscriptionProofPdf({ ...proofShortest, format: 'a4' }),
  'inscription proof letter long': await inscriptionProofPdf(proofLong),
  'lettering guide letter': await bowLabelPdf(labelSample),
  'lettering guide a4 long': await bowLabelPdf({ ...labelLong, format: 'a4' }),
  'shelf label': await shelfLabelPdf(shelfSample),
  'shelf label shortest': await shelfLabelPdf(shelfShortest),
  'shelf label long': await shelfLabelPdf(shelfLong),
  'lot label': await lotLabelPdf(lotSample),
  'bow label': await bowLabelPdf({ ...labelSample, format: 'label' }),
  'consent form letter': await consentFormPdf(consentWaiting),
  'consent form a4 signed': await consentFormPdf({ ...consentSigned, format: 'a4' }),
  'consent form a4 long': await consentFormPdf(consentLong),
  'estimate letter': await pricePaperPdf(estimateSample),
  'estimate letter shortest': await pricePaperPdf(estimateShortest),
  'receipt a4': await pricePaperPdf({ ...receiptSample, format: 'a4' }),
  'receipt a4 long': await pricePaperPdf(receiptLong),
  'shipping tag 4x6': await shippingTagPdf(tagSample),
  'shipping tag 4x6 long': await shippingTagPdf({ ...tagLong, format: '4x6' }),
  'shipping tag a6': await shippingTagPdf({ ...tagSample, format: 'a6' }),
  'shipping tag a6 office': await shippingTagPdf({ ...tagSample, format: 'a6', copy: 'office' }),
  'shipping tag a6 long': await shippingTagPdf(tagLong),
  'return tag 4x6': await returnTagPdf(returnTagSample),
  'return tag 4x6 unsafe': await returnTagPdf(returnTagUnsafe),
  'return tag 4x6 long': await returnTagPdf({ ...returnTagLong, format: '4x6' }),
  'return tag a6 shortest': await returnTagPdf({ ...returnTagShortest, format: 'a6' }),
  'return tag a6 unsafe': await returnTagPdf({ ...returnTagUnsafe, format: 'a6' }),
  'return tag a6 long': await returnTagPdf(returnTagLong),
  'customs note letter': await customsNotePdf(customsSample),
  'customs note a4 shortest': await customsNotePdf({ ...customsShortest, format: 'a4' }),
  'customs note letter office': await customsNotePdf({ ...customsSample, copy: 'office' }),
  'customs note letter long': await customsNotePdf(customsLong),
};
for (const [name, paper] of Object.entries(papers)) {
  if (!name.includes(part)) continue;
  for (const [index, page] of (await pagesOf(paper.bytes)).entries()) {
    const canvas = await raster(page, /tag/.test(name) ? 150 : 110);
    writeFileSync(join(folder, `${name} ${index + 1}.png`), canvas.toBuffer('image/png'));
  }
}
