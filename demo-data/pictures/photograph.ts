import sharp from 'sharp';
import { between, type Seeded, seeded, seedOf } from '../seeded.ts';
import { grainsIn } from './grain.ts';
import { bench, height, lamp, mat, materials, wall, width } from './materials.ts';
import { shadowClass } from './svg.ts';

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

function svgOf(inside: string, random: Seeded, part = 1): Buffer {
  const size = `width="${taken.width * part}" height="${taken.height * part}"`;
  return Buffer.from(
    `<svg xmlns="http://www.w3.org/2000/svg" ${size} viewBox="0 0 ${width} ${height}">${materials(random)}${inside}</svg>`,
  );
}

/** Shadows are soft: drawn at this part of the size they cost a sixteenth, and look the same. */
const softPart = 0.25;

async function shadowsOf(turned: string, random: Seeded): Promise<Buffer> {
  const only = `<style>path, rect, circle, ellipse { display: none } .${shadowClass} { display: inline }</style>`;
  // In two steps: told to resize a drawing, the library draws it at full size instead.
  const { data, info } = await sharp(svgOf(only + turned, random, softPart))
    .raw()
    .toBuffer({ resolveWithObject: true });
  const { width, height } = info;
  return sharp(data, { raw: { width, height, channels: 4 } })
    .resize(taken.width, taken.height, { kernel: 'linear', fit: 'fill' })
    .raw()
    .toBuffer();
}

async function thingsOf(turned: string, random: Seeded): Promise<Buffer> {
  const none = `<style>.${shadowClass} { display: none }</style>`;
  return svgOf(none + (await grainsIn(turned, random)) + turned, random);
}

let lit: Promise<Buffer> | undefined;

/** The same lamp hangs over everything, so its light is drawn once. */
function lampPixels(): Promise<Buffer> {
  lit ??= sharp(svgOf(lamp, seeded(seedOf('lamp'))))
    .raw()
    .toBuffer();
  return lit;
}

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
  const turned = `<g transform="rotate(${turn} ${width / 2} ${height / 2})">${things}</g>`;
  const pixels = await sharp(under, { raw })
    .composite([
      { input: await shadowsOf(turned, random), raw: { ...taken, channels: 4 } },
      { input: await thingsOf(turned, random) },
      { input: await lampPixels(), raw: { ...taken, channels: 4 } },
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
