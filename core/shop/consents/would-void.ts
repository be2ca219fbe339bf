import { consentKinds } from '../../../shared/consents.ts';
import type { ConsentChange } from '../../../shared/contract/consent-change.ts';
import type { ContractInputs, ContractOutputs } from '../../../shared/contract/types.ts';
import type { InscriptionRow } from '../../storage/agreement-tables.ts';
import type { OpenShop } from '../../storage/context.ts';
import type { OrderRow } from '../../storage/tables.ts';
import { readOrder } from '../orders/order-row.ts';
import { subjectRows } from './read.ts';
import { consentStateNow } from './state.ts';
import { storedConsents } from './stored.ts';
import { type SubjectRows, subjectsOf } from './subject.ts';

function changedOrder(order: OrderRow, change: ConsentChange): OrderRow {
  const { services, targetWeightLbf, targetDrawIn, estimateCents, inscription } = change;
  return {
    ...order,
    ...(services === undefined ? {} : { services_json: JSON.stringify(services) }),
    ...(targetWeightLbf === undefined ? {} : { target_weight_lbf: targetWeightLbf }),
    ...(targetDrawIn === undefined ? {} : { target_draw_in: targetDrawIn }),
    ...(estimateCents === undefined ? {} : { estimate_cents: estimateCents }),
    ...(inscription === undefined ? {} : { inscription }),
  };
}

function changedLayout(layout: InscriptionRow | null, change: ConsentChange) {
  const { position, makerMark } = change;
  if (position === undefined && makerMark === undefined) return layout;
  const now = { position: layout?.position ?? '', maker_mark: layout?.maker_mark ?? '' };
  return {
    ...now,
    ...(position === undefined ? {} : { position }),
    ...(makerMark === undefined ? {} : { maker_mark: makerMark }),
  };
}

/** What the consents would refer to after the change, by the same words as before it. */
function subjectsAfter(rows: SubjectRows, change: ConsentChange) {
  const layout = changedLayout(rows.layout, change);
  const after = subjectsOf({
    ...rows,
    order: changedOrder(rows.order, change),
    // Only where the lines stand and the maker's mark are read of a layout.
    layout: layout as SubjectRows['layout'],
  });
  // Any change of a line changes the text of the price; which change it will be is not known yet.
  return change.priceLines === true
    ? { ...after, 'price-and-scope': `${after['price-and-scope']}\n(changed)` }
    : after;
}

/** @see contract.consents.wouldVoid */
export async function wouldVoid(
  shop: OpenShop,
  { orderId, change }: ContractInputs['consents']['wouldVoid'],
): Promise<ContractOutputs['consents']['wouldVoid']> {
  const order = await readOrder(shop.read, orderId);
  const rows = await subjectRows(shop.read, order);
  const now = subjectsOf(rows);
  const after = subjectsAfter(rows, change);
  const consents = await storedConsents(shop.read, [orderId]);
  return consentKinds.flatMap((kind) => {
    const state = consentStateNow(consents, kind, now[kind]);
    if (state !== 'granted' && state !== 'waiting') return [];
    return consentStateNow(consents, kind, after[kind]) === state ? [] : [{ kind, state }];
  });
}
