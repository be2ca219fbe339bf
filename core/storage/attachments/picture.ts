import sharp, { type Metadata, type Sharp } from 'sharp';
import { maxAttachmentPixels } from '../../../shared/attachments.ts';
import { ShopError } from '../../../shared/errors.ts';
import { type CameraNotes, readCameraNotes } from './exif.ts';

// Pictures are rarely asked for twice: no need to hold them in memory.
sharp.cache(false);

/** Longest side of each smaller picture, pixels. */
export const pictureSizes = { thumb: 320, screen: 1600 } as const;
export type PictureSize = keyof typeof pictureSizes;

const webpQuality = { thumb: 75, screen: 82 } as const;
const copyQuality = 90;

export interface PictureFacts extends CameraNotes {
  /** As shown, after the orientation the camera noted. */
  widthPx: number;
  heightPx: number;
}

/**
 * Opens a picture with its limits set. `failOn: 'error'` refuses a picture that is cut off, and
 * lets pass the small oddities that many cameras write.
 */
function open(bytes: Uint8Array): Sharp {
  return sharp(bytes, { failOn: 'error', limitInputPixels: maxAttachmentPixels });
}

function refusal(error: unknown, name: string): ShopError {
  const said = error instanceof Error ? error.message : String(error);
  if (/pixel limit|too large/i.test(said)) {
    return new ShopError(
      'BAD_INPUT',
      `${name} has more than 100 megapixels. Save it smaller, then add it again.`,
      {},
      error,
    );
  }
  return new ShopError(
    'BAD_INPUT',
    `${name} is damaged or cut off and cannot be shown. Save the photograph again, then add it.`,
    {},
    error,
  );
}

/** A place may also be noted in XMP, as writers of photographs do (XMP part 2, Exif schema). */
function placeInXmp(metadata: Metadata): boolean {
  return metadata.xmp?.toString('latin1').includes('GPSLatitude') ?? false;
}

/**
 * Reads the head of a picture.
 * @param name as it is shown, for the refusal.
 * @throws ShopError BAD_INPUT where it is damaged or too large.
 */
export async function pictureFacts(bytes: Uint8Array, name: string): Promise<PictureFacts> {
  try {
    const metadata = await open(bytes).metadata();
    const { width, height } = metadata.autoOrient;
    if (width * height > maxAttachmentPixels) throw new Error('pixel limit');
    const notes = readCameraNotes(metadata.exif);
    return {
      takenAt: notes.takenAt,
      hasLocation: notes.hasLocation || placeInXmp(metadata),
      widthPx: width,
      heightPx: height,
    };
  } catch (error) {
    throw refusal(error, name);
  }
}

/**
 * A smaller picture for the screen, upright and with nothing the camera noted. The whole original
 * is read for it, so a picture that is cut off is found here.
 * @throws ShopError BAD_INPUT
 */
export async function smaller(
  bytes: Uint8Array,
  size: PictureSize,
  name: string,
): Promise<Uint8Array> {
  const side = pictureSizes[size];
  try {
    return await open(bytes)
      .autoOrient()
      .resize({ width: side, height: side, fit: 'inside', withoutEnlargement: true })
      .webp({ quality: webpQuality[size] })
      .toBuffer();
  } catch (error) {
    throw refusal(error, name);
  }
}

/** Many pictures have a channel for seeing through and make no use of it. */
async function staysPng(bytes: Uint8Array): Promise<boolean> {
  const { format, hasAlpha } = await open(bytes).metadata();
  if (format === 'png') return true;
  return hasAlpha && !(await open(bytes).stats()).isOpaque;
}

export interface PictureCopy {
  bytes: Uint8Array;
  mediaType: 'image/jpeg' | 'image/png';
}

/**
 * A copy made from the pixels alone, upright, in full size: no location, camera, names or small
 * preview can come along. PNG stays PNG, as does anything one can see through; the rest is JPEG,
 * which every mail program shows.
 * @throws ShopError BAD_INPUT
 */
export async function withoutNotes(bytes: Uint8Array, name: string): Promise<PictureCopy> {
  try {
    const picture = open(bytes).autoOrient();
    if (await staysPng(bytes)) {
      return { bytes: await picture.png().toBuffer(), mediaType: 'image/png' };
    }
    return {
      bytes: await picture.jpeg({ quality: copyQuality }).toBuffer(),
      mediaType: 'image/jpeg',
    };
  } catch (error) {
    throw refusal(error, name);
  }
}

export interface PaperPicture {
  /** JPEG, upright, with nothing the camera noted. */
  bytes: Uint8Array;
  widthPx: number;
  heightPx: number;
}

/** Longest side of a picture on a paper, pixels: half a page wide at 300 dots an inch. */
const paperSide = 1100;

/**
 * A picture to be printed, made from the pixels alone; what one can see through becomes white.
 * @throws ShopError BAD_INPUT
 */
export async function forPaper(bytes: Uint8Array, name: string): Promise<PaperPicture> {
  try {
    const { data, info } = await open(bytes)
      .autoOrient()
      .resize({ width: paperSide, height: paperSide, fit: 'inside', withoutEnlargement: true })
      .flatten({ background: '#ffffff' })
      .jpeg({ quality: copyQuality })
      .toBuffer({ resolveWithObject: true });
    return { bytes: data, widthPx: info.width, heightPx: info.height };
  } catch (error) {
    throw refusal(error, name);
  }
}
