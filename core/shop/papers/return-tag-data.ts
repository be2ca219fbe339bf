import type { OrderDetail } from '../../../shared/contract/orders.ts';
import type { ShopDetails } from '../../../shared/contract/setup.ts';
import { ShopError } from '../../../shared/errors.ts';
import type { GoingHome } from '../../../shared/stages.ts';
import type { ReturnTagData } from '../../papers/return-tag.ts';
import { oneLine } from './one-line.ts';
import { isUnsafe, shopHead } from './shop-head.ts';

/** What its owner reads; the reason in the shop's own words stays in the shop. */
const whyWords: Record<GoingHome, string> = {
  declined: 'Price, date or findings were told, and the work was not wanted.',
  refused: 'The shop does not take on the work: the bow cannot give it, or it would not be safe.',
  withdrawn: 'The work was agreed and its owner took it back.',
  broken: 'It is broken and cannot be shot any more.',
};

const grades = ['stop', 'watch', 'cosmetic'] as const;
const gradeWords = { stop: 'Stop', watch: 'Watch', cosmetic: 'Looks' };

function findingLines({ findings }: OrderDetail): ReturnTagData['findings'] {
  const open = findings.filter(({ resolvedAt }) => resolvedAt === null);
  return grades.flatMap((grade) =>
    open
      .filter((finding) => finding.grade === grade)
      .map(({ place, note }) => ({
        grade: gradeWords[grade],
        isStop: grade === 'stop',
        words: [place, note].map(oneLine).filter(Boolean).join(', '),
      })),
  );
}

/** The newest note on it decides: a later "not ok" takes an earlier one back. */
function toldOn({ entries }: OrderDetail): string | null {
  const [newest] = entries
    .filter(({ item, struckReason }) => item === 'findings-told' && struckReason === null)
    .toSorted((a, b) => (a.recordedAt < b.recordedAt ? 1 : -1));
  return newest?.outcome === 'ok' ? newest.doneOn : null;
}

function whyOf({ card }: OrderDetail): string[] {
  return card.goingHome === null
    ? ['A stop finding is open: no work until it is repaired and looked at again.']
    : [whyWords[card.goingHome], 'The work is not done, or not finished.'];
}

function mindOf(order: OrderDetail): string[] {
  const cut = order.bench.removals.some(({ struckReason }) => struckReason === null);
  return [
    isUnsafe(order.card)
      ? 'Leave it unstrung: a limb that fails under load can injure. Have it looked at by somebody who builds bows before anything else.'
      : 'It travelled unstrung. Look it over, let it reach the temperature of the room, and string it with a stringer.',
    ...(cut
      ? [
          'Material has come off the limbs: the weight written on it no longer holds. Weigh it before you choose arrows.',
        ]
      : []),
  ];
}

/** @throws ShopError CONFLICT where the bow neither goes home unworked nor may not be strung */
export function returnTagData(
  order: OrderDetail,
  shop: ShopDetails,
  choice: Pick<ReturnTagData, 'format' | 'copy' | 'printedAt'>,
): ReturnTagData {
  const { card } = order;
  const unsafe = isUnsafe(card);
  if (card.goingHome === null && !unsafe) {
    const sentence =
      'This bow neither goes home with its work undone nor has an open stop finding: it needs no return tag.';
    throw new ShopError('CONFLICT', sentence, { goingHome: sentence });
  }
  const { name, lines, phone, email } = shopHead(shop);
  return {
    ...choice,
    number: card.number,
    from: { name, lines: [...lines, phone, email].filter((line) => line !== '') },
    customerName: order.customer?.name ?? '',
    bowLine: order.bow === null ? 'Bow not identified' : card.bowLine,
    unsafe,
    why: whyOf(order),
    findings: findingLines(order),
    toldOn: toldOn(order),
    mind: mindOf(order),
  };
}
