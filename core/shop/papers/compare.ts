import type { PaperComparison } from '../../../shared/contract/papers.ts';
import type { ContractInputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import { paperCopy, paperFormat } from '../../../shared/papers.ts';
import type { ShopContext } from '../../storage/context.ts';
import { dayOf } from '../day.ts';
import { notFound } from '../record.ts';
import { makers } from './makers.ts';
import { factsOf } from './papers.ts';

/** Whether a paper that went out would come out the same today. */
export async function comparePaper(
  ctx: ShopContext,
  { id }: ContractInputs['papers']['compare'],
): Promise<PaperComparison> {
  const row = await ctx.read
    .selectFrom('paper')
    .selectAll()
    .where('id', '=', id)
    .executeTakeFirst();
  if (row === undefined) throw notFound('paper', id);
  try {
    const data = await makers[row.kind](ctx, {
      kind: row.kind,
      format: paperFormat.parse(row.format),
      copy: paperCopy.parse(row.copy),
      orderId: row.order_id,
      aboutId: row.about_id,
      printedAt: row.made_at,
    });
    if (factsOf(data) === row.facts_sha256) return { outcome: 'same' };
    const sentence = `This paper says something else now than the one of ${dayOf(row.made_at)}.`;
    return { outcome: 'differs', sentence: `${sentence} Take the old one out of use.` };
  } catch (error) {
    if (!(error instanceof ShopError)) throw error;
    return { outcome: 'unmade', sentence: error.message.slice(0, 1000) };
  }
}
