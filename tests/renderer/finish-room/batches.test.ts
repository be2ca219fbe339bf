import { describe, expect, it } from 'vitest';
import { inputErrors } from '../../../renderer/parts/input-schema.ts';
import {
  batchState,
  batchWords,
  pouredText,
} from '../../../renderer/screens/finish-room/batch-words.ts';
import {
  bowsFor,
  isAmountGiven,
  mixable,
  mixInput,
  newMix,
  usualSystem,
} from '../../../renderer/screens/finish-room/mix-fields.ts';
import {
  fluidOunceText,
  lifeText,
  mlText,
  pickText,
  reckonedText,
} from '../../../renderer/screens/finish-room/mix-words.ts';
import { contract } from '../../../shared/contract/index.ts';
import { at, batch, bow, noon, room, system } from './rows.ts';

const minutes = (count: number) => count * 60_000;

describe('a batch and its clock', () => {
  it('goes from standing over usable to past by time alone', () => {
    const cup = batch();
    expect(batchState(cup, Date.parse(at(-16)))).toBe('standing');
    expect(batchState(cup, Date.parse(at(-15)))).toBe('usable');
    expect(batchState(cup, Date.parse(at(90)) - 1)).toBe('usable');
    expect(batchState(cup, Date.parse(at(90)))).toBe('past');
    expect(batchState({ ...cup, discardedAt: at(1) }, noon)).toBe('discarded');
  });

  it('says how long it may be used, and warns in the last quarter of an hour', () => {
    expect(batchWords(batch(), noon)).toEqual({ kind: 'done', text: 'Usable for 1 h 30 min.' });
    expect(batchWords(batch(), noon + minutes(75))).toEqual({
      kind: 'attention',
      text: 'Usable for 15 min 00 s.',
    });
  });

  it('forbids it once it is past', () => {
    const { kind, text } = batchWords(batch(), noon + minutes(91));
    expect(kind).toBe('stop');
    expect(text).toMatch(/^Pot life past since .*: do not use it\.$/);
  });

  it('tells what was weighed, and what was only poured', () => {
    expect(pouredText(batch())).toBe('41.2 g resin, 10.4 g hardener, 4 mL thinner');
  });
});

describe('what is mixed', () => {
  it('offers only what has a pot life and is in use', () => {
    const systems = [
      system({ id: 'hard' }),
      system({ id: 'old', active: false }),
      system({ id: 'can', kind: 'aerosol' }),
      system({ id: 'thin', kind: 'one-part' }),
    ];
    expect(mixable(systems).map(({ id }) => id)).toEqual(['hard']);
  });

  it('begins with the finish most bows wait for', () => {
    const systems = [system({ id: 'a' }), system({ id: 'b' })];
    const bows = [bow({ finishSystemId: 'b' }), bow({ finishSystemId: 'a', stage: 'cure' })];
    expect(usualSystem(room({ systems, bows }))).toBe('b');
    expect(bowsFor(bows, 'a')).toEqual([]);
    expect(usualSystem(room({ systems: [] }))).toBeNull();
  });

  it('takes the room for the temperature of the mix, and asks for nothing that is known', () => {
    const air = { airF: 68 } as NonNullable<Parameters<typeof newMix>[0]['air']>;
    const fields = newMix(room({ air, bows: [bow()] }), 'hard');
    expect(fields).toMatchObject({ way: 'bows', mixF: 68, coats: 1, wetMil: null });
    expect(isAmountGiven(fields)).toBe(false);
    const chosen = { ...fields, orderIds: ['o1'] };
    expect(isAmountGiven(chosen)).toBe(true);
    expect(inputErrors(contract.finish.mix, mixInput(chosen))).toEqual({});
  });

  it('asks for the amount where there is no bow', () => {
    const fields = newMix(room(), 'hard');
    expect(fields.way).toBe('volume');
    expect(inputErrors(contract.finish.mix, mixInput(fields))).toEqual({
      'wanted.ml': 'Give a number.',
      mixF: 'Give a number.',
    });
  });
});

describe('a mix in words', () => {
  it('writes volumes as they are poured, the ounce being the US one', () => {
    expect(mlText(36.04)).toBe('36 mL');
    expect(mlText(136.4)).toBe('136 mL');
    expect(mlText(null)).toBe('density missing');
    expect(fluidOunceText(59.147)).toBe('2 fl oz');
  });

  it('names each lot with its last day', () => {
    const pick = {
      part: 'hardener' as const,
      consumableId: 'c',
      lotId: 'l',
      lotNumber: 'H-31',
      expiresOn: '2031-03-03',
      quantity: 12.5,
      unit: 'mL',
    };
    expect(pickText(pick)).toBe('Hardener: lot H-31, 12.5 mL, to be used by 3 Mar 2031');
    expect(pickText({ ...pick, lotNumber: '', expiresOn: null })).toBe(
      'Hardener: lot without a number, 12.5 mL, no last day',
    );
  });

  it('never rounds the pot life up', () => {
    const plan = { usableFromMin: 15, usableUntilMin: 119.9 } as Parameters<typeof lifeText>[0];
    expect(lifeText(plan)).toBe('Usable until 1 h 59 min after mixing; let it stand 15 min first.');
    expect(lifeText({ ...plan, usableUntilMin: null })).toBe('');
  });

  it('says what the amount was reckoned from', () => {
    const plan = { areaIn2: 362.4, wetMil: 3, transferPercent: 30 } as Parameters<
      typeof reckonedText
    >[0];
    expect(reckonedText(plan)).toBe('362 square inches, 3 mil wet a coat, 30 % reaching the work.');
  });
});
