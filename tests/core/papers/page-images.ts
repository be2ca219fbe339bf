import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { shippingTagPdf } from '../../../core/papers/shipping-tag.ts';
import { workOrderPdf } from '../../../core/papers/work-order.ts';
import { pagesOf, raster } from './read-back.ts';
import { tagLong, tagSample, workOrderLong, workOrderSample } from './sample-data.ts';

const [folder = 'tests/output/papers'] = process.argv.slice(2);
mkdirSync(folder, { recursive: true });
const papers = {
  'work order letter': await workOrderPdf(workOrderSample),
  'work order a4 long': await workOrderPdf(workOrderLong),
  'shipping tag 4x6': await shippingTagPdf(tagSample),
  'shipping tag a6 long': await shippingTagPdf(tagLong),
};
for (const [name, paper] of Object.entries(papers)) {
  for (const [index, page] of (await pagesOf(paper.bytes)).entries()) {
    const canvas = await raster(page, 110);
    writeFileSync(join(folder, `${name} ${index + 1}.png`), canvas.toBuffer('image/png'));
  }
  writeFileSync(join(folder, paper.fileName), paper.bytes);
}
