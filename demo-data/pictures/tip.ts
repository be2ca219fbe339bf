import { facingOf, maskingTape } from './at-hand.ts';
import type { BowLook } from './look.ts';
import { woods } from './materials.ts';
import { type Grain, grained, type Point, polyline, sampled, shadow, shape } from './svg.ts';

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
  const step = (from: number, colour: string, grain: Grain | null = 'fine') => {
    const path = stepPath(from);
    return grain === null ? shape(path, `fill="${colour}"`) : grained(path, colour, grain);
  };
  const stepPath = (from: number) =>
    `M${from} 450 C ${from + 20} ${450 - edge(from) * 0.9} ${from + 90} ${450 - edge(from + 90)} ${from + 130} ${450 - edge(from + 130)} L 860 ${450 - edge(860)} L 960 412 L 1000 450 L 960 488 L 860 ${450 + edge(860)} L ${from + 130} ${450 + edge(from + 130)} C ${from + 90} ${450 + edge(from + 90)} ${from + 20} ${450 + edge(from) * 0.9} ${from} 450 Z`;
  const shown = look.glass === null || look.glass === 'clear';
  const face = shown ? woods[look.limb] : facingOf(look);
  const groove = (side: number) =>
    `<path d="M790 ${450 + side * (edge(790) + 6)} C 812 ${450 + side * 60} 822 ${450 + side * 46} 850 ${450 + side * 34}" stroke="#0f0c0a" stroke-width="24" fill="none" stroke-linecap="round" opacity="0.85"/>` +
    `<path d="M780 ${450 + side * (edge(780) + 2)} C 804 ${450 + side * 62} 812 ${450 + side * 50} 838 ${450 + side * 38}" stroke="#e9dfcb" stroke-width="3" fill="none" opacity="0.5"/>`;
  return (
    shadow(whole, 12, 26, 14, 0.55) +
    (shown ? grained(whole, face, 'wood') : shape(whole, `fill="${face}"`)) +
    step(500, woods[look.accent]) +
    step(522, '#efe6d2', null) +
    step(536, woods.ebony) +
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
