import sharp from 'sharp';
import { between, type Seeded, seeded, seedOf } from '../seeded.ts';
import { bench, height, lamp, mat, materials, wall, width } from './materials.ts';

const grounds = { bench, mat, wall } as const;
export type Ground = keyof typeof grounds;

export interface Scene {
  ground: Ground;
  /** What is photographed, in pixels of the picture. */
  things: string;
}

const tile = 240;
/** Size of the photograph, pixels; scenes are drawn in their own, larger units. */
const taken = { width: 1000, height: 750 };
const raw = { ...taken, channels: 3 as const };

const svgOf = (inside: string, random: Seeded) =>
  Buffer.from(
    `<svg xmlns="http://www.w3.org/2000/svg" width="${taken.width}" height="${taken.height}" viewBox="0 0 ${width} ${height}">${materials(random)}${inside}</svg>`,
  );

/** Grain of a small sensor: a tile of noise around middle grey. */
function sensorNoise(random: Seeded): Buffer {
  const pixels = Buffer.alloc(tile * tile * 3);
  for (let place = 0; place < pixels.length; place += 3) {
    const light = 128 + (random() + random() + random() - 1.5) * 26;
    for (let channel = 0; channel < 3; channel += 1) {
      pixels[place + channel] = light + (random() - 0.5) * 8;
    }
  }
  return pixels;
}

/** Grounds take longest to draw, so each is drawn once: three benches, three mats, a wall. */
const drawn = new Map<string, Promise<Buffer>>();

function groundPixels(ground: Ground, which: number): Promise<Buffer> {
  const key = `${ground} ${which}`;
  const known = drawn.get(key);
  if (known !== undefined) return known;
  const random = seeded(seedOf(key));
  const turn = between(random, -7, 7);
  const svg = svgOf(
    `<g transform="rotate(${turn} ${width / 2} ${height / 2})">${grounds[ground](random)}</g>`,
    random,
  );
  const fresh = sharp(svg).removeAlpha().raw().toBuffer();
  drawn.set(key, fresh);
  return fresh;
}

/** Draws a scene as a hand-held telephone would take it: a little turned, a little soft, a little noisy. */
export async function photograph(seed: number, draw: (random: Seeded) => Scene): Promise<Buffer> {
  const random = seeded(seed);
  const { ground, things } = draw(random);
  const under = await groundPixels(ground, Math.floor(random() * (ground === 'wall' ? 1 : 3)));
  const turn = between(random, -2.4, 2.4).toFixed(2);
  const over = svgOf(
    `<g transform="rotate(${turn} ${width / 2} ${height / 2})">${things}</g>${lamp}`,
    random,
  );
  const pixels = await sharp(under, { raw })
    .composite([
      { input: over },
      {
        input: sensorNoise(random),
        raw: { width: tile, height: tile, channels: 3 },
        tile: true,
        blend: 'soft-light',
      },
    ])
    .removeAlpha()
    .raw()
    .toBuffer();
  return sharp(pixels, { raw }).blur(0.6).jpeg({ quality: 72 }).toBuffer();
}
