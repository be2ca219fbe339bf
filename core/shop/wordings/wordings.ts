import type { ContractInputs, ContractOutputs } from '../../../shared/contract/types.ts';
import type { Wording } from '../../../shared/contract/wordings.ts';
import { ShopError } from '../../../shared/errors.ts';
import { merged } from '../../../shared/merge-fields.ts';
import {
  isConsentUse,
  notLegalAdvice,
  type WordingUse,
  wordingTroubles,
  wordingUses,
} from '../../../shared/wordings.ts';
import { runCommand } from '../../storage/commands.ts';
import type { OpenShop, ShopContext } from '../../storage/context.ts';
import { builtIn, type Template } from './built-in.ts';
import { exampleValues } from './example.ts';
import { type KeptWording, versionsOf, wordingNow } from './stored.ts';

type Inputs = ContractInputs['wordings'];
type Outputs = ContractOutputs['wordings'];

const shown = ({ id: _, ...wording }: KeptWording): Wording => wording;

/** @see contract.wordings.list */
export async function listWordings(shop: OpenShop): Promise<Outputs['list']> {
  const all: Wording[] = [];
  for (const use of wordingUses) all.push(shown(await wordingNow(shop.read, use)));
  return all;
}

/** @see contract.wordings.history */
export async function wordingHistory(
  shop: OpenShop,
  { use }: Inputs['history'],
): Promise<Outputs['history']> {
  return (await versionsOf(shop.read, use)).map(shown);
}

/** The text under which a consent stands, with the notice every one carries. */
export function consentTextOf(body: string, values: Readonly<Record<string, string>>): string {
  // Trimmed before, not after: what is asked stays to the letter.
  return `${merged(body.trimEnd(), values)}\n\n${notLegalAdvice}`;
}

/** @see contract.wordings.preview */
export function previewWording({ use, subject, body }: Inputs['preview']): Outputs['preview'] {
  const troubles = wordingTroubles(use, { subject, body });
  const values = exampleValues(use);
  const show = (part: 'subject' | 'body', make: () => string) =>
    // A text with a field that does not exist is shown as it was typed.
    troubles[part]?.includes('{{') === true ? { subject, body }[part] : make();
  return {
    subject: show('subject', () => merged(subject, values)),
    body: show('body', () =>
      isConsentUse(use) ? consentTextOf(body, values) : merged(body, values),
    ),
    troubles,
  };
}

function keep(
  ctx: ShopContext,
  command: { id: string; name: 'wordings.save' | 'wordings.backToBuiltIn' },
  { use, version }: { use: WordingUse; version: number },
  template: Template,
): Promise<Outputs['save']> {
  return runCommand(ctx, command, async (trx) => {
    const [trouble] = Object.entries(wordingTroubles(use, template));
    if (trouble !== undefined) {
      throw new ShopError('BAD_INPUT', trouble[1].slice(0, 1000), {
        [trouble[0]]: trouble[1].slice(0, 1000),
      });
    }
    const now = await wordingNow(trx.db, use);
    if (now.version !== version) {
      throw new ShopError('STALE', 'Somebody wrote a newer version of this text. Look again.', {
        version: `The version in use is ${now.version}.`,
      });
    }
    if (now.subject === template.subject && now.body === template.body) {
      throw new ShopError('CONFLICT', 'This is the text in use already.');
    }
    const row = await trx.insert('wording', {
      id: ctx.newId(),
      use,
      version: version + 1,
      ...template,
      written_at: trx.at,
      person_id: ctx.actor.personId,
    });
    return { id: row.id, version: row.version };
  });
}

/** @see contract.wordings.save */
export function saveWording(ctx: ShopContext, input: Inputs['save']): Promise<Outputs['save']> {
  const { commandId: id, subject, body } = input;
  return keep(ctx, { id, name: 'wordings.save' }, input, { subject, body });
}

/** @see contract.wordings.backToBuiltIn */
export function backToBuiltIn(
  ctx: ShopContext,
  input: Inputs['backToBuiltIn'],
): Promise<Outputs['save']> {
  const { commandId: id, use } = input;
  return keep(ctx, { id, name: 'wordings.backToBuiltIn' }, input, builtIn(use));
}
