import { describe, expect, it } from 'vitest';
import { type KeyAct, KeyReader } from '../../../renderer/screens/bench-view/key-reader.ts';
import { orderNumberIn } from '../../../renderer/screens/bench-view/order-number.ts';

/** Presses keys with a pause between them and answers what the last one asked for. */
function press(reader: KeyReader, keys: readonly string[], gapMs: number, fromMs = 1000): KeyAct {
  let last: KeyAct = { act: 'none' };
  keys.forEach((key, index) => {
    last = reader.press(key, fromMs + index * gapMs);
  });
  return last;
}

describe('keys by hand', () => {
  it('build up a number that Enter confirms', () => {
    const reader = new KeyReader();
    expect(press(reader, [...'47.8'], 200)).toEqual({ act: 'text', text: '47.8' });
    expect(reader.press('Enter', 3000)).toEqual({ act: 'enter', burst: null, text: '47.8' });
    expect(reader.text).toBe('');
  });

  it('are rubbed out one at a time, then go back', () => {
    const reader = new KeyReader();
    press(reader, ['4', '7'], 200);
    expect(reader.press('Backspace', 2000)).toEqual({ act: 'text', text: '4' });
    expect(reader.press('Backspace', 2300)).toEqual({ act: 'text', text: '' });
    expect(reader.press('Backspace', 2600)).toEqual({ act: 'undo' });
  });

  it('step up and down, and letters mean nothing', () => {
    const reader = new KeyReader();
    expect(reader.press('+', 1000)).toEqual({ act: 'step', by: 1 });
    expect(reader.press('-', 1300)).toEqual({ act: 'step', by: -1 });
    expect(reader.press('g', 1600)).toEqual({ act: 'none' });
    expect(reader.press('Enter', 1900)).toEqual({ act: 'enter', burst: null, text: '' });
  });
});

it('takes the quick last keys of a number with the slow first ones', () => {
  const reader = new KeyReader();
  press(reader, [...'45'], 200);
  expect(press(reader, [...'.08', 'Enter'], 6, 1300)).toEqual({
    act: 'enter',
    burst: null,
    text: '45.08',
  });
});

describe('a device', () => {
  it('stands for itself, with its unit, and drops what was keyed in before', () => {
    const reader = new KeyReader();
    press(reader, ['4', '7'], 200);
    expect(press(reader, [...'30.96 mm', 'Enter'], 6, 5000)).toMatchObject({
      act: 'enter',
      burst: '30.96 mm',
    });
  });

  it('may be short, and may send a minus in its middle', () => {
    expect(press(new KeyReader(), [...'.9', 'Enter'], 6)).toMatchObject({ burst: '.9' });
    expect(press(new KeyReader(), [...'26-0147', 'Enter'], 6)).toMatchObject({ burst: '26-0147' });
  });

  it('is never a finger on the pad, however quick', () => {
    const reader = new KeyReader();
    for (const key of '47.8') reader.tap(key);
    expect(reader.tap('Enter')).toEqual({ act: 'enter', burst: null, text: '47.8' });
    expect(reader.tap('-')).toEqual({ act: 'step', by: -1 });
    expect(press(reader, [...'1.219', 'Enter'], 6)).toMatchObject({ burst: '1.219' });
  });

  it('cannot fill the field without end', () => {
    const reader = new KeyReader();
    press(reader, [...'9'.repeat(500)], 6);
    expect(reader.text.length).toBe(40);
  });
});

it('knows the number of an order from a measure', () => {
  expect(orderNumberIn('26-0147')).toBe('26-0147');
  expect(orderNumberIn(' 26-0147 ')).toBe('26-0147');
  for (const text of ['1.219', '47.8 lb', '26-014', 'x26-0147']) {
    expect(orderNumberIn(text)).toBeNull();
  }
});
