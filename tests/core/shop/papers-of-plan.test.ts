import { expect, test } from 'vitest';
import { addAttachment } from '../../../core/shop/attachments/add.ts';
import { issuePaper, previewPaper } from '../../../core/shop/papers/papers.ts';
import { getPlan } from '../../../core/shop/plans/plans.ts';
import type { PlanFrozen } from '../../../shared/plan-record.ts';
import { fileOf, jpegPicture } from '../../support/pictures.ts';
import { bareStations, type PlanShop, planShop } from '../../support/plan-shop.ts';
import { removalOnRecord } from '../../support/removal-on-record.ts';
import { newCommandId } from '../../support/test-shop.ts';
import { figureTexts, pagesOf, textOf } from '../papers/read-back.ts';
import { expectTemplate } from '../papers/template-measure.ts';

const template = {
  aboutId: null,
  kind: 'marking-template',
  format: 'letter',
  copy: 'bench',
} as const;
const workOrder = { aboutId: null, kind: 'work-order', format: 'letter' } as const;

async function accepted(): Promise<{ kit: PlanShop; plan: PlanFrozen }> {
  const kit = await planShop();
  await kit.accept();
  const [summary] = await kit.plans();
  return { kit, plan: await getPlan(kit.shop.owner, summary?.id ?? '') };
}

async function preview(kit: PlanShop, copy: 'bench' | 'office') {
  const { orderId } = kit;
  const file = await previewPaper(kit.shop.owner, { orderId, ...workOrder, copy });
  return textOf(new Uint8Array(await file.arrayBuffer()));
}

test('a template printed from an accepted plan measures what the plan says, both limbs, both sides', async () => {
  const { kit, plan } = await accepted();
  const { orderId } = kit;
  const file = await issuePaper(kit.shop.owner, {
    commandId: newCommandId(),
    orderId,
    ...template,
    action: 'printed',
  });
  const bytes = new Uint8Array(await file.arrayBuffer());
  const limbs = (['upper', 'lower'] as const).map((limb) => ({
    lengthIn: plan.input.bow[limb].lengthIn,
    stations: plan.plan[limb].stations
      .filter(({ fromFadeIn }) => fromFadeIn > 0)
      .map(({ fromFadeIn, presentWidthIn, newWidthIn }) => {
        const edge = { presentIn: presentWidthIn.back / 2, newIn: newWidthIn.back / 2 };
        return { fromFadeIn, left: edge, right: edge };
      }),
  }));
  expect(limbs.flatMap(({ stations }) => stations).length).toBeGreaterThan(10);
  expect(
    limbs.some(({ stations }) => stations.some((s) => s.left.presentIn - s.left.newIn > 0.01)),
  ).toBe(true);
  await expectTemplate(await pagesOf(bytes), { format: 'letter', limbs });
});

test('the work order carries the plan, its stop and blanks; the price only on the office copy', async () => {
  const { kit, plan } = await accepted();
  const bench = await preview(kit, 'bench');
  const [station] = plan.plan.upper.stations.filter(({ offPerSideIn }) => offPerSideIn > 0.005);
  for (const words of [
    'Plan 1, accepted',
    `${plan.stopAtLbf.toFixed(1)} lb, of which sanding takes about`,
    'Narrowing',
    `${station?.offPerSideIn.toFixed(3)}"`,
    `${station?.offTotalIn.toFixed(3)}"`,
    `${station?.newWidthIn.back.toFixed(3)}"`,
    'Cut table, lower limb',
  ]) {
    expect(bench).toContain(words);
  }
  expect(bench).toContain(`stop at `);
  expect(bench).not.toContain('$');
  expect(bench).not.toContain('Hale');
  expect(await preview(kit, 'office')).toContain('$240.00');
});

test('a plan of before the limbs were measured again gives nothing to cut by', async () => {
  const { kit } = await accepted();
  await kit.measure(bareStations);
  const text = await preview(kit, 'bench');
  expect(text).toContain('This plan does not fit any more');
  expect(text).toContain('The limbs were measured again');
  expect(text).not.toContain('Cut table');
});

test('before and after tells what came off by the records and shows the photographs', async () => {
  const kit = await planShop();
  const { shop, orderId, bowId } = kit;
  await removalOnRecord(
    shop,
    orderId,
    { id: 'r1', method: 'narrow' },
    {
      cuts: [
        { limb: 'upper', from_fade_in: 8, done_left_in: 0.021, done_right_in: 0.02 },
        { limb: 'lower', from_fade_in: 8, done_left_in: 0.016, done_right_in: 0.016 },
      ],
    },
  );
  await removalOnRecord(
    shop,
    orderId,
    { id: 'r2', method: 'scrape' },
    {
      faces: [{ limb: 'upper', face: 'belly', planned_thou: 2, done_thou: 2, measured_thou: 1.8 }],
    },
  );
  await removalOnRecord(
    shop,
    orderId,
    { id: 'r3', method: 'narrow', struck_reason: 'never done' },
    { cuts: [{ limb: 'upper', from_fade_in: 8, done_left_in: 0.5, done_right_in: 0.5 }] },
  );
  const photograph = async (caption: string, tint: string) =>
    addAttachment(shop.owner, {
      commandId: newCommandId(),
      file: fileOf(await jpegPicture({ tint }), `${caption}.jpg`),
      about: 'bow',
      orderId,
      bowId,
      findingId: null,
      incidentId: null,
      shipmentId: null,
      caption,
    });
  await photograph('as it came', '#e8e0d0');
  await kit.flow.weigh(kit.scaleId, 'work', 47.5);
  shop.clock.advance(86_400_000);
  await photograph('as it goes', '#c0d0e0');
  const file = await previewPaper(shop.owner, {
    orderId,
    aboutId: null,
    kind: 'before-after',
    format: 'letter',
    copy: 'customer',
  });
  const bytes = new Uint8Array(await file.arrayBuffer());
  const text = await textOf(bytes);
  for (const words of [
    '0.021" (1/64")',
    '0.041" (3/64")',
    '0.032" (1/32")',
    '1.8 thou',
    '47.5# @ 28"',
  ]) {
    expect(text).toContain(words);
  }
  expect(text).not.toContain('0.5"');
  const shown = (await figureTexts(bytes)).filter((words) => words.startsWith('Photograph'));
  expect(shown.join(' ')).toContain('as it came');
  expect(shown.join(' ')).toContain('as it goes');
});
