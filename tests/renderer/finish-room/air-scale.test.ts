import { describe, expect, it } from 'vitest';
import { type AirFacts, airScale } from '../../../renderer/screens/finish-room/air-scale.ts';

const facts: AirFacts = {
  airF: 70,
  surfaceF: 68,
  dewPointF: 50,
  leastMarginF: 5.4,
  limitsF: { from: 60, to: 90 },
};

const placeOf = (scale: ReturnType<typeof airScale>, kind: string) =>
  scale?.marks.find((mark) => mark.kind === kind);

describe('the air on one scale', () => {
  it('keeps the order of the temperatures from left to right', () => {
    const scale = airScale(facts);
    const dew = placeOf(scale, 'dew');
    const close = placeOf(scale, 'too-close');
    const limits = placeOf(scale, 'limits');
    const air = placeOf(scale, 'air');
    const surface = placeOf(scale, 'surface');
    expect(dew?.at).toBe(0);
    expect(close?.at).toBe(dew?.to);
    const places = [dew?.to, close?.to, limits?.at, surface?.at, air?.at, limits?.to];
    expect(places).toEqual([...places].sort((a, b) => (a ?? 0) - (b ?? 0)));
    expect(new Set(places).size).toBe(6);
  });

  it('draws the margin as wide as it is: 5.4 of the 50 degrees shown', () => {
    const close = placeOf(airScale(facts), 'too-close');
    expect((close?.to ?? 0) - (close?.at ?? 0)).toBeCloseTo(5.4 / 50, 10);
  });

  it('shows what is known and leaves out the rest', () => {
    const scale = airScale({ ...facts, surfaceF: null, dewPointF: null, limitsF: null });
    expect(scale?.marks.map(({ kind }) => kind)).toEqual(['air']);
    expect(placeOf(scale, 'air')?.at).toBeCloseTo(0.5, 10);
    const nothing = { airF: null, surfaceF: null, dewPointF: null, limitsF: null };
    expect(airScale({ ...nothing, leastMarginF: 5.4 })).toBeNull();
  });

  it('takes no place for a number that is no number', () => {
    const scale = airScale({ ...facts, airF: Number.NaN });
    expect(placeOf(scale, 'air')).toBeUndefined();
    expect(scale?.marks.every(({ at }) => Number.isFinite(at))).toBe(true);
  });

  it('puts its ticks on tens inside the scale', () => {
    const scale = airScale(facts);
    expect(scale?.ticks.map(({ text }) => text)).toEqual(['50', '60', '70', '80', '90']);
    expect(scale?.ticks.every(({ at }) => at >= 0 && at <= 1)).toBe(true);
  });
});
