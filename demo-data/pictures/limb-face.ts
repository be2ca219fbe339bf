import { between, type Seeded } from '../seeded.ts';
import { facingOf } from './at-hand.ts';
import type { BowLook } from './look.ts';
import { woods } from './materials.ts';
import {
  type Grain,
  grained,
  type Point,
  polyline,
  sampled,
  shadow,
  shape,
  smooth,
} from './svg.ts';

/** Face of a limb across the picture, as it lies belly up. */
function limbFace(fill: string, grain: Grain = 'wood'): { body: string; sheen: string } {
  const outline = polyline(
    [
      [-80, 250],
      [1300, 290],
      [1300, 620],
      [-80, 680],
    ],
    true,
  );
  return {
    body: shadow(outline, 10, 26, 14, 0.6) + grained(outline, fill, grain),
    sheen: shape(outline, 'fill="url(#sheen)" opacity="0.4"'),
  };
}

/** Fine lines across the belly of an all-wood limb, where its fibres are crushed. */
export function chrysals(look: BowLook, random: Seeded): string {
  const face = limbFace(woods[look.limb]);
  const lines = Array.from({ length: 17 }, () => {
    const x = between(random, 340, 820);
    const y = between(random, 330, 560);
    const tall = between(random, 26, 92);
    const wave = sampled(
      5,
      (share): Point => [x + between(random, -7, 7), y - tall / 2 + tall * share],
    );
    return (
      shape(
        smooth(wave.map(([a, b]): Point => [a + 4, b])),
        'fill="none" stroke="#f6e6bd" stroke-width="2.4" opacity="0.55"',
      ) + shape(smooth(wave), 'fill="none" stroke="#3a1e0c" stroke-width="2.8" opacity="0.85"')
    );
  }).join('');
  const ring = `<ellipse cx="590" cy="450" rx="330" ry="176" fill="none" stroke="#4a4a4a" stroke-width="4" opacity="0.6" stroke-dasharray="210 9"/>`;
  return face.body + lines + ring + face.sheen;
}

/** Hand lettering near the fade, too far off to read. */
export function markings(look: BowLook, random: Seeded): string {
  const dark = look.glass !== null && look.glass !== 'white' && look.glass !== 'clear';
  const face = limbFace(dark ? facingOf(look) : woods[look.limb], dark ? 'fine' : 'wood');
  const ink = dark ? '#e4dcc2' : '#251a12';
  const written = [0, 1, 2]
    .map((row) => {
      const letters: Point[] = [];
      const end = 830 - row * 70 - between(random, 0, 70);
      for (let x = 420 + between(random, 0, 20); x < end; x += between(random, 9, 17)) {
        const gap = random() < 0.16;
        letters.push([x + (gap ? 18 : 0), 380 + row * 74 + between(random, -17, 17)]);
        if (gap) x += 20;
      }
      return shape(
        smooth(letters),
        `fill="none" stroke="${ink}" stroke-width="3.6" stroke-linecap="round" opacity="0.86"`,
      );
    })
    .join('');
  return face.body + written + face.sheen;
}

/** Finish gone matt and flaking where the hand sits. Drawn over a close view of the grip. */
export function wornFinish(random: Seeded): string {
  const blotch = (x: number, y: number, wide: number, tall: number) =>
    smooth(
      sampled(13, (share): Point => {
        const turn = share * Math.PI * 2;
        const reach = between(random, 0.7, 1.15);
        return [x + Math.cos(turn) * wide * reach, y + Math.sin(turn) * tall * reach];
      }).slice(0, 13),
      true,
    );
  const large = blotch(590, 486, 150, 50);
  const flakes = Array.from({ length: 16 }, () =>
    shape(
      blotch(
        between(random, 410, 800),
        between(random, 440, 540),
        between(random, 6, 20),
        between(random, 4, 11),
      ),
      'fill="#ead9b4" opacity="0.75"',
    ),
  ).join('');
  return (
    shape(large, 'fill="#d9c29a" opacity="0.5" filter="url(#blur2)"') +
    shape(large, 'fill="none" stroke="#fff4da" stroke-width="2.4" opacity="0.7"') +
    flakes
  );
}
