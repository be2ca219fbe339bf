import type { AttachmentMediaType } from '../../../shared/attachments.ts';
import { ShopError } from '../../../shared/errors.ts';
import { mailOrText } from './plain-text.ts';

/** A kind that is known by its first bytes and not kept, and what to do instead. */
interface Unwanted {
  what: string;
  instead: string;
}

const asJpeg = 'Save the photograph as JPEG, then add it again.';
const asPdf = 'Save it as PDF, then add it again.';

const latin1 = (bytes: Uint8Array, from: number, to: number): string =>
  Buffer.from(bytes.subarray(from, to)).toString('latin1');

/** Brands of an ISO base media file (ISO/IEC 14496-12, section 4.3): the major one first. */
function brandsOf(bytes: Uint8Array): string[] {
  if (bytes.length < 16 || latin1(bytes, 4, 8) !== 'ftyp') return [];
  const end = Math.min(Buffer.from(bytes.subarray(0, 4)).readUInt32BE(0), bytes.length, 256);
  const brands = [latin1(bytes, 8, 12)];
  for (let at = 16; at + 4 <= end; at += 4) brands.push(latin1(bytes, at, at + 4));
  return brands;
}

const heicBrands = ['heic', 'heix', 'heim', 'heis', 'hevc', 'hevx', 'mif1', 'msf1'];

function isoMedia(bytes: Uint8Array): AttachmentMediaType | Unwanted | null {
  const brands = brandsOf(bytes);
  if (brands.length === 0) return null;
  // AVIF 1.1, section 6: the brand avif is among the compatible ones.
  if (brands.includes('avif')) return 'image/avif';
  if (brands.some((brand) => heicBrands.includes(brand))) {
    return { what: 'is a HEIC photograph, which this program cannot show', instead: asJpeg };
  }
  return { what: 'is a film', instead: 'Save a still picture of it as JPEG, then add that.' };
}

const unwantedStarts: readonly [string, Unwanted][] = [
  ['GIF8', { what: 'is a GIF picture', instead: asJpeg }],
  ['BM', { what: 'is a BMP picture', instead: asJpeg }],
  ['II*\0', { what: 'is a TIFF or raw photograph', instead: asJpeg }],
  ['MM\0*', { what: 'is a TIFF or raw photograph', instead: asJpeg }],
  ['\0\0\0\fJXL ', { what: 'is a JPEG XL photograph', instead: asJpeg }],
  ['PK\x03\x04', { what: 'is an office document or a zip file', instead: asPdf }],
  [
    '\xd0\xcf\x11\xe0',
    {
      what: 'is an office document or a message in a closed format',
      instead: 'Save it as PDF, or the message as .eml or text, then add it again.',
    },
  ],
  ['{\\rtf', { what: 'is a formatted text document', instead: asPdf }],
];

function known(bytes: Uint8Array): AttachmentMediaType | Unwanted | null {
  const start = latin1(bytes, 0, 16);
  if (start.startsWith('\xff\xd8\xff')) return 'image/jpeg';
  if (start.startsWith('\x89PNG\r\n\x1a\n')) return 'image/png';
  if (start.startsWith('RIFF') && start.slice(8, 12) === 'WEBP') return 'image/webp';
  if (start.startsWith('%PDF-')) return 'application/pdf';
  const media = isoMedia(bytes);
  if (media !== null) return media;
  const unwanted = unwantedStarts.find(([sign]) => start.startsWith(sign));
  // Two letters may also begin a sentence: a BMP file holds zero bytes.
  if (unwanted?.[0] === 'BM' && !bytes.subarray(0, 64).includes(0)) return null;
  return unwanted?.[1] ?? null;
}

/** A PDF ends with `%%EOF` (ISO 32000-1, 7.5.5); readers look for it in the last 1024 bytes. */
function refuseCutPdf(bytes: Uint8Array, name: string): void {
  if (latin1(bytes, Math.max(0, bytes.length - 1024), bytes.length).includes('%%EOF')) return;
  throw new ShopError(
    'BAD_INPUT',
    `${name} is cut off at the end. Save the PDF again, then add it.`,
  );
}

/**
 * What a file is, by what is in it: its name says nothing.
 * @param name as it is shown, for the refusal.
 * @throws ShopError BAD_INPUT for a kind that is not kept.
 */
export function mediaTypeOf(bytes: Uint8Array, name: string): AttachmentMediaType {
  if (bytes.length === 0) {
    throw new ShopError('BAD_INPUT', `${name} is empty. Choose the file again.`);
  }
  const kind = known(bytes);
  if (kind === null) {
    const text = mailOrText(bytes);
    if (text !== null) return text;
    throw new ShopError(
      'BAD_INPUT',
      `${name} is not a photograph, PDF or plain message. Save it as JPEG, PNG, PDF, or as text in UTF-8.`,
    );
  }
  if (typeof kind !== 'string') {
    throw new ShopError('BAD_INPUT', `${name} ${kind.what}. ${kind.instead}`);
  }
  if (kind === 'application/pdf') refuseCutPdf(bytes, name);
  return kind;
}
