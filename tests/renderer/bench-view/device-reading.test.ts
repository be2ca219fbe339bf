import { describe, expect, it } from 'vitest';
import { readDevice, type Wanted } from '../../../renderer/screens/bench-view/device-reading.ts';

const width: Wanted = { quantity: 'inches', min: 0.1, max: 4, name: 'width' };
const pull: Wanted = { quantity: 'pounds', min: 5, max: 150, name: 'pull' };
const glass: Wanted = { quantity: 'thou', min: 5, max: 120, name: 'thickness' };

describe('a calliper', () => {
  it.each([
    ['1.219', 1.219],
    ['1.219 in', 1.219],
    ['1.219"', 1.219],
    ['+01.219in', 1.219],
    ['30.96 mm', 1.2189],
    ['30,96mm', 1.2189],
    ['3.096 cm', 1.2189],
    ['  1.2190 IN ', 1.219],
    ['.875', 0.875],
  ])('reads %s', (text, value) => {
    expect(readDevice(text, width)).toEqual({ ok: true, value });
  });

  it('is read in thousandths where a thickness is asked for', () => {
    expect(readDevice('41.5', glass)).toEqual({ ok: true, value: 41.5 });
    expect(readDevice('0.0415 in', glass)).toEqual({ ok: true, value: 41.5 });
    expect(readDevice('1.054 mm', glass)).toEqual({ ok: true, value: 41.5 });
  });
});

describe('a scale', () => {
  it.each([
    ['47.8', 47.8],
    ['47.8 lb', 47.8],
    ['47.8lbs', 47.8],
    ['47.8#', 47.8],
    ['21.7 kg', 47.84],
    ['21,7 kgf', 47.84],
    ['212.6 N', 47.79],
  ])('reads %s', (text, value) => {
    expect(readDevice(text, pull)).toEqual({ ok: true, value });
  });
});

describe('what does not belong', () => {
  it.each(['', 'Err', '1.2.3', '47.8 lb 12', '--5', '1e3', '26-0147', 'lb'])(
    'refuses %j',
    (text) => {
      const read = readDevice(text, width);
      expect(read).toMatchObject({ ok: false });
      if (!read.ok) expect(read.sentence).toContain('no number');
    },
  );

  it('refuses a weight where a width is asked for, and names the unit it wants', () => {
    expect(readDevice('47.8 lb', width)).toEqual({
      ok: false,
      sentence: '"47.8 lb" is not a length. Give the width in inches.',
    });
    expect(readDevice('1.219 in', pull)).toMatchObject({ ok: false });
  });

  it('refuses what is out of all proportion, with the limits', () => {
    expect(readDevice('478', pull)).toEqual({
      ok: false,
      sentence: '478 lb cannot be the pull: it lies between 5 and 150 lb.',
    });
    expect(readDevice('-1.2', width)).toMatchObject({ ok: false });
  });

  it('shows no more than the beginning of a long burst', () => {
    const read = readDevice('x'.repeat(500), width);
    expect(read.ok ? '' : read.sentence.length).toBeLessThan(100);
  });
});
