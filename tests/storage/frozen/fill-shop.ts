import type { Core } from '../../../core/host/core.ts';
import { addAttachment } from '../../../core/shop/attachments/add.ts';
import { editBow } from '../../../core/shop/bows/bows.ts';
import { recordGeometry } from '../../../core/shop/bows/geometry.ts';
import { addLimbSet } from '../../../core/shop/bows/limb-sets.ts';
import { addFinding } from '../../../core/shop/findings/findings.ts';
import { recordIncident } from '../../../core/shop/incidents/incidents.ts';
import { getOrder } from '../../../core/shop/orders/detail.ts';
import { holdOrder, remind } from '../../../core/shop/orders/holds.ts';
import { setLimbSet } from '../../../core/shop/orders/limb-set.ts';
import { addTask } from '../../../core/shop/tasks/tasks.ts';
import type { StockMoveRow } from '../../../core/storage/tables.ts';
import type { OrderDetail } from '../../../shared/contract/orders.ts';
import { bowFields, limbSetFields } from '../../support/fixtures.ts';
import { furnishShop, type TestShop } from '../../support/furnish-shop.ts';
import { jpegPicture } from '../../support/pictures.ts';
import { checkedScale, newCommandId, takeIn } from '../../support/test-shop.ts';
import { Flow } from '../../support/whole-flow.ts';
import { agreedOrder } from './fill-agreement.ts';
import { coatedBows } from './fill-finish.ts';
import { weightJob } from './fill-weight-job.ts';

export interface FrozenStory {
  orders: OrderDetail[];
  /** Since version 5: every move of the stores. */
  moves?: StockMoveRow[];
}

/** Every order of a shop, as the program tells it, without what depends on the present moment. */
export async function storyOf(core: Core): Promise<FrozenStory> {
  const shop = core.shop();
  const ids = await shop.read.selectFrom('shop_order').select('id').orderBy('number').execute();
  const orders = await Promise.all(ids.map(({ id }) => getOrder(shop, id)));
  const moves = await shop.read.selectFrom('stock_move').selectAll().orderBy('id').execute();
  return { orders, moves };
}

async function heldOrder(shop: TestShop): Promise<void> {
  const held = await takeIn(shop);
  const rowVersion = async () => (await getOrder(shop.owner, held.id)).card.rowVersion;
  await addFinding(shop.owner, {
    commandId: newCommandId(),
    orderId: held.id,
    grade: 'watch',
    place: 'lower tip',
    note: 'overlay hairline',
  });
  await holdOrder(shop.owner, {
    commandId: newCommandId(),
    id: held.id,
    rowVersion: await rowVersion(),
    kind: 'customer',
    reason: 'waits for an answer',
    remindOn: '2026-04-01',
  });
  await remind(shop.owner, {
    commandId: newCommandId(),
    id: held.id,
    rowVersion: await rowVersion(),
    how: 'phone',
    note: 'left a message',
  });
  await addTask(shop.owner, {
    commandId: newCommandId(),
    what: 'order overlay stock',
    dueOn: '2026-03-09',
    orderId: held.id,
    forPersonId: null,
  });
}

/** Limbs of a take-down that arrived alone, measured, dropped here, and a parcel for the way home. */
async function takeDownOrder(shop: TestShop): Promise<void> {
  const { id } = await takeIn(shop);
  const flow = new Flow(shop, id);
  const bowId = (await flow.order()).bow?.id ?? '';
  await editBow(shop.owner, {
    commandId: newCommandId(),
    id: bowId,
    rowVersion: 1,
    ...bowFields,
    takeDown: 'bolted three-piece',
  });
  const limbs = await addLimbSet(shop.owner, {
    commandId: newCommandId(),
    bowId,
    ...limbSetFields,
  });
  await setLimbSet(shop.owner, {
    commandId: newCommandId(),
    id,
    rowVersion: (await flow.order()).card.rowVersion,
    limbSetId: limbs.id,
    cameAs: 'limbs-only',
  });
  await flow.unpack({ strung: 'not-strung', notStrungBecause: 'limbs only, riser to come' });
  await flow.move('arrived');
  await recordGeometry(shop.owner, {
    commandId: newCommandId(),
    bowId,
    limbSetId: limbs.id,
    orderId: id,
    note: 'bare edges',
    stations: [0, 8, 16].map((fromFadeIn) => ({
      limb: 'upper' as const,
      fromFadeIn,
      widthIn: 1.5 - fromFadeIn / 32,
      thicknessIn: 0.38,
      surface: 'bare' as const,
    })),
  });
  await recordIncident(shop.owner, {
    commandId: newCommandId(),
    orderId: id,
    kind: 'damaged-here',
    happenedOn: '2026-03-02',
    what: 'fell off the bench',
    place: 'lower limb, tip',
    claimWith: '',
    claimUntil: null,
  });
  await addAttachment(shop.owner, {
    commandId: newCommandId(),
    file: new File([(await jpegPicture()) as BlobPart], 'tip.jpg', { type: 'image/jpeg' }),
    about: 'incident',
    orderId: id,
    bowId: null,
    findingId: null,
    incidentId: null,
    shipmentId: null,
    caption: 'the tip after the fall',
  });
  await flow.parcel();
}

/** A row in every table that an order touches. */
export async function fillShop(dataFolder: string): Promise<{ core: Core; story: FrozenStory }> {
  const shop = await furnishShop(dataFolder);
  const scaleId = await checkedScale(shop);
  const { id } = await takeIn(shop);
  const flow = new Flow(shop, id);
  await flow.unpack();
  await flow.move('arrived');
  await flow.completeArrival();
  await flow.weigh(scaleId, 'arrival', 52.3);
  await flow.note('target-feasible', 'width to spare');
  await flow.grant('price-and-scope');
  await flow.ask('alteration-acknowledgement');
  await heldOrder(shop);
  await takeDownOrder(shop);
  await weightJob(shop);
  await agreedOrder(shop);
  await coatedBows(shop);
  return { core: shop.core, story: await storyOf(shop.core) };
}
