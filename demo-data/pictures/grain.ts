import sharp from 'sharp';
import { between, type Seeded } from '../seeded.ts';
import { grains, streaks } from './materials.ts';
import type { Grain } from './svg.ts';

/** Size of a piece of grain, units of the scene; it repeats without a seam. */
const size = { width: 500, height: 180 };
const drawn = new Map<Grain, Promise<string>>();

/** The streaks by themselves, as an image that can stand in a picture. */
function pieceOf(grain: Grain): Promise<string> {
  const known = drawn.get(grain);
  if (known !== undefined) return known;
  const { width, height } = size;
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}"><filter id="grain" x="0" y="0" width="1" height="1" color-interpolation-filters="sRGB">${streaks(grains[grain], 11)}</filter><rect width="${width}" height="${height}" filter="url(#grain)"/></svg>`;
  const fresh = sharp(Buffer.from(svg))
    .png({ compressionLevel: 1 })
    .toBuffer()
    .then((png) => `data:image/png;base64,${png.toString('base64')}`);
  drawn.set(grain, fresh);
  return fresh;
}

/** Patterns of the grain that these things have, each piece laid where nobody else has it. */
export async function grainsIn(things: string, random: Seeded): Promise<string> {
  const { width, height } = size;
  const used = (Object.keys(grains) as Grain[]).filter((grain) =>
    things.includes(`url(#${grain})`),
  );
  const patterns = used.map(async (grain) => {
    const [x, y] = [between(random, 0, width).toFixed(0), between(random, 0, height).toFixed(0)];
    return (
      `<pattern id="${grain}" patternUnits="userSpaceOnUse" x="${x}" y="${y}" width="${width}" height="${height}">` +
      `<image href="${await pieceOf(grain)}" width="${width}" height="${height}"/></pattern>`
    );
  });
  return `<defs>${(await Promise.all(patterns)).join('')}</defs>`;
}
