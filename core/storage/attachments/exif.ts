/** What the camera noted that the shop needs to know. */
export interface CameraNotes {
  /** `YYYY-MM-DDTHH:MM:SS` by the camera's own clock, or null. */
  takenAt: string | null;
  hasLocation: boolean;
}

// Tag numbers: CIPA DC-008 (Exif 2.32), sections 4.6.3 and 4.6.5.
const exifPointer = 0x8769;
const gpsPointer = 0x8825;
const dateTimeOriginal = 0x9003;
/** In the GPS directory anything but its version says where: position, altitude, direction, place. */
const gpsVersion = 0x0000;

const entryBytes = 12;
/** More than any camera writes; a directory that claims more is not read on. */
const mostEntries = 500;

interface Entry {
  tag: number;
  count: number;
  /** The value itself where it fits four bytes, else where it lies. */
  at: number;
}

/** Reads a TIFF structure without ever leaving it: a hostile file may point anywhere. */
class TiffReader {
  readonly #bytes: Buffer;
  readonly #isLittle: boolean;

  constructor(bytes: Buffer) {
    this.#bytes = bytes;
    this.#isLittle = bytes.toString('latin1', 0, 2) === 'II';
  }

  uint16(at: number): number {
    if (at < 0 || at + 2 > this.#bytes.length) return 0;
    return this.#isLittle ? this.#bytes.readUInt16LE(at) : this.#bytes.readUInt16BE(at);
  }

  uint32(at: number): number {
    if (at < 0 || at + 4 > this.#bytes.length) return 0;
    return this.#isLittle ? this.#bytes.readUInt32LE(at) : this.#bytes.readUInt32BE(at);
  }

  ascii(at: number, count: number): string {
    return this.#bytes.toString('latin1', at, Math.min(at + count, this.#bytes.length));
  }

  directory(at: number): Entry[] {
    if (at === 0) return [];
    const count = Math.min(this.uint16(at), mostEntries);
    return Array.from({ length: count }, (_, i) => {
      const start = at + 2 + i * entryBytes;
      return { tag: this.uint16(start), count: this.uint32(start + 4), at: start + 8 };
    });
  }

  /** The directory that an entry of another one points to. */
  below(entries: readonly Entry[], tag: number): Entry[] {
    const entry = entries.find((each) => each.tag === tag);
    return entry === undefined ? [] : this.directory(this.uint32(entry.at));
  }
}

/** Exif writes `2026:03:02 10:11:12`; a clock that was never set writes blanks or zeros. */
function plainMoment(text: string): string | null {
  const match = /^(\d{4}):(\d\d):(\d\d) (\d\d):(\d\d):(\d\d)/.exec(text);
  if (match === null) return null;
  const [, year, month, day, hour, minute, second] = match;
  const moment = `${year}-${month}-${day}T${hour}:${minute}:${second}`;
  const parsed = new Date(`${moment}Z`);
  if (Number.isNaN(parsed.getTime()) || Number(year) < 1900) return null;
  // A day such as 31 February would have moved on to March.
  return parsed.toISOString().startsWith(moment) ? moment : null;
}

/** @param exif the block as sharp gives it: `Exif`, two zero bytes, then TIFF. */
export function readCameraNotes(exif: Buffer | undefined): CameraNotes {
  if (exif === undefined) return { takenAt: null, hasLocation: false };
  const start = exif.toString('latin1', 0, 6) === 'Exif\0\0' ? 6 : 0;
  const tiff = new TiffReader(exif.subarray(start));
  const top = tiff.directory(tiff.uint32(4));
  const date = tiff.below(top, exifPointer).find((entry) => entry.tag === dateTimeOriginal);
  return {
    takenAt: date === undefined ? null : plainMoment(tiff.ascii(tiff.uint32(date.at), date.count)),
    hasLocation: tiff.below(top, gpsPointer).some((entry) => entry.tag !== gpsVersion),
  };
}
