import { editBow, getBow } from '../../core/shop/bows/bows.ts';
import { recordGeometry } from '../../core/shop/bows/geometry.ts';
import { acceptPlan } from '../../core/shop/plans/accept.ts';
import { startPlan } from '../../core/shop/plans/start.ts';
import type { BowFields } from '../../shared/contract/bows.ts';
import type { Station } from '../../shared/contract/geometry.ts';
import type { PlanInput } from '../../shared/plan-input.ts';
import type { PlanMethod } from '../../shared/weight-plan.ts';
import { bowFields } from './fixtures.ts';
import { taperedLimb } from './sample-limbs.ts';
import { checkedScale, newCommandId, type TestShop, takeIn, testShop } from './test-shop.ts';
import { Flow } from './whole-flow.ts';

/** Everything about the longbow that a plan asks for. */
export const knownBow: BowFields = {
  ...bowFields,
  throatToFadeIn: -0.5,
  limbPadDeg: 0,
  profile: 'straight',
  limbs: { upper: { fadeIn: 7, limbIn: 26 }, lower: { fadeIn: 7, limbIn: 26 } },
  faces: {
    back: { facing: 'E-glass', glassMadeIn: 0.05, glassNowIn: 0.045, glassHow: 'loupe' },
    belly: { facing: 'E-glass', glassMadeIn: 0.05, glassNowIn: 0.045, glassHow: 'loupe' },
  },
  edgeRadiusIn: 0.0625,
};

export const bareStations: Station[] = (['upper', 'lower'] as const).flatMap((limb) =>
  taperedLimb().stations.map(({ fromFadeIn, backWidthIn, thicknessIn }) => ({
    limb,
    fromFadeIn,
    widthIn: Number(backWidthIn.toFixed(3)),
    thicknessIn: Number(thicknessIn.toFixed(3)),
    surface: 'bare' as const,
  })),
);

/** A 52 lb longbow in a shop, as far along as a plan needs. */
export class PlanShop {
  readonly shop: TestShop;
  readonly flow: Flow;
  readonly orderId: string;
  readonly scaleId: string;
  readonly bowId: string;

  constructor(shop: TestShop, ids: { orderId: string; scaleId: string; bowId: string }) {
    this.shop = shop;
    this.flow = new Flow(shop, ids.orderId);
    this.orderId = ids.orderId;
    this.scaleId = ids.scaleId;
    this.bowId = ids.bowId;
  }

  start() {
    return startPlan(this.shop.owner, this.orderId);
  }

  measure(stations: Station[] = bareStations) {
    return recordGeometry(this.shop.owner, {
      commandId: newCommandId(),
      bowId: this.bowId,
      limbSetId: null,
      orderId: this.orderId,
      note: '',
      stations,
    });
  }

  async changeBow(change: Partial<BowFields>) {
    const { bow } = await getBow(this.shop.owner, this.bowId);
    const { id, rowVersion, createdAt: _, customerId: __, ...fields } = bow;
    const input = { commandId: newCommandId(), id, rowVersion, ...fields, ...change };
    await editBow(this.shop.owner, input);
  }

  /** Accepts a plan as the desk would, from a fresh start. */
  async accept(
    change: {
      wish?: Partial<PlanInput['wish']>;
      method?: PlanMethod;
      because?: string;
      commandId?: string;
    } = {},
  ) {
    const { input, about, geometry, reading } = await this.start();
    return acceptPlan(this.shop.owner, {
      commandId: change.commandId ?? newCommandId(),
      orderId: this.orderId,
      rowVersion: about.rowVersion ?? 0,
      input: { ...input, wish: { ...input.wish, ...change.wish } },
      method: change.method ?? 'narrowing',
      geometryId: geometry?.id ?? null,
      readingId: reading?.id ?? null,
      confirmedBecause: change.because ?? '',
    });
  }

  async plans() {
    return (await this.flow.order()).plans;
  }
}

/** Arrived, looked over, weighed at 52 lb; its limbs measured bare unless told otherwise. */
export async function planShop(measured = true, given?: TestShop): Promise<PlanShop> {
  const shop = given ?? (await testShop());
  const { id: orderId } = await takeIn(shop);
  const scaleId = await checkedScale(shop);
  const flow = new Flow(shop, orderId);
  const bowId = (await flow.order()).bow?.id ?? '';
  const kit = new PlanShop(shop, { orderId, scaleId, bowId });
  await flow.move('in-mail');
  await flow.unpack();
  await flow.completeArrival();
  const moved = await flow.move('arrived');
  if (moved.outcome !== 'moved') throw new Error(JSON.stringify(moved));
  if (measured) {
    await kit.changeBow(knownBow);
    await kit.measure();
  }
  await flow.weigh(scaleId, 'arrival', 52);
  return kit;
}
