import type { OrderDetail } from '../../../shared/contract/orders.ts';
import type { PaperOffer } from '../../../shared/contract/papers.ts';
import type { PaperKind } from '../../../shared/papers.ts';
import { closedStages } from '../../../shared/stages.ts';
import type { OpenShop } from '../../storage/context.ts';
import { countryAbroad } from './recipient.ts';
import { isUnsafe } from './shop-head.ts';

type Subject = Pick<
  OrderDetail,
  'card' | 'customer' | 'bow' | 'shipTo' | 'papers' | 'findings' | 'history'
>;

/** Whether the paper went out at that instant or later; empty: whenever. */
const isOut = ({ papers }: Subject, kind: PaperKind, since = '') =>
  papers.some((paper) => paper.kind === kind && paper.madeAt >= since);

/** What a return tag must know of: that the bow goes home, and the last open stop finding. */
function tagSince({ findings, history }: Subject): string {
  const stops = findings.filter(({ grade, resolvedAt }) => grade === 'stop' && resolvedAt === null);
  const sent = history.filter(({ kind }) => kind === 'going-home');
  const instants = [...stops.map(({ foundAt }) => foundAt), ...sent.map(({ at }) => at)];
  return instants.sort().at(-1) ?? '';
}

function returnTag(order: Subject): PaperOffer[] {
  const { card } = order;
  if (card.goingHome === null || isOut(order, 'return-tag', tagSince(order))) return [];
  const why = isUnsafe(card)
    ? 'It goes home unsafe: tie the tag DO NOT STRING OR DRAW to the bow.'
    : 'It goes home with its work undone: tie a tag to the bow that says why.';
  return [{ kind: 'return-tag', why }];
}

function customsNote(order: Subject, shopCountry: string): PaperOffer[] {
  if (order.card.route.includes('collected') || isOut(order, 'customs-note')) return [];
  const country = countryAbroad(order, shopCountry);
  if (country === null) return [];
  const species =
    order.bow?.listedSpecies === 'listed'
      ? ' Its bow is of a listed species: a permit may be needed.'
      : '';
  const why = `The parcel goes to ${country}: customs will ask about it.${species} What to ask first stands on the office copy.`;
  return [{ kind: 'customs-note', why }];
}

/** Papers an order needs beside the usual ones, until they have gone out. */
export async function paperOffersOf(shop: OpenShop, order: Subject): Promise<PaperOffer[]> {
  if (closedStages.includes(order.card.stage)) return [];
  const row = await shop.read.selectFrom('shop').select('country').executeTakeFirst();
  return [...returnTag(order), ...customsNote(order, row?.country ?? '')];
}
