import { decimal } from '../../../shared/measure.ts';

export type Quantity = 'inches' | 'thou' | 'pounds' | 'degrees-f';

export interface Wanted {
  quantity: Quantity;
  /** What is plausible here, in the unit of the quantity. */
  min: number;
  max: number;
  /** What is asked for: `width`, `pull`. */
  name: string;
}

export type DeviceReading = { ok: true; value: number } | { ok: false; sentence: string };

/** Exact by definition: 25.4 mm to the inch, 0.45359237 kg to the pound, 4.4482216152605 N to the pound-force. */
const perUnit: Record<Quantity, Record<string, number>> = {
  inches: { '': 1, in: 1, inch: 1, '"': 1, mm: 1 / 25.4, cm: 1 / 2.54, thou: 1e-3, mil: 1e-3 },
  thou: { '': 1, thou: 1, mil: 1, in: 1000, inch: 1000, '"': 1000, mm: 1000 / 25.4 },
  pounds: {
    '': 1,
    lb: 1,
    lbs: 1,
    lbf: 1,
    '#': 1,
    kg: 1 / 0.45359237,
    kgf: 1 / 0.45359237,
    n: 1 / 4.4482216152605,
  },
  'degrees-f': { '': 1, f: 1, '°f': 1 },
};

export const unitText: Record<Quantity, string> = {
  inches: 'in',
  thou: 'thou',
  pounds: 'lb',
  'degrees-f': '°F',
};

/** Decimals that are kept of a reading, by quantity. */
export const digitsOf: Record<Quantity, number> = { inches: 4, thou: 1, pounds: 2, 'degrees-f': 0 };

const form = /^([+-]?)\s*(\d+(?:[.,]\d+)?|[.,]\d+)\s*([a-z"#°]*)$/i;
const kindWords: Record<Quantity, readonly [kind: string, unit: string]> = {
  inches: ['a length', 'inches'],
  thou: ['a thickness', 'thousandths of an inch'],
  pounds: ['a weight', 'pounds'],
  'degrees-f': ['a temperature', 'degrees Fahrenheit'],
};

/**
 * Reads what a calliper, a scale or a hand sent, ended by Enter: `1.219`, `1.219 in`, `30.96 mm`,
 * `47.8 lb`, `21.7 kg`. Without a unit it is taken in the unit that the field asks for.
 */
export function readDevice(text: string, wanted: Wanted): DeviceReading {
  const shown = text.trim().slice(0, 30);
  const match = form.exec(shown);
  if (match === null) return refuse(`"${shown}" is no number. Measure again, or key it in.`);
  const [, sign = '', digits = '', unit = ''] = match;
  const factor = perUnit[wanted.quantity][unit.toLowerCase()];
  if (factor === undefined) {
    const [kind, unitWords] = kindWords[wanted.quantity];
    return refuse(`"${shown}" is not ${kind}. Give the ${wanted.name} in ${unitWords}.`);
  }
  const size = Number(digits.replace(',', '.')) * factor;
  const value = Number((sign === '-' ? -size : size).toFixed(digitsOf[wanted.quantity]));
  if (value < wanted.min || value > wanted.max) return refuse(outside(value, wanted));
  return { ok: true, value };
}

const refuse = (sentence: string): DeviceReading => ({ ok: false, sentence });

function outside(value: number, { quantity, min, max, name }: Wanted): string {
  const digits = digitsOf[quantity];
  const [unit, low, high] = [unitText[quantity], decimal(min, digits), decimal(max, digits)];
  return `${decimal(value, digits)} ${unit} cannot be the ${name}: it lies between ${low} and ${high} ${unit}.`;
}
