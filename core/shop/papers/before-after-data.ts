import type { OrderDetail } from '../../../shared/contract/orders.ts';
import type { Reading } from '../../../shared/contract/readings.ts';
import type { ShopDetails } from '../../../shared/contract/setup.ts';
import { decimal, inchFraction } from '../../../shared/measure.ts';
import { serviceLabels } from '../../../shared/stages.ts';
import type { BeforeAfterData } from '../../papers/before-after.ts';
import { dayOf } from '../day.ts';
import { phaseWords } from '../readings/phases.ts';
import { addressLines } from '../setup/address.ts';
import type { RemovalRecords } from './before-after-removed.ts';
import { removedLines } from './before-after-removed.ts';
import { finishers, finishFacts } from './finish-facts.ts';
import { nameOnPapers } from './shop-name.ts';

interface Weighed {
  before: Reading | null;
  after: Reading | null;
}

/** The weighing on arrival, and the last one since: the final one where there is one. */
function weighed({ readings }: OrderDetail): Weighed {
  const standing = readings.filter(({ struckReason }) => struckReason === null);
  const final = standing.findLast(({ phase }) => phase === 'final');
  return {
    before: standing.findLast(({ phase }) => phase === 'arrival') ?? null,
    after: final ?? standing.findLast(({ phase }) => phase !== 'arrival') ?? null,
  };
}

/** Two draws this near are one as a rule is read, inches. */
const sameDraw = 1 / 16;

function weightText(reading: Reading | null, drawIn: number): string {
  const weight = reading?.weights.find((each) => Math.abs(each.drawIn - drawIn) < sameDraw);
  return weight?.text ?? 'not measured';
}

function weightLines(order: OrderDetail, { before, after }: Weighed): BeforeAfterData['weights'] {
  const own = order.customer?.ownDrawIn ?? null;
  const wanted: [string, number | null][] = [
    ['as ordered', order.targetDrawIn],
    ['standard', 28],
    ['your own draw', own],
  ];
  const lines: BeforeAfterData['weights'] = [];
  const said: number[] = [];
  for (const [name, drawIn] of wanted) {
    if (drawIn === null || said.some((each) => Math.abs(each - drawIn) < sameDraw)) continue;
    said.push(drawIn);
    const names = drawIn === own && name !== 'your own draw' ? `${name}, your own draw` : name;
    lines.push({
      draw: `${names}: ${decimal(drawIn, 4)}"`,
      before: weightText(before, drawIn),
      after: weightText(after, drawIn),
    });
  }
  return lines;
}

const weighedWords = (reading: Reading | null) =>
  reading === null ? '' : ` (${phaseWords[reading.phase]}, ${dayOf(reading.weighedAt)})`;

function tillerWords(reading: Reading | null): string {
  const tiller = reading?.tillerIn ?? null;
  if (tiller === null) return 'not measured';
  if (tiller === 0) return 'even';
  const weaker = tiller > 0 ? 'upper' : 'lower';
  return `${inchFraction(tiller)}" (${weaker} limb weaker)`;
}

function strungFacts({ before, after }: Weighed): BeforeAfterData['facts'] {
  const both = (label: string, of: (reading: Reading | null) => string) => ({
    label,
    before: of(before),
    after: of(after),
  });
  return [
    both('String', (reading) => reading?.stringNote ?? 'not recorded'),
    both('Brace height', (reading) =>
      reading === null ? 'not measured' : `${inchFraction(reading.braceIn)}"`,
    ),
    both('Tiller at the fades', tillerWords),
  ];
}

function finishedFacts(order: OrderDetail, people: readonly string[]): [string, string][] {
  const rows: [string, string][] = [
    ['Work', order.services.map((service) => serviceLabels[service]).join(', ')],
    ['Finish', finishFacts(order).finish ?? ''],
    ['Lettered', order.inscription.replaceAll('\n', ' / ')],
    ['By', people.join(', ')],
  ];
  return rows.filter(([, value]) => value !== '');
}

/** Whoever weighed it last or did any of the work, each once. */
function peopleOf(order: OrderDetail, { after }: Weighed, workers: readonly string[]): string[] {
  const people = [...workers, ...finishers(order), after?.personName ?? ''];
  return [...new Set(people)].filter((name) => name !== '');
}

function acknowledged({ consents }: OrderDetail): string | null {
  const granted = consents.some(
    ({ kind, state }) => kind === 'alteration-acknowledgement' && state === 'granted',
  );
  return granted ? "The maker's warranty may not cover an altered bow." : null;
}

/** @param workers names of those who took material off */
export function beforeAfterData(
  order: OrderDetail,
  shop: ShopDetails,
  records: RemovalRecords,
  workers: readonly string[],
  photographs: BeforeAfterData['photographs'],
  choice: Pick<BeforeAfterData, 'format' | 'copy' | 'printedAt'>,
): BeforeAfterData {
  const { card } = order;
  const readings = weighed(order);
  return {
    ...choice,
    shop: {
      name: nameOnPapers(shop),
      lines: addressLines(shop.address),
      phone: shop.phone,
      email: shop.email,
    },
    number: card.number,
    customerName: order.customer?.name ?? '',
    bowLine: order.bow === null ? 'Bow not identified' : card.bowLine,
    photographs,
    weighed: { before: weighedWords(readings.before), after: weighedWords(readings.after) },
    weights: weightLines(order, readings),
    strip: { ...card.weights, stopBandLbf: null, forecastLbf: null },
    stripDraw: `${decimal(card.weights.drawIn ?? 28, 4)}" AMO`,
    ...removedLines(records),
    facts: strungFacts(readings),
    finished: finishedFacts(order, peopleOf(order, readings, workers)),
    acknowledged: acknowledged(order),
  };
}
