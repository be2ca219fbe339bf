import { describe, expect, it } from 'vitest';
import { airFrom } from '../../../renderer/screens/finish-room/air-fields.ts';
import { airWords, marginWords } from '../../../renderer/screens/finish-room/air-words.ts';
import { instantFrom } from '../../../renderer/screens/finish-room/when.ts';

const look = {
  dewPointF: 50,
  marginF: 5.39,
  leastMarginF: 5.4,
  limits: null,
  troubles: [],
};

describe('air in words', () => {
  it('rounds a margin down: too little never reads as enough', () => {
    expect(marginWords(look)).toBe(
      'The surface is 5.3 F (2.9 C) above the dew point; at least 5.4 F (3 C) is needed.',
    );
    expect(marginWords({ ...look, marginF: 5.4 })).toContain('5.4 F (3 C) above');
    expect(marginWords({ ...look, marginF: -2 })).toContain('2 F (1.1 C) under the dew point');
  });

  it('tells the drawing to who does not see it', () => {
    const air = { airF: 70, humidityPercent: 45.5, surfaceF: null };
    expect(airWords(air, look)).toBe('air 70 F (21.1 C), humidity 45.5 %, dew point 50 F (10 C)');
  });
});

describe('air as it is typed', () => {
  it('is asked about only when it is complete and possible', () => {
    const air = { airF: 70, humidityPercent: 45, surfaceF: null };
    expect(airFrom(air)).toEqual(air);
    expect(airFrom({ ...air, humidityPercent: null })).toBeNull();
    expect(airFrom({ ...air, humidityPercent: 0 })).toBeNull();
    expect(airFrom({ ...air, airF: Number.NaN })).toBeNull();
    expect(airFrom({ ...air, surfaceF: 900 })).toBeNull();
  });
});

it('reads a local time as an instant, and nothing as now', () => {
  expect(instantFrom('')).toBeNull();
  expect(instantFrom('2026-11-25T12:30')).toBe(new Date(2026, 10, 25, 12, 30).toISOString());
});
