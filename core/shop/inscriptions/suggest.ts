import type { LineSuggestion } from '../../../shared/contract/inscriptions.ts';
import type { ContractInputs, ContractOutputs } from '../../../shared/contract/types.ts';
import { markingRoundLabels, type SuggestionKind } from '../../../shared/inscription.ts';
import { decimal, inchFraction } from '../../../shared/measure.ts';
import { weightText } from '../../../shared/weight-text.ts';
import { amoLengthFromMasterString, amoLengthText, masterStringFor } from '../../limb/index.ts';
import type { OpenShop } from '../../storage/context.ts';
import type { BowRow, LimbSetRow, OrderRow } from '../../storage/tables.ts';
import { dayOf } from '../day.ts';
import { readFacts } from '../gates/facts.ts';
import { readOrder } from '../orders/order-row.ts';
import { storedReadings } from '../readings/stored.ts';
import { getShop } from '../setup/shop.ts';
import { outlinesOf } from './outlines.ts';
import { markingPolicy } from './policy.ts';
import { weightsToMark } from './weights-to-mark.ts';

type Suggested = ContractOutputs['inscriptions']['suggest'];
type Part = Pick<Suggested, 'lines' | 'missing'>;

const line = (kind: SuggestionKind, text: string, from: string): Part => ({
  lines: [{ kind, text, from }],
  missing: [],
});
const missing = (kind: SuggestionKind, why: string): Part => ({
  lines: [],
  missing: [{ kind, why }],
});
const none: Part = { lines: [], missing: [] };

const months = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];

interface Records {
  order: OrderRow;
  bow: BowRow | null;
  limbSet: LimbSetRow | null;
  customerName: string;
}

async function recordsOf(db: OpenShop['read'], orderId: string): Promise<Records> {
  const order = await readOrder(db, orderId);
  const of = { bow: order.bow_id ?? '', set: order.limb_set_id ?? '' };
  const bow = await db.selectFrom('bow').selectAll().where('id', '=', of.bow).executeTakeFirst();
  const limbSet = await db
    .selectFrom('limb_set')
    .selectAll()
    .where('id', '=', of.set)
    .executeTakeFirst();
  const customer = await db
    .selectFrom('customer')
    .select('name')
    .where('id', '=', order.customer_id ?? '')
    .executeTakeFirst();
  return {
    order,
    bow: bow ?? null,
    limbSet: limbSet ?? null,
    customerName: customer?.name ?? '',
  };
}

/** As marked on the limbs or the bow, or by a master string measured here. */
function lengthPart(markedIn: number | null, masterIn: number | undefined): Part {
  if (masterIn !== undefined) {
    const text = amoLengthText(amoLengthFromMasterString(masterIn));
    const from = `master string of ${inchFraction(masterIn)}" and 3" (AMO Standards, FP-3, 2000)`;
    return line('amo-length', text, from);
  }
  if (markedIn === null) {
    return missing(
      'amo-length',
      "No AMO length on the bow's record. Take it from a master string, never from the string that came.",
    );
  }
  return line('amo-length', amoLengthText(markedIn), 'as marked on the bow');
}

function serialPart({ bow, limbSet }: Records): Part {
  const ofLimbs =
    limbSet === null
      ? []
      : [
          ['upper limb', limbSet.upper_serial],
          ['lower limb', limbSet.lower_serial],
        ];
  const serials = [...ofLimbs, ['bow', bow?.serial ?? '']].filter(([, serial]) => serial !== '');
  if (serials.length === 0) {
    return missing('serial', "No serial number on the bow's record.");
  }
  return {
    lines: serials.map(([what = '', serial = '']) => ({
      kind: 'serial',
      text: `No. ${serial}`,
      from: `serial number of the ${what}`,
    })),
    missing: [],
  };
}

function initials(name: string): string {
  const words = name.split(/\s+/).filter((word) => word !== '');
  return words.map((word) => `${[...word][0]?.toUpperCase()}.`).join(' ');
}

function ownerPart(name: string): Part {
  return name === '' ? none : line('owner', initials(name).slice(0, 200), 'initials of the owner');
}

function datePart(now: string): Part {
  const [year = '', month = ''] = dayOf(now).split('-');
  return line('date', `${months[Number(month) - 1]} ${year}`, 'month of today');
}

/** What the records say stood on the bow, for the keeping. */
function oldMarkingOf({ bow, limbSet }: Records): string {
  const marked = limbSet ?? bow;
  if (marked === null) return '';
  const { marked_weight_lbf: weight, marked_draw_in: draw } = marked;
  const weightLine =
    weight === null
      ? ''
      : draw === null
        ? `${decimal(weight)}#`
        : weightText(weight, draw, marked.marked_draw_reference);
  const length = marked.amo_length_in === null ? '' : amoLengthText(marked.amo_length_in);
  const makers = bow === null ? '' : [bow.maker, bow.model].filter((part) => part !== '').join(' ');
  const serial = bow === null || bow.serial === '' ? '' : `No. ${bow.serial}`;
  return [makers, weightLine, length, serial].filter((part) => part !== '').join('\n');
}

/** @see contract.inscriptions.suggest */
export async function suggestLines(
  shop: OpenShop,
  input: ContractInputs['inscriptions']['suggest'],
): Promise<Suggested> {
  const records = await recordsOf(shop.read, input.orderId);
  const { order, bow, limbSet, customerName } = records;
  const markedIn = limbSet?.amo_length_in ?? bow?.amo_length_in ?? null;
  const { markingRoundLbf } = await markingPolicy(shop.read);
  const readings = await storedReadings(shop.read, [order.id]);
  const { lastRemovalAt } = await readFacts(shop.read, order, shop.now());
  const weights = weightsToMark(readings, lastRemovalAt, markingRoundLbf);
  const { name } = await getShop(shop);
  const rounding = markingRoundLabels[markingRoundLbf];
  const parts: Part[] = [
    weights.length === 0
      ? missing('weight', 'Nothing was weighed to the AMO reference since the last bite.')
      : {
          lines: weights.map(
            ({ text, exact }): LineSuggestion => ({
              kind: 'weight',
              text,
              from: `${exact}; ${rounding}`,
            }),
          ),
          missing: [],
        },
    lengthPart(markedIn, input.masterStringIn),
    serialPart(records),
    datePart(shop.now()),
    ownerPart(customerName),
    line('reworked-by', `Reworked by ${name}`, 'name of the shop; never as if it had made the bow'),
  ];
  const pictures = await shop.read
    .selectFrom('attachment')
    .select((eb) => eb.fn.countAll<number>().as('count'))
    .where('order_id', '=', order.id)
    .where('media_type', 'like', 'image/%')
    .where('struck_reason', 'is', null)
    .executeTakeFirstOrThrow();
  return {
    lines: parts.flatMap((part) => part.lines),
    missing: parts.flatMap((part) => part.missing),
    masterStringIn: markedIn === null ? null : masterStringFor(markedIn),
    oldMarking: oldMarkingOf(records),
    photographs: pictures.count,
    outlines: await outlinesOf(shop.read, order),
  };
}
