import { describe, expect, test } from 'vitest';
import { mediaTypeOf } from '../../../core/storage/attachments/content.ts';
import {
  avifPicture,
  heicHead,
  jpegPicture,
  pngPicture,
  smallMail,
  smallPdf,
  webpPicture,
} from '../../support/pictures.ts';

const text = (words: string) => Buffer.from(words);
const starts = (...bytes: number[]) => Buffer.concat([Buffer.from(bytes), Buffer.alloc(64)]);

describe('what is kept', () => {
  test.each([
    ['image/jpeg', () => jpegPicture()],
    ['image/png', () => pngPicture()],
    ['image/webp', () => webpPicture()],
    ['image/avif', () => avifPicture()],
    ['application/pdf', async () => smallPdf],
    ['message/rfc822', async () => smallMail],
    ['text/plain', async () => text('Two cracks, upper limb.\n\n45# at 28"\t\u00bd in\n')],
    ['text/plain', async () => text('\ufeffA text with a byte order mark')],
    ['text/plain', async () => text('BM is how my father signed')],
    ['text/plain', async () => text('To: me\n\nno sender, so no message')],
    ['text/plain', async () => text('<html><script>alert(1)</script></html>')],
  ] as const)('%s', async (mediaType, make) => {
    expect(mediaTypeOf(await make(), 'whatever.exe')).toBe(mediaType);
  });
});

describe('what is refused, by name and with what to do', () => {
  test.each([
    ['HEIC', heicHead, 'limb.heic is a HEIC photograph, which this program cannot show. Save'],
    ['GIF', text('GIF89a......'), 'is a GIF picture. Save the photograph as JPEG'],
    ['TIFF', starts(0x49, 0x49, 0x2a, 0), 'is a TIFF or raw photograph. Save the photograph as'],
    ['TIFF, big-endian', starts(0x4d, 0x4d, 0, 0x2a), 'is a TIFF or raw photograph'],
    ['BMP', starts(0x42, 0x4d, 10, 0), 'is a BMP picture'],
    ['ZIP', starts(0x50, 0x4b, 3, 4), 'is an office document or a zip file. Save it as PDF'],
    ['old office', starts(0xd0, 0xcf, 0x11, 0xe0), 'Save it as PDF, or the message as .eml'],
    ['a film', Buffer.from('\0\0\0\x18ftypisom\0\0\0\0isommp42'), 'is a film. Save a still'],
    ['a program', starts(0x7f, 0x45, 0x4c, 0x46), 'is not a photograph, PDF or plain message'],
    ['nothing', Buffer.alloc(0), 'is empty. Choose the file again.'],
    ['blanks', text(' \n \n'), 'is not a photograph, PDF or plain message'],
    ['zero bytes', text('words\0words'), 'is not a photograph, PDF or plain message'],
    ['escape codes', text('words \u001b[31m'), 'is not a photograph, PDF or plain message'],
    ['Latin-1', Buffer.from([0x4d, 0xfc, 0x68]), 'or as text in UTF-8'],
    ['a cut PDF', smallPdf.subarray(0, 20), 'is cut off at the end. Save the PDF again'],
  ])('%s', (_kind, bytes, sentence) => {
    const check = () => mediaTypeOf(bytes, 'limb.heic');
    expect(check).toThrow(sentence);
    expect(check).toThrow(/^limb\.heic /);
    expect(check).toThrow(expect.objectContaining({ code: 'BAD_INPUT' }));
  });

  test('a name that promises a picture does not make one', () => {
    expect(() => mediaTypeOf(starts(0x7f, 0x45), 'bow.jpg')).toThrow('bow.jpg is not a photograph');
  });
});
