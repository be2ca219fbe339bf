import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { readCameraNotes } from '../../../core/storage/attachments/exif.ts';
import { pictureFacts, smaller, withoutNotes } from '../../../core/storage/attachments/picture.ts';
import {
  avifPicture,
  gpsExif,
  jpegPicture,
  pngPicture,
  webpPicture,
} from '../../support/pictures.ts';

/** Brightness, 0 to 255, of the middle of one quarter of a picture. */
async function brightness(bytes: Uint8Array, right: number, down: number): Promise<number> {
  const { data, info } = await sharp(bytes).greyscale().raw().toBuffer({ resolveWithObject: true });
  const x = Math.floor(info.width * right);
  const y = Math.floor(info.height * down);
  return data[(y * info.width + x) * info.channels] ?? -1;
}

const kinds = [
  ['JPEG', jpegPicture],
  ['PNG', pngPicture],
  ['WebP', webpPicture],
  ['AVIF', avifPicture],
] as const;

describe('what the camera noted', () => {
  test.each(kinds)('%s: moment and place are found', async (_kind, make) => {
    const facts = await pictureFacts(await make({ exif: gpsExif }), 'a');
    expect(facts).toEqual({
      widthPx: 240,
      heightPx: 160,
      takenAt: '2026-03-01T17:45:09',
      hasLocation: true,
    });
  });

  test('a picture without notes has neither', async () => {
    const facts = await pictureFacts(await jpegPicture(), 'a');
    expect(facts).toMatchObject({ takenAt: null, hasLocation: false });
  });

  test.each([
    ['    :  :     :  :  '],
    ['0000:00:00 00:00:00'],
    ['2026:02:31 10:00:00'],
    ['yesterday at noon..'],
  ])('a clock that was never set says nothing: "%s"', async (moment) => {
    const bytes = await jpegPicture({ exif: { IFD2: { DateTimeOriginal: moment } } });
    expect((await pictureFacts(bytes, 'a')).takenAt).toBeNull();
  });

  test('a place noted in XMP alone is found', async () => {
    const xmp =
      '<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#"><rdf:Description xmlns:exif="http://ns.adobe.com/exif/1.0/" exif:GPSLatitude="44,30.0N"/></rdf:RDF></x:xmpmeta>';
    const bytes = await sharp(await jpegPicture())
      .withXmp(xmp)
      .jpeg()
      .toBuffer();
    expect((await pictureFacts(bytes, 'a')).hasLocation).toBe(true);
  });

  test('a block that points outside itself or round in circles is read without harm', async () => {
    const { exif } = await sharp(await jpegPicture({ exif: gpsExif })).metadata();
    if (exif === undefined) throw new Error('the picture has no notes');
    for (let at = 0; at < exif.length; at += 1) {
      for (const value of [0, 8, 0x7f, 0xff]) {
        const spoilt = Buffer.from(exif);
        spoilt[at] = value;
        expect(readCameraNotes(spoilt)).toHaveProperty('hasLocation');
      }
      expect(readCameraNotes(exif.subarray(0, at))).toHaveProperty('takenAt');
    }
  });
});

describe('orientation', () => {
  test('size is told as shown, and the smaller picture stands upright', async () => {
    const bytes = await jpegPicture({ orientation: 6 });
    expect(await pictureFacts(bytes, 'a')).toMatchObject({ widthPx: 160, heightPx: 240 });
    const thumb = await smaller(bytes, 'thumb', 'a');
    expect(await sharp(thumb).metadata()).toMatchObject({ width: 160, height: 240 });
    // Orientation 6 is a quarter turn clockwise: the dark left half comes to lie on top.
    expect(await brightness(thumb, 0.5, 0.25)).toBeLessThan(60);
    expect(await brightness(thumb, 0.5, 0.75)).toBeGreaterThan(200);
  });

  test('a copy to send stands upright without saying so', async () => {
    const copy = await withoutNotes(await jpegPicture({ orientation: 8 }), 'a');
    const metadata = await sharp(copy.bytes).metadata();
    expect(metadata).toMatchObject({ width: 160, height: 240 });
    expect(metadata.orientation ?? 1).toBe(1);
    expect(await brightness(copy.bytes, 0.5, 0.75)).toBeLessThan(60);
  });
});

describe('smaller pictures', () => {
  test('fit their box and are never blown up', async () => {
    const large = await jpegPicture({ width: 3200, height: 1000 });
    const side = async (size: 'thumb' | 'screen') =>
      sharp(await smaller(large, size, 'a')).metadata();
    expect(await side('thumb')).toMatchObject({ format: 'webp', width: 320, height: 100 });
    expect(await side('screen')).toMatchObject({ format: 'webp', width: 1600, height: 500 });
    const little = await smaller(await jpegPicture(), 'screen', 'a');
    expect(await sharp(little).metadata()).toMatchObject({ width: 240, height: 160 });
  });

  test('carry nothing the camera noted', async () => {
    const thumb = await smaller(await jpegPicture({ exif: gpsExif }), 'thumb', 'a');
    expect((await sharp(thumb).metadata()).exif).toBeUndefined();
  });
});

describe('a copy to send', () => {
  test.each(kinds)('%s: nothing of the notes is left', async (_kind, make) => {
    const original = await make({ exif: gpsExif, orientation: 1 });
    const copy = await withoutNotes(original, 'a');
    const metadata = await sharp(copy.bytes).metadata();
    for (const block of ['exif', 'xmp', 'iptc', 'icc', 'comments'] as const) {
      expect(metadata[block], block).toBeUndefined();
    }
    expect(Buffer.from(copy.bytes).includes('Nora Hale')).toBe(false);
    expect(metadata).toMatchObject({ width: 240, height: 160 });
  });

  test('PNG and anything one can see through stay PNG, the rest is JPEG', async () => {
    const glass = await sharp({
      create: { width: 8, height: 8, channels: 4, background: { r: 9, g: 9, b: 9, alpha: 0.4 } },
    })
      .webp()
      .toBuffer();
    expect((await withoutNotes(await pngPicture(), 'a')).mediaType).toBe('image/png');
    expect((await withoutNotes(glass, 'a')).mediaType).toBe('image/png');
    expect((await withoutNotes(await avifPicture(), 'a')).mediaType).toBe('image/jpeg');
    expect((await withoutNotes(await webpPicture(), 'a')).mediaType).toBe('image/jpeg');
  });
});

/** The head of a PNG that claims a size, over the pixels of another. */
async function lyingPng(width: number, height: number): Promise<Buffer> {
  const bytes = Buffer.from(await pngPicture());
  bytes.writeUInt32BE(width, 16);
  bytes.writeUInt32BE(height, 20);
  return bytes;
}

describe('hostile and broken pictures are refused, not fatal', () => {
  test.each(kinds)('%s: cut off anywhere', async (_kind, make) => {
    // Large enough that a JPEG is read at a quarter of its size.
    const whole = await make({ width: 1600, height: 1200 });
    for (const part of [0.02, 0.3, 0.6, 0.9]) {
      const cut = whole.subarray(0, Math.floor(whole.length * part));
      const read = async () => {
        await pictureFacts(cut, 'limb.jpg');
        await smaller(cut, 'thumb', 'limb.jpg');
      };
      await expect(read(), `${part}`).rejects.toThrow('limb.jpg is damaged or cut off');
    }
  });

  test('more than 100 megapixels', async () => {
    const bytes = await lyingPng(20_000, 20_000);
    await expect(pictureFacts(bytes, 'sky.png')).rejects.toThrow(
      /^sky\.png has more than 100 megapixels\. Save it smaller/,
    );
    await expect(smaller(bytes, 'thumb', 'sky.png')).rejects.toMatchObject({ code: 'BAD_INPUT' });
  });

  test('a size that no picture has', async () => {
    const bytes = await lyingPng(0x7f_ff_ff_ff, 0x7f_ff_ff_ff);
    await expect(pictureFacts(bytes, 'sky.png')).rejects.toMatchObject({ code: 'BAD_INPUT' });
  });
});
