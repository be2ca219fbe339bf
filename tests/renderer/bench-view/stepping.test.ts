import { expect, it } from 'vitest';
import {
  bothWays,
  stepped,
  stepText,
  valueText,
} from '../../../renderer/screens/bench-view/stepping.ts';

const limits = { min: 0, max: 100 };

it('steps without binary dust', () => {
  let value = 47.8;
  for (let i = 0; i < 12; i += 1) value = stepped(value, 0.1, limits);
  expect(value).toBe(49);
  for (let i = 0; i < 32; i += 1) value = stepped(value, -0.1, limits);
  expect(value).toBe(45.8);
});

it('lands on whole steps, from a calliper reading between them', () => {
  expect(stepped(1.22, 1 / 64, limits)).toBe(1.234375);
  expect(stepped(1.22, -1 / 64, limits)).toBe(1.21875);
  expect(stepped(1.21875, 1 / 64, limits)).toBe(1.234375);
  expect(stepped(47.84, 1, limits)).toBe(48);
  expect(stepped(47.84, -1, limits)).toBe(47);
});

it('goes through zero and stays within its limits', () => {
  const tiller = { min: -2, max: 2 };
  expect(stepped(0, -1 / 32, tiller)).toBe(-0.03125);
  expect(stepped(-0.03125, 1 / 32, tiller)).toBe(0);
  expect(stepped(2, 1 / 32, tiller)).toBe(2);
});

it('tells lengths both ways and steps as they are marked', () => {
  expect(bothWays(1.21875)).toBe('1.219 in (1 7/32")');
  expect(stepText(1 / 64, 'inches')).toBe('1/64 in');
  expect(stepText(0.1, 'pounds')).toBe('0.1 lb');
  expect(stepText(1, 'thou')).toBe('1 thou');
  expect(valueText(47.8, 'pounds')).toBe('47.8 lb');
  expect(valueText(7.25, 'inches')).toBe('7.25 in');
});
