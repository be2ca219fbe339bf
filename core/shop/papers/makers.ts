import { ShopError } from '../../../shared/errors.ts';
import {
  type PaperCopy,
  type PaperFormat,
  type PaperKind,
  paperChoices,
} from '../../../shared/papers.ts';
import type { PaperData } from '../../papers/paper-job.ts';
import type { ShopContext } from '../../storage/context.ts';
import { getCarePolicy } from '../care/policy.ts';
import { getOrder } from '../orders/detail.ts';
import { getShop } from '../setup/shop.ts';
import { beforeAfterOf, markingTemplateOf, workOrderOf } from './bench-papers.ts';
import { bowLabelData } from './bow-label-data.ts';
import { careCardData } from './care-card-data.ts';
import { consentFormData } from './consent-form-data.ts';
import { customsNoteData } from './customs-note-data.ts';
import { inscriptionProofData } from './inscription-proof-data.ts';
import { mixCardData } from './mix-card-data.ts';
import { packingListData } from './packing-list-data.ts';
import { pricePaperData } from './price-paper-data.ts';
import { returnTagData } from './return-tag-data.ts';
import { shippingTagData } from './shipping-tag-data.ts';
import { lotLabelData, shelfLabelData } from './stock-label-data.ts';

/** What a paper is asked for. */
export interface PaperRequest {
  kind: PaperKind;
  format: PaperFormat;
  copy: PaperCopy;
  orderId: string | null;
  aboutId: string | null;
  printedAt: string;
}

/** Reads what goes on a paper. */
type PaperMaker<Kind extends PaperKind> = (
  ctx: ShopContext,
  request: PaperRequest,
) => Promise<PaperData[Kind]>;

/** @throws ShopError BAD_INPUT, naming what there is, where a paper does not come in this size or copy. */
export function chosen<const Format extends PaperFormat, const Copy extends PaperCopy>(
  { kind, format, copy, printedAt }: PaperRequest,
  formats: readonly Format[],
  copies: readonly Copy[],
): { format: Format; copy: Copy; printedAt: string } {
  const size = formats.find((each) => each === format);
  const which = copies.find((each) => each === copy);
  if (size === undefined || which === undefined) {
    const { label } = paperChoices[kind];
    throw new ShopError('BAD_INPUT', `There is no ${label.toLowerCase()} in this size and copy.`, {
      format: formats.join(' or '),
      copy: copies.join(' or '),
    });
  }
  return { format: size, copy: which, printedAt };
}

/** @throws ShopError BAD_INPUT where no order is named */
export function orderOf({ kind, orderId }: PaperRequest): string {
  if (orderId !== null) return orderId;
  const sentence = `Say which order the ${paperChoices[kind].label.toLowerCase()} is for.`;
  throw new ShopError('BAD_INPUT', sentence, { orderId: sentence });
}

/** How each kind of paper gets what goes on it. */
export const makers: { [Kind in PaperKind]: PaperMaker<Kind> } = {
  'work-order': async (ctx, request) =>
    workOrderOf(ctx, orderOf(request), chosen(request, ['letter', 'a4'], ['bench', 'office'])),
  'inscription-proof': async (ctx, request) =>
    inscriptionProofData(
      ctx.read,
      await getOrder(ctx, orderOf(request)),
      await getShop(ctx),
      chosen(request, ['letter', 'a4'], ['customer']),
    ),
  'bow-label': async (ctx, request) =>
    bowLabelData(
      ctx.read,
      await getOrder(ctx, orderOf(request)),
      await getShop(ctx),
      chosen(request, ['letter', 'a4', 'label'], ['bench']),
    ),
  'consent-form': async (ctx, request) =>
    consentFormData(
      await getOrder(ctx, orderOf(request)),
      await getShop(ctx),
      request.aboutId,
      chosen(request, ['letter', 'a4'], ['customer']),
    ),
  'marking-template': async (ctx, request) =>
    markingTemplateOf(ctx, orderOf(request), chosen(request, ['letter', 'a4', 'long'], ['bench'])),
  'before-after': async (ctx, request) =>
    beforeAfterOf(ctx, orderOf(request), chosen(request, ['letter', 'a4'], ['customer'])),
  'care-card': async (ctx, request) =>
    careCardData(
      await getOrder(ctx, orderOf(request)),
      await getShop(ctx),
      await getCarePolicy(ctx),
      chosen(request, ['letter', 'a4'], ['customer']),
    ),
  'packing-list': async (ctx, request) =>
    packingListData(
      await getOrder(ctx, orderOf(request)),
      await getShop(ctx),
      chosen(request, ['letter', 'a4'], ['parcel', 'office']),
    ),
  estimate: async (ctx, request) =>
    pricePaperData(
      'estimate',
      await getOrder(ctx, orderOf(request)),
      await getShop(ctx),
      chosen(request, ['letter', 'a4'], ['customer', 'office']),
    ),
  receipt: async (ctx, request) =>
    pricePaperData(
      'receipt',
      await getOrder(ctx, orderOf(request)),
      await getShop(ctx),
      chosen(request, ['letter', 'a4'], ['customer', 'office']),
    ),
  'shipping-tag': async (ctx, request) =>
    shippingTagData(
      await getOrder(ctx, orderOf(request)),
      await getShop(ctx),
      chosen(request, ['4x6', 'a6'], ['parcel', 'office']),
    ),
  'return-tag': async (ctx, request) =>
    returnTagData(
      await getOrder(ctx, orderOf(request)),
      await getShop(ctx),
      chosen(request, ['4x6', 'a6'], ['parcel']),
    ),
  'customs-note': async (ctx, request) =>
    customsNoteData(
      await getOrder(ctx, orderOf(request)),
      await getShop(ctx),
      chosen(request, ['letter', 'a4'], ['parcel', 'office']),
    ),
  'shelf-label': (ctx, request) =>
    shelfLabelData(ctx, request.aboutId, chosen(request, ['label'], ['bench'])),
  'lot-label': (ctx, request) =>
    lotLabelData(ctx, request.aboutId, chosen(request, ['label'], ['bench'])),
  'mix-card': (ctx, request) =>
    mixCardData(ctx, request.aboutId, chosen(request, ['letter', 'a4'], ['bench'])),
};
