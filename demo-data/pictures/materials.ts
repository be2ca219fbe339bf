import { between, type Seeded } from '../seeded.ts';
import { type Grain, type Point, polyline, shape } from './svg.ts';

/** Picture size, pixels. */
export const width = 1200;
export const height = 900;

/** Colours of what a bow is made of, none of a maker's. */
export const woods = {
  maple: '#d9b887',
  walnut: '#5b3a25',
  cherry: '#a5603a',
  redHeart: '#7d3024',
  osage: '#c98f2c',
  yew: '#c8824e',
  ash: '#dcc6a0',
  bamboo: '#d8bf83',
  elm: '#b58a5c',
  ebony: '#2b2421',
} as const;
export type Wood = keyof typeof woods;

export const glasses = {
  black: '#1f1f20',
  brown: '#4a3020',
  white: '#e6e2d8',
  green: '#3c4f43',
  grey: '#6d6f70',
  clear: 'clear',
} as const;
export type Glass = keyof typeof glasses;

export interface Streaks {
  /** How often they come and go along x and across, for each pixel. */
  along: number;
  across: number;
  rgb: string;
  depth: number;
}

/** Streaks along x, of the given colour and depth. */
export function streaks({ along, across, rgb, depth }: Streaks, seed: number): string {
  const [r, g, b] = rgb.split(' ');
  return (
    `<feTurbulence type="fractalNoise" baseFrequency="${along} ${across}" numOctaves="3" seed="${seed}" stitchTiles="stitch"/>` +
    `<feColorMatrix values="0 0 0 0 ${r} 0 0 0 0 ${g} 0 0 0 0 ${b} ${depth} 0 0 0 ${-depth * 0.42}" result="streaks"/>`
  );
}

/** Streaks drawn over whatever has this filter. Takes long on a large shape: see `grained`. */
const streaked = (id: string, of: Streaks, seed: number) =>
  `<filter id="${id}" x="0" y="0" width="1" height="1" color-interpolation-filters="sRGB">${streaks(of, seed)}` +
  '<feComposite in="streaks" in2="SourceAlpha" operator="in" result="inside"/>' +
  '<feMerge><feMergeNode in="SourceGraphic"/><feMergeNode in="inside"/></feMerge></filter>';

const cloth: Streaks = { along: 0.22, across: 0.24, rgb: '0.05 0.05 0.05', depth: 1.1 };
const card: Streaks = { along: 0.03, across: 0.35, rgb: '0.3 0.2 0.1', depth: 0.9 };

/** Of what is photographed; each is drawn once and laid over the shapes that have it. */
export const grains: Record<Grain, Streaks> = {
  wood: { along: 0.004, across: 0.14, rgb: '0.16 0.08 0.03', depth: 1.7 },
  fine: { along: 0.012, across: 0.5, rgb: '0.14 0.08 0.04', depth: 1.3 },
  cloth,
  card,
};

const blurs = [1, 2, 6, 14]
  .map(
    (by) =>
      `<filter id="blur${by}" x="-20%" y="-60%" width="140%" height="220%"><feGaussianBlur stdDeviation="${by}"/></filter>`,
  )
  .join('');

/** Filters every picture may use. */
export function materials(random: Seeded): string {
  const seed = () => Math.floor(between(random, 1, 9000));
  return (
    '<defs>' +
    blurs +
    streaked(
      'bench-top',
      { along: 0.0016, across: 0.06, rgb: '0.17 0.1 0.05', depth: 1.15 },
      seed(),
    ) +
    streaked('felt', cloth, seed()) +
    streaked('crease', card, seed()) +
    streaked('plaster', { along: 0.02, across: 0.02, rgb: '0.45 0.42 0.38', depth: 0.35 }, seed()) +
    '<radialGradient id="glow" cx="0.4" cy="0.34" r="0.75"><stop offset="0" stop-color="#fff0d2" stop-opacity="0.3"/>' +
    '<stop offset="0.5" stop-color="#fff0d2" stop-opacity="0.1"/><stop offset="1" stop-color="#fff0d2" stop-opacity="0"/></radialGradient>' +
    '<radialGradient id="corners" cx="0.45" cy="0.42" r="0.85"><stop offset="0.35" stop-color="#120c06" stop-opacity="0"/>' +
    '<stop offset="0.75" stop-color="#120c06" stop-opacity="0.18"/><stop offset="1" stop-color="#120c06" stop-opacity="0.5"/></radialGradient>' +
    '<linearGradient id="sheen" x1="0" y1="0" x2="0" y2="1"><stop offset="0" stop-color="#fff" stop-opacity="0.55"/>' +
    '<stop offset="0.35" stop-color="#fff" stop-opacity="0.08"/><stop offset="1" stop-color="#000" stop-opacity="0.35"/></linearGradient>' +
    '</defs>'
  );
}

const whole = `x="-200" y="-200" width="${width + 400}" height="${height + 400}"`;

export const lamp =
  `<rect width="${width}" height="${height}" fill="url(#glow)"/>` +
  `<rect width="${width}" height="${height}" fill="url(#corners)"/>`;

/** A planked bench top with what years of work leave on it. */
export function bench(random: Seeded): string {
  const tone = ['#b08a5e', '#9d7a52', '#a98f6c'][Math.floor(random() * 3)] ?? '#b08a5e';
  const seams = [-60, 210, 470, 760]
    .map((y) => {
      const at = y + between(random, -40, 40);
      return `<rect x="-200" y="${at}" width="${width + 400}" height="4" fill="#2d1d10" opacity="0.55"/><rect x="-200" y="${at + 4}" width="${width + 400}" height="3" fill="#fff" opacity="0.12"/>`;
    })
    .join('');
  const scratches = Array.from({ length: 26 }, () => {
    const from: Point = [between(random, 0, width), between(random, 0, height)];
    const to: Point = [from[0] + between(random, -90, 90), from[1] + between(random, -26, 26)];
    return shape(
      polyline([from, to]),
      `stroke="${random() < 0.5 ? '#f0dfc0' : '#3a2716'}" stroke-width="${between(random, 0.6, 1.8).toFixed(1)}" opacity="0.3" fill="none"`,
    );
  }).join('');
  return `<rect ${whole} fill="${tone}" filter="url(#bench-top)"/>${seams}${scratches}`;
}

/** A grey rubber or felt mat, as lies under a bow that must not be scratched. */
export function mat(random: Seeded): string {
  const tone = ['#5c6462', '#6b6a66', '#4f5a63'][Math.floor(random() * 3)] ?? '#5c6462';
  return `<rect ${whole} fill="${tone}" filter="url(#felt)"/>`;
}

export function steelRule(x: number, y: number, turn: number, length = 420): string {
  const ticks = Array.from({ length: Math.floor(length / 7) }, (_, place) => {
    const tall = place % 8 === 0 ? 17 : place % 4 === 0 ? 12 : 7;
    return `<rect x="${6 + place * 7}" y="0" width="1.4" height="${tall}" fill="#2d2d2d"/>`;
  }).join('');
  return (
    `<g transform="translate(${x} ${y}) rotate(${turn})"><rect class="shadow" x="4" y="7" width="${length}" height="34" fill="#000" opacity="0.4" filter="url(#blur6)"/>` +
    `<rect width="${length}" height="34" rx="2" fill="#c3c6c6"/><rect width="${length}" height="34" rx="2" fill="url(#sheen)"/>${ticks}` +
    `<circle cx="${length - 14}" cy="17" r="6" fill="#7a5c3c"/></g>`
  );
}

export function pencil(x: number, y: number, turn: number): string {
  return (
    `<g transform="translate(${x} ${y}) rotate(${turn})"><rect class="shadow" x="5" y="10" width="250" height="14" fill="#000" opacity="0.45" filter="url(#blur6)"/>` +
    '<rect width="230" height="16" fill="#b9452f"/><rect y="5" width="230" height="5" fill="#d0644c"/><rect y="11" width="230" height="5" fill="#8c2f1f"/>' +
    '<path d="M230 0 L266 8 L230 16 Z" fill="#dfbe8d"/><path d="M256 5.6 L266 8 L256 10.4 Z" fill="#2b2b2b"/></g>'
  );
}

/** Plaster behind the bench. */
export function wall(): string {
  return `<rect ${whole} fill="#cfc8ba" filter="url(#plaster)"/>`;
}
