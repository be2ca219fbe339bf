import { addBow } from '../core/shop/bows/bows.ts';
import { addLimbSet } from '../core/shop/bows/limb-sets.ts';
import { listCarriers } from '../core/shop/carriers/carriers.ts';
import { addCustomer } from '../core/shop/customers/customers.ts';
import { addScale, checkScale } from '../core/shop/scales/scales.ts';
import { addPerson } from '../core/shop/setup/people.ts';
import { openShop } from '../core/shop/setup/shop.ts';
import type { OpenShop } from '../core/storage/context.ts';
import { demoBows } from './cast/bows.ts';
import { demoCustomers } from './cast/customers.ts';
import type { DemoFinish } from './cast/finishes.ts';
import type { DemoBow } from './cast/make-bow.ts';
import { demoOrders } from './cast/orders.ts';
import { demoPeople, demoScales, demoShop } from './cast/shop.ts';
import type { Subject } from './pictures/pictures.ts';
import { seeded } from './seeded.ts';
import { Chronicle, type Hand } from './story/chronicle.ts';
import { finishSystemsStory } from './story/finish-systems.ts';
import { type Cast, Job } from './story/job.ts';
import { PictureBook } from './story/picture-book.ts';
import { storesStory } from './story/stores.ts';
import { tellInOrder } from './story/tell.ts';
import { walk } from './story/walk.ts';

export interface FurnishOptions {
  /** Calendar day that the shop's records end before, `YYYY-MM-DD`. */
  today: string;
  /** Share done, 0 to 1, and what is being written. May throw to give up. */
  onProgress(done: number, words: string): void | Promise<void>;
  /** Photographs drawn before, where several shops are furnished. */
  pictures?: PictureBook;
}

/** Working days before today on which the shop was opened; every order came later. */
const openedDaysAgo = 160;
const seed = 20_261_125;

/** The shop, its people, its scales. */
async function hire(shop: OpenShop, chronicle: Chronicle): Promise<string[]> {
  chronicle.goTo(chronicle.workday(openedDaysAgo, 8.2));
  const commandId = () => chronicle.newId();
  const { owner, office, bench } = demoPeople;
  const { personId } = await openShop(
    { ...shop, now: chronicle.now },
    'office computer',
    { commandId: commandId(), shop: demoShop, owner },
    { isDemo: true },
  );
  const hands: Hand[] = [{ personId, name: owner.name, role: 'owner', device: 'office computer' }];
  chronicle.meet(hands);
  for (const [person, role, device] of [
    [office, 'office', 'office computer'],
    [bench, 'bench', 'bench tablet'],
  ] as const) {
    const ctx = chronicle.as('owner');
    const { id } = await addPerson(ctx, { commandId: commandId(), ...person, role });
    hands.push({ personId: id, name: person.name, role, device });
  }
  chronicle.meet(hands);
  const scales: string[] = [];
  for (const scale of demoScales) {
    const ctx = chronicle.as('owner');
    scales.push((await addScale(ctx, { commandId: commandId(), ...scale })).id);
  }
  return scales;
}

/** Everybody and every bow the shop has on its list. */
async function list(
  chronicle: Chronicle,
): Promise<Omit<Cast, 'scales' | 'pictures' | 'finishIds' | 'carrier' | 'checkScale'>> {
  const customerIds = new Map<string, string>();
  for (const [key, fields] of demoCustomers) {
    const ctx = chronicle.as('office');
    customerIds.set(key, (await addCustomer(ctx, { commandId: chronicle.newId(), ...fields })).id);
  }
  const bowIds = new Map<string, string>();
  const limbSetIds = new Map<string, string[]>();
  for (const bow of demoBows.values()) {
    const customerId = bow.owner === null ? null : (customerIds.get(bow.owner) ?? null);
    const ctx = chronicle.as('office');
    const { id } = await addBow(ctx, { commandId: chronicle.newId(), customerId, ...bow.fields });
    bowIds.set(bow.key, id);
    const sets: string[] = [];
    for (const set of bow.limbSets) {
      const added = await addLimbSet(chronicle.as('office'), {
        commandId: chronicle.newId(),
        bowId: id,
        ...set,
      });
      sets.push(added.id);
    }
    limbSetIds.set(bow.key, sets);
  }
  return { chronicle, customerIds, bowIds, limbSetIds };
}

/** Each scale is checked once a day, before its first weighing. */
function scaleChecker(chronicle: Chronicle): Cast['checkScale'] {
  const checked = new Set<string>();
  return async (scaleId) => {
    const key = `${scaleId} ${chronicle.today}`;
    if (checked.has(key)) return;
    checked.add(key);
    await checkScale(chronicle.as('bench'), {
      commandId: chronicle.newId(),
      scaleId,
      lowLoadLbf: 20,
      lowReadingLbf: 20.1,
      highLoadLbf: 50,
      highReadingLbf: 50.1,
    });
  };
}

function carrierOf(chronicle: Chronicle): Cast['carrier'] {
  return async () => {
    const carriers = await listCarriers(chronicle.shop);
    const carrier = carriers.find(({ name }) => name === 'Private carrier A') ?? carriers[0];
    if (carrier === undefined) throw new Error('the shop knows no carrier');
    return { carrierId: carrier.id, name: carrier.name };
  };
}

/** Pictures that every opened order takes: drawn ahead in the order they are needed. */
function wantedPictures(): (readonly [Subject, DemoBow])[] {
  const byTime = demoOrders.toSorted((a, b) => b.days.requested - a.days.requested);
  return byTime.flatMap((plan) => {
    const bow = demoBows.get(plan.bow);
    if (bow === undefined || plan.days.opened === undefined) return [];
    const found = (plan.findings ?? []).flatMap(({ picture }) => picture ?? []);
    const subjects: Subject[] = [
      plan.limbsOnly === undefined ? 'unstrung' : 'limbs',
      ...(plan.pictures ?? []),
      ...found,
    ];
    return subjects.map((subject) => [subject, bow] as const);
  });
}

/**
 * Fills an empty shop with the demo: people, bows, and the last months of 37 orders, all of it
 * through the same commands as the screens, as different people, at the instants it happened.
 * Takes some ten seconds; the same for the same day, except for ids.
 */
export async function furnishDemo(shop: OpenShop, options: FurnishOptions): Promise<void> {
  const pictures = options.pictures ?? new PictureBook();
  const telling = new AbortController();
  void pictures.prepare(wantedPictures(), telling.signal);
  try {
    await tell(shop, pictures, options);
  } finally {
    // Of a filling that was given up nobody wants the other pictures.
    telling.abort();
  }
}

async function tell(shop: OpenShop, pictures: PictureBook, options: FurnishOptions): Promise<void> {
  const chronicle = new Chronicle(shop, options.today, seeded(seed));
  await options.onProgress(0, 'Opening the demo shop ...');
  const scales = await hire(shop, chronicle);
  await options.onProgress(0.03, 'Writing down customers and bows ...');
  const finishIds = new Map<DemoFinish, string>();
  const cast: Cast = {
    ...(await list(chronicle)),
    pictures,
    scales,
    finishIds,
    carrier: carrierOf(chronicle),
    checkScale: scaleChecker(chronicle),
  };
  const jobs = demoOrders.map((plan) => {
    const bow = demoBows.get(plan.bow);
    if (bow === undefined) throw new Error(`no such bow: ${plan.bow}`);
    return walk(new Job(cast, plan, bow));
  });
  await tellInOrder(
    chronicle,
    [storesStory(chronicle), finishSystemsStory(chronicle, finishIds), ...jobs],
    progressOf(chronicle, options),
  );
  await options.onProgress(1, 'The demo shop is ready.');
}

/** How far the telling has come, by the shop's own calendar. */
function progressOf(chronicle: Chronicle, options: FurnishOptions) {
  const [from, to] = [chronicle.workday(50, 8), chronicle.workday(1, 17)];
  return () => {
    const instantMs = Date.parse(chronicle.now());
    const share = Math.min(1, Math.max(0, (instantMs - from) / (to - from)));
    const day = new Date(instantMs).toLocaleDateString('en-US', { month: 'long', day: 'numeric' });
    return options.onProgress(0.1 + 0.88 * share, `The shop's last months: ${day}`);
  };
}
