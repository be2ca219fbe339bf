import type { ContractInputs, ContractOutputs } from '../../../shared/contract/types.ts';
import { refuseField, ShopError } from '../../../shared/errors.ts';
import { decimal } from '../../../shared/measure.ts';
import { type SurpriseQuestion, surpriseOf } from '../../limb/index.ts';
import { type CommandTransaction, runCommand } from '../../storage/commands.ts';
import type { ShopContext } from '../../storage/context.ts';
import type { ReadingRow } from '../../storage/tables.ts';
import { note } from '../orders/history.ts';
import { standingPlan } from '../plans/stored.ts';
import { changedOf, notFound } from '../record.ts';
import { workdownRows } from './read-bench.ts';
import { type OpenSurprise, openSurpriseOf } from './weight-replay.ts';

type Input = ContractInputs['bench']['answerSurprise'];
type Result = ContractOutputs['bench']['answerSurprise'];

/** Why a reading does not stand, by the first question that is answered with no. */
const because: Record<string, string> = {
  brace: 'The brace height was not what it was',
  string: 'It was another string, or not seated in both grooves',
  'rig zero': 'The empty rig did not show zero',
  temperature: 'The bow had not been at shop temperature for a day',
  'draw reference': 'The draw was not measured from the throat plus 1 3/4 in',
  scale: 'The scale did not show the check weight right',
};

async function askedAbout(trx: CommandTransaction, reading: ReadingRow): Promise<OpenSurprise> {
  const plan = await standingPlan(trx.db, reading.order_id);
  const rows = await workdownRows(trx.db, reading.order_id, plan);
  const open = openSurpriseOf(rows);
  if (open?.readingId === reading.id) return open;
  throw new ShopError('CONFLICT', 'Nothing is asked about this weighing any more.', {
    readingId: 'Look again: it fits by now, was answered for, or does not count.',
  });
}

/** Every question, in the order in which it is asked. */
function refuseOddAnswers(input: Input, questions: readonly SurpriseQuestion[]): void {
  for (const [i, { about, question }] of questions.entries()) {
    if (input.answers[i]?.about !== about) refuseField(`answers.${i}`, `Answer this: ${question}`);
  }
  if (input.answers.length > questions.length) {
    refuseField('answers', 'There are more answers than questions.');
  }
}

async function readingOf(trx: CommandTransaction, id: string): Promise<ReadingRow> {
  const reading = await trx.db
    .selectFrom('reading')
    .selectAll()
    .where('id', '=', id)
    .executeTakeFirst();
  if (reading === undefined) throw notFound('reading', id);
  trx.about({ orderId: reading.order_id, bowId: reading.bow_id });
  return reading;
}

/** @see contract.bench.answerSurprise */
export function answerSurprise(ctx: ShopContext, input: Input): Promise<Result> {
  return runCommand(ctx, { id: input.commandId, name: 'bench.answerSurprise' }, async (trx) => {
    const reading = await readingOf(trx, input.readingId);
    const open = await askedAbout(trx, reading);
    refuseOddAnswers(input, surpriseOf(open.innovationSe) ?? []);
    const row = await trx.insert('surprise', {
      id: ctx.newId(),
      order_id: reading.order_id,
      reading_id: reading.id,
      innovation_se: open.innovationSe,
      forecast_lbf: open.expectedLbf,
      forecast_sd_lbf: open.expectedSdLbf,
      answers_json: JSON.stringify(input.answers),
      note: input.note,
      answered_at: trx.at,
      person_id: ctx.actor.personId,
      struck_reason: null,
    });
    const wrong = input.answers.find(({ isRight }) => !isRight);
    const read = `${decimal(open.readLbf)} lb read, ${decimal(open.expectedLbf)} lb expected`;
    const reason = wrong === undefined ? null : (because[wrong.about] ?? wrong.about);
    // Its row version says which reading the questions were about, struck out or not.
    await trx.update(
      'reading',
      reading.id,
      input.rowVersion,
      reason === null ? {} : { struck_reason: reason },
    );
    await note(trx, ctx, reading.order_id, {
      kind: reason === null ? 'reading' : 'strike-out',
      summary:
        reason === null
          ? `Weighing looked over and stands: ${read}`
          : `Weighing struck out: ${read}`,
      reason,
    });
    return { outcome: reason === null ? 'stands' : 'struck-out', ...changedOf(row) };
  });
}
