import { between, type Seeded } from '../seeded.ts';
import type { BowLook } from './look.ts';
import { glasses, woods } from './materials.ts';
import { type Point, polyline, sampled, shadow, shape, smooth } from './svg.ts';

const facingOf = (look: BowLook) =>
  look.glass === null || look.glass === 'clear' ? '#e9d5a6' : glasses[look.glass];

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
    shape(whole, `fill="${woods[look.limb]}" filter="url(#fine)"`) +
    lamination((x) => backAt(x) + 52) +
    lamination((x) => bellyAt(x) - 56) +
    shape(smooth(wedge, true), `fill="${woods[look.riser]}" filter="url(#wood)"`) +
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

function maskingTape(x: number, y: number, turn: number, mark: 'arrow' | 'none'): string {
  const arrow =
    mark === 'arrow'
      ? '<path d="M60 66 C 90 40 110 34 150 22 M150 22 l-26 -4 M150 22 l-14 24" fill="none" stroke="#27406b" stroke-width="6" stroke-linecap="round"/>'
      : '';
  return (
    `<g transform="translate(${x} ${y}) rotate(${turn})"><path d="M0 6 L12 0 L206 0 L214 10 L206 22 L214 40 L206 84 L8 84 L0 70 L7 50 L0 30 Z" fill="#e3d39f"/>` +
    `<path d="M4 14 H208 M4 66 H208" stroke="#b7a468" stroke-width="1.4" opacity="0.5"/>${arrow}</g>`
  );
}

/** The back of a limb tip: overlay in steps, string grooves cut at a slant. */
export function tip(look: BowLook, cracked: boolean): string {
  const edge = (x: number) => 150 - 92 * Math.min(1, Math.max(0, x) / 860) ** 1.1;
  const outline: Point[] = [
    ...sampled(10, (share): Point => [-60 + 920 * share, 450 - edge(-60 + 920 * share)]),
    [960, 412],
    [1000, 450],
    [960, 488],
    ...sampled(10, (share): Point => [860 - 920 * share, 450 + edge(860 - 920 * share)]),
  ];
  const whole = polyline(outline, true);
  const step = (from: number, colour: string, filter = '') =>
    shape(
      `M${from} 450 C ${from + 20} ${450 - edge(from) * 0.9} ${from + 90} ${450 - edge(from + 90)} ${from + 130} ${450 - edge(from + 130)} L 860 ${450 - edge(860)} L 960 412 L 1000 450 L 960 488 L 860 ${450 + edge(860)} L ${from + 130} ${450 + edge(from + 130)} C ${from + 90} ${450 + edge(from + 90)} ${from + 20} ${450 + edge(from) * 0.9} ${from} 450 Z`,
      `fill="${colour}" ${filter}`,
    );
  const shown = look.glass === null || look.glass === 'clear';
  const face = shown ? woods[look.limb] : facingOf(look);
  const groove = (side: number) =>
    `<path d="M790 ${450 + side * (edge(790) + 6)} C 812 ${450 + side * 60} 822 ${450 + side * 46} 850 ${450 + side * 34}" stroke="#0f0c0a" stroke-width="24" fill="none" stroke-linecap="round" opacity="0.85"/>` +
    `<path d="M780 ${450 + side * (edge(780) + 2)} C 804 ${450 + side * 62} 812 ${450 + side * 50} 838 ${450 + side * 38}" stroke="#e9dfcb" stroke-width="3" fill="none" opacity="0.5"/>`;
  return (
    shadow(whole, 12, 26, 14, 0.55) +
    shape(whole, `fill="${face}"${shown ? ' filter="url(#wood)"' : ''}`) +
    step(500, woods[look.accent], 'filter="url(#fine)"') +
    step(522, '#efe6d2') +
    step(536, woods.ebony, 'filter="url(#fine)"') +
    shape(whole, 'fill="url(#sheen)" opacity="0.5"') +
    groove(-1) +
    groove(1) +
    (cracked ? hairline() : '')
  );
}

function hairline(): string {
  const crack: Point[] = [
    [612, 412],
    [640, 424],
    [655, 421],
    [684, 437],
    [702, 433],
    [731, 452],
    [752, 449],
    [778, 466],
    [801, 463],
  ];
  const below = crack.map(([x, y]): Point => [x + 1, y + 4]);
  return (
    shape(polyline(below), 'fill="none" stroke="#cbbfa6" stroke-width="2" opacity="0.55"') +
    shape(polyline(crack), 'fill="none" stroke="#000" stroke-width="3.4"') +
    maskingTape(600, 610, -5, 'none') +
    '<path d="M700 610 L706 500 M706 500 l-14 22 M706 500 l18 20" stroke="#27406b" stroke-width="6" fill="none" stroke-linecap="round"/>'
  );
}

/** Face of a limb across the picture, as it lies belly up. */
function limbFace(fill: string, filter = 'wood'): { body: string; sheen: string } {
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
    body:
      shadow(outline, 10, 26, 14, 0.6) + shape(outline, `fill="${fill}" filter="url(#${filter})"`),
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
