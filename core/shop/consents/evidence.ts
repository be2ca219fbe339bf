import type { Consent } from '../../../shared/contract/consents.ts';
import type { ContractInputs } from '../../../shared/contract/types.ts';
import { refuseField } from '../../../shared/errors.ts';
import { signature } from '../../../shared/signatures.ts';
import type { OpenShop } from '../../storage/context.ts';
import type { ConsentAnswerRow } from '../../storage/tables.ts';

type AnswerInput = ContractInputs['consents']['answer'];
type Shown = Pick<Consent['answers'][number], 'signature' | 'attachment'>;
export type Evidence = (answer: ConsentAnswerRow) => Shown;

const sameName = (a: string, b: string) =>
  a.replaceAll(/\s+/g, ' ').trim().toLowerCase() === b.replaceAll(/\s+/g, ' ').trim().toLowerCase();

/** A yes given in person is signed: on the screen, or on the paper whose scan is attached. */
export function refuseUnsigned(input: AnswerInput): void {
  const given = input.signature ?? null;
  if (given !== null && input.channel !== 'in-person') {
    refuseField('signature', 'Only who is here can sign on this screen.');
  }
  if (given?.manner === 'typed' && !sameName(given.name, input.answeredBy)) {
    refuseField('signature', 'The name typed as signature must be the name of who answers.');
  }
  const isSigned = given !== null || (input.attachmentId ?? null) !== null;
  if (input.channel === 'in-person' && input.answer === 'granted' && !isSigned) {
    refuseField('signature', 'Let the customer sign, or attach the signed paper.');
  }
}

/** An answer rests on a file of its own order, one that still counts. */
export async function refuseForeignFile(
  db: OpenShop['read'],
  orderId: string,
  attachmentId: string | null,
): Promise<void> {
  if (attachmentId === null) return;
  const file = await db
    .selectFrom('attachment')
    .select(['order_id', 'struck_reason'])
    .where('id', '=', attachmentId)
    .executeTakeFirst();
  if (file === undefined || file.order_id !== orderId) {
    refuseField('attachmentId', 'This file does not belong to this order. Attach it here first.');
  }
  if (file.struck_reason !== null) {
    refuseField('attachmentId', 'This file was struck out. Attach the right one.');
  }
}

/** Signature and file of each answer of an order, as they are shown. */
export async function answerEvidence(db: OpenShop['read'], orderId: string): Promise<Evidence> {
  const files = await db
    .selectFrom('attachment')
    .select(['id', 'file_name'])
    .where('order_id', '=', orderId)
    .execute();
  return (answer) => {
    const file = files.find(({ id }) => id === answer.attachment_id);
    return {
      signature:
        answer.signature_json === null ? null : signature.parse(JSON.parse(answer.signature_json)),
      attachment: file === undefined ? null : { id: file.id, fileName: file.file_name },
    };
  };
}
