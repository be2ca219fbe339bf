import type { Limb } from '../../../shared/bows.ts';
import type { ContractInputs } from '../../../shared/contract/types.ts';
import { refuseField, ShopError } from '../../../shared/errors.ts';
import type { Changed } from '../../../shared/fields.ts';
import { decimal } from '../../../shared/measure.ts';
import { type BowResponse, calliperSdIn, remeasured, withWidths } from '../../limb/index.ts';
import { type CommandTransaction, runCommand } from '../../storage/commands.ts';
import type { ShopContext } from '../../storage/context.ts';
import type {
  RemovalCutRow,
  RemovalFaceRow,
  RemovalRow,
  WeightPlanRow,
} from '../../storage/tables.ts';
import { note } from '../orders/history.ts';
import { responseOf } from '../plans/stored.ts';
import { changedOf, notFound } from '../record.ts';
import { type Drop, type FaceOff, facesDrop, handSdThou, placesSd } from './removal-drop.ts';
import { removalParts } from './removal-parts.ts';
import { cutAt } from './taken-so-far.ts';

type Input = ContractInputs['bench']['remeasure'];

/** A width seems to grow by no more than four deviations of two readings, inches. */
const mayGrowIn = 4 * Math.SQRT2 * calliperSdIn;
/** What one thickness of glass read by loupe is off by, twice read, thousandths (common practice). */
const loupeSdThou = Math.SQRT2 * 0.5;

const placeText = (limb: Limb, fromFadeIn: number) =>
  `${decimal(fromFadeIn, 2)} in from the fade of the ${limb} limb`;

const wasCut = ({ done_left_in, done_right_in }: RemovalCutRow) =>
  (done_left_in ?? 0) + (done_right_in ?? 0) > 0;

/** Widths by their cut, inches; every place that was cut has one, and none has grown. */
function widthsByCut(cuts: readonly RemovalCutRow[], input: Input): Map<string, number> {
  const widths = new Map<string, number>();
  for (const [i, { limb, fromFadeIn, widthIn }] of input.widths.entries()) {
    const cut = cutAt(cuts, limb, fromFadeIn);
    const where = placeText(limb, fromFadeIn);
    if (cut === undefined || !wasCut(cut)) {
      refuseField(`widths.${i}`, `Nothing was cut ${where}: leave this width out.`);
    }
    const before = cut.width_before_in ?? 0;
    if (widthIn > before + mayGrowIn) {
      refuseField(
        `widths.${i}`,
        `${widthIn.toFixed(3)} in was measured ${where}, wider than the ${before.toFixed(3)} in before the cut. Measure it again.`,
      );
    }
    widths.set(cut.id, widthIn);
  }
  const open = cuts.find((cut) => wasCut(cut) && !widths.has(cut.id));
  if (open !== undefined) {
    refuseField('widths', `Measure the width ${placeText(open.limb, open.from_fade_in)} too.`);
  }
  return widths;
}

/** The response with the widths that the bow had before this removal. */
function responseBefore(plan: WeightPlanRow, cuts: readonly RemovalCutRow[]): BowResponse {
  const response = responseOf(plan);
  const widths = (limb: Limb) =>
    response[limb].stations.map(
      ({ fromFadeIn, widthIn }) => cutAt(cuts, limb, fromFadeIn)?.width_before_in ?? widthIn,
    );
  return withWidths(response, { upper: widths('upper'), lower: widths('lower') });
}

function narrowedDrop(
  before: BowResponse,
  cuts: readonly RemovalCutRow[],
  widths: ReadonlyMap<string, number>,
): Drop {
  const after = (limb: Limb) =>
    before[limb].stations.map(({ fromFadeIn }) => {
      const cut = cutAt(cuts, limb, fromFadeIn);
      return cut === undefined ? null : (widths.get(cut.id) ?? null);
    });
  const taken = remeasured(before, { upper: after('upper'), lower: after('lower') });
  return { drop: taken.modelledDrop, sd: placesSd(taken.places) };
}

/** Thousandths by their face row; a face that was left alone takes none. */
function thouByFace(faces: readonly RemovalFaceRow[], input: Input): Map<string, number> {
  const measured = new Map<string, number>();
  for (const [i, { limb, face, thou }] of input.faces.entries()) {
    const row = faces.find((one) => one.limb === limb && one.face === face);
    if (row === undefined) {
      refuseField(`faces.${i}`, `Nothing came off the ${face} of the ${limb} limb: leave it out.`);
    }
    measured.set(row.id, thou);
  }
  return measured;
}

function thinnedDrop(
  removal: RemovalRow,
  before: BowResponse,
  faces: readonly RemovalFaceRow[],
  measured: ReadonlyMap<string, number>,
): Drop {
  const off = faces.map((row): FaceOff => {
    const { limb, face } = row;
    const thou = measured.get(row.id);
    if (thou !== undefined) return { limb, face, thou, sdThou: loupeSdThou };
    const meant = row.done_thou ?? row.planned_thou;
    return { limb, face, thou: meant, sdThou: handSdThou(removal.method, meant) };
  });
  return facesDrop(before, off);
}

async function writeMeasured(
  trx: CommandTransaction,
  widths: ReadonlyMap<string, number>,
  thou: ReadonlyMap<string, number>,
): Promise<void> {
  for (const [id, widthIn] of widths) {
    await trx.update('removal_cut', id, null, { width_after_in: widthIn });
  }
  for (const [id, off] of thou) {
    await trx.update('removal_face', id, null, { measured_thou: off });
  }
}

async function standingRemoval(trx: CommandTransaction, id: string) {
  const removal = await trx.db
    .selectFrom('removal')
    .selectAll()
    .where('id', '=', id)
    .executeTakeFirst();
  if (removal === undefined) throw notFound('bite', id);
  trx.about({ orderId: removal.order_id, bowId: removal.bow_id });
  if (removal.struck_reason !== null) {
    throw new ShopError('CONFLICT', 'This bite was struck out: there is nothing to measure again.');
  }
  const plan = await trx.db
    .selectFrom('weight_plan')
    .selectAll()
    .where('id', '=', removal.plan_id ?? '')
    .executeTakeFirst();
  if (plan === undefined) {
    throw new ShopError('CONFLICT', 'This bite was noted in words: it has no places to measure.');
  }
  return { removal, plan };
}

function measuredWords(places: number): string {
  if (places === 0) return 'No face measured again, the bite counts as it was meant';
  return `Bite measured again ${places === 1 ? 'at one place' : `at ${places} places`}`;
}

/** @see contract.bench.remeasure */
export function remeasure(ctx: ShopContext, input: Input): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'bench.remeasure' }, async (trx) => {
    const { removal, plan } = await standingRemoval(trx, input.removalId);
    const { cuts, faces } = await removalParts(trx.db, [removal]);
    const widths = widthsByCut(cuts, input);
    const thou = thouByFace(faces, input);
    const before = responseBefore(plan, cuts);
    const { drop, sd } =
      removal.method === 'narrow'
        ? narrowedDrop(before, cuts, widths)
        : thinnedDrop(removal, before, faces, thou);
    await writeMeasured(trx, widths, thou);
    const row = await trx.update('removal', removal.id, input.rowVersion, {
      modelled_drop: drop,
      drop_sd: sd,
      remeasured_at: trx.at,
    });
    await note(trx, ctx, removal.order_id, {
      kind: 'removal',
      summary: `${measuredWords(widths.size + thou.size)}: ${decimal(100 * drop, 1)} % of the weight by the model`,
    });
    return changedOf(row);
  });
}
