import type { Kysely } from 'kysely';
import { ShopError } from '../../../shared/errors.ts';
import type { Tables } from '../../storage/tables.ts';

/** The shop's own labels: `S` for a shelf, `L` for a lot, `26-0147` for an order. */
const shelfLabel = /^S\d{4,}$/;
const lotLabel = /^L\d{4,}$/i;
const orderNumber = /^\d{2}-\d{4}$/;
/** What a Code 128 symbol and every keyboard-wedge scanner carry without surprises. */
const scannable = /^[\x21-\x7e]+(?: [\x21-\x7e]+)*$/;

const numbered = (letter: string, number: number) => `${letter}${String(number).padStart(4, '0')}`;

function highest(barcodes: readonly string[], label: RegExp): number {
  return barcodes
    .filter((barcode) => label.test(barcode))
    .reduce((max, barcode) => Math.max(max, Number(barcode.slice(1))), 0);
}

async function shelfBarcodes(db: Kysely<Tables>): Promise<string[]> {
  const rows = await db.selectFrom('consumable').select('barcode').execute();
  return rows.map(({ barcode }) => barcode);
}

/** The next free labels for so many lots. Lots are never taken out, so no number comes again. */
export async function nextLotBarcodes(db: Kysely<Tables>, count: number): Promise<string[]> {
  const rows = await db.selectFrom('lot').select('barcode').execute();
  const from = highest(
    rows.map(({ barcode }) => barcode),
    lotLabel,
  );
  return Array.from({ length: count }, (_, index) => numbered('L', from + 1 + index));
}

function refuseBarcode(sentence: string, code: 'BAD_INPUT' | 'CONFLICT' = 'BAD_INPUT'): never {
  throw new ShopError(code, sentence, { barcode: sentence });
}

/**
 * The barcode of a consumable: the one printed on what is bought, or a free one of the shop's own.
 * @param except the consumable it is for, where it is known.
 * @throws ShopError BAD_INPUT where it cannot be scanned or would be taken for a lot or an order;
 * CONFLICT where another consumable has it.
 */
export async function barcodeFor(
  db: Kysely<Tables>,
  given: string,
  except: string | null,
): Promise<string> {
  if (given === '') return numbered('S', highest(await shelfBarcodes(db), shelfLabel) + 1);
  if (!scannable.test(given)) {
    refuseBarcode(
      'A barcode has only plain letters, digits and signs. Scan it, or leave it empty.',
    );
  }
  if (lotLabel.test(given)) refuseBarcode('L and digits are labels of lots. Give another barcode.');
  if (orderNumber.test(given))
    refuseBarcode('This looks like an order number. Give another barcode.');
  const taken = await db
    .selectFrom('consumable')
    .select('name')
    .where('barcode', '=', given)
    .where('id', '!=', except ?? '')
    .executeTakeFirst();
  if (taken !== undefined) {
    refuseBarcode(
      `${taken.name} already has this barcode. Give another, or leave it empty.`,
      'CONFLICT',
    );
  }
  return given;
}
