import { describe, expect, it } from 'vitest';
import { errorsUnder } from '../../renderer/parts/field-errors.ts';
import { inputErrors } from '../../renderer/parts/input-schema.ts';
import { weightsLine } from '../../renderer/parts/weights-line.ts';
import { bowErrors, emptyBow } from '../../renderer/screens/bows/bow-fields.ts';
import { customerErrors, emptyCustomer } from '../../renderer/screens/customers/customer-form.tsx';
import { initialsOf } from '../../renderer/screens/start-up/initials-of.ts';
import { contract } from '../../shared/contract/index.ts';

describe('errors beside their fields', () => {
  it('asks for a name and nothing else of a customer', () => {
    expect(customerErrors(emptyCustomer)).toEqual({ name: 'This may not be empty.' });
    expect(customerErrors({ ...emptyCustomer, name: 'Hale' })).toEqual({});
  });

  it('names the field inside a group', () => {
    const address = { ...emptyCustomer.address, postalCode: 'x'.repeat(21) };
    const errors = customerErrors({ ...emptyCustomer, name: 'Hale', address });
    expect(errorsUnder(errors, 'address')).toEqual({ postalCode: 'At most 20 characters.' });
  });

  it('gives limits of a bow in plain words', () => {
    expect(bowErrors(emptyBow)).toEqual({});
    const wrong = { ...emptyBow, amoLengthIn: 30, markedWeightLbf: Number.NaN, maxSafeDrawIn: 41 };
    expect(bowErrors(wrong)).toEqual({
      amoLengthIn: 'An AMO length is between 36 and 84 inches.',
      markedWeightLbf: 'Give a number.',
      maxSafeDrawIn: 'A safe draw is between 5 and 40 inches.',
    });
  });

  it('checks a command by its own input', () => {
    const check = { scaleId: 'scale-1', lowLoadLbf: 20, lowReadingLbf: 20.1, highLoadLbf: null };
    expect(inputErrors(contract.scales.check, check)).toEqual({
      highLoadLbf: 'Give a number.',
      highReadingLbf: 'Give a number.',
    });
  });
});

describe('weights in one line', () => {
  it('tells arrival, now and target at their draw', () => {
    const story = { arrivalLbf: 52, nowLbf: 47.8, targetLbf: 45, drawIn: 28 };
    expect(weightsLine(story)).toBe('52# → now 47.8# → 45# @ 28"');
    expect(weightsLine({ ...story, nowLbf: 52 })).toBe('52# → 45# @ 28"');
    expect(weightsLine({ ...story, targetLbf: null })).toBe('52# → now 47.8# @ 28"');
    expect(weightsLine({ ...story, arrivalLbf: null, nowLbf: null })).toBe('45# @ 28"');
  });

  it('is empty when nothing is known', () => {
    expect(weightsLine({ arrivalLbf: null, nowLbf: null, targetLbf: null, drawIn: 28 })).toBe('');
  });
});

it('takes initials from up to four words', () => {
  expect(initialsOf(' Nell  Varga ')).toBe('NV');
  expect(initialsOf('a b c d e')).toBe('ABCD');
  expect(initialsOf('')).toBe('');
});
