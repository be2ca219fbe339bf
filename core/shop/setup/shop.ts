import type { ShopDetails } from '../../../shared/contract/setup.ts';
import type { ContractInputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import type { Changed } from '../../../shared/fields.ts';
import type { WaitingPolicy } from '../../../shared/waiting-policy.ts';
import { usualTransferPercent } from '../../finish/amount.ts';
import { runCommand } from '../../storage/commands.ts';
import type { OpenShop, ShopContext } from '../../storage/context.ts';
import type { ShopRow } from '../../storage/tables.ts';
import { addStartingCarriers } from '../carriers/starting-carriers.ts';
import { addressColumns, addressOf } from './address.ts';
import { changeShop } from './change-shop.ts';

type ShopFields = ContractInputs['setup']['openShop']['shop'];

/** What a new shop begins with until its owner sets it otherwise; not on the first form. */
const untilSet = {
  tax_name: 'Sales tax',
  tax_rate_ppm: 0,
  deposit_percent: 0,
  rush_fee_cents: 0,
  return_freight_cents: 0,
  marking_round_lbf: 1,
  arrow_grains_per_lb: 9,
  care_terms: '',
  rack_slots: 6,
  transfer_efficiency: usualTransferPercent / 100,
};

type ShopColumns = Omit<ShopRow, 'id' | 'row_version' | 'is_demo' | keyof typeof untilSet>;

function shopColumns(fields: ShopFields): ShopColumns {
  return {
    name: fields.name,
    ...addressColumns(fields.address),
    phone: fields.phone,
    email: fields.email,
    paper_format: fields.paperFormat,
    tag_format: fields.tagFormat,
    contents_on_tag: fields.contentsOnTag ? 1 : 0,
    reminder_days_json: JSON.stringify(fields.reminderDays),
    storage_fee_days: fields.storageFeeDays,
    abandoned_days: fields.abandonedDays,
  };
}

/** The shop's policy on waiting for its customers, as its row holds it. */
export function waitingPolicyOf(
  row: Pick<ShopRow, 'reminder_days_json' | 'storage_fee_days' | 'abandoned_days'>,
): WaitingPolicy {
  return {
    reminderDays: JSON.parse(row.reminder_days_json) as number[],
    storageFeeDays: row.storage_fee_days,
    abandonedDays: row.abandoned_days,
  };
}

/** @throws ShopError NOT_FOUND before the first start is done. */
export async function getShop(shop: OpenShop): Promise<ShopDetails> {
  const row = await shop.read.selectFrom('shop').selectAll().executeTakeFirst();
  if (row === undefined)
    throw new ShopError('NOT_FOUND', 'The shop has no name yet. Set it up first.');
  return {
    name: row.name,
    address: addressOf(row),
    phone: row.phone,
    email: row.email,
    paperFormat: row.paper_format,
    tagFormat: row.tag_format,
    contentsOnTag: row.contents_on_tag === 1,
    ...waitingPolicyOf(row),
    isDemo: row.is_demo === 1,
    rowVersion: row.row_version,
  };
}

export function editShop(
  ctx: ShopContext,
  input: ContractInputs['shop']['edit'],
): Promise<Changed> {
  return changeShop(ctx, input, 'shop.edit', shopColumns(input));
}

/** What only the program itself decides, never a client. */
export interface OpenShopOptions {
  /** The invented shop of the tour. */
  isDemo?: boolean;
}

/**
 * First start. The owner is recorded as the person who opened the shop.
 * @throws ShopError CONFLICT once the shop is open.
 */
export async function openShop(
  shop: OpenShop,
  device: string,
  input: ContractInputs['setup']['openShop'],
  options: OpenShopOptions = {},
): Promise<{ personId: string }> {
  const personId = shop.newId();
  const actor = { personId, name: input.owner.name, role: 'owner' as const, device };
  return runCommand(
    { ...shop, actor },
    { id: input.commandId, name: 'setup.openShop' },
    async (trx) => {
      const existing = await trx.db.selectFrom('person').select('id').limit(1).executeTakeFirst();
      if (existing !== undefined) {
        throw new ShopError('CONFLICT', 'The shop is already set up. Change it in Settings.');
      }
      await trx.insert('shop', {
        id: 'shop',
        ...shopColumns(input.shop),
        ...untilSet,
        is_demo: options.isDemo === true ? 1 : 0,
      });
      await trx.insert('person', {
        id: personId,
        name: input.owner.name,
        initials: input.owner.initials,
        role: 'owner',
        active: 1,
      });
      await addStartingCarriers(trx, shop.newId);
      return { personId };
    },
  );
}
