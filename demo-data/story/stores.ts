import { addConsumable, noteOrdered } from '../../core/shop/stores/consumables.ts';
import { countLot } from '../../core/shop/stores/corrections.ts';
import { getConsumable } from '../../core/shop/stores/detail.ts';
import { issueStock } from '../../core/shop/stores/issue.ts';
import { getLot, openLot } from '../../core/shop/stores/lots.ts';
import { receiveLots } from '../../core/shop/stores/receive.ts';
import { type DemoConsumable, type DemoLot, demoStores } from '../cast/stores.ts';
import type { Chronicle } from './chronicle.ts';
import type { Story } from './tell.ts';

/** Working days before today that the stores were written down, and that this story ends. */
const [begins, ends] = [92, 2];
/** Working days before today from which the week's use was booked, not the batches alone. */
const bookedFrom = 70;
const week = 5;

type Kept = DemoConsumable & { id: string };

/** A day's dealings with the shelves. */
interface Step {
  daysAgo: number;
  hour: number;
  act: () => Promise<void>;
}

async function putUp(chronicle: Chronicle): Promise<Kept[]> {
  const kept: Kept[] = [];
  for (const each of Object.values<DemoConsumable>(demoStores)) {
    const { id } = await addConsumable(chronicle.as('office'), {
      commandId: chronicle.newId(),
      ...each.fields,
    });
    kept.push({ ...each, id });
  }
  return kept;
}

async function receive(chronicle: Chronicle, { id, fields }: Kept, lot: DemoLot) {
  return receiveLots(chronicle.as('office'), {
    commandId: chronicle.newId(),
    consumableId: id,
    number: lot.number,
    receivedOn: chronicle.today,
    expiresOn: lot.expiresIn === null ? null : chronicle.dayFromToday(lot.expiresIn),
    costCents: lot.cents ?? null,
    note: '',
    containers: lot.containers ?? 1,
    quantity: lot.quantity,
    unit: fields.unit,
  });
}

/** The order that is being sanded or finished, where one is. */
async function orderAtHand(chronicle: Chronicle): Promise<string | null> {
  const order = await chronicle.shop.read
    .selectFrom('shop_order')
    .select('id')
    .where('stage', 'in', ['strip-sand', 'finish'])
    .orderBy('number')
    .executeTakeFirst();
  return order?.id ?? null;
}

/** Some weeks take more: whole pieces, and what is measured to the unit. */
function takenIn(weekly: number, at: number): number {
  const more = [1, 0.7, 1.4, 0.9][at % 4] ?? 1;
  return Math.max(1, Math.round(weekly * more));
}

async function take(chronicle: Chronicle, { id, fields, weekly = 0 }: Kept, at: number) {
  const { inDate } = await getConsumable(chronicle.shop, id);
  const quantity = Math.min(takenIn(weekly, at), Math.floor(inDate));
  if (quantity <= 0) return;
  await issueStock(chronicle.as('bench'), {
    commandId: chronicle.newId(),
    consumableId: id,
    lotId: null,
    quantity,
    unit: fields.unit,
    orderId: at % 3 === 0 ? await orderAtHand(chronicle) : null,
    reason: '',
  });
}

/** Deliveries, and cans that are opened. */
function deliveries(chronicle: Chronicle, kept: readonly Kept[]): Step[] {
  return kept.flatMap((each) =>
    each.lots.flatMap((lot) => {
      const ids: string[] = [];
      const comes: Step = {
        daysAgo: lot.daysAgo,
        hour: 10.2,
        act: async () => {
          ids.push(...(await receive(chronicle, each, lot)).lotIds);
        },
      };
      if (lot.openedDaysAgo === undefined) return [comes];
      const opens: Step = {
        daysAgo: lot.openedDaysAgo,
        hour: 13.1,
        act: async () => {
          const [id = ''] = ids;
          const { rowVersion } = (await getLot(chronicle.shop, id)).lot;
          const openedOn = chronicle.today;
          await openLot(chronicle.as('bench'), {
            commandId: chronicle.newId(),
            id,
            rowVersion,
            openedOn,
          });
        },
      };
      return [comes, opens];
    }),
  );
}

function weeklyUse(chronicle: Chronicle, kept: readonly Kept[]): Step[] {
  const weeks = Array.from({ length: Math.floor((bookedFrom - ends) / week) }, (_, index) => index);
  return weeks.flatMap((at) =>
    kept
      .filter(({ weekly }) => weekly !== undefined)
      .map((each, index) => ({
        daysAgo: bookedFrom - 1 - at * week,
        hour: 14 + index / 20,
        act: () => take(chronicle, each, at + index),
      })),
  );
}

/** The month's count finds a sheet or two fewer; what was ordered is noted. */
function houseKeeping(chronicle: Chronicle, kept: readonly Kept[]): Step[] {
  const count = async () => {
    const paper = kept.find(({ fields }) => fields.grit?.grit === 240);
    if (paper === undefined) return;
    const { lots } = await getConsumable(chronicle.shop, paper.id);
    const lot = lots.find(({ onHand }) => onHand > 3);
    if (lot === undefined) return;
    await countLot(chronicle.as('office'), {
      commandId: chronicle.newId(),
      lotId: lot.id,
      quantity: lot.onHand - 2,
      unit: paper.fields.unit,
      reason: 'month end, two sheets were used and not booked',
    });
  };
  const order = async () => {
    for (const { id, onOrder = 0 } of kept) {
      if (onOrder === 0) continue;
      const { rowVersion } = await getConsumable(chronicle.shop, id);
      await noteOrdered(chronicle.as('office'), {
        commandId: chronicle.newId(),
        id,
        rowVersion,
        onOrder,
      });
    }
  };
  return [
    { daysAgo: 18, hour: 16.5, act: count },
    { daysAgo: 4, hour: 9.1, act: order },
  ];
}

/** What came onto the shelves in the last months, and what was taken from them. */
export async function* storesStory(chronicle: Chronicle): Story {
  yield chronicle.workday(begins, 8.6);
  const kept = await putUp(chronicle);
  const steps = [
    ...deliveries(chronicle, kept),
    ...weeklyUse(chronicle, kept),
    ...houseKeeping(chronicle, kept),
  ].toSorted((a, b) => b.daysAgo - a.daysAgo || a.hour - b.hour);
  for (const { daysAgo, hour, act } of steps) {
    yield chronicle.workday(daysAgo, hour);
    await act();
  }
}
