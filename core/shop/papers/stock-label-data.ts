import { ShopError } from '../../../shared/errors.ts';
import { gritWithSize } from '../../../shared/grit.ts';
import { hazardLabels } from '../../../shared/hazards.ts';
import { unitLabels } from '../../../shared/stores.ts';
import type { LotLabelData } from '../../papers/lot-label.ts';
import type { ShelfLabelData } from '../../papers/shelf-label.ts';
import type { ShopContext } from '../../storage/context.ts';
import type { ConsumableRow } from '../../storage/tables.ts';
import { notFound } from '../record.ts';
import { gritOf, hazardsOf } from '../stores/consumable-row.ts';
import { stockedLots } from '../stores/stocked-lot.ts';

type Choice = Pick<ShelfLabelData, 'format' | 'printedAt'>;

function aboutOf(aboutId: string | null, what: string): string {
  if (aboutId !== null) return aboutId;
  const sentence = `Say which ${what} the label is for.`;
  throw new ShopError('BAD_INPUT', sentence, { aboutId: sentence });
}

async function consumableOf({ read }: ShopContext, id: string): Promise<ConsumableRow> {
  const row = await read
    .selectFrom('consumable')
    .selectAll()
    .where('id', '=', id)
    .executeTakeFirst();
  if (row === undefined) throw notFound('consumable', id);
  return row;
}

/** `Flammable, isocyanates: see its data sheet`; empty where nothing is. */
function hazardLine(row: ConsumableRow): string[] {
  const labels = hazardsOf(row).map((hazard, index) =>
    index === 0 ? hazardLabels[hazard] : hazardLabels[hazard].toLowerCase(),
  );
  return labels.length === 0 ? [] : [`${labels.join(', ')}: see its data sheet`];
}

/** @throws ShopError NOT_FOUND, or BAD_INPUT where no consumable is named. */
export async function shelfLabelData(
  ctx: ShopContext,
  aboutId: string | null,
  choice: Choice,
): Promise<ShelfLabelData> {
  const row = await consumableOf(ctx, aboutOf(aboutId, 'consumable'));
  const grit = gritOf(row);
  const facts = [
    ...(grit === null ? [] : [gritWithSize(grit)]),
    ...(row.shelf === '' ? [] : [row.shelf]),
    `Counted in ${unitLabels[row.unit]}`,
    ...hazardLine(row),
  ];
  return { ...choice, name: row.name, facts, barcode: row.barcode };
}

/** @throws ShopError NOT_FOUND, or BAD_INPUT where no lot is named. */
export async function lotLabelData(
  ctx: ShopContext,
  aboutId: string | null,
  choice: Choice,
): Promise<LotLabelData> {
  const id = aboutOf(aboutId, 'lot');
  const [lot] = await stockedLots(ctx.read, { lotId: id });
  if (lot === undefined) throw notFound('lot', id);
  const row = await consumableOf(ctx, lot.row.consumable_id);
  const { opened_on: opened, number, received_on: received } = lot.row;
  const keeps = row.opened_days === null ? '' : `, keeps ${row.opened_days} days`;
  const facts = [
    lot.expiresOn === null ? 'No last day' : `Use by ${lot.expiresOn}`,
    ...(number === '' ? [] : [`Lot ${number}`]),
    `Came ${received}${opened === null ? '' : `, opened ${opened}`}`,
    ...(keeps === '' || opened !== null ? [] : [`Opened ____________${keeps}`]),
    ...hazardLine(row),
  ];
  return { ...choice, name: row.name, facts, barcode: lot.row.barcode };
}
