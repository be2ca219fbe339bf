import { addFinishSystem } from '../../core/shop/finish/systems.ts';
import type { FinishSheetFields } from '../../shared/finish-sheet.ts';
import { type DemoFinish, demoSheets } from '../cast/finishes.ts';
import { demoStores } from '../cast/stores.ts';
import type { Chronicle } from './chronicle.ts';
import type { Story } from './tell.ts';

/** Working days before today that the sheets were copied; what is issued from a shelf needs one. */
const copiedDaysAgo: Record<DemoFinish, number> = { 'one-part': 155, 'two-part': 91, oil: 91 };

/** The shelf each finish is issued from; what the shop keeps no stock of has none. */
const shelves: Record<DemoFinish, { resin?: string; hardener?: string; thinner?: string }> = {
  'two-part': { resin: 'resin', hardener: 'hardener', thinner: 'thinner' },
  'one-part': {},
  oil: { resin: 'oil' },
};

async function onShelf(chronicle: Chronicle, key: string | undefined): Promise<string | null> {
  if (key === undefined) return null;
  const row = await chronicle.shop.read
    .selectFrom('consumable')
    .select('id')
    .where('name', '=', demoStores[key]?.fields.name ?? '')
    .executeTakeFirst();
  return row?.id ?? null;
}

/**
 * The owner copies the data sheets of the finishes in use.
 * @param finishIds filled with the ids
 */
export async function* finishSystemsStory(
  chronicle: Chronicle,
  finishIds: Map<DemoFinish, string>,
): Story {
  const sheets = Object.entries<FinishSheetFields>(demoSheets)
    .map(([key, sheet]) => ({ finish: key as DemoFinish, sheet }))
    .toSorted((a, b) => copiedDaysAgo[b.finish] - copiedDaysAgo[a.finish]);
  for (const { finish, sheet } of sheets) {
    yield chronicle.workday(copiedDaysAgo[finish], 9.2);
    const { resin, hardener, thinner } = shelves[finish];
    const { id } = await addFinishSystem(chronicle.as('owner'), {
      commandId: chronicle.newId(),
      sheet,
      resinId: await onShelf(chronicle, resin),
      hardenerId: await onShelf(chronicle, hardener),
      thinnerId: await onShelf(chronicle, thinner),
      active: true,
    });
    finishIds.set(finish, id);
  }
}
