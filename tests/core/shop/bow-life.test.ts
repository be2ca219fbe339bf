import { expect, test } from 'vitest';
import { bowLifeOf } from '../../../core/shop/bows/bow-life.ts';
import { editBow } from '../../../core/shop/bows/bows.ts';
import { recordGeometry } from '../../../core/shop/bows/geometry.ts';
import { addFinding, resolveFinding } from '../../../core/shop/findings/findings.ts';
import { submitIntake } from '../../../core/shop/intake/submit.ts';
import { setInscription } from '../../../core/shop/orders/orders.ts';
import { strikeOutReading } from '../../../core/shop/readings/readings.ts';
import { runCommand } from '../../../core/storage/commands.ts';
import { contract } from '../../../shared/contract/index.ts';
import { z } from '../../../shared/zod.ts';
import { bowFields, orderFields } from '../../support/fixtures.ts';
import {
  checkedScale,
  newCommandId,
  type TestShop,
  takeIn,
  testShop,
} from '../../support/test-shop.ts';
import { Flow } from '../../support/whole-flow.ts';

const stations = [2, 8, 14].map((fromFadeIn) => ({
  limb: 'upper' as const,
  fromFadeIn,
  widthIn: 1.2,
  thicknessIn: null,
  surface: 'bare' as const,
}));

/** Rows other rooms write; here only that they are told. */
function parcelAndIncident(shop: TestShop, orderId: string, bowId: string) {
  return runCommand(shop.owner, { id: newCommandId(), name: 'test.rows' }, async (trx) => {
    await trx.insert('shipment', {
      id: 'parcel-1',
      order_id: orderId,
      direction: 'in',
      carrier_id: null,
      carrier_name: 'Postal ground',
      shape: 'box',
      length_in: null,
      width_in: null,
      height_in: null,
      weight_lb: null,
      declared_cents: null,
      value_evidence: '',
      insured: 0,
      tracking: '9400',
      shipped_on: null,
      delivered_on: '2026-03-01',
      assessment_json: null,
      note: '',
      recorded_at: trx.at,
      person_id: shop.owner.actor.personId,
      struck_reason: null,
    });
    await trx.insert('incident', {
      id: 'incident-1',
      order_id: orderId,
      bow_id: bowId,
      kind: 'damaged-here',
      happened_on: '2026-03-02',
      what: 'knocked off the rack',
      finding_id: null,
      found_at: trx.at,
      found_by: shop.owner.actor.personId,
      claim_with: '',
      claim_until: null,
      claim_filed_on: null,
      claim_number: '',
      owner_told_on: null,
      owner_told_how: '',
      remedy: 'touched up',
      settled_at: null,
      settled_how: '',
    });
    return {};
  });
}

async function lived(shop: TestShop) {
  const { id: orderId } = await takeIn(shop);
  const flow = new Flow(shop, orderId);
  const { card } = await flow.order();
  const [bowId, customerId] = [card.bowId ?? '', card.customerId ?? ''];
  const scaleId = await checkedScale(shop);
  await flow.move('arrived', { override: { reason: 'on the table' } });
  await parcelAndIncident(shop, orderId, bowId);
  const first = await flow.weigh(scaleId, 'arrival', 52.3);
  const finding = await addFinding(shop.owner, {
    commandId: newCommandId(),
    orderId,
    grade: 'watch',
    place: 'lower tip',
    note: 'overlay hairline',
  });
  const how = 'reglued and looked at';
  await resolveFinding(shop.owner, { commandId: newCommandId(), ...finding, how });
  await recordGeometry(shop.owner, {
    commandId: newCommandId(),
    bowId,
    limbSetId: null,
    orderId,
    note: '',
    stations,
  });
  const { rowVersion } = (await flow.order()).card;
  await setInscription(shop.owner, {
    commandId: newCommandId(),
    id: orderId,
    rowVersion,
    inscription: 'AMO 66"\n45# @ 28"',
  });
  await flow.grant('marking-approval');
  return { bowId, customerId, scaleId, first };
}

const titles = (life: Awaited<ReturnType<typeof bowLifeOf>>) =>
  life.events.map((event) => event.title);

test('everything that happened to a bow is told, newest first, in words', async () => {
  const shop = await testShop();
  const { bowId } = await lived(shop);
  const life = await bowLifeOf(shop.owner, bowId);
  expect(life.ownerName).toBe('Nora Hale');
  expect(new Set(titles(life))).toEqual(
    new Set([
      'Marking approved by Nora Hale',
      'Limbs measured, version 1',
      'Finding (watch): lower tip',
      'Weighed, arrival: 52.3# @ 28"',
      'Parcel here',
      'Damaged in the shop: knocked off the rack',
      'Arrived',
      'Glass: back 48 of 50 thou, loupe at the limb edge, belly 50 of 50 thou, loupe at the limb edge',
    ]),
  );
  const instants = life.events.map((event) => event.at);
  expect(instants).toEqual(instants.toSorted().toReversed());
  expect(life.events.find((event) => event.kind === 'finding')?.text).toBe(
    'overlay hairline\nResolved: reglued and looked at',
  );
  expect(life.events.find((event) => event.kind === 'marking')?.text).toContain('45# @ 28"');
  const { outputSchema } = contract.bows.life['~orpc'];
  if (!(outputSchema instanceof z.ZodType)) throw new Error('life has no output');
  expect(outputSchema.safeParse(life).error?.issues ?? []).toEqual([]);
});

test('a life goes across orders; a struck weighing stays to be seen and weighs nothing', async () => {
  const shop = await testShop();
  const { bowId, customerId, scaleId, first } = await lived(shop);
  const second = await submitIntake(shop.owner, {
    commandId: newCommandId(),
    draftId: null,
    customer: { is: 'known', id: customerId },
    bow: { is: 'known', id: bowId },
    order: orderFields,
    startsAt: 'requested',
    cameBy: 'phone',
  });
  const again = new Flow(shop, second.id);
  await again.weigh(scaleId, 'arrival', 44.8);
  await strikeOutReading(shop.owner, {
    commandId: newCommandId(),
    ...first,
    reason: 'rig slipped',
  });
  const life = await bowLifeOf(shop.owner, bowId);
  expect(life.orders.map((order) => order.number)).toEqual(['26-0002', '26-0001']);
  expect(life.weights.map((weight) => [weight.text, weight.orderNumber])).toEqual([
    ['44.8# @ 28"', '26-0002'],
  ]);
  const struck = life.events.find((event) => event.id === first.id);
  expect(struck).toMatchObject({ struckReason: 'rig slipped', orderNumber: '26-0001' });
});

test('only a change of the glass is told as one', async () => {
  const shop = await testShop();
  const { bowId } = await lived(shop);
  const edit = (rowVersion: number, change: Partial<typeof bowFields>) =>
    editBow(shop.owner, {
      commandId: newCommandId(),
      id: bowId,
      rowVersion,
      ...bowFields,
      ...change,
    });
  await edit(1, { notes: 'a new note' });
  const { back, belly } = bowFields.faces;
  const thinner = { back: { ...back, glassNowIn: 0.044 }, belly };
  await edit(2, { faces: thinner });
  const glass = (await bowLifeOf(shop.owner, bowId)).events.filter((one) => one.kind === 'glass');
  expect(glass.map((event) => event.title)).toEqual([
    'Glass: back 44 of 50 thou, loupe at the limb edge, belly 50 of 50 thou, loupe at the limb edge',
    'Glass: back 48 of 50 thou, loupe at the limb edge, belly 50 of 50 thou, loupe at the limb edge',
  ]);
});

test('a bow that is not there has no life', async () => {
  const shop = await testShop();
  await expect(bowLifeOf(shop.owner, 'nothing')).rejects.toMatchObject({ code: 'NOT_FOUND' });
});
