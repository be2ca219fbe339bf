import type { LotPick } from '../../../shared/contract/finish.ts';
import type { ContractInputs, ContractOutputs } from '../../../shared/contract/types.ts';
import type { MixPart } from '../../../shared/finish.ts';
import { batchTimes } from '../../finish/pot-life.ts';
import { potLifeOf, type TwoPartSheet } from '../../finish/sheet.ts';
import { type CommandTransaction, runCommand } from '../../storage/commands.ts';
import type { ShopContext } from '../../storage/context.ts';
import { dayOf } from '../day.ts';
import { changedOf } from '../record.ts';
import { issueFirstExpired } from '../stores/issue-stock.ts';
import { doneAt } from './done-at.ts';
import { type PartIssue, type ReckonedMix, reckonMix } from './mix-plan.ts';
import { type NamedSystem, readSystem, sheetOf } from './system-row.ts';

type Input = ContractInputs['finish']['mix'];
type Result = ContractOutputs['finish']['mix'];

/** Day and count, `260302-2`: short enough to write on the cup. */
async function nextName(trx: CommandTransaction, mixedAt: string): Promise<string> {
  const day = dayOf(mixedAt).replaceAll('-', '').slice(2);
  const { count } = await trx.db
    .selectFrom('batch')
    .select((eb) => eb.fn.countAll().as('count'))
    .where('name', 'like', `${day}-%`)
    .executeTakeFirstOrThrow();
  return `${day}-${Number(count) + 1}`;
}

function amountsOf({ plan }: ReckonedMix) {
  const of = (part: MixPart) => plan.lines.find((line) => line.part === part);
  return {
    resin_g: of('resin')?.g ?? null,
    hardener_g: of('hardener')?.g ?? null,
    thinner_g: of('thinner')?.g ?? null,
    resin_ml: of('resin')?.ml ?? null,
    hardener_ml: of('hardener')?.ml ?? null,
    thinner_ml: of('thinner')?.ml ?? null,
  };
}

async function issueParts(
  trx: CommandTransaction,
  ctx: ShopContext,
  issues: readonly PartIssue[],
  batch: { id: string; name: string },
): Promise<LotPick[]> {
  const picked: LotPick[] = [];
  for (const { part, consumable, quantity } of issues) {
    const { picks } = await issueFirstExpired(trx, ctx, {
      consumableId: consumable.id,
      quantity,
      today: dayOf(trx.at),
      orderId: null,
      batchId: batch.id,
      reason: `Mixed in batch ${batch.name}`,
    });
    picked.push(
      ...picks.map((pick) => ({
        part,
        consumableId: consumable.id,
        lotId: pick.lotId,
        lotNumber: pick.lotName,
        expiresOn: pick.lastDay,
        quantity: pick.quantity,
        unit: consumable.unit,
      })),
    );
  }
  return picked;
}

async function writeBatch(
  trx: CommandTransaction,
  ctx: ShopContext,
  input: Input,
  system: NamedSystem,
  sheet: TwoPartSheet,
  reckoned: ReckonedMix,
): Promise<Result> {
  const mixedAt = doneAt(input.at, trx.at);
  const times = batchTimes(potLifeOf(sheet), mixedAt, input.mixF);
  const name = input.name === '' ? await nextName(trx, mixedAt) : input.name;
  const row = await trx.insert('batch', {
    id: ctx.newId(),
    finish_system_id: system.id,
    sheet_json: system.sheet_json,
    name,
    mixed_at: mixedAt,
    mix_f: input.mixF,
    ...amountsOf(reckoned),
    usable_from: times.usableFrom,
    usable_until: times.usableUntil,
    discarded_at: null,
    discarded_why: '',
    note: input.note,
    person_id: ctx.actor.personId,
  });
  const picks = await issueParts(trx, ctx, reckoned.issues, row);
  const { usableFrom, usableUntil } = times;
  return { outcome: 'mixed', ...changedOf(row), name, usableFrom, usableUntil, picks };
}

/**
 * One command: resin, hardener and thinner are issued first expired, first out, the batch is kept
 * with the sheet it was mixed by, and its clock runs. Nothing is written where it is refused.
 * @see contract.finish.mix
 */
export function mixBatch(ctx: ShopContext, input: Input): Promise<Result> {
  return runCommand(ctx, { id: input.commandId, name: 'finish.mix' }, async (trx) => {
    const system = await readSystem(trx.db, input.finishSystemId);
    const reckoned = await reckonMix(trx.db, system, input, trx.at);
    const sheet = sheetOf(system);
    const { troubles } = reckoned.plan;
    if (sheet.kind !== 'two-part') {
      const none = `${system.name} has no pot life and makes no batch: record its coats alone.`;
      return { outcome: 'refused', troubles: [...troubles, none] };
    }
    if (troubles.length > 0) return { outcome: 'refused', troubles };
    return writeBatch(trx, ctx, input, system, sheet, reckoned);
  });
}
