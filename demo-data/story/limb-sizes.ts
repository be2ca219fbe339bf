import { recordGeometry } from '../../core/shop/bows/geometry.ts';
import { readOrder } from '../../core/shop/orders/order-row.ts';
import { typicalStations } from '../../core/shop/plans/typical.ts';
import type { Station } from '../../shared/contract/geometry.ts';
import { between, seeded, seedOf } from '../seeded.ts';
import type { Job } from './job.ts';

/** No two bows are alike: wider or narrower, thicker or thinner than usual by up to this part. */
const unlike = 0.04;

const thousandth = (inches: number) => Number(inches.toFixed(3));

/** Widths and thicknesses from fade to nock; narrower by what was taken off so far. */
function stationsOf(job: Job, surface: Station['surface'], narrowerIn: number): Station[] {
  const { kind, limbs } = job.bow.fields;
  const random = seeded(seedOf(`${job.bow.key} limbs`));
  const [wider, thicker] = [1, 1].map((one) => one + between(random, -unlike, unlike));
  return (['upper', 'lower'] as const).flatMap((limb) =>
    typicalStations(kind, limbs[limb].limbIn ?? 22).map((at) => ({
      limb,
      fromFadeIn: at.fromFadeIn,
      widthIn: thousandth(at.backWidthIn * (wider ?? 1) - narrowerIn),
      thicknessIn: thousandth(at.thicknessIn * (thicker ?? 1) + (limb === 'lower' ? 0.004 : 0)),
      surface,
    })),
  );
}

/** Measures both limbs of the bow that is on the bench. */
export async function measureLimbs(
  job: Job,
  note: string,
  {
    surface = 'over-finish',
    narrowerIn = 0,
  }: { surface?: Station['surface']; narrowerIn?: number } = {},
): Promise<void> {
  const order = await readOrder(job.chronicle.shop.read, job.orderId);
  await recordGeometry(job.as('bench'), {
    ...job.command(),
    bowId: order.bow_id ?? '',
    limbSetId: order.limb_set_id,
    orderId: job.orderId,
    note,
    stations: stationsOf(job, surface, narrowerIn),
  });
}
