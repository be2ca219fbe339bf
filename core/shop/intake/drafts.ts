import type { Draft, DraftBody } from '../../../shared/contract/intake.ts';
import type { ShopContext } from '../../storage/context.ts';

function titleOf(body: DraftBody): string {
  const name = body.customerName;
  const title = typeof name === 'string' ? name.replaceAll(/\p{Cc}+/gu, ' ').trim() : '';
  return title === '' ? 'No name yet' : title.slice(0, 200);
}

/** Half-typed requests of this person, newest first. */
export async function listDrafts(ctx: ShopContext): Promise<Draft[]> {
  const rows = await ctx.read
    .selectFrom('draft')
    .selectAll()
    .where('person_id', '=', ctx.actor.personId)
    .orderBy('saved_at', 'desc')
    .limit(50)
    .execute();
  return rows.map((row) => {
    const body = JSON.parse(row.body_json) as DraftBody;
    return { id: row.id, title: titleOf(body), savedAt: row.saved_at, body };
  });
}

/** Keeps what was typed so far. A draft is not a record: it has no history. */
export async function saveDraft(
  ctx: ShopContext,
  input: { id: string; body: DraftBody },
): Promise<{ savedAt: string }> {
  const savedAt = ctx.now();
  await ctx.write
    .insertInto('draft')
    .values({
      id: input.id,
      kind: 'intake',
      person_id: ctx.actor.personId,
      body_json: JSON.stringify(input.body),
      saved_at: savedAt,
    })
    .onConflict((conflict) =>
      conflict
        .column('id')
        .doUpdateSet({ body_json: JSON.stringify(input.body), saved_at: savedAt })
        .where('draft.person_id', '=', ctx.actor.personId),
    )
    .execute();
  return { savedAt };
}

export async function discardDraft(ctx: ShopContext, id: string): Promise<{ id: string }> {
  await ctx.write
    .deleteFrom('draft')
    .where('id', '=', id)
    .where('person_id', '=', ctx.actor.personId)
    .execute();
  return { id };
}
