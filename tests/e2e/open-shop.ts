import { type Client, httpClient } from '../support/doors.ts';
import { bowFields, customerFields, orderFields, shopFields } from '../support/fixtures.ts';
import { newCommandId } from '../support/new-command-id.ts';
import { expect } from './page.ts';
import type { Session } from './session.ts';
import { checkedScale } from './shop-scale.ts';

const clientAt = (url: string, personId: string): Client =>
  httpClient(new URL('/', url).href, new URL(url).hash.replace('#token=', ''), personId);

/** A shop of one owner with a checked scale, opened behind the screen; the owner stands at it. */
export async function openShop(session: Session): Promise<Client> {
  const { url } = session.program;
  const owner = { name: 'Ida Penn', initials: 'IP' };
  const { personId } = await clientAt(url, '').setup.openShop({
    commandId: newCommandId(),
    shop: shopFields,
    owner,
  });
  const client = clientAt(url, personId);
  await checkedScale(client);
  const { page } = session;
  await page.goto(url);
  await page.getByRole('button', { name: /Ida Penn/ }).click();
  await expect(page.getByRole('heading', { name: 'Today', level: 1 })).toBeVisible();
  return client;
}

export interface Wishes {
  customer?: string;
  bow?: Partial<typeof bowFields>;
  order?: Partial<typeof orderFields>;
  startsAt?: 'requested' | 'in-mail';
}

/** A request that was taken in by phone. */
export function takeIn(
  client: Client,
  wishes: Wishes = {},
): Promise<{ id: string; number: string }> {
  return client.intake.submit({
    commandId: newCommandId(),
    draftId: null,
    customer: {
      is: 'new',
      fields: { ...customerFields, name: wishes.customer ?? customerFields.name },
    },
    bow: { is: 'new', fields: { ...bowFields, ...wishes.bow } },
    order: { ...orderFields, ...wishes.order },
    startsAt: wishes.startsAt ?? 'in-mail',
    cameBy: 'phone',
  });
}
