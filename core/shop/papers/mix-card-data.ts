import type { Batch, LotPick } from '../../../shared/contract/finish.ts';
import { ShopError } from '../../../shared/errors.ts';
import {
  coatPurposeLabels,
  type MixPart,
  mixPartLabels,
  mixPartNames,
} from '../../../shared/finish.ts';
import { whoDecides } from '../../../shared/hazards.ts';
import { decimal } from '../../../shared/measure.ts';
import { fluidOunces } from '../../finish/amount.ts';
import { spanText } from '../../finish/instant.ts';
import type { FinishSheet } from '../../finish/sheet.ts';
import { temperatureText } from '../../finish/temperature.ts';
import type { MixCardData, MixCardPart } from '../../papers/mix-card.ts';
import type { ShopContext } from '../../storage/context.ts';
import { wallTimeOf } from '../day.ts';
import { batchesFrom, namedBatches } from '../finish/batches.ts';
import { sheetOf } from '../finish/system-row.ts';
import { notFound } from '../record.ts';
import { getShop } from '../setup/shop.ts';
import { shopHead } from './shop-head.ts';

type Choice = Pick<MixCardData, 'format' | 'copy' | 'printedAt'>;

const said = (value: number | null, digits = 1) => (value === null ? '' : decimal(value, digits));

function amountOf(batch: Batch, part: MixPart): { ml: number | null; g: number | null } {
  const of = {
    resin: { ml: batch.resinMl, g: batch.resinG },
    hardener: { ml: batch.hardenerMl, g: batch.hardenerG },
    thinner: { ml: batch.thinnerMl, g: batch.thinnerG },
  };
  return of[part];
}

const lotText = ({ lotNumber, expiresOn }: LotPick) =>
  expiresOn === null ? lotNumber : `${lotNumber}, ${expiresOn}`;

/** The scale adds up while the cup stays on it; one part that was not weighed ends that. */
function partsOf(batch: Batch, names: ReadonlyMap<string, string>): MixCardPart[] {
  let reads: number | null = 0;
  const parts: MixCardPart[] = [];
  for (const part of mixPartNames) {
    const { ml, g } = amountOf(batch, part);
    if (ml === null && g === null) continue;
    reads = reads === null || g === null ? null : reads + g;
    const lots = batch.lots.filter((lot) => lot.part === part);
    parts.push({
      part: mixPartLabels[part],
      name: names.get(lots[0]?.consumableId ?? '') ?? batch.systemName,
      ml: said(ml),
      fluidOunces: said(ml === null ? null : fluidOunces(ml), 2),
      grams: said(g),
      scaleReads: said(reads),
      lots: lots.map(lotText).join('; '),
    });
  }
  return parts;
}

function factsOf(batch: Batch, sheet: FinishSheet): MixCardData['facts'] {
  const stands =
    sheet.kind === 'two-part' && sheet.potLife.inductionMin > 0
      ? spanText(sheet.potLife.inductionMin)
      : 'not asked for';
  return [
    ['Data sheet', `${sheet.name}, ${sheet.revision} of ${sheet.datedOn}`],
    ['Mixed', `${wallTimeOf(batch.mixedAt)} by ${batch.personName}`],
    ['Temperature of the mix', temperatureText(batch.mixF)],
    ['Stands before use', stands],
    ['Pot life', 'Warmer it is shorter. Thinner or fresh mix does not make it longer.'],
    ...(batch.note === '' ? [] : [['Note', batch.note] as [string, string]]),
  ];
}

async function coatsOf({ read }: ShopContext, batchId: string): Promise<MixCardData['coats']> {
  const rows = await read
    .selectFrom('coat')
    .innerJoin('spray_session', 'spray_session.id', 'coat.session_id')
    .innerJoin('shop_order', 'shop_order.id', 'coat.order_id')
    .select(['shop_order.number', 'coat.purpose', 'coat.coats', 'coat.at', 'coat.wet_mil'])
    .where('spray_session.batch_id', '=', batchId)
    .where('coat.struck_reason', 'is', null)
    .orderBy('coat.at')
    .orderBy('shop_order.number')
    .execute();
  return rows.map((row) => [
    row.number,
    row.coats === 1
      ? coatPurposeLabels[row.purpose]
      : `${coatPurposeLabels[row.purpose]}, ${row.coats} coats`,
    wallTimeOf(row.at),
    row.wet_mil === null ? 'not gauged' : `${decimal(row.wet_mil)} mil`,
  ]);
}

async function namesOf({ read }: ShopContext, lots: readonly LotPick[]) {
  const ids = lots.map((lot) => lot.consumableId);
  const rows = await read
    .selectFrom('consumable')
    .select(['id', 'name'])
    .where('id', 'in', ids)
    .execute();
  return new Map(rows.map((row) => [row.id, row.name]));
}

function usableText({ usableFrom, usableUntil }: Batch): string {
  const [from, until] = [wallTimeOf(usableFrom), wallTimeOf(usableUntil)];
  const sameDay = from.slice(0, 10) === until.slice(0, 10);
  return `Use from ${from} until ${sameDay ? until.slice(11) : until}`;
}

/** @throws ShopError NOT_FOUND, or BAD_INPUT where no batch is named. */
export async function mixCardData(
  ctx: ShopContext,
  aboutId: string | null,
  choice: Choice,
): Promise<MixCardData> {
  if (aboutId === null) {
    const sentence = 'Say which batch the mix card is for.';
    throw new ShopError('BAD_INPUT', sentence, { aboutId: sentence });
  }
  const row = await namedBatches(ctx.read).where('batch.id', '=', aboutId).executeTakeFirst();
  if (row === undefined) throw notFound('batch', aboutId);
  const [batch] = await batchesFrom(ctx.read, [row], choice.printedAt);
  if (batch === undefined) throw notFound('batch', aboutId);
  const gone = batch.discardedAt === null ? '' : `DISCARDED ${wallTimeOf(batch.discardedAt)}`;
  return {
    ...choice,
    shop: shopHead(await getShop(ctx)),
    number: batch.name,
    finish: batch.systemName,
    usable: usableText(batch),
    discarded: gone === '' ? '' : `${gone}: ${batch.discardedWhy}`,
    parts: partsOf(batch, await namesOf(ctx, batch.lots)),
    facts: factsOf(batch, sheetOf(row)),
    coats: await coatsOf(ctx, aboutId),
    cautions: batch.cautions.length === 0 ? [whoDecides] : batch.cautions,
  };
}
