import { facingOf, maskingTape } from './at-hand.ts';
import type { BowLook } from './look.ts';
import { woods } from './materials.ts';
import { grained, type Point, polyline, sampled, shadow, shape, smooth } from './svg.ts';

/** Height of the limb's lower edge (its belly) in a close view of the fade, from the riser out. */
const bellyAt = (x: number) => 690 - 250 * Math.min(1, Math.max(0, (x + 60) / 780)) ** 0.6;
const backAt = (x: number) => 300 + 26 * (x / 1200) ** 2;

const band = (from: (x: number) => number, to: (x: number) => number, start = -80, end = 1300) => {
  const along = (at: (x: number) => number) =>
    sampled(24, (share): Point => {
      const x = start + (end - start) * share;
      return [x, at(x)];
    });
  return polyline([...along(from), ...along(to).reverse()], true);
};

/** The upper fade from the side, about eight inches of limb: riser wedge, core, glass on both faces. */
export function upperFade(look: BowLook, lifted: boolean): string {
  const thick = look.glass === null ? 0 : 25;
  const wedge: Point[] = [
    [-80, backAt(0) + 92],
    [300, backAt(300) + 90],
    [640, backAt(640) + 84],
    [790, backAt(790) + 78],
    [640, bellyAt(640) - 78],
    [420, bellyAt(420) - 84],
    [180, bellyAt(180) - 92],
    [-80, bellyAt(-80) - 96],
  ];
  const whole = band(backAt, bellyAt);
  const lamination = (at: (x: number) => number) =>
    shape(
      band(
        (x) => at(x),
        (x) => at(x) + 7,
      ),
      `fill="${woods[look.accent]}"`,
    );
  return (
    shadow(whole, 10, 26, 14, 0.6) +
    grained(whole, woods[look.limb], 'fine') +
    lamination((x) => backAt(x) + 52) +
    lamination((x) => bellyAt(x) - 56) +
    grained(smooth(wedge, true), woods[look.riser], 'wood') +
    shape(
      band(backAt, (x) => backAt(x) + thick),
      `fill="${facingOf(look)}"`,
    ) +
    shape(
      band((x) => bellyAt(x) - thick, bellyAt),
      `fill="${facingOf(look)}"`,
    ) +
    shape(
      band(
        (x) => backAt(x) + 1,
        (x) => backAt(x) + 6,
      ),
      'fill="#fff" opacity="0.4"',
    ) +
    shape(whole, 'fill="url(#sheen)" opacity="0.28"') +
    (lifted ? liftedGlass(look) : '')
  );
}

/** Belly glass that has come away from the core: a dark gap under a bowed strip, white at its ends. */
function liftedGlass(look: BowLook): string {
  const [start, end] = [560, 1010];
  const bow = (x: number) => 19 * Math.sin((Math.PI * (x - start)) / (end - start)) ** 1.4;
  return (
    shape(
      band(
        (x) => bellyAt(x) - 28,
        (x) => bellyAt(x) + 2 + bow(x),
        start,
        end,
      ),
      'fill="#0c0908"',
    ) +
    shape(
      band(
        (x) => bellyAt(x) - 25 + bow(x),
        (x) => bellyAt(x) + bow(x),
        start,
        end,
      ),
      `fill="${facingOf(look)}"`,
    ) +
    shape(
      band(
        (x) => bellyAt(x) - 25 + bow(x),
        (x) => bellyAt(x) - 19 + bow(x),
        start + 30,
        end - 30,
      ),
      'fill="#f2efe6" opacity="0.75"',
    ) +
    [start - 8, end + 8]
      .map(
        (x) =>
          `<ellipse cx="${x}" cy="${bellyAt(x) - 22}" rx="46" ry="8" fill="#f4f0e4" opacity="0.55" filter="url(#blur2)"/>`,
      )
      .join('') +
    maskingTape(560, 640, 4, 'arrow')
  );
}
