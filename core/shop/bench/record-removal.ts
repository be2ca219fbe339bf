import type { RemovalMethod } from '../../../shared/bench.ts';
import { limbs } from '../../../shared/bows.ts';
import { recordRemoval, weightSdLbf } from '../../limb/index.ts';
import type { CommandTransaction } from '../../storage/commands.ts';
import type { ShopContext } from '../../storage/context.ts';
import type { RemovalRow } from '../../storage/tables.ts';
import { bowOnBench } from './bow-on-bench.ts';
import type { Bench } from './read-bench.ts';
import { type Drop, facesOf, type LimbWorks } from './removal-drop.ts';
import type { Workdown } from './workdown-of.ts';

export interface DoneRemoval {
  method: RemovalMethod;
  planned: LimbWorks;
  done: LimbWorks;
  drop: Drop;
  tool: string;
  note: string;
}

async function recordCuts(
  trx: CommandTransaction,
  ctx: ShopContext,
  removalId: string,
  { planned, done }: DoneRemoval,
): Promise<void> {
  for (const limb of limbs) {
    for (const [i, cut] of done[limb].cuts.entries()) {
      await trx.insert('removal_cut', {
        id: ctx.newId(),
        removal_id: removalId,
        limb,
        from_fade_in: cut.fromFadeIn,
        planned_left_in: planned[limb].cuts[i]?.offLeftIn ?? 0,
        planned_right_in: planned[limb].cuts[i]?.offRightIn ?? 0,
        done_left_in: cut.offLeftIn,
        done_right_in: cut.offRightIn,
        width_before_in: cut.widthNowIn,
        width_after_in: null,
      });
    }
  }
}

async function recordFaces(
  trx: CommandTransaction,
  ctx: ShopContext,
  removalId: string,
  { planned, done }: DoneRemoval,
): Promise<void> {
  const meant = facesOf(planned);
  for (const { limb, face, thou } of facesOf(done)) {
    const plannedThou = meant.find((one) => one.limb === limb && one.face === face)?.thou ?? 0;
    await trx.insert('removal_face', {
      id: ctx.newId(),
      removal_id: removalId,
      limb,
      face,
      planned_thou: plannedThou,
      done_thou: thou,
      measured_thou: null,
    });
  }
}

/** A removal that was done, with its widths before at every place and its forecast. */
export async function insertRemoval(
  trx: CommandTransaction,
  ctx: ShopContext,
  { order, plan }: Bench,
  work: Workdown,
  removal: DoneRemoval,
): Promise<RemovalRow> {
  const bowId = bowOnBench(trx, order);
  const { state, known } = work.replay;
  const { drop, sd } = removal.drop;
  const after = recordRemoval(state, drop, state.weightLbf * sd);
  const row = await trx.insert('removal', {
    id: ctx.newId(),
    order_id: order.id,
    bow_id: bowId,
    limb_set_id: order.limb_set_id,
    plan_id: plan?.id ?? null,
    method: removal.method,
    tool: removal.tool,
    edge_radius_in: null,
    modelled_drop: drop,
    drop_sd: sd,
    forecast_lbf: known ? after.weightLbf : null,
    forecast_sd_lbf: known ? weightSdLbf(after) : null,
    planned_at: trx.at,
    done_at: trx.at,
    remeasured_at: null,
    note: removal.note,
    person_id: ctx.actor.personId,
    struck_reason: null,
  });
  if (removal.method === 'narrow') await recordCuts(trx, ctx, row.id, removal);
  await recordFaces(trx, ctx, row.id, removal);
  return row;
}
