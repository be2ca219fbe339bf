import { ShopError } from '../../../shared/errors.ts';
import {
  type PaperCopy,
  type PaperFormat,
  type PaperKind,
  paperChoices,
} from '../../../shared/papers.ts';
import type { PaperData } from '../../papers/paper-job.ts';
import type { ShopContext } from '../../storage/context.ts';
import { getOrder } from '../orders/detail.ts';
import { getShop } from '../setup/shop.ts';
import { shippingTagData } from './shipping-tag-data.ts';
import { workOrderData } from './work-order-data.ts';

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
    workOrderData(
      await getOrder(ctx, orderOf(request)),
      await getShop(ctx),
      chosen(request, ['letter', 'a4'], ['bench', 'office']),
    ),
  'shipping-tag': async (ctx, request) =>
    shippingTagData(
      await getOrder(ctx, orderOf(request)),
      await getShop(ctx),
      chosen(request, ['4x6', 'a6'], ['parcel', 'office']),
    ),
};
