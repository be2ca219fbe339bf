import { describe, expect, test } from 'vitest';
import {
  type EdgePoint,
  type HalfWidths,
  type TemplateLimb,
  type TemplateStation,
  templateOffsets,
  templateSides,
  turnedOver,
} from '../../../core/limb/template.ts';
import { seededRandom } from '../../support/random.ts';

const both = (left: number, right = left): HalfWidths => ({ left, right });

/** An upper limb whose string line lies a thirty-second to the left of half its width. */
const upper: TemplateLimb = {
  limb: 'upper',
  face: 'back',
  stations: [
    { fromFadeIn: 0, presentIn: both(0.71875, 0.78125), newIn: both(0.71875, 0.78125) },
    { fromFadeIn: 1, presentIn: both(0.70875, 0.77125), newIn: both(0.70875, 0.77125) },
    { fromFadeIn: 3.1, presentIn: both(0.6875, 0.75), newIn: both(0.640625, 0.6875) },
    { fromFadeIn: 9, presentIn: both(0.59, 0.65), newIn: both(0.54, 0.59) },
    { fromFadeIn: 15, presentIn: both(0.47, 0.53), newIn: both(0.44, 0.5) },
    { fromFadeIn: 21.3, presentIn: both(0.25, 0.28), newIn: both(0.25, 0.28) },
  ],
};

/** Random cuts inside random limbs, straight, bellied and waisted, blended out at the fade. */
function randomLimb(seed: number): TemplateLimb {
  const random = seededRandom(seed);
  let fromFadeIn = -1;
  const stations = Array.from({ length: 3 + Math.floor(random() * 8) }, (_, i) => {
    fromFadeIn += i === 0 ? 1 : 2 + random() * 4;
    const side = () => {
      const present = 0.3 + random() * 0.6;
      const uncut = i === 0 || random() < 0.5;
      return { present, next: uncut ? present : present * (0.8 + 0.2 * random()) };
    };
    const [left, right] = [side(), side()];
    return {
      fromFadeIn,
      presentIn: both(left.present, right.present),
      newIn: both(left.next, right.next),
    };
  });
  return { limb: 'lower', face: 'belly', stations };
}

const between = (x: number, a: number, b: number) =>
  x >= Math.min(a, b) - 1e-12 && x <= Math.max(a, b) + 1e-12;

describe('at the stations', () => {
  test('the outline is the input to 1e-12', () => {
    const limbs = [upper, ...Array.from({ length: 100 }, (_, i) => randomLimb(i + 1))];
    for (const limb of limbs) {
      const { outline } = templateOffsets(limb);
      for (const station of limb.stations) {
        const point = outline.find((one) => one.fromFadeIn === station.fromFadeIn);
        for (const side of templateSides) {
          const [present, next] = [station.presentIn[side], station.newIn[side]];
          expect(Math.abs((point?.[side].presentIn ?? 0) - present)).toBeLessThan(1e-12);
          expect(Math.abs((point?.[side].newIn ?? 0) - next)).toBeLessThan(1e-12);
          expect(Math.abs((point?.[side].offIn ?? 9) - (present - next))).toBeLessThan(1e-12);
        }
      }
    }
  });

  test('figures are written in decimals and to the nearest 64th', () => {
    const { stations } = templateOffsets(upper);
    expect(stations[2]).toMatchObject({
      fromFadeIn: 3.1,
      left: {
        present: { valueIn: 0.6875, decimalText: '0.688', fractionText: '11/16' },
        new: { valueIn: 0.640625, decimalText: '0.641', fractionText: '41/64' },
        off: { valueIn: 0.046875, decimalText: '0.047', fractionText: '3/64' },
      },
      right: { off: { valueIn: 0.0625, fractionText: '1/16' } },
      presentWidth: { valueIn: 1.4375, fractionText: '1 7/16' },
      newWidth: { valueIn: 1.328125, fractionText: '1 21/64' },
      offTotal: { valueIn: 0.109375, decimalText: '0.109', fractionText: '7/64' },
    });
    expect(stations[0]?.offTotal).toEqual({ valueIn: 0, decimalText: '0', fractionText: '0' });
    // Without binary dust: 0.65 - 0.59 is 0.06.
    expect(stations[3]?.right.off.valueIn).toBe(0.06);
  });
});

describe('between the stations', () => {
  test('a point every 1/8 in, or as asked, from the first station to the last', () => {
    const gaps = (everyIn?: number) => {
      const options = everyIn === undefined ? {} : { everyIn };
      const at = templateOffsets(upper, options).outline.map((point) => point.fromFadeIn);
      expect([at[0], at.at(-1)]).toEqual([0, 21.3]);
      return at.slice(1).map((x, i) => x - (at[i] ?? 0));
    };
    expect(Math.max(...gaps())).toBe(1 / 8);
    expect(Math.min(...gaps())).toBeGreaterThan(1e-6);
    expect(Math.max(...gaps(1))).toBe(1);
    expect(gaps()).toHaveLength(170 + 2);
  });

  test('a step that meets a station up to rounding is that station', () => {
    // 3 x 0.3 falls a hair short of 0.9.
    const places = [0, 0.9, 3.3, 9, 15, 21.3];
    const stations = upper.stations.map((one, i) => ({ ...one, fromFadeIn: places[i] ?? 0 }));
    const { outline } = templateOffsets({ ...upper, stations }, { everyIn: 0.3 });
    expect(outline).toHaveLength(72);
    expect(outline.map((point) => point.fromFadeIn)).toEqual(expect.arrayContaining(places));
  });

  test('every edge keeps between its stations and runs one way; nothing is added', () => {
    for (let seed = 1; seed <= 300; seed += 1) {
      const limb = randomLimb(seed);
      const { outline } = templateOffsets(limb);
      for (const [i, to] of limb.stations.entries()) {
        const from = limb.stations[i - 1];
        if (from === undefined) continue;
        const stretch = outline.filter((one) =>
          between(one.fromFadeIn, from.fromFadeIn, to.fromFadeIn),
        );
        for (const side of templateSides) {
          for (const edge of ['presentIn', 'newIn'] as const) {
            const values = stretch.map((point) => point[side][edge]);
            const rise = Math.sign(to[edge][side] - from[edge][side]);
            const back = values.slice(1).map((value, k) => rise * (value - (values[k] ?? 0)));
            expect(Math.min(...back), `seed ${seed}`).toBeGreaterThan(-1e-12);
            const inside = values.every((value) =>
              between(value, from[edge][side], to[edge][side]),
            );
            expect(inside, `seed ${seed}`).toBe(true);
          }
          const least = Math.min(...stretch.map((point) => point[side].offIn));
          expect(least, `seed ${seed}`).toBeGreaterThanOrEqual(0);
          const uncut = [from, to].every((one) => one.presentIn[side] === one.newIn[side]);
          const most = Math.max(...stretch.map((point) => point[side].offIn));
          if (uncut) expect(most, `seed ${seed}`).toBe(0);
        }
      }
    }
  });

  test('nothing comes off between two uncut stations', () => {
    const { outline } = templateOffsets(upper);
    const blended = outline.filter((point) => point.fromFadeIn <= 1);
    expect(blended).toHaveLength(9);
    for (const point of blended) expect(point.offTotalIn).toBe(0);
    const cut = outline.filter((point) => point.fromFadeIn > 1.2 && point.fromFadeIn < 21);
    for (const point of cut) expect(point.offTotalIn).toBeGreaterThan(0);
  });
});

describe('sides', () => {
  test('a limb even about its string line has even outlines', () => {
    const stations = upper.stations.map(({ fromFadeIn, presentIn, newIn }) => ({
      fromFadeIn,
      presentIn: both(presentIn.left),
      newIn: both(newIn.left),
    }));
    const template = templateOffsets({ ...upper, stations });
    for (const { left, right } of template.outline) expect(left).toEqual(right);
    for (const { left, right } of template.stations) expect(left).toEqual(right);
  });

  test('turned over, left and right change places and nothing else', () => {
    const pair = (left: EdgePoint, right: EdgePoint) => ({ left, right });
    const [back, belly] = [templateOffsets(upper), templateOffsets(turnedOver(upper))];
    expect([back.face, belly.face]).toEqual(['back', 'belly']);
    expect(belly.outline.map(({ left, right }) => pair(right, left))).toEqual(
      back.outline.map(({ left, right }) => pair(left, right)),
    );
    expect(belly.outline.map((point) => point.offTotalIn)).toEqual(
      back.outline.map((point) => point.offTotalIn),
    );
    expect(turnedOver(turnedOver(upper))).toEqual(upper);
  });
});

describe('what cannot be is said by name', () => {
  const change = (index: number, by: Partial<TemplateStation>): TemplateLimb => ({
    ...upper,
    stations: upper.stations.map((one, i) => (i === index ? { ...one, ...by } : one)),
  });

  test.each<[string, TemplateLimb, string]>([
    ['one station', { ...upper, stations: upper.stations.slice(0, 1) }, 'two stations at least'],
    ['out of order', change(2, { fromFadeIn: 10 }), 'out of order: 9" from the fade follows 10"'],
    ['twice the same', change(2, { fromFadeIn: 1 }), 'out of order'],
    ['before the fade', change(0, { fromFadeIn: -0.5 }), 'must lie between 0 and 60 in'],
    ['no place', change(0, { fromFadeIn: Number.NaN }), 'must lie between 0 and 60 in'],
    ['past any limb', change(5, { fromFadeIn: 61 }), 'must lie between 0 and 60 in'],
    ['zero width', change(3, { newIn: both(0.54, 0) }), 'right side, 9" from the fade: both half'],
    ['negative width', change(3, { presentIn: both(-0.6, 0.65) }), 'left side, 9" from the fade'],
    ['not a width', change(3, { newIn: both(Number.NaN, 0.59) }), 'must be over 0 in'],
    ['wider than it is', change(3, { newIn: both(0.591, 0.59) }), 'narrowing cannot add width'],
    [
      'a step at the fade',
      change(0, { newIn: both(0.6875, 0.78125) }),
      '0.031" off the left side of the upper limb 0" from the fade leaves a step',
    ],
    [
      'a step 1 in from the fade',
      change(1, { newIn: both(0.70875, 0.73125) }),
      '0.04" off the right side of the upper limb 1" from the fade leaves a step',
    ],
    [
      'an outline that begins in the cut',
      { ...upper, stations: upper.stations.slice(2) },
      '3.1" from the fade leaves a step: let the cut run out to 0.016" or less there',
    ],
  ])('%s', (_, limb, sentence) => {
    expect(() => templateOffsets(limb)).toThrow(
      expect.objectContaining({ code: 'BAD_INPUT', message: expect.stringContaining(sentence) }),
    );
  });

  test('a step as large as stated passes, at the fade or at the stated distance', () => {
    const step = change(1, { newIn: both(0.70875 - 1 / 64, 0.77125) });
    expect(templateOffsets(step).stations[1]?.left.off.fractionText).toBe('1/64');
    expect(() => templateOffsets(step, { largestStepIn: 0.01 })).toThrow('leaves a step');
    const deep = change(1, { newIn: both(0.66, 0.77125) });
    expect(() => templateOffsets(deep)).toThrow('leaves a step');
    expect(templateOffsets(deep, { blendIn: 1 }).stations).toHaveLength(6);
    expect(() => templateOffsets(upper, { blendIn: 4 })).toThrow('3.1" from the fade');
  });

  test.each([
    [{ everyIn: 0 }, 'every 1/64 to 2 in'],
    [{ everyIn: Number.NaN }, 'every 1/64 to 2 in'],
    [{ blendIn: -1 }, 'blend out'],
    [{ largestStepIn: Number.NaN }, 'step at the fade'],
  ])('options %j', (options, sentence) => {
    expect(() => templateOffsets(upper, options)).toThrow(sentence);
  });
});
