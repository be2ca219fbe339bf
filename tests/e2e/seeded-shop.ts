import type { Client } from '../support/doors.ts';
import { httpClient } from '../support/doors.ts';
import { bowFields, customerFields, orderFields, shopFields } from '../support/fixtures.ts';
import { newCommandId } from '../support/new-command-id.ts';
import { expect as see } from './page.ts';
import type { Session } from './session.ts';
import { checkedScale, weighBehind } from './shop-scale.ts';

export interface SeededShop {
  personId: string;
  client: Client;
  orders: { normal: string; long: string; stopped: string };
  customerId: string;
  bowId: string;
}

/** In two weeks, so that only the order meant to be late is late. */
const soon = new Date(Date.now() + 14 * 24 * 60 * 60 * 1000).toISOString().slice(0, 10);

const longName = 'Maximiliane-Theodora van der Hoogenboom-Sørensen zu Unter-Oberhausen';
const longWord = 'Unaussprechlichlangesbogenmodellohnejedentrennstrich';

function clientAt(url: string, personId: string): Client {
  return httpClient(new URL('/', url).href, new URL(url).hash.replace('#token=', ''), personId);
}

async function takeIn(
  client: Client,
  name: string,
  change: { order?: Partial<typeof orderFields>; bow?: Partial<typeof bowFields> } = {},
): Promise<string> {
  const { id } = await client.intake.submit({
    commandId: newCommandId(),
    draftId: null,
    customer: { is: 'new', fields: { ...customerFields, name } },
    bow: { is: 'new', fields: { ...bowFields, ...change.bow } },
    order: { ...orderFields, promisedOn: soon, ...change.order },
    startsAt: 'requested',
    cameBy: 'phone',
  });
  return id;
}

async function moveOn(client: Client, id: string, to: 'in-mail' | 'arrived'): Promise<void> {
  const { rowVersion } = (await client.orders.get({ id })).card;
  const override = { reason: 'seen on the table' };
  await client.orders.move({ commandId: newCommandId(), id, rowVersion, to, override });
}

async function weighed(client: Client, orderId: string): Promise<void> {
  const scaleId = await checkedScale(client);
  await weighBehind(client, { orderId, scaleId, phase: 'arrival', forceLbf: 52.3 });
  await weighBehind(client, { orderId, scaleId, phase: 'work', forceLbf: 47.8 });
}

const dayFromNow = (days: number) => {
  const at = new Date(Date.now() + days * 24 * 60 * 60 * 1000);
  const two = (part: number) => String(part).padStart(2, '0');
  return `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
};

/** What Today lists besides promises: own tasks of every kind, and a question without an answer. */
async function reminders(
  client: Client,
  { normal, long, personId }: { normal: string; long: string; personId: string },
): Promise<void> {
  const add = (orderId: string | null, what: string, days: number, forPersonId: string | null) =>
    client.tasks.add({
      commandId: newCommandId(),
      orderId,
      what,
      dueOn: dayFromNow(days),
      forPersonId,
    });
  await add(null, 'Empty the solvent rag can', 0, null);
  await add(normal, 'Call about the string he sent along', 0, personId);
  await add(long, `${longWord} ${'and many words '.repeat(20)}`.slice(0, 400), -2, personId);
  await add(null, 'Order leather for the grips', 3, null);
  const kind = 'price-and-scope';
  const { text } = await client.consents.propose({ orderId: normal, kind });
  await client.consents.ask({
    commandId: newCommandId(),
    orderId: normal,
    kind,
    text,
    askedHow: 'e-mail',
  });
}

/** Limbs measured twice, so that the versions can be compared. */
async function measured(client: Client, orderId: string): Promise<void> {
  const bowId = (await client.orders.get({ id: orderId })).card.bowId ?? '';
  for (const thinner of [0, 0.012]) {
    await client.geometry.record({
      commandId: newCommandId(),
      bowId,
      limbSetId: null,
      orderId,
      note: thinner === 0 ? 'as it came' : 'after two bites on the belly',
      stations: (['upper', 'lower'] as const).flatMap((limb) =>
        [2, 8, 14, 20].map((fromFadeIn) => ({
          limb,
          fromFadeIn,
          widthIn: 1.25 - fromFadeIn / 64,
          thicknessIn: 0.42 - fromFadeIn / 100 - thinner,
          surface: 'over-finish' as const,
        })),
      ),
    });
  }
}

/** A shop with what strains a screen: long words, a hold, a stop, a late order, many in one column. */
export async function seedShop(url: string): Promise<SeededShop> {
  const owner = { name: 'Ida Penn', initials: 'IP' };
  const { personId } = await clientAt(url, '').setup.openShop({
    commandId: newCommandId(),
    shop: shopFields,
    owner,
  });
  const client = clientAt(url, personId);
  const normal = await takeIn(client, 'Nora Hale');
  await moveOn(client, normal, 'arrived');
  await weighed(client, normal);
  await measured(client, normal);
  const long = await takeIn(client, longName, {
    bow: { model: `${longWord} ${longWord}`.slice(0, 120), notes: 'many words '.repeat(200) },
    order: {
      services: [
        'reduce-weight',
        'strip-refinish',
        're-mark',
        'overlay-nock',
        'grip-rest',
        'new-string',
      ],
      customerNotes: `${longWord} `.repeat(40),
      privateNotes: 'private words '.repeat(150),
      promisedOn: '2026-01-05',
    },
  });
  const stopped = await takeIn(client, 'Odo Brand');
  await moveOn(client, stopped, 'in-mail');
  await client.findings.add({
    commandId: newCommandId(),
    orderId: stopped,
    grade: 'stop',
    place: 'upper limb, 9 in from the fade',
    note: 'glass lifting over two inches',
  });
  await client.orders.hold({
    commandId: newCommandId(),
    id: stopped,
    rowVersion: (await client.orders.get({ id: stopped })).card.rowVersion,
    kind: 'customer',
    reason: 'waits for the customer to say whether it goes home',
    remindOn: null,
  });
  for (let i = 0; i < 8; i += 1) await takeIn(client, `Customer ${i + 1}`);
  await reminders(client, { normal, long, personId });
  const { card } = await client.orders.get({ id: normal });
  return {
    personId,
    client,
    orders: { normal, long, stopped },
    customerId: card.customerId ?? '',
    bowId: card.bowId ?? '',
  };
}

/** The owner of the seeded shop stands at the screen. */
export async function enterSeeded({ page, program }: Session): Promise<void> {
  await page.goto(program.url);
  await page.getByRole('button', { name: /Ida Penn/ }).click();
  await see(page.getByRole('heading', { name: 'Today', level: 1 })).toBeVisible();
}
