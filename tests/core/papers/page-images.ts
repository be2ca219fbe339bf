/** Draws every paper, typical and with very long data, as one PNG a page: `page-images.ts FOLDER`. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { shippingTagPdf } from '../../../core/papers/shipping-tag.ts';
import { workOrderPdf } from '../../../core/papers/work-order.ts';
import { pagesOf, raster } from './read-back.ts';
import {
  tagLong,
  tagSample,
  tagUnsafe,
  workOrderEmpty,
  workOrderLong,
  workOrderSample,
} from './sample-data.ts';

const [folder = 'tests/output/papers'] = process.argv.slice(2);
mkdirSync(folder, { recursive: true });
const papers = {
  'work order letter office': await workOrderPdf(workOrderSample),
  'work order letter bench': await workOrderPdf({ ...workOrderSample, copy: 'bench' }),
  'work order a4 bench': await workOrderPdf({ ...workOrderSample, format: 'a4', copy: 'bench' }),
  'work order a4 empty': await workOrderPdf(workOrderEmpty),
  'work order a4 long': await workOrderPdf(workOrderLong),
  'work order letter long': await workOrderPdf({ ...workOrderLong, format: 'letter' }),
  'shipping tag 4x6': await shippingTagPdf(tagSample),
  'shipping tag 4x6 unsafe': await shippingTagPdf(tagUnsafe),
  'shipping tag 4x6 long': await shippingTagPdf({ ...tagLong, format: '4x6' }),
  'shipping tag a6': await shippingTagPdf({ ...tagSample, format: 'a6' }),
  'shipping tag a6 office': await shippingTagPdf({ ...tagUnsafe, format: 'a6', copy: 'office' }),
  'shipping tag a6 long': await shippingTagPdf(tagLong),
};
for (const [name, paper] of Object.entries(papers)) {
  for (const [index, page] of (await pagesOf(paper.bytes)).entries()) {
    const canvas = await raster(page, name.startsWith('shipping') ? 150 : 110);
    writeFileSync(join(folder, `${name} ${index + 1}.png`), canvas.toBuffer('image/png'));
  }
}
