import sharp, { type Exif, type Sharp } from 'sharp';

export interface PictureWishes {
  width?: number;
  height?: number;
  /** Orientation tag of Exif, 1 to 8. */
  orientation?: number;
  exif?: Exif;
  /** Changes the colours, and so the bytes. */
  tint?: string;
}

/** A place in the middle of a lake, as a telephone notes it. */
export const gpsExif: Exif = {
  IFD0: { Make: 'Shop camera', Artist: 'Nora Hale' },
  IFD2: { DateTimeOriginal: '2026:03:01 17:45:09' },
  IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '44/1 30/1 0/1', GPSLongitudeRef: 'W' },
};

/** Left half dark, right half light, so that one sees how it was turned. */
function drawn({ width = 240, height = 160, tint = '#e8e0d0' }: PictureWishes): Sharp {
  const half = Math.floor(width / 2);
  const dark = { create: { width: half, height, channels: 3 as const, background: '#202020' } };
  return sharp({ create: { width, height, channels: 3, background: tint } }).composite([
    { input: dark, left: 0, top: 0 },
  ]);
}

function withNotes(picture: Sharp, { orientation, exif }: PictureWishes): Sharp {
  const noted = exif === undefined ? picture : picture.withExif(exif);
  return orientation === undefined ? noted : noted.withMetadata({ orientation });
}

export function jpegPicture(wishes: PictureWishes = {}): Promise<Buffer> {
  return withNotes(drawn(wishes), wishes).jpeg().toBuffer();
}

export function pngPicture(wishes: PictureWishes = {}): Promise<Buffer> {
  return withNotes(drawn(wishes), wishes).png().toBuffer();
}

export function webpPicture(wishes: PictureWishes = {}): Promise<Buffer> {
  return withNotes(drawn(wishes), wishes).webp().toBuffer();
}

export function avifPicture(wishes: PictureWishes = {}): Promise<Buffer> {
  return withNotes(drawn(wishes), wishes).avif({ effort: 0 }).toBuffer();
}

export const smallPdf = Buffer.from('%PDF-1.7\n1 0 obj\n<<>>\nendobj\ntrailer\n<<>>\n%%EOF\n');

export const smallMail = Buffer.from(
  'From: Nora Hale <nora@hale.example>\r\nDate: Sun, 1 Mar 2026 17:45:09 +0000\r\nSubject: The bow\r\n\r\nIt is on its way. \u00bd of it.\r\n',
);

/** The head of a HEIC file: enough to tell what it is. */
export const heicHead = Buffer.concat([
  Buffer.from([0, 0, 0, 24]),
  Buffer.from('ftypheic\0\0\0\0mif1heic'),
  Buffer.alloc(64),
]);

export function fileOf(bytes: Uint8Array, name: string): File {
  return new File([bytes as BlobPart], name);
}
