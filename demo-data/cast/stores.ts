import { blankConsumable, type ConsumableFields } from '../../shared/contract/stores.ts';
import type { GritScale } from '../../shared/grit.ts';

/** One delivery: working days before today that it came, and days from today that it expires. */
export interface DemoLot {
  number: string;
  daysAgo: number;
  expiresIn: number | null;
  quantity: number;
  containers?: number;
  /** What a container cost. */
  cents?: number;
  /** Working days before today that it was opened. */
  openedDaysAgo?: number;
}

export interface DemoConsumable {
  fields: ConsumableFields;
  lots: readonly DemoLot[];
  /** What is taken in a usual week, in the counted unit. */
  weekly?: number;
  onOrder?: number;
}

function abrasive(
  grit: number,
  scale: GritScale,
  change: Partial<ConsumableFields>,
): ConsumableFields {
  return {
    ...blankConsumable,
    category: 'abrasive',
    unit: 'sheet',
    grit: { grit, scale },
    shelf: 'Sanding rack',
    waitWeeks: 1,
    orderQuantity: 50,
    hazards: ['sanding-dust'],
    ...change,
  };
}

const papers: Record<string, DemoConsumable> = {
  p120: {
    fields: abrasive(120, 'P', { name: 'Sheets for wood, coarse', weeklyUse: 3 }),
    lots: [{ number: '', daysAgo: 70, expiresIn: null, quantity: 100, cents: 6200 }],
    weekly: 3,
  },
  p180: {
    fields: abrasive(180, 'P', { name: 'Sheets for wood, medium', weeklyUse: 5 }),
    lots: [{ number: '', daysAgo: 70, expiresIn: null, quantity: 60, cents: 3700 }],
    weekly: 4,
  },
  p240: {
    fields: abrasive(240, 'P', { name: 'Sheets for glass, first', weeklyUse: 4 }),
    lots: [{ number: '', daysAgo: 70, expiresIn: null, quantity: 100, cents: 6800 }],
    weekly: 3,
  },
  p320: {
    fields: abrasive(320, 'P', { name: 'Sheets for glass, last', weeklyUse: 6 }),
    lots: [
      { number: '', daysAgo: 70, expiresIn: null, quantity: 50, cents: 3550 },
      { number: '', daysAgo: 30, expiresIn: null, quantity: 50, cents: 3700 },
    ],
    weekly: 5,
  },
  cami400: {
    fields: abrasive(400, 'CAMI', {
      name: 'Wet sheets, between coats',
      weeklyUse: 2,
      waitWeeks: 3,
    }),
    lots: [{ number: '', daysAgo: 70, expiresIn: null, quantity: 50, cents: 4250 }],
    weekly: 2,
  },
  p600: {
    fields: abrasive(600, 'P', { name: 'Wet sheets, first rub', weeklyUse: 1, orderQuantity: 25 }),
    lots: [{ number: '', daysAgo: 70, expiresIn: null, quantity: 25, cents: 2100 }],
    weekly: 1,
  },
  disc150: {
    fields: abrasive(150, 'P', { name: '5 in discs for risers', unit: 'disc', weeklyUse: 2 }),
    lots: [{ number: '', daysAgo: 55, expiresIn: null, quantity: 50, cents: 2750 }],
    weekly: 2,
  },
};

const finishes: Record<string, DemoConsumable> = {
  resin: {
    fields: {
      ...blankConsumable,
      name: 'Clear two-part finish, resin',
      category: 'finish',
      unit: 'mL',
      shelf: 'Cabinet, upper board',
      weeklyUse: 90,
      waitWeeks: 2,
      waitWeeksSpread: 0.5,
      orderQuantity: 946,
      hazards: ['flammable-solvent'],
    },
    lots: [
      { number: 'R-2115', daysAgo: 91, expiresIn: 100, quantity: 473, cents: 2600 },
      { number: 'R-2231', daysAgo: 68, expiresIn: 160, quantity: 946, cents: 4750 },
      { number: 'R-2307', daysAgo: 20, expiresIn: 330, quantity: 946, cents: 4750 },
    ],
    weekly: 70,
  },
  hardener: {
    fields: {
      ...blankConsumable,
      name: 'Clear two-part finish, hardener',
      category: 'hardener',
      unit: 'mL',
      shelf: 'Cabinet, upper board',
      weeklyUse: 30,
      waitWeeks: 2,
      waitWeeksSpread: 0.5,
      orderQuantity: 237,
      openedDays: 120,
      hazards: ['isocyanate', 'flammable-solvent'],
      note: 'Close the can at once: it draws moisture.',
    },
    lots: [
      { number: 'H-0803', daysAgo: 91, expiresIn: -40, quantity: 118, cents: 1700 },
      { number: 'H-0917', daysAgo: 68, expiresIn: -12, quantity: 350, cents: 3850 },
      {
        number: 'H-1106',
        daysAgo: 20,
        expiresIn: 150,
        quantity: 237,
        cents: 2850,
        openedDaysAgo: 6,
      },
    ],
    weekly: 20,
  },
  thinner: {
    fields: {
      ...blankConsumable,
      name: 'Thinner for the clear finish',
      category: 'thinner',
      unit: 'mL',
      shelf: 'Cabinet, lower board',
      weeklyUse: 40,
      waitWeeks: 2,
      orderQuantity: 946,
      hazards: ['flammable-solvent'],
    },
    lots: [{ number: 'T-88', daysAgo: 91, expiresIn: 400, quantity: 946, cents: 2850 }],
    weekly: 35,
  },
  oil: {
    fields: {
      ...blankConsumable,
      name: 'Rubbing oil',
      category: 'finish',
      unit: 'mL',
      shelf: 'Cabinet, lower board',
      waitWeeks: 2,
      openedDays: 365,
      hazards: ['self-heating-rags', 'flammable-solvent'],
    },
    lots: [
      {
        number: 'K-14',
        daysAgo: 60,
        expiresIn: 20,
        quantity: 473,
        cents: 2850,
        openedDaysAgo: 50,
      },
    ],
    weekly: 15,
  },
  acetone: {
    fields: {
      ...blankConsumable,
      name: 'Acetone',
      category: 'solvent',
      unit: 'fl oz',
      shelf: 'Solvent can, by the door',
      weeklyUse: 5,
      waitWeeks: 1,
      orderQuantity: 128,
      hazards: ['flammable-solvent'],
    },
    lots: [{ number: '', daysAgo: 66, expiresIn: null, quantity: 128, cents: 2800 }],
    weekly: 5.5,
    onOrder: 0,
  },
};

const others: Record<string, DemoConsumable> = {
  ink: {
    fields: {
      ...blankConsumable,
      name: 'Lettering pen, black',
      category: 'ink',
      shelf: 'Lettering drawer',
    },
    lots: [{ number: '', daysAgo: 50, expiresIn: null, quantity: 4, cents: 1500 }],
  },
  serving: {
    fields: {
      ...blankConsumable,
      name: 'Serving thread, spool',
      category: 'string',
      shelf: 'String board',
      weeklyUse: 0.5,
      waitWeeks: 2,
      orderQuantity: 4,
    },
    lots: [{ number: '', daysAgo: 64, expiresIn: null, quantity: 3, cents: 2800 }],
    onOrder: 4,
  },
  horn: {
    fields: {
      ...blankConsumable,
      name: 'Black tip overlays, pair',
      category: 'overlay',
      shelf: 'Drawer 3',
    },
    lots: [{ number: '', daysAgo: 64, expiresIn: null, quantity: 8, cents: 5200 }],
  },
};

/** A little shelf: both scales of grit, two lots of a two-part finish, one of them expired. */
export const demoStores = { ...papers, ...finishes, ...others };
