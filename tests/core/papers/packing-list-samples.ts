import type { PackingListData } from '../../../core/papers/packing-list.ts';
import { careLong, careSample, careShortest } from './care-card-samples.ts';

export const packingSample: PackingListData = {
  format: 'letter',
  copy: 'parcel',
  printedAt: careSample.printedAt,
  shop: careSample.shop,
  number: '26-0147',
  customerName: careSample.customerName,
  items: [
    { what: 'Longbow, 66", serial 118', about: 'unstrung' },
    { what: 'string, 14 strand', about: 'laid back 2026-03-02' },
    { what: 'bow sock', about: 'came with the bow' },
    { what: 'Paper: care card', about: '2026-03-02' },
  ],
  cautions: [
    'Look the bow over before you string it, and let it reach the temperature of the room first.',
    'Keep box and packing until you have looked at everything: a carrier asks for them after damage. Photograph damage at once.',
  ],
};

export const packingShortest: PackingListData = {
  ...packingSample,
  shop: careShortest.shop,
  customerName: '',
  items: [{ what: 'Bow, not identified', about: 'unstrung' }],
};

export const packingLong: PackingListData = {
  ...packingSample,
  customerName: careLong.customerName,
  items: Array.from({ length: 60 }, (_, i) => ({
    what: `belonging number ${i + 1}: leather quiver with a broken strap and a name burnt in`,
    about: 'laid back 2026-03-02',
  })),
};
